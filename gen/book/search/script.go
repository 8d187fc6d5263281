package search

import (
	"bytes"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
)

// digits46 writes numbers into a script: a last digit is one of the first 46
// characters, a digit that others follow one of the other 46. None of them
// needs an escape in a string. The character < is left out: it parts lists.
const digits46 = " !#$%&'()*+,-./0123456789:;=>?@ABCDEFGHIJKLMNO" +
	"PQRSTUVWXYZ[]^_`abcdefghijklmnopqrstuvwxyz{|}~"

func appendNumber(b []byte, n int) []byte {
	if n >= 46 {
		b = appendHigh(b, n/46)
	}
	return append(b, digits46[n%46])
}

func appendHigh(b []byte, n int) []byte {
	if n >= 46 {
		b = appendHigh(b, n/46)
	}
	return append(b, digits46[46+n%46])
}

// zero is added to steps of quantities, which may be negative.
const zero = 1 << 20

// packed is an index as its script holds it. What can be worked out while it
// is loaded is left out: stems from words, and which group a name belongs to
// from where it stands.
type packed struct {
	Fold      []string       `json:"fold"`
	Stop      string         `json:"stop"`
	Measures  [][]any        `json:"measures"` // shown, kind, factor, offset, names, to
	Pounds    string         `json:"pounds"`
	Bases     []string       `json:"bases"`
	Repeating string         `json:"repeating"`
	Steps     map[string]int `json:"steps"`
	Asks      [][3]string    `json:"asks"`    // key, asking, filling
	Shelves   [][2]string    `json:"shelves"` // name, kinds parted by |
	Digits    string         `json:"digits"`
	Words     string         `json:"words"`   // sorted, parted by <, as packText writes them
	Amounts   string         `json:"amounts"` // kinds and steps of quantities
	Posts     string         `json:"posts"`   // the lists of stems as words come, of quantities, of groups
	Names     string         `json:"names"`   // hashes of whole names, and their entries
	Groups    []string       `json:"groups"`  // word, names, wrong spellings, words near it, parted by |
	Pins      [][]string     `json:"pins"`    // title, say, address, what calls for it, what calls alone
	Things    [][]string     `json:"things"`  // name, stems, names, sizes
	Facts     [][]any        `json:"facts"`   // ask, thing, thing or -1, number, unit, under, address, what; under and address as packText writes them
	Charts    [][3]string    `json:"charts"`
	Stamps    string         `json:"stamps"`
	Edition   string         `json:"edition"`
	Entries   [][]string     `json:"entries"` // address, title, section, kind, text; or #place, title, text on the page before
}

// prefix and suffix make a classic script of the JSON between them.
const (
	prefix = "window.laydownIndex = "
	suffix = ";\n"
)

// Script is the index as a classic script that sets window.laydownIndex, in
// JSON. Equal books give equal bytes.
func (x *Index) Script() []byte {
	p := packed{Fold: foldTable, Stop: strings.Join(stopWords, " "), Pounds: pounds, Bases: bases, Repeating: strings.Join(repeating, " "), Digits: digits46,
		Steps: map[string]int{"ratio": ratioSteps, "ratioReach": ratioReach, "degree": degreeSteps, "degreeReach": degreeReach, "name": scale * wholeName, "sentence": sentence},
		Words: packWords(x.words), Stamps: x.stamps, Edition: x.edition, Groups: x.packGroups(), Entries: x.packEntries()}
	for _, m := range measures {
		p.Measures = append(p.Measures, []any{m.shown, m.kind, m.factor, m.offset, m.names, append([]string{}, m.to...)})
	}
	for _, a := range asks {
		p.Asks = append(p.Asks, [3]string{a.key, strings.Join(a.asking, " "), strings.Join(a.filling, " ")})
	}
	for _, s := range shelves {
		p.Shelves = append(p.Shelves, [2]string{s.name, strings.Join(s.kinds, "|")})
	}
	p.Amounts, p.Posts = x.packPosts()
	p.Names = x.packNames()
	for _, n := range x.pins {
		p.Pins = append(p.Pins, []string{n.Title, n.Say, n.URL, strings.Join(n.ask, "|"), strings.Join(n.alone, "|")})
	}
	for _, t := range x.things {
		p.Things = append(p.Things, []string{t.Name, strings.Join(sortedKeys(t.stems), " "), strings.Join(sortedKeys(t.names), "|"), strings.Join(sortedKeys(t.sizes), " ")})
	}
	under, url := "", ""
	for _, f := range x.facts {
		second := -1
		if len(f.About) > 1 {
			second = f.About[1]
		}
		row := []any{slices.IndexFunc(asks, func(a ask) bool { return a.key == f.Ask }), f.About[0], second, f.Box.Number, f.Box.Unit, packText(under, f.Box.Under), packText(url, f.Box.URL)}
		under, url = f.Box.Under, f.Box.URL
		if f.Box.What != "" {
			row = append(row, f.Box.What)
		}
		p.Facts = append(p.Facts, row)
	}
	for _, c := range x.charts {
		p.Charts = append(p.Charts, [3]string{c.Stamp, c.Title, c.URL})
	}
	var b bytes.Buffer
	b.WriteString(prefix)
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false) // the script is a file of its own, never inline
	if err := enc.Encode(p); err != nil {
		panic("search: " + err.Error()) // texts, numbers and lists of them cannot fail
	}
	b.Truncate(b.Len() - 1) // the newline of the encoder
	b.WriteString(suffix)
	return b.Bytes()
}

