package browser

import (
	"net/url"
	"path"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// searchFor opens the search page with a query and waits until it has answered.
func searchFor(t *testing.T, q string) *tab {
	t.Helper()
	b := open(t, "search.html?q="+url.QueryEscape(q))
	b.until(`document.getElementById("found").textContent.trim() !== ""`)
	return b
}

// words are the words of a part of the page as it is shown.
func words(b *tab, selector string) string {
	return eval[string](b, `[...document.querySelectorAll("`+selector+`")].map((e) => e.innerText).join(" ").replace(/\s+/g, " ").trim()`)
}

// What is found stands under what it is, the shelf of the best first, with the
// words marked where they stand; a misspelt word says how it was read.
func TestSearchShowsShelves(t *testing.T) {
	b := searchFor(t, "tunelling vinyl")
	defer b.quiet()
	shelves := eval[[]string](b, `[...document.querySelectorAll("#hits > section")].map((s) => s.getAttribute("aria-label"))`)
	if len(shelves) < 2 || len(slices.Compact(slices.Sorted(slices.Values(shelves)))) != len(shelves) {
		t.Errorf("the shelves are %q", shelves)
	}
	if n := eval[int](b, `[...document.querySelectorAll("#hits > section")].filter((s) => s.querySelector("h2") && s.querySelector("ol > li > a[href]")).length`); n != len(shelves) {
		t.Errorf("%d of %d shelves have a heading and hits", n, len(shelves))
	}
	if eval[int](b, `document.querySelectorAll("#hits mark").length`) == 0 {
		t.Error("no word is marked where it stands")
	}
	if got := words(b, "#found"); !strings.Contains(got, "Read “tunelling” as “tunnelling”") {
		t.Errorf("it says %q, not how the slip was read", got)
	}
}

// A shelf shows its best and a button for the rest, which keeps the place.
func TestSearchShowsTheRest(t *testing.T) {
	b := searchFor(t, "film")
	defer b.quiet()
	more := eval[string](b, `document.querySelector("#hits button")?.textContent || ""`)
	if !strings.HasPrefix(more, "Show ") {
		t.Fatalf("the button says %q", more)
	}
	before := eval[int](b, `document.querySelector("#hits button").closest("section").querySelectorAll("li").length`)
	at := eval[string](b, `(() => { const s = document.querySelector("#hits button").closest("section"); s.querySelector("button").click(); return s.getAttribute("aria-label"); })()`)
	after := eval[int](b, `document.querySelector('#hits section[aria-label="`+at+`"]').querySelectorAll("li").length`)
	if after <= before {
		t.Errorf("%d hits before, %d after", before, after)
	}
	if n := eval[int](b, `[...document.activeElement.closest("ol").children].indexOf(document.activeElement.closest("li"))`); n != before {
		t.Errorf("the focus is on hit %d, want the first of the rest, %d", n, before)
	}
}

// A number that was asked for stands above what was found, and is told to those
// who listen; a wait and a window lead to their workings.
func TestSearchAnswersDirectly(t *testing.T) {
	for _, tt := range []struct{ query, says, leads string }{
		{"240 F", "240 °F is 115.6 °C", ""},
		{"3mil", "3 mil is 76.2 µm", ""},
		{"12fpm", "12 ft/min is 3.658 m/min", ""},
		{"80#", "80 lb text is 118.4 g/m²", ""},
		{"5 fpm to m/min", "5 ft/min is 1.524 m/min", ""},
		{"eco solvent on calendered vinyl how long", "Eco-solvent inkjet on calendered vinyl, self-adhesive 24 h", "tables/waits/eco-solvent.vinyl-calendered.html#normal.hung.finishing-room"},
		{"3 mil polyester gloss on coated gloss 135 temperature", "Hot polyester, gloss, 75 µm on coated paper, gloss, 135 g/m²", "tables/windows/thermal-pet-gloss-75.coated-gloss-135"},
		{"AC-EH", "Stamp AC-EH out of date", "charts/index.html"},
	} {
		b := searchFor(t, tt.query)
		if got := words(b, "#direct"); !strings.HasPrefix(got, tt.says) {
			t.Errorf("%q is answered %q, want %q", tt.query, got, tt.says)
		}
		if got := eval[string](b, `document.querySelector("#direct a")?.getAttribute("href") || ""`); !strings.HasPrefix(got, tt.leads) {
			t.Errorf("%q leads to %q, want %q", tt.query, got, tt.leads)
		}
		number := words(b, "#direct .big")
		if told := eval[string](b, `document.getElementById("found").textContent`); !strings.Contains(told, strings.Fields(number)[0]) {
			t.Errorf("%q: %q is not among what is told, %q", tt.query, number, told)
		}
		b.quiet()
	}
}

// The stamp of a chart of this handbook is in date, and leads to the chart.
func TestSearchKnowsItsStamps(t *testing.T) {
	b := open(t, "charts/index.html")
	stamp := eval[string](b, `document.querySelector(".stamps .code").textContent.trim()`)
	href := eval[string](b, `document.querySelector(".stamps td a").getAttribute("href")`)
	b = searchFor(t, strings.ToLower(stamp))
	defer b.quiet()
	if got := words(b, "#direct"); !strings.HasPrefix(got, "Stamp "+stamp+" in date") {
		t.Errorf("%s is answered %q", stamp, got)
	}
	if got := eval[string](b, `document.querySelector("#direct a").getAttribute("href")`); got != path.Join("charts", href) {
		t.Errorf("%s leads to %s, want charts/%s", stamp, got, href)
	}
}

// Where somebody may be hurt, what to do stands before everything, as a caution
// with a place that says more, and Enter goes there.
func TestSearchPutsSafetyFirst(t *testing.T) {
	b := searchFor(t, "burnt hand on rollr")
	defer b.quiet()
	if got := words(b, "#first h2"); !strings.HasPrefix(got, "Burn") {
		t.Errorf("first stands %q", got)
	}
	if got := words(b, "#found"); strings.Contains(got, "Nothing found") {
		t.Errorf("it says %q", got)
	}
	if told := eval[string](b, `document.getElementById("found").textContent`); !strings.Contains(told, "running water") {
		t.Errorf("what to do is not told: %q", told)
	}
	if eval[float64](b, `document.querySelector("#first .caution").getBoundingClientRect().top`) >= eval[float64](b, `document.querySelector("#hits").getBoundingClientRect().top`) {
		t.Error("the caution stands under the hits")
	}
	b.press(kb.Enter)
	if got := eval[string](b, `document.activeElement.getAttribute("href") || ""`); got != "chapters/safety.html#heat" {
		t.Errorf("Enter goes to %q", got)
	}
}

// Search works from any page, by the keyboard alone: type, Enter, down, up,
// Enter, Enter, and Escape for another try.
func TestSearchByKeyboard(t *testing.T) {
	b := open(t, "chapters/index.html")
	defer b.quiet()
	eval[bool](b, `(document.querySelector("form.ask input").focus(), true)`)
	b.press("heavy", kb.Enter)
	b.until(`location.pathname.endsWith("search.html") && document.querySelectorAll("#hits li").length > 0`)
	if q := eval[string](b, `new URLSearchParams(location.search).get("q")`); q != "heavy" {
		t.Errorf("the address holds the query %q, want heavy", q)
	}
	stops := eval[int](b, `document.querySelectorAll("#first a, #direct a, #hits a, #hits button").length`)
	for range stops {
		b.press(kb.ArrowDown)
	}
	if !eval[bool](b, `document.activeElement === [...document.querySelectorAll("#first a, #direct a, #hits a, #hits button")].at(-1)`) {
		t.Error("the down arrow does not reach the last answer")
	}
	for range stops {
		b.press(kb.ArrowUp)
	}
	if !eval[bool](b, `document.activeElement.id === "q"`) {
		t.Error("the up arrow does not come back to the question")
	}
	b.press(kb.Escape)
	if got := eval[string](b, `document.getElementById("q").value + location.search`); got != "" {
		t.Errorf("Escape leaves %q", got)
	}
	b.press("tape", kb.Enter)
	on := eval[string](b, `document.activeElement.getAttribute("href") || ""`)
	if on == "" {
		t.Fatal("Enter does not reach the first hit")
	}
	b.press(kb.Enter)
	b.until(`!location.pathname.endsWith("search.html")`)
	if at := eval[string](b, `location.pathname`); !strings.HasSuffix(at, strings.Split(on, "#")[0]) {
		t.Errorf("Enter on %s led to %s", on, at)
	}
}

// A query that finds nothing still offers somewhere to go: the nearest words of
// the book, or its parts. One with mark-up in it stays text.
func TestSearchNeverEmptyAndNeverMarkup(t *testing.T) {
	for _, q := range []string{`<img src=x onerror=alert(1)>zzqxj`, "lmnttor", "qqqq", "the", "…", "9999 xx"} {
		b := open(t, "search.html?q="+url.QueryEscape(q))
		b.until(`Boolean(window.laydownIndex)`)
		b.settled()
		if n := eval[int](b, `document.querySelectorAll("main img").length`); n != 0 {
			t.Errorf("%q became %d elements", q, n)
		}
		if n := eval[int](b, `[...document.querySelectorAll("main a[href]")].filter((a) => a.offsetParent !== null).length`); n == 0 {
			t.Errorf("%q: nothing is offered where nothing is found", q)
		}
		b.quiet()
	}
	b := searchFor(t, "lmnttor")
	if got := words(b, "#found a.read"); !strings.Contains(got, "lamin") {
		t.Errorf("for lmnttor the nearest words are %q", got)
	}
}

// The page with answers on it has no fault that the accessibility checker knows,
// in either scheme, and does not scroll sideways.
func TestSearchAnswersAreAccessible(t *testing.T) {
	for _, q := range []string{"burnt hand", "80#", "silverring", "eco solvent banner wait", "AC-EH", "lmnttor"} {
		b := searchFor(t, q)
		for _, scheme := range []string{"light", "dark"} {
			b.scheme(scheme)
			for _, f := range b.axe() {
				t.Errorf("%q, %s: %s", q, scheme, f)
			}
		}
		for _, f := range b.overflow(320, 600, 1280) {
			t.Errorf("%q: %s", q, f)
		}
	}
}
