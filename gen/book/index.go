package book

import (
	"html"
	"strings"

	"laydown/gen/book/search"
)

// index makes the search's script: an entry for each page that can be found
// and one for each of its sections, and the glossary's terms.
func (b *builder) index(views []view, words search.Words) {
	var entries []search.Entry
	for _, v := range views {
		if v.Found == "" {
			continue
		}
		parts := sections(string(v.Main))
		entries = append(entries, search.Entry{URL: v.Path, Title: v.Title, Section: v.Tab, Kind: v.Found,
			Text: strings.TrimSpace(v.Lead + " " + parts[0].Text), Also: v.Also, Weight: v.Weight})
		for _, s := range parts[1:] {
			entries = append(entries, search.Entry{URL: v.Path + "#" + s.ID, Title: s.Title, Section: v.Title, Kind: v.Found, Text: s.Text})
		}
	}
	for _, t := range words.Terms {
		entries = append(entries, search.Entry{URL: "glossary.html#" + slug(t.Term), Title: t.Term, Section: "A–Z", Kind: "word", Text: wordText(t), Also: t.Also})
	}
	b.file("script/search-index.js", search.Build(entries, words).Script())
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
// Numbers of computed tables and of workings are left out: they are looked up
// in their tables. So are marks of sources.
func sections(page string) []section {
	parts := []section{{}}
	var text strings.Builder
	last, skip, heading := 0, 0, false
	take := func(to int) {
		if skip == 0 && to > last {
			text.WriteString(html.UnescapeString(page[last:to]))
			text.WriteByte(' ')
		}
	}
	flush := func() {
		parts[len(parts)-1].Text += strings.Join(strings.Fields(text.String()), " ")
		text.Reset()
	}
	scan(page, func(t tag) {
		take(t.At)
		last = t.End
		switch {
		case t.Close && (t.Name == "td" || t.Name == "svg" || t.Name == "cite") && skip > 0:
			skip--
		case !t.Close && (t.Name == "svg" || t.Name == "cite" || t.Name == "td" && strings.Contains(t.get("class"), "num")):
			skip++
		case (t.Name == "h2" || t.Name == "h3") && !t.Close && t.get("id") != "":
			flush()
			parts = append(parts, section{ID: t.get("id")})
			heading = true
		case (t.Name == "h2" || t.Name == "h3") && t.Close && heading:
			parts[len(parts)-1].Title = strings.Join(strings.Fields(text.String()), " ")
			text.Reset()
			heading = false
		}
	})
	take(len(page))
	flush()
	return parts
}
