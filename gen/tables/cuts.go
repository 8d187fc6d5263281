package tables

import (
	"fmt"

	"laydown/gen/quantity"
	"laydown/gen/roll"
)

// ParentSheet is a sheet that pieces are cut from, with its grain along its longer side
// (long) or its shorter.
type ParentSheet struct {
	Name       string
	Short, Far quantity.Length // its sides
}

// ParentSheets are usual parent sheets: RA and SRA of ISO 217, B1 as the trade rounds it,
// and sizes of the United States (common practice, no source).
var ParentSheets = []ParentSheet{
	{"RA1 610 × 860 mm", 0.610, 0.860},
	{"SRA1 640 × 900 mm", 0.640, 0.900},
	{"SRA2 450 × 640 mm", 0.450, 0.640},
	{"B1 700 × 1000 mm", 0.700, 1.000},
	{"25 × 38 in", 25 * quantity.Inch, 38 * quantity.Inch},
	{"20 × 26 in", 20 * quantity.Inch, 26 * quantity.Inch},
}

// CutPieces are the pieces of the table.
var CutPieces = []struct {
	Name       string
	Short, Far quantity.Length
}{
	{"SRA3 320 × 450 mm", 0.320, 0.450},
	{"A3 297 × 420 mm", 0.297, 0.420},
	{"A4 210 × 297 mm", 0.210, 0.297},
	{"12 × 18 in", 12 * quantity.Inch, 18 * quantity.Inch},
}

// CutValue says how to cut a parent sheet so that the grain of its pieces lies across the
// feed, parallel to the roller axes, as hot film on paper wants it.
type CutValue struct {
	Parent, Grain string // its name; long or short
	Piece         string
	// Lead is the edge of the piece that goes in first: short edge or long edge.
	Lead string
	// Right has the grain across the feed, Wrong along it.
	Right, Wrong roll.Cut
	// Takes are the laminators (ids) wide enough for the piece fed like this.
	Takes   []string
	Working Working
}

// The words of a cut.
const (
	ShortEdge  = "short edge"
	LongEdge   = "long edge"
	GrainLong  = "long"
	GrainShort = "short"
)

// Cuts computes every parent sheet, grain, piece and way of feeding.
func (t *Tables) Cuts() ([]CutValue, error) {
	var list []CutValue
	for _, parent := range ParentSheets {
		for _, grain := range []string{GrainLong, GrainShort} {
			for _, piece := range CutPieces {
				for _, lead := range []string{ShortEdge, LongEdge} {
					p := roll.Piece{Across: piece.Short, Along: piece.Far}
					if lead == LongEdge {
						p = roll.Piece{Across: piece.Far, Along: piece.Short}
					}
					v, err := t.cut(parent, grain, p)
					if err != nil {
						return nil, fmt.Errorf("%s into %s: %w", parent.Name, piece.Name, err)
					}
					v.Piece, v.Lead = piece.Name, lead
					list = append(list, v)
				}
			}
		}
	}
	return list, nil
}

func (t *Tables) cut(parent ParentSheet, grain string, p roll.Piece) (CutValue, error) {
	s := roll.Sheet{AlongGrain: parent.Far, AcrossGrain: parent.Short}
	if grain == GrainShort {
		s = roll.Sheet{AlongGrain: parent.Short, AcrossGrain: parent.Far}
	}
	feeds, err := s.ForFeed(p, 0)
	if err != nil {
		return CutValue{}, err
	}
	v := CutValue{Parent: parent.Name, Grain: grain, Right: feeds.Across, Wrong: feeds.Along}
	for _, m := range t.shop.Laminators {
		if p.Across <= m.Width.Best {
			v.Takes = append(v.Takes, m.ID)
		}
	}
	v.Working = Working{Steps: []Step{
		step("", "the sheet along its grain", s.AlongGrain, "m", ""),
		step("", "across it", s.AcrossGrain, "m", ""),
		step("", "the piece along the roller, which the grain is to follow", p.Across, "m", ""),
		step("", "along the feed", p.Along, "m", ""),
		ratio("", "pieces one after another along the grain", float64(v.Right.Rows)),
		ratio("", "beside one another across it", float64(v.Right.Columns)),
		ratio("", "pieces", float64(v.Right.Pieces)),
		step("", "waste", v.Right.Waste, "", ""),
		ratio("", "lines of cut", float64(v.Right.Cuts)),
		ratio("", "pieces if the grain may lie along the feed", float64(v.Wrong.Pieces)),
	}, Notes: []string{"No edge is trimmed first: a printer's or a guillotine's margin comes off the sheet before that."}}
	return v, nil
}
