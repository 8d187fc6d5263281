package browser

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"laydown/content"
	"laydown/gen/book/search"
)

// query is one row of testdata/handbook-queries.json.
type query struct {
	Q     string `json:"q"`
	First string `json:"first"` // the places of which any will do, parted by spaces
	Got   string `json:"got"`   // where one that misses leads
}

func readQueries(t *testing.T) (hit, missed []query) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(root, "testdata", "handbook-queries.json"))
	if err != nil {
		t.Fatal(err)
	}
	var file struct{ Queries, Missed []query }
	if err := json.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	if len(file.Queries) < 60 {
		t.Fatalf("%d queries, want 60 and more", len(file.Queries))
	}
	return file.Queries, file.Missed
}

// publishedIndex reads the index of the published handbook.
func publishedIndex(t *testing.T) *search.Index {
	t.Helper()
	script, err := os.ReadFile(filepath.Join(handbook(t), "script", "search-index.js"))
	if err != nil {
		t.Fatal(err)
	}
	x, err := search.Read(script)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// What people type leads first to where a person would have sent them, by the
// finder in Go.
func TestQueriesInGo(t *testing.T) {
	x := publishedIndex(t)
	hit, missed := readQueries(t)
	checkFirst(t, hit, missed, func(q string) string { return x.First(x.Ask(q, 60)) })
}

// The same by the script, in a browser, from a folder.
func TestQueriesInTheScript(t *testing.T) {
	b := open(t, "search.html")
	defer b.quiet()
	b.until("Boolean(window.laydownIndex)")
	hit, missed := readQueries(t)
	asked, err := json.Marshal(slices.Concat(hit, missed))
	if err != nil {
		t.Fatal(err)
	}
	first := eval[map[string]string](b, `(() => {
		const x = laydownSearch.load(laydownIndex), first = {};
		for (const { q } of `+string(asked)+`) {
			const a = laydownSearch.find(x, q, 60);
			first[q] = a.pins.length ? x.pins[a.pins[0]].url : a.hits.length ? x.entries[a.hits[0]][0] : "";
		}
		return first;
	})()`)
	checkFirst(t, hit, missed, func(q string) string { return first[q] })
}

// glossaryPart is a page of the glossary, which is parted when it is long.
var glossaryPart = regexp.MustCompile(`^glossary(-[a-z0-9]+)?\.html`)

// checkFirst holds queries to what they should lead to first, and those that
// miss to where they lead: one that is mended is to be moved up.
func checkFirst(t *testing.T, hit, missed []query, first func(string) string) {
	t.Helper()
	ask := first
	first = func(q string) string { return glossaryPart.ReplaceAllString(ask(q), "glossary.html") }
	for _, c := range hit {
		if got := first(c.Q); !slices.Contains(strings.Fields(c.First), got) {
			t.Errorf("%q leads to %s, want %s", c.Q, got, c.First)
		}
	}
	for _, c := range missed {
		switch got := first(c.Q); {
		case slices.Contains(strings.Fields(c.First), got):
			t.Errorf("%q is found now: it belongs to the queries that are", c.Q)
		case got != c.Got:
			t.Errorf("%q, which misses, leads to %s and no longer to %s", c.Q, got, c.Got)
		}
	}
	t.Logf("%d of %d at first place", len(hit), len(hit)+len(missed))
}

// Go and the script give the same whole answers on the published index, for
// every beginning of every query: what is shown at each key stroke.
func TestSameAnswersAtEachKeyStroke(t *testing.T) {
	x := publishedIndex(t)
	hit, missed := readQueries(t)
	var typed []string
	for _, c := range slices.Concat(hit, missed) {
		r := []rune(c.Q)
		for n := range r {
			typed = append(typed, string(r[:n+1]))
		}
	}
	asked, err := json.Marshal(typed)
	if err != nil {
		t.Fatal(err)
	}
	b := open(t, "search.html")
	b.until("Boolean(window.laydownIndex)")
	type answer struct {
		Hits    []int
		Pins    []int
		Boxes   []search.Box
		Read    []search.Reading
		Missing []string
		Closest []string
	}
	got := eval[[]answer](b, `(() => {
		const x = laydownSearch.load(laydownIndex);
		return `+string(asked)+`.map((q) => {
			const a = laydownSearch.find(x, q, 20);
			return { hits: a.hits, pins: a.pins, boxes: a.boxes, read: a.read, missing: a.missing, closest: a.closest };
		});
	})()`)
	different := 0
	for i, q := range typed {
		a := x.Ask(q, 20)
		want := answer{Pins: a.Pins, Boxes: a.Boxes, Read: a.Read, Missing: a.Missing, Closest: a.Closest}
		for _, h := range a.Hits {
			want.Hits = append(want.Hits, h.Entry)
		}
		same := slices.Equal(got[i].Hits, want.Hits) && slices.Equal(got[i].Pins, want.Pins) && slices.Equal(got[i].Boxes, want.Boxes) &&
			slices.EqualFunc(got[i].Read, want.Read, func(a, b search.Reading) bool {
				return a.Typed == b.Typed && a.Read == b.Read && slices.Equal(a.Or, b.Or)
			}) && slices.Equal(got[i].Missing, want.Missing) && slices.Equal(got[i].Closest, want.Closest)
		if !same && different < 5 {
			different++
			t.Errorf("%q: the script answers\n%+v, Go\n%+v", q, got[i], want)
		}
	}
	t.Logf("%d beginnings of queries", len(typed))
}

// Each term, hazard and question leads to the first place that it names: the
// other places are for shops that lack the material.
func TestWordsLeadToTheirFirstPlace(t *testing.T) {
	data, err := content.Files.ReadFile("words.yaml")
	if err != nil {
		t.Fatal(err)
	}
	words, err := search.ReadWords("words.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	tree := os.DirFS(handbook(t))
	pages := map[string]*page{}
	check := func(name string, see []search.Place) {
		path, id, _ := strings.Cut(see[0].Address, "#")
		if pages[path] == nil {
			pages[path] = readPage(tree, path)
		}
		if p := pages[path]; len(p.ids) == 0 || id != "" && !p.ids[id] {
			t.Errorf("words.yaml:%d: %s: the handbook has no %s", see[0].Pos.Line, name, see[0].Address)
		}
	}
	for _, w := range words.Terms {
		check(w.Term, w.See)
	}
	for _, h := range words.Hazards {
		check(h.Title, h.See)
	}
	for _, q := range words.Questions {
		check(q.Ask[0], q.See)
	}
}

// The comparison with general-purpose libraries runs. Its figures are printed
// and not asserted: they are the machine's.
func TestComparisonRuns(t *testing.T) {
	if _, err := exec.LookPath("node"); err != nil {
		lacking(t, "Node")
	}
	npm := filepath.Join(root, "testdata", "npm")
	for _, name := range []string{"minisearch", "lunr"} {
		if _, err := os.Stat(filepath.Join(npm, "node_modules", name)); err != nil {
			lacking(t, "the npm package "+name)
		}
	}
	out, err := exec.Command("node", filepath.Join(root, "testdata", "search_compare.mjs"), handbook(t), "12").CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	for _, row := range []string{"this handbook", "minisearch", "lunr"} {
		if !strings.Contains(string(out), "\n"+row+" ") {
			t.Errorf("there is no row of %s", row)
		}
	}
	t.Logf("\n%s", out)
}
