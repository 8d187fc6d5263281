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
	// Room is how many values the lower bound of a search may keep, 4 million by
	// default: 16 MB and some tenths of a second.
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
		e.Room = 4_000_000
	}
	return e
}

// Solver holds what was found out about the states of a problem. Its tables are large:
// take what keys are wanted from it, and let it go.
type Solver struct {
	model  *model
	effort Effort
	values valued
	least  float64 // no key costs less
	full   *plan   // the best that is known
}

// NewSolver values the states of a problem, all or those that matter.
func NewSolver(p *Problem, e Effort) (*Solver, error) {
	m, err := newModel(p)
	if err != nil {
		return nil, err
	}
	s := &Solver{model: m, effort: e.or()}
	if m.states() <= float64(s.effort.States) {
		t := newInduction(m)
		t.run(m.prior)
		s.values, s.least, s.full = t, t.value[0]-m.slack(), m.plan(0, m.prior, t)
		return s, nil
	}
	x := newSearch(m, s.effort.Room)
	x.run(s.effort.Within, s.effort.Open)
	s.values, s.least, s.full = x, x.nodes[0].low-m.slack(), m.trim(x.plan(0, m.prior), m.prior)
	return s, nil
}

// Key is the key of least expected cost, or one with a proven bound on how much more
// it costs than that.
func (s *Solver) Key() *Key {
	k := s.model.explain(s.full, s.values)
	switch v := s.values.(type) {
	case *induction:
		k.States, k.Exact, k.Least = len(v.value), true, k.Cost
	case *search:
		k.States, k.Least = len(v.nodes), math.Min(k.Cost, s.least)
	}
	return k
}

// Solve finds the key of least expected cost, or one with a proven bound on how much
// more it costs than that.
func Solve(p *Problem, e Effort) (*Key, error) {
	s, err := NewSolver(p, e)
	if err != nil {
		return nil, err
	}
	return s.Key(), nil
}

// slack is the most that the steps (see model.step) can add to the cost of a key.
func (m *model) slack() float64 { return m.step * float64(len(m.acts)+1) }
