package air

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Atmosphere is the standard pressure of the air at sea level.
const Atmosphere quantity.Pressure = 101325

// StandardPressure gives the standard atmosphere's pressure at an altitude above
// sea level. Weather moves the real one by some 3 %.
//
//	p = 101.325(1 − 2.25577e-5·z)^5.2559 kPa, z in m     ASHRAE Fundamentals 2017, ch. 1 (eq. 3, from memory)
//
// Range −5000 m to 11 000 m.
func StandardPressure(altitude quantity.Length) (quantity.Pressure, error) {
	if !(altitude >= -5000 && altitude <= 11000) {
		return 0, fmt.Errorf("standard pressure: an altitude of %.5g m is outside -5000 m to 11000 m", float64(altitude))
	}
	return Atmosphere * quantity.Pressure(math.Pow(1-2.25577e-5*float64(altitude), 5.2559)), nil
}

// Enhancement gives the factor f by which real air holds more water vapour at
// saturation than ideal gases would: x_ws = f·p_s/p.
//
//	f = exp[α(1 − e_s/p) + β(p/e_s − 1)]
//	α = 3.53624e-4 + 2.9328363e-5·t + 2.6168979e-7·t² + 8.5813609e-9·t³
//	β = exp(−1.07588e1 + 6.3268134e-2·t − 2.5368934e-4·t² + 6.3405286e-7·t³)
//
// Form of Greenspan (1976) with the constants of Hardy (1998), both from memory;
// they give the value of ASHRAE RP-1485 at 80 °C within 1e-5. Range 0 °C to
// 100 °C; used here from 50 kPa to 110 kPa, where the air is not boiled away.
func Enhancement(t quantity.Temperature, p quantity.Pressure) (quantity.Fraction, error) {
	c := t.Celsius()
	if !(t >= coldest && c <= 100) {
		return 0, fmt.Errorf("enhancement factor: %.4g °C is outside 0 °C to 100 °C", c)
	}
	if !(p >= 50e3 && p <= 110e3) {
		return 0, fmt.Errorf("enhancement factor: %.4g Pa is outside 50 kPa to 110 kPa", float64(p))
	}
	saturated, err := SaturationPressure(t)
	if err != nil {
		return 0, fmt.Errorf("enhancement factor: %w", err)
	}
	if saturated > p {
		return 0, fmt.Errorf("enhancement factor: water boils at %.4g Pa below %.4g °C, outside the range of moist air", float64(p), c)
	}
	a := 3.53624e-4 + 2.9328363e-5*c + 2.6168979e-7*c*c + 8.5813609e-9*c*c*c
	b := math.Exp(-1.07588e1 + 6.3268134e-2*c - 2.5368934e-4*c*c + 6.3405286e-7*c*c*c)
	share := float64(saturated / p)
	return quantity.Fraction(math.Exp(a*(1-share) + b*(1/share-1))), nil
}

// SaturatedHumidityRatio gives the water per dry air of saturated real air: with
// the enhancement factor, as the tables of moist air have it.
//
//	W_s = 0.621945·f·p_s/(p − f·p_s)     ASHRAE Fundamentals 2017, ch. 1 (eq. 21, from memory)
func SaturatedHumidityRatio(t quantity.Temperature, p quantity.Pressure) (quantity.Fraction, error) {
	f, err := Enhancement(t, p)
	if err != nil {
		return 0, err
	}
	saturated, err := SaturationPressure(t)
	if err != nil {
		return 0, err
	}
	return HumidityRatio(quantity.Pressure(f)*saturated, p)
}
