package book

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// mediumStacksPage is everything about stacks of one medium, with the workings.
type mediumStacksPage struct {
	Medium  *shop.Medium
	Stacks  []stackRows
	Parcels []parcelRow
	Heads   []gridHead
	Wrapped worked
	Driven  []drivenRow
}

// stackRows are the stacks that come from one room.
type stackRows struct {
	From *shop.Room
	Air  string
	Rows []stackRow
	// Workings are given where the shop's own room is one of the two.
	Workings []worked
}

type stackRow struct {
	ID, To  string
	Damper  bool
	Times   []bandText
	Own, A4 bandText
}

// bandText is a best figure with the ends of its band under it.
type bandText struct{ Best, Span string }

type parcelRow struct {
	Name, Size string
	Hours      []bandText
}

type drivenRow struct {
	ID, Text string
	worked
}

// worked is a working as a page shows it.
type worked struct {
	What  string
	Steps []windowStep
	Notes []string
}

func (b *builder) worked(what, path string, w tables.Working, err error) worked {
	if err != nil {
		b.fault(path, err)
	}
	out := worked{What: what, Notes: w.Notes}
	for _, s := range w.Steps {
		out.Steps = append(out.Steps, windowStep{s.Symbol, s.Text, s.Shown, b.source(s.Source)})
	}
	return out
}

func (b *builder) mediumStacks(m *shop.Medium) mediumStacksPage {
	p := mediumStacksPage{Medium: m, Heads: colderHeads()}
	path := "tables/stacks-" + m.ID + ".html"
	home := b.shop.Front.Room.ID
	for _, from := range b.shop.Rooms {
		rows := stackRows{From: from, Air: quantity.Metric(from.Humidity.Best) + " relative humidity"}
		for _, to := range b.shop.Rooms {
			v, ok := b.stacks.get(tables.StackCase{Medium: m.ID, From: from.ID, To: to.ID})
			if !ok {
				continue
			}
			rows.Rows = append(rows.Rows, stackRowOf(v, to))
			if from.ID == home || to.ID == home {
				w, err := b.answers.StackWorking(v)
				rows.Workings = append(rows.Workings, b.worked("into the "+lowerFirst(to.Name), path, w, err))
			}
		}
		if len(rows.Rows) > 0 {
			p.Stacks = append(p.Stacks, rows)
		}
	}
	for _, parcel := range tables.Parcels {
		values := b.parcelsOf(m, parcel)
		if len(values) == 0 {
			continue
		}
		r := parcelRow{Name: parcelWords[parcel].name, Size: volumeText(values[0].Volume())}
		for _, v := range values {
			r.Hours = append(r.Hours, bandText{wholeHours(v.Time.Best), wholeHours(v.Time.High) + dash + wholeHours(v.Time.Low)})
		}
		p.Parcels = append(p.Parcels, r)
		middle := values[len(values)/2]
		w, err := b.answers.AcclimatiseWorking(middle)
		p.Wrapped = b.worked(lowerFirst(r.Name)+", "+difference(middle.Colder)+" colder", path, w, err)
	}
	for _, v := range b.stacks.driven {
		if v.Medium != m.ID {
			continue
		}
		w, err := b.answers.DrivenWorking(v)
		where := b.drivenWhere(v)
		p.Driven = append(p.Driven, drivenRow{drivenID(v), upperFirst(where) + ": " + drivenText(v), b.worked(where, path, w, err)})
	}
	return p
}

func stackRowOf(v tables.StackValue, to *shop.Room) stackRow {
	r := stackRow{ID: stackID(v.StackCase), To: upperFirst(to.Name) + ", " + climate(to), Damper: v.Damper}
	for _, border := range v.Borders {
		least, most := border.Half.Range()
		r.Times = append(r.Times, bandText{depthText(border.Half.Best) + "\u00a0mm (" + inchText(border.Half.Best) + ")",
			depthSpan(least, most) + "; a tenth " + depthText(border.Tenth.Best) + "\u00a0mm"})
	}
	own, small := v.Even[0].Time, v.Even[1].Time
	r.Own, r.A4 = evenText(own), evenText(small)
	return r
}

func evenText(t tables.Band[quantity.Time]) bandText {
	least, most := t.Range()
	return bandText{lapse(t.Best), lapseSpan(least, most)}
}

// drivenText says where a first blister lies, for each share.
func drivenText(v tables.DrivenValue) string {
	if v.Free {
		return fmt.Sprintf("no sheet up to %s relative humidity blisters.", quantity.Metric(v.Humidity))
	}
	at := func(l quantity.Length) string {
		if math.IsInf(float64(l), 1) {
			return "nowhere"
		}
		return depthText(l) + "\u00a0mm (" + inchText(l) + ")"
	}
	s := tables.DrivenShares()
	return fmt.Sprintf("sheets blister from %s relative humidity. First blister: nothing driven %s; %.2g\u00a0%% driven %s; %.2g\u00a0%% %s; %.2g\u00a0%% %s.", quantity.Metric(v.Humidity),
		at(v.Still), s.Low.Percent(), at(v.First.Low), s.Best.Percent(), at(v.First.Best), s.High.Percent(), at(v.First.High))
}
