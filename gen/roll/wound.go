package roll

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Wound is a web wound on a core.
type Wound struct {
	// Core is the outside diameter of the core, not its bore.
	Core quantity.Length
	// Thickness is that of everything wound: film, adhesive and liner.
	Thickness quantity.Length
}

func (w Wound) check() error {
	if !notNegative(float64(w.Core)) || !positive(float64(w.Thickness)) {
		return fmt.Errorf("a web of %g m on a core of %g m: the thickness must be above 0, the core 0 or more", float64(w.Thickness), float64(w.Core))
	}
	return nil
}

// Length gives what is on a roll of an outer diameter.
//
//	L = π·(D² − d²)/(4·t)      Ask Dr. Math, The Math Forum, 24 November 2003
func (w Wound) Length(outer quantity.Length) (quantity.Length, error) {
	if err := w.holds(outer); err != nil {
		return 0, err
	}
	return quantity.Length(math.Pi * float64((outer-w.Core)*(outer+w.Core)/(4*w.Thickness))), nil
}

// Wraps gives how often the web goes round on a roll of an outer diameter.
//
//	N = (D − d)/(2·t)      the same
func (w Wound) Wraps(outer quantity.Length) (float64, error) {
	if err := w.holds(outer); err != nil {
		return 0, err
	}
	return float64((outer - w.Core) / (2 * w.Thickness)), nil
}

func (w Wound) holds(outer quantity.Length) error {
	if err := w.check(); err != nil {
		return err
	}
	if !(outer >= w.Core) || math.IsInf(float64(outer), 0) {
		return fmt.Errorf("a roll of %g m on a core of %g m: the roll cannot be the smaller", float64(outer), float64(w.Core))
	}
	return nil
}

// Outer gives the outer diameter of a roll that holds a length.
//
//	D = √(d² + 4·t·L/π)
func (w Wound) Outer(length quantity.Length) (quantity.Length, error) {
	if err := w.check(); err != nil {
		return 0, err
	}
	if !notNegative(float64(length)) {
		return 0, fmt.Errorf("a length of %g m on a roll: it must be 0 or more", float64(length))
	}
	return quantity.Length(math.Sqrt(float64(w.Core*w.Core + 4*w.Thickness*length/math.Pi))), nil
}

// Measured gives the same roll with the thickness that a full roll of known length
// shows. It counts the air that was wound in, which no thickness gauge sees.
//
//	t = π·(D² − d²)/(4·L)
func (w Wound) Measured(outer, length quantity.Length) (Wound, error) {
	if !positive(float64(length)) || !(outer > w.Core) || !notNegative(float64(w.Core)) || math.IsInf(float64(outer), 0) {
		return w, fmt.Errorf("a full roll of %g m, %g m long, on a core of %g m: the length must be above 0 and the roll larger than its core", float64(outer), float64(length), float64(w.Core))
	}
	w.Thickness = quantity.Length(math.Pi * float64((outer-w.Core)*(outer+w.Core)/(4*length)))
	return w, nil
}

// positive says that v is a finite number above 0.
func positive(v float64) bool { return v > 0 && !math.IsInf(v, 1) }

// notNegative says that v is a finite number, 0 or above.
func notNegative(v float64) bool { return v >= 0 && !math.IsInf(v, 1) }
