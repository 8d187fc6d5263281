package book

import (
	"fmt"
	"strings"

	"laydown/gen/book/draw"
)

// chartLayout is how a chart stands on a paper: the widths of its columns and
// the heights of its parts. The chart's style sheet is made from it, so that
// the page and the count of rows on a sheet cannot part.
type chartLayout struct {
	Paper   paper
	Slug    string    // of the chart and the paper
	Columns []float64 // of numbers, in cap heights
	names   float64   // what is left for the names of rows, in cap heights
	title   float64   // heights, in cap heights
	groups  float64
	heads   float64 // with the two rules
	foot    float64
}

// The measures of a chart, in cap heights unless they say mm. A line of type is
// as high as its size, and a size is a cap height over seven tenths.
const (
	em          = 1 / 0.7
	trimMM      = 8.0 // from the paper's edge to the trim of the laminated chart
	padCaps     = 0.8 // from the trim to the text
	titleEm     = 1.2
	whereEm     = 0.62
	smallEm     = 0.5  // labels over heads, advice
	lineEm      = 0.4  // the line with the stamp
	underEm     = 0.7  // the second unit in a cell: as small as the media's names
	numberEm    = 1.08 // numbers in cells
	leading     = 1.12 // of text in several lines
	groupPad    = 0.18 // over the labels of the heads
	headCaps    = 1.75 // the line of heads
	rulesCaps   = 0.32 // the two rules of the head
	topRuleCaps = 0.2  // the upper of them, alone where a chart has no heads
	rowPadCaps  = 0.16 // over and under what a row says
	underGap    = 0.12 // between a row's name and what stands under it
	nameGap     = 0.4  // right of names
	columnGap   = 0.7  // left of numbers
	groupGap    = 0.5  // left of the labels of heads
	partGap     = 0.3  // under the title, over the foot
	ruleMM      = 0.25 // under each row
)

// pictureCaps is the width of a picture beside a row's words.
const pictureCaps = 11.0

// mediumCap is the height of the capitals of the media's names over those of
// headings and numbers: they read from that much nearer.
const mediumCap = 0.7

// layOut measures a chart on a paper.
func layOut(c wallChart, p paper) chartLayout {
	l := chartLayout{Paper: p, Slug: c.Kind + "-" + p.Slug()}
	width, _ := p.content()
	l.Columns = make([]float64, len(c.Heads))
	for i, h := range c.Heads {
		l.Columns[i] = draw.TextWidth(h.Top)
		for _, r := range c.Rows {
			l.Columns[i] = max(l.Columns[i], r.Cells[i].width())
		}
		l.Columns[i] += columnGap
	}
	at := 0
	for _, g := range c.Groups {
		if g.Span == 1 {
			l.Columns[at] = max(l.Columns[at], groupGap+smallEm*longestPiece(g.Text))
		}
		at += g.Span
	}
	switch {
	case c.Key != nil:
		l.Columns = []float64{c.Key.leadsWidth()}
	case c.Pictured():
		l.Columns = []float64{pictureCaps}
	}
	l.names = width
	for _, w := range l.Columns {
		l.names -= w
	}
	at = 0
	for _, g := range c.Groups {
		w := -groupGap
		for range g.Span {
			w += l.Columns[at]
			at++
		}
		lines := linesOf(g.Text, w/smallEm/draw.RegularShare)
		l.groups = max(l.groups, groupPad+float64(lines)*smallEm*em*leading)
	}
	switch {
	case c.Headed():
		l.heads = headCaps + rulesCaps
	case len(c.Heads) > 0:
		l.heads = rulesCaps
	default:
		l.heads = topRuleCaps
	}
	whereWidth := width - titleEm*draw.TextWidth(c.Title) - 2
	where := float64(linesOf(c.Where, whereWidth/whereEm/draw.RegularShare)) * whereEm * em * leading
	l.title = max(titleEm*em, where) + partGap
	l.foot = partGap
	bold := draw.TextWidth(c.Hazard + " ")
	for _, lines := range []int{linesOf(c.Advice, width/smallEm/draw.RegularShare), linesFrom(bold, c.HazardText, width/smallEm/draw.RegularShare)} {
		l.foot += float64(lines) * smallEm * em * leading
	}
	line := linesOf(c.Imprint, (width-draw.TextWidth("KM-WW")-0.4-1.5)/lineEm/draw.RegularShare)
	l.foot += max(em, float64(line)*lineEm*em*leading)
	return l
}

// width is how wide a cell's widest line runs, in cap heights.
func (c chartCell) width() float64 {
	if c.Verdict != "" {
		return max(markCaps, underEm*draw.RegularShare*draw.TextWidth(c.Word))
	}
	w := 0.0
	for _, line := range c.Lines {
		w = max(w, numberEm*draw.RegularShare*draw.TextWidth(line.Text), underEm*draw.RegularShare*draw.TextWidth(line.Under))
	}
	return w
}

