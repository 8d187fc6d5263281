package shop

import (
	"math"
	"slices"

	"laydown/gen/quantity"
)

// causesToldApart: for any two causes there is a check that shows them apart or
// a remedy that cures them apart, unless the data says that there is none.
func (c *checker) causesToldApart(r *FaultFamily) {
	paired := make([]bool, len(r.Causes))
	for i := range r.Causes {
		for j := i + 1; j < len(r.Causes); j++ {
			one, other := &r.Causes[i], &r.Causes[j]
			if one.ID == "" || one.ID == other.ID || r.tellsApart(one.ID, other.ID) {
				continue
			}
			paired[i], paired[j] = true, true
			if !one.Alike && !other.Alike {
				c.say(other.Pos, "no check and no remedy of family %s tells cause %s from cause %s: add one that does, make them one cause, or write alike: true", quote(r.ID), quote(other.ID), quote(one.ID))
			}
		}
	}
	for i := range r.Causes {
		if r.Causes[i].Alike && !paired[i] {
			c.say(c.key(&r.Causes[i], "alike", r.Causes[i].Pos), "cause %s is told from every other cause: take alike out", quote(r.Causes[i].ID))
		}
	}
}

// tellsApart says whether some check or remedy differs between two causes by
// more than rounding.
func (f *FaultFamily) tellsApart(one, other string) bool {
	for i := range f.Checks {
		if f.Checks[i].parts(one, other) {
			return true
		}
	}
	for i := range f.Remedies {
		if differs(f.Remedies[i].Cure(one), f.Remedies[i].Cure(other)) {
			return true
		}
	}
	return false
}

// parts says whether a check's outcomes differ between two causes.
func (c *FaultCheck) parts(one, other string) bool {
	return slices.ContainsFunc(c.Outcomes, func(o Outcome) bool {
		return differs(c.Chance(o.ID, one), c.Chance(o.ID, other))
	})
}

// differs says whether two shares are apart by more than their rounding.
func differs(a, b quantity.Fraction) bool { return math.Abs(float64(a-b)) > sumSlack }
