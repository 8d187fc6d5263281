package draw

import "html/template"

// GrainFeed draws a sheet before the rollers both ways round: its grain across
// the feed, and along it.
func GrainFeed(id string) template.HTML {
	var v canvas
	v.open(id, "section", chartWidth, 262, "Grain across the feed, and along it",
		"From above, twice: a sheet goes from left to right into a pair of rollers whose axes stand upright. On the left its grain lies across the feed, parallel to the roller axes, and the sheet changes its size most along the feed, where it is free. On the right its grain lies along the feed, and the sheet changes most across the feed, where the rollers hold it.")
	grainFed(&v, 2, true)
	grainFed(&v, 372, false)
	return v.close()
}

// grainFed draws one sheet and the rollers that it goes into.
func grainFed(v *canvas, x float64, across bool) {
	sheet := box{x, 52, 230, 130}
	name, under := "Grain along the feed", "moves most across the feed: held"
	if across {
		name, under = "Grain across the feed", "moves most along the feed: free"
	}
	v.text("label", "start", x, 16, name)
	arrow(v, point{x + 2, 36}, point{x + 90, 36})
	v.text("tick", "start", x+98, 41, "feed")
	v.rect("outline", sheet.x, sheet.y, sheet.w, sheet.h)
	grainLines(v, sheet, across)
	roller := box{x + 246, 40, 34, 154}
	hatch(v, RubberMatter, roller.x, roller.y, roller.w, roller.h)
	v.line("lead", roller.x+roller.w/2, roller.y-10, roller.x+roller.w/2, roller.y+roller.h+10)
	v.text("tick", "start", roller.x+roller.w+8, sheet.y+sheet.h/2-4, "roller,")
	v.text("tick", "start", roller.x+roller.w+8, sheet.y+sheet.h/2+14, "its axis")
	if across {
		measureLine(v, point{sheet.x, 204}, point{sheet.x + sheet.w, 204}, "")
	} else {
		measureLine(v, point{sheet.x + sheet.w/2, sheet.y + 4}, point{sheet.x + sheet.w/2, sheet.y + sheet.h - 4}, "")
	}
	v.text("tick", "start", x, 228, under)
	if across {
		v.text("tick", "start", x, 248, "parallel to the roller axes")
	} else {
		v.text("tick", "start", x, 248, "rolls, and sheets too wide to turn")
	}
}

// grainLines draws the fibres of a sheet: short strokes in staggered rows, upright
// or level.
func grainLines(v *canvas, b box, upright bool) {
	const long, apart, gap = 26.0, 13.0, 12.0
	width, height := b.w, b.h
	if upright {
		width, height = b.h, b.w
	}
	row := 0
	for down := apart; down < height-4; down += apart {
		for from := 8 + float64(row%3)*11; from+long < width-4; from += long + gap {
			if upright {
				v.line("thin", b.x+down, b.y+from, b.x+down, b.y+from+long)
			} else {
				v.line("thin", b.x+from, b.y+down, b.x+from+long, b.y+down)
			}
		}
		row++
	}
}

// GrainTests draws the four tests that need no tool, each with the grain of the
// sheet on it.
func GrainTests(id string) template.HTML {
	var v canvas
	v.open(id, "section", chartWidth, 420, "Four tests for grain",
		"Fold: parallel to the grain the fold is straight, against it it is ragged. Bend: a sheet rolls over lower and easier round an axis parallel to the grain. Strips: of two strips held at one end the one with the grain along its length stands out, the other droops. Wetting: a square wetted on one face rolls up round an axis parallel to the grain.")
	foldTest(&v, 2, 0)
	bendTest(&v, 372, 0)
	stripTest(&v, 2, 210)
	wetTest(&v, 372, 210)
	return v.close()
}

func foldTest(v *canvas, x, y float64) {
	v.text("label", "start", x, y+16, "Fold")
	for i, name := range []string{"smooth: with the grain", "ragged: against it"} {
		b := box{x + float64(i)*178, y + 34, 130, 100}
		foldedSheet(v, b, i == 1)
		v.text("tick", "start", b.x, b.y+b.h+28, name)
	}
}

// foldedSheet draws a sheet with a fold down its middle: smooth with the grain, or
// ragged against it.
func foldedSheet(v *canvas, b box, ragged bool) {
	v.rect("outline", b.x, b.y, b.w, b.h)
	grainLines(v, b, !ragged)
	middle := b.x + b.w/2
	fold := []point{{middle, b.y - 8}, {middle, b.y + b.h + 8}}
	if ragged {
		fold = nil
		for n := range 13 {
			side := 3.0
			if n%2 == 0 {
				side = -3
			}
			fold = append(fold, point{middle + side, b.y - 8 + float64(n)*(b.h+16)/12})
		}
	}
	v.path("rim", fold)
}

