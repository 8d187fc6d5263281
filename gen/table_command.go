package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"laydown/gen/tables"
)

// table prints one computed table.
func (c command) table(args []string) int {
	if len(args) == 0 || args[0] != "waits" {
		got := "none"
		if len(args) > 0 {
			got = fmt.Sprintf("%q", args[0])
		}
		return c.wrong("table", fmt.Errorf("which table? waits is there, %s was asked for", got))
	}
	f := c.flags("table waits")
	dir := f.String("shop", "", "the shop's folder")
	format := f.String("format", "text", "text, csv or json")
	if status, ok := c.parse(f, args[1:]); !ok {
		return status
	}
	write, ok := map[string]func(io.Writer, []tables.WaitValue) error{
		"text": writeWaits, "csv": tables.WriteWaitsCSV, "json": tables.WriteWaitsJSON,
	}[*format]
	if !ok {
		return c.wrong("table", fmt.Errorf("no format is called %q: text, csv or json", *format))
	}
	src, err := open(*dir)
	if err != nil {
		return c.wrong("table", err)
	}
	t, status := c.tables("table", src)
	if status != done {
		return status
	}
	waits, err := t.Waits()
	if err == nil {
		err = write(c.out, waits)
	}
	if err != nil {
		fmt.Fprintf(c.errs, "laydown table: %v\n", err)
		return problems
	}
	return done
}

// writeWaits writes the table for a terminal: a line for each ink, medium,
// coverage and storage, a column for each room, in hours.
func writeWaits(w io.Writer, waits []tables.WaitValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	var rooms []string
	seen := map[string]bool{}
	for _, v := range waits {
		if !seen[v.Room] {
			seen[v.Room] = true
			rooms = append(rooms, v.Room)
		}
	}
	fmt.Fprint(out, "hours to wait\n\nink\tmedium\tcoverage\tstorage")
	for _, r := range rooms {
		fmt.Fprint(out, "\t"+r)
	}
	for i, v := range waits {
		if i%len(rooms) == 0 {
			fmt.Fprintf(out, "\n%s\t%s\t%s\t%s", v.Ink, v.Medium, v.Coverage, v.Storage)
		}
		if v.Dries {
			fmt.Fprintf(out, "\t%g", v.Wait.Hours())
		} else {
			fmt.Fprint(out, "\thardly dries")
		}
	}
	fmt.Fprintln(out)
	return out.Flush()
}
