package draw

import (
	"math"
	"slices"
	"strings"
	"testing"
)

// TestBandIsCutWhereItsSidesCross: hatch stands only where the upper side is
// above the lower one, and ends where they meet.
func TestBandIsCutWhereItsSidesCross(t *testing.T) {
	b := Band{X: []float64{0, 1, 2, 3, 4}, Low: []float64{0, 0, 4, 4, 0}, High: []float64{2, 2, 2, 2, 2}}
	runs := b.open()
	want := [][]slice{
		{{0, 0, 2}, {1, 0, 2}, {1.5, 2, 2}}, // half way from 1 to 2 the lower side is at 2
		{{3.5, 2, 2}, {4, 0, 2}},
	}
	if len(runs) != len(want) {
		t.Fatalf("%d runs, want %d: %v", len(runs), len(want), runs)
	}
	for i := range want {
		if !slices.Equal(runs[i], want[i]) {
			t.Errorf("run %d is %v, want %v", i, runs[i], want[i])
		}
	}
	if shut := (Band{X: []float64{0, 1}, Low: []float64{3, 3}, High: []float64{2, 2}}).open(); len(shut) != 0 {
		t.Errorf("a band that is shut everywhere has runs %v", shut)
	}
}

// TestBands: two bands are hatched both ways and named; what is too narrow is not.
func TestBands(t *testing.T) {
	c := sample()
	c.Level = nil
	c.Y = Axis{Label: "set", From: 0, To: 100}
	c.Curves = nil
	x := []float64{0, 20, 40, 60}
	level := func(y float64) []float64 { return []float64{y, y, y, y} }
	c.Bands = []Band{
		{Name: "first", X: x, Low: level(10), High: level(60)},
		{Name: "steady", X: x, Low: level(40), High: level(90), Across: true},
		{Name: "narrow", X: x, Low: level(95), High: level(96)},
	}
	svg := string(c.SVG())
	hatches, names := 0, 0
	for _, e := range nodes(t, svg) {
		switch attr(e, "class") {
		case "hatch":
			hatches++
			if !strings.HasPrefix(attr(e, "clip-path"), "url(#one-b") {
				t.Errorf("hatch is cut by %q", attr(e, "clip-path"))
			}
		case "label band-name":
			names++
		}
	}
	if hatches != 3 || names != 2 {
		t.Errorf("%d hatches and %d names, want 3 and 2", hatches, names)
	}
}

// TestParts: each part of an axis has its share, whatever its length, and its
// own ticks.
func TestParts(t *testing.T) {
	a := Axis{Parts: []Part{{"wrap", -4, 0, 0.25, 2}, {"nip", 0, 0.5, 0.5, 2}, {"free", 0.5, 10, 0.25, 2}}}
	for v, want := range map[float64]float64{-4: 0, -2: 0.125, 0: 0.25, 0.25: 0.5, 0.5: 0.75, 10: 1} {
		if got := along(a, v); math.Abs(got-want) > 1e-12 {
			t.Errorf("%g lies at %g of the axis, want %g", v, got, want)
		}
	}
	if got, want := a.partTicks(), []float64{-4, -2, 0, 0.5, 5, 10}; !slices.Equal(got, want) {
		t.Errorf("ticks %v, want %v", got, want)
	}
}

// TestCurveIsCutAtTheFrame: above and below, at the frame's edge.
func TestCurveIsCutAtTheFrame(t *testing.T) {
	c := Chart{X: Axis{From: 0, To: 10}, Y: Axis{From: 0, To: 10}}
	f := box{0, 0, 100, 100}
	for _, row := range []struct {
		y    []float64
		want point
	}{
		{[]float64{5, 15}, point{50, 0}},   // half way up it passes the top
		{[]float64{5, -5}, point{50, 100}}, // and the bottom
		{[]float64{5, 10}, point{100, 0}},
	} {
		pts := c.points(Series{X: []float64{0, 10}, Y: row.y}, f)
		if last := pts[len(pts)-1]; math.Abs(last.x-row.want.x) > 1e-9 || math.Abs(last.y-row.want.y) > 1e-9 {
			t.Errorf("%v ends at %v, want %v", row.y, last, row.want)
		}
	}
}

// TestThrough: every layer is cut and named, every curve parts at its leaps, the
// face is marked on each curve.
func TestThrough(t *testing.T) {
	curve := func(name string, plus float64) ThroughCurve {
		return ThroughCurve{Name: name, Points: []Inside{
			{0, 0, 100 + plus, false}, {0, 1, 90 + plus, false},
			{1, 0, 80 + plus, true}, {1, 1, 40 + plus, false},
		}}
	}
	svg := string(Through{ID: "it", Title: "Through", Desc: "It falls.",
		Layers: []Layer{{Matter: FilmMatter, Name: "film", Size: "25 µm", Thickness: 25e-6}, {Matter: FibreMatter, Name: "paper", Thickness: 100e-6}},
		X:      Axis{Label: "°C", From: 20, To: 120}, Curves: []ThroughCurve{curve("first", 0), curve("steady", -10)},
		Level: Level{Name: "works from 75", At: 75}, Face: 1}.SVG())
	count := map[string]int{}
	for _, e := range nodes(t, svg) {
		count[attr(e, "class")]++
	}
	for class, want := range map[string]int{"outline": 2, "curve s0": 2, "curve s1": 2, "cross": 2, "limit": 1, "label": 2, "tick name": 2} {
		if count[class] != want {
			t.Errorf("%d of %q, want %d", count[class], class, want)
		}
	}
}

// TestTextWidth: wider letters and more of them run wider, and no letter of the
// list is wider than the widest.
func TestTextWidth(t *testing.T) {
	if got := TextWidth("Hours"); math.Abs(got-(1.14+0.94+0.98+0.68+0.80)) > 1e-9 {
		t.Errorf("Hours runs %g cap heights", got)
	}
	for r, w := range letterWidths {
		if w > widestLetter {
			t.Errorf("%q is wider than the widest letter", r)
		}
	}
}
