package vent

import (
	"fmt"
	"math"
	"slices"

	"laydown/gen/quantity"
)

// Flux is a mass given off per area and time in kilograms per square metre and second.
type Flux float64

// Point is the emission of a square metre of print at a time since it was printed.
type Point struct {
	Time quantity.Time
	Flux Flux
}

// Emission is the vapour that a square metre of print gives off, with straight lines
// between the points. Two points at the same time are a jump. Before the first point and
// after the last it gives off nothing.
type Emission []Point

// check refuses what no emission can be.
func (e Emission) check() error {
	if len(e) < 2 || !(e[0].Time >= 0) {
		return fmt.Errorf("an emission of %d points: at least 2, from a time of 0 or later", len(e))
	}
	for i, p := range e {
		if !notNegative(float64(p.Flux)) || !notNegative(float64(p.Time)) {
			return fmt.Errorf("an emission of %g kg/(m² s) at %g s: both must be 0 or more", float64(p.Flux), float64(p.Time))
		}
		if i > 0 && p.Time < e[i-1].Time || i > 1 && p.Time == e[i-2].Time {
			return fmt.Errorf("an emission's times must rise, with at most two points at one time: %g s after %g s", float64(p.Time), float64(e[i-1].Time))
		}
	}
	if e.Total() == 0 {
		return fmt.Errorf("an emission of nothing")
	}
	return nil
}

// FromLeft gives the emission of a print from what is left of its carrier at rising
// times, as a drying curve tells it: level between two times, so that what leaves is
// neither more nor less than the curve says.
func FromLeft(times []quantity.Time, left []quantity.Grammage) (Emission, error) {
	if len(times) != len(left) || len(times) < 2 {
		return nil, fmt.Errorf("%d times and %d amounts left: as many of each, at least 2", len(times), len(left))
	}
	var e Emission
	for i := 1; i < len(times); i++ {
		span := float64(times[i] - times[i-1])
		if !(span > 0) || left[i] > left[i-1] || !(left[i] >= 0) {
			return nil, fmt.Errorf("%g kg/m² left at %g s after %g kg/m² at %g s: times must rise and what is left must not", float64(left[i]), float64(times[i]), float64(left[i-1]), float64(times[i-1]))
		}
		f := Flux(float64(left[i-1]-left[i]) / span)
		e = append(e, Point{times[i-1], f}, Point{times[i], f})
	}
	return e, e.check()
}

// Sample gives the emission of a function of time, by straight lines through n times
// that begin at first and grow by the same ratio to last, and one at 0 with the first
// one's emission: a print's emission is steep early and flat late. The function must be
// finite.
func Sample(flux func(quantity.Time) Flux, first, last quantity.Time, n int) (Emission, error) {
	if !(first > 0 && last > first) || n < 2 {
		return nil, fmt.Errorf("%d times from %g s to %g s: at least 2, rising from above 0", n, float64(first), float64(last))
	}
	e := Emission{{0, flux(first)}}
	for i := range n {
		t := first * quantity.Time(math.Pow(float64(last/first), float64(i)/float64(n-1)))
		e = append(e, Point{t, flux(t)})
	}
	return e, e.check()
}

// Total is what a square metre gives off altogether.
func (e Emission) Total() quantity.Grammage {
	if len(e) == 0 {
		return 0
	}
	return e.until(e[len(e)-1].Time)
}

// Peak is the highest emission, and when it is.
func (e Emission) Peak() Point {
	peak := Point{}
	for _, p := range e {
		if p.Flux > peak.Flux {
			peak = p
		}
	}
	return peak
}

// at gives the value at t of the straight line that holds at an inner time; t may be an
// end of that line, where another begins.
func (e Emission) at(inner, t float64) float64 {
	i, _ := slices.BinarySearchFunc(e, inner, func(p Point, t float64) int {
		if float64(p.Time) <= t {
			return -1
		}
		return 1
	})
	if i == 0 || i == len(e) {
		return 0
	}
	a, b := e[i-1], e[i]
	share := (t - float64(a.Time)) / float64(b.Time-a.Time)
	return float64(a.Flux) + share*float64(b.Flux-a.Flux)
}

// until is what a square metre has given off by a time since it was printed.
func (e Emission) until(t quantity.Time) quantity.Grammage {
	sum := 0.0
	for i := 1; i < len(e) && e[i-1].Time < t; i++ {
		a, b := e[i-1], e[i]
		end := min(b.Time, t)
		if b.Time == a.Time {
			continue
		}
		f := float64(a.Flux) + float64(end-a.Time)/float64(b.Time-a.Time)*float64(b.Flux-a.Flux)
		sum += (float64(a.Flux) + f) / 2 * float64(end-a.Time)
	}
	return quantity.Grammage(sum)
}

// positive says that v is a finite number above 0.
func positive(v float64) bool { return v > 0 && !math.IsInf(v, 1) }

// notNegative says that v is a finite number, 0 or above.
func notNegative(v float64) bool { return v >= 0 && !math.IsInf(v, 1) }
