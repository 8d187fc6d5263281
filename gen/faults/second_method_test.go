package faults

import (
	"math"
	"math/rand/v2"
	"testing"
)

// brute is the least expected cost by trying every act in every history, with beliefs
// made to sum to 1 by Bayes' rule at each step. It shares no code with the solvers: no
// states, no weights, no memory of what was computed before.
func brute(p *Problem, belief []float64, done []bool) float64 {
	best := math.Inf(1)
	for i := range p.Acts {
		if done[i] {
			continue
		}
		a := &p.Acts[i]
		cost := 0.0
		for c, b := range belief {
			cost += b * a.cost(c)
		}
		done[i] = true
		for _, o := range a.Outcomes {
			chance := 0.0
			for c, b := range belief {
				chance += b * o.Chance[c]
			}
			if chance == 0 || o.Ends {
				continue
			}
			after := make([]float64, len(belief))
			for c, b := range belief {
				after[c] = b * o.Chance[c] / chance
			}
			cost += chance * brute(p, after, done)
		}
		done[i] = false
		best = min(best, cost)
	}
	return best
}

func bruteForce(p *Problem) float64 {
	belief, total := make([]float64, len(p.Causes)), 0.0
	for _, c := range p.Causes {
		total += c.Weight
	}
	for i, c := range p.Causes {
		belief[i] = c.Weight / total
	}
	return brute(p, belief, make([]bool, len(p.Acts)))
}

// follow is the expected cost of a key by letting each cause in turn be the one and
// walking the key with it.
func follow(p *Problem, s *Step, cause int) float64 {
	a := &p.Acts[s.Act]
	cost := a.cost(cause)
	for i, o := range a.Outcomes {
		if o.Chance[cause] > 0 && !o.Ends {
			cost += o.Chance[cause] * follow(p, s.Next[i], cause)
		}
	}
	return cost
}

func followed(k *Key) float64 {
	cost, total := 0.0, 0.0
	for i, c := range k.Problem.Causes {
		cost += c.Weight * follow(k.Problem, k.Start, i)
		total += c.Weight
	}
	return cost / total
}

// small makes a random problem that brute force can do: chances of 0 and 1, costs of
// nothing and gains, costs that hang on the cause, several ends, outcomes that end or
// not.
func small(r *rand.Rand) *Problem {
	p := &Problem{Name: "small"}
	causes := 1 + r.IntN(4)
	for c := range causes {
		p.Causes = append(p.Causes, Cause{Name: string(rune('A' + c)), Weight: 0.1 + r.Float64()})
	}
	cost := func(span float64) []float64 {
		list := []float64{math.Floor(r.Float64()*(span+4)) - 4}
		if r.IntN(4) == 0 {
			for range causes - 1 {
				list = append(list, math.Floor(r.Float64()*span))
			}
		}
		return list
	}
	for i := range 1 + r.IntN(4) {
		a := Act{Name: string(rune('a' + i)), Cost: cost(20)}
		n := 2
		if r.IntN(3) == 0 {
			n = 3
		}
		for o := range n {
			a.Outcomes = append(a.Outcomes, Outcome{Name: string(rune('0' + o)), Chance: make([]float64, causes)})
		}
		if r.IntN(2) == 0 {
			a.Outcomes[r.IntN(n)].Ends = true
		}
		for c := range causes {
			left := 1.0
			for o := range n - 1 {
				q := left * r.Float64()
				switch r.IntN(4) {
				case 0:
					q = 0
				case 1:
					q = left
				}
				a.Outcomes[o].Chance[c] = q
				left -= q
			}
			a.Outcomes[n-1].Chance[c] = left
		}
		p.Acts = append(p.Acts, a)
	}
	for i := range 1 + r.IntN(2) {
		certain := Outcome{Name: "end", Ends: true}
		for range causes {
			certain.Chance = append(certain.Chance, 1)
		}
		p.Acts = append(p.Acts, Act{Name: string(rune('y' + i)), Cost: cost(60), Outcomes: []Outcome{certain}})
	}
	return p
}

// TestSecondMethodBruteForce: the table and the search find the least cost of all keys,
// and the key that they give costs that, walked cause by cause.
func TestSecondMethodBruteForce(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	const n = 4000
	for i := range n {
		p := small(r)
		want := bruteForce(p)
		for _, effort := range []Effort{{}, {States: 1, Within: 1e-12}, {States: 1, Within: 1e-12, Room: 1}} {
			k, err := Solve(p, effort)
			if err != nil {
				t.Fatal(err)
			}
			if math.Abs(k.Cost-want) > 1e-6 || math.Abs(followed(k)-k.Cost) > 1e-9 {
				t.Fatalf("problem %d, %+v: key costs %.9g, walked %.9g; brute force %.9g\n%+v", i, effort, k.Cost, followed(k), want, p)
			}
			if k.Least > want+1e-9 || k.Loss() > 1e-5 {
				t.Fatalf("problem %d, %+v: proven %.9g, brute force %.9g\n%+v", i, effort, k.Least, want, p)
			}
		}
	}
	t.Logf("%d random problems, each by table and by search with and without room", n)
}
