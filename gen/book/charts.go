package book

import (
	"fmt"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// wallChart is one sheet of the chart of waits.
type wallChart struct {
	Paper        paper
	Sheet, Of    int
	Title, Where string
	Kept         string // how the prints of the coverages' columns wait
	Heads        []gridHead
	Rows         []chartRow
	Stamp        string
	Path         string
	From, To     int // rows, counted from 1
}

// chartRow is one print on a wall chart.
type chartRow struct {
	Ink, Medium string
	Tall        bool
	Cells       []gridCell
}

// height is a row's height in mm.
func (r chartRow) height(p paper) float64 {
	if r.Tall {
		return tallRowCaps * p.Cap
	}
	return rowCaps * p.Cap
}

// chartPages adds the wall charts of waits on each paper that the shop asks
// for, their style sheets, and the list of stamps.
func (b *builder) chartPages() {
	var all []wallChart
	for _, name := range b.shop.Front.Charts.Paper {
		for _, p := range papers {
			if p.Name == name {
				all = append(all, b.waitCharts(p)...)
				b.file("style/paper-"+p.Slug()+".css", []byte(p.CSS()))
			}
		}
	}
	for _, c := range all {
		b.add(page{Path: c.Path, Kind: "wallchart", Title: c.Title + ", " + c.Paper.Name + ", sheet " + fmt.Sprint(c.Sheet), Tab: "Charts", Bare: true, Data: c})
	}
	b.add(page{Path: "charts/index.html", Kind: "charts", Title: "Wall charts", Lead: "To print, laminate and hang. The stamp tells whether the one on the wall is still right.", Tab: "Charts", Data: all, Found: "list", Also: []string{"poster", "stamp"}})
}

// rowsOf is the rows of one sheet: from, up to and without to.
type rowsOf struct{ from, to int }

// split parts rows into sheets of a paper: each takes what fits.
func split(p paper, rows []chartRow) []rowsOf {
	var sheets []rowsOf
	first, used := 0, 0.0
	for i, r := range rows {
		if i > first && used+r.height(p) > p.roomForRows() {
			sheets = append(sheets, rowsOf{first, i})
			first, used = i, 0
		}
		used += r.height(p)
	}
	if first < len(rows) {
		sheets = append(sheets, rowsOf{first, len(rows)})
	}
	return sheets
}

// waitCharts sets the shop's list of prints on as many sheets of a paper as it
// takes.
func (b *builder) waitCharts(p paper) []wallChart {
	heads, rows := b.chartRows(p)
	room, storage := b.shop.Room(b.shop.Front.Room.ID), b.shop.Storage(b.shop.Front.Storage.ID)
	sheets := split(p, rows)
	charts := make([]wallChart, len(sheets))
	for i, s := range sheets {
		c := &charts[i]
		*c = wallChart{Paper: p, Sheet: i + 1, Of: len(sheets), Title: "Hours to wait",
			Where: upperFirst(room.Name) + ", " + climate(room), Kept: lowerFirst(short(storage.Name)),
			Heads: heads, Rows: rows[s.from:s.to], From: s.from + 1, To: s.to}
		c.Path = "charts/waits-" + p.Slug() + ".html"
		if len(sheets) > 1 {
			c.Path = fmt.Sprintf("charts/waits-%s-%d.html", p.Slug(), i+1)
		}
		c.Stamp = c.stamp()
	}
	return charts
}

// stamp is the code of what a sheet says, whatever paper it is on.
func (c wallChart) stamp() string {
	var parts [][]byte
	put := func(words ...string) { parts = append(parts, []byte(strings.Join(words, "\x00"))) }
	put(c.Title, c.Where, c.Kept)
	for _, h := range c.Heads {
		put(h.Top, h.Under)
	}
	for _, r := range c.Rows {
		put(r.Ink, r.Medium)
		for _, cell := range r.Cells {
			put(cell.Text, cell.Verdict)
		}
	}
	return stamp(parts...)
}

// chartRows makes the rows: each coverage in the usual storage and room, then
// normal coverage in the coldest room, then on a tight roll or in a stack.
func (b *builder) chartRows(p paper) ([]gridHead, []chartRow) {
	cold := b.coldestRoom()
	heads := []gridHead{{Top: "light"}, {Top: "normal"}, {Top: "heavy"},
		{Top: quantity.Metric(cold.Temperature.Best), Under: "normal, " + lowerFirst(short(cold.Name)) + " " + quantity.Imperial(cold.Temperature.Best)},
		{Top: "tight", Under: "normal, rolled or stacked"}}
	width, _ := p.content()
	names := (width - p.column()*float64(len(heads))) / p.Cap
	var rows []chartRow
	for _, pair := range b.shop.Front.Charts.Waits {
		ink, m := b.shop.Ink(pair.Ink.ID), b.shop.Medium(pair.Medium.ID)
		if ink == nil || m == nil {
			continue
		}
		c := b.usual(ink, m)
		r := chartRow{Ink: upperFirst(ink.Name), Medium: "on " + lowerFirst(short(m.Name)) + weightOf(m), Tall: textWidth(upperFirst(ink.Name)) > names-0.4}
		for _, coverage := range tables.Coverages {
			one := c
			one.Coverage = coverage
			r.Cells = append(r.Cells, b.chartCell(one))
		}
		one := c
		one.Room = cold.ID
		r.Cells = append(r.Cells, b.chartCell(one))
		r.Cells = append(r.Cells, b.shutIn(c, m))
		rows = append(rows, r)
	}
	return heads, rows
}

// weightOf tells papers of one name apart by their weight.
func weightOf(m *shop.Medium) string {
	if m.Class != "paper" && m.Class != "board" && m.Class != "photo" {
		return ""
	}
	finish := ""
	if m.Class == "paper" && m.Coated && !strings.Contains(short(m.Name), m.Finish) {
		finish = " " + m.Finish
	}
	return finish + " " + quantity.Metric(m.Grammage.Best)
}

func (b *builder) chartCell(c tables.WaitCase) gridCell {
	v, ok := b.waits.get(c)
	if !ok {
		return gridCell{}
	}
	cell := waitCell(v)
	if !v.Dries {
		cell.Text = ""
	}
	return cell
}

// shutIn is the wait of a print without air at its face.
func (b *builder) shutIn(c tables.WaitCase, m *shop.Medium) gridCell {
	for _, s := range b.answers.StoragesFor(m) {
		if s.Kind == "tight-roll" || s.Kind == "stack" {
			c.Storage = s.ID
			return b.chartCell(c)
		}
	}
	return gridCell{}
}

func (b *builder) coldestRoom() *shop.Room {
	cold := b.shop.Rooms[0]
	for _, r := range b.shop.Rooms {
		if r.Temperature.Best < cold.Temperature.Best {
			cold = r
		}
	}
	return cold
}
