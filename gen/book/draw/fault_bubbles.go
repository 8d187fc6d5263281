package draw

import "math"

// bubbleFaults are the drawings of what lifts the film off in spots.
var bubbleFaults = []fault{
	{"bubbles-pin", "Pin bubbles scattered over the piece",
		"From above: small round bubbles of several sizes anywhere on the piece. Cut through: the film stands off the print in low round humps.",
		func(v *canvas) {
			feed(v)
			piece(v, above)
			in := above.inset(12)
			for i, p := range scatter(34) {
				bubble(v, in.at(p.x, p.y), 1.6+float64(i%4)*0.9)
			}
			humps(v, []float64{0.12, 0.3, 0.41, 0.63, 0.8, 0.93}, []float64{7, 10, 6, 11, 7, 8}, []float64{5, 8, 4, 9, 5, 6})
		}},
	{"bubbles-growing", "Bubbles that begin behind a dry lead edge and grow towards the tail",
		"From above: no bubbles at the lead edge on the right; from a line across they begin small, and towards the tail they grow in size and number.",
		func(v *canvas) {
			feed(v)
			note(v, "dry lead edge")
			piece(v, whole)
			in := whole.inset(10)
			const begins = 0.7 // share of the way from the tail
			line := in.at(begins, 0)
			v.path("dashed", []point{{line.x, whole.y}, {line.x, whole.y + whole.h}})
			for _, p := range scatter(150) {
				grown := (begins - 0.03 - p.x) / begins
				if grown <= 0 || p.x*p.y*97-math.Floor(p.x*p.y*97) > 0.25+0.5*grown {
					continue
				}
				bubble(v, in.at(p.x, p.y), 1.2+4*grown)
			}
		}},
	{"bubbles-border", "Bubbles over the sheet, and none in the clear border",
		"From above: round firm bubbles all over the sheet; the border, where film lies on film, is clear. Cut through: the film arches over the sheet and lies flat on the film beside it.",
		func(v *canvas) {
			feed(v)
			note(v, "clear border")
			piece(v, above)
			sheet := above.inset(16)
			v.rect("thin", sheet.x, sheet.y, sheet.w, sheet.h)
			in := sheet.inset(7)
			for i, p := range scatter(22) {
				bubble(v, in.at(p.x, p.y), 2.4+float64(i%3)*1.3)
			}
			left, right, base := below.x+30, below.x+below.w-30, below.y+26
			sheetCut(v, box{left, base, right - left, 12}, true)
			filmCut(v, curve(below.x, below.x+below.w, 220, func(x float64) float64 {
				y := base + 6 - 9*math.Max(smooth((x-left+12)/12)*smooth((right+12-x)/12), 0)
				for i, at := range []float64{60, 96, 128, 170} {
					y -= []float64{8, 11, 7, 10}[i] * bump(x, at, 9)
				}
				return y
			}))
			v.line("outline", below.x, base+12, below.x+below.w, base+12)
		}},
	{"bubbles-dark", "Bubbles only where the ink is dark",
		"From above: a boat in dark ink on a light piece; fine bubbles crowd over its hull and sails, and there are none beside it.",
		func(v *canvas) {
			feed(v)
			piece(v, whole)
			in := whole.inset(8)
			boat(v, in)
			for i, p := range scatter(330) {
				at := in.at(p.x, p.y)
				for _, part := range boatParts(in) {
					if inside(at, part) {
						v.circle("hollow", at.x, at.y, 1.5+float64(i%3)*0.7)
					}
				}
			}
		}},
	{"bubbles-pockets", "Flat pockets and channels of air",
		"From above: flat pockets with ragged edges along the lead edge on the right, and a winding channel along one lane. Cut through: the film stands off in wide flat arches.",
		func(v *canvas) {
			feed(v)
			note(v, "lead edge")
			piece(v, above)
			for i, p := range []point{{0.91, 0.26}, {0.86, 0.72}, {0.70, 0.40}} {
				pocket(v, above.at(p.x, p.y), 15-float64(i)*2, float64(i))
			}
			channel(v, above.at(0.08, 0.68), above.at(0.66, 0.75))
			humps(v, []float64{0.25, 0.74}, []float64{34, 44}, []float64{6, 8})
		}},
	{"dirt-tent", "A speck under the film, with a ring of air round it",
		"From above: single specks and a hair, each in the middle of a pale ring. Cut through, enlarged: the film stands over a speck like a tent, with air on both sides of it.",
		func(v *canvas) {
			feed(v)
			piece(v, above)
			for i, p := range []point{{0.2, 0.32}, {0.74, 0.24}, {0.86, 0.74}} {
				at := above.at(p.x, p.y)
				v.circle("hollow", at.x, at.y, 9-float64(i))
				area(v, "solid", []point{{at.x - 2, at.y - 1}, {at.x + 1, at.y - 2}, {at.x + 2, at.y + 1}, {at.x - 1, at.y + 2}})
			}
			hair := above.at(0.46, 0.6)
			v.raw(`<ellipse class="hollow" cx="` + number(hair.x) + `" cy="` + number(hair.y) + `" rx="21" ry="11"/>`)
			v.path("stroke", curve(hair.x-15, hair.x+15, 24, func(x float64) float64 { return hair.y + 4*math.Sin((x-hair.x)/5) }))
			base := below.y + 32
			sheetCut(v, box{below.x, base, below.w, 13}, false)
			mid := below.x + below.w/2
			filmCut(v, curve(below.x, below.x+below.w, 160, func(x float64) float64 {
				d := math.Max(0, math.Abs(x-mid)-5)
				return base - 19*math.Exp(-d/15)
			}))
			area(v, "solid", []point{{mid - 9, base}, {mid - 7, base - 12}, {mid - 1, base - 18}, {mid + 6, base - 13}, {mid + 9, base}})
		}},
}

// humps draws a cut in which the film stands off the print: at each share of
// the width a hump of some half-width and height.
func humps(v *canvas, at, half, height []float64) {
	base := below.y + 28
	sheetCut(v, box{below.x, base, below.w, 14}, true)
	filmCut(v, curve(below.x, below.x+below.w, 240, func(x float64) float64 {
		y := base - 3
		for i := range at {
			y -= height[i] * bump(x, below.x+at[i]*below.w, half[i])
		}
		return y
	}))
}

// smooth rises from 0 to 1 as t does, with level ends.
func smooth(t float64) float64 {
	t = math.Min(1, math.Max(0, t))
	return t * t * (3 - 2*t)
}

// pocket draws a flat pocket of air with a ragged edge about a place.
func pocket(v *canvas, at point, r, turn float64) {
	var edge []point
	for i := range 40 {
		a := float64(i) / 40 * 2 * math.Pi
		ragged := 1 + 0.22*math.Sin(3*a+turn) + 0.14*math.Sin(5*a+2*turn)
		edge = append(edge, point{at.x + r*ragged*math.Cos(a), at.y + 0.8*r*ragged*math.Sin(a)})
	}
	area(v, "hollow", edge)
}

// channel draws a winding channel of air between two places.
func channel(v *canvas, from, to point) {
	side := func(off float64) []point {
		return curve(from.x, to.x, 60, func(x float64) float64 {
			t := (x - from.x) / (to.x - from.x)
			return from.y + (to.y-from.y)*t + 5*math.Sin(12*t) + off*math.Sqrt(math.Sin(math.Pi*math.Min(1, math.Max(0, t))))
		})
	}
	edge := side(-4)
	under := side(4)
	for i := len(under) - 1; i >= 0; i-- {
		edge = append(edge, under[i])
	}
	area(v, "hollow", edge)
}
