package tables

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/roll"
)

// The parts of the table of rolls, as its files name them.
const (
	partLeft = "film left"
	partJob  = "job"
	partMark = "roller"
)

// WriteRollsCSV writes the table of rolls: three parts under one line of names, each
// filling the columns that are its own.
func WriteRollsCSV(w io.Writer, r RollTable) error {
	out := csv.NewWriter(w)
	head := []string{"part", "film", "laminator", "roller", "diameter_mm", "length_m", "length_least_m", "length_most_m", "wraps",
		"size", "pieces", "run", "abreast", "film_m", "film_m2", "waste_percent", "minutes", "warm_up_minutes", "cost_each",
		"repeat_mm", "repeat_least_mm", "repeat_most_mm", "alike", "reason"}
	column := map[string]int{}
	for i, name := range head {
		column[name] = i
	}
	out.Write(head)
	line := func(pairs ...string) {
		row := make([]string, len(head))
		for i := 0; i < len(pairs); i += 2 {
			row[column[pairs[i]]] = pairs[i+1]
		}
		out.Write(row)
	}
	for _, f := range r.Films {
		if !f.Known {
			line("part", partLeft, "film", f.Film, "reason", f.Reason)
		}
		for _, l := range f.Left {
			line("part", partLeft, "film", f.Film, "diameter_mm", number(l.Outer.Millimetres(), 0), "length_m", number(float64(l.Length), 1),
				"length_least_m", number(float64(l.Low), 1), "length_most_m", number(float64(l.High), 1), "wraps", number(l.Wraps, 0))
		}
	}
	for _, j := range r.Jobs {
		if !j.Fits {
			line("part", partJob, "film", j.Film, "laminator", j.Laminator, "size", j.Size, "pieces", strconv.Itoa(j.Pieces), "reason", j.Reason)
			continue
		}
		cost := ""
		if j.Each > 0 {
			cost = number(j.Each, 2)
		}
		line("part", partJob, "film", j.Film, "laminator", j.Laminator, "size", j.Size, "pieces", strconv.Itoa(j.Pieces), "run", strconv.Itoa(j.Need.Run),
			"abreast", strconv.Itoa(j.Abreast), "film_m", number(float64(j.Need.Length), 1), "film_m2", number(float64(j.Need.Film), 1),
			"waste_percent", number(j.Need.Waste.Percent(), 0), "minutes", number(j.Need.Total.Minutes(), 0), "warm_up_minutes", number(j.WarmUp.Minutes(), 0), "cost_each", cost)
	}
	for _, m := range r.Marks {
		line("part", partMark, "laminator", m.Laminator, "roller", m.Roller, "diameter_mm", number(m.Diameter.Millimetres(), 0), "repeat_mm", number(m.Repeat.Millimetres(), 0),
			"repeat_least_mm", number(m.Least.Millimetres(), 0), "repeat_most_mm", number(m.Most.Millimetres(), 0), "alike", strings.Join(m.Alike, ", "))
	}
	out.Flush()
	return out.Error()
}

// leftJSON is what is left on a roll at one diameter.
type leftJSON struct {
	Diameter float64 `json:"diameter_mm"`
	Length   float64 `json:"length_m"`
	Low      float64 `json:"length_least_m"`
	High     float64 `json:"length_most_m"`
	Wraps    float64 `json:"wraps"`
}

// WriteRollsJSON writes the table of rolls with its workings, one value a line.
func WriteRollsJSON(w io.Writer, r RollTable) error {
	n, jobs := len(r.Films), len(r.Jobs)
	return writeLines(w, "rolls", n+jobs+len(r.Marks), func(i int) any {
		switch {
		case i < n:
			return filmRollJSON(r.Films[i])
		case i < n+jobs:
			return filmJobJSON(r.Jobs[i-n])
		}
		return markJSON(r.Marks[i-n-jobs])
	})
}

func filmRollJSON(f FilmRoll) any {
	var left []leftJSON
	for _, l := range f.Left {
		left = append(left, leftJSON{rounded(l.Outer.Millimetres(), 0), digits(float64(l.Length), 5), digits(float64(l.Low), 5), digits(float64(l.High), 5), digits(l.Wraps, 5)})
	}
	return struct {
		Part    string     `json:"part"`
		Film    string     `json:"film"`
		Full    float64    `json:"new_roll_mm,omitempty"`
		Length  float64    `json:"new_roll_m,omitempty"`
		Mass    float64    `json:"new_roll_kg,omitempty"`
		Left    []leftJSON `json:"left,omitempty"`
		Reason  string     `json:"reason,omitempty"`
		Working []lineJSON `json:"working,omitempty"`
		Notes   []string   `json:"notes,omitempty"`
	}{partLeft, f.Film, rounded(f.Full.Millimetres(), 1), rounded(float64(f.Length), 1), rounded(float64(f.Mass), 1), left, f.Reason, linesJSON(f.Working), f.Working.Notes}
}

