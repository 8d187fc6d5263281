package book

import (
	"flag"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"laydown/content"
	"laydown/templates"
)

var update = flag.Bool("update", false, "write the golden pages anew")

// bare says that a page sets itself, without the layout: a chart, a form.
func bare(p string) bool {
	return strings.HasPrefix(p, "charts/waits") || strings.HasPrefix(p, "forms/test-")
}

// kinds is one page of each kind of the small handbook.
var kinds = []string{
	"index.html", "plan.html", "search.html", "glossary.html", "index-az.html", "sources.html",
	"tables/index.html", "tables/waits.html", "tables/waits/test-solvent.test-vinyl.html",
	"tables/after.html", "tables/after/test-solvent.test-vinyl.open.html", "tables/vapour.html", "tables/rolls.html",
	"materials/index.html", "materials/inks/test-solvent.html", "materials/media/test-vinyl.html",
	"materials/films/test-cold.html", "materials/laminators/small-wide.html", "materials/rooms/back-room.html",
	"chapters/index.html", "chapters/trying.html", "charts/index.html", "charts/waits-a3.html", "forms/index.html", "forms/test-form.html", "forms/test-card-small-wide.html",
}

// editionStamp is a stamp in the head or the foot of a page.
var editionStamp = regexp.MustCompile(`\b[A-Z0-9]{2}-[A-Z0-9]{2}\b`)

// TestGolden compares the text inside main of one page of each kind, and one
// whole page, with what was looked at and found good.
func TestGolden(t *testing.T) {
	pages := smallBook(t)
	for _, p := range kinds {
		text, ok := pages[p]
		if !ok {
			t.Errorf("there is no page %s", p)
			continue
		}
		if p != "search.html" && !strings.HasPrefix(p, "charts/waits") {
			_, text, _ = strings.Cut(text, "<main")
			text, _, _ = strings.Cut(text, "</main>")
			text = "<main" + text + "</main>\n"
		}
		if p == "search.html" { // the edition's stamp changes with any page
			text = editionStamp.ReplaceAllString(text, "XX-XX")
		}
		golden := filepath.Join("testdata", "golden", strings.ReplaceAll(p, "/", "_"))
		if *update {
			if err := os.MkdirAll(filepath.Dir(golden), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(golden, []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(golden)
		if err != nil {
			t.Fatal(err)
		}
		if d := firstDifference(string(want), text); d != "" {
			t.Errorf("%s differs from %s (go test -update writes it anew):\n%s", p, golden, d)
		}
	}
}

func firstDifference(want, got string) string {
	w, g := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := 0; i < max(len(w), len(g)); i++ {
		a, b := "(no line)", "(no line)"
		if i < len(w) {
			a = w[i]
		}
		if i < len(g) {
			b = g[i]
		}
		if a != b {
			return "want " + a + "\ngot  " + b
		}
	}
	return ""
}

// TestEqualInputGivesEqualFiles builds twice.
func TestEqualInputGivesEqualFiles(t *testing.T) {
	one, two := smallBook(t), smallBook(t)
	if len(one) != len(two) {
		t.Fatalf("%d and %d files", len(one), len(two))
	}
	for p, text := range one {
		if two[p] != text {
			t.Errorf("%s: %s", p, firstDifference(text, two[p]))
		}
	}
}

// TestFilesAreSorted: by path, each once.
func TestFilesAreSorted(t *testing.T) {
	files, _ := Build(smallTables(t), smallContent(), templates.Files)
	for i := 1; i < len(files); i++ {
		if files[i-1].Path >= files[i].Path {
			t.Errorf("%s stands before %s", files[i-1].Path, files[i].Path)
		}
	}
}

// TestEveryPage looks at the tags of all pages.
func TestEveryPage(t *testing.T) {
	for p, text := range smallBook(t) {
		if path.Ext(p) != ".html" {
			continue
		}
		count := map[string]int{}
		policy, current, language := "", 0, ""
		scan(text, func(tg tag) {
			if tg.Close {
				return
			}
			count[tg.Name]++
			if tg.Name == "meta" && tg.get("http-equiv") == "Content-Security-Policy" {
				policy = tg.get("content")
			}
			if tg.has("aria-current") {
				current++
			}
			if tg.Name == "html" {
				language = tg.get("lang")
			}
			for _, name := range []string{"href", "src", "action"} {
				v := tg.get(name)
				if strings.HasPrefix(v, "/") || strings.HasPrefix(v, "http") || strings.HasSuffix(v, "/") {
					t.Errorf("%s: %s=%q: every link is relative and names its file", p, name, v)
				}
			}
			if strings.Contains(tg.get("class"), "scroll") && tg.get("role") == "region" && (tg.get("tabindex") != "0" || tg.get("aria-labelledby") == "") {
				t.Errorf("%s: a scrolling region without a stop or a name", p)
			}
			if tg.has("integrity") {
				t.Errorf("%s: a script with a digest does not load from a folder", p)
			}
		})
		if count["h1"] != 1 || count["main"] != 1 || count["title"] < 1 {
			t.Errorf("%s: %d h1, %d main, %d title", p, count["h1"], count["main"], count["title"])
		}
		if policy != "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'self'" {
			t.Errorf("%s: the policy %q", p, policy)
		}
		if language != "en-GB" {
			t.Errorf("%s: the language %q", p, language)
		}
		if !slices.Contains([]string{"index.html", "search.html", "sources.html"}, p) && !bare(p) && current != 1 {
			t.Errorf("%s: %d open tabs", p, current)
		}
	}
}

// TestChaptersOfTheProgramOnAnotherShop builds the chapters that come with the
// program on a shop that lacks their materials: only what names a material may
// complain, and it must. The words of the program lead somewhere in any shop.
func TestChaptersOfTheProgramOnAnotherShop(t *testing.T) {
	_, problems := Build(smallTables(t), content.Files, templates.Files)
	if len(problems) == 0 {
		t.Fatal("the small shop has no eco-solvent ink, yet nothing complains")
	}
	for _, p := range problems {
		names := strings.HasPrefix(p.Message, "no ") || strings.HasPrefix(p.Message, `the link "../materials/`)
		if !strings.HasPrefix(p.File, "content/") || p.File == "content/words.yaml" || !names {
			t.Errorf("an unexpected problem: %s", p)
		}
	}
}

func BenchmarkBuild(b *testing.B) {
	answers := smallTables(b)
	for b.Loop() {
		if _, problems := Build(answers, smallContent(), templates.Files); len(problems) > 0 {
			b.Fatal(problems.Error())
		}
	}
}
