package book

import (
	"fmt"
	"io"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// cutPage adds the table of cuts.
func (b *builder) cutPage() {
	all, err := b.answers.Cuts()
	if err != nil {
		b.fault("tables/cuts.html", err)
		return
	}
	p := reckonedPage{
		Caution: b.cautions(shop.BladeCaution),
		CSV:     "/tables/cuts.csv", JSON: "/tables/cuts.json",
		Said: []string{"Hot film on paper wants the grain across the feed, parallel to the roller axes (common practice, no source). These cuts bring it there in every piece. Halving a sheet across its long side turns long grain into short grain; draw an arrow along the grain on every pile."},
	}
	for _, grain := range []string{tables.GrainLong, tables.GrainShort} {
		p.Parts = append(p.Parts, b.cutPart(all, grain))
	}
	b.add(page{Path: "tables/cuts.html", Kind: "reckoned", Title: "Cutting for the grain", Lead: "How to cut a parent sheet so that its grain ends up across the feed.", Tab: "Tables",
		Scripts: []string{"unfold.js"}, Data: p, Found: "table", Also: []string{"parent sheet", "cut sizes", "long grain", "short grain", "cut for grain"}})
	b.export("tables/cuts.csv", func(w io.Writer) error { return tables.WriteCutsCSV(w, all) })
	b.export("tables/cuts.json", func(w io.Writer) error { return tables.WriteCutsJSON(w, all) })
}

// cutPart is the cuts of parent sheets of one grain: pieces down, parents across.
func (b *builder) cutPart(all []tables.CutValue, grain string) reckonedPart {
	part := reckonedPart{ID: grain, Name: grain + " grain", Lead: "The parent’s grain runs along its longer side."}
	if grain == tables.GrainShort {
		part.Lead = "The parent’s grain runs along its shorter side."
	}
	g := grid{ID: "cuts-" + grain, Caption: upperFirst(grain) + " grain: pieces of one parent sheet, their waste under it", Corner: "piece, and the edge that goes in first", Wide: true,
		Note: "A dash is a piece that does not fit that way. Edges are not trimmed first."}
	for _, parent := range tables.ParentSheets {
		g.Heads = append(g.Heads, gridHead{Top: parent.Name})
	}
	for _, piece := range tables.CutPieces {
		for _, lead := range []string{tables.ShortEdge, tables.LongEdge} {
			row := gridRow{Name: piece.Name, Under: lead + " first"}
			var columns []foldColumn
			for _, v := range all {
				if v.Grain != grain || v.Piece != piece.Name || v.Lead != lead {
					continue
				}
				id := grain + "." + slug(v.Parent+" "+piece.Name+" "+lead)
				cell := gridCell{Text: "–", Href: "#" + id}
				text := "none"
				if n := v.Right.Pieces; n > 0 {
					cell.Text, cell.Under = fmt.Sprint(n), fmt.Sprintf("%.0f\u00a0%%", v.Right.Waste.Percent())
					text = plural(n, "piece", "pieces")
				}
				row.Cells = append(row.Cells, cell)
				columns = append(columns, foldColumn{workingCell{ID: id, Room: v.Parent, Text: text}, v.Working})
			}
			g.Rows = append(g.Rows, row)
			part.Folds = append(part.Folds, b.fold(piece.Name+", "+lead+" first", columns))
		}
	}
	part.Grids = []grid{g}
	return part
}
