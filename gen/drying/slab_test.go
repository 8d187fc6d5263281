package drying

import "math"

// slab is the second method: the same layer by finite volumes, with what lies over
// it where that has cells of its own. Cells are fine at
// both faces and grow by a constant ratio towards the middle; a face's flux
// passes half a cell and the film resistance 1/B in series. Time goes by TR-BDF2
// (trapezium to 2 − √2 of the step, then BDF2), which is L-stable, with steps that
// grow from the shortest time that matters. Nothing of it is shared with the modes.
type slab struct {
	width  []float64 // of each cell, from the back
	hold   []float64 // what a cell holds at content 1: its width × partition
	resist []float64 // of a cell from end to end: its width over partition × diffusivity
	u      []float64
	layer  int // how many cells are the layer; the rest lie over its face
}

func newSlab(content float64) *slab {
	s := &slab{}
	s.layer = s.add(1, 1, 1, content)
	return s
}

// add lays a ply of a thickness, diffusivity and partition over the face, and
// returns its number of cells.
func (s *slab) add(thickness, diffusivity, partition, content float64) int {
	const half, ratio = 120, 1.06
	first := 0.5 * (ratio - 1) / (math.Pow(ratio, half) - 1)
	for i := range 2 * half {
		w := thickness * first * math.Pow(ratio, float64(min(i, 2*half-1-i)))
		s.width = append(s.width, w)
		s.hold = append(s.hold, w*partition)
		s.resist = append(s.resist, w/(partition*diffusivity))
		s.u = append(s.u, content)
	}
	return 2 * half
}

// amount is what the layer holds, all what lies over it holds as well.
func (s *slab) amount() float64 { return s.sum(s.layer) }

func (s *slab) all() float64 { return s.sum(len(s.u)) }

func (s *slab) sum(cells int) float64 {
	sum := 0.0
	for i := range cells {
		sum += s.hold[i] * s.u[i]
	}
	return sum
}

// links are the conductances between cells, and to the room at both ends.
func (s *slab) links(face, back float64) []float64 {
	n := len(s.width)
	g := make([]float64, n+1)
	for i := 1; i < n; i++ {
		g[i] = 2 / (s.resist[i-1] + s.resist[i])
	}
	if back > 0 {
		g[0] = 1 / (1/back + s.resist[0]/2)
	}
	if face > 0 {
		g[n] = 1 / (1/face + s.resist[n-1]/2)
	}
	return g
}

// march advances by fo with the given Biot numbers and floor.
func (s *slab) march(face, back, floor, fo float64) {
	g := s.links(face, back)
	for i := range s.u {
		s.u[i] -= floor
	}
	step, past := 1e-9, 0.0
	for past < fo {
		if past+step > fo*(1-1e-12) {
			step = fo - past
		}
		s.step(g, step)
		past += step
		step *= 1.04
	}
	for i := range s.u {
		s.u[i] += floor
	}
}

// step is one step of TR-BDF2.
func (s *slab) step(g []float64, h float64) {
	const gamma = 2 - math.Sqrt2
	n := len(s.u)
	start := append([]float64(nil), s.u...)
	right := make([]float64, n)
	for i := range n {
		out := (g[i] + g[i+1]) * start[i]
		if i > 0 {
			out -= g[i] * start[i-1]
		}
		if i < n-1 {
			out -= g[i+1] * start[i+1]
		}
		right[i] = s.hold[i]*start[i] - gamma*h/2*out
	}
	middle := s.solve(g, gamma*h/2, right)
	for i := range n {
		right[i] = s.hold[i] * (middle[i]/(gamma*(2-gamma)) - start[i]*(1-gamma)*(1-gamma)/(gamma*(2-gamma)))
	}
	s.u = s.solve(g, (1-gamma)/(2-gamma)*h, right)
}

// solve is (hold + a·links)u = right by elimination along the diagonal.
func (s *slab) solve(g []float64, a float64, right []float64) []float64 {
	n := len(right)
	diagonal := make([]float64, n)
	u := make([]float64, n)
	for i := range n {
		diagonal[i] = s.hold[i] + a*(g[i]+g[i+1])
		u[i] = right[i]
		if i > 0 {
			f := -a * g[i] / diagonal[i-1]
			diagonal[i] += f * a * g[i]
			u[i] -= f * u[i-1]
		}
	}
	u[n-1] /= diagonal[n-1]
	for i := n - 2; i >= 0; i-- {
		u[i] = (u[i] + a*g[i+1]*u[i+1]) / diagonal[i]
	}
	return u
}
