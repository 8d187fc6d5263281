package draw

import (
	"html/template"
	"math"
	"strings"
)

// Axis is one axis of a chart.
type Axis struct {
	Label  string
	From   float64
	To     float64
	Log    bool
	Hours  bool                   // ticks at hours that a clock knows
	Second func(v float64) string // the tick in the other way to say it; empty leaves it out
	Parts  []Part                 // stretches of the axis, each with a scale of its own; empty for one scale
}

// Series is one curve. X ascends.
type Series struct {
	Name string
	X, Y []float64
	Line int // the line that it is drawn with, counted from 1; 0 takes the next
}

// Level is a line across the chart, such as a limit, with its name on it.
type Level struct {
	Name string
	At   float64
	From float64 // where along the horizontal axis it begins to hold
}

// Chart is a drawing of curves. Where a curve crosses the level it is marked
// there, since that is what a reader looks for.
type Chart struct {
	ID     string // prefix of its ids, unique on the page
	Title  string
	Desc   string
	X, Y   Axis
	Curves []Series
	Bands  []Band // under the curves
	Level  *Level // curves are marked where they fall to it
	Others []Level
}

// The measures of a chart, in units of its view box: text is 15 high.
const (
	chartWidth  = 720.0
	chartHeight = 400.0
	textHeight  = 15.0
)

// frame is the part of the drawing that the axes enclose.
func (c Chart) frame() box {
	margin := 14.0
	for _, s := range c.Curves {
		if c.leavesRight(s) {
			margin = math.Max(margin, 18+labelWidth(s.Name))
		}
	}
	if margin > 230 {
		margin = 230
	}
	top := 30.0
	if len(c.X.Parts) > 0 || c.Y.Second != nil {
		top = 44
	}
	bottom := 54.0
	if c.X.Second != nil {
		bottom = 70
	}
	return box{x: 64, y: top, w: chartWidth - 64 - margin, h: chartHeight - top - bottom}
}

// leavesRight reports whether a curve ends at the right edge inside the frame.
func (c Chart) leavesRight(s Series) bool {
	if len(s.X) == 0 {
		return false
	}
	i := len(s.X) - 1
	return s.X[i] >= c.X.To*(1-1e-9) && s.Y[i] > c.Y.From && s.Y[i] <= c.Y.To*(1+1e-9)
}

// SVG draws the chart.
func (c Chart) SVG() template.HTML {
	f := c.frame()
	var v canvas
	v.open(c.ID, "chart", chartWidth, chartHeight, c.Title, c.Desc)
	c.bands(&v, f)
	c.axes(&v, f)
	lines := make([][]point, len(c.Curves))
	for i, s := range c.Curves {
		lines[i] = c.points(s, f)
	}
	close := make([][]point, len(lines))
	for i := range lines {
		close[i] = dense(lines[i])
	}
	if c.Level != nil {
		c.level(&v, f, close, *c.Level)
	}
	for _, l := range c.Others {
		c.level(&v, f, close, l)
	}
	for i, line := range lines {
		style := i
		if n := c.Curves[i].Line; n > 0 {
			style = n - 1
		}
		v.path("curve s"+number(float64(style%6)), thin(line, 0.15))
	}
	c.crossings(&v, f)
	c.names(&v, f, lines)
	return v.close()
}

func (c Chart) axes(v *canvas, f box) {
	v.text("axis-name", "start", 4, 16, c.Y.Label)
	for _, t := range c.ticks(c.Y, 6) {
		y := c.y(t, f)
		v.line("grid", f.x, y, f.x+f.w, y)
		if c.Y.Second == nil {
			v.text("tick", "end", f.x-8, y+5, tickText(t))
			continue
		}
		up := 0.0
		if y > f.y+f.h-13 { // clear of the other axis
			up = 13
		}
		v.text("tick", "end", f.x-8, y-1-up, tickText(t))
		v.text("tick second", "end", f.x-8, y+13-up, c.Y.Second(t))
	}
	base := f.y + f.h
	c.parts(v, f)
	free := 0.0 // from here a tick may be written
	for _, t := range c.ticks(c.X, 8) {
		x := c.x(t, f)
		v.line("stroke", x, base, x, base+6)
		half := tickWidth(tickText(t)) / 2
		if x-half < free {
			continue
		}
		free = x + half + 5
		v.text("tick", "middle", x, base+22, tickText(t))
		if c.X.Second != nil {
			if s := c.X.Second(t); s != "" {
				v.text("tick second", "middle", x, base+39, s)
			}
		}
	}
	v.line("stroke", f.x, base, f.x+f.w, base)
	v.line("stroke", f.x, f.y, f.x, base)
	v.text("axis-name", "middle", f.x+f.w/2, chartHeight-6, c.X.Label)
}

// tickText is a tick's number, with a true minus.
func tickText(v float64) string { return strings.Replace(Plain(v), "-", "−", 1) }

func (c Chart) ticks(a Axis, count int) []float64 {
	switch {
	case len(a.Parts) > 0:
		return a.partTicks()
	case a.Log:
		return LogTicks(a.From, a.To)
	case a.Hours:
		return HourTicks(a.From, a.To, count)
	}
	return Ticks(a.From, a.To, count)
}

func (c Chart) x(v float64, f box) float64 { return f.x + f.w*along(c.X, v) }
func (c Chart) y(v float64, f box) float64 { return f.y + f.h*(1-along(c.Y, v)) }

// along is a value's place on its axis, 0 to 1.
func along(a Axis, v float64) float64 {
	if len(a.Parts) > 0 {
		return a.alongParts(v)
	}
	if a.Log {
		if v <= 0 {
			return -1
		}
		return (math.Log(v) - math.Log(a.From)) / (math.Log(a.To) - math.Log(a.From))
	}
	return (v - a.From) / (a.To - a.From)
}

// points is a curve on the drawing, cut off where it leaves the frame.
func (c Chart) points(s Series, f box) []point {
	var pts []point
	for i := range s.X {
		p := point{c.x(s.X[i], f), c.y(s.Y[i], f)}
		if p.x > f.x+f.w+0.01 {
			break
		}
		edge := p.y
		switch {
		case p.y > f.y+f.h:
			edge = f.y + f.h
		case p.y < f.y:
			edge = f.y
		}
		if edge != p.y {
			if n := len(pts); n > 0 {
				q := pts[n-1]
				pts = append(pts, point{q.x + (edge-q.y)/(p.y-q.y)*(p.x-q.x), edge})
				break
			}
			continue
		}
		pts = append(pts, p)
	}
	return pts
}
