package faults

import "math"

// search finds a key and a lower bound together: best-first through the graph of
// states, from the first down along the acts that look best by their lower bounds, to
// where upper and lower bound are farthest apart. The bounds of what lies below a
// state improve its own; those of the first state meet, in time.
type search struct {
	model   *model
	relaxed *relaxed
	price   float64
	place   map[state]int32
	nodes   []searchNode
	opened  int
	weights []float64
	after   []float64
}

// searchNode is a state with bounds on its value.
type searchNode struct {
	state     state
	relaxed   float64 // the lower bound that it began with
	low, high float64
	arcs      []searchArc // nil until the state is opened
}

// searchArc is an act in a state that may be the best.
type searchArc struct {
	act       int32 // index in model.acts; -1 for the end
	spend     float64
	low, high float64
	next      []int32 // nodes by lead, -1 where a lead cannot happen; nil until it is looked into
}

func newSearch(m *model, room int) *search { return startSearch(m, newRelaxed(m, room), 0) }

// startSearch begins a search in which each step costs a price on top.
func startSearch(m *model, r *relaxed, price float64) *search {
	s := &search{model: m, relaxed: r, price: price, place: map[state]int32{},
		weights: make([]float64, m.causes), after: make([]float64, m.causes)}
	s.node(0, m.prior, s.relaxed.bound(0, m.prior))
	return s
}

// node finds a state, or adds it with the lower bound given.
func (s *search) node(at state, w []float64, relaxed float64) int32 {
	if n, ok := s.place[at]; ok {
		return n
	}
	_, end := s.model.end(w)
	low := math.Min(end, relaxed+s.price)
	high, _ := s.model.inOrder(at, w, s.price)
	high = math.Max(low, high)
	n := int32(len(s.nodes))
	s.nodes = append(s.nodes, searchNode{state: at, relaxed: relaxed, low: low, high: high})
	s.place[at] = n
	return n
}

// run opens states until the bounds of the first one are within a share of each other,
// or so many are open.
func (s *search) run(within float64, most int) {
	for s.opened < most {
		root := &s.nodes[0]
		if root.high-root.low <= within*math.Abs(root.high) {
			return
		}
		s.descend(0)
	}
}

// descend opens one state or more below a node, and improves the bounds on the way
// back.
func (s *search) descend(n int32) {
	if s.nodes[n].arcs == nil {
		s.open(n)
	}
	best := s.improve(n)
	node := &s.nodes[n]
	if best < 0 || node.low >= node.high {
		return
	}
	to, gap := int32(-1), 0.0
	for _, next := range node.arcs[best].next {
		if next >= 0 {
			if g := s.nodes[next].high - s.nodes[next].low; g > gap {
				to, gap = next, g
			}
		}
	}
	if to < 0 {
		return
	}
	s.descend(to)
	s.improve(n)
}

// open lists the acts of a state that may be the best.
func (s *search) open(n int32) {
	s.opened++
	m := s.model
	node := &s.nodes[n]
	w := s.weights
	m.weights(node.state, w)
	mass := sum(w)
	if i := s.eager(node.state, w); i >= 0 {
		node.arcs = []searchArc{{act: int32(i), spend: m.acts[i].spend(w, mass), low: node.low, high: math.Inf(1)}}
		return
	}
	_, end := m.end(w)
	node.arcs = append(make([]searchArc, 0, len(m.acts)+1), searchArc{act: -1, low: end, high: end})
	for i := range m.acts {
		a := &m.acts[i]
		if a.done(node.state) {
			continue
		}
		arc := searchArc{act: int32(i), spend: a.spend(w, mass) + s.price*float64(a.size), high: math.Inf(1)}
		arc.low = arc.spend
		if a.free() {
			arc.low += node.relaxed // what the check tells is free in it already
		} else {
			for _, l := range a.leads {
				if mulInto(s.after, w, l.chance) > 0 {
					arc.low += s.relaxed.ifKnown(node.state|l.mark, s.after)
				}
			}
			arc.low = math.Max(arc.low, node.relaxed)
		}
		if arc.low < node.high {
			node.arcs = append(node.arcs, arc)
		}
	}
}

