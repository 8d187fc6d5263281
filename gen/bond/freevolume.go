package bond

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Constants are those of Williams, Landel and Ferry for one reference temperature.
type Constants struct {
	C1 float64
	C2 quantity.TemperatureDifference
}

// Universal are the constants for the glass transition as the reference, a mean over
// many polymers: Williams, Landel and Ferry, J. Am. Chem. Soc. 77 (1955) 3701. Those of
// one polymer may be well off it.
var Universal = Constants{C1: 17.44, C2: 51.6}

// LogShift is log₁₀ a_T at a span above the reference: how many powers of ten the
// viscosity is above that at the reference.
//
//	log₁₀ a_T = −C₁·ΔT/(C₂ + ΔT)
func (c Constants) LogShift(span quantity.TemperatureDifference) float64 {
	return -c.C1 * float64(span) / float64(c.C2+span)
}

// Shifted are the constants for a reference that lies higher by a span:
// C₁′ = C₁·C₂/(C₂ + Δ), C₂′ = C₂ + Δ. They give the same viscosities.
func (c Constants) Shifted(span quantity.TemperatureDifference) Constants {
	return Constants{C1: c.C1 * float64(c.C2) / float64(c.C2+span), C2: c.C2 + span}
}

// FreeVolumeShare is the share of free volume at the reference that the constants
// stand for, 1/(ln 10·C₁).
func (c Constants) FreeVolumeShare() quantity.Fraction {
	return quantity.Fraction(1 / (math.Ln10 * c.C1))
}

// FreeVolumeExpansion is by how much the free volume's share grows per kelvin,
// FreeVolumeShare/C₂.
func (c Constants) FreeVolumeExpansion() quantity.Expansion {
	return quantity.Expansion(float64(c.FreeVolumeShare()) / float64(c.C2))
}

// freeVolumeReach is how far above the glass transition the law was made for.
const freeVolumeReach quantity.TemperatureDifference = 100

// FreeVolume is a pressure-sensitive adhesive, by the law of Williams, Landel and
// Ferry: η(T) = η_ref·10^(log a_T(T) − log a_T(T_ref)), a_T counted from its glass
// transition. It holds to about 100 K above that; further up it extrapolates.
type FreeVolume struct {
	Reference quantity.Viscosity   // η_ref
	At        quantity.Temperature // T_ref
	Glass     quantity.Temperature // glass transition
	// Constants for the glass transition; nothing here is Universal.
	Constants Constants
}

// constants are Universal where none are given.
func (f FreeVolume) constants() Constants {
	if f.Constants == (Constants{}) {
		return Universal
	}
	return f.Constants
}

// Viscosity implements Law.
func (f FreeVolume) Viscosity(t quantity.Temperature) (quantity.Viscosity, error) {
	if err := f.check(); err != nil {
		return 0, err
	}
	if !(t >= f.Glass) {
		return 0, fmt.Errorf("viscosity at %s: %w, at %s", celsius(t), ErrGlassy, celsius(f.Glass))
	}
	c := f.constants()
	shift := c.LogShift(t.Minus(f.Glass)) - c.LogShift(f.At.Minus(f.Glass))
	return f.Reference * quantity.Viscosity(math.Pow(10, shift)), nil
}

// Temperature implements Law: ΔT = −C₂·y/(C₁ + y) with y = log₁₀(η/η_ref) +
// log a_T(T_ref). An adhesive thicker than at its glass transition gives ErrGlassy.
func (f FreeVolume) Temperature(v quantity.Viscosity) (quantity.Temperature, error) {
	if err := f.check(); err != nil {
		return 0, err
	}
	if !(v > 0) {
		return 0, fmt.Errorf("a viscosity of %g Pa·s: it must be above 0", float64(v))
	}
	c := f.constants()
	y := math.Log10(float64(v/f.Reference)) + c.LogShift(f.At.Minus(f.Glass))
	if !(y <= 0) {
		return 0, fmt.Errorf("temperature of %.3g Pa·s: %w", float64(v), ErrGlassy)
	}
	if !(c.C1+y > 0) {
		return 0, fmt.Errorf("%w: %.3g Pa·s", ErrNoTemperature, float64(v))
	}
	return f.Glass.Plus(quantity.TemperatureDifference(-float64(c.C2) * y / (c.C1 + y))), nil
}

// Range implements Law: it flows from its glass transition on, either way.
func (f FreeVolume) Range() (melts, sets quantity.Temperature) { return f.Glass, f.Glass }

// Extrapolates implements Law.
func (f FreeVolume) Extrapolates(t quantity.Temperature) bool {
	return !(t >= f.Glass && t <= f.Glass.Plus(freeVolumeReach))
}

func (f FreeVolume) check() error {
	c := f.constants()
	if !(f.Reference > 0 && f.Glass > 0 && f.At >= f.Glass && c.C1 > 0 && c.C2 > 0) {
		return fmt.Errorf("an adhesive of %g Pa·s at %g K with its glass transition at %g K and constants %g and %g K: each must be above 0, and the first temperature not below the second",
			float64(f.Reference), float64(f.At), float64(f.Glass), c.C1, float64(c.C2))
	}
	return nil
}
