package faults

import (
	"fmt"
	"math"
)

// Rule is a rule of thumb, for comparison with the best key.
type Rule int

const (
	// ChancePerCost makes no checks. It tries the remedy next that is most likely to
	// end the matter for what it costs, and ends where that is cheaper. With one
	// fault, and remedies that each cure one cause for certain, it is the best order
	// (Kadane and Simon 1977).
	ChancePerCost Rule = iota
	// MostInformation makes the check that tells most for what it costs until the
	// cause is certain or no check tells anything, and then goes by ChancePerCost.
	MostInformation
	// OneAhead does next what would be best if no check were made after it (as
	// Heckerman, Breese and Rommelse 1995 do).
	OneAhead
)

// Cost is what is to be expected of following the rule, in the problem's unit.
func (r Rule) Cost(p *Problem) (float64, error) {
	m, err := newModel(p)
	if err != nil {
		return 0, err
	}
	next := map[Rule]func(*model, state, []float64) int{
		ChancePerCost: chancePerCost, MostInformation: mostInformation, OneAhead: oneAhead}[r]
	if next == nil {
		return 0, fmt.Errorf("there is no rule %d", r)
	}
	return m.following(next, 0, m.prior), nil
}

// following is what it costs, weighted, to do in each state what next says: an index
// in model.acts, or -1 for the end.
func (m *model) following(next func(*model, state, []float64) int, s state, w []float64) float64 {
	i := next(m, s, w)
	if i < 0 {
		index, _ := m.end(w)
		return dot(w, m.problem.costs(index))
	}
	a := &m.acts[i]
	total := dot(w, m.problem.costs(a.index))
	for _, l := range a.leads {
		after := make([]float64, len(w))
		if mulInto(after, w, l.chance) > 0 {
			total += m.following(next, s|l.mark, after)
		}
	}
	return total
}

// costs are an act's costs given each cause.
func (p *Problem) costs(act int) []float64 {
	list := make([]float64, len(p.Causes))
	for c := range list {
		list[c] = p.Acts[act].cost(c)
	}
	return list
}

func chancePerCost(m *model, s state, w []float64) int {
	_, first := m.inOrder(s, w, 0)
	return first
}

func mostInformation(m *model, s state, w []float64) int {
	mass := sum(w)
	belief := make([]float64, len(w))
	for c, x := range w {
		belief[c] = x / mass
	}
	best, most := -1, 0.0
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) || !a.free() {
			continue
		}
		bits := m.problem.Acts[a.index].bits(belief)
		if bits < 1e-9 {
			continue
		}
		if rate := bits / dot(belief, a.cost); rate > most*(1+1e-9) {
			best, most = i, rate
		}
	}
	if best >= 0 {
		return best
	}
	return chancePerCost(m, s, w)
}

func oneAhead(m *model, s state, w []float64) int {
	cost, best := m.inOrder(s, w, 0)
	mass := sum(w)
	after := make([]float64, len(w))
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) {
			continue
		}
		v := a.spend(w, mass)
		for _, l := range a.leads {
			if mulInto(after, w, l.chance) > 0 {
				rest, _ := m.inOrder(s|l.mark, after, 0)
				v += rest
			}
		}
		if v < cost-tieShare*m.scale*math.Abs(mass) {
			cost, best = v, i
		}
	}
	return best
}
