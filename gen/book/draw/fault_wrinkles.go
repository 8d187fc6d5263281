package draw

import "math"

// wrinkleFaults are the drawings of wrinkles, waves, and prints that run off.
var wrinkleFaults = []fault{
	{"wrinkle-along", "Straight wrinkles along the feed",
		"From above: narrow folds along the feed, always in the same lanes. Cut across the feed: sharp folds that stand up.",
		func(v *canvas) {
			feed(v)
			piece(v, above)
			for i, lane := range []float64{0.2, 0.44, 0.58, 0.82} {
				from := 0.03 + 0.12*radical(i+1, 2)
				fold(v, above.at(from, lane), above.at(0.97, lane), 3)
			}
			humps(v, []float64{0.2, 0.44, 0.58, 0.82}, []float64{6, 6, 6, 6}, []float64{12, 10, 12, 9})
		}},
	{"wrinkle-diagonal", "Slanting wrinkles that all lean the same way",
		"From above: narrow folds side by side, all at one slant to the feed.",
		func(v *canvas) {
			feed(v)
			piece(v, whole)
			leaning(v, whole, 0.05, 0.95, -1)
		}},
	{"wrinkle-chevron", "Wrinkles in a V",
		"From above: narrow folds that lean one way in the upper half and the other way in the lower half, so that they point along the feed.",
		func(v *canvas) {
			feed(v)
			piece(v, whole)
			leaning(v, whole, 0.05, 0.48, 1)
			leaning(v, whole, 0.52, 0.95, -1)
		}},
	{"wrinkle-across", "Folds across, as in an accordion",
		"From above: near the lead edge on the right the film lies folded over on itself in three folds across the full width. Cut along the feed: the film doubles back on itself.",
		func(v *canvas) {
			feed(v)
			note(v, "start")
			piece(v, above)
			for i := range 3 {
				x := above.at(0.62+0.12*float64(i), 0).x
				area(v, "hollow", []point{{x, above.y}, {x + 9, above.y}, {x + 8, above.y + above.h}, {x - 1, above.y + above.h}})
				v.line("ridge", x+9, above.y, x+8, above.y+above.h)
				v.line("thin", x+4, above.y+1, x+3, above.y+above.h-1)
			}
			base := below.y + 30
			sheetCut(v, box{below.x, base, below.w, 14}, true)
			v.path("outline", doubledBack(base-5))
		}},
	{"wrinkle-print", "A crease in the print itself",
		"From above: a boat in dark ink; from the tail corner a crease runs into it, where the print is doubled and the film over it is smooth.",
		func(v *canvas) {
			feed(v)
			note(v, "smooth film over it")
			piece(v, whole)
			boat(v, whole.inset(8))
			a, b := whole.at(0, 0.99), whole.at(0.34, 0.52)
			area(v, "hollow", []point{{a.x, a.y - 13}, b, {a.x + 13, a.y}, a})
			v.path("ridge", []point{{a.x + 13, a.y}, b})
			v.path("thin", []point{{a.x, a.y - 13}, b})
		}},
	{"waves-across", "Regular waves across the feed",
		"From above: even bands of light and shade across the feed. Cut along the feed: film and print wave together.",
		func(v *canvas) {
			feed(v)
			piece(v, above)
			for i := range 9 {
				x := above.x + (float64(i)+0.5)/9*above.w
				v.path("thin", upright(x, above.y, above.y+above.h, 1.6, float64(i)))
				v.path("stroke", upright(x+3.4, above.y, above.y+above.h, 1.6, float64(i)))
				v.path("thin", upright(x+6.2, above.y, above.y+above.h, 1.6, float64(i)))
			}
			top := func(x float64) float64 { return below.y + 18 + 6*math.Sin((x-below.x)/below.w*9*2*math.Pi) }
			sheet := curve(below.x, below.x+below.w, 260, top)
			under := curve(below.x+below.w, below.x, 260, func(x float64) float64 { return top(x) + 12 })
			area(v, "film", append(append([]point(nil), sheet...), under...))
			filmCut(v, sheet)
		}},
	{"waves-edge", "Wavy edges round a flat middle",
		"Seen aslant: a sheet without film that lies flat in its middle and waves along its two edges.",
		func(v *canvas) {
			note(v, "before laminating")
			edge := func(base, height, sign float64) []point {
				return curve(14, 226, 160, func(x float64) float64 { return base + sign*height*math.Sin((x-14)/212*5*2*math.Pi) })
			}
			far, near := edge(62, 9, -1), edge(148, 11, 1)
			outline := append([]point(nil), far...)
			for i := len(near) - 1; i >= 0; i-- {
				outline = append(outline, near[i])
			}
			area(v, "face", outline)
			for _, k := range []struct{ base, height, sign float64 }{{72, 5.4, -1}, {80, 2.4, -1}, {128, 3, 1}, {138, 6.6, 1}} {
				v.path("thin", edge(k.base, k.height, k.sign))
			}
			v.text("tick", "middle", 120, 109, "flat")
		}},
	{"skew", "The print runs off",
		"From above: the film runs straight along the feed, and the print under it lies at a slant, so that it leaves the film at one side.",
		func(v *canvas) {
			feed(v)
			film := box{8, 46, 224, 96}
			v.rect("thin", film.x, film.y, film.w, film.h)
			v.text("tick", "start", film.x+5, film.y-5, "film")
			area(v, "face", []point{{10, 76}, {226, 48}, {232, 132}, {16, 164}})
			print := []point{{10, 76}, {226, 48}, {232, 132}, {16, 164}}
			for _, t := range []float64{0.25, 0.5, 0.75} {
				v.path("thin", []point{
					{print[0].x + t*(print[3].x-print[0].x), print[0].y + t*(print[3].y-print[0].y)},
					{print[1].x + t*(print[2].x-print[1].x), print[1].y + t*(print[2].y-print[1].y)},
				})
			}
			v.path("dashed", []point{{film.x, film.y + film.h}, {film.x + film.w, film.y + film.h}})
			v.text("tick", "end", 228, 172, "print")
		}},
}

