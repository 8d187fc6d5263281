package book

import (
	"errors"
	"fmt"
	"io/fs"
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
	title, ok := p.titles[path]
	if !ok || id != "" && !p.ids[path][id] {
		return place{}, false
	}
	if heading := p.headings[path][id]; heading != "" {
		return place{"/" + address, heading, title}, true
	}
	return place{Href: "/" + address, Text: title}, true
}

// answer is the first of the places a term names that the handbook has; nil
// where it names none. A term whose places are all missing is reported.
func (b *builder) answer(t search.Term, p places) *place {
	for _, s := range t.See {
		if found, ok := p.find(s.Address); ok {
			return &found
		}
	}
	if len(t.See) > 0 {
		pos := t.See[0].Pos
		b.problems.add(shop.Pos{File: pos.File, Line: pos.Line, Col: pos.Col}, fmt.Sprintf("no place that %q may lead to is in this handbook: %s", t.Term, addresses(t.See)))
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
