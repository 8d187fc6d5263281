package shop

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
)

// TestHostile loads files that are made to hang or to exhaust a reader. Each
// must be refused in words. Should one hang, the test's own time limit ends it.
func TestHostile(t *testing.T) {
	blockLists := func(n int) string { return "rooms:\n" + strings.Repeat("- ", n) + "x\n" }
	tests := []struct {
		name, text string
		want       string // the beginning of the first problem
	}{
		{"10 000 nested lists", "rooms: " + strings.Repeat("[", 10_000) + strings.Repeat("]", 10_000),
			"data/rooms.yaml:1:47: lists or records stand more than 40 deep"},
		{"10 000 nested lists in block form", blockLists(10_000), "data/rooms.yaml:2:79: lists or records stand more than 40 deep"},
		{"more lists in block form than the YAML reader takes", blockLists(11_000), "data/rooms.yaml:2:1: near line 2: lists or records stand more than 40 deep"},
		{"nested lists that never end", "rooms: " + strings.Repeat("[", 1_000_000), "data/rooms.yaml:1:1: near line 1: lists or records stand more than 40 deep"},
		{"nested mappings", "rooms: " + strings.Repeat("{a: ", 9_000) + strings.Repeat("}", 9_000),
			"data/rooms.yaml:1:161: lists or records stand more than 40 deep"},
		{"a million empty lists", "rooms: [" + strings.Repeat("[],", 300_000) + "]", "data/rooms.yaml:1:599997: this file holds more than 200 000 values"},
		{"a file over the bound", strings.Repeat("# long\n", 200_000), "data/rooms.yaml:1:1: is larger than 1 MiB"},
		{"an alias to nothing", "rooms: *films\n", "data/rooms.yaml:1:1: near line 1: an alias (* before a name) names nothing above it"},
		{"comments only", strings.Repeat("# long\n", 140_000), "data/rooms.yaml:1:1: this file holds nothing"},
		{"one long key", strings.Repeat("k", 1_000_000) + ": 1\n", "data/rooms.yaml:1:1: near line 1: a colon stands where none can"},
		{"one long text", "rooms: " + strings.Repeat("k", 1_000_000), "data/rooms.yaml:1:8: rooms is the single value \"kkk"},
		{"a text of NUL", "rooms:\x00", "data/rooms.yaml:1:1: is not text"},
		{"a bell", "rooms: \a", "data/rooms.yaml:1:1: near line 1: a character that cannot be seen"},
		{"a tag", "rooms: !!binary aGVsbG8=\n", "data/rooms.yaml:1:8: tags"},
		{"an escape in a message", "\"fil\\nms\": []\n", "data/rooms.yaml:1:1: unknown key \"fil\\nms\""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, problems := Load(smallShop(t), file("rooms.yaml", test.text))
			if len(problems) == 0 || !strings.HasPrefix(problems[0].String(), test.want) {
				t.Fatalf("got %.300s\nwant %s", problems.Error(), test.want)
			}
			for _, p := range problems {
				if len(p.Message) > 600 || strings.ContainsAny(p.Message, "\n\r\t\x00") {
					t.Errorf("not a message for a line: %.700q", p.Message)
				}
			}
		})
	}
}

// TestManyWrongWords holds that a large file of wrong ids and words is refused
// whole; what was meant is looked for a bounded number of times, or it would
// not end.
func TestManyWrongWords(t *testing.T) {
	var rooms, films strings.Builder
	rooms.WriteString("rooms:\n")
	for i := range 9_000 {
		fmt.Fprintf(&rooms, "- {id: room-%d, name: x, source: sauce-%d}\n", i, i)
	}
	films.WriteString("limits:\n- {id: many, name: x, verdict: test, why: x, film_ids: [")
	for i := range 50_000 {
		fmt.Fprintf(&films, "film-%d, ", i)
	}
	films.WriteString("]}\n")
	own := fstest.MapFS{"rooms.yaml": {Data: []byte(rooms.String())}, "limits.yaml": {Data: []byte(films.String())}}
	_, problems := Load(smallShop(t), own)
	if want := 9_000*4 + 50_000; len(problems) != want { // three keys and a source missing in each room
		t.Errorf("%d problems, want %d", len(problems), want)
	}
}

// FuzzLoad holds that no file, in the shop's folder or in the demo's, makes
// Load panic, and that a shop comes back exactly when there is no problem.
func FuzzLoad(f *testing.F) {
	for _, seed := range []string{
		"", "rooms: []\n", "rooms:\n- id: a\n  temperature: {value: 20 °C, low: 10 °C}\n", "a: &a [*a]\n",
		"shop: {name: x, charts: {waits: [{ink: a}]}}\n", "replaces: all\nfilms: []\n", "--- a\n--- b\n",
		"films: [{id: a, roller_range: }]\n", "inks:\n- evaporation: 3\n  toner: {base: 1 h}\n", "rooms: [[[[",
		"faults: [{id: a, causes: [{id: b, weight: 1}], checks: [{use: c, found: {b: {d: 90 %}, others: }}], remedies: [{id: e, cures: {b: 1 %}}]}]\n",
		"faults_log: [{date: 2026-11-03, family: a, checks: {b: c}}, 3]\n", "checks: [{id: a, outcomes: [{id: b}]}]\n",
		"carriers: [{antoine: {a: .nan, b: 1e999}}]\n", "'': {}\n", "? [a]\n: b\n", "rooms: \"\\0\"\n",
	} {
		f.Add(seed)
	}
	small := smallShop(f)
	f.Fuzz(func(t *testing.T, text string) {
		s, problems := Load(small, file("rooms.yaml", text))
		if (s == nil) != (len(problems) > 0) {
			t.Errorf("shop %v with problems %v", s, problems)
		}
		Load(file("shop.yaml", text), small)
	})
}
