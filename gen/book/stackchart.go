package book

import (
	"fmt"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// stackChart is the chart of stacks and the room: how deep the border goes in the driest
// and in the dampest room, and how long each parcel stays wrapped. False where the shop
// lists no medium for it that the tables know.
func (b *builder) stackChart() (wallChart, bool) {
	home := b.shop.Room(b.shop.Front.Room.ID)
	dry, damp := b.driestAndDampest()
	colder := tables.Colder[len(tables.Colder)/2]
	c := wallChart{Kind: "stacks", Title: "Stacks", First: "Medium", Where: upperFirst(home.Name) + ", " + climate(home),
		Groups: []chartGroup{
			{"border in mm after a week at", 2},
			{fmt.Sprintf("hours to stay wrapped, %s colder", difference(colder)), len(tables.Parcels)},
		},
		Advice: "Border: half of the change is that deep. Wavy edges: damper than the middle; tight edges: drier. Keep the room at 45 to 55 %.",
		Names:  "bands, inches and weights"}
	c.Hazard, c.HazardText = b.hazards(shop.LiftingCaution)
	for _, r := range []*shop.Room{dry, damp} {
		c.Heads = append(c.Heads, gridHead{Top: quantity.Metric(r.Humidity.Best)})
	}
	for _, parcel := range tables.Parcels {
		c.Heads = append(c.Heads, gridHead{Top: parcel})
	}
	for _, ref := range b.shop.Front.Charts.Stacks {
		m := b.shop.Medium(ref.ID)
		if m == nil || !b.answers.Stacks(m) && !b.answers.Wraps(m) {
			continue
		}
		r := chartRow{Name: upperFirst(short(m.Name)), Under: finishAndWeight(m)}
		for _, to := range []*shop.Room{dry, damp} {
			r.Cells = append(r.Cells, b.stackChartCell(tables.StackCase{Medium: m.ID, From: home.ID, To: to.ID}))
		}
		for _, parcel := range tables.Parcels {
			r.Cells = append(r.Cells, b.wrappedCell(m, parcel, colder))
		}
		c.Rows = append(c.Rows, r)
	}
	return c, len(c.Rows) > 0
}

// driestAndDampest are the rooms of the least and the most relative humidity.
func (b *builder) driestAndDampest() (dry, damp *shop.Room) {
	byHumidity := func(x, y *shop.Room) int {
		switch {
		case x.Humidity.Best < y.Humidity.Best:
			return -1
		case x.Humidity.Best > y.Humidity.Best:
			return 1
		}
		return 0
	}
	return slices.MinFunc(b.shop.Rooms, byHumidity), slices.MaxFunc(b.shop.Rooms, byHumidity)
}

// stackChartCell is a border after a week, in mm with inches under it.
func (b *builder) stackChartCell(c tables.StackCase) chartCell {
	v, ok := b.stacks.get(c)
	if !ok {
		return chartCell{}
	}
	d := v.Borders[len(v.Borders)-1].Half.Best
	return chartCell{Lines: []chartLine{{depthText(d), inchText(d)}}}
}

// wrappedCell is a parcel's hours with the ends of their band under them.
func (b *builder) wrappedCell(m *shop.Medium, parcel string, colder quantity.TemperatureDifference) chartCell {
	for _, v := range b.parcelsOf(m, parcel) {
		if v.Colder == colder {
			return chartCell{Lines: []chartLine{{wholeHours(v.Time.Best), wholeHours(v.Time.High) + "–" + wholeHours(v.Time.Low)}}}
		}
	}
	return chartCell{}
}

// finishAndWeight is the finish and the weight of a medium under its name.
func finishAndWeight(m *shop.Medium) string {
	text := quantity.Metric(m.Grammage.Best)
	if m.Coated {
		return m.Finish + ", " + text
	}
	return text
}
