package tables

import (
	"encoding/csv"
	"io"
	"strconv"

	"laydown/gen/quantity"
)

// WriteWaitsCSV writes waits one a line, in hours, under a line of names.
func WriteWaitsCSV(w io.Writer, waits []WaitValue) error {
	out := csv.NewWriter(w)
	out.Write([]string{"ink", "medium", "coverage", "storage", "room", "wait_hours", "computed_hours", "maker_wait_hours", "held_by_least_wait", "rests_on_transfer", "reason"})
	for _, v := range waits {
		wait, computed := "", ""
		if v.Dries {
			wait, computed = decimal(v.Wait), decimal(v.Computed)
		}
		out.Write([]string{v.Ink, v.Medium, v.Coverage, v.Storage, v.Room, wait, computed, decimal(v.Maker),
			strconv.FormatBool(v.Held), strconv.FormatBool(v.Transfer), v.Reason})
	}
	out.Flush()
	return out.Error()
}

// decimal writes hours to a hundredth.
func decimal(t quantity.Time) string {
	return strconv.FormatFloat(rounded(t.Hours(), 2), 'f', -1, 64)
}

func rounded(x float64, digits int) float64 {
	y, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'f', digits, 64), 64)
	return y + 0 // no -0
}

// digits rounds to n significant digits, so that the last bits of one machine's
// arithmetic do not reach a file.
func digits(x float64, n int) float64 {
	y, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', n, 64), 64)
	return y
}

// waitJSON is a wait in a JSON file. Its working is the values of the steps
// that the file lists for its ink, in their order and SI units.
type waitJSON struct {
	Ink      string    `json:"ink"`
	Medium   string    `json:"medium"`
	Coverage string    `json:"coverage"`
	Storage  string    `json:"storage"`
	Room     string    `json:"room"`
	Wait     *float64  `json:"wait_hours"`
	Computed *float64  `json:"computed_hours"`
	Maker    float64   `json:"maker_wait_hours"`
	Held     bool      `json:"held_by_least_wait,omitempty"`
	Transfer bool      `json:"rests_on_transfer,omitempty"`
	Reason   string    `json:"reason,omitempty"`
	Working  []float64 `json:"working"`
	Notes    []string  `json:"notes,omitempty"`
}

type stepJSON struct {
	Symbol string `json:"symbol,omitempty"`
	Text   string `json:"text"`
	Unit   string `json:"unit,omitempty"`
	Source string `json:"source,omitempty"`
}

// WriteWaitsJSON writes waits with their whole working.
func WriteWaitsJSON(w io.Writer, waits []WaitValue) error {
	steps := map[string][]stepJSON{}
	values := make([]waitJSON, 0, len(waits))
	for _, v := range waits {
		if len(v.Working.Steps) > len(steps[v.Ink]) {
			steps[v.Ink] = stepHeads(v.Working.Steps)
		}
		j := waitJSON{v.Ink, v.Medium, v.Coverage, v.Storage, v.Room, nil, nil, rounded(v.Maker.Hours(), 2), v.Held, v.Transfer, v.Reason, nil, v.Working.Notes}
		if v.Dries {
			told, computed := rounded(v.Wait.Hours(), 2), rounded(v.Computed.Hours(), 3)
			j.Wait, j.Computed = &told, &computed
		}
		for _, s := range v.Working.Steps {
			j.Working = append(j.Working, digits(s.SI, 6))
		}
		values = append(values, j)
	}
	return writeTable(w, "waits", steps, len(values), func(i int) any { return values[i] })
}

func stepHeads(steps []Step) []stepJSON {
	heads := make([]stepJSON, len(steps))
	for i, s := range steps {
		heads[i] = stepJSON{s.Symbol, s.Text, s.Unit, s.Source}
	}
	return heads
}
