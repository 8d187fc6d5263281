package shop

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"gopkg.in/yaml.v3"
)

// longestID is the most letters that an id may have: it becomes a file's name.
const longestID = 60

var goodID = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// word reads a text, or one of the words that a field allows.
func (r *reader) word(n *yaml.Node, f field) (string, bool) {
	if n.Kind != yaml.ScalarNode {
		r.say(n, "%s is %s: write a single text", f.key, shape(n))
		return "", false
	}
	text := strings.TrimSpace(n.Value)
	switch {
	case text == "":
		r.say(n, "%s is empty: write a text, or leave it out", f.key)
		return "", false
	case strings.ContainsFunc(text, func(c rune) bool { return unicode.IsControl(c) && c != '\n' && c != '\t' }):
		r.say(n, "%s holds a character that cannot be seen: delete it and type the text again", f.key)
		return "", false
	case f.id && !isID(text):
		r.say(n, "%s is not an id: write lower-case letters, digits and hyphens only (at most %d), such as %s", quote(text), longestID, idFrom(text))
		return text, true // kept, so that what refers to it is not reported too
	case f.date && !isDay(text):
		r.say(n, "%s %s is not a day: write year-month-day, such as 2026-11-20", f.key, quote(text))
		return "", false
	}
	if len(f.words) == 0 {
		return text, true
	}
	for _, w := range f.words {
		if w == text {
			return text, true
		}
	}
	r.say(n, "%s cannot be %s: write one of %s%s", f.key, quote(text), list(f.words), maybe(r.l.suggest(text, f.words)))
	return "", false
}

// isID says whether a text can be a record's id.
func isID(text string) bool {
	return len(text) <= longestID && goodID.MatchString(text)
}

// idFrom makes an example of an id out of what somebody wrote for one.
func idFrom(text string) string {
	words := strings.FieldsFunc(strings.ToLower(text), func(c rune) bool {
		return !(c >= 'a' && c <= 'z' || c >= '0' && c <= '9')
	})
	if id := strings.Join(words, "-"); isID(id) {
		return id
	}
	return "gloss-75"
}

// ref reads the id of another record, and remembers that it is used here.
func (r *reader) ref(n *yaml.Node, f field) Ref {
	ref := Ref{Pos: r.place(n)}
	if n.Kind != yaml.ScalarNode || strings.TrimSpace(n.Value) == "" {
		r.say(n, "%s is %s: write the id of %s", f.key, shape(n), a(kindName(f.to)))
		return ref
	}
	ref.ID = strings.TrimSpace(n.Value)
	r.refs = append(r.refs, use{kind: f.to, id: ref.ID, pos: ref.Pos})
	return ref
}

// yes reads true or false.
func (r *reader) yes(n *yaml.Node, f field) bool {
	switch {
	case n.Kind == yaml.ScalarNode && n.Value == "true":
		return true
	case n.Kind == yaml.ScalarNode && n.Value == "false":
		return false
	}
	r.say(n, "%s is %s: write true or false", f.key, shape(n))
	return false
}

// bare reads a number that has no unit.
func (r *reader) bare(n *yaml.Node, f field) float64 {
	number, err := strconv.ParseFloat(n.Value, 64)
	if n.Kind != yaml.ScalarNode || err != nil || math.IsNaN(number) || math.IsInf(number, 0) {
		r.say(n, "%s is %s: write a number without a unit, such as 22.4", f.key, shape(n))
		return 0
	}
	if f.positive && number <= 0 {
		r.say(n, "%s is %s: write a number above 0, or take it out", f.key, strings.TrimSpace(n.Value))
		return 0
	}
	return number
}
