package book

import (
	"fmt"
	"slices"
	"strings"

	"laydown/gen/book/search"
)

// backMatter adds what can be made only when all other pages are filled: the
// glossary, whose terms lead into them, and the index at the back of the book.
func (b *builder) backMatter(w search.Words, views []view) {
	p := newPlaces(views)
	terms := slices.Clone(w.Terms)
	slices.SortStableFunc(terms, byName(func(t search.Term) string { return t.Term }))
	at := termPaths(terms)
	var list []glossaryTerm
	for _, t := range terms {
		g := glossaryTerm{Term: t, Answer: b.leadsTo(t.Term, t.See, p)}
		for _, other := range t.Beside {
			g.Others = append(g.Others, place{Href: "/" + at[slug(other)], Text: other})
		}
		list = append(list, g)
	}
	for _, s := range shelved("glossary", "A–Z", glossaryLetters(list), glossaryMost) {
		b.add(page{Path: s.Path, Kind: "glossary", Title: s.Title, Lead: "The words of this book, and what else people call them.", Tab: "A–Z", Data: s})
	}
	for _, s := range shelved("index-az", "Index", byLetter(backIndex(list, at, views), func(e indexEntry) string { return e.Head }), indexMost) {
		b.add(page{Path: s.Path, Kind: "index", Title: s.Title, Lead: "Every word, heading and material of this book, and where it stands.", Tab: "A–Z", Data: s})
	}
}

// How many terms of the glossary and lines of the index one page takes, so that it
// opens at once on an old tablet.
const (
	glossaryMost = 160
	indexMost    = 750
)

func glossaryLetters(list []glossaryTerm) []letterOf[glossaryTerm] {
	return byLetter(list, func(t glossaryTerm) string { return t.Term.Term })
}

// termPaths are the places of the glossary's terms, by their slugs.
func termPaths(terms []search.Term) map[string]string {
	list := make([]glossaryTerm, len(terms))
	for i, t := range terms {
		list[i].Term = t
	}
	slices.SortStableFunc(list, byName(func(t glossaryTerm) string { return t.Term.Term }))
	at := map[string]string{}
	for _, s := range shelved("glossary", "", glossaryLetters(list), glossaryMost) {
		for _, l := range s.Letters {
			for _, t := range l.Items {
				at[slug(t.Term.Term)] = s.Path + "#" + slug(t.Term.Term)
			}
		}
	}
	return at
}

// glossaryTerm is one term as the glossary shows it.
type glossaryTerm struct {
	search.Term
	Answer *place
	Others []place // terms to see too
}

// Worth is the source of the meaning where it is not plain trade usage, which
// the page's head says once for all.
func (t glossaryTerm) Worth() string {
	if t.Source == "trade usage" {
		return ""
	}
	return t.Source
}

// letterOf is what begins with one letter.
type letterOf[T any] struct {
	Letter string
	Items  []T
}

// byLetter parts a sorted list by first letters. What begins with none stands
// first, under 0–9.
func byLetter[T any](list []T, name func(T) string) []letterOf[T] {
	var out []letterOf[T]
	for _, item := range list {
		l := strings.ToUpper(fmt.Sprintf("%.1s", name(item)))
		if l < "A" || l > "Z" {
			l = "0–9"
		}
		if len(out) == 0 || out[len(out)-1].Letter != l {
			out = append(out, letterOf[T]{Letter: l})
		}
		out[len(out)-1].Items = append(out[len(out)-1].Items, item)
	}
	return out
}

// indexEntry is one line of the index: a word and the places where it stands,
// or the word to look under instead.
type indexEntry struct {
	Head   string
	Places []place
	See    *place
}

// backIndex makes the index from the terms and their other names, the titles
// and other names of pages, and the headings of chapters.
func backIndex(terms []glossaryTerm, at map[string]string, views []view) []indexEntry {
	found := map[string]*indexEntry{}
	entry := func(head string) *indexEntry {
		head = indexHead(head)
		key := strings.ToLower(head)
		if found[key] == nil {
			found[key] = &indexEntry{Head: head}
		}
		return found[key]
	}
	add := func(head string, p place) {
		e := entry(head)
		if !slices.Contains(e.Places, p) {
			e.Places = append(e.Places, p)
		}
	}
	for _, v := range views {
		if v.Found == "" {
			continue
		}
		add(v.Title, place{Href: "/" + v.Path, Text: pageWord(v)})
		if v.Found != "chapter" {
			continue
		}
		for _, s := range sections(string(v.Main))[1:] {
			add(s.Title, place{Href: "/" + v.Path + "#" + s.ID, Text: v.Title})
		}
	}
	for _, t := range terms {
		if a := t.Answer; a != nil {
			text := a.Text
			if a.Page != "" {
				text = a.Page + ": " + text
			}
			add(t.Term.Term, place{Href: a.Href, Text: text})
		}
		add(t.Term.Term, place{Href: "/" + at[slug(t.Term.Term)], Text: "A–Z"})
	}
	look := func(name, under string, href string) {
		e := entry(name)
		if len(e.Places) == 0 && e.See == nil {
			e.See = &place{Href: href, Text: under}
		}
	}
	for _, t := range terms {
		for _, name := range t.Also {
			look(name, t.Term.Term, "/"+at[slug(t.Term.Term)])
		}
	}
	for _, v := range views {
		if v.Found == "" {
			continue
		}
		for _, name := range v.Also {
			look(name, lowerFirst(v.Title), "/"+v.Path)
		}
	}
	var list []indexEntry
	for _, e := range found {
		list = append(list, *e)
	}
	slices.SortFunc(list, func(a, b indexEntry) int { return strings.Compare(sortKey(a.Head), sortKey(b.Head)) })
	return list
}

// pageWord says what a page is, in the index beside its own title.
func pageWord(v view) string {
	if v.Found == "list" {
		return "page"
	}
	return v.Found
}

// indexHead writes a name as the index has it: an article behind, a small
// letter in front unless the word is written in capitals or is a code: A4.
func indexHead(name string) string {
	name = inverted(name)
	if len(name) > 1 && name[1] >= 'a' && name[1] <= 'z' {
		return lowerFirst(name)
	}
	return unbroken(name)
}

// inverted puts an article behind the words it stands before.
func inverted(head string) string {
	for _, article := range []string{"The ", "A ", "An "} {
		if rest, ok := strings.CutPrefix(head, article); ok {
			return rest + ", " + strings.ToLower(strings.TrimSpace(article))
		}
	}
	return head
}

// sortKey orders the index letter by letter, signs left out, figures first.
// The head itself at the end keeps two heads of one key apart.
func sortKey(head string) string {
	return strings.ReplaceAll(slug(head), "-", "") + " " + head
}
