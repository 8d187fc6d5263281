package vent

import (
	"fmt"

	"laydown/gen/quantity"
)

// Bounds say how much of the limits the prints may take.
type Bounds struct {
	// Exposure is the share of the mixture's limit that the worst average of a shift may
	// reach: 0.5 is a common target, since 1 leaves nothing to anything else.
	Exposure quantity.Fraction
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
	if !(b.Exposure > 0 && b.Exposure <= 1) || !(b.Explosive >= 0 && b.Explosive <= 1) || !notNegative(float64(b.Standing)) {
		return fmt.Errorf("bounds of %g of the exposure limit and %g of the explosive limit, with %g kg/m³ in the air: the first must be above 0 and at most 1, the second from 0 to 1, the last 0 or more",
			float64(b.Exposure), float64(b.Explosive), float64(b.Standing))
	}
	return nil
}

// What a Bearing can be limited by.
const (
	ByExposure  = "exposure limit"
	ByExplosive = "lower explosive limit"
)

// Trace is what a load leaves in a room's air, above what stands there.
type Trace struct {
	// Area is that of all the load's prints.
	Area quantity.Area
	// Average is the worst average over Shift, AverageFrom when that begins.
	Average     quantity.Density
	AverageFrom quantity.Time
	Shift       quantity.Time
	// Peak is the highest concentration, Peaks when that is.
	Peak  quantity.Density
	Peaks quantity.Time
}

// Bearing is what a room bears, with its working.
type Bearing struct {
	Trace // of the load as asked
	// Exposure and Explosive are the shares of the limits that it comes to.
	Exposure, Explosive quantity.Fraction
	// Scale multiplies the areas of the load asked about. It is 0 where the air holds
	// as much as it may before any print dries.
	Scale float64
	// Bears is the area of all its prints then.
	Bears quantity.Area
	// By is the bound that came first: ByExposure or ByExplosive.
	By string
}

// Leaves follows a load until its last print has given everything off, and for a shift
// at least; a shift of 0 is 8 h.
func (r Room) Leaves(l Load, shift quantity.Time) (Trace, error) {
	if shift == 0 {
		shift = 8 * quantity.Hour
	}
	if !positive(float64(shift)) {
		return Trace{}, fmt.Errorf("an average over %g s: it must be above 0", float64(shift))
	}
	if err := l.check(); err != nil {
		return Trace{}, err
	}
	area, last := l.whole()
	if area == 0 {
		return Trace{}, fmt.Errorf("a load of no area has nothing to be scaled")
	}
	h, err := r.Over(l, 0, last+l.Emission[len(l.Emission)-1].Time+shift)
	if err != nil {
		return Trace{}, err
	}
	out := Trace{Area: area, Shift: shift}
	if out.Average, out.AverageFrom, err = h.WorstAverage(shift); err != nil {
		return Trace{}, err
	}
	out.Peak, out.Peaks = h.Peak()
	return out, nil
}

// Bears gives how many times the load a room can bear within bounds, before anything
// else in the room: concentrations are in proportion to the areas.
//
// It is never a permit. See the package's caution.
func (t Trace) Bears(mixture []Component, b Bounds) (Bearing, error) {
	if err := b.check(); err != nil {
		return Bearing{}, err
	}
	out := Bearing{Trace: t, By: ByExposure}
	var err error
	if out.Exposure, err = Exposure(t.Average, mixture); err != nil {
		return Bearing{}, err
	}
	if out.Explosive, err = Explosive(t.Peak, mixture, b.Temperature, b.Pressure); err != nil {
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
	out.Scale = float64((b.Exposure - exposed) / out.Exposure)
	if b.Explosive > 0 && out.Explosive > 0 {
		if scale := float64((b.Explosive - ignites) / out.Explosive); scale < out.Scale {
			out.Scale, out.By = scale, ByExplosive
		}
	}
	out.Scale = max(out.Scale, 0)
	out.Bears = quantity.Area(out.Scale) * t.Area
	return out, nil
}
