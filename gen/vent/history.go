package vent

import (
	"fmt"
	"math"
	"slices"
	"sort"

	"laydown/gen/quantity"
)

// segment is a time in which the room's emission is one parabola, a + b·s + c·s² over
// the volume, in kg/(m³ s).
type segment struct {
	from, span float64
	a, b, c    float64
	start      float64 // concentration at its beginning, kg/m³
	before     float64 // integral of the concentration until then, kg s/m³
}

// History is the concentration in a room over a time, above that of the fresh air.
type History struct {
	room     Room
	segments []segment
	end      float64
	// Emitted is what was given off, Carried what the air took out, Left what is in the
	// room's air at the end.
	Emitted, Carried, Left quantity.Mass
}

// Over gives the concentration in the room from time 0, when it has a concentration
// of start, to end.
func (r Room) Over(l Load, start quantity.Density, end quantity.Time) (*History, error) {
	if err := r.check(); err != nil {
		return nil, err
	}
	if err := l.check(); err != nil {
		return nil, err
	}
	if !notNegative(float64(start)) || !positive(float64(end)) {
		return nil, fmt.Errorf("a concentration of %g kg/m³ followed over %g s: the first must be 0 or more, the second above 0", float64(start), float64(end))
	}
	h := &History{room: r, end: float64(end)}
	now, sum, emitted := float64(start), 0.0, 0.0
	times, volume := l.breaks(h.end), float64(r.Volume)
	for i := 1; i < len(times); i++ {
		s := segment{from: times[i-1], span: times[i] - times[i-1], start: now, before: sum}
		middle := s.from + s.span/2
		// A parabola through both ends and the middle is the emission itself.
		e0, e1, e2 := l.at(middle, s.from)/volume, l.at(middle, middle)/volume, l.at(middle, times[i])/volume
		s.a = e0
		s.b = (4*e1 - 3*e0 - e2) / s.span
		s.c = (2*e0 - 4*e1 + 2*e2) / (s.span * s.span)
		emitted += (e0 + 4*e1 + e2) / 6 * s.span
		h.segments = append(h.segments, s)
		now, sum = s.at(r.decay(), s.span)
	}
	h.Emitted = quantity.Mass(emitted * volume)
	h.Carried = quantity.Mass(r.decay() * sum * volume)
	h.Left = quantity.Mass(now * volume)
	return h, nil
}

// at gives the concentration s seconds into the segment, and its integral until then.
//
//	C = C₀·e^(−λs) + a·k₀ + b·k₁ + c·k₂,  ∫C = C₀·k₀ + a·k₁ + b·k₂/2 + c·k₃/3
//
// with k_n of kernel: an integral of k_n is k_(n+1)/(n + 1).
func (g segment) at(decay, s float64) (concentration, integral float64) {
	k := kernel(decay, s)
	concentration = g.start*math.Exp(-decay*s) + g.a*k[0] + g.b*k[1] + g.c*k[2]
	integral = g.before + g.start*k[0] + g.a*k[1] + g.b*k[2]/2 + g.c*k[3]/3
	return concentration, integral
}

// kernel gives k_n = ∫₀ˢ u^n·e^(−λ(s−u))du for n from 0 to 3.
//
//	k_n = n!·s^(n+1)·Σ (−λs)^j/(n+1+j)!      small λs
//	k_0 = (1 − e^(−λs))/λ, k_n = (s^n − n·k_(n−1))/λ
//
// The second form loses digits where λs is small, the first where it is large.
func kernel(decay, s float64) [4]float64 {
	var k [4]float64
	x := decay * s
	if x < 2 {
		power := s
		for n := range k {
			term := 1.0 / float64(n+1) // n!/(n+1)!
			sum := 0.0
			for j := 1; math.Abs(term) > 1e-18; j++ {
				sum += term
				term *= -x / float64(n+1+j)
			}
			k[n] = power * sum
			power *= s
		}
		return k
	}
	k[0] = -math.Expm1(-x) / decay
	power := s
	for n := 1; n < len(k); n++ {
		k[n] = (power - float64(n)*k[n-1]) / decay
		power *= s
	}
	return k
}

// find gives the segment that holds a time.
func (h *History) find(t float64) segment {
	i := sort.Search(len(h.segments), func(i int) bool { return h.segments[i].from > t })
	return h.segments[max(i-1, 0)]
}

