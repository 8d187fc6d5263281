package roll

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Sheet is a parent sheet by its sides along and across the grain.
type Sheet struct {
	AlongGrain, AcrossGrain quantity.Length
}

// Cut is a way to cut a parent sheet into equal pieces that all lie the same way.
type Cut struct {
	Rows    int // pieces one after another along the grain
	Columns int // beside one another across it
	Pieces  int
	// Waste is the share of the sheet that is on no piece.
	Waste quantity.Fraction
	// Cuts are the lines of cut, right through or across a strip at one setting.
	Cuts int
	// OverAlong and OverAcross are what is left over past the last piece, trim apart.
	OverAlong, OverAcross quantity.Length
}

// CutInto cuts a sheet into pieces by their sides along and across the grain, after a
// trim off each edge. Pieces that do not fit are no error: there are then none.
func (s Sheet) CutInto(alongGrain, acrossGrain, trim quantity.Length) (Cut, error) {
	if !positive(float64(s.AlongGrain)) || !positive(float64(s.AcrossGrain)) || !positive(float64(alongGrain)) || !positive(float64(acrossGrain)) || !notNegative(float64(trim)) {
		return Cut{}, fmt.Errorf("a sheet of %g by %g m cut into pieces of %g by %g m after a trim of %g m: sides must be above 0, the trim 0 or more",
			float64(s.AlongGrain), float64(s.AcrossGrain), float64(alongGrain), float64(acrossGrain), float64(trim))
	}
	var c Cut
	var cutsAlong, cutsAcross int
	c.Rows, c.OverAlong, cutsAlong = fit(s.AlongGrain-2*trim, alongGrain, trim > 0)
	c.Columns, c.OverAcross, cutsAcross = fit(s.AcrossGrain-2*trim, acrossGrain, trim > 0)
	c.Pieces = c.Rows * c.Columns
	c.Waste = 1 - quantity.Fraction(float64(c.Pieces)*float64(alongGrain*acrossGrain)/float64(s.AlongGrain*s.AcrossGrain))
	if c.Pieces > 0 {
		c.Cuts = cutsAlong + cutsAcross
	}
	return c, nil
}

// fit lays pieces one after another on a side: how many, what is left over, and the cuts
// that part them from each other, from what is left over and from a trim at both ends.
func fit(side, piece quantity.Length, trimmed bool) (n int, over quantity.Length, cuts int) {
	if side <= 0 {
		return 0, 0, 0
	}
	n = int(math.Floor(float64(side/piece) + hair))
	over = max(side-quantity.Length(n)*piece, 0)
	cuts = max(n-1, 0)
	if trimmed {
		cuts += 2
	}
	if over > side*hair && !trimmed {
		cuts++ // a trim's cut already takes it off
	}
	return n, over, cuts
}

// Feeds are the two ways to cut a sheet into pieces that are fed one way round.
type Feeds struct {
	// Across has the grain of every piece across the feed, parallel to the roller axes;
	// Along has it along the feed.
	Across, Along Cut
}

// ForFeed cuts a sheet into pieces as they are fed, so that the grain comes to lie across
// the feed, and the other way for comparison.
func (s Sheet) ForFeed(p Piece, trim quantity.Length) (Feeds, error) {
	across, err := s.CutInto(p.Across, p.Along, trim)
	if err != nil {
		return Feeds{}, err
	}
	along, err := s.CutInto(p.Along, p.Across, trim)
	return Feeds{across, along}, err
}
