package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// overflow looks for pages that scroll sideways, and for words that run out of their
// cell of a table, at several window widths.
func (b *tab) overflow(widths ...int64) []string {
	b.t.Helper()
	look, cells := script(b.t, "overflow.js"), script(b.t, "cells.js")
	var faults []string
	for _, w := range widths {
		b.size(w, 800)
		for _, f := range append(eval[[]string](b, look), eval[[]string](b, cells)...) {
			faults = append(faults, fmt.Sprintf("at %d px: %s", w, f))
		}
	}
	return faults
}

// axeSource is the accessibility checker, from the disk.
func axeSource(t testing.TB) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(root, "testdata", "npm", "node_modules", "axe-core", "axe.min.js"))
	if err != nil {
		lacking(t, "the npm package axe-core")
	}
	return string(data)
}

// alike is how many neighbours of one make the accessibility checker sees.
const alike = 15

// shorten leaves the first of every long run of neighbours that are made alike,
// rows of a table and folds with workings: the template that made them makes the
// others too, and the checker takes minutes for ten thousand cells. Links, ids
// and validity are checked on the whole files.
func (b *tab) shorten() {
	b.t.Helper()
	eval[int](b, fmt.Sprintf(script(b.t, "shorten.js"), alike))
}

// axe runs the accessibility checker on the page as it stands. The driver puts
// the checker into the page: the page's own policy does not hold for it.
func (b *tab) axe() []string {
	b.t.Helper()
	if !eval[bool](b, "Boolean(window.axe)") {
		eval[chromedp.Void](b, axeSource(b.t))
	}
	return eval[[]string](b, script(b.t, "axe.js"))
}

// contrast judges the words and lines of the page's drawings in the scheme that
// holds now. Shortened pages lack some of them.
func (b *tab) contrast() []string {
	b.t.Helper()
	b.colours()
	return eval[[]string](b, script(b.t, "contrast.js"))
}

// colours puts the arithmetic with colours into the page, for scripts that need it.
func (b *tab) colours() {
	b.t.Helper()
	eval[chromedp.Void](b, script(b.t, "colours.js"))
}

// keyboard walks the page with the Tab key: it must reach everything that can be
// used, once round and no trap, and show where it is. most limits the walk.
func (b *tab) keyboard(most int) []string {
	b.t.Helper()
	type stop struct {
		Number int    `json:"number"`
		Name   string `json:"name"`
		Fault  string `json:"fault"`
		Fields int    `json:"fields"`
	}
	b.colours()
	look := script(b.t, "stop.js")
	want := eval[int](b, script(b.t, "stops.js"))
	if want == 0 {
		return []string{"the keyboard finds nothing to use"}
	}
	var faults []string
	reached, last, same, outside := 0, -1, 0, 0
	for reached < most {
		b.press(kb.Tab)
		s := eval[stop](b, look)
		if s.Number < 0 {
			// Past the end: the browser's own part. A page that puts the
			// keyboard somewhere by itself is walked on from its top.
			if outside++; outside > 2 || reached >= want {
				break
			}
			continue
		}
		if s.Number == last && want == 1 {
			break // once round a page with one thing to use
		}
		if s.Number == last {
			// A date is one thing with several fields; nothing else is.
			if same++; same > s.Fields {
				faults = append(faults, fmt.Sprintf("the Tab key does not leave %s", s.Name))
				break
			}
			continue
		}
		if s.Number < last && reached >= want || s.Number == 0 && last > 0 {
			break // once round
		}
		if s.Fault != "" {
			faults = append(faults, s.Name+" "+s.Fault)
		}
		last, same = s.Number, 0
		reached = max(reached, s.Number+1)
	}
	if reached < min(want, most) {
		faults = append(faults, fmt.Sprintf("the Tab key reaches %d of %d things", reached, want))
	}
	return faults
}

// motion looks for movement although the reader asked for less (the tab always does).
func (b *tab) motion() []string {
	b.t.Helper()
	return eval[[]string](b, script(b.t, "motion.js"))
}
