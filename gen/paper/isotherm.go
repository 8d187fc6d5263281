package paper

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// gasConstant is that of water vapour, J/(kg K), to the digits that the GAB
// parameters of Tryding et al. were fitted with.
const gasConstant = 461.5

// Isotherm gives the moisture, kg water per kg dry material, that a material has in
// equilibrium with air of water activity a (relative humidity, 0 to 1) at temperature
// t. It rises with a. An isotherm that has no finite moisture at a gives ErrWet.
type Isotherm interface {
	Moisture(a quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error)
}

// inverse is an isotherm that knows its own activity, mostly in closed form.
type inverse interface {
	Activity(m quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error)
}

// ErrWet says that an isotherm has no finite moisture at so high an activity.
var ErrWet = errors.New("beyond any moisture of the isotherm")

// Activity is the water activity over a material of moisture m at temperature t, the
// inverse of its isotherm: in closed form where the isotherm has one, else by
// bracketing. A moisture above that of saturated air gives 1: what is more is free
// water. Dry material has activity 0.
func Activity(i Isotherm, m quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if i, ok := i.(inverse); ok {
		return i.Activity(m, t)
	}
	return bracketed(i, m, t)
}

// bracketed finds the activity by halving [0, 1] to a relative 1e-14. It needs nothing
// of the isotherm but that it rises.
func bracketed(i Isotherm, m quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if err := checkMoisture(m); err != nil {
		return 0, err
	}
	top, err := i.Moisture(1, t)
	if err != nil && !errors.Is(err, ErrWet) {
		return 0, err
	}
	if m == 0 {
		return 0, nil
	}
	if err == nil && top <= m {
		return 1, nil
	}
	lo, hi := quantity.Fraction(0), quantity.Fraction(1)
	for hi-lo > 1e-14*hi {
		mid := lo + (hi-lo)/2
		if mid <= lo || mid >= hi {
			break
		}
		got, err := i.Moisture(mid, t)
		if err != nil && !errors.Is(err, ErrWet) {
			return 0, err
		}
		if err != nil || got > m {
			hi = mid
		} else {
			lo = mid
		}
	}
	return lo + (hi-lo)/2, nil
}

// within reports whether an isotherm named by what is used in its range: an activity
// from 0 to 1, a temperature from its coldest to its hottest, °C.
func within(what string, a quantity.Fraction, t quantity.Temperature, coldest, hottest float64) error {
	if !(a >= 0 && a <= 1) {
		return fmt.Errorf("moisture of %s: activity %.4g is outside 0 to 1", what, float64(a))
	}
	return warm(what, t, coldest, hottest)
}

// warm is the part of within that a known moisture leaves.
func warm(what string, t quantity.Temperature, coldest, hottest float64) error {
	// The limits in kelvin, so that a limit converted from °C is itself inside.
	if !(t >= quantity.FromCelsius(coldest) && t <= quantity.FromCelsius(hottest)) {
		return fmt.Errorf("moisture of %s: %.4g °C is outside %g °C to %g °C", what, t.Celsius(), coldest, hottest)
	}
	return nil
}

func checkMoisture(m quantity.Fraction) error {
	if !(m >= 0) || math.IsInf(float64(m), 1) {
		return fmt.Errorf("a moisture of %.4g kg/kg is outside 0 kg/kg and up", float64(m))
	}
	return nil
}
