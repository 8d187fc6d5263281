package search

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"
)

// Each row gives one value in two systems; where they differ by at most 1.5 %
// (temperatures: 1 °C) each must find the other, where by more than 2 %
// (1.5 °C) neither may. The pairs are definitions of units (in = 25.4 mm,
// ft = 0.3048 m, lbf/in² = 6894.76 Pa, °F) worked out by hand.
func TestQuantitiesMeet(t *testing.T) {
	for _, c := range []struct {
		a, b string
		meet bool
	}{
		{"240F", "116 °C", true},         // 115.56 °C
		{"240F", "115 °C", true},         // 0.56 °C off
		{"240F", "118 °C", false},        // 2.4 °C off
		{"185f", "85 °C", true},          // exact
		{"73 °F", "23 °C", true},         // 22.78 °C
		{"40 °F", "4 °C", true},          // 4.44 °C
		{"0 °F", "-18 °C", false},        // minus signs are not read: a known limit
		{"3mil", "76 um", true},          // 76.2 µm
		{"3 mil", "75 µm", true},         // 1.6 % off, the trade's pair
		{"3 mil", "80 µm", false},        // 5 %
		{"1.5 mil", "38 microns", true},  // 38.1 µm
		{"300 gauge", "3 mil", true},     // exact
		{"10 pt", "254 µm", true},        // exact
		{"5fpm", "1.52 m/min", true},     // 1.524
		{"5 ft/min", "1.5 m/min", true},  // 1.6 %
		{"1 m/min", "16.7 mm/s", true},   // 16.67
		{"30 psi", "207 kPa", true},      // 206.8
		{"1 kg/cm2", "14.2 psi", true},   // 14.22
		{"5 bar", "0.5 MPa", true},       // exact
		{"80 lb cover", "216 gsm", true}, // 216.3
		{"20 lb bond", "75 g/m²", true},  // 75.2
		{"100 lb text", "148 g/m2", true},
		{"24 h", "1 day", true},
		{"90 min", "1.5 hours", true},
		{"1/8 in", "3.2 mm", true}, // 3.175
		{"8½ in", "216 mm", true},  // 215.9
		{"50 %", "50 percent", true},
		{"50 %", "50 mm", false},
		{"20 lb/in", "3.5 N/mm", true}, // 3.503
		{"22 lb", "10 kg", true},       // 9.98
		{"1,000 m", "1000 m", true},
	} {
		for _, pair := range [][2]string{{c.a, c.b}, {c.b, c.a}} {
			x := Build(Book{Entries: []Entry{{URL: "u", Text: "set to " + pair[1] + " here"}, {URL: "itself", Text: pair[0]}}})
			if got := slices.Contains(urls(x.Find(pair[0], 2)), "u"); got != c.meet {
				t.Errorf("%q finds %q: %v, want %v", pair[0], pair[1], got, c.meet)
			}
		}
	}
}

// Where nothing lies within reach, the nearest that lies a little further off is
// found, up to eight times the reach, and the nearer one before the other.
func TestQuantitiesNearby(t *testing.T) {
	x := Build(Book{Entries: []Entry{{URL: "90", Text: "at 90 °C"}, {URL: "91", Text: "at 91 °C"}, {URL: "99", Text: "at 99 °C"}}})
	for q, want := range map[string][]string{
		"185f":  {"90"}, // 85 °C: 5 °C off, within 8; 91 is 6 off and found too only past 4
		"93 °C": {"91"}, // 2 °C off
		"99 C":  {"99"},
		"60 °C": {}, // 30 °C off
	} {
		got := urls(x.Find(q, 1))
		if !slices.Equal(got, want) {
			t.Errorf("%q finds %q first, want %q", q, got, want)
		}
	}
}

// Whatever the value, a ratio of 1.5 % is found and one of 2 % is not.
func TestReachOfRatios(t *testing.T) {
	u, _, ok := unitAt(fold("mm"), 0)
	if !ok || u.kind != "L" {
		t.Fatal("mm is no length")
	}
	for v := 0.001; v < 1e5; v *= 1.37 {
		at, _ := u.step(v)
		near, _ := u.step(v * 1.015)
		far, _ := u.step(v * 1.02)
		if near-at > ratioReach || far-at <= ratioReach {
			t.Errorf("%g mm: 1.5 %% is %d steps away, 2 %% is %d, and the reach is %d", v, near-at, far-at, ratioReach)
		}
	}
	if _, ok := u.step(math.Inf(1)); ok {
		t.Error("an infinite length has a step")
	}
}

func TestTitleBeforeText(t *testing.T) {
	x := Build(Book{Entries: []Entry{
		{URL: "text", Title: "About rollers", Text: strings.Repeat("grain ", 200)},
		{URL: "title", Title: "A word that stands among many others here is grain", Text: "nothing"},
	}})
	if got := urls(x.Find("grain", 2)); !slices.Equal(got, []string{"title", "text"}) {
		t.Errorf("got %q", got)
	}
}

func TestTiesKeepOrder(t *testing.T) {
	var entries []Entry
	var want []string
	for i := range 30 {
		entries = append(entries, Entry{URL: fmt.Sprint(i), Title: "Same", Text: "the same words"})
		want = append(want, fmt.Sprint(i))
	}
	if got := urls(Build(Book{Entries: entries}).Find("same", 30)); !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
}

