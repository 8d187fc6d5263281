package cooling

import (
	"fmt"
	"math"
	"sort"

	"laydown/gen/quantity"
)

// Moment is the laminate at a time after the nip.
type Moment struct {
	Time       quantity.Time
	Layers     []quantity.Temperature // means
	Face, Back quantity.Temperature
}

// At gives the laminate at a time within the stages. Where a stage begins, the faces
// are those of the stage before it.
func (c *Cooling) At(t quantity.Time) (Moment, error) {
	if !(t >= 0 && t <= c.Total()) {
		return Moment{}, fmt.Errorf("the laminate at %g s: the stages last from 0 to %g s", float64(t), float64(c.Total()))
	}
	n := len(c.layers)
	i := sort.Search(len(c.samples), func(i int) bool { return c.samples[i].time >= float64(t) })
	i = max(i, 1)
	m := Moment{Time: t, Layers: make([]quantity.Temperature, n)}
	for l := range n {
		m.Layers[l] = quantity.Temperature(c.between(i, l, float64(t)))
	}
	m.Face = quantity.Temperature(c.between(i, n, float64(t)))
	m.Back = quantity.Temperature(c.between(i, n+1, float64(t)))
	return m, nil
}

// Curve gives the laminate at n times, spread evenly on a log axis from first to the
// end of the stages.
func (c *Cooling) Curve(first quantity.Time, n int) ([]Moment, error) {
	if !(first > 0 && first < c.Total()) || n < 2 {
		return nil, fmt.Errorf("%d times from %g s on: at least 2, from above 0 to below %g s", n, float64(first), float64(c.Total()))
	}
	out := make([]Moment, n)
	ratio := float64(c.Total() / first)
	for i := range out {
		t := first * quantity.Time(math.Pow(ratio, float64(i)/float64(n-1)))
		m, err := c.At(min(t, c.Total()))
		if err != nil {
			return nil, err
		}
		out[i] = m
	}
	return out, nil
}

// between is a value within the step that ends at sample i: the cubic that has the
// samples' values and slopes.
func (c *Cooling) between(i, column int, t float64) float64 {
	a, b := c.samples[i-1], c.samples[i]
	h := b.time - a.time
	if h == 0 {
		return b.value[column]
	}
	s := (t - a.time) / h
	va, vb := a.value[column], b.value[column]
	// Written as a straight line and what bends it, so that it hits both ends.
	line := va + s*(vb-va)
	da, db := h*a.slope[column]-(vb-va), h*b.slope[column]-(vb-va)
	return line + s*(1-s)*((1-s)*da-s*db)
}

// Reaches gives the first time at which a place has cooled to a temperature; false if
// it never does.
func (c *Cooling) Reaches(p Place, wanted quantity.Temperature) (quantity.Time, bool, error) {
	col, err := c.column(p)
	if err != nil {
		return 0, false, err
	}
	w := float64(wanted)
	for i, s := range c.samples {
		if s.value[col] > w {
			continue
		}
		if i == 0 || c.samples[i-1].value[col] <= w {
			return quantity.Time(s.time), true, nil
		}
		return quantity.Time(c.crossing(i, col, w)), true, nil
	}
	return 0, false, nil
}

// StaysBelow gives the time from which a place stays at or below a temperature for
// the rest of the stages; false if it is above it at their end. A face that a chill
// roller cools and the warm medium heats again is below only once it stays there.
func (c *Cooling) StaysBelow(p Place, limit quantity.Temperature) (quantity.Time, bool, error) {
	col, err := c.column(p)
	if err != nil {
		return 0, false, err
	}
	w, last := float64(limit), len(c.samples)-1
	if c.samples[last].value[col] > w {
		return 0, false, nil
	}
	for i := last; i > 0; i-- {
		if c.samples[i-1].value[col] > w {
			return quantity.Time(c.crossing(i, col, w)), true, nil
		}
	}
	return 0, true, nil
}

// crossing finds, within the step that ends at sample i, where a value passes w.
func (c *Cooling) crossing(i, col int, w float64) float64 {
	low, high := c.samples[i-1].time, c.samples[i].time
	for range 60 {
		middle := (low + high) / 2
		if c.between(i, col, middle) > w {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}

// spread is how far the layers' means lie apart in a sample.
func (c *Cooling) spread(s sample) float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, v := range s.value[:len(c.layers)] {
		low, high = min(low, v), max(high, v)
	}
	return high - low
}

// Widest says how far the layers' mean temperatures lie apart where they lie farthest
// apart, and when.
func (c *Cooling) Widest() (quantity.TemperatureDifference, quantity.Time) {
	widest, at := -1.0, 0.0
	for _, s := range c.samples {
		if d := c.spread(s); d > widest {
			widest, at = d, s.time
		}
	}
	return quantity.TemperatureDifference(widest), quantity.Time(at)
}

// Meets gives the time (to a step, a twentieth of itself) from which all layers' mean
// temperatures stay within a span of each other; false if they are apart at the end.
func (c *Cooling) Meets(within quantity.TemperatureDifference) (quantity.Time, bool) {
	last := len(c.samples) - 1
	if c.spread(c.samples[last]) > float64(within) {
		return 0, false
	}
	for i := last; i > 0; i-- {
		if c.spread(c.samples[i-1]) > float64(within) {
			return quantity.Time(c.samples[i].time), true
		}
	}
	return 0, true
}
