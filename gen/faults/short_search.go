package faults

import "math"

// least is a lower bound on the cost of a state within some steps, from the values and
// from every price.
func (x *shortening) least(s state, w []float64, steps int) float64 {
	_, end := x.model.end(w)
	if steps == 0 {
		return end
	}
	low := x.lower(s, w)
	v := low
	for _, p := range x.prices {
		if paid, ok := x.known(p, s, low, end); ok {
			v = math.Max(v, paid-p.step*float64(steps))
		}
	}
	return math.Min(v, end)
}

// within finds the least cost of a state within some steps, if it is below a limit.
// Otherwise, or if too many states were looked into, it gives a lower bound.
func (x *shortening) within(s state, w []float64, steps int, limit float64) solution {
	m := x.model
	_, end := m.end(w)
	if steps == 0 {
		return solution{cost: end, exact: true, act: -1}
	}
	at := budget{s, steps}
	if known, ok := x.solved[at]; ok && (known.exact || known.cost >= limit) {
		return known
	}
	if low := x.least(s, w, steps); low >= limit || x.left <= 0 {
		return solution{cost: low}
	}
	x.left--
	best := solution{cost: end, exact: true, act: -1}
	bound := math.Inf(1) // on acts that were not looked into to the end
	mass := sum(w)
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) || a.size > steps {
			continue
		}
		spend := a.spend(w, mass)
		v := x.share(a, s, w, steps-a.size, math.Min(best.cost, limit)-spend)
		v.cost += spend
		switch {
		case !v.exact:
			bound = math.Min(bound, v.cost)
		case v.cost < best.cost-tieShare*m.scale*mass:
			v.act = i
			best = v
		}
	}
	if bound < best.cost {
		best = solution{cost: bound}
	}
	x.solved[at] = best
	return best
}

// share parts the steps among the leads of an act in the best way, if that costs less
// than the limit; otherwise it gives a lower bound.
func (x *shortening) share(a *modelAct, s state, w []float64, steps int, limit float64) solution {
	type lead struct {
		state state
		w     []float64
		low   []float64 // by steps
	}
	var leads []lead
	var at []int // the lead of the act
	for i, l := range a.leads {
		after := make([]float64, len(w))
		if mulInto(after, w, l.chance) > 0 {
			made := lead{state: s | l.mark, w: after}
			for n := range steps + 1 {
				made.low = append(made.low, x.least(made.state, after, n))
			}
			leads = append(leads, made)
			at = append(at, i)
		}
	}
	// rest[i][n] is a lower bound on the leads from i on within n steps together.
	rest := make([][]float64, len(leads)+1)
	rest[len(leads)] = make([]float64, steps+1)
	for i := len(leads) - 1; i >= 0; i-- {
		rest[i] = make([]float64, steps+1)
		for n := range rest[i] {
			rest[i][n] = math.Inf(1)
			for k := range n + 1 {
				rest[i][n] = math.Min(rest[i][n], leads[i].low[k]+rest[i+1][n-k])
			}
		}
	}
	best := solution{cost: math.Inf(1)}
	bound := math.Inf(1)
	shares := make([]int, len(a.leads))
	var part func(i, left int, cost float64, exact bool)
	part = func(i, left int, cost float64, exact bool) {
		if i == len(leads) {
			switch {
			case !exact:
				bound = math.Min(bound, cost)
			case cost < best.cost:
				best = solution{cost: cost, exact: true, steps: append([]int(nil), shares...)}
			}
			return
		}
		for k := left; k >= 0; k-- {
			if i == len(leads)-1 && k < left {
				return // the last lead takes all that is left
			}
			under := math.Min(best.cost, limit)
			if low := cost + leads[i].low[k] + rest[i+1][left-k]; low >= under {
				bound = math.Min(bound, low)
				continue
			}
			v := x.within(leads[i].state, leads[i].w, k, under-cost-rest[i+1][left-k])
			shares[at[i]] = k
			if !v.exact && cost+v.cost+rest[i+1][left-k] >= under {
				bound = math.Min(bound, cost+v.cost+rest[i+1][left-k])
				continue
			}
			part(i+1, left-k, cost+v.cost, exact && v.exact)
		}
	}
	part(0, steps, 0, true)
	if best.exact && best.cost <= bound {
		return best
	}
	return solution{cost: math.Min(best.cost, bound)}
}

// plan follows the solutions down.
func (x *shortening) plan(s state, w []float64, steps int) *plan {
	m := x.model
	known, ok := x.solved[budget{s, steps}]
	if !ok || known.act < 0 {
		end, _ := m.end(w)
		return &plan{act: -1, end: end}
	}
	return m.doing(known.act, w, func(lead int, after []float64) *plan {
		return x.plan(s|m.acts[known.act].leads[lead].mark, after, known.steps[lead])
	})
}
