package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"laydown/gen/tables"
)

// writeVapours writes the table of vapour for a terminal: a line for each ink and
// storage, a column for each room, in square metres.
func writeVapours(w io.Writer, list []tables.VapourValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(out, "at most so many m² drying at once at normal coverage, before anything else in the room\n"+
		"(%g of the exposure limit, %g of the lower explosive limit; local codes and a licensed professional decide)\n\nink\tmedium\tstorage",
		float64(tables.ExposureShare), float64(tables.ExplosiveShare))
	rooms := 0
	for i, v := range list {
		if i > 0 && v.Room == list[0].Room {
			break
		}
		fmt.Fprint(out, "\t"+v.Room)
		rooms++
	}
	reasons := []string{}
	for i, v := range list {
		if i%rooms == 0 {
			fmt.Fprintf(out, "\n%s\t%s\t%s", v.Ink, v.Medium, v.Storage)
		}
		switch {
		case !v.Known:
			fmt.Fprint(out, "\t?")
			if n := len(reasons); n == 0 || reasons[n-1] != v.Ink+": "+v.Reason {
				reasons = append(reasons, v.Ink+": "+v.Reason)
			}
		case v.Over:
			fmt.Fprintf(out, "\tover %g", float64(v.Area))
		default:
			fmt.Fprintf(out, "\t%g", float64(v.Area))
		}
	}
	fmt.Fprintln(out)
	if err := out.Flush(); err != nil {
		return err
	}
	for i, r := range reasons {
		if i == 0 {
			fmt.Fprintln(w)
		}
		fmt.Fprintln(w, "? "+r)
	}
	return nil
}
