package book

import (
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// matrixCharts are the charts of films on prints: a row for each film, a column for
// each print, and in each cell a shape and a word: go, test, no.
func (b *builder) matrixCharts() []wallChart {
	var list []wallChart
	for _, m := range b.shop.Front.Charts.Matrices {
		c := wallChart{Kind: "films-" + slug(m.Name), Title: "Film on print", For: lowerFirst(m.Name), First: "Film", Where: m.Name + ", dry",
			Advice: "Bar: go. Hatched: run a test piece of this job first, and judge it cold. Struck: no; the plan says why. Whatever the film: wait first.",
			Names:  "words and marks"}
		for _, pair := range m.Prints {
			ink, medium := b.shop.Ink(pair.Ink.ID), b.shop.Medium(pair.Medium.ID)
			if ink == nil || medium == nil {
				continue
			}
			c.Heads = append(c.Heads, gridHead{})
			c.Groups = append(c.Groups, chartGroup{lowerFirst(ink.Name) + " on " + lowerFirst(short(medium.Name)) + weightOf(medium), 1})
		}
		for _, ref := range m.Films {
			if film := b.shop.Film(ref.ID); film != nil {
				c.Rows = append(c.Rows, b.matrixRow(film, m.Prints))
			}
		}
		if len(c.Rows) > 0 && len(c.Heads) > 0 {
			list = append(list, c)
		}
	}
	return list
}

func (b *builder) matrixRow(film *shop.Film, prints []shop.Pair) chartRow {
	r := chartRow{Name: upperFirst(film.Name)}
	for _, pair := range prints {
		if b.shop.Ink(pair.Ink.ID) == nil || b.shop.Medium(pair.Medium.ID) == nil {
			continue
		}
		r.Cells = append(r.Cells, matrixCell(b.answers.Pair(pair.Ink.ID, pair.Medium.ID, film.ID, "normal")))
	}
	return r
}

// matrixCell is a verdict on a film by its shape and its word.
func matrixCell(a tables.PairAnswer) chartCell {
	switch {
	case a.Verdict == tables.Change || a.Verdict == tables.Refuse:
		return chartCell{Verdict: "refuse", Word: "no"}
	case a.Test:
		return chartCell{Verdict: "wait", Word: "test"}
	}
	return chartCell{Verdict: "go", Word: "go"}
}
