package book

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"laydown/gen/tables"
)

// roomOf reads a room that a block names.
func (b *builder) roomOf(a asked, key, otherwise string) (string, bool) {
	id, ok := a.Keys[key]
	if !ok {
		return otherwise, true
	}
	if b.shop.Room(id) == nil {
		b.unknown(a.where(key), "rooms", "room", id)
		return "", false
	}
	return id, true
}

// computedStackBorder draws how the border of a stack goes on.
func (b *builder) computedStackBorder(a asked) template.HTML {
	from, ok := b.roomOf(a, "from-room", b.shop.Front.Room.ID)
	to, also := b.roomOf(a, "to-room", b.shop.Front.Room.ID)
	if !ok || !also {
		return ""
	}
	v, ok := b.stacks.get(tables.StackCase{Medium: a.medium.ID, From: from, To: to})
	switch {
	case !b.answers.Stacks(a.medium):
		b.problems.add(a.where("medium"), a.medium.ID+" makes no stack whose water is known: it needs sheets, fibre and an open back")
	case !ok:
		b.problems.add(a.where("to-room"), fmt.Sprintf("nothing moves: %s and %s have the same relative humidity", from, to))
	default:
		return b.drawStack(a.ID, v)
	}
	return ""
}

// computedAcclimatise is how long paper stays wrapped: a medium's parcels, or one parcel
// of every medium.
func (b *builder) computedAcclimatise(a asked) template.HTML {
	parcel := a.Keys["parcel"]
	if parcel != "" && !slices.Contains(tables.Parcels, parcel) {
		b.problems.add(a.where("parcel"), fmt.Sprintf("parcel: %q is none of %s", parcel, strings.Join(tables.Parcels, ", ")))
		return ""
	}
	if a.medium == nil {
		_, wrapped := b.stacks.media(b.shop.Media, b.answers)
		if parcel == "" {
			parcel = tables.Pallet
		}
		g := b.parcelGrid(wrapped, parcel)
		g.ID, g.Caption = a.ID, a.title(g.Caption)
		return b.part("grid", g)
	}
	g, ok := b.wrappedOf(a.medium)
	if !ok {
		b.problems.add(a.where("medium"), a.medium.ID+" comes in no parcel whose heat is known: it needs sheets, a conductivity and a specific heat")
		return ""
	}
	if parcel != "" {
		g.Rows = slices.DeleteFunc(g.Rows, func(r gridRow) bool { return r.Name != parcelWords[parcel].name })
	}
	g.ID, g.Caption = a.ID, a.title(lowerFirst(a.medium.Name)+": "+lowerFirst(g.Caption))
	return b.part("grid", g)
}

// computedDriven is the teaching drawing of moisture driven ahead.
func (b *builder) computedDriven(a asked) template.HTML {
	from, ok := b.roomOf(a, "from-room", "")
	if !ok {
		return ""
	}
	for _, v := range b.stacks.driven {
		if v.Medium == a.medium.ID && (from == "" || v.From == from) {
			return b.drawDriven(a.ID, v)
		}
	}
	b.problems.add(a.where("medium"), fmt.Sprintf("nothing is driven ahead on %s: it needs a stack, a hot film with a window on it, and a room damper than the shop's", a.medium.ID))
	return ""
}
