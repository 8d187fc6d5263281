package faults

import (
	"cmp"
	"math"
	"slices"
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

// Short is the best key of at most so many two-way steps. Its Loss is against the best
// key of any size. Where all states were valued it is the best of its size too, unless
// that takes more looking than the effort allows; LeastOfSize tells.
func (s *Solver) Short(steps int) *Short {
	m := s.model
	best, leastOfSize := s.full, s.least
	if m.size(best) > steps {
		best, leastOfSize = s.shorten(max(0, steps))
	}
	k := &Short{Key: *m.explain(best, s.values), Limit: steps, Size: m.size(best)}
	k.Least = math.Min(k.Cost, s.least)
	k.LeastOfSize = math.Min(k.Cost, leastOfSize)
	return k
}

// shorten finds the best plan of a size that it can, and what no plan of that size can
// cost less than.
func (s *Solver) shorten(steps int) (*plan, float64) {
	m := s.model
	best := m.climb(m.prune(s.full, m.prior, steps), steps)
	t, ok := s.values.(*induction)
	if !ok {
		return best, s.least
	}
	x := &shortening{model: m, values: t, low: map[state]float64{}, solved: map[budget]solution{}, left: 10 * s.effort.Open}
	p, bound := x.shorten(steps, m.cost(best, m.prior))
	if p != nil {
		best = p
	}
	return best, math.Max(s.least, bound-m.slack())
}

// shorten finds the best plan of a size if it costs less than a cost, or nil, and what
// no plan of that size can cost less than.
func (x *shortening) shorten(steps int, cost float64) (*plan, float64) {
	m := x.model
	var best *plan
	if p := x.priced(steps); m.cost(p, m.prior) < cost {
		best, cost = p, m.cost(p, m.prior)
	}
	found := x.within(0, m.prior, steps, cost)
	if found.exact && found.cost < cost {
		best = x.plan(0, m.prior, steps)
	}
	return best, found.cost
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
	prices []*price          // the highest first
	solved map[budget]solution
	left   int // states that may still be looked into
}

// price is one price with the least cost and price from each state on.
type price struct {
	step  float64
	value map[state]float64 // where it was looked into; elsewhere the end is best
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

// priced halves the price until the best key for it has no room, then closes in on the
// price where it just has, and returns the best plan that has room.
func (x *shortening) priced(steps int) *plan {
	m := x.model
	end, cost := m.end(m.prior)
	best := &plan{act: -1, end: end}
	low, high := 0.0, cost-x.lower(0, m.prior) // at the higher no step pays
	for range 24 {
		at := (low + high) / 2
		p := x.price(at)
		x.pay(p, 0, m.prior, math.Inf(1))
		made := x.paid(p, 0, m.prior)
		size := m.size(made)
		if size > steps {
			low = at
		} else {
			high = at
			if c := m.cost(made, m.prior); c < cost {
				best, cost = made, c
			}
		}
		if size == steps || x.left <= 0 || low > 0 && high-low < 1e-2*high {
			break
		}
	}
	return best
}

// price adds a price in its place.
func (x *shortening) price(step float64) *price {
	p := &price{step: step, value: map[state]float64{}}
	at, _ := slices.BinarySearchFunc(x.prices, step, func(p *price, step float64) int { return cmp.Compare(step, p.step) })
	x.prices = slices.Insert(x.prices, at, p)
	return p
}

// known is the least cost and price from a state on, if it is known.
func (x *shortening) known(p *price, s state, low, end float64) (float64, bool) {
	if v, ok := p.value[s]; ok {
		return v, true
	}
	return end, low+p.step >= end
}

// payLower is a lower bound on the least cost and price from a state on. The least
// cost and price of a state is a concave function of the price, the least of straight
// lines, one for each key: between two prices it lies above the chord.
func (x *shortening) payLower(p *price, s state, w []float64) float64 {
	_, end := x.model.end(w)
	low := x.lower(s, w)
	bound := math.Min(end, low+p.step)
	below, at := low, 0.0 // the nearest lower price
	for i := len(x.prices) - 1; i >= 0; i-- {
		q := x.prices[i]
		v, ok := x.known(q, s, low, end)
		switch {
		case !ok || q == p:
		case q.step < p.step:
			below, at = v, q.step
		default:
			share := (p.step - at) / (q.step - at)
			return math.Max(bound, below+share*(v-below))
		}
	}
	return math.Max(bound, below)
}

// pay is the least cost and price from a state on if it is below a limit, and a lower
// bound otherwise, and once too many states were looked into.
func (x *shortening) pay(p *price, s state, w []float64, limit float64) float64 {
	m := x.model
	_, end := m.end(w)
	if v, ok := x.known(p, s, x.lower(s, w), end); ok {
		return v
	}
	low := x.payLower(p, s, w)
	if low >= limit || x.left <= 0 {
		return low
	}
	x.left--
	turns := x.turns(p, s, w)
	best, bound := end, math.Inf(1)
	after := make([]float64, len(w))
	for _, t := range turns {
		if t.low >= math.Min(best, limit) {
			bound = math.Min(bound, t.low)
			break
		}
		v := t.low
		for _, l := range m.acts[t.act].leads {
			if mulInto(after, w, l.chance) > 0 {
				was := x.payLower(p, s|l.mark, after)
				v += x.pay(p, s|l.mark, after, math.Min(best, limit)-v+was) - was
			}
		}
		if v < math.Min(best, limit) {
			best = v
		} else {
			bound = math.Min(bound, v)
		}
	}
	if bound < best || x.left <= 0 {
		return math.Max(low, math.Min(best, bound))
	}
	p.value[s] = best
	return best
}

// turn is an act to be looked into, with a lower bound.
type turn struct {
	act int
	low float64
}

// turns are the acts of a state in the order of their lower bounds at a price.
func (x *shortening) turns(p *price, s state, w []float64) []turn {
	m := x.model
	var list []turn
	mass := sum(w)
	after := make([]float64, len(w))
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) {
			continue
		}
		t := turn{i, a.spend(w, mass) + p.step*float64(a.size)}
		for _, l := range a.leads {
			if mulInto(after, w, l.chance) > 0 {
				t.low += x.payLower(p, s|l.mark, after)
			}
		}
		list = append(list, t)
	}
	slices.SortStableFunc(list, func(a, b turn) int { return cmp.Compare(a.low, b.low) })
	return list
}

// paid follows a price's values down.
func (x *shortening) paid(p *price, s state, w []float64) *plan {
	m := x.model
	end, best := m.end(w)
	if _, ok := p.value[s]; !ok {
		return &plan{act: -1, end: end}
	}
	act := -1
	margin := tieShare * m.scale * sum(w)
	after := make([]float64, len(w))
	for _, t := range x.turns(p, s, w) {
		if t.low >= best-margin {
			break
		}
		v := m.acts[t.act].spend(w, sum(w)) + p.step*float64(m.acts[t.act].size)
		for _, l := range m.acts[t.act].leads {
			if mulInto(after, w, l.chance) > 0 {
				v += x.pay(p, s|l.mark, after, math.Inf(1))
			}
		}
		if v < best-margin {
			best, act = v, t.act
		}
	}
	if act < 0 {
		return &plan{act: -1, end: end}
	}
	return m.doing(act, w, func(lead int, after []float64) *plan {
		return x.paid(p, s|m.acts[act].leads[lead].mark, after)
	})
}
