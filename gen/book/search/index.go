package search

import (
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"
)

// Index is a finished index. It is safe for concurrent use.
type Index struct {
	entries []Entry
	words   []string             // every word as written in the texts or listed in a group, sorted
	posts   map[string][]posting // by term: a stem, a quantity "#L-4738", a group "=12"
	heads   []string             // the groups' own words
	members map[string][]member  // by stems parted by spaces
	starts  map[string]int       // by a member's first stem: words in the longest such member
	longest int                  // words in the longest member
	names   map[uint32][]int     // by the hash of a whole title or name: the entries that have it
	pins    []pin
	things  []thing
	facts   []fact
	charts  []Chart
	stamps  string
	edition string
}

// posting is one entry of a list, with what the term is worth there.
type posting struct{ entry, score int }

// member says that a word or phrase belongs to a group.
type member struct {
	group int
	how   byte
}

// How a member belongs to its group.
const (
	sameAs   = 's' // it counts as the group's word in texts and queries
	misspelt = 'm' // a query with it is read as the group's word
	nearTo   = 'n' // a query with it looks at the group as well
)

func groupTerm(group int) string { return "=" + strconv.Itoa(group) }

// nameHash is what a whole title or name is filed under, from its stems: the
// hash of Fowler, Noll and Vo (FNV-1a, 32 bits, from memory) over characters.
// Two names of a handbook meeting by chance would only lift a wrong hit. A name
// with little words is filed with them and without: "which film" is more than
// "film".
func nameHash(tokens []Token, little bool) uint32 {
	h := uint32(2166136261)
	for _, t := range tokens {
		if t.Kind != Word || stopped[t.Text] && !little {
			continue
		}
		for _, r := range stem(t.Text) + " " {
			h = (h ^ uint32(r)) * 16777619
		}
	}
	return h
}

// What a word is worth by where it stands, in the terms of the ranking
// function: a word that is often in a text reaches at most saturation+1, so a
// word in a title is always worth more than any number in a text.
const (
	saturation  = 1.2 // k1 of Okapi BM25 (Robertson and Walker 1994; usual value, from memory)
	lengthShare = 0.5 // b of Okapi BM25; low, since short sections are no better than long ones
	inTitle     = 2.2
	wholeTitle  = 2.2 // shared among the words of the title
	inAlso      = 1.7
	wholeAlso   = 1.7
	inSection   = 0.2
	inKind      = 0.2
	wholeName   = 14 // added when the query is the whole of a title or name
	scale       = 8  // scores are whole numbers, so that Go and the script agree to the last one
)

// field adds up what the terms of one entry are worth.
type field struct {
	counts map[string]float64 // in the text
	extra  map[string]float64 // in titles and names: the best of each
	names  map[uint32]bool    // titles and names, whole
	title  uint32             // the title among them
	length float64
}

// Build makes the index. Entries keep their order: it settles ties.
func Build(b Book) *Index {
	x := newIndex()
	surface := map[string]bool{}
	for g, t := range b.Words.Terms {
		x.heads = append(x.heads, t.Term)
		for _, list := range []struct {
			names []string
			how   byte
		}{{[]string{t.Term}, sameAs}, {t.Also, sameAs}, {t.Misspelt, misspelt}, {t.Near, nearTo}} {
			for _, name := range list.names {
				for _, key := range memberKeys(name, surface) {
					x.addMember(key, member{g, list.how})
				}
			}
		}
	}
	fields := make([]field, len(b.Entries))
	lengths := 0.0
	for i, e := range b.Entries {
		e.Text = strings.Join(strings.Fields(e.Text), " ")
		x.entries = append(x.entries, e)
		fields[i] = x.weigh(e, surface)
		lengths += fields[i].length
	}
	x.score(fields, max(1, lengths/float64(max(1, len(b.Entries)))))
	for w := range surface {
		x.words = append(x.words, w)
	}
	sort.Strings(x.words)
	for _, p := range b.Pins {
		x.pins = append(x.pins, newPin(p))
	}
	for _, t := range b.Things {
		x.things = append(x.things, newThing(t))
	}
	for _, f := range b.Facts {
		for _, a := range asks {
			if a.key == f.Ask {
				x.facts = append(x.facts, fact{f, a})
			}
		}
	}
	x.charts, x.stamps, x.edition = b.Charts, b.Stamps, b.Edition
	return x
}

func newIndex() *Index {
	return &Index{posts: map[string][]posting{}, members: map[string][]member{}, starts: map[string]int{}, names: map[uint32][]int{}}
}

