package book

import (
	"errors"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"laydown/gen/shop"
)

// cautions sets the shop's cautions of these ids into one frame.
func (b *builder) cautions(ids ...string) template.HTML {
	return cautionFrame(b.cautionLines(ids))
}

// cautionLines are paragraphs, one for each caution; an id that no caution has is
// passed over, for a shop's data was checked when it was loaded.
func (b *builder) cautionLines(ids []string) template.HTML {
	var out strings.Builder
	for _, id := range ids {
		if c := b.shop.Caution(id); c != nil {
			out.WriteString(`<p data-caution="` + c.ID + `"><strong>` + template.HTMLEscapeString(c.Name) + `.</strong> ` + template.HTMLEscapeString(c.Says) + `</p>`)
		}
	}
	return template.HTML(out.String())
}

// cautionFrame is the yellow and black frame round what it is given; round
// nothing there is none.
func cautionFrame(lines template.HTML) template.HTML {
	if lines == "" {
		return ""
	}
	return `<div class="caution" role="note"><span class="stripes" aria-hidden="true"></span><div>` + lines + `</div></div>`
}

// brief is the line of a caution for a wall chart or a form.
func (b *builder) brief(id string) (name, line string) {
	c := b.shop.Caution(id)
	switch {
	case c == nil:
		return "", ""
	case c.Brief == "":
		return c.Name, c.Says
	}
	return c.Name, c.Brief
}

// hazards are a chart's cautions: their names, and their lines one after the
// other.
func (b *builder) hazards(ids ...string) (names, text string) {
	var heads, lines []string
	for _, id := range ids {
		if name, line := b.brief(id); line != "" {
			heads, lines = append(heads, name), append(lines, line)
		}
	}
	return strings.Join(heads, ", ") + ".", strings.Join(lines, " ")
}

// dangers are the first sentences of several cautions' lines, where there is no room for
// more, and what comes before them all.
func (b *builder) dangers(ids []string) string {
	if len(ids) == 0 {
		return ""
	}
	var said []string
	for _, id := range ids {
		if _, line := b.brief(id); line != "" {
			first, _, _ := strings.Cut(line, ". ")
			said = append(said, strings.TrimSuffix(first, ".")+".")
		}
	}
	return strings.Join(said, " ") + " The maker’s manual, safety data sheets and local codes come first."
}

// unworked are the kinds of page that only name things or lead to them; nobody
// works from them. The plan says its own cautions, and so do charts and forms.
var unworked = []string{"front", "search", "sources", "glossary", "index", "chapters", "charts", "forms", "tables", "lists", "verification", "plan", "wallchart", "form"}

// withCautions adds to the end of a page the cautions that it calls for, by what
// it shows or by its words, and does not show yet.
func (b *builder) withCautions(p *page, main template.HTML) template.HTML {
	if slices.Contains(unworked, p.Kind) {
		return main
	}
	due := b.due(p, string(main))
	if len(due) == 0 {
		return main
	}
	return main + b.cautions(due...)
}

// due are the cautions that a page calls for and does not show.
func (b *builder) due(p *page, main string) []string {
	text := p.Title + "\n" + p.Lead + "\n" + withoutTags(main)
	var list []string
	for _, c := range b.shop.Cautions {
		if strings.Contains(main, `data-caution="`+c.ID+`"`) {
			continue
		}
		if slices.Contains(p.Cautions, c.ID) || speaksOf(text, c) {
			list = append(list, c.ID)
		}
	}
	return list
}

// speaksOf says whether a text uses one of a caution's words, as a whole word and
// in small letters or with a capital.
func speaksOf(text string, c *shop.Caution) bool {
	for _, word := range c.Words {
		if hasWord(text, word) || hasWord(text, upperFirst(word)) {
			return true
		}
	}
	return false
}

// hasWord says whether a text has a word with no letter or digit beside it.
func hasWord(text, word string) bool {
	for from := 0; word != ""; {
		i := strings.Index(text[from:], word)
		if i < 0 {
			return false
		}
		start, end := from+i, from+i+len(word)
		if (start == 0 || !letterOrDigit(text[start-1])) && (end == len(text) || !letterOrDigit(text[end])) {
			return true
		}
		from = end
	}
	return false
}

func letterOrDigit(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c >= 0x80
}

// withoutTags is a page without its tags.
func withoutTags(page string) string {
	var out strings.Builder
	out.Grow(len(page) / 2)
	for page != "" {
		open := strings.IndexByte(page, '<')
		if open < 0 {
			out.WriteString(page)
			break
		}
		out.WriteString(page[:open])
		out.WriteByte(' ')
		end := strings.IndexByte(page[open:], '>')
		if end < 0 {
			break
		}
		page = page[open+end+1:]
	}
	return out.String()
}

// caution sets the shop's cautions into a chapter; the error names an id that
// none has.
func (b *builder) caution(ids []string) (template.HTML, error) {
	for _, id := range ids {
		if b.shop.Caution(id) == nil {
			message := fmt.Sprintf("no caution is called %q", id)
			if near := b.shop.Closest("cautions", id); near != "" {
				message += fmt.Sprintf("; did you mean %q?", near)
			}
			return "", errors.New(message)
		}
	}
	return b.cautionLines(ids), nil
}
