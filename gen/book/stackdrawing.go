package book

import (
	"fmt"
	"html/template"
	"math"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// drawStack draws a stack from above with its borders, and their depth against time.
func (b *builder) drawStack(id string, v tables.StackValue) template.HTML {
	m, from, to := b.shop.Medium(v.Medium), b.shop.Room(v.From), b.shop.Room(v.To)
	does := "dries"
	if v.Damper {
		does = "dampens"
	}
	where := fmt.Sprintf("%s from the %s, at %s, in the %s, at %s", lowerFirst(m.Name), lowerFirst(from.Name), quantity.Metric(from.Humidity.Best)+"\u00a0RH",
		lowerFirst(to.Name), quantity.Metric(to.Humidity.Best)+"\u00a0RH")
	title := "How the border of a stack " + does
	curve, err := b.answers.StackBorderCurve(v.StackCase, tables.BorderHalf)
	if err != nil {
		b.fault("the drawing of a stack of "+v.Medium, err)
		return ""
	}
	var rims []draw.Rim
	for _, want := range []struct {
		name  string
		after quantity.Time
	}{{"after a day", quantity.Day}, {"after a week", 7 * quantity.Day}, {"after 30 days", 30 * quantity.Day}} {
		d := borderAt(curve, want.after)
		rims = append(rims, draw.Rim{Name: want.name, Size: depthText(d) + "\u00a0mm (" + inchText(d) + ")", Depth: float64(d)})
	}
	c := draw.Chart{ID: id + "-c", Title: title + ", against time"}
	least, best, most := draw.Series{Name: "least"}, draw.Series{Name: "best"}, draw.Series{Name: "most"}
	for _, p := range curve {
		low, high := p.Depth.Range()
		for _, one := range []struct {
			s *draw.Series
			d quantity.Length
		}{{&least, low}, {&best, p.Depth.Best}, {&most, high}} {
			one.s.X = append(one.s.X, p.After.Hours())
			one.s.Y = append(one.s.Y, one.d.Millimetres())
		}
	}
	end := curve[len(curve)-1]
	_, deepest := end.Depth.Range()
	c.Curves = []draw.Series{best, least, most}
	c.X = draw.Axis{Label: "hours in the room: 24 are a day, 168 a week, 720 thirty days", From: curve[0].After.Hours(), To: end.After.Hours(), Log: true}
	c.Y = draw.Axis{Label: "depth of half the change, mm", From: 0, To: niceTop(math.Max(deepest.Millimetres(), 1))}
	c.Desc = fmt.Sprintf("After a day half of the change has reached %s mm, after a week %s mm, after 30 days %s mm by the best figure.",
		depthText(borderAt(curve, quantity.Day)), depthText(borderAt(curve, 7*quantity.Day)), depthText(end.Depth.Best))
	n := numbers{ID: c.ID + "-n", Title: c.Title + ", in numbers", Heads: []string{"hours", "best figure, mm", "least, mm", "most, mm"}}
	for _, h := range []float64{1, 4, 12, 24, 72, 168, 720} {
		n.Rows = append(n.Rows, []string{draw.Plain(h), at(best, h), at(least, h), at(most, h)})
	}
	return figure(draw.Rims(id, title, float64(m.SheetLength.Best), float64(m.Width.Best), rims), title+": "+where+". Half of the change is done at each line.", "") +
		figure(c.SVG(), c.Title+": "+where+". The band is that of what is hardly known: how fast water moves along a sheet, and the gaps.", b.part("numbers", n))
}

// borderAt reads the best depth at a time, by a straight line between two points.
func borderAt(curve []tables.BorderPoint, after quantity.Time) quantity.Length {
	for i := 1; i < len(curve); i++ {
		if p, q := curve[i-1], curve[i]; q.After >= after*(1-1e-12) {
			part := quantity.Length((after - p.After) / (q.After - p.After))
			return p.Depth.Best + part*(q.Depth.Best-p.Depth.Best)
		}
	}
	return curve[len(curve)-1].Depth.Best
}
