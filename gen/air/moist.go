package air

import (
	"fmt"

	"laydown/gen/quantity"
)

const (
	// massRatio is the molar mass of water over that of dry air: ASHRAE
	// Fundamentals 2017, ch. 1.
	massRatio = 0.621945
	// dryGas is the specific gas constant of dry air, J/(kg K): the same.
	dryGas = 287.042
	// warmest bounds the relations for moist air: ASHRAE Fundamentals 2017,
	// ch. 1, gives them to 200 °C.
	warmest = 473.15
)

// State is moist air: a room's, or that at a sheet.
type State struct {
	Temperature quantity.Temperature
	// Humidity is relative: the vapour's pressure over the saturation pressure.
	Humidity quantity.Fraction
	// Pressure is the total pressure of the air.
	Pressure quantity.Pressure
}

// VapourPressure gives the pressure of the water vapour, p_w = φ·p_s(T).
//
// It is an error where the temperature is outside 0 °C to 200 °C, the humidity
// outside 0 to 100 %, or the vapour's pressure reaches the total pressure.
func (s State) VapourPressure() (quantity.Pressure, error) {
	if !(s.Temperature >= coldest && s.Temperature <= warmest) {
		return 0, fmt.Errorf("moist air: %.4g °C is outside 0 °C to 200 °C", s.Temperature.Celsius())
	}
	if !(s.Humidity >= 0 && s.Humidity <= 1) {
		return 0, fmt.Errorf("moist air: a relative humidity of %.4g %% is outside 0 %% to 100 %%", s.Humidity.Percent())
	}
	saturated, err := SaturationPressure(s.Temperature)
	if err != nil {
		return 0, fmt.Errorf("moist air: %w", err)
	}
	p := quantity.Pressure(s.Humidity) * saturated
	if !(p < s.Pressure) {
		return 0, fmt.Errorf("moist air: the vapour's %.4g Pa are outside 0 Pa to the air's own %.4g Pa", float64(p), float64(s.Pressure))
	}
	return p, nil
}

// HumidityRatio gives the water per dry air, kg/kg.
func (s State) HumidityRatio() (quantity.Fraction, error) {
	p, err := s.VapourPressure()
	if err != nil {
		return 0, err
	}
	return HumidityRatio(p, s.Pressure)
}

// HumidityRatio gives the water per dry air of air whose vapour has the pressure
// vapour at a total pressure.
//
//	W = 0.621945·p_w/(p − p_w)     ASHRAE Fundamentals 2017, ch. 1 (eq. 20, from memory)
func HumidityRatio(vapour, total quantity.Pressure) (quantity.Fraction, error) {
	if !(vapour >= 0 && vapour < total) {
		return 0, fmt.Errorf("humidity ratio: a vapour pressure of %.4g Pa is outside 0 Pa to the air's %.4g Pa", float64(vapour), float64(total))
	}
	return quantity.Fraction(massRatio * float64(vapour/(total-vapour))), nil
}

// SpecificHumidity turns water per dry air into water per moist air.
//
//	γ = W/(1 + W)     ASHRAE Fundamentals 2017, ch. 1 (eq. 9b, from memory)
func SpecificHumidity(ratio quantity.Fraction) quantity.Fraction { return ratio / (1 + ratio) }

// DewPoint gives the temperature at which the air, cooled at its pressure, is
// saturated. It is an error where that lies below 0 °C: frost forms there
// instead of dew, and region 4 ends.
func (s State) DewPoint() (quantity.Temperature, error) {
	p, err := s.VapourPressure()
	if err != nil {
		return 0, err
	}
	t, err := SaturationTemperature(p)
	if err != nil {
		return 0, fmt.Errorf("dew point: %w", err)
	}
	return t, nil
}

// Enthalpy gives the heat content per mass of dry air, counted from dry air and
// liquid water at 0 °C.
//
//	h = 1.006·t + W(2501 + 1.86·t) kJ/kg     ASHRAE Fundamentals 2017, ch. 1 (eq. 30, from memory)
func (s State) Enthalpy() (quantity.SpecificEnergy, error) {
	w, err := s.HumidityRatio()
	if err != nil {
		return 0, err
	}
	t := s.Temperature.Celsius()
	return quantity.SpecificEnergy(1000 * (1.006*t + float64(w)*(2501+1.86*t))), nil
}

// Volume gives the room that a mass of dry air takes up together with the water
// in it.
//
//	v = 287.042·T(1 + 1.607858·W)/p m³/kg     ASHRAE Fundamentals 2017, ch. 1 (eq. 26, from memory)
func (s State) Volume(dryAir quantity.Mass) (quantity.Volume, error) {
	w, err := s.HumidityRatio()
	if err != nil {
		return 0, err
	}
	each := dryGas * float64(s.Temperature) * (1 + 1.607858*float64(w)) / float64(s.Pressure)
	return quantity.Volume(float64(dryAir) * each), nil
}

// Density gives the mass of moist air in a volume.
//
//	ρ = (1 + W)/v     ASHRAE Fundamentals 2017, ch. 1 (eq. 11, from memory)
func (s State) Density() (quantity.Density, error) {
	w, err := s.HumidityRatio()
	if err != nil {
		return 0, err
	}
	v, err := s.Volume(1)
	return quantity.Density(float64(1+w) / float64(v)), err
}

// AbsoluteHumidity gives the mass of water in a volume of moist air, as an ideal
// gas of molar mass 18.015268 g/mol.
func (s State) AbsoluteHumidity() (quantity.Density, error) {
	p, err := s.VapourPressure()
	if err != nil {
		return 0, err
	}
	return VapourDensity(p, waterMolarMass, s.Temperature), nil
}
