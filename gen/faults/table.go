package faults

import "math"

// induction values every state of a model, the last first: what follows a state
// always stands after it. It is Bellman's equation
//
//	V(s) = min over acts a not done in s of  Σ_c w_c(s)·cost_a(c) + Σ_o V(s with a → o)
//
// with w(s) the chance of each cause together with what is known in s, so that V is
// weighted by the chance of coming to s, and no division is needed. It may be run
// again with other weights to begin with.
type induction struct {
	model  *model
	stride []int       // how far the leads of an act lie apart
	digit  []int       // the state that is valued: for each act 0 or its lead
	weight [][]float64 // after the evidence of the acts from the last down to each
	value  []float64   // by state
}

// states counts the states of a model: for each act its leads, and not having been done.
func (m *model) states() float64 {
	n := 1.0
	for i := range m.acts {
		n *= float64(len(m.acts[i].leads) + 1)
	}
	return n
}

func newInduction(m *model) *induction {
	t := &induction{model: m, digit: make([]int, len(m.acts)), value: make([]float64, int(m.states()))}
	size := 1
	for i := range m.acts {
		t.stride = append(t.stride, size)
		size *= len(m.acts[i].leads) + 1
	}
	for range len(m.acts) + 1 {
		t.weight = append(t.weight, make([]float64, m.causes))
	}
	return t
}

// run values all states for the weights that the causes begin with.
func (t *induction) run(weights []float64) {
	acts := t.model.acts
	copy(t.weight[len(acts)], weights)
	for i := range t.digit {
		t.digit[i] = len(acts[i].leads)
	}
	t.weigh(len(acts) - 1)
	for at := len(t.value) - 1; at >= 0; at-- {
		t.value[at] = t.least(at)
		i := 0
		for i < len(acts) && t.digit[i] == 0 {
			t.digit[i] = len(acts[i].leads)
			i++
		}
		if i < len(acts) {
			t.digit[i]--
			t.weigh(i)
		}
	}
}

// weigh brings the weights up to date with the digits from an act down.
func (t *induction) weigh(from int) {
	for i := from; i >= 0; i-- {
		if t.digit[i] == 0 {
			copy(t.weight[i], t.weight[i+1])
		} else {
			mulInto(t.weight[i], t.weight[i+1], t.model.acts[i].leads[t.digit[i]-1].chance)
		}
	}
}

// least is the value of the state at a place, from those after it.
func (t *induction) least(at int) float64 {
	w := t.weight[0]
	mass := sum(w)
	if mass == 0 {
		return 0
	}
	_, best := t.model.end(w)
	for i, d := range t.digit {
		if d != 0 {
			continue
		}
		a := &t.model.acts[i]
		v := a.spend(w, mass)
		for lead := 1; lead <= len(a.leads); lead++ {
			v += t.value[at+lead*t.stride[i]]
		}
		best = math.Min(best, v)
	}
	return best
}

// bounds gives the value of a state, which is known exactly.
func (t *induction) bounds(s state, _ []float64) (low, high float64) {
	at := 0
	for i := range t.model.acts {
		at += t.model.acts[i].lead(s) * t.stride[i]
	}
	return t.value[at], t.value[at]
}

// first is the weight of a cause in the state at a place, if it began with 1.
func (t *induction) first(at, cause int) float64 {
	w := 1.0
	for i, stride := range t.stride {
		leads := t.model.acts[i].leads
		if lead := at / stride % (len(leads) + 1); lead > 0 {
			w *= leads[lead-1].chance[cause]
		}
	}
	return w
}
