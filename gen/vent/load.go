package vent

import (
	"fmt"
	"slices"

	"laydown/gen/quantity"
)

// AreaRate is how much is printed in a time, in square metres per second.
type AreaRate float64

// Batch is an area of print that begins to dry at once.
type Batch struct {
	At   quantity.Time
	Area quantity.Area
}

// Run is printing that goes on evenly from one time to another.
type Run struct {
	From, To quantity.Time
	Rate     AreaRate
}

// Load is what prints give off into a room. All its prints have the same emission.
type Load struct {
	Emission Emission
	Batches  []Batch
	Runs     []Run
}

func (l Load) check() error {
	if err := l.Emission.check(); err != nil {
		return err
	}
	if len(l.Batches)+len(l.Runs) == 0 {
		return fmt.Errorf("a load of no prints")
	}
	for _, b := range l.Batches {
		if !notNegative(float64(b.Area)) || !notNegative(float64(b.At)) {
			return fmt.Errorf("a batch of %g m² at %g s: both must be 0 or more", float64(b.Area), float64(b.At))
		}
	}
	for _, r := range l.Runs {
		if !notNegative(float64(r.Rate)) || !notNegative(float64(r.From)) || !(r.To > r.From) || !notNegative(float64(r.To)) {
			return fmt.Errorf("a run of %g m²/s from %g s to %g s: it must end after it begins, and not be below 0", float64(r.Rate), float64(r.From), float64(r.To))
		}
	}
	return nil
}

// whole is the area of all the prints, and when the last of them begins to dry.
func (l Load) whole() (area quantity.Area, last quantity.Time) {
	for _, b := range l.Batches {
		last = max(last, b.At)
		area += b.Area
	}
	for _, r := range l.Runs {
		last = max(last, r.To)
		area += quantity.Area(float64(r.Rate) * float64(r.To-r.From))
	}
	return area, last
}

// breaks are the times between which the room's emission is one parabola: rising,
// without doubles, from 0 to end.
func (l Load) breaks(end float64) []float64 {
	times := []float64{0, end}
	add := func(at quantity.Time) {
		for _, p := range l.Emission {
			if t := float64(at + p.Time); t > 0 && t < end {
				times = append(times, t)
			}
		}
	}
	for _, b := range l.Batches {
		add(b.At)
	}
	for _, r := range l.Runs {
		add(r.From)
		add(r.To)
		for _, t := range [...]quantity.Time{r.From, r.To} {
			if float64(t) > 0 && float64(t) < end {
				times = append(times, float64(t))
			}
		}
	}
	slices.Sort(times)
	return slices.Compact(times)
}

// at is the room's emission in kg/s at t, by the pieces that hold at an inner time.
func (l Load) at(inner, t float64) float64 {
	sum := 0.0
	for _, b := range l.Batches {
		at := float64(b.At)
		sum += float64(b.Area) * l.Emission.at(inner-at, t-at)
	}
	for _, r := range l.Runs {
		// What is printed between From and To gives off now what a square metre gave
		// off between the ages t − To and t − From.
		old, young := t-float64(r.From), t-float64(r.To)
		if inner > float64(r.From) {
			sum += float64(r.Rate) * float64(l.Emission.until(quantity.Time(old)))
		}
		if inner > float64(r.To) {
			sum -= float64(r.Rate) * float64(l.Emission.until(quantity.Time(young)))
		}
	}
	return sum
}

// scaled is the load with all its areas multiplied.
func (l Load) scaled(by float64) Load {
	out := Load{Emission: l.Emission, Batches: slices.Clone(l.Batches), Runs: slices.Clone(l.Runs)}
	for i := range out.Batches {
		out.Batches[i].Area *= quantity.Area(by)
	}
	for i := range out.Runs {
		out.Runs[i].Rate *= AreaRate(by)
	}
	return out
}
