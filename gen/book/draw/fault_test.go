package draw

import (
	"encoding/xml"
	"io/fs"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"laydown/templates"
)

// faultNodes draws a fault and reads it as XML.
func faultNodes(t *testing.T, name string) []xml.StartElement {
	t.Helper()
	svg, ok := Fault("f", name)
	if !ok {
		t.Fatalf("there is no drawing %s", name)
	}
	return nodes(t, string(svg))
}

// TestFaults holds every drawing of a fault to what a page needs of it.
func TestFaults(t *testing.T) {
	css, err := fs.ReadFile(templates.Files, "book.css")
	if err != nil {
		t.Fatal(err)
	}
	names := FaultNames()
	if len(names) < 40 {
		t.Errorf("only %d drawings", len(names))
	}
	drawn := map[string]string{}
	for _, name := range names {
		t.Run(name, func(t *testing.T) {
			svg, _ := Fault("f", name)
			again, _ := Fault("f", name)
			if svg != again {
				t.Error("two drawings of it differ")
			}
			if other := drawn[string(svg)]; other != "" {
				t.Errorf("it is the same as %s", other)
			}
			drawn[string(svg)] = name
			list := nodes(t, string(svg))
			root := list[0]
			if attr(root, "role") != "img" || attr(root, "aria-labelledby") != "f-t f-d" || attr(root, "class") != "fault" || attr(root, "viewBox") != "0 0 240 180" {
				t.Errorf("the drawing's own attributes: %v", root.Attr)
			}
			if len(svg) > 16_000 {
				t.Errorf("%d bytes: too much for a page with a dozen of them", len(svg))
			}
			marks := 0
			for _, e := range list[1:] {
				for _, not := range []string{"style", "fill", "stroke", "transform"} {
					if attr(e, not) != "" {
						t.Errorf("%s has %s", e.Name.Local, not)
					}
				}
				if id := attr(e, "id"); id != "" && id != "f-t" && id != "f-d" {
					t.Errorf("the id %q is not the drawing's", id)
				}
				class := attr(e, "class")
				switch {
				case e.Name.Local == "title" || e.Name.Local == "desc":
					continue
				case e.Name.Local != "text" && !strings.Contains(string(css), ".fault ."+class):
					t.Errorf("the style sheet has nothing for the class %q", class)
				}
				marks++
			}
			if marks < 4 {
				t.Errorf("only %d marks", marks)
			}
			for _, part := range extents(t, list) {
				if part.x < -0.01 || part.y < -0.01 || part.x+part.w > faultWidth+0.01 || part.y+part.h > faultHeight+0.01 {
					t.Errorf("something lies outside: %+v", part)
				}
			}
		})
	}
	for _, f := range faults {
		if f.title == "" || strings.HasSuffix(f.title, ".") || !strings.HasSuffix(f.desc, ".") || len(f.desc) < 50 {
			t.Errorf("%s: title %q, description %q", f.name, f.title, f.desc)
		}
	}
	if _, ok := Fault("f", "boat"); ok {
		t.Error("a drawing nobody made was found")
	}
}

var pathStep = regexp.MustCompile(`([MLhqt])([^MLhqt]*)`)

// extents gives the room that each mark of a drawing takes.
func extents(t *testing.T, list []xml.StartElement) []box {
	t.Helper()
	num := func(e xml.StartElement, name string) float64 {
		x, err := strconv.ParseFloat(attr(e, name), 64)
		if err != nil {
			t.Errorf("%s: %s is %q", e.Name.Local, name, attr(e, name))
		}
		return x
	}
	var all []box
	for _, e := range list {
		switch e.Name.Local {
		case "rect":
			all = append(all, box{num(e, "x"), num(e, "y"), num(e, "width"), num(e, "height")})
		case "circle":
			r := num(e, "r")
			all = append(all, box{num(e, "cx") - r, num(e, "cy") - r, 2 * r, 2 * r})
		case "ellipse":
			all = append(all, box{num(e, "cx") - num(e, "rx"), num(e, "cy") - num(e, "ry"), 2 * num(e, "rx"), 2 * num(e, "ry")})
		case "path":
			at := point{}
			for _, step := range pathStep.FindAllStringSubmatch(attr(e, "d"), -1) {
				var v []float64
				for _, f := range strings.Fields(step[2]) {
					x, err := strconv.ParseFloat(f, 64)
					if err != nil {
						t.Errorf("a path with %q", f)
					}
					v = append(v, x)
				}
				switch step[1] {
				case "M", "L":
					at = point{v[0], v[1]}
				case "h":
					at.x += v[0]
				case "q":
					at = point{at.x + v[2], at.y + v[3]}
				case "t":
					at = point{at.x + v[0], at.y + v[1]}
				}
				all = append(all, box{at.x, at.y, 0, 0})
			}
		case "text":
			// The words themselves are not in the element: see TestFaultWords.
			all = append(all, box{num(e, "x"), num(e, "y") - 10, 0, 13})
		}
	}
	return all
}

var textRun = regexp.MustCompile(`<text class="tick" text-anchor="(\w+)" x="([\d.]+)" y="([\d.]+)">([^<]*)</text>`)

