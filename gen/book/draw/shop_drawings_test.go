package draw

import (
	"html/template"
	"math"
	"strings"
	"testing"
)

// TestDrawingsSayWhatTheyShow: each is named, described, and keeps its words inside
// its frame.
func TestDrawingsSayWhatTheyShow(t *testing.T) {
	rollers := Rollers{Diameter: 0.12, Cover: 0.003, Wrap: 0.06, Nip: 0.008,
		DiameterText: "120 mm (4.72 in)", CoverText: "3 mm (0.118 in)", CoverOf: "silicone rubber", WrapText: "60 mm (2.36 in)", NipText: "8 mm (0.315 in)"}
	for name, d := range map[string]template.HTML{
		"grain-feed":  GrainFeed("d"),
		"grain-tests": GrainTests("d"),
		"curl-axes":   CurlAxes("d"),
		"nip-wrap":    NipWrap("d", "Rollers", rollers),
		"roll": Roll("d", "A roll", Wound{Across: 0.15, Core: 0.088, AcrossText: "150 mm (5.91 in)", CoreText: "88 mm (3.46 in)",
			ThicknessText: "75 µm (3 mil)", LengthText: "150 m (492.1 ft)"}),
		"wet-out": WetOut("d", "Wet-out", "15 µm (0.6 mil)", "80 µm (3.1 mil)", []Fill{{"After the nip", 0.1, "10 % filled"}, {"An hour later", 0.5, "50 % filled"}, {"A day later", 1, "100 % filled"}}),
	} {
		svg := string(d)
		if !strings.Contains(svg, `<title id="d-t">`) || !strings.Contains(svg, `<desc id="d-d">`) {
			t.Errorf("%s has no name or no description", name)
		}
		for _, part := range strings.Split(svg, "<text ")[1:] {
			said := part[strings.Index(part, ">")+1 : strings.Index(part, "</text>")]
			x := value(t, between(part, ` x="`, `"`))
			// Labels are 15 units high and bold, others 14.
			wide := TextWidth(said) * 14 * 0.7
			if strings.Contains(part, `class="label"`) {
				wide = TextWidth(said) * 15 * 0.7
			}
			switch between(part, `text-anchor="`, `"`) {
			case "end":
				x -= wide
			case "middle":
				x -= wide / 2
			}
			if x < -1 || x+wide > chartWidth {
				t.Errorf("%s: “%s” runs from %.0f to %.0f of %.0f", name, said, x, x+wide, chartWidth)
			}
		}
	}
}

func between(s, from, to string) string {
	_, s, _ = strings.Cut(s, from)
	s, _, _ = strings.Cut(s, to)
	return s
}

// TestNipIsToScale: the nip is to the roller what its record says, and the film
// covers as much of the roller.
func TestNipIsToScale(t *testing.T) {
	r := Rollers{Diameter: 0.1, Wrap: 0.05, Nip: 0.01}
	svg := string(NipWrap("d", "Rollers", r))
	var rims [][]point
	for _, n := range nodes(t, svg) {
		if n.Name.Local == "path" && attr(n, "class") == "rim" {
			rims = append(rims, pointsOf(t, attr(n, "d")))
		}
	}
	if len(rims) != 2 {
		t.Fatalf("%d thick lines, want nip and film", len(rims))
	}
	nip := rims[0][1].x - rims[0][0].x
	var round float64
	film := rims[1][1:] // without the free end
	for i := range film[1:] {
		round += math.Hypot(film[i+1].x-film[i].x, film[i+1].y-film[i].y)
	}
	// The film lies a little off the roller, and an arc is drawn in chords.
	if ratio := round / nip; math.Abs(ratio-5) > 0.25 {
		t.Errorf("the film covers %.2f times the nip, want 5", ratio)
	}
}

func pointsOf(t *testing.T, d string) []point {
	t.Helper()
	var list []point
	for _, pair := range strings.FieldsFunc(d, func(r rune) bool { return r == 'M' || r == 'L' }) {
		x, y, _ := strings.Cut(pair, " ")
		list = append(list, point{value(t, x), value(t, y)})
	}
	return list
}

// TestWetOutShowsItsShares: the adhesive in the valley comes down as far as its
// share, and air is named only where some is left.
func TestWetOutShowsItsShares(t *testing.T) {
	svg := string(WetOut("d", "Wet-out", "1", "2", []Fill{{"a", 0, "0 %"}, {"b", 0.5, "50 %"}, {"c", 1, "100 %"}}))
	if n := strings.Count(svg, ">air<"); n != 2 {
		t.Errorf("air is named %d times, want 2", n)
	}
	var deep []float64
	for _, n := range nodes(t, svg) {
		if n.Name.Local == "rect" && attr(n, "width") == "110" {
			deep = append(deep, value(t, attr(n, "height")))
		}
	}
	if len(deep) != 3 || math.Abs(deep[1]-deep[0]-30) > 0.1 || math.Abs(deep[2]-deep[0]-60) > 0.1 {
		t.Errorf("the adhesive is %v deep, want half and all of 60 more than none", deep)
	}
}
