package bond

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// At the lowest temperature the nip fills just what was wanted, a kelvin below it less.
func TestLowestApplicationIsTheLowest(t *testing.T) {
	tested := 0
	for _, a := range []Adhesive{hot(), cold()} {
		for _, depth := range []quantity.Length{1e-6, 5e-6, 20e-6} {
			for _, dwell := range []quantity.Time{0.05, 0.6, 5} {
				r := Relief{Depth: depth, Width: 80e-6}
				l, err := a.LowestApplication(r, 0.9, 0.2e6, dwell)
				if err != nil {
					t.Fatal(err)
				}
				fill := func(temp quantity.Temperature) float64 {
					p, err := Pass(a.Law, even(temp, 0.2e6, dwell), r.Capillary(a.Surface, a.Wetting))
					if err != nil {
						t.Fatal(err)
					}
					return float64(r.Filled(p.Supply))
				}
				at, below := fill(l.Temperature), fill(l.Temperature-1)
				switch {
				case l.Melting && !(at >= 0.9 && below == 0):
					t.Errorf("%g m in %g s: %g filled at its melting, %g below", float64(depth), float64(dwell), at, below)
				case !l.Melting && !(math.Abs(at-0.9) <= 1e-9 && below < 0.9):
					t.Errorf("%g m in %g s: %g filled at %g °C, %g a kelvin below", float64(depth), float64(dwell), at, l.Temperature.Celsius(), below)
				}
				tested++
			}
		}
	}
	t.Logf("%d cases", tested)
}

// By hand: 15 µm on 100 µm, all of it, 0.25 MPa, 0.3 s. Demand 0.135 + 0.763944 =
// 0.898944; drive 250 600 Pa; needed 83 631.7 Pa·s. Melt of 400 Pa·s at 463.15 K with
// 52 kJ/mol: 1/T = 1/463.15 + 8.314463/52 000·ln 209.079 = 3.013335e-3, 331.86 K: below
// its melting, which rules.
func TestLowestApplicationByHand(t *testing.T) {
	r := Relief{Depth: 15e-6, Width: 100e-6}
	l, err := hot().LowestApplication(r, 1, 0.25e6, 0.3)
	if err != nil {
		t.Fatal(err)
	}
	if !(math.Abs(float64(l.Needed)/83631.7-1) <= 1e-5) || !l.Melting || l.Temperature != quantity.FromCelsius(83) {
		t.Errorf("%+v", l)
	}
	temp, err := melt().Temperature(l.Needed)
	if err != nil || !(math.Abs(float64(temp)-331.86) <= 0.01) {
		t.Errorf("%g K (%v), by hand 331.86", float64(temp), err)
	}
}

// Faster, deeper, less pressure never asks for less heat.
func TestLowestApplicationIsMonotone(t *testing.T) {
	lowest := func(depth quantity.Length, p quantity.Pressure, dwell quantity.Time) quantity.Temperature {
		l, err := cold().LowestApplication(Relief{Depth: depth, Width: 80e-6}, 1, p, dwell)
		if err != nil {
			t.Fatal(err)
		}
		return l.Temperature
	}
	base := lowest(10e-6, 0.2e6, 0.6)
	if !(lowest(10e-6, 0.2e6, 0.2) > base && lowest(20e-6, 0.2e6, 0.6) > base && lowest(10e-6, 0.1e6, 0.6) > base) {
		t.Error("an asking nip did with less heat")
	}
}

func TestLowestApplicationRefuses(t *testing.T) {
	r := Relief{Depth: 10e-6, Width: 80e-6}
	deep := Relief{Depth: 40e-6, Width: 80e-6}
	dry := cold()
	dry.Surface = 0
	for name, f := range map[string]func() (Lowest, error){
		"no share":         func() (Lowest, error) { return cold().LowestApplication(r, 0, 1e5, 1) },
		"no dwell":         func() (Lowest, error) { return cold().LowestApplication(r, 1, 1e5, 0) },
		"no pressure":      func() (Lowest, error) { return dry.LowestApplication(r, 1, 0, 1) },
		"too little of it": func() (Lowest, error) { return cold().LowestApplication(deep, 1, 1e5, 1) },
		"no time at all":   func() (Lowest, error) { return cold().LowestApplication(r, 1, 1e5, 1e-12) },
		"no relief":        func() (Lowest, error) { return cold().LowestApplication(Relief{}, 1, 1e5, 1) },
	} {
		if l, err := f(); err == nil {
			t.Errorf("%s: no error, %+v", name, l)
		}
	}
}

// Warming from 23 to 40 °C makes the adhesive 10^1.1026 times as fast, whatever the relief
// and the nip, and the dwell that clears as many times shorter.
func TestWarm(t *testing.T) {
	r := Relief{Depth: 10e-6, Width: 100e-6}
	w, err := cold().Warm(r, 0.2e6, 0.6, quantity.FromCelsius(23), quantity.FromCelsius(40))
	if err != nil {
		t.Fatal(err)
	}
	if !(math.Abs(math.Log10(float64(w.Faster))-1.1026) <= 1e-4) || !(math.Abs(float64(w.ClearFrom/w.ClearTo)/float64(w.Faster)-1) <= 1e-12) {
		t.Errorf("%+v", w)
	}
	if !(math.Abs(float64(w.ShareFrom)-0.230089) <= 1e-5) || w.ShareTo != 1 {
		t.Errorf("filled %g, warm %g", float64(w.ShareFrom), float64(w.ShareTo))
	}
	// The viscosity at 40 °C by hand: 1e6/10^1.1026 = 78 960 Pa·s.
	if !(math.Abs(float64(w.ClearTo)/(0.569296*78960/200600)-1) <= 1e-3) {
		t.Errorf("clears in %g s", float64(w.ClearTo))
	}
	if _, err := cold().Warm(r, 0.2e6, 0.6, 200, 300); err == nil {
		t.Error("from glass: no error")
	}
}

// Stefan's disc and the strip agree with a march of their own equations; and a nip
// leaves a film's adhesive as it is.
func TestSqueezeOut(t *testing.T) {
	const v, p, b = 1e4, 2e5, 1e-4
	h, step := 50e-6, 1e-6
	for range 1000000 {
		h -= step * p * h * h * h / (v * b * b)
	}
	if got := SqueezeOut(50e-6, v, p, b, 1); !(math.Abs(float64(got)/h-1) <= 1e-6) {
		t.Errorf("strip %g m, marched %g", float64(got), h)
	}
	h, step = 50e-6, 1e-6
	for range 1000000 {
		h -= step * 2 * p * h * h * h / (3 * v * b * b)
	}
	if got := DiscTime(v, b, p, 50e-6, quantity.Length(h)); !(math.Abs(float64(got)-1) <= 1e-5) {
		t.Errorf("disc %g s, marched 1 s", float64(got))
	}
	// By hand: 2·0.25e6·0.6/(1.3e4·1e-4) = 2.3077e5 beside 1/h₀² = 4e8, 0.03 % thinner.
	if got := SqueezeOut(50e-6, 1.3e4, 0.25e6, 10e-3, 0.6); !(math.Abs(float64(got)-49.98558e-6) <= 1e-11) {
		t.Errorf("a nip thinned 50 µm to %g m", float64(got))
	}
}
