package browser

import (
	"fmt"
	"maps"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
)

// tabs is how many pages are looked at side by side.
const tabs = 3

// sweep looks at every page, several at once, each worker in a tab of its own.
func sweep(t *testing.T, pages []string, look func(b *tab, page string) []string) {
	t.Helper()
	next := make(chan string)
	start := time.Now()
	var group sync.WaitGroup
	for range min(tabs, len(pages)) {
		b := newTab(t, handbook(t))
		group.Go(func() {
			// A worker that leaves early, because a tool is missing, must not leave the
			// pages unfetched.
			defer func() {
				for range next {
				}
			}()
			for page := range next {
				for _, f := range look(b, page) {
					t.Errorf("%s: %s", page, f)
				}
			}
		})
	}
	for i, p := range pages {
		if i > 0 && i%100 == 0 {
			t.Logf("%d of %d after %.0f s", i, len(pages), time.Since(start).Seconds())
		}
		next <- p
	}
	close(next)
	group.Wait()
}

// fresh loads a page at a size and in a scheme.
func (b *tab) fresh(page string, width int64, scheme string) {
	b.t.Helper()
	b.size(width, 800)
	b.scheme(scheme)
	b.taken()
	b.goTo(page)
}

// mostAlike is how many pages of a kind are looked at unless LAYDOWN_ALL is set. Pages of
// a kind come from one template with other numbers in it; all of them take half an hour.
const mostAlike = 6

// everything tells whether no sample is to be taken.
func everything() bool { return os.Getenv("LAYDOWN_ALL") != "" }

// chosen are the pages whose path holds what LAYDOWN_ALL says, or all where it says
// just 1: LAYDOWN_ALL=tables/bond looks at the tables of the bond again.
func chosen(pages []string) []string {
	part := os.Getenv("LAYDOWN_ALL")
	if part == "1" {
		return pages
	}
	var list []string
	for _, p := range pages {
		if strings.Contains(p, part) {
			list = append(list, p)
		}
	}
	return list
}

// sampled are pages of every kind: all of a kind that has few, and of one that has many
// some that are spread over it, the first and the last with them.
func sampled(pages []string) []string {
	if everything() {
		return chosen(pages)
	}
	by := map[string][]string{}
	for _, p := range pages {
		by[kindOf(p)] = append(by[kindOf(p)], p)
	}
	var list []string
	for _, k := range slices.Sorted(maps.Keys(by)) {
		all := by[k]
		n := min(mostAlike, len(all))
		if k == "chapters/" || k == "faults/" {
			n = len(all) // written, not computed: each is its own
		}
		for i := range n {
			at := i
			if n > 1 {
				at = i * (len(all) - 1) / (n - 1)
			}
			list = append(list, all[at])
		}
	}
	return list
}

// TestEveryPage: pages of every kind, and with LAYDOWN_ALL every single page, once: no
// complaint, no request, no violation of accessibility, no sideways scrolling, drawings
// that can be read in both schemes, and on paper nothing shrunk or cut off.
func TestEveryPage(t *testing.T) {
	pages := sampled(pagesOf(t, handbook(t)))
	t.Logf("%d pages", len(pages))
	sweep(t, pages, func(b *tab, page string) []string {
		b.fresh(page, 1024, "light")
		faults := b.settled()
		faults = append(faults, b.reflow(page, 360, 600, 1024, 1600)...)
		faults = append(faults, b.onPaper(page)...)
		for _, scheme := range []string{"dark", "light"} {
			b.scheme(scheme)
			for _, f := range b.contrast() {
				faults = append(faults, scheme+": "+f)
			}
		}
		b.size(1024, 800)
		b.shorten()
		faults = append(faults, b.axe()...)
		return append(faults, b.taken()...)
	})
}

// TestThoroughly: the smallest page of every kind, and with LAYDOWN_ALL every page:
// both schemes, three widths and 400 % zoom, keyboard, movement, and without script.
func TestThoroughly(t *testing.T) {
	dir := handbook(t)
	pages := pagesOf(t, dir)
	if everything() {
		pages = chosen(pages)
	} else {
		pages = smallest(t, dir, pages)
	}
	t.Logf("%d pages", len(pages))
	sweep(t, pages, func(b *tab, page string) []string {
		var faults []string
		for _, scheme := range []string{"dark", "light"} {
			b.fresh(page, 1024, scheme)
			b.shorten()
			for _, width := range []int64{600, 1024, 1600} {
				b.size(width, 800)
				for _, f := range b.axe() {
					faults = append(faults, fmt.Sprintf("%s, %d px: %s", scheme, width, f))
				}
			}
			b.size(1024, 800)
			// In the dark only the colours are others: the first stops show them.
			for _, f := range b.keyboard(map[string]int{"light": 120, "dark": 30}[scheme]) {
				faults = append(faults, scheme+": "+f)
			}
			faults = append(faults, b.taken()...)
		}
		// 400 % zoom of a window of 1280 px is 320 px (WCAG 2.2, criterion 1.4.10).
		b.fresh(page, 1024, "light")
		faults = append(faults, b.reflow(page, 320, 1280)...)
		faults = append(faults, b.motion()...)
		return append(faults, b.withoutScript(page)...)
	})
}

