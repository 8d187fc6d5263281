package nip

import (
	"fmt"
	"math"
)

// steady finds the covers' cells that come round as they were a turn before.
//
// Wrap and nip have left each cover cell as a linear function of the boundaries
// and of all cover cells before them; idling adds its own. So c = M·c + D·T_b,
// and (1 − M)·c = D·T_b is solved exactly, for all boundaries at once. Each
// cover idles for what its own girth leaves, so that rollers of unlike
// diameter are allowed: they meet in the nip as each comes round.
func (s *Solver) steady(p *Pass) error {
	total := s.covers[0] + s.covers[1]
	if total == 0 {
		return nil
	}
	n := len(s.active)
	s.matrix = fit(s.matrix, total*total)
	s.fixed = fit(s.fixed, total*n)
	s.turn(p, &p.Upper, 0, s.grid.start[upperCover], 0)
	s.turn(p, &p.Lower, 1, s.grid.start[lowerCover], s.covers[0])
	if !solve(s.matrix, s.fixed, total, n) {
		return fmt.Errorf("there is no steady run: a roller's cover exchanges heat with nothing")
	}
	return nil
}

// fit makes a slice of n zeros out of one that is there.
func fit(s []float64, n int) []float64 {
	if cap(s) < n {
		return make([]float64, n)
	}
	s = s[:n]
	clear(s)
	return s
}

// turn lets a cover idle and writes its rows of the fixed point.
func (s *Solver) turn(p *Pass, r *Roller, side, start, row int) {
	cells := s.covers[side]
	if cells == 0 {
		return
	}
	g := &s.grid
	lo, hi := start, start+cells
	s.idle.shape(lo, hi, cells+1)
	for j := range cells {
		s.idle.row(lo + j)[j] = 1
	}
	face, core := lo, hi-1
	if side == 0 {
		face, core = hi-1, lo
	}
	outside, inside := g.above[face], g.below[core]
	if side == 0 {
		outside, inside = g.below[face], g.above[core]
	}
	inner := s.rollerEdge(r, inside, true, 0)
	column := inner.column
	if column != none {
		inner.column = cells
	}
	outer := edge{exposed(outside, float64(r.Idle)), none}
	if side == 0 {
		s.segment.set(g, lo, hi, inner, outer)
	} else {
		s.segment.set(g, lo, hi, outer, inner)
	}
	s.march(&s.idle, newPace(p.idle(r), paceIdle, stepsIdle), 0, s.idle.width)

	total, n := s.covers[0]+s.covers[1], len(s.active)
	for i := range cells {
		turned := s.idle.row(lo + i)
		right := s.fixed[(row+i)*n : (row+i+1)*n]
		left := s.matrix[(row+i)*total : (row+i+1)*total]
		for k, v := range turned[:cells] {
			was := s.stack.row(lo + k)
			for b := range right {
				right[b] += v * was[b]
			}
			for j, m := range was[s.basis : s.basis+total] {
				left[j] -= v * m
			}
		}
		left[row+i]++
		if column != none {
			right[column] += turned[cells]
		}
	}
}

// solve solves a dense system of n unknowns for several right sides in place, by
// elimination with row pivots. It says false where there is no one solution.
func solve(a, b []float64, n, sides int) bool {
	for k := range n {
		pivot := k
		for i := k + 1; i < n; i++ {
			if math.Abs(a[i*n+k]) > math.Abs(a[pivot*n+k]) {
				pivot = i
			}
		}
		if !(math.Abs(a[pivot*n+k]) > 1e-12) {
			return false
		}
		if pivot != k {
			for j := k; j < n; j++ {
				a[k*n+j], a[pivot*n+j] = a[pivot*n+j], a[k*n+j]
			}
			for j := range sides {
				b[k*sides+j], b[pivot*sides+j] = b[pivot*sides+j], b[k*sides+j]
			}
		}
		inv := 1 / a[k*n+k]
		top, topRight := a[k*n+k+1:(k+1)*n], b[k*sides:(k+1)*sides]
		for i := k + 1; i < n; i++ {
			m := a[i*n+k] * inv
			if m == 0 {
				continue
			}
			row := a[i*n+k+1 : (i+1)*n]
			for j, v := range top {
				row[j] -= m * v
			}
			right := b[i*sides : (i+1)*sides]
			for j, v := range topRight {
				right[j] -= m * v
			}
		}
	}
	for k := n - 1; k >= 0; k-- {
		right := b[k*sides : (k+1)*sides]
		for i := k + 1; i < n; i++ {
			m := a[k*n+i]
			for j, v := range b[i*sides : (i+1)*sides] {
				right[j] -= m * v
			}
		}
		inv := 1 / a[k*n+k]
		for j := range right {
			right[j] *= inv
		}
	}
	return true
}

// sense turns responses to a core's temperature into responses to a set
// temperature that is sensed at the cover's surface just before the film:
// T_surface = Σ_b s_b·T_b is solved for the core's, and that put in. Where both
// rollers share a temperature the upper one's sensor counts.
func sense(p *Pass, c *Case) error {
	if p.Upper.Sensed == AtSurface {
		if err := c.putIn(p.Upper.Core, c.UpperSurface); err != nil {
			return fmt.Errorf("upper roller: %w", err)
		}
	}
	if p.Lower.Sensed == AtSurface && !(p.Upper.Sensed == AtSurface && p.Lower.Core == p.Upper.Core) {
		if err := c.putIn(p.Lower.Core, c.LowerSurface); err != nil {
			return fmt.Errorf("lower roller: %w", err)
		}
	}
	return nil
}

// putIn changes what boundary b means, from the core to the surface.
func (c *Case) putIn(b Boundary, surface Row) error {
	if surface[b] < leastShare {
		return fmt.Errorf("its surface does not feel its temperature: it cannot be set there")
	}
	change := func(r *Row) {
		core := r[b] / surface[b]
		if core == 0 {
			return
		}
		for other := range r {
			if Boundary(other) == b {
				r[other] = core
			} else {
				r[other] -= core * surface[other]
			}
		}
	}
	for i := range c.Records {
		for place := range c.Records[i] {
			change(&c.Records[i][place])
		}
	}
	for i := range c.Profile {
		change(&c.Profile[i])
	}
	for _, r := range [...]*Row{&c.PrintMean, &c.LastMean, &c.UpperSurface, &c.LowerSurface, &c.UpperCore, &c.LowerCore} {
		change(r)
	}
	return nil
}
