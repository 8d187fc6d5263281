package book

import (
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// TestRoomPages: a room's page has its own waits, moistures and windows: those of
// the tables, and not another room's.
func TestRoomPages(t *testing.T) {
	b := demoBook(t)
	for _, r := range b.shop.Rooms {
		moist, ok := b.moistureIn(r)
		list, err := b.answers.MoistureIn(r)
		if err != nil || !ok || len(moist.Rows) != len(list) {
			t.Fatalf("%s: %d rows of %d moistures, %v", r.ID, len(moist.Rows), len(list), err)
		}
		for i, v := range list {
			if got := moist.Rows[i].Cells[0].Text; got != quantity.Metric(v.Moisture) {
				t.Errorf("%s: %s holds %s, the table says %s", r.ID, v.Medium, got, quantity.Metric(v.Moisture))
			}
		}
		if above := r.Humidity.Best > 0.65; above != strings.Contains(moist.Note, "isotherms part") {
			t.Errorf("%s at %v: its note is %q", r.ID, r.Humidity.Best, moist.Note)
		}
		films, ok := b.hotFilmsIn(r)
		if !ok || len(films.Rows) != len(b.hotFilms()) {
			t.Fatalf("%s: windows of %d films, there are %d", r.ID, len(films.Rows), len(b.hotFilms()))
		}
		for i, f := range b.hotFilms() {
			p, _ := b.makersPair(f)
			for k := range films.Heads {
				v, _ := b.windows.get(p.key(k, r.ID))
				if got, want := films.Rows[i].Cells[k], windowCell(v, windowHref(p.key(k, r.ID))); got.Text != want.Text || got.Href != want.Href {
					t.Errorf("%s, %s: %q at %s, the table says %q at %s", r.ID, f.ID, got.Text, got.Href, want.Text, want.Href)
				}
			}
		}
	}
}

// TestShared: what every fold says alike is said once, and nothing is lost.
func TestShared(t *testing.T) {
	step := func(symbol string, shown ...string) workingStep {
		return workingStep{Symbol: symbol, Text: symbol, Shown: shown, Same: allEqual(shown)}
	}
	folds := []workingFold{
		{Steps: []workingStep{step("a", "1", "1"), step("b", "2", "3"), step("c", "4", "4")}},
		{Steps: []workingStep{step("a", "1", "1"), step("b", "2", "3"), step("c", "5", "5")}},
	}
	all := shared(folds)
	if len(all) != 1 || all[0].Symbol != "a" {
		t.Errorf("shared: %v, want a alone", all)
	}
	for i, f := range folds {
		if len(f.Steps) != 2 || f.Steps[0].Symbol != "b" || f.Steps[1].Symbol != "c" {
			t.Errorf("fold %d keeps %v, want b and c", i, f.Steps)
		}
	}
	if one := shared([]workingFold{{Steps: []workingStep{step("a", "1")}}}); len(one) != 0 {
		t.Errorf("one fold shares %v with nobody", one)
	}
}
