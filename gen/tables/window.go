package tables

import (
	"fmt"
	"math"

	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// WindowCase is a film on a medium in a laminator at a speed, in a place.
type WindowCase struct {
	Film, Medium, Laminator string // ids
	Speed                   quantity.Speed
	Temperature             quantity.Temperature // of the room, the sheet and the film's roll
	Humidity                quantity.Fraction    // that the sheet is in balance with: the room's, or the stack's
}

// WindowValue is the computed window of one case.
type WindowValue struct {
	WindowCase
	Room string // id of the room, in the table
	// First is the window of the first piece, Steady of the steady run, Whole
	// holds for both. With a soft cover the steady run may want a setting at
	// which the first piece would blister: then Whole is shut while both are open.
	First, Steady, Whole Range
	// FirstBounds and SteadyBounds are all limits of each: the lowest set
	// temperature first, then every highest.
	FirstBounds, SteadyBounds []Bound
	// Reason says why there is no window, and Opens what would open one.
	Reason string
	Opens  []string

	gas gasLimit
}

// Open says that the first piece and the steady run each have a window.
func (v WindowValue) Open() bool { return v.First.Open() && v.Steady.Open() }

// Middle is a set temperature to work with: the middle of what holds for first
// piece and steady run, or of the first piece's window, or, where that is shut,
// the lowest at which the adhesive bonds.
func (v WindowValue) Middle() quantity.Temperature {
	for _, r := range []Range{v.Whole, v.First} {
		if r.Open() {
			return quantity.FromCelsius(math.Round((r.Low.Celsius() + r.High.Celsius()) / 2))
		}
	}
	return up(max(v.First.Low, v.Steady.Low))
}

// Spans are the windows of the first piece and of the steady run in whole
// degrees, rounded to the safe side.
func (v WindowValue) Spans() (first, steady Span) { return spanOf(v.First), spanOf(v.Steady) }

// HighLimits name what bounds the first piece and the steady run from above.
func (v WindowValue) HighLimits() (first, steady string) {
	return tightest(v.FirstBounds).Limit, tightest(v.SteadyBounds).Limit
}

// Range is a range of set temperatures.
type Range struct{ Low, High quantity.Temperature }

// Open says that there is a set temperature of whole degrees in it.
func (r Range) Open() bool { return up(r.Low) <= down(r.High) }

// holds says that a set temperature lies in it.
func (r Range) holds(t quantity.Temperature) bool { return t >= r.Low && t <= r.High }

// Window computes the window of one case, and where there is none, what would
// open one.
func (t *Tables) Window(c WindowCase) (WindowValue, error) {
	p, err := t.resolveWindow(c)
	if err != nil {
		return WindowValue{}, err
	}
	r := new(nip.Response)
	if err := t.solve(nip.NewSolver(), p, r); err != nil {
		return WindowValue{}, err
	}
	v, err := t.judge(c, p, r)
	if err == nil && !v.Open() {
		v.Opens, err = t.waysOut(c, p)
	}
	return v, err
}

// WindowWorking is the way to a window.
func (t *Tables) WindowWorking(v WindowValue) (Working, error) {
	p, err := t.resolveWindow(v.WindowCase)
	if err != nil {
		return Working{}, err
	}
	return t.windowWorking(p, v)
}

// resolveWindow finds a case's records.
func (t *Tables) resolveWindow(c WindowCase) (pairing, error) {
	p := pairing{t.shop.Film(c.Film), t.shop.Medium(c.Medium), t.shop.Laminator(c.Laminator), c.Speed}
	switch {
	case p.film == nil:
		return p, t.unknown("films", c.Film)
	case p.medium == nil:
		return p, t.unknown("media", c.Medium)
	case p.machine == nil:
		return p, t.unknown("laminators", c.Laminator)
	case p.film.Class == "cold":
		return p, fmt.Errorf("%s is laid without heat", p.film.Name)
	case !(c.Speed > 0):
		return p, fmt.Errorf("a speed of %s: it must be above 0", quantity.Metric(c.Speed))
	}
	return p, nil
}

// judge composes the limits of a case from the responses of its run.
func (t *Tables) judge(c WindowCase, p pairing, r *nip.Response) (WindowValue, error) {
	gas, err := t.gasOf(p.medium, c.Humidity, c.Temperature)
	if err != nil {
		return WindowValue{}, err
	}
	return compose(c, p, r, gas)
}

func compose(c WindowCase, p pairing, r *nip.Response, gas gasLimit) (WindowValue, error) {
	v := WindowValue{WindowCase: c, gas: gas}
	temps := temperatures(p.machine, c.Temperature)
	var err error
	if v.FirstBounds, err = bounds(&r.First, temps, p, gas); err != nil {
		return v, err
	}
	if v.SteadyBounds, err = bounds(&r.Steady, temps, p, gas); err != nil {
		return v, err
	}
	v.First, v.Steady = rangeOf(v.FirstBounds), rangeOf(v.SteadyBounds)
	v.Whole = Range{max(v.First.Low, v.Steady.Low), min(v.First.High, v.Steady.High)}
	if !v.Open() {
		v.Reason = crossing(v.FirstBounds, v.SteadyBounds)
	}
	return v, nil
}

// solve runs the solver for a pairing with its film's contacts.
func (t *Tables) solve(solver *nip.Solver, p pairing, r *nip.Response) error {
	pass, err := t.pass(p, t.places[p.film.ID])
	if err != nil {
		return err
	}
	return run(solver, p, pass, r)
}

func run(solver *nip.Solver, p pairing, pass *nip.Pass, r *nip.Response) error {
	if err := solver.Run(pass, r); err != nil {
		return fmt.Errorf("%s on %s in %s: %w", p.film.ID, p.medium.ID, p.machine.ID, err)
	}
	return nil
}
