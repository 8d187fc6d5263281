package book

import (
	"fmt"
	"io/fs"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/text"

	"laydown/content"
	"laydown/data"
	"laydown/gen/shop"
)

// passage is a stretch of a chapter that stands or falls together: a
// paragraph, a list item, a row of a table, a whole question.
type passage struct {
	line    int
	text    string
	sources []string // ids of its marks
	prose   bool     // whole sentences: no row of a table, no heading
}

// unitWords are the units that a number in a chapter may carry.
var unitWords = []string{"°C", "°F", "K", "%", "h", "hours?", "min", "minutes?", "s", "seconds?", "ms", "days?", "weeks?", "months?", "years?",
	"µm", "mm", "cm", "m", "km", "nm", "mils?", "in", "inch(?:es)?", "ft", "gauge", "mg", "g", "kg", "oz", "lbs?", "ml", "l", "gal",
	"[mc]?m[²³]", "in²", "ft[²³]", "g/m²", "oz/yd²", "lb/ft³", "kg/m³", "mg/m³", "g/m³", "m/min", "mm/s", "m/s", "ft/min", "N/mm", "N/m", "lb/in",
	"Pa", "kPa", "MPa", "GPa", "psi", "ksi", "Pa s", "W/m²", "W", "V", "J/g", "kJ/kg", "kJ/mol", "J/mol", "m²/s", "ppm"}

// measured finds a number with a unit: "24 h", "10 to 20 mm", "0.4-inch", "50 %".
var measured = regexp.MustCompile(`[0-9][0-9.,·⁰¹²³⁴⁵⁶⁷⁸⁹⁻]*(?:[\x{00a0} -]?(?:` + strings.Join(unitWords, "|") + `))(?:[^\pL\pN/²³]|$)`)

// unsourced gives the numbers with a unit in a passage that has no mark of a source.
func (p passage) unsourced() []string {
	if len(p.sources) > 0 {
		return nil
	}
	var list []string
	for _, m := range measured.FindAllString(p.text, -1) {
		list = append(list, strings.TrimSpace(m))
	}
	return list
}

// passages reads a chapter's text.
func passages(name string, src []byte) []passage {
	ix := newLineIndex(name, src)
	_, from := readFront(ix, &problems{})
	return passagesIn(ix, blank(src, from), 0)
}

func passagesIn(ix *lineIndex, src []byte, base int) []passage {
	var list []passage
	add := func(n ast.Node, prose bool) {
		p := passage{line: ix.pos(base + n.Pos()).Line, prose: prose}
		p.read(n, src)
		list = append(list, p)
	}
	doc := markdown.Parser().Parse(text.NewReader(src))
	_ = ast.Walk(doc, func(n ast.Node, in bool) (ast.WalkStatus, error) {
		if !in {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Paragraph, *ast.TextBlock:
			add(n, true)
			return ast.WalkSkipChildren, nil
		case *ast.Heading, *extast.TableRow, *extast.TableHeader:
			add(n, false)
			return ast.WalkSkipChildren, nil
		case *ast.FencedCodeBlock:
			from, to := bodyRange(n)
			body := src[from:to]
			switch string(n.Language(src)) {
			case "note", "caution":
				list = append(list, passagesIn(ix, body, base+from)...)
			case "question":
				list = append(list, questionPassages(ix, string(body), base+from)...)
			}
		}
		return ast.WalkContinue, nil
	})
	return list
}

// questionPassages reads a question as one passage for its numbers, and what
// is asked and why as sentences.
func questionPassages(ix *lineIndex, body string, base int) []passage {
	asked, rest, _ := strings.Cut(body, "\na)")
	_, because, _ := strings.Cut(rest, "\nbecause:")
	whole := passage{line: ix.pos(base).Line}
	for _, p := range passagesIn(ix, []byte(strings.ReplaceAll(body, "\n", "\n\n")), 0) {
		whole.text += p.text + "\n"
		whole.sources = append(whole.sources, p.sources...)
	}
	list := []passage{whole}
	for _, said := range []string{asked, because} {
		for _, p := range passagesIn(ix, []byte(said), 0) {
			// The whole has its numbers already.
			list = append(list, passage{line: whole.line, text: p.text, sources: append(p.sources, "asked above"), prose: true})
		}
	}
	return list
}

