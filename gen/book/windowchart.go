package book

import (
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// windowCharts are the charts of windows, one for each laminator that the shop
// lists rows for: it hangs beside that machine.
func (b *builder) windowCharts() []wallChart {
	var list []wallChart
	at := map[string]int{}
	for _, row := range b.shop.Front.Charts.Windows {
		p := hotPair{b.shop.Film(row.Film.ID), b.shop.Medium(row.Medium.ID), b.shop.Laminator(row.Laminator.ID)}
		if p.film == nil || p.medium == nil || p.machine == nil || len(b.hotPairs(p.film, p.medium, p.machine)) == 0 {
			continue
		}
		i, ok := at[p.machine.ID]
		if !ok {
			i = len(list)
			at[p.machine.ID] = i
			list = append(list, b.windowChart(p.machine))
		}
		list[i].Rows = append(list[i].Rows, b.windowChartRow(p))
	}
	for i := range list {
		if list[i].twoRanges() {
			list[i].Advice = "Two ranges: the upper for the first piece, the lower once the cover has cooled. " + list[i].Advice
		}
	}
	return list
}

// windowChart is a laminator's chart with no rows yet: its speeds across.
func (b *builder) windowChart(m *shop.Laminator) wallChart {
	room := b.shop.Room(b.shop.Front.Room.ID)
	c := wallChart{Kind: "windows-" + m.ID, Title: "Set °C", First: "Film", For: lowerFirst(short(m.Name)),
		Where:  upperFirst(short(m.Name)) + "; " + lowerFirst(room.Name) + ", " + climate(room),
		Advice: "Struck bar: no window; run another speed or film. Run a test piece first.",
		Names:  "°F and media"}
	c.Hazard, c.HazardText = b.hazards(tables.MachineCautions(m)...)
	for i, v := range tables.Speeds(m) {
		under := quantity.Imperial(v)
		if i == usualSpeed(m) {
			under += ", usual"
		}
		c.Heads = append(c.Heads, gridHead{Top: quantity.Metric(v)})
		c.Groups = append(c.Groups, chartGroup{under, 1})
	}
	return c
}

func (b *builder) windowChartRow(p hotPair) chartRow {
	r := chartRow{Name: upperFirst(p.film.Name), Under: "on " + lowerFirst(short(p.medium.Name)) + weightOf(p.medium)}
	for _, k := range atSpeeds(p, b.shop.Front.Room.ID) {
		r.Cells = append(r.Cells, b.windowChartCell(k))
	}
	return r
}

func (b *builder) windowChartCell(k windowKey) chartCell {
	v, ok := b.windows.get(k)
	switch {
	case !ok:
		return chartCell{}
	case !v.Open():
		return chartCell{Verdict: "refuse", Said: "no window"}
	}
	c := chartCell{}
	add := func(s tables.Span) {
		celsius, other := inUnits(s)
		c.Lines = append(c.Lines, chartLine{celsius, other + "\u00a0°F"})
	}
	first, steady := v.Spans()
	if v.Whole.Open() {
		add(tables.Span{Low: max(first.Low, steady.Low), High: min(first.High, steady.High)})
	} else {
		add(first)
		add(steady)
	}
	return c
}

// twoRanges says that some cell holds one range for the first piece and one for
// the steady run.
func (c wallChart) twoRanges() bool {
	for _, r := range c.Rows {
		for _, cell := range r.Cells {
			if len(cell.Lines) > 1 {
				return true
			}
		}
	}
	return false
}
