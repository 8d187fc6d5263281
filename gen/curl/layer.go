package curl

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Degrees is an angle in the sheet's plane, counted from the feed direction.
type Degrees float64

// Across turns a layer's machine direction across the feed, parallel to the roller
// axes.
const Across Degrees = 90

// Layer is one layer of a laminate: a film base, an adhesive, a medium.
type Layer struct {
	Name      string
	Thickness quantity.Length
	// ModulusMD and ModulusCD are along and across the machine direction: E₁, E₂.
	ModulusMD, ModulusCD quantity.Pressure
	// Poisson is ν₁₂: how much narrower it gets, for a pull along the machine
	// direction. ν₂₁ is ν₁₂·E₂/E₁.
	Poisson quantity.Fraction
	// Shear is G₁₂. 0 leaves it to √(E₁E₂)/(2(1 + √(ν₁₂ν₂₁))), which is exact for
	// what is alike in all directions, and good for paper (see doc.go).
	Shear                    quantity.Pressure
	ExpansionMD, ExpansionCD quantity.Expansion
	// SwellingMD and SwellingCD are strain per unit moisture ratio (kg water per kg
	// dry): 0.07 is 0.07 % for each per cent of moisture.
	SwellingMD, SwellingCD quantity.Fraction
	// Machine is the angle from the feed to the machine direction: 0 along, 90
	// across the feed.
	Machine Degrees
	// Softening s is how fast moisture M takes the moduli: E·exp(−s·(M − M₀)), with
	// M₀, MeasuredAt, the moisture at which the moduli above hold.
	Softening  float64
	MeasuredAt quantity.Fraction
	// Soft marks an adhesive. It only matters to Lines: stiff layers are plates,
	// soft ones hold them apart.
	Soft bool
}

// MajorPoisson gives ν₁₂ from √(ν₁₂ν₂₁), the figure that a sheet is described by.
func MajorPoisson(mean quantity.Fraction, md, cd quantity.Pressure) quantity.Fraction {
	return mean * quantity.Fraction(math.Sqrt(float64(md)/float64(cd)))
}

// check refuses what no layer can be.
func (l *Layer) check() error {
	if !positive(float64(l.Thickness)) || !positive(float64(l.ModulusMD)) || !positive(float64(l.ModulusCD)) {
		return fmt.Errorf("layer %q: thickness %g m, moduli %g and %g Pa: each must be above 0",
			l.Name, float64(l.Thickness), float64(l.ModulusMD), float64(l.ModulusCD))
	}
	nu := float64(l.Poisson)
	if product := nu * nu * float64(l.ModulusCD) / float64(l.ModulusMD); !(nu >= 0) || !(product < 1) {
		return fmt.Errorf("layer %q: Poisson's ratio %g with moduli %g and %g Pa: ν₁₂ must be at least 0 and ν₁₂ν₂₁ below 1",
			l.Name, nu, float64(l.ModulusMD), float64(l.ModulusCD))
	}
	for _, v := range []float64{float64(l.ExpansionMD), float64(l.ExpansionCD), float64(l.SwellingMD), float64(l.SwellingCD),
		float64(l.Machine), l.Softening, float64(l.MeasuredAt)} {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return fmt.Errorf("layer %q: %g is not a value", l.Name, v)
		}
	}
	if !(l.Shear >= 0) || math.IsInf(float64(l.Shear), 1) {
		return fmt.Errorf("layer %q: shear modulus %g Pa: must be 0 (to be estimated) or above", l.Name, float64(l.Shear))
	}
	return nil
}

// softened is the layer with the moduli that it has at a moisture.
func (l Layer) softened(moisture quantity.Fraction) Layer {
	f := quantity.Pressure(math.Exp(-l.Softening * float64(moisture-l.MeasuredAt)))
	l.ModulusMD *= f
	l.ModulusCD *= f
	l.Shear *= f
	return l
}

// shear is G₁₂, given or estimated.
func (l *Layer) shear() float64 {
	if l.Shear > 0 {
		return float64(l.Shear)
	}
	e1, e2, nu := float64(l.ModulusMD), float64(l.ModulusCD), float64(l.Poisson)
	return math.Sqrt(e1*e2) / (2 * (1 + nu*math.Sqrt(e2/e1)))
}

// own is Q, the layer's plane-stress stiffness in its own directions.
func (l *Layer) own() Matrix {
	e1, e2, nu := float64(l.ModulusMD), float64(l.ModulusCD), float64(l.Poisson)
	d := 1 - nu*nu*e2/e1
	return Matrix{{e1 / d, nu * e2 / d, 0}, {nu * e2 / d, e2 / d, 0}, {0, 0, l.shear()}}
}

// turned is Q̄, the stiffness along feed and across feed (R. M. Jones,
// Mechanics of Composite Materials).
func (l *Layer) turned() Matrix {
	q := l.own()
	c, s := cosSin(l.Machine)
	c2, s2 := c*c, s*s
	q11, q22, q12, q66 := q[0][0], q[1][1], q[0][1], q[2][2]
	b11 := q11*c2*c2 + 2*(q12+2*q66)*s2*c2 + q22*s2*s2
	b22 := q11*s2*s2 + 2*(q12+2*q66)*s2*c2 + q22*c2*c2
	b12 := (q11+q22-4*q66)*s2*c2 + q12*(s2*s2+c2*c2)
	b66 := (q11+q22-2*q12-2*q66)*s2*c2 + q66*(s2*s2+c2*c2)
	b16 := (q11-q12-2*q66)*s*c*c2 + (q12-q22+2*q66)*s*s2*c
	b26 := (q11-q12-2*q66)*s*s2*c + (q12-q22+2*q66)*s*c*c2
	return Matrix{{b11, b12, b16}, {b12, b22, b26}, {b16, b26, b66}}
}

// strain turns strains along and across the machine direction to feed and across.
func (l *Layer) strain(md, cd float64) Vector {
	c, s := cosSin(l.Machine)
	return Vector{md*c*c + cd*s*s, md*s*s + cd*c*c, 2 * s * c * (md - cd)}
}

// cosSin is exact at the right angles, where a rounded π would leave 1e-17.
func cosSin(a Degrees) (c, s float64) {
	switch math.Mod(float64(a), 360) {
	case 0:
		return 1, 0
	case 90, -270:
		return 0, 1
	case 180, -180:
		return -1, 0
	case 270, -90:
		return 0, -1
	}
	s, c = math.Sincos(float64(a) * math.Pi / 180)
	return c, s
}

// positive says that v is a finite number above 0.
func positive(v float64) bool { return v > 0 && !math.IsInf(v, 1) }
