package book

import (
	"fmt"
	"html/template"
	"strings"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// computedGrainFeed draws a sheet both ways round before the rollers.
func (b *builder) computedGrainFeed(a asked) template.HTML {
	return figure(draw.GrainFeed(a.ID), "Grain across the feed, parallel to the roller axes, and along the feed; from above.", "")
}

// computedGrainTests draws the tests that find the grain.
func (b *builder) computedGrainTests(a asked) template.HTML {
	return figure(draw.GrainTests(a.ID), "Four tests for grain, on a plain sheet without film. The short strokes are its fibres.", "")
}

// computedCurlAxes draws the two axes about which a laminate bends.
func (b *builder) computedCurlAxes(a asked) template.HTML {
	return figure(draw.CurlAxes(a.ID), "Which way it bends: note the axis, and the feed.", "")
}

// machineOf reads the machine that a block names.
func (b *builder) machineOf(a asked) *shop.Laminator {
	m := b.shop.Laminator(a.Keys["machine"])
	if m == nil {
		b.unknown(a.where("machine"), "laminators", "laminator", a.Keys["machine"])
	}
	return m
}

// computedNipWrap draws a machine's rollers from the side, to scale.
func (b *builder) computedNipWrap(a asked) template.HTML {
	m := b.machineOf(a)
	if m == nil {
		return ""
	}
	r := draw.Rollers{Diameter: float64(m.Diameter.Best), Cover: float64(m.CoverThickness.Best), Wrap: float64(m.Wrap.Best), Nip: float64(m.Nip.Best),
		DiameterText: quantity.Both(m.Diameter.Best), CoverText: quantity.Both(m.CoverThickness.Best), WrapText: quantity.Both(m.Wrap.Best), NipText: quantity.Both(m.Nip.Best)}
	if r.CoverOf = "cover"; b.shop.Substance(m.Cover.ID) != nil {
		r.CoverOf, _, _ = strings.Cut(lowerFirst(b.shop.Substance(m.Cover.ID).Name), ",")
	}
	title := a.title("Nip and wrap of the " + lowerFirst(short(m.Name)))
	return figure(draw.NipWrap(a.ID, title, r), title+", from its record. The lower roller is drawn as large as the upper.", "")
}

// computedRoll draws a new roll of a film from its end.
func (b *builder) computedRoll(a asked) template.HTML {
	if len(a.films) != 1 {
		b.problems.add(a.where("film"), "this computed block needs film: and one film")
		return ""
	}
	f := a.films[0]
	for _, r := range b.rolls.Films {
		if r.Film != f.ID || !r.Known || r.Full == 0 {
			continue
		}
		w := draw.Wound{Across: float64(r.Full), Core: float64(r.Wound.Core), AcrossText: quantity.Both(r.Full), CoreText: quantity.Both(r.Wound.Core),
			ThicknessText: quantity.Both(r.Wound.Thickness), LengthText: quantity.Both(r.Length)}
		title := a.title("A new roll of " + lowerFirst(f.Name))
		return figure(draw.Roll(a.ID, title, w), title+", from its record. Its diameter tells what is left on it.", "")
	}
	b.problems.add(a.where("film"), f.ID+" has no core or no length in its record: no roll can be drawn")
	return ""
}

// computedWetOut draws how far a film's adhesive comes down into a print.
func (b *builder) computedWetOut(a asked) template.HTML {
	m := b.machineOf(a)
	if m == nil {
		return ""
	}
	if len(a.films) != 1 {
		b.problems.add(a.where("film"), "this computed block draws one film")
		return ""
	}
	f := a.films[0]
	v, err := b.answers.Bond(tables.BondCase{Ink: a.ink.ID, LaminateCase: tables.LaminateCase{Film: f.ID, Medium: a.medium.ID, Laminator: m.ID, Room: a.room.ID}})
	if err != nil {
		b.problems.add(a.Pos, err.Error())
		return ""
	}
	width := a.ink.ReliefWidth.Best
	if v.Of == "medium" {
		width = a.medium.TextureWidth.Best
	}
	fills := []draw.Fill{{Name: "After the nip"}, {Name: "An hour later"}, {Name: "A day later"}}
	for i, share := range []quantity.Fraction{v.AfterNip, v.AfterHour, v.AfterDay} {
		fills[i].Share = float64(share)
		fills[i].Said = fmt.Sprintf("%.0f\u00a0%% filled", share.Percent())
	}
	title := a.title("How " + lowerFirst(f.Name) + " wets out " + a.print())
	return figure(draw.WetOut(a.ID, title, quantity.Both(v.Relief), quantity.Both(width), fills),
		fmt.Sprintf("%s in the %s: it %s. Shares by the best figure; relief and flow are known to a factor of a few.", title, lowerFirst(short(m.Name)), v.Class), "")
}