// read takes the text of a node and the marks in it. Code is no prose, and a
// quoted value has its source on its page.
func (p *passage) read(n ast.Node, src []byte) {
	_ = ast.Walk(n, func(n ast.Node, in bool) (ast.WalkStatus, error) {
		switch n := n.(type) {
		case *ast.CodeSpan:
			return ast.WalkSkipChildren, nil
		case *extast.TableCell:
			if !in {
				p.text += " | "
			}
		case *ast.Text:
			if in {
				p.text += string(n.Segment.Value(src))
				if n.SoftLineBreak() || n.HardLineBreak() {
					p.text += " "
				}
			}
		case *insert:
			if in && len(n.words) == 2 && n.words[0] == "source" {
				p.sources = append(p.sources, n.words[1])
			}
			if in && len(n.words) == 4 {
				p.text += "value"
			}
		}
		return ast.WalkContinue, nil
	})
}

// TestPassages: the checks below find what they are for.
func TestPassages(t *testing.T) {
	for _, row := range []struct{ text, want string }{
		{"It takes 24 h.", "2: 24 h."},
		{"It takes 24 h {source practice}.", ""},
		{"It takes 24 hours.\n\nAnd 3 mm {source practice}.", "2: 24 hours."},
		{"It takes {value ink eco-solvent maker_wait.wait}.", ""},
		{"Count 10 steps, then 3 of 5.", ""},
		{"At 50 % RH and 1.5 m.", "2: 50 %; 1.5 m."},
		{"A 3-inch core", "2: 3-inch"},
		{"Use `24 h` here.\n\n```\n24 h\n```", ""},
		{"- one\n- 5 K (9 °F)", "3: 5 K; 9 °F)"},
		{"- one\n\n  5 K\n- two {source x}", "4: 5 K"},
		{"| A | B |\n|---|---|\n| 5 mm | x |\n| 6 mm | y {source x} |", "4: 5 mm"},
		{"## In 5 minutes", "2: 5 minutes"},
		{"```note\nA 5 mm gap.\n```", "3: 5 mm"},
		{"```caution\nKnife\nA 5 mm gap.\n```", "3: 5 mm"},
		{"```question\nIn 5 h?\n\na) 6 h\nb) no\nright: a\nbecause: so\n```", "3: 5 h?; 6 h"},
		{"```question\nIn 5 h?\n\na) 6 h\nb) no\nright: a\nbecause: so {source x}\n```", ""},
		{"```computed\nshow: history\nhistory: 20 h hung\n```", ""},
	} {
		var got []string
		for _, p := range passages("x.md", []byte("\n"+row.text+"\n")) {
			if list := p.unsourced(); len(list) > 0 {
				got = append(got, fmt.Sprintf("%d: %s", p.line, strings.Join(list, "; ")))
			}
		}
		if g := strings.Join(got, "\n"); g != row.want {
			t.Errorf("%q:\ngot  %s\nwant %s", row.text, g, row.want)
		}
	}
}

// eachChapter calls with every chapter that comes with the program.
func eachChapter(t *testing.T, f func(t *testing.T, name string, list []passage)) {
	t.Helper()
	names, err := fs.Glob(content.Files, "*.md")
	if err != nil || len(names) < 4 {
		t.Fatal(names, err)
	}
	for _, name := range names {
		src, err := fs.ReadFile(content.Files, name)
		if err != nil {
			t.Fatal(err)
		}
		t.Run(name, func(t *testing.T) { f(t, name, passages(name, src)) })
	}
}

// TestNumbersHaveSources: a number with a unit in a chapter is either set from
// the data or has the mark of a source in its paragraph, item or row. And each
// mark names a source of the data.
func TestNumbersHaveSources(t *testing.T) {
	s, problems := shop.Load(data.Files, nil)
	if err := problems.Err(); err != nil {
		t.Fatal(err)
	}
	eachChapter(t, func(t *testing.T, name string, list []passage) {
		for _, p := range list {
			if numbers := p.unsourced(); len(numbers) > 0 {
				t.Errorf("content/%s:%d: no source beside %s", name, p.line, strings.Join(numbers, "; "))
			}
			for _, id := range p.sources {
				if id != "asked above" && s.Source(id) == nil {
					t.Errorf("content/%s:%d: there is no source %q", name, p.line, id)
				}
			}
		}
	})
}

// longestMean is how many words a chapter's sentences may have on average.
const longestMean = 16

// sentenceEnd parts sentences.
var sentenceEnd = regexp.MustCompile(`[.?!…]["”)*]*(?:\s|$)`)

