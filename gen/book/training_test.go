package book

import (
	"strings"
	"testing"
)

// Two chapters that refer to each other and to themselves, with a heading of the same
// name in both.
func boundChapters(t *testing.T) (one, two *chapter, numbers map[string]string) {
	t.Helper()
	one = &chapter{Slug: "air", Page: "chapters/air.html", Headings: []heading{{2, "why", "Why"}, {3, "cold", "Cold"}, {2, "check", "Check"}}}
	two = &chapter{Slug: "heat", Page: "chapters/heat.html", Headings: []heading{{2, "why", "Why"}}}
	return one, two, (&builder{chapters: []*chapter{one, two}}).numbers()
}

func TestBoundText(t *testing.T) {
	one, two, numbers := boundChapters(t)
	rows := []struct {
		name string
		c    *chapter
		in   string
		want string
	}{
		{"a section", one, `<h2 id="check">Check</h2>`, `<h3 id="air-check"><span class="number">1.2</span> Check</h3>`},
		{"a heading in a section", one, `<h3 id="cold">Cold</h3>`, `<h4 id="air-cold">Cold</h4>`},
		{"a heading without an id", one, `<h2>Free</h2>`, `<h3>Free</h3>`},
		{"another chapter", one, `<a href="/chapters/heat.html">heat</a>`, `<a href="#heat">heat<span class="refers"> (2)</span></a>`},
		{"a place in another", one, `<a href="/chapters/heat.html#why">why</a>`, `<a href="#heat-why">why<span class="refers"> (2.1)</span></a>`},
		{"a place in itself", one, `<a href="#cold">cold</a>`, `<a href="#air-cold">cold<span class="refers"> (1.1)</span></a>`},
		{"the same by its page", two, `<a href="/chapters/heat.html#why">x</a>`, `<a href="#heat-why">x<span class="refers"> (2.1)</span></a>`},
		{"a place that is no heading", two, `<a href="/chapters/air.html#computed-1">x</a>`, `<a href="#air-computed-1">x<span class="refers"> (1)</span></a>`},
		{"a table", one, `<a href="/tables/waits.html#x">waits</a>`, `<a href="/tables/waits.html#x">waits</a>`},
		{"a list of chapters", one, `<a href="/chapters/index.html">all</a>`, `<a href="/chapters/index.html">all</a>`},
		{"the web", one, `<a href="https://example.org/#why">web</a>`, `<a href="https://example.org/#why">web</a>`},
		{"labels", one, `<div aria-labelledby="a b"><b id="a">x</b></div>`, `<div aria-labelledby="air-a air-b"><b id="air-a">x</b></div>`},
		{"a region", one, `<div role="region" aria-labelledby="a">`, `<div role="region" aria-labelledby="air air-a">`},
		{"a drawing", one, `<rect fill="url(#hatch)" class="h2"/>`, `<rect fill="url(#air-hatch)" class="h2"/>`},
		{"text that looks like a link", one, `<p>id=&#34;x&#34; href="#y"</p>`, `<p>id=&#34;x&#34; href="#y"</p>`},
	}
	for _, row := range rows {
		if got := string(bound{row.c, numbers}.text(row.in)); got != row.want {
			t.Errorf("%s:\n got %s\nwant %s", row.name, got, row.want)
		}
	}
}

// A title is a string of the style sheet, whatever stands in it.
func TestCSSString(t *testing.T) {
	for in, want := range map[string]string{
		`Heat`:             `"Heat"`,
		`5" and 3\4`:       `"5\22  and 3\5c 4"`,
		"two\nlines":       `"two\a lines"`,
		`";} * {color:red`: `"\22 ;} * {color:red"`,
	} {
		if got := cssString(in); got != want {
			t.Errorf("%q: got %s, want %s", in, got, want)
		}
	}
}

// The book of the small handbook holds its chapter, its questions without answers,
// the answers at the end, and pages for each part.
func TestTrainingBook(t *testing.T) {
	pages := smallBook(t)
	text, css := pages[trainingPath], pages["style/training-pages.css"]
	chapterText, answers, ok := strings.Cut(text, `id="all-answers"`)
	if !ok {
		t.Fatalf("the book has no answers:\n%.400s", text)
	}
	if strings.Contains(chapterText, "<summary>Answer") || !strings.Contains(chapterText, "Question 1") {
		t.Error("a question holds its answer, or has no number")
	}
	if n := strings.Count(pages["chapters/trying.html"], "<summary>Answer"); n != strings.Count(answers, "<li><p><strong>") || n == 0 {
		t.Errorf("%d questions in the chapter, %d answers in the book", n, strings.Count(answers, "<li><p><strong>"))
	}
	for _, want := range []string{"@page { size: 210mm 297mm }", `counter-increment: chapter-1`, `"1 Trying"`, `.signing { page: signing }`} {
		if !strings.Contains(css, want) {
			t.Errorf("the style sheet lacks %s:\n%s", want, css)
		}
	}
}
