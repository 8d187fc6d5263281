package paper

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// ErrNotReached says that trapped air does not swell to a ratio up to the hottest
// temperature asked about.
var ErrNotReached = errors.New("the trapped air does not swell so far")

// Reaches is the bond line temperature at which the trapped air swells to ratio, between
// the start and hottest, to 1e-7 K, given on the side that does not exceed it. The swelling
// rises with temperature (T and p_w both do), so the temperature is bracketed and halved;
// boiling counts as more than any ratio. A damper sheet reaches a ratio earlier, until its
// activity there is capped: then damper air, which holds less dry gas, reaches it later by
// less than 0.01 K for each point of humidity. ErrNotReached when the ratio is not exceeded at
// hottest. Above 120 °C (Wood, PaltakariKarlsson) or 150 °C (GAB) the isotherms end, and a
// hottest beyond that is an error that says so.
func (tr Trap) Reaches(ratio float64, hottest quantity.Temperature) (quantity.Temperature, error) {
	fresh, err := tr.fresh()
	if err != nil {
		return 0, err
	}
	start, err := tr.swelling(tr.Start, fresh)
	if err != nil {
		return 0, err
	}
	if !(ratio > start) || math.IsInf(ratio, 1) {
		return 0, fmt.Errorf("trapped air: a ratio of %.4g is outside %.4g (at the start) and up", ratio, start)
	}
	if !(hottest > tr.Start) {
		return 0, fmt.Errorf("trapped air: %.4g °C is outside the start's %.4g °C and up", hottest.Celsius(), tr.Start.Celsius())
	}
	top, err := tr.swelling(hottest, fresh)
	if err != nil && !errors.Is(err, ErrBoils) {
		return 0, err
	}
	if top <= ratio {
		return 0, fmt.Errorf("%w: at %.4g °C by %.3g, the ratio asked is %.3g", ErrNotReached, hottest.Celsius(), top, ratio)
	}
	lo, hi := tr.Start, hottest
	for hi-lo > 1e-7 {
		mid := lo + (hi-lo)/2
		got, err := tr.swelling(mid, fresh)
		if err != nil && !errors.Is(err, ErrBoils) {
			return 0, err
		}
		if got > ratio {
			hi = mid
		} else {
			lo = mid
		}
	}
	return lo, nil
}
