package search

import (
	"os"
	"slices"
	"strings"
	"testing"
)

func TestReadWordsProblems(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"empty", "", "w.yaml:1:1: empty: want a list under the key words"},
		{"syntax", "words:\n  - term: [", "w.yaml:2:1: did not find expected node content"},
		{"no mapping", "- a", "w.yaml:1:1: want a mapping with the key words"},
		{"other key", "word: []", "w.yaml:1:1: unknown key \"word\"\nw.yaml:1:1: the key \"words\" is missing"},
		{"no list", "words: film", "w.yaml:1:8: words must be a list"},
		{"missing", "words:\n  - term: film\n    source: s",
			"w.yaml:2:5: the key \"meaning\" is missing"},
		{"several at once", "words:\n  - {term: film, meaning: m, source: s, alos: [x]}\n  - {term: film, meaning: m, source: s, also: x}\n  - {term: '…', meaning: m, source: s, near: [[x]]}",
			"w.yaml:2:41: unknown key \"alos\"\n" +
				"w.yaml:3:47: want a list, such as [frost, glitter]\n" +
				"w.yaml:4:12: want a text with a word in it, not \"…\"\n" +
				"w.yaml:4:47: want a text\n" +
				"w.yaml:3:1: term \"film\" stands already in line 2"},
		{"second document", "words: []\n---\nwords: []", "w.yaml:2:1: a second document begins here; want one"},
		{"binary", "\x00\x01", "w.yaml:1:1: control characters are not allowed"},
		{"alias", "words:\n  - &a {term: film, meaning: m, source: s}\n  - *a", "w.yaml:3:5: want a mapping with the key term, meaning, source"},
		{"twice", "words:\n  - {term: film, term: foil, meaning: m, source: s}", "w.yaml:2:18: key \"term\" is given twice"},
	} {
		_, err := ReadWords("w.yaml", []byte(c.in))
		if err == nil || err.Error() != c.want {
			t.Errorf("%s:\n got %v\nwant %s", c.name, err, c.want)
		}
	}
}

func TestWith(t *testing.T) {
	ours := Words{[]Term{{Term: "film"}, {Term: "nip"}}}
	own := Words{[]Term{{Term: "nip", Meaning: "ours"}, {Term: "shed"}}}
	got := ours.With(own)
	if len(got.Terms) != 3 || got.Terms[1].Meaning != "ours" || got.Terms[2].Term != "shed" || ours.Terms[1].Meaning != "" {
		t.Errorf("got %+v", got)
	}
}

// The handbook's own words: each name finds its term's page, each wrong
// spelling is said to be read as something.
func TestHandbookWords(t *testing.T) {
	data, err := os.ReadFile("../../../content/words.yaml")
	if err != nil {
		t.Fatal(err)
	}
	words, err := ReadWords("words.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	if len(words.Terms) < 90 {
		t.Errorf("%d terms, want 90 and more", len(words.Terms))
	}
	var entries []Entry
	for _, w := range words.Terms {
		entries = append(entries, Entry{URL: w.Term, Title: w.Term, Kind: "word", Text: w.Meaning, Also: w.Also})
	}
	x := Build(entries, words)
	for _, w := range words.Terms {
		for _, name := range slices.Concat([]string{w.Term}, w.Also) {
			if got := urls(x.Find(name, 1)); len(got) == 0 || got[0] != w.Term {
				t.Errorf("%q finds %q first, want %q", name, got, w.Term)
			}
		}
		for _, name := range w.Misspelt {
			if got := urls(x.Find(name, 3)); !slices.Contains(got, w.Term) {
				t.Errorf("%q finds %q, want %q among them", name, got, w.Term)
			}
		}
		for _, name := range w.Near {
			if got := urls(x.Find(name, 40)); !slices.Contains(got, w.Term) {
				t.Errorf("%q finds %q, want %q among them", name, got, w.Term)
			}
		}
		if strings.Contains(w.Meaning, "  ") || !strings.HasSuffix(w.Meaning, ".") {
			t.Errorf("%s: the meaning is not a sentence: %q", w.Term, w.Meaning)
		}
	}
}
