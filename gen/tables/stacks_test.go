package tables

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// TestStacks holds the whole table to what a stack must do.
func TestStacks(t *testing.T) {
	made := demoTables(t)
	all, err := made.StackValues()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 200 {
		t.Fatalf("only %d stacks", len(all))
	}
	for _, v := range all {
		from, to := made.shop.Room(v.From), made.shop.Room(v.To)
		if v.Damper != (to.Humidity.Best > from.Humidity.Best) {
			t.Errorf("%v: damper %v", v.StackCase, v.Damper)
		}
		width := made.shop.Medium(v.Medium).Width.Best
		for i, b := range v.Borders {
			if b.Half.Best > b.Tenth.Best || b.Tenth.Best > width/2 {
				t.Errorf("%v after %v: half %v, a tenth %v, of a sheet %v wide", v.StackCase, b.After, b.Half.Best, b.Tenth.Best, width)
			}
			// A decade of the pores' diffusivity is three of depth; the fibre's own, which
			// has no band here, narrows that in thick dense sheets.
			if least, most := b.Tenth.Range(); i > 0 && (b.Tenth.Best <= v.Borders[i-1].Tenth.Best || most < 2*least) {
				t.Errorf("%v after %v: a tenth at %v, band %v to %v", v.StackCase, b.After, b.Tenth.Best, least, most)
			}
		}
		own, small := v.Even[0], v.Even[1]
		if own.Length > small.Length && own.Time.Best <= small.Time.Best {
			t.Errorf("%v: A4 evens out in %v, its own sheet in %v", v.StackCase, small.Time.Best, own.Time.Best)
		}
		// The trade: the edges dry and the middle does not (common practice). Within a
		// week nothing of a covered stack has evened out, at any end of the band.
		if least, _ := small.Time.Range(); least < 7*quantity.Day {
			t.Errorf("%v: an A4 stack evens out in %.1f days", v.StackCase, least.Hours()/24)
		}
	}
}

// TestStackByHand: the working's own short formula gives the border of a week to where the
// faces' own resistance counts.
func TestStackByHand(t *testing.T) {
	made := demoTables(t)
	for _, medium := range []string{"uncoated-90", "coated-silk-250", "card", "matte-inkjet"} {
		v, err := made.Stack(StackCase{medium, "finishing-room", "winter"})
		if err != nil {
			t.Fatal(err)
		}
		w, err := made.StackWorking(v)
		if err != nil {
			t.Fatal(err)
		}
		d := 0.0
		for _, s := range w.Steps {
			if s.Symbol == "D_M" {
				d = s.SI
			}
		}
		b := v.Borders[2]
		root := math.Sqrt(d * float64(b.After))
		if hand := 0.95 * root; math.Abs(float64(b.Half.Best)/hand-1) > 0.1 {
			t.Errorf("%s: half at %.1f mm, by hand %.1f", medium, b.Half.Best.Millimetres(), 1000*hand)
		}
		if hand := 2.33 * root; math.Abs(float64(b.Tenth.Best)/hand-1) > 0.06 {
			t.Errorf("%s: a tenth at %.1f mm, by hand %.1f", medium, b.Tenth.Best.Millimetres(), 1000*hand)
		}
		curve, err := made.StackBorderCurve(v.StackCase, BorderHalf)
		if err != nil {
			t.Fatal(err)
		}
		for i := 1; i < len(curve); i++ {
			if curve[i].After <= curve[i-1].After || curve[i].Depth.Best < curve[i-1].Depth.Best {
				t.Fatalf("%s: the curve falls after %v", medium, curve[i].After)
			}
		}
	}
}

// TestAcclimatise holds the table of parcels to what a parcel must do.
func TestAcclimatise(t *testing.T) {
	made := demoTables(t)
	all, err := made.AcclimatiseValues()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 15*len(Colder) {
		t.Fatalf("only %d parcels", len(all))
	}
	byCase := map[AcclimatiseCase]AcclimatiseValue{}
	for i, v := range all {
		byCase[v.AcclimatiseCase] = v
		if !(v.Time.High < v.Time.Best && v.Time.Best < v.Time.Low) || v.Faces >= v.Time.High {
			t.Errorf("%v: %v, the faces alone %v", v.AcclimatiseCase, v.Time, v.Faces)
		}
		if i%len(Colder) > 0 && v.Time.Best <= all[i-1].Time.Best {
			t.Errorf("%v: %v, from less %v", v.AcclimatiseCase, v.Time.Best, all[i-1].Time.Best)
		}
		w, err := made.AcclimatiseWorking(v)
		if err != nil || len(w.Steps) < 10 {
			t.Fatalf("%v: a working of %d steps, %v", v.AcclimatiseCase, len(w.Steps), err)
		}
	}
	for c, v := range byCase {
		if c.Parcel != Pack {
			continue
		}
		carton, pallet := c, c
		carton.Parcel, pallet.Parcel = Carton, Pallet
		if !(v.Time.Best < byCase[carton].Time.Best && byCase[carton].Time.Best < byCase[pallet].Time.Best) {
			t.Errorf("%v: pack %v, carton %v, pallet %v", c, v.Time.Best, byCase[carton].Time.Best, byCase[pallet].Time.Best)
		}
	}
}

