package tables_test

import (
	"bytes"
	"encoding/json"
	"math"
	"testing"

	"laydown/gen/tables"
)

// TestWindowColumns: what the compact table says is what the windows are: every
// span, and every limit to a tenth of a degree; and it is compact.
func TestWindowColumns(t *testing.T) {
	made := demo(t)
	all, err := made.Windows()
	if err != nil {
		t.Fatal(err)
	}
	var text bytes.Buffer
	if err := made.WriteWindowColumns(&text, all); err != nil {
		t.Fatal(err)
	}
	if perRow := text.Len() / len(all); perRow > 100 {
		t.Errorf("%d bytes a window, want 100 at most", perRow)
	}
	type named struct {
		ID string `json:"id"`
	}
	var got struct {
		Films, Media, Laminators, Rooms []named
		Columns                         []string
		Rows                            [][]*int
	}
	if err := json.Unmarshal(text.Bytes(), &got); err != nil {
		t.Fatal(err)
	}
	if len(got.Rows) != len(all) {
		t.Fatalf("%d rows, %d windows", len(got.Rows), len(all))
	}
	at := map[string]int{}
	for i, c := range got.Columns {
		at[c] = i
	}
	for i, v := range all {
		row := got.Rows[i]
		cell := func(column string) *int { return row[at[column]] }
		f, s := v.Spans()
		if len(row) != len(got.Columns) || got.Films[*cell("film")].ID != v.Film || got.Media[*cell("medium")].ID != v.Medium ||
			got.Laminators[*cell("laminator")].ID != v.Laminator || got.Rooms[*cell("room")].ID != v.Room ||
			tables.Speeds(made.Shop().Laminator(v.Laminator))[*cell("speed")] != v.Speed {
			t.Fatalf("row %d is of another window than %v", i, v.WindowCase)
		}
		for column, want := range map[string]float64{"first_low_c": f.Low, "first_high_c": f.High, "steady_low_c": s.Low, "steady_high_c": s.High} {
			if float64(*cell(column)) != want {
				t.Errorf("%v: %s is %d, want %g", v.WindowCase, column, *cell(column), want)
			}
		}
		for prefix, bounds := range map[string][]tables.Bound{"first_": v.FirstBounds, "steady_": v.SteadyBounds} {
			found := 0
			for _, b := range bounds {
				if b.Limit == "laminator" {
					continue
				}
				found++
				if c := cell(prefix + b.Limit + "_dc"); c == nil || math.Abs(float64(*c)/10-b.Temperature.Celsius()) > 0.0501 {
					t.Errorf("%v: %s%s is not %.2f °C", v.WindowCase, prefix, b.Limit, b.Temperature.Celsius())
				}
			}
			for _, limit := range []string{"activation", "film", "medium", "gas"} {
				if cell(prefix+limit+"_dc") != nil {
					found--
				}
			}
			if found != 0 {
				t.Errorf("%v: %s limits differ in number", v.WindowCase, prefix)
			}
		}
	}
}
