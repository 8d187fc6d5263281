package browser

import (
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
	"testing"
)

// hazardous are words that a page cannot use without its caution. They are
// written down here and not taken from the data, so that the data's own list
// cannot grow thin unseen.
var hazardous = []struct {
	caution string
	words   []string
}{
	{"nip", []string{" nip ", " nips ", " nip,", " nip."}},
	{"hot-roller", []string{" hot roller", " heated roller", " hot film ", " set temperature"}},
	{"blade", []string{" blade", " guillotine", " knife"}},
	{"solvent", []string{" solvent ", " solvent,", " isopropanol", " turpentine"}},
	{"static", []string{" ioniser"}},
	{"fumes", []string{" smokes ", " fumes "}},
}

// nobodyWorksFrom lists the pages that only name things. The plan is filled by its
// script, and its cautions are compared with the terminal's.
var nobodyWorksFrom = []string{"index.html", "plan.html", "search.html", "sources.html", "verification.html",
	"chapters/index.html", "materials/index.html", "tables/index.html", "charts/index.html", "forms/index.html"}

// TestPagesShowTheirCautions reads every page that somebody works from. Wall charts
// and forms have their own, in their feet.
func TestPagesShowTheirCautions(t *testing.T) {
	tree := os.DirFS(handbook(t))
	shown := map[string]int{}
	for _, name := range pagesOf(t, handbook(t)) {
		if slices.Contains(nobodyWorksFrom, name) || strings.HasPrefix(name, "glossary") || strings.HasPrefix(name, "index-az") || path.Dir(name) == "charts" || path.Dir(name) == "forms" {
			continue
		}
		data, err := fs.ReadFile(tree, name)
		if err != nil {
			t.Fatal(err)
		}
		said := " " + strings.ToLower(readPage(tree, name).text) + " "
		for _, h := range hazardous {
			has := strings.Contains(string(data), `data-caution="`+h.caution+`"`)
			if has {
				shown[h.caution]++
			}
			i := slices.IndexFunc(h.words, func(word string) bool { return strings.Contains(said, word) })
			if i >= 0 && !has {
				t.Errorf("%s says %q and shows no caution %s", name, h.words[i], h.caution)
			}
		}
	}
	for _, h := range hazardous {
		if shown[h.caution] == 0 {
			t.Errorf("no page shows the caution %s", h.caution)
		}
	}
}
