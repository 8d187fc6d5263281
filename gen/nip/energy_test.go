package nip

import (
	"math"
	"testing"
)

// ledger books the heat that comes in through the ends of segments, a column each.
type ledger map[*field][]float64

// book is a watch: the stages of a step count with 1 − γ and γ.
func (l ledger) book(s *Solver) watch {
	return func(m *segment, f *field, h float64, from, to int, firstStage bool) {
		if l[f] == nil {
			l[f] = make([]float64, f.width)
		}
		for _, end := range [2]struct {
			cell int
			e    edge
			rate float64
		}{{m.lo, m.top, m.up[m.lo]}, {m.hi - 1, m.bottom, m.down[m.hi-1]}} {
			if end.e.g == 0 {
				continue
			}
			for c := from; c < to; c++ {
				k := (end.cell-f.first)*f.width + c
				weight, u := gamma, f.t[k]
				if firstStage {
					// The work space holds (1 + √2)·u − √2·y + γhb, and the field y + γhb.
					in := 0.0
					for _, other := range [2]struct {
						cell int
						e    edge
						rate float64
					}{{m.lo, m.top, m.up[m.lo]}, {m.hi - 1, m.bottom, m.down[m.hi-1]}} {
						if other.cell == end.cell && other.e.column == c {
							in += gamma * h * other.rate
						}
					}
					weight = 1 - gamma
					u = (f.work[k] - stageGain*in + stageLoss*f.t[k]) / stageGain
				}
				outside := 0.0
				if end.e.column == c {
					outside = 1
				}
				l[f][c] += weight * h * end.e.g * (outside - u)
			}
		}
	}
}

// Whatever film, print and covers gain came in through the ends, for each
// response; and in the steady run the covers gain nothing in a turn.
func TestHeatIsConserved(t *testing.T) {
	for _, x := range realistic {
		s, out, l := NewSolver(), new(Response), ledger{}
		s.watch = l.book(s)
		if err := s.Run(x.Pass, out); err != nil {
			t.Fatal(err)
		}
		g := &s.grid
		entry := func(i int, b Boundary) float64 {
			if i >= g.start[printBody] && i < g.start[lowerFilm] {
				if b == Print {
					return 1
				}
			} else if i >= g.start[filmBody] && i < g.start[lowerCover] && b == Film {
				return 1
			}
			return 0
		}
		// First piece, up to the nip's end: film, print and covers.
		var in Row
		s.combine(x.Pass, l[&s.stack], false, &in)
		for b := Set; b < Boundaries; b++ {
			gained, moved := 0.0, 0.0
			for i := range g.width {
				was := entry(i, b)
				if i < g.start[filmBody] && b == x.Pass.Upper.Core || i >= g.start[lowerCover] && b == x.Pass.Lower.Core {
					was = 1
				}
				change := g.capacity[i] * (out.First.Profile[i][b] - was)
				gained += change
				moved += math.Abs(change)
			}
			if !(math.Abs(gained-in[b]) <= 1e-6*moved) {
				t.Errorf("%s, first piece, boundary %d: gained %.9g J/(m² K), came in %.9g", x.Name, b, gained, in[b])
			}
		}
		// After the nip.
		for k, b := range s.active {
			gained, moved := 0.0, 0.0
			for i := g.start[filmBody]; i < g.start[lowerCover]; i++ {
				change := g.capacity[i] * (s.after.row(i)[k] - out.First.Profile[i][b])
				gained += change
				moved += math.Abs(change)
			}
			if !(math.Abs(gained-l[&s.after][k]) <= 1e-6*moved) {
				t.Errorf("%s, after the nip, boundary %d: gained %.9g, came in %.9g", x.Name, b, gained, l[&s.after][k])
			}
		}
		s.steadyBalance(t, x.Name, x.Pass, out, l, entry)
	}
}

// steadyBalance books a whole turn of the steady run. The idle turns are run again,
// with their own ledgers.
func (s *Solver) steadyBalance(t *testing.T, name string, p *Pass, out *Response, l ledger, entry func(int, Boundary) float64) {
	t.Helper()
	g := &s.grid
	var in Row
	s.combine(p, l[&s.stack], true, &in)
	moved := [Boundaries]float64{}
	for side, r := range []*Roller{&p.Upper, &p.Lower} {
		if s.covers[side] == 0 {
			continue
		}
		lo := g.start[upperCover]
		row := 0
		if side == 1 {
			lo, row = g.start[lowerCover], s.covers[0]
		}
		delete(l, &s.idle)
		s.matrix, s.fixed = append([]float64(nil), s.matrix...), append([]float64(nil), s.fixed...)
		steady := append([]float64(nil), s.fixed...)
		s.turn(p, r, side, lo, row)
		s.fixed = steady
		booked := l[&s.idle]
		for b := Set; b < Boundaries; b++ {
			for k := range s.covers[side] {
				in[b] += booked[k] * out.Steady.Profile[lo+k][b]
				moved[b] += math.Abs(booked[k] * out.Steady.Profile[lo+k][b])
			}
			if b == r.Core && !r.Insulated {
				in[b] += booked[s.covers[side]]
				moved[b] += math.Abs(booked[s.covers[side]])
			}
		}
	}
	for b := Set; b < Boundaries; b++ {
		gained := 0.0
		for i := g.start[filmBody]; i < g.start[lowerCover]; i++ {
			change := g.capacity[i] * (out.Steady.Profile[i][b] - entry(i, b))
			gained += change
			moved[b] += math.Abs(change)
		}
		if !(math.Abs(gained-in[b]) <= 1e-6*moved[b]) {
			t.Errorf("%s, a turn of the steady run, boundary %d: film and print gained %.9g J/(m² K), came in %.9g", name, b, gained, in[b])
		}
	}
}
