package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// writeAfters writes what stays after lamination for a terminal: a line for each
// ink, medium, film and back; columns for each share of the wait that the print had:
// what was in it and what is left on the table's days, in g/m², and when it is clear.
func writeAfters(w io.Writer, list []tables.AfterValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "carrier left under film in g/m², at lamination and days after it, and days until it may be left\n\nink\tmedium\tfilm\tback\tof its wait\tat once")
	for _, d := range tables.AfterDays {
		fmt.Fprintf(out, "\t%g d", d)
	}
	fmt.Fprint(out, "\tlimit\tdays")
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%s\t%.0f %%\t%.2f", v.Ink, v.Medium, v.Film, v.Back, v.Spent.Percent(), quantity.Number(v.Start, "g/m2"))
		for _, m := range v.Left {
			fmt.Fprintf(out, "\t%.2f", quantity.Number(m, "g/m2"))
		}
		days := "locked in"
		if !v.Locked() {
			days = fmt.Sprintf("%.1f", quantity.Number(v.Clear, "d"))
		}
		fmt.Fprintf(out, "\t%.2f\t%s", quantity.Number(v.Limit, "g/m2"), days)
	}
	fmt.Fprintln(out)
	return out.Flush()
}
