package tables

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"

	"laydown/gen/quantity"
)

// WriteAftersCSV writes what stays after lamination, a print a line.
func WriteAftersCSV(w io.Writer, list []AfterValue) error {
	out := csv.NewWriter(w)
	head := []string{"ink", "medium", "film", "back", "coverage", "storage", "room", "spent_percent", "laminated_after_hours", "limit_g_m2", "at_lamination_g_m2"}
	for _, d := range AfterDays {
		head = append(head, fmt.Sprintf("after_%g_days_g_m2", d))
	}
	out.Write(append(head, "clear_after_days", "locked_in"))
	for _, v := range list {
		line := []string{v.Ink, v.Medium, v.Film, v.Back, v.Coverage, v.Storage, v.Room,
			number(v.Spent.Percent(), 1), decimal(v.At), number(grams(v.Limit), 3), number(grams(v.Start), 3)}
		for _, m := range v.Left {
			line = append(line, number(grams(m), 3))
		}
		clear := ""
		if !v.Locked() {
			clear = number(inDays(v.Clear), 2)
		}
		out.Write(append(line, clear, strconv.FormatBool(v.Locked())))
	}
	out.Flush()
	return out.Error()
}

func inDays(t quantity.Time) float64 { return float64(t / quantity.Day) }

// afterJSON is a print in the JSON file. Its working is the values of the steps that
// the file lists for its film, in their order and SI units.
type afterJSON struct {
	Ink      string    `json:"ink"`
	Medium   string    `json:"medium"`
	Film     string    `json:"film"`
	Back     string    `json:"back"`
	Coverage string    `json:"coverage"`
	Storage  string    `json:"storage"`
	Room     string    `json:"room"`
	Spent    float64   `json:"spent"`
	At       float64   `json:"laminated_after_hours"`
	Limit    float64   `json:"limit_g_m2"`
	Start    float64   `json:"at_lamination_g_m2"`
	Days     []float64 `json:"days"`
	Left     []float64 `json:"left_g_m2"`
	Clear    *float64  `json:"clear_after_days"` // null where it is locked in
	Working  []float64 `json:"working"`
	Notes    []string  `json:"notes,omitempty"`
}

// WriteAftersJSON writes what stays after lamination with the whole working.
func WriteAftersJSON(w io.Writer, list []AfterValue) error {
	steps := map[string][]stepJSON{}
	for _, v := range list {
		if len(v.Working.Steps) > len(steps[v.Film]) {
			steps[v.Film] = stepHeads(v.Working.Steps)
		}
	}
	return writeTable(w, "after", steps, len(list), func(i int) any {
		v := list[i]
		j := afterJSON{v.Ink, v.Medium, v.Film, v.Back, v.Coverage, v.Storage, v.Room,
			rounded(float64(v.Spent), 3), rounded(v.At.Hours(), 3), rounded(grams(v.Limit), 4), digits(grams(v.Start), 5), AfterDays, nil, nil, nil, v.Working.Notes}
		for _, m := range v.Left {
			j.Left = append(j.Left, rounded(grams(m), 6))
		}
		if !v.Locked() {
			clear := rounded(inDays(v.Clear), 3)
			j.Clear = &clear
		}
		for _, s := range v.Working.Steps {
			j.Working = append(j.Working, digits(s.SI, 6))
		}
		return j
	})
}
