package faults

import (
	"fmt"
	"math/rand/v2"

	"laydown/gen/quantity"
)

// invented makes a family of the kind that a shop might write down; all of it is
// invented. A remedy is meant for one cause and at times helps another; a check tells
// some causes from the rest, and is right in 75 to 95 of 100.
func invented(r *rand.Rand, causes, checks, remedies int) *Family {
	f := &Family{Name: "invented", Help: Help{Name: "help", Time: quantity.Time(60+180*r.Float64()) * quantity.Minute}}
	for i := range causes {
		f.Causes = append(f.Causes, Cause{Name: fmt.Sprintf("cause %d", i+1), Weight: float64(1 + r.IntN(6))})
	}
	times := []float64{0, 0.1, 0.2, 1, 1, 2, 3, 4, 5, 10}
	for i := range checks {
		o := Observation{Name: fmt.Sprintf("check %d", i+1), Time: quantity.Time(times[r.IntN(len(times))]) * quantity.Minute}
		results := 2
		if r.IntN(5) == 0 {
			results = 3
		}
		chance := make([]map[string]quantity.Fraction, results)
		for k := range chance {
			chance[k] = map[string]quantity.Fraction{}
		}
		for _, c := range f.Causes {
			likely := results - 1
			if r.Float64() < 0.35 {
				likely = r.IntN(results)
			}
			right := 0.75 + 0.2*r.Float64()
			for k := range results {
				q := (1 - right) / float64(results-1)
				if k == likely {
					q = right
				}
				chance[k][c.Name] = quantity.Fraction(q)
			}
		}
		for k := range results {
			o.Results = append(o.Results, Result{Name: fmt.Sprintf("result %d", k+1), Chance: chance[k]})
		}
		f.Checks = append(f.Checks, o)
	}
	times = []float64{2, 3, 5, 5, 10, 10, 15, 20, 30, 60}
	for i := range remedies {
		c := Cure{Name: fmt.Sprintf("remedy %d", i+1), Time: quantity.Time(times[r.IntN(len(times))]) * quantity.Minute, Cures: map[string]quantity.Fraction{}}
		for j, cause := range f.Causes {
			switch {
			case j == i%causes:
				c.Cures[cause.Name] = quantity.Fraction(0.6 + 0.35*r.Float64())
			case r.Float64() < 0.1:
				c.Cures[cause.Name] = quantity.Fraction(0.1 + 0.5*r.Float64())
			}
		}
		f.Remedies = append(f.Remedies, c)
	}
	return f
}

// must is for families that are known to be right.
func must(f *Family) *Problem {
	p, err := f.Problem()
	if err != nil {
		panic(err)
	}
	return p
}
