package browser

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// faultyDir holds a page for each fault that the checks must find.
var faultyDir = filepath.Join(root, "testdata", "faultypages")

// checkers are the checks of single pages, by name.
var checkers = map[string]func(b *tab, page string) []string{
	"files":         func(b *tab, page string) []string { return filePart(b.t, page) },
	"console":       func(b *tab, page string) []string { return b.settled() },
	"axe":           func(b *tab, page string) []string { return b.axe() },
	"axe short":     func(b *tab, page string) []string { b.shorten(); return b.axe() },
	"axe dark":      func(b *tab, page string) []string { b.scheme("dark"); return b.axe() },
	"contrast":      func(b *tab, page string) []string { return b.contrast() },
	"contrast dark": func(b *tab, page string) []string { b.scheme("dark"); return b.contrast() },
	"print":         func(b *tab, page string) []string { return b.onPaper(page) },
	"axe 600":       func(b *tab, page string) []string { b.size(600, 800); return b.axe() },
	"overflow":      func(b *tab, page string) []string { return b.overflow(360, 600, 1024, 1280) },
	"keyboard":      func(b *tab, page string) []string { return b.keyboard(100) },
	"motion":        func(b *tab, page string) []string { return b.motion() },
	"noscript":      func(b *tab, page string) []string { return b.withoutScript(page) },
	"paper":         func(b *tab, page string) []string { return b.wallChart(page) },
}

