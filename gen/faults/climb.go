package faults

import "math"

// climb betters a plan of at most some steps until no act can be changed with gain: in
// each place of it every act is tried, followed on each lead by what stood there
// before, by what followed that, or by remedies in order, cut down to the steps that
// there are. It begins once with each act. It finds no best plan for certain, but a good
// one, where not all states are valued.
func (m *model) climb(p *plan, steps int) *plan {
	return (&climbing{m, map[state]float64{}}).from(p, steps)
}

// climbing is a model with what climbing asked for already.
type climbing struct {
	*model
	ordered map[state]float64 // what remedies in order cost
}

// from betters a plan, and what it becomes with each act for its first.
func (m *climbing) from(p *plan, steps int) *plan {
	best := m.untilBest(p, steps, m.better)
	cost := m.cost(best, m.prior)
	for i := range m.acts {
		if m.acts[i].size > steps {
			continue
		}
		made := m.untilBest(m.begin(i, best, 0, m.prior, steps), steps, m.below)
		made = m.untilBest(made, steps, m.better)
		if c := m.cost(made, m.prior); c < cost-tieShare*m.scale {
			best, cost = made, c
		}
	}
	return best
}

// untilBest betters a plan until that gains nothing more.
func (m *climbing) untilBest(p *plan, steps int, better func(p *plan, s state, w []float64, steps int) *plan) *plan {
	cost := m.cost(p, m.prior)
	for {
		p = better(p, 0, m.prior, steps)
		now := m.cost(p, m.prior)
		if now > cost-tieShare*m.scale {
			return p
		}
		cost = now
	}
}

// better tries every act in the place of a plan's first, and then in what follows.
func (m *climbing) better(p *plan, s state, w []float64, steps int) *plan {
	best := m.prune(p, w, steps)
	cost := m.cost(best, w)
	margin := tieShare * m.scale * sum(w)
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(s) || a.size > steps || m.atLeast(i, p, s, w) >= cost-margin {
			continue
		}
		made := m.begin(i, p, s, w, steps)
		if c := m.cost(made, w); c < cost-margin {
			best, cost = made, c
		}
	}
	return m.below(best, s, w, steps)
}

// below betters what follows a plan's first act. Steps that are left over go to the
// leads in turn.
func (m *climbing) below(p *plan, s state, w []float64, steps int) *plan {
	if p.act < 0 {
		return p
	}
	left := steps - m.size(p)
	for i, l := range m.acts[p.act].leads {
		after := make([]float64, len(w))
		if p.next[i] == nil || mulInto(after, w, l.chance) == 0 {
			continue
		}
		had := m.size(p.next[i])
		p.next[i] = m.better(p.next[i], s|l.mark, after, had+left)
		left -= m.size(p.next[i]) - had
	}
	return p
}

// begin is a plan that begins with an act and goes on with parts of another plan.
func (m *climbing) begin(act int, p *plan, s state, w []float64, steps int) *plan {
	a := &m.acts[act]
	left := steps - a.size
	parts := p.withFollowing()
	made := &plan{act: act, next: make([]*plan, len(a.leads))}
	var shares [][]int // by lead: of it, where it and those before it share the steps
	var leads []leadParts
	together := []float64{0}
	for i, l := range a.leads {
		after := make([]float64, len(w))
		var one leadParts
		var ofThis []int
		if mulInto(after, w, l.chance) > 0 {
			one = m.parts(append(parts, m.inOrderPlan(s|l.mark, after)), act, i, after, left)
			together, ofThis = share(together, one.costs, left)
		}
		shares, leads = append(shares, ofThis), append(leads, one)
	}
	for i := len(a.leads) - 1; i >= 0; i-- {
		if leads[i].costs == nil {
			continue
		}
		mine := upTo(shares[i], left)
		made.next[i] = leads[i].cut(mine)
		left -= mine
	}
	return made
}

// withFollowing lists a plan and what follows its first act.
func (p *plan) withFollowing() []*plan { return append([]*plan{p}, p.next...) }

