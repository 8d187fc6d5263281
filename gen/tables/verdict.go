// Package tables makes the computed tables and the job plan: the only place
// where the shop's data meets the physics, and where the limits of several
// processes are combined. Every value carries its working.
package tables

// Verdict is the answer to "may this print be laminated with this film now".
type Verdict string

// The verdicts, from the best to the worst. When several hold, the worst one
// stands and the reasons name all.
const (
	Go     Verdict = "go"     // laminate now
	Wait   Verdict = "wait"   // not before a time
	Change Verdict = "change" // this film or laminator will not do; others would
	Refuse Verdict = "refuse" // nothing advisable
)

// Worse returns the later of two verdicts in the order go, wait, change, refuse.
func (v Verdict) Worse(w Verdict) Verdict {
	if rank[w] > rank[v] {
		return w
	}
	return v
}

// Verdicts lists the verdicts from the best to the worst.
var Verdicts = []Verdict{Go, Wait, Change, Refuse}

var rank = map[Verdict]int{Go: 0, Wait: 1, Change: 2, Refuse: 3}
