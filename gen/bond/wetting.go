package bond

import (
	"math"

	"laydown/gen/quantity"
)

// Wetting is the cosine of the contact angle of a liquid on a solid, from their
// surface energies (1 J/m² is 1 N/m):
//
//	cosθ = 2·√(γ_solid/γ_liquid) − 1, no more than 1
//	L. A. Girifalco and R. J. Good, J. Phys. Chem. 61 (1957) 904, φ = 1 (from memory)
//
// It holds for liquids and solids that attract each other by dispersion alone and
// errs for water. Use it to rank surfaces: a clean print (35 to 45 mN/m) is wetted by
// an adhesive of 30 mN/m, one with silicone or fuser oil on it (about 20) in part.
// Oil, wax and powder refuse a bond by lying between as a weak layer too, which no
// contact angle tells.
func Wetting(solid, liquid quantity.SurfaceTension) quantity.Fraction {
	if !(solid > 0 && liquid > 0) {
		return -1
	}
	return quantity.Fraction(math.Min(1, 2*math.Sqrt(float64(solid/liquid))-1))
}

// SpringBack is the pressure with which a film that was bent into a valley pulls back
// out of it: a strip clamped at both edges of the valley, bent by an even pressure.
//
//	p = 384·D·δ/w⁴,  D = E·h³/[12(1 − ν²)]
//	S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed.,
//	1959: a fixed strip, w_max = q·l⁴/(384·D) (from memory)
//
// with E the film's modulus, h its thickness, ν Poisson's ratio, w the valley's width
// and δ how far it was bent. It is what parts soft films from hard ones over wide
// relief. Give it as Case.Opposing; where adhesive alone fills the valley, it is 0.
func SpringBack(modulus quantity.Pressure, poisson quantity.Fraction, thickness, width, bend quantity.Length) quantity.Pressure {
	h, w := float64(thickness), float64(width)
	d := float64(modulus) * h * h * h / (12 * (1 - float64(poisson*poisson)))
	return quantity.Pressure(384 * d * float64(bend) / (w * w * w * w))
}
