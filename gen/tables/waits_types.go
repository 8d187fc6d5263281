package tables

import "laydown/gen/quantity"

// Coverages names the coverages of the tables, lightest first.
var Coverages = []string{"light", "normal", "heavy"}

// WaitCase is one print that waits: what it is and how it is kept.
type WaitCase struct {
	Ink, Medium, Coverage, Storage, Room string // ids
}

// WaitValue is the computed wait of one case.
type WaitValue struct {
	WaitCase
	// Dries is false where the print hardly dries; Reason then says why.
	Dries  bool
	Reason string
	// Computed is what the physics gives, from printing to ready.
	Computed quantity.Time
	// Wait is what the handbook tells: the computed wait, or the least that
	// the record allows, rounded up to a sensible step.
	Wait quantity.Time
	// Maker is the wait that the ink's maker states, for its own conditions.
	Maker quantity.Time
	// Held is true where the record's least wait stands above the computed one.
	Held bool
	// Transfer is true where the value rests on a transfer from another medium.
	Transfer bool
	Working  Working
}

// Curve is the amount of carrier (or the unreacted share) left against time.
type Curve struct {
	Name  string          // what distinguishes it from its neighbours on a drawing
	Times []quantity.Time // ascending, from 0
	Left  []float64       // g/m², or share of normal coverage's film
	Limit float64         // the safe residue in the same unit
	Unit  string          // "g/m²" or "% unreacted"
}
