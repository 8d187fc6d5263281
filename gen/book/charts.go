package book

import (
	"cmp"
	"encoding/csv"
	"fmt"
	"html/template"
	"io"
	"slices"
	"strings"
)

// wallChart is a chart, or one sheet of it on a paper.
type wallChart struct {
	Kind               string // in its path: waits, windows-<laminator>
	Title, Where       string
	First              string       // what the rows are
	For                string       // tells it from other charts of its title
	Groups             []chartGroup // labels over the heads
	Heads              []gridHead
	Rows               []chartRow
	Pictures           []template.HTML // one beside each row's words, or none at all
	Key                *chartKey       // in place of a table
	Advice             string          // how to read it
	Hazard, HazardText string
	Names              string // what the smaller lines under names are

	Layout    chartLayout
	Sheet, Of int
	Imprint   string // the line beside the stamp
	Stamp     string
	Path      string
	Parts     []chartPart // of this sheet
	Span      string      // which they are
}

// chartGroup is a label over one head or more.
type chartGroup struct {
	Text string
	Span int
}

// chartRow is one row of a wall chart: its name, what stands under it, and its
// values.
type chartRow struct {
	Name, Under string
	Cells       []chartCell
}

// chartCell is one value, of a line or more, or a verdict in its place.
type chartCell struct {
	Lines   []chartLine
	Verdict string
	Said    string // what the verdict's mark means, for those who listen
	Word    string // the same for all to read, under the mark
}

// chartLine is a number with the same in another unit under it.
type chartLine struct{ Text, Under string }

// chartList is a chart with its sheets on every paper, as the list of stamps
// shows it.
type chartList struct {
	Title, For string
	Papers     []chartSheets
}

// Name tells the chart from all others.
func (l chartList) Name() string {
	if l.For == "" {
		return l.Title
	}
	return l.Title + ", " + l.For
}

// chartPlace is where a chart stands in the list of stamps.
func chartPlace(title, of string) string {
	return "/charts/index.html#" + slug(chartList{Title: title, For: of}.Name())
}

// chartSheets are the sheets of a chart on one paper.
type chartSheets struct {
	Paper  paper
	Sheets []wallChart
}

// chartPages adds every wall chart on each paper that the shop asks for, their
// style sheets, and the list of stamps.
func (b *builder) chartPages() {
	var lists []chartList
	for _, chart := range b.wallCharts() {
		l := chartList{Title: chart.Title, For: chart.For}
		for _, name := range b.shop.Front.Charts.Paper {
			for _, p := range papers {
				if p.Name == name {
					l.Papers = append(l.Papers, chartSheets{p, b.sheets(chart, p)})
				}
			}
		}
		for _, on := range l.Papers {
			for _, c := range on.Sheets {
				b.add(page{Path: c.Path, Kind: "wallchart", Title: c.Title + ", " + on.Paper.Name + ", sheet " + fmt.Sprint(c.Sheet), Tab: "Charts", Bare: true, Data: c})
			}
		}
		lists = append(lists, l)
	}
	b.export(stampsPath, func(w io.Writer) error { return writeStamps(w, lists) })
	b.add(page{Path: "charts/index.html", Kind: "charts", Title: "Wall charts", Lead: "To print, laminate and hang. The stamp tells whether the one on the wall is still right.", Tab: "Charts", Data: lists, Found: "list", Also: []string{"poster", "stamp"}})
}

// stampsPath is the file of all stamps.
const stampsPath = "charts/stamps.csv"

// writeStamps writes the stamp of every sheet.
func writeStamps(w io.Writer, lists []chartList) error {
	out := csv.NewWriter(w)
	err := out.Write([]string{"chart", "paper", "sheet", "holds", "stamp", "page"})
	for _, l := range lists {
		for _, on := range l.Papers {
			for _, c := range on.Sheets {
				err = cmp.Or(err, out.Write([]string{l.Name(), on.Paper.Name, fmt.Sprintf("sheet %d", c.Sheet), c.Span, c.Stamp, c.Path}))
			}
		}
	}
	out.Flush()
	return cmp.Or(err, out.Error())
}

// wallCharts are the charts that the shop has rows for.
func (b *builder) wallCharts() []wallChart {
	var list []wallChart
	if c, ok := b.cautionChart(); ok {
		list = append(list, c)
	}
	if c := b.waitChart(); len(c.Rows) > 0 {
		list = append(list, c)
	}
	list = append(list, b.matrixCharts()...)
	list = append(list, b.windowCharts()...)
	if c, ok := b.stackChart(); ok {
		list = append(list, c)
	}
	list = append(list, b.noticeCharts()...)
	return append(list, b.keyCharts()...)
}

