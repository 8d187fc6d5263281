package air

import (
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// Everything outside a range is an error that names the range, and the value
// beside it is nought: never NaN.
func TestRanges(t *testing.T) {
	nan := math.NaN()
	fromCelsius := quantity.FromCelsius
	type result struct {
		value float64
		err   error
	}
	// plain drops the type.
	p := func(q quantity.Pressure, err error) result { return result{float64(q), err} }
	k := func(q quantity.Temperature, err error) result { return result{float64(q), err} }
	f := func(q quantity.Fraction, err error) result { return result{float64(q), err} }
	v := func(q quantity.Speed, err error) result { return result{float64(q), err} }
	d := func(q quantity.Diffusivity, err error) result { return result{float64(q), err} }
	n := func(q float64, err error) result { return result{q, err} }
	tests := []struct {
		what string
		got  result
		want string // part of the message
	}{
		{"frost", p(SaturationPressure(fromCelsius(-0.01))), "-0.01 °C is outside 0 °C to 373.946 °C"},
		{"beyond the critical point", p(SaturationPressure(fromCelsius(374))), "374 °C is outside 0 °C to 373.946 °C"},
		{"no temperature", p(SaturationPressure(quantity.Temperature(nan))), "outside 0 °C to 373.946 °C"},
		{"too little pressure", k(SaturationTemperature(600)), "600 Pa is outside 611.213 Pa (0 °C) to 22.064 MPa"},
		{"too much", k(SaturationTemperature(23e6)), "outside 611.213 Pa (0 °C) to 22.064 MPa"},
		{"no pressure", k(SaturationTemperature(quantity.Pressure(nan))), "outside"},
		{"humidity of 101 %", p(State{room23, 1.01, Atmosphere}.VapourPressure()), "101 % is outside 0 % to 100 %"},
		{"no humidity", f(State{room23, quantity.Fraction(nan), Atmosphere}.HumidityRatio()), "outside 0 % to 100 %"},
		{"frosty room", f(State{fromCelsius(-5), 0.5, Atmosphere}.HumidityRatio()), "-5 °C is outside 0 °C to 200 °C"},
		{"vacuum", f(State{room23, 0.5, 1000}.HumidityRatio()), "outside 0 Pa to the air's own 1000 Pa"},
		{"frost instead of dew", k(State{fromCelsius(10), 0.2, Atmosphere}.DewPoint()), "dew point: saturation temperature of water: 245.6 Pa is outside 611.213 Pa (0 °C)"},
		{"wet bulb below freezing", k(State{fromCelsius(5), 0.1, Atmosphere}.WetBulb()), "below 0 °C, outside 0 °C to 200 °C"},
		{"wetter than dry", f(HumidityRatioFromWetBulb(room23, fromCelsius(24), Atmosphere)), "wet no warmer than dry"},
		{"vapour above the total", f(HumidityRatio(2000, 1000)), "outside 0 Pa to the air's 1000 Pa"},
		{"RP-1485's row at −60 °C", f(Enhancement(fromCelsius(-60), Atmosphere)), "-60 °C is outside 0 °C to 100 °C"},
		{"RP-1485's row at −60 °C, 10 MPa", f(Enhancement(fromCelsius(-60), 10e6)), "outside"},
		{"RP-1485's row at 300 °C", f(Enhancement(fromCelsius(300), 10e6)), "300 °C is outside 0 °C to 100 °C"},
		{"enhancement at 10 MPa", f(Enhancement(fromCelsius(80), 10e6)), "outside 50 kPa to 110 kPa"},
		{"enhancement above boiling", f(Enhancement(fromCelsius(95), 60e3)), "boils"},
		{"too high", p(StandardPressure(12000)), "12000 m is outside -5000 m to 11000 m"},
		{"Antoine's pole", p(cyclohexanone.Pressure(61)), "61 K is outside 61.99 K and up"},
		{"Antoine below zero", p(butyrolactone.Pressure(-1)), "outside 0 K and up"},
		{"Antoine of nothing", p(cyclohexanone.Pressure(quantity.Temperature(nan))), "outside"},
		{"boils at no pressure", k(cyclohexanone.Boils(0)), "outside 0 Pa"},
		{"boils beyond the limit", k(cyclohexanone.Boils(1e12)), "outside 0 Pa"},
		{"Clapeyron at 0 K", p(ClausiusClapeyron{100, room23, 5e4}.Pressure(0)), "outside the temperatures and pressures above zero"},
		{"Clapeyron overflowing", p(ClausiusClapeyron{100, 1, 5e6}.Pressure(300)), "outside the finite numbers"},
		{"water's diffusivity in frost", d(WaterDiffusivity(250, Atmosphere)), "outside 0 °C to 177 °C"},
		{"wind backwards", v(PlateTransfer(-1, 1, 6e-6, room23, Atmosphere)), "outside 0 m/s and up"},
		{"storm", v(PlateTransfer(1e4, 1, 6e-6, room23, Atmosphere)), "outside 0 to 1e8"},
		{"no wind speed", v(FaceTransfer(quantity.Speed(nan), 1, 6e-6, room23, Atmosphere)), "outside 0 m/s and up"},
		{"print of no length", v(FaceTransfer(1, 0, 6e-6, room23, Atmosphere)), "0 m is outside 0 m to 100 m"},
		{"hydrogen", v(PlateTransfer(1, 1, 8e-5, room23, Atmosphere)), "is outside 0.5 to 60"},
		{"no diffusivity", v(FaceTransfer(1, 1, 0, room23, Atmosphere)), "outside 0 m²/s"},
		{"furnace", v(FaceTransfer(1, 1, 6e-6, fromCelsius(400), Atmosphere)), "400 °C is outside -70 °C to 300 °C"},
		{"no air", v(FaceTransfer(1, 1, 6e-6, room23, 0)), "0 Pa is outside 10 kPa to 1 MPa"},
		{"far too warm", v(StillTransfer(1, 6e-6, 200, room23, Atmosphere)), "outside -100 K to 100 K"},
		{"too tall", v(StillTransfer(60, 6e-6, 50, room23, Atmosphere)), "outside 0 to 1e12"},
		{"laminar no more", n(LaminarPlate(6e5, 1)), "outside 0 to 5e5"},
		{"not yet mixed", n(MixedPlate(4e5, 1)), "outside 5e5 to 1e8"},
		{"deck longer than the pool", n(UnheatedStart(1, true)), "outside 0 to 1"},
		{"pipe", n(LaminarPipe(2300)), "outside 0 to 2300"},
		{"level plate too small", n(LevelPlate(100, 1, true)), "outside 10000 to 1e11"},
		{"loss from nothing", v(LossTransfer(1, 1, 0, 1)), "outside the values above zero"},
	}
	for _, test := range tests {
		switch {
		case test.got.err == nil:
			t.Errorf("%s: no error, %g", test.what, test.got.value)
		case !strings.Contains(test.got.err.Error(), test.want):
			t.Errorf("%s: %v; wanted %q in it", test.what, test.got.err, test.want)
		case test.got.value != 0:
			t.Errorf("%s: value %g beside the error", test.what, test.got.value)
		}
	}
}
