package faults

import (
	"cmp"
	"math"
	"slices"
)

// explain makes a key of a plan, computes what it costs, and says of each step what
// it rests on.
func (m *model) explain(p *plan, v valued) *Key {
	k := &Key{Problem: m.problem}
	k.Start = k.step(m, p, 0, m.prior, v)
	k.Cost = k.Start.Cost
	return k
}

// step makes the step of a plan, and all that follow it.
func (k *Key) step(m *model, p *plan, s state, w []float64, v valued) *Step {
	mass := sum(w)
	index := p.end
	if p.act >= 0 {
		index = m.acts[p.act].index
	}
	act := &m.problem.Acts[index]
	made := &Step{Act: index, Chance: mass, Belief: make([]float64, m.causes), Next: make([]*Step, len(act.Outcomes))}
	for c, x := range w {
		made.Belief[c] = x / mass
	}
	made.Cost = act.expected(made.Belief)
	made.Options = m.options(s, w, made.Belief, index, v)
	if p.act < 0 {
		return made
	}
	k.Steps = append(k.Steps, made)
	made.Number = len(k.Steps)
	made.Count = 1
	for i, lead := range m.acts[p.act].leads {
		if p.next[i] == nil {
			continue
		}
		after := make([]float64, m.causes)
		share := mulInto(after, w, lead.chance) / mass
		if share == 0 {
			continue
		}
		next := k.step(m, p.next[i], s|lead.mark, after, v)
		made.Cost += share * next.Cost
		made.Count += share * next.Count
		made.Next[lead.outcome] = next
	}
	return made
}

// options are the prospects of a state, given that it was come to; the act that is
// done first.
func (m *model) options(s state, w, belief []float64, done int, v valued) []Option {
	list := m.prospects(s, w, v)
	mass := sum(w)
	options := make([]Option, len(list))
	for i, p := range list {
		options[i] = Option{Act: p.index, Low: p.low / mass, High: p.high / mass, Bits: m.problem.Acts[p.index].bits(belief)}
	}
	for i := range options {
		o := &options[i]
		other := math.Inf(1)
		for j := range options {
			if j != i {
				other = math.Min(other, options[j].High)
			}
		}
		o.Worth = other - (o.High - m.problem.Acts[o.Act].expected(belief))
	}
	slices.SortStableFunc(options, func(a, b Option) int {
		switch {
		case a.Act == done:
			return -1
		case b.Act == done:
			return 1
		}
		return cmp.Compare(a.High, b.High)
	})
	return options
}

// expected is what the act itself costs, given what is believed.
func (a *Act) expected(belief []float64) float64 {
	if len(a.Cost) == 1 {
		return a.Cost[0]
	}
	return dot(belief, a.Cost)
}
