package faults

import "math"

// prune cuts a plan down to some two-way steps, ending in the places where that costs
// least.
func (m *model) prune(p *plan, w []float64, steps int) *plan {
	pr := pruning{model: m, costs: map[*plan][]float64{}}
	pr.within(p, w, steps)
	return pr.cut(p, w, steps)
}

// pruning holds the least costs of parts of a plan, weighted, by the steps that they
// may have. A list ends where more steps gain nothing, since the part has no more.
type pruning struct {
	model *model
	costs map[*plan][]float64
}

// within fills in the costs for 0 to some steps.
func (pr *pruning) within(p *plan, w []float64, steps int) []float64 {
	m := pr.model
	_, end := m.end(w)
	if p.act < 0 || m.acts[p.act].size > steps {
		pr.costs[p] = []float64{end}
		return pr.costs[p]
	}
	a := &m.acts[p.act]
	together := []float64{0} // of the leads so far
	after := make([]float64, len(w))
	for i, lead := range a.leads {
		if mulInto(after, w, lead.chance) > 0 {
			together, _ = share(together, pr.lead(p, i, after, steps-a.size), steps-a.size)
		}
	}
	spend := a.spend(w, sum(w))
	costs := make([]float64, a.size+len(together))
	for n := range costs {
		costs[n] = end
	}
	for n, c := range together {
		costs[n+a.size] = math.Min(end, spend+c)
	}
	pr.costs[p] = costs
	return costs
}

// lead gives the costs of what follows a lead of a plan; where the plan has nothing,
// that is the end.
func (pr *pruning) lead(p *plan, lead int, w []float64, steps int) []float64 {
	if p.next[lead] == nil {
		end, _ := pr.model.end(w)
		p.next[lead] = &plan{act: -1, end: end}
	}
	return pr.within(p.next[lead], w, steps)
}

// share gives the least costs of two parts together within 0 to some steps, and how
// many of them the second part has.
func share(first, second []float64, steps int) (costs []float64, ofSecond []int) {
	n := min(steps+1, len(first)+len(second)-1)
	costs, ofSecond = make([]float64, n), make([]int, n)
	for n := range costs {
		costs[n] = math.Inf(1)
		for k := max(0, n-len(first)+1); k < len(second) && k <= n; k++ {
			if c := first[n-k] + second[k]; c < costs[n] {
				costs[n], ofSecond[n] = c, k
			}
		}
	}
	return costs, ofSecond
}

// upTo is the value of such a list for some steps.
func upTo[T any](list []T, steps int) T { return list[min(steps, len(list)-1)] }

// cut makes the plan that the costs are of.
func (pr *pruning) cut(p *plan, w []float64, steps int) *plan {
	m := pr.model
	end, cost := m.end(w)
	if p.act < 0 || upTo(pr.costs[p], steps) >= cost {
		return &plan{act: -1, end: end}
	}
	a := &m.acts[p.act]
	made := &plan{act: p.act, next: make([]*plan, len(a.leads))}
	left := steps - a.size
	// The leads take their shares from the last to the first.
	var shares [][]int
	together := []float64{0}
	for i := range a.leads {
		var ofThis []int
		if costs := pr.costs[p.next[i]]; costs != nil {
			together, ofThis = share(together, costs, left)
		}
		shares = append(shares, ofThis)
	}
	for i := len(a.leads) - 1; i >= 0; i-- {
		after := make([]float64, len(w))
		if mulInto(after, w, a.leads[i].chance) == 0 {
			continue
		}
		mine := upTo(shares[i], left)
		made.next[i] = pr.cut(p.next[i], after, mine)
		left -= mine
	}
	return made
}
