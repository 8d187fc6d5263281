package search

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// Term is one word of the glossary with everything that people call it.
type Term struct {
	Term     string
	Meaning  string
	Also     []string // other names of the same thing: each finds the others
	Misspelt []string // wrong spellings: each is read as the term
	Near     []string // words that should lead here too, though they mean more, or less
	See      []Place  // where the handbook answers: the first that it has
	Beside   []string // terms to read this one beside
	Source   string   // where the meaning is from
	Pos      Pos      // where it was written
}

// Place is an address in the handbook, such as chapters/storage.html#tight-roll,
// and where it was written.
type Place struct {
	Address string
	Pos     Pos
}

// Pos is a place in a file of words.
type Pos struct {
	File      string
	Line, Col int
}

// Hazard is what must come first where a query sounds as if somebody were in
// danger.
type Hazard struct {
	Title string
	Say   string // what to do now
	Ask   []string
	Alone []string
	See   []Place
	Pos   Pos
}

// Question is what people ask in words that the place with the answer has not.
type Question struct {
	Ask []string
	See []Place
	Pos Pos
}

// Words is the glossary, the hazards that go before it, and what else people
// ask.
type Words struct {
	Terms     []Term
	Hazards   []Hazard
	Questions []Question
}

// ReadWords reads a file of words:
//
//	words:
//	  - term: silvering
//	    meaning: Tiny bright points …
//	    also: [silver specks, frost]
//	    misspelt: [silverring]
//	    near: [mirror]
//	    see: [chapters/storage.html#tight-roll, materials/index.html]
//	    beside: [haze]
//	    source: common practice, no source
//
//	hazards:
//	  - title: Burn
//	    say: Cool it under running water …
//	    ask: [burn, scald]     words and phrases that call for it anywhere
//	    alone: [hot roller]    the same, as the whole query only
//	    see: [chapters/safety.html#burn]
//	questions:
//	  - ask: [add a film, new film]
//	    see: [chapters/data.html#film]
//
// A term, its other names and its wrong spellings belong to one term only.
// The error lists every problem, one a line, as name:line:column: message.
func ReadWords(name string, data []byte) (Words, error) {
	r := reader{name: name}
	var doc yaml.Node
	dec := yaml.NewDecoder(bytes.NewReader(data))
	if err := dec.Decode(&doc); err != nil && err != io.EOF {
		// yaml.v3 names the line only: "yaml: line 3: …"
		line, message := 1, strings.TrimPrefix(err.Error(), "yaml: ")
		if n, _ := fmt.Sscanf(message, "line %d:", &line); n == 1 {
			_, message, _ = strings.Cut(message, ": ")
		}
		return Words{}, fmt.Errorf("%s:%d:1: %s", name, line, message)
	}
	if len(doc.Content) == 0 {
		return Words{}, fmt.Errorf("%s:1:1: empty: want a list under the key words", name)
	}
	var second yaml.Node
	if err := dec.Decode(&second); err == nil {
		r.problem(&second, "a second document begins here; want one")
	}
	var words Words
	r.mapping(doc.Content[0], map[string]func(*yaml.Node){
		"words":     r.each("words", func(n *yaml.Node) { words.Terms = append(words.Terms, r.term(n)) }),
		"hazards":   r.each("hazards", func(n *yaml.Node) { words.Hazards = append(words.Hazards, r.hazard(n)) }),
		"questions": r.each("questions", func(n *yaml.Node) { words.Questions = append(words.Questions, r.question(n)) }),
	}, "words")
	r.unique(words.Terms)
	return words, errors.Join(r.problems...)
}

// each hands the items of a list on, one by one.
func (r *reader) each(name string, read func(*yaml.Node)) func(*yaml.Node) {
	return func(n *yaml.Node) {
		if n.Kind != yaml.SequenceNode {
			r.problem(n, "%s must be a list", name)
			return
		}
		for _, item := range n.Content {
			read(item)
		}
	}
}

