package tables

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// WaitMove is how far a computed wait moves when one input goes from the low to the
// high end of its spread, the others staying. What is anchored on the maker's wait is
// solved anew at each end: a load that is twice as high does not make the wait twice as
// long, because the maker's own print had it too.
type WaitMove struct {
	Input string
	// Waits are the computed waits at the input's low and high end.
	Waits [2]quantity.Time
	// Dries is false where the print hardly dries, Solved where nothing meets the
	// maker's wait, so that no wait can be told.
	Dries, Solved [2]bool
}

// Size is the factor between the two waits, at least 1; +Inf where one of them is none.
func (m WaitMove) Size() float64 {
	for i := range m.Waits {
		if !m.Dries[i] || !m.Solved[i] {
			return math.Inf(1)
		}
	}
	low, high := min(m.Waits[0], m.Waits[1]), max(m.Waits[0], m.Waits[1])
	switch {
	case low == high:
		return 1
	case low == 0:
		return math.Inf(1)
	}
	return float64(high / low)
}

// inputs are copies of the records that a wait is computed from.
type inputs struct {
	ink         shop.Ink
	evaporation shop.Evaporation
	reaction    shop.Reaction
	toner       shop.Toner
	carrier     shop.Carrier
	point       shop.VapourPoint
	medium      shop.Medium
	drying      shop.LayerDrying
	room        shop.Room
	storage     shop.Storage
}

// copied copies the records of a print; groups that they lack stay empty.
func (t *Tables) copied(r printed) *inputs {
	in := &inputs{ink: *r.ink, medium: *r.medium, room: *r.room, storage: *r.storage}
	if e := r.ink.Evaporation; e != nil {
		in.evaporation, in.carrier = *e, *t.shop.Carrier(e.Carrier.ID)
		in.ink.Evaporation = &in.evaporation
	}
	if k := r.ink.Reaction; k != nil {
		in.reaction = *k
		in.ink.Reaction = &in.reaction
	}
	if n := r.ink.Toner; n != nil {
		in.toner = *n
		in.ink.Toner = &in.toner
	}
	if p := in.carrier.VapourPoint; p != nil {
		in.point = *p
		in.carrier.VapourPoint = &in.point
	}
	if d := r.medium.Drying; d != nil {
		in.drying = *d
		in.medium.Drying = &in.drying
	}
	return in
}

// inputSpread is one value of the copies that has a spread.
type inputSpread struct {
	name string
	has  bool
	set  func(end float64)
}

// spread makes an inputSpread of a value.
func spread[Q quantity.Quantity](name string, v *shop.Value[Q]) inputSpread {
	return inputSpread{name, spreads(*v), func(end float64) { toEnd(v, end) }}
}

// spreads are all values that a wait may depend on.
func (in *inputs) spreads(coverage string) []inputSpread {
	share := map[string]*shop.Value[quantity.Fraction]{"light": &in.ink.Coverage.Light, "normal": &in.ink.Coverage.Normal, "heavy": &in.ink.Coverage.Heavy}[coverage]
	return []inputSpread{
		spread("the maker's wait", &in.ink.Makers.Wait),
		spread("what "+coverage+" coverage lays down", share),
		spread("carrier in a fresh print", &in.evaporation.Load),
		spread("carrier that may be left", &in.evaporation.Safe),
		spread("concentration that saturates the air", &in.evaporation.Saturation),
		spread("activation energy of diffusion", &in.evaporation.Activation),
		spread("vapour pressure of the carrier", &in.point.Pressure),
		spread("heat of vaporisation of the carrier", &in.point.Heat),
		spread("diffusivity of its vapour in air", &in.carrier.InAir),
		spread("activation energy of hardening", &in.reaction.Activation),
		spread("share that may be unreacted", &in.reaction.Unreacted),
		spread("the rule's hours for any sheet", &in.toner.Base),
		spread("layer that takes the carrier up", &in.drying.Absorbs),
		spread("mobility of a carrier in the medium", &in.drying.Mobility),
		spread("resistance of the medium's back", &in.drying.BackResistance),
		spread("temperature of the room", &in.room.Temperature),
		spread("humidity of the room", &in.room.Humidity),
		spread("movement of the room's air", &in.room.AirSpeed),
		spread("carrier vapour in the room", &in.room.Vapour),
		spread("movement of the air where it is kept", &in.storage.AirSpeed),
		spread("length along the air's way", &in.storage.Length),
		spread("gap between wraps or sheets", &in.storage.Gap),
		spread("draught through a loose roll", &in.storage.Draught),
		spread("oxygen where it is kept", &in.storage.Oxygen),
	}
}

// WaitSpread moves each input of a wait through its spread. The one that moves the
// computed wait most comes first: measure that one first. Inputs that do not move it by
// a hundredth are left out.
func (t *Tables) WaitSpread(c WaitCase) ([]WaitMove, error) {
	r, err := t.resolve(c)
	if err != nil {
		return nil, err
	}
	var moves []WaitMove
	for i, input := range t.copied(r).spreads(c.Coverage) {
		if !input.has {
			continue
		}
		m := WaitMove{Input: input.name}
		for k, end := range []float64{-1, 1} {
			in := t.copied(r)
			in.spreads(c.Coverage)[i].set(end)
			if err := t.waitOf(c, in, &m, k); err != nil {
				return nil, fmt.Errorf("%s: %w", input.name, err)
			}
		}
		if m.Size() > 1.01 {
			moves = append(moves, m)
		}
	}
	slices.SortStableFunc(moves, func(a, b WaitMove) int { return cmp.Compare(b.Size(), a.Size()) })
	return moves, nil
}

// waitOf computes a wait in a shop that has the changed records in the place of its own.
func (t *Tables) waitOf(c WaitCase, in *inputs, m *WaitMove, k int) error {
	if in.ink.Toner == nil && in.ink.Makers.Wait.Best == 0 {
		m.Dries[k], m.Solved[k] = true, true // ready at once, says the maker: there is nothing to solve
		return nil
	}
	changed := *t.shop
	changed.Inks = replaced(t.shop.Inks, t.shop.Ink(c.Ink), &in.ink)
	changed.Media = replaced(t.shop.Media, t.shop.Medium(c.Medium), &in.medium)
	changed.Rooms = replaced(t.shop.Rooms, t.shop.Room(c.Room), &in.room)
	changed.Storages = replaced(t.shop.Storages, t.shop.Storage(c.Storage), &in.storage)
	if e := in.ink.Evaporation; e != nil {
		changed.Carriers = replaced(t.shop.Carriers, t.shop.Carrier(e.Carrier.ID), &in.carrier)
	}
	there := &Tables{shop: &changed, pressure: t.pressure, anchors: map[string]anchor{}}
	a, _, err := there.anchor(&in.ink)
	if err != nil {
		return err
	}
	there.anchors[c.Ink] = a
	v, err := there.Wait(c)
	m.Waits[k], m.Dries[k], m.Solved[k] = v.Computed, v.Dries, a.solved
	return err
}

// replaced is a list of records with one in the place of another.
func replaced[T any](list []*T, old, new *T) []*T {
	list = slices.Clone(list)
	list[slices.Index(list, old)] = new
	return list
}
