package tables

import (
	"testing"

	"laydown/data"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Every diffusivity that was solved from a maker's wait lies in the range that
// its record calls believable, or a warning says that it does not.
func TestSolvedDiffusivitiesAreBelievable(t *testing.T) {
	s, problems := shop.Load(data.Files, nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	made, err := New(s)
	if err != nil {
		t.Fatal(err)
	}
	warned := map[string]bool{}
	for _, w := range made.Warnings() {
		warned[w.Ink] = true
	}
	solved := 0
	for _, ink := range s.Inks {
		if ink.Dries != "evaporation" {
			continue
		}
		solved++
		d, believable := made.anchors[ink.ID].diffusivity, ink.Evaporation.Believable
		t.Logf("%s: %.2g m²/s, believable %.2g to %.2g", ink.ID, float64(d), float64(believable.Low), float64(believable.High))
		if (d < believable.Low || d > believable.High) != warned[ink.ID] {
			t.Errorf("%s: solved %.3g m²/s, believable %.3g to %.3g, warned %v", ink.ID, float64(d), float64(believable.Low), float64(believable.High), warned[ink.ID])
		}
	}
	if solved < 5 {
		t.Errorf("only %d diffusivities solved", solved)
	}
}

// A figure that the physics cannot meet is a warning that names its inputs, not
// a stop and not silence.
func TestUnbelievableMakersWaitWarns(t *testing.T) {
	s, problems := shop.Load(data.Files, nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	ink := s.Ink("eco-solvent")
	for _, hours := range []float64{0.05, 4000} {
		ink.Makers.Wait.Best = quantity.Time(hours) * quantity.Hour
		made, err := New(s)
		if err != nil {
			t.Fatal(err)
		}
		found := false
		for _, w := range made.Warnings() {
			found = found || w.Ink == ink.ID
		}
		if !found {
			t.Errorf("a maker's wait of %g h was taken without a word", hours)
		}
	}
}