// unique reports names that two terms have.
func (r *reader) unique(terms []Term) {
	owner := map[string]Term{}
	for _, t := range terms {
		for _, name := range t.names() {
			key := nameKey(name)
			first, taken := owner[key]
			switch {
			case !taken:
				owner[key] = t
			case first.Pos == t.Pos:
			case name == t.Term && name == first.Term:
				r.problem(t.Pos.node(), "term %q stands already in line %d", name, first.Pos.Line)
			default:
				r.problem(t.Pos.node(), "term %q: %q is a name of %q too, in line %d", t.Term, name, first.Term, first.Pos.Line)
			}
		}
	}
}

// names are the term, its other names and its wrong spellings.
func (t Term) names() []string {
	return append(append([]string{t.Term}, t.Also...), t.Misspelt...)
}

// nameKey is what two spellings of one name have in common.
func nameKey(name string) string {
	var parts []string
	for _, t := range Tokens(name) {
		if t.Kind == Word {
			parts = append(parts, t.Text)
		}
	}
	return strings.Join(parts, " ")
}

// With returns the words with those of a shop's own file: a term of the same
// name takes the place of ours, others follow, and a name that the shop gives
// to one of its terms is no longer a name of ours. Hazards go by their titles;
// the shop's questions come before ours.
func (w Words) With(own Words) Words {
	taken := map[string]bool{}
	at := map[string]Term{}
	for _, t := range own.Terms {
		at[t.Term] = t
		for _, name := range t.names() {
			taken[nameKey(name)] = true
		}
	}
	var out Words
	ours := map[string]bool{}
	for _, t := range w.Terms {
		ours[t.Term] = true
		if theirs, ok := at[t.Term]; ok {
			out.Terms = append(out.Terms, theirs)
			continue
		}
		if taken[nameKey(t.Term)] {
			continue
		}
		t.Also, t.Misspelt = without(t.Also, taken), without(t.Misspelt, taken)
		out.Terms = append(out.Terms, t)
	}
	for _, t := range own.Terms {
		if !ours[t.Term] {
			out.Terms = append(out.Terms, t)
		}
	}
	for _, h := range w.Hazards {
		if !slices.ContainsFunc(own.Hazards, func(o Hazard) bool { return o.Title == h.Title }) {
			out.Hazards = append(out.Hazards, h)
		}
	}
	out.Hazards = append(out.Hazards, own.Hazards...)
	out.Questions = append(append(out.Questions, own.Questions...), w.Questions...)
	return out
}

// without leaves out the names that are taken.
func without(names []string, taken map[string]bool) []string {
	var left []string
	for _, name := range names {
		if !taken[nameKey(name)] {
			left = append(left, name)
		}
	}
	return left
}

// Unknown lists what stands under beside and is no term, as
// file:line:column: message.
func (w Words) Unknown() []string {
	known := map[string]bool{}
	for _, t := range w.Terms {
		known[t.Term] = true
	}
	var out []string
	for _, t := range w.Terms {
		for _, name := range t.Beside {
			if known[name] && name != t.Term {
				continue
			}
			message := fmt.Sprintf("%s:%d:%d: term %q: beside names %q, which is no other term here", t.Pos.File, t.Pos.Line, t.Pos.Col, t.Term, name)
			if near := w.nearestTerm(name); near != "" && near != t.Term {
				message += fmt.Sprintf(": did you mean %q?", near)
			}
			out = append(out, message)
		}
	}
	return out
}

// nearestTerm is the term with the fewest typing errors from a name, at most
// two; "" where there is none.
func (w Words) nearestTerm(name string) string {
	best, least := "", 2
	for _, t := range w.Terms {
		if d := distance(name, t.Term, least, false); d < least || d == least && best == "" {
			best, least = t.Term, d
		}
	}
	return best
}

// node is the place as a node, to report a problem there.
func (p Pos) node() *yaml.Node { return &yaml.Node{Line: p.Line, Column: p.Col} }

// reader collects problems with their places.
type reader struct {
	name     string
	problems []error
}

func (r *reader) problem(n *yaml.Node, format string, args ...any) {
	r.problems = append(r.problems, fmt.Errorf("%s:%d:%d: %s", r.name, n.Line, n.Column, fmt.Sprintf(format, args...)))
}

