package roll

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// stood is a roll as it stands in a shop.
type stood struct {
	Wound
	outer quantity.Length
}

// rolls are sizes that stand in a shop.
var rolls = []stood{
	{Wound{88e-3, 75e-6}, 120e-3}, {Wound{88e-3, 27e-6}, 330e-3}, {Wound{32e-3, 38e-6}, 90e-3},
	{Wound{88e-3, 250e-6}, 250e-3}, {Wound{76.2e-3, 76.2e-6}, 254e-3},
}

// A second method: the web's middle as the spiral of Archimedes that it is, its arc
// summed by Simpson's rule.
func TestLengthAgainstSpiral(t *testing.T) {
	for _, r := range rolls {
		wraps, err := r.Wraps(r.outer)
		if err != nil {
			t.Fatal(err)
		}
		length, err := r.Length(r.outer)
		if err != nil {
			t.Fatal(err)
		}
		pitch := float64(r.Thickness) / (2 * math.Pi) // m of radius a radian
		start := float64(r.Core) / 2                  // so that over its first turn the middle lies half a web out, on the mean
		arc := func(angle float64) float64 { return math.Hypot(start+pitch*angle, pitch) }
		const parts = 2000
		step, sum := 2*math.Pi*wraps/parts, 0.0
		for i := range parts {
			a := step * float64(i)
			sum += step / 6 * (arc(a) + 4*arc(a+step/2) + arc(a+step))
		}
		if math.Abs(sum/float64(length)-1) > 1e-6 {
			t.Errorf("%+v: %g m, as a spiral %g m", r, float64(length), sum)
		}
	}
}

// A third: wrap on wrap, each a ring about the middle of its web.
func TestLengthAgainstRings(t *testing.T) {
	w := Wound{Core: 80e-3, Thickness: 100e-6}
	sum := 0.0
	for i := range 250 {
		sum += math.Pi * (80e-3 + (2*float64(i)+1)*100e-6)
	}
	length, err := w.Length(130e-3)
	if err != nil || math.Abs(float64(length)/sum-1) > 1e-12 {
		t.Errorf("%g m (%v), wrap on wrap %g m", float64(length), err, sum)
	}
	wraps, err := w.Wraps(130e-3)
	if err != nil || math.Abs(wraps-250) > 1e-9 {
		t.Errorf("%g wraps (%v), wound 250", wraps, err)
	}
}

// There and back; more diameter is more film, thicker film is less.
func TestWoundProperties(t *testing.T) {
	for _, r := range rolls {
		before := quantity.Length(-1)
		for i := range 20 {
			outer := r.Core + (r.outer-r.Core)*quantity.Length(i)/19
			length, err := r.Length(outer)
			if err != nil || !(length > before) {
				t.Errorf("%+v at %g m: %g m after %g m (%v)", r, float64(outer), float64(length), float64(before), err)
			}
			back, err := r.Outer(length)
			if err != nil || math.Abs(float64(back-outer)) > 1e-14 {
				t.Errorf("%+v: %g m of film fill a roll of %g m (%v), it was %g m", r, float64(length), float64(back), err, float64(outer))
			}
			before = length
		}
		full, err := Wound{Core: r.Core, Thickness: 1}.Measured(r.outer, before)
		if err != nil || math.Abs(float64(full.Thickness/r.Thickness)-1) > 1e-12 {
			t.Errorf("%+v: a full roll shows a thickness of %g m (%v)", r, float64(full.Thickness), err)
		}
		thick := r.Wound
		thick.Thickness *= 1.1
		if less, err := thick.Length(r.outer); err != nil || math.Abs(float64(less*1.1/before)-1) > 1e-12 {
			t.Errorf("%+v, a tenth thicker: %g m of %g m (%v)", r, float64(less), float64(before), err)
		}
	}
}

func TestWoundRefuses(t *testing.T) {
	nan, inf := quantity.Length(math.NaN()), quantity.Length(math.Inf(1))
	for name, f := range map[string]func() error{
		"no thickness":       func() error { _, err := Wound{1, 0}.Length(2); return err },
		"core outside":       func() error { _, err := Wound{1, 1e-3}.Length(0.5); return err },
		"core below nothing": func() error { _, err := Wound{-1, 1e-3}.Wraps(2); return err },
		"no number":          func() error { _, err := Wound{1, 1e-3}.Length(nan); return err },
		"endless":            func() error { _, err := Wound{1, 1e-3}.Wraps(inf); return err },
		"length below":       func() error { _, err := Wound{1, 1e-3}.Outer(-1); return err },
		"no known length":    func() error { _, err := Wound{1, 1e-3}.Measured(2, 0); return err },
		"measured, no film":  func() error { _, err := Wound{1, 1e-3}.Measured(1, 5); return err },
	} {
		if f() == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
