package book

import (
	"fmt"
	"html/template"
	"math"
	"strconv"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// figure sets a drawing with its caption, and its numbers in a fold after it: a
// caption must be the last thing in a figure.
func figure(drawing template.HTML, caption string, numbers template.HTML) template.HTML {
	return `<figure class="figure">` + drawing + `<figcaption>` + template.HTML(template.HTMLEscapeString(caption)) + `</figcaption></figure>` + numbers
}

// drawCurves draws what is left in prints against time, with the limit across.
func (b *builder) drawCurves(id, title, caption string, curves []tables.Curve) template.HTML {
	if len(curves) == 0 {
		return ""
	}
	limit, unit := curves[0].Limit, curves[0].Unit
	c := draw.Chart{ID: id, Title: title}
	top, least, last := 0.0, math.Inf(1), 0.0
	for _, curve := range curves {
		s := draw.Series{Name: curve.Name}
		for i, t := range curve.Times {
			s.X = append(s.X, t.Hours())
			s.Y = append(s.Y, curve.Left[i])
			top = math.Max(top, curve.Left[i])
			least = math.Min(least, curve.Left[i])
			last = math.Max(last, t.Hours())
		}
		c.Curves = append(c.Curves, s)
	}
	c.X = draw.Axis{Label: "hours since printing", From: 0, To: last, Hours: true, Second: dayTick}
	c.Y = draw.Axis{Label: "carrier left, " + unit, From: 0, To: niceTop(top)}
	if unit != "g/m²" {
		c.Y.Label = "left, " + unit
	}
	name := "limit " + short3(limit) + " " + unit
	if limit > 0 {
		c.Y.Log = true
		c.Y.From = niceBottom(math.Max(limit/4, math.Min(least, limit)))
		c.Level = &draw.Level{Name: name, At: limit}
	}
	c.Desc = describe(c, unit)
	return figure(c.SVG(), caption, b.part("numbers", numbersOf(c, unit)))
}

// describe says in words what the curves show, from their own numbers.
func describe(c draw.Chart, unit string) string {
	text := ""
	for _, s := range c.Curves {
		if len(s.Y) == 0 {
			continue
		}
		end := fmt.Sprintf("%s begins at %s %s", s.Name, short3(s.Y[0]), unit)
		at, ok := 0.0, false
		if c.Level != nil {
			at, ok = draw.Crossing(s, c.Level.At)
		}
		switch {
		case ok:
			end += fmt.Sprintf(" and is down to the limit after %s hours. ", short3(at))
		default:
			end += fmt.Sprintf(" and still holds %s %s after %s hours. ", short3(s.Y[len(s.Y)-1]), unit, short3(s.X[len(s.X)-1]))
		}
		text += end
	}
	if c.Level != nil {
		text += "The limit is " + short3(c.Level.At) + " " + unit + "."
	}
	return text
}

// numbers is the table after a drawing.
type numbers struct {
	ID    string
	Title string
	Heads []string
	Rows  [][]string
}

// numbersOf reads every curve at the ticks of the time axis.
func numbersOf(c draw.Chart, unit string) numbers {
	n := numbers{ID: c.ID + "-n", Title: c.Title + ", in numbers", Heads: []string{"hours"}}
	for _, s := range c.Curves {
		n.Heads = append(n.Heads, s.Name+", "+unit)
	}
	for _, t := range draw.HourTicks(c.X.From, c.X.To, 12) {
		row := []string{draw.Plain(t)}
		for _, s := range c.Curves {
			row = append(row, at(s, t))
		}
		n.Rows = append(n.Rows, row)
	}
	return n
}

// at reads a curve at a time, by a straight line between its points.
func at(s draw.Series, x float64) string {
	for i := range s.X {
		if s.X[i] < x-1e-9 {
			continue
		}
		if i == 0 || s.X[i] <= x+1e-9 {
			return short3(s.Y[i])
		}
		t := (x - s.X[i-1]) / (s.X[i] - s.X[i-1])
		return short3(s.Y[i-1] + t*(s.Y[i]-s.Y[i-1]))
	}
	return "–"
}

// short3 writes a number to three significant digits, without an exponent for
// what a person reads.
func short3(v float64) string {
	if v == 0 || math.Abs(v) < 1e-6 {
		return "0"
	}
	r, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 3, 64), 64)
	return strconv.FormatFloat(r, 'f', -1, 64)
}

func niceTop(v float64) float64 {
	base := math.Pow(10, math.Floor(math.Log10(v)))
	for _, f := range []float64{1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10} {
		if f*base >= v*(1-1e-9) {
			return f * base
		}
	}
	return v
}

func niceBottom(v float64) float64 {
	base := math.Pow(10, math.Floor(math.Log10(v)))
	best := base
	for _, f := range []float64{1, 2, 5} {
		if f*base <= v*(1+1e-9) {
			best = f * base
		}
	}
	return best
}

func dayTick(h float64) string {
	d := h / 24
	if h == 0 || math.Abs(d-math.Round(d)) > 1e-6 {
		return ""
	}
	return plural(int(math.Round(d)), "day", "days")
}

// upTo is how far drawings of these cases go: a sixth beyond the longest wait
// that ends, in whole half days, at least one day and at most fourteen.
func (b *builder) upTo(cases []tables.WaitCase) quantity.Time {
	longest := quantity.Time(0)
	for _, c := range cases {
		if v, ok := b.waits.get(c); ok && v.Dries {
			longest = max(longest, v.Computed)
		}
	}
	half := 12 * quantity.Hour
	n := math.Ceil(float64(longest) * 7 / 6 / float64(half))
	return min(max(quantity.Time(n)*half, 2*half), 28*half)
}

// drawCases draws the curves of cases, each with its name.
func (b *builder) drawCases(id, title, caption string, cases []tables.WaitCase, names []string) template.HTML {
	upTo := b.upTo(cases)
	var curves []tables.Curve
	for i, c := range cases {
		curve, err := b.answers.Curve(c, upTo)
		if err != nil {
			b.fault("the drawing "+title, err)
			return ""
		}
		if curve.Limit <= 0 && curve.Unit != "g/m²" {
			return "" // hours of a rule: there is no curve to see
		}
		curve.Name = names[i]
		curves = append(curves, curve)
	}
	return b.drawCurves(id, title, caption, curves)
}

// drawCoverages draws an ink's residue for each coverage.
func (b *builder) drawCoverages(id string, c tables.WaitCase) template.HTML {
	ink, medium := b.shop.Ink(c.Ink), b.shop.Medium(c.Medium)
	var cases []tables.WaitCase
	for _, coverage := range tables.Coverages {
		one := c
		one.Coverage = coverage
		if _, ok := b.waits.get(one); ok {
			cases = append(cases, one)
		}
	}
	title := "What is left in " + lowerFirst(ink.Name) + " on " + lowerFirst(medium.Name)
	caption := title + ", " + lowerFirst(b.shop.Storage(c.Storage).Name) + ", " + climate(b.shop.Room(c.Room)) + ". The vertical axis goes by powers of ten."
	return b.drawCases(id, title, caption, cases, tables.Coverages[:len(cases)])
}
