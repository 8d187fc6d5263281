package faults

import (
	"math"
	"math/rand/v2"
	"testing"
)

// bruteShort is the least expected cost within so many two-way steps, by trying every
// act and every way of sharing the steps among its outcomes.
func bruteShort(p *Problem, belief []float64, done []bool, steps int) float64 {
	best := math.Inf(1)
	for i := range p.Acts {
		a := &p.Acts[i]
		size := max(1, len(a.Outcomes)-1)
		if a.Kind() == End {
			size = 0
		}
		if done[i] || size > steps {
			continue
		}
		spend := 0.0
		for c, b := range belief {
			spend += b * a.cost(c)
		}
		done[i] = true
		var share func(outcome, left int) float64
		share = func(outcome, left int) float64 {
			if outcome == len(a.Outcomes) {
				return 0
			}
			o := &a.Outcomes[outcome]
			chance := 0.0
			for c, b := range belief {
				chance += b * o.Chance[c]
			}
			if o.Ends || chance == 0 {
				return share(outcome+1, left)
			}
			after := make([]float64, len(belief))
			for c, b := range belief {
				after[c] = b * o.Chance[c] / chance
			}
			least := math.Inf(1)
			for n := range left + 1 {
				least = min(least, chance*bruteShort(p, after, done, n)+share(outcome+1, left-n))
			}
			return least
		}
		best = min(best, spend+share(0, steps-size))
		done[i] = false
	}
	return best
}

// TestShortIsTheBestOfItsSize: against brute force. From a search the key need not be
// the best of its size, but what is said to be proven must be true.
func TestShortIsTheBestOfItsSize(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	shortened, searched := 0, 0
	for i := range 600 {
		p := small(r)
		exact, err := NewSolver(p, Effort{})
		if err != nil {
			t.Fatal(err)
		}
		bounded, err := NewSolver(p, Effort{States: 1, Within: 1e-12})
		if err != nil {
			t.Fatal(err)
		}
		for steps := range 5 {
			want := bruteShort(p, p.beliefs(), make([]bool, len(p.Acts)), steps)
			s := exact.Short(steps)
			if math.Abs(s.Cost-want) > 1e-6 || math.Abs(s.LeastOfSize-want) > 1e-5 || s.Size > steps {
				t.Fatalf("problem %d, %d steps: %d cost %.9g, proven %.9g; brute force %.9g\n%+v", i, steps, s.Size, s.Cost, s.LeastOfSize, want, p)
			}
			if s.Loss() > 1e-5 {
				shortened++
			}
			s = bounded.Short(steps)
			if s.Cost < want-1e-6 || s.LeastOfSize > want+1e-9 || s.Size > steps || math.Abs(followed(&s.Key)-s.Cost) > 1e-9 {
				t.Fatalf("problem %d, %d steps, searched: %d cost %.9g, walked %.9g, proven %.9g; brute force %.9g\n%+v",
					i, steps, s.Size, s.Cost, followed(&s.Key), s.LeastOfSize, want, p)
			}
			if s.Cost > s.LeastOfSize+1e-5 {
				searched++
			}
		}
	}
	if shortened < 100 || searched < 100 {
		t.Errorf("only %d keys lost by being short, %d by being searched: the test shows little", shortened, searched)
	}
	t.Logf("%d keys lost by being short", shortened)
}

// TestClimbComesClose: what is done where not all states are valued, against the best
// key of its size in families where that is known.
func TestClimbComesClose(t *testing.T) {
	r := rand.New(rand.NewPCG(25, 26))
	total, worst, n := 0.0, 0.0, 0
	for i := range 20 {
		s, err := NewSolver(must(invented(r, 5, 5, 5)), Effort{})
		if err != nil {
			t.Fatal(err)
		}
		for _, steps := range []int{5, 9} {
			best := s.Short(steps)
			if s.model.size(s.full) <= steps || best.Cost > best.LeastOfSize+1e-5 {
				continue
			}
			p := s.model.climb(s.model.prune(s.full, s.model.prior, steps), steps)
			cost := s.model.cost(p, s.model.prior)
			if cost < best.Cost-1e-6 || s.model.size(p) > steps {
				t.Fatalf("family %d, %d steps: climbing gives %d that cost %.9g, the best cost %.9g", i, steps, s.model.size(p), cost, best.Cost)
			}
			off := cost/best.Cost - 1
			total, worst, n = total+off, max(worst, off), n+1
		}
	}
	t.Logf("%d keys: off by %.2f %% in the mean, %.1f %% at worst", n, 100*total/float64(n), 100*worst)
	if n < 20 || total/float64(n) > 0.01 {
		t.Errorf("%d keys: off by %.2f %% in the mean", n, 100*total/float64(n))
	}
}
