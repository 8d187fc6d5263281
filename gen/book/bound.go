package book

import (
	"html/template"
	"net/url"
	"regexp"
	"strings"
)

// bound rewrites the text of a chapter for the training book, where all chapters
// stand on one page: ids carry the chapter's name, headings go down a level and are
// numbered, and links to chapters stay inside the book and say the number of where
// they lead.
type bound struct {
	chapter *chapter
	numbers map[string]string // by the place that a link leads to
}

// text rewrites a text. What it reads was made here, with every value in double
// quotes.
func (b bound) text(html string) template.HTML {
	var out strings.Builder
	done := 0
	refers := "" // number of where the open link leads
	scan(html, func(t tag) {
		out.WriteString(html[done:t.At])
		done = t.End
		name := html[t.At:t.End]
		switch {
		case t.Close && t.Name == "a" && refers != "":
			out.WriteString(`<span class="refers"> (` + refers + ")</span></a>")
			refers = ""
		case isHeading(t.Name):
			out.WriteString(b.heading(t, name))
		case t.Close:
			out.WriteString(name)
		default:
			if t.Name == "a" {
				refers = b.numberOf(t.get("href"))
			}
			out.WriteString(b.tag(name))
		}
	})
	out.WriteString(html[done:])
	return template.HTML(out.String())
}

func isHeading(name string) bool {
	return len(name) == 2 && name[0] == 'h' && name[1] >= '2' && name[1] <= '5'
}

// heading sets a heading a level lower, and numbers the sections.
func (b bound) heading(t tag, text string) string {
	lower := "h" + string(t.Name[1]+1)
	text = strings.Replace(text, t.Name, lower, 1)
	if t.Close {
		return text
	}
	text = b.tag(text)
	if number := b.numbers[placeIn(b.chapter, t.get("id"))]; t.Name == "h2" && t.has("id") && number != "" {
		text += `<span class="number">` + number + `</span> `
	}
	return text
}

var (
	idOrLink  = regexp.MustCompile(` (id|for|href|aria-labelledby|aria-describedby|headers)="([^"]*)"`)
	paintedBy = regexp.MustCompile(`url\(#([^)]*)\)`)
)

// tag rewrites the ids of one tag, and its links to chapters. A region has the
// chapter in its name: two chapters may have tables of one name.
func (b bound) tag(text string) string {
	region := strings.Contains(text, ` role="region"`)
	text = idOrLink.ReplaceAllStringFunc(text, func(match string) string {
		m := idOrLink.FindStringSubmatch(match)
		if m[1] == "href" {
			return ` href="` + b.link(m[2]) + `"`
		}
		ids := strings.Fields(m[2])
		for i, id := range ids {
			ids[i] = bookID(b.chapter, id)
		}
		if region && m[1] == "aria-labelledby" {
			ids = append([]string{b.chapter.Slug}, ids...)
		}
		return " " + m[1] + `="` + strings.Join(ids, " ") + `"`
	})
	return paintedBy.ReplaceAllString(text, "url(#"+b.chapter.Slug+"-$1)")
}

// link is where a link of the chapter leads in the book.
func (b bound) link(href string) string {
	page, fragment, ok := chapterLink(href)
	switch {
	case !ok:
		return href
	case page == "" || page == b.chapter.Page:
		return "#" + bookID(b.chapter, fragment)
	}
	if _, known := b.numbers["/"+page]; !known {
		return href
	}
	return "#" + bookID(&chapter{Slug: strings.TrimSuffix(strings.TrimPrefix(page, "chapters/"), ".html")}, fragment)
}

// numberOf is the number of the section or the chapter that a link leads to; "" where
// it leads to no chapter.
func (b bound) numberOf(href string) string {
	page, fragment, ok := chapterLink(href)
	if !ok {
		return ""
	}
	if page == "" {
		page = b.chapter.Page
	}
	if n, ok := b.numbers["/"+page+hash(fragment)]; ok {
		return n
	}
	return b.numbers["/"+page]
}

// chapterLink parts a link into the page of a chapter, empty for the one that it
// stands in, and the place there; false for any other link.
func chapterLink(href string) (page, fragment string, ok bool) {
	u, err := url.Parse(href)
	if err != nil || u.Scheme != "" || u.Host != "" || u.RawQuery != "" {
		return "", "", false
	}
	page = strings.TrimPrefix(u.Path, "/")
	return page, u.Fragment, page == "" || strings.HasPrefix(page, "chapters/")
}
