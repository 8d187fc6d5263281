package draw

import (
	"html/template"
	"math"
)

// Rollers are a pair of rollers with the film that goes round the upper one, in
// metres, and the words of each measure.
type Rollers struct {
	Diameter, Cover, Wrap, Nip                          float64
	DiameterText, CoverText, CoverOf, WrapText, NipText string
}

// NipWrap draws two rollers from the side, to scale: the film on the upper one
// before the nip, and the nip as wide as the rollers meet.
func NipWrap(id, title string, r Rollers) template.HTML {
	const high = 300.0
	scale := (high - 20) / 2 / r.Diameter // of the drawing to a metre
	radius := r.Diameter / 2 * scale
	half := r.Nip / 2 * scale
	off := math.Sqrt(radius*radius - half*half) // from the nip to each centre
	nip := point{190, high/2 + 4}
	upper, lower := point{nip.x, nip.y - off}, point{nip.x, nip.y + off}
	words := []struct {
		at   point
		text string
	}{
		{point{upper.x + radius*0.707, upper.y - radius*0.707}, "upper roller, " + r.DiameterText + " across"},
		{point{upper.x + (radius-r.Cover*scale)*0.94, upper.y + (radius-r.Cover*scale)*0.34}, r.CoverOf + ", " + r.CoverText},
		{point{nip.x + half, nip.y}, "nip, " + r.NipText + " along the feed"},
		{point{nip.x + radius + 50, nip.y}, "print, going to the right"},
	}
	if r.Wrap > 0 {
		words = append(words, struct {
			at   point
			text string
		}{point{}, "film before the nip, " + r.WrapText})
	}
	said := ""
	for i, w := range words {
		if i > 0 {
			said += "; "
		}
		said += w.text
	}
	var v canvas
	v.open(id, "section", chartWidth, high+34, title, "From the side, to scale: "+said+".")
	v.path("outline", arc(upper, radius, 0, 360))
	v.path("outline", arc(lower, radius, 0, 360))
	if r.Cover > 0 {
		v.path("thin", arc(upper, radius-r.Cover*scale, 0, 360))
	}
	v.line("thin", nip.x-radius-50, nip.y, nip.x+radius+50, nip.y)
	v.path("thin", arrowHead(point{nip.x + radius, nip.y}, point{nip.x + radius + 50, nip.y}))
	v.line("rim", nip.x-half, nip.y, nip.x+half, nip.y)
	if r.Wrap > 0 {
		begin := 90 + math.Asin(half/radius)*180/math.Pi
		end := begin + r.Wrap*scale/radius*180/math.Pi
		film := arc(upper, radius+2, end, begin)
		a := end * math.Pi / 180
		free := point{film[0].x - 46*math.Sin(a), film[0].y + 46*math.Cos(a)}
		v.path("rim", append([]point{free}, film...))
		words[len(words)-1].at = film[len(film)/2]
	}
	want := make([]float64, len(words))
	for i, w := range words {
		want[i] = w.at.y
	}
	const column = 336.0
	for i, at := range Spread(want, 26, 14, high) {
		v.path("lead", []point{words[i].at, {column - 16, at}, {column - 6, at}})
		v.text("label", "start", column, at+5, words[i].text)
	}
	v.text("tick", "start", 2, high+26, "to scale; a thin line inside the upper roller is the edge of its cover")
	return v.close()
}
