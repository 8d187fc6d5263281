package tables

import (
	"encoding/csv"
	"encoding/json"
	"io"
	"strconv"

	"laydown/gen/quantity"
)

// WriteWindowsCSV writes windows one a line, in whole °C, under a line of names.
func WriteWindowsCSV(w io.Writer, windows []WindowValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"film", "medium", "laminator", "speed_m_min", "room", "humidity_percent", "window",
		"first_low_c", "first_high_c", "steady_low_c", "steady_high_c", "first_limit", "steady_limit", "reason"})
	for _, v := range windows {
		f, s := spanOf(v.First), spanOf(v.Steady)
		out.Write([]string{v.Film, v.Medium, v.Laminator, number(quantity.Number(v.Speed, "m/min"), 3), v.Room, number(v.Humidity.Percent(), 1),
			strconv.FormatBool(v.Open()), number(f.Low, 0), number(f.High, 0), number(s.Low, 0), number(s.High, 0),
			tightest(v.FirstBounds).Limit, tightest(v.SteadyBounds).Limit, v.Reason})
	}
	out.Flush()
	return out.Error()
}

func number(x float64, digits int) string {
	return strconv.FormatFloat(rounded(x, digits), 'f', -1, 64)
}

type boundJSON struct {
	Limit string  `json:"limit"`
	Set   float64 `json:"set_c"`
	At    float64 `json:"at_c"`
}

// WriteWindowsJSON writes windows with their working: every limit as the set
// temperature at which it is met.
func WriteWindowsJSON(w io.Writer, windows []WindowValue) error {
	return writeLines(w, "windows", len(windows), func(i int) any {
		v := windows[i]
		f, s := spanOf(v.First), spanOf(v.Steady)
		return struct {
			Film      string      `json:"film"`
			Medium    string      `json:"medium"`
			Laminator string      `json:"laminator"`
			Speed     float64     `json:"speed_m_min"`
			Room      string      `json:"room"`
			Humidity  float64     `json:"humidity"`
			Open      bool        `json:"window"`
			First     Span        `json:"first"`
			Steady    Span        `json:"steady"`
			Firsts    []boundJSON `json:"first_limits"`
			Steadies  []boundJSON `json:"steady_limits"`
			Moisture  float64     `json:"moisture,omitempty"`
			Swelling  float64     `json:"swelling_allowed,omitempty"`
			Reason    string      `json:"reason,omitempty"`
		}{v.Film, v.Medium, v.Laminator, rounded(quantity.Number(v.Speed, "m/min"), 3), v.Room, rounded(float64(v.Humidity), 4),
			v.Open(), f, s, boundsJSON(v.FirstBounds), boundsJSON(v.SteadyBounds),
			rounded(float64(v.gas.moisture), 5), v.gas.ratio, v.Reason}
	})
}

func boundsJSON(list []Bound) []boundJSON {
	out := make([]boundJSON, len(list))
	for i, b := range list {
		out[i] = boundJSON{b.Limit, rounded(b.Temperature.Celsius(), 2), rounded(b.At.Celsius(), 2)}
	}
	return out
}

// WriteHumiditiesCSV writes the table of humidities.
func WriteHumiditiesCSV(w io.Writer, list []HumidityValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"film", "medium", "laminator", "speed_m_min", "set_c", "runs", "highest_humidity_percent", "free_up_to_65_percent"})
	for _, v := range list {
		h := ""
		if v.Runs {
			h = number(v.Humidity.Percent(), 1)
		}
		out.Write([]string{v.Film, v.Medium, v.Laminator, number(quantity.Number(v.Speed, "m/min"), 3), number(v.Set.Celsius(), 0),
			strconv.FormatBool(v.Runs), h, strconv.FormatBool(v.Free)})
	}
	out.Flush()
	return out.Error()
}

// WriteHumiditiesJSON writes the table of humidities.
func WriteHumiditiesJSON(w io.Writer, list []HumidityValue) error {
	return writeLines(w, "humidity", len(list), func(i int) any {
		v := list[i]
		return struct {
			Film      string  `json:"film"`
			Medium    string  `json:"medium"`
			Laminator string  `json:"laminator"`
			Speed     float64 `json:"speed_m_min"`
			Set       float64 `json:"set_c"`
			Runs      bool    `json:"runs"`
			Humidity  float64 `json:"highest_humidity,omitempty"`
			Free      bool    `json:"free,omitempty"`
		}{v.Film, v.Medium, v.Laminator, rounded(quantity.Number(v.Speed, "m/min"), 3), rounded(v.Set.Celsius(), 0), v.Runs, rounded(float64(v.Humidity), 3), v.Free}
	})
}

// writeLines writes a table as JSON with one value a line.
func writeLines(w io.Writer, table string, n int, value func(i int) any) error {
	return writeTable(w, table, nil, n, value)
}

// writeTable writes a table as JSON, one value a line: that keeps the file readable
// and its changes small. Where it has steps they stand before the values, by the
// record that they belong to.
func writeTable(w io.Writer, table string, steps map[string][]stepJSON, n int, value func(i int) any) error {
	head := "{\"table\":\"" + table + "\",\n"
	if steps != nil {
		text, err := json.Marshal(steps)
		if err != nil {
			return err
		}
		head += "\"steps\":" + string(text) + ",\n"
	}
	if _, err := io.WriteString(w, head+"\"values\":[\n"); err != nil {
		return err
	}
	for i := range n {
		line, err := json.Marshal(value(i))
		if err != nil {
			return err
		}
		if i < n-1 {
			line = append(line, ',')
		}
		if _, err := w.Write(append(line, '\n')); err != nil {
			return err
		}
	}
	_, err := io.WriteString(w, "]}\n")
	return err
}
