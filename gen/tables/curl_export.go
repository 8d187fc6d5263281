package tables

import (
	"encoding/csv"
	"io"
	"strconv"

	"laydown/gen/quantity"
)

// WriteCurlsCSV writes curls one room a line.
func WriteCurlsCSV(w io.Writer, list []CurlValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"film", "medium", "laminator", "laminated_in", "grain_to_feed", "film_on_both_sides", "now_in", "curvature_to_film_per_m", "axis_from_feed_deg", "rise_mm", "words"})
	for _, v := range list {
		for _, b := range append([]Bend{v.fresh()}, v.Rooms...) {
			out.Write([]string{v.Film, v.Medium, v.Laminator, v.Room, v.Grain, strconv.FormatBool(v.Balanced), b.Room,
				number(b.Curvature, 2), number(b.Axis, 0), number(b.Rise.Millimetres(), 0), b.Words()})
		}
	}
	out.Flush()
	return out.Error()
}

// fresh is the bend as it comes from the machine, under a name of its own.
func (v CurlValue) fresh() Bend {
	b := v.Fresh
	b.Room = "fresh"
	return b
}

type bendJSON struct {
	In        string  `json:"in"`
	Curvature float64 `json:"curvature_to_film_per_m"`
	Axis      float64 `json:"axis_from_feed_deg"`
	AnyAxis   bool    `json:"any_axis,omitempty"`
	Rise      float64 `json:"rise_mm"`
	Words     string  `json:"words"`
}

// WriteCurlsJSON writes the table of curl.
func WriteCurlsJSON(w io.Writer, list []CurlValue) error {
	return writeLines(w, "curl", len(list), func(i int) any {
		v := list[i]
		var bends []bendJSON
		for _, b := range append([]Bend{v.fresh()}, v.Rooms...) {
			bends = append(bends, bendJSON{b.Room, rounded(b.Curvature, 2), rounded(b.Axis, 0), b.AnyAxis, rounded(b.Rise.Millimetres(), 1), b.Words()})
		}
		return struct {
			Film      string     `json:"film"`
			Medium    string     `json:"medium"`
			Laminator string     `json:"laminator"`
			Room      string     `json:"laminated_in"`
			Grain     string     `json:"grain_to_feed,omitempty"`
			Balanced  bool       `json:"film_on_both_sides,omitempty"`
			Set       *float64   `json:"set_c,omitempty"`
			Bends     []bendJSON `json:"bends"`
		}{v.Film, v.Medium, v.Laminator, v.Room, v.Grain, v.Balanced, setJSON(v.Set), bends}
	})
}

// setJSON is a set temperature; none where a film is laid cold.
func setJSON(t quantity.Temperature) *float64 {
	if t == 0 {
		return nil
	}
	c := rounded(t.Celsius(), 0)
	return &c
}

// WriteGrainsCSV writes what the grain does one laminate a line.
func WriteGrainsCSV(w io.Writer, list []GrainValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"film", "medium", "laminator", "room", "advice", "risk_across", "stage_across", "wave_across_mm", "risk_along", "stage_along", "wave_along_mm"})
	for _, v := range list {
		out.Write([]string{v.Film, v.Medium, v.Laminator, v.Room, v.Advice,
			number(v.Across.Risk, 4), v.Across.Stage, number(v.Across.Wave.Millimetres(), 1),
			number(v.Along.Risk, 4), v.Along.Stage, number(v.Along.Wave.Millimetres(), 1)})
	}
	out.Flush()
	return out.Error()
}

type ridgeJSON struct {
	Risk   float64 `json:"risk"`
	Growth float64 `json:"wave_grows_times"`
	Stage  string  `json:"stage,omitempty"`
	Wave   float64 `json:"wave_mm,omitempty"`
}

func (r Ridge) json() ridgeJSON {
	return ridgeJSON{rounded(r.Risk, 4), rounded(min(r.Growth(), 1e6), 3), r.Stage, rounded(r.Wave.Millimetres(), 1)}
}

// WriteGrainsJSON writes the table of grain.
func WriteGrainsJSON(w io.Writer, list []GrainValue) error {
	return writeLines(w, "grain", len(list), func(i int) any {
		v := list[i]
		return struct {
			Film      string    `json:"film"`
			Medium    string    `json:"medium"`
			Laminator string    `json:"laminator"`
			Room      string    `json:"room"`
			Advice    string    `json:"advice"`
			Across    ridgeJSON `json:"grain_across_feed"`
			Along     ridgeJSON `json:"grain_along_feed"`
		}{v.Film, v.Medium, v.Laminator, v.Room, v.Advice, v.Across.json(), v.Along.json()}
	})
}