// Headed says that the chart has heads as large as its numbers.
func (c wallChart) Headed() bool {
	return slices.ContainsFunc(c.Heads, func(h gridHead) bool { return h.Top != "" })
}

// sheets sets a chart on as many sheets of a paper as it takes, and adds the
// style sheet that they share.
func (b *builder) sheets(chart wallChart, p paper) []wallChart {
	chart.Imprint = b.imprint(chart, p, 99, 99)
	chart.Layout = layOut(chart, p)
	b.file("style/chart-"+chart.Layout.Slug+".css", []byte(chart.Layout.CSS()))
	sheets := chart.Layout.split(chart.parts(chart.Layout))
	list := make([]wallChart, len(sheets))
	first := 1
	for i, parts := range sheets {
		c := chart
		c.Sheet, c.Of, c.Parts, c.Span = i+1, len(sheets), parts, rowSpan(first, len(parts))
		if c.Key != nil {
			c.Span = keySpan(parts)
		}
		first += len(parts)
		c.Imprint = b.imprint(chart, p, c.Sheet, c.Of)
		c.Path = chartPath(c.Layout.Slug, c.Sheet, c.Of)
		c.Stamp = c.stamp()
		list[i] = c
	}
	return list
}

// Pictured says that the chart has pictures beside its words.
func (c wallChart) Pictured() bool { return len(c.Pictures) > 0 }

// picturedRow is a row with a picture, which may be empty, beside its words.
type picturedRow struct {
	chartRow
	Picture template.HTML
}

func (r picturedRow) words() [][]string {
	return append(r.chartRow.words(), []string{string(r.Picture)})
}

// parts are what a chart's sheets are made of: the rows of its table, or what its key has.
func (c wallChart) parts(l chartLayout) []chartPart {
	if c.Key != nil {
		return c.Key.parts(l)
	}
	list := make([]chartPart, len(c.Rows))
	for i, r := range c.Rows {
		list[i] = r
		if c.Pictured() {
			list[i] = picturedRow{r, c.Pictures[i]}
		}
	}
	return list
}

// rowSpan says which rows a sheet holds.
func rowSpan(first, rows int) string {
	if rows == 1 {
		return fmt.Sprintf("row %d", first)
	}
	return fmt.Sprintf("rows %d–%d", first, first+rows-1)
}

// chartPath is where a sheet stands.
func chartPath(slug string, sheet, of int) string {
	if of == 1 {
		return "charts/" + slug + ".html"
	}
	return fmt.Sprintf("charts/%s-%d.html", slug, sheet)
}

// imprint is the line beside the stamp: whose it is, of what day, which sheet,
// and from how far it reads.
func (b *builder) imprint(c wallChart, p paper, sheet, of int) string {
	front := b.shop.Front
	text := fmt.Sprintf("%s. Revised %s. %s, sheet %d of %d. Headings and numbers read from %s, %s from %s.",
		front.Name, day(front.Revised, "2 January 2006"), p.Name, sheet, of, p.Far(), c.Names, p.Near())
	if front.Invented {
		text += " Invented demo data."
	}
	return text
}

// stamp is the code of what a sheet says, whatever paper it is on.
func (c wallChart) stamp() string {
	var parts [][]byte
	put := func(words ...string) { parts = append(parts, []byte(strings.Join(words, "\x00"))) }
	put(c.Title, c.Where, c.Advice, c.Hazard, c.HazardText)
	for _, g := range c.Groups {
		put(g.Text, fmt.Sprint(g.Span))
	}
	for _, h := range c.Heads {
		put(h.Top, h.Under)
	}
	for _, p := range c.Parts {
		for _, words := range p.words() {
			put(words...)
		}
	}
	return stamp(parts...)
}

// words are all that a row says.
func (r chartRow) words() [][]string {
	list := [][]string{{r.Name, r.Under}}
	for _, cell := range r.Cells {
		list = append(list, []string{"", cell.Verdict})
		if cell.Word != "" {
			list = append(list, []string{cell.Word})
		}
		for _, line := range cell.Lines {
			list = append(list, []string{line.Text, line.Under})
		}
	}
	return list
}
