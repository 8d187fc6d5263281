package nip

// Solver runs passes. It keeps its storage, so that from the second pass of a
// kind on a Run allocates nothing. It is not for use by several goroutines at
// once: give each its own.
type Solver struct {
	grid    grid
	segment segment
	stack   field // film and print, with the covers
	idle    field // a cover alone
	after   field // film and print after the nip, both cases

	column  [Boundaries]int // of each boundary in the stack's field; none
	active  []Boundary      // those that have a column, in its order
	coverAt [2]int          // first column of the upper and lower cover's cells
	covers  [2]int          // and how many cells they have
	basis   int             // first of all cover columns
	readers [Places]reader
	records []float64 // of each record, Places rows of columns
	times   []float64
	touch   int

	matrix []float64 // 1 − M of the fixed point
	fixed  []float64 // right sides, then the covers' steady cells, a row of active boundaries each

	// split cuts each cell, and each step, into this many: for convergence.
	splitCells, splitSteps int
	// detail keeps a record after each part of a step too: for drawings.
	detail bool
	// watch, if set, sees each stage of each step: for balances.
	watch watch
}

// NewSolver makes a solver.
func NewSolver() *Solver { return &Solver{splitCells: 1, splitSteps: 1} }

// NewDetailedSolver makes a solver with more cells, more steps and a record after
// each: slower, for curves that are looked at.
func NewDetailedSolver() *Solver { return &Solver{splitCells: 3, splitSteps: 5, detail: true} }

// The steps of each phase: how many there are and how fast they grow. They were
// chosen by measuring the error against many steps: they leave about 0.05 K.
const (
	stepsBefore = 10
	stepsWrap   = 6
	stepsNip    = 9
	stepsShoe   = 32 // in the nip, of a film that comes hot from a shoe: its bond line is hottest early
	stepsIdle   = 5
	leastAfter  = 4
	mostAfter   = 40
	paceSteady  = 1.25
	paceNip     = 1.25
	paceShoe    = 1.16
	paceIdle    = 1.8
	paceAfter   = 1.3
)

// Run finds the responses of a pass, for the first piece and the steady run.
func (s *Solver) Run(p *Pass, r *Response) error {
	if err := p.check(); err != nil {
		return err
	}
	s.prepare(p)
	g := &s.grid
	s.before(p)
	s.wrap(p)
	s.nip(p)
	if err := s.steady(p); err != nil {
		return err
	}
	r.cells(p, g)
	r.First.reset(len(g.width))
	r.Steady.reset(len(g.width))
	s.report(p, &r.First, false)
	s.report(p, &r.Steady, true)
	s.run(p, r)
	return sense(p, &r.Steady)
}

// prepare cuts the stack into cells, gives each boundary and each cover cell a
// column, and fills in what each is at the start.
func (s *Solver) prepare(p *Pass) {
	g := &s.grid
	g.layout(p, s.splitCells)
	n := len(g.width)
	s.segment.room(n)

	used := [Boundaries]bool{Film: len(p.Film)+len(p.LowerFilm) > 0, Print: len(p.Print) > 0}
	for _, stages := range [...][]Stage{p.FilmBefore, p.PrintBefore, p.After} {
		for i := range stages {
			used[stages[i].Face.To] = true
			used[stages[i].Back.To] = true
		}
	}
	if p.pressed() {
		used[p.Upper.Core] = true
		used[p.Lower.Core] = true
	}
	s.active = s.active[:0]
	s.column[Room] = none
	for b := Set; b < Boundaries; b++ {
		s.column[b] = none
		if used[b] {
			s.column[b] = len(s.active)
			s.active = append(s.active, b)
		}
	}
	// The covers' columns start a block of their own, so that phases that do
	// not know a cover can leave them out.
	s.basis = (len(s.active) + block - 1) / block * block
	s.covers[0] = g.start[filmBody] - g.start[upperCover]
	s.covers[1] = g.start[bodies] - g.start[lowerCover]
	s.coverAt[0] = s.basis
	s.coverAt[1] = s.basis + s.covers[0]
	s.stack.shape(0, n, s.basis+s.covers[0]+s.covers[1])
	for j := range s.covers[0] {
		s.stack.row(j)[s.coverAt[0]+j] = 1
	}
	for j := range s.covers[1] {
		s.stack.row(g.start[lowerCover] + j)[s.coverAt[1]+j] = 1
	}
	for i := g.start[filmBody]; i < g.start[lowerCover]; i++ {
		b := Film
		if i >= g.start[printBody] && i < g.start[lowerFilm] {
			b = Print
		}
		s.stack.row(i)[s.column[b]] = 1
	}
	s.times, s.records = s.times[:0], s.records[:0]
}
