package roll

import (
	"fmt"
	"math"
	"slices"

	"laydown/gen/quantity"
)

// Tolerance is how far a mark's distance may be from a roller's circumference and still
// be its: film stretches little, and the web's own thickness adds something. (Common
// practice, no source.)
const Tolerance quantity.Fraction = 0.02

// Roller is a roller that the web touches.
type Roller struct {
	Name     string
	Diameter quantity.Length
}

// Found is a roller that may have made a mark.
type Found struct {
	Roller
	// Off is how far the mark's distance lies from the roller's circumference, as a
	// share of it; below 0 where the mark comes sooner.
	Off quantity.Fraction
}

// Repeat gives the distance between the marks of one spot on a roller: π·D.
func Repeat(diameter quantity.Length) (quantity.Length, error) {
	if !positive(float64(diameter)) {
		return 0, fmt.Errorf("a roller of %g m: it must be above 0", float64(diameter))
	}
	return math.Pi * diameter, nil
}

// Diameter gives the diameter of the roller whose marks lie so far apart: s/π.
func Diameter(repeat quantity.Length) (quantity.Length, error) {
	if !positive(float64(repeat)) {
		return 0, fmt.Errorf("a mark that comes again after %g m: it must be above 0", float64(repeat))
	}
	return repeat / math.Pi, nil
}

// Find gives the rollers whose marks lie so far apart within a tolerance, the nearest
// first. Measure over several repeats and divide: ten repeats are ten times as exact.
func Find(repeat quantity.Length, rollers []Roller, within quantity.Fraction) ([]Found, error) {
	if _, err := Diameter(repeat); err != nil {
		return nil, err
	}
	if !(within >= 0 && within < 1) {
		return nil, fmt.Errorf("a tolerance of %g: it must be from 0 to below 1", float64(within))
	}
	var list []Found
	for _, r := range rollers {
		turn, err := Repeat(r.Diameter)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", r.Name, err)
		}
		if off := quantity.Fraction(repeat/turn - 1); quantity.Fraction(math.Abs(float64(off))) <= within {
			list = append(list, Found{r, off})
		}
	}
	slices.SortStableFunc(list, func(a, b Found) int {
		switch x, y := math.Abs(float64(a.Off)), math.Abs(float64(b.Off)); {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	})
	return list, nil
}
