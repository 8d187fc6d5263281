package vent

import (
	"fmt"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// FromPPM gives the concentration of a vapour of so many parts per million by volume.
//
//	C = x·p·M/(R·T)
func FromPPM(ppm float64, m quantity.MolarMass, t quantity.Temperature, p quantity.Pressure) (quantity.Density, error) {
	if !notNegative(ppm) || !positive(float64(m)) || !positive(float64(t)) || !positive(float64(p)) {
		return 0, fmt.Errorf("%g ppm of a vapour of %g kg/mol at %g K and %g Pa: the first must be 0 or more, the others above 0", ppm, float64(m), float64(t), float64(p))
	}
	return air.VapourDensity(quantity.Pressure(ppm*1e-6)*p, m, t), nil
}

// PPM gives the parts per million by volume of a vapour's concentration.
func PPM(c quantity.Density, m quantity.MolarMass, t quantity.Temperature, p quantity.Pressure) (float64, error) {
	one, err := FromPPM(1, m, t, p)
	if err != nil {
		return 0, err
	}
	if !notNegative(float64(c)) {
		return 0, fmt.Errorf("a concentration of %g kg/m³: it must be 0 or more", float64(c))
	}
	return float64(c / one), nil
}

// Period is a concentration that holds for a time.
type Period struct {
	Concentration float64 // in any unit, ppm or mg/m³
	Time          quantity.Time
}

// Shift gives the equivalent exposure of a shift of 8 h, in the unit of the periods.
//
//	E = (C_a·T_a + C_b·T_b + …)/8 h      29 CFR 1910.1000(d)(1)(i)
func Shift(periods []Period) float64 {
	sum := 0.0
	for _, p := range periods {
		sum += p.Concentration * float64(p.Time)
	}
	return sum / float64(8*quantity.Hour)
}

// Component is a vapour of the mixture that prints give off.
type Component struct {
	Name string
	// Share of the emission's mass.
	Share     quantity.Fraction
	MolarMass quantity.MolarMass
	// Limit is the exposure limit for 8 h, from a current safety data sheet or table.
	Limit quantity.Density
	// LowerExplosive is the lower explosive limit by volume: 0.011 is 1.1 %. 0 where
	// there is none to count.
	LowerExplosive quantity.Fraction
}

func checkMixture(mixture []Component) error {
	if len(mixture) == 0 {
		return fmt.Errorf("a mixture of nothing")
	}
	sum := quantity.Fraction(0)
	for _, c := range mixture {
		if !(c.Share > 0 && c.Share <= 1) || !positive(float64(c.MolarMass)) || !positive(float64(c.Limit)) || !(c.LowerExplosive >= 0 && c.LowerExplosive < 1) {
			return fmt.Errorf("vapour %q: a share of %g, %g kg/mol, a limit of %g kg/m³, lower explosive limit %g: the share must be above 0 and at most 1, the next two above 0, the last from 0 to below 1",
				c.Name, float64(c.Share), float64(c.MolarMass), float64(c.Limit), float64(c.LowerExplosive))
		}
		sum += c.Share
	}
	if sum > 1+1e-9 {
		return fmt.Errorf("a mixture's shares add up to %g, more than 1", float64(sum))
	}
	return nil
}

// Exposure gives the sum of the components' concentrations over their limits, for a
// concentration of the whole mixture. At 1 the limit is reached.
//
//	E_m = C₁/L₁ + C₂/L₂ + …      29 CFR 1910.1000(d)(2)(i)
func Exposure(c quantity.Density, mixture []Component) (quantity.Fraction, error) {
	if err := checkMixture(mixture); err != nil {
		return 0, err
	}
	sum := 0.0
	for _, m := range mixture {
		sum += float64(c) * float64(m.Share) / float64(m.Limit)
	}
	return quantity.Fraction(sum), nil
}

// Explosive gives the share of the lower explosive limit.
//
//	Σ x_i/x_LEL,i      Le Chatelier's rule
func Explosive(c quantity.Density, mixture []Component, t quantity.Temperature, p quantity.Pressure) (quantity.Fraction, error) {
	if err := checkMixture(mixture); err != nil {
		return 0, err
	}
	sum := 0.0
	for _, m := range mixture {
		if m.LowerExplosive == 0 {
			continue
		}
		ppm, err := PPM(quantity.Density(float64(c)*float64(m.Share)), m.MolarMass, t, p)
		if err != nil {
			return 0, err
		}
		sum += ppm * 1e-6 / float64(m.LowerExplosive)
	}
	return quantity.Fraction(sum), nil
}