// TestChartIsShownNotMet: the published chart stands beside the computed hours, and no
// figure of it is held to them.
func TestChartIsShownNotMet(t *testing.T) {
	list, err := demoTables(t).AcclimatiseChart("uncoated-90")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range list {
		if c.CoreLeft <= 0 || c.CoreLeft > c.Difference || c.MeanLeft >= c.CoreLeft {
			t.Errorf("%.2f m³ from %.1f K: after the chart's hours the core is %.1f K off, the mean %.1f K", float64(c.Volume), float64(c.Difference), float64(c.CoreLeft), float64(c.MeanLeft))
		}
	}
}

// TestDriven holds the table of first blisters to what the model must give, and to the
// windows: at the limit's humidity the setting is just bounded by swelling.
func TestDriven(t *testing.T) {
	made := demoTables(t)
	all, err := made.DrivenValues()
	if err != nil {
		t.Fatal(err)
	}
	some, free := 0, 0
	for _, v := range all {
		if v.Free {
			free++
			continue
		}
		some++
		if !(v.First.High <= v.First.Best && v.First.Best <= v.First.Low && v.First.Low <= v.Still) {
			t.Errorf("%v: nothing driven %v, by the band %v", v.DrivenCase, v.Still, v.First)
		}
		if v.Edge >= v.Core {
			t.Errorf("%v: edge %v, core %v", v.DrivenCase, v.Edge, v.Core)
		}
		if v.Edge > v.Limit && v.Still != 0 || v.Core < v.Limit && !math.IsInf(float64(v.Still), 1) {
			t.Errorf("%v: edge %v, core %v, limit %v, but with nothing driven the first lies at %v", v.DrivenCase, v.Edge, v.Core, v.Limit, v.Still)
		}
		c := WindowCase{v.Film, v.Medium, v.Laminator, made.shop.Laminator(v.Laminator).Usual.Best, made.shop.Room(v.To).Temperature.Best, v.Humidity}
		w, err := made.Window(c)
		if err != nil {
			t.Fatal(err)
		}
		for _, b := range w.SteadyBounds {
			if b.Limit == "gas" && (b.Temperature < v.Set || b.Temperature > v.Set+2) {
				t.Errorf("%v: at %.1f %% swelling bounds it at %.1f °C, set %.0f °C", v.DrivenCase, v.Humidity.Percent(), b.Temperature.Celsius(), v.Set.Celsius())
			}
		}
	}
	if some < 10 || free == 0 {
		t.Fatalf("%d that blister and %d that do not: no test", some, free)
	}
	for _, v := range all {
		if v.Free {
			continue
		}
		list, err := made.DrivenProfiles(v)
		if err != nil {
			t.Fatal(err)
		}
		if list[0].First != v.Still || list[2].First != v.First.Best || len(list[0].At) != len(list[0].InNip) {
			t.Errorf("%v: the drawing's first blister lies at %v, the table's at %v", v.DrivenCase, list[2].First, v.First.Best)
		}
		if w, err := made.DrivenWorking(v); err != nil || len(w.Steps) < 8 {
			t.Fatalf("%v: a working of %d steps, %v", v.DrivenCase, len(w.Steps), err)
		}
	}
}

func TestStackTablesRefuseTheUnknown(t *testing.T) {
	made := demoTables(t)
	for name, try := range map[string]func() error{
		"medium":       func() error { _, err := made.Stack(StackCase{"no", "winter", "summer"}); return err },
		"from":         func() error { _, err := made.Stack(StackCase{"card", "no", "summer"}); return err },
		"to":           func() error { _, err := made.Stack(StackCase{"card", "winter", "no"}); return err },
		"vinyl stacks": func() error { _, err := made.Stack(StackCase{"vinyl-cast", "winter", "summer"}); return err },
		"no change":    func() error { _, err := made.Stack(StackCase{"card", "winter", "winter"}); return err },
		"parcel": func() error {
			_, err := made.Acclimatise(AcclimatiseCase{"card", "sack", "finishing-room", 10})
			return err
		},
		"parcel's medium": func() error {
			_, err := made.Acclimatise(AcclimatiseCase{"vinyl-cast", Pack, "finishing-room", 10})
			return err
		},
		"parcel's room":  func() error { _, err := made.Acclimatise(AcclimatiseCase{"card", Pack, "no", 10}); return err },
		"chart":          func() error { _, err := made.AcclimatiseChart("banner"); return err },
		"chart's medium": func() error { _, err := made.AcclimatiseChart("no"); return err },
		"cold film": func() error {
			_, err := made.Driven(DrivenCase{StackCase{"card", "summer", "finishing-room"}, "cold-pp-matt", "wide-cold"})
			return err
		},
		"film": func() error {
			_, err := made.Driven(DrivenCase{StackCase{"card", "summer", "finishing-room"}, "no", "wide-cold"})
			return err
		},
	} {
		if try() == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