func TestWeight(t *testing.T) {
	x := Build(Book{Entries: []Entry{{URL: "light", Title: "Film"}, {URL: "heavy", Title: "Film", Weight: 2}}})
	if got := urls(x.Find("film", 2)); !slices.Equal(got, []string{"heavy", "light"}) {
		t.Errorf("got %q", got)
	}
}

// The same entries make the same bytes, and no entries make a script too.
func TestScriptStable(t *testing.T) {
	c := readCases(t)
	first := Build(c.book(Words{Terms: c.Words})).Script()
	for range 5 {
		if !bytes.Equal(first, Build(c.book(Words{Terms: c.Words})).Script()) {
			t.Fatal("two builds differ")
		}
	}
	empty := Build(Book{})
	if hits := empty.Find("film", 5); len(hits) != 0 {
		t.Errorf("an empty index finds %v", hits)
	}
	if !strings.HasPrefix(string(empty.Script()), "window.laydownIndex = {") {
		t.Error("an empty index has no script")
	}
}

func TestDigits46(t *testing.T) {
	seen := map[rune]bool{}
	for _, r := range digits46 {
		if seen[r] || r < ' ' || r > '~' || strings.ContainsRune("\"\\<", r) {
			t.Errorf("digit %q is not fit", r)
		}
		seen[r] = true
	}
	if len(digits46) != 92 {
		t.Errorf("%d digits, want 92", len(digits46))
	}
}

func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b   string
		most   int
		prefix bool
		want   int
	}{
		{"curl", "curl", 2, false, 0},
		{"crul", "curl", 2, false, 1},        // neighbours swapped
		{"bubles", "bubbles", 2, false, 1},   // one missing
		{"bubbbles", "bubbles", 2, false, 1}, // one too many
		{"bobbles", "bubbles", 2, false, 1},  // one wrong
		{"kitten", "sitting", 3, false, 3},   // the textbook pair (Wagner and Fischer's distance)
		{"kitten", "sitting", 2, false, 3},   // gives up at most + 1
		{"ca", "abc", 5, false, 3},           // optimal string alignment, not 2 as without its restriction
		{"hygrm", "hygrometer", 1, true, 1},  // against hygrom or hygr
		{"hygrm", "hygrometer", 1, false, 2}, // too far as a whole
		{"", "abc", 3, false, 3},
	} {
		if got := distance(c.a, c.b, c.most, c.prefix); got != c.want {
			t.Errorf("distance(%q, %q, %d, %v) = %d, want %d", c.a, c.b, c.most, c.prefix, got, c.want)
		}
	}
}

func FuzzTokens(f *testing.F) {
	for _, c := range readCases(f).Tokens {
		f.Add(c.Text)
	}
	x := Build(readCases(f).book(Words{Terms: readCases(f).Words}))
	f.Fuzz(func(t *testing.T, text string) {
		last := 0
		for _, tok := range Tokens(text) {
			switch {
			case tok.Start < 0 || tok.End > len(text) || tok.Start >= tok.End:
				t.Fatalf("%q: token %+v lies outside", text, tok)
			case tok.Text == "" || strings.ContainsAny(tok.Text, " \n\""):
				t.Fatalf("%q: token %+v is no word", text, tok)
			case utf8.ValidString(text) && !utf8.ValidString(text[tok.Start:tok.End]):
				t.Fatalf("%q: token %+v cuts a character", text, tok)
			case tok.Kind == Word && tok.Start < last:
				t.Fatalf("%q: token %+v overlaps the word before it", text, tok)
			case tok.Kind == Word:
				last = tok.Start
			}
		}
		for _, h := range x.Find(text, 5) {
			if h.Score <= 0 {
				t.Fatalf("%q: hit without a score: %+v", text, h)
			}
		}
	})
}

// manual is about what a whole handbook holds: 300 sections, 60 000 words.
func manual(b *testing.B) Book {
	c := readCases(b)
	var words []string
	for _, e := range c.Entries {
		words = append(words, strings.Fields(e.Text)...)
	}
	var entries []Entry
	n := uint32(1)
	for i := range 300 {
		e := c.Entries[i%len(c.Entries)]
		e.URL = fmt.Sprintf("%d-%s", i, e.URL)
		text := []string{e.Text}
		for range 180 {
			n = n*1664525 + 1013904223 // the generator of Numerical Recipes; any would do
			text = append(text, words[int(n>>8)%len(words)])
		}
		e.Text = strings.Join(text, " ")
		entries = append(entries, e)
	}
	c.Entries = entries
	return c.book(Words{Terms: c.Words})
}

func BenchmarkBuild(b *testing.B) {
	book := manual(b)
	for b.Loop() {
		Build(book)
	}
}

func BenchmarkScript(b *testing.B) {
	x := Build(manual(b))
	for b.Loop() {
		b.SetBytes(int64(len(x.Script())))
	}
}

func BenchmarkFind(b *testing.B) {
	x := Build(manual(b))
	for _, q := range []string{"silvering", "silv", "sivlering", "bubbles next day", "240F", "can i laminate inkjet photo hot"} {
		b.Run(strings.ReplaceAll(q, " ", "_"), func(b *testing.B) {
			for b.Loop() {
				x.Find(q, 20)
			}
		})
	}
}
