package faults

import (
	"math"
	"math/bits"
	"slices"
)

// state is what was done so far and what came of it: for each act a field of bits,
// 0 while it was not done, and else the number of the lead that was met, from 1. What
// is known depends on nothing else, not on the order.
type state uint64

// model is a problem made ready for computing.
type model struct {
	problem *Problem
	causes  int
	prior   []float64 // sums to 1
	acts    []modelAct
	ends    []modelEnd
	// step is added to the cost of every act, so that of two keys that cost the same
	// the one with fewer acts is better.
	step float64
	// scale is the largest cost of an act.
	scale float64
}

// modelAct is a check or a remedy.
type modelAct struct {
	index int       // in Problem.Acts
	cost  []float64 // given each cause
	even  bool      // the cost is the same given any cause
	size  int       // the two-way steps that it takes on paper: its outcomes, less one, and at least one
	stop  []float64 // the chance that it ends the matter, given each cause
	leads []modelLead
	shift uint
	field state // its bits, shifted
}

// modelLead is an outcome after which something remains to be done.
type modelLead struct {
	outcome int
	chance  []float64
	mark    state // the bits to set
}

// modelEnd is an act that always ends the matter.
type modelEnd struct {
	index int
	cost  []float64
}

// stepShare and tieShare are the parts of the largest cost that an act costs on top,
// and within which two costs are the same. The first is far above the second, and
// the second far above rounding.
const (
	stepShare = 1e-9
	tieShare  = 1e-12
)

// newModel checks a problem and makes it ready.
func newModel(p *Problem) (*model, error) {
	if err := p.Validate(); err != nil {
		return nil, err
	}
	m := &model{problem: p, causes: len(p.Causes)}
	total := 0.0
	for _, c := range p.Causes {
		total += c.Weight
	}
	for _, c := range p.Causes {
		m.prior = append(m.prior, c.Weight/total)
	}
	for i := range p.Acts {
		for c := range p.Causes {
			m.scale = max(m.scale, math.Abs(p.Acts[i].cost(c)))
		}
	}
	if m.scale == 0 {
		m.scale = 1
	}
	m.step = stepShare * m.scale
	shift := uint(0)
	for i := range p.Acts {
		if a := &p.Acts[i]; a.Kind() == End {
			m.ends = append(m.ends, modelEnd{index: i, cost: m.costs(a)})
		} else {
			m.acts = append(m.acts, m.act(i, shift))
			shift += uint(bits.Len(uint(a.leads())))
		}
	}
	return m, nil
}

// costs are an act's costs given each cause, with the step.
func (m *model) costs(a *Act) []float64 {
	list := make([]float64, m.causes)
	for c := range list {
		list[c] = a.cost(c) + m.step
	}
	return list
}

// act makes one check or remedy ready. Chances are made to sum to 1 exactly.
func (m *model) act(index int, shift uint) modelAct {
	a := &m.problem.Acts[index]
	made := modelAct{index: index, cost: m.costs(a), stop: make([]float64, m.causes), shift: shift}
	made.even, made.size = len(a.Cost) == 1, max(1, len(a.Outcomes)-1)
	made.field = (1<<bits.Len(uint(a.leads())) - 1) << shift
	sum := make([]float64, m.causes)
	for _, o := range a.Outcomes {
		for c, q := range o.Chance {
			sum[c] += q
		}
	}
	for i, o := range a.Outcomes {
		chance := make([]float64, m.causes)
		for c, q := range o.Chance {
			chance[c] = q / sum[c]
			if o.Ends {
				made.stop[c] += chance[c]
			}
		}
		if !o.Ends {
			made.leads = append(made.leads, modelLead{outcome: i, chance: chance, mark: state(len(made.leads)+1) << shift})
		}
	}
	return made
}

// spend is what doing the act costs, times the weight.
func (a *modelAct) spend(w []float64, mass float64) float64 {
	if a.even {
		return a.cost[0] * mass
	}
	return dot(w, a.cost)
}

// lead is the number of the lead that was met in a state, from 1; 0 if the act was not done.
func (a *modelAct) lead(s state) int { return int(s & a.field >> a.shift) }

// done says that an act was done in a state.
func (a *modelAct) done(s state) bool { return s&a.field != 0 }

// weights puts into w the chance of each cause together with all that is known: they
// sum to the chance of coming to this state, if its acts are done.
func (m *model) weights(s state, w []float64) {
	copy(w, m.prior)
	for i := range m.acts {
		a := &m.acts[i]
		if lead := a.lead(s); lead > 0 {
			for c, q := range a.leads[lead-1].chance {
				w[c] *= q
			}
		}
	}
}

// end returns the act that ends the matter at the least cost, and that cost times the
// weight.
func (m *model) end(w []float64) (index int, cost float64) {
	cost = math.Inf(1)
	for _, e := range m.ends {
		if v := dot(w, e.cost); v < cost-tieShare*m.scale*sum(w) {
			index, cost = e.index, v
		}
	}
	return index, cost
}

func dot(w, x []float64) float64 {
	s := 0.0
	for c, v := range w {
		s += v * x[c]
	}
	return s
}

func sum(w []float64) float64 {
	s := 0.0
	for _, v := range w {
		s += v
	}
	return s
}

// among is the model with only some of the causes and acts.
func (m *model) among(causes, acts []int) *model {
	only := func(list []float64) []float64 {
		part := make([]float64, len(causes))
		for i, c := range causes {
			part[i] = list[c]
		}
		return part
	}
	small := &model{problem: m.problem, causes: len(causes), step: m.step, scale: m.scale}
	for _, i := range acts {
		a := m.acts[i]
		a.cost, a.stop = only(a.cost), only(a.stop)
		a.leads = slices.Clone(a.leads)
		for l := range a.leads {
			a.leads[l].chance = only(a.leads[l].chance)
		}
		small.acts = append(small.acts, a)
	}
	for _, e := range m.ends {
		small.ends = append(small.ends, modelEnd{index: e.index, cost: only(e.cost)})
	}
	return small
}
