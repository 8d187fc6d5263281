package book

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// parcelWords say what a parcel is taken to be.
var parcelWords = map[string]struct{ name, size string }{
	tables.Pack:   {"A pack", "60 mm (2.4 in) of sheets in paper or film"},
	tables.Carton: {"A carton", "250 mm (9.8 in) of sheets in corrugated board"},
	tables.Pallet: {"A pallet", "600 mm (24 in) high, as many piles side by side as stand on 1.2 × 0.8 m (47 × 31 in)"},
}

// colderHeads head the columns of the differences.
func colderHeads() []gridHead {
	var heads []gridHead
	for _, d := range tables.Colder {
		heads = append(heads, gridHead{Top: fmt.Sprintf("%g\u00a0K", float64(d)), Under: fmt.Sprintf("%g\u00a0°F", float64(d)*1.8)})
	}
	return heads
}

// parcelGrid is how long a kind of parcel stays wrapped, medium by difference.
func (b *builder) parcelGrid(media []*shop.Medium, parcel string) grid {
	w := parcelWords[parcel]
	g := grid{ID: "wrapped-" + parcel, Caption: w.name + ": hours to stay wrapped, by how much colder than the room it comes", Corner: w.size, Heads: colderHeads(), Wide: true}
	for _, m := range media {
		r := gridRow{Name: m.Name, Href: "/materials/media/" + m.ID + ".html"}
		values := b.parcelsOf(m, parcel)
		if len(values) > 0 {
			r.Under, r.Cells = volumeText(values[0].Volume()), b.parcelCells(m, values)
		}
		g.Rows = append(g.Rows, r)
	}
	return g
}

// parcelsOf are the values of a medium's parcel, in the order of the differences.
func (b *builder) parcelsOf(m *shop.Medium, parcel string) []tables.AcclimatiseValue {
	var list []tables.AcclimatiseValue
	for _, v := range b.stacks.parcels {
		if v.Medium == m.ID && v.Parcel == parcel {
			list = append(list, v)
		}
	}
	return list
}

// wholeHours writes a time in whole hours, rounded up.
func wholeHours(t quantity.Time) string {
	return fmt.Sprintf("%.0f", math.Ceil(t.Hours()-1e-6))
}

// volumeText writes a volume in both systems.
func volumeText(v quantity.Volume) string {
	return fmt.Sprintf("%.2g\u00a0m³ (%.2g\u00a0ft³)", float64(v), float64(v)/0.028316846592)
}

// conditioningGrid is the published chart with what is computed under each figure, and in
// words how the two stand to each other.
func (b *builder) conditioningGrid(m *shop.Medium) (*grid, string) {
	list, err := b.answers.AcclimatiseChart(m.ID)
	if err != nil {
		b.fault("tables/stacks.html", err)
		return nil, ""
	}
	g := &grid{ID: "published-chart", Caption: "The published chart, hours, with what is computed under each", Corner: "volume", Wide: true, Roomy: true,
		Signs: []sign{{"d", "looks like a misprint; it may be 19"}, {"r", "a roll, here reckoned as a cube of sheets"}, {"k", "from memory; the reprints seen end before it"}},
		Note:  "Under each figure: hours until the core of a solid cube of " + lowerFirst(m.Name) + " is near the room, and by how many kelvins the cube still differs on the mean after the chart’s hours."}
	var last *gridRow
	for i, c := range list {
		if i == 0 || c.Volume != list[i-1].Volume {
			g.Rows = append(g.Rows, gridRow{Name: volumeText(c.Volume)})
			last = &g.Rows[len(g.Rows)-1]
			if c.Roll {
				last.Sign += "r"
			}
			if c.FromMemory() {
				last.Sign += "k"
			}
		}
		if len(g.Rows) == 1 {
			g.Heads = append(g.Heads, gridHead{Top: fmt.Sprintf("%.1f\u00a0K", float64(c.Difference)), Under: fmt.Sprintf("%.0f\u00a0°F", float64(c.Difference)*1.8)})
		}
		cell := gridCell{Text: fmt.Sprintf("%.0f", c.Published.Hours()), Href: stackHref(m.ID, "wrapped"),
			Under: fmt.Sprintf("%s\u00a0h, %.0f\u00a0K", wholeHours(c.Core), float64(c.MeanLeft))}
		if c.Doubtful {
			cell.Sign = "d"
		}
		last.Cells = append(last.Cells, cell)
	}
	for i := range g.Rows {
		for len(g.Rows[i].Cells) < len(g.Heads) {
			g.Rows[i].Cells = append(g.Rows[i].Cells, gridCell{})
		}
	}
	return g, chartSays(list)
}

// palletGrid is two more published sets of hours, for pallets, beside the computed one.
func (b *builder) palletGrid(m *shop.Medium) *grid {
	g := &grid{ID: "published-pallets", Caption: "Two more published sets, for a pallet, hours", Corner: "pallet", Heads: colderHeads(), Wide: true,
		Note: "The two published sets contradict each other."}
	for _, set := range tables.PalletSets() {
		r := gridRow{Name: set.Name, Under: "published"}
		for _, d := range tables.Colder {
			c := gridCell{}
			if h, ok := set.Hours[d]; ok {
				c = gridCell{Text: fmt.Sprintf("%.0f", h.Hours()), Href: "/tables/acclimatise.html#beside-the-chart"}
			}
			r.Cells = append(r.Cells, c)
		}
		g.Rows = append(g.Rows, r)
	}
	if values := b.parcelsOf(m, tables.Pallet); len(values) > 0 {
		g.Rows = append(g.Rows, gridRow{Name: m.Name, Under: "computed, " + volumeText(values[0].Volume()), Cells: b.parcelCells(m, values)})
	}
	return g
}

// chartSays tells where the chart and the computed hours part, from their own figures.
// The rows from memory are left out.
func chartSays(list []tables.ChartFigure) string {
	near, far := list[0].Difference, list[0].Difference
	for _, c := range list {
		near, far = min(near, c.Difference), max(far, c.Difference)
	}
	type span struct{ least, most float64 }
	wide := func(s *span, v float64) { s.least, s.most = math.Min(s.least, v), math.Max(s.most, v) }
	none := span{math.Inf(1), math.Inf(-1)}
	atNear, atFar, left := none, none, none
	for _, c := range list {
		if c.FromMemory() {
			continue
		}
		switch c.Difference {
		case near:
			wide(&atNear, c.Ratio())
		case far:
			wide(&atFar, c.Ratio())
		}
		wide(&left, float64(c.MeanLeft))
	}
	words := "They do, and more so than at small ones."
	if atNear.least > atFar.most {
		words = "They part more at small ones."
	}
	return fmt.Sprintf("We expected the two to part at large differences. %s From %s the core of a solid block takes %.1f to %.1f times the chart’s hours, from %s %.1f to %.1f times. After the chart’s hours such a block still differs from the room by %.0f to %.0f\u00a0K (%.0f to %.0f\u00a0°F) on the mean.",
		words, difference(near), atNear.least, atNear.most, difference(far), atFar.least, atFar.most, left.least, left.most, 1.8*left.least, 1.8*left.most)
}
