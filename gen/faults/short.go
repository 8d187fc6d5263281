package faults

import (
	"fmt"
	"math"
)

// Short is the best key that has room for so many steps on paper.
//
// It is a tree: each step is come to by one way only. A step with more than two
// outcomes counts as one step less than it has outcomes, since it may be written as
// that many two-way steps, one asking for each outcome in turn. Ends need no step:
// they stand where a step's lead would name the next step.
type Short struct {
	Key
	// Limit is how many two-way steps there was room for, Size how many there are.
	Limit, Size int
	// LeastOfSize is what the expected cost of no key of at most Limit steps can be
	// below, as proven. The key is the best of its size if it costs no more.
	LeastOfSize float64
}

// Shorten finds the best key of at most so many two-way steps. Its Loss is against
// the best key of any size.
func Shorten(p *Problem, steps int, e Effort) (*Short, error) {
	if steps < 0 {
		return nil, fmt.Errorf("a key of %d steps: give 0 or more", steps)
	}
	m, err := newModel(p)
	if err != nil {
		return nil, err
	}
	v, least := solve(m, e.or())
	x := &shortening{model: m, values: v, low: map[state]float64{}, solved: map[budget]solution{}, left: 10 * e.or().Open}
	best, leastOfSize := x.shorten(m.follow(v), steps)
	s := &Short{Key: *m.explain(best, v), Limit: steps, Size: m.size(best)}
	s.Least = math.Min(s.Cost, least)
	s.LeastOfSize = math.Min(s.Cost, leastOfSize)
	return s, nil
}

// shorten finds the best plan of a size, and what no plan of that size can cost less
// than. full is the best plan of any size that is known.
func (x *shortening) shorten(full *plan, steps int) (*plan, float64) {
	m := x.model
	if m.size(full) <= steps {
		return full, x.lower(0, m.prior) - m.slack()
	}
	best := m.prune(full, m.prior, steps)
	cost := m.cost(best, m.prior)
	if p := x.priced(steps); m.cost(p, m.prior) < cost {
		best, cost = p, m.cost(p, m.prior)
	}
	found := x.within(0, m.prior, steps, cost)
	if found.exact && found.cost < cost {
		best = x.plan(0, m.prior, steps)
	}
	return best, found.cost - m.slack()
}

// size counts the two-way steps of a plan.
func (m *model) size(p *plan) int {
	if p == nil || p.act < 0 {
		return 0
	}
	n := m.acts[p.act].size
	for _, next := range p.next {
		n += m.size(next)
	}
	return n
}

// shortening looks for the best key of a size.
//
// A key that pays a price λ for each of its steps, beside its cost, is found state by
// state as the best key is. If it has n steps and costs C, then no key of at most N
// steps costs less than C + λ·(n − N) (a Lagrange multiplier). So some prices give
// good keys, and lower bounds for every state and number of steps; what is between
// them is searched.
type shortening struct {
	model  *model
	values valued
	low    map[state]float64 // of states that were asked for
	prices []price
	solved map[budget]solution
	left   int // states that may still be looked into
}

// price is one price with the least cost and price from each state on.
type price struct {
	step  float64
	value map[state]float64
}

// budget is a state with the steps that may be spent from it on.
type budget struct {
	state state
	steps int
}

// solution is the least cost within a budget, or a lower bound on it.
type solution struct {
	cost  float64
	exact bool
	act   int   // -1 for the end
	steps []int // by lead
}

// lower is the lower bound of a state whatever the steps.
func (x *shortening) lower(s state, w []float64) float64 {
	if v, ok := x.low[s]; ok {
		return v
	}
	v, _ := x.values.bounds(s, w)
	x.low[s] = v
	return v
}

// priced halves prices until the key of the last one just has room, and returns the
// best that has.
func (x *shortening) priced(steps int) *plan {
	m := x.model
	end, _ := m.end(m.prior)
	best := &plan{act: -1, end: end}
	cost := m.cost(best, m.prior)
	high := cost - x.lower(0, m.prior) // at this price no step pays
	low := 0.0
	for try := range 24 {
		at := high / 2
		if low > 0 {
			at = (low + high) / 2
		}
		x.prices = append(x.prices, price{step: at, value: map[state]float64{}})
		p := &x.prices[len(x.prices)-1]
		x.pay(p, 0, m.prior)
		made := x.paid(p, 0, m.prior)
		if m.size(made) > steps {
			low = at
		} else {
			high = at
			if c := m.cost(made, m.prior); c < cost {
				best, cost = made, c
			}
			if m.size(made) == steps {
				break
			}
		}
		if x.left <= 0 || low > 0 && high-low < 1e-3*high || try > 10 && low == 0 {
			break
		}
	}
	return best
}

// pay is the least cost and price from a state on; a lower bound once too many states
// were looked into.
func (x *shortening) pay(p *price, s state, w []float64) float64 {
	if v, ok := p.value[s]; ok {
		return v
	}
	m := x.model
	_, best := m.end(w)
	if low := x.lower(s, w) + p.step; low >= best {
		return best
	} else if x.left <= 0 {
		return low
	}
	x.left--
	mass := sum(w)
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) {
			continue
		}
		v := a.spend(w, mass) + p.step*float64(a.size)
		if v+x.lowers(a, s, w) >= best {
			continue
		}
		after := make([]float64, len(w))
		for _, l := range a.leads {
			if mulInto(after, w, l.chance) > 0 {
				v += x.pay(p, s|l.mark, after)
			}
		}
		best = math.Min(best, v)
	}
	p.value[s] = best
	return best
}

// lowers sums the lower bounds of what an act leads to.
func (x *shortening) lowers(a *modelAct, s state, w []float64) float64 {
	total := 0.0
	after := make([]float64, len(w))
	for _, l := range a.leads {
		if mulInto(after, w, l.chance) > 0 {
			total += x.lower(s|l.mark, after)
		}
	}
	return total
}

// paid follows a price's values down.
func (x *shortening) paid(p *price, s state, w []float64) *plan {
	m := x.model
	end, best := m.end(w)
	made := &plan{act: -1, end: end}
	if _, ok := p.value[s]; !ok {
		return made
	}
	mass := sum(w)
	after := make([]float64, len(w))
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) {
			continue
		}
		v := a.spend(w, mass) + p.step*float64(a.size)
		if v+x.lowers(a, s, w) >= best {
			continue
		}
		for _, l := range a.leads {
			if mulInto(after, w, l.chance) > 0 {
				v += x.pay(p, s|l.mark, after)
			}
		}
		if v < best-tieShare*m.scale*mass {
			best, made = v, &plan{act: i}
		}
	}
	if made.act < 0 {
		return made
	}
	for _, l := range m.acts[made.act].leads {
		after := make([]float64, len(w))
		var next *plan
		if mulInto(after, w, l.chance) > 0 {
			next = x.paid(p, s|l.mark, after)
		}
		made.next = append(made.next, next)
	}
	return made
}
