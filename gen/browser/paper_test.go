package browser

import (
	"context"
	"fmt"
	"io/fs"
	"math"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// paper is a sheet, upright, in millimetres (ISO 216) or inches (ANSI/ASME Y14.1:
// A is Letter, B is Tabloid).
type paper struct{ width, height float64 }

const inch = 25.4

var papers = map[string]paper{
	"a4":      {210, 297},
	"a3":      {297, 420},
	"a2":      {420, 594},
	"letter":  {8.5 * inch, 11 * inch},
	"tabloid": {11 * inch, 17 * inch},
}

var paperName = regexp.MustCompile(`(?:^|[-/.])(a2|a3|a4|letter|tabloid)(?:[-/.]|$)`)

// paperOf reads the paper from a wall chart's file name: waits-a3.html.
func paperOf(page string) (string, paper, bool) {
	m := paperName.FindStringSubmatch(strings.ToLower(page))
	if m == nil {
		return "", paper{}, false
	}
	return m[1], papers[m[1]], true
}

var (
	pdfPages = regexp.MustCompile(`(?m)^Pages:\s+(\d+)`)
	pdfSize  = regexp.MustCompile(`(?m)^Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts`)
)

// print prints the page as it wants to be printed and asks pdfinfo for the size
// of every sheet, in points.
func (b *tab) print() (sizes [][2]float64, pdf string) {
	b.t.Helper()
	b.media("", "light")
	var data []byte
	err := b.limited(func(ctx context.Context) (err error) {
		data, err = chromedp.Run(ctx, chromedp.PrintToPDF(chromedp.PDFPrintBackground(), chromedp.PDFPreferCSSPageSize()))
		return err
	})
	if err != nil {
		b.t.Fatalf("print: %v", err)
	}
	pdf = filepath.Join(b.t.TempDir(), "page.pdf")
	if err := os.WriteFile(pdf, data, 0o644); err != nil {
		b.t.Fatal(err)
	}
	text := pdfTool(b.t, "pdfinfo", "-f", "1", "-l", "999", pdf)
	for _, m := range pdfSize.FindAllStringSubmatch(text, -1) {
		var s [2]float64
		if _, err := fmt.Sscanf(m[1]+" "+m[2], "%f %f", &s[0], &s[1]); err != nil {
			b.t.Fatalf("pdfinfo: %q: %v", m[0], err)
		}
		sizes = append(sizes, s)
	}
	if m := pdfPages.FindStringSubmatch(text); m == nil || m[1] != fmt.Sprint(len(sizes)) {
		b.t.Fatalf("pdfinfo tells the pages and their sizes apart:\n%s", text)
	}
	return sizes, pdf
}

// wallChart prints the page and wants as many sheets as it has sheet elements
// (one when it has none), each of exactly the paper that its name promises,
// upright or on its side, and nothing cut off or shrunk.
func (b *tab) wallChart(page string) []string {
	b.t.Helper()
	name, want, ok := paperOf(page)
	if !ok {
		return []string{"the name of the chart tells no paper"}
	}
	sizes, pdf := b.print()
	sheets := max(1, eval[int](b, `document.querySelectorAll(".wall").length`))
	var faults []string
	if len(sizes) != sheets {
		faults = append(faults, fmt.Sprintf("prints on %d sheets, want %d", len(sizes), sheets))
	}
	upright := true
	for i, s := range sizes {
		w, h := s[0]*inch/72, s[1]*inch/72
		upright = h > w
		if !upright {
			w, h = h, w
		}
		// Chromium rounds to whole pixels: a point is a third of a millimetre.
		if math.Abs(w-want.width) > 0.4 || math.Abs(h-want.height) > 0.4 {
			faults = append(faults, fmt.Sprintf("sheet %d is %.1f × %.1f mm, %s is %.1f × %.1f mm", i+1, w, h, name, want.width, want.height))
		}
	}
	if len(faults) > 0 {
		return faults
	}
	faults = append(faults, fontFaults(pdfTool(b.t, "pdffonts", pdf))...)
	faults = append(faults, missing(eval[[]string](b, script(b.t, "words.js")), pdfTool(b.t, "pdftotext", pdf, "-"))...)
	return append(faults, b.sheetFits(page, want, upright)...)
}

// fontFaults reads what pdffonts prints: a line for each font, its name and kind, and
// after them whether it is embedded, in part, with a map to Unicode, and its object's
// two numbers. Another machine shows a font that is not embedded as it likes, and
// without the map no words can be looked for or copied.
func fontFaults(out string) []string {
	lines := strings.Split(strings.TrimSpace(out), "\n")
	if len(lines) < 3 { // two lines of heading
		return []string{"no font in the PDF: its text is not kept as text"}
	}
	var faults []string
	for _, line := range lines[2:] {
		f := strings.Fields(line)
		if len(f) < 6 {
			faults = append(faults, fmt.Sprintf("pdffonts: %q cannot be read", line))
			continue
		}
		if f[len(f)-5] != "yes" {
			faults = append(faults, fmt.Sprintf("the font %s is not embedded", f[0]))
		}
		if f[len(f)-3] != "yes" {
			faults = append(faults, fmt.Sprintf("the font %s has no map to Unicode", f[0]))
		}
	}
	return faults
}

// missing are the texts that are not on paper.
func missing(texts []string, paper string) []string {
	paper = plain(paper)
	var faults []string
	for _, text := range texts {
		if !strings.Contains(paper, plain(text)) {
			faults = append(faults, fmt.Sprintf("%q is not in the PDF as text", text))
		}
	}
	return faults
}

// onPaper lays an ordinary page out for both usual papers and looks for what print
// would shrink, cut off or hide. Wall charts and forms have a paper of their own,
// and the training book is A4 only: their tests print them.
func (b *tab) onPaper(page string) []string {
	b.t.Helper()
	if _, _, chart := paperOf(page); chart || page == "training.html" || path.Dir(page) == "forms" && page != "forms/index.html" {
		return nil
	}
	defer b.media("", "light")
	b.media("print", "light")
	var faults []string
	for _, name := range []string{"a4", "letter"} {
		p := papers[name]
		m := pageMargins(os.DirFS(b.dir), page, p)
		px := 96 / inch
		b.size(int64((p.width-m[1]-m[3])*px), int64((p.height-m[0]-m[2])*px))
		for _, f := range append(eval[[]string](b, script(b.t, "sheet.js")), eval[[]string](b, script(b.t, "cells.js"))...) {
			faults = append(faults, "on "+name+": "+f)
		}
	}
	return faults
}

// sheetFits lays the page out as it will be printed, in a window of the paper
// less its margins, and looks for what would be cut off or shrunk.
func (b *tab) sheetFits(page string, p paper, upright bool) []string {
	b.t.Helper()
	if !upright {
		p.width, p.height = p.height, p.width
	}
	m := pageMargins(os.DirFS(b.dir), page, p)
	px := 96 / inch
	b.media("print", "light")
	b.size(int64((p.width-m[1]-m[3])*px), int64((p.height-m[0]-m[2])*px))
	faults := eval[[]string](b, script(b.t, "sheet.js"))
	faults = append(faults, b.capitals()...)
	faults = append(faults, eval[[]string](b, script(b.t, "chart.js"))...)
	b.media("", "light")
	return faults
}

// capHeights are the smallest capitals of a chart's headings and numbers, and what
// the chart promises, in mm on paper.
type capHeights struct {
	Promised float64 `json:"promised"`
	Smallest float64 `json:"smallest"`
	Text     string  `json:"text"`
}

func (b *tab) caps() capHeights { return eval[capHeights](b, script(b.t, "caps.js")) }

// form prints the page and wants one upright sheet of A4, with everything on it
// over the foot and the foot inside the sheet.
func (b *tab) form(page string) []string {
	b.t.Helper()
	sizes, _ := b.print()
	a4 := papers["a4"]
	if len(sizes) != 1 {
		return []string{fmt.Sprintf("prints on %d sheets, want 1", len(sizes))}
	}
	if w, h := sizes[0][0]*inch/72, sizes[0][1]*inch/72; math.Abs(w-a4.width) > 0.4 || math.Abs(h-a4.height) > 0.4 {
		return []string{fmt.Sprintf("the sheet is %.1f × %.1f mm", w, h)}
	}
	px := 96 / inch
	b.media("print", "light")
	b.size(int64(a4.width*px), int64(a4.height*px))
	faults := eval[[]string](b, script(b.t, "sheet.js"))
	faults = append(faults, eval[[]string](b, script(b.t, "form.js"))...)
	b.media("", "light")
	return faults
}

// capitals holds a chart to the height of capitals that it promises for its
// headings and numbers. Two per cent are left to the rounding of fonts.
func (b *tab) capitals() []string {
	b.t.Helper()
	caps := b.caps()
	switch {
	case caps.Promised <= 0:
		return []string{"the chart promises no height of its capitals (--cap)"}
	case caps.Smallest <= 0:
		return []string{"the chart has no heading and no number"}
	case caps.Smallest < 0.98*caps.Promised:
		return []string{fmt.Sprintf("%q has capitals of %.2f mm, the chart promises %.2f mm", caps.Text, caps.Smallest, caps.Promised)}
	}
	return nil
}

var (
	pageRule   = regexp.MustCompile(`@page\b[^{]*\{([^{}]*(?:\{[^{}]*\}[^{}]*)*)\}`)
	marginBox  = regexp.MustCompile(`@[\w-]+\s*\{[^{}]*\}`)
	pageLength = regexp.MustCompile(`(-?[\d.]+)(mm|cm|in|pt|px|q)?`)
	pageSize   = regexp.MustCompile(`(?:^|[;\s])size\s*:\s*([^;]+)`)
	pageMargin = regexp.MustCompile(`(?:^|[;\s])margin\s*:\s*([^;]+)`)
)

// pageMargins reads the margins of the page box, in millimetres, clockwise from
// the top, from the page's style sheets: browsers do not show scripts the rules
// of a sheet from the disk. Of several page rules the one of this paper counts,
// else the last.
func pageMargins(tree fs.FS, name string, p paper) [4]float64 {
	margins := [4]float64{10, 10, 10, 10} // Chromium's own: 1 cm
	fits := false
	for _, r := range readPage(tree, name).links {
		if r.element != "link" || path.Ext(r.value) != ".css" {
			continue
		}
		data, err := fs.ReadFile(tree, path.Join(path.Dir(name), r.value))
		if err != nil {
			continue
		}
		for _, rule := range pageRule.FindAllStringSubmatch(styleNote.ReplaceAllString(string(data), ""), -1) {
			body := marginBox.ReplaceAllString(rule[1], "")
			here := false
			if m := pageSize.FindStringSubmatch(body); m != nil {
				l := lengths(m[1])
				here = len(l) == 2 && math.Abs(l[0]-p.width) < 1 && math.Abs(l[1]-p.height) < 1
			}
			m := pageMargin.FindStringSubmatch(body)
			if m == nil || (fits && !here) {
				continue
			}
			fits = fits || here
			margins = fourSides(lengths(m[1]), margins)
		}
	}
	return margins
}

// lengths reads CSS lengths, in millimetres.
func lengths(text string) []float64 {
	unit := map[string]float64{"mm": 1, "cm": 10, "in": inch, "pt": inch / 72, "px": inch / 96, "q": 0.25, "": 1}
	var list []float64
	for _, m := range pageLength.FindAllStringSubmatch(strings.ToLower(text), -1) {
		v, err := strconv.ParseFloat(m[1], 64)
		if err == nil {
			list = append(list, v*unit[m[2]])
		}
	}
	return list
}

// fourSides spreads one to four values over the sides, as CSS does.
func fourSides(l []float64, otherwise [4]float64) [4]float64 {
	switch len(l) {
	case 1:
		return [4]float64{l[0], l[0], l[0], l[0]}
	case 2:
		return [4]float64{l[0], l[1], l[0], l[1]}
	case 3:
		return [4]float64{l[0], l[1], l[2], l[1]}
	case 4:
		return [4]float64{l[0], l[1], l[2], l[3]}
	}
	return otherwise
}

// pdfTool runs one of poppler's tools and returns what it prints.
func pdfTool(t testing.TB, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		lacking(t, name+" (poppler)")
	}
	out, err := exec.Command(name, args...).Output()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return string(out)
}
