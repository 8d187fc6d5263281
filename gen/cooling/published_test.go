package cooling

import (
	"math"
	"testing"

	"laydown/testdata"
)

// TestPublished reproduces every published value that names this package. The source
// of each stands in its file.
func TestPublished(t *testing.T) {
	n, missed, err := testdata.Reproduce("cooling", Verify)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range missed {
		t.Error(m)
	}
	if n < 25 {
		t.Errorf("%d published values found, there are at least 25", n)
	}
	t.Logf("%d published values", n)
}

// The examples' exact solutions, evaluated in closed form, are met far closer than the
// books' rounded figures ask for.
func TestPublishedExactly(t *testing.T) {
	incropera := map[string]float64{"film": 500, "conductivity": 63.9, "alpha": 18.8e-6, "thickness": 0.04, "start": -20, "room": 60, "time": 480}
	for _, x := range []struct {
		what         string
		given        map[string]float64
		want, within float64
	}{
		// β = 0.531885, C₁ = 1.046788 and the terms after them.
		{"temperature of a wall's sealed face", incropera, 43.017, 1e-3},
		{"temperature of a wall's face", incropera, 45.364, 1e-3},
		{"temperature of a wall's face", map[string]float64{"film": 120, "conductivity": 110, "alpha": 33.9e-6, "thickness": 0.02, "start": 20, "room": 500, "time": 420}, 279.58, 0.01},
		// The semi-infinite solid with a convective face, by erfc and erfcx.
		{"temperature of a half space's face", map[string]float64{"film": 11.36, "conductivity": 0.865, "alpha": 4.65e-7, "start": 288.75, "room": 255.35, "time": 18000}, 267.98212, 1e-3},
		{"temperature in a half space", map[string]float64{"film": 120, "conductivity": 237, "alpha": 9.71e-5, "start": 1, "room": 0, "time": 300, "depth": 0.15}, 0.962541, 1e-5},
		{"temperature in a half space", map[string]float64{"film": 1e6, "conductivity": 0.062, "density": 2115, "heat": 920, "start": 55, "room": 25, "time": 3600, "depth": 0.03}, 53.5711, 1e-3},
		{"depth of a temperature", map[string]float64{"film": 1e9, "conductivity": 0.4, "alpha": 0.15e-6, "start": 15, "room": -10, "wanted": 0, "time": 7776000}, 0.80094, 1e-4},
	} {
		got, err := Verify(x.what, x.given)
		if err != nil || !(math.Abs(got-x.want) <= x.within) {
			t.Errorf("%s: computed %.8g (%v), exact %g ± %g", x.what, got, err, x.want, x.within)
		}
		t.Logf("%s: computed %.8g, exact %g", x.what, got, x.want)
	}
}

func TestVerifyRefusesWhatItDoesNotKnow(t *testing.T) {
	if _, err := Verify("phase of the moon", nil); err == nil {
		t.Error("no error")
	}
}
