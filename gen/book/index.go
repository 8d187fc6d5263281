package book

import (
	"cmp"
	"fmt"
	"html"
	"slices"
	"strings"

	"laydown/gen/book/search"
	"laydown/gen/shop"
)

// index makes the search's script: an entry for each page that can be found
// and one for each of its sections, the wall charts, the glossary's terms, and
// what can be answered at once.
func (b *builder) index(views []view, words search.Words) {
	book := search.Book{Words: words, Pins: b.pins(words, newPlaces(views)), Stamps: stampLetters}
	var charts []wallChart
	for _, v := range views {
		if c, ok := v.Data.(wallChart); ok {
			charts = append(charts, c)
		}
		book.Edition = v.Stamp
		book.Entries = append(book.Entries, entriesOf(v)...)
	}
	book.Entries = append(book.Entries, chartEntries(charts)...)
	at := termPaths(words.Terms)
	for _, t := range words.Terms {
		book.Entries = append(book.Entries, search.Entry{URL: at[slug(t.Term)], Title: t.Term, Kind: "word", Text: wordText(t), Also: t.Also, Weight: wordWeight})
	}
	b.questions(words, newPlaces(views), book.Entries)
	for _, c := range charts {
		book.Charts = append(book.Charts, search.Chart{Stamp: c.Stamp, Title: c.full(), URL: c.Path})
	}
	book.Things, book.Facts = b.facts()
	b.file("script/search-index.js", search.Build(book).Script())
}

// entriesOf is what can be found of a page.
func entriesOf(v view) []search.Entry {
	if v.Found == "" {
		return nil
	}
	parts := sections(string(v.Main))
	list := []search.Entry{{URL: v.Path, Title: v.Title, Section: v.Tab, Kind: v.Found,
		Text: strings.TrimSpace(v.Lead + " " + parts[0].Text), Also: v.Also, Weight: v.Weight}}
	if v.Found == "list" && v.Weight == 0 {
		list[0].Weight = asideWeight // it has the words of all that it leads to
	}
	for _, s := range parts[1:] {
		if s.ID == "data" { // only heads the sheets under it
			continue
		}
		e := search.Entry{URL: v.Path + "#" + s.ID, Title: s.Title, Section: v.Title, Kind: v.Found, Text: s.Text}
		if v.Found == "list" || v.Aside || s.ID == checkID {
			e.Weight = asideWeight
		}
		list = append(list, e)
	}
	if p, ok := v.Data.(faultPage); ok {
		nameSigns(list, v.Path, p.Signs)
	}
	return list
}

// nameSigns gives the looks of a fault their other names.
func nameSigns(list []search.Entry, path string, signs []faultSign) {
	for _, s := range signs {
		at := slices.IndexFunc(list, func(e search.Entry) bool { return e.URL == path+"#"+s.ID })
		if at >= 0 && s.Also != "" {
			list[at].Also = strings.Split(s.Also, ", ")
			list[at].Weight = signWeight
		}
	}
}

// asideWeight puts headings behind others: of pages that only lead on, of reference
// chapters, and of a chapter's questions, which have its answers' words.
const asideWeight = 0.7

// checkID is the heading of a chapter's questions, as every chapter of ours has it.
const checkID = "check"

// signWeight puts a fault's look before other headings.
const signWeight = 1.4

// chartEntries has one entry a chart, on the first paper that it comes on.
func chartEntries(charts []wallChart) []search.Entry {
	var list []search.Entry
	at := map[string]int{}
	for _, c := range charts {
		name := c.name()
		i, ok := at[name]
		if !ok {
			i = len(list)
			at[name] = i
			list = append(list, search.Entry{URL: c.Path, Title: name, Section: "Wall charts", Kind: "chart", Text: c.Where + ".", Also: []string{"chart of " + name}})
		}
		if c.Sheet == 1 {
			list[i].Text += " " + c.Layout.Paper.Name + "."
		}
		for _, r := range c.Rows {
			if row := " " + r.Name + " " + r.Under + "."; !strings.Contains(list[i].Text, row) {
				list[i].Text += row
			}
		}
	}
	return list
}

// name is what a chart is called on any paper.
func (c wallChart) name() string {
	if c.For != "" {
		return c.Title + ", " + c.For
	}
	return c.Title
}

// full is the name of one sheet of a chart on its paper.
func (c wallChart) full() string {
	text := c.name() + ", " + c.Layout.Paper.Name
	if c.Of > 1 {
		text += fmt.Sprintf(", sheet %d of %d", c.Sheet, c.Of)
	}
	return text
}

// pins are the hazards of the words, each with the first of its places that
// the handbook has.
func (b *builder) pins(words search.Words, p places) []search.Pin {
	var list []search.Pin
	for _, h := range words.Hazards {
		pin := search.Pin{Title: h.Title, Say: h.Say, Ask: h.Ask, Alone: h.Alone}
		if found := b.leadsTo(h.Title, h.See, p); found != nil {
			pin.URL = strings.TrimPrefix(found.Href, "/")
		}
		list = append(list, pin)
	}
	return list
}

// wordWeight puts a page or a heading of a name before the glossary's term.
const wordWeight = 0.6

