package shop

import "strings"

// Form is a sheet of A4 that is printed blank and filled in by hand.
type Form struct {
	Head `yaml:",inline"`
	// For is what each has a sheet of its own; the shop where nothing is written.
	For string `yaml:"for" oneof:"shop laminators"`
	// Learn says that it stands with the chapters too.
	Learn    bool       `yaml:"learn"`
	Cautions []Ref      `yaml:"cautions" to:"cautions"`
	Parts    []FormPart `yaml:"parts,required"`
}

// FormPart is a part of a form: what it says, then lines to write on, boxes to
// tick, steps with a box each, or a table.
type FormPart struct {
	Name   string      `yaml:"name"`
	Says   string      `yaml:"says"`
	Fields []FormField `yaml:"fields"`
	Ticks  []string    `yaml:"ticks"`
	Steps  []string    `yaml:"steps"`
	Heads  []string    `yaml:"heads"` // of a table
	Rows   []string    `yaml:"rows"`  // its printed rows, their cells parted by |
	Lines  float64     `yaml:"lines,positive"`
	Pos    Pos
}

// FormField is a line to write on, with what belongs there. Wide takes the whole
// width; ticks are choices that stand before the line, or instead of it.
type FormField struct {
	Name  string   `yaml:"name"` // none for a bare line
	Wide  bool     `yaml:"wide"`
	Ticks []string `yaml:"ticks"`
	Pos   Pos
}

// Cells parts a printed row of a form's table.
func Cells(row string) []string {
	cells := strings.Split(row, "|")
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	return cells
}
