package search

import (
	"os"
	"reflect"
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
				"w.yaml:3:5: term \"film\" stands already in line 2"},
		{"a name of two terms", "words:\n  - {term: film, meaning: m, source: s, also: [lam]}\n  - {term: laminator, meaning: m, source: s, misspelt: [Lam]}\n  - {term: lam, meaning: m, source: s}",
			"w.yaml:3:5: term \"laminator\": \"Lam\" is a name of \"film\" too, in line 2\nw.yaml:4:5: term \"lam\": \"lam\" is a name of \"film\" too, in line 2"},
		{"addresses", "words:\n  - {term: film, meaning: m, source: s, see: [a/b.html#c, 'http://x.html', b, ../x.html]}\n  - {term: nip, meaning: m, source: s, see: a.html}",
			"w.yaml:2:59: want the address of a page from the handbook's folder, such as chapters/storage.html#tight-roll, not \"http://x.html\"\n" +
				"w.yaml:2:76: want the address of a page from the handbook's folder, such as chapters/storage.html#tight-roll, not \"b\"\n" +
				"w.yaml:2:79: want the address of a page from the handbook's folder, such as chapters/storage.html#tight-roll, not \"../x.html\"\n" +
				"w.yaml:3:45: want a list of addresses, such as [chapters/storage.html#tight-roll]"},
		{"hazards", "words: []\nhazards:\n  - {title: Burn, say: Cool it., ask: [burn]}\n  - {title: Fire, say: Out., ask: fire, see: [a.html], alone: [flames], rank: 1}",
			"w.yaml:3:5: the key \"see\" is missing\nw.yaml:4:35: want a list, such as [frost, glitter]\nw.yaml:4:73: unknown key \"rank\""},
		{"questions", "words: []\nquestions:\n  - {ask: [a film]}\n  - {ask: [], see: [a.html]}",
			"w.yaml:3:5: the key \"see\" is missing\nw.yaml:4:11: want at least one"},
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
	ours := Words{Terms: []Term{{Term: "film", Also: []string{"lam", "foil"}, Misspelt: []string{"flim"}}, {Term: "nip"}, {Term: "quay"}}}
	own := Words{Terms: []Term{{Term: "nip", Meaning: "ours"}, {Term: "shed", Also: []string{"Lam", "flim", "quay"}}}}
	got := ours.With(own)
	want := Words{Terms: []Term{{Term: "film", Also: []string{"foil"}}, {Term: "nip", Meaning: "ours"}, own.Terms[1]}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got  %+v\nwant %+v", got, want)
	}
	if len(ours.Terms[0].Also) != 2 || ours.Terms[1].Meaning != "" {
		t.Errorf("the words it was called on changed: %+v", ours)
	}
}

func TestUnknown(t *testing.T) {
	w := Words{Terms: []Term{
		{Term: "nip", Beside: []string{"dwel", "nip", "dwell"}, Pos: Pos{"w.yaml", 2, 5}},
		{Term: "dwell", Beside: []string{"zinc"}, Pos: Pos{"w.yaml", 9, 5}},
	}}
	want := []string{
		`w.yaml:2:5: term "nip": beside names "dwel", which is no other term here: did you mean "dwell"?`,
		`w.yaml:2:5: term "nip": beside names "nip", which is no other term here`,
		`w.yaml:9:5: term "dwell": beside names "zinc", which is no other term here`,
	}
	if got := w.Unknown(); !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
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
	if len(words.Terms) < 160 {
		t.Errorf("%d terms, want 160 and more", len(words.Terms))
	}
	for _, line := range words.Unknown() {
		t.Error(line)
	}
	var entries []Entry
	for _, w := range words.Terms {
		entries = append(entries, Entry{URL: w.Term, Title: w.Term, Kind: "word", Text: w.Meaning, Also: w.Also})
	}
	x := Build(Book{Entries: entries, Words: words})
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
		if len(w.See) == 0 {
			t.Errorf("%s: leads nowhere", w.Term)
		}
		if n := sentences(w.Meaning); n > 3 {
			t.Errorf("%s: %d sentences, want three at most: %q", w.Term, n, w.Meaning)
		}
		if strings.Contains(w.Meaning, "  ") || !strings.HasSuffix(w.Meaning, ".") {
			t.Errorf("%s: the meaning is not a sentence: %q", w.Term, w.Meaning)
		}
	}
}

// Every word that calls for a hazard finds it, misspelt too, and the words of
// the trade that look like one do not.
func TestHazards(t *testing.T) {
	data, err := os.ReadFile("../../../content/words.yaml")
	if err != nil {
		t.Fatal(err)
	}
	words, err := ReadWords("words.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	book := Book{Words: words}
	for _, w := range words.Terms {
		book.Entries = append(book.Entries, Entry{URL: w.Term, Title: w.Term, Kind: "word", Text: w.Meaning, Also: w.Also})
	}
	for _, h := range words.Hazards {
		book.Pins = append(book.Pins, Pin{Title: h.Title, Say: h.Say, URL: h.Title, Ask: h.Ask, Alone: h.Alone})
	}
	x := Build(book)
	first := func(q string) string {
		if a := x.Ask(q, 3); len(a.Pins) > 0 {
			return x.First(a)
		}
		return ""
	}
	for _, h := range words.Hazards {
		for _, q := range slices.Concat(h.Ask, h.Alone) {
			if first(q) == "" {
				t.Errorf("%q pins nothing, want %q", q, h.Title)
			}
		}
	}
	for q, want := range map[string]string{
		"i burned my hand":            "Burn",
		"brunt finger":                "Burn",
		"hand caught in nip":          "Caught in the rollers",
		"nip":                         "Caught in the rollers",
		"nip pressure":                "",
		"nip check":                   "",
		"fumes from eco solvent":      "Fumes",
		"fmues":                       "Fumes",
		"fire":                        "Fire or smoke",
		"how to change the blade":     "Cut",
		"knief":                       "Cut",
		"burnish":                     "",
		"hand-over time":              "",
		"smell test":                  "",
		"fingers in the vinyl edge":   "Caught in the rollers", // better once too often
		"bleed":                       "",
		"static shocks":               "",
		"trapped air":                 "",
		"film caught fire":            "Fire or smoke",
		"where is the emergency stop": "Before hands go near",
		"got solvent in my eye":       "Splash in the eye or on the skin",
	} {
		if got := first(q); got != want {
			t.Errorf("%q pins %q first, want %q", q, got, want)
		}
	}
}

// sentences counts the stops that end one.
func sentences(text string) int {
	return strings.Count(text+" ", ". ")
}
