package book

import (
	"fmt"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// roomPage is a room: its air, and what it does to prints, sheets and windows.
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
	p.Grids = append(p.Grids, b.waitsIn(r))
	if g, ok := b.moistureIn(r); ok {
		p.Grids = append(p.Grids, g)
	}
	if g, ok := b.hotFilmsIn(r); ok {
		p.Grids = append(p.Grids, g)
	}
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

// waitsIn is the waits of a room, ink by coverage. Each is on the medium that the
// maker's figure holds for.
func (b *builder) waitsIn(r *shop.Room) grid {
	g := grid{ID: "here", Caption: "Hours to wait in this room", Corner: "on the medium that the maker’s figure holds for", Wide: true,
		More: &way{"/" + waitsPath(r, b.shop.Room(b.shop.Front.Room.ID)), "Every print in this room"}}
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
	return g.withSigns()
}

// moistureIn is what sheets hold that are in balance with a room, and the bond line
// at which that becomes too much steam.
func (b *builder) moistureIn(r *shop.Room) (grid, bool) {
	list, err := b.answers.MoistureIn(r)
	if err != nil {
		b.fault("materials/rooms/"+r.ID+".html", err)
		return grid{}, false
	}
	g := grid{ID: "moisture", Caption: "Moisture of sheets in balance with this room", Corner: "water over dry mass", Wide: true,
		Heads: []gridHead{{Top: "moisture"}, {Top: "steam from", Under: "at the bond line"}},
		Note:  "Paper comes into balance within minutes as a sheet and within days as a stack. Over a sealed back only the coat counts. No figure: nothing swells too far up to 120 °C (248 °F)."}
	if float64(r.Humidity.Best) > tables.HumidityMost {
		g.Note += fmt.Sprintf(" Above %.0f\u00a0%% the published isotherms part: take these as the highest.", tables.HumidityMost*100)
	}
	for _, v := range list {
		m := b.shop.Medium(v.Medium)
		row := gridRow{Name: m.Name, Href: "/materials/media/" + m.ID + ".html", Cells: []gridCell{{Text: quantity.Metric(v.Moisture)}, {}}}
		if v.Sealed {
			row.Under = "its coat, over a sealed back"
		}
		if v.Limited {
			row.Cells[1] = gridCell{Text: quantity.Metric(v.Swells), Under: quantity.Imperial(v.Swells)}
		}
		g.Rows = append(g.Rows, row)
	}
	return g, len(g.Rows) > 0
}

// hotFilmsIn is the windows of a room: each hot film on the print and in the machine
// that its maker speaks of, at that machine's speeds.
func (b *builder) hotFilmsIn(r *shop.Room) (grid, bool) {
	g := grid{ID: "windows", Caption: "Set temperature of hot films in this room, °C with °F under it", Corner: "on the print and in the machine that the maker speaks of", Wide: true,
		Heads: []gridHead{{Top: "slowest"}, {Top: "usual speed"}, {Top: "fastest"}}, More: &way{"/tables/windows.html", "All windows; each leads to its rooms"}}
	for _, f := range b.hotFilms() {
		p, ok := b.makersPair(f)
		if !ok || len(tables.Speeds(p.machine)) != len(g.Heads) {
			continue
		}
		g.Rows = append(g.Rows, windowRow(f.Name, "on "+lowerFirst(p.medium.Name)+", "+lowerFirst(short(p.machine.Name)), "/materials/films/"+f.ID+".html", b.ofTable(atSpeeds(p, r.ID))))
	}
	return g.withWindowSigns(), len(g.Rows) > 0
}

func mps(s quantity.Speed) string {
	n, _, _ := cutUnit(quantity.In(s, "m/s"))
	return n
}
