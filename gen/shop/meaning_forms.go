package shop

// Bounds of a form: what does not fit on a sheet of A4 by far.
const (
	mostFormParts = 12
	mostFormLines = 40
	mostFormHeads = 9
)

// formFits: a form stays within a sheet, and its tables are whole.
func (c *checker) formFits(f *Form) {
	if len(f.Parts) > mostFormParts {
		c.say(f.Pos, "form %s has %d parts: at most %d fit on a sheet; make two forms of it", quote(f.ID), len(f.Parts), mostFormParts)
		return
	}
	for _, p := range f.Parts {
		lines := p.Lines + float64(len(p.Rows)+len(p.Steps)+len(p.Fields)+len(p.Ticks))
		switch {
		case lines > mostFormLines:
			c.say(p.Pos, "a part of form %s has %.0f lines: at most %d fit on a sheet", quote(f.ID), lines, mostFormLines)
		case len(p.Heads) > mostFormHeads:
			c.say(p.Pos, "a table of form %s has %d columns: at most %d can be written in", quote(f.ID), len(p.Heads), mostFormHeads)
		case len(p.Heads) == 0 && (len(p.Rows) > 0 || p.Lines > 0):
			c.say(p.Pos, "a table of form %s has no heads: write heads: with the names of its columns", quote(f.ID))
		}
		for _, row := range p.Rows {
			if n := len(Cells(row)); len(p.Heads) > 0 && n > len(p.Heads) {
				c.say(p.Pos, "a row of form %s has %d cells and the table %d heads: take a | out, or add a head", quote(f.ID), n, len(p.Heads))
			}
		}
	}
}
