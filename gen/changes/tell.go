package changes

import (
	"fmt"
	"io"
	"strings"
)

// Stamps is the path of the list of wall charts' stamps: a change in it is a chart to be
// printed anew.
const Stamps = "charts/stamps.csv"

// mostCharts is how many charts are named in full.
const mostCharts = 12

// Tell writes the changes for a person who keeps the handbook: the charts on the wall that
// are stale now, and then, for each table, how much of it changed and what changed most.
func Tell(w io.Writer, list []Table) {
	charts := func(t Table) bool { return t.Path == Stamps && !t.IsNew && !t.IsGone }
	for _, t := range list {
		if charts(t) {
			tellCharts(w, t)
		}
	}
	for _, t := range list {
		if !charts(t) {
			fmt.Fprintf(w, "%s: %s\n", strings.TrimSuffix(t.Path, ".csv"), t.said())
		}
	}
}

// tellCharts names the charts to print anew, to hang for the first time and to take down.
func tellCharts(w io.Writer, t Table) {
	var lines []string
	for _, r := range t.Changed {
		for _, c := range r.Cells {
			if c.Column == "stamp" {
				lines = append(lines, fmt.Sprintf("print anew: %s: %s becomes %s", strings.Join(r.Name, ", "), c.Was, c.Is))
			}
		}
	}
	for _, r := range t.Added {
		lines = append(lines, "new chart: "+strings.Join(r.Name, ", "))
	}
	for _, r := range t.Gone {
		lines = append(lines, "take down: "+strings.Join(r.Name, ", "))
	}
	for _, line := range lines[:min(len(lines), mostCharts)] {
		fmt.Fprintln(w, line)
	}
	if more := len(lines) - mostCharts; more > 0 {
		fmt.Fprintf(w, "and %d charts more: %s lists every stamp that holds now\n", more, Stamps)
	}
}

// said is what changed in a table, on one line.
func (t Table) said() string {
	switch {
	case t.IsNew:
		return "a new table"
	case t.IsGone:
		return "no longer there"
	}
	var parts []string
	count := func(n int, what string) {
		switch {
		case n == 1:
			parts = append(parts, "a row "+what)
		case n > 1:
			parts = append(parts, fmt.Sprintf("%d rows %s", n, what))
		}
	}
	if n := len(t.Changed); n > 0 {
		parts = append(parts, fmt.Sprintf("%d of %d rows changed", n, t.Rows))
	}
	count(len(t.Added), "new")
	count(len(t.Gone), "gone")
	for _, c := range t.NewColumns {
		parts = append(parts, "column "+c+" is new")
	}
	for _, c := range t.GoneColumns {
		parts = append(parts, "column "+c+" is gone")
	}
	said := strings.Join(parts, ", ")
	if row, cell, ok := t.Most(); ok {
		said += fmt.Sprintf("; most: %s: %s %s becomes %s", strings.Join(row.Name, ", "), cell.Column, orNone(cell.Was), orNone(cell.Is))
	}
	return said
}

func orNone(text string) string {
	if text == "" {
		return "none"
	}
	return text
}
