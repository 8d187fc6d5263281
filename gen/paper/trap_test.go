package paper

import (
	"errors"
	"math"
	"testing"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// conditioned is a trap from equilibrium with a room at 23 °C and sea level.
func conditioned(t testing.TB, i Isotherm, rh quantity.Fraction) Trap {
	t.Helper()
	tr, err := Conditioned(i, rh, room, air.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	return tr
}

// With a calculator: at 23 °C K = 0.1011·exp(297.7358/(0.4615 × 296.15)) = 0.89298 and C = 13.207, so
// pulp conditioned at 50 % has x = 0.44649 and M = 0.0578·13.207·0.44649/(0.55351·6.4503) = 0.09546;
// its vapour is 0.5 × 2810.9 = 1405.5 Pa. At 95 °C K = 0.58319 and C = 6.7512; the quadratic has
// b = 0.0578·6.7512/0.09546 − 6.7512 + 2 = −0.6636, so x = (0.6636 + √(0.6636² + 4 × 5.7512))/(2 ×
// 5.7512) = 0.47865 and a = 0.8207. With p_s(95 °C) = 84.609 kPa the vapour is 69.44 kPa, and
// r = 368.15/296.15 × (101325 − 1405.5)/(101325 − 69440) = 3.896.
func TestSwellingByHand(t *testing.T) {
	tr := conditioned(t, Pulp, 0.5)
	if a, err := Activity(Pulp, tr.Moisture, quantity.FromCelsius(95)); err != nil || math.Abs(float64(a)-0.8207) > 1e-4 {
		t.Errorf("activity %g (%v)", float64(a), err)
	}
	r, err := tr.Swelling(quantity.FromCelsius(95))
	if err != nil || math.Abs(r-3.896) > 2e-3 {
		t.Errorf("swelling %g (%v)", r, err)
	}
}

// Special cases whose swelling is known without an isotherm.
func TestSwellingOfSpecialCases(t *testing.T) {
	hot := quantity.FromCelsius(90)
	wet, err := air.SaturationPressure(hot)
	cold, err2 := air.SaturationPressure(room)
	if err != nil || err2 != nil {
		t.Fatal(err, err2)
	}
	heated := float64(hot / room)
	const p = float64(air.Atmosphere)
	soaked := Trap{Sheet: Pulp, Moisture: 2, Start: room, Pressure: air.Atmosphere}
	pressed := soaked
	pressed.Nip = 3e5
	for _, x := range []struct {
		what string
		trap Trap
		at   quantity.Temperature
		want float64
	}{
		{"nothing heated", conditioned(t, Pulp, 0.5), room, 1},
		{"plastic: the gas law alone", conditioned(t, Sheet{}, 0.5), hot, heated},
		{"dry paper: the gas law alone", conditioned(t, Pulp, 0), hot, heated},
		{"soaked paper: free water", soaked, hot, heated * (p - float64(cold)) / (p - float64(wet))},
		{"the same in a nip of 3 bar", pressed, hot, heated * (p - float64(cold)) / (p + 3e5 - float64(wet))},
	} {
		got, err := x.trap.Swelling(x.at)
		if err != nil || !(math.Abs(got-x.want) <= 1e-9*x.want) {
			t.Errorf("%s: %.12g (%v), want %.12g", x.what, got, err, x.want)
		}
	}
}

// Free water boils where IAPWS-IF97 says, 99.974 °C at sea level (from memory: steam tables give
// 99.97 °C); there the swelling has no bound, and says so. In a nip it does not boil yet.
func TestSwellingHasNoBoundAtBoiling(t *testing.T) {
	boils, err := air.SaturationTemperature(air.Atmosphere)
	if err != nil || math.Abs(boils.Celsius()-99.974) > 1e-3 {
		t.Fatalf("%g °C (%v)", boils.Celsius(), err)
	}
	soaked := Trap{Sheet: Pulp, Moisture: 2, Start: room, Pressure: air.Atmosphere}
	if r, err := soaked.Swelling(boils - 1e-6); err != nil || r < 1e6 {
		t.Errorf("just below: %g (%v)", r, err)
	}
	for _, above := range []quantity.Temperature{1e-6, 1, 40} {
		if r, err := soaked.Swelling(boils + above); !errors.Is(err, ErrBoils) || !math.IsInf(r, 1) {
			t.Errorf("%g K above: %g (%v)", float64(above), r, err)
		}
	}
	soaked.Nip = 1e5
	if r, err := soaked.Swelling(boils + 1); err != nil || !(r < 2) {
		t.Errorf("in a nip: %g (%v)", r, err)
	}
	// Up a mountain it boils earlier.
	soaked.Nip, soaked.Pressure = 0, 80e3
	if r, err := soaked.Swelling(quantity.FromCelsius(94)); !errors.Is(err, ErrBoils) || !math.IsInf(r, 1) {
		t.Errorf("at 80 kPa, 94 °C: %g (%v)", r, err)
	}
}

// The temperature of a ratio is that at which the swelling has it; a second method walks up in
// steps of 0.01 K until it is exceeded.
func TestReachesIsWhereTheSwellingIs(t *testing.T) {
	for _, x := range materials(t) {
		for _, rh := range []quantity.Fraction{0.2, 0.35, 0.5, 0.65} {
			tr := conditioned(t, x.is, rh)
			for _, ratio := range []float64{1.1, SealedLimit, OpenLimit} {
				got, err := tr.Reaches(ratio, quantity.FromCelsius(119.5))
				if errors.Is(err, ErrNotReached) {
					if top, err := tr.Swelling(quantity.FromCelsius(119.5)); err != nil || top > ratio {
						t.Errorf("%s, %g, %g: not reached, but %g (%v) at the end", x.name, float64(rh), ratio, top, err)
					}
					continue
				}
				if err != nil {
					t.Errorf("%s, %g, %g: %v", x.name, float64(rh), ratio, err)
					continue
				}
				below, err := tr.Swelling(got)
				above, err2 := tr.Swelling(got + 1e-6)
				if err != nil || !(below <= ratio) || !(above > ratio) || err2 != nil && !errors.Is(err2, ErrBoils) {
					t.Errorf("%s, %g, %g: %g (%v) at %.9g °C, %g (%v) above", x.name, float64(rh), ratio, below, err, got.Celsius(), above, err2)
				}
				if rh == 0.5 {
					walked := room
					for {
						if r, _ := tr.Swelling(walked + 0.01); r > ratio {
							break
						}
						walked += 0.01
					}
					if math.Abs(float64(got-walked)) > 0.0101 {
						t.Errorf("%s, %g: %.4f °C, walking gives %.4f °C", x.name, ratio, got.Celsius(), walked.Celsius())
					}
				}
			}
		}
	}
}

// Swelling rises with temperature, without a step down anywhere.
func TestSwellingRises(t *testing.T) {
	for _, x := range materials(t) {
		for _, rh := range []quantity.Fraction{0, 0.3, 0.6, 0.9} {
			tr := conditioned(t, x.is, rh)
			before := 0.0
			for celsius := 0.0; celsius <= x.hottest && !math.IsInf(before, 1); celsius += 0.5 {
				r, err := tr.Swelling(quantity.FromCelsius(celsius))
				if err != nil && !errors.Is(err, ErrBoils) || !(r > before) {
					t.Fatalf("%s, %g, %g °C: %g after %g (%v)", x.name, float64(rh), celsius, r, before, err)
				}
				before = r
			}
		}
	}
}

// From 20 to 65 % humidity a damper sheet reaches the limits at a lower temperature, for as long
// as its activity there is below 1. Once it is capped, more water does nothing more, and
// the limit creeps up since damper air traps less dry gas: by less than 0.01 K a point, which is
// what the gas law has for it. The log says where.
func TestDamperReachesTheLimitEarlier(t *testing.T) {
	for _, x := range materials(t) {
		for _, celsius := range []float64{15, 23, 30} {
			for _, ratio := range []float64{SealedLimit, OpenLimit} {
				before, capped := quantity.Temperature(math.Inf(1)), 0
				for rh := 20; rh <= 65; rh++ {
					tr, err := Conditioned(x.is, quantity.Fraction(rh)/100, quantity.FromCelsius(celsius), air.Atmosphere)
					if err != nil {
						t.Fatal(err)
					}
					got, err := tr.Reaches(ratio, quantity.FromCelsius(119.5))
					if errors.Is(err, ErrNotReached) {
						continue
					}
					if err != nil {
						t.Fatal(err)
					}
					a, err := Activity(tr.Sheet, tr.Moisture, got)
					if err != nil {
						t.Fatal(err)
					}
					switch {
					case got < before:
					case a > 1-1e-3 && got < before+0.01:
						if capped == 0 {
							capped = rh
						}
					default:
						t.Errorf("%s, room %g °C, %d %%, ratio %g: %.5f °C after %.5f °C, activity %g", x.name, celsius, rh, ratio,
							got.Celsius(), before.Celsius(), float64(a))
					}
					before = got
				}
				if capped > 0 {
					t.Logf("%s, room %g °C, ratio %g: activity capped from %d %%, the limit creeps up from there", x.name, celsius, ratio, capped)
				}
			}
		}
	}
}
