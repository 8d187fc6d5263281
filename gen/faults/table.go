package faults

import "math"

// table holds the least expected cost from every state on, weighted by the chance of
// coming to the state, by backward induction: Bellman's equation
//
//	V(s) = min over acts a not done in s of  Σ_c w_c(s)·cost_a(c) + Σ_o V(s with a → o)
//
// with w(s) the chance of each cause together with what is known in s, so that no
// division is needed. Each act may cost a price on top, whatever the chance of coming
// to it: see Short.
type table struct {
	model  *model
	price  float64
	stride []int
	value  []float64
}

// states counts the states of a problem: for each act its leads and not having been done.
func (m *model) states() float64 {
	n := 1.0
	for i := range m.acts {
		n *= float64(len(m.acts[i].leads) + 1)
	}
	return n
}

// newTable computes all states, the last first: what follows a state always stands
// after it.
func newTable(m *model, price float64) *table {
	t := &table{model: m, price: price, value: make([]float64, int(m.states()))}
	size := 1
	for i := range m.acts {
		t.stride = append(t.stride, size)
		size *= len(m.acts[i].leads) + 1
	}
	// The state as a number with a digit for each act, and the weights after the
	// evidence of the acts from the last down to each.
	digit := make([]int, len(m.acts))
	weights := make([][]float64, len(m.acts)+1)
	for i := range weights {
		weights[i] = make([]float64, m.causes)
	}
	copy(weights[len(m.acts)], m.prior)
	weigh := func(from int) {
		for i := from; i >= 0; i-- {
			if digit[i] == 0 {
				copy(weights[i], weights[i+1])
				continue
			}
			chance := m.acts[i].leads[digit[i]-1].chance
			for c, w := range weights[i+1] {
				weights[i][c] = w * chance[c]
			}
		}
	}
	for i := range digit {
		digit[i] = len(m.acts[i].leads)
	}
	weigh(len(m.acts) - 1)
	for at := size - 1; ; at-- {
		t.value[at] = t.least(at, digit, weights[0])
		i := 0
		for i < len(digit) && digit[i] == 0 {
			digit[i] = len(m.acts[i].leads)
			i++
		}
		if i == len(digit) {
			return t
		}
		digit[i]--
		weigh(i)
	}
}

// least is the value of the state at a place, from those after it.
func (t *table) least(at int, digit []int, w []float64) float64 {
	mass := sum(w)
	if mass == 0 {
		return 0
	}
	_, best := t.model.end(w)
	for i, d := range digit {
		if d != 0 {
			continue
		}
		a := &t.model.acts[i]
		v := a.spend(w, mass) + t.price*float64(a.size)
		for lead := 1; lead <= len(a.leads); lead++ {
			v += t.value[at+lead*t.stride[i]]
		}
		best = math.Min(best, v)
	}
	return best
}

// bounds gives the value of a state, which is known exactly.
func (t *table) bounds(s state, _ []float64) (low, high float64) {
	at := 0
	for i := range t.model.acts {
		a := &t.model.acts[i]
		at += int(s&a.field>>a.shift) * t.stride[i]
	}
	return t.value[at], t.value[at]
}
