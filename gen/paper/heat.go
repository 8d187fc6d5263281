package paper

import (
	"math"

	"laydown/gen/quantity"
)

// binder is an isotherm that knows its net isosteric heat in closed form.
type binder interface {
	NetHeat(m quantity.Fraction, t quantity.Temperature) (quantity.SpecificEnergy, error)
}

// NetHeat is the net isosteric heat of sorption of a material at moisture m, J per kg of
// water: the heat that frees its water on top of the heat of vaporisation,
//
//	ΔH = −R·∂ln a/∂(1/T) at constant m
//
// in closed form where the isotherm has one (GAB), else as the central difference over
// 0.02 K, good to 1e-6 of itself; so it needs 0.01 K of room to the ends of the range.
// It is 0 where the activity is capped on both sides, and for dry material, whose heat
// the isotherms do not agree on.
func NetHeat(i Isotherm, m quantity.Fraction, t quantity.Temperature) (quantity.SpecificEnergy, error) {
	if i, ok := i.(binder); ok {
		return i.NetHeat(m, t)
	}
	return differenceHeat(i, m, t)
}

func differenceHeat(i Isotherm, m quantity.Fraction, t quantity.Temperature) (quantity.SpecificEnergy, error) {
	const step = 0.01 // K
	cold, err := Activity(i, m, t-step)
	if err != nil {
		return 0, err
	}
	warm, err := Activity(i, m, t+step)
	if err != nil || cold == warm {
		return 0, err
	}
	inverse := 1/float64(t+step) - 1/float64(t-step)
	return quantity.SpecificEnergy(-gasConstant * math.Log(float64(warm/cold)) / inverse), nil
}
