package curl

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// bed is something soft that resists waves: K pascals of pressure for each metre of
// depth, at a wave number q in 1/m.
type bed struct {
	modulus, poisson, thickness float64
}

// stiffness is that of an elastic layer held fast at its base, and held along itself
// at the face in which a wave is pressed. Plane strain solved exactly (worked out
// here, and integrated numerically in the tests):
//
//	K = G·q·(1 + c)·(c·sinh 2h + 2h)/(2·(c²·sinh²h − h²)),  h = q·t,  c = 3 − 4ν
//
// Long waves: M/t, M the modulus of a layer that cannot widen; one that cannot change
// its volume has to flow sideways, 12·G/(q²t³). Short waves: G·q·(1 + c)/c, a half
// space.
func (b bed) stiffness(q float64) float64 {
	g := b.modulus / (2 * (1 + b.poisson))
	c := 3 - 4*b.poisson
	h := q * b.thickness
	if h > deep {
		return g * q * (1 + c) / c
	}
	s := math.Sinh(h)
	return g * q * (1 + c) * (c*math.Sinh(2*h) + 2*h) / (2 * (c*c*s*s - h*h))
}

// deep is the h from which a layer is a half space to the last digit.
const deep = 20

// beam is a stiff layer in cylindrical bending: D in N·m, its force P per unit of load,
// compression above 0, and the bed up to the next one.
type beam struct {
	bending, force float64
	above          []bed // in series
	// stretch is the stiffness in its plane, N/m, axis how far under its upper face
	// its neutral axis lies: for beams that are joined.
	stretch, axis float64
}

// under joins a beam to a homogeneous one of thickness t that lies on it.
func (b beam) under(top beam, t float64) beam {
	apart, stretch := b.axis+top.axis, b.stretch+top.stretch
	return beam{
		bending: b.bending + top.bending + b.stretch*top.stretch/stretch*apart*apart,
		force:   b.force + top.force,
		stretch: stretch,
		axis:    (b.stretch*(b.axis+t) + top.stretch*top.axis) / stretch,
	}
}

// chain is stiff layers on top of each other with soft ones between, and the beds
// of the rollers outside.
type chain struct {
	beams       []beam
	below, over *bed
}

// buckles gives the least load, in units of the beams' forces, at which the chain
// leaves its plane, and the wavelength that does. Energy per area of waves w·cos(qx):
//
//	¼ Σ (D·q⁴ − s·P·q²)·wᵢ² + ¼ Σ K·(wᵢ₊₁ − wᵢ)² + ¼ K_below·w₁² + ¼ K_over·wₙ²
//
// It is no longer positive for every w at s; the least s over q is the answer.
// Waves lie between the two lengths given; wavelength 0 when the longest do as well as
// any, to a thousandth.
func (c *chain) buckles(shortest, longest float64) (load, wavelength float64, err error) {
	const steps = 160
	low, high := math.Log(2*math.Pi/longest), math.Log(2*math.Pi/shortest)
	at := func(x float64) float64 { return -c.loadAt(math.Exp(x)) }
	best, where := math.Inf(-1), 0
	for i := range steps + 1 {
		if v := at(low + (high-low)*float64(i)/steps); v > best {
			best, where = v, i
		}
	}
	if math.IsInf(best, -1) {
		return math.Inf(1), 0, nil
	}
	step := (high - low) / steps
	x := highest(at, max(low, low+float64(where-1)*step), min(high, low+float64(where+1)*step))
	if !(at(x) >= best) {
		x = low + float64(where)*step
	}
	load = -at(x)
	if !(load > 0) {
		return 0, 0, fmt.Errorf("no load found at which %d layers buckle", len(c.beams))
	}
	if all := -at(low); load > all*0.999 {
		return all, 0, nil
	}
	return load, 2 * math.Pi / math.Exp(x), nil
}

// highest narrows the highest place of a function of one hump down, by golden section.
func highest(f func(float64) float64, low, high float64) float64 {
	const ratio = 0.6180339887498949
	a, b := high-ratio*(high-low), low+ratio*(high-low)
	fa, fb := f(a), f(b)
	for range 60 {
		if fa > fb {
			high, b, fb = b, a, fa
			a = high - ratio*(high-low)
			fa = f(a)
		} else {
			low, a, fa = a, b, fb
			b = low + ratio*(high-low)
			fb = f(b)
		}
	}
	return (low + high) / 2
}

// loadAt is the load for waves of one wave number, by bisection on whether the
// energy is positive.
func (c *chain) loadAt(q float64) float64 {
	q2 := q * q
	n := len(c.beams)
	own := make([]float64, n)  // what each layer sets against the wave, without load
	side := make([]float64, n) // between it and the next one up
	for i := range c.beams {
		own[i] = c.beams[i].bending * q2 * q2
		give := 0.0
		for _, b := range c.beams[i].above {
			give += 1 / b.stiffness(q)
		}
		if i < n-1 {
			side[i] = 1 / give
		}
	}
	if c.below != nil {
		own[0] += c.below.stiffness(q)
	}
	if c.over != nil {
		own[n-1] += c.over.stiffness(q)
	}
	// One layer moving alone cannot be better than the best of all.
	top := math.Inf(1)
	for i := range c.beams {
		if f := c.beams[i].force; f > 0 {
			free := own[i] + side[i]
			if i > 0 {
				free += side[i-1]
			}
			top = min(top, free/(q2*f))
		}
	}
	if math.IsInf(top, 1) {
		return top
	}
	low := 0.0
	for range 52 {
		s := (low + top) / 2
		if positiveEnergy(own, side, c.beams, s*q2) {
			low = s
		} else {
			top = s
		}
	}
	return top
}

// positiveEnergy eliminates the layers from the lowest up: what lies below acts on
// the next one as a spring in series with the bed between. Written so, nothing large
// is taken from something as large.
func positiveEnergy(own, side []float64, beams []beam, load float64) bool {
	below := 0.0
	for i := range own {
		stiff := own[i] - load*beams[i].force + below
		pivot := stiff + side[i]
		if !(pivot > 0) {
			return false
		}
		below = stiff * side[i] / pivot
	}
	return true
}

// Wrinkling is the textbook case, for comparison: a plate on a half space.
// ε = ¼(3·Ē_s/Ē_f)^⅔ and λ = 2π·t·(Ē_f/(3·Ē_s))^⅓, Ē = E/(1 − ν²), for a half space
// that does not change its volume or whose surface is free along itself (Bowden et
// al. 1998; Allen 1969).
func Wrinkling(film quantity.Pressure, filmPoisson quantity.Fraction, thickness quantity.Length,
	bed quantity.Pressure, bedPoisson quantity.Fraction) (critical quantity.Fraction, wavelength quantity.Length) {
	ratio := 3 * float64(bed) / (1 - float64(bedPoisson*bedPoisson)) / (float64(film) / (1 - float64(filmPoisson*filmPoisson)))
	return quantity.Fraction(math.Pow(ratio, 2.0/3) / 4), 2 * math.Pi * thickness * quantity.Length(math.Pow(ratio, -1.0/3))
}