// TestPlainLanguage measures the sentences of each chapter. Tables, choices of
// questions and headings are left out: they are short and would flatter it.
func TestPlainLanguage(t *testing.T) {
	eachChapter(t, func(t *testing.T, name string, list []passage) {
		sentences, words, longest := 0, 0, 0
		for _, p := range list {
			if !p.prose {
				continue
			}
			for _, s := range sentenceEnd.Split(p.text, -1) {
				n := len(strings.Fields(s))
				if n == 0 {
					continue
				}
				sentences, words, longest = sentences+1, words+n, max(longest, n)
			}
		}
		mean := float64(words) / float64(sentences)
		t.Logf("%d sentences, %.1f words on average, the longest %d", sentences, mean, longest)
		if mean >= longestMean {
			t.Errorf("%s: its sentences have %.1f words on average, at most %d is plain", name, mean, longestMean)
		}
	})
}

// TestWorkedExamples computes the examples of the chapter on arithmetic again
// and looks for the results in its text.
func TestWorkedExamples(t *testing.T) {
	src, err := fs.ReadFile(content.Files, "86-arithmetic.md")
	if err != nil {
		t.Fatal(err)
	}
	roll := func(outside, core, thick float64) float64 { // mm, all three
		return math.Pi * (outside*outside - core*core) / (4 * thick) / 1000
	}
	const inch, foot, pound = 25.4, 0.3048, 0.45359237
	for _, row := range []struct {
		format string
		of     []any
	}{
		{"that is %.1f m (%.0f ft) on %.0f wraps", []any{roll(160, 76.2, 0.075), roll(160, 76.2, 0.075) / foot, (160 - 76.2) / 0.15}},
		{"604 × 851 mm, %.3f m² (%.2f ft²)", []any{0.604 * 0.851, 0.604 * 0.851 / foot / foot}},
		{"620 × 867 mm, %.3f m² (%.2f ft²)", []any{0.62 * 0.867, 0.62 * 0.867 / foot / foot}},
		{"40 × 0.891 + 2 = %.1f m (%.0f ft)", []any{40*0.891 + 2, (40*0.891 + 2) / foot}},
		{"40 × 0.644 + 2 = %.1f m (%.0f ft)", []any{40*0.644 + 2, (40*0.644 + 2) / foot}},
		{"35.6 / 2 = %.1f min running", []any{40 * 0.891 / 2}},
		{"Together %.1f min", []any{40*0.891/2 + 10 + 40*30/60.0}},
		{"200 / 0.96 + 3 = %.1f", []any{200/0.96 + 3}},
		{"208 pieces less 4 %% leave %.1f", []any{208 * 0.96}},
		{"1 × 37.6 × 2 × 0.64 = %.2f; work 47.8 / 60 × 45 = %.2f", []any{37.6 * 2 * 0.64, 47.8 / 60 * 45}},
		{"(48.13 + 35.85) / 0.96 / 40 = %.2f a piece", []any{(48.13 + 35.85) / 0.96 / 40}},
		{"12 × 1.39 + 26 × 0.93 = %.1f g/m²", []any{12*1.39 + 26*0.93}},
		{"times 500 m² is %.1f kg (%.0f lb)", []any{40.86 * 500 / 1000, 40.86 * 500 / 1000 / pound}},
		{"101 + 21 + 85 = %.0f g/m² (6.1 oz/yd²), times %.1f m² is %.1f kg (%.0f lb)",
			[]any{75*1.35 + 20*1.05 + 85, 1.372 * 50, 207.25 * 68.6 / 1000, 207.25 * 68.6 / 1000 / pound}},
		{"8 × 0.06 / 1 = %.2f s", []any{8 * 0.06}},
		{"is %.0f µm at %.1f °C and %.2f m/min", []any{5 * inch, (240 - 32) / 1.8, 5 * foot}},
		{"is %.1f K hotter, and *not* 10 °F as a temperature, which is −%.1f °C", []any{10 / 1.8, (32 - 10) / 1.8}},
		{"80 lb text is %.0f g/m², and 80 lb cover is %.0f g/m²", []any{80 * 1.4801, 80 * 2.7041}},
		{"b) %.0f m (%.0f ft)", []any{roll(120, 88, 0.135), roll(120, 88, 0.135) / foot}},
		{"a) %.0f m (%.0f ft)", []any{roll(120, 88, 0.055), roll(120, 88, 0.055) / foot}},
		{"| 471 mm (%.1f in) | %.0f mm (%.1f in)", []any{471.24 / inch, 471.24 / math.Pi, 150 / inch}},
	} {
		if want := fmt.Sprintf(row.format, row.of...); !strings.Contains(string(src), want) {
			t.Errorf("the chapter lacks %q", want)
		}
	}
}