// smallest are the smallest pages of every kind.
func smallest(t testing.TB, dir string, pages []string) []string {
	t.Helper()
	least := map[string]string{}
	size := map[string]int64{}
	for _, p := range pages {
		info, err := os.Stat(filepath.Join(dir, filepath.FromSlash(p)))
		if err != nil {
			t.Fatal(err)
		}
		if k := kindOf(p); least[k] == "" || info.Size() < size[k] {
			least[k], size[k] = p, info.Size()
		}
	}
	return slices.Sorted(maps.Values(least))
}

// reflow looks for sideways scrolling, but on wall charts: on the screen they are
// a picture of the sheet, as large as the paper.
func (b *tab) reflow(page string, widths ...int64) []string {
	b.t.Helper()
	if _, _, chart := paperOf(page); chart {
		return nil
	}
	return b.overflow(widths...)
}

// kindOf groups pages that are made alike: by folder, and in the folders of
// tables and charts, and at the top, by the first word of the name.
func kindOf(page string) string {
	dir, base := path.Split(strings.TrimSuffix(page, ".html"))
	first, _, _ := strings.Cut(base, "-")
	switch {
	case base == "index", dir == "", dir == "tables/", dir == "charts/":
		kind := dir + first
		if first != base {
			kind += "-…"
		}
		return kind
	}
	return dir
}

// withoutScript opens the page with scripts off: it must still hold its text,
// and offer nothing that then does nothing.
func (b *tab) withoutScript(page string) []string {
	b.t.Helper()
	b.scripts(false)
	defer b.scripts(true)
	b.goTo(page)
	return eval[[]string](b, script(b.t, "noscript.js"))
}

// chartKinds are the charts that the demo shop hangs, by the first word of their names.
var chartKinds = []string{"cautions", "waits", "films", "windows", "stacks", "notice", "key"}

// TestForms prints every form.
func TestForms(t *testing.T) {
	var forms []string
	for _, p := range pagesOf(t, handbook(t)) {
		if path.Dir(p) == "forms" && p != "forms/index.html" {
			forms = append(forms, p)
		}
	}
	if len(forms) == 0 {
		t.Fatal("the handbook has no form")
	}
	sweep(t, forms, func(b *tab, page string) []string {
		b.fresh(page, 1024, "dark")
		return b.form(page)
	})
}

// TestWallCharts prints wall charts of every kind on paper, and with LAYDOWN_ALL every
// sheet: each sheet one page of its size,
// nothing cut off, shrunk or too small, with crop marks, stamp, date and shop. It logs
// the smallest capitals of each paper.
func TestWallCharts(t *testing.T) {
	var charts []string
	made := map[string]bool{} // kind and paper
	for _, p := range pagesOf(t, handbook(t)) {
		if name, _, ok := paperOf(p); ok {
			charts = append(charts, p)
			kind, _, _ := strings.Cut(path.Base(p), "-")
			made[kind+" "+name] = true
		}
	}
	for _, kind := range chartKinds {
		for name := range papers {
			if !made[kind+" "+name] {
				t.Errorf("there is no chart %s on %s", kind, name)
			}
		}
	}
	var mu sync.Mutex
	smallest, sheets := map[string]capHeights{}, map[string]int{}
	sweep(t, sampled(charts), func(b *tab, page string) []string {
		b.fresh(page, 1024, "dark") // the paper stays white whatever the screen likes
		faults := append(b.wallChart(page), eval[[]string](b, script(b.t, "imprint.js"))...)
		name, _, _ := paperOf(page)
		caps := b.caps()
		mu.Lock()
		defer mu.Unlock()
		if have, ok := smallest[name]; !ok || caps.Smallest < have.Smallest {
			smallest[name] = caps
		}
		sheets[name]++
		return faults
	})
	for _, name := range slices.Sorted(maps.Keys(smallest)) {
		c := smallest[name]
		t.Logf("%-8s %3d sheets, capitals at least %5.2f mm of %g mm promised, read from %.1f m", name, sheets[name], c.Smallest, c.Promised, c.Promised*200/1000)
	}
}
