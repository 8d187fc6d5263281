package search

import (
	"slices"
	"strings"
)

// mostBoxes is how many direct answers a query may have.
const mostBoxes = 4

// ask is one question that facts answer, with the words it is put in. A fact
// about one thing answers only where one of the asking words stands; about two
// things, their names are question enough.
type ask struct {
	key     string
	asking  []string
	filling []string
}

// asks are the questions there are.
var asks = []ask{
	{"wait", strings.Fields("wait waiting dry drying hours long outgas outgassing degas cure curing ready when before until soon"),
		strings.Fields("time times print printed printing laminate laminating lamination laminated lam film after need needed must hour day days now cover over first coverage normal light heavy hung hang hanging room")},
	{"window", strings.Fields("temp temps temperature temperatures heat hot window windows setting settings degrees dial warm set"),
		strings.Fields("roller rollers laminate laminating lamination lam film run running at need needed must print printed cover over speed range max min best right")},
}

// fact is a fact with the stems of what it is about.
type fact struct {
	Fact
	ask ask
}

// thing is a thing with the stems of its names.
type thing struct {
	Thing
	stems map[string]bool // every word in its names
	names map[string]bool // each name, its stems parted by spaces
	sizes map[string]bool // the quantities in its names, as terms: 75 µm, 300 g/m²
}

func newThing(t Thing) thing {
	out := thing{t, map[string]bool{}, map[string]bool{}, map[string]bool{}}
	for _, name := range append([]string{t.Name}, t.Names...) {
		var stems []string
		for _, tok := range Tokens(name) {
			if tok.Kind == Amount {
				out.sizes[tok.Text] = true
				continue
			}
			out.stems[stem(tok.Text)] = true
			if tok.Kind == Word {
				stems = append(stems, stem(tok.Text))
			}
		}
		out.names[strings.Join(stems, " ")] = true
	}
	return out
}

// answers are the facts that a query asks for: those whose things account for
// the most of its words, and for all of them together with the words in which
// such a question is put.
// A size that was typed chooses among things that differ by it.
func (x *Index) answers(words, sizes []string) []Box {
	var run []string
	for _, w := range words {
		if !stopped[w] {
			run = append(run, stem(w))
		}
	}
	var best []Box
	most := 0
	for _, f := range x.facts {
		score := x.answerScore(f, run)
		if score == 0 {
			continue
		}
		for _, i := range f.About {
			score += 3 * x.things[i].sizesIn(sizes)
		}
		if score < most {
			continue
		}
		if score > most {
			best, most = nil, score
		}
		box := f.Box
		if box.What == "" {
			box.What = x.about(f)
		}
		best = append(best, box)
	}
	return best[:min(len(best), mostBoxes)]
}

// about names the things of a fact.
func (x *Index) about(f fact) string {
	var names []string
	for _, i := range f.About {
		names = append(names, x.things[i].Name)
	}
	return strings.Join(names, " on ")
}

// answerScore is how well a fact answers a query, 0 for not at all.
func (x *Index) answerScore(f fact, run []string) int {
	var by [][]bool
	exact := 0
	for _, i := range f.About {
		t := x.things[i]
		mine := make([]bool, len(run))
		for k, w := range run {
			mine[k] = t.stems[w]
		}
		if !slices.Contains(mine, true) {
			return 0
		}
		by = append(by, mine)
		exact += t.longestName(run)
	}
	if len(by) == 2 && (!apart(by[0], by[1]) || !apart(by[1], by[0])) {
		return 0
	}
	asked, named := false, 0
	for k, w := range run {
		covered := by[0][k] || by[len(by)-1][k]
		switch {
		case f.ask.asks(w):
			asked = true
		case covered:
			named++
		case !f.ask.fills(w):
			return 0
		}
	}
	if len(f.About) == 1 && !asked {
		return 0
	}
	if len(by) == 2 {
		named = max(inTurn(by[0], by[1]), inTurn(by[1], by[0]))
	}
	score := 4*named + 2*exact
	if asked {
		score++
	}
	return score
}

// inTurn is how many words name the two things where all words up to some
// place are taken to name the first, and the others the second.
func inTurn(first, second []bool) int {
	sum := 0
	for _, has := range second {
		if has {
			sum++
		}
	}
	best := sum
	for k := range first {
		if first[k] {
			sum++
		}
		if second[k] {
			sum--
		}
		best = max(best, sum)
	}
	return best
}

// apart says whether one thing has a word that the other has not.
func apart(one, other []bool) bool {
	for k := range one {
		if one[k] && !other[k] {
			return true
		}
	}
	return false
}

// longestName is how many words of the query in a row are one of the thing's
// names.
func (t thing) longestName(run []string) int {
	for n := len(run); n > 0; n-- {
		for i := 0; i+n <= len(run); i++ {
			if t.names[strings.Join(run[i:i+n], " ")] {
				return n
			}
		}
	}
	return 0
}

// sizesIn is how many of some quantities lie near one of the thing's.
func (t thing) sizesIn(sizes []string) int {
	n := 0
	for _, size := range sizes {
		kind, step := splitQuantity(size)
		for own := range t.sizes {
			k, s := splitQuantity(own)
			if k == kind && max(s-step, step-s) <= reach(kind) {
				n++
				break
			}
		}
	}
	return n
}

func (a ask) asks(stemmed string) bool  { return inStems(a.asking, stemmed) }
func (a ask) fills(stemmed string) bool { return inStems(a.filling, stemmed) }

func inStems(words []string, stemmed string) bool {
	return slices.ContainsFunc(words, func(w string) bool { return stem(w) == stemmed })
}
