package tables

import (
	"fmt"

	"laydown/gen/quantity"
)

// DemoPrint is a prediction beside what came out: a fact of the trade, written
// down with its source before the program had computed it. A miss stays.
type DemoPrint struct {
	ID, Name string
	Case     WaitCase
	History  string
	Measure  string        // wait, computed or remaining
	From, To quantity.Time // expected
	Source   string        // why that is expected
	Got      quantity.Time
	Dries    bool
	Hit      bool
	// Note says by how much it missed.
	Note string
}

// DemoPrints computes every prediction of the shop's data.
func (t *Tables) DemoPrints() ([]DemoPrint, error) {
	var list []DemoPrint
	for _, p := range t.shop.Predictions {
		d := DemoPrint{
			ID: p.ID, Name: p.Name, History: p.History, Measure: p.Measure,
			Case: WaitCase{p.Ink.ID, p.Medium.ID, p.Coverage, p.Storage.ID, p.Room.ID},
			From: p.From.Best, To: p.To.Best, Source: p.Basis,
		}
		if err := t.measure(&d); err != nil {
			return nil, fmt.Errorf("prediction %s: %w", p.ID, err)
		}
		d.judge()
		list = append(list, d)
	}
	return list, nil
}

// measure computes what a prediction speaks of.
func (t *Tables) measure(d *DemoPrint) error {
	if d.Measure == "remaining" {
		r, err := t.resolve(d.Case)
		if err != nil {
			return err
		}
		h, err := t.ParseHistory(d.History)
		if err != nil {
			return err
		}
		l, err := t.law(r.ink, r.medium, noFilm)
		if err != nil {
			return err
		}
		s := l.fresh(d.Case.Coverage)
		for _, stay := range h {
			if s, err = s.march(in(r.room, stay.Storage), stay.Time); err != nil {
				return err
			}
		}
		d.Got, d.Dries, err = s.until(in(r.room, r.storage))
		return err
	}
	v, err := t.Wait(d.Case)
	if err != nil {
		return err
	}
	d.Dries, d.Got = v.Dries, v.Wait
	if d.Measure == "computed" {
		d.Got = v.Computed
	}
	return nil
}

func (d *DemoPrint) judge() {
	const minute = quantity.Minute
	switch {
	case !d.Dries:
		d.Note = "it hardly dries"
	case d.Got < d.From-minute:
		d.Note = duration(d.From-d.Got) + " sooner than expected"
	case d.Got > d.To+minute:
		d.Note = duration(d.Got-d.To) + " later than expected"
	default:
		d.Hit = true
	}
}
