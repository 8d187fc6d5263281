package book

import (
	"fmt"
	"html/template"
	"math"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// sweepSteps is how many windows a drawing's curves are made from.
const sweepSteps = 41

// drawWindowSpeed draws the window of a pair against the machine's speed.
func (b *builder) drawWindowSpeed(id, title string, c tables.WindowCase) (template.HTML, error) {
	list, err := b.answers.WindowsBySpeed(c, sweepSteps)
	if err != nil {
		return "", err
	}
	metres := make([]float64, len(list))
	for i, v := range list {
		metres[i] = quantity.Number(v.Speed, "m/min")
	}
	chart := draw.Chart{ID: id, Title: title, X: draw.Axis{Label: "speed, m/min with ft/min under it", From: metres[0], To: metres[len(metres)-1], Log: true,
		Second: func(v float64) string { return short2(v/0.3048) + "\u00a0ft" }}}
	at := func(i int) string { return pace(list[i].Speed) }
	caption := title + ", " + climate(b.shop.Room(b.shop.Front.Room.ID)) + ". The adhesive bounds from below, the others from above where they are named."
	return b.bandFigure(chart, metres, list, caption, "speed", at), nil
}

// drawWindowHumidity draws the window of a pair at a speed against the humidity
// that the sheet is in balance with.
func (b *builder) drawWindowHumidity(id, title string, c tables.WindowCase) (template.HTML, error) {
	list, err := b.answers.WindowsByHumidity(c, 46)
	if err != nil {
		return "", err
	}
	percents := make([]float64, len(list))
	for i, v := range list {
		percents[i] = v.Humidity.Percent()
	}
	chart := draw.Chart{ID: id, Title: title, X: draw.Axis{Label: "relative humidity that the sheet is in balance with, %", From: percents[0], To: percents[len(percents)-1]}}
	at := func(i int) string { return quantity.Metric(list[i].Humidity) + "\u00a0RH" }
	caption := title + ", " + pace(c.Speed) + ". The adhesive bounds from below, the others from above where they are named."
	return b.bandFigure(chart, percents, list, caption, "humidity", at), nil
}

// bandFigure completes a chart of windows: a hatched band for the first piece and
// one for the steady run, their edges, and the names of the limits that make
// them. Where the two hardly differ there is one.
func (b *builder) bandFigure(chart draw.Chart, x []float64, list []tables.WindowValue, caption, what string, at func(int) string) template.HTML {
	first, steady := edgesOf(list, true), edgesOf(list, false)
	named := false // the machine's limit is
	add := func(name string, e edges, line int) {
		suffix := ""
		if name != "" {
			suffix = ", " + name
		}
		chart.Bands = append(chart.Bands, draw.Band{Name: name, X: x, Low: e.low, High: e.high, Across: line > 1})
		chart.Curves = append(chart.Curves, draw.Series{Name: edgeNames["activation"] + suffix, X: x, Y: e.low, Line: line})
		for _, r := range e.runs() {
			limit := e.limit[r.from]
			s := draw.Series{Name: edgeNames[limit] + suffix, X: x[r.from : r.to+1], Y: e.high[r.from : r.to+1], Line: line}
			if limit == "laminator" { // the same for both
				s.Name = edgeNames[limit]
				if named {
					s.Name = ""
				}
				named = true
			}
			chart.Curves = append(chart.Curves, s)
		}
	}
	all := append(first.low, first.high...)
	if first.apart(steady) < 2*sameCurve {
		add("", first, 1)
	} else {
		add("first piece", first, 1)
		add("steady run", steady, 2)
		all = append(append(all, steady.low...), steady.high...)
	}
	chart.Y = celsiusAxis("set temperature, °C with °F under it", all...)
	hottest := b.shop.Laminator(list[0].Laminator).Hottest.Best.Celsius()
	chart.Y.To = math.Min(chart.Y.To, 20*math.Ceil((hottest+5)/20))
	n := numbers{ID: chart.ID + "-n", Title: chart.Title + ", in numbers", Heads: []string{what, "first piece", "steady run"}}
	for i := 0; i < len(list); i += (len(list) - 1) / 5 {
		f, s := list[i].Spans()
		n.Rows = append(n.Rows, []string{at(i), spanText(f), spanText(s)})
	}
	for _, row := range n.Rows {
		chart.Desc += fmt.Sprintf("%s: first piece %s, steady run %s. ", row[0], row[1], row[2])
	}
	return figure(chart.SVG(), caption, b.part("numbers", n))
}

// edgeNames are the limits as a drawing names them.
var edgeNames = map[string]string{
	"activation": "adhesive",
	"film":       "film",
	"medium":     "medium",
	"gas":        "steam",
	"laminator":  "machine",
}

// edges are the lowest and the highest set temperature along a sweep, in °C, and
// the limit that the highest comes from.
type edges struct {
	low, high []float64
	limit     []string
}

func edgesOf(list []tables.WindowValue, ofFirst bool) edges {
	var e edges
	for _, v := range list {
		r := v.Steady
		firstLimit, limit := v.HighLimits()
		if ofFirst {
			r, limit = v.First, firstLimit
		}
		e.low, e.high = append(e.low, r.Low.Celsius()), append(e.high, r.High.Celsius())
		e.limit = append(e.limit, limit)
	}
	return e
}

// apart is how far two cases' edges lie apart at most, in kelvin.
func (e edges) apart(o edges) float64 {
	most := 0.0
	for i := range e.low {
		most = max(most, math.Abs(e.low[i]-o.low[i]), math.Abs(e.high[i]-o.high[i]))
	}
	return most
}

// stretch is a part of a sweep, both ends in it.
type stretch struct{ from, to int }

// runs parts a sweep where another limit becomes the highest's.
func (e edges) runs() []stretch {
	var list []stretch
	from := 0
	for i := 1; i < len(e.limit); i++ {
		if e.limit[i] != e.limit[from] && i < len(e.limit)-1 {
			list = append(list, stretch{from, i})
			from = i
		}
	}
	return append(list, stretch{from, len(e.limit) - 1})
}

// spanText writes a window in both scales, or that there is none.
func spanText(s tables.Span) string {
	if s.Low > s.High {
		return "no window"
	}
	celsius, other := inUnits(s)
	return celsius + "\u00a0°C (" + other + "\u00a0°F)"
}
