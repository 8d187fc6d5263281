package curl

import (
	"math"

	"laydown/gen/quantity"
)

// Cylinder is the shape of least energy among all that need no stretching: a sheet
// that is large against its thickness has no choice.
type Cylinder struct {
	// Curvature in 1/m, above 0 when edges go down.
	Curvature float64
	// Radius is 1/|Curvature|, 0 for a flat sheet.
	Radius quantity.Length
	// Axis is the cylinder's, from the feed direction, −90 < Axis ≤ 90: 90, lead and
	// tail ends lift; 0, the sides do.
	Axis Degrees
	// Energy that stays in the layers, J/m².
	Energy float64
	// AnyAxis: what is alike in all directions rolls about any axis; Axis is then 0.
	AnyAxis bool
	// Second is another cylinder in which the sheet would stay, across the first as
	// a rule; a hand can flip it over. Zero: there is none.
	Second Other
}

// Other is a second cylinder in which a sheet would stay.
type Other struct {
	Curvature float64
	Axis      Degrees
	Energy    float64
}

// How finely axes are looked for before each best one is narrowed down.
const axisSteps = 180

const (
	// flatness is how much of the flat sheet's energy a curl must give back to count
	// as one; below it lies rounding.
	flatness = 1e-12
	// alike is how near, relatively, two energies count as the same. Of two cylinders
	// alike the one found first stands, on every machine.
	alike = 1e-9
)

// Cylinder finds the cylinder of least energy. With the direction n of curvature at
// an angle φ, κ = k·(cos²φ, sin²φ, 2·sinφ·cosφ), the energy is ½k²·d(φ) − k·m(φ) + flat
// and its least over k is flat − m²/(2d) at k = m/d.
func (p *Plate) Cylinder() Cylinder {
	step := math.Pi / axisSteps
	gain := func(phi float64) float64 { _, g := p.rolled(phi); return g }
	var best, second struct{ phi, gain float64 }
	least, most := math.Inf(1), 0.0
	for i := range axisSteps {
		g := gain(float64(i) * step)
		least, most = min(least, g), max(most, g)
	}
	if !(most > flatness*math.Abs(p.FlatEnergy)) {
		return Cylinder{Energy: p.FlatEnergy}
	}
	if most-least < alike*most {
		k, g := p.rolled(math.Pi / 2)
		return Cylinder{Curvature: k, Radius: quantity.Length(1 / math.Abs(k)), AnyAxis: true, Energy: p.FlatEnergy - g}
	}
	for i := range axisSteps {
		phi := float64(i) * step
		g := gain(phi)
		if g < gain(phi-step) || g < gain(phi+step) {
			continue
		}
		at := p.summit(phi-step, phi+step)
		found := struct{ phi, gain float64 }{at, gain(at)}
		switch {
		case found.gain > best.gain*(1+alike):
			best, second = found, best
		case found.gain > second.gain && apart(at, best.phi) > 5*step:
			second = found
		}
	}
	k, _ := p.rolled(best.phi)
	c := Cylinder{Curvature: k, Radius: quantity.Length(1 / math.Abs(k)), Axis: axisOf(best.phi), Energy: p.FlatEnergy - best.gain}
	if second.gain > flatness*math.Abs(p.FlatEnergy) && apart(second.phi, best.phi) > 5*step {
		k, _ := p.rolled(second.phi)
		c.Second = Other{Curvature: k, Axis: axisOf(second.phi), Energy: p.FlatEnergy - second.gain}
	}
	return c
}

// rolled is the best curvature for a direction, and what energy it gives back.
func (p *Plate) rolled(phi float64) (curvature, gain float64) {
	s, c := math.Sincos(phi)
	n := Vector{c * c, s * s, 2 * s * c}
	m, d := p.Drive.dot(n), n.dot(p.Bending.apply(n))
	return m / d, m * m / (2 * d)
}

// summit is the direction between two others in which a roll gives back most: where
// the slope of m²/(2d) goes from above 0 to below, by bisection.
func (p *Plate) summit(low, high float64) float64 {
	for range 60 {
		phi := (low + high) / 2
		s, c := math.Sincos(phi)
		n := Vector{c * c, s * s, 2 * s * c}
		turn := Vector{-2 * s * c, 2 * s * c, 2 * (c*c - s*s)}
		m, d := p.Drive.dot(n), n.dot(p.Bending.apply(n))
		if m*(p.Drive.dot(turn)*d-m*turn.dot(p.Bending.apply(n))) > 0 {
			low = phi
		} else {
			high = phi
		}
	}
	return (low + high) / 2
}

// axisOf is the axis across a direction of curvature.
func axisOf(phi float64) Degrees {
	a := math.Mod(phi*180/math.Pi+90, 180)
	if a < 0 {
		a += 180
	}
	if a > 90+1e-9 {
		a -= 180
	}
	return Degrees(a)
}

// apart is the angle between two directions that have no sense, 0 to π/2.
func apart(a, b float64) float64 {
	d := math.Mod(math.Abs(a-b), math.Pi)
	return min(d, math.Pi-d)
}

// Rise is how high the lifted edges stand when a sheet of that length, measured
// across the axis, lies on its belly: R·(1 − cos(L/2R)). Rolled further than round,
// it is as high as its cylinder.
func (c Cylinder) Rise(length quantity.Length) quantity.Length {
	if c.Radius == 0 {
		return 0
	}
	half := float64(length) / float64(c.Radius) / 2
	if half >= math.Pi {
		return 2 * c.Radius
	}
	s := math.Sin(half / 2)
	return 2 * c.Radius * quantity.Length(s*s)
}

// SaddleBelow is the size (diameter of a round sheet) under which a sheet may keep
// the saddle or the dish of laminate theory, since stretching it costs less than
// rolling it. A round isotropic sheet of radius a and thickness h with the Gaussian
// curvature K everywhere holds E·h·K²·a⁴/384 from stretching (Airy function
// (r² − a²)², worked out here); set equal to what the cylinder costs above the free
// plate. An estimate of the size's order. 0: laminate theory itself gives a
// cylinder, whatever the size.
func (p *Plate) SaddleBelow(c Cylinder) quantity.Length {
	k := p.Curvature
	gauss := k[0]*k[1] - k[2]*k[2]/4
	excess := c.Energy - p.Energy
	a := p.soft
	if gauss == 0 || !(excess > flatness*p.FlatEnergy) {
		return 0
	}
	stretch := 1 / math.Sqrt(a[0][0]*a[1][1])
	return quantity.Length(2 * math.Pow(384*excess/(stretch*gauss*gauss), 0.25))
}
