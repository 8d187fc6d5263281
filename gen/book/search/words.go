package search

import (
	"bytes"
	"errors"
	"fmt"
	"io"
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
	Source   string   // where the meaning is from
	Line     int      // in the file it was read from
}

// Words is the glossary.
type Words struct{ Terms []Term }

// ReadWords reads a file of words:
//
//	words:
//	  - term: silvering
//	    meaning: Tiny bright points …
//	    also: [silver specks, frost]
//	    misspelt: [silverring]
//	    near: [mirror]
//	    source: common practice, no source
//
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
		"words": func(n *yaml.Node) {
			if n.Kind != yaml.SequenceNode {
				r.problem(n, "words must be a list")
				return
			}
			for _, item := range n.Content {
				words.Terms = append(words.Terms, r.term(item))
			}
		},
	}, "words")
	seen := map[string]int{}
	for _, t := range words.Terms {
		if first, ok := seen[t.Term]; ok && t.Term != "" {
			r.problem(&yaml.Node{Line: t.Line, Column: 1}, "term %q stands already in line %d", t.Term, first)
		}
		seen[t.Term] = t.Line
	}
	return words, errors.Join(r.problems...)
}

// With returns the words with those of a shop's own file: a term of the same
// name takes the place of ours, others follow.
func (w Words) With(own Words) Words {
	at := map[string]int{}
	out := Words{append([]Term(nil), w.Terms...)}
	for i, t := range out.Terms {
		at[t.Term] = i
	}
	for _, t := range own.Terms {
		if i, ok := at[t.Term]; ok {
			out.Terms[i] = t
		} else {
			out.Terms = append(out.Terms, t)
		}
	}
	return out
}

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

func (r *reader) term(n *yaml.Node) Term {
	t := Term{Line: n.Line}
	text := func(to *string) func(*yaml.Node) {
		return func(n *yaml.Node) { *to = r.text(n) }
	}
	list := func(to *[]string) func(*yaml.Node) {
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
	r.mapping(n, map[string]func(*yaml.Node){
		"term": text(&t.Term), "meaning": text(&t.Meaning), "source": text(&t.Source),
		"also": list(&t.Also), "misspelt": list(&t.Misspelt), "near": list(&t.Near),
	}, "term", "meaning", "source")
	return t
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
