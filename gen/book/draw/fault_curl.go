package draw

import "math"

// curlFaults are the drawings of pieces that do not lie flat. The film is on
// top of each.
var curlFaults = []fault{
	{"curl-across-in", "Lead and tail lift towards the film",
		"Seen aslant: a piece with its film on top, rolled up about an axis across the feed, so that lead and tail stand up. The arrow of the feed crosses the axis.",
		func(v *canvas) { curl(v, true, true) }},
	{"curl-across-out", "Lead and tail drop away from the film",
		"Seen aslant: a piece with its film on top, bent about an axis across the feed, so that lead and tail hang down and its middle stands up. The arrow of the feed crosses the axis.",
		func(v *canvas) { curl(v, true, false) }},
	{"curl-along-in", "The two sides lift towards the film",
		"Seen aslant: a piece with its film on top, rolled up about an axis along the feed, so that its two sides stand up. The arrow of the feed lies along the axis.",
		func(v *canvas) { curl(v, false, true) }},
	{"curl-along-out", "The two sides drop away from the film",
		"Seen aslant: a piece with its film on top, bent about an axis along the feed, so that its two sides hang down and its middle stands up. The arrow of the feed lies along the axis.",
		func(v *canvas) { curl(v, false, false) }},
	{"board-bow", "A mounted board that bows",
		"From the side: a thick board with film on top lies under a straight-edge, and its middle stands off from it.",
		func(v *canvas) {
			v.rect("outline", 14, 46, 212, 12)
			v.text("tick", "start", 14, 40, "straight-edge")
			face := func(x float64) float64 { return 58 + 34*(1-math.Pow((x-120)/106, 2)) }
			under := curve(226, 14, 120, func(x float64) float64 { return face(x) + 30 })
			top := curve(14, 226, 120, face)
			area(v, "outline", append(append([]point(nil), top...), under...))
			for i := range 6 {
				off := 5 + float64(i)*4.2
				v.path("thin", curve(17, 223, 60, func(x float64) float64 { return face(x) + off }))
			}
			filmOnTop := curve(14, 226, 120, func(x float64) float64 { return face(x) + 0.2 })
			v.path("ridge", filmOnTop)
			v.line("thin", 120, 60, 120, 90)
			v.path("thin", arrowHead(point{120, 60}, point{120, 91}))
			v.path("thin", arrowHead(point{120, 90}, point{120, 59}))
			v.text("tick", "start", 127, 80, "bow")
		}},
}

// curl draws a piece seen aslant, bent about an axis across the feed or along
// it, towards its film or away from it. It is always bent from left to right:
// what turns is the feed, which an arrow on the piece shows.
func curl(v *canvas, across, in bool) {
	const long, wide, rise = 150.0, 84.0, 46.0
	place := func(s, t float64) point { // s along the bend, t across it, both -1 to 1
		z := rise * s * s
		if !in {
			z = rise * (0.9 - s*s)
		}
		return point{120 + 0.93*s*long/2 + t*wide*0.3, 122 + t*wide*0.42 - z}
	}
	line := func(s0, t0, s1, t1 float64) []point {
		pts := make([]point, 41)
		for i := range pts {
			f := float64(i) / 40
			pts[i] = place(s0+(s1-s0)*f, t0+(t1-t0)*f)
		}
		return thin(pts, 0.15)
	}
	outline := line(-1, -1, 1, -1)
	outline = append(outline, line(1, -1, 1, 1)...)
	outline = append(outline, line(1, 1, -1, 1)...)
	outline = append(outline, line(-1, 1, -1, -1)...)
	area(v, "face", outline)
	for _, s := range []float64{-2.0 / 3, -1.0 / 3, 1.0 / 3, 2.0 / 3} {
		v.path("thin", line(s, -1, s, 1))
	}
	// The axis: through the middle, and a little past the piece.
	a, b := place(0, -1), place(0, 1)
	v.path("dashed", []point{{a.x + (a.x-b.x)*0.16, a.y + (a.y-b.y)*0.16}, {b.x + (b.x-a.x)*0.16, b.y + (b.y-a.y)*0.16}})
	way := line(-0.32, 0.2, 0.34, 0.2)
	if !across {
		way = line(0.5, 0.62, 0.5, -0.62)
	}
	v.path("ridge", way)
	v.path("ridge", arrowHead(way[len(way)-2], way[len(way)-1]))
	note(v, "film on top")
	v.text("tick", "start", 8, 16, "arrow: feed")
	v.text("tick", "start", 8, 172, "axis")
	v.path("dashed", []point{{38, 168}, {66, 168}})
}
