package tables

import (
	"cmp"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/vent"
)

// vapourMoves moves each input of an area through its spread. The one that moves it most
// comes first: find that one out first.
func (t *Tables) vapourMoves(metre vent.Trace, p vapourPrint) ([]AreaMove, error) {
	var moves []AreaMove
	add := func(input string, at func(end float64) (quantity.Area, error)) error {
		low, err := at(-1)
		if err != nil {
			return err
		}
		high, err := at(1)
		if err != nil {
			return err
		}
		if low != high { // a limit that does not bind moves nothing
			moves = append(moves, AreaMove{input, low, high})
		}
		return nil
	}
	// What stays is what a square metre leaves in the air.
	bears := func(set func(p *vapourPrint, end float64)) func(end float64) (quantity.Area, error) {
		return func(end float64) (quantity.Area, error) {
			changed := p.copy()
			set(&changed, end)
			b, err := t.bearing(metre, changed)
			return b.Bears, err
		}
	}
	// The room's air changes what it leaves.
	follows := func(set func(p *vapourPrint, end float64)) func(end float64) (quantity.Area, error) {
		return func(end float64) (quantity.Area, error) {
			changed := p.copy()
			set(&changed, end)
			left, err := ventRoom(changed.room).Leaves(vent.Load{Emission: p.emission, Batches: []vent.Batch{{Area: 1}}}, shift)
			if err != nil {
				return 0, err
			}
			b, err := t.bearing(left, changed)
			return b.Bears, err
		}
	}
	load := p.ink.Evaporation.Load
	for _, in := range []struct {
		name string
		has  bool
		at   func(end float64) (quantity.Area, error)
	}{
		{"exposure limit", spreads(p.carrier.ExposureLimit), bears(func(p *vapourPrint, e float64) { toEnd(&p.carrier.ExposureLimit, e) })},
		{"lower explosive limit", spreads(p.carrier.LowerExplosive), bears(func(p *vapourPrint, e float64) { toEnd(&p.carrier.LowerExplosive, e) })},
		{"vapour already in the air", spreads(p.room.Vapour), bears(func(p *vapourPrint, e float64) { toEnd(&p.room.Vapour, e) })},
		{"air changes", spreads(p.room.AirChanges), follows(func(p *vapourPrint, e float64) { toEnd(&p.room.AirChanges, e) })},
		{"mixing, from perfect to very poor", true, follows(func(p *vapourPrint, e float64) { p.room.Mixing = 5.5 + 4.5*e })},
		// In a room without vapour what is given off is in proportion to what was there.
		{"carrier in the print", spreads(load), func(end float64) (quantity.Area, error) {
			moved := load
			toEnd(&moved, end)
			b, err := t.bearing(metre, p)
			return b.Bears * quantity.Area(load.Best/moved.Best), err
		}},
	} {
		if !in.has {
			continue
		}
		if err := add(in.name, in.at); err != nil {
			return nil, err
		}
	}
	slices.SortStableFunc(moves, func(a, b AreaMove) int { return cmp.Compare(b.size(), a.size()) })
	return moves, nil
}

// copy is the print with a room and a carrier of its own, to be changed.
func (p vapourPrint) copy() vapourPrint {
	room, carrier := *p.room, *p.carrier
	p.room, p.carrier = &room, &carrier
	return p
}
