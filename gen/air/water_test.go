package air

import (
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// near reports whether a is b within a relative tolerance.
func near(a, b, tolerance float64) bool {
	return math.Abs(a-b) <= tolerance*math.Max(math.Abs(a), math.Abs(b))
}

// must fails the test on an error and gives the value.
func must[Q any](t *testing.T) func(Q, error) Q {
	t.Helper()
	return func(q Q, err error) Q {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return q
	}
}

// Temperature and pressure of saturation are each other's inverse over the whole
// line, and the pressure rises all along it.
func TestSaturationInverse(t *testing.T) {
	before := quantity.Pressure(0)
	for k := 273.15; k <= 647.096; k += 0.37 {
		p := must[quantity.Pressure](t)(SaturationPressure(quantity.Temperature(k)))
		if p <= before {
			t.Fatalf("saturation pressure falls at %g K", k)
		}
		before = p
		back := must[quantity.Temperature](t)(SaturationTemperature(p))
		// Near the critical point the release's two equations lose digits.
		if math.Abs(float64(back)-k) > 1e-6 {
			t.Errorf("%g K: the saturation temperature of its pressure is %.9g K", k, float64(back))
		}
	}
	top := must[quantity.Pressure](t)(SaturationPressure(647.096))
	if !near(float64(top), 22.064e6, 1e-5) {
		t.Errorf("critical pressure %g Pa, want 22.064 MPa (IAPWS R7-97(2012))", float64(top))
	}
}

// Second method: R. W. Hyland and A. Wexler, ASHRAE Transactions 89(2A) (1983)
// 500, as in ASHRAE Fundamentals (coefficients from memory), 0 °C to 200 °C. The
// two formulations part by less than 3e-4.
func TestSaturationAgainstHylandWexler(t *testing.T) {
	worst := 0.0
	for c := 0.0; c <= 200; c += 2.5 {
		k := c + 273.15
		other := math.Exp(-5.8002206e3/k + 1.3914993 - 4.8640239e-2*k + 4.1764768e-5*k*k - 1.4452093e-8*k*k*k + 6.5459673*math.Log(k))
		p := must[quantity.Pressure](t)(SaturationPressure(quantity.FromCelsius(c)))
		worst = math.Max(worst, math.Abs(float64(p)/other-1))
	}
	if worst > 3e-4 {
		t.Errorf("IAPWS-IF97 and Hyland–Wexler part by %.2g", worst)
	}
	t.Logf("largest difference %.2g", worst)
}

// Second method: the slope of the saturation line gives the heat of vaporisation
// by Clausius–Clapeyron, h_fg = R·T²/M·d(ln p)/dT for an ideal vapour: 2500.9,
// 2441.7 and 2382.0 kJ/kg at 0.01, 25 and 50 °C (steam tables, from memory). The
// vapour's own departure from an ideal gas is 0.5 % at 50 °C.
func TestSaturationSlope(t *testing.T) {
	for c, want := range map[float64]float64{0.01: 2500.9e3, 25: 2441.7e3, 50: 2382.0e3} {
		k, step := c+273.15, 0.005
		up := must[quantity.Pressure](t)(SaturationPressure(quantity.Temperature(k + step)))
		down := must[quantity.Pressure](t)(SaturationPressure(quantity.Temperature(k - step)))
		got := GasConstant * k * k / float64(waterMolarMass) * math.Log(float64(up/down)) / (2 * step)
		if !near(got, want, 6e-3) {
			t.Errorf("%g °C: heat of vaporisation %.5g J/kg, want %.5g", c, got, want)
		}
	}
}

// Over a grid of rooms: the dew point is no higher than the wet bulb, that no
// higher than the air; all three meet in saturated air; the readings of the two
// thermometers give the humidity back; more vapour raises each.
func TestMoistAirProperties(t *testing.T) {
	for c := 2.0; c <= 95; c += 3.1 {
		for _, total := range []quantity.Pressure{61640, 89875, 101325} {
			before := [3]float64{-1, -1, -1e9}
			for rh := 0.02; rh <= 1.0001; rh += 0.07 {
				s := State{quantity.FromCelsius(c), quantity.Fraction(math.Min(rh, 1)), total}
				if p, err := s.VapourPressure(); err != nil || p > total*9/10 {
					continue // hardly any air left
				}
				w := must[quantity.Fraction](t)(s.HumidityRatio())
				h := must[quantity.SpecificEnergy](t)(s.Enthalpy())
				wet, err := s.WetBulb()
				if err != nil {
					if !strings.Contains(err.Error(), "below 0 °C") {
						t.Fatalf("%v: %v", s, err)
					}
					continue
				}
				if float64(w) <= before[0] || float64(h) <= before[1] || float64(wet) <= before[2] {
					t.Fatalf("%v: humidity ratio, enthalpy or wet bulb does not rise with humidity", s)
				}
				before = [3]float64{float64(w), float64(h), float64(wet)}
				if wet > s.Temperature {
					t.Errorf("%v: wet bulb %.4f °C above the air", s, wet.Celsius())
				}
				if dew, err := s.DewPoint(); err == nil && dew > wet+1e-6 {
					t.Errorf("%v: dew point %.4f °C above the wet bulb %.4f °C", s, dew.Celsius(), wet.Celsius())
				}
				back := must[State](t)(FromWetBulb(s.Temperature, wet, total))
				if math.Abs(float64(back.Humidity-s.Humidity)) > 1e-8 {
					t.Errorf("%v: its wet bulb gives back %.9f", s, float64(back.Humidity))
				}
			}
			s := State{quantity.FromCelsius(c), 1, total}
			if p, err := s.VapourPressure(); err == nil && p < total*9/10 {
				wet := must[quantity.Temperature](t)(s.WetBulb())
				dew := must[quantity.Temperature](t)(s.DewPoint())
				if math.Abs(float64(wet-s.Temperature)) > 1e-6 || math.Abs(float64(dew-s.Temperature)) > 1e-6 {
					t.Errorf("saturated air of %g °C: wet bulb %.6f, dew point %.6f", c, wet.Celsius(), dew.Celsius())
				}
			}
		}
	}
}

// Second method for the wet bulb: a wet surface whose heat and vapour pass
// through one boundary layer (EvaporationChill, Le = 0.856). It stays within
// 1 K of the thermodynamic wet bulb in rooms, since Le^⅔ is near 1.
func TestWetBulbAgainstAnalogy(t *testing.T) {
	for _, room := range []State{
		{quantity.FromCelsius(15), 0.5, Atmosphere}, {quantity.FromCelsius(23), 0.5, Atmosphere},
		{quantity.FromCelsius(23), 0.8, Atmosphere}, {quantity.FromCelsius(30), 0.4, Atmosphere},
	} {
		wet := must[quantity.Temperature](t)(room.WetBulb())
		vapour := must[quantity.Pressure](t)(room.VapourPressure())
		low, high := quantity.Temperature(273.15), room.Temperature
		for range 60 {
			middle := (low + high) / 2
			surface := must[quantity.Pressure](t)(SaturationPressure(middle))
			chill := must[quantity.TemperatureDifference](t)(EvaporationChill(2454e3, 1007, 0.856, waterMolarMass, surface-vapour, Atmosphere))
			if float64(room.Temperature)-float64(chill) > float64(middle) {
				low = middle
			} else {
				high = middle
			}
		}
		if math.Abs(float64(low-wet)) > 1 {
			t.Errorf("%v: wet bulb %.2f °C, by the analogy %.2f °C", room, wet.Celsius(), low.Celsius())
		}
	}
}

// The mass of water per volume is the humidity ratio times the dry air per volume.
func TestAbsoluteHumidity(t *testing.T) {
	s := State{quantity.FromCelsius(23), 0.5, Atmosphere}
	c := must[quantity.Density](t)(s.AbsoluteHumidity())
	w := must[quantity.Fraction](t)(s.HumidityRatio())
	v := must[quantity.Volume](t)(s.Volume(1))
	if !near(float64(c), float64(w)/float64(v), 1e-4) {
		t.Errorf("%g kg/m³ by the ideal gas, %g by humidity ratio and volume", float64(c), float64(w)/float64(v))
	}
}

// An ideal gas holds 0.45 % less water at saturation, 25 °C, than Table 2 of
// ASHRAE Fundamentals 2017: the table has the enhancement factor in it.
func TestTableTwoHoldsTheEnhancement(t *testing.T) {
	ideal := must[quantity.Fraction](t)(State{quantity.FromCelsius(25), 1, Atmosphere}.HumidityRatio())
	if short := 1 - float64(ideal)/0.020173; math.Abs(short-0.0045) > 2e-4 {
		t.Errorf("ideal gas %.6f is %.2f %% short of 0.020173, want 0.45 %%", float64(ideal), 100*short)
	}
}

// E. C. Bell and S. A. Boyes, TEMPMEKO 2001 (abstract): near room conditions the
// factor differs from 1 by almost 0.5 %.
func TestEnhancementNearRoom(t *testing.T) {
	for c := 15.0; c <= 30; c++ {
		f := must[quantity.Fraction](t)(Enhancement(quantity.FromCelsius(c), Atmosphere))
		if f < 1.0035 || f > 1.005 {
			t.Errorf("%g °C: %g", c, float64(f))
		}
	}
}
