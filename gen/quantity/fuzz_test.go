package quantity

import (
	"math"
	"testing"
)

// FuzzParse: no text makes the parser panic; what is read is finite; what is
// read prints as something that reads back within the digits shown.
func FuzzParse(f *testing.F) {
	for _, text := range []string{"75 µm", "3 mil", "240 °F", "1e-13 m2/s", "1.2 × 10⁻¹³ m²/s", "5 1/h", "−0 °C", "1e308 m", "×10", "", "\xff"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		fuzzed[Length](t, text)
		fuzzed[Time](t, text)
		fuzzed[Speed](t, text)
		fuzzed[Temperature](t, text)
		fuzzed[TemperatureDifference](t, text)
		fuzzed[Pressure](t, text)
		fuzzed[Grammage](t, text)
		fuzzed[Density](t, text)
		fuzzed[LineLoad](t, text)
		fuzzed[Fraction](t, text)
		fuzzed[Diffusivity](t, text)
		fuzzed[Expansion](t, text)
		fuzzed[Permeability](t, text)
		fuzzed[Rate](t, text)
	})
}

func fuzzed[Q Quantity](t *testing.T, text string) {
	q, err := Parse[Q](text)
	if err != nil {
		if q != 0 || err.Error() == "" {
			t.Fatalf("%q: value %g beside the error %q", text, float64(q), err)
		}
		return
	}
	si := float64(q)
	if math.IsNaN(si) || math.IsInf(si, 0) {
		t.Fatalf("%q reads as %g", text, si)
	}
	if size := math.Abs(si); size > 1e250 || size < 1e-250 {
		return // printing may leave the range of floats; reading has been checked
	}
	printed := Metric(q)
	back, err := Parse[Q](printed)
	if err != nil {
		t.Fatalf("%q prints as %q, which is refused: %v", text, printed, err)
	}
	tolerance := 0.00501 * math.Abs(si)
	switch KindName[Q]() {
	case "temperature":
		tolerance = math.Max(tolerance, 0.2501)
	case "temperature difference":
		tolerance = math.Max(0.051*math.Min(math.Abs(si), 9.95), tolerance)
	}
	if math.Abs(float64(back)-si) > tolerance {
		t.Fatalf("%q prints as %q, which reads as %g, not %g", text, printed, float64(back), si)
	}
}
