package book

import (
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// workingsPage is every working of one ink.
type workingsPage struct {
	Ink    *shop.Ink
	Heads  []gridHead
	Groups []workingGroup
	Signs  []sign
}

type workingGroup struct {
	Medium  string // name
	ID      string
	Folds   []workingFold
	Storage string
	First   string // what to measure first
}

// workingFold is the workings of one print kept one way, room beside room.
type workingFold struct {
	Name  string
	Cells []workingCell
	Steps []workingStep
	Notes []string
}

type workingCell struct{ ID, Text, Room string }

type workingStep struct {
	Symbol, Text string
	Source       *sourceView
	Shown        []string
	Same         bool // one value for all rooms
}

func (b *builder) workings(ink *shop.Ink) workingsPage {
	p := workingsPage{Ink: ink}
	for _, r := range b.shop.Rooms {
		p.Heads = append(p.Heads, roomHead(r))
	}
	for _, m := range b.mediaOf(ink) {
		g := workingGroup{Medium: m.Name, ID: m.ID, First: b.firstOf(b.usual(ink, m))}
		for _, c := range tables.Coverages {
			for _, s := range b.answers.StoragesFor(m) {
				g.Folds = append(g.Folds, b.workingFold(tables.WaitCase{Ink: ink.ID, Medium: m.ID, Coverage: c, Storage: s.ID}))
			}
		}
		p.Groups = append(p.Groups, g)
	}
	return p
}

// workingFold lines up the steps of a case in every room.
func (b *builder) workingFold(c tables.WaitCase) workingFold {
	var columns []foldColumn
	for _, r := range b.shop.Rooms {
		c.Room = r.ID
		v, ok := b.waits.get(c)
		if !ok {
			continue
		}
		column := foldColumn{workingCell{ID: workingID(c), Text: "hardly dries", Room: r.Name}, v.Working}
		if v.Dries {
			column.Text = quantity.Metric(v.Wait)
		}
		columns = append(columns, column)
	}
	return b.fold(c.Coverage+" coverage, "+lowerFirst(short(b.shop.Storage(c.Storage).Name)), columns)
}

// foldColumn is one value with its working.
type foldColumn struct {
	workingCell
	working tables.Working
}

// fold lines up the steps of several values. A step that one lacks leaves a gap.
func (b *builder) fold(name string, columns []foldColumn) workingFold {
	f := workingFold{Name: name}
	at := map[string]int{}
	noted := map[string]bool{}
	for i, c := range columns {
		f.Cells = append(f.Cells, c.workingCell)
		seen := map[string]int{}
		for _, s := range c.working.Steps {
			key := s.Symbol + "\x00" + s.Text
			seen[key]++
			key += strings.Repeat("'", seen[key])
			k, ok := at[key]
			if !ok {
				k = len(f.Steps)
				at[key] = k
				f.Steps = append(f.Steps, workingStep{Symbol: s.Symbol, Text: s.Text, Source: b.source(s.Source), Shown: make([]string, len(columns))})
			}
			f.Steps[k].Shown[i] = s.Shown
		}
		for _, n := range c.working.Notes {
			if !noted[n] {
				noted[n] = true
				f.Notes = append(f.Notes, n)
			}
		}
	}
	for k := range f.Steps {
		f.Steps[k].Same = allEqual(f.Steps[k].Shown)
	}
	return f
}

func allEqual(list []string) bool {
	for _, s := range list {
		if s != list[0] {
			return false
		}
	}
	return true
}