// planted lists every faulty page, the check that must find its fault, and a
// part of what that check must say. An empty part: the check must find nothing.
var planted = []struct{ page, check, want string }{
	{"good.html", "files", ""},
	{"good.html", "console", ""},
	{"good.html", "axe", ""},
	{"good.html", "axe dark", ""},
	{"good.html", "axe 600", ""},
	{"good.html", "overflow", ""},
	{"good.html", "keyboard", ""},
	{"good.html", "motion", ""},
	{"good.html", "noscript", ""},
	{"dead-button.html", "noscript", "button#press is shown and does nothing"},
	{"script-only.html", "noscript", "holds no text"},
	{"console-error.html", "console", "exception: Uncaught TypeError"},
	{"console-message.html", "console", "console: log: \"still debugging\""},
	{"policy-broken.html", "console", "Content Security Policy"},
	{"inline-script.html", "files", "an inline script"},
	{"inline-script.html", "console", "Content Security Policy"},
	{"inline-style.html", "files", "an inline style"},
	{"inline-style.html", "console", "Content Security Policy"},
	{"inline-handler.html", "files", "an inline event handler"},
	{"style-element.html", "files", "an inline style element"},
	{"missing-file.html", "files", "no such file"},
	{"missing-file.html", "console", "not loaded: Script"},
	{"network.html", "files", "leads outside"},
	{"network.html", "console", "request: http://192.0.2.1/logo.png"},
	{"network-late.html", "console", "request: http://192.0.2.1/count"},
	{"no-policy.html", "files", "no content security policy"},
	{"policy-unsafe.html", "files", "allows 'unsafe-inline' for script-src"},
	{"policy-late.html", "files", "stands before the content security policy"},
	{"no-language.html", "files", "has no lang"},
	{"no-language.html", "axe", "html-has-lang"},
	{"no-zoom.html", "files", "forbids zooming"},
	{"no-doctype.html", "files", "<!doctype html>"},
	{"module-script.html", "files", "is a module"},
	{"module-script.html", "console", "CORS"},
	{"link-missing.html", "files", `a href="no-such-page.html": no such file`},
	{"link-fragment.html", "files", `no such id in good.html`},
	{"link-own-fragment.html", "files", `no such id in link-own-fragment.html`},
	{"link-absolute.html", "files", "is absolute"},
	{"link-folder.html", "files", "names a folder"},
	{"link-script.html", "files", "leads outside"},
	{"link-nowhere.html", "files", "leads nowhere"},
	{"id-twice.html", "files", `the id "same" stands twice`},
	{"aria-missing.html", "files", `aria-labelledby="nobody": no such id`},
	{"label-missing.html", "files", `for="nobody": no such id`},
	{"pattern-missing.html", "files", `fill="nothing": no such id`},
	{"style-outside.html", "console", "Content Security Policy"},
	{"leftover.html", "files", `computation: "NaN"`},
	{"leftover.html", "files", `computation: "%!d(string=two)"`},
	{"contrast.html", "axe", "color-contrast"},
	{"contrast-dark.html", "axe", ""},
	{"contrast-dark.html", "axe dark", "color-contrast"},
	{"contrast-narrow.html", "axe", ""},
	{"contrast-narrow.html", "axe 600", "color-contrast"},
	{"good.html", "contrast", ""},
	{"drawing-good.html", "contrast", ""},
	{"drawing-good.html", "contrast dark", ""},
	{"drawing-pale.html", "contrast", "“hours” in svg.drawing has a contrast of 2.32, #aaaaaa on #ffffff"},
	{"drawing-thin.html", "contrast", "“hours” in svg.drawing has a contrast of 2.42, #a7a7a7 on #ffffff"},
	{"drawing-dark.html", "contrast", ""},
	{"drawing-dark.html", "contrast dark", "#222222 on #181818"},
	{"drawing-area.html", "contrast", "#222222 on #444444"},
	{"drawing-hatch.html", "contrast", "#222222 on #222222"},
	{"drawing-line.html", "contrast", "“hours” in svg.drawing has a contrast of 1.28, #666666 on #777777"},
	{"drawing-faint.html", "contrast", "path in svg.drawing has a contrast of 1.61, #cccccc on #ffffff, want 3"},
	{"drawing-good.html", "print", ""},
	{"print-wide.html", "print", "on a4: 923 px wide"},
	{"print-wide.html", "overflow", ""},
	{"print-hidden.html", "print", "on letter: section.scroller hides"},
	{"script-holds.html", "files", "holds the page up"},
	{"focus-faint.html", "keyboard", "has an outline with a contrast of 1.36"},
	{"focus-words.html", "keyboard", "has words with a contrast of 1.00"},
	{"no-label.html", "axe", "label"},
	{"no-alt.html", "axe", "image-alt"},
	{"no-alt.html", "axe short", "image-alt"},
	{"good.html", "axe short", ""},
	{"heading-order.html", "axe", "heading-order"},
	{"empty-link.html", "axe", "link-name"},
	{"wide.html", "overflow", "at 1280 px: p.wide ends at"},
	{"wide-narrow.html", "overflow", "at 360 px: p.wide-500 ends at"},
	{"cells.html", "overflow", "“overnight” sticks"},
	{"cells.html", "print", "on a4: “overnight” sticks"},
	{"cells-good.html", "overflow", ""},
	{"cells-good.html", "print", ""},
	{"no-focus.html", "keyboard", "shows no focus"},
	{"focus-hidden.html", "keyboard", "is outside the window"},
	{"trap.html", "keyboard", "the Tab key does not leave button#trap"},
	{"unreachable.html", "keyboard", "the Tab key reaches"},
	{"order.html", "files", "changes the order"},
	{"motion.html", "motion", "p moves"},
	{"chart-good-a4.html", "paper", ""},
	{"chart-good-a2.html", "paper", ""},
	{"chart-spills-a4.html", "paper", "prints on 2 sheets, want 1"},
	{"chart-size-a3.html", "paper", "a3 is 297.0 × 420.0 mm"},
	{"chart-word-tabloid.html", "paper", "tabloid is 279.4 × 431.8 mm"},
	{"chart-cut-a4.html", "paper", "hides"},
	{"chart-shrunk-a4.html", "paper", "print would shrink it or cut it off"},
	{"chart-tiny-a4.html", "paper", `"48" has capitals of`},
	{"chart-over-a4.html", "paper", "into the foot"},
	{"chart-words-a4.html", "paper", `"Gloss film" is not in the PDF as text`},
	{"chart-nameless.html", "paper", "tells no paper"},
}

// filePart is what the file checks say of one faulty page.
func filePart(t testing.TB, page string) []string {
	var part []string
	for _, f := range checkTree(os.DirFS(faultyDir), "") {
		if strings.HasPrefix(f, page+": ") {
			part = append(part, f)
		}
	}
	return part
}

