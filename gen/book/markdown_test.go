package book

import (
	"strings"
	"testing"
	"testing/fstest"

	"laydown/templates"
)

const headOfChapter = "---\ntitle: A\nsummary: B\norder: 1\n---\n"

// TestProblems: what is wrong with a chapter is reported with its place. The
// text begins on line 6.
func TestProblems(t *testing.T) {
	rows := []struct {
		name, text string
		want       []string
	}{
		{"nothing", "## One\n\nText [web](https://example.org/) and `<b>`.\n", nil},
		{"raw HTML as a block", "<script>alert(1)</script>\n", []string{"6:1: raw HTML: chapters are Markdown only"}},
		{"raw HTML in a line", "Text <b onclick=\"x()\">bold</b>.\n", []string{"6:6: raw HTML: chapters are Markdown only", "6:27: raw HTML: chapters are Markdown only"}},
		{"a comment", "<!-- hidden -->\n", []string{"6:1: raw HTML: chapters are Markdown only"}},
		{"a link that runs script", "A [b](javascript:alert(1)).\n", []string{"6:3: a javascript: link is not allowed: link to a page of the handbook, or to http, https or mailto"}},
		{"in capitals", "A [b](JaVaScRiPt:alert(1)).\n", []string{"6:3: a javascript: link is not allowed: link to a page of the handbook, or to http, https or mailto"}},
		{"behind a letter's entity", "A [b](&#106;avascript:alert(1)).\n", []string{"6:3: a javascript: link is not allowed: link to a page of the handbook, or to http, https or mailto"}},
		{"in angle brackets", "A <javascript:alert(1)>.\n", []string{"6:3: a javascript: link is not allowed: link to a page of the handbook, or to http, https or mailto"}},
		{"data", "A [b](data:text/html,x).\n", []string{"6:3: a data: link is not allowed: link to a page of the handbook, or to http, https or mailto"}},
		{"another host", "A [b](//example.org/x).\n", []string{`6:3: the link "//example.org/x" must be relative: drying.md, or ../tables/waits.html`}},
		{"an image", "An ![x](x.png).\n", []string{"6:4: an image: the handbook makes its own drawings, ask for one with a computed block"}},
		{"a style on a heading", "## One {style=\"color:red\"}\n", []string{"6:1: a heading may be given an id and nothing else, not style"}},
		{"a handler on a heading", "## One {onclick=\"x()\"}\n", []string{"6:1: a heading may be given an id and nothing else, not onclick"}},
		{"an id twice", "## One {#x}\n\n## Two {#x}\n", []string{`8:1: the id "x" is used twice in this chapter`}},
		{"an id like one made from words", "## Two words\n\n## Other {#two-words}\n", []string{`8:1: the id "two-words" is used twice in this chapter`}},
		{"an id with a capital", "## One {#One}\n", []string{`6:1: the id "One": use small letters, digits and single hyphens`}},
		{"a first-level heading", "# One\n", []string{"6:1: a heading of the first level: the chapter's title is that, begin with ##"}},
		{"a level left out", "## One\n\n#### Two\n", []string{"8:1: a heading of level 4 under one of level 2: a level is left out"}},
		{"a page that is not there", "A [b](../tables/none.html).\n", []string{`6:3: the link "../tables/none.html": there is no such page`}},
		{"a place that is not there", "A [b](#none).\n", []string{`6:3: the link "#none": the page has no place called "none"`}},
		{"a chapter that is not there", "A [b](none.md).\n", []string{`6:3: the link "none.md": there is no such chapter`}},
		{"two in one line, in a list", "- A [b](none.md) [c](#none).\n", []string{`6:5: the link "none.md": there is no such chapter`, `6:18: the link "#none": the page has no place called "none"`}},
		{"after letters of more than one byte", "Größe 75 µm [b](none.md).\n", []string{`6:13: the link "none.md": there is no such chapter`}},
		{"inside a note", "```note\nA <b>.\n```\n", []string{"7:3: raw HTML: chapters are Markdown only"}},
		{"inside a caution", "```caution\nFire\nA [b](vbscript:x).\n```\n", []string{"8:3: a vbscript: link is not allowed: link to a page of the handbook, or to http, https or mailto"}},
		{"a caution without a danger", "```caution\nOnly one line\n```\n", []string{"6:1: a caution has the danger's name on its first line and the caution under it"}},
		{"a block in a list", "- A\n\n  ```note\n  x\n  ```\n", []string{"8:3: a block note inside a list or a quotation: put it on its own"}},
		{"a question without a reason", "```question\nWhat?\n\na) A\nb) B\nright: a\n```\n", []string{"6:1: a question says why, in a line because:"}},
		{"a right answer that is no choice", "```question\nWhat?\n\na) A\nb) B\nright: c\nbecause: so\n```\n", []string{`6:1: right: "c" is none of the question's choices`}},
		{"a computed block of no kind", "```computed\nshow: wait\n```\n", []string{`7:1: show: "wait" is none of acclimatise, after, bond-line, claims, coverages, curl-axes, demo-prints, driven-ahead, grain-feed, grain-tests, history, humidity, nip-wrap, residue, roll, stack-border, stack-profile, storages, waits, warnings, wet-out, window-humidity, window-predictions, window-speed, windows`}},
		{"a computed block that lacks an ink", "```computed\nshow: waits\nmedium: test-vinyl\n```\n", []string{"6:1: this computed block needs ink:"}},
		{"an ink nearly right", "```computed\nshow: waits\nink: test-solvnt\nmedium: test-vinyl\n```\n", []string{`8:1: no ink is called "test-solvnt"; did you mean "test-solvent"?`}},
		{"an ink on the wrong medium", "```computed\nshow: waits\nink: test-toner\nmedium: test-vinyl\n```\n", []string{"9:1: test-vinyl is not printed with test-toner"}},
		{"a key that the kind does not take", "```computed\nshow: waits\nink: test-solvent\nmedium: test-vinyl\nhistory: 6 h hung\n```\n", []string{"10:1: history: a computed block that shows waits does not take it"}},
		{"a film that is not there", "```computed\nshow: after\nink: test-solvent\nmedium: test-vinyl\nfilm: test-cool\n```\n", []string{`10:1: no film is called "test-cool"; did you mean "test-cold"?`}},
		{"a back of no kind", "```computed\nshow: after\nink: test-solvent\nmedium: test-vinyl\nfilm: test-cold\nback: shut\n```\n", []string{`11:1: back: "shut" is none of open, film, mounted`}},
		{"a share that is none", "```computed\nshow: after\nink: test-solvent\nmedium: test-vinyl\nfilm: test-cold\nspent: 6 h\n```\n", []string{`11:1: spent: "6 h" is not a fraction: h is a time; write it like 50 %`}},
		{"a share beyond the whole", "```computed\nshow: after\nink: test-solvent\nmedium: test-vinyl\nfilm: test-cold\nspent: 120 %\n```\n", []string{"10:1: 1.2 of its wait: a share from 0 to 1"}},
		{"what stays of a toner", "```computed\nshow: after\nink: test-toner\nmedium: test-paper\nfilm: test-cold\n```\n", []string{"10:1: Test toner has no carrier that would stay"}},
		{"a coverage of no kind", "```computed\nshow: residue\nink: test-solvent\nmedium: test-vinyl\ncoverage: light, dark\n```\n", []string{`10:1: coverage: "dark" is none of light, normal, heavy`}},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			checkProblems(t, headOfChapter+row.text, row.want)
		})
	}
}

