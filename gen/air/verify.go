package air

import (
	"fmt"

	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about: what names
// it, given holds its inputs. Both are in SI units, but temperatures in °C where
// the input or the result is called so, in K where it is called temperature.
// Tests and the verification page ask it; both get what this build computes.
func Verify(what string, given map[string]float64) (float64, error) {
	for _, group := range []func(string, inputs) (float64, error, bool){verifyWater, verifyMoistAir, verifyVapour, verifyTransfer} {
		if got, err, known := group(what, inputs(given)); known {
			return got, err
		}
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// inputs reads the given numbers in their types.
type inputs map[string]float64

func (in inputs) celsius(name string) quantity.Temperature {
	return quantity.FromCelsius(in[name])
}

func (in inputs) pressure() quantity.Pressure { return quantity.Pressure(in["pressure"]) }

func (in inputs) state() State {
	return State{in.celsius("celsius"), quantity.Fraction(in["humidity"]), in.pressure()}
}

func (in inputs) antoine() Antoine { return Antoine{A: in["A"], B: in["B"], C: in["C"]} }

// number turns a typed result into a plain one.
func number[Q quantity.Quantity](q Q, err error) (float64, error, bool) {
	return float64(q), err, true
}

func verifyWater(what string, in inputs) (float64, error, bool) {
	switch what {
	case "saturation pressure":
		if _, given := in["temperature"]; given {
			return number(SaturationPressure(quantity.Temperature(in["temperature"])))
		}
		return number(SaturationPressure(in.celsius("celsius")))
	case "saturation temperature":
		return number(SaturationTemperature(in.pressure()))
	case "enhancement factor":
		return number(Enhancement(in.celsius("celsius"), in.pressure()))
	case "standard pressure":
		return number(StandardPressure(quantity.Length(in["altitude"])))
	case "humidity ratio at saturation":
		return number(SaturatedHumidityRatio(in.celsius("celsius"), in.pressure()))
	case "humidity ratio of a vapour pressure":
		return number(HumidityRatio(quantity.Pressure(in["vapour"]), in.pressure()))
	case "specific humidity":
		return number(SpecificHumidity(quantity.Fraction(in["ratio"])), nil)
	}
	return 0, nil, false
}

func verifyMoistAir(what string, in inputs) (float64, error, bool) {
	s, err := in.state(), error(nil)
	if wet, given := in["wet"]; given {
		s, err = FromWetBulb(s.Temperature, quantity.FromCelsius(wet), s.Pressure)
	} else if ratio, given := in["ratio"]; given {
		s, err = fromRatio(s.Temperature, ratio, s.Pressure)
	}
	if err != nil {
		return 0, err, true
	}
	switch what {
	case "humidity ratio":
		return number(s.HumidityRatio())
	case "relative humidity":
		return number(s.Humidity, nil)
	case "dew point":
		t, err := s.DewPoint()
		return t.Celsius(), err, true
	case "wet bulb":
		t, err := s.WetBulb()
		return t.Celsius(), err, true
	case "enthalpy":
		return number(s.Enthalpy())
	case "volume of 1 kg of dry air":
		return number(s.Volume(1))
	case "density of moist air":
		return number(s.Density())
	}
	return 0, nil, false
}

// fromRatio gives the state of air with a humidity ratio.
func fromRatio(t quantity.Temperature, ratio float64, p quantity.Pressure) (State, error) {
	saturated, err := SaturationPressure(t)
	return State{t, quantity.Fraction(ratio / (massRatio + ratio) * float64(p/saturated)), p}, err
}

func verifyVapour(what string, in inputs) (float64, error, bool) {
	switch what {
	case "boiling point":
		t, err := in.antoine().Boils(Atmosphere)
		return t.Celsius(), err, true
	case "vapour pressure":
		return number(in.antoine().Pressure(in.celsius("celsius")))
	}
	return 0, nil, false
}
