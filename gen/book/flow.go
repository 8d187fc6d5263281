package book

import (
	"html/template"
	"strings"
)

// flow sets blocks one under the other. A margin note stands beside the run of
// blocks before it, back to the heading; on a narrow screen it folds under
// them.
type flow struct {
	out   strings.Builder
	run   []template.HTML
	notes []template.HTML
}

// block adds a block to the run. A block after a note begins a new run.
func (f *flow) block(h template.HTML) {
	if len(f.notes) > 0 {
		f.breakRun()
	}
	f.run = append(f.run, h)
}

// note adds a margin note to the run.
func (f *flow) note(h template.HTML) { f.notes = append(f.notes, h) }

// heading sets a heading by itself.
func (f *flow) heading(h template.HTML) {
	f.out.WriteString(string(h))
	f.out.WriteByte('\n')
}

// breakRun sets what has been collected.
func (f *flow) breakRun() {
	if len(f.run)+len(f.notes) == 0 {
		return
	}
	f.out.WriteString(`<div class="beside"><div class="run">` + "\n")
	for _, h := range f.run {
		f.out.WriteString(string(h))
		f.out.WriteByte('\n')
	}
	f.out.WriteString("</div>")
	if len(f.notes) > 0 {
		f.out.WriteString(`<div class="margin">` + "\n")
		for _, h := range f.notes {
			f.out.WriteString(string(h))
			f.out.WriteByte('\n')
		}
		f.out.WriteString("</div>")
	}
	f.out.WriteString("</div>\n")
	f.run, f.notes = nil, nil
}

// html ends the flow.
func (f *flow) html() template.HTML {
	f.breakRun()
	return template.HTML(f.out.String())
}
