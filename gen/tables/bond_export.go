package tables

import (
	"encoding/csv"
	"io"
	"strconv"

	"laydown/gen/quantity"
)

// WriteBondsCSV writes the table of bonds one print a line.
func WriteBondsCSV(w io.Writer, list []BondValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"ink", "medium", "film", "laminator", "room", "set_c", "relief_um", "relief_of", "silvering", "easy", "hard", "certain",
		"filled_after_nip", "after_hour", "after_day", "adhesive_too_thin", "lowest_bond_line_c", "warm_roller_times", "warm_roller_c"})
	for _, v := range list {
		out.Write([]string{v.Ink, v.Medium, v.Film, v.Laminator, v.Room, number(v.Set.Celsius(), 0), number(v.Relief.Micrometres(), 1), v.Of,
			v.Class, v.Easy, v.Hard, strconv.FormatBool(v.Certain), number(float64(v.AfterNip), 3), number(float64(v.AfterHour), 3), number(float64(v.AfterDay), 3),
			strconv.FormatBool(v.Thin), v.lowestText(), v.warmText(), v.warmToText()})
	}
	out.Flush()
	return out.Error()
}

func (v BondValue) lowestText() string {
	if !v.Can {
		return ""
	}
	return number(v.Lowest.Celsius(), 0)
}

func (v BondValue) warmText() string {
	if v.Warm == 0 {
		return ""
	}
	return number(v.Warm, 1)
}

func (v BondValue) warmToText() string {
	if v.Warm == 0 {
		return ""
	}
	return number(v.WarmTo.Celsius(), 0)
}

// WriteBondsJSON writes the table of bonds.
func WriteBondsJSON(w io.Writer, list []BondValue) error {
	celsius := func(t quantity.Temperature, known bool) *float64 {
		if !known {
			return nil
		}
		c := rounded(t.Celsius(), 0)
		return &c
	}
	return writeLines(w, "bond", len(list), func(i int) any {
		v := list[i]
		return struct {
			Ink       string   `json:"ink"`
			Medium    string   `json:"medium"`
			Film      string   `json:"film"`
			Laminator string   `json:"laminator"`
			Room      string   `json:"room"`
			Set       float64  `json:"set_c"`
			Relief    float64  `json:"relief_um"`
			Of        string   `json:"relief_of"`
			Silvering string   `json:"silvering"`
			Easy      string   `json:"easy"`
			Hard      string   `json:"hard"`
			Certain   bool     `json:"certain"`
			AfterNip  float64  `json:"filled_after_nip"`
			AfterHour float64  `json:"filled_after_hour"`
			AfterDay  float64  `json:"filled_after_day"`
			Thin      bool     `json:"adhesive_too_thin,omitempty"`
			Lowest    *float64 `json:"lowest_bond_line_c"`
			Warm      float64  `json:"warm_roller_times,omitempty"`
			WarmTo    *float64 `json:"warm_roller_c,omitempty"`
		}{v.Ink, v.Medium, v.Film, v.Laminator, v.Room, rounded(v.Set.Celsius(), 0), rounded(v.Relief.Micrometres(), 1), v.Of,
			v.Class, v.Easy, v.Hard, v.Certain, rounded(float64(v.AfterNip), 3), rounded(float64(v.AfterHour), 3), rounded(float64(v.AfterDay), 3),
			v.Thin, celsius(v.Lowest, v.Can), rounded(v.Warm, 1), celsius(v.WarmTo, v.Warm > 0)}
	})
}
