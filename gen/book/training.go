package book

import (
	"fmt"
	"html/template"
	"slices"
	"strings"
)

// trainingPath is where the training book stands.
const trainingPath = "training.html"

// trainingBook is every chapter as one document to print.
type trainingBook struct {
	Chapters []trainingChapter
	Answers  int    // questions in all
	Paper    string // that it is printed on
}

// trainingChapter is a chapter as the training book has it.
type trainingChapter struct {
	*chapter
	Number   int
	Sections []trainingSection
	Text     template.HTML
	Answers  []selfCheck
}

// trainingSection is a heading of a chapter's first level, numbered.
type trainingSection struct{ Number, ID, Text string }

// trainingBook adds the book and the style sheet of its printed pages.
func (b *builder) trainingBook() {
	if len(b.chapters) == 0 {
		return
	}
	paper := b.bookPaper()
	book := trainingBook{Paper: paper.Name}
	numbers := b.numbers()
	for i, c := range b.chapters {
		t := trainingChapter{chapter: c, Number: i + 1, Answers: slices.Clone(c.checks)}
		for _, h := range c.Headings {
			if h.Level == 2 {
				t.Sections = append(t.Sections, trainingSection{numbers[placeIn(c, h.ID)], bookID(c, h.ID), h.Text})
			}
		}
		t.Text = bound{c, numbers}.text(withoutAnswers(c))
		for i, q := range t.Answers {
			t.Answers[i].Because = bound{c, numbers}.text(string(q.Because))
		}
		book.Chapters = append(book.Chapters, t)
		book.Answers += len(c.checks)
	}
	b.file("style/training-pages.css", []byte(b.trainingCSS(book, paper)))
	b.add(page{Path: trainingPath, Kind: "training", Title: "Training book", Lead: "Every chapter in one document, to print and to work through.", Tab: "Learn",
		Styles: []string{"training.css", "training-pages.css"}, Data: book})
}

// bookPaper is the paper of the book: A4, or Letter where the shop hangs no A4.
func (b *builder) bookPaper() paper {
	name := "A4"
	if asked := b.shop.Front.Charts.Paper; slices.Contains(asked, "Letter") && !slices.Contains(asked, "A4") {
		name = "Letter"
	}
	i := slices.IndexFunc(papers, func(p paper) bool { return p.Name == name })
	return papers[i]
}

// numbers are the numbers of every place that a chapter may be referred to by: 3 for
// the third chapter, 3.2 for its second section and whatever has a heading in it.
func (b *builder) numbers() map[string]string {
	numbers := map[string]string{}
	for i, c := range b.chapters {
		numbers[placeIn(c, "")] = fmt.Sprint(i + 1)
		section := 0
		for _, h := range c.Headings {
			if h.Level == 2 {
				section++
			}
			if section > 0 {
				numbers[placeIn(c, h.ID)] = fmt.Sprintf("%d.%d", i+1, section)
			}
		}
	}
	return numbers
}

// placeIn is where a link to a place in a chapter leads.
func placeIn(c *chapter, id string) string { return "/" + c.Page + hash(id) }

// bookID is the id in the book of a place in a chapter, or of the chapter.
func bookID(c *chapter, id string) string {
	if id == "" {
		return c.Slug
	}
	return c.Slug + "-" + id
}

// withoutAnswers is a chapter's text with its questions numbered and their answers
// taken out: they stand at the end of the book.
func withoutAnswers(c *chapter) string {
	text := string(c.Body)
	for i, q := range c.checks {
		asks := fmt.Sprintf(`<div class="question"><p class="count">Question %d</p>%s</div>`, i+1, q.Asks)
		text = strings.Replace(text, string(q.folded()), asks, 1)
	}
	return text
}

// trainingCSS is the style sheet of the printed pages. Each chapter has pages of its
// own kind, with its title at their head and a count of their own: a page that starts
// a chapter has a number that is known before anything is laid out. No browser can
// yet say in a text on which page another place has come to stand.
func (b *builder) trainingCSS(book trainingBook, p paper) string {
	var css strings.Builder
	width, height := min(p.Width, p.Height), max(p.Width, p.Height)
	fmt.Fprintf(&css, "@page { size: %smm %smm }\n", decimals(width, 1), decimals(height, 1))
	part := func(name, head, folio string) {
		fmt.Fprintf(&css, "@page %s { counter-increment: %s; @top-left { content: %s } @top-right { content: %s } @bottom-left { content: %s counter(%s) } }\n.%s { page: %s }\n",
			name, name, cssString(head), cssString(b.shop.Front.Name), cssString(folio+"-"), name, name, name)
	}
	for _, c := range book.Chapters {
		part(fmt.Sprintf("chapter-%d", c.Number), fmt.Sprintf("%d %s", c.Number, c.Title), fmt.Sprint(c.Number))
	}
	part("answers", "Answers", "A")
	part("signing", "Sign-off sheet", "S")
	return css.String()
}

// cssString writes a text as a string of a style sheet.
func cssString(text string) string {
	var out strings.Builder
	out.WriteByte('"')
	for _, r := range text {
		if r < ' ' || r == '"' || r == '\\' || r == 0x7f {
			fmt.Fprintf(&out, `\%x `, r)
			continue
		}
		out.WriteRune(r)
	}
	out.WriteByte('"')
	return out.String()
}
