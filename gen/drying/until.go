package drying

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// ErrNever says that a print does not come down to a limit, or not in the time allowed.
var ErrNever = errors.New("never dry enough")

// ErrFloor says that the room's own vapour holds a print at or above a limit.
var ErrFloor = errors.New("the room's vapour keeps more in the print than the limit")

// Until is the time in setting s after which the print holds no more than limit:
// 0 if it does so already. When the room's floor is not below the limit the error
// is ErrNever and ErrFloor; when most has passed before, it is ErrNever.
//
// The amount falls with time, so the time is bracketed in [0, most] and halved to
// a relative 1e-13, and the later end is given.
func (st State) Until(s Setting, limit quantity.Grammage, most quantity.Time) (quantity.Time, error) {
	if !notNegative(float64(limit)) || !notNegative(float64(most)) {
		return 0, fmt.Errorf("a limit of %s within %s: neither may be below 0", grams(limit), hours(most))
	}
	next, err := st.enter(s)
	if err != nil {
		return 0, err
	}
	if st.Amount() <= limit {
		return 0, nil
	}
	if s.Floor >= limit {
		return 0, fmt.Errorf("%w: %w: %s against %s", ErrNever, ErrFloor, grams(s.Floor), grams(limit))
	}
	rate := float64(s.Rate())
	if at := next.amountAfter(rate * float64(most)); at > float64(limit) {
		return 0, fmt.Errorf("%w: after %s there is %s left, the limit is %s",
			ErrNever, hours(most), grams(quantity.Grammage(at)), grams(limit))
	}
	lo, hi := 0.0, float64(most)
	for hi-lo > 1e-13*hi {
		mid := lo + (hi-lo)/2
		if mid <= lo || mid >= hi {
			break
		}
		if next.amountAfter(rate*mid) > float64(limit) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return quantity.Time(hi), nil
}

// amountAfter is what the layer holds when fo more has passed in its setting.
func (st State) amountAfter(fo float64) float64 {
	sum := st.level + st.rest*math.Exp(-st.restDecay()*fo)
	for n, a := range st.amplitude {
		b := st.modes.Beta[n]
		decay := math.Exp(-b * b * fo)
		if decay == 0 {
			break
		}
		sum += a * st.modes.Mean[n] * decay
	}
	return sum
}
