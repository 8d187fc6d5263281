package air

import (
	"fmt"

	"laydown/gen/quantity"
)

// WetBulb gives the temperature of a wet thermometer in moving air. It lies
// between the dew point and the air's own temperature. It is an error where it
// lies below 0 °C.
//
// It is the root t* of the relation in HumidityRatioFromWetBulb, found by
// halving: W rises with t* there.
func (s State) WetBulb() (quantity.Temperature, error) {
	w, err := s.HumidityRatio()
	if err != nil {
		return 0, err
	}
	low, high := quantity.Temperature(coldest), s.Temperature
	// Boiling is the wet bulb's ceiling: no saturated air above it.
	if boils, err := SaturationTemperature(s.Pressure); err == nil && high >= boils {
		high = boils - 1e-9
	}
	driest, err := HumidityRatioFromWetBulb(s.Temperature, low, s.Pressure)
	if err != nil {
		return 0, err
	}
	if w < driest {
		return 0, fmt.Errorf("wet bulb: air of %.4g °C and %.4g %% relative humidity has it below 0 °C, outside 0 °C to 200 °C", s.Temperature.Celsius(), s.Humidity.Percent())
	}
	for high-low > 1e-10 {
		middle := (low + high) / 2
		if middle <= low || middle >= high {
			break // neighbouring floats
		}
		at, err := HumidityRatioFromWetBulb(s.Temperature, middle, s.Pressure)
		if err != nil {
			return 0, err
		}
		if at < w {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2, nil
}

// HumidityRatioFromWetBulb gives the water per dry air from the two readings of
// a wet and a dry thermometer. A reading too dry to be real gives a negative one.
//
//	W = [(2501 − 2.326·t*)·W_s* − 1.006(t − t*)]/(2501 + 1.86·t − 4.186·t*)
//	                            ASHRAE Fundamentals 2017, ch. 1 (eq. 33, from memory)
//
// W_s* is the humidity ratio of air saturated at t*. For t* from 0 °C to t.
func HumidityRatioFromWetBulb(dry, wet quantity.Temperature, p quantity.Pressure) (quantity.Fraction, error) {
	if !(dry >= coldest && dry <= warmest) || !(wet >= coldest && wet <= dry) {
		return 0, fmt.Errorf("wet bulb: readings of %.4g °C dry and %.4g °C wet are outside 0 °C to 200 °C, wet no warmer than dry", dry.Celsius(), wet.Celsius())
	}
	saturated, err := SaturationPressure(wet)
	if err != nil {
		return 0, fmt.Errorf("wet bulb: %w", err)
	}
	ws, err := HumidityRatio(saturated, p)
	if err != nil {
		return 0, fmt.Errorf("wet bulb: %w", err)
	}
	t, star := dry.Celsius(), wet.Celsius()
	return quantity.Fraction(((2501-2.326*star)*float64(ws) - 1.006*(t-star)) / (2501 + 1.86*t - 4.186*star)), nil
}

// FromWetBulb gives the state of the air from the readings of a dry and a wet
// thermometer.
func FromWetBulb(dry, wet quantity.Temperature, p quantity.Pressure) (State, error) {
	w, err := HumidityRatioFromWetBulb(dry, wet, p)
	if err != nil {
		return State{}, err
	}
	saturated, err := SaturationPressure(dry)
	if err != nil {
		return State{}, err
	}
	s := State{dry, quantity.Fraction(float64(w) / (massRatio + float64(w)) * float64(p/saturated)), p}
	if s.Humidity > 1 && s.Humidity < 1+1e-9 {
		s.Humidity = 1 // both thermometers equal, within rounding
	}
	if _, err := s.VapourPressure(); err != nil {
		return State{}, fmt.Errorf("wet bulb: readings of %.4g °C dry and %.4g °C wet: %w", dry.Celsius(), wet.Celsius(), err)
	}
	return s, nil
}
