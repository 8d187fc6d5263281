package bond

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// Second method: ∫p/η dt by many equal steps of the middle rule, with its own
// account of when a melt flows.
func TestPassAgreesWithBruteForce(t *testing.T) {
	c := quantity.FromCelsius
	for _, x := range []struct {
		name    string
		law     Law
		samples []Sample
		extra   quantity.Pressure
		within  float64
	}{
		{"hot film", melt(), hotCase(1e-5, 1e-4).Pass, 600, 1e-5},
		{"warm roller on a cold film", sticky(), []Sample{{0, c(20), 0}, {0.2, c(25), 0}, {0.2, c(25), 1e5}, {0.5, c(41), 3e5}, {0.8, c(38), 0}, {30, c(23), 0}}, 1200, 1e-5},
		{"melts and sets twice", melt(), []Sample{{0, c(20), 1e5}, {1, c(100), 2e5}, {2, c(40), 1e5}, {3, c(80), 1e5}, {4, c(110), 0}, {5, c(20), 3e5}}, 0, 1e-5},
		{"never melts", melt(), []Sample{{0, c(60), 1e5}, {1, c(82.9), 2e5}, {2, c(60), 1e5}}, 0, 1e-12},
	} {
		p, err := Pass(x.law, x.samples, x.extra)
		if err != nil {
			t.Fatal(err)
		}
		melts, sets := x.law.Range()
		fluid, want := x.samples[0].Temperature >= melts, 0.0
		const cuts = 200000
		for i := 1; i < len(x.samples); i++ {
			a, b := x.samples[i-1], x.samples[i]
			for k := range cuts {
				f := (float64(k) + 0.5) / cuts
				temp := float64(a.Temperature) + f*float64(b.Temperature-a.Temperature)
				if quantity.Temperature(temp) >= melts {
					fluid = true
				} else if quantity.Temperature(temp) < sets {
					fluid = false
				}
				if !fluid {
					continue
				}
				v, err := x.law.Viscosity(quantity.Temperature(temp))
				if err != nil {
					t.Fatal(err)
				}
				press := float64(a.Pressure) + f*float64(b.Pressure-a.Pressure) + float64(x.extra)
				want += press / float64(v) * float64(b.Time-a.Time) / cuts
			}
		}
		if !(math.Abs(p.Supply-want) <= x.within*math.Max(want, 1e-12)) {
			t.Errorf("%s: supply %.9g, brute force %.9g", x.name, p.Supply, want)
		}
		if fluid != p.Fluid {
			t.Errorf("%s: flows at the end: %v", x.name, p.Fluid)
		}
		t.Logf("%s: supply %.6g, brute force %.6g", x.name, p.Supply, want)
	}
}

// A sample more on a straight line changes nothing.
func TestCutsChangeNothing(t *testing.T) {
	c := quantity.FromCelsius
	few := []Sample{{0, c(70), 1e5}, {1, c(110), 3e5}, {3, c(30), 1e5}}
	many := []Sample{few[0], {0.25, c(80), 1.5e5}, {0.5, c(90), 2e5}, few[1], {2, c(70), 2e5}, few[2]}
	a, err := Pass(melt(), few, 0)
	if err != nil {
		t.Fatal(err)
	}
	b, err := Pass(melt(), many, 0)
	if err != nil {
		t.Fatal(err)
	}
	if !(math.Abs(a.Supply/b.Supply-1) <= 1e-6) || !(math.Abs(float64(a.Flowed-b.Flowed)) <= 1e-9) || a.Nip != b.Nip {
		t.Errorf("few samples %+v, many %+v", a, b)
	}
	// It flows from 83 °C on the way up to 54 °C on the way down: 1 - 13/40 s and 2·56/80 s.
	if want := 1 - 13.0/40 + 2*56.0/80; !(math.Abs(float64(a.Flowed)-want) <= 1e-9) {
		t.Errorf("flowed for %g s, not %g", float64(a.Flowed), want)
	}
}

func TestPassRefuses(t *testing.T) {
	good := even(370, 1e5, 1)
	for name, s := range map[string][]Sample{
		"one sample":        good[:1],
		"backwards":         {{1, 370, 0}, {0, 370, 0}},
		"absolute zero":     {{0, 0, 0}, {1, 370, 0}},
		"negative pressure": {{0, 370, -1}, {1, 370, 0}},
		"no number":         {{0, 370, 0}, {quantity.Time(math.NaN()), 370, 0}},
	} {
		if _, err := Pass(melt(), s, 0); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

// Pressures below 0 move nothing.
func TestPassDoesNotGoBack(t *testing.T) {
	p, err := Pass(sticky(), even(300, 1e5, 1), -2e5)
	if err != nil || p.Supply != 0 {
		t.Errorf("supply %g (%v)", p.Supply, err)
	}
}

// Any profile has the mean it was given, so that at one temperature the profile does
// not matter; and its peak is what Peak says.
func TestPress(t *testing.T) {
	c := quantity.FromCelsius
	way := []Sample{{0, c(40), 9}, {0.35, c(40), 9}, {0.5, c(40), 9}, {2, c(40), 9}}
	want := 2e5 * 0.3 / viscosityAt(t, sticky(), c(40))
	for _, p := range []Profile{Even, Hertz, Parabola} {
		pressed, err := Press(way, 0.3, 0.6, 2e5, p)
		if err != nil {
			t.Fatal(err)
		}
		got, err := Pass(sticky(), pressed, 0)
		if err != nil || !(math.Abs(got.Supply/want-1) <= 1e-3) {
			t.Errorf("profile %d: supply %g (%v), not %g", p, got.Supply, err, want)
		}
		peak := quantity.Pressure(0)
		for _, s := range pressed {
			peak = max(peak, s.Pressure)
		}
		if !(math.Abs(float64(peak)/2e5/float64(p.Peak())-1) <= 1e-2) {
			t.Errorf("profile %d: peak %g Pa", p, float64(peak))
		}
		if pressed[0].Pressure != 0 || pressed[len(pressed)-1] != (Sample{2, c(40), 0}) {
			t.Errorf("profile %d: pressure outside the nip: %+v", p, pressed)
		}
	}
	for _, bad := range [][2]quantity.Time{{0.6, 0.3}, {-1, 0.3}, {1, 3}} {
		if _, err := Press(way, bad[0], bad[1], 1e5, Even); err == nil {
			t.Errorf("nip %v: no error", bad)
		}
	}
	// Temperatures stay what they were.
	slope := []Sample{{0, 300, 0}, {1, 340, 0}}
	pressed, err := Press(slope, 0, 1, 1e5, Hertz)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range pressed {
		if !(math.Abs(float64(s.Temperature)-300-40*float64(s.Time)) <= 1e-9) {
			t.Errorf("%g K at %g s", float64(s.Temperature), float64(s.Time))
		}
	}
}

func viscosityAt(t testing.TB, l Law, temp quantity.Temperature) float64 {
	t.Helper()
	v, err := l.Viscosity(temp)
	if err != nil {
		t.Fatal(err)
	}
	return float64(v)
}