// mapping hands each value of a mapping to the function for its key and
// reports unknown, repeated and missing keys.
func (r *reader) mapping(n *yaml.Node, keys map[string]func(*yaml.Node), required ...string) {
	if n.Kind != yaml.MappingNode {
		r.problem(n, "want a mapping with the key %s", strings.Join(required, ", "))
		return
	}
	seen := map[string]bool{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		key := n.Content[i]
		read, ok := keys[key.Value]
		switch {
		case !ok:
			r.problem(key, "unknown key %q", key.Value)
		case seen[key.Value]:
			r.problem(key, "key %q is given twice", key.Value)
		default:
			read(n.Content[i+1])
		}
		seen[key.Value] = true
	}
	for _, key := range required {
		if !seen[key] {
			r.problem(n, "the key %q is missing", key)
		}
	}
}

// into reads a text to where it belongs.
func (r *reader) into(to *string) func(*yaml.Node) {
	return func(n *yaml.Node) { *to = r.text(n) }
}

// listInto reads a list of texts to where it belongs.
func (r *reader) listInto(to *[]string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		if n.Kind != yaml.SequenceNode {
			r.problem(n, "want a list, such as [frost, glitter]")
			return
		}
		for _, item := range n.Content {
			*to = append(*to, r.text(item))
		}
	}
}

func (r *reader) term(n *yaml.Node) Term {
	t := Term{Pos: Pos{r.name, n.Line, n.Column}}
	r.mapping(n, map[string]func(*yaml.Node){
		"term": r.into(&t.Term), "meaning": r.into(&t.Meaning), "source": r.into(&t.Source),
		"also": r.listInto(&t.Also), "misspelt": r.listInto(&t.Misspelt), "near": r.listInto(&t.Near), "beside": r.listInto(&t.Beside),
		"see": func(n *yaml.Node) { t.See = r.places(n) },
	}, "term", "meaning", "source")
	return t
}

func (r *reader) hazard(n *yaml.Node) Hazard {
	h := Hazard{Pos: Pos{r.name, n.Line, n.Column}}
	r.mapping(n, map[string]func(*yaml.Node){
		"title": r.into(&h.Title), "say": r.into(&h.Say), "ask": r.listInto(&h.Ask), "alone": r.listInto(&h.Alone),
		"see": func(n *yaml.Node) { h.See = r.places(n) },
	}, "title", "say", "ask", "see")
	return h
}

func (r *reader) question(n *yaml.Node) Question {
	q := Question{Pos: Pos{r.name, n.Line, n.Column}}
	r.mapping(n, map[string]func(*yaml.Node){
		"ask": func(n *yaml.Node) {
			r.listInto(&q.Ask)(n)
			if n.Kind == yaml.SequenceNode && len(n.Content) == 0 {
				r.problem(n, "want at least one")
			}
		},
		"see": func(n *yaml.Node) { q.See = r.places(n) },
	}, "ask", "see")
	return q
}

// places reads a list of addresses.
func (r *reader) places(n *yaml.Node) []Place {
	if n.Kind != yaml.SequenceNode {
		r.problem(n, "want a list of addresses, such as [chapters/storage.html#tight-roll]")
		return nil
	}
	var out []Place
	for _, item := range n.Content {
		page, _, _ := strings.Cut(item.Value, "#")
		if item.Kind != yaml.ScalarNode || !strings.HasSuffix(page, ".html") || strings.ContainsAny(item.Value, " :?\\") || strings.HasPrefix(page, "/") || strings.Contains(page, "..") {
			r.problem(item, "want the address of a page from the handbook's folder, such as chapters/storage.html#tight-roll, not %q", item.Value)
			continue
		}
		out = append(out, Place{item.Value, Pos{r.name, item.Line, item.Column}})
	}
	return out
}

// text reads one text that has at least one letter or figure to look up.
func (r *reader) text(n *yaml.Node) string {
	if n.Kind != yaml.ScalarNode {
		r.problem(n, "want a text")
		return ""
	}
	s := strings.Join(strings.Fields(n.Value), " ")
	if len(Tokens(s)) == 0 {
		r.problem(n, "want a text with a word in it, not %q", n.Value)
	}
	return s
}
