package faults

import "math"

// valued knows bounds on the least expected cost from a state on, weighted by the
// chance of coming to it. w holds the weights of the state.
type valued interface {
	bounds(s state, w []float64) (low, high float64)
}

// plan is what to do in a state, and what after each lead of it.
type plan struct {
	act  int     // index in model.acts; -1 for the end
	end  int     // with act -1: index in Problem.Acts
	next []*plan // by lead; nil where a lead cannot happen
}

// prospect is one act in a state, with bounds on the expected cost if it is done next
// and the best follows.
type prospect struct {
	act       int // index in model.acts; -1 for an end
	index     int // in Problem.Acts
	low, high float64
}

// prospects lists what may be done in a state: checks and remedies that were not done
// yet in the order of the problem, then the ends.
func (m *model) prospects(s state, w []float64, v valued) []prospect {
	var list []prospect
	mass := sum(w)
	after := make([]float64, m.causes)
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) {
			continue
		}
		p := prospect{act: i, index: a.index, low: a.spend(w, mass)}
		p.high = p.low
		for _, lead := range a.leads {
			if mulInto(after, w, lead.chance) > 0 {
				low, high := v.bounds(s|lead.mark, after)
				p.low += low
				p.high += high
			}
		}
		list = append(list, p)
	}
	for _, e := range m.ends {
		cost := dot(w, e.cost)
		list = append(list, prospect{act: -1, index: e.index, low: cost, high: cost})
	}
	return list
}

// best picks the prospect of least cost; of equals, a check before a remedy, then the
// one that stands first.
func (m *model) best(list []prospect, mass float64) prospect {
	best := prospect{high: math.Inf(1)}
	margin := tieShare * m.scale * mass
	for _, kind := range []Kind{Check, Remedy, End} {
		for _, p := range list {
			if m.problem.Acts[p.index].Kind() == kind && p.high < best.high-margin {
				best = p
			}
		}
	}
	return best
}

// plan follows the values down from a state.
func (m *model) plan(s state, w []float64, v valued) *plan {
	chosen := m.best(m.prospects(s, w, v), sum(w))
	if chosen.act < 0 {
		return &plan{act: -1, end: chosen.index}
	}
	return m.doing(chosen.act, w, func(lead int, after []float64) *plan {
		return m.plan(s|m.acts[chosen.act].leads[lead].mark, after, v)
	})
}

// doing is the plan that does an act with these weights, and goes on after each lead that
// can happen as follow says.
func (m *model) doing(act int, w []float64, follow func(lead int, after []float64) *plan) *plan {
	leads := m.acts[act].leads
	made := &plan{act: act, next: make([]*plan, len(leads))}
	for i, lead := range leads {
		after := make([]float64, m.causes)
		if mulInto(after, w, lead.chance) > 0 {
			made.next[i] = follow(i, after)
		}
	}
	return made
}

// mulInto puts the products into to, and returns their sum.
func mulInto(to, w, chance []float64) float64 {
	total := 0.0
	for c, v := range w {
		to[c] = v * chance[c]
		total += to[c]
	}
	return total
}

// cost is what a plan costs, weighted, if it is followed with these weights.
func (m *model) cost(p *plan, w []float64) float64 {
	if p.act < 0 {
		return m.endCost(p.end, w)
	}
	a := &m.acts[p.act]
	total := a.spend(w, sum(w))
	after := make([]float64, m.causes)
	for i, lead := range a.leads {
		if p.next[i] != nil && mulInto(after, w, lead.chance) > 0 {
			total += m.cost(p.next[i], after)
		}
	}
	return total
}

// endCost is what an end costs, weighted.
func (m *model) endCost(index int, w []float64) float64 {
	for _, e := range m.ends {
		if e.index == index {
			return dot(w, e.cost)
		}
	}
	return math.Inf(1)
}

// trim leaves out checks that do not pay: where what follows one of the results would
// cost no more without having checked.
func (m *model) trim(p *plan, w []float64) *plan {
	if p.act < 0 {
		return p
	}
	a := &m.acts[p.act]
	for i, lead := range a.leads {
		after := make([]float64, m.causes)
		if p.next[i] != nil && mulInto(after, w, lead.chance) > 0 {
			p.next[i] = m.trim(p.next[i], after)
		}
	}
	best, cost := p, m.cost(p, w)
	for _, next := range p.next {
		if next == nil {
			continue
		}
		if !m.covers(next, w) {
			continue
		}
		if c := m.cost(next, w); c < cost {
			best, cost = next, c
		}
	}
	return best
}

// covers says that a plan knows what to do after everything that can happen.
func (m *model) covers(p *plan, w []float64) bool {
	if p.act < 0 {
		return true
	}
	after := make([]float64, m.causes)
	for i, lead := range m.acts[p.act].leads {
		if mulInto(after, w, lead.chance) > 0 && (p.next[i] == nil || !m.covers(p.next[i], after)) {
			return false
		}
	}
	return true
}
