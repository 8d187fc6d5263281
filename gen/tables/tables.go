package tables

import (
	"fmt"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Tables answers every question of the handbook for one shop. It is made by
// New and safe for concurrent use.
type Tables struct {
	shop     *shop.Shop
	pressure quantity.Pressure  // of the shop's air, from its altitude
	anchors  map[string]anchor  // by ink id: what its maker's wait was solved for
	places   map[string]float64 // by film id: where in their bands its contacts stand
	warnings []Warning
	gases    gasLimits
	// What several tables, the workings and the plan ask for again.
	nipped memo[LaminateCase, laminated]
	nips   memo[nipKey, nipState]
	joined memo[laminateGrain, *bare]
	cooled memo[LaminateCase, CoolingValue]
	keys   memo[string, FaultKey] // of families, without a job's numbers
}

// Warning is something that the shop's data says which the physics doubts, or
// the other way about. The handbook shows it; it does not stop a publish.
type Warning struct {
	Ink  string // id; empty where it is about a film
	Film string // id
	Text string
}

// New makes the tables of a shop: it solves what is anchored on the makers'
// figures.
func New(s *shop.Shop) (*Tables, error) {
	p, err := airPressure(s)
	if err != nil {
		return nil, err
	}
	t := &Tables{shop: s, pressure: p, anchors: map[string]anchor{}, places: map[string]float64{}}
	for _, ink := range s.Inks {
		a, warnings, err := t.anchor(ink)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", ink.ID, err)
		}
		t.anchors[ink.ID] = a
		t.warnings = append(t.warnings, warnings...)
	}
	for _, film := range s.Films {
		place, warnings, err := t.anchorHeat(film)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", film.ID, err)
		}
		t.places[film.ID] = place
		t.warnings = append(t.warnings, warnings...)
	}
	return t, nil
}

// Shop returns the shop that the tables are made of.
func (t *Tables) Shop() *shop.Shop { return t.shop }

// Warnings returns what the makers' figures and the physics disagree on.
func (t *Tables) Warnings() []Warning { return t.warnings }
