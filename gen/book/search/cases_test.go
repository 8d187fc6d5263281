package search

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"reflect"
	"slices"
	"testing"
)

var update = flag.Bool("update", false, "write testdata/search-answers.json and search-index.js anew")

const testdata = "../../../testdata/"

// cases is testdata/search-cases.json, which testdata/search_test.mjs reads too.
type cases struct {
	Words   []Term
	Entries []Entry
	Pins    []Pin
	Things  []Thing
	Facts   []Fact
	Charts  []Chart
	Stamps  string
	Edition string
	Tokens  []struct {
		Text   string
		Tokens []string
	}
	Stems   [][]string
	Queries []struct {
		Q     string
		First []string
	}
	Answers []struct {
		Q     string
		Boxes []Box
		Pins  []int
	}
}

// book is the cases' book, with the words given.
func (c cases) book(words Words) Book {
	return Book{c.Entries, words, c.Pins, c.Things, c.Facts, c.Charts, c.Stamps, c.Edition}
}

func readCases(t testing.TB) (c cases) {
	t.Helper()
	data, err := os.ReadFile(testdata + "search-cases.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, &c); err != nil {
		t.Fatal(err)
	}
	if len(c.Queries) == 0 || len(c.Entries) == 0 || len(c.Tokens) == 0 || len(c.Stems) == 0 || len(c.Answers) == 0 {
		t.Fatal("search-cases.json has lost a part")
	}
	return c
}

// shownTokens writes tokens as the case file does.
func shownTokens(text string) []string {
	out := []string{}
	for _, tok := range Tokens(text) {
		kind := "wja"[tok.Kind : tok.Kind+1]
		if tok.Inside {
			kind = "i"
		}
		out = append(out, tok.Text+"|"+text[tok.Start:tok.End]+"|"+kind)
	}
	return out
}

func TestTokens(t *testing.T) {
	for _, c := range readCases(t).Tokens {
		if got := shownTokens(c.Text); !slices.Equal(got, c.Tokens) {
			t.Errorf("%q:\n got %q\nwant %q", c.Text, got, c.Tokens)
		}
	}
}

func TestStem(t *testing.T) {
	seen := map[string]string{}
	for _, words := range readCases(t).Stems {
		for _, w := range words {
			if stem(w) != stem(words[0]) {
				t.Errorf("stem(%q) = %q, but stem(%q) = %q", w, stem(w), words[0], stem(words[0]))
			}
		}
		if other, ok := seen[stem(words[0])]; ok {
			t.Errorf("%q and %q have one stem", words[0], other)
		}
		seen[stem(words[0])] = words[0]
	}
}

// What a person wants must lead, with the words of the case file and with the
// handbook's own.
func TestFirst(t *testing.T) {
	c := readCases(t)
	data, err := os.ReadFile("../../../content/words.yaml")
	if err != nil {
		t.Fatal(err)
	}
	own, err := ReadWords("words.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	for name, words := range map[string]Words{"case words": {Terms: c.Words}, "content/words.yaml": own} {
		x := Build(c.book(words))
		for _, q := range c.Queries {
			got := urls(x.Find(q.Q, 8))
			if len(got) < len(q.First) || !slices.Equal(got[:len(q.First)], q.First) {
				t.Errorf("%s: %q:\n got %q\nwant %q first", name, q.Q, got, q.First)
			}
		}
	}
}

func urls(hits []Hit) []string {
	out := []string{}
	for _, h := range hits {
		out = append(out, h.URL)
	}
	return out
}

// answer is one line of search-answers.json.
type answer struct {
	Q       string    `json:"q"`
	URLs    []string  `json:"urls"`
	All     bool      `json:"all"`
	Read    []Reading `json:"read"`
	Missing []string  `json:"missing"`
	Closest []string  `json:"closest"`
	Boxes   []Box     `json:"boxes"`
	Pins    []int     `json:"pins"`
}

// What is answered directly, and what stands before everything.
func TestAnswers(t *testing.T) {
	c := readCases(t)
	x := Build(c.book(Words{Terms: c.Words}))
	for _, q := range c.Answers {
		a := x.Ask(q.Q, 8)
		if !slices.Equal(a.Boxes, q.Boxes) {
			t.Errorf("%q:\n got %+v\nwant %+v", q.Q, a.Boxes, q.Boxes)
		}
		if !slices.Equal(a.Pins, q.Pins) {
			t.Errorf("%q: pins %v, want %v", q.Q, a.Pins, q.Pins)
		}
	}
}

// asked is every query of the case file, in order.
func (c cases) asked() []string {
	var out []string
	for _, q := range c.Queries {
		out = append(out, q.Q)
	}
	for _, q := range c.Answers {
		out = append(out, q.Q)
	}
	return out
}