// eager finds a check that costs nothing and tells something in a state. To make it
// now is never worse than to make it later or not at all, so that nothing else need be
// looked into. It returns -1 if there is none.
func (s *search) eager(at state, w []float64) int {
	if s.price > 0 {
		return -1
	}
	for i := range s.model.acts {
		a := &s.model.acts[i]
		if !a.done(at) && a.free() && a.even && a.cost[0] <= s.model.step && a.tells(w) {
			return i
		}
	}
	return -1
}

// tells says that the leads of an act are not equally likely given all causes that are
// still possible.
func (a *modelAct) tells(w []float64) bool {
	for _, l := range a.leads {
		first := -1.0
		for c, x := range w {
			switch {
			case x == 0:
			case first < 0:
				first = l.chance[c]
			case l.chance[c] != first:
				return true
			}
		}
	}
	return false
}

// improve brings the bounds of an open state up to date with what lies below, looking
// into acts until the one of least lower bound has been. It returns that one, or -1 if
// it is the end. Acts that cannot be the best any more are dropped.
func (s *search) improve(n int32) int {
	for {
		node := &s.nodes[n]
		best, kept := 0, 0
		for i := range node.arcs {
			arc := &node.arcs[i]
			if arc.next != nil {
				low, high := arc.spend, arc.spend
				for _, next := range arc.next {
					if next >= 0 {
						low += s.nodes[next].low
						high += s.nodes[next].high
					}
				}
				arc.low, arc.high = math.Max(arc.low, low), high
			}
			if i > 0 && arc.low > node.high && arc.high > node.high {
				continue
			}
			node.high = math.Min(node.high, arc.high)
			node.arcs[kept] = *arc
			if arc.low < node.arcs[best].low {
				best = kept
			}
			kept++
		}
		node.arcs = node.arcs[:kept]
		arc := &node.arcs[best]
		node.low = math.Max(node.low, math.Min(arc.low, node.high))
		if arc.act < 0 {
			return -1
		}
		if arc.next != nil || node.low >= node.high {
			return best
		}
		s.look(n, best)
	}
}

// look makes the nodes that an act leads to.
func (s *search) look(n int32, arc int) {
	node := s.nodes[n]
	w := s.weights
	s.model.weights(node.state, w)
	a := &s.model.acts[node.arcs[arc].act]
	next := make([]int32, len(a.leads))
	left := node.relaxed
	for i, l := range a.leads {
		next[i] = -1
		if mulInto(s.after, w, l.chance) == 0 {
			continue
		}
		// The bounds of a check's leads sum to that of the state before it.
		relaxed := left
		if !a.free() || i < len(a.leads)-1 {
			relaxed = s.relaxed.bound(node.state|l.mark, s.after)
			left -= relaxed
		}
		next[i] = s.node(node.state|l.mark, s.after, relaxed)
	}
	node.arcs[arc].next = next
}

// bounds gives what is known of a state.
func (s *search) bounds(at state, w []float64) (low, high float64) {
	if n, ok := s.place[at]; ok {
		return s.nodes[n].low, s.nodes[n].high
	}
	_, end := s.model.end(w)
	low = math.Min(end, s.relaxed.bound(at, w)+s.price)
	high, _ = s.model.inOrder(at, w, s.price)
	return low, math.Max(low, high)
}

// plan follows the upper bounds down from a state: the act that is known to cost
// least, and where nothing was looked into, remedies in order.
func (s *search) plan(at state, w []float64) *plan {
	m := s.model
	high, act := m.inOrder(at, w, s.price)
	if n, ok := s.place[at]; ok {
		for _, arc := range s.nodes[n].arcs {
			if arc.high < high {
				high, act = arc.high, int(arc.act)
			}
		}
	}
	if act < 0 {
		end, _ := m.end(w)
		return &plan{act: -1, end: end}
	}
	return m.doing(act, w, func(lead int, after []float64) *plan {
		return s.plan(at|m.acts[act].leads[lead].mark, after)
	})
}
