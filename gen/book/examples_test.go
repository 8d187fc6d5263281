package book

import (
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"

	"laydown/content"
	"laydown/data"
	"laydown/gen/shop"
)

// fenced gives the bodies of the blocks of a language in the chapter on data.
func fenced(t *testing.T, language string) []string {
	t.Helper()
	src, err := fs.ReadFile(content.Files, "88-data.md")
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	doc := markdown.Parser().Parse(text.NewReader(src))
	for n := doc.FirstChild(); n != nil; n = n.NextSibling() {
		if b, ok := n.(*ast.FencedCodeBlock); ok && string(b.Language(src)) == language {
			list = append(list, string(b.Lines().Value(src)))
		}
	}
	return list
}

// TestExamplesLoad: the examples of the chapter on data, together, make a
// shop's folder with nothing wrong in it.
func TestExamplesLoad(t *testing.T) {
	own := fstest.MapFS{}
	for _, body := range fenced(t, "yaml") {
		first, _, _ := strings.Cut(body, "\n")
		if name, ok := strings.CutPrefix(first, "# data/"); ok && strings.HasSuffix(name, ".yaml") {
			if own[name] != nil {
				t.Errorf("two examples are %s", name)
			}
			own[name] = &fstest.MapFile{Data: []byte(body)}
		}
	}
	if len(own) < 4 {
		t.Fatalf("only %d examples found", len(own))
	}
	s, problems := shop.Load(data.Files, own)
	if err := problems.Err(); err != nil {
		t.Fatal(err)
	}
	film, room := s.Film("our-cold-gloss"), s.Room("upstairs")
	if film == nil || film.Demo || room == nil || s.Limit("no-cold-gloss-on-canvas") == nil {
		t.Error("an example is not in the shop")
	}
}

// TestBrokenExample: the chapter shows just what the program says of its
// broken example.
func TestBrokenExample(t *testing.T) {
	var broken string
	for _, body := range fenced(t, "yaml") {
		if strings.HasPrefix(body, "# data/films.yaml, with") {
			broken = body
		}
	}
	shown := fenced(t, "problems")
	if broken == "" || len(shown) != 1 {
		t.Fatal("the chapter has no broken example, or no list of its problems")
	}
	own := fstest.MapFS{"films.yaml": &fstest.MapFile{Data: []byte(broken)},
		"sources.yaml": &fstest.MapFile{Data: []byte("sources:\n  - {id: film-sheet-2026, kind: maker, title: A sheet}\n")}}
	_, problems := shop.Load(data.Files, own)
	var lines []string
	for _, p := range problems {
		lines = append(lines, p.String())
	}
	if got := strings.Join(lines, "\n") + "\n"; got != shown[0] {
		t.Errorf("the program says\n%sthe chapter says\n%s", got, shown[0])
	}
}
