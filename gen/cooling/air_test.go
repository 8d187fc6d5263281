package cooling

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

const sea = 101325

func TestRadiation(t *testing.T) {
	h, err := Radiation(1, 300, 300)
	if err != nil || math.Abs(float64(h)-4*stefan*27e6) > 1e-9 {
		t.Errorf("a black face at 300 K: %g W/(m² K) (%v)", float64(h), err)
	}
	half, _ := Radiation(0.45, 330, 296)
	whole, _ := Radiation(0.9, 330, 296)
	if math.Abs(float64(whole-2*half)) > 1e-12 {
		t.Error("not linear in the emissivity")
	}
	if _, err := Radiation(1.1, 300, 300); err == nil {
		t.Error("an emissivity of 1.1: no error")
	}
}

// A faster fan, a faster web, a warmer face never give less; and no step where a
// correlation begins.
func TestMoreAirNeverLess(t *testing.T) {
	before, web := 0.0, 0.0
	for u := 0.0; u < 20; u += 0.05 {
		h, err := Fan(quantity.Speed(u), 0.7, celsius(50), celsius(23), sea)
		if err != nil || float64(h) < before {
			t.Fatalf("%g m/s: %g W/(m² K) after %g (%v)", u, float64(h), before, err)
		}
		before = float64(h)
		w, err := MovingWeb(quantity.Speed(u/20), 0.7, celsius(50), celsius(23), sea)
		if err != nil || float64(w) < web {
			t.Fatalf("a web at %g m/s: %g W/(m² K) after %g (%v)", u/20, float64(w), web, err)
		}
		web = float64(w)
	}
	for _, lie := range []Lie{Upright, FacingUp, FacingDown} {
		before := 0.0
		for warm := 0.001; warm < 80; warm *= 1.02 {
			h, err := StillAir(lie, 0.085, celsius(23+warm), celsius(23), sea)
			// Laminar and turbulent level plates differ where they meet; the film's air changes slowly.
			if err != nil || float64(h) < before*0.99 || before > 0 && float64(h) > before*1.03 {
				t.Fatalf("lie %d, %g K warm: %g W/(m² K) after %g (%v)", lie, warm, float64(h), before, err)
			}
			before = float64(h)
		}
		if !(before > 2 && before < 12) {
			t.Errorf("lie %d: %g W/(m² K) at 80 K", lie, before)
		}
	}
}

// Bands of usual practice, from memory: still faces with radiation 6 to 15, a moving
// web or a fan 15 to 80 W/(m² K).
func TestUsualBands(t *testing.T) {
	r, _ := Radiation(Emissivity, celsius(50), celsius(23))
	still, _ := StillAir(FacingUp, 0.085, celsius(50), celsius(23), sea)
	down, _ := StillAir(FacingDown, 0.085, celsius(50), celsius(23), sea)
	fan, _ := Fan(5, 0.5, celsius(50), celsius(23), sea)
	web, _ := MovingWeb(0.5, 0.3, celsius(70), celsius(23), sea)
	for _, x := range []struct {
		name      string
		h         quantity.Conductance
		low, high quantity.Conductance
	}{
		{"still, up", Air(r, still), 6, 15}, {"still, down", Air(r, down), 6, 15},
		{"fan at 5 m/s", Air(r, still, fan), 15, 80}, {"web at 30 m/min", Air(r, still, web), 9, 40},
	} {
		if !(x.h >= x.low && x.h <= x.high) {
			t.Errorf("%s: %.3g W/(m² K), usual %g to %g", x.name, float64(x.h), float64(x.low), float64(x.high))
		}
		t.Logf("%s: %.3g W/(m² K)", x.name, float64(x.h))
	}
	if !(still > down) {
		t.Error("a warm face gives more downwards than upwards")
	}
	if Air(6) != 6 {
		t.Error("radiation alone")
	}
}

func TestAirRefusals(t *testing.T) {
	for name, f := range map[string]func() (quantity.Conductance, error){
		"hot air":     func() (quantity.Conductance, error) { return Fan(1, 1, 1500, 300, sea) },
		"backwards":   func() (quantity.Conductance, error) { return Fan(-1, 1, 300, 300, sea) },
		"no length":   func() (quantity.Conductance, error) { return MovingWeb(1, 0, 300, 300, sea) },
		"long web":    func() (quantity.Conductance, error) { return MovingWeb(10, 10, 300, 300, sea) },
		"no lie":      func() (quantity.Conductance, error) { return StillAir(9, 1, 320, 300, sea) },
		"no pressure": func() (quantity.Conductance, error) { return StillAir(Upright, 1, 320, 300, 0) },
		"not a number": func() (quantity.Conductance, error) {
			return StillAir(Upright, quantity.Length(math.NaN()), 320, 300, sea)
		},
	} {
		if h, err := f(); err == nil || h != 0 {
			t.Errorf("%s: %g, no error", name, float64(h))
		}
	}
}
