package book

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"

	"laydown/gen/book/search"
	"laydown/gen/shop"
)

// The glossary's files in the content folder: the program's, and the one in
// which a shop keeps words of its own.
const (
	wordsFile    = "words.yaml"
	ownWordsFile = "shop-words.yaml"
)

// words reads the glossary, the shop's own words over the program's.
func (b *builder) words() search.Words {
	w := b.readWords(wordsFile).With(b.readWords(ownWordsFile))
	for _, line := range w.Unknown() {
		b.problems.addLine(line)
	}
	return w
}

func (b *builder) readWords(name string) search.Words {
	data, err := fs.ReadFile(b.content, name)
	if errors.Is(err, fs.ErrNotExist) {
		return search.Words{}
	}
	if err != nil {
		b.fault(contentName(name), err)
		return search.Words{}
	}
	w, err := search.ReadWords(contentName(name), data)
	if err != nil {
		for _, line := range strings.Split(err.Error(), "\n") {
			b.problems.addLine(line)
		}
	}
	return w
}

// place is somewhere in the handbook that a word leads to.
type place struct {
	Href string
	Text string // the heading, or the page's title
	Page string // the page's title, where Text is a heading; else empty
}

// places knows every page that is filled, with the ids and headings on it.
type places struct {
	titles   map[string]string
	ids      map[string]map[string]bool
	headings map[string]map[string]string
}

func newPlaces(views []view) places {
	p := places{map[string]string{}, map[string]map[string]bool{}, map[string]map[string]string{}}
	for _, v := range views {
		ids, headings := map[string]bool{}, map[string]string{}
		scan(string(v.Main), func(t tag) {
			if id := t.get("id"); id != "" && !t.Close {
				ids[id] = true
			}
		})
		for _, s := range sections(string(v.Main))[1:] {
			headings[s.ID] = s.Title
		}
		p.titles[v.Path], p.ids[v.Path], p.headings[v.Path] = v.Title, ids, headings
	}
	return p
}

// find gives the place of an address; false where there is none.
func (p places) find(address string) (place, bool) {
	path, id, _ := strings.Cut(address, "#")
	if path == "glossary.html" && id != "" {
		// Authors need not know on which page of the glossary a term is.
		for _, part := range slices.Sorted(maps.Keys(p.ids)) {
			if strings.HasPrefix(part, "glossary") && p.ids[part][id] {
				path, address = part, part+"#"+id
			}
		}
	}
	title, ok := p.titles[path]
	if !ok || id != "" && !p.ids[path][id] {
		return place{}, false
	}
	if heading := p.headings[path][id]; heading != "" {
		return place{"/" + address, heading, title}, true
	}
	return place{Href: "/" + address, Text: title}, true
}

// leadsTo is the first of the places named that the handbook has; nil where
// none is named. Places that are all missing are reported where the first was
// written.
func (b *builder) leadsTo(name string, see []search.Place, p places) *place {
	for _, s := range see {
		if found, ok := p.find(s.Address); ok {
			return &found
		}
	}
	if len(see) > 0 {
		pos := see[0].Pos
		b.problems.add(shop.Pos{File: pos.File, Line: pos.Line, Col: pos.Col}, fmt.Sprintf("no place that %q may lead to is in this handbook: %s", name, addresses(see)))
	}
	return nil
}

func addresses(list []search.Place) string {
	var out []string
	for _, s := range list {
		out = append(out, s.Address)
	}
	return strings.Join(out, ", ")
}
