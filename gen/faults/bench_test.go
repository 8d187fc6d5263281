package faults

import (
	"fmt"
	"math/rand/v2"
	"testing"
)

// BenchmarkSolve shows how the work grows with the family: causes, checks and remedies
// alike. "loss-%" is the proven bound on the loss, 0 where the key is exact.
func BenchmarkSolve(b *testing.B) {
	for _, n := range []int{3, 4, 5, 6, 7, 8, 9, 10, 11, 12} {
		b.Run(fmt.Sprintf("%d", n), func(b *testing.B) {
			p := must(invented(rand.New(rand.NewPCG(uint64(n), 1)), n, n, n))
			var k *Key
			b.ReportAllocs()
			for b.Loop() {
				var err error
				if k, err = Solve(p, Effort{}); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(100*k.Loss()/k.Cost, "loss-%")
			b.ReportMetric(float64(k.States), "states")
			b.ReportMetric(float64(len(k.Steps)), "steps")
		})
	}
}

// BenchmarkShort is a key of twenty steps, from tables that are there already.
func BenchmarkShort(b *testing.B) {
	for _, n := range []int{4, 6, 8, 10} {
		b.Run(fmt.Sprintf("%d", n), func(b *testing.B) {
			s, err := NewSolver(must(invented(rand.New(rand.NewPCG(uint64(n), 1)), n, n, n)), Effort{})
			if err != nil {
				b.Fatal(err)
			}
			var k *Short
			for b.Loop() {
				k = s.Short(20)
			}
			b.ReportMetric(100*k.Loss()/k.Cost, "loss-%")
			b.ReportMetric(100*(k.Cost-k.LeastOfSize)/k.Cost, "loss-of-size-%")
		})
	}
}

// BenchmarkLearn counts a log of a thousand cases.
func BenchmarkLearn(b *testing.B) {
	e := Experience{Family: *tieFamily(look("speck", 1, 0.9, 0.2)), Causes: 10, Checks: 5, Remedies: 5}
	log := make([]Case, 1000)
	for i := range log {
		log[i] = Case{Seen: map[string]string{"speck": "yes"}, Tried: map[string]bool{"clean": i%2 == 0}}
		if i%3 == 0 {
			log[i].Cause = "dirt"
		}
	}
	for b.Loop() {
		if _, err := e.Learn(log); err != nil {
			b.Fatal(err)
		}
	}
}
