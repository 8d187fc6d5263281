package book

import (
	"fmt"
	"html/template"
	"math"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// drivenGrid is where first blisters lie, medium by the room that the stack came from.
func (b *builder) drivenGrid(home *shop.Room) grid {
	g := grid{ID: "first-blister", Caption: "First blister, mm from the leading edge", Corner: "stack from, a day in: " + lowerFirst(home.Name), Wide: true, Roomy: true,
		Note: "With the estimated share driven ahead; in inches, and by the ends of its band. Middle of the window that the room’s own air gives. “None”: this setting does not reach that moisture’s limit."}
	var rooms []string
	rows := map[string]*gridRow{}
	var order []string
	for _, v := range b.stacks.driven {
		if rows[v.Medium] == nil {
			m := b.shop.Medium(v.Medium)
			rows[v.Medium] = &gridRow{Name: m.Name, Under: lowerFirst(short(b.shop.Film(v.Film).Name)) + " at " + quantity.Both(v.Set), Href: "/materials/media/" + m.ID + ".html"}
			order = append(order, v.Medium)
		}
		if len(order) == 1 {
			rooms = append(rooms, v.From)
		}
		rows[v.Medium].Cells = append(rows[v.Medium].Cells, drivenCell(v))
	}
	for _, id := range rooms {
		g.Heads = append(g.Heads, roomHead(b.shop.Room(id)))
	}
	for _, id := range order {
		g.Rows = append(g.Rows, *rows[id])
	}
	return g
}

func drivenCell(v tables.DrivenValue) gridCell {
	c := gridCell{Text: "none", Href: stackHref(v.Medium, drivenID(v))}
	if at := float64(v.First.Best); !math.IsInf(at, 1) {
		c.Text = depthText(v.First.Best)
		c.Under = inchText(v.First.Best) + ", " + firstSpan(v.First)
	} else if !math.IsInf(float64(v.First.High), 1) {
		c.Under = "or " + depthText(v.First.High) + "\u00a0mm"
	}
	return c
}

// firstSpan writes the band of a first blister.
func firstSpan(b tables.Band[quantity.Length]) string {
	if math.IsInf(float64(b.Low), 1) {
		return depthText(b.High) + "\u00a0mm or none"
	}
	return depthSpan(b.High, b.Low)
}

func drivenID(v tables.DrivenValue) string { return "driven." + v.From }

// teaching is the case that is drawn: the one whose first blister lies furthest from the
// edge with nothing driven, so that the band has room to show. Its middle is to be well
// above the limit, or there is little to see.
func (b *builder) teaching() (tables.DrivenValue, bool) {
	const wellAbove = 1.1
	var best tables.DrivenValue
	found := false
	for _, v := range b.stacks.driven {
		if v.Free || v.Core < wellAbove*v.Limit {
			continue
		}
		if !found || v.Still > best.Still {
			best, found = v, true
		}
	}
	return best, found
}

// drawDriven draws sheets with their blisters by the share that is driven ahead, and the
// moisture that the nip finds along them.
func (b *builder) drawDriven(id string, v tables.DrivenValue) template.HTML {
	list, err := b.answers.DrivenProfiles(v)
	if err != nil {
		b.fault("the drawing of blisters on "+v.Medium, err)
		return ""
	}
	title := "Where a damp stack’s sheets blister first: " + lowerFirst(b.shop.Medium(v.Medium).Name)
	var sheets []draw.Passed
	c := draw.Chart{ID: id + "-m", Title: "Moisture that the nip finds, by the share driven ahead, along " + lowerFirst(b.shop.Medium(v.Medium).Name)}
	top := float64(v.Limit)
	for _, p := range list {
		said := "none"
		if !math.IsInf(float64(p.First), 1) {
			said = "first at " + depthText(p.First) + "\u00a0mm (" + inchText(p.First) + ")"
		}
		sheets = append(sheets, draw.Passed{Name: shareName(p.Share), Size: p.Excess, Fed: p.Fed, First: float64(p.First / v.Length), Said: said})
		s := draw.Series{Name: fmt.Sprintf("%.2g\u00a0%%", p.Share.Percent())}
		for i := range p.At {
			if p.At[i] > v.Length/2 {
				break
			}
			s.X = append(s.X, p.At[i].Millimetres())
			s.Y = append(s.Y, p.InNip[i].Percent())
			top = math.Max(top, float64(p.InNip[i]))
		}
		c.Curves = append(c.Curves, s)
	}
	half := v.Length.Millimetres() / 2
	c.X = draw.Axis{Label: "mm from the leading edge, to the middle of the sheet", From: 0, To: half, Second: func(mm float64) string { return fmt.Sprintf("%.1f in", mm/25.4) }}
	c.Y = draw.Axis{Label: "water for each 100 of dry sheet, %", From: 0, To: niceTop(100 * top)}
	c.Level = &draw.Level{Name: "blisters above " + short3(v.Limit.Percent()) + " %", At: v.Limit.Percent()}
	c.Desc = "With " + shareName(list[0].Share) + " the nip finds the sheet’s own moisture, " + short3(v.Edge.Percent()) + " % at the edge and " + short3(v.Core.Percent()) +
		" % in the middle. The more is driven ahead, the more it finds. The limit is " + short3(v.Limit.Percent()) + " %."
	where := b.drivenWhere(v)
	caption := title + ", " + where + ". A teaching drawing: how much is driven ahead has never been measured, and number and size are in proportion only. A mark shows where the first lies."
	return figure(draw.Blisters(id, title, quantity.Metric(v.Length), sheets), caption, "") +
		figure(c.SVG(), c.Title+", half of the sheet; "+where+".", b.part("numbers", placesOf(c)))
}

// drivenWhere says what a sheet went through.
func (b *builder) drivenWhere(v tables.DrivenValue) string {
	return fmt.Sprintf("a stack from the %s after a day in the %s, %s at %s", lowerFirst(b.shop.Room(v.From).Name), lowerFirst(b.shop.Room(v.To).Name),
		lowerFirst(short(b.shop.Film(v.Film).Name)), quantity.Both(v.Set))
}

func shareName(s quantity.Fraction) string {
	if s == 0 {
		return "nothing driven"
	}
	return fmt.Sprintf("%.2g\u00a0%% driven", s.Percent())
}

// placesOf reads the curves of a chart of places at round millimetres.
func placesOf(c draw.Chart) numbers {
	n := numbers{ID: c.ID + "-n", Title: c.Title + ", in numbers", Heads: []string{"mm"}}
	for _, s := range c.Curves {
		n.Heads = append(n.Heads, s.Name+", %")
	}
	for _, x := range draw.Ticks(c.X.From, c.X.To, 12) {
		row := []string{draw.Plain(x)}
		for _, s := range c.Curves {
			row = append(row, at(s, x))
		}
		n.Rows = append(n.Rows, row)
	}
	return n
}
