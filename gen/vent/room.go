package vent

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Flow is a flow of air in cubic metres per second.
type Flow float64

// Room is the room that the prints dry in.
type Room struct {
	// Volume is that of the free air.
	Volume quantity.Volume
	// AirChanges is the fresh air: how often it fills the room. Air that only goes round
	// is none. 0 is a closed room.
	AirChanges quantity.Rate
	// Mixing is the factor K: 1 for perfect mixing, to 10 for very poor.
	Mixing float64
}

// mostMixing is the poorest mixing that is spoken of.
const mostMixing = 10

func (r Room) check() error {
	if !positive(float64(r.Volume)) || !notNegative(float64(r.AirChanges)) {
		return fmt.Errorf("a room of %g m³ with %g air changes a second: the volume must be above 0, the air changes 0 or more", float64(r.Volume), float64(r.AirChanges))
	}
	if !(r.Mixing >= 1 && r.Mixing <= mostMixing) {
		return fmt.Errorf("a mixing factor of %g: it must be from 1 (perfect) to %d (very poor)", r.Mixing, mostMixing)
	}
	return nil
}

// Fresh is the flow of fresh air, Q = n·V.
func (r Room) Fresh() Flow { return Flow(float64(r.AirChanges) * float64(r.Volume)) }

// decay is λ = Q/(K·V), 1/s.
func (r Room) decay() float64 { return float64(r.AirChanges) / r.Mixing }

// Steady gives the concentration that a steady emission, in kg/s, comes to.
//
//	C = K·E/Q      ACGIH, Industrial Ventilation (from memory)
func (r Room) Steady(emission float64) (quantity.Density, error) {
	if err := r.check(); err != nil {
		return 0, err
	}
	if !notNegative(emission) {
		return 0, fmt.Errorf("an emission of %g kg/s: it must be 0 or more", emission)
	}
	if r.AirChanges == 0 {
		return 0, fmt.Errorf("a closed room never comes to a steady concentration")
	}
	return quantity.Density(r.Mixing * emission / float64(r.Fresh())), nil
}

// FreshAir gives the flow of fresh air that keeps a steady emission, in kg/s, at a
// concentration: Q = K·E/C.
func FreshAir(emission float64, mixing float64, at quantity.Density) (Flow, error) {
	if !notNegative(emission) || !(mixing >= 1 && mixing <= mostMixing) || !positive(float64(at)) {
		return 0, fmt.Errorf("fresh air for %g kg/s at %g kg/m³ with a mixing factor of %g: the emission must be 0 or more, the concentration above 0, the factor from 1 to %d",
			emission, float64(at), mixing, mostMixing)
	}
	return Flow(mixing * emission / float64(at)), nil
}

// Purge gives the time in which the concentration falls to a share of itself once
// nothing is given off any more.
//
//	t = K·ln(C₀/C)/n      MMWR 43 (RR-13), 1994, Table S3-1
func (r Room) Purge(share quantity.Fraction) (quantity.Time, error) {
	if err := r.check(); err != nil {
		return 0, err
	}
	if !(share > 0 && share <= 1) || r.AirChanges == 0 {
		return 0, fmt.Errorf("purging to %g with %g air changes a second: the share must be above 0 and at most 1, the air changes above 0", float64(share), float64(r.AirChanges))
	}
	return quantity.Time(-math.Log(float64(share)) / r.decay()), nil
}
