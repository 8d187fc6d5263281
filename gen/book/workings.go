package book

import (
	"slices"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// workingsPage is every wait of an ink on a medium, and their workings.
type workingsPage struct {
	Ink    *shop.Ink
	Medium *shop.Medium
	Grid   grid
	First  string // what to measure first
	Shared []workingStep
	Folds  []workingFold
}

// workingFold is the workings of one print kept one way, room beside room.
type workingFold struct {
	ID    string // of the fold itself; may be empty
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

func (b *builder) workings(ink *shop.Ink, m *shop.Medium) workingsPage {
	p := workingsPage{Ink: ink, Medium: m, First: b.firstOf(b.usual(ink, m)),
		Grid: grid{ID: "waits", Caption: "Hours to wait, by room", Corner: "coverage, kept", Wide: true}}
	for _, r := range b.shop.Rooms {
		p.Grid.Heads = append(p.Grid.Heads, roomHead(r))
	}
	usual := b.usual(ink, m)
	for _, c := range tables.Coverages {
		for _, s := range b.answers.StoragesFor(m) {
			one := tables.WaitCase{Ink: ink.ID, Medium: m.ID, Coverage: c, Storage: s.ID}
			var cases []tables.WaitCase
			for _, r := range b.shop.Rooms {
				one.Room = r.ID
				cases = append(cases, one)
			}
			row := b.row(c+", "+lowerFirst(short(s.Name)), "", "", cases)
			row.Yours = c == usual.Coverage && s.ID == usual.Storage
			p.Grid.Rows = append(p.Grid.Rows, row)
			fold := b.workingFold(one)
			fold.ID = c + "." + s.ID
			p.Folds = append(p.Folds, fold)
		}
	}
	p.Grid = p.Grid.withSigns()
	p.Shared = shared(p.Folds)
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

// fold lines up the steps of several values.
func (b *builder) fold(name string, columns []foldColumn) workingFold {
	f := workingFold{Name: name}
	lines := newStepLines(b, len(columns))
	for i, c := range columns {
		f.Cells = append(f.Cells, c.workingCell)
		lines.add(i, c.working)
	}
	f.Steps, f.Notes = lines.lined()
	return f
}

// stepLines line up the steps of several workings beside one another.
type stepLines struct {
	b     *builder
	n     int // how many workings
	at    map[string]int
	steps []workingStep
	notes []string
}

func newStepLines(b *builder, n int) *stepLines {
	return &stepLines{b: b, n: n, at: map[string]int{}}
}

// add takes the i-th working. A step that another lacks leaves a gap there; one that
// says the same words twice stands twice.
func (l *stepLines) add(i int, w tables.Working) {
	seen := map[string]int{}
	for _, s := range w.Steps {
		key := s.Symbol + "\x00" + s.Text
		seen[key]++
		key += strings.Repeat("'", seen[key])
		k, ok := l.at[key]
		if !ok {
			k = len(l.steps)
			l.at[key] = k
			l.steps = append(l.steps, workingStep{Symbol: s.Symbol, Text: s.Text, Source: l.b.source(s.Source), Shown: make([]string, l.n)})
		}
		l.steps[k].Shown[i] = s.Shown
	}
	for _, note := range w.Notes {
		if !slices.Contains(l.notes, note) {
			l.notes = append(l.notes, note)
		}
	}
}

// lined are the lines, those marked that say the same for all, and the notes.
func (l *stepLines) lined() ([]workingStep, []string) {
	for k := range l.steps {
		l.steps[k].Same = allEqual(l.steps[k].Shown)
	}
	return l.steps, l.notes
}

func allEqual(list []string) bool {
	for _, s := range list {
		if s != list[0] {
			return false
		}
	}
	return true
}

// shared takes the steps that say the same in every fold out of them, so that a
// page of many folds says them once. The order stays.
func shared(folds []workingFold) []workingStep {
	if len(folds) < 2 {
		return nil
	}
	said := func(f workingFold, s workingStep) bool {
		return slices.ContainsFunc(f.Steps, func(o workingStep) bool {
			return o.Symbol == s.Symbol && o.Text == s.Text && o.Same && s.Same && o.Shown[0] == s.Shown[0]
		})
	}
	everywhere := func(s workingStep) bool {
		return !slices.ContainsFunc(folds, func(f workingFold) bool { return !said(f, s) })
	}
	var all []workingStep
	for _, s := range folds[0].Steps {
		if everywhere(s) {
			all = append(all, s)
		}
	}
	for i := range folds {
		folds[i].Steps = slices.DeleteFunc(folds[i].Steps, func(s workingStep) bool {
			return slices.ContainsFunc(all, func(o workingStep) bool { return o.Symbol == s.Symbol && o.Text == s.Text })
		})
	}
	return all
}
