package book

import (
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// roomPage is a room: its air, and the waits of what hangs in it.
func (b *builder) roomPage(r *shop.Room) materialPage {
	p := materialPage{}
	p.Big = []bigNumber{
		bigQuantity("Temperature", r.Temperature.Best, ""),
		bigQuantity("Relative humidity", r.Humidity.Best, ""),
		{Name: "Air past a print", Number: mps(r.AirSpeed.Best), Unit: "m/s", Under: quantity.Imperial(r.AirSpeed.Best)},
	}
	for i := range p.Big {
		p.Big[i].Under = strings.TrimSuffix(p.Big[i].Under, " · ")
	}
	g := grid{ID: "here", Caption: "Hours to wait in this room, hung or laid out", Corner: "on the medium that the maker’s figure holds for", Wide: true}
	for _, c := range tables.Coverages {
		g.Heads = append(g.Heads, gridHead{Top: c})
	}
	for _, ink := range b.shop.Inks {
		media := b.mediaOf(ink)
		if len(media) == 0 {
			continue
		}
		var cases []tables.WaitCase
		for _, coverage := range tables.Coverages {
			c := b.usual(ink, media[0])
			c.Coverage, c.Room = coverage, r.ID
			cases = append(cases, c)
		}
		g.Rows = append(g.Rows, b.row(ink.Name, lowerFirst(media[0].Name)+", "+lowerFirst(short(b.shop.Storage(cases[0].Storage).Name)), "/materials/inks/"+ink.ID+".html", cases))
	}
	p.Grids = []grid{g.withSigns()}
	if g, ok := b.stacksIn(r); ok {
		p.Grids = append(p.Grids, g)
	}
	s := b.sheet("The room", r.Head)
	value(s, "temperature", r.Temperature)
	value(s, "relative humidity", r.Humidity)
	value(s, "air past a print", r.AirSpeed)
	value(s, "volume", r.Volume)
	value(s, "air changes", r.AirChanges)
	value(s, "carrier vapour already in the air", r.Vapour)
	p.Sheets = []*sheet{s}
	return p
}

func mps(s quantity.Speed) string {
	n, _, _ := cutUnit(quantity.In(s, "m/s"))
	return n
}
