package tables_test

import (
	"io"
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// everyAfter computes the whole table once for the tests that sweep over it.
func everyAfter(t testing.TB, made *tables.Tables) []tables.AfterValue {
	t.Helper()
	all, err := made.Afters()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 500 {
		t.Fatalf("%d prints under film: the sweep would prove little", len(all))
	}
	return all
}

// A print that had its wait holds what it may; one laminated early holds more, then
// and on every day after, and no print gains carrier under its film.
func TestLessWaitLeavesMore(t *testing.T) {
	all := everyAfter(t, demo(t))
	found := map[tables.AfterCase]tables.AfterValue{}
	for _, v := range all {
		found[v.AfterCase] = v
		if v.Spent == 1 && !(math.Abs(float64(v.Start/v.Limit)-1) <= 1e-6) {
			t.Errorf("%+v: %g kg/m² after its wait, the limit is %g", v.AfterCase, float64(v.Start), float64(v.Limit))
		}
		before := v.Start
		for i, m := range v.Left {
			if !(m <= before+1e-12) || m < -1e-12 {
				t.Errorf("%+v: %g kg/m² after %g days, %g before", v.AfterCase, float64(m), tables.AfterDays[i], float64(before))
			}
			before = m
		}
	}
	for c, v := range found {
		if c.Spent == 1 {
			continue
		}
		c.Spent = 1
		ready := found[c]
		if !(v.Start > ready.Start) || !(v.Clear > ready.Clear) {
			t.Errorf("%+v: %g kg/m² and clear after %g s, no more than after its wait", v.AfterCase, float64(v.Start), float64(v.Clear))
		}
		for i := range v.Left {
			if !(v.Left[i] >= ready.Left[i]-1e-12) {
				t.Errorf("%+v: %g kg/m² after %g days, a ready one %g", v.AfterCase, float64(v.Left[i]), tables.AfterDays[i], float64(ready.Left[i]))
			}
		}
	}
}

// An open back never holds more than a filmed one, nor a filmed one more than one
// on a panel.
func TestOpenBackHoldsLeast(t *testing.T) {
	all := everyAfter(t, demo(t))
	compared := 0
	for i, v := range all {
		if v.Back != "mounted" {
			continue
		}
		// The table goes back by back, each with every share.
		n := len(tables.SpentShares)
		filmed, open := all[i-n], all[i-2*n]
		if filmed.Back != "film" || open.Back != "open" || open.Spent != v.Spent {
			t.Fatalf("rows %d to %d are %s, %s, %s", i-2*n, i, open.Back, filmed.Back, v.Back)
		}
		for k := range v.Left {
			if !(open.Left[k] <= filmed.Left[k]+1e-12 && filmed.Left[k] <= v.Left[k]+1e-12) {
				t.Errorf("%+v after %g days: open %g, filmed %g, mounted %g kg/m²", v.AfterCase, tables.AfterDays[k], float64(open.Left[k]), float64(filmed.Left[k]), float64(v.Left[k]))
			}
		}
		if open.Clear > filmed.Clear || filmed.Clear > v.Clear {
			t.Errorf("%+v clear: open %g, filmed %g, mounted %g s", v.AfterCase, float64(open.Clear), float64(filmed.Clear), float64(v.Clear))
		}
		compared++
	}
	if compared < 20 {
		t.Errorf("%d backs compared", compared)
	}
}

// A film through which nothing moves, on a print with a closed back, locks in all
// of it; a film in which the carrier moves a million times as freely as in vinyl
// leaves the rest of the wait as it was.
func TestFilmsAtBothEnds(t *testing.T) {
	made := demo(t)
	s := made.Shop()
	base, adhesive := s.Substance("pvc-calendered"), s.Substance("acrylic-psa")
	kept, keptToo := *base, *adhesive
	defer func() { *base, *adhesive = kept, keptToo }()
	c := made.UsualAfter(s.Ink("eco-solvent"), s.Medium("vinyl-calendered"))
	c.Film, c.Spent = "cold-vinyl-thick-adhesive", 0.5

	base.CarrierMobility.Best = 0
	v, err := made.After(c)
	if err != nil {
		t.Fatal(err)
	}
	for i, m := range v.Left {
		if !(math.Abs(float64(m-v.Start)) <= 1e-14) {
			t.Errorf("tight film: %g of %g kg/m² after %g days", float64(m), float64(v.Start), tables.AfterDays[i])
		}
	}
	if !v.Locked() {
		t.Errorf("tight film: clear after %g s", float64(v.Clear))
	}
	if err := tables.WriteAftersJSON(io.Discard, []tables.AfterValue{v}); err != nil {
		t.Error(err)
	}

	base.CarrierMobility.Best, adhesive.CarrierMobility.Best = 1e6, 1e6
	if v, err = made.After(c); err != nil {
		t.Fatal(err)
	}
	if !(math.Abs(float64(v.Clear/(v.Wait-v.At))-1) <= 1e-3) {
		t.Errorf("open film: clear after %.3f h, the rest of the wait is %.3f h", v.Clear.Hours(), (v.Wait - v.At).Hours())
	}
}

// Polyester holds more than polypropylene, and that more than vinyl, at equal
// thickness: the order that the published bracket of diffusivities gives.
func TestTighterBasesHoldMore(t *testing.T) {
	made := demo(t)
	s := made.Shop()
	film := s.Film("cold-vinyl-thick-adhesive")
	kept := *film
	defer func() { *film = kept }()
	c := made.UsualAfter(s.Ink("solvent"), s.Medium("vinyl-calendered"))
	c.Film, c.Spent = film.ID, 0.5
	before := quantity.Grammage(0)
	for _, base := range []string{"pvc-calendered", "pp", "pet"} {
		film.Base.ID = base
		v, err := made.After(c)
		if err != nil {
			t.Fatal(err)
		}
		if !(v.Left[1] > before) {
			t.Errorf("%s: %g kg/m² after %g days, no more than the base before", base, float64(v.Left[1]), tables.AfterDays[1])
		}
		before = v.Left[1]
	}
}

// A curve begins with what the print held and agrees with the table.
func TestAfterCurveAgreesWithTheTable(t *testing.T) {
	made := demo(t)
	c := made.UsualAfter(made.Shop().Ink("eco-solvent"), made.Shop().Medium("vinyl-calendered"))
	c.Film, c.Spent = "cold-pp-matt", 0.3
	v, err := made.After(c)
	if err != nil {
		t.Fatal(err)
	}
	curve, err := made.AfterCurve(c, 30*quantity.Day)
	if err != nil {
		t.Fatal(err)
	}
	last := len(curve.Left) - 1
	if !(math.Abs(curve.Left[0]/(float64(v.Start)*1000)-1) <= 0.05) || !(math.Abs(curve.Left[last]-float64(v.Left[3])*1000) <= 1e-9) {
		t.Errorf("curve from %g to %g g/m², table from %g to %g", curve.Left[0], curve.Left[last], float64(v.Start)*1000, float64(v.Left[3])*1000)
	}
	if curve.Times[last] != 30*quantity.Day || !(curve.Times[0] > 0) {
		t.Errorf("curve from %g to %g s", float64(curve.Times[0]), float64(curve.Times[last]))
	}
}

func TestAfterRefuses(t *testing.T) {
	made := demo(t)
	s := made.Shop()
	good := made.UsualAfter(s.Ink("eco-solvent"), s.Medium("canvas"))
	good.Film = "cold-vinyl-thick-adhesive"
	if _, err := made.After(good); err != nil {
		t.Fatal(err)
	}
	for want, change := range map[string]func(*tables.AfterCase){
		"no film is called":  func(c *tables.AfterCase) { c.Film = "cold-vinyl" },
		"no back is called":  func(c *tables.AfterCase) { c.Back = "shut" },
		"a share from 0":     func(c *tables.AfterCase) { c.Spent = 1.2 },
		"hardly dries":       func(c *tables.AfterCase) { c.Storage = "tight-roll" },
		"no carrier":         func(c *tables.AfterCase) { c.Ink, c.Medium = "offset", "coated-silk-150" },
		"no ink is called":   func(c *tables.AfterCase) { c.Ink = "eco" },
		"is not made to be":  func(c *tables.AfterCase) { c.Ink = "aqueous-dye" },
		"no room is called":  func(c *tables.AfterCase) { c.Room = "attic" },
		"no coverage is cal": func(c *tables.AfterCase) { c.Coverage = "thick" },
	} {
		c := good
		change(&c)
		if _, err := made.After(c); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%+v: %v, want %q", c, err, want)
		}
	}
	pvc := s.Substance("pvc-calendered")
	kept := *pvc
	defer func() { *pvc = kept }()
	pvc.CarrierMobility.Set = false
	if _, err := made.After(good); err == nil || !strings.Contains(err.Error(), "carrier_mobility") {
		t.Errorf("a film that says nothing: %v", err)
	}
}

// Every value carries the steps to it.
func TestEveryAfterHasItsWorking(t *testing.T) {
	for _, v := range everyAfter(t, demo(t)) {
		if len(v.Working.Steps) < 12 {
			t.Fatalf("%+v: a working of %d steps", v.AfterCase, len(v.Working.Steps))
		}
		for _, s := range v.Working.Steps {
			if math.IsNaN(s.SI) || math.IsInf(s.SI, 0) || s.Text == "" || s.Shown == "" {
				t.Errorf("%+v: step %+v", v.AfterCase, s)
			}
		}
	}
}

func BenchmarkAfter(b *testing.B) {
	made := demo(b)
	c := made.UsualAfter(made.Shop().Ink("eco-solvent"), made.Shop().Medium("canvas"))
	c.Film, c.Back, c.Spent = "cold-vinyl-thick-adhesive", "film", 0.5
	for b.Loop() {
		if _, err := made.After(c); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkAfters(b *testing.B) {
	made := demo(b)
	for b.Loop() {
		if _, err := made.Afters(); err != nil {
			b.Fatal(err)
		}
	}
}
