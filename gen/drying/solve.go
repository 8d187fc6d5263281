package drying

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// ErrTooSlow says that no diffusivity lets a print dry in the stated time: its
// faces give the carrier off too slowly.
var ErrTooSlow = errors.New("the faces give off too little for any diffusivity")

// ErrAlreadyDry says that a limit is no lower than the load, so that a wait says
// nothing of the diffusivity.
var ErrAlreadyDry = errors.New("the print is within the limit from the start")

// SolveDiffusivity finds the diffusivity with which a fresh print of the given
// load comes down to limit in the given wait, in the surroundings of s (whose own
// Diffusivity is ignored).
//
// At a fixed time and fixed transfer coefficients the amount left falls as the
// diffusivity rises. From below it is bounded by faces held at the floor, which
// lose 4√(Fo/π) at most; from above by a layer that is always mixed, which keeps
// exp(−(Face + Back)·t/L). Between those the diffusivity is found by halving its
// logarithm, to a relative 1e-12. The errors are ErrAlreadyDry, ErrFloor and
// ErrTooSlow, or a plain one for input that is no print. Near the mixed bound the
// amount hardly depends on the diffusivity: then it is found, but ill determined,
// and MixedShare shows it.
func SolveDiffusivity(load, limit quantity.Grammage, wait quantity.Time, s Setting) (quantity.Diffusivity, error) {
	if err := s.checkSurroundings(); err != nil {
		return 0, err
	}
	if !positive(float64(load)) || !notNegative(float64(limit)) || !positive(float64(wait)) {
		return 0, fmt.Errorf("a load of %s, a limit of %s, a wait of %s: load and wait must be above 0, the limit not below",
			grams(load), grams(limit), hours(wait))
	}
	if limit >= load {
		return 0, fmt.Errorf("%w: limit %s, load %s", ErrAlreadyDry, grams(limit), grams(load))
	}
	if s.Floor >= limit {
		return 0, fmt.Errorf("%w: %s against %s", ErrFloor, grams(s.Floor), grams(limit))
	}
	// What is asked for, as shares of what lies above the floor.
	target := float64(limit-s.Floor) / float64(load-s.Floor)
	lost := float64(load-limit) / float64(load-s.Floor)
	mixed := s.MixedShare(wait)
	tooSlow := fmt.Errorf("%w: after %s even a layer that is always mixed holds %s, the limit is %s",
		ErrTooSlow, hours(wait), grams(s.Floor+quantity.Grammage(mixed*float64(load-s.Floor))), grams(limit))
	if mixed >= target {
		return 0, tooSlow
	}
	scale := float64(s.Thickness) * float64(s.Thickness) / float64(wait)
	lo := math.Log(math.Pi * lost * lost / 16 * scale)
	hi := lo
	for left := 1.0; left > target; {
		// A relative 1e-16 of the mixed bound is not reached before 40 decades.
		if hi > lo+40*math.Ln10 {
			return 0, tooSlow
		}
		hi += math.Ln10
		var err error
		if left, err = s.leftAt(hi, wait); err != nil {
			return 0, err
		}
	}
	for hi-lo > 1e-12 {
		mid := lo + (hi-lo)/2
		left, err := s.leftAt(mid, wait)
		if err != nil {
			return 0, err
		}
		if left > target {
			lo = mid
		} else {
			hi = mid
		}
	}
	return quantity.Diffusivity(math.Exp(lo + (hi-lo)/2)), nil
}

// MixedShare is the share of a content above the floor that is left after t in a
// layer that is always mixed, exp(−(Face + Back)·t/L): the limit of a very large
// diffusivity, which no layer in these surroundings falls below.
func (s Setting) MixedShare(t quantity.Time) float64 {
	return math.Exp(-float64(s.Face+s.Back) * float64(t) / float64(s.Thickness))
}

// leftAt is the share left above the floor after t at the diffusivity exp(log).
func (s Setting) leftAt(log float64, t quantity.Time) (float64, error) {
	s.Diffusivity = quantity.Diffusivity(math.Exp(log))
	m, err := NewModes(s.BiotFace(), s.BiotBack(), LeftModes)
	if err != nil {
		return 0, err
	}
	return m.Left(s.Fourier(t)), nil
}
