package search

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"slices"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write testdata/search-answers.json and search-index.js anew")

const testdata = "../../../testdata/"

// cases is testdata/search-cases.json, which testdata/search_test.mjs reads too.
type cases struct {
	Words   []Term
	Entries []Entry
	Tokens  []struct {
		Text   string
		Tokens []string
	}
	Stems   [][]string
	Queries []struct {
		Q     string
		First []string
	}
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
	if len(c.Queries) == 0 || len(c.Entries) == 0 || len(c.Tokens) == 0 || len(c.Stems) == 0 {
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
	for name, words := range map[string]Words{"case words": {c.Words}, "content/words.yaml": own} {
		x := Build(c.Entries, words)
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
}

// The index script and the whole answers are kept: the Node test reads the one
// and must find the other.
func TestKept(t *testing.T) {
	c := readCases(t)
	x := Build(c.Entries, Words{c.Words})
	var b bytes.Buffer
	b.WriteString("[\n")
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	for i, q := range c.Queries {
		if i > 0 {
			b.WriteString(",")
		}
		a := x.Ask(q.Q, 8)
		err := enc.Encode(answer{q.Q, urls(a.Hits), a.All, append([]Reading{}, a.Read...), append([]string{}, a.Missing...), append([]string{}, a.Closest...)})
		if err != nil {
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
	if n := strings.Count(string(x.Script()), "\n"); n < len(c.Entries) {
		t.Errorf("the script has only %d lines", n)
	}
}
