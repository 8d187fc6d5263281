package search

import (
	"cmp"
	"math"
	"slices"
	"strings"
)

// What a posting is worth, in percent, by how the typed word led to it.
const (
	byWord   = 100
	byJoined = 80 // lay flat, layflat
	byPrefix = 70
	byGroup  = 60
	byHalf   = 50 // each word of a phrase that names a group
	byFar    = 40 // a group, by the beginning of one of its words; a quantity at the end of the reach
)

// sentence is the number of items from which on a query is read as a sentence. Of a few
// words each was meant; of a sentence some are only said, and an entry that lacks one of
// them may be the better one.
const sentence = 3

// item is one thing the query asks for: a word, a phrase or a quantity.
type item struct {
	typed  string
	scores map[int]int // by entry
	amount bool        // a quantity
}

// Find returns at most max hits for a query, best first; ties keep the order
// of the entries.
func (x *Index) Find(query string, max int) []Hit { return x.Ask(query, max).Hits }

// Ask answers a query: the last word may be half typed, words that nothing has
// are read as the nearest ones, and an entry need not have all the words when
// none has.
func (x *Index) Ask(query string, max int) Answer {
	var a Answer
	items := x.items(query, &a)
	words := reread(query, a.Read)
	if len(a.Read) > 0 { // ask again with what was read, as if it had been typed
		again := x.items(strings.Join(words, " ")+" ", &Answer{})
		for _, it := range items {
			if it.amount {
				again = append(again, it)
			}
		}
		items = again
	}
	a.Hits, a.All = x.rank(items, x.named(words), max)
	for _, it := range items {
		if len(it.scores) == 0 {
			a.Missing = append(a.Missing, it.typed)
		}
	}
	if len(a.Hits) == 0 {
		for _, w := range a.Missing {
			a.Closest = append(a.Closest, x.suggest(w)...)
		}
	}
	a.Pins = x.pinned(plainWords(query), words)
	code, sure := x.stampIn(query)
	a.Boxes = x.stampBoxes(code, sure, len(a.Hits))
	if sure == surelyStamp { // then its letters are no words
		a.Hits, a.All, a.Read, a.Missing, a.Closest = nil, false, nil, nil, nil
	}
	if len(a.Boxes) == 0 {
		sizes := amountsIn(query)
		a.Boxes = x.answers(plainWords(query), sizes)
		if len(a.Boxes) == 0 {
			a.Boxes = x.answers(words, sizes)
		}
		a.Boxes = append(append(a.Boxes, roller(query)...), conversions(query)...)
	}
	a.Boxes = a.Boxes[:min(len(a.Boxes), mostBoxes)]
	return a
}

// named lists the entries of which the words are the whole title or name, once
// for the words without the little ones and once more for all of them.
func (x *Index) named(words []string) []int {
	tokens := Tokens(strings.Join(words, " "))
	plain, all := nameHash(tokens, false), nameHash(tokens, true)
	if plain == all {
		return x.names[plain]
	}
	return append(slices.Clone(x.names[plain]), x.names[all]...)
}

// suggest names known words to try in place of one that nothing has: those
// with the fewest typing errors, or else those that share the most pairs of
// letters.
func (x *Index) suggest(w string) []string {
	near := x.nearest(w, min(3, len([]rune(w))/2), true)
	if len(near) == 0 {
		near = x.alike(w)
	}
	return x.offers(near, "")
}

// reread is the words of a query, with what was read in the place of what was
// typed. Quantities are left out.
func reread(query string, read []Reading) []string {
	text := " " + strings.Join(plainWords(query), " ") + " "
	for _, r := range read {
		typed := " " + strings.Join(plainWords(r.Typed), " ") + " "
		text = strings.Replace(text, typed, " "+strings.Join(plainWords(r.Read), " ")+" ", 1)
	}
	return strings.Fields(text)
}

// plainWords is the words of a text, without the parts of quantities.
func plainWords(text string) []string {
	var out []string
	for _, t := range Tokens(text) {
		if t.Kind == Word && !t.Inside {
			out = append(out, t.Text)
		}
	}
	return out
}

// amountsIn is the quantities of a text, as terms.
func amountsIn(text string) []string {
	var out []string
	for _, t := range Tokens(text) {
		if t.Kind == Amount {
			out = append(out, t.Text)
		}
	}
	return out
}

