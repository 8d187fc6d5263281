package nip

import "laydown/gen/quantity"

// reader takes the temperature of a place from a field:
// (1 − weight)·(cell) + weight·(the neighbour, or what the face is exposed to).
type reader struct {
	cell, other int // other is none where the face is an end of the segment
	column      int // then of what it is exposed to
	weight      float64
}

// topFace reads the upper face of a cell.
func (s *Solver) topFace(i int) reader {
	m, g := &s.segment, &s.grid
	switch {
	case i < m.lo || i >= m.hi:
		return reader{i, none, none, 0}
	case i == m.lo:
		return reader{i, none, m.top.column, m.top.g * g.above[i]}
	}
	return reader{i, i - 1, none, g.link[i] * g.above[i]}
}

// bottomFace reads the lower face of a cell.
func (s *Solver) bottomFace(i int) reader {
	m, g := &s.segment, &s.grid
	switch {
	case i < m.lo || i >= m.hi:
		return reader{i, none, none, 0}
	case i == m.hi-1:
		return reader{i, none, m.bottom.column, m.bottom.g * g.below[i]}
	}
	return reader{i, i + 1, none, g.link[i+1] * g.below[i]}
}

// middle reads half way through the print.
func (s *Solver) middle() reader {
	m, g := &s.segment, &s.grid
	lo, hi := g.start[printBody], g.start[lowerFilm]
	half := 0.0
	for _, w := range g.width[lo:hi] {
		half += w / 2
	}
	i, top := lo, 0.0
	for i < hi-1 && top+g.width[i] < half {
		top += g.width[i]
		i++
	}
	// Where the middle lies between the cell's faces, and its node.
	at := (half - top) / g.width[i]
	node := g.above[i] / (g.above[i] + g.below[i])
	switch {
	case i < m.lo || i >= m.hi:
		return reader{i, none, none, 0}
	case at < node && i > lo:
		return reader{i, i - 1, none, (node - at) / node * g.above[i] * g.link[i]}
	case at > node && i < hi-1:
		return reader{i, i + 1, none, (at - node) / (1 - node) * g.below[i] * g.link[i+1]}
	}
	return reader{i, none, none, 0}
}

// place finds where the places are, in the segment posed now.
func (s *Solver) place() {
	g := &s.grid
	if g.start[filmBody] < g.start[printBody] {
		s.readers[FilmFace] = s.topFace(g.start[filmBody])
		s.readers[AdhesiveFace] = s.bottomFace(g.start[printBody] - 1)
	}
	if g.start[printBody] < g.start[lowerFilm] {
		s.readers[BondLine] = s.topFace(g.start[printBody])
		s.readers[PrintMiddle] = s.middle()
		s.readers[PrintBack] = s.bottomFace(g.start[lowerFilm] - 1)
	} else {
		s.readers[BondLine] = s.readers[AdhesiveFace]
		s.readers[PrintMiddle] = s.readers[AdhesiveFace]
		s.readers[PrintBack] = s.readers[AdhesiveFace]
	}
	if g.start[filmBody] == g.start[printBody] {
		s.readers[FilmFace] = s.readers[BondLine]
		s.readers[AdhesiveFace] = s.readers[BondLine]
	}
}

// keep records the places now.
func (s *Solver) keep(at float64) {
	s.times = append(s.times, at)
	w := s.stack.width
	for i := range s.readers {
		r := &s.readers[i]
		n := len(s.records)
		s.records = append(s.records, s.stack.row(r.cell)...)
		if r.weight == 0 {
			continue
		}
		out := s.records[n : n+w]
		own := 1 - r.weight
		if r.other == none {
			for c := range out {
				out[c] *= own
			}
			if r.column != none {
				out[r.column] += r.weight
			}
			continue
		}
		other := s.stack.row(r.other)
		for c := range out {
			out[c] = own*out[c] + r.weight*other[c]
		}
	}
}

// keepApart records the places at first touch: no heat has crossed the bond line,
// so each side of it has the temperature of its own cell.
func (s *Solver) keepApart() {
	readers := s.readers
	for _, place := range []Place{AdhesiveFace, BondLine} {
		s.readers[place].weight = 0
	}
	s.keep(0)
	s.readers = readers
}

