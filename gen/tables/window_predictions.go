package tables

import (
	"fmt"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// WindowPrint is a prediction of a window beside what came out. A miss stays.
type WindowPrint struct {
	ID, Name string
	Expected string
	Source   string // why that is expected
	Got      string
	Hit      bool
	// Note says by how much it missed.
	Note string
}

// WindowPrints computes every prediction of windows in the shop's data.
func (t *Tables) WindowPrints() ([]WindowPrint, error) {
	var list []WindowPrint
	for _, p := range t.shop.WindowPredictions {
		w, err := t.windowPrint(p)
		if err != nil {
			return nil, fmt.Errorf("prediction %s: %w", p.ID, err)
		}
		list = append(list, w)
	}
	return list, nil
}

func (t *Tables) windowPrint(p *shop.WindowPrediction) (WindowPrint, error) {
	w := WindowPrint{ID: p.ID, Name: p.Name, Source: p.Basis}
	got, err := t.predicted(p.Case)
	if err != nil {
		return w, err
	}
	switch p.Claim {
	case "makers-range":
		return t.inMakersRange(w, p.Case)
	case "no-window":
		w.Expected, w.Got = "no window", got.told()
		w.Hit = !got.Open()
		return w, nil
	}
	other, err := t.predicted(p.Other)
	if err != nil {
		return w, err
	}
	w.Got = got.told() + " against " + other.told()
	switch p.Claim {
	case "higher", "lower":
		by := got.Steady.Low.Minus(other.Steady.Low)
		w.Expected = "a " + p.Claim + " lowest set temperature than the other case's"
		w.Hit = by > 0 == (p.Claim == "higher") && by != 0
		w.Note = "by " + quantity.Both(max(by, -by))
	case "narrower":
		a, b := got.First.High.Minus(got.First.Low), other.First.High.Minus(other.First.Low)
		w.Expected = "a narrower window than the other case's"
		w.Hit = a < b
		w.Note = fmt.Sprintf("%s against %s wide, first piece", quantity.Both(max(a, 0)), quantity.Both(max(b, 0)))
	}
	return w, nil
}

// told is a window in words.
func (v WindowValue) told() string {
	if !v.Open() {
		return "no window (lowest " + degrees(celsius(up(v.Steady.Low))) + ")"
	}
	return "first piece " + between(v.First) + ", steady run " + between(v.Steady)
}

func (t *Tables) predicted(c *shop.WindowCase) (WindowValue, error) {
	return t.Window(WindowCase{c.Film.ID, c.Medium.ID, c.Laminator.ID, c.Speed.Best, referenceRoom, c.Humidity.Best})
}

// inMakersRange asks whether a film has a window at roller temperatures that
// its maker names. Makers speak of rollers, so the temperature is that of the
// rollers' surface in the steady run, wherever this machine senses it.
func (t *Tables) inMakersRange(w WindowPrint, c *shop.WindowCase) (WindowPrint, error) {
	p := pairing{t.shop.Film(c.Film.ID), t.shop.Medium(c.Medium.ID), t.shop.Laminator(c.Laminator.ID), c.Speed.Best}
	maker := p.film.Rollers
	if maker == nil {
		return w, fmt.Errorf("%s states no roller range", p.film.ID)
	}
	pass, err := t.pass(p, t.places[p.film.ID])
	if err != nil {
		return w, err
	}
	pass.Upper.Sensed, pass.Lower.Sensed = nip.AtSurface, nip.AtSurface
	r := new(nip.Response)
	if err := run(nip.NewSolver(), p, pass, r); err != nil {
		return w, err
	}
	v, err := t.judge(WindowCase{c.Film.ID, c.Medium.ID, c.Laminator.ID, c.Speed.Best, referenceRoom, c.Humidity.Best}, p, r)
	if err != nil {
		return w, err
	}
	w.Expected = "a window within rollers of " + between(Range{maker.From.Best, maker.To.Best})
	w.Got = "rollers of " + between(v.Steady)
	if p.machine.SensedAt == "core" {
		set, err := t.predicted(c)
		if err != nil {
			return w, err
		}
		// A maker's range may also be meant as what the dial says. That is another
		// figure where the machine senses under its rubber, and is told beside it.
		w.Got += " at their surface; this machine senses under its cover, and there " + set.told()
	}
	switch {
	case !v.Steady.Open():
		w.Note = "no window"
	case v.Steady.Low > maker.To.Best:
		w.Note = quantity.Both(v.Steady.Low.Minus(maker.To.Best)) + " too hot"
	case v.Steady.High < maker.From.Best:
		w.Note = quantity.Both(maker.From.Best.Minus(v.Steady.High)) + " too cool"
	default:
		w.Hit = true
	}
	return w, nil
}
