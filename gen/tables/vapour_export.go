package tables

import (
	"encoding/csv"
	"io"
	"strconv"

	"laydown/gen/quantity"
)

// WriteVapoursCSV writes areas one a line under a line of names.
func WriteVapoursCSV(w io.Writer, list []VapourValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"ink", "medium", "storage", "room", "at_once_m2", "over", "limited_by", "a_day_m2", "worst_8h_mg_m3_per_m2", "peak_mg_m3_per_m2", "reason"})
	for _, v := range list {
		area, day := "", ""
		if v.Known {
			area, day = number(float64(v.Area), 0), number(float64(v.Daily), 1)
		}
		out.Write([]string{v.Ink, v.Medium, v.Storage, v.Room, area, strconv.FormatBool(v.Over), v.By, day,
			number(milligrams(v.Average), 4), number(milligrams(v.Peak), 4), v.Reason})
	}
	out.Flush()
	return out.Error()
}

// milligrams gives a concentration in mg/m³.
func milligrams(d quantity.Density) float64 { return float64(d) * 1e6 }

type moveJSON struct {
	Input string  `json:"input"`
	Low   float64 `json:"at_low_m2"`
	High  float64 `json:"at_high_m2"`
}

// WriteVapoursJSON writes areas with their working.
func WriteVapoursJSON(w io.Writer, list []VapourValue) error {
	return writeLines(w, "vapour", len(list), func(i int) any {
		v := list[i]
		j := struct {
			Ink      string     `json:"ink"`
			Medium   string     `json:"medium"`
			Storage  string     `json:"storage"`
			Room     string     `json:"room"`
			Area     *float64   `json:"at_once_m2"`
			Computed *float64   `json:"computed_m2"`
			Over     bool       `json:"over,omitempty"`
			By       string     `json:"limited_by,omitempty"`
			Daily    *float64   `json:"a_day_m2"`
			Average  float64    `json:"worst_8h_mg_m3_per_m2"`
			Peak     float64    `json:"peak_mg_m3_per_m2"`
			Moves    []moveJSON `json:"moves,omitempty"`
			Reason   string     `json:"reason,omitempty"`
			Working  []lineJSON `json:"working,omitempty"`
			Notes    []string   `json:"notes,omitempty"`
		}{Ink: v.Ink, Medium: v.Medium, Storage: v.Storage, Room: v.Room, Over: v.Over, By: v.By,
			Average: digits(milligrams(v.Average), 4), Peak: digits(milligrams(v.Peak), 4), Reason: v.Reason, Working: linesJSON(v.Working), Notes: v.Working.Notes}
		if v.Known {
			told, computed, day := float64(v.Area), digits(float64(v.Computed), 4), digits(float64(v.Daily), 4)
			j.Area, j.Computed, j.Daily = &told, &computed, &day
		}
		for _, m := range v.Moves {
			j.Moves = append(j.Moves, moveJSON{m.Input, digits(float64(m.Low), 4), digits(float64(m.High), 4)})
		}
		return j
	})
}

// lineJSON is a step of a working with its value, in SI units.
type lineJSON struct {
	Symbol string  `json:"symbol,omitempty"`
	Text   string  `json:"text"`
	SI     float64 `json:"si"`
	Unit   string  `json:"unit,omitempty"`
	Source string  `json:"source,omitempty"`
}

func linesJSON(w Working) []lineJSON {
	var list []lineJSON
	for _, s := range w.Steps {
		list = append(list, lineJSON{s.Symbol, s.Text, digits(s.SI, 6), s.Unit, s.Source})
	}
	return list
}
