package bond

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Form is what the valleys of a print's relief look like.
type Form int

const (
	// Groove is a long valley between ridges: between lines of ink, threads, fibres.
	Groove Form = iota
	// Pit is a round one: between drops, in a pore.
	Pit
)

// Relief is what an adhesive has to fill: valleys of one depth and width.
type Relief struct {
	Form         Form
	Depth, Width quantity.Length // Width is a pit's diameter
	// Valleys is the share of the area that they take; nothing here is all of it,
	// which asks most of the adhesive's thickness.
	Valleys quantity.Fraction
}

// coefficients are a and b of a·ζ² + b·ζ = S.
func (r Relief) coefficients() (a, b float64) {
	if r.Form == Pit {
		return 16, 3 * math.Pi
	}
	return 6, 16 / math.Pi
}

// resistance is p/(η·v), 1/m, with the front at a depth.
func (r Relief) resistance(depth quantity.Length) float64 {
	a, b := r.coefficients()
	w := float64(r.Width)
	return (2*a*float64(depth)/w + b) / w
}

// Demand is the supply that fills a share of the depth.
func (r Relief) Demand(share quantity.Fraction) float64 {
	a, b := r.coefficients()
	z := float64(share) * float64(r.Depth/r.Width)
	return a*z*z + b*z
}

// Filled is the share of the depth that a supply fills: the inverse of Demand, no more
// than 1.
func (r Relief) Filled(supply float64) quantity.Fraction {
	if !(supply > 0) {
		return 0
	}
	a, b := r.coefficients()
	// ζ = (−b + √(b² + 4aS))/2a, written so that nothing cancels.
	z := 2 * supply / (b + math.Sqrt(b*b+4*a*supply))
	return quantity.Fraction(math.Min(1, z*float64(r.Width/r.Depth)))
}

// Capillary is the pressure that pulls an adhesive in: its surface tension and the
// cosine of its contact angle. It is below 0 where the surface refuses it.
func (r Relief) Capillary(s quantity.SurfaceTension, wetting quantity.Fraction) quantity.Pressure {
	k := 2.0
	if r.Form == Pit {
		k = 4
	}
	return quantity.Pressure(k * float64(s) * float64(wetting) / float64(r.Width))
}

// Reach is the share of the depth that a layer of adhesive has enough of itself to
// fill: thickness/(depth·valleys), no more than 1. A thickness of 0 is not known and
// gives 1.
func (r Relief) Reach(thickness quantity.Length) quantity.Fraction {
	if thickness <= 0 {
		return 1
	}
	valleys := float64(r.Valleys)
	if valleys == 0 {
		valleys = 1
	}
	return quantity.Fraction(math.Min(1, float64(thickness)/(float64(r.Depth)*valleys)))
}

func (r Relief) check() error {
	if !(r.Depth > 0 && r.Width > 0) || math.IsInf(float64(r.Depth), 1) || math.IsInf(float64(r.Width), 1) {
		return fmt.Errorf("a relief %g m deep and %g m wide: each must be above 0", float64(r.Depth), float64(r.Width))
	}
	if !(r.Valleys >= 0 && r.Valleys <= 1) {
		return fmt.Errorf("valleys over %g of the area: it must be 0 to 1", float64(r.Valleys))
	}
	if r.Form != Groove && r.Form != Pit {
		return fmt.Errorf("a relief of form %d: there are grooves and pits", int(r.Form))
	}
	return nil
}
