package main

import (
	"fmt"
	"io"
	"maps"
	"math"
	"slices"
	"strings"
	"text/tabwriter"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// writers are the forms in which a table is printed.
type writers map[string]func(w io.Writer, t *tables.Tables) error

// printable are the tables by name.
var printable = map[string]writers{
	"waits": {
		"text": table((*tables.Tables).Waits, writeWaits),
		"csv":  table((*tables.Tables).Waits, tables.WriteWaitsCSV),
		"json": table((*tables.Tables).Waits, tables.WriteWaitsJSON),
	},
	"windows": {
		"text": table((*tables.Tables).Windows, writeWindows),
		"csv":  table((*tables.Tables).Windows, tables.WriteWindowsCSV),
		"json": table((*tables.Tables).Windows, tables.WriteWindowsJSON),
	},
	"bond": {
		"text": table((*tables.Tables).Bonds, writeBonds),
		"csv":  table((*tables.Tables).Bonds, tables.WriteBondsCSV),
		"json": table((*tables.Tables).Bonds, tables.WriteBondsJSON),
	},
	"cooling": {
		"text": table((*tables.Tables).Coolings, writeCoolings),
		"csv":  table((*tables.Tables).Coolings, tables.WriteCoolingsCSV),
		"json": table((*tables.Tables).Coolings, tables.WriteCoolingsJSON),
	},
	"curl": {
		"text": table((*tables.Tables).Curls, writeCurls),
		"csv":  table((*tables.Tables).Curls, tables.WriteCurlsCSV),
		"json": table((*tables.Tables).Curls, tables.WriteCurlsJSON),
	},
	"faults": {
		"text": table((*tables.Tables).FaultKeys, writeFaults),
		"csv":  table((*tables.Tables).FaultKeys, tables.WriteFaultsCSV),
		"json": table((*tables.Tables).FaultKeys, tables.WriteFaultsJSON),
	},
	"grain": {
		"text": table((*tables.Tables).Grains, writeGrains),
		"csv":  table((*tables.Tables).Grains, tables.WriteGrainsCSV),
		"json": table((*tables.Tables).Grains, tables.WriteGrainsJSON),
	},
	"vapour": {
		"text": table((*tables.Tables).Vapours, writeVapours),
		"csv":  table((*tables.Tables).Vapours, tables.WriteVapoursCSV),
		"json": table((*tables.Tables).Vapours, tables.WriteVapoursJSON),
	},
	"rolls": {
		"text": whole((*tables.Tables).Rolls, writeRolls),
		"csv":  whole((*tables.Tables).Rolls, tables.WriteRollsCSV),
		"json": whole((*tables.Tables).Rolls, tables.WriteRollsJSON),
	},
	"cuts": {
		"text": table((*tables.Tables).Cuts, writeCuts),
		"csv":  table((*tables.Tables).Cuts, tables.WriteCutsCSV),
		"json": table((*tables.Tables).Cuts, tables.WriteCutsJSON),
	},
	"stacks": {
		"text": table((*tables.Tables).StackValues, writeStacks),
		"csv":  table((*tables.Tables).StackValues, tables.WriteStacksCSV),
		"json": table((*tables.Tables).StackValues, tables.WriteStacksJSON),
	},
	"acclimatise": {
		"text": table((*tables.Tables).AcclimatiseValues, writeAcclimatise),
		"csv":  table((*tables.Tables).AcclimatiseValues, tables.WriteAcclimatiseCSV),
		"json": table((*tables.Tables).AcclimatiseValues, tables.WriteAcclimatiseJSON),
	},
	"driven-ahead": {
		"text": table((*tables.Tables).DrivenValues, writeDriven),
		"csv":  table((*tables.Tables).DrivenValues, tables.WriteDrivenCSV),
		"json": table((*tables.Tables).DrivenValues, tables.WriteDrivenJSON),
	},
	"humidity": {
		"text": table((*tables.Tables).Humidities, writeHumidities),
		"csv":  table((*tables.Tables).Humidities, tables.WriteHumiditiesCSV),
		"json": table((*tables.Tables).Humidities, tables.WriteHumiditiesJSON),
	},
	"after": {
		"text": table((*tables.Tables).Afters, writeAfters),
		"csv":  table((*tables.Tables).Afters, tables.WriteAftersCSV),
		"json": table((*tables.Tables).Afters, tables.WriteAftersJSON),
	},
}

// table joins what computes a table of values to what writes it.
func table[V any](compute func(*tables.Tables) ([]V, error), write func(io.Writer, []V) error) func(io.Writer, *tables.Tables) error {
	return whole(compute, write)
}

// whole joins what computes a table of several parts to what writes it.
func whole[V any](compute func(*tables.Tables) (V, error), write func(io.Writer, V) error) func(io.Writer, *tables.Tables) error {
	return func(w io.Writer, t *tables.Tables) error {
		values, err := compute(t)
		if err != nil {
			return err
		}
		return write(w, values)
	}
}

// table prints one computed table.
func (c command) table(args []string) int {
	names := strings.Join(slices.Sorted(maps.Keys(printable)), ", ")
	if len(args) == 0 {
		return c.wrong("table", fmt.Errorf("which table? there are %s", names))
	}
	forms, ok := printable[args[0]]
	if !ok {
		return c.wrong("table", fmt.Errorf("no table is called %q: there are %s", args[0], names))
	}
	f := c.flags("table " + args[0])
	dir := f.String("shop", "", "the shop's folder")
	format := f.String("format", "text", "text, csv or json")
	if status, ok := c.parse(f, args[1:]); !ok {
		return status
	}
	write, ok := forms[*format]
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
	if err := write(c.out, t); err != nil {
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

// writeWindows writes windows for a terminal, in °C: a line for each film,
// medium, laminator and speed, a column for each room. Where the first piece and
// the steady run differ, both stand: first / steady.
func writeWindows(w io.Writer, windows []tables.WindowValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	rooms := 0
	fmt.Fprint(out, "set temperature in °C, first piece / steady run\n\nfilm\tmedium\tlaminator\tm/min")
	for i, v := range windows {
		if i > 0 && v.Room == windows[0].Room {
			break
		}
		fmt.Fprint(out, "\t"+v.Room)
		rooms++
	}
	for i, v := range windows {
		if i%rooms == 0 {
			fmt.Fprintf(out, "\n%s\t%s\t%s\t%.3g", v.Film, v.Medium, v.Laminator, quantity.Number(v.Speed, "m/min"))
		}
		if !v.Open() {
			fmt.Fprint(out, "\tnone")
			continue
		}
		first, steady := v.Spans()
		if first == steady {
			fmt.Fprintf(out, "\t%.0f–%.0f", first.Low, first.High)
		} else {
			fmt.Fprintf(out, "\t%.0f–%.0f / %.0f–%.0f", first.Low, first.High, steady.Low, steady.High)
		}
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// writeHumidities writes the highest humidities for a terminal: a line for each
// film, medium and laminator, a column for each set temperature.
func writeHumidities(w io.Writer, list []tables.HumidityValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "highest relative humidity of the sheet in %, by set temperature in °C\n\nfilm\tmedium\tlaminator")
	steps := len(tables.SetSteps)
	for _, c := range tables.SetSteps {
		fmt.Fprintf(out, "\t%.0f", c)
	}
	for i, v := range list {
		if i%steps == 0 {
			fmt.Fprintf(out, "\n%s\t%s\t%s", v.Film, v.Medium, v.Laminator)
		}
		switch {
		case !v.Runs:
			fmt.Fprint(out, "\t–")
		case v.Free:
			fmt.Fprint(out, "\tany")
		default:
			fmt.Fprintf(out, "\t%.0f", v.Humidity.Percent())
		}
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// writeCoolings writes the table of cooling for a terminal, in seconds from the nip.
func writeCoolings(w io.Writer, list []tables.CoolingValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "seconds from the nip until it may be carried / trimmed / stacked\n\nfilm\tmedium\tlaminator\tset °C")
	for _, way := range tables.CoolingWays {
		fmt.Fprint(out, "\t"+way)
	}
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%.0f", v.Film, v.Medium, v.Laminator, v.Set.Celsius())
		for _, way := range v.Ways {
			fmt.Fprintf(out, "\t%s / %s / %s", whenText(way.Carry), whenText(way.Trim), whenText(way.Stack))
		}
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// whenText is a time after the nip in whole seconds, rounded up.
func whenText(w tables.Cooled) string {
	if !w.Comes {
		return "–"
	}
	return fmt.Sprintf("%.0f", math.Ceil(float64(w.Time)))
}

// writeCurls writes the table of curl for a terminal: how the edges of an A4 sheet
// rise, fresh and in each room.
func writeCurls(w io.Writer, list []tables.CurlValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "rise of an A4 sheet's edges in mm, + to the film, - to the print; film on one side\n\nfilm\tmedium\tlaminator\tgrain\tfresh")
	if len(list) > 0 {
		for _, b := range list[0].Rooms {
			fmt.Fprint(out, "\t"+b.Room)
		}
	}
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%s", v.Film, v.Medium, v.Laminator, v.Grain)
		for _, b := range append([]tables.Bend{v.Fresh}, v.Rooms...) {
			fmt.Fprintf(out, "\t%+.0f %s", math.Copysign(b.Rise.Millimetres(), b.Curvature), b.Edges())
		}
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// writeGrains writes what the grain does for a terminal.
func writeGrains(w io.Writer, list []tables.GrainValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "greatest risk of ridges (at 1 a flat sheet ridges), by the grain's direction\n\nfilm\tmedium\tlaminator\tacross the feed\talong the feed\tadvice")
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%.3f\t%.3f\t%s", v.Film, v.Medium, v.Laminator, v.Across.Risk, v.Along.Risk, v.Advice)
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// writeBonds writes the table of bonds for a terminal.
func writeBonds(w io.Writer, list []tables.BondValue) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprint(out, "what becomes of silvering, and the share of the relief filled after nip / hour / day\n\nink\tmedium\tfilm\tlaminator\tfilled %\tbest\teasy\thard")
	for _, v := range list {
		fmt.Fprintf(out, "\n%s\t%s\t%s\t%s\t%.0f / %.0f / %.0f\t%s\t%s\t%s", v.Ink, v.Medium, v.Film, v.Laminator,
			v.AfterNip.Percent(), v.AfterHour.Percent(), v.AfterDay.Percent(), v.Class, v.Easy, v.Hard)
	}
	fmt.Fprintln(out)
	return out.Flush()
}

// writeFaults writes for a terminal what each family's key costs, and where it leads with
// each cause's likeliest answers.
func writeFaults(w io.Writer, keys []tables.FaultKey) error {
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	for i := range keys {
		k := &keys[i]
		fmt.Fprintf(out, "%s: %.1f min on the mean, no key below %.1f min, %d steps; printed in %d steps, %.1f min\n",
			k.Family.ID, k.Minutes.Minutes(), k.Bound(quantity.Minute/10).Minutes(), len(k.Steps), len(k.Printed().Steps), k.Printed().Minutes.Minutes())
		for _, c := range k.Causes {
			end := k.Walk(c.ID)
			fmt.Fprintf(out, "  %s\t%.0f %%\t%s\t%s\tafter %d\n", c.ID, 100*c.Share, end.Words(), end.Cured, len(end.Steps))
		}
	}
	return out.Flush()
}
