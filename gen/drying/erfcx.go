package drying

import "math"

// erfcx is the scaled complementary error function exp(x²)·erfc(x) for x ≥ 0.
//
// The plain product overflows beyond x = 26. Up to 10 the product is used, with
// the rounding error of x² put back; above it the asymptotic series
// 1/(x√π)·(1 − 1/(2x²) + 1·3/(2x²)² − …), whose terms fall below 1e-17 before
// they grow again. Relative error below 1e-15.
// Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.23
// (number from memory).
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

// ierfc is the first integral of the complementary error function,
// exp(−x²)/√π − x·erfc(x), for x ≥ 0. It bounds what a half space knows of a
// face that is x·2√Fo away.
func ierfc(x float64) float64 {
	return math.Exp(-x*x) * (1/math.SqrtPi - x*erfcx(x))
}

// halfSpaceLoss is what a half space of uniform content 1 has lost through its
// face, in contents × thicknesses of the layer, at Fourier number fo:
//
//	{exp(B²Fo)·erfc(B√Fo) − 1 + 2B√(Fo/π)}/B
//
// Crank's surface-evaporation formula for the semi-infinite medium, §3.3 (number
// from memory). For small y = B√Fo the terms cancel; there the power series of
// erfcx, Σ(−y)^k/Γ(k/2+1), is summed from its third term. An infinite biot is a
// face held at the room's floor: 2√(Fo/π).
func halfSpaceLoss(biot, fo float64) float64 {
	root := math.Sqrt(fo)
	y := biot * root
	if y == 0 {
		return 0
	}
	if y >= 1 {
		return root * ((erfcx(y)-1)/y + 2/math.SqrtPi)
	}
	// The coefficients 1/Γ(k/2+1) for even and odd k, each from two before it.
	before, last := 1.0, 2/math.SqrtPi
	sum, power := 0.0, y
	for k := 2; k < 60; k++ {
		before, last = last, before*2/float64(k)
		term := power * last
		sum += term
		if math.Abs(term) < 1e-18*sum {
			break
		}
		power *= -y
	}
	return root * sum
}

// halfSpaceFlux is what leaves that face per Fourier number, B·erfcx(B√Fo).
func halfSpaceFlux(biot, fo float64) float64 {
	if math.IsInf(biot, 1) {
		return 1 / math.Sqrt(math.Pi*fo)
	}
	return biot * erfcx(biot*math.Sqrt(fo))
}
