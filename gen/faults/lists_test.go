package faults

import (
	"math"
	"math/rand/v2"
	"testing"
)

// bruteLists is the least expected cost of a tree of checks within some lines, with lists
// at its ends, by trying every check and every way of sharing the lines among its leads.
// Beliefs sum to 1 at each step.
func bruteLists(p *Problem, belief []float64, done []bool, lines, remedies int) float64 {
	best := bruteList(p, belief, done, remedies)
	for i := range p.Acts {
		a := &p.Acts[i]
		if done[i] || a.leads() < 2 || 1+a.leads() > lines {
			continue
		}
		spend := expected(a, belief)
		done[i] = true
		var rest func(outcome, left int) float64
		rest = func(outcome, left int) float64 {
			if outcome == len(a.Outcomes) {
				return 0
			}
			chance, after := given(a, outcome, belief)
			if a.Outcomes[outcome].Ends || chance == 0 {
				return rest(outcome+1, left)
			}
			least := math.Inf(1)
			for n := range left + 1 {
				least = min(least, chance*bruteLists(p, after, done, n, remedies)+rest(outcome+1, left-n))
			}
			return least
		}
		best = min(best, spend+rest(0, lines-1-a.leads()))
		done[i] = false
	}
	return best
}

// bruteList tries the remedy of the best chance for its cost, and then those that are
// left, or ends.
func bruteList(p *Problem, belief []float64, done []bool, remedies int) float64 {
	end := math.Inf(1)
	next, rate := -1, math.Inf(1)
	for i := range p.Acts {
		a := &p.Acts[i]
		cost := expected(a, belief)
		if a.Kind() == End {
			end = min(end, cost)
			continue
		}
		stop := 0.0
		for o := range a.Outcomes {
			if chance, _ := given(a, o, belief); a.Outcomes[o].Ends {
				stop += chance
			}
		}
		if !done[i] && a.leads() < 2 && stop > 0 && cost/stop < rate-1e-12 {
			next, rate = i, cost/stop
		}
	}
	if next < 0 || remedies == 0 {
		return end
	}
	cost := expected(&p.Acts[next], belief)
	done[next] = true
	for o := range p.Acts[next].Outcomes {
		if chance, after := given(&p.Acts[next], o, belief); chance > 0 && !p.Acts[next].Outcomes[o].Ends {
			cost += chance * bruteList(p, after, done, remedies-1)
		}
	}
	done[next] = false
	return min(cost, end)
}

// expected is what an act costs with a belief.
func expected(a *Act, belief []float64) float64 {
	total := 0.0
	for c, b := range belief {
		total += b * a.cost(c)
	}
	return total
}

// given is how likely an outcome is, and what is believed after it.
func given(a *Act, outcome int, belief []float64) (chance float64, after []float64) {
	after = make([]float64, len(belief))
	for c, b := range belief {
		after[c] = b * a.Outcomes[outcome].Chance[c]
		chance += after[c]
	}
	for c := range after {
		after[c] /= chance
	}
	return chance, after
}

// TestListsAreTheBestOfTheirForm: against brute force, and never better than the best key.
func TestListsAreTheBestOfTheirForm(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 32))
	asked, lost := 0, 0
	for i := range 60 {
		p := must(invented(r, 3+r.IntN(3), 3, 3))
		s, err := NewSolver(p, Effort{})
		if err != nil {
			t.Fatal(err)
		}
		least := s.Key().Cost
		before := math.Inf(1)
		for _, lines := range []int{0, 3, 4, 6, 9} {
			k := s.Lists(lines, 2)
			want := bruteLists(p, p.beliefs(), make([]bool, len(p.Acts)), lines, 2)
			if math.Abs(k.Cost-want) > 1e-6 || math.Abs(followed(k)-k.Cost) > 1e-9 {
				t.Fatalf("family %d, %d lines: cost %.9g, walked %.9g; brute force %.9g", i, lines, k.Cost, followed(k), want)
			}
			if k.Cost < least-1e-9 || k.Cost > before+1e-9 || k.Least > k.Cost {
				t.Fatalf("family %d, %d lines: cost %.9g after %.9g with fewer, the best %.9g, proven %.9g", i, lines, k.Cost, before, least, k.Least)
			}
			before = k.Cost
			if used := linesOf(t, k, k.Start, 2); used > lines {
				t.Fatalf("family %d: %d lines, want at most %d", i, used, lines)
			} else if used > 0 {
				asked++
			}
			if k.Cost > least+1e-6 {
				lost++
			}
		}
	}
	if asked < 100 || lost < 100 {
		t.Errorf("only %d keys ask and %d lose: the test shows little", asked, lost)
	}
}

// linesOf counts the lines of a key from a step on, and wants nothing but so many remedies
// after the checks.
func linesOf(t *testing.T, k *Key, s *Step, remedies int) int {
	t.Helper()
	if s == nil || s.Number == 0 {
		return 0
	}
	a := &k.Problem.Acts[s.Act]
	if a.Kind() == Check {
		n := 1 + a.leads()
		for _, next := range s.Next {
			n += linesOf(t, k, next, remedies)
		}
		return n
	}
	if remedies == 0 {
		t.Error("a list is too long")
	}
	for _, next := range s.Next {
		if linesOf(t, k, next, remedies-1) > 0 {
			t.Error("a check follows a remedy")
		}
	}
	return 0
}

// TestListInOrder: remedies that each cure one cause for certain stand by the chance of
// their causes for their cost, which is the best order (Kadane and Simon, in the package
// comment); by hand: 4 and 2 min for chances of 1/2 and 1/2 cost 2 + 4/2 = 4, the other
// way round 4 + 2/2 = 5.
func TestListInOrder(t *testing.T) {
	p := &Problem{Causes: []Cause{{Name: "a", Weight: 1}, {Name: "b", Weight: 1}}, Acts: []Act{
		{Name: "long", Cost: []float64{4}, Outcomes: []Outcome{{Name: Cured, Chance: []float64{1, 0}, Ends: true}, {Name: "not", Chance: []float64{0, 1}}}},
		{Name: "quick", Cost: []float64{2}, Outcomes: []Outcome{{Name: Cured, Chance: []float64{0, 1}, Ends: true}, {Name: "not", Chance: []float64{1, 0}}}},
		{Name: "help", Cost: []float64{60}, Outcomes: []Outcome{{Name: "end", Chance: []float64{1, 1}, Ends: true}}},
	}}
	s, err := NewSolver(p, Effort{})
	if err != nil {
		t.Fatal(err)
	}
	k := s.Lists(0, 6)
	if math.Abs(k.Cost-4) > 1e-6 || len(k.Steps) != 2 || k.Steps[0].Act != 1 {
		t.Errorf("%d steps that cost %g min, the first act %d; by hand 2 steps, 4 min, quick first", len(k.Steps), k.Cost, k.Steps[0].Act)
	}
	if k := s.Lists(0, 0); len(k.Steps) != 0 || math.Abs(k.Cost-60) > 1e-6 {
		t.Errorf("without room %d steps, %g min; want help at 60", len(k.Steps), k.Cost)
	}
}
