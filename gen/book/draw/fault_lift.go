package draw

import "math"

// liftFaults are the drawings of film that lets go.
var liftFaults = []fault{
	{"tunnels", "Tunnels across the web",
		"From above: raised hollow ridges across the web, closed at both ends. Cut along the web: the film stands off the print in high narrow arches.",
		func(v *canvas) {
			feed(v)
			piece(v, above)
			for i, x := range []float64{0.16, 0.4, 0.63, 0.86} {
				fold(v, above.at(x, 0.06+0.1*radical(i+1, 2)), above.at(x+0.015, 0.95-0.12*radical(i+1, 3)), 5)
			}
			humps(v, []float64{0.16, 0.4, 0.63, 0.86}, []float64{10, 11, 10, 9}, []float64{17, 19, 16, 18})
		}},
	{"edge-lift", "A cut edge that lifts",
		"From above: along the cut edge on the right the film ends short of the print. Cut through: film and edge curl up, and the print's end is bare.",
		func(v *canvas) {
			note(v, "cut edge")
			piece(v, above)
			x := above.x + above.w - 20
			v.path("ridge", upright(x, above.y, above.y+above.h, 2.2, 1))
			var lines [][]point
			for y := above.y + 4; y < above.y+above.h; y += 6 {
				lines = append(lines, []point{{x + 6, y}, {above.x + above.w - 2, y}})
			}
			strokes(v, "thin", lines)
			base := below.y + 30
			sheetCut(v, box{below.x, base, below.w, 14}, true)
			filmCut(v, curve(below.x, below.x+below.w-22, 120, func(x float64) float64 {
				d := math.Max(0, x-(below.x+below.w-74))
				return base - 3 - d*d/180
			}))
		}},
	{"film-off-clean", "The film comes off clean",
		"From above: a cross is cut through the film, and one corner of it is folded back; it is clear, and all the dark ink has stayed on the print. Cut through: a gap between film and ink.",
		func(v *canvas) { peeled(v, false) }},
	{"film-off-ink", "Ink comes off with the film",
		"From above: a cross is cut through the film, and one corner of it is folded back; it carries the dark ink, and the print under it is bare. Cut through: a gap between ink and sheet.",
		func(v *canvas) { peeled(v, true) }},
	{"crease-lift", "Film that lifts along a crease",
		"From above: pale blisters in a row along a crease, over dark ink. Cut across the crease: the sheet is folded, and the film stands off at the bend.",
		func(v *canvas) {
			v.text("tick", "start", 8, 16, "crease")
			piece(v, above)
			dark := above.inset(9)
			v.rect("solid", dark.x, dark.y, dark.w, dark.h)
			x := above.x + above.w/2
			v.path("pale", []point{{x, dark.y}, {x, dark.y + dark.h}})
			for i, t := range []float64{0.12, 0.32, 0.5, 0.72, 0.9} {
				at := dark.at(0.5, t)
				v.raw(`<ellipse class="hollow" cx="` + number(at.x) + `" cy="` + number(at.y) + `" rx="` + number(5+1.4*float64(i%3)) + `" ry="` + number(6+float64(i%2)*2) + `"/>`)
			}
			bend := func(lift, off float64) []point {
				return curve(below.x+20, below.x+below.w-20, 160, func(x float64) float64 {
					d := math.Abs(x - (below.x + below.w/2))
					return below.y + 12 + off + 0.28*math.Sqrt(d*d+60) - lift*bump(x, below.x+below.w/2, 16)
				})
			}
			sheet := bend(0, 0)
			under := bend(0, 10)
			for i := len(under) - 1; i >= 0; i-- {
				sheet = append(sheet, under[i])
			}
			area(v, "face", sheet)
			filmCut(v, bend(9, -1))
		}},
	{"seal-open", "A sealed border that opens",
		"From above: a sheet between two films with a clear border; at one corner the border is open as far as the sheet. Cut through: the two films part at the edge.",
		func(v *canvas) {
			note(v, "open corner")
			piece(v, above)
			sheet := above.inset(15)
			v.rect("thin", sheet.x, sheet.y, sheet.w, sheet.h)
			v.raw(`<path class="thin" d="` + slant(sheet.x, sheet.y, sheet.w, sheet.h, 16) + `"/>`)
			right, top := above.x+above.w, above.y
			area(v, "hollow", []point{{right - 34, top}, {right - 28, top + 9}, {right - 17, top + 15}, {right - 9, top + 28}, {right, top + 33}, {right, top}})
			mid := below.y + 24
			hatch(v, FibreMatter, below.x, mid-5, 150, 10)
			upper := func(x float64) float64 {
				return mid - 5 + 4*smooth((x-below.x-150)/22) - 16*smooth((x-below.x-180)/44)
			}
			filmCut(v, curve(below.x, below.x+below.w, 160, upper))
			v.path("outline", curve(below.x, below.x+below.w, 160, func(x float64) float64 { return 2*mid - upper(x) }))
		}},
	{"stretch", "A film that was stretched",
		"From above: a film drawn narrow in its middle; two marks on it are further apart than they were, which two dashed lines show.",
		func(v *canvas) {
			feed(v)
			side := func(sign float64) []point {
				return curve(8, 232, 80, func(x float64) float64 { return 92 + sign*(46-17*bump(x, 120, 112)) })
			}
			edge := side(-1)
			low := side(1)
			for i := len(low) - 1; i >= 0; i-- {
				edge = append(edge, low[i])
			}
			area(v, "face", edge)
			for _, k := range []struct{ was, is float64 }{{66, 46}, {174, 194}} {
				v.path("dashed", []point{{k.was, 56}, {k.was, 128}})
				v.path("ridge", []point{{k.is, 62}, {k.is, 122}})
			}
			measureLine(v, point{66, 160}, point{174, 160}, "was")
			measureLine(v, point{46, 42}, point{194, 42}, "is")
		}},
}

// peeled draws a cross cut with one corner of the film folded back, with the
// ink on it or left on the print.
func peeled(v *canvas, inkComes bool) {
	piece(v, above)
	dark := above.inset(9)
	v.rect("solid", dark.x, dark.y, dark.w, dark.h)
	mid := dark.at(0.5, 0.5)
	// The two cuts, and the triangle between their right ends.
	const arm = 34.0
	a, b := point{mid.x + arm, mid.y - arm}, point{mid.x + arm, mid.y + arm}
	strokes(v, "pale", [][]point{{{mid.x - arm, mid.y - arm}, b}, {{mid.x - arm, mid.y + arm}, a}})
	bare, flap := "solid", "hollow"
	if inkComes {
		bare, flap = "hollow", "flap"
	}
	area(v, bare, []point{mid, a, b})
	tip := point{a.x + 42, mid.y - 6}
	area(v, flap, []point{a, b, tip})
	v.path("ridge", []point{a, b})

	base := below.y + 32
	from := below.x + 96
	lifted := func(x float64) float64 {
		d := math.Max(0, x-from)
		return base - 3 - d*d/330
	}
	end := below.x + 196
	hatch(v, FibreMatter, below.x, base, below.w, 13)
	face := curve(below.x, end, 120, lifted)
	if inkComes {
		v.rect("solid", below.x, base-3, from-below.x, 3)
		carried := curve(end, below.x, 120, func(x float64) float64 { return lifted(x) + 3 })
		area(v, "solid", append(append([]point(nil), face...), carried...))
		v.rect("solid", end+6, base-3, below.x+below.w-end-6, 3)
	} else {
		v.rect("solid", below.x, base-3, below.w, 3)
	}
	filmCut(v, face)
}
