package tables

import (
	"testing"

	"laydown/gen/quantity"
)

// Over the demonstration: shares are shares and grow with time, the easy end is never
// worse than the hard end, and not everything comes out alike.
func TestEveryPrintWetsOut(t *testing.T) {
	all, err := demoTables(t).Bonds()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 300 {
		t.Fatalf("only %d", len(all))
	}
	rank := map[string]int{ClearsInNip: 0, ClearsByItself: 1, WillNotClear: 2}
	count, certain := map[string]int{}, 0
	for _, v := range all {
		if !(v.AfterNip >= 0 && v.AfterNip <= v.AfterHour && v.AfterHour <= v.AfterDay && v.AfterDay <= 1) {
			t.Errorf("%v: filled %g, %g, %g", v.BondCase, float64(v.AfterNip), float64(v.AfterHour), float64(v.AfterDay))
		}
		if rank[v.Easy] > rank[v.Class] || rank[v.Class] > rank[v.Hard] {
			t.Errorf("%v: easy %s, best %s, hard %s", v.BondCase, v.Easy, v.Class, v.Hard)
		}
		if v.Warm != 0 && !(v.Warm > 1) {
			t.Errorf("%v: a warm roller makes it %g times as fast", v.BondCase, v.Warm)
		}
		count[v.Class]++
		if v.Certain {
			certain++
		}
	}
	if len(count) < 2 {
		t.Errorf("all alike: %v", count)
	}
	t.Logf("%d prints: %v; %d certain", len(all), count, certain)
}

// Deep relief under a thin, hard adhesive takes longest: a UV print against an offset
// print under the same cold film (reference of the trade: silvering is a fault of UV and
// textured prints; common practice, no source).
func TestReliefSlowsWetOut(t *testing.T) {
	made := demoTables(t)
	of := func(ink string) BondValue {
		v, err := made.Bond(BondCase{ink, LaminateCase{"cold-vinyl-calendered-gloss", "vinyl-calendered", "wide-cold", "finishing-room"}})
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	uv, eco := of("uv-inkjet"), of("eco-solvent")
	if !(uv.AfterNip < eco.AfterNip) {
		t.Errorf("after the nip: UV %g, eco-solvent %g", float64(uv.AfterNip), float64(eco.AfterNip))
	}
	w, err := made.BondWorking(uv)
	if err != nil || len(w.Steps) < 10 {
		t.Errorf("working of %d steps (%v)", len(w.Steps), err)
	}
	t.Logf("UV: %s (%s to %s), eco-solvent: %s (%s to %s)", uv.Class, uv.Easy, uv.Hard, eco.Class, eco.Easy, eco.Hard)
}

// Tension times width is the pull, and every film of the demonstration has a start.
func TestStartSettings(t *testing.T) {
	made := demoTables(t)
	for _, f := range made.shop.Films {
		for _, ref := range f.RunsOn {
			s, ok := made.Start(f.ID, ref.ID)
			if !ok || !(s.Tension > 0 && s.Tension < 1000 && s.Mean > 10*quantity.Kilopascal && s.Mean < 3*quantity.Megapascal) {
				t.Errorf("%s in %s: %+v", f.ID, ref.ID, s)
			}
		}
	}
}
