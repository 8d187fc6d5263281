package book

import (
	"html/template"

	"laydown/gen/tables"
)

// reckonedPage is a page of arithmetic: tables, and the workings of their numbers on the
// same page.
type reckonedPage struct {
	Caution   template.HTML
	Said      []string
	CSV, JSON string
	Up        *item // a page to go on to
	Parts     []reckonedPart
}

type reckonedPart struct {
	ID, Name, Lead string
	Grids          []grid
	Lists          []list
	Folds          []workingFold
}

// foldColumn is one value of a fold: where its working is to be found, what it is for,
// what it says, and the working.
type foldColumn struct {
	ID, For, Text string
	Working       tables.Working
}

// fold lines up the workings of values that stand beside one another. A step that one of
// them lacks leaves a gap.
func (b *builder) fold(name string, columns []foldColumn) workingFold {
	f := workingFold{Name: name}
	at := map[string]int{}
	noted := map[string]bool{}
	for i, c := range columns {
		f.Cells = append(f.Cells, workingCell{ID: c.ID, Text: c.Text, Room: c.For})
		for _, s := range c.Working.Steps {
			key := s.Symbol + "\x00" + s.Text
			k, ok := at[key]
			if !ok {
				k = len(f.Steps)
				at[key] = k
				f.Steps = append(f.Steps, workingStep{Symbol: s.Symbol, Text: s.Text, Source: b.source(s.Source), Shown: make([]string, len(columns))})
			}
			f.Steps[k].Shown[i] = s.Shown
		}
		for _, n := range c.Working.Notes {
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
