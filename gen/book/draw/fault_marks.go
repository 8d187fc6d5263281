package draw

import "math"

// markFaults are the drawings of lines and of marks that repeat.
var markFaults = []fault{
	{"line-lane", "One line along the feed, always in the same lane",
		"From above: a single straight line runs the whole length in one lane. Cut across the feed: a narrow ridge in the film.",
		func(v *canvas) {
			feed(v)
			piece(v, above)
			at := above.at(0, 0.36)
			v.line("ridge", above.x, at.y, above.x+above.w, at.y)
			v.line("thin", above.x, at.y+3.4, above.x+above.w, at.y+3.4)
			humps(v, []float64{0.36}, []float64{5}, []float64{8})
		}},
	{"lines-grain", "Many fine lines along the grain",
		"From above: fine ridges side by side, nearly straight and broken here and there, all along the grain. Cut across the grain: sheet and film are buckled into small waves.",
		func(v *canvas) {
			v.text("tick", "start", 8, 16, "grain")
			measureLine(v, point{44, 12}, point{86, 12}, "")
			piece(v, above)
			in := above.inset(4)
			for i := range 17 {
				y := in.y + (float64(i)+0.5)/17*in.h
				from := in.x + 50*radical(i+1, 2)
				to := in.x + in.w - 50*radical(i+1, 3)
				v.path("stroke", curve(from, to, 50, func(x float64) float64 { return y + 0.5*math.Sin(x/31+float64(i)*1.7) }))
			}
			buckled(v)
		}},
	{"line-stop", "A line across where the machine stopped",
		"From above: one line across the full width, with a paler one beside it.",
		func(v *canvas) {
			feed(v)
			piece(v, whole)
			x := whole.at(0.46, 0).x
			v.line("ridge", x, whole.y, x, whole.y+whole.h)
			v.line("thin", x-6, whole.y, x-6, whole.y+whole.h)
			v.line("thin", x+5, whole.y, x+5, whole.y+whole.h)
		}},
	{"marks-repeat", "The same mark at equal distances",
		"From above: the same mark four times in one lane, at equal distances. The distance is one turn of a roller: 3.14 times its diameter.",
		func(v *canvas) {
			feed(v)
			piece(v, whole)
			const pitch = 58.0
			y := whole.at(0, 0.42).y
			for i := range 4 {
				x := whole.x + 25 + pitch*float64(i)
				area(v, "solid", []point{{x - 5, y - 3}, {x, y - 6}, {x + 6, y - 2}, {x + 4, y + 4}, {x - 3, y + 5}})
				v.circle("thin", x, y, 10)
			}
			a, b := whole.x+25, whole.x+25+pitch
			for _, x := range []float64{a, b} {
				v.line("thin", x, y+9, x, y+36)
			}
			measureLine(v, point{a, y + 32}, point{b, y + 32}, "")
			v.text("tick", "start", b+8, y+36, "3.14 × diameter")
		}},
	{"ghost", "A pale copy of the print, one turn of a roller behind it",
		"From above: a dark anchor, and one turn of a roller behind it, towards the tail, the same anchor pale.",
		func(v *canvas) {
			feed(v)
			piece(v, whole)
			const turn = 108.0
			lead := whole.at(0.75, 0.4)
			anchor(v, "solid", lead)
			anchor(v, "faint", point{lead.x - turn, lead.y})
			y := whole.y + whole.h - 22
			for _, x := range []float64{lead.x, lead.x - turn} {
				v.line("thin", x, y-14, x, y+4)
			}
			measureLine(v, point{lead.x - turn, y}, point{lead.x, y}, "one turn")
		}},
	{"scratches", "Scratches and scuffs",
		"From above: bundles of short fine lines, most along the feed and some in arcs, and a dull rubbed patch.",
		func(v *canvas) {
			feed(v)
			piece(v, whole)
			for i, p := range []point{{0.08, 0.2}, {0.4, 0.34}, {0.16, 0.62}, {0.6, 0.16}} {
				at := whole.at(p.x, p.y)
				for j := range 5 {
					y := at.y + float64(j)*3.1
					from := at.x + 9*radical(i*5+j+1, 2)
					v.path("thin", []point{{from, y}, {from + 40 + 26*radical(i*5+j+1, 3), y + 2 - float64(j%2)}})
				}
			}
			for j := range 6 {
				r := 30 + float64(j)*3
				c := whole.at(0.62, 0.98)
				var arc []point
				for step := range 12 {
					a := (245 + float64(step)*5 + float64(j)) * math.Pi / 180
					arc = append(arc, point{c.x + r*math.Cos(a)*1.5, c.y + r*math.Sin(a)})
				}
				v.path("thin", arc)
			}
			dull(v, whole.at(0.86, 0.66), 15, 1)
		}},
}

// anchor draws a mark that is known again when it is pale.
func anchor(v *canvas, class string, at point) {
	area(v, class, []point{{at.x - 4, at.y - 20}, {at.x + 4, at.y - 20}, {at.x + 4, at.y + 14}, {at.x + 18, at.y + 4}, {at.x + 12, at.y + 24}, {at.x - 12, at.y + 24}, {at.x - 18, at.y + 4}, {at.x - 4, at.y + 14}})
	v.circle(class, at.x, at.y-27, 7)
}

// buckled draws a cut in which the sheet itself is pressed into small waves.
func buckled(v *canvas) {
	top := func(x float64) float64 { return below.y + 20 + 3*math.Sin(x/4.2) }
	sheet := curve(below.x, below.x+below.w, 240, top)
	under := curve(below.x+below.w, below.x, 240, func(x float64) float64 { return top(x) + 14 })
	area(v, "film", append(append([]point(nil), sheet...), under...))
	filmCut(v, sheet)
}