func filmJobJSON(j FilmJob) any {
	return struct {
		Part    string     `json:"part"`
		Film    string     `json:"film"`
		Machine string     `json:"laminator"`
		Size    string     `json:"size"`
		Pieces  int        `json:"pieces"`
		Fits    bool       `json:"fits"`
		Run     int        `json:"run,omitempty"`
		Abreast int        `json:"abreast,omitempty"`
		Length  float64    `json:"film_m,omitempty"`
		Film2   float64    `json:"film_m2,omitempty"`
		Waste   float64    `json:"waste,omitempty"`
		Minutes float64    `json:"minutes,omitempty"`
		WarmUp  float64    `json:"warm_up_minutes,omitempty"`
		Each    float64    `json:"cost_each,omitempty"`
		Reason  string     `json:"reason,omitempty"`
		Working []lineJSON `json:"working,omitempty"`
		Notes   []string   `json:"notes,omitempty"`
	}{partJob, j.Film, j.Laminator, j.Size, j.Pieces, j.Fits, j.Need.Run, j.Abreast, rounded(float64(j.Need.Length), 2), rounded(float64(j.Need.Film), 2),
		rounded(float64(j.Need.Waste), 3), rounded(j.Need.Total.Minutes(), 1), rounded(j.WarmUp.Minutes(), 1), rounded(j.Each, 2), j.Reason, linesJSON(j.Working), j.Working.Notes}
}

func markJSON(m RollerMark) any {
	return struct {
		Part     string     `json:"part"`
		Machine  string     `json:"laminator"`
		Roller   string     `json:"roller"`
		Diameter float64    `json:"diameter_mm"`
		Repeat   float64    `json:"repeat_mm"`
		Least    float64    `json:"repeat_least_mm"`
		Most     float64    `json:"repeat_most_mm"`
		Alike    []string   `json:"alike,omitempty"`
		Working  []lineJSON `json:"working"`
	}{partMark, m.Laminator, m.Roller, rounded(m.Diameter.Millimetres(), 1), rounded(m.Repeat.Millimetres(), 1), rounded(m.Least.Millimetres(), 1), rounded(m.Most.Millimetres(), 1), m.Alike, linesJSON(m.Working)}
}

// WriteCutsCSV writes the cuts one a line.
func WriteCutsCSV(w io.Writer, list []CutValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"parent", "grain", "piece", "lead", "along_grain", "across_grain", "pieces", "waste_percent", "cuts", "pieces_grain_along_feed", "laminators"})
	for _, v := range list {
		out.Write([]string{v.Parent, v.Grain, v.Piece, v.Lead, strconv.Itoa(v.Right.Rows), strconv.Itoa(v.Right.Columns), strconv.Itoa(v.Right.Pieces),
			number(v.Right.Waste.Percent(), 1), strconv.Itoa(v.Right.Cuts), strconv.Itoa(v.Wrong.Pieces), strings.Join(v.Takes, " ")})
	}
	out.Flush()
	return out.Error()
}

type cutJSON struct {
	Rows    int     `json:"along_grain"`
	Columns int     `json:"across_grain"`
	Pieces  int     `json:"pieces"`
	Waste   float64 `json:"waste"`
	Cuts    int     `json:"cuts"`
	OverOne float64 `json:"left_over_along_mm"`
	OverTwo float64 `json:"left_over_across_mm"`
}

func cutOf(c roll.Cut) cutJSON {
	mm := func(l quantity.Length) float64 { return rounded(l.Millimetres(), 1) }
	return cutJSON{c.Rows, c.Columns, c.Pieces, rounded(float64(c.Waste), 4), c.Cuts, mm(c.OverAlong), mm(c.OverAcross)}
}

// WriteCutsJSON writes the cuts with their workings.
func WriteCutsJSON(w io.Writer, list []CutValue) error {
	return writeLines(w, "cuts", len(list), func(i int) any {
		v := list[i]
		return struct {
			Parent  string     `json:"parent"`
			Grain   string     `json:"grain"`
			Piece   string     `json:"piece"`
			Lead    string     `json:"lead"`
			Right   cutJSON    `json:"grain_across_feed"`
			Wrong   cutJSON    `json:"grain_along_feed"`
			Takes   []string   `json:"laminators"`
			Working []lineJSON `json:"working"`
			Notes   []string   `json:"notes"`
		}{v.Parent, v.Grain, v.Piece, v.Lead, cutOf(v.Right), cutOf(v.Wrong), v.Takes, linesJSON(v.Working), v.Working.Notes}
	})
}
