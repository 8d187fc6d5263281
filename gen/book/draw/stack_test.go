package draw

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

func value(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// TestRimsAreToScale: an inner edge is as far inside the sheet's as its depth says, and a
// border that has gone through has none.
func TestRimsAreToScale(t *testing.T) {
	svg := string(Rims("d", "A stack", 0.45, 0.32, []Rim{
		{"a day", "7 mm", 0.007}, {"a week", "19 mm", 0.019}, {"ten years", "through", 0.2}}))
	var outline, rims [][4]float64
	for _, n := range nodes(t, svg) {
		if n.Name.Local != "rect" {
			continue
		}
		box := [4]float64{value(t, attr(n, "x")), value(t, attr(n, "y")), value(t, attr(n, "width")), value(t, attr(n, "height"))}
		if attr(n, "class") == "outline" {
			outline = append(outline, box)
		} else if strings.HasPrefix(attr(n, "class"), "rim") {
			rims = append(rims, box)
		}
	}
	if len(outline) != 1 || len(rims) != 2 {
		t.Fatalf("%d outlines and %d inner edges\n%s", len(outline), len(rims), svg)
	}
	scale := outline[0][2] / 0.45
	if math.Abs(outline[0][3]/0.32-scale) > 0.5 {
		t.Errorf("the sheet is %g by %g", outline[0][2], outline[0][3])
	}
	for i, depth := range []float64{0.007, 0.019} {
		if got := (rims[i][0] - outline[0][0]) / scale; math.Abs(got-depth) > 2e-4 {
			t.Errorf("the edge of %g m lies %g m inside", depth, got)
		}
	}
	for _, want := range []string{"a day: 7 mm", "ten years: through"} {
		if !strings.Contains(svg, want) {
			t.Errorf("%q is not on the drawing", want)
		}
	}
}

// TestBlistersGrowAlongTheFeed: none before the first, more and larger further on, none
// where there is nothing to make them of, and all inside the sheet.
func TestBlistersGrowAlongTheFeed(t *testing.T) {
	const n = 301
	s := Passed{Name: "some", First: 0.2, Said: "90 mm", Size: make([]float64, n), Fed: make([]float64, n)}
	for i := range n {
		if x := float64(i) / (n - 1); x > 0.2 {
			s.Size[i] = (x - 0.2) / 0.8
			s.Fed[i] = s.Size[i] * s.Size[i]
		}
	}
	list := blisters(s, 0)
	if len(list) != mostBlisters {
		t.Errorf("%d blisters, %d expected", len(list), mostBlisters)
	}
	near, far := 0, 0
	for i, b := range list {
		if b.x < 0.2 || i > 0 && (b.x < list[i-1].x || b.r < list[i-1].r) {
			t.Fatalf("blister %d: %+v after %+v", i, b, list[max(i-1, 0)])
		}
		if b.x < 0.6 {
			near++
		} else {
			far++
		}
	}
	if far < 2*near {
		t.Errorf("%d in the nearer half, %d in the farther", near, far)
	}
	none := Passed{Name: "none", First: 2, Said: "nowhere", Size: make([]float64, n), Fed: make([]float64, n)}
	if list := blisters(none, 0); len(list) != 0 {
		t.Errorf("%d blisters of nothing", len(list))
	}
	svg := string(Blisters("d", "Sheets", "450 mm", []Passed{s, none}))
	circles, lines := 0, strings.Count(svg, `class="limit"`)
	for _, e := range nodes(t, svg) {
		if e.Name.Local == "circle" {
			circles++
			x, y, r := value(t, attr(e, "cx")), value(t, attr(e, "cy")), value(t, attr(e, "r"))
			if x-r < 2 || x+r > 502 || y-r < 34 || y+r > 96 {
				t.Errorf("a blister at %g, %g of %g leaves its sheet", x, y, r)
			}
		}
	}
	if circles != mostBlisters || lines != 1 {
		t.Errorf("%d circles and %d marks", circles, lines)
	}
}