// questions gives the places that answer them their questions as names.
func (b *builder) questions(words search.Words, p places, entries []search.Entry) {
	for _, q := range words.Questions {
		found := b.leadsTo(q.Ask[0], q.See, p)
		if found == nil {
			continue
		}
		at := slices.IndexFunc(entries, func(e search.Entry) bool { return "/"+e.URL == found.Href })
		if at < 0 {
			pos := q.See[0].Pos
			b.problems.add(shop.Pos{File: pos.File, Line: pos.Line, Col: pos.Col}, fmt.Sprintf("no search can lead to %s: name a page, or a heading of it", found.Href[1:]))
			continue
		}
		entries[at].Also = append(slices.Clip(entries[at].Also), q.Ask...)
	}
}

// wordText is what a term's entry shows: its meaning and its other names.
func wordText(t search.Term) string {
	if len(t.Also) == 0 {
		return t.Meaning
	}
	return t.Meaning + " Also " + strings.Join(t.Also, ", ") + "."
}

// section is a stretch of a page under a heading with an id.
type section struct{ ID, Title, Text string }

// sections parts a page's text at its headings of the second and third level.
// What nobody would look up there is left out: all of a computed table but its
// caption, since its numbers are among the index's facts; spreads, sources and marks of sources; the
// second unit of a value, since the search converts; choices of a form; lists of
// contents, what folds are called, questions to check oneself by; and the text of a cell that its section
// had before.
func sections(page string) []section {
	r := sectionReader{parts: []section{{}}, seen: map[string]bool{}}
	scan(page, func(t tag) {
		r.take(page, t.At)
		r.last = t.End
		r.tag(t)
	})
	r.take(page, len(page))
	r.flush()
	return r.parts
}

// sectionReader reads a page tag by tag.
type sectionReader struct {
	parts   []section
	text    strings.Builder
	last    int
	skip    string // the element that is being left out
	depth   int    // how many of its name are open
	heading bool
	sign    string // id of the open look of a fault, whose heading has none
	table   bool   // inside a computed table
	list    bool   // inside a list of links, whose small print says which pairs it holds for
	value   bool   // inside a cell of a value
	cell    int    // where the text of the open cell begins; -1 outside cells
	seen    map[string]bool
}

func (r *sectionReader) take(page string, to int) {
	if r.skip == "" && to > r.last {
		r.text.WriteString(html.UnescapeString(page[r.last:to]))
		r.text.WriteByte(' ')
	}
}

func (r *sectionReader) flush() {
	r.parts[len(r.parts)-1].Text += strings.Join(strings.Fields(r.text.String()), " ")
	r.text.Reset()
	r.seen = map[string]bool{}
}

func (r *sectionReader) tag(t tag) {
	if r.skip != "" {
		if t.Name == r.skip && t.Close {
			r.depth--
		} else if t.Name == r.skip {
			r.depth++
		}
		if r.depth == 0 {
			r.skip = ""
		}
		return
	}
	if !t.Close && r.leavesOut(t) {
		r.skip, r.depth = t.Name, 1
		return
	}
	switch t.Name {
	case "div":
		if !t.Close && hasClass(t, "sign") {
			r.sign = t.get("id")
		}
	case "ul":
		r.list = !t.Close && hasClass(t, "items")
	case "table":
		r.table = !t.Close && slices.ContainsFunc(computedTables, func(class string) bool { return hasClass(t, class) })
	case "td", "th":
		if !t.Close {
			r.cell = r.text.Len()
			r.value = hasClass(t, "value")
			return
		}
		r.endCell()
	case "h2", "h3":
		r.head(t)
	}
}

// computedTables are the classes of tables whose numbers are answered from the
// index's facts, or stand where the table is.
var computedTables = []string{"grid", "proved", "demo", "steps"}

// leavesOut says whether an element is no text to look up.
func (r *sectionReader) leavesOut(t tag) bool {
	switch t.Name {
	case "svg", "cite", "select", "noscript", "sup", "nav", "summary":
		return true
	case "div":
		return hasClass(t, "question")
	case "ol", "section": // a fault's key, which is to be gone through and not looked up
		return hasClass(t, "key") || hasClass(t, "walk")
	case "small":
		return r.value || r.list
	case "thead", "tbody":
		return r.table
	case "td", "th":
		return hasClass(t, "num") || hasClass(t, "spread") || hasClass(t, "source")
	}
	return false
}

func hasClass(t tag, name string) bool {
	return slices.Contains(strings.Fields(t.get("class")), name)
}

// endCell drops the text of a cell that stood in the section before.
func (r *sectionReader) endCell() {
	r.value = false
	all := r.text.String()
	text := strings.Join(strings.Fields(all[min(r.cell, len(all)):]), " ")
	if r.seen[text] {
		r.text.Reset()
		r.text.WriteString(all[:r.cell])
	}
	r.seen[text] = true
}

func (r *sectionReader) head(t tag) {
	switch {
	case !t.Close && (t.get("id") != "" || r.sign != ""):
		r.flush()
		r.parts = append(r.parts, section{ID: cmp.Or(t.get("id"), r.sign)})
		r.sign = ""
		r.heading = true
	case t.Close && r.heading:
		r.parts[len(r.parts)-1].Title = strings.Join(strings.Fields(r.text.String()), " ")
		r.text.Reset()
		r.heading = false
	}
}
