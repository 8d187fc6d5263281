package book

import (
	"slices"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// laminatorPage is a machine: what it runs and its data.
func (b *builder) laminatorPage(m *shop.Laminator) materialPage {
	p := materialPage{Cautions: tables.MachineCautions(m)}
	p.Big = append(p.Big, bigQuantity("Takes up to", m.Width.Best, "across the rollers"))
	if m.SensedAt == "none" && m.Hottest.Best < 320 {
		p.Big = append(p.Big, bigQuantity("Warms to", m.Hottest.Best, "at most"))
	} else {
		p.Big = append(p.Big, bigQuantity("Sets to", m.Hottest.Best, "at most, sensed at the "+m.SensedAt))
	}
	p.Big = append(p.Big, bigQuantity("Usually runs at", m.Usual.Best, ""))
	l := list{Name: "Films it runs"}
	for _, f := range b.shop.Films {
		if slices.Contains(m.Films, f.Class) && slices.ContainsFunc(f.RunsOn, func(r shop.Ref) bool { return r.ID == m.ID }) {
			l.Items = append(l.Items, item{Text: upperFirst(f.Name), Href: "/materials/films/" + f.ID + ".html", Under: f.Class + ", " + quantity.Both(f.BaseThickness.Best+f.AdhesiveThickness.Best)})
		}
	}
	p.Lists = []list{l, b.markList(m)}
	if g, ok := b.windowsIn(m); ok {
		p.Grids = append(p.Grids, g)
	}
	p.Sheets = b.laminatorSheets(m)
	return p
}

func (b *builder) laminatorSheets(m *shop.Laminator) []*sheet {
	s := b.sheet("The machine", m.Head)
	s.word("class", m.Class)
	s.word("film classes", strings.Join(m.Films, ", "))
	s.word("takes", strings.Join(m.Forms, ", "))
	value(s, "widest that passes", m.Width)
	value(s, "thickest that passes", m.Opening)
	s.yes("films both sides in one pass", m.TwoSided)
	value(s, "slowest", m.Slowest)
	value(s, "usual speed", m.Usual)
	value(s, "fastest", m.Fastest)
	r := b.sheet("Its rollers", m.Head)
	value(r, "hottest set temperature", m.Hottest)
	r.word("sensed at", m.SensedAt)
	r.word("heated", m.Heated)
	value(r, "diameter", m.Diameter)
	if c := b.shop.Substance(m.Cover.ID); c != nil {
		r.word("cover", c.Name)
	}
	value(r, "thickness of the cover", m.CoverThickness)
	value(r, "film on the roller before the nip", m.Wrap)
	value(r, "length of the nip", m.Nip)
	value(r, "load on the nip", m.NipLoad)
	value(r, "an unheated lower roller settles at", m.LowerRoller)
	value(r, "warms up in", m.WarmUp)
	for _, other := range m.Rollers {
		value(r, "diameter of the "+other.Name, other.Diameter)
	}
	return []*sheet{s, r}
}
