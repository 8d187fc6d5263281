package draw

import (
	"html/template"
	"math"
)

// Axis is one axis of a chart.
type Axis struct {
	Label  string
	From   float64
	To     float64
	Log    bool
	Hours  bool                   // ticks at hours that a clock knows
	Second func(v float64) string // the tick in the other way to say it; empty leaves it out
}

// Series is one curve. X ascends.
type Series struct {
	Name string
	X, Y []float64
}

// Level is a line across the chart, such as a limit, with its name on it.
type Level struct {
	Name string
	At   float64
}

// Chart is a drawing of curves. Where a curve crosses the level it is marked
// there, since that is what a reader looks for.
type Chart struct {
	ID     string // prefix of its ids, unique on the page
	Title  string
	Desc   string
	X, Y   Axis
	Curves []Series
	Level  *Level
}

// The measures of a chart, in units of its view box: text is 15 high.
const (
	chartWidth  = 720.0
	chartHeight = 400.0
	textHeight  = 15.0
	charWidth   = 10.2 // of a bold letter in the widest of the page's faces
)

// frame is the part of the drawing that the axes enclose.
func (c Chart) frame() box {
	margin := 14.0
	for _, s := range c.Curves {
		if c.leavesRight(s) {
			margin = math.Max(margin, 16+charWidth*float64(len([]rune(s.Name))))
		}
	}
	if margin > 230 {
		margin = 230
	}
	bottom := 54.0
	if c.X.Second != nil {
		bottom = 70
	}
	return box{x: 64, y: 30, w: chartWidth - 64 - margin, h: chartHeight - 30 - bottom}
}

// leavesRight reports whether a curve ends at the right edge inside the frame.
func (c Chart) leavesRight(s Series) bool {
	if len(s.X) == 0 {
		return false
	}
	i := len(s.X) - 1
	low := c.Y.From
	return s.X[i] >= c.X.To*(1-1e-9) && s.Y[i] > low
}

// SVG draws the chart.
func (c Chart) SVG() template.HTML {
	f := c.frame()
	var v canvas
	v.open(c.ID, "chart", chartWidth, chartHeight, c.Title, c.Desc)
	c.axes(&v, f)
	lines := make([][]point, len(c.Curves))
	for i, s := range c.Curves {
		lines[i] = c.points(s, f)
	}
	c.level(&v, f, lines)
	for i, line := range lines {
		v.path("curve s"+number(float64(i%6)), thin(line, 0.15))
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
		v.text("tick", "end", f.x-8, y+5, Plain(t))
	}
	base := f.y + f.h
	for _, t := range c.ticks(c.X, 8) {
		x := c.x(t, f)
		v.line("stroke", x, base, x, base+6)
		v.text("tick", "middle", x, base+22, Plain(t))
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

func (c Chart) ticks(a Axis, count int) []float64 {
	switch {
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
	if a.Log {
		if v <= 0 {
			return -1
		}
		return (math.Log(v) - math.Log(a.From)) / (math.Log(a.To) - math.Log(a.From))
	}
	return (v - a.From) / (a.To - a.From)
}

// points is a curve on the drawing, cut off where it leaves the frame below.
func (c Chart) points(s Series, f box) []point {
	var pts []point
	base := f.y + f.h
	for i := range s.X {
		p := point{c.x(s.X[i], f), c.y(s.Y[i], f)}
		if p.x > f.x+f.w+0.01 {
			break
		}
		if p.y > base {
			if n := len(pts); n > 0 {
				q := pts[n-1]
				t := (base - q.y) / (p.y - q.y)
				pts = append(pts, point{q.x + t*(p.x-q.x), base})
			}
			break
		}
		pts = append(pts, p)
	}
	return pts
}
