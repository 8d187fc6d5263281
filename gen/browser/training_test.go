package browser

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// folio is a chapter's own page number, alone on its line beside the count of
// sheets: 3-2      20 of 109.
var folio = regexp.MustCompile(`(?m)^ *([0-9A-Z]+-[0-9]+) +([0-9]+) of ([0-9]+) *$`)

// TestTrainingBook prints the book: every page A4, each with its count, chapters
// beginning on the pages that the contents promise, every chapter's last words and
// every question and answer on paper, nothing cut off or shrunk.
func TestTrainingBook(t *testing.T) {
	b := open(t, "training.html")
	b.scheme("dark") // the paper stays white whatever the screen likes
	sizes, pdf := b.print()
	t.Logf("the training book prints on %d pages", len(sizes))
	a4 := papers["a4"]
	for i, s := range sizes {
		if w, h := s[0]*inch/72, s[1]*inch/72; math.Abs(w-a4.width) > 0.4 || math.Abs(h-a4.height) > 0.4 {
			t.Errorf("page %d is %.1f × %.1f mm, want A4 upright", i+1, w, h)
		}
	}
	pages := strings.Split(strings.TrimSuffix(pdfTool(t, "pdftotext", "-layout", pdf, "-"), "\f"), "\f")
	if len(pages) != len(sizes) {
		t.Fatalf("%d pages of text, %d of paper", len(pages), len(sizes))
	}

	type start struct{ Folio, Title string }
	starts := eval[[]start](b, `[...document.querySelectorAll(".toc li p")].map(p => ({Folio: p.querySelector(".folio").textContent.trim(), Title: p.querySelector("a").textContent.trim()}))`)
	if len(starts) < 20 {
		t.Fatalf("the contents name %d parts", len(starts))
	}
	begins := map[string]int{}
	for i, text := range pages {
		m := folio.FindStringSubmatch(text)
		switch {
		case m == nil && strings.Contains(text, fmt.Sprintf("%d of %d", i+1, len(pages))) && len(begins) == 0:
			continue // title and contents
		case m == nil:
			t.Errorf("page %d has no number of its chapter", i+1)
			continue
		case m[2] != fmt.Sprint(i+1) || m[3] != fmt.Sprint(len(pages)):
			t.Errorf("page %d says that it is %s of %s", i+1, m[2], m[3])
		}
		if _, twice := begins[m[1]]; twice {
			t.Errorf("two pages are numbered %s", m[1])
		}
		begins[m[1]] = i
	}
	for _, s := range starts {
		i, ok := begins[s.Folio]
		if !ok {
			t.Errorf("there is no page %s, where %s should begin", s.Folio, s.Title)
			continue
		}
		if strings.Count(plain(pages[i]), plain(s.Title)) < 2 { // its running head and its heading
			t.Errorf("page %s does not begin %s:\n%.200s", s.Folio, s.Title, pages[i])
		}
	}

	// Every word of the text reaches the paper, in whatever lines.
	paper := plain(strings.Join(pages, " "))
	for _, text := range eval[[]string](b, `[...document.querySelectorAll(".bound h2, .bound h3, .bound h4, .question > p, .choices li, .because > li > p:last-child, .bound .run > p")].map(e => e.textContent)`) {
		for _, word := range strings.Fields(text) {
			if w := plain(word); !strings.Contains(paper, w) {
				t.Errorf("%q of %.60q is not on paper", word, text)
				break
			}
		}
	}
	if n := eval[int](b, `document.querySelectorAll(".question details, .question .right").length`); n > 0 {
		t.Errorf("%d questions still hold their answers", n)
	}
	asked, answered := eval[int](b, `document.querySelectorAll(".question").length`), eval[int](b, `document.querySelectorAll(".because > li").length`)
	if asked == 0 || asked != answered {
		t.Errorf("%d questions, %d answers", asked, answered)
	}

	m := pageMargins(os.DirFS(b.dir), "training.html", a4)
	b.media("print", "light")
	b.size(int64((a4.width-m[1]-m[3])*96/inch), int64((a4.height-m[0]-m[2])*96/inch))
	for _, f := range eval[[]string](b, script(t, "sheet.js")) {
		t.Error(f)
	}
	for _, f := range eval[[]string](b, fmt.Sprintf(`[...document.querySelectorAll(".bound .figure, .bound svg, .bound tr")].map(e => [e, e.getBoundingClientRect()]).filter(([e, r]) => r.height > %d).map(([e, r]) => e.className + " is " + r.height.toFixed() + " px high: higher than a page")`, int64((a4.height-m[0]-m[2])*96/inch))) {
		t.Error(f)
	}
	b.quiet()
	if keep := os.Getenv("KEEP_PDF"); keep != "" {
		data, err := os.ReadFile(pdf)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(keep, "training.pdf"), data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// plain is a text without spaces and hyphens, which lines and fonts move about.
func plain(text string) string {
	return strings.Map(func(r rune) rune {
		switch r {
		case ' ', '\n', '\t', '\r', '\u00a0', '\u202f', '\u2009', '\u00ad', '-', '\u2010', '\u2011', '\u2060', '\u200b':
			return -1
		}
		return r
	}, text)
}