// At gives the concentration at a time.
func (h *History) At(t quantity.Time) (quantity.Density, error) {
	if !(t >= 0 && float64(t) <= h.end) {
		return 0, fmt.Errorf("the room at %g s: it was followed from 0 to %g s", float64(t), h.end)
	}
	return quantity.Density(h.concentration(float64(t))), nil
}

func (h *History) concentration(t float64) float64 {
	s := h.find(t)
	c, _ := s.at(h.room.decay(), t-s.from)
	return c
}

func (h *History) integral(t float64) float64 {
	s := h.find(t)
	_, sum := s.at(h.room.decay(), t-s.from)
	return sum
}

// Average gives the time-weighted average over a time from a beginning: a shift of 8 h.
func (h *History) Average(from, span quantity.Time) (quantity.Density, error) {
	if !(from >= 0 && span > 0 && float64(from+span) <= h.end) {
		return 0, fmt.Errorf("an average from %g s over %g s: the room was followed from 0 to %g s", float64(from), float64(span), h.end)
	}
	return quantity.Density((h.integral(float64(from+span)) - h.integral(float64(from))) / float64(span)), nil
}

// Peak gives the highest concentration, and when it is.
func (h *History) Peak() (quantity.Density, quantity.Time) {
	best, at := h.segments[0].start, 0.0
	decay := h.room.decay()
	see := func(t, c float64) {
		if c > best {
			best, at = c, t
		}
	}
	for _, g := range h.segments {
		// C rises where the emission exceeds what the air takes. Along a parabola that
		// changes at most twice, so a few parts of a segment have one change at most.
		const parts = 16
		rise := func(s float64) float64 {
			c, _ := g.at(decay, s)
			return g.a + g.b*s + g.c*s*s - decay*c
		}
		for i := range parts {
			low, high := g.span*float64(i)/parts, g.span*float64(i+1)/parts
			c, _ := g.at(decay, high)
			see(g.from+high, c)
			if rise(low) > 0 && rise(high) < 0 {
				top := crossing(rise, low, high)
				c, _ = g.at(decay, top)
				see(g.from+top, c)
			}
		}
	}
	return quantity.Density(best), quantity.Time(at)
}

// WorstAverage gives the highest average over any span within the history, and when
// that span begins.
func (h *History) WorstAverage(span quantity.Time) (quantity.Density, quantity.Time, error) {
	best, err := h.Average(0, span)
	if err != nil {
		return 0, 0, err
	}
	// The average over a span changes with its beginning as C(t + span) − C(t); the best
	// lies where that passes from above to below 0, or at an end. Between the times at
	// which a segment begins or a span ends in one, it is smooth.
	const parts = 4
	at, last := 0.0, h.end-float64(span)
	rise := func(t float64) float64 {
		return h.concentration(min(t+float64(span), h.end)) - h.concentration(t)
	}
	see := func(t float64) {
		if a := quantity.Density((h.integral(min(t+float64(span), h.end)) - h.integral(t)) / float64(span)); a > best {
			best, at = a, t
		}
	}
	see(last)
	times := h.joints(float64(span), last)
	for i := 1; i < len(times); i++ {
		from, length := times[i-1], times[i]-times[i-1]
		before := rise(from)
		for k := range parts {
			low, high := from+length*float64(k)/parts, from+length*float64(k+1)/parts
			after := rise(high)
			if before > 0 && after <= 0 {
				see(crossing(rise, low, high))
			}
			before = after
		}
	}
	return best, quantity.Time(at), nil
}

// joints are the times from 0 to last at which a span that begins then begins or ends
// where a segment does.
func (h *History) joints(span, last float64) []float64 {
	times := []float64{0, last}
	for _, g := range h.segments {
		for _, t := range [...]float64{g.from, g.from - span} {
			if t > 0 && t < last {
				times = append(times, t)
			}
		}
	}
	slices.Sort(times)
	return slices.Compact(times)
}

// crossing finds where f passes from above 0 at low to 0 or below at high.
func crossing(f func(float64) float64, low, high float64) float64 {
	for range 60 {
		middle := (low + high) / 2
		if f(middle) > 0 {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}
