package faults

import (
	"errors"
	"fmt"
	"math"
	"math/bits"
)

// sumTolerance is how far the chances of an act's outcomes may be from 1 together:
// room for rounded decimals, not for a slip.
const sumTolerance = 1e-6

// Limits of what a Problem may hold. What was done and what came of it is kept in one
// machine word.
const (
	maxCauses = 64
	maxActs   = 64
	wordBits  = 64
)

// problems collects what is wrong.
type problems []error

func (ps *problems) add(format string, args ...any) { *ps = append(*ps, fmt.Errorf(format, args...)) }

// Validate returns everything that is wrong with the problem, joined, and nil when
// nothing is.
func (p *Problem) Validate() error {
	var ps problems
	if n := len(p.Causes); n == 0 || n > maxCauses {
		ps.add("%d causes: give from 1 to %d", n, maxCauses)
	}
	seen := map[string]bool{}
	for i, c := range p.Causes {
		if c.Name == "" {
			ps.add("cause %d has no name", i+1)
		} else if seen[c.Name] {
			ps.add("cause %q stands twice", c.Name)
		}
		seen[c.Name] = true
		if !(c.Weight > 0) || math.IsInf(c.Weight, 1) {
			ps.add("cause %q has weight %g: give a positive number, and leave out a cause that never occurs", c.Name, c.Weight)
		}
	}
	if n := len(p.Acts); n > maxActs {
		ps.add("%d acts: at most %d are allowed", n, maxActs)
	}
	clear(seen)
	ends, room := false, 0
	for i := range p.Acts {
		a := &p.Acts[i]
		if a.Name == "" {
			ps.add("act %d has no name", i+1)
		} else if seen[a.Name] {
			ps.add("act %q stands twice", a.Name)
		}
		seen[a.Name] = true
		p.validateAct(a, &ps)
		if a.Kind() == End {
			ends = true
		} else {
			room += bits.Len(uint(a.leads()))
		}
	}
	if !ends {
		ps.add("no act always ends the matter: add help, or a final decision")
	}
	if room > wordBits {
		ps.add("the outcomes of checks and remedies take %d bits, and %d are allowed: part the family in two", room, wordBits)
	}
	return errors.Join(ps...)
}

// validateAct adds what is wrong with one act.
func (p *Problem) validateAct(a *Act, ps *problems) {
	if n := len(a.Cost); n != 1 && n != len(p.Causes) {
		ps.add("act %q has %d costs: give one, or one for each of the %d causes", a.Name, n, len(p.Causes))
	}
	for _, c := range a.Cost {
		if math.IsNaN(c) || math.IsInf(c, 0) {
			ps.add("act %q has the cost %g: give a number", a.Name, c)
		}
	}
	if len(a.Outcomes) == 0 {
		ps.add("act %q has no outcomes", a.Name)
		return
	}
	sums := make([]float64, len(p.Causes))
	named := map[string]bool{}
	for _, o := range a.Outcomes {
		if named[o.Name] {
			ps.add("act %q has the outcome %q twice", a.Name, o.Name)
		}
		named[o.Name] = true
		if len(o.Chance) != len(p.Causes) {
			ps.add("outcome %q of %q has %d chances for %d causes", o.Name, a.Name, len(o.Chance), len(p.Causes))
			return
		}
		for c, q := range o.Chance {
			if !(q >= 0 && q <= 1) {
				ps.add("outcome %q of %q has the chance %g given %q: a chance lies from 0 to 1", o.Name, a.Name, q, p.Causes[c].Name)
			}
			sums[c] += q
		}
	}
	for c, s := range sums {
		if !(math.Abs(s-1) <= sumTolerance) {
			ps.add("the chances of what %q tells given %q sum to %.6g, not to 1", a.Name, p.Causes[c].Name, s)
		}
	}
}

// Alike returns the pairs of causes that no act can tell apart, as indices: each
// outcome of each act has the same chance given either. Evidence never separates
// them, so they may as well be one cause.
func (p *Problem) Alike() [][2]int {
	var pairs [][2]int
	for i := range p.Causes {
		for j := i + 1; j < len(p.Causes); j++ {
			if p.alike(i, j) {
				pairs = append(pairs, [2]int{i, j})
			}
		}
	}
	return pairs
}

func (p *Problem) alike(i, j int) bool {
	for a := range p.Acts {
		for _, o := range p.Acts[a].Outcomes {
			if math.Abs(o.Chance[i]-o.Chance[j]) > sumTolerance {
				return false
			}
		}
	}
	return true
}

// tellsNothing says that every outcome is as likely given one cause as given another.
func (a *Act) tellsNothing() bool {
	for _, o := range a.Outcomes {
		for _, q := range o.Chance {
			if math.Abs(q-o.Chance[0]) > sumTolerance {
				return false
			}
		}
	}
	return true
}
