package faults

import "slices"

// inOrder is what it costs, weighted, to make no more checks: remedies by their chance
// to end the matter for what they cost, as things stand in this state, and then the
// end, at the best place for it. first is the act that it begins with, as an index in
// model.acts, -1 for the end. Acts that end nothing, or have several leads, are left
// out.
func (m *model) inOrder(s state, w []float64, price float64) (cost float64, first int) {
	type turn struct {
		act  int
		rate float64
	}
	var room [maxActs]turn
	turns := room[:0]
	mass := sum(w)
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) || len(a.leads) > 1 {
			continue
		}
		if stop := dot(w, a.stop); stop > 0 {
			turns = append(turns, turn{i, (a.spend(w, mass) + price*float64(a.size)) / stop})
		}
	}
	slices.SortStableFunc(turns, func(a, b turn) int {
		switch {
		case a.rate < b.rate:
			return -1
		case a.rate > b.rate:
			return 1
		}
		return 0
	})
	var left [maxCauses]float64
	after := left[:len(w)]
	copy(after, w)
	_, cost = m.end(after)
	first = -1
	spent := 0.0
	for _, t := range turns {
		a := &m.acts[t.act]
		spent += a.spend(after, mass) + price*float64(a.size)
		end := 0.0
		if len(a.leads) > 0 {
			mass = mulInto(after, after, a.leads[0].chance)
			_, end = m.end(after)
		} else {
			mass = 0
		}
		if spent+end < cost {
			cost, first = spent+end, turns[0].act
		}
		if mass == 0 {
			break
		}
	}
	return cost, first
}
