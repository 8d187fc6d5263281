package stack

import (
	"fmt"
	"math"
)

// direction is one axis of a block: its half thickness (the whole one where a face is
// sealed), its diffusivity and its slab.
type direction struct {
	half, diffusivity float64
	*slab
}

// block is a rectangular block of uniform start: what is left in it is the product of
// what is left in its three directions (A. B. Newman, 1936).
type block [3]direction

func (d direction) fo(t float64) float64 { return d.diffusivity * t / (d.half * d.half) }

// newDirection makes an axis of a block: size m, the faces that are open (0, 1 or 2),
// diffusivity m²/s, and velocity, the transfer coefficient on the block's own content, m/s.
func newDirection(size float64, open int, diffusivity, velocity float64) (direction, error) {
	if !positive(size) || !positive(diffusivity) || !(velocity >= 0) {
		return direction{}, fmt.Errorf("a block %g m thick with a diffusivity of %g m²/s and a face of %g m/s: the first two must be above 0, the last not below",
			size, diffusivity, velocity)
	}
	d := direction{half: size, diffusivity: diffusivity}
	if open == 2 {
		d.half = size / 2
	}
	biot := 0.0
	if open > 0 {
		biot = velocity * d.half / diffusivity
	}
	s, err := newSlab(biot)
	d.slab = s
	return d, err
}

// at is what is left at a place: x, y, z from the middle (or the sealed face), −1 to 1.
func (b *block) at(x, y, z, t float64) float64 {
	return b[0].at(x, b[0].fo(t)) * b[1].at(y, b[1].fo(t)) * b[2].at(z, b[2].fo(t))
}

// core is what is left at the place that changes last: the middle.
func (b *block) core(t float64) float64 { return b.at(0, 0, 0, t) }

// whole is what is left on the mean over the block.
func (b *block) whole(t float64) float64 {
	return b[0].whole(b[0].fo(t)) * b[1].whole(b[1].fo(t)) * b[2].whole(b[2].fo(t))
}

// longest bounds the times that are looked for: a hundred years.
const longest = 100 * 365.25 * 86400

// until finds the time at which a falling measure of what is left reaches share; +Inf
// beyond a hundred years.
func until(left func(t float64) float64, share float64) float64 {
	if left(longest) > share {
		return math.Inf(1)
	}
	lo, hi := math.Log(1e-3), math.Log(longest)
	for range 60 {
		mid := (lo + hi) / 2
		if left(math.Exp(mid)) > share {
			lo = mid
		} else {
			hi = mid
		}
	}
	return math.Exp(hi)
}

// border is the depth from the face of direction i, through the middle of the other
// two, down to which the change has passed share; the half thickness, and true, where
// the middle has passed it too.
func (b *block) border(i int, share, t float64) (float64, bool) {
	d := b[i]
	others := 1.0
	for j := range b {
		if j != i {
			others *= b[j].at(0, b[j].fo(t))
		}
	}
	changed := func(x float64) bool { return 1-others*d.at(x, d.fo(t)) >= share }
	switch {
	case changed(0):
		return d.half, true
	case !changed(1):
		return 0, false
	}
	lo, hi := 0.0, 1.0 // unchanged at lo, changed at hi
	for range 60 {
		mid := (lo + hi) / 2
		if changed(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return (1 - hi) * d.half, false
}

func positive(v float64) bool { return v > 0 && !math.IsInf(v, 1) }