// TestFrontMatterProblems: the same for a chapter's head.
func TestFrontMatterProblems(t *testing.T) {
	rows := []struct {
		name, text string
		want       []string
	}{
		{"none at all", "Text.\n", []string{"1:1: a chapter begins with a line ---, then title: and the rest, then a line ---"}},
		{"without an end", "---\ntitle: A\n", []string{"1:1: the chapter's head has no line --- at its end"}},
		{"without a title", "---\nsummary: B\n---\n", []string{"1:1: the chapter has no title"}},
		{"an unknown key", "---\ntitle: A\nsummary: B\nauthor: me\n---\n", []string{"4:1: unknown key author: a chapter has title, thumb, order, summary, minutes and reference"}},
		{"a reference that is no choice", "---\ntitle: A\nsummary: B\nreference: perhaps\n---\n", []string{`4:1: reference: "perhaps" is neither yes nor no`}},
		{"a key twice", "---\ntitle: A\nsummary: B\ntitle: C\n---\n", []string{"4:1: title is given twice"}},
		{"an order in words", "---\ntitle: A\nsummary: B\norder: first\n---\n", []string{`4:1: order: "first" is not a whole number`}},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			checkProblems(t, row.text, row.want)
		})
	}
}

func checkProblems(t *testing.T, text string, want []string) {
	t.Helper()
	_, problems := Build(smallTables(t), fstest.MapFS{"1-a.md": &fstest.MapFile{Data: []byte(text)}}, templates.Files)
	for i, p := range problems {
		w := "no problem"
		if i < len(want) {
			w = "content/1-a.md:" + want[i]
		}
		if p.String() != w {
			t.Errorf("got  %s\nwant %s", p, w)
		}
	}
	if len(problems) < len(want) {
		t.Errorf("not reported: %q", want[len(problems):])
	}
}

// TestMarkdown: what good Markdown becomes.
func TestMarkdown(t *testing.T) {
	page := smallBook(t)["chapters/trying.html"]
	for _, want := range []string{
		`<p>Begin with <strong>this</strong>.</p>`,
		`<div class="margin">` + "\n" + `<div class="note"><p>The margin says <em>why</em>.</p></div>`,
		`<h2 id="table">A table</h2>`,
		`<div class="scroll" role="region" tabindex="0" aria-labelledby="table-1"><span id="table-1" hidden>A table, table 1</span><table>`,
		`<th class="al-right" scope="col">Hours</th>`,
		`<div class="caution" role="note"><span class="stripes" aria-hidden="true"></span><div><p><strong>Knife.</strong> Cut away`,
		`<a href="../chapters/trying.html#table">the table</a>`,
		`<a href="../tables/waits.html">all waits</a>`,
		`<span class="c-nt">films</span>`,
		`<ol class="choices"><li><p>Wait</p></li><li><p>Laminate</p></li></ol>`,
		`<summary>Answer</summary><p><strong>a.</strong></p><p>It is not <em>dry</em>.</p>`,
		`<svg class="chart"`,
		`<caption id="computed-1">Hours to wait: test solvent ink on test vinyl, normal coverage</caption>`,
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
	for _, bad := range []string{"style=", "<!-- raw", "```"} {
		if strings.Contains(page, bad) {
			t.Errorf("the page has %s", bad)
		}
	}
}

func TestSlug(t *testing.T) {
	for text, want := range map[string]string{
		"Two words": "two-words", "75 µm": "75-um", "75 μm film": "75-um-film", "240 °F": "240-f",
		"ΔT": "t", "紙": "section", "The maker's wait": "the-makers-wait", "a – b": "a-b",
	} {
		if got := slug(text); got != want {
			t.Errorf("slug(%q) = %q, want %q", text, got, want)
		}
	}
}
