package draw

import (
	"html/template"
	"math"
	"strconv"
	"strings"
)

// canvas collects the text of one drawing.
type canvas struct {
	b strings.Builder
}

// number rounds to a tenth of a unit and never gives a minus zero.
func number(v float64) string {
	r := math.Round(v*10)/10 + 0
	return strconv.FormatFloat(r, 'f', -1, 64)
}

func escape(s string) string { return template.HTMLEscapeString(s) }

func (c *canvas) raw(s string) { c.b.WriteString(s) }

// open starts the drawing: named by its title and its description.
func (c *canvas) open(id, class string, width, height float64, title, desc string) {
	c.raw(`<svg class="` + class + `" viewBox="0 0 ` + number(width) + ` ` + number(height) + `" role="img" aria-labelledby="` + id + `-t ` + id + `-d">`)
	c.raw(`<title id="` + id + `-t">` + escape(title) + `</title>`)
	c.raw(`<desc id="` + id + `-d">` + escape(desc) + `</desc>`)
}

func (c *canvas) line(class string, x1, y1, x2, y2 float64) {
	c.raw(`<path class="` + class + `" d="M` + number(x1) + ` ` + number(y1) + `L` + number(x2) + ` ` + number(y2) + `"/>`)
}

func (c *canvas) rect(class string, x, y, w, h float64) {
	c.raw(`<rect class="` + class + `" x="` + number(x) + `" y="` + number(y) + `" width="` + number(w) + `" height="` + number(h) + `"/>`)
}

func (c *canvas) circle(class string, x, y, r float64) {
	c.raw(`<circle class="` + class + `" cx="` + number(x) + `" cy="` + number(y) + `" r="` + number(r) + `"/>`)
}

// text writes s with its anchor at start, middle or end.
func (c *canvas) text(class, anchor string, x, y float64, s string) {
	c.raw(`<text class="` + class + `" text-anchor="` + anchor + `" x="` + number(x) + `" y="` + number(y) + `">` + escape(s) + `</text>`)
}

// path draws a polyline through the points.
func (c *canvas) path(class string, pts []point) {
	if len(pts) < 2 {
		return
	}
	c.raw(`<path class="` + class + `" d="`)
	for i, p := range pts {
		if i == 0 {
			c.raw("M")
		} else {
			c.raw("L")
		}
		c.raw(number(p.x) + " " + number(p.y))
	}
	c.raw(`"/>`)
}

func (c *canvas) close() template.HTML {
	c.raw("</svg>")
	return template.HTML(c.b.String())
}

// point is a place on the drawing, y downwards.
type point struct{ x, y float64 }

// thin drops points that lie within tolerance of the straight line between
// their neighbours that stay (the way of Ramer, Douglas and Peucker).
func thin(pts []point, tolerance float64) []point {
	if len(pts) < 3 {
		return pts
	}
	keep := make([]bool, len(pts))
	keep[0], keep[len(pts)-1] = true, true
	type span struct{ from, to int }
	open := []span{{0, len(pts) - 1}}
	for len(open) > 0 {
		s := open[len(open)-1]
		open = open[:len(open)-1]
		far, at := 0.0, -1
		for i := s.from + 1; i < s.to; i++ {
			if d := offLine(pts[i], pts[s.from], pts[s.to]); d > far {
				far, at = d, i
			}
		}
		if at >= 0 && far > tolerance {
			keep[at] = true
			open = append(open, span{s.from, at}, span{at, s.to})
		}
	}
	var out []point
	for i, p := range pts {
		if keep[i] {
			out = append(out, p)
		}
	}
	return out
}

// offLine is the distance of p from the line through a and b.
func offLine(p, a, b point) float64 {
	dx, dy := b.x-a.x, b.y-a.y
	length := math.Hypot(dx, dy)
	if length == 0 {
		return math.Hypot(p.x-a.x, p.y-a.y)
	}
	return math.Abs(dx*(a.y-p.y)-dy*(a.x-p.x)) / length
}

// mirror turns "x y" into "sum-x y".
func mirror(pair string, sum float64) string {
	x, y, _ := strings.Cut(pair, " ")
	v, err := strconv.ParseFloat(x, 64)
	if err != nil {
		panic("draw: mirror: " + err.Error())
	}
	return number(sum-v) + " " + y
}