func bendTest(v *canvas, x, y float64) {
	v.text("label", "start", x, y+16, "Bend half over")
	for i, name := range []string{"low: axis with the grain", "high: axis against it"} {
		left, ground := x+float64(i)*178, y+134
		bentSheet(v, left, ground, 34+32*float64(i))
		v.text("tick", "start", left, ground+28, name)
	}
}

// bentSheet draws a sheet from the side that lies, turns in a half circle, and comes
// back over itself at a height.
func bentSheet(v *canvas, left, ground, high float64) {
	v.line("thin", left, ground, left+130, ground)
	pts := []point{{left, ground - 2}}
	pts = append(pts, arc(point{left + 60, ground - 2 - high/2}, high/2, 90, -90)...)
	v.path("outline", append(pts, point{left + 8, ground - high - 2}))
}

func stripTest(v *canvas, x, y float64) {
	v.text("label", "start", x, y+16, "Two strips at one end")
	for i, name := range []string{"stands: grain along it", "droops: grain across it"} {
		left := x + float64(i)*178
		heldStrip(v, left, y+70, 10+64*float64(i))
		v.text("tick", "start", left, y+172, name)
	}
}

// heldStrip draws a strip from the side, held at its left end, that droops so far.
func heldStrip(v *canvas, left, level, droop float64) {
	hatch(v, SteelMatter, left, level-14, 22, 28)
	v.path("outline", curve(left+22, left+122, 24, func(at float64) float64 {
		s := (at - left - 22) / 100
		return level + droop*s*s
	}))
}

func wetTest(v *canvas, x, y float64) {
	v.text("label", "start", x, y+16, "Wet one face")
	wettedSquare(v, x, y+36)
	v.text("tick", "start", x, y+172, "wetted")
	v.text("tick", "end", x+338, y+172, "rolls round an axis with the grain")
}

// wettedSquare draws a square that lies flat, and beside it how it rolls up once it is
// wetted: both sides inwards, the grain along the rolls.
func wettedSquare(v *canvas, x, top float64) {
	flat := box{x, top, 100, 100}
	v.rect("outline", flat.x, flat.y, flat.w, flat.h)
	grainLines(v, flat, true)
	arrow(v, point{x + 112, top + 50}, point{x + 148, top + 50})
	left, high := x+170, 100.0
	for _, at := range []float64{0, 1} {
		cx := left + 24 + at*56
		v.line("outline", cx-24, top, cx-24, top+high)
		v.line("outline", cx+24, top, cx+24, top+high)
		v.path("outline", oval(point{cx, top}, 24, 8))
		v.path("outline", oval(point{cx, top + high}, 24, 8)[:19])
		grainLines(v, box{cx - 20, top + 10, 40, high - 8}, true)
	}
	v.line("limit", left+52, top-14, left+52, top+high+18)
}

// CurlAxes draws the two ways in which a laminate bends, with the axis of each
// and the feed.
func CurlAxes(id string) template.HTML {
	var v canvas
	v.open(id, "section", chartWidth, 226, "The two axes of curl",
		"Left: a piece whose leading and trailing end stand up, bent about an axis across the feed: the film was pulled too hard. Right: a piece whose sides stand up, bent about an axis along the feed.")
	for i, across := range []bool{true, false} {
		x := 2 + float64(i)*370
		name, under := "Axis across the feed", "lead and tail lift: the film’s tension"
		if !across {
			name, under = "Axis along the feed", "the sides lift: water, grain along the feed"
		}
		v.text("label", "start", x, 16, name)
		v.raw(`<g transform="translate(` + number(x) + ` 22)">`)
		bentPiece(&v, across)
		v.raw(`</g>`)
		v.text("tick", "start", x, 218, under)
	}
	return v.close()
}

// bentPiece draws a piece seen aslant and bent from left to right, with the axis
// through its middle and the arrow of the feed.
func bentPiece(v *canvas, across bool) {
	place := func(s, t float64) point { return point{150 + 100*s + 34*t, 126 + 44*t - 52*s*s} }
	edge := func(s0, t0, s1, t1 float64) []point {
		pts := make([]point, 25)
		for i := range pts {
			f := float64(i) / 24
			pts[i] = place(s0+(s1-s0)*f, t0+(t1-t0)*f)
		}
		return pts
	}
	outline := edge(-1, -1, 1, -1)
	outline = append(outline, edge(1, -1, 1, 1)...)
	outline = append(outline, edge(1, 1, -1, 1)...)
	v.path("outline", append(outline, edge(-1, 1, -1, -1)...))
	for _, s := range []float64{-0.66, -0.33, 0.33, 0.66} {
		v.path("thin", edge(s, -1, s, 1))
	}
	a, z := place(0, -1.4), place(0, 1.25)
	v.line("limit", a.x, a.y, z.x, z.y)
	v.text("tick", "middle", a.x, a.y-6, "axis")
	if across {
		arrow(v, point{30, 176}, point{110, 176})
		v.text("tick", "start", 30, 168, "feed")
		return
	}
	arrow(v, point{30, 122}, point{60, 161})
	v.text("tick", "start", 8, 116, "feed")
}
