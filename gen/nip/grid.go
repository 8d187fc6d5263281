package nip

import "math"

// body is a part of the stack that is whole within itself.
type body int

// The bodies from top to bottom.
const (
	upperCover body = iota
	filmBody
	printBody
	lowerFilm
	lowerCover
	bodies
)

// grading says at which face of a layer the cells are thin.
type grading int

const (
	thinTop grading = iota
	thinBottom
	thinBoth
)

// How the cells are sized. A face that is heated for a time t feels √(α·t)
// deep. The first cell at a face is at most a share of that depth for the time in
// the nip, and each further one is wider by the growth. The figures were chosen
// by measuring the error against fine grids: they leave about 0.05 K.
var (
	upperCoverSize = sizing{first: 0.45, growth: 2, least: 3}
	lowerCoverSize = sizing{first: 0.45, growth: 2.5, least: 3}
	filmSize       = sizing{first: 0.15, growth: 1.25, least: 2}
	printSize      = sizing{first: 0.15, growth: 1.2, least: 1}
)

// leastPrint is the fewest cells of a print's thickest layer, and mostChosen the
// most of any layer that does not ask for a number.
const (
	leastPrint = 5
	mostChosen = 40
)

// shoeEarlier is how much earlier than the nip's end the cells of a film from a
// heat shoe have to be right.
const shoeEarlier = 20

// sizing is how a layer is cut.
type sizing struct {
	first, growth float64
	least         int
}

// grid holds the cells of all bodies, top to bottom.
type grid struct {
	capacity []float64 // ρ·c·width, J/(m² K)
	above    []float64 // resistance from a cell's node to its upper face, m²K/W
	below    []float64 // and to its lower face
	width    []float64 // m
	link     []float64 // conductance to the cell above within the body, W/(m² K)
	start    [bodies + 1]int
}

// layout cuts the pass into cells.
func (g *grid) layout(p *Pass, split int) {
	g.capacity, g.width, g.link = g.capacity[:0], g.width[:0], g.link[:0]
	g.above, g.below = g.above[:0], g.below[:0]
	scale := p.timeScale()
	pressed := p.pressed()
	if pressed && !p.Upper.bare() {
		g.cut(&p.Upper.Cover, upperCoverSize, scale, 0, thinBottom, split)
	}
	g.start[filmBody] = len(g.width)
	for i := range p.Film {
		g.cut(&p.Film[i], filmSize, scale, 0, thinBottom, split)
	}
	g.start[printBody] = len(g.width)
	shape := thinTop
	if len(p.LowerFilm) > 0 {
		shape = thinBoth
	}
	thickest, depth := 0, 0.0
	for i := range p.Print {
		if p.Print[i].Thickness > p.Print[thickest].Thickness {
			thickest = i
		}
	}
	for i := range p.Print {
		size := printSize
		if i == thickest {
			size.least = leastPrint
		}
		g.cut(&p.Print[i], size, scale, depth, shape, split)
		depth += float64(p.Print[i].Thickness)
	}
	g.start[lowerFilm] = len(g.width)
	for i := len(p.LowerFilm) - 1; i >= 0; i-- {
		g.cut(&p.LowerFilm[i], filmSize, scale, 0, thinTop, split)
	}
	g.start[lowerCover] = len(g.width)
	if pressed && !p.Lower.bare() {
		size := lowerCoverSize
		if len(p.LowerFilm) > 0 {
			size = upperCoverSize
		}
		g.cut(&p.Lower.Cover, size, scale, 0, thinTop, split)
	}
	g.start[bodies] = len(g.width)
	for b := range bodies {
		for i := g.start[b]; i < g.start[b+1]; i++ {
			if i == g.start[b] {
				g.link = append(g.link, 0)
				continue
			}
			g.link = append(g.link, 1/(g.below[i-1]+g.above[i]))
		}
	}
}

// timeScale is the time that the thinnest cells are made for: that in the nip,
// or, where there is none, a twentieth of the stages.
func (p *Pass) timeScale() float64 {
	if p.Nip > 0 && len(p.FilmBefore) > 0 {
		// A film that comes hot from a shoe has its hottest bond line early.
		return float64(p.NipTime()) / shoeEarlier
	}
	if p.Nip > 0 {
		return float64(p.NipTime())
	}
	total := 0.0
	for i := range p.After {
		total += float64(p.After[i].Time)
	}
	for i := range p.PrintBefore {
		total += float64(p.PrintBefore[i].Time)
	}
	if total == 0 {
		return 1
	}
	return total / 20
}

// cut appends a layer's cells. depth is how far below the heated face it begins.
func (g *grid) cut(l *Layer, size sizing, scale, depth float64, shape grading, split int) {
	part, ratio, n := float64(l.Thickness), size.growth, l.Cells
	if shape == thinBoth {
		part /= 2
		depth = 0
		n = (n + 1) / 2
		size.least = (size.least + 1) / 2
	}
	if n == 0 {
		thin := size.first*math.Sqrt(float64(l.Diffusivity())*scale) + depth*(ratio-1)
		n = int(math.Ceil(math.Log1p(part*(ratio-1)/thin) / math.Log(ratio)))
		n = max(size.least, min(n, mostChosen))
	}
	w := part * (ratio - 1) / (math.Pow(ratio, float64(n)) - 1)
	switch shape {
	case thinTop:
		g.run(l, w, ratio, n, split)
	case thinBottom:
		g.run(l, w*math.Pow(ratio, float64(n-1)), 1/ratio, n, split)
	case thinBoth:
		g.run(l, w, ratio, n, split)
		g.run(l, w*math.Pow(ratio, float64(n-1)), 1/ratio, n, split)
	}
}

// run appends n cells, the first w wide and each further one ratio times the one
// before; each is split further in the same way. Faces lie at x(ξ) =
// w·(ratio^ξ − 1)/(ratio − 1), ξ = 0, 1, 2 …, and a cell's node lies not in its
// middle but at x(ξ + ½), so that the cells are even in ξ. On growing cells that
// is what keeps the error small (D. Ingerman, V. Druskin and L. Knizhnerman,
// Comm. Pure Appl. Math. 53 (2000) 1039, on optimal geometric grids; numbers
// from memory).
func (g *grid) run(l *Layer, w, ratio float64, n, split int) {
	fine := math.Pow(ratio, 1/float64(split))
	if split > 1 {
		w *= (fine - 1) / (ratio - 1)
	}
	upper := 1 / (1 + math.Sqrt(fine))
	for range n * split {
		g.width = append(g.width, w)
		g.capacity = append(g.capacity, float64(l.Density)*float64(l.SpecificHeat)*w)
		r := w / float64(l.Conductivity)
		g.above = append(g.above, r*upper)
		g.below = append(g.below, r*(1-upper))
		w *= fine
	}
}
