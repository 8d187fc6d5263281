package book

import (
	"bytes"
	"fmt"
	"html/template"
	"strings"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"laydown/gen/shop"
)

// insert is a mark in a chapter's text in whose place the handbook sets
// something of the data:
//
//	{value film thermal-pet-gloss-75 heat_limit}   a quantity, in both units
//	{source practice}                              where the figures beside it are from
type insert struct {
	ast.BaseInline
	words []string // between the braces; none where the mark does not end on its line
	html  template.HTML
}

var insertKind = ast.NewNodeKind("Insert")

// Kind is the node's kind.
func (n *insert) Kind() ast.NodeKind { return insertKind }

// Dump writes the node for those who debug the parser.
func (n *insert) Dump(source []byte, level int) {
	ast.DumpHelper(n, source, level, map[string]string{"Words": strings.Join(n.words, " ")}, nil)
}

// insertParser reads marks in braces. A brace before anything but a small
// letter is text.
type insertParser struct{}

// Trigger is the byte that a mark begins with.
func (insertParser) Trigger() []byte { return []byte{'{'} }

// Parse reads one mark.
func (insertParser) Parse(_ ast.Node, block text.Reader, _ parser.Context) ast.Node {
	line, at := block.PeekLine()
	if len(line) < 2 || line[1] < 'a' || line[1] > 'z' {
		return nil
	}
	n := &insert{}
	n.SetPos(at.Start)
	end := bytes.IndexByte(line, '}')
	if end < 0 {
		block.Advance(1)
		return n
	}
	n.words = strings.Fields(string(line[1:end]))
	block.Advance(end + 1)
	return n
}

func renderInsert(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		_, _ = w.WriteString(string(n.(*insert).html))
	}
	return ast.WalkContinue, nil
}

// insert finds what a mark stands for, and reports a mark that stands for
// nothing.
func (r *reader) insert(n *insert) {
	for above := n.Parent(); above != nil; above = above.Parent() {
		if above.Kind() == ast.KindHeading {
			r.problems.add(r.at(n), "a mark in braces in a heading: put it in the text below")
			return
		}
	}
	var err error
	switch {
	case len(n.words) == 0:
		err = fmt.Errorf("a mark in braces ends on its own line, with }")
	case n.words[0] == "value" && len(n.words) == 4:
		n.html, err = r.data.value(n.words[1], n.words[2], n.words[3])
	case n.words[0] == "source" && len(n.words) == 2:
		n.html, err = r.data.mark(n.words[1])
	default:
		err = fmt.Errorf("{%s}: a text takes {value kind id field} and {source id}; other braces belong in code marks", strings.Join(n.words, " "))
	}
	if err != nil {
		r.problems.add(r.at(n), err.Error())
	}
}

// value sets a quantity of the data into a text, with a link to its record's
// page, or to its source where the record has no page.
func (b *builder) value(kind, id, field string) (template.HTML, error) {
	q, err := b.shop.Quote(kind, id, field)
	if err != nil {
		return "", err
	}
	said := template.HTMLEscapeString(quoted(q))
	folder, ok := recordPages[kind]
	switch {
	case ok:
		return template.HTML(`<a class="num" href="/materials/` + folder + `/` + id + `.html">` + said + `</a>`), nil
	case b.source(q.Source) != nil:
		return template.HTML(`<a class="num" href="/sources.html#` + template.HTMLEscapeString(q.Source) + `">` + said + `</a>`), nil
	}
	return template.HTML(said), nil
}

// quoted writes a quantity, or a range from end to end, in both unit systems.
func quoted(q shop.Quoted) string {
	first, second := q.Low.Metric, q.Low.Imperial
	if q.High != q.Low {
		first, second = spread(q.Low.Metric, q.High.Metric), spread(q.Low.Imperial, q.High.Imperial)
	}
	if q.Low.Imperial == "" {
		return first
	}
	return first + " (" + second + ")"
}

// recordPages are the folders of the pages that records have.
var recordPages = map[string]string{"ink": "inks", "medium": "media", "film": "films", "laminator": "laminators", "room": "rooms"}

// mark sets the mark of a source into a text: its kind in a word, with a link
// to the list of sources.
func (b *builder) mark(id string) (template.HTML, error) {
	s := b.source(id)
	if s == nil {
		return "", fmt.Errorf("no source is called %q: see the list under Sources of the data", id)
	}
	e := template.HTMLEscapeString
	return template.HTML(`<cite class="from"><a href="/sources.html#` + e(s.ID) + `" title="` + e(s.Title) + `">` + e(s.Word) + `</a></cite>`), nil
}