// TestChecksFindPlantedFaults holds every check to what it promises.
func TestChecksFindPlantedFaults(t *testing.T) {
	b := newTab(t, faultyDir)
	for _, row := range planted {
		t.Run(row.page+", "+row.check, func(t *testing.T) {
			b.t = t
			if row.check != "files" {
				b.size(1024, 768)
				b.scheme("light")
				b.taken()
				b.goTo(row.page)
			}
			faults := checkers[row.check](b, row.page)
			if row.want == "" {
				if len(faults) > 0 {
					t.Errorf("a false alarm: %q", faults)
				}
				return
			}
			if !slices.ContainsFunc(faults, func(f string) bool { return strings.Contains(f, row.want) }) {
				t.Errorf("found %q, want one with %q", faults, row.want)
			}
		})
	}
	b.t = t
}

// TestEveryFaultyPageIsWanted: no page lies in the folder without a row above.
func TestEveryFaultyPageIsWanted(t *testing.T) {
	for _, p := range pagesOf(t, faultyDir) {
		if strings.HasPrefix(p, "tree/") {
			continue // TestOrphans
		}
		found := false
		for _, row := range planted {
			found = found || row.page == p
		}
		if !found {
			t.Errorf("%s: no check is wanted to find its fault", p)
		}
	}
}

// TestOrphans: a page that no link leads to, and the faults of a style sheet.
func TestOrphans(t *testing.T) {
	faults := checkTree(os.DirFS(faultyDir), "tree/index.html")
	for _, want := range []string{
		"tree/orphan.html: no way leads here from tree/index.html",
		"outside.css: @import",
		"outside.css: url(https://192.0.2.1/paper.png) leads outside",
		"outside.css: var(--nowhere): no style sheet sets it",
		"outside.css: url(no-such-picture.png): no such file",
	} {
		if !slices.Contains(faults, want) {
			t.Errorf("not found: %s", want)
		}
	}
	if slices.ContainsFunc(faults, func(f string) bool { return strings.HasPrefix(f, "tree/below/found.html") }) {
		t.Error("a false alarm for tree/below/found.html")
	}
}

// outsideFont is a PDF with a word in a font that it does not carry.
const outsideFont = `%PDF-1.4
1 0 obj <</Type /Catalog /Pages 2 0 R>> endobj
2 0 obj <</Type /Pages /Kids [3 0 R] /Count 1>> endobj
3 0 obj <</Type /Page /Parent 2 0 R /MediaBox [0 0 200 200] /Contents 4 0 R /Resources <</Font <</F 5 0 R>>>>>> endobj
4 0 obj <</Length 36>> stream
BT /F 24 Tf 20 100 Td (Hours) Tj ET
endstream endobj
5 0 obj <</Type /Font /Subtype /Type1 /BaseFont /Helvetica>> endobj
trailer <</Root 1 0 R>>
%%EOF
`

// TestFontsOfThePDF: a font that is not embedded, one without a map, and none at all.
func TestFontsOfThePDF(t *testing.T) {
	pdf := filepath.Join(t.TempDir(), "outside.pdf")
	if err := os.WriteFile(pdf, []byte(outsideFont), 0o644); err != nil {
		t.Fatal(err)
	}
	got := fontFaults(pdfTool(t, "pdffonts", pdf))
	want := []string{"the font Helvetica is not embedded", "the font Helvetica has no map to Unicode"}
	if !slices.Equal(got, want) {
		t.Errorf("found %q, want %q", got, want)
	}
	if got := missing([]string{"Hours", "Days"}, pdfTool(t, "pdftotext", pdf, "-")); !slices.Equal(got, []string{`"Days" is not in the PDF as text`}) {
		t.Errorf("found %q, want only the days", got)
	}
	const heading = "name  type  encoding  emb sub uni object ID\n----  ----  --------  --- --- --- ---------\n"
	if got := fontFaults(heading); len(got) != 1 {
		t.Errorf("without a font: %q", got)
	}
	if got := fontFaults(heading + "AAAAAA+LiberationSans-Bold  CID TrueType  Identity-H  yes yes yes  5  0\n"); len(got) != 0 {
		t.Errorf("a false alarm: %q", got)
	}
}
