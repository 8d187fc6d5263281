package roll

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// Another way to the same factors, by the constant that price lists print, 1406.5. Grams
// in a pound times square inches in a square metre over a ream of 500 are 1406.14: the
// lists' constant is 0.026 % high, and all six must miss it by that.
func TestBasicSizesByTheConstant(t *testing.T) {
	for _, b := range BasicSizes {
		g, err := b.Grammage(80)
		want := 80 * 1406.5 / (float64(b.Wide/quantity.Inch) * float64(b.Long/quantity.Inch))
		if err != nil || math.Abs(want/g.GramsPerSquareMetre()-1.000257) > 2e-6 {
			t.Errorf("80 lb %s: %g g/m² (%v), by the constant %g", b.Name, g.GramsPerSquareMetre(), err, want)
		}
		back, err := b.Pounds(g)
		if err != nil || math.Abs(back-80) > 1e-12 {
			t.Errorf("80 lb %s there and back: %g lb (%v)", b.Name, back, err)
		}
	}
}

func TestCaliperAndBulk(t *testing.T) {
	// 150 g/m² at 0.8 cm³/g is 120 µm, by hand.
	c, err := Caliper(0.150, 0.8e-3)
	if err != nil || math.Abs(c.Micrometres()-120) > 1e-9 {
		t.Errorf("%g µm (%v)", c.Micrometres(), err)
	}
	v, err := BulkOf(c, 0.150)
	if err != nil || math.Abs(float64(v)/0.8e-3-1) > 1e-12 {
		t.Errorf("bulk %g m³/kg (%v)", float64(v), err)
	}
}

// Mass adds up by layers and by lengths.
func TestMassAddsUp(t *testing.T) {
	a, b := Layer{50e-6, 1350}, Layer{20e-6, 1000}
	mass := func(length quantity.Length, layers ...Layer) float64 {
		m, err := Mass(1.4, length, layers)
		if err != nil {
			t.Fatal(err)
		}
		return float64(m)
	}
	if math.Abs(mass(30, a)+mass(30, b)-mass(30, a, b)) > 1e-12 || math.Abs(mass(20, a, b)+mass(10, b, a)-mass(30, a, b)) > 1e-12 {
		t.Error("the parts of a web do not weigh what it weighs")
	}
}

func TestPaperRefuses(t *testing.T) {
	for name, f := range map[string]func() error{
		"no basic size":     func() error { _, err := BasicSize{}.Grammage(80); return err },
		"no basic size, lb": func() error { _, err := BasicSize{}.Pounds(0.1); return err },
		"pounds below":      func() error { _, err := BasicSizes[0].Grammage(-1); return err },
		"grammage below":    func() error { _, err := BasicSizes[0].Pounds(-1); return err },
		"no bulk":           func() error { _, err := Caliper(0.1, 0); return err },
		"no grammage":       func() error { _, err := BulkOf(1e-4, 0); return err },
		"no web":            func() error { _, err := Mass(-1, 1, nil); return err },
		"no layer":          func() error { _, err := Mass(1, 1, []Layer{{-1, 1}}); return err },
	} {
		if f() == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
