package book

import (
	"io/fs"
	"regexp"
	"slices"
	"strings"
	"testing"

	"laydown/content"
	"laydown/data"
	"laydown/gen/book/draw"
	"laydown/gen/shop"
)

// TestFaultDrawings: data may ask for exactly the drawings that there are.
func TestFaultDrawings(t *testing.T) {
	asked := shop.DrawingNames()
	slices.Sort(asked)
	if there := draw.FaultNames(); !slices.Equal(asked, there) {
		t.Errorf("data may ask for\n%v\nand there are\n%v", asked, there)
	}
}

// TestFaultDrawingsUsed: every drawing shows something in the demonstration,
// and every sign of it has one.
func TestFaultDrawingsUsed(t *testing.T) {
	s, problems := shop.Load(data.Files, nil)
	if s == nil {
		t.Fatal(problems)
	}
	used := map[string]bool{}
	for _, f := range s.Faults {
		used[f.Drawing] = true
		for _, sign := range f.Signs {
			used[sign.Drawing] = true
			if sign.Drawing == "" {
				t.Errorf("%s: sign %s has no drawing", f.ID, sign.ID)
			}
		}
		for _, c := range f.Checks {
			for _, o := range c.Outcomes {
				used[o.Drawing] = true
			}
		}
	}
	for _, name := range draw.FaultNames() {
		if !used[name] {
			t.Errorf("nothing shows the drawing %s", name)
		}
	}
}

// TestFaultLinks: what the demonstration's families point to in the chapters is
// there.
func TestFaultLinks(t *testing.T) {
	heading := regexp.MustCompile(`(?m)^#+ .*\{#([a-z0-9-]+)\}`)
	there := map[string]bool{}
	files, err := fs.Glob(content.Files, "*.md")
	if err != nil || len(files) == 0 {
		t.Fatalf("chapters %v: %v", files, err)
	}
	for _, name := range files {
		text, err := fs.ReadFile(content.Files, name)
		if err != nil {
			t.Fatal(err)
		}
		_, slug, _ := strings.Cut(strings.TrimSuffix(name, ".md"), "-")
		for _, h := range heading.FindAllSubmatch(text, -1) {
			there[slug+"#"+string(h[1])] = true
		}
	}
	s, problems := shop.Load(data.Files, nil)
	if s == nil {
		t.Fatal(problems)
	}
	look := func(where string, links []string) {
		for _, link := range links {
			if !there[link] {
				t.Errorf("%s points to %s, and there is no such heading", where, link)
			}
		}
	}
	for _, f := range s.Faults {
		look(f.ID, f.See)
		for _, c := range f.Checks {
			look(f.ID+", "+c.ID, c.See)
		}
		for _, m := range f.Remedies {
			look(f.ID+", "+m.ID, m.See)
		}
	}
}
