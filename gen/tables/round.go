package tables

import (
	"math"

	"laydown/gen/quantity"
)

// HardlyDries is the wait beyond which the handbook says "hardly dries" and
// gives no number: fourteen days.
const HardlyDries = 14 * quantity.Day

// roundUp rounds a wait up to a step that a clock on a wall can tell: half an
// hour below 3 h, an hour to 48 h, two to 96 h, six above. A minute over a
// step is not a reason for the next one.
func roundUp(t quantity.Time) quantity.Time {
	h := t.Hours()
	step := waitStep(h)
	const minute = 1.0 / 60
	n := math.Ceil((h - minute) / step)
	if n < 0 {
		n = 0
	}
	return quantity.Time(n*step) * quantity.Hour
}

func waitStep(hours float64) float64 {
	switch {
	case hours < 3:
		return 0.5
	case hours <= 48:
		return 1
	case hours <= 96:
		return 2
	}
	return 6
}
