package tables

import (
	"testing"

	"laydown/gen/quantity"
)

func TestRoundUp(t *testing.T) {
	tests := []struct{ hours, want float64 }{
		{0, 0}, {0.01, 0}, {0.02, 0.5}, {0.5, 0.5}, {2.6, 3}, {3.2, 4},
		{24, 24}, {24.01, 24}, {24.02, 25}, {47.5, 48}, {48.5, 50}, {95, 96}, {96.5, 102}, {335, 336},
	}
	for _, tt := range tests {
		if got := roundUp(quantity.Time(tt.hours) * quantity.Hour).Hours(); got != tt.want {
			t.Errorf("%g h is told as %g h, want %g h", tt.hours, got, tt.want)
		}
	}
	// Rounding never turns a longer wait into a shorter one.
	last := quantity.Time(0)
	for m := 0; m < 20000; m++ {
		got := roundUp(quantity.Time(m) * quantity.Minute)
		if got < last {
			t.Fatalf("%d min is told as %g h, one minute less as %g h", m, got.Hours(), last.Hours())
		}
		last = got
	}
}

func TestParseSheet(t *testing.T) {
	tests := []struct {
		text          string
		across, along float64 // mm
	}{
		{"320x450mm", 320, 450}, {"320 x 450 mm", 320, 450}, {"320 mm × 45 cm", 320, 450}, {"12 x 18 in", 304.8, 457.2},
	}
	for _, tt := range tests {
		s, err := parseSheet(tt.text, nil)
		if err != nil {
			t.Errorf("%q: %v", tt.text, err)
			continue
		}
		if a, b := s.Across.Millimetres(), s.Along.Millimetres(); !near(a, tt.across) || !near(b, tt.along) || s.Roll {
			t.Errorf("%q is %g by %g mm, want %g by %g", tt.text, a, b, tt.across, tt.along)
		}
	}
	for _, bad := range []string{"320", "x", "0x450 mm", "320x450", "320x450 kg", "-3x4 mm"} {
		if s, err := parseSheet(bad, nil); err == nil {
			t.Errorf("%q was read as %+v", bad, s)
		}
	}
}

func near(a, b float64) bool { return a-b < 1e-9 && b-a < 1e-9 }

// A half is rounded up, whatever its last bits.
func TestAmountRoundsHalvesUp(t *testing.T) {
	for x, want := range map[float64]string{1.25: "1.3\u00a0g/m²", 1.2499999999999998: "1.3\u00a0g/m²", 1.24: "1.2\u00a0g/m²", 0.35: "0.35\u00a0g/m²", 0: "0\u00a0g/m²"} {
		if got := amount(x, "g/m²"); got != want {
			t.Errorf("%v: %q, want %q", x, got, want)
		}
	}
}