// TestFaultWords: no words run out of a drawing or into each other, at seven
// units for a letter.
func TestFaultWords(t *testing.T) {
	for _, name := range FaultNames() {
		svg, _ := Fault("f", name)
		var taken []box
		for _, run := range textRun.FindAllStringSubmatch(string(svg), -1) {
			x, _ := strconv.ParseFloat(run[2], 64)
			y, _ := strconv.ParseFloat(run[3], 64)
			w := 7 * float64(len([]rune(run[4])))
			switch run[1] {
			case "end":
				x -= w
			case "middle":
				x -= w / 2
			}
			b := box{x, y - 10, w, 12}
			if b.x < 0 || b.x+b.w > faultWidth {
				t.Errorf("%s: %q runs out", name, run[4])
			}
			for _, other := range taken {
				if b.meets(other) {
					t.Errorf("%s: %q runs into other words", name, run[4])
				}
			}
			taken = append(taken, b)
		}
	}
}

// circlesOf gives the places and sizes of a drawing's circles of a class.
func circlesOf(t *testing.T, name, class string) (at []point, r []float64) {
	for _, e := range faultNodes(t, name) {
		if e.Name.Local != "circle" || attr(e, "class") != class {
			continue
		}
		x, _ := strconv.ParseFloat(attr(e, "cx"), 64)
		y, _ := strconv.ParseFloat(attr(e, "cy"), 64)
		size, _ := strconv.ParseFloat(attr(e, "r"), 64)
		at, r = append(at, point{x, y}), append(r, size)
	}
	return at, r
}

// TestBubblesLieWhereTheyShould: what tells one kind of bubble from another on
// a drawing is where its bubbles are.
func TestBubblesLieWhereTheyShould(t *testing.T) {
	at, r := circlesOf(t, "bubbles-growing", "hollow")
	var tail, lead, tails, leads float64
	for i, p := range at {
		switch {
		case p.x > whole.inset(10).at(0.7, 0).x:
			t.Errorf("a bubble at the dry lead edge: %v", p)
		case p.x < whole.at(0.25, 0).x:
			tail, tails = tail+r[i], tails+1
		case p.x > whole.at(0.45, 0).x:
			lead, leads = lead+r[i], leads+1
		}
	}
	if tails <= leads || tail/tails < 1.5*lead/leads {
		t.Errorf("%.0f bubbles of %.1f at the tail, %.0f of %.1f at the lead", tails, tail/tails, leads, lead/leads)
	}
	at, r = circlesOf(t, "bubbles-border", "hollow")
	sheet := above.inset(16)
	for i, p := range at {
		if p.x-r[i] < sheet.x || p.x+r[i] > sheet.x+sheet.w || p.y-r[i] < sheet.y || p.y+r[i] > sheet.y+sheet.h {
			t.Errorf("a bubble in the clear border: %v", p)
		}
	}
	if len(at) < 15 {
		t.Errorf("%d bubbles over the sheet", len(at))
	}
	at, _ = circlesOf(t, "bubbles-dark", "hollow")
	parts := boatParts(whole.inset(8))
	for _, p := range at {
		if !inside(p, parts[0]) && !inside(p, parts[1]) && !inside(p, parts[2]) {
			t.Errorf("a bubble beside the dark ink: %v", p)
		}
	}
	if len(at) < 60 {
		t.Errorf("%d bubbles over the dark ink", len(at))
	}
}

// TestMarksRepeat: the marks are evenly apart.
func TestMarksRepeat(t *testing.T) {
	at, _ := circlesOf(t, "marks-repeat", "thin")
	if len(at) != 4 {
		t.Fatalf("%d marks", len(at))
	}
	for i := 2; i < len(at); i++ {
		if math.Abs((at[i].x-at[i-1].x)-(at[1].x-at[0].x)) > 0.11 || at[i].y != at[0].y {
			t.Errorf("mark %d is at %v", i, at[i])
		}
	}
}

// TestCurlSides: towards the film the ends stand higher than the middle, and
// away from it they hang lower; the feed crosses the axis or lies along it.
func TestCurlSides(t *testing.T) {
	line := regexp.MustCompile(`class="(\w+)" d="M([^"]*)"`)
	points := func(d string) (pts []point) {
		for _, pair := range strings.Split(d, "L") {
			x, y, _ := strings.Cut(pair, " ")
			a, _ := strconv.ParseFloat(x, 64)
			b, _ := strconv.ParseFloat(y, 64)
			pts = append(pts, point{a, b})
		}
		return pts
	}
	for _, test := range []struct {
		name       string
		across, in bool
	}{{"curl-across-in", true, true}, {"curl-across-out", true, false}, {"curl-along-in", false, true}, {"curl-along-out", false, false}} {
		svg, _ := Fault("f", test.name)
		first := map[string][]point{}
		for _, m := range line.FindAllStringSubmatch(string(svg), -1) {
			if first[m[1]] == nil {
				first[m[1]] = points(m[2])
			}
		}
		far := first["face"] // begins with the far edge, from end to end
		end, middle := far[0].y, far[len(far)/8].y
		if test.in != (end < middle) {
			t.Errorf("%s: an end at %.1f and the middle at %.1f, y downwards", test.name, end, middle)
		}
		axis, way := first["dashed"], first["ridge"]
		turn := func(pts []point) float64 {
			a, b := pts[0], pts[len(pts)-1]
			return math.Atan2(b.y-a.y, b.x-a.x)
		}
		between := math.Abs(math.Mod(turn(axis)-turn(way)+2*math.Pi, math.Pi))
		between = math.Min(between, math.Pi-between)
		if test.across != (between > 0.5) {
			t.Errorf("%s: feed and axis are %.2f apart", test.name, between)
		}
	}
}
