package book

import (
	"bytes"
	"html/template"
	"strconv"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"laydown/gen/shop"
)

// markdown is the one setting of the Markdown library: tables, definition
// lists, ids on headings, our marks in braces, our renderers for code and
// tables. Raw HTML stays off. Safe for concurrent use.
var markdown = goldmark.New(
	goldmark.WithExtensions(extension.Table, extension.DefinitionList),
	goldmark.WithParserOptions(parser.WithAutoHeadingID(), parser.WithHeadingAttribute(),
		parser.WithInlineParsers(util.Prioritized(insertParser{}, 150))),
	goldmark.WithRendererOptions(renderer.WithNodeRenderers(util.Prioritized(blockRenderer{}, 100))),
)

// link is a link in a chapter to another place of the handbook.
type link struct {
	Pos  shop.Pos
	Dest string // from the root: /chapters/drying.html#limit
	Text string // as written
}

// reader reads one chapter.
type reader struct {
	ix       *lineIndex
	file     string // name in the content folder
	page     string // path of the page it becomes
	problems *problems
	data     shopData
	ids      map[string]bool
	headings []heading
	links    []link
	checks   []selfCheck
	tables   int
	base     int    // where the stretch begins that is being read
	level    int    // of the last heading
	under    string // text of the last heading, to name tables by
	slugs    map[string]string
}

// parse reads a stretch of the source that begins at base, and checks it.
func (r *reader) parse(src []byte, base int) ast.Node {
	outer := r.base
	r.base = base
	defer func() { r.base = outer }()
	ctx := parser.NewContext(parser.WithIDs(headingIDs{copyOf(r.ids)}))
	doc := markdown.Parser().Parse(text.NewReader(src), parser.WithContext(ctx))
	_ = ast.Walk(doc, func(n ast.Node, in bool) (ast.WalkStatus, error) {
		if in {
			r.check(n, src)
		}
		return ast.WalkContinue, nil
	})
	return doc
}

// at is where a node of the stretch that is being read stands in the file.
func (r *reader) at(n ast.Node) shop.Pos { return r.ix.pos(r.base + n.Pos()) }

func copyOf(m map[string]bool) map[string]bool {
	c := make(map[string]bool, len(m))
	for k, v := range m {
		c[k] = v
	}
	return c
}

// check looks at one node and prepares it for the renderer.
func (r *reader) check(n ast.Node, src []byte) {
	switch n := n.(type) {
	case *ast.Heading:
		r.checkHeading(n, max(r.level, 1), src)
		r.level, r.under = n.Level, plainText(n, src)
	case *ast.HTMLBlock, *ast.RawHTML:
		r.problems.add(r.at(n), "raw HTML: chapters are Markdown only")
	case *ast.Image:
		r.problems.add(r.at(n), "an image: the handbook makes its own drawings, ask for one with a computed block")
	case *ast.Link:
		n.Destination = []byte(r.link(string(plainURL(n.Destination)), r.at(n)))
	case *ast.AutoLink:
		r.link(string(n.URL(src)), r.at(n))
	case *insert:
		r.insert(n)
	case *extast.Table:
		r.tables++
		n.SetAttributeString("data-id", []byte("table-"+strconv.Itoa(r.tables)))
		n.SetAttributeString("data-name", []byte(r.tableName()))
	case *extast.TableCell:
		n.SetAttributeString("class", []byte("al-"+n.Alignment.String()))
		n.Alignment = extast.AlignNone
		if n.Parent().Kind() == extast.KindTableHeader {
			n.SetAttributeString("scope", []byte("col"))
		}
	}
}

// plainURL resolves what the renderer will resolve: escapes and entities, in
// which a scheme could hide.
func plainURL(dest []byte) []byte {
	return util.ResolveEntityNames(util.ResolveNumericReferences(util.UnescapePunctuations(dest)))
}

func (r *reader) tableName() string {
	name := r.under
	if name == "" {
		name = "Table"
	}
	return name + ", table " + strconv.Itoa(r.tables)
}

// html renders a stretch of the source as Markdown.
func (r *reader) html(from, to int) template.HTML {
	src := r.ix.src[from:to]
	return r.render(r.parse(src, from), src)
}

func (r *reader) render(n ast.Node, src []byte) template.HTML {
	var b bytes.Buffer
	if err := markdown.Renderer().Render(&b, src, n); err != nil {
		r.problems.add(r.at(n), err.Error())
	}
	return template.HTML(bytes.TrimSpace(b.Bytes()))
}
