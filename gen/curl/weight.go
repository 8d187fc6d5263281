package curl

import (
	"math"

	"laydown/gen/quantity"
)

// gravity is the standard acceleration of free fall, m/s².
const gravity = 9.80665

// RiseOnTable is how high the edges of a sheet stand that lies on a table with its edges
// up, held down by its own weight. An edge lifts over the length a at whose foot the
// weight holds the curl flat,
//
//	D·k = w·a²/2      k the cylinder's curvature, D the bending stiffness across its axis,
//	                  w the weight, N/m²
//	y = k·a²/2 − w·a⁴/(8·D) = D·k²/(2·w)
//
// by beam theory of small slopes (worked out here; the tests integrate it). It is never
// more than Rise has without weight, which counts where a reaches the middle of the sheet.
func (p *Plate) RiseOnTable(c Cylinder, length quantity.Length, grammage quantity.Grammage) quantity.Length {
	free := c.Rise(length)
	w := gravity * float64(grammage)
	if !(w > 0) || c.Radius == 0 {
		return free
	}
	d, k := p.stiffnessAcross(c.Axis), math.Abs(c.Curvature)
	if a := math.Sqrt(2 * d * k / w); a > float64(length)/2 {
		return free
	}
	return min(free, quantity.Length(d*k*k/(2*w)))
}

// stiffnessAcross is d(φ) = n·D*·n with n = (cos²φ, sin²φ, 2·sinφ·cosφ) of the curvature's
// direction, a right angle from the axis.
func (p *Plate) stiffnessAcross(axis Degrees) float64 {
	phi := (float64(axis) + 90) * math.Pi / 180
	n := Vector{math.Cos(phi) * math.Cos(phi), math.Sin(phi) * math.Sin(phi), 2 * math.Sin(phi) * math.Cos(phi)}
	m := p.Bending.apply(n)
	return n[0]*m[0] + n[1]*m[1] + n[2]*m[2]
}
