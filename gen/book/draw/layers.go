package draw

import (
	"html/template"
	"math"
	"strings"
)

// Matter is what a layer is made of; each has its own hatch, the same in every
// drawing.
type Matter string

// The matters that the handbook draws.
const (
	FilmMatter     Matter = "film"
	AdhesiveMatter Matter = "adhesive"
	InkMatter      Matter = "ink"
	CoatMatter     Matter = "coat"
	FibreMatter    Matter = "fibre"
	PlasticMatter  Matter = "plastic"
	LinerMatter    Matter = "liner"
	RubberMatter   Matter = "rubber"
	SteelMatter    Matter = "steel"
)

// Layer is one layer of a section, from the top.
type Layer struct {
	Matter    Matter
	Name      string
	Size      string  // its thickness as a person reads it
	Thickness float64 // metres; 0 where it is not known
	Gap       bool    // stands off from the layer above it
}

// Section draws layers one on the other, cut through, each with its hatch and
// its name beside it. Thin layers are drawn thicker than they are: heights go
// by the square root of the thickness, and the drawing says so.
func Section(id, title string, layers []Layer) template.HTML {
	const (
		left = 2.0
		gap  = 16.0
	)
	heights := make([]float64, len(layers))
	total := 6.0
	for i, l := range layers {
		heights[i] = math.Min(90, math.Max(9, math.Sqrt(l.Thickness*1e6)*6))
		if l.Gap {
			total += gap
		}
		total += heights[i]
	}
	var names []string
	want := make([]float64, len(layers))
	tops := make([]float64, len(layers))
	y := 3.0
	for i, l := range layers {
		if l.Gap {
			y += gap
		}
		tops[i] = y
		want[i] = y + heights[i]/2
		y += heights[i]
		name := l.Name
		if l.Size != "" {
			name += " " + l.Size
		}
		names = append(names, name)
	}
	width := 240.0 // less where a name needs the room
	for _, name := range names {
		width = math.Min(width, chartWidth-left-46-labelWidth(name)*RegularShare)
	}
	width = math.Max(width, 120)
	high := math.Max(total, 24*float64(len(layers)))
	var v canvas
	v.open(id, "section", chartWidth, high+22, title, "From the top: "+strings.Join(names, "; ")+".")
	for i, l := range layers {
		hatch(&v, l.Matter, left, tops[i], width, heights[i])
	}
	for i, at := range Spread(want, 22, 12, high-8) {
		v.path("thin", []point{{left + width, want[i]}, {left + width + 14, want[i]}, {left + width + 30, at}, {left + width + 36, at}})
		v.text("label layer", "start", left+width+42, at+5, names[i])
	}
	v.text("tick", "start", left, high+16, "thickness not to scale")
	return v.close()
}

// hatch fills a box with the lines of a matter and draws its outline.
func hatch(v *canvas, m Matter, x, y, w, h float64) {
	stroke := func(class, d string) {
		if d != "" {
			v.raw(`<path class="` + class + `" d="` + d + `"/>`)
		}
	}
	switch m {
	case FilmMatter:
		stroke("thin", slant(x, y, w, h, 14))
	case LinerMatter:
		stroke("thin", slant(x, y, w, h, 14)+flip(slant(x, y, w, h, 14), 2*x+w))
	case AdhesiveMatter:
		stroke("dots", dots(x, y, w, h))
	case InkMatter:
		v.rect("solid", x, y, w, h)
	case CoatMatter:
		stroke("thin", rules(x, y, w, h, 4))
	case FibreMatter:
		stroke("thin", fibres(x, y, w, h))
	case RubberMatter:
		stroke("thin", slant(x, y, w, h, 8)+flip(slant(x, y, w, h, 8), 2*x+w))
	case SteelMatter:
		stroke("thin", slant(x, y, w, h, 18)+slant(x+4, y, w-4, h, 18))
	case PlasticMatter:
		stroke("thin", flip(slant(x, y, w, h, 22), 2*x+w))
	}
	v.rect("outline", x, y, w, h)
}

// rules is level lines, pitch apart.
func rules(x, y, w, h, pitch float64) string {
	var b strings.Builder
	for at := y + pitch; at < y+h-1; at += pitch {
		b.WriteString("M" + number(x) + " " + number(at) + "L" + number(x+w) + " " + number(at))
	}
	return b.String()
}

// dots is short strokes in staggered rows: with round caps they are dots.
func dots(x, y, w, h float64) string {
	var b strings.Builder
	row := 0
	for at := y + math.Min(5, h/2); at < y+h-1.5; at += 6 {
		for from := x + 6 + float64(row%2)*5; from < x+w-2; from += 10 {
			b.WriteString("M" + number(from) + " " + number(at) + "h0.1")
		}
		row++
	}
	return b.String()
}

// fibres is short waves in staggered rows.
func fibres(x, y, w, h float64) string {
	var b strings.Builder
	row := 0
	for at := y + math.Min(8, h/2); at < y+h-2; at += 10 {
		for from := x + 6 + float64(row%3)*9; from < x+w-24; from += 32 {
			b.WriteString("M" + number(from) + " " + number(at) + "q5 -5 10 0t10 0")
		}
		row++
	}
	return b.String()
}

// flip mirrors a path of M and L about a vertical: x becomes sum - x.
func flip(d string, sum float64) string {
	var b strings.Builder
	for _, part := range strings.FieldsFunc(d, func(r rune) bool { return r == 'M' }) {
		a, z, _ := strings.Cut(part, "L")
		b.WriteString("M" + mirror(a, sum) + "L" + mirror(z, sum))
	}
	return b.String()
}