// markCaps is the width of a verdict's mark, and markHigh its height.
const (
	markCaps = 2.8
	markHigh = markCaps * 24 / 132
)

// height is what a cell's lines take, in cap heights.
func (c chartCell) height() float64 {
	h := numberEm * em
	if len(c.Lines) > 0 {
		h = 0
	}
	if c.Word != "" {
		h = markHigh + underGap + underEm*em*leading
	}
	for _, line := range c.Lines {
		h += numberEm * em
		if line.Under != "" {
			h += underEm * em * leading
		}
	}
	return h
}

// height is what the row takes at most, in mm.
func (r chartRow) height(l chartLayout) float64 {
	names := l.names - nameGap
	h := float64(linesOf(r.Name, names)) * em
	h += underGap + float64(linesOf(r.Under, names/mediumCap/draw.RegularShare))*mediumCap*em*leading
	for _, c := range r.Cells {
		h = max(h, c.height())
	}
	return (h+2*rowPadCaps)*l.Paper.Cap + ruleMM
}

// height is that of the row, or of its picture if that is higher.
func (r picturedRow) height(l chartLayout) float64 {
	h := r.chartRow.height(l)
	if r.Picture != "" {
		h = max(h, (pictureCaps/draw.GrainPictureShape+2*rowPadCaps)*l.Paper.Cap+ruleMM)
	}
	return h
}

// room is what is left for rows, in mm.
func (l chartLayout) room() float64 {
	_, h := l.Paper.content()
	return (h - l.title - l.groups - l.heads - l.foot) * l.Paper.Cap
}

// split shares parts among sheets: each takes what fits.
func (l chartLayout) split(parts []chartPart) [][]chartPart {
	var sheets [][]chartPart
	first, used := 0, 0.0
	for i, p := range parts {
		h := p.height(l)
		if i > first && used+h > l.room() {
			sheets = append(sheets, parts[first:i])
			first, used = i, 0
		}
		used += h
	}
	if first < len(parts) {
		sheets = append(sheets, parts[first:])
	}
	return sheets
}

// CSS is the style sheet that sets the chart's page, letters and measures.
func (l chartLayout) CSS() string {
	var b strings.Builder
	p := l.Paper
	fmt.Fprintf(&b, "@page { size: %smm %smm; margin: 0 }\n:root {\n", decimals(p.Width, 1), decimals(p.Height, 1))
	for _, v := range []struct {
		name string
		mm   float64
	}{
		{"w", p.Width}, {"h", p.Height}, {"cap", p.Cap}, {"trim", trimMM}, {"pad", padCaps * p.Cap},
		{"title", l.title * p.Cap}, {"groups", l.groups * p.Cap}, {"heads", headCaps * p.Cap}, {"foot", l.foot * p.Cap},
		{"row-pad", rowPadCaps * p.Cap}, {"under-gap", underGap * p.Cap}, {"name-gap", nameGap * p.Cap}, {"group-gap", groupGap * p.Cap}, {"group-pad", groupPad * p.Cap},
		{"rule", ruleMM}, {"mark", markCaps * p.Cap},
		{"disc", discCaps * p.Cap}, {"box", boxCaps * p.Cap}, {"drawing", drawingCaps * p.Cap}, {"box-rule", boxRule * p.Cap}, {"symbol", symbolCaps * p.Cap}, {"symbol-gap", symbolGap * p.Cap}, {"arrow", arrowCaps * p.Cap},
		{"answer-pad", answerPad * p.Cap}, {"part-rule", partRule * p.Cap}, {"do", doCaps * p.Cap}, {"do-gap", doGap * p.Cap}, {"act-pad", actPad * p.Cap}, {"cure-symbol", cureSymbol * p.Cap}, {"cure-gap", cureGap * p.Cap}, {"cure-pad", curePad * p.Cap},
	} {
		fmt.Fprintf(&b, "  --%s: %smm;\n", v.name, decimals(v.mm, 2))
	}
	for _, v := range []struct {
		name  string
		share float64
	}{
		{"title-em", titleEm}, {"where-em", whereEm}, {"small-em", smallEm}, {"line-em", lineEm}, {"under-em", underEm}, {"number-em", numberEm}, {"medium-em", mediumCap}, {"leading", leading},
	} {
		fmt.Fprintf(&b, "  --%s: %s;\n", v.name, decimals(v.share, 2))
	}
	b.WriteString("}\n")
	fmt.Fprintf(&b, ".cures { grid-template-columns: repeat(%d, minmax(0, 1fr)) }\n", l.abreast())
	for i, w := range l.Columns {
		fmt.Fprintf(&b, ".n%d { width: %smm }\n", i+1, decimals(w*p.Cap, 2))
	}
	return b.String()
}