// items splits a query into what it asks for.
func (x *Index) items(query string, a *Answer) []item {
	var q []Token
	for _, t := range Tokens(query) {
		if t.Kind != Joined && !t.Inside {
			q = append(q, t)
		}
	}
	isWord := func(i int) bool { return i >= 0 && i < len(q) && q[i].Kind == Word }
	var items []item
	for i := 0; i < len(q); i++ {
		if q[i].Kind == Amount {
			it := x.amount(query[q[i].Start:q[i].End], q[i].Text)
			if len(it.scores) == 0 { // nothing lies near it: the table of units is left
				it.scores = x.word("units", nil, false, &Answer{}).scores
			}
			items = append(items, it)
			continue
		}
		if n := x.phraseAt(q[i:]); n > 1 {
			items = append(items, x.phrase(query[q[i].Start:q[i+n-1].End], q[i:i+n], a))
			i += n - 1
			continue
		}
		if stopped[q[i].Text] {
			continue
		}
		var joined []string
		if isWord(i - 1) {
			joined = append(joined, q[i-1].Text+q[i].Text)
		}
		if isWord(i + 1) {
			joined = append(joined, q[i].Text+q[i+1].Text)
		}
		open := i == len(q)-1 && q[i].End == len(query)
		items = append(items, x.word(q[i].Text, joined, open, a))
	}
	if namesTarget(query) { // asks for the table of units too
		items = append(items, x.word("units", nil, false, &Answer{}))
	}
	return items
}

// add raises an item's score for each entry of a posting list to a share of
// what the list says.
func (x *Index) add(it item, term string, percent int) {
	for _, p := range x.posts[term] {
		it.scores[p.entry] = max(it.scores[p.entry], p.score*percent/100)
	}
}

// amount looks for the same quantity in any unit, the nearer the better.
func (x *Index) amount(typed, term string) item {
	it := item{typed: typed, scores: map[int]int{}, amount: true}
	kind, step := splitQuantity(term)
	x.around(it, kind, step)
	if _, m, _, _ := valueAt(fold(typed), 0); m.shown == pounds { // perhaps a basis weight, of which it does not say
		for _, basis := range bases {
			b := measureAs(basis)
			x.around(it, b.kind, step+shift(b.factor)-shift(measureAs(pounds).factor))
		}
	}
	return it
}

// around adds the entries with a quantity and with those near it; where there
// are none it looks further, to twice the reach, then four and eight times.
func (x *Index) around(it item, kind string, step int) {
	had := len(it.scores)
	for far := reach(kind); far <= 8*reach(kind) && len(it.scores) == had; far *= 2 {
		for d := -far; d <= far; d++ {
			x.add(it, quantityTerm(kind, step+d), 100-byFar*max(d, -d)/far)
		}
	}
}

// shift is how many steps a unit's factor moves a ratio by.
func shift(factor float64) int { return int(math.Floor(math.Log(factor)*ratioSteps + 0.5)) }

// phraseAt is how many of the next words together name a group: the most that
// do, or 0.
func (x *Index) phraseAt(q []Token) int {
	n := 0
	for n < len(q) && n < x.longest && q[n].Kind == Word {
		n++
	}
	run := wordRun(q[:n])
	for ; n > 1; n-- {
		if len(x.members[strings.Join(run[:n], " ")]) > 0 {
			return n
		}
	}
	return 0
}

// phrase looks for the groups that several words name together, and for
// entries that have all of the words anyway.
func (x *Index) phrase(typed string, q []Token, a *Answer) item {
	it := item{typed: typed, scores: map[int]int{}}
	for _, m := range x.members[strings.Join(wordRun(q), " ")] {
		x.add(it, groupTerm(m.group), byWord)
		if m.how == misspelt {
			a.Read = append(a.Read, Reading{Typed: typed, Read: x.heads[m.group]})
		}
	}
	sums, have, words := map[int]int{}, map[int]int{}, 0
	for _, t := range q {
		if stopped[t.Text] {
			continue
		}
		words++
		for _, p := range x.posts[stem(t.Text)] {
			sums[p.entry] += p.score * byHalf / 100
			have[p.entry]++
		}
	}
	for e, sum := range sums {
		if it.scores[e] > 0 || have[e] == words {
			it.scores[e] += sum
		}
	}
	return it
}

// word looks for one word in every way that leads somewhere.
func (x *Index) word(w string, joined []string, open bool, a *Answer) item {
	it := item{typed: w, scores: map[int]int{}}
	x.exact(it, w, w, a)
	for _, j := range joined {
		x.add(it, stem(j), byJoined)
	}
	if open || len(it.scores) == 0 {
		x.prefix(it, w)
	}
	if len(it.scores) > 0 || isDigit(rune(w[0])) || x.split(it, w, a) {
		return it
	}
	near := x.nearest(w, slack(w), false)
	if len(near) == 0 && open && len([]rune(w)) > 4 {
		near = x.nearest(w, slack(w), true)
	}
	if len(near) > 0 {
		x.exact(it, near[0], w, a)
		if len(a.Read) == 0 || a.Read[len(a.Read)-1].Typed != w {
			a.Read = append(a.Read, Reading{Typed: w, Read: near[0]})
		}
		last := &a.Read[len(a.Read)-1]
		last.Or = x.offers(near, last.Read)
	}
	return it
}