// memberKeys are the keys that a name of a group is looked up by: its stems,
// and where it has several words the stem of them written as one, so that roll
// up, roll-up and rollup are one. The words are noted as known.
func memberKeys(name string, surface map[string]bool) []string {
	var stems []string
	joined, letters := "", true
	for _, t := range Tokens(name) {
		if t.Kind != Word {
			continue
		}
		stems = append(stems, stem(t.Text))
		joined += t.Text
		digit := isDigit(rune(t.Text[0]))
		letters = letters && !digit
		if !stopped[t.Text] && !digit {
			surface[t.Text] = true
		}
	}
	switch {
	case len(stems) == 0:
		return nil
	case len(stems) == 1 || len(stems) > 3 || !letters:
		return []string{strings.Join(stems, " ")}
	}
	return []string{strings.Join(stems, " "), stem(joined)}
}

func (x *Index) addMember(key string, m member) {
	for _, have := range x.members[key] {
		if have.group == m.group {
			return
		}
	}
	x.members[key] = append(x.members[key], m)
	first, _, _ := strings.Cut(key, " ")
	n := strings.Count(key, " ") + 1
	x.starts[first] = max(x.starts[first], n)
	x.longest = max(x.longest, n)
}

// weigh counts the terms of an entry's fields.
func (x *Index) weigh(e Entry, surface map[string]bool) field {
	f := field{counts: map[string]float64{}, extra: map[string]float64{}, names: map[uint32]bool{}}
	for _, term := range x.termsOf(Tokens(e.Text), surface) {
		f.counts[term]++
		if term[0] != '=' && term[0] != '#' {
			f.length++
		}
	}
	f.title = nameHash(Tokens(e.Title), true)
	name := func(text string, each, whole float64) {
		tokens := Tokens(text)
		if whole > 0 {
			f.names[nameHash(tokens, false)] = true
			f.names[nameHash(tokens, true)] = true
		}
		n := 0.0
		for _, t := range tokens {
			if t.Kind == Word && !stopped[t.Text] {
				n++
			}
		}
		for _, t := range x.termsOf(tokens, surface) {
			f.extra[t] = max(f.extra[t], each+whole/max(1, n))
		}
	}
	name(e.Title, inTitle, wholeTitle)
	for _, also := range e.Also {
		name(also, inAlso, wholeAlso)
	}
	name(e.Section, inSection, 0)
	name(e.Kind, inKind, 0)
	return f
}

// termsOf lists the terms that a text's tokens are filed under: stems, quantities and
// the groups whose words stand in it.
func (x *Index) termsOf(tokens []Token, surface map[string]bool) []string {
	terms := make([]string, 0, len(tokens))
	for _, t := range tokens {
		switch {
		case t.Kind == Amount:
			terms = append(terms, t.Text)
		case !stopped[t.Text]:
			terms = append(terms, stem(t.Text))
			surface[t.Text] = true
		}
	}
	run := wordRun(tokens)
	for i := range run {
		for n := 1; n <= x.starts[run[i]] && i+n <= len(run); n++ {
			for _, m := range x.members[strings.Join(run[i:i+n], " ")] {
				if m.how == sameAs {
					terms = append(terms, groupTerm(m.group))
				}
			}
		}
	}
	return terms
}

// wordRun is the stems of a text's words in order, to look for phrases in.
func wordRun(tokens []Token) []string {
	var run []string
	for _, t := range tokens {
		if t.Kind == Word {
			run = append(run, stem(t.Text))
		}
	}
	return run
}

// score turns counts into whole scores. The products are converted one by one,
// so that no machine fuses them into a sum and rounds otherwise.
func (x *Index) score(fields []field, mean float64) {
	in := map[string]int{} // entries that have the term
	for _, f := range fields {
		for t := range merged(f) {
			in[t]++
		}
	}
	for i, f := range fields {
		weight := x.entries[i].Weight
		if weight <= 0 {
			weight = 1
		}
		norm := saturation * float64(1-lengthShare+float64(lengthShare*f.length/mean))
		for t := range merged(f) {
			n := float64(in[t])
			rare := math.Log(1 + (float64(len(fields))-n+0.5)/(n+0.5))
			worth := f.extra[t]
			if c := f.counts[t]; c > 0 {
				worth += float64(c*(saturation+1)) / (c + norm)
			}
			s := int(math.Floor(float64(scale*rare*worth*weight) + 0.5))
			x.posts[t] = append(x.posts[t], posting{i, max(1, s)})
		}
		for h := range f.names {
			x.names[h] = append(x.names[h], i)
			if h == f.title && weight >= 1 { // counts twice: it is that, and is not only called so
				x.names[h] = append(x.names[h], i)
			}
		}
	}
	for _, list := range x.posts {
		slices.SortFunc(list, func(a, b posting) int { return a.entry - b.entry })
	}
}

// merged is the set of a field's terms.
func merged(f field) map[string]bool {
	m := make(map[string]bool, len(f.counts)+len(f.extra))
	for t := range f.counts {
		m[t] = true
	}
	for t := range f.extra {
		m[t] = true
	}
	return m
}
