package bond

import (
	"errors"
	"math"
	"testing"

	"laydown/gen/quantity"
)

// Each law falls with temperature and is undone by its inverse.
func TestLawsFallAndInvert(t *testing.T) {
	for _, r := range []struct {
		name     string
		law      Law
		from, to float64 // °C
	}{
		{"melt", melt(), 54, 240},
		{"free volume", sticky(), -35, 65},
		{"free volume, constants of its own", FreeVolume{Reference: 3e5, At: 296.15, Glass: 240, Constants: Constants{13, 60}}, -33, 60},
	} {
		last := math.Inf(1)
		for c := r.from; c <= r.to; c += 2.5 {
			temp := quantity.FromCelsius(c)
			v, err := r.law.Viscosity(temp)
			if err != nil {
				t.Fatalf("%s at %g °C: %v", r.name, c, err)
			}
			if !(float64(v) < last) {
				t.Errorf("%s: %g Pa·s at %g °C, more than below it", r.name, float64(v), c)
			}
			last = float64(v)
			back, err := r.law.Temperature(v)
			if err != nil || !(math.Abs(float64(back-temp)) <= 1e-8) {
				t.Errorf("%s: %g °C came back as %g (%v)", r.name, c, back.Celsius(), err)
			}
			if r.law.Extrapolates(temp) {
				t.Errorf("%s extrapolates at %g °C", r.name, c)
			}
		}
	}
}

func TestReferencesAreMet(t *testing.T) {
	if v, _ := melt().Viscosity(quantity.FromCelsius(190)); !(math.Abs(float64(v)-400) <= 1e-9) {
		t.Errorf("melt at its reference: %g", float64(v))
	}
	if v, _ := sticky().Viscosity(quantity.FromCelsius(23)); !(math.Abs(float64(v)-1e6) <= 1e-6) {
		t.Errorf("adhesive at its reference: %g", float64(v))
	}
}

// Constants for another reference give the same shifts.
func TestShiftedConstantsAgree(t *testing.T) {
	for _, by := range []quantity.TemperatureDifference{5, 50, 120} {
		moved := Universal.Shifted(by)
		for _, span := range []quantity.TemperatureDifference{1, 30, 90} {
			want := Universal.LogShift(by+span) - Universal.LogShift(by)
			if got := moved.LogShift(span); !(math.Abs(got-want) <= 1e-12) {
				t.Errorf("reference up by %g K, %g K above: %g, not %g", float64(by), float64(span), got, want)
			}
		}
	}
}

// Second method: Williams, Landel and Ferry is Doolittle's law, ln η = A + 1/f, with a
// free volume f that grows in a straight line.
func TestFreeVolumeIsDoolittle(t *testing.T) {
	s := sticky()
	f := func(c float64) float64 {
		return float64(Universal.FreeVolumeShare()) + float64(Universal.FreeVolumeExpansion())*(c+35)
	}
	for _, c := range []float64{-30, 0, 40, 60} {
		want := 1e6 * math.Exp(1/f(c)-1/f(23))
		v, err := s.Viscosity(quantity.FromCelsius(c))
		if err != nil || !(math.Abs(float64(v)/want-1) <= 1e-10) {
			t.Errorf("%g °C: %g Pa·s (%v), Doolittle %g", c, float64(v), err, want)
		}
	}
}

func TestLawsRefuse(t *testing.T) {
	c := quantity.FromCelsius
	if _, err := melt().Viscosity(c(53.9)); !errors.Is(err, ErrSet) {
		t.Errorf("a set melt: %v", err)
	}
	if _, err := sticky().Viscosity(c(-35.1)); !errors.Is(err, ErrGlassy) {
		t.Errorf("a glassy adhesive: %v", err)
	}
	if _, err := sticky().Temperature(1e16); !errors.Is(err, ErrGlassy) {
		t.Errorf("thicker than glass: %v", err)
	}
	if _, err := sticky().Temperature(1e-6); !errors.Is(err, ErrNoTemperature) {
		t.Errorf("thinner than it gets: %v", err)
	}
	if _, err := melt().Temperature(1e-6); !errors.Is(err, ErrNoTemperature) {
		t.Errorf("a melt thinner than it gets: %v", err)
	}
	nan := quantity.Temperature(math.NaN())
	for name, law := range map[string]Law{
		"melt without energy":          Melt{Reference: 1, At: 400},
		"sets above its melting":       Melt{Reference: 1, At: 400, Energy: 5e4, Melting: 350, Setting: 360},
		"reference below glass":        FreeVolume{Reference: 1, At: 200, Glass: 250},
		"constants with the sign lost": FreeVolume{Reference: 1, At: 300, Glass: 250, Constants: Constants{-17, 51.6}},
	} {
		if _, err := law.Viscosity(370); err == nil {
			t.Errorf("%s: no error", name)
		}
		if _, err := law.Temperature(10); err == nil {
			t.Errorf("%s: no error from the inverse", name)
		}
	}
	for _, law := range []Law{melt(), sticky()} {
		if _, err := law.Viscosity(nan); err == nil {
			t.Errorf("%T at no temperature: no error", law)
		}
		if _, err := law.Temperature(0); err == nil {
			t.Errorf("%T of no viscosity: no error", law)
		}
	}
	if !melt().Extrapolates(c(300)) || !sticky().Extrapolates(c(70)) {
		t.Error("an extrapolation went unnoticed")
	}
	if _, err := FlowEnergy(1, 300, 2, 300); err == nil {
		t.Error("energy from one temperature: no error")
	}
}

// An energy found from two viscosities gives them back.
func TestFlowEnergy(t *testing.T) {
	m := melt()
	v, _ := m.Viscosity(380)
	e, err := FlowEnergy(m.Reference, m.At, v, 380)
	if err != nil || !(math.Abs(float64(e)-52e3) <= 1e-6) {
		t.Errorf("%g J/mol (%v), not 52 000", float64(e), err)
	}
}

// What warming buys, worked out by hand from the universal constants: 23 to 40 °C with
// the glass transition at -35 °C is 17.44·(75/126.6 - 58/109.6) = 1.1026 powers of ten.
func TestFaster(t *testing.T) {
	f, err := Faster(sticky(), quantity.FromCelsius(23), quantity.FromCelsius(40))
	if err != nil || !(math.Abs(math.Log10(float64(f))-1.1026) <= 1e-4) {
		t.Errorf("%g times as fast (%v), not 10^1.1026", float64(f), err)
	}
	if _, err := Faster(sticky(), 200, 300); !errors.Is(err, ErrGlassy) {
		t.Errorf("from glass: %v", err)
	}
}
