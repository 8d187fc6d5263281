package nip

import "math"

// block is how many columns are marched at once.
const block = 4

// field holds temperatures, a row of columns for each cell. Each column is the
// response to one boundary, or to one cell of a roller's cover.
type field struct {
	t     []float64
	work  []float64
	width int // columns, a multiple of block
	first int // the cell of the first row
}

// shape makes room for the cells lo to hi and some columns, all zero.
func (f *field) shape(lo, hi, columns int) {
	f.first = lo
	cells := hi - lo
	f.width = (columns + block - 1) / block * block
	n := cells * f.width
	if cap(f.t) < n {
		f.t = make([]float64, n)
		f.work = make([]float64, n)
	}
	f.t, f.work = f.t[:n], f.work[:n]
	clear(f.t)
	clear(f.work)
}

// row is the columns of a cell.
func (f *field) row(cell int) []float64 {
	k := (cell - f.first) * f.width
	return f.t[k : k+f.width]
}

// step marches the segment, factored for h, over h seconds, columns from to to
// (multiples of block).
//
// The scheme is the singly diagonally implicit Runge–Kutta method of two stages
// with γ = 1 − 1/√2: of second order, L-stable and stiffly accurate (R.
// Alexander, SIAM J. Numer. Anal. 14 (1977) 1006; numbers from memory). For a
// linear system its two stages are
//
//	(1 − γhA)·u = y + γh·b
//	(1 − γhA)·y' = (1 + √2)·u − √2·y + γh·b
//
// with b what the ends bring in.
//
// Where a watch is given, it sees u after the first stage, which counts with
// 1 − γ, and y' after the second, which counts with γ.
func (m *segment) step(f *field, h float64, from, to int, w watch) {
	tau := gamma * h
	topAt, bottomAt := -1, -1
	var topIn, bottomIn float64
	if c := m.top.column; c >= from && c < to {
		topAt, topIn = (m.lo-f.first)*f.width+c, tau*m.up[m.lo]
	}
	if c := m.bottom.column; c >= from && c < to {
		bottomAt, bottomIn = (m.hi-1-f.first)*f.width+c, tau*m.down[m.hi-1]
	}
	if topAt >= 0 {
		f.t[topAt] += topIn
	}
	if bottomAt >= 0 {
		f.t[bottomAt] += bottomIn
	}
	for c := from; c < to; c += block {
		m.stageOne(f, c)
	}
	// The second stage's right side took b with −√2; it wants it with 1.
	if topAt >= 0 {
		f.work[topAt] += stageGain * topIn
	}
	if bottomAt >= 0 {
		f.work[bottomAt] += stageGain * bottomIn
	}
	if w != nil {
		w(m, f, h, from, to, true)
	}
	for c := from; c < to; c += block {
		m.stageTwo(f, c)
	}
	if w != nil {
		w(m, f, h, from, to, false)
	}
}

// watch sees the stages of each step. In the first, the work space holds the
// right side of the second stage.
type watch func(m *segment, f *field, h float64, from, to int, first bool)

// stageOne solves for u and leaves the right side of the second stage in the
// work space.
func (m *segment) stageOne(f *field, column int) {
	w := f.width
	e := m.e[m.lo:m.hi]
	p, c := m.p[m.lo:m.hi][:len(e)], m.c[m.lo:m.hi][:len(e)]
	k := (m.lo-f.first)*w + column
	var x0, x1, x2, x3 float64
	for i := range e {
		y := (*[block]float64)(f.t[k:])
		v := (*[block]float64)(f.work[k:])
		x0 = y[0]*p[i] + e[i]*x0
		x1 = y[1]*p[i] + e[i]*x1
		x2 = y[2]*p[i] + e[i]*x2
		x3 = y[3]*p[i] + e[i]*x3
		v[0], v[1], v[2], v[3] = x0, x1, x2, x3
		k += w
	}
	x0, x1, x2, x3 = 0, 0, 0, 0
	for i := len(c) - 1; i >= 0; i-- {
		k -= w
		y := (*[block]float64)(f.t[k:])
		v := (*[block]float64)(f.work[k:])
		x0 = v[0] + c[i]*x0
		x1 = v[1] + c[i]*x1
		x2 = v[2] + c[i]*x2
		x3 = v[3] + c[i]*x3
		v[0] = stageGain*x0 - stageLoss*y[0]
		v[1] = stageGain*x1 - stageLoss*y[1]
		v[2] = stageGain*x2 - stageLoss*y[2]
		v[3] = stageGain*x3 - stageLoss*y[3]
	}
}

// stageTwo solves for the temperatures at the end of the step.
func (m *segment) stageTwo(f *field, column int) {
	w := f.width
	e := m.e[m.lo:m.hi]
	p, c := m.p[m.lo:m.hi][:len(e)], m.c[m.lo:m.hi][:len(e)]
	k := (m.lo-f.first)*w + column
	var x0, x1, x2, x3 float64
	for i := range e {
		v := (*[block]float64)(f.work[k:])
		x0 = v[0]*p[i] + e[i]*x0
		x1 = v[1]*p[i] + e[i]*x1
		x2 = v[2]*p[i] + e[i]*x2
		x3 = v[3]*p[i] + e[i]*x3
		v[0], v[1], v[2], v[3] = x0, x1, x2, x3
		k += w
	}
	x0, x1, x2, x3 = 0, 0, 0, 0
	for i := len(c) - 1; i >= 0; i-- {
		k -= w
		v := (*[block]float64)(f.work[k:])
		y := (*[block]float64)(f.t[k:])
		x0 = v[0] + c[i]*x0
		x1 = v[1] + c[i]*x1
		x2 = v[2] + c[i]*x2
		x3 = v[3] + c[i]*x3
		y[0], y[1], y[2], y[3] = x0, x1, x2, x3
	}
}

// pace is how a phase is cut into steps: each is longer than the one before by
// the growth, so that the steps keep pace with the time since the last change.
type pace struct {
	n      int
	h      float64 // the first step
	growth float64
}

// newPace cuts total seconds into n growing steps.
func newPace(total, growth float64, n int) pace {
	return pace{n: n, growth: growth, h: total * (growth - 1) / (math.Pow(growth, float64(n)) - 1)}
}
