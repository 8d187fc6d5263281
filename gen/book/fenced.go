package book

import (
	"fmt"
	"html/template"
	"strings"

	"github.com/yuin/goldmark/ast"

	"laydown/gen/shop"
)

// bodyRange is where the text of a fenced block stands in the source.
func bodyRange(b *ast.FencedCodeBlock) (int, int) {
	lines := b.Lines()
	if lines.Len() == 0 {
		return b.Pos(), b.Pos()
	}
	return lines.At(0).Start, lines.At(lines.Len() - 1).Stop
}

// note renders a margin note.
func (r *reader) note(b *ast.FencedCodeBlock) template.HTML {
	from, to := bodyRange(b)
	if strings.TrimSpace(string(r.ix.src[from:to])) == "" {
		r.problems.add(r.ix.pos(b.Pos()), "an empty note")
	}
	return `<div class="note">` + r.html(from, to) + `</div>`
}

// caution renders a caution. A first line "caution: nip, blade" takes the shop's
// own; what stands under it, if anything, is added. Any other first line names
// the danger, and the rest says the usual caution.
func (r *reader) caution(b *ast.FencedCodeBlock) template.HTML {
	from, to := bodyRange(b)
	lead, rest, ok := strings.Cut(string(r.ix.src[from:to]), "\n")
	if ids, named := strings.CutPrefix(lead, "caution:"); named {
		lines, err := r.data.caution(words(ids))
		if err != nil {
			r.problems.add(r.ix.pos(from), err.Error())
		}
		if strings.TrimSpace(rest) != "" {
			lines += r.html(from+len(lead)+1, to)
		}
		return cautionFrame(lines)
	}
	if !ok || strings.TrimSpace(rest) == "" || strings.TrimSpace(lead) == "" {
		r.problems.add(r.ix.pos(b.Pos()), "a caution has the danger's name on its first line and the caution under it")
		return ""
	}
	return cautionBox(strings.TrimRight(strings.TrimSpace(lead), "."), r.html(from+len(lead)+1, to))
}

// cautionBox sets a caution in its yellow and black frame.
func cautionBox(lead string, body template.HTML) template.HTML {
	text := strings.Replace(string(body), "<p>", "<p><strong>"+template.HTMLEscapeString(lead)+".</strong> ", 1)
	return cautionFrame(template.HTML(text))
}

// choice is one answer of a question.
type choice struct {
	letter   string
	from, to int
}

// question renders a self-check: the question, its choices a) b) c), and a
// fold that says which is right and why.
func (r *reader) question(b *ast.FencedCodeBlock) template.HTML {
	from, _ := bodyRange(b)
	lines := b.Lines()
	var choices []choice
	asked, right := from, ""
	because, becauseTo := -1, -1
	for i := range lines.Len() {
		seg := lines.At(i)
		line := string(seg.Value(r.ix.src))
		switch {
		case because >= 0:
			becauseTo = seg.Stop
		case len(line) > 3 && line[0] >= 'a' && line[0] <= 'h' && line[1] == ')':
			choices = append(choices, choice{line[:1], seg.Start + 2, seg.Stop})
		case strings.HasPrefix(line, "right:"):
			right = strings.TrimSpace(strings.TrimPrefix(line, "right:"))
		case strings.HasPrefix(line, "because:"):
			because, becauseTo = seg.Start+len("because:"), seg.Stop
		case len(choices) == 0:
			asked = seg.Stop
		case strings.TrimSpace(line) != "":
			r.problems.add(r.ix.pos(seg.Start), "in a question: after the choices come right: and because:")
		}
	}
	here := r.ix.pos(b.Pos())
	known := false
	for _, c := range choices {
		known = known || c.letter == right
	}
	switch {
	case len(choices) < 2:
		r.problems.add(here, "a question has at least two choices: a) and b), each on its own line")
	case !known:
		r.problems.add(here, fmt.Sprintf("right: %q is none of the question's choices", right))
	case because < 0:
		r.problems.add(here, "a question says why, in a line because:")
	}
	if because < 0 {
		return ""
	}
	var asks strings.Builder
	asks.WriteString(string(r.html(from, asked)) + `<ol class="choices">`)
	for _, c := range choices {
		asks.WriteString("<li>" + string(r.html(c.from, c.to)) + "</li>")
	}
	asks.WriteString("</ol>")
	q := selfCheck{Asks: template.HTML(asks.String()), Right: right, Because: r.html(because, becauseTo)}
	r.checks = append(r.checks, q)
	return q.folded()
}

// selfCheck is a question of a chapter with its answer.
type selfCheck struct {
	Asks    template.HTML // the question and its choices
	Right   string        // the letter of the right one
	Because template.HTML
}

// folded sets a question with its answer in a fold, as its chapter's page shows it.
func (q selfCheck) folded() template.HTML {
	return `<div class="question">` + q.Asks + `<details><summary>Answer</summary><p><strong>` + template.HTML(template.HTMLEscapeString(q.Right)) + `.</strong></p>` + q.Because + `</details></div>`
}

// computedBlock is a computed block as its author wrote it.
type computedBlock struct {
	ID   string // prefix for the ids of what is made
	Pos  shop.Pos
	Keys map[string]string
	At   map[string]shop.Pos
}

// computed reads the lines of a computed block.
func (r *reader) computed(b *ast.FencedCodeBlock) computedBlock {
	c := computedBlock{Pos: r.ix.pos(b.Pos()), Keys: map[string]string{}, At: map[string]shop.Pos{}}
	lines := b.Lines()
	for i := range lines.Len() {
		seg := lines.At(i)
		line := strings.TrimSpace(string(seg.Value(r.ix.src)))
		if line == "" {
			continue
		}
		key, value, ok := strings.Cut(line, ":")
		key = strings.TrimSpace(key)
		here := r.ix.pos(seg.Start)
		if _, twice := c.Keys[key]; !ok || twice {
			r.problems.add(here, fmt.Sprintf("%q: a computed block has lines key: value, each key once", line))
			continue
		}
		c.Keys[key], c.At[key] = strings.TrimSpace(value), here
	}
	return c
}
