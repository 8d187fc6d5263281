package book

import (
	"fmt"
	"html/template"
	"io/fs"
	"sort"
	"strings"

	"github.com/yuin/goldmark/ast"
)

// chapter is one Markdown file of the content folder, read and rendered.
type chapter struct {
	front
	Slug, File, Page string
	Body             template.HTML
	Headings         []heading
	links            []link
	checks           []selfCheck
}

// shopData is what chapters ask of the shop's data.
type shopData interface {
	// compute makes what a computed block asks for. It reports problems itself.
	compute(computedBlock) template.HTML
	// value sets a quantity of a record into a text.
	value(kind, id, field string) (template.HTML, error)
	// caution sets the shop's cautions of these ids.
	caution(ids []string) (template.HTML, error)
	// mark sets the mark of a source into a text.
	mark(source string) (template.HTML, error)
}

// readChapters reads every Markdown file at the top of the content folder, in
// the order that they give themselves.
func readChapters(content fs.FS, d shopData, p *problems) []*chapter {
	names, err := fs.Glob(content, "*.md")
	if err != nil || len(names) == 0 {
		return nil
	}
	sort.Strings(names)
	slugs := map[string]string{}
	for _, name := range names {
		slugs[chapterSlug(name)] = "chapters/" + chapterSlug(name) + ".html"
	}
	first := map[string]string{}
	var list []*chapter
	for _, name := range names {
		src, err := fs.ReadFile(content, name)
		if err != nil {
			p.add(newLineIndex(name, nil).pos(0), err.Error())
			continue
		}
		s := chapterSlug(name)
		if other, ok := first[s]; ok {
			p.add(newLineIndex(contentName(name), nil).pos(0), fmt.Sprintf("makes the same page as %s", other))
			continue
		}
		first[s] = name
		list = append(list, readChapter(name, src, slugs, d, p))
	}
	sort.SliceStable(list, func(i, j int) bool {
		if list[i].Order != list[j].Order {
			return list[i].Order < list[j].Order
		}
		return list[i].File < list[j].File
	})
	return list
}

// contentName is how a chapter's file is named in problems.
func contentName(name string) string { return "content/" + name }

func readChapter(name string, src []byte, slugs map[string]string, d shopData, p *problems) *chapter {
	c := &chapter{Slug: chapterSlug(name), File: contentName(name)}
	c.Page = slugs[c.Slug]
	src = []byte(strings.ReplaceAll(string(src), "\r\n", "\n"))
	ix := newLineIndex(c.File, src)
	var from int
	c.front, from = readFront(ix, p)
	r := &reader{ix: ix, file: name, page: c.Page, problems: p, data: d, ids: map[string]bool{}, slugs: slugs}
	r.checkText(src)
	c.Body = r.body(from)
	c.Headings, c.links, c.checks = r.headings, r.links, r.checks
	return c
}

// checkText reports what no chapter should hold at all.
func (r *reader) checkText(src []byte) {
	if i := strings.IndexByte(string(src), 0); i >= 0 {
		r.problems.add(r.ix.pos(i), "a zero byte: this is not a text file")
	}
}

// body renders a chapter's text: blocks in their order, margin notes set
// beside the run of blocks that they follow.
func (r *reader) body(from int) template.HTML {
	src := blank(r.ix.src, from)
	doc := r.parse(src, 0)
	var page flow
	figure := 0
	for n := doc.FirstChild(); n != nil; n = n.NextSibling() {
		if b, ok := n.(*ast.FencedCodeBlock); ok {
			switch string(b.Language(src)) {
			case "note":
				page.note(r.note(b))
				continue
			case "caution":
				page.block(r.caution(b))
				continue
			case "question":
				page.breakRun()
				page.block(r.question(b))
				page.breakRun()
				continue
			case "computed":
				figure++
				block := r.computed(b)
				block.ID = fmt.Sprintf("computed-%d", figure)
				page.block(r.data.compute(block))
				continue
			}
		}
		r.refuseInside(n, src)
		if n.Kind() == ast.KindHeading {
			page.breakRun()
			page.heading(r.render(n, src))
			continue
		}
		page.block(r.render(n, src))
	}
	return page.html()
}

// refuseInside reports our own blocks where they stand inside a list or a
// quotation: they hold for a page, not for a line.
func (r *reader) refuseInside(n ast.Node, src []byte) {
	_ = ast.Walk(n, func(inner ast.Node, in bool) (ast.WalkStatus, error) {
		b, ok := inner.(*ast.FencedCodeBlock)
		if in && ok && inner != n {
			switch l := string(b.Language(src)); l {
			case "note", "caution", "question", "computed":
				r.problems.add(r.ix.pos(b.Pos()), fmt.Sprintf("a block %s inside a list or a quotation: put it on its own", l))
			}
		}
		return ast.WalkContinue, nil
	})
}
