package tables

import (
	"fmt"
	"math"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// pairing is a film on a medium in a machine at a speed: what one run of the
// nip's solver is for.
type pairing struct {
	film    *shop.Film
	medium  *shop.Medium
	machine *shop.Laminator
	speed   quantity.Speed
}

// freeRun is how long the web is followed in the air after the nip: long
// enough for the bond line to have its maximum and the face to cool.
const freeRun = 6 * quantity.Second

// contact gives a conductance inside its band: -1 is its low end, 0 its
// recommended value, 1 its high end, between them in proportion on a
// logarithmic scale.
func (t *Tables) contact(id string, place float64) quantity.Conductance {
	v := t.shop.Contact(id).Conductance
	best, end := float64(v.Best), float64(v.High)
	if place < 0 {
		end = float64(v.Low)
	}
	return quantity.Conductance(best * math.Pow(end/best, math.Abs(place)))
}

// pass describes a pairing to the nip's solver, with the contacts at a place in
// their bands.
func (t *Tables) pass(c pairing, place float64) (*nip.Pass, error) {
	m := c.medium
	if !knowsHeat(m) {
		return nil, fmt.Errorf("%s says nothing of its conductivity or specific heat", m.ID)
	}
	film := t.filmLayers(c.film)
	web, still := t.contact("moving-web", 0), t.contact("still-face", 0)
	air := nip.Exposure{Conductance: web, To: nip.Room}
	p := &nip.Pass{
		Film: film,
		Print: []nip.Layer{{
			Name: m.Name, Thickness: m.Thickness.Best, Conductivity: m.Conductivity.Best,
			Density: quantity.Density(float64(m.Grammage.Best) / float64(m.Thickness.Best)), SpecificHeat: m.SpecificHeat.Best,
		}},
		Speed: c.speed, Nip: c.machine.Nip.Best,
		Bond: t.contact("melt-on-print", place), OpenFace: still,
		After: []nip.Stage{{Time: freeRun, Face: air, Back: air}},
	}
	p.Upper = t.roller(c.machine, place, still)
	t.stretches(p, c, place)
	if c.machine.Heated == "both" {
		p.Lower = p.Upper
		if c.machine.TwoSided {
			p.LowerFilm, p.LowerBond = film, p.Bond
		} else {
			p.Lower.Wrap = 0
			p.Lower.NipContact = t.contact("print-on-lower", place)
		}
		return p, nil
	}
	p.Lower = nip.Roller{Core: nip.Lower, NipContact: t.contact("print-on-lower", place), Idle: still, Diameter: c.machine.Diameter.Best}
	if c.machine.LowerCover.ID != "" {
		p.Lower.Cover = t.layer(c.machine.LowerCover.ID, c.machine.LowerCoverThickness.Best)
	}
	return p, nil
}

// stretches adds what a machine has ahead of its nip and after it: a shoe that
// heats the film in place of the roller, a pre-heat of the print, a chill roller.
func (t *Tables) stretches(p *nip.Pass, c pairing, place float64) {
	contact, still := t.contact("film-on-roller", place), t.contact("still-face", 0)
	open := nip.Exposure{Conductance: still, To: nip.Room}
	over := func(s *shop.Stretch) quantity.Time { return quantity.Time(float64(s.Length.Best) / float64(c.speed)) }
	if s := c.machine.Shoe; s != nil {
		p.FilmBefore = []nip.Stage{{Time: over(s), Face: nip.Exposure{Conductance: contact, To: nip.Set}, Back: open}}
		p.Upper.Core, p.Upper.Insulated, p.Upper.Wrap = nip.Lower, p.Upper.Cover.Thickness > 0, 0
	}
	if s := c.machine.Preheat; s != nil {
		p.PrintBefore = []nip.Stage{{Time: over(s), Face: nip.Exposure{Conductance: contact, To: nip.Preheat}, Back: open}}
	}
	if s := c.machine.Chill; s != nil {
		chill := nip.Stage{Time: over(s), Face: nip.Exposure{Conductance: contact, To: nip.Chill}, Back: open}
		p.After = append([]nip.Stage{chill}, p.After...)
	}
}

func (t *Tables) roller(m *shop.Laminator, place float64, still quantity.Conductance) nip.Roller {
	r := nip.Roller{
		Diameter: m.Diameter.Best, Core: nip.Set, Wrap: m.Wrap.Best,
		WrapContact: t.contact("film-on-roller", place), NipContact: t.contact("film-in-nip", place), Idle: still,
	}
	if m.SensedAt == "surface" {
		r.Sensed = nip.AtSurface
	}
	if m.Cover.ID != "" && m.CoverThickness.Best > 0 {
		r.Cover = t.layer(m.Cover.ID, m.CoverThickness.Best)
	}
	return r
}

// filmLayers are a film's base and adhesive.
func (t *Tables) filmLayers(f *shop.Film) []nip.Layer {
	return []nip.Layer{t.layer(f.Base.ID, f.BaseThickness.Best), t.layer(f.Adhesive.ID, f.AdhesiveThickness.Best)}
}

func (t *Tables) layer(id string, thickness quantity.Length) nip.Layer {
	s := t.shop.Substance(id)
	return nip.Layer{Name: s.Name, Thickness: thickness, Conductivity: s.Conductivity.Best, Density: s.Density.Best, SpecificHeat: s.SpecificHeat.Best}
}

// temperatures are those of a run in a room, with the set temperature open.
func temperatures(m *shop.Laminator, room quantity.Temperature) nip.Temps {
	temps := nip.Same(room)
	if m.LowerRoller.Set {
		temps.Lower = m.LowerRoller.Best
	}
	if m.Preheat != nil {
		temps.Preheat = m.Preheat.Temperature.Best
	}
	if m.Chill != nil {
		temps.Chill = m.Chill.Temperature.Best
	}
	return temps
}
