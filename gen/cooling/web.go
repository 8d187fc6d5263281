package cooling

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// A web that comes out of a nip drags the air along: its boundary layer begins at the
// nip. These are −θ'(0) of the laminar layer on a surface that moves through still
// air, at Prandtl numbers of 0.7 and 1: F. K. Tsou, E. M. Sparrow and R. J. Goldstein,
// Int. J. Heat Mass Transfer 10 (1967) 219, after B. C. Sakiadis, AIChE Journal 7 (1961)
// 26. From memory; the tests solve the layer's equations again and agree.
const (
	webAt07 = 0.3492
	webAt1  = 0.4438
)

// webTurns is the Reynolds number up to which a web's boundary layer stays laminar. It
// is taken from that of a plate at rest.
const webTurns = 5e5

// MovingWeb gives the mean convective conductance of a web that runs through still air,
// over the first length after the nip.
//
//	h = 2·θ·Re^½·k/L, Re = v·L/ν, θ = 0.3492·(Pr/0.7)^0.672      Re ≤ 5e5, Pr 0.65 to 1
//
// It is a fifth more than a fan of the same speed gives. At a few metres a minute it is
// below what still air and radiation give: use Air with StillAir beside it.
func MovingWeb(speed quantity.Speed, length quantity.Length, surface, room quantity.Temperature, p quantity.Pressure) (quantity.Conductance, error) {
	f, err := filmAir(surface, room, p)
	if err != nil {
		return 0, err
	}
	if !notNegative(float64(speed)) || !positive(float64(length)) {
		return 0, fmt.Errorf("a web at %g m/s over %g m: the speed must be 0 or more, the length above 0", float64(speed), float64(length))
	}
	re := float64(speed) * float64(length) / f.nu
	if re > webTurns || f.pr < 0.65 || f.pr > 1 {
		return 0, fmt.Errorf("a web at %g m/s over %g m: a Reynolds number of %.4g, Prandtl number of %.3g, is outside 0 to 5e5, 0.65 to 1",
			float64(speed), float64(length), re, f.pr)
	}
	return quantity.Conductance(2 * webSlope(f.pr) * math.Sqrt(re) * f.k / float64(length)), nil
}

// webSlope is −θ'(0) between the two values known.
func webSlope(pr float64) float64 {
	return webAt07 * math.Pow(pr/0.7, math.Log(webAt1/webAt07)/math.Log(1/0.7))
}
