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
// may have.
type pruning struct {
	model *model
	costs map[*plan][]float64
}

// within fills in the costs for 0 to some steps.
func (pr *pruning) within(p *plan, w []float64, steps int) []float64 {
	m := pr.model
	_, end := m.end(w)
	costs := make([]float64, steps+1)
	for n := range costs {
		costs[n] = end
	}
	pr.costs[p] = costs
	if p.act < 0 || m.acts[p.act].size > steps {
		return costs
	}
	a := &m.acts[p.act]
	together := make([]float64, steps-a.size+1) // of the leads so far
	for i, lead := range a.leads {
		after := make([]float64, len(w))
		if mulInto(after, w, lead.chance) > 0 {
			together, _ = share(together, pr.lead(p, i, after, steps-a.size))
		}
	}
	spend := a.spend(w, sum(w))
	for n, c := range together {
		costs[n+a.size] = math.Min(costs[n+a.size], spend+c)
	}
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
func share(first, second []float64) (costs []float64, ofSecond []int) {
	costs, ofSecond = make([]float64, len(first)), make([]int, len(first))
	for n := range first {
		costs[n] = math.Inf(1)
		for k := range n + 1 {
			if c := first[n-k] + second[k]; c < costs[n] {
				costs[n], ofSecond[n] = c, k
			}
		}
	}
	return costs, ofSecond
}

// cut makes the plan that the costs are of.
func (pr *pruning) cut(p *plan, w []float64, steps int) *plan {
	m := pr.model
	end, cost := m.end(w)
	if p.act < 0 || pr.costs[p][steps] >= cost {
		return &plan{act: -1, end: end}
	}
	a := &m.acts[p.act]
	made := &plan{act: p.act, next: make([]*plan, len(a.leads))}
	// The leads take their shares from the last to the first.
	var sums [][]float64
	together := make([]float64, steps-a.size+1)
	for i := range a.leads {
		sums = append(sums, together)
		if costs := pr.costs[p.next[i]]; costs != nil {
			together, _ = share(together, costs[:steps-a.size+1])
		}
	}
	left := steps - a.size
	for i := len(a.leads) - 1; i >= 0; i-- {
		after := make([]float64, len(w))
		if mulInto(after, w, a.leads[i].chance) == 0 {
			continue
		}
		_, ofThis := share(sums[i], pr.costs[p.next[i]][:steps-a.size+1])
		made.next[i] = pr.cut(p.next[i], after, ofThis[left])
		left -= ofThis[left]
	}
	return made
}
