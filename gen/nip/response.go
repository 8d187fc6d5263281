package nip

import "laydown/gen/quantity"

// Place is a place in the stack whose temperature is recorded against time.
type Place int

// The places. Where the pass has no film, those of the film are the print's
// face; where it has no print, those of the print are the film's adhesive face.
const (
	// FilmFace is the film's outer face.
	FilmFace Place = iota
	// AdhesiveFace is the adhesive's face towards the print. It comes to the nip
	// hot from the wrap and falls at the first touch.
	AdhesiveFace
	// BondLine is the print's face under the adhesive, ink or coating: what the
	// adhesive has to wet. It comes cold and rises, so that both sides of the
	// bond have been as hot as its highest temperature.
	BondLine
	// PrintMiddle is half way through the print.
	PrintMiddle
	// PrintBack is the back of the print.
	PrintBack
	// Places is how many there are.
	Places = iota
)

// Cell is a cell of the stack from top to bottom.
type Cell struct {
	Part  Part
	Layer int             // index in the list of the pass; 0 for a cover
	At    quantity.Length // where its temperature is, below the top of its part
	Width quantity.Length
}

// Part names a part of the stack.
type Part int

// The parts from top to bottom.
const (
	UpperCover Part = iota
	FilmPart
	PrintPart
	LowerFilmPart
	LowerCover
)

// Response is what a pass makes of its temperatures. Its storage is kept from
// one Run to the next.
type Response struct {
	// Cells are those of the profiles.
	Cells []Cell
	// First is the first piece: covers uniformly at their rollers' temperatures.
	First Case
	// Steady is the steady run: each cover comes round as it was a turn before.
	Steady Case
}

// Case is the first piece or the steady run.
type Case struct {
	// Times of the records, from the first touch of adhesive and print; the
	// time on the roller ahead of the nip is negative.
	Times []quantity.Time
	// Records are the responses at those times.
	Records [][Places]Row
	// Touch is the record at first touch, NipEnd that at the end of the nip.
	Touch, NipEnd int
	// Profile is the response of each cell at the end of the nip.
	Profile []Row
	// PrintMean is the print's mean, by heat, at the end of the nip.
	PrintMean Row
	// LastMean is the print's mean, by heat, at the last record.
	LastMean Row
	// UpperSurface and LowerSurface are the covers' surfaces just before they
	// meet film or stack; UpperCore and LowerCore their inner sides.
	UpperSurface, LowerSurface Row
	UpperCore, LowerCore       Row
}

// reset empties the case and keeps its storage.
func (c *Case) reset(cells int) {
	c.Times, c.Records = c.Times[:0], c.Records[:0]
	if cap(c.Profile) < cells {
		c.Profile = make([]Row, cells)
	}
	c.Profile = c.Profile[:cells]
}

// record appends a record and returns it, with nothing in it yet.
func (c *Case) record(at float64) *[Places]Row {
	c.Times = append(c.Times, quantity.Time(at))
	n := len(c.Records)
	if n < cap(c.Records) {
		c.Records = c.Records[:n+1]
		c.Records[n] = [Places]Row{}
	} else {
		c.Records = append(c.Records, [Places]Row{})
	}
	return &c.Records[n]
}
