package tables

import (
	"errors"
	"fmt"

	"laydown/gen/drying"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// law is how one ink on one medium gets ready with time.
type law interface {
	// fresh is the print as it leaves the printer.
	fresh(coverage string) state
	// steps are the lines of the working for a wait in a place.
	steps(coverage string, p place) (Working, error)
	// transfer reports whether the law rests on another medium's figure.
	transfer() bool
	// limit is what may be left, in unit.
	limit() (value float64, unit string)
}

// state is a print part of the way.
type state interface {
	// march lets a time pass in a place.
	march(p place, t quantity.Time) (state, error)
	// until returns the further time in a place until no more than the limit
	// is left; false where that takes longer than HardlyDries.
	until(p place) (quantity.Time, bool, error)
	// left is what is left, in the unit of the law's limit.
	left() float64
}

// anchor is what an ink's maker's wait was solved for.
type anchor struct {
	diffusivity quantity.Diffusivity // evaporation: in the reference medium, at the maker's temperature
	rate        quantity.Rate        // oxidation, radiation: at the maker's temperature, hung
	solved      bool                 // something meets the maker's wait; otherwise a stand-in is used
}

// anchor solves an ink's own constant from its maker's wait.
func (t *Tables) anchor(ink *shop.Ink) (anchor, []Warning, error) {
	switch ink.Dries {
	case "evaporation":
		return t.anchorEvaporation(ink)
	case "oxidation", "radiation":
		return t.anchorReaction(ink)
	}
	return anchor{solved: true}, nil, nil
}

// law returns how an ink dries on a medium. limit, where it is set, takes the
// place of the ink's own safe residue (a film may ask for less).
func (t *Tables) law(ink *shop.Ink, medium *shop.Medium, safe shop.Value[quantity.Grammage]) (law, error) {
	a := t.anchors[ink.ID]
	switch ink.Dries {
	case "evaporation":
		if medium.Drying == nil {
			return nil, fmt.Errorf("%s says nothing of drying", medium.ID)
		}
		e := evaporation{t, ink, t.shop.Carrier(ink.Evaporation.Carrier.ID), medium, a.diffusivity, t.shop.Medium(ink.Makers.Medium.ID)}
		l := evaporating{e, ink.Evaporation.Safe.Best}
		if safe.Set {
			l.safe = safe.Best
		}
		return l, nil
	case "oxidation", "radiation":
		return reacting{ink, a.rate}, nil
	}
	return toner{t, ink, medium}, nil
}

// evaporating is the law of an ink whose carrier leaves by evaporation.
type evaporating struct {
	evaporation
	safe quantity.Grammage
}

func (l evaporating) fresh(coverage string) state {
	return evaporatingState{l, drying.Fresh(l.load(coverage))}
}

func (l evaporating) transfer() bool { return l.medium.ID != l.refMedium.ID }

func (l evaporating) limit() (float64, string) { return grams(l.safe), "g/m²" }

type evaporatingState struct {
	law   evaporating
	state drying.State
}

func (s evaporatingState) march(p place, t quantity.Time) (state, error) {
	slab, err := s.law.in(p)
	if err != nil {
		return nil, err
	}
	next, err := s.state.March(slab.Setting, t)
	if err != nil {
		return nil, err
	}
	return evaporatingState{s.law, next}, nil
}

func (s evaporatingState) until(p place) (quantity.Time, bool, error) {
	slab, err := s.law.in(p)
	if err != nil {
		return 0, false, err
	}
	return reached(s.state.Until(slab.Setting, s.law.safe, HardlyDries))
}

func (s evaporatingState) left() float64 { return grams(s.state.Amount()) }

func grams(g quantity.Grammage) float64 { return float64(g) * 1000 }

// reached turns "never" from an error into an answer.
func reached(t quantity.Time, err error) (quantity.Time, bool, error) {
	if errors.Is(err, drying.ErrNever) {
		return 0, false, nil
	}
	return t, err == nil, err
}

// noFilm asks for an ink's own safe residue.
var noFilm shop.Value[quantity.Grammage]
