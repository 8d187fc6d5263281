package draw

import (
	"html/template"
	"math"
)

// Wound is a roll of film from its end, in metres, and the words of each measure.
type Wound struct {
	Across, Core                                    float64
	AcrossText, CoreText, ThicknessText, LengthText string
}

// Roll draws a roll of film from its end, to scale but for the thickness of its
// wraps.
func Roll(id, title string, w Wound) template.HTML {
	const high = 230.0
	outer := (high - 20) / 2
	core := outer * w.Core / w.Across
	centre := point{150, high/2 + 2}
	words := []struct {
		at   point
		text string
	}{
		{point{centre.x + outer*0.6, centre.y - outer*0.8}, w.AcrossText + " across the whole roll"},
		{point{centre.x + core, centre.y}, "core, " + w.CoreText + " across"},
		{point{centre.x + (outer+core)/2*0.9, centre.y + (outer+core)/2*0.44}, "wraps, each " + w.ThicknessText},
		{point{centre.x + 60, centre.y + outer}, w.LengthText + " of film"},
	}
	var v canvas
	said := ""
	for i, word := range words {
		if i > 0 {
			said += "; "
		}
		said += word.text
	}
	v.open(id, "section", chartWidth, high+30, title, "From its end: "+said+".")
	v.path("outline", arc(centre, outer, 0, 360))
	v.path("outline", arc(centre, core, 0, 360))
	v.path("thin", arc(centre, core*0.86, 0, 360))
	for r := core + 7; r < outer-3; r += 7 {
		v.path("thin", arc(centre, r, 0, 360))
	}
	v.line("outline", centre.x, centre.y+outer, centre.x+120, centre.y+outer)
	want := make([]float64, len(words))
	for i, word := range words {
		want[i] = word.at.y
	}
	const column = 320.0
	for i, at := range Spread(want, 28, 16, math.Max(high-20, 40)) {
		v.path("lead", []point{words[i].at, {column - 16, at}, {column - 6, at}})
		v.text("label", "start", column, at+5, words[i].text)
	}
	v.text("tick", "start", 2, high+24, "diameters to scale; the wraps are far thinner than drawn")
	return v.close()
}
