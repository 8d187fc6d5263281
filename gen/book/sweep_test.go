package book

import (
	"slices"
	"strings"
	"testing"
)

// TestSweepFindsPlantedFaults: a template that breaks a rule is reported.
func TestSweepFindsPlantedFaults(t *testing.T) {
	rows := []struct{ name, main, want string }{
		{"good", `<p>Fine.</p>`, ""},
		{"a style attribute", `<p style="color:red">x</p>`, "a style attribute: the page's policy forbids it"},
		{"a style element", `<style>p{}</style>`, "script or style inside the page: the page's policy forbids it"},
		{"a script", `<script>x()</script>`, "script or style inside the page: the page's policy forbids it"},
		{"a handler", `<p onclick="x()">x</p>`, "the attribute onclick: the page's policy forbids it"},
		{"an id of the layout's", `<p id="page-text">x</p>`, `the id "page-text" is used twice`},
		{"a dead link", `<a href="/none.html">x</a>`, `the link "none.html": there is no such page`},
		{"a dead place", `<a href="/plan.html#none">x</a>`, `the link "plan.html#none": the page has no place called "none"`},
	}
	for _, row := range rows {
		files := onlyTemplates(t, "search.html", `{{define "main"}}`+row.main+`{{end}}`)
		_, problems := Build(smallTables(t), smallContent(), files)
		var got []string
		for _, p := range problems {
			if p.File != "search.html" {
				t.Errorf("%s: a problem elsewhere: %s", row.name, p)
			}
			got = append(got, p.Message)
		}
		if row.want == "" && len(got) > 0 || row.want != "" && !slices.Equal(got, []string{row.want}) {
			t.Errorf("%s: got %q, want %q", row.name, got, row.want)
		}
	}
}

// TestTemplateFaults: a template that cannot be read or filled is a problem,
// never half a handbook.
func TestTemplateFaults(t *testing.T) {
	for name, text := range map[string]string{
		"unclosed":     `{{define "main"}}{{if}}`,
		"no such data": `{{define "main"}}{{.Data.Nothing}}{{end}}`,
	} {
		_, problems := Build(smallTables(t), smallContent(), onlyTemplates(t, "glossary.html", text))
		if len(problems) == 0 || !strings.Contains(problems.Error(), "glossary.html") {
			t.Errorf("%s: got %v", name, problems)
		}
	}
}

func TestScan(t *testing.T) {
	var got []string
	scan(`<!-- <i> --><p class="a &amp; b" hidden>1 < 2 &lt;b&gt;</p><br/><input value=x data-n="">`, func(t tag) {
		word := t.Name
		if t.Close {
			word = "/" + word
		}
		for _, a := range t.Attrs {
			word += " " + a.Name + "=" + a.Value
		}
		got = append(got, word)
	})
	if want := []string{"p class=a & b hidden=", "/p", "br", "input value=x data-n="}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestRelative(t *testing.T) {
	in := `<a href="/x.html">see href="/y" &#34;</a><img src="/z.png"><a href="#a"><a href="https://example.org/">`
	for path, want := range map[string]string{
		"index.html":    `<a href="x.html">see href="y" &#34;</a><img src="z.png"><a href="#a"><a href="https://example.org/">`,
		"a/b/page.html": `<a href="../../x.html">see href="../../y" &#34;</a><img src="../../z.png"><a href="#a"><a href="https://example.org/">`,
	} {
		if got := string(relative(path, []byte(in))); got != want {
			t.Errorf("%s: got %s", path, got)
		}
	}
	// Text that a page takes from outside cannot hold a bare quotation mark.
	page := smallBook(t)["chapters/trying.html"]
	if strings.Contains(page, `href="/`) {
		t.Error("a link from the root is left")
	}
}

func TestSections(t *testing.T) {
	got := sections(`<p>Before &amp; all.</p><h2 id="one">One <i>two</i></h2><p>Text</p><table><td class="num">24</td><td>kept</td></table><svg><text>no</text></svg><h2>without</h2><h3 id="b">B</h3>end`)
	want := []section{{"", "", "Before & all."}, {"one", "One two", "Text kept without"}, {"b", "B", "end"}}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	got = sections(`<select><option>a</option></select><table class="facts"><tr><th>width</th><td class="value">635 mm <small>25 in</small></td><td class="spread">from 1 to 2</td><td class="source"><a>x</a></td></tr><tr><th>width</th><td class="value">1 m</td></tr></table>` +
		`<table class="grid of2"><caption>Hours</caption><thead><tr><th>room</th></tr></thead><tbody><tr><th>vinyl <small>hung</small></th><td>no window</td></tr><tr><th>vinyl <small>rack</small></th></tr></tbody></table><table><td>plain <small>kept</small></td></table>`)
	if text := got[0].Text; text != "width 635 mm 1 m Hours plain kept" {
		t.Errorf("got %q", text)
	}
}
