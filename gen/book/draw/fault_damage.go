package draw

import "math"

// damageFaults are the drawings of what is spoilt for good.
var damageFaults = []fault{
	{"ooze", "Adhesive at the edges",
		"From above: beads of adhesive along both edges of the film. Cut across the feed: adhesive has run out at the sides, past sheet and film.",
		func(v *canvas) {
			feed(v)
			v.rect("outline", above.x, above.y+10, above.w, above.h-20)
			for i := range 15 {
				x := above.x + 8 + float64(i)*15 + 4*radical(i+1, 2)
				r := 2.6 + 2.2*radical(i+1, 3)
				v.circle("hollow", x, above.y+10-r*0.4, r)
				v.circle("hollow", x+5*radical(i+2, 3)-2, above.y+above.h-10+r*0.4, 6.6-r)
			}
			base := below.y + 26
			sheetCut(v, box{below.x + 26, base, below.w - 52, 12}, true)
			v.raw(`<path class="dots" d="` + dots(below.x+26, base-11, below.w-52, 9) + `"/>`)
			for _, x := range []float64{below.x + 20, below.x + below.w - 20} {
				area(v, "hollow", blob(point{x, base - 4}, 9, 7))
			}
			v.rect("film", below.x+26, base-16, below.w-52, 5)
		}},
	{"wrap", "Film wound round a roller",
		"From the side: two rollers with a piece between them; the film has not left straight on but gone up and round the upper roller.",
		func(v *canvas) {
			feed(v)
			const r = 34.0
			upper, lower := point{120, 62}, point{120, 134}
			for _, at := range []point{upper, lower} {
				v.circle("outline", at.x, at.y, r)
				v.circle("outline", at.x, at.y, 5)
			}
			v.path("ridge", []point{{8, 98}, {120, 98}})
			var round []point
			for i := range 61 {
				a := (90 - float64(i)*6.4) * math.Pi / 180
				out := r + 3.4 + float64(i)*0.09
				round = append(round, point{upper.x + out*math.Cos(a), upper.y + out*math.Sin(a)})
			}
			v.path("ridge", thin(round, 0.15))
			v.path("dashed", []point{{128, 98}, {204, 98}})
			v.path("thin", arrowHead(point{128, 98}, point{212, 98}))
			turning(v, upper, 20, false)
			turning(v, lower, 20, true)
		}},
	{"melted", "A print that heat has darkened and shrunk",
		"From above: the print has drawn back from the outline that it had, its edge is ragged, and most of it is black.",
		func(v *canvas) {
			note(v, "as it was")
			v.path("dashed", []point{whole.at(0, 0), whole.at(1, 0), whole.at(1, 1), whole.at(0, 1), whole.at(0, 0)})
			var edge []point
			for i := range 72 {
				a := float64(i) / 72 * 2 * math.Pi
				ragged := 0.9 + 0.035*math.Sin(7*a) + 0.025*math.Sin(12*a+1)
				edge = append(edge, whole.at(0.5+0.5*ragged*squared(math.Cos(a)), 0.5+0.5*ragged*squared(math.Sin(a))))
			}
			area(v, "face", edge)
			var dark []point
			for i := range 60 {
				a := float64(i) / 60 * 2 * math.Pi
				ragged := 0.66 + 0.06*math.Sin(3*a+1) + 0.05*math.Sin(8*a)
				dark = append(dark, whole.at(0.5+0.5*ragged*math.Cos(a), 0.52+0.5*ragged*math.Sin(a)))
			}
			area(v, "solid", dark)
		}},
	{"static", "Static: sheets that cling and draw bits to them",
		"From the side: over a flat sheet a second one clings to it at one end and hangs free at the other, with short strokes between them, and bits of tissue jump up to it.",
		func(v *canvas) {
			sheetCut(v, box{8, 132, 224, 14}, false)
			face := curve(8, 200, 100, func(x float64) float64 { return 131 - 62*smooth((x-60)/150) })
			filmCut(v, face)
			for _, x := range []float64{126, 144, 160, 176} {
				foot, head := 126.0, 138-62*smooth((x-60)/150)
				if head > foot-8 {
					continue
				}
				step := (foot - head) / 3
				v.path("stroke", []point{{x, foot}, {x + 4, foot - step}, {x - 3, foot - 2*step}, {x + 1, head}})
			}
			for i, p := range []point{{196, 118}, {210, 104}, {186, 96}, {218, 84}, {204, 78}} {
				t := float64(i)
				area(v, "hollow", []point{{p.x - 4, p.y - 1 - math.Mod(t, 2)}, {p.x + 3, p.y - 3}, {p.x + 4, p.y + 2}, {p.x - 2, p.y + 3}})
			}
			arrow(v, point{222, 122}, point{214, 62})
		}},
	{"stuck-stack", "Sheets that stick in the stack",
		"From the side: a stack of sheets; where it is taken apart, two sheets from its middle come up together and are stuck along most of their length.",
		func(v *canvas) {
			for i := range 7 {
				v.rect("face", 20, 100+float64(i)*9, 200, 9)
			}
			under := func(x float64) float64 { return 98 - 40*smooth((x-50)/190) }
			over := func(x float64) float64 { return under(x) - 9 - 16*smooth((x-168)/50) }
			filmCut(v, curve(20, 214, 100, under))
			filmCut(v, curve(20, 210, 100, over))
			var glue []point
			for x := 24.0; x < 172; x += 6 {
				glue = append(glue, point{x, under(x) - 7})
			}
			specks(v, "dots", glue)
			note(v, "stuck together")
		}},
	{"fold-crack", "Cracks along a fold",
		"From above: a white ragged line with short cracks along the fold, over dark ink. Cut across the fold: film and sheet are broken on the outside of the bend.",
		func(v *canvas) {
			v.text("tick", "start", 8, 16, "fold")
			piece(v, above)
			dark := above.inset(9)
			v.rect("solid", dark.x, dark.y, dark.w, dark.h)
			x := above.x + above.w/2
			var crack, back []point
			for i := range 17 {
				y := dark.y + dark.h*float64(i)/16
				crack = append(crack, point{x - 1 - 3.4*radical(i+1, 2), y})
				back = append(back, point{x + 1 + 3.4*radical(i+1, 3), y})
			}
			for i := len(back) - 1; i >= 0; i-- {
				crack = append(crack, back[i])
			}
			area(v, "hollow", crack)
			bend := func(from, to, off float64) []point {
				return curve(from, to, 80, func(x float64) float64 {
					d := math.Abs(x - (below.x + below.w/2))
					return below.y + 10 + off + 0.34*math.Sqrt(d*d+30)
				})
			}
			mid := below.x + below.w/2
			for _, half := range [][2]float64{{below.x + 24, mid - 3}, {mid + 3, below.x + below.w - 24}} {
				sheet := bend(half[0], half[1], 0)
				under := bend(half[0], half[1], 10)
				for i := len(under) - 1; i >= 0; i-- {
					sheet = append(sheet, under[i])
				}
				area(v, "face", sheet)
				filmCut(v, bend(half[0], half[1], -1))
			}
		}},
}

// squared pulls a point of a circle out towards the square round it.
func squared(v float64) float64 { return math.Copysign(math.Pow(math.Abs(v), 0.35), v) }

// blob is a rounded drop about a place.
func blob(at point, w, h float64) []point {
	var edge []point
	for i := range 24 {
		a := float64(i) / 24 * 2 * math.Pi
		edge = append(edge, point{at.x + w*math.Cos(a), at.y + h*math.Sin(a)*(1+0.2*math.Cos(a))})
	}
	return edge
}

// turning draws an arc with a head: which way a roller turns.
func turning(v *canvas, at point, r float64, clockwise bool) {
	var arc []point
	for i := range 13 {
		a := (200 + float64(i)*10) * math.Pi / 180
		if !clockwise {
			a = (340 - float64(i)*10) * math.Pi / 180
		}
		arc = append(arc, point{at.x + r*math.Cos(a), at.y + r*math.Sin(a)})
	}
	v.path("thin", arc)
	v.path("thin", arrowHead(arc[len(arc)-2], arc[len(arc)-1]))
}
