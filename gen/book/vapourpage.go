package book

import (
	"fmt"
	"io"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// vapourPermit stands above every area that a room bears.
const vapourPermit = "What stands here is “at most, before anything else in the room”, worked out from estimates. It is no permit: follow local codes, the safety data sheet and a licensed professional, and measure. A nose is no instrument, and the air beside a wet print holds many times what the room does."

// vapourSigns are the small letters of areas.
var vapourSigns = []sign{{"k", "kept like this it holds its vapour back and gives it off when it is opened: count it as hung from then on"}}

// vapourPage adds the table of vapour.
func (b *builder) vapourPage() {
	if len(b.vapours) == 0 {
		return
	}
	p := reckonedPage{
		Caution: b.cautions(shop.SolventCaution),
		CSV:     "/tables/vapour.csv", JSON: "/tables/vapour.json",
		Said: []string{vapourPermit, fmt.Sprintf("Fresh prints at normal coverage, put up to dry all at once. What they give off and what the room’s fresh air takes out leaves at most %s of the exposure limit over the worst eight hours, and %s of the lower explosive limit at the peak. Two inks in one room share this: half the area of each. Areas are rounded down.",
			quantity.Metric(tables.ExposureShare), quantity.Metric(tables.ExplosiveShare))},
	}
	for _, ink := range b.shop.Inks {
		if values := b.vapoursOf(ink); len(values) > 0 {
			part := b.vapourPart(ink, values)
			b.add(page{Path: vapourPath(ink.ID), Kind: "reckoned", Title: "Vapour in the room: " + lowerFirst(ink.Name), Lead: "How much of it may dry at once, and how each area comes about.", Tab: "Tables",
				Scripts: []string{"unfold.js"}, Data: reckonedPage{Caution: p.Caution, CSV: p.CSV, JSON: p.JSON, Said: p.Said, Back: &way{"/tables/vapour.html", "All inks"}, Parts: []reckonedPart{part}}})
			part.Folds, part.Lists = nil, nil
			p.Parts = append(p.Parts, part)
		}
	}
	b.add(page{Path: "tables/vapour.html", Kind: "reckoned", Title: "Vapour in the room", Lead: "How much print may dry at once before the room’s air holds too much.", Tab: "Tables",
		Data: p, Found: "table", Also: []string{"solvent fumes", "ventilation", "exposure limit", "how many prints drying", "smell in the room", "air changes"}, Weight: 1.2})
	b.export("tables/vapour.csv", func(w io.Writer) error { return tables.WriteVapoursCSV(w, b.vapours) })
	b.export("tables/vapour.json", func(w io.Writer) error { return tables.WriteVapoursJSON(w, b.vapours) })
}

// vapoursOf are the values of one ink, in the order of the table: storage by storage,
// rooms within.
func (b *builder) vapoursOf(ink *shop.Ink) []tables.VapourValue {
	var list []tables.VapourValue
	for _, v := range b.vapours {
		if v.Ink == ink.ID {
			list = append(list, v)
		}
	}
	return list
}

// vapourPart is an ink's table with its workings. Where no area is known at all, the
// table holds what one square metre leaves in the air instead.
func (b *builder) vapourPart(ink *shop.Ink, values []tables.VapourValue) reckonedPart {
	medium := b.shop.Medium(values[0].Medium)
	known := slices.ContainsFunc(values, func(v tables.VapourValue) bool { return v.Known })
	part := reckonedPart{ID: ink.ID, Name: ink.Name}
	g := grid{ID: "areas-" + ink.ID, Corner: "on " + lowerFirst(medium.Name), Wide: true, Caption: upperFirst(ink.Name) + ": at most so many m² drying at once, ft² under it"}
	if !known {
		g.Caption = upperFirst(ink.Name) + ": what each m² of print leaves in the air over the worst eight hours, mg/m³"
		g.Note = "No area is told. With a limit of your own: half of it, in mg/m³, over this number gives the square metres."
		part.Lead = values[0].Reason
	}
	for _, r := range b.shop.Rooms {
		g.Heads = append(g.Heads, b.airHead(r))
	}
	for _, storage := range b.shop.Storages {
		row := gridRow{Name: short(storage.Name)}
		if storage.Kind == "tight-roll" || storage.Kind == "stack" {
			row.Sign = vapourSigns[0].Letter
		}
		var columns []foldColumn
		for _, v := range values {
			if v.Storage != storage.ID {
				continue
			}
			cell := vapourCell(v, known)
			row.Cells = append(row.Cells, cell)
			text := cell.Text
			if known && cell.Text != "?" {
				text += "\u00a0m²"
			}
			columns = append(columns, foldColumn{workingCell{ID: vapourID(v), Room: b.shop.Room(v.Room).Name, Text: text}, v.Working})
		}
		if len(row.Cells) == 0 {
			continue
		}
		g.Rows = append(g.Rows, row)
		part.Folds = append(part.Folds, b.fold(short(storage.Name), columns))
	}
	g.Signs = signsIn(g.Rows, vapourSigns)
	part.Grids = []grid{g}
	part.Lists = b.firstToFind(ink, values)
	return part
}

// airHead heads a room's column with its air.
func (b *builder) airHead(r *shop.Room) gridHead {
	h := gridHead{Top: r.Name}
	if r.Volume.Set && r.AirChanges.Set {
		h.Under = quantity.Metric(r.Volume.Best) + ", " + quantity.Metric(r.AirChanges.Best)
	}
	return h
}

// vapourCell is the cell of an area, or of what one square metre leaves.
func vapourCell(v tables.VapourValue, area bool) gridCell {
	c := gridCell{Href: vapourHref(v)}
	switch {
	case !area && v.Average > 0:
		c.Text = "under 0.01"
		if mg := float64(v.Average) * 1e6; mg >= 0.01 {
			c.Text = fmt.Sprintf("%.2g", mg)
		}
	case !v.Known:
		c.Text = "?"
	case v.Over:
		c.Text = fmt.Sprintf("over %g", float64(v.Area))
	default:
		c.Text = fmt.Sprintf("%g", float64(v.Area))
		c.Under = squareFeet(v.Area)
	}
	return c
}

// squareFeet writes an area in square feet, rounded down to two figures.
func squareFeet(a quantity.Area) string {
	const foot = 0.3048
	n, step := int(float64(a)/(foot*foot)+1e-9), 1
	for n/step >= 100 {
		step *= 10
	}
	return fmt.Sprintf("%d", n/step*step)
}

func vapourID(v tables.VapourValue) string { return v.Storage + "." + v.Room }

// vapourPath is where an ink's vapour stands, with its workings.
func vapourPath(ink string) string { return "tables/vapour-" + ink + ".html" }

func vapourHref(v tables.VapourValue) string { return "/" + vapourPath(v.Ink) + "#" + vapourID(v) }

// firstToFind says which input moves the area most, for the shop's usual storage and
// room: that one is to be found out first.
func (b *builder) firstToFind(ink *shop.Ink, values []tables.VapourValue) []list {
	front := b.shop.Front
	i := slices.IndexFunc(values, func(v tables.VapourValue) bool {
		return v.Known && v.Room == front.Room.ID && v.Storage == b.usualStorage(b.shop.Medium(v.Medium))
	})
	if i < 0 {
		return nil
	}
	l := list{Name: "What to find out first: " + lowerFirst(ink.Name), Lead: "How far the area moves, " + lowerFirst(short(b.shop.Storage(values[i].Storage).Name)) + " in " + lowerFirst(b.shop.Room(values[i].Room).Name) + ", when one input goes through its spread."}
	for _, m := range values[i].Moves {
		low, high := min(m.Low, m.High), max(m.Low, m.High)
		l.Items = append(l.Items, item{Text: upperFirst(m.Input), Under: spread(quantity.Metric(low), quantity.Metric(high))})
	}
	return []list{l}
}

// vapourList is what an ink's page says of its vapour.
func (b *builder) vapourList(ink *shop.Ink) []list {
	values := b.vapoursOf(ink)
	if len(values) == 0 {
		return nil
	}
	l := list{Name: "Vapour in the room", Lead: "At most, before anything else in the room. It is no permit: follow local codes, the safety data sheet and a licensed professional."}
	for _, v := range values {
		if v.Storage != b.usualStorage(b.shop.Medium(v.Medium)) {
			continue
		}
		it := item{Text: b.shop.Room(v.Room).Name, Href: vapourHref(v)}
		switch {
		case !v.Known:
			l.Items = []item{{Text: "No area is told: the table says what is missing", Href: "/tables/vapour.html#" + ink.ID, Under: v.Reason}}
			return []list{l}
		case v.Over:
			it.Under = fmt.Sprintf("over %g\u00a0m² drying at once", float64(v.Area))
		default:
			it.Under = fmt.Sprintf("%g\u00a0m² (%s\u00a0ft²) drying at once", float64(v.Area), squareFeet(v.Area))
		}
		l.Items = append(l.Items, it)
	}
	l.Columns = true
	return []list{l}
}
