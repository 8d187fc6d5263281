package stack

import (
	"fmt"
	"math"
)

// modes is how many terms of the series are summed, and shortTime the Fourier
// number below which the half spaces take over. At 0.02 the seventeenth term is
// below exp(−(16π)²·0.02) < 1e-21 of the start, and what one half space does not
// know of the other face's reflection is below erfc(2/(2√0.02)) < 2e-23.
const (
	modes     = 16
	shortTime = 0.02
)

// slab is one direction of a block: depth from −1 to 1 in half thicknesses, both
// faces alike. One face sealed is the half of it, from the sealed face at 0.
type slab struct {
	biot  float64 // of a face; 0 sealed, +Inf held at the room's state
	beta  [modes]float64
	local [modes]float64 // 4·sin β/(2β + sin 2β), amplitude of cos(β·x)
	mean  [modes]float64 // 2B²/[β²(β² + B² + B)]
}

func newSlab(biot float64) (*slab, error) {
	if !(biot >= 0) {
		return nil, fmt.Errorf("a Biot number of %g: it must be 0 or more", biot)
	}
	s := &slab{biot: biot}
	if biot == 0 {
		return s, nil
	}
	for n := range modes {
		b := root(biot, n)
		s.beta[n] = b
		// sin β and cos β of the root without their cancellation: tan β = B/β.
		sine, cosine := 1.0, 0.0
		if !math.IsInf(biot, 1) {
			r := math.Hypot(b, biot)
			sine, cosine = biot/r, b/r
		}
		if n%2 == 1 {
			sine, cosine = -sine, -cosine
		}
		s.local[n] = 2 * sine / (b + sine*cosine)
		s.mean[n] = s.local[n] * sine / b
	}
	return s, nil
}

// root solves β·tan β = B for β in [nπ, nπ + π/2], in the form
// β − atan(B/β) = nπ, whose left side rises and has no poles.
func root(biot float64, n int) float64 {
	lo := float64(n) * math.Pi
	hi := lo + math.Pi/2
	if math.IsInf(biot, 1) {
		return hi
	}
	target, b := lo, hi
	for range 100 {
		f := b - math.Atan(biot/b) - target
		if f < 0 {
			lo = b
		} else {
			hi = b
		}
		next := b - f/(1+biot/(b*b+biot*biot))
		if !(next > lo && next < hi) {
			next = lo + (hi-lo)/2
		}
		if math.Abs(next-b) <= 2e-16*next {
			return next
		}
		b = next
	}
	return b
}

// at is what is left of a uniform start at depth x, −1 to 1, at Fourier number fo.
func (s *slab) at(x, fo float64) float64 {
	switch {
	case s.biot == 0 || fo <= 0:
		return 1
	case fo < shortTime:
		return 1 - s.change(1-x, fo) - s.change(1+x, fo)
	}
	left := 0.0
	for n := range modes {
		left += s.local[n] * math.Cos(s.beta[n]*x) * math.Exp(-s.beta[n]*s.beta[n]*fo)
	}
	return left
}

// change is the change of a half space at depth z below its face,
//
//	erfc ζ − exp(Bz + B²Fo)·erfc(ζ + B√Fo),   ζ = z/(2√Fo)
//
// in the form that does not overflow.
func (s *slab) change(z, fo float64) float64 {
	depth := z / (2 * math.Sqrt(fo))
	if math.IsInf(s.biot, 1) {
		return math.Erfc(depth)
	}
	return math.Erfc(depth) - math.Exp(-depth*depth)*erfcx(depth+s.biot*math.Sqrt(fo))
}

// whole is what is left of a uniform start on the mean over the thickness.
func (s *slab) whole(fo float64) float64 {
	switch {
	case s.biot == 0 || fo <= 0:
		return 1
	case fo < shortTime:
		return 1 - s.loss(fo)
	}
	left := 0.0
	for n := range modes {
		left += s.mean[n] * math.Exp(-s.beta[n]*s.beta[n]*fo)
	}
	return left
}

// loss is what a half space has lost through its face, in contents of the slab's half:
//
//	[erfcx(y) − 1 + 2y/√π]/B,   y = B√Fo
//
// For small y the terms cancel; there Σ(−y)^k/Γ(k/2+1) is summed from its third term.
func (s *slab) loss(fo float64) float64 {
	r := math.Sqrt(fo)
	y := s.biot * r
	if math.IsInf(y, 1) {
		return 2 * r / math.SqrtPi
	}
	if y >= 1 {
		return r * ((erfcx(y)-1)/y + 2/math.SqrtPi)
	}
	sum, power := 0.0, y
	for k := 2; k < 40; k++ {
		sum += power / math.Gamma(float64(k)/2+1)
		power *= -y
	}
	return r * sum
}

// erfcx is exp(x²)·erfc(x) for x ≥ 0: the product up to 10, with the rounding of x²
// put back, and the asymptotic series above (Abramowitz and Stegun, 7.1.23; number
// from memory).
func erfcx(x float64) float64 {
	if x < 10 {
		square := x * x
		lost := math.FMA(x, x, -square)
		return math.Exp(square) * (1 + lost) * math.Erfc(x)
	}
	sum, term := 1.0, 1.0
	for k := 1; k <= 16; k++ {
		term *= -float64(2*k-1) / (2 * x * x)
		sum += term
	}
	return sum / (x * math.SqrtPi)
}
