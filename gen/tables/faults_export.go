package tables

import (
	"encoding/csv"
	"io"
	"strconv"

	"laydown/gen/quantity"
)

// WriteFaultsCSV writes the keys one cause a line: what its family's key costs, and where
// the key leads with that cause's likeliest answers.
func WriteFaultsCSV(w io.Writer, keys []FaultKey) error {
	out := csv.NewWriter(w)
	out.Write([]string{"family", "cause", "share", "logged", "ends", "cured_by", "steps_to_it", "key_steps", "key_min", "least_min", "exact", "states", "printed_steps", "printed_min"})
	for i := range keys {
		k := &keys[i]
		p := k.Printed()
		for _, c := range k.Causes {
			end := k.Walk(c.ID)
			out.Write([]string{k.Family.ID, c.ID, number(c.Share, 4), strconv.Itoa(c.Cases), end.Words(), end.Cured, strconv.Itoa(len(end.Steps)),
				strconv.Itoa(len(k.Steps)), number(k.Minutes.Minutes(), 1), number(k.Bound(quantity.Minute/10).Minutes(), 1), strconv.FormatBool(k.Exact), strconv.Itoa(k.States),
				strconv.Itoa(len(p.Steps)), number(p.Minutes.Minutes(), 1)})
		}
	}
	out.Flush()
	return out.Error()
}

// Words say how a walk ends.
func (e WalkEnd) Words() string {
	if e.Cured == "" {
		return "call for help"
	}
	return "cured"
}

type keyStepJSON struct {
	Number  int            `json:"number"`
	Kind    string         `json:"kind"`
	Act     string         `json:"act"`
	Takes   float64        `json:"takes_min"`
	Chance  float64        `json:"chance"`
	Belief  []float64      `json:"belief"`
	Minutes float64        `json:"minutes_from_here"`
	Acts    float64        `json:"acts_from_here"`
	Instead string         `json:"next_best,omitempty"`
	Dearer  float64        `json:"dearer_min,omitempty"`
	Bits    float64        `json:"bits"`
	Worth   float64        `json:"worth_min"` // the most that it might take and still be the best
	Next    map[string]int `json:"next"`      // by answer; 0 where the matter ends, -1 for a call for help
}

// WriteFaultsJSON writes the whole keys.
func WriteFaultsJSON(w io.Writer, keys []FaultKey) error {
	return writeLines(w, "faults", len(keys), func(i int) any {
		k := &keys[i]
		var causes []string
		for _, c := range k.Causes {
			causes = append(causes, c.ID)
		}
		var steps []keyStepJSON
		for _, s := range k.Steps {
			steps = append(steps, s.json())
		}
		return struct {
			Family  string        `json:"family"`
			Causes  []string      `json:"causes"`
			Minutes float64       `json:"minutes"`
			Least   float64       `json:"least_minutes"`
			Exact   bool          `json:"exact"`
			States  int           `json:"states"`
			Cases   int           `json:"logged_cases"`
			Steps   []keyStepJSON `json:"steps"`
		}{k.Family.ID, causes, rounded(k.Minutes.Minutes(), 2), rounded(k.Bound(quantity.Minute/100).Minutes(), 2), k.Exact, k.States, k.Cases, steps}
	})
}

func (s FaultStep) json() keyStepJSON {
	j := keyStepJSON{Number: s.Number, Kind: s.Act.Kind, Act: s.Act.ID, Takes: rounded(s.Act.Takes.Minutes(), 2), Chance: rounded(s.Chance, 5),
		Minutes: rounded(s.Minutes.Minutes(), 2), Acts: rounded(s.Acts, 2), Bits: rounded(s.Bits, 3), Worth: rounded(min(s.Worth.Minutes(), 1e6), 2), Next: map[string]int{}}
	for _, p := range s.Belief {
		j.Belief = append(j.Belief, rounded(p, 4))
	}
	if s.Instead != nil {
		j.Instead, j.Dearer = s.Instead.ID, rounded(s.Dearer.Minutes(), 2)
	}
	for _, a := range s.Answers {
		j.Next[a.ID] = a.Next
		if a.Help {
			j.Next[a.ID] = -1
		}
	}
	return j
}
