package draw

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// nodes reads a drawing as XML: what is not well formed fails the test.
func nodes(t *testing.T, svg string) []xml.StartElement {
	t.Helper()
	var list []xml.StartElement
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return list
		}
		if err != nil {
			t.Fatalf("not well formed: %v\n%s", err, svg)
		}
		if e, ok := tok.(xml.StartElement); ok {
			list = append(list, e.Copy())
		}
	}
}

func attr(e xml.StartElement, name string) string {
	for _, a := range e.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// halving is a curve that halves every ten hours from 8: it is at 1 after 30.
func halving(name string) Series {
	s := Series{Name: name}
	for i := 0; i <= 100; i++ {
		x := float64(i) * 0.6
		s.X, s.Y = append(s.X, x), append(s.Y, 8*math.Exp2(-x/10))
	}
	return s
}

func sample() Chart {
	return Chart{ID: "one", Title: "What is left <after> hours", Desc: "It halves.",
		X: Axis{Label: "hours", From: 0, To: 60, Hours: true}, Y: Axis{Label: "left", From: 0.1, To: 10, Log: true},
		Curves: []Series{halving("normal"), halving("the same")}, Level: &Level{Name: "limit 1", At: 1}}
}

func TestChart(t *testing.T) {
	svg := string(sample().SVG())
	list := nodes(t, svg)
	root := list[0]
	if attr(root, "role") != "img" || attr(root, "aria-labelledby") != "one-t one-d" || attr(root, "viewBox") == "" || attr(root, "width") != "" {
		t.Errorf("the drawing's own attributes: %v", root.Attr)
	}
	count := map[string]int{}
	for _, e := range list {
		count[e.Name.Local+" "+attr(e, "class")]++
		if attr(e, "style") != "" {
			t.Errorf("%s has a style", e.Name.Local)
		}
		if id := attr(e, "id"); id != "" && !strings.HasPrefix(id, "one-") {
			t.Errorf("the id %q lacks the drawing's prefix", id)
		}
		if attr(e, "fill")+attr(e, "stroke") != "" {
			t.Errorf("%s carries a colour", e.Name.Local)
		}
	}
	for what, want := range map[string]int{"path curve s0": 1, "path curve s1": 1, "path limit": 1, "circle cross": 2, "title ": 1, "desc ": 1, "text label": 2} {
		if count[what] != want {
			t.Errorf("%d of %q, want %d", count[what], what, want)
		}
	}
	if !strings.Contains(svg, "What is left &lt;after&gt; hours") {
		t.Error("the title is not escaped")
	}
	for _, n := range regexp.MustCompile(`-?\d+\.\d{2,}`).FindAllString(svg, -1) {
		t.Errorf("the number %s is not rounded to a tenth", n)
	}
}

// TestChartNamesStandApart: two curves that end on one spot keep two names.
func TestChartNamesStandApart(t *testing.T) {
	var ys []float64
	for _, e := range nodes(t, string(sample().SVG())) {
		if attr(e, "class") == "label" {
			y, err := strconv.ParseFloat(attr(e, "y"), 64)
			if err != nil {
				t.Fatal(err)
			}
			ys = append(ys, y)
		}
	}
	if len(ys) != 2 || math.Abs(ys[0]-ys[1]) < textHeight {
		t.Errorf("names at %v, want two at least %g apart", ys, textHeight)
	}
}

func TestCrossing(t *testing.T) {
	at, ok := Crossing(halving("normal"), 1)
	if !ok || math.Abs(at-30) > 0.01 { // 8 → 1 in three halvings of ten hours
		t.Errorf("crosses at %g (%v), want 30", at, ok)
	}
	if at, ok := Crossing(halving("normal"), 0.001); ok {
		t.Errorf("crosses 0.001 at %g, but never comes so low", at)
	}
	if at, ok := Crossing(halving("normal"), 9); !ok || at != 0 {
		t.Errorf("is below 9 from the start; got %g, %v", at, ok)
	}
}

func TestMarks(t *testing.T) {
	seen := map[string]string{}
	for _, verdict := range []string{"go", "wait", "change", "refuse"} {
		svg := string(Mark(verdict, 132, 24))
		list := nodes(t, svg)
		if attr(list[0], "aria-hidden") != "true" {
			t.Errorf("%s: the mark speaks; the word beside it should", verdict)
		}
		if other, ok := seen[svg]; ok {
			t.Errorf("%s and %s have one mark", verdict, other)
		}
		seen[svg] = verdict
	}
}

func TestHatchStaysInItsBox(t *testing.T) {
	d := slant(10, 20, 100, 30, 9) + flip(slant(10, 20, 100, 30, 9), 2*10+100)
	numbers := regexp.MustCompile(`[ML](-?[\d.]+) (-?[\d.]+)`).FindAllStringSubmatch(d, -1)
	if len(numbers) < 20 {
		t.Fatalf("only %d points in %q", len(numbers), d)
	}
	for _, n := range numbers {
		x, _ := strconv.ParseFloat(n[1], 64)
		y, _ := strconv.ParseFloat(n[2], 64)
		if x < 9.95 || x > 110.05 || y < 19.95 || y > 50.05 {
			t.Errorf("the point %g, %g stands outside", x, y)
		}
	}
}

func TestSection(t *testing.T) {
	svg := string(Section("cut", "A film on a print", []Layer{
		{Matter: FilmMatter, Name: "film", Size: "25 µm (1 mil)", Thickness: 25e-6},
		{Matter: AdhesiveMatter, Name: "adhesive", Thickness: 50e-6},
		{Matter: InkMatter, Name: "ink", Thickness: 1e-6},
		{Matter: FibreMatter, Name: "paper", Thickness: 120e-6, Gap: true},
	}))
	outlines, labels := 0, 0
	for _, e := range nodes(t, svg) {
		switch attr(e, "class") {
		case "outline":
			outlines++
		case "label layer":
			labels++
		}
	}
	if outlines != 4 || labels != 4 {
		t.Errorf("%d outlines and %d labels, want 4 and 4", outlines, labels)
	}
	if !strings.Contains(svg, "From the top: film 25 µm (1 mil); adhesive; ink; paper.") {
		t.Errorf("the description does not list the layers:\n%s", svg)
	}
}
