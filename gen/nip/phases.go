package nip

// pressed says that the pass meets rollers at all.
func (p *Pass) pressed() bool { return p.Nip > 0 || p.Upper.Wrap > 0 || p.Lower.Wrap > 0 }

// upperEdge is the upper end of a segment at cell i, exposed with a conductance.
func (s *Solver) upperEdge(i int, x Exposure) edge {
	return edge{exposed(s.grid.above[i], float64(x.Conductance)), s.column[x.To]}
}

// lowerEdge is the lower end of a segment at cell i.
func (s *Solver) lowerEdge(i int, x Exposure) edge {
	return edge{exposed(s.grid.below[i], float64(x.Conductance)), s.column[x.To]}
}

// rollerEdge is the end of a segment at a roller: the core under its cover, or a
// bare roller's face through the contact. half is the resistance from the node of
// the end cell to its outer face.
func (s *Solver) rollerEdge(r *Roller, half float64, covered bool, contact float64) edge {
	if !covered {
		return edge{exposed(half, contact), s.column[r.Core]}
	}
	if r.Insulated {
		return edge{0, none}
	}
	return edge{1 / half, s.column[r.Core]}
}

// join is the conductance between neighbouring cells of two bodies.
func (g *grid) join(cell int, contact float64) {
	if contact == 0 {
		g.link[cell] = 0
		return
	}
	g.link[cell] = 1 / (g.below[cell-1] + 1/contact + g.above[cell])
}

// before marches film, lower film and print through their stages ahead of the
// laminator.
func (s *Solver) before(p *Pass) {
	g := &s.grid
	for i := range p.FilmBefore {
		st := &p.FilmBefore[i]
		s.alone(g.start[filmBody], g.start[printBody], st.Face, st.Back, float64(st.Time))
		s.alone(g.start[lowerFilm], g.start[lowerCover], st.Back, st.Face, float64(st.Time))
	}
	for i := range p.PrintBefore {
		st := &p.PrintBefore[i]
		s.alone(g.start[printBody], g.start[lowerFilm], st.Face, st.Back, float64(st.Time))
	}
}

// alone marches cells with exposed faces.
func (s *Solver) alone(lo, hi int, face, back Exposure, time float64) {
	if lo == hi || time == 0 {
		return
	}
	s.segment.set(&s.grid, lo, hi, s.upperEdge(lo, face), s.lowerEdge(hi-1, back))
	s.march(&s.stack, newPace(time, paceSteady, stepsBefore), 0, s.basis)
}

// march runs the posed segment through the steps of a pace.
func (s *Solver) march(f *field, steps pace, from, to int) {
	h := steps.h
	for range steps.n {
		s.advance(f, h, from, to)
		h *= steps.growth
	}
}

// advance is one step of a pace: as many equal steps as the solver splits it in.
func (s *Solver) advance(f *field, h float64, from, to int) {
	h /= float64(s.splitSteps)
	s.segment.factor(h)
	for range s.splitSteps {
		s.segment.step(f, h, from, to, s.watch)
	}
}

// advanceKept is advance of the stack's columns up to to from the time at, with
// records between the parts of the step where details are kept.
func (s *Solver) advanceKept(h, at float64, to int) {
	h /= float64(s.splitSteps)
	s.segment.factor(h)
	for k := range s.splitSteps {
		s.segment.step(&s.stack, h, 0, to, s.watch)
		if s.detail && k < s.splitSteps-1 {
			s.keep(at + h*float64(k+1))
		}
	}
}

// wrap lays film and lower film on their rollers.
func (s *Solver) wrap(p *Pass) {
	g := &s.grid
	open := Exposure{p.OpenFace, Room}
	if wrap := float64(p.WrapTime(&p.Upper)); wrap > 0 {
		lo, hi := g.start[upperCover], g.start[printBody]
		if s.covers[0] > 0 {
			g.join(g.start[filmBody], float64(p.Upper.WrapContact))
		}
		s.segment.set(g, lo, hi, s.rollerEdge(&p.Upper, g.above[lo], s.covers[0] > 0, float64(p.Upper.WrapContact)), s.lowerEdge(hi-1, open))
		s.place()
		s.keep(-wrap)
		steps, at := newPace(wrap, paceSteady, stepsWrap), -wrap
		h := steps.h
		to := min(s.basis+(s.covers[0]+block-1)/block*block, s.stack.width)
		for k := range steps.n {
			s.advanceKept(h, at, to)
			at += h
			if k == steps.n-1 {
				at = 0
			}
			if at < 0 {
				s.keep(at)
			}
			h *= steps.growth
		}
	}
	if wrap := float64(p.WrapTime(&p.Lower)); wrap > 0 {
		lo, hi := g.start[lowerFilm], g.start[bodies]
		if s.covers[1] > 0 {
			g.join(g.start[lowerCover], float64(p.Lower.WrapContact))
		}
		s.segment.set(g, lo, hi, s.upperEdge(lo, open), s.rollerEdge(&p.Lower, g.below[hi-1], s.covers[1] > 0, float64(p.Lower.WrapContact)))
		s.march(&s.stack, newPace(wrap, paceSteady, stepsWrap), 0, s.basis)
		if from := s.coverAt[1] / block * block; s.covers[1] > 0 {
			s.march(&s.stack, newPace(wrap, paceSteady, stepsWrap), from, s.stack.width)
		}
	}
}

// nip presses the whole stack between the rollers.
func (s *Solver) nip(p *Pass) {
	g := &s.grid
	s.touch = len(s.times)
	lo, hi := g.start[upperCover], g.start[bodies]
	pressed := p.Nip > 0
	s.joinAll(p, pressed)
	if !pressed {
		lo, hi = g.start[filmBody], g.start[lowerCover]
	}
	s.segment.set(g, lo, hi,
		s.rollerEdge(&p.Upper, g.above[lo], pressed && s.covers[0] > 0, nipContact(p, &p.Upper)),
		s.rollerEdge(&p.Lower, g.below[hi-1], pressed && s.covers[1] > 0, nipContact(p, &p.Lower)))
	s.place()
	s.keepApart()
	if !pressed {
		return
	}
	total := float64(p.NipTime())
	steps, at := newPace(total, paceNip, stepsNip), 0.0
	if len(p.FilmBefore) > 0 {
		steps = newPace(total, paceShoe, stepsShoe)
	}
	h := steps.h
	for k := range steps.n {
		s.advanceKept(h, at, s.stack.width)
		at += h
		if k == steps.n-1 {
			at = total
		}
		s.keep(at)
		h *= steps.growth
	}
}

// nipContact is a roller's contact in the nip, 0 where there is no nip.
func nipContact(p *Pass, r *Roller) float64 {
	if p.Nip == 0 {
		return 0
	}
	return float64(r.NipContact)
}

// joinAll sets the contacts of the stack for the nip and after it.
func (s *Solver) joinAll(p *Pass, pressed bool) {
	g := &s.grid
	above := none
	for b := range bodies {
		if g.start[b] == g.start[b+1] {
			continue
		}
		if above != none {
			g.join(g.start[b], contactBetween(p, body(above), b, pressed))
		}
		above = int(b)
	}
}

// contactBetween is the contact conductance of two neighbouring bodies.
func contactBetween(p *Pass, above, below body, pressed bool) float64 {
	switch {
	case above == upperCover:
		return nipContact(p, &p.Upper)
	case below == lowerCover:
		return nipContact(p, &p.Lower)
	case below == lowerFilm:
		return float64(p.LowerBond)
	}
	return float64(p.Bond)
}
