package faults

import (
	"math"
	"math/rand/v2"
	"testing"
)

// TestAtLeastIsWhatBeginCanDo: the bound by which climbing leaves acts out is never above
// the plan that would have been made, and with steps enough it is that plan's cost.
func TestAtLeastIsWhatBeginCanDo(t *testing.T) {
	r := rand.New(rand.NewPCG(27, 28))
	tight := 0
	for i := range 40 {
		s, err := NewSolver(must(invented(r, 5, 5, 5)), Effort{States: 1, Open: 300})
		if err != nil {
			t.Fatal(err)
		}
		m := &climbing{s.model, map[state]float64{}}
		for _, steps := range []int{4, 12, 1000} {
			p := m.prune(s.full, m.prior, steps)
			for act := range m.acts {
				if m.acts[act].size > steps {
					continue
				}
				made := m.begin(act, p, 0, m.prior, steps)
				cost, least := m.cost(made, m.prior), m.atLeast(act, p, 0, m.prior)
				if size := m.size(made); size > steps {
					t.Fatalf("family %d, act %d: %d steps, there was room for %d", i, act, size, steps)
				}
				if cost < least-1e-9 || steps == 1000 && math.Abs(cost-least) > 1e-9 {
					t.Fatalf("family %d, act %d, %d steps: the plan costs %.12g, at least %.12g was said", i, act, steps, cost, least)
				}
				if cost > least+1e-9 {
					tight++
				}
			}
		}
	}
	if tight == 0 {
		t.Error("steps were never short: the test shows little")
	}
}
