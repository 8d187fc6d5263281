package tables

import (
	"encoding/csv"
	"io"
	"strconv"
)

// WriteCoolingsCSV writes coolings one a line, in seconds from the nip.
func WriteCoolingsCSV(w io.Writer, list []CoolingValue) error {
	out := csv.NewWriter(w)
	head := []string{"film", "medium", "laminator", "room", "set_c", "window"}
	for _, way := range CoolingWays {
		head = append(head, way+"_carry_s", way+"_trim_s", way+"_stack_s")
	}
	out.Write(head)
	for _, v := range list {
		row := []string{v.Film, v.Medium, v.Laminator, v.Room, number(v.Set.Celsius(), 0), strconv.FormatBool(v.Window)}
		for _, way := range v.Ways {
			row = append(row, seconds(way.Carry), seconds(way.Trim), seconds(way.Stack))
		}
		out.Write(row)
	}
	out.Flush()
	return out.Error()
}

// seconds writes a time to a tenth of a second; nothing where it does not come.
func seconds(w Cooled) string {
	if !w.Comes {
		return ""
	}
	return number(float64(w.Time), 1)
}

type readyJSON struct {
	Carry *float64 `json:"carry_s"`
	Trim  *float64 `json:"trim_s"`
	Stack *float64 `json:"stack_s"`
}

// WriteCoolingsJSON writes the table of cooling.
func WriteCoolingsJSON(w io.Writer, list []CoolingValue) error {
	return writeLines(w, "cooling", len(list), func(i int) any {
		v := list[i]
		ways := map[string]readyJSON{}
		for _, way := range v.Ways {
			ways[way.Way] = readyJSON{secondsJSON(way.Carry), secondsJSON(way.Trim), secondsJSON(way.Stack)}
		}
		return struct {
			Film      string               `json:"film"`
			Medium    string               `json:"medium"`
			Laminator string               `json:"laminator"`
			Room      string               `json:"room"`
			Set       float64              `json:"set_c"`
			Window    bool                 `json:"window"`
			Ways      map[string]readyJSON `json:"ways"`
			Widest    float64              `json:"layers_apart_k"`
			Meets     float64              `json:"layers_meet_s"`
		}{v.Film, v.Medium, v.Laminator, v.Room, rounded(v.Set.Celsius(), 0), v.Window, ways, rounded(float64(v.Widest), 1), rounded(float64(v.Meets), 2)}
	})
}

func secondsJSON(w Cooled) *float64 {
	if !w.Comes {
		return nil
	}
	s := rounded(float64(w.Time), 1)
	return &s
}
