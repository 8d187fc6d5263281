package faults

import "math"

// Effort says how much may be spent on a key. Zero values stand for the defaults.
// Nothing is timed: equal effort gives an equal key on any machine.
type Effort struct {
	// States is the most states of knowledge that are valued one and all, for an
	// exact key. A problem that has more is searched. By default 4 million, which
	// take 32 MB and some tenths of a second.
	States int
	// Within is the share of the cost at which a search stops, 0.1 % by default.
	Within float64
	// Open is the most states that a search looks into, 100 000 by default: a second
	// or two, and some 100 MB.
	Open int
	// Room is how many values the lower bound of a search may keep, 8 million by
	// default: 32 MB and half a second.
	Room int
}

// or fills in the defaults.
func (e Effort) or() Effort {
	if e.States == 0 {
		e.States = 4_000_000
	}
	if e.Within == 0 {
		e.Within = 1e-3
	}
	if e.Open == 0 {
		e.Open = 100_000
	}
	if e.Room == 0 {
		e.Room = 8_000_000
	}
	return e
}

// Solve finds the key of least expected cost, or one with a proven bound on how much
// more it costs than that.
func Solve(p *Problem, e Effort) (*Key, error) {
	m, err := newModel(p)
	if err != nil {
		return nil, err
	}
	v, least := solve(m, e.or())
	k := m.explain(m.follow(v), v)
	switch v := v.(type) {
	case *induction:
		k.States, k.Exact, k.Least = len(v.value), true, k.Cost
	case *search:
		k.States, k.Least = len(v.nodes), math.Min(k.Cost, least)
	}
	return k, nil
}

// follow is the best plan that the values know.
func (m *model) follow(v valued) *plan {
	if s, ok := v.(*search); ok {
		return m.trim(s.plan(0, m.prior), m.prior)
	}
	return m.plan(0, m.prior, 0, v)
}

// solve values the states of a model, all or those that matter, and gives what no key
// can cost less than.
func solve(m *model, e Effort) (valued, float64) {
	if m.states() <= float64(e.States) {
		t := newInduction(m, 0)
		t.run(m.prior)
		return t, t.value[0] - m.slack()
	}
	s := newSearch(m, e.Room, 0)
	s.run(e.Within, e.Open)
	return s, s.nodes[0].low - m.slack()
}

// slack is the most that the steps (see model.step) can add to the cost of a key.
func (m *model) slack() float64 { return m.step * float64(len(m.acts)+1) }
