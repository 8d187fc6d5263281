package tables

import (
	"laydown/gen/drying"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// toner is the law of a fused toner: the hours of the trade's rule add up, and
// they pass wherever the print lies. What is computed beside them is how the sheet
// takes back the water that the fuser drove out of it.
type toner struct {
	t      *Tables
	ink    *shop.Ink
	medium *shop.Medium
}

func (l toner) transfer() bool { return false }

func (l toner) limit() (float64, string) { return 0, "h to go" }

func (l toner) coated() bool { return l.medium.Coated && l.medium.Finish == "gloss" }

func (l toner) hours(coverage string) quantity.Time {
	r := l.ink.Toner
	return drying.Toner{Base: r.Base.Best, Coated: r.Coated.Best, Heavy: r.Heavy.Best}.Wait(l.coated(), coverage == "heavy")
}

func (l toner) fresh(coverage string) state { return tonerState{l.hours(coverage)} }

type tonerState struct{ togo quantity.Time }

func (s tonerState) march(_ place, t quantity.Time) (state, error) {
	return tonerState{max(s.togo-t, 0)}, nil
}

func (s tonerState) until(place) (quantity.Time, bool, error) {
	return s.togo, s.togo <= HardlyDries, nil
}

func (s tonerState) left() float64 { return s.togo.Hours() }
