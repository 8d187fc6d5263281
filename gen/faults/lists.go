package faults

import "math"

// Lists is a key in a form that can be read on a wall: first some checks, and after their
// last answers a list of at most so many remedies, to be tried in turn until the fault is
// gone. Where all have failed the matter ends, at Help. The checks have so many lines
// together, each one for itself and one for each outcome.
//
// Among the trees of checks it is the best one for lists whose remedies stand by their
// chance to end the matter for what they cost, as things then stand: for a cause that
// each remedy cures for certain or not at all that is the best order, else a good one.
// Its Loss is against the best key of any form.
func (s *Solver) Lists(lines, remedies int) *Key {
	x := &listing{model: s.model, longest: remedies, known: map[budget]checked{}}
	k := s.model.explain(x.plan(0, s.model.prior, max(0, lines)), s.values)
	k.Least = math.Min(k.Cost, s.least)
	return k
}

// listing looks for the best tree of checks with lists at its ends.
type listing struct {
	model   *model
	longest int // list
	known   map[budget]checked
}

// checked is the least cost of a state within some checks.
type checked struct {
	cost  float64
	act   int   // the check; -1 for a list
	lines []int // by lead: how many are left for it
}

// within finds the least cost of a state within some lines.
func (x *listing) within(s state, w []float64, lines int) checked {
	at := budget{s, lines}
	if found, ok := x.known[at]; ok {
		return found
	}
	m := x.model
	best := checked{act: -1}
	best.cost, _ = x.list(s, w)
	margin := tieShare * m.scale * sum(w)
	for i := range m.acts {
		a := &m.acts[i]
		left := lines - 1 - len(a.leads)
		if left < 0 || a.done(s) || len(a.leads) < 2 {
			continue
		}
		made := x.check(a, s, w, left)
		if made.cost < best.cost-margin {
			made.act = i
			best = made
		}
	}
	x.known[at] = best
	return best
}

// check is what it costs to make a check and share the lines that are left among its
// leads in the best way.
func (x *listing) check(a *modelAct, s state, w []float64, left int) checked {
	together := make([]float64, left+1)
	var ofThis [][]int
	for _, l := range a.leads {
		after := make([]float64, len(w))
		costs := make([]float64, left+1)
		if mulInto(after, w, l.chance) > 0 {
			for n := range costs {
				costs[n] = x.within(s|l.mark, after, n).cost
			}
		}
		var of []int
		together, of = share(together, costs, left)
		ofThis = append(ofThis, of)
	}
	made := checked{cost: a.spend(w, sum(w)) + together[left], lines: make([]int, len(a.leads))}
	for i := len(a.leads) - 1; i >= 0; i-- {
		made.lines[i] = ofThis[i][left]
		left -= made.lines[i]
	}
	return made
}

// list orders remedies by their chance to end the matter for what they cost, each as
// things stand once those before it have failed, up to the place where it is best to end.
func (x *listing) list(s state, w []float64) (cost float64, remedies []int) {
	m := x.model
	after := append([]float64(nil), w...)
	_, cost = m.end(after)
	spent, length := 0.0, 0
	for range x.longest {
		next, rate := -1, math.Inf(1)
		mass := sum(after)
		for i := range m.acts {
			a := &m.acts[i]
			if a.done(s) || len(a.leads) > 1 {
				continue
			}
			if stop := dot(after, a.stop); stop > 0 && a.spend(after, mass)/stop < rate {
				next, rate = i, a.spend(after, mass)/stop
			}
		}
		if next < 0 {
			break
		}
		a := &m.acts[next]
		remedies = append(remedies, next)
		spent += a.spend(after, mass)
		end := 0.0
		if len(a.leads) == 0 || mulInto(after, after, a.leads[0].chance) == 0 {
			clear(after)
		} else {
			s |= a.leads[0].mark
			_, end = m.end(after)
		}
		if spent+end < cost {
			cost, length = spent+end, len(remedies)
		}
		if sum(after) == 0 {
			break
		}
	}
	return cost, remedies[:length]
}

// plan follows what was found down.
func (x *listing) plan(s state, w []float64, lines int) *plan {
	m := x.model
	found := x.within(s, w, lines)
	if found.act < 0 {
		_, remedies := x.list(s, w)
		return x.tried(w, remedies)
	}
	return m.doing(found.act, w, func(lead int, after []float64) *plan {
		return x.plan(s|m.acts[found.act].leads[lead].mark, after, found.lines[lead])
	})
}

// tried is the plan that tries remedies in turn, and then ends.
func (x *listing) tried(w []float64, remedies []int) *plan {
	if len(remedies) == 0 {
		end, _ := x.model.end(w)
		return &plan{act: -1, end: end}
	}
	return x.model.doing(remedies[0], w, func(_ int, after []float64) *plan { return x.tried(after, remedies[1:]) })
}
