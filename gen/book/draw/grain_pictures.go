package draw

import (
	"html/template"
	"maps"
	"slices"
)

// grainPicture is a picture without words for a wall chart, where the words stand beside
// it: what it is called, what it shows, and how it is drawn.
type grainPicture struct {
	title, desc string
	draw        func(v *canvas)
}

// The size of the pictures: two states side by side, as in the drawings of the tests.
const grainWidth, grainHeight = 312.0, 124.0

// secondState is how far right of the first the second state stands.
const secondState = 178.0

var grainPictures = map[string]grainPicture{
	"grain-feed": {"Grain across the feed, and along it",
		"From above, twice: a sheet before a roller. On the left its grain is across the feed, parallel to the roller’s axis, on the right along the feed.",
		func(v *canvas) {
			for i, across := range []bool{true, false} {
				x := float64(i) * (secondState - 4)
				sheet := box{x + 2, 30, 92, 80}
				v.rect("outline", sheet.x, sheet.y, sheet.w, sheet.h)
				grainLines(v, sheet, across)
				arrow(v, point{x + 2, 14}, point{x + 92, 14})
				hatch(v, RubberMatter, x+106, 18, 24, 102)
				v.line("limit", x+118, 6, x+118, 124)
			}
		}},
	"grain-label": {"A marked size, and what it may mean",
		"A label reads 64 × 90 with the 64 underlined. Beside it two upright sheets: one with its grain along the short side, one with it along the long side.",
		func(v *canvas) {
			v.text("size", "start", 2, 76, "64 × 90")
			v.line("rim", 4, 88, 44, 88)
			for i, upright := range []bool{false, true} {
				sheet := box{168 + float64(i)*78, 14, 64, 94}
				v.rect("outline", sheet.x, sheet.y, sheet.w, sheet.h)
				grainLines(v, sheet, upright)
			}
		}},
	"grain-fold": {"A fold with the grain, and one against it",
		"Two sheets with a fold down the middle: smooth where the grain lies along the fold, ragged where it lies across it.",
		func(v *canvas) {
			foldedSheet(v, box{2, 12, 130, 100}, false)
			foldedSheet(v, box{2 + secondState, 12, 130, 100}, true)
		}},
	"grain-bend": {"A sheet bent over with the grain, and against it",
		"Two sheets from the side, rolled half over: low and easily where the axis is parallel to the grain, high where it is not. Under each the sheet from above with its grain.",
		func(v *canvas) {
			for i, upright := range []bool{true, false} {
				x := 2 + float64(i)*secondState
				bentSheet(v, x, 72, 32+32*float64(i))
				fromAbove(v, box{x, 84, 130, 34}, upright)
			}
		}},
	"grain-droop": {"An edge that droops more, and one that droops less",
		"A sheet over the edge of a table, from the side: it droops more where its grain is parallel to the edge. Under each the sheet from above with its grain.",
		func(v *canvas) {
			for i, upright := range []bool{true, false} {
				x := 2 + float64(i)*secondState
				overEdge(v, x, 18, 50-34*float64(i))
				fromAbove(v, box{x, 84, 130, 34}, upright)
			}
		}},
	"grain-strips": {"A strip that stands out, and one that droops",
		"Two strips held at one end, from the side: the one with the grain along its length stands out, the other droops. Under each the strip from above with its grain.",
		func(v *canvas) {
			for i, upright := range []bool{false, true} {
				x := 2 + float64(i)*secondState
				heldStrip(v, x, 18, 6+48*float64(i))
				fromAbove(v, box{x, 84, 130, 34}, upright)
			}
		}},
	"grain-wet": {"A square that was wetted on one face",
		"A square with its grain upright, and the same once it is wetted: it rolls up round an axis parallel to the grain.",
		func(v *canvas) { wettedSquare(v, 2, 12) }},
	"grain-nail": {"An edge that waves, and one that stays smooth",
		"A sheet whose grain lies level: nails drawn along its upright edge leave waves, along its level edge none.",
		func(v *canvas) {
			edge := []point{{82, 20}, {232, 20}}
			for n := range 25 {
				side := 5.0
				if n%2 == 0 {
					side = 0
				}
				edge = append(edge, point{232 + side, 20 + float64(n)*90/24})
			}
			v.path("outline", append(edge, point{82, 110}, point{82, 20}))
			grainLines(v, box{82, 20, 146, 90}, false)
			arrow(v, point{112, 8}, point{202, 8})
			arrow(v, point{252, 36}, point{252, 100})
		}},
}

// fromAbove draws a narrow sheet from above, its grain upright or level.
func fromAbove(v *canvas, b box, upright bool) {
	v.rect("outline", b.x, b.y, b.w, b.h)
	if !upright {
		grainLines(v, b, false)
		return
	}
	for n := range int(b.w/12) - 1 {
		x, top := b.x+12+12*float64(n), b.y+5+float64(n%2)*6
		v.line("thin", x, top, x, top+b.h-16)
	}
}

// overEdge draws a sheet from the side that lies on a table and hangs over its edge.
func overEdge(v *canvas, left, level, droop float64) {
	hatch(v, SteelMatter, left, level+2, 62, 20)
	pts := []point{{left, level}, {left + 62, level}}
	v.path("outline", append(pts, curve(left+62, left+130-droop/4, 24, func(at float64) float64 {
		s := (at - left - 62) / (68 - droop/4)
		return level + droop*s*s
	})...))
}

// GrainPicture draws a picture of a test for grain, or of what grain is called, without
// words. False if there is none of the name.
func GrainPicture(id, name string) (template.HTML, bool) {
	p, ok := grainPictures[name]
	if !ok {
		return "", false
	}
	var v canvas
	v.open(id, "section", grainWidth, grainHeight, p.title, p.desc)
	p.draw(&v)
	return v.close(), true
}

// GrainPictureShape is the width of the pictures over their height.
const GrainPictureShape = grainWidth / grainHeight

// GrainPictureNames lists the pictures that there are.
func GrainPictureNames() []string { return slices.Sorted(maps.Keys(grainPictures)) }
