package nip

import "math"

// none is the column of a face that is exposed to the room: temperatures are
// counted from the room's, so it brings nothing in.
const none = -1

// edge is an exposed end of a segment.
type edge struct {
	g      float64 // conductance from the end cell's middle, W/(m² K)
	column int     // of the temperature it is exposed to
}

// segment is a run of cells that exchange heat in a phase, with what its two
// ends are exposed to.
//
// With C_i the capacity of a cell, g_i its conductance to the cell above and the
// ends' exposures taken as cells of given temperature:
//
//	C_i·dT_i/dt = g_i·(T_{i−1} − T_i) + g_{i+1}·(T_{i+1} − T_i)
type segment struct {
	lo, hi      int
	top, bottom edge
	// up, down, sum are g_i/C_i, g_{i+1}/C_i and their sum, by cell.
	up, down, sum []float64
	// e, p, c are the factors for a step.
	e, p, c []float64
}

// room makes the slices fit n cells.
func (m *segment) room(n int) {
	if cap(m.up) >= n {
		m.up, m.down, m.sum = m.up[:n], m.down[:n], m.sum[:n]
		m.e, m.p, m.c = m.e[:n], m.p[:n], m.c[:n]
		return
	}
	for _, s := range [...]*[]float64{&m.up, &m.down, &m.sum, &m.e, &m.p, &m.c} {
		*s = make([]float64, n)
	}
}

// exposed is the conductance from the middle of an end cell, the way
// resistance away from its face, through that face.
func exposed(half, conductance float64) float64 {
	if conductance == 0 {
		return 0
	}
	return 1 / (half + 1/conductance)
}

// set poses the cells lo to hi of the grid.
func (m *segment) set(g *grid, lo, hi int, top, bottom edge) {
	m.lo, m.hi, m.top, m.bottom = lo, hi, top, bottom
	for i := lo; i < hi; i++ {
		above, below := top.g, bottom.g
		if i > lo {
			above = g.link[i]
		}
		if i < hi-1 {
			below = g.link[i+1]
		}
		m.up[i] = above / g.capacity[i]
		m.down[i] = below / g.capacity[i]
		m.sum[i] = m.up[i] + m.down[i]
	}
}

// The stage weight of the two-stage scheme, 1 − 1/√2, and what its second stage
// makes of the first.
const (
	gamma     = 1 - math.Sqrt2/2
	stageGain = 1 + math.Sqrt2 // (1 − γ)/γ
	stageLoss = math.Sqrt2     // stageGain − 1
)

// factor prepares a step of h seconds: the elimination of the tridiagonal
// system (1 − γ·h·A)·x = r, with the signs turned so that all factors are
// positive.
func (m *segment) factor(h float64) {
	tau := gamma * h
	e, p, c := m.e[m.lo:m.hi], m.p[m.lo:m.hi], m.c[m.lo:m.hi]
	up, down, sum := m.up[m.lo:m.hi], m.down[m.lo:m.hi], m.sum[m.lo:m.hi]
	last := 0.0
	for i := range e {
		a := tau * up[i]
		inv := 1 / (1 + tau*sum[i] - a*last)
		p[i] = inv
		e[i] = a * inv
		last = tau * down[i] * inv
		c[i] = last
	}
	e[0], c[len(c)-1] = 0, 0
}
