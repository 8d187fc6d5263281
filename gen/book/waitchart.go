package book

import (
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// waitChart is the chart of waits: each coverage in the usual storage and room,
// then normal coverage in the coldest room, then on a tight roll or in a stack.
func (b *builder) waitChart() wallChart {
	room, storage, cold := b.shop.Room(b.shop.Front.Room.ID), b.shop.Storage(b.shop.Front.Storage.ID), b.coldestRoom()
	c := wallChart{Kind: "waits", Title: "Hours to wait", First: "Print", Where: upperFirst(room.Name) + ", " + climate(room),
		Groups: []chartGroup{
			{"coverage, kept: " + lowerFirst(short(storage.Name)), 3},
			{"normal, " + lowerFirst(short(cold.Name)) + " " + quantity.Imperial(cold.Temperature.Best), 1},
			{"normal, rolled or stacked", 1},
		},
		Heads:  []gridHead{{Top: "light"}, {Top: "normal"}, {Top: "heavy"}, {Top: quantity.Metric(cold.Temperature.Best)}, {Top: "tight"}},
		Advice: "Struck bar: hardly dries; unroll or unstack it, then count. Test the darkest part before you laminate.",
		Names:  "names of media"}
	c.Hazard, c.HazardText = b.hazards(shop.SolventCaution)
	for _, pair := range b.shop.Front.Charts.Waits {
		ink, m := b.shop.Ink(pair.Ink.ID), b.shop.Medium(pair.Medium.ID)
		if ink == nil || m == nil {
			continue
		}
		usual := b.usual(ink, m)
		r := chartRow{Name: upperFirst(ink.Name), Under: "on " + lowerFirst(short(m.Name)) + weightOf(m)}
		for _, coverage := range tables.Coverages {
			one := usual
			one.Coverage = coverage
			r.Cells = append(r.Cells, b.chartCell(one))
		}
		one := usual
		one.Room = cold.ID
		r.Cells = append(r.Cells, b.chartCell(one), b.shutIn(usual, m))
		c.Rows = append(c.Rows, r)
	}
	return c
}

// weightOf tells papers of one name apart by their weight.
func weightOf(m *shop.Medium) string {
	if m.Class != "paper" && m.Class != "board" && m.Class != "photo" {
		return ""
	}
	finish := ""
	if m.Class == "paper" && m.Coated && !strings.Contains(short(m.Name), m.Finish) {
		finish = " " + m.Finish
	}
	return finish + " " + quantity.Metric(m.Grammage.Best)
}

func (b *builder) chartCell(c tables.WaitCase) chartCell {
	v, ok := b.waits.get(c)
	switch {
	case !ok:
		return chartCell{}
	case !v.Dries:
		return chartCell{Verdict: "refuse", Said: "hardly dries"}
	}
	return chartCell{Lines: []chartLine{{Text: hoursText(v)}}}
}

// shutIn is the wait of a print without air at its face.
func (b *builder) shutIn(c tables.WaitCase, m *shop.Medium) chartCell {
	for _, s := range b.answers.StoragesFor(m) {
		if s.Kind == "tight-roll" || s.Kind == "stack" {
			c.Storage = s.ID
			return b.chartCell(c)
		}
	}
	return chartCell{}
}

func (b *builder) coldestRoom() *shop.Room {
	cold := b.shop.Rooms[0]
	for _, r := range b.shop.Rooms {
		if r.Temperature.Best < cold.Temperature.Best {
			cold = r
		}
	}
	return cold
}
