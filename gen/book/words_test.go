package book

import (
	"strings"
	"testing"
	"testing/fstest"

	"laydown/templates"
)

// withWords is the small content with other words, and a shop's own.
func withWords(words, own string) fstest.MapFS {
	c := smallContent()
	c[wordsFile] = &fstest.MapFile{Data: []byte(words)}
	if own != "" {
		c[ownWordsFile] = &fstest.MapFile{Data: []byte(own)}
	}
	return c
}

func TestWordsLeadToTheFirstPlaceThereIs(t *testing.T) {
	files, problems := Build(smallTables(t), withWords(`words:
  - {term: nip, meaning: Where rollers meet., source: s, see: [chapters/none.html, chapters/trying.html#table, plan.html]}
  - {term: dwell, meaning: Time in it., source: s, see: [plan.html], beside: [nip]}
`, `words:
  - {term: dwell, meaning: Our own., source: s, see: [tables/waits.html]}
  - {term: shed, meaning: Where we wait., source: s}
`), templates.Files)
	if len(problems) > 0 {
		t.Fatal(problems.Error())
	}
	page := byPath(files)["glossary.html"]
	for _, want := range []string{
		`<a href="chapters/trying.html#table">A table</a><small> in Trying</small>`,
		`<dt id="dwell">dwell</dt><dd>Our own. <span class="leads"><a href="tables/waits.html">Hours to wait</a></span>`,
		`<dt id="shed">shed</dt>`,
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the glossary lacks %s", want)
		}
	}
	if strings.Contains(page, "Time in it.") {
		t.Error("the program's meaning stands beside the shop's own")
	}
}

func TestWordsThatLeadNowhere(t *testing.T) {
	_, problems := Build(smallTables(t), withWords(`words:
  - term: nip
    meaning: Where rollers meet.
    see: [chapters/none.html, plan.html#none]
    beside: [dwel]
    source: s
  - {term: dwell, meaning: Time., source: s}
`, ""), templates.Files)
	want := []string{
		`content/words.yaml:2:5: term "nip": beside names "dwel", which is no other term here: did you mean "dwell"?`,
		`content/words.yaml:4:11: no place that "nip" may lead to is in this handbook: chapters/none.html, plan.html#none`,
	}
	for _, line := range want {
		if !strings.Contains(problems.Error(), line) {
			t.Errorf("nothing says %s, only:\n%s", line, problems.Error())
		}
	}
}

// The index has the terms, their other names, the chapters' headings and the
// materials' names, each once and in the order of the letters.
func TestBackIndex(t *testing.T) {
	page := smallBook(t)["index-az.html"]
	heads := map[string]bool{}
	last := ""
	for _, line := range strings.Split(page, "\n") {
		if rest, ok := strings.CutPrefix(line, "<li>"); ok && strings.HasSuffix(line, "</li>") && strings.Contains(line, ", <") {
			head, _, _ := strings.Cut(rest, ", <")
			if heads[head] {
				t.Errorf("%q stands twice", head)
			}
			if key := sortKey(head); key < last {
				t.Errorf("%q stands after a later word", head)
			} else {
				last = key
			}
			heads[head] = true
		}
	}
	for _, want := range []string{"silvering", "frost", "bond line", "table, a", "computed", "trying", "hours to wait", "test solvent ink"} {
		if !heads[want] {
			t.Errorf("the index lacks %q; it has %v", want, heads)
		}
	}
	for _, want := range []string{
		`frost, <i>see</i> <a href="glossary.html#silvering">silvering</a>`,
		`table, a, <a href="chapters/trying.html#table">Trying</a>`,
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the index lacks %s", want)
		}
	}
}

func TestEveryPageHasThreeWaysIn(t *testing.T) {
	for p, text := range smallBook(t) {
		if !strings.HasSuffix(p, ".html") || bare(p) {
			continue
		}
		for what, part := range map[string]string{"a search": `class="ask`, "the thumb index": `class="thumbs"`, "the index at the back": `index-az.html">Index</a>`} {
			if !strings.Contains(text, part) {
				t.Errorf("%s lacks %s", p, what)
			}
		}
	}
}
