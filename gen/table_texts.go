package main

import (
	"fmt"
	"io"
	"strings"
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

// writeRolls writes the arithmetic of rolls for a terminal, part after part.
func writeRolls(w io.Writer, r tables.RollTable) error {
	for _, part := range []func(io.Writer, tables.RollTable){writeFilmsLeft, writeFilmJobs, writeRollerMarks} {
		out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
		part(out, r)
		if err := out.Flush(); err != nil {
			return err
		}
	}
	return nil
}

// writeFilmsLeft has a line for each film, a column for each diameter.
func writeFilmsLeft(w io.Writer, r tables.RollTable) {
	fmt.Fprint(w, "film left on the roll in m, by the diameter in mm\n\nfilm\tcore\tnew\tkg")
	for _, d := range tables.RollDiameters {
		fmt.Fprintf(w, "\t%.0f", d.Millimetres())
	}
	for _, f := range r.Films {
		fmt.Fprint(w, "\n"+f.Film)
		if !f.Known {
			fmt.Fprint(w, "\t"+f.Reason)
			continue
		}
		fmt.Fprintf(w, "\t%.0f\t%.0f\t%.0f", f.Wound.Core.Millimetres(), f.Full.Millimetres(), float64(f.Mass))
		i := 0
		for _, d := range tables.RollDiameters {
			if i < len(f.Left) && f.Left[i].Outer == d {
				fmt.Fprintf(w, "\t%.0f", float64(f.Left[i].Length))
				i++
			} else {
				fmt.Fprint(w, "\t")
			}
		}
	}
	fmt.Fprint(w, "\n\n")
}

// writeFilmJobs has a line for each film, machine and size, two columns for each number.
func writeFilmJobs(w io.Writer, r tables.RollTable) {
	fmt.Fprint(w, "film in m and time in min for a job, machine warm\n\nfilm\tlaminator\tsize\tabreast")
	for _, n := range tables.JobPieces {
		fmt.Fprintf(w, "\t%d: m\tmin", n)
	}
	for i, j := range r.Jobs {
		if i%len(tables.JobPieces) == 0 {
			last := r.Jobs[i+len(tables.JobPieces)-1]
			fmt.Fprintf(w, "\n%s\t%s\t%s", j.Film, j.Laminator, j.Size)
			if !j.Fits {
				fmt.Fprint(w, "\t–")
				continue
			}
			fmt.Fprintf(w, "\t%d", last.Abreast)
		}
		if j.Fits {
			fmt.Fprintf(w, "\t%.1f\t%.0f", float64(j.Need.Length), j.Need.Total.Minutes())
		}
	}
	fmt.Fprint(w, "\n\n")
}

// writeRollerMarks has a line for each roller.
func writeRollerMarks(w io.Writer, r tables.RollTable) {
	fmt.Fprint(w, "which roller makes a mark that comes again\n\nlaminator\tevery mm\tfrom\tto\troller\tdiameter mm\talso")
	for _, m := range r.Marks {
		fmt.Fprintf(w, "\n%s\t%.0f\t%.0f\t%.0f\t%s\t%.0f\t%s", m.Laminator, m.Repeat.Millimetres(), m.Least.Millimetres(), m.Most.Millimetres(),
			m.Roller, m.Diameter.Millimetres(), strings.Join(m.Alike, ", "))
	}
	fmt.Fprintln(w)
}

// writeCuts writes for a terminal how to cut parent sheets so that the grain of the
// pieces lies across the feed.
func writeCuts(w io.Writer, list []tables.CutValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "cutting so that the grain lies across the feed, parallel to the roller axes\n\nparent\tgrain\tpiece\tgoes in by its\tpieces\talong the grain\tacross it\twaste %\tcuts\tthe other way")
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%s\t%d\t%d\t%d\t%.0f\t%d\t%d", v.Parent, v.Grain, v.Piece, v.Lead, v.Right.Pieces, v.Right.Rows, v.Right.Columns,
			v.Right.Waste.Percent(), v.Right.Cuts, v.Wrong.Pieces)
	}
	fmt.Fprintln(out)
	return out.Flush()
}
