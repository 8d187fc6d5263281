package tables_test

import (
	"math"
	"slices"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// usualCase completes a case with its machine's usual speed and an ordinary room.
func usualCase(t *testing.T, c tables.WindowCase) tables.WindowCase {
	t.Helper()
	c.Speed = demo(t).Shop().Laminator(c.Laminator).Usual.Best
	c.Temperature, c.Humidity = quantity.FromCelsius(23), 0.5
	return c
}

// TestBondLineMeetsItsBound: at the lowest set temperature the highest point of
// the drawn bond line is the adhesive's activation, at the highest the limit
// that the window names: the drawing and the table say the same. The drawing has
// finer cells and steps, so they may part by the 0.1 K that package nip states.
func TestBondLineMeetsItsBound(t *testing.T) {
	made := demo(t)
	for _, c := range hotCases {
		c = usualCase(t, c)
		w, err := made.WindowAt(c)
		if err != nil {
			t.Fatal(err)
		}
		for _, bound := range w.FirstBounds {
			from := map[string]func(tables.BondCurve) int{
				"activation": func(b tables.BondCurve) int { return b.Touch },
				"medium":     func(b tables.BondCurve) int { return b.Touch },
				"gas":        func(b tables.BondCurve) int { return b.NipEnd },
			}[bound.Limit]
			if from == nil || made.Shop().Film(c.Film).OpenTime.Set {
				continue
			}
			curve, err := made.BondLine(c, bound.Temperature)
			if err != nil {
				t.Fatal(err)
			}
			top := -math.MaxFloat64
			for _, b := range curve.First[from(curve):] {
				top = max(top, b.Print.Celsius())
			}
			if math.Abs(top-bound.At.Celsius()) > 0.1 {
				t.Errorf("%s on %s: at the bound for %s the bond line reaches %.4f °C, the limit is %.4f °C", c.Film, c.Medium, bound.Limit, top, bound.At.Celsius())
			}
		}
	}
}

// TestBondLineStretches: the stretches follow one another from the wrap to the
// end of the free run, and the print is cold until it is touched.
func TestBondLineStretches(t *testing.T) {
	made := demo(t)
	for _, c := range hotCases {
		c = usualCase(t, c)
		curve, err := made.BondLine(c, quantity.FromCelsius(110))
		if err != nil {
			t.Fatal(err)
		}
		if !slices.IsSorted(curve.Times) {
			t.Errorf("%s on %s: times do not ascend", c.Film, c.Laminator)
		}
		at := curve.Times[0]
		for _, s := range curve.Stretches {
			if math.Abs(float64(s.From-at)) > 1e-9 || s.To <= s.From {
				t.Errorf("%s on %s: %s runs from %v to %v after %v", c.Film, c.Laminator, s.Name, s.From, s.To, at)
			}
			at = s.To
		}
		if last := curve.Times[len(curve.Times)-1]; math.Abs(float64(at-last)) > 1e-9 {
			t.Errorf("%s on %s: the stretches end at %v, the times at %v", c.Film, c.Laminator, at, last)
		}
		for i := range curve.Touch {
			if got := curve.First[i].Print.Celsius(); math.Abs(got-23) > 1e-6 {
				t.Errorf("%s on %s: the print is at %.3f °C before it is touched", c.Film, c.Laminator, got)
			}
		}
		end := curve.First[curve.NipEnd]
		if end.Adhesive < end.Print {
			t.Errorf("%s on %s: heat runs up: adhesive %.2f °C, print %.2f °C", c.Film, c.Laminator, end.Adhesive.Celsius(), end.Print.Celsius())
		}
	}
}

// TestProfileAgreesWithBondLine: the profile's print begins at the temperature
// that the bond line has at the nip's end, first piece and steady run.
func TestProfileAgreesWithBondLine(t *testing.T) {
	made := demo(t)
	for _, c := range hotCases {
		c = usualCase(t, c)
		set := quantity.FromCelsius(110)
		curve, err := made.BondLine(c, set)
		if err != nil {
			t.Fatal(err)
		}
		profile, err := made.Profile(c, set)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range profile.Parts {
			if !slices.IsSorted(p.Depth) || p.Depth[len(p.Depth)-1] > p.Thickness()*(1+1e-9) {
				t.Errorf("%s on %s: depths of the %s do not ascend inside %v: %v", c.Film, c.Laminator, p.Name, p.Thickness(), p.Depth)
			}
			if p.Name != "print" {
				continue
			}
			if p.First[0] != curve.First[curve.NipEnd].Print || p.Steady[0] != curve.Steady[curve.NipEnd].Print {
				t.Errorf("%s on %s: the print's face is at %.3f and %.3f °C, the bond line at %.3f and %.3f", c.Film, c.Laminator,
					p.First[0].Celsius(), p.Steady[0].Celsius(), curve.First[curve.NipEnd].Print.Celsius(), curve.Steady[curve.NipEnd].Print.Celsius())
			}
		}
	}
}

// TestProfileOfTwoHotRollersIsEven: between two like rollers and two like
// films the upper half mirrors the lower one; above one hot roller it falls.
func TestProfileOfTwoHotRollersIsEven(t *testing.T) {
	made := demo(t)
	for _, c := range hotCases {
		c = usualCase(t, c)
		profile, err := made.Profile(c, quantity.FromCelsius(110))
		if err != nil {
			t.Fatal(err)
		}
		first, last := profile.Parts[0], profile.Parts[len(profile.Parts)-1]
		top, bottom := first.First[len(first.First)-1].Celsius(), last.First[0].Celsius()
		m := made.Shop().Laminator(c.Laminator)
		switch {
		case m.TwoSided && math.Abs(top-bottom) > 0.01:
			t.Errorf("%s: the covers' faces are at %.3f and %.3f °C", c.Laminator, top, bottom)
		case m.Heated == "upper" && top <= bottom:
			t.Errorf("%s: the hot roller's face is at %.3f °C, the lower one's at %.3f", c.Laminator, top, bottom)
		}
	}
}

// TestSweepsAgreeWithTheTable: what is swept for a drawing is what the table
// holds at the same speed, humidity and setting.
func TestSweepsAgreeWithTheTable(t *testing.T) {
	made := demo(t)
	c := usualCase(t, hotCases[0])
	m := made.Shop().Laminator(c.Laminator)
	by, err := made.WindowsBySpeed(c, 9)
	if err != nil {
		t.Fatal(err)
	}
	if by[0].Speed != m.Slowest.Best || by[8].Speed != m.Fastest.Best {
		t.Errorf("speeds run from %v to %v, the machine's from %v to %v", by[0].Speed, by[8].Speed, m.Slowest.Best, m.Fastest.Best)
	}
	for _, v := range by {
		same(t, made, v)
		if v.First.Low < by[0].First.Low {
			t.Errorf("at %v the lowest is below that of the slowest speed", v.Speed)
		}
	}
	damp, err := made.WindowsByHumidity(c, 10)
	if err != nil {
		t.Fatal(err)
	}
	if damp[0].Humidity != tables.HumidityLeast || math.Abs(float64(damp[9].Humidity-tables.HumidityMost)) > 1e-12 {
		t.Errorf("humidities run from %v to %v", damp[0].Humidity, damp[9].Humidity)
	}
	for _, v := range damp {
		same(t, made, v)
	}
	table, err := made.Humidities()
	if err != nil {
		t.Fatal(err)
	}
	checked := 0
	for _, want := range table {
		if want.Film != c.Film || want.Medium != c.Medium || want.Laminator != c.Laminator {
			continue
		}
		got, err := made.HumiditiesAt(c, []quantity.Temperature{want.Set})
		if err != nil {
			t.Fatal(err)
		}
		if got[0] != want {
			t.Errorf("at %v: %+v, the table has %+v", want.Set, got[0], want)
		}
		checked++
	}
	if checked != len(tables.SetSteps) {
		t.Errorf("%d settings compared, want %d", checked, len(tables.SetSteps))
	}
}

// same holds a swept window to the one computed by itself.
func same(t *testing.T, made *tables.Tables, v tables.WindowValue) {
	t.Helper()
	alone, err := made.Window(v.WindowCase)
	if err != nil {
		t.Fatal(err)
	}
	if alone.First != v.First || alone.Steady != v.Steady {
		t.Errorf("%v: swept %v and %v, alone %v and %v", v.WindowCase, v.First, v.Steady, alone.First, alone.Steady)
	}
}

// TestMiddleLiesInside: the setting that the drawings take lies in the window
// wherever there is one.
func TestMiddleLiesInside(t *testing.T) {
	made := demo(t)
	all, err := made.Windows()
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range all {
		m := v.Middle()
		switch {
		case v.Whole.Open() && (m < v.Whole.Low-0.05 || m > v.Whole.High+0.05):
			t.Errorf("%v: %v lies outside %v", v.WindowCase, m, v.Whole)
		case !v.Whole.Open() && v.First.Open() && (m < v.First.Low-0.05 || m > v.First.High+0.05):
			t.Errorf("%v: %v lies outside the first piece's %v", v.WindowCase, m, v.First)
		case m < v.First.Low-0.05:
			t.Errorf("%v: %v does not bond", v.WindowCase, m)
		}
	}
}