// combine turns a row of columns into a response: for the first piece each cover
// cell is at its roller's temperature, for the steady run at its fixed point.
func (s *Solver) combine(p *Pass, columns []float64, steady bool, out *Row) {
	n := len(s.active)
	var sum [Boundaries]float64
	copy(sum[:n], columns[:n])
	own := columns[s.basis : s.basis+s.covers[0]+s.covers[1]]
	if steady {
		for j, v := range own {
			for b, c := range s.fixed[j*n : (j+1)*n] {
				sum[b] += v * c
			}
		}
	} else {
		s.addCover(&sum, own[:s.covers[0]], p.Upper.Core)
		s.addCover(&sum, own[s.covers[0]:], p.Lower.Core)
	}
	for c, b := range s.active {
		out[b] = sum[c]
	}
	out.fillRoom()
}

func (s *Solver) addCover(sum *[Boundaries]float64, own []float64, core Boundary) {
	c := s.column[core]
	if c == none {
		return
	}
	for _, v := range own {
		sum[c] += v
	}
}

// report writes what was recorded up to the end of the nip.
func (s *Solver) report(p *Pass, c *Case, steady bool) {
	w := s.stack.width
	for i, at := range s.times {
		rec := c.record(at)
		for place := range rec {
			k := (i*Places + place) * w
			s.combine(p, s.records[k:k+w], steady, &rec[place])
		}
	}
	c.Touch, c.NipEnd = s.touch, len(s.times)-1
	g := &s.grid
	c.PrintMean = Row{}
	heat := 0.0
	for i := range c.Profile {
		c.Profile[i] = Row{}
		s.combine(p, s.stack.row(i), steady, &c.Profile[i])
		if i >= g.start[printBody] && i < g.start[lowerFilm] {
			heat += g.capacity[i]
			for b, v := range c.Profile[i] {
				c.PrintMean[b] += g.capacity[i] * v
			}
		}
	}
	if heat > 0 {
		for b := range c.PrintMean {
			c.PrintMean[b] /= heat
		}
	}
	s.reportCover(&p.Upper, 0, g.start[filmBody]-1, g.start[upperCover], steady, &c.UpperSurface, &c.UpperCore)
	s.reportCover(&p.Lower, 1, g.start[lowerCover], g.start[bodies]-1, steady, &c.LowerSurface, &c.LowerCore)
}

// reportCover writes the faces of a cover as it comes to the film.
func (s *Solver) reportCover(r *Roller, side, face, inner int, steady bool, surface, core *Row) {
	*surface, *core = Row{}, Row{}
	surface[r.Core], core[r.Core] = 1, 1
	if !steady || s.covers[side] == 0 {
		return
	}
	g := &s.grid
	lo := g.start[upperCover]
	if side == 1 {
		lo = g.start[lowerCover] - s.covers[0]
	}
	n := len(s.active)
	*surface = Row{}
	half := g.below[face]
	if side == 1 {
		half = g.above[face]
	}
	own := 1 - exposed(half, float64(r.Idle))*half
	for c, b := range s.active {
		surface[b] = own * s.fixed[(face-lo)*n+c]
	}
	surface.fillRoom()
	if r.Insulated {
		*core = Row{}
		for c, b := range s.active {
			core[b] = s.fixed[(inner-lo)*n+c]
		}
		core.fillRoom()
	}
}

// cells describes the cells of the profiles.
func (r *Response) cells(p *Pass, g *grid) {
	r.Cells = r.Cells[:0]
	for b := range bodies {
		var layers []Layer
		switch b {
		case filmBody:
			layers = p.Film
		case printBody:
			layers = p.Print
		case lowerFilm:
			layers = p.LowerFilm
		}
		at, layer, end := 0.0, 0, 0.0
		turned := b == lowerFilm
		if turned {
			layer = len(layers) - 1
		}
		if len(layers) > 0 {
			end = float64(layers[layer].Thickness)
		}
		for i := g.start[b]; i < g.start[b+1]; i++ {
			node := at + g.width[i]*g.above[i]/(g.above[i]+g.below[i])
			for len(layers) > 0 && node > end {
				if turned {
					layer--
				} else {
					layer++
				}
				end += float64(layers[layer].Thickness)
			}
			r.Cells = append(r.Cells, Cell{Part(b), layer, quantity.Length(node), quantity.Length(g.width[i])})
			at += g.width[i]
		}
	}
}