// written is an answer as search-answers.json holds it.
func written(q string, a Answer) answer {
	return answer{q, urls(a.Hits), a.All, append([]Reading{}, a.Read...), append([]string{}, a.Missing...),
		append([]string{}, a.Closest...), append([]Box{}, a.Boxes...), append([]int{}, a.Pins...)}
}

// The index script and the whole answers are kept: the Node test reads the one
// and must find the other.
func TestKept(t *testing.T) {
	c := readCases(t)
	x := Build(c.book(Words{Terms: c.Words}))
	var b bytes.Buffer
	b.WriteString("[\n")
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	for i, q := range c.asked() {
		if i > 0 {
			b.WriteString(",")
		}
		if err := enc.Encode(written(q, x.Ask(q, 8))); err != nil {
			t.Fatal(err)
		}
	}
	b.WriteString("]\n")
	for name, got := range map[string][]byte{"search-answers.json": b.Bytes(), "search-index.js": x.Script()} {
		if *update {
			if err := os.WriteFile(testdata+name, got, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(testdata + name)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(got, want) {
			t.Errorf("%s differs from what this build makes; if the change is meant, read it after go test -run Kept -update", name)
		}
	}
}

// An index read back from its script answers as the one that wrote it, and
// writes the same script.
func TestRead(t *testing.T) {
	c := readCases(t)
	x := Build(c.book(Words{Terms: c.Words}))
	back, err := Read(x.Script())
	if err != nil {
		t.Fatal(err)
	}
	for _, q := range c.asked() {
		if got, want := back.Ask(q, 8), x.Ask(q, 8); !reflect.DeepEqual(got, want) {
			t.Errorf("%q: read back it answers\n%+v, not\n%+v", q, got, want)
		}
	}
	if !bytes.Equal(back.Script(), x.Script()) {
		t.Error("read back it writes another script")
	}
	if empty, err := Read(Build(Book{}).Script()); err != nil || len(empty.Find("film", 3)) != 0 {
		t.Errorf("an empty index comes back as %v, %v", empty, err)
	}
}

// What is no index, or a broken one, is an error and never a panic.
func TestReadBroken(t *testing.T) {
	c := readCases(t)
	whole := string(Build(c.book(Words{Terms: c.Words})).Script())
	for name, text := range map[string]string{
		"nothing":           "",
		"another script":    "window.other = {};\n",
		"cut short":         whole[:len(whole)/2],
		"not JSON":          prefix + "{" + suffix,
		"no entries":        prefix + `{"words":" film","posts":"!!"}` + suffix,
		"a list too few":    prefix + `{"words":" film< nip","posts":""}` + suffix,
		"half a list":       prefix + `{"words":" film","posts":"!","entries":[["u","t","s","k","x"]]}` + suffix,
		"no digit":          prefix + `{"words":" film","posts":"\"\"","entries":[["u","t","s","k","x"]]}` + suffix,
		"an entry too far":  prefix + `{"words":" film","posts":"!!","entries":[["u","t","s","k","x"]]}` + suffix,
		"an empty word":     prefix + `{"words":" "}` + suffix,
		"no kind":           prefix + `{"amounts":"<"}` + suffix,
		"a long number":     prefix + `{"names":"~~~~~~~~~~~~"}` + suffix,
		"shares too much":   prefix + `{"words":"!film"}` + suffix,
		"an entry in two":   prefix + `{"entries":[["u","t"]]}` + suffix,
		"a pin in one":      prefix + `{"pins":[["a"]]}` + suffix,
		"a thing in one":    prefix + `{"things":[["a"]]}` + suffix,
		"a fact of nothing": prefix + `{"facts":[[0,3,-1,"1","h","",""]]}` + suffix,
		"a fact in one":     prefix + `{"facts":[[0]]}` + suffix,
		"a name too far":    prefix + `{"names":"!!!"}` + suffix,
	} {
		if _, err := Read([]byte(text)); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

// Whatever is written into a script, Read gives an error or an index that
// answers.
func FuzzRead(f *testing.F) {
	c := readCases(f)
	f.Add(string(Build(Book{Entries: c.Entries[:2], Words: Words{Terms: c.Words[:2]}, Things: c.Things[:3], Facts: c.Facts[:1]}).Script()))
	f.Add(prefix + `{"words":" film","posts":"!!","entries":[["u","t","s","k","x"]]}` + suffix)
	f.Fuzz(func(t *testing.T, text string) {
		x, err := Read([]byte(text))
		if err != nil {
			return
		}
		x.Ask("film 3 mil on card temp", 5)
	})
}
