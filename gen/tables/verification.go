package tables

import (
	"fmt"
	"math"
	"sync"

	"laydown/gen/air"
	"laydown/gen/bond"
	"laydown/gen/cooling"
	"laydown/gen/curl"
	"laydown/gen/drying"
	"laydown/gen/faults"
	"laydown/gen/nip"
	"laydown/gen/paper"
	"laydown/gen/roll"
	"laydown/gen/stack"
	"laydown/gen/vent"
	"laydown/testdata"
)

// verifiers compute published values through the code that makes the handbook,
// by the name that a file of published values gives its package.
var verifiers = map[string]func(what string, given map[string]float64) (float64, error){
	"air":     air.Verify,
	"bond":    bond.Verify,
	"cooling": cooling.Verify,
	"curl":    curl.Verify,
	"drying":  drying.Verify,
	"faults":  faults.Verify,
	"nip":     nip.Verify,
	"paper":   paper.Verify,
	"roll":    roll.Verify,
	"vent":    vent.Verify,
	"stack":   stack.Verify,
}

// Verified is one source of published values with what this build computes for them.
type Verified struct {
	testdata.Source
	Checks []Check
}

// Check is one published value beside what was computed for it.
type Check struct {
	testdata.Value
	Got float64
	Err error
}

// Deviation is the computed value less the published one.
func (c Check) Deviation() float64 { return c.Got - c.Expect }

// Holds says that the computed value lies within the tolerance.
func (c Check) Holds() bool {
	return c.Err == nil && c.Tolerance > 0 && math.Abs(c.Deviation()) <= c.Tolerance
}

// fault says what is wrong with a check that does not hold.
func (c Check) fault() string {
	if c.Err != nil {
		return fmt.Sprintf("%s: %v", c.What, c.Err)
	}
	return fmt.Sprintf("%s %v: published %g, computed %.7g, which is not within %g", c.What, c.Given, c.Expect, c.Got, c.Tolerance)
}

// Verification computes every published value, source by source. It rests on
// nothing that a shop may change, so it is computed once and the result shared.
func Verification() ([]Verified, error) { return verification() }

var verification = sync.OnceValues(verifyAll)

func verifyAll() ([]Verified, error) {
	sources, err := testdata.Sources()
	if err != nil {
		return nil, err
	}
	list := make([]Verified, len(sources))
	for i, s := range sources {
		verify, ok := verifiers[s.Package]
		if !ok {
			return nil, fmt.Errorf("%s: no package %q computes it", s.File, s.Package)
		}
		list[i].Source = s
		for _, v := range s.Values {
			c := Check{Value: v}
			c.Got, c.Err = verify(v.What, v.Given)
			list[i].Checks = append(list[i].Checks, c)
		}
	}
	return list, nil
}

// Unmet lists the published values that this build does not reproduce, each as
// one line with its file. There should be none.
func Unmet(list []Verified) []string {
	var lines []string
	for _, v := range list {
		for _, c := range v.Checks {
			if !c.Holds() {
				lines = append(lines, "testdata/"+v.File+": "+c.fault())
			}
		}
	}
	return lines
}
