package stack

import (
	"fmt"
	"math"
)

// Verify computes what a published value of this package is about, in the units of
// the source: what names it, given holds its inputs in SI, temperatures in the scale
// of the source. Tests and the verification page ask it.
//
// A block's sizes are "length", "width" and "height"; one that is not given reaches on
// for ever. "open" is how many of the height's faces are open, 2 where it is not given.
// Places "x", "y" and "z" are from the middle (or the sealed face), 1 at the open face.
func Verify(what string, given map[string]float64) (float64, error) {
	switch what {
	case "root", "first root", "first coefficient":
		s, err := newSlab(given["biot"])
		if err != nil {
			return 0, err
		}
		n := 1
		if what == "root" {
			n = int(given["root"])
		}
		if n < 1 || n > modes {
			return 0, fmt.Errorf("root %d of a slab: there are %d here", n, modes)
		}
		if what == "first coefficient" {
			return s.local[0], nil
		}
		return s.beta[n-1], nil
	case "share lost":
		d, err := newDirection(given["thickness"], 2, given["diffusivity"], math.Inf(1))
		if err != nil {
			return 0, err
		}
		return 1 - d.whole(d.fo(given["time"])), nil
	case "temperature in a block", "time of a block":
		return verifyBlock(what, given)
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// verifyBlock poses a block that convection heats or cools.
func verifyBlock(what string, given map[string]float64) (float64, error) {
	var b block
	for i, name := range [...]string{"length", "width", "height"} {
		size, open := given[name], 2
		if n, ok := given["open"]; ok && name == "height" {
			open = int(n)
		}
		if size == 0 {
			size, open = 1, 0 // no face to lose through: it reaches on for ever
		}
		var err error
		b[i], err = newDirection(size, open, given["alpha"], given["film"]*given["alpha"]/given["conductivity"])
		if err != nil {
			return 0, err
		}
	}
	left := func(t float64) float64 { return b.at(given["x"], given["y"], given["z"], t) }
	span := given["start"] - given["room"]
	if what == "temperature in a block" {
		return given["room"] + span*left(given["time"]), nil
	}
	return until(left, (given["wanted"]-given["room"])/span), nil
}
