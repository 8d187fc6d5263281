package vent

import (
	"fmt"

	"laydown/gen/quantity"
)

// Bounds say how much of the limits the prints may take.
type Bounds struct {
	// Exposure is the share of the mixture's limit that the worst average over Shift may
	// reach: 0.5 is a common target, since 1 leaves nothing to anything else.
	Exposure quantity.Fraction
	// Shift is the time the limit is an average over; 0 is 8 h.
	Shift quantity.Time
	// Explosive is the share of the lower explosive limit that the peak may reach; 0
	// leaves it out. A tenth sounds alarms, a quarter is a usual bound for ovens (from
	// memory); a room is far below either.
	Explosive quantity.Fraction
	// Standing is the concentration of the same mixture that the air holds whatever
	// dries in it: from printers beside the prints. It is taken off both bounds.
	Standing quantity.Density
	// Temperature and Pressure of the air.
	Temperature quantity.Temperature
	Pressure    quantity.Pressure
}

func (b Bounds) check() error {
	if !(b.Exposure > 0 && b.Exposure <= 1) || !(b.Explosive >= 0 && b.Explosive <= 1) || !positive(float64(b.Shift)) || !notNegative(float64(b.Standing)) {
		return fmt.Errorf("bounds of %g of the exposure limit over %g s and %g of the explosive limit, with %g kg/m³ in the air: the first must be above 0 and at most 1, the second above 0, the third from 0 to 1, the last 0 or more",
			float64(b.Exposure), float64(b.Shift), float64(b.Explosive), float64(b.Standing))
	}
	return nil
}

// What a Bearing can be limited by.
const (
	ByExposure  = "exposure limit"
	ByExplosive = "lower explosive limit"
)

// Bearing is what a room bears, with its working.
type Bearing struct {
	// Scale multiplies the areas of the load asked about. It is 0 where the air holds
	// as much as it may before any print dries.
	Scale float64
	// Area is that of all its prints then.
	Area quantity.Area
	// By is the bound that came first: ByExposure or ByExplosive.
	By string
	// Of the load as asked, above what stands in the air: worst average, when that
	// begins, peak, when that is, and the shares of the limits that they come to.
	Average, Peak      quantity.Density
	AverageFrom, Peaks quantity.Time
	Exposure           quantity.Fraction
	Explosive          quantity.Fraction
}

// Bears gives how many times the load a room can bear within bounds, before anything
// else in the room: concentrations are in proportion to the areas. The load is followed
// until its last print has given everything off, and for a shift at least.
//
// It is never a permit. See the package's caution.
func (r Room) Bears(l Load, mixture []Component, b Bounds) (Bearing, error) {
	if b.Shift == 0 {
		b.Shift = 8 * quantity.Hour
	}
	if err := b.check(); err != nil {
		return Bearing{}, err
	}
	if err := l.check(); err != nil {
		return Bearing{}, err
	}
	area, last := l.whole()
	if area == 0 {
		return Bearing{}, fmt.Errorf("a load of no area has nothing to be scaled")
	}
	h, err := r.Over(l, 0, last+l.Emission[len(l.Emission)-1].Time+b.Shift)
	if err != nil {
		return Bearing{}, err
	}
	var out Bearing
	if out.Average, out.AverageFrom, err = h.WorstAverage(b.Shift); err != nil {
		return Bearing{}, err
	}
	out.Peak, out.Peaks = h.Peak()
	if out.Exposure, err = Exposure(out.Average, mixture); err != nil {
		return Bearing{}, err
	}
	if out.Explosive, err = Explosive(out.Peak, mixture, b.Temperature, b.Pressure); err != nil {
		return Bearing{}, err
	}
	exposed, err := Exposure(b.Standing, mixture)
	if err != nil {
		return Bearing{}, err
	}
	ignites, err := Explosive(b.Standing, mixture, b.Temperature, b.Pressure)
	if err != nil {
		return Bearing{}, err
	}
	out.Scale, out.By = float64((b.Exposure-exposed)/out.Exposure), ByExposure
	if b.Explosive > 0 && out.Explosive > 0 {
		if scale := float64((b.Explosive - ignites) / out.Explosive); scale < out.Scale {
			out.Scale, out.By = scale, ByExplosive
		}
	}
	out.Scale = max(out.Scale, 0)
	out.Area = quantity.Area(out.Scale) * area
	return out, nil
}
