package tables

// Working is the way to a computed value: what went in, the steps between, what
// limited it, and where each came from. Every value in the handbook has one.
type Working struct {
	Steps []Step `json:"steps"`
	// Notes say in a sentence what a reader of the steps would ask.
	Notes []string `json:"notes,omitempty"`
	// Sources are ids of source records that the value rests on.
	Sources []string `json:"sources,omitempty"`
}

// Step is one line of a working.
type Step struct {
	Symbol string  `json:"symbol,omitempty"` // D, h, Bi
	Text   string  `json:"text"`             // what it is
	Shown  string  `json:"shown"`            // the value as a person reads it, in both unit systems
	SI     float64 `json:"si"`               // the value in SI units, at full precision
	Unit   string  `json:"unit,omitempty"`   // the SI unit
	Source string  `json:"source,omitempty"` // id of a source record
}
