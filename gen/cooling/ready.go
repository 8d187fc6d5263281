package cooling

import (
	"fmt"

	"laydown/gen/quantity"
)

// Limits say how cool a laminate must be for what comes next.
type Limits struct {
	// Touch is the temperature at which faces may be touched (see BurnThreshold).
	Touch quantity.Temperature
	// Stack is that at which the laminate may lie in a stack. Within 5 K of the room
	// is published trade advice against blocking.
	Stack quantity.Temperature
	// Set is the temperature at which the adhesive has set, and Margin how far below
	// it must be to be cut without creep.
	Set    quantity.Temperature
	Margin quantity.TemperatureDifference
	// Adhesives are the numbers of the adhesive layers.
	Adhesives []int
}

// When is a time, if it comes.
type When struct {
	Time quantity.Time
	// Comes is false where the stages end before it.
	Comes bool
	// Until is the temperature waited for, Last what the place waited for has at the
	// end of the stages.
	Until, Last quantity.Temperature
}

// Ready says when a laminate may be touched, stacked and trimmed: the times from which
// it stays cool enough for the rest of the stages.
type Ready struct {
	Touch, Stack, Trim When
}

// Ready gives these times.
func (c *Cooling) Ready(l Limits) (Ready, error) {
	var r Ready
	var err error
	if r.Touch, err = c.when(l.Touch, Face, Back); err != nil {
		return r, fmt.Errorf("touch: %w", err)
	}
	all := []Place{Face, Back}
	for i := range c.layers {
		all = append(all, Place(i))
	}
	if r.Stack, err = c.when(l.Stack, all...); err != nil {
		return r, fmt.Errorf("stack: %w", err)
	}
	if len(l.Adhesives) == 0 {
		return r, fmt.Errorf("trim: no adhesive layer is named")
	}
	if !notNegative(float64(l.Margin)) {
		return r, fmt.Errorf("trim: a margin of %g K: it must be 0 or more", float64(l.Margin))
	}
	var glue []Place
	for _, a := range l.Adhesives {
		if a < 0 || a >= len(c.layers) {
			return r, fmt.Errorf("trim: there is no layer %d", a)
		}
		glue = append(glue, Place(a))
	}
	if r.Trim, err = c.when(l.Set-quantity.Temperature(l.Margin), glue...); err != nil {
		return r, fmt.Errorf("trim: %w", err)
	}
	return r, nil
}

// when gives the time from which all places stay below a temperature.
func (c *Cooling) when(limit quantity.Temperature, places ...Place) (When, error) {
	if !positive(float64(limit)) {
		return When{}, fmt.Errorf("a limit of %g K: it must be above 0", float64(limit))
	}
	w := When{Comes: true, Until: limit}
	end := c.samples[len(c.samples)-1]
	for _, p := range places {
		t, comes, err := c.StaysBelow(p, limit)
		if err != nil {
			return When{}, err
		}
		col, _ := c.column(p)
		w.Last = max(w.Last, quantity.Temperature(end.value[col]))
		w.Comes = w.Comes && comes
		w.Time = max(w.Time, t)
	}
	if !w.Comes {
		w.Time = 0
	}
	return w, nil
}
