package draw

import (
	"html/template"
	"math"
	"strings"
)

// Rim is how deep the border of a stack has changed after a time.
type Rim struct {
	Name  string
	Size  string  // its depth as a person reads it
	Depth float64 // metres, from each side
}

// Rims draws a stack from above, to scale, with the borders that have changed after
// several times, the least deep first. What the deepest has left unchanged stays white.
func Rims(id, title string, length, width float64, rims []Rim) template.HTML {
	const (
		left, top   = 2.0, 4.0
		mostW       = 400.0
		mostH       = 330.0
		names       = 30.0 // from the sheet to the names
		nameSpacing = 24.0
	)
	scale := math.Min(mostW/length, mostH/width)
	w, h := length*scale, width*scale
	height := math.Max(h, nameSpacing*float64(len(rims)+1)) + top + 30

	var said []string
	for _, r := range rims {
		said = append(said, r.Name+": "+r.Size)
	}
	var v canvas
	v.open(id, "section", chartWidth, height, title, "From above, to scale. Depth of the border "+strings.Join(said, "; ")+".")
	deepest := 0.0
	for _, r := range rims {
		deepest = math.Max(deepest, r.Depth)
	}
	ring(&v, left, top, w, h, math.Min(deepest*scale, math.Min(w, h)/2))
	for i, r := range rims {
		d := r.Depth * scale
		if 2*d >= math.Min(w, h) {
			continue // through: there is no inner edge to draw
		}
		v.rect("rim r"+number(float64(i%3)), left+d, top+d, w-2*d, h-2*d)
	}
	v.rect("outline", left, top, w, h)
	want := make([]float64, len(rims))
	for i := range rims {
		// Each name leads to its own edge, a little lower for each.
		want[i] = top + h*float64(i+1)/float64(len(rims)+1)
	}
	for i, at := range Spread(want, nameSpacing, top+10, height-34) {
		x := left + w - math.Min(rims[i].Depth*scale, w/2)
		v.path("lead", []point{{x, want[i]}, {left + w + 14, want[i]}, {left + w + names - 6, at}})
		v.text("label", "start", left+w+names, at+5, rims[i].Name+": "+rims[i].Size)
	}
	v.text("tick", "start", left, height-6, "seen from above, to scale; white: less than half changed")
	return v.close()
}

// ring hatches a border of a depth inside a box.
func ring(v *canvas, x, y, w, h, depth float64) {
	if depth < 0.5 {
		return
	}
	d := slant(x, y, w, depth, 9) + slant(x, y+h-depth, w, depth, 9)
	if h > 2*depth {
		d += slant(x, y+depth, depth, h-2*depth, 9) + slant(x+w-depth, y+depth, depth, h-2*depth, 9)
	}
	v.raw(`<path class="thin" d="` + d + `"/>`)
}