// prefix takes a word as the beginning of others.
func (x *Index) prefix(it item, w string) {
	if len([]rune(w)) < 2 {
		return
	}
	from, _ := slices.BinarySearch(x.words, w)
	for _, longer := range x.words[from:] {
		if !strings.HasPrefix(longer, w) {
			break
		}
		x.add(it, stem(longer), byPrefix)
		for _, m := range x.members[stem(longer)] {
			x.add(it, groupTerm(m.group), byFar)
		}
	}
}

// exact takes a word as it stands: its own entries, and those of its groups,
// which count fully when the word is a wrong spelling or stands nowhere itself.
func (x *Index) exact(it item, w, typed string, a *Answer) {
	s := stem(w)
	x.add(it, s, byWord)
	for _, m := range x.members[s] {
		if m.how == misspelt {
			a.Read = append(a.Read, Reading{Typed: typed, Read: x.heads[m.group]})
		}
		if m.how == misspelt || len(x.posts[s]) == 0 {
			x.add(it, groupTerm(m.group), byWord)
		} else {
			x.add(it, groupTerm(m.group), byGroup)
		}
	}
}

// split reads an unknown word as two known ones: layflat, lay flat.
func (x *Index) split(it item, w string, a *Answer) bool {
	runes := []rune(w)
	for k := 3; k <= len(runes)-3; k++ {
		left, right := string(runes[:k]), string(runes[k:])
		for _, p := range x.posts[stem(left)] {
			for _, r := range x.posts[stem(right)] {
				if p.entry == r.entry {
					it.scores[p.entry] = min(p.score, r.score)
				}
			}
		}
		if len(it.scores) > 0 {
			a.Read = append(a.Read, Reading{Typed: w, Read: left + " " + right})
			return true
		}
	}
	return false
}

// nearest lists the known words with the fewest typing errors from a typed one,
// those in more entries first.
func (x *Index) nearest(w string, most int, prefix bool) []string {
	type candidate struct {
		word string
		uses int
	}
	var best []candidate
	least := most
	for _, known := range x.words {
		if isDigit(rune(known[0])) {
			continue
		}
		d := distance(w, known, least, prefix)
		if d > least || most == 0 {
			continue
		}
		uses := len(x.posts[stem(known)])
		for _, m := range x.members[stem(known)] {
			uses += len(x.posts[groupTerm(m.group)])
		}
		if uses == 0 {
			continue
		}
		if d < least {
			best, least = nil, d
		}
		best = append(best, candidate{known, uses})
	}
	slices.SortStableFunc(best, func(a, b candidate) int { return b.uses - a.uses })
	var words []string
	for _, c := range best {
		words = append(words, c.word)
	}
	return words
}

// offers names up to three words to offer, apart from the one read already: a
// wrong spelling by its group's word, and one of each that differ in the ending.
func (x *Index) offers(near []string, read string) []string {
	var out []string
	seen := map[string]bool{stem(read): true}
	for _, w := range near {
		for _, m := range x.members[stem(w)] {
			if m.how == misspelt {
				w = x.heads[m.group]
			}
		}
		if s := stem(w); !seen[s] && len(out) < 3 {
			out = append(out, w)
			seen[s] = true
		}
	}
	return out
}

// rank puts the entries with most items first, then those with most points, to which
// those whose whole name was typed add a share. It leaves out entries that lack an item if
// others have all, and those that have less than half of what the best one has. In a
// sentence points count with the square of the number of items, half as much again where
// none is lacking, and an entry may lack some.
func (x *Index) rank(items []item, named []int, most int) (hits []Hit, all bool) {
	count, score := make([]int, len(x.entries)), make([]int, len(x.entries))
	best := 0
	for _, it := range items {
		for e, s := range it.scores {
			count[e]++
			score[e] += s
			best = max(best, count[e])
		}
	}
	if best == 0 {
		return nil, false
	}
	for _, e := range named {
		score[e] += scale * wholeName
	}
	all = best == len(items)
	long := len(items) >= sentence
	worth := func(e int) int {
		if long {
			points := score[e] * count[e] * count[e]
			if count[e] == len(items) {
				points += points / 2
			}
			return points
		}
		return score[e]
	}
	for e, x := range x.entries {
		if count[e] == best || (long || !all) && count[e] > 0 && 2*count[e] >= best {
			hits = append(hits, Hit{Entry: e, URL: x.URL, Title: x.Title, Score: worth(e)})
		}
	}
	slices.SortStableFunc(hits, func(a, b Hit) int {
		if long {
			return b.Score - a.Score
		}
		return cmp.Or(count[b.Entry]-count[a.Entry], b.Score-a.Score)
	})
	return hits[:min(len(hits), max(most, 0))], all
}
