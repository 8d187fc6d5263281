package browser

import (
	"net/url"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// Queries as people type them, and what the first hits must hold. The pages are
// those of the demonstration; where a word leads to is common sense.
func TestSearchFinds(t *testing.T) {
	tests := []struct {
		query string
		want  string // in the address of one of the first three hits
		read  string // what the page must say it read the query as; empty: nothing
	}{
		{"eco solvent", "materials/inks/eco-solvent.html", ""},
		{"ecosolvnt", "materials/inks/eco-solvent.html", "eco"},
		{"higrometer", "glossary.html", "hygrometer"},
		{"outgasing", "", "outgassing"},
		{"thumb twist", "readiness", ""},
		{"tight roll", "storage", ""},
		{"how long uv ink", "uv-inkjet", ""},
		{"3mil", "75", ""},
		{"240F", "", ""},
	}
	b := open(t, "search.html")
	defer b.quiet()
	for _, tt := range tests {
		b.goTo("search.html?q=" + url.QueryEscape(tt.query))
		b.until(`document.querySelectorAll("#hits > li").length > 0`)
		first := eval[string](b, `[...document.querySelectorAll("#hits > li > a:first-child")].slice(0, 3).map((a) => a.getAttribute("href")).join(" ")`)
		if !strings.Contains(first, tt.want) {
			t.Errorf("%q: the first hits are %s, none has %q", tt.query, first, tt.want)
		}
		found := eval[string](b, `document.getElementById("found").textContent + document.querySelector("#search-app").textContent`)
		if tt.read != "" && !strings.Contains(found, tt.read) {
			t.Errorf("%q: nothing says that it was read as %q", tt.query, tt.read)
		}
		if eval[int](b, `document.querySelectorAll("#hits mark").length`) == 0 {
			t.Errorf("%q: no word is marked where it stands", tt.query)
		}
	}
}

// Search works from any page, by the keyboard alone: type, Enter, down, Enter.
func TestSearchByKeyboard(t *testing.T) {
	b := open(t, "chapters/index.html")
	defer b.quiet()
	eval[bool](b, `(document.querySelector("form.ask input").focus(), true)`)
	b.press("heavy", kb.Enter)
	b.until(`location.pathname.endsWith("search.html") && document.querySelectorAll("#hits > li").length > 0`)
	if q := eval[string](b, `new URLSearchParams(location.search).get("q")`); q != "heavy" {
		t.Errorf("the address holds the query %q, want heavy", q)
	}
	b.press(kb.ArrowDown)
	on := eval[string](b, `document.activeElement.getAttribute("href") || ""`)
	if on == "" {
		t.Fatal("the down arrow does not reach the first hit")
	}
	b.press(kb.Enter)
	b.until(`!location.pathname.endsWith("search.html")`)
	if at := eval[string](b, `location.pathname`); !strings.HasSuffix(at, strings.Split(on, "#")[0]) {
		t.Errorf("Enter on %s led to %s", on, at)
	}
}

// A query that finds nothing still offers somewhere to go, and one with mark-up
// in it stays text.
func TestSearchNeverEmptyAndNeverMarkup(t *testing.T) {
	b := open(t, "search.html?q="+url.QueryEscape(`<img src=x onerror=alert(1)>zzqxj`))
	defer b.quiet()
	b.until(`document.getElementById("found").textContent.trim() !== ""`)
	if n := eval[int](b, `document.querySelectorAll("main img").length`); n != 0 {
		t.Errorf("the query became %d elements", n)
	}
	if n := eval[int](b, `[...document.querySelectorAll("main a[href]")].filter((a) => a.offsetParent !== null).length`); n == 0 {
		t.Error("nothing is offered where nothing is found")
	}
}