func sortedKeys(set map[string]bool) []string {
	var keys []string
	for k := range set {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// packText writes a text without the characters that it shares with the one
// before it, behind a digit that says how many they are.
func packText(last, text string) string {
	a, b := []rune(last), []rune(text)
	shared := 0
	for shared < 45 && shared < len(a) && shared < len(b) && a[shared] == b[shared] {
		shared++
	}
	return digits46[shared:shared+1] + string(b[shared:])
}

// unpackText reads what packText wrote.
func unpackText(last, text string) (string, error) {
	a := []rune(last)
	shared := -1
	if text != "" {
		shared = strings.IndexByte(digits46[:46], text[0])
	}
	if shared < 0 || shared > len(a) {
		return "", fmt.Errorf("search: %q shares characters that are not there", text)
	}
	return string(a[:shared]) + text[1:], nil
}

// packWords writes sorted words, one a line, each by what it shares with the
// one before.
func packWords(words []string) string {
	var list []string
	last := ""
	for _, w := range words {
		list = append(list, packText(last, w))
		last = w
	}
	return strings.Join(list, "<")
}

// stemsOf is the stems of sorted words, each once, in the order of the words.
func stemsOf(words []string) []string {
	var stems []string
	seen := map[string]bool{}
	for _, w := range words {
		if s := stem(w); !seen[s] {
			seen[s] = true
			stems = append(stems, s)
		}
	}
	return stems
}

// packPosts writes which quantities there are, and all lists: those of stems in
// the order of the words, of quantities by kind and step, of groups.
func (x *Index) packPosts() (amounts, posts string) {
	terms := stemsOf(x.words)
	quantities := map[string][]int{}
	for term := range x.posts {
		if term[0] == '#' {
			kind, step := splitQuantity(term)
			quantities[kind] = append(quantities[kind], step)
		}
	}
	var kinds []string
	for kind := range quantities {
		kinds = append(kinds, kind)
	}
	slices.Sort(kinds)
	var names []string
	for _, kind := range kinds {
		steps := quantities[kind]
		slices.Sort(steps)
		var list []byte
		last := -zero
		for _, step := range steps {
			terms = append(terms, quantityTerm(kind, step))
			list = appendNumber(list, step-last)
			last = step
		}
		names = append(names, kind+string(list))
	}
	for g := range x.heads {
		terms = append(terms, groupTerm(g))
	}
	var lists []string
	for _, term := range terms {
		var list []byte
		last := 0
		for _, p := range x.posts[term] {
			list = appendNumber(list, p.entry-last)
			list = appendNumber(list, p.score)
			last = p.entry
		}
		lists = append(lists, string(list))
	}
	return strings.Join(names, "<"), strings.Join(lists, "<")
}

// packNames writes the hashes of whole names in order, each as the step from
// the one before, with the number of its entries and their steps.
func (x *Index) packNames() string {
	var hashes []uint32
	for h := range x.names {
		hashes = append(hashes, h)
	}
	slices.Sort(hashes)
	var list []byte
	last := uint32(0)
	for _, h := range hashes {
		list = appendNumber(list, int(h-last))
		list = appendNumber(list, len(x.names[h]))
		entry := 0
		for _, e := range x.names[h] {
			list = appendNumber(list, e-entry)
			entry = e
		}
		last = h
	}
	return string(list)
}

// packGroups writes each group's word and the keys of its names.
func (x *Index) packGroups() []string {
	groups := make([]map[byte][]string, len(x.heads))
	for g := range groups {
		groups[g] = map[byte][]string{}
	}
	var keys []string
	for key := range x.members {
		keys = append(keys, key)
	}
	slices.Sort(keys)
	for _, key := range keys {
		for _, m := range x.members[key] {
			groups[m.group][m.how] = append(groups[m.group][m.how], key)
		}
	}
	var out []string
	for g, head := range x.heads {
		text := head
		for _, how := range []byte{sameAs, misspelt, nearTo} {
			text += "|" + strings.Join(groups[g][how], ",")
		}
		out = append(out, text)
	}
	return out
}

// packEntries leaves out of an entry what it shares with the one before: the
// page, the section and the kind.
func (x *Index) packEntries() [][]string {
	var out [][]string
	page, section, kind := "", "", ""
	for _, e := range x.entries {
		path, place, found := strings.Cut(e.URL, "#")
		if found && path == page && e.Section == section && e.Kind == kind {
			out = append(out, []string{"#" + place, e.Title, e.Text})
			continue
		}
		out = append(out, []string{e.URL, e.Title, e.Section, e.Kind, e.Text})
		page, section, kind = path, e.Section, e.Kind
		if !found {
			section = e.Title // sections of a page name it
		}
	}
	return out
}