// fold draws a narrow fold from above: a lens with a ridge.
func fold(v *canvas, from, to point, half float64) {
	length := math.Hypot(to.x-from.x, to.y-from.y)
	nx, ny := -(to.y-from.y)/length, (to.x-from.x)/length
	side := func(sign float64) []point {
		pts := make([]point, 21)
		for i := range pts {
			t := float64(i) / 20
			w := sign * half * math.Pow(math.Sin(math.Pi*t), 0.35)
			pts[i] = point{from.x + (to.x-from.x)*t + nx*w, from.y + (to.y-from.y)*t + ny*w}
		}
		return thin(pts, 0.15)
	}
	left, right := side(1), side(-1)
	edge := append([]point(nil), left...)
	for i := len(right) - 1; i >= 0; i-- {
		edge = append(edge, right[i])
	}
	area(v, "hollow", edge)
	v.path("stroke", left)
}

// leaning draws folds side by side at one slant in a band of a box; lean 1
// leans down towards the lead edge, -1 up.
func leaning(v *canvas, b box, top, bottom, lean float64) {
	high := (bottom - top) * b.h
	run := high * 0.85
	for i := range 4 {
		x := b.x + 14 + float64(i)*(b.w-28-run)/3
		from, to := point{x, b.y + bottom*b.h}, point{x + run, b.y + top*b.h}
		if lean > 0 {
			from, to = point{x, b.y + top*b.h}, point{x + run, b.y + bottom*b.h}
		}
		fold(v, from, to, 3)
	}
}

// doubledBack is a film from the side that folds over on itself three times.
func doubledBack(y float64) []point {
	pts := []point{{below.x, y}}
	x := below.x + 120
	for range 3 {
		pts = append(pts, point{x, y}, point{x + 20, y - 5}, point{x + 22, y - 9}, point{x + 19, y - 12}, point{x - 6, y - 8}, point{x - 8, y - 5}, point{x - 5, y - 3})
		x += 28
	}
	return append(pts, point{x, y}, point{below.x + below.w, y})
}

// upright is a line down the piece with a slight sway.
func upright(x, top, bottom, sway, turn float64) []point {
	pts := make([]point, 25)
	for i := range pts {
		t := float64(i) / 24
		pts[i] = point{x + sway*math.Sin(4*t+turn), top + (bottom-top)*t}
	}
	return thin(pts, 0.15)
}
