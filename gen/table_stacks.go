package main

import (
	"fmt"
	"io"
	"math"
	"text/tabwriter"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// writeStacks writes stacks for a terminal: depths in mm and times in days, each with its
// band.
func writeStacks(w io.Writer, list []tables.StackValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "depth in mm to which half of the change is done, and days until the middle has made nine tenths of it (least to most)\n\nmedium\tfrom\tto\tborder")
	for _, after := range tables.StackTimes {
		fmt.Fprintf(out, "\t%s", quantity.Metric(after))
	}
	fmt.Fprint(out, "\teven: own sheet\teven: A4")
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%s", v.Medium, v.From, v.To, v.Border())
		for _, b := range v.Borders {
			least, most := b.Half.Range()
			fmt.Fprintf(out, "\t%.1f (%.1f–%.1f)", b.Half.Best.Millimetres(), least.Millimetres(), most.Millimetres())
		}
		for _, e := range v.Even {
			least, most := e.Time.Range()
			fmt.Fprintf(out, "\t%.0f (%.0f–%.0f)", e.Time.Best.Hours()/24, least.Hours()/24, most.Hours()/24)
		}
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// writeAcclimatise writes how long parcels stay wrapped for a terminal: a line for each
// medium and parcel, a column for each difference.
func writeAcclimatise(w io.Writer, list []tables.AcclimatiseValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "hours to stay wrapped until the core is within 2 K (3.6 °F) of the room, by how much colder it came\n\nmedium\tparcel\tm³")
	columns := len(tables.Colder)
	for _, d := range tables.Colder {
		fmt.Fprintf(out, "\t%g K", float64(d))
	}
	for i, v := range list {
		if i%columns == 0 {
			fmt.Fprintf(out, "\n%s\t%s\t%.2g", v.Medium, v.Parcel, float64(v.Volume()))
		}
		least, most := v.Time.Range()
		fmt.Fprintf(out, "\t%.0f (%.0f–%.0f)", v.Time.Best.Hours(), least.Hours(), most.Hours())
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// writeDriven writes where first blisters lie for a terminal.
func writeDriven(w io.Writer, list []tables.DrivenValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	s := tables.DrivenShares()
	fmt.Fprintf(out, "first blister in mm from the leading edge, by the share of the nip's water that goes ahead (never measured)\n\nmedium\tfilm\tlaminator\tstack from\tset °C\tblisters above %% RH\t0\t%g\t%g\t%g", float64(s.Low), float64(s.Best), float64(s.High))
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%s\t%.0f", v.Medium, v.Film, v.Laminator, v.From, v.Set.Celsius())
		if v.Free {
			fmt.Fprint(out, "\tnone up to 90")
			continue
		}
		fmt.Fprintf(out, "\t%.0f", v.Humidity.Percent())
		for _, at := range []quantity.Length{v.Still, v.First.Low, v.First.Best, v.First.High} {
			if math.IsInf(float64(at), 1) {
				fmt.Fprint(out, "\tnone")
			} else {
				fmt.Fprintf(out, "\t%.0f", at.Millimetres())
			}
		}
	}
	fmt.Fprintln(out)
	return out.Flush()
}
