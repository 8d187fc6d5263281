package book

import (
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// stacksOf are a medium's stacks from the shop's room into each other, for its own page.
func (b *builder) stacksOf(m *shop.Medium) (grid, bool) {
	home := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: "in-a-stack", Caption: "In a stack: the border, mm, and until it has evened out", Corner: "from: " + lowerFirst(home.Name) + ", " + climate(home) + ", into",
		Heads: stackHeads(), Wide: true, Roomy: true, Note: borderNote}
	for _, r := range b.others(home) {
		v, ok := b.stacks.get(tables.StackCase{Medium: m.ID, From: home.ID, To: r.ID})
		if !ok {
			continue
		}
		g.Rows = append(g.Rows, gridRow{Name: r.Name, Under: climate(r), Href: "/materials/rooms/" + r.ID + ".html", Cells: b.stackCells(v)})
	}
	return g, len(g.Rows) > 0
}

// stacksIn are the stacks that come into a room from the shop's usual one; for that one
// itself, those from the room whose air differs most.
func (b *builder) stacksIn(r *shop.Room) (grid, bool) {
	from := b.shop.Room(b.shop.Front.Room.ID)
	if from == r {
		far := 0.0
		for _, o := range b.others(r) {
			if d := float64(o.Humidity.Best - r.Humidity.Best); d*d > far {
				from, far = o, d*d
			}
		}
	}
	g := grid{ID: "stacks-here", Caption: "Stacks brought into this room: the border, mm, and until it has evened out", Corner: "from: " + lowerFirst(from.Name) + ", " + climate(from),
		Heads: stackHeads(), Wide: true, Roomy: true, Note: borderNote}
	for _, m := range b.shop.Media {
		v, ok := b.stacks.get(tables.StackCase{Medium: m.ID, From: from.ID, To: r.ID})
		if !ok {
			continue
		}
		g.Rows = append(g.Rows, gridRow{Name: m.Name, Href: "/materials/media/" + m.ID + ".html", Cells: b.stackCells(v)})
	}
	return g, len(g.Rows) > 0
}

func stackHeads() []gridHead {
	return []gridHead{{Top: "after an hour"}, {Top: "after a day"}, {Top: "after a week"}, {Top: "even after"}, {Top: "A4 even after"}}
}

// stackCells are a stack's cells under stackHeads.
func (b *builder) stackCells(v tables.StackValue) []gridCell {
	var cells []gridCell
	for i := range v.Borders {
		cells = append(cells, b.borderCell(v.StackCase, i))
	}
	for _, e := range v.Even {
		least, most := e.Time.Range()
		cells = append(cells, gridCell{Text: lapse(e.Time.Best), Under: lapseSpan(least, most), Href: stackHref(v.Medium, stackID(v.StackCase))})
	}
	return cells
}

// wrappedOf is how long a medium's parcels stay wrapped, for its own page.
func (b *builder) wrappedOf(m *shop.Medium) (grid, bool) {
	home := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: "wrapped", Caption: "Wrapped, from the cold: hours until its core is within 2 K (3.6 °F) of the room", Corner: "into: " + lowerFirst(home.Name) + ", " + climate(home) + "; colder by",
		Heads: colderHeads(), Wide: true, Note: "The best figure, and the ends of its band. Trade charts give fewer hours: see the page of stacks."}
	for _, parcel := range tables.Parcels {
		values := b.parcelsOf(m, parcel)
		if len(values) == 0 {
			continue
		}
		g.Rows = append(g.Rows, gridRow{Name: parcelWords[parcel].name, Under: volumeText(values[0].Volume()), Href: "/tables/acclimatise.html#wrapped-" + parcel, Cells: b.parcelCells(m, values)})
	}
	return g, len(g.Rows) > 0
}

// parcelCells are a parcel's hours under colderHeads.
func (b *builder) parcelCells(m *shop.Medium, values []tables.AcclimatiseValue) []gridCell {
	var cells []gridCell
	for _, v := range values {
		cells = append(cells, gridCell{Text: wholeHours(v.Time.Best), Under: wholeHours(v.Time.High) + dash + wholeHours(v.Time.Low), Href: stackHref(m.ID, "wrapped")})
	}
	return cells
}
