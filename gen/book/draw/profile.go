package draw

import (
	"html/template"
	"math"
	"strings"
)

// Through is a drawing of the temperature through layers that lie one on the
// other: the layers cut through at the left, the curves beside them.
type Through struct {
	ID     string // prefix of its ids, unique on the page
	Title  string
	Desc   string
	Layers []Layer // from the top
	X      Axis    // of the temperature
	Curves []ThroughCurve
	// Level is a temperature that one face must reach, Face the layer whose top
	// it is.
	Level Level
	Face  int
}

// ThroughCurve is one temperature through all layers.
type ThroughCurve struct {
	Name   string
	Points []Inside
}

// Inside is a temperature in a layer: At goes from 0 at its top to 1 at its
// bottom. Leap says that the curve leaps here from the point before, at a
// contact that heat has to cross.
type Inside struct {
	Layer int
	At    float64
	Value float64
	Leap  bool
}

// SVG makes the drawing.
func (t Through) SVG() template.HTML {
	const (
		cut  = 92.0 // width of the layers
		top  = 42.0
		foot = 66.0
	)
	names := 24.0 // width of the layers' names, at the right
	heights := make([]float64, len(t.Layers))
	tops := make([]float64, len(t.Layers))
	y := top
	labels := make([]string, len(t.Layers))
	for i, l := range t.Layers {
		labels[i] = strings.TrimSpace(l.Name + " " + l.Size)
		names = math.Max(names, 26+tickWidth(labels[i]))
		heights[i] = math.Min(84, math.Max(16, math.Sqrt(l.Thickness*1e6)*5))
		tops[i] = y
		y += heights[i]
	}
	bottom := math.Max(y, top+24*float64(len(t.Layers)))
	f := box{x: cut + 26, y: top, w: chartWidth - cut - 26 - names, h: y - top}
	c := Chart{X: t.X}
	var v canvas
	v.open(t.ID, "chart section", chartWidth, bottom+foot, t.Title, t.Desc)
	want := make([]float64, len(t.Layers))
	for i, l := range t.Layers {
		hatch(&v, l.Matter, 2, tops[i], cut, heights[i])
		v.line("grid", f.x, tops[i], f.x+f.w, tops[i])
		want[i] = tops[i] + heights[i]/2
	}
	v.line("grid", f.x, y, f.x+f.w, y)
	for i, at := range Spread(want, 20, top+6, bottom-6) {
		right := f.x + f.w
		v.path("leader", []point{{right + 3, want[i]}, {right + 10, want[i]}, {right + 18, at}})
		v.text("tick name", "start", right+22, at+5, labels[i])
	}
	for _, tick := range Ticks(t.X.From, t.X.To, int(f.w/64)) {
		x := c.x(tick, f)
		v.line("stroke", x, y, x, y+6)
		v.text("tick", "middle", x, y+22, tickText(tick))
		if t.X.Second != nil {
			v.text("tick second", "middle", x, y+39, t.X.Second(tick))
		}
	}
	v.line("stroke", f.x, y, f.x+f.w, y)
	v.text("axis-name", "middle", f.x+f.w/2, y+foot-8, t.X.Label)
	lines := make([][]point, len(t.Curves))
	for i, curve := range t.Curves {
		for _, p := range curve.Points {
			lines[i] = append(lines[i], point{c.x(p.Value, f), tops[p.Layer] + p.At*heights[p.Layer]})
		}
		t.curve(&v, i, lines[i])
	}
	t.level(&v, c, f, tops)
	t.names(&v, f, lines)
	return v.close()
}

// curve draws a curve: thick or thin inside the layers, dotted where it leaps.
func (t Through) curve(v *canvas, i int, line []point) {
	class := "curve s" + number(float64(i%6))
	from := 0
	for k, p := range t.Curves[i].Points {
		if p.Leap {
			v.path(class, thin(line[from:k], 0.1))
			v.path("leader", line[k-1:k+1])
			from = k
		}
	}
	v.path(class, thin(line[from:], 0.1))
}

// level draws the temperature that a face must reach, and marks the face.
func (t Through) level(v *canvas, c Chart, f box, tops []float64) {
	if t.Level.Name == "" {
		return
	}
	x := c.x(t.Level.At, f)
	v.line("limit", x, f.y-8, x, f.y+f.h)
	w := labelWidth(t.Level.Name)
	at := min(max(x-w/2, f.x), chartWidth-w)
	v.text("label limit-name", "start", at, f.y-14, t.Level.Name)
	for _, curve := range t.Curves {
		for _, p := range curve.Points {
			if p.Layer == t.Face && p.At == 0 {
				v.circle("cross", c.x(p.Value, f), tops[t.Face], 5)
				break
			}
		}
	}
}

// names writes the curves' names where they cover least.
func (t Through) names(v *canvas, f box, lines [][]point) {
	var taken []box
	for i, line := range lines {
		var others [][]point
		for j, other := range lines {
			if j != i {
				others = append(others, dense(other))
			}
		}
		w := labelWidth(t.Curves[i].Name)
		p, b := place(dense(line), others, taken, w, textHeight, f)
		taken = append(taken, b)
		v.text("label", "start", p.x, p.y, t.Curves[i].Name)
	}
}
