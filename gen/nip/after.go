package nip

import "math"

// leastEarly is the shortest first step after the nip, s.
const leastEarly = 0.0005

// run marches film and print through the stages after the nip, first piece and
// steady run side by side.
func (s *Solver) run(p *Pass, r *Response) {
	g := &s.grid
	lo, hi := g.start[filmBody], g.start[lowerCover]
	s.after.shape(lo, hi, 2*s.basis)
	for i := lo; i < hi; i++ {
		row := s.after.row(i)
		for c, b := range s.active {
			row[c] = r.First.Profile[i][b]
			row[s.basis+c] = r.Steady.Profile[i][b]
		}
	}
	r.First.LastMean, r.Steady.LastMean = r.First.PrintMean, r.Steady.PrintMean
	s.joinAll(p, false)
	at := 0.0
	if p.Nip > 0 {
		at = float64(p.NipTime())
	}
	early := max(p.timeScale()/75, leastEarly)
	for i := range p.After {
		stage := &p.After[i]
		total := float64(stage.Time)
		if total == 0 {
			continue
		}
		top, bottom := s.upperEdge(lo, stage.Face), s.lowerEdge(hi-1, stage.Back)
		s.segment.set(g, lo, hi, top, bottom)
		s.place()
		n := int(math.Ceil(math.Log1p(total*(paceAfter-1)/early) / math.Log(paceAfter)))
		pace := newPace(total, paceAfter, max(leastAfter, min(n, mostAfter)))
		h, start := pace.h, at
		for k := range pace.n {
			part := h / float64(s.splitSteps)
			s.segment.factor(part)
			s.segment.top.column, s.segment.bottom.column = top.column, bottom.column
			for i := range s.splitSteps {
				s.segment.step(&s.after, part, 0, s.basis, s.watch)
				if s.detail && i < s.splitSteps-1 {
					s.readAfter(&r.First, at+part*float64(i+1), 0)
				}
			}
			s.segment.top.column, s.segment.bottom.column = s.second(top.column), s.second(bottom.column)
			for i := range s.splitSteps {
				s.segment.step(&s.after, part, s.basis, 2*s.basis, s.watch)
				if s.detail && i < s.splitSteps-1 {
					s.readAfter(&r.Steady, at+part*float64(i+1), s.basis)
				}
			}
			at += h
			if k == pace.n-1 {
				at = start + total
			}
			s.readAfter(&r.First, at, 0)
			s.readAfter(&r.Steady, at, s.basis)
			h *= pace.growth
		}
	}
	if len(p.After) > 0 {
		s.meanAfter(&r.First, 0)
		s.meanAfter(&r.Steady, s.basis)
	}
}

// meanAfter is the print's mean, by heat, in the field after the nip.
func (s *Solver) meanAfter(c *Case, from int) {
	g := &s.grid
	heat := 0.0
	c.LastMean = Row{}
	for i := g.start[printBody]; i < g.start[lowerFilm]; i++ {
		heat += g.capacity[i]
		row := s.after.row(i)[from:]
		for k, b := range s.active {
			c.LastMean[b] += g.capacity[i] * row[k]
		}
	}
	for b := range c.LastMean {
		if heat > 0 {
			c.LastMean[b] /= heat
		}
	}
	c.LastMean.fillRoom()
}

// second is a column's place in the steady run's half.
func (s *Solver) second(column int) int {
	if column == none {
		return none
	}
	return column + s.basis
}

// readAfter records the places of one case.
func (s *Solver) readAfter(c *Case, at float64, from int) {
	rec := c.record(at)
	for i := range s.readers {
		r := &s.readers[i]
		out := &rec[i]
		own := 1 - r.weight
		row := s.after.row(r.cell)[from:]
		for k, b := range s.active {
			out[b] = own * row[k]
		}
		if r.weight != 0 {
			if r.other != none {
				other := s.after.row(r.other)[from:]
				for k, b := range s.active {
					out[b] += r.weight * other[k]
				}
			} else if r.column != none {
				out[s.active[r.column]] += r.weight
			}
		}
		out.fillRoom()
	}
}
