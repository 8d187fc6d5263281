package draw

import "math"

// clarityFaults are the drawings of prints that are not seen clearly.
var clarityFaults = []fault{
	{"silvering", "Silvering: bright points on dark ink, gone where a thumbnail rubbed",
		"From above: a dark field full of tiny bright points; along one stroke, where it was rubbed, they are gone. Cut through: the adhesive does not reach the bottom of the ink's relief.",
		func(v *canvas) {
			piece(v, above)
			dark := above.inset(9)
			v.rect("solid", dark.x, dark.y, dark.w, dark.h)
			var points []point
			for _, p := range scatter(520) {
				at := dark.inset(3).at(p.x, p.y)
				if off := at.y - (dark.y + 30 + (at.x-dark.x)*0.16); math.Abs(off) < 11 && at.x > dark.x+60 && at.x < dark.x+168 {
					continue
				}
				points = append(points, at)
			}
			specks(v, "glint", points)
			note(v, "rubbed: gone")
			relief(v, 3.2)
		}},
	{"haze", "Haze: a milky film",
		"From above: a boat in dark ink; over its left half the film is clear, over its right half milky, so that the dark is pale.",
		func(v *canvas) {
			piece(v, whole)
			in := whole.inset(8)
			boat(v, in)
			v.text("tick", "start", 8, 16, "clear")
			note(v, "milky")
			mid := whole.x + whole.w/2
			v.raw(`<path class="veil" d="` + slant(mid, whole.y+4, whole.w/2-4, whole.h-8, 3.4) + `"/>`)
			v.path("dashed", []point{{mid, whole.y}, {mid, whole.y + whole.h}})
		}},
	{"powder-fog", "Powder fog: fine pits all over dark solids",
		"From above: a dark field grey with fine even pits. Cut through: grains of powder hold the film off the ink.",
		func(v *canvas) {
			piece(v, above)
			dark := above.inset(9)
			v.rect("solid", dark.x, dark.y, dark.w, dark.h)
			in := dark.inset(2)
			var points []point
			for row := range 17 {
				for col := range 46 {
					points = append(points, in.at((float64(col)+0.5+0.25*float64(row%2))/46.5, (float64(row)+0.5)/17))
				}
			}
			specks(v, "grain", points)
			base := below.y + 30
			sheetCut(v, box{below.x, base, below.w, 13}, true)
			grains := []float64{22, 50, 84, 108, 139, 171, 196}
			filmCut(v, curve(below.x, below.x+below.w, 200, func(x float64) float64 {
				y := 0.0
				for _, g := range grains {
					y = math.Max(y, 8*math.Exp(-math.Max(0, math.Abs(x-below.x-g)-2)/9))
				}
				return base - 3 - y
			}))
			for _, g := range grains {
				v.circle("hollow", below.x+g, base-6.6, 3.4)
			}
		}},
	{"orange-peel", "Orange peel: a pebbled face in reflected light",
		"From above: the whole face is covered with small rounded pebbles, seen by the light that they throw back. Cut through: film and adhesive rise and fall evenly.",
		func(v *canvas) {
			piece(v, above)
			in := above.inset(5)
			var pebbles [][]point
			for row := range 8 {
				for col := range 20 {
					at := in.at((float64(col)+0.5+0.5*float64(row%2))/20.5, (float64(row)+0.5)/8)
					r := 3.6 + 0.9*math.Sin(float64(col*7+row*5))
					var arc []point
					for step := range 7 {
						a := (150 + float64(step)*26) * math.Pi / 180
						arc = append(arc, point{at.x + r*math.Cos(a), at.y + r*math.Sin(a)})
					}
					pebbles = append(pebbles, arc)
				}
			}
			strokes(v, "thin", pebbles)
			base := below.y + 26
			sheetCut(v, box{below.x, base + 3, below.w, 13}, true)
			filmCut(v, curve(below.x, below.x+below.w, 240, func(x float64) float64 { return base - 2.4 + 2.2*math.Sin(x/3.4) }))
		}},
	{"mottle", "Mottle: patches with more gloss and patches with less",
		"From above: dull patches with soft edges on a glossy face; the dull ones are ruled.",
		func(v *canvas) {
			piece(v, whole)
			for i, p := range []point{{0.17, 0.3}, {0.42, 0.68}, {0.63, 0.27}, {0.84, 0.72}, {0.1, 0.82}, {0.88, 0.2}} {
				dull(v, whole.at(p.x, p.y), 22-float64(i)*2.4, float64(i))
			}
		}},
	{"yellowing", "A tint under the film",
		"The same boat side by side: as it was without film, and with film under a tint, which is ruled.",
		func(v *canvas) {
			v.text("tick", "start", 8, 16, "without film")
			note(v, "under film")
			left := box{8, 24, 106, 148}
			right := box{126, 24, 106, 148}
			for _, b := range []box{left, right} {
				piece(v, b)
				for _, part := range boatParts(b.inset(6)) {
					area(v, "outline", part)
				}
			}
			v.raw(`<path class="thin" d="` + slant(right.x, right.y, right.w, right.h, 6) + `"/>`)
		}},
}

// relief draws a cut through a print with relief whose hollows the adhesive
// fills only down to a depth.
func relief(v *canvas, depth float64) {
	base := below.y + 20
	rough := func(x float64) float64 { return base + 6 - 6*math.Abs(math.Sin(x/9)) }
	ink := curve(below.x, below.x+below.w, 240, rough)
	area(v, "solid", append(ink, point{below.x + below.w, base + 12}, point{below.x, base + 12}))
	sheetCut(v, box{below.x, base + 12, below.w, 12}, false)
	filmCut(v, curve(below.x, below.x+below.w, 240, func(x float64) float64 { return math.Min(rough(x), base+depth) }))
}

// dull draws a patch with a soft edge about a place, ruled.
func dull(v *canvas, at point, r, turn float64) {
	half := func(y float64) float64 {
		t := (y - at.y) / r
		return r * math.Sqrt(math.Max(0, 1-t*t)) * (1.25 + 0.2*math.Sin(4*t+turn))
	}
	var lines [][]point
	for y := at.y - r + 1.5; y < at.y+r; y += 3 {
		x := at.x + 3*math.Sin(2*(y-at.y)/r+turn)
		lines = append(lines, []point{
			{math.Max(whole.x+2, x-half(y)), y}, {math.Min(whole.x+whole.w-2, x+half(y)), y},
		})
	}
	strokes(v, "thin", lines)
}
