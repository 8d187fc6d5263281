package bond

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

func TestFilledUndoesDemand(t *testing.T) {
	for _, form := range []Form{Groove, Pit} {
		for _, ratio := range []float64{1e-4, 0.02, 0.3, 1, 5, 1e4} {
			r := Relief{Form: form, Depth: quantity.Length(10e-6 * ratio), Width: 10e-6}
			for _, share := range []quantity.Fraction{1e-6, 0.1, 0.5, 0.999} {
				if got := r.Filled(r.Demand(share)); !(math.Abs(float64(got/share)-1) <= 1e-12) {
					t.Errorf("form %d, depth/width %g: %g came back as %g", form, ratio, float64(share), float64(got))
				}
			}
			if got := r.Filled(10 * r.Demand(1)); got != 1 {
				t.Errorf("form %d, depth/width %g: filled to %g", form, ratio, float64(got))
			}
		}
	}
	if r := (Relief{Depth: 1, Width: 1}); r.Filled(0) != 0 || r.Filled(-1) != 0 {
		t.Error("filled without a supply")
	}
}

// Deep valleys under capillary pressure alone are Lucas and Washburn's: l² = γ·r·t/(2η)
// in a tube; l² = γ·w·t/(3η) between plates.
func TestDeepValleysAreLucasWashburn(t *testing.T) {
	const tension, viscosity, seconds = 0.03, 2.0, 1e5
	for _, x := range []struct {
		form Form
		want float64
	}{
		{Pit, math.Sqrt(tension * 0.5e-6 * seconds / (2 * viscosity))},
		{Groove, math.Sqrt(tension * 1e-6 * seconds / (3 * viscosity))},
	} {
		r := Relief{Form: x.form, Depth: 1, Width: 1e-6}
		s := float64(r.Capillary(tension, 1)) * seconds / viscosity
		if got := float64(r.Filled(s)); !(math.Abs(got/x.want-1) <= 1e-4) {
			t.Errorf("form %d: %g m, Lucas and Washburn %g", x.form, got, x.want)
		}
	}
}

// Shallow valleys go in a straight line with time.
func TestShallowValleysAreLinear(t *testing.T) {
	r := Relief{Depth: 1e-8, Width: 1e-4}
	s := r.Demand(0.5)
	if got := r.Filled(2 * s); !(math.Abs(float64(got)-1) <= 1e-4) {
		t.Errorf("twice the supply fills %g, not all", float64(got))
	}
}

// Second method: the front's speed p/(η·resistance), marched by Runge and Kutta.
func TestDemandAgreesWithMarch(t *testing.T) {
	for _, form := range []Form{Groove, Pit} {
		for _, ratio := range []float64{0.02, 0.5, 4} {
			r := Relief{Form: form, Depth: quantity.Length(20e-6 * ratio), Width: 20e-6}
			speed := func(z float64) float64 { return 1 / r.resistance(quantity.Length(z)) }
			z, s, step := 0.0, 0.0, r.Demand(1)/20000
			for z < float64(r.Depth) {
				k1 := speed(z)
				k2 := speed(z + step/2*k1)
				k3 := speed(z + step/2*k2)
				k4 := speed(z + step*k3)
				z += step / 6 * (k1 + 2*k2 + 2*k3 + k4)
				s += step
			}
			if !(math.Abs(s/r.Demand(1)-1) <= 1e-4) {
				t.Errorf("form %d, depth/width %g: filled at %g, demand %g", form, ratio, s, r.Demand(1))
			}
		}
	}
}

func TestReach(t *testing.T) {
	r := Relief{Depth: 40e-6, Width: 1e-4}
	for _, x := range []struct {
		thickness, valleys, want float64
	}{{25e-6, 0, 0.625}, {25e-6, 0.5, 1}, {10e-6, 0.5, 0.5}, {0, 0, 1}} {
		r.Valleys = quantity.Fraction(x.valleys)
		if got := r.Reach(quantity.Length(x.thickness)); !(math.Abs(float64(got)-x.want) <= 1e-12) {
			t.Errorf("%g m on valleys of %g: %g, not %g", x.thickness, x.valleys, float64(got), x.want)
		}
	}
}

// Contact angles from memory: hexadecane (27.5 mN/m) on PTFE (18.5 mN/m) is measured at
// 46°; the equation gives 50°. A liquid spreads on what has more energy than it.
func TestWetting(t *testing.T) {
	angle := math.Acos(float64(Wetting(0.0185, 0.0275))) * 180 / math.Pi
	if !(math.Abs(angle-46) <= 5) {
		t.Errorf("hexadecane on PTFE: %.1f°", angle)
	}
	if got := Wetting(0.04, 0.03); got != 1 {
		t.Errorf("a clean print: %g", float64(got))
	}
	if a, b := Wetting(0.035, 0.04), Wetting(0.02, 0.04); !(a > b && b > 0) {
		t.Errorf("a clean surface %g, an oily one %g", float64(a), float64(b))
	}
	if Wetting(0, 0.03) != -1 {
		t.Error("a surface without energy was wetted")
	}
}

// A hard film pulls back harder than a soft one, with the cube of its thickness and the
// fourth power of the valley's width. By hand: 2.2 GPa, 0.38, 125 µm over 1 mm, bent 5 µm:
// D = 4.185e-4 N·m, p = 803 kPa.
func TestSpringBack(t *testing.T) {
	hard := SpringBack(2.2e9, 0.38, 125e-6, 1e-3, 5e-6)
	if !(math.Abs(float64(hard)/803.5e3-1) <= 2e-3) {
		t.Errorf("polycarbonate: %g Pa", float64(hard))
	}
	soft := SpringBack(0.2e9, 0.38, 50e-6, 1e-3, 5e-6)
	if want := float64(hard) * 0.2 / 2.2 * math.Pow(50.0/125, 3); !(math.Abs(float64(soft)/want-1) <= 1e-12) {
		t.Errorf("soft film %g Pa, not %g", float64(soft), want)
	}
	if wide := SpringBack(2.2e9, 0.38, 125e-6, 2e-3, 5e-6); !(math.Abs(float64(hard/wide)-16) <= 1e-9) {
		t.Errorf("twice as wide: %g times less", float64(hard/wide))
	}
}