// atLeast is what a plan that begin makes costs at least: what it would cost with any
// number of steps. Most acts are seen to gain nothing by it, without making the plan.
func (m *climbing) atLeast(act int, p *plan, s state, w []float64) float64 {
	a := &m.acts[act]
	cost := a.spend(w, sum(w))
	var room [maxCauses]float64
	after := room[:len(w)]
	for i, l := range a.leads {
		if mulInto(after, w, l.chance) == 0 {
			continue
		}
		least := m.inOrderCost(s|l.mark, after)
		for _, part := range p.withFollowing() {
			if part != nil {
				least = math.Min(least, m.endedInTime(part, act, i, after))
			}
		}
		cost += least
	}
	return cost
}

// endedInTime is what a plan costs, weighted, if it ends wherever that costs less, and
// an act of it is known to have met a lead.
func (m *model) endedInTime(p *plan, act, lead int, w []float64) float64 {
	_, end := m.end(w)
	switch {
	case p == nil || p.act < 0:
		return end
	case p.act == act:
		return m.endedInTime(p.next[lead], act, lead, w)
	}
	a := &m.acts[p.act]
	cost := a.spend(w, sum(w))
	var room [maxCauses]float64
	after := room[:len(w)]
	for i, l := range a.leads {
		if cost >= end {
			return end
		}
		if mulInto(after, w, l.chance) > 0 {
			cost += m.endedInTime(p.next[i], act, lead, after)
		}
	}
	return math.Min(cost, end)
}

// leadParts are the plans that may follow a lead.
type leadParts struct {
	w     []float64
	prune []*pruning
	parts []*plan
	costs []float64 // the least, by steps
	best  []int     // which part has it
}

// parts computes what may follow a lead of an act.
func (m *model) parts(list []*plan, act, lead int, w []float64, steps int) leadParts {
	made := leadParts{w: w}
	for _, p := range list {
		p = without(p, act, lead)
		if p == nil {
			continue
		}
		pr := &pruning{model: m, costs: map[*plan][]float64{}}
		costs := pr.within(p, w, steps)
		for n := range max(len(costs), len(made.costs)) {
			switch c := upTo(costs, n); {
			case n < len(made.costs):
				if c < made.costs[n] {
					made.costs[n], made.best[n] = c, len(made.parts)
				}
			case n == 0 || c < made.costs[n-1]:
				made.costs, made.best = append(made.costs, c), append(made.best, len(made.parts))
			default:
				made.costs, made.best = append(made.costs, made.costs[n-1]), append(made.best, made.best[n-1])
			}
		}
		made.prune = append(made.prune, pr)
		made.parts = append(made.parts, p)
	}
	return made
}

// cut makes the best plan of some steps.
func (l *leadParts) cut(steps int) *plan {
	i := upTo(l.best, steps)
	return l.prune[i].cut(l.parts[i], l.w, steps)
}

// without is a plan in which an act is known to have met a lead.
func without(p *plan, act, lead int) *plan {
	switch {
	case p == nil || p.act < 0:
		return p
	case p.act == act:
		return without(p.next[lead], act, lead)
	}
	made := &plan{act: p.act}
	for _, next := range p.next {
		made.next = append(made.next, without(next, act, lead))
	}
	return made
}

// inOrderPlan tries remedies in order, and then ends.
func (m *model) inOrderPlan(s state, w []float64) *plan {
	_, first := m.inOrder(s, w, 0)
	if first < 0 {
		end, _ := m.end(w)
		return &plan{act: -1, end: end}
	}
	return m.doing(first, w, func(lead int, after []float64) *plan {
		return m.inOrderPlan(s|m.acts[first].leads[lead].mark, after)
	})
}

// inOrderCost is what that plan costs, weighted, if it ends wherever that costs less.
func (m *climbing) inOrderCost(s state, w []float64) float64 {
	if cost, ok := m.ordered[s]; ok {
		return cost
	}
	_, cost := m.end(w)
	if _, first := m.inOrder(s, w, 0); first >= 0 {
		a := &m.acts[first]
		tried := a.spend(w, sum(w))
		after := make([]float64, len(w))
		for _, l := range a.leads {
			if mulInto(after, w, l.chance) > 0 {
				tried += m.inOrderCost(s|l.mark, after)
			}
		}
		cost = math.Min(cost, tried)
	}
	m.ordered[s] = cost
	return cost
}
