package draw

import "slices"

// Part is a stretch of an axis with a scale of its own, named over the chart.
type Part struct {
	Name     string
	From, To float64
	Share    float64 // of the axis
	Ticks    int     // at most about so many
}

// alongParts is a value's place on an axis of parts, 0 to 1.
func (a Axis) alongParts(v float64) float64 {
	at := 0.0
	for i, p := range a.Parts {
		if v <= p.To || i == len(a.Parts)-1 {
			return at + p.Share*(v-p.From)/(p.To-p.From)
		}
		at += p.Share
	}
	return at
}

// partTicks are the round numbers of every part.
func (a Axis) partTicks() []float64 {
	var ticks []float64
	for _, p := range a.Parts {
		for _, t := range Ticks(p.From, p.To, p.Ticks) {
			if !slices.Contains(ticks, t) {
				ticks = append(ticks, t)
			}
		}
	}
	return ticks
}

// parts draws where the scale changes and names each stretch.
func (c Chart) parts(v *canvas, f box) {
	at := f.x
	for i, p := range c.X.Parts {
		if i > 0 {
			v.line("change", at, f.y-14, at, f.y+f.h)
		}
		w := p.Share * f.w
		v.text("part", "middle", at+w/2, f.y-6, p.Name)
		at += w
	}
}
