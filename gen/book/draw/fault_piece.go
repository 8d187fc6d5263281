package draw

import (
	"math"
	"strings"
)

// The parts of a drawing of a fault: the piece from above, and a cut through it
// below where what lies under the film tells more.
var (
	whole = box{8, 24, 224, 148} // a piece from above that has the drawing to itself
	above = box{8, 24, 224, 96}  // a piece from above with a cut below it
	below = box{8, 128, 224, 46} // the cut
)

// inset is a box made smaller on all sides.
func (b box) inset(by float64) box { return box{b.x + by, b.y + by, b.w - 2*by, b.h - 2*by} }

// at is the place in a box at shares of its width and height.
func (b box) at(across, down float64) point { return point{b.x + across*b.w, b.y + down*b.h} }

// feed draws the arrow of the feed over the piece.
func feed(v *canvas) {
	v.text("tick", "start", 8, 16, "feed")
	arrow(v, point{38, 12}, point{76, 12})
}

// note writes a word or two at the top right, over the piece.
func note(v *canvas, s string) { v.text("tick", "end", faultWidth-8, 16, s) }

// arrow draws a thin line with a head at its end.
func arrow(v *canvas, from, to point) {
	v.path("thin", []point{from, to})
	v.path("thin", arrowHead(from, to))
}

// arrowHead is the two strokes at the end of an arrow.
func arrowHead(from, to point) []point {
	length := math.Hypot(to.x-from.x, to.y-from.y)
	ux, uy := (to.x-from.x)/length, (to.y-from.y)/length
	back, side := 6.0, 3.0
	return []point{
		{to.x - back*ux + side*uy, to.y - back*uy - side*ux}, to,
		{to.x - back*ux - side*uy, to.y - back*uy + side*ux},
	}
}

// measureLine draws a line with a head at both ends and its name, if it has
// one, over it.
func measureLine(v *canvas, from, to point, name string) {
	v.path("thin", []point{from, to})
	v.path("thin", arrowHead(from, to))
	v.path("thin", arrowHead(to, from))
	if name != "" {
		v.text("tick", "middle", (from.x+to.x)/2, from.y-4, name)
	}
}

// piece draws the outline of a laminated piece from above.
func piece(v *canvas, b box) { v.rect("outline", b.x, b.y, b.w, b.h) }

// boat draws the print: the sail and the hull of a boat, full of dark ink.
func boat(v *canvas, b box) {
	for _, part := range boatParts(b) {
		area(v, "solid", part)
	}
}

// boatParts are the outlines of the boat's dark parts, the hull first.
func boatParts(b box) [][]point {
	return [][]point{
		{b.at(0.12, 0.66), b.at(0.88, 0.66), b.at(0.76, 0.94), b.at(0.24, 0.94)},
		{b.at(0.47, 0.06), b.at(0.47, 0.58), b.at(0.18, 0.58)},
		{b.at(0.52, 0.14), b.at(0.80, 0.58), b.at(0.52, 0.58)},
	}
}

// area draws a closed shape.
func area(v *canvas, class string, pts []point) {
	v.path(class, append(append([]point(nil), pts...), pts[0]))
}

// inside says whether a place lies within a closed shape.
func inside(p point, shape []point) bool {
	in := false
	for i, j := 0, len(shape)-1; i < len(shape); j, i = i, i+1 {
		a, b := shape[i], shape[j]
		if (a.y > p.y) != (b.y > p.y) && p.x < (b.x-a.x)*(p.y-a.y)/(b.y-a.y)+a.x {
			in = !in
		}
	}
	return in
}

// scatter gives n places in the unit square that look scattered and never
// clump, the same each time: Halton's sequence in bases two and three.
func scatter(n int) []point {
	places := make([]point, n)
	for i := range places {
		places[i] = point{radical(i+1, 2), radical(i+1, 3)}
	}
	return places
}

// radical mirrors the digits of i in a base about the point.
func radical(i, base int) float64 {
	share, value := 1.0, 0.0
	for ; i > 0; i /= base {
		share /= float64(base)
		value += share * float64(i%base)
	}
	return value
}

// bubble draws a bubble from above: a ring, and the light on its upper left.
func bubble(v *canvas, p point, r float64) {
	v.circle("hollow", p.x, p.y, r)
	if r < 2.5 {
		return
	}
	var light []point
	for _, degrees := range []float64{180, 205, 230, 255, 280} {
		a := degrees * math.Pi / 180
		light = append(light, point{p.x + 0.62*r*math.Cos(a), p.y + 0.62*r*math.Sin(a)})
	}
	v.path("thin", light)
}

// curve samples a line: y of x from one end to the other.
func curve(from, to float64, steps int, y func(x float64) float64) []point {
	pts := make([]point, steps+1)
	for i := range pts {
		x := from + (to-from)*float64(i)/float64(steps)
		pts[i] = point{x, y(x)}
	}
	return thin(pts, 0.15)
}

// bump is a smooth hump of height 1 and half-width w about a place, flat at its
// foot.
func bump(x, at, w float64) float64 {
	d := math.Abs(x-at) / w
	if d >= 1 {
		return 0
	}
	c := math.Cos(d * math.Pi / 2)
	return c * c
}

// sheetCut draws the print cut through: a bar of fibre with its ink on top.
func sheetCut(v *canvas, b box, ink bool) {
	hatch(v, FibreMatter, b.x, b.y, b.w, b.h)
	if ink {
		v.rect("solid", b.x, b.y-3, b.w, 3)
	}
}

// filmThickness is that of a film in a cut.
const filmThickness = 5.0

// filmCut draws the film cut through along a line that its under face follows
// from left to right.
func filmCut(v *canvas, face []point) {
	over := make([]point, len(face))
	for i, p := range face {
		a, b := face[max(i-1, 0)], face[min(i+1, len(face)-1)]
		length := math.Hypot(b.x-a.x, b.y-a.y)
		over[len(face)-1-i] = point{p.x + filmThickness*(b.y-a.y)/length, p.y - filmThickness*(b.x-a.x)/length}
	}
	area(v, "film", append(append([]point(nil), face...), over...))
}

// specks draws dots as short strokes with round ends, as one path.
func specks(v *canvas, class string, places []point) {
	var d strings.Builder
	for _, p := range places {
		d.WriteString("M" + number(p.x) + " " + number(p.y) + "h0.1")
	}
	v.raw(`<path class="` + class + `" d="` + d.String() + `"/>`)
}

// strokes draws many lines as one path.
func strokes(v *canvas, class string, lines [][]point) {
	var d strings.Builder
	for _, line := range lines {
		step := "M"
		for _, p := range line {
			d.WriteString(step + number(p.x) + " " + number(p.y))
			step = "L"
		}
	}
	v.raw(`<path class="` + class + `" d="` + d.String() + `"/>`)
}
