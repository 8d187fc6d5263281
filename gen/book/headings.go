package book

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"github.com/yuin/goldmark/ast"
)

// headingIDs makes the ids of headings that have none of their own. Both
// micro signs become u, accents and signs fall away, and what is left of other
// scripts counts as "section".
type headingIDs struct{ used map[string]bool }

// Generate gives an id that is not in use.
func (h headingIDs) Generate(value []byte, _ ast.NodeKind) []byte {
	base := slug(string(value))
	id := base
	for n := 2; h.used[id]; n++ {
		id = base + "-" + strconv.Itoa(n)
	}
	h.used[id] = true
	return []byte(id)
}

// Put notes an id that the author has given.
func (h headingIDs) Put(value []byte) { h.used[string(value)] = true }

// slug makes an id out of a text.
func slug(text string) string {
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(text) {
		switch {
		case r == 'µ' || r == 'μ':
			r = 'u'
		case r == '°' || r == '\'' || r == '’':
			continue
		}
		if r < unicode.MaxASCII && (unicode.IsLetter(r) || unicode.IsDigit(r)) {
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			gap = false
			b.WriteRune(r)
		} else {
			gap = true
		}
	}
	if b.Len() == 0 {
		return "section"
	}
	return b.String()
}

// heading is a heading of a chapter, for the list of what is in it.
type heading struct {
	Level int
	ID    string
	Text  string
}

// checkHeading looks at one heading's attributes, level and id.
func (r *reader) checkHeading(n *ast.Heading, last int, src []byte) {
	here := r.at(n)
	for _, a := range n.Attributes() {
		if name := string(a.Name); name != "id" {
			r.problems.add(here, fmt.Sprintf("a heading may be given an id and nothing else, not %s", name))
		}
	}
	if n.Level == 1 {
		r.problems.add(here, "a heading of the first level: the chapter's title is that, begin with ##")
	} else if n.Level > last+1 {
		r.problems.add(here, fmt.Sprintf("a heading of level %d under one of level %d: a level is left out", n.Level, last))
	}
	id := attribute(n, "id")
	if id == "" {
		return
	}
	if id != slug(id) {
		r.problems.add(here, fmt.Sprintf("the id %q: use small letters, digits and single hyphens", id))
	}
	if r.ids[id] {
		r.problems.add(here, fmt.Sprintf("the id %q is used twice in this chapter", id))
	}
	r.ids[id] = true
	r.headings = append(r.headings, heading{n.Level, id, plainText(n, src)})
}

func attribute(n ast.Node, name string) string {
	v, ok := n.AttributeString(name)
	if !ok {
		return ""
	}
	switch v := v.(type) {
	case []byte:
		return string(v)
	case string:
		return v
	}
	return ""
}

// plainText is the text of a node without its marks.
func plainText(n ast.Node, src []byte) string {
	var b strings.Builder
	_ = ast.Walk(n, func(n ast.Node, in bool) (ast.WalkStatus, error) {
		if !in {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Text:
			b.Write(n.Segment.Value(src))
			if n.SoftLineBreak() || n.HardLineBreak() {
				b.WriteByte(' ')
			}
		case *ast.String:
			b.Write(n.Value)
		}
		return ast.WalkContinue, nil
	})
	return b.String()
}
