package tables

import (
	"fmt"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// anchorHeat places the contact conductances of a film inside their bands so
// that the lowest roller temperature lies in its maker's roller range, on the
// machine class, medium and speed that the maker names. The maker speaks of
// rollers, so the temperature is that of the roller's surface in the steady
// run. Where the recommended conductances do that already they stay; else they
// move just as far as they must. Where no place in the band does it, the nearer
// end stands, with a warning that has both figures.
func (t *Tables) anchorHeat(film *shop.Film) (float64, []Warning, error) {
	if film.Class == "cold" || film.Rollers == nil || film.Rollers.Medium.ID == "" {
		return 0, nil, nil
	}
	p := pairing{film, t.shop.Medium(film.Rollers.Medium.ID), t.makersMachine(film), film.Rollers.Speed.Best}
	if p.machine == nil {
		return 0, nil, nil
	}
	solver, r := nip.NewSolver(), new(nip.Response)
	lowest := func(place float64) (quantity.Temperature, error) {
		pass, err := t.pass(p, place)
		if err != nil {
			return 0, err
		}
		pass.Upper.Sensed, pass.Lower.Sensed = nip.AtSurface, nip.AtSurface
		if err := run(solver, p, pass, r); err != nil {
			return 0, err
		}
		b, err := bounds(&r.Steady, temperatures(p.machine, referenceRoom), p, gasLimit{})
		if err != nil {
			return 0, err
		}
		return b[0].Temperature, nil
	}
	usual, err := lowest(0)
	if err != nil {
		return 0, nil, err
	}
	// Better contact needs a lower temperature.
	want, end := usual, 0.0
	switch {
	case usual > film.Rollers.To.Best:
		want, end = film.Rollers.To.Best, 1
	case usual < film.Rollers.From.Best:
		want, end = film.Rollers.From.Best, -1
	default:
		return 0, nil, nil
	}
	most, err := lowest(end)
	if err != nil {
		return 0, nil, err
	}
	if (most-want)*(usual-want) > 0 {
		return end, []Warning{{Film: film.ID, Text: fmt.Sprintf(
			"%s: its maker's rollers run from %s to %s at %s; with the contacts at the end of their bands the lowest comes out at %s (%s on %s).",
			film.Name, quantity.Both(film.Rollers.From.Best), quantity.Both(film.Rollers.To.Best), quantity.Both(p.speed),
			quantity.Both(most), p.medium.Name, p.machine.Name)}}, nil
	}
	inside, outside := end, 0.0
	for range 40 {
		mid := (inside + outside) / 2
		got, err := lowest(mid)
		if err != nil {
			return 0, nil, err
		}
		if (got-want)*(usual-want) > 0 {
			outside = mid
		} else {
			inside = mid
		}
	}
	return inside, nil, nil
}

// referenceRoom is the temperature that makers' figures are taken to hold for
// (the standard atmosphere of paper testing, TAPPI T 402 and ISO 187).
const referenceRoom = 23 + 273.15

// makersMachine is the shop's machine of the class that a film's maker names.
func (t *Tables) makersMachine(film *shop.Film) *shop.Laminator {
	for _, m := range t.shop.Laminators {
		if m.Class == film.Rollers.Machine && names(film.RunsOn, m.ID) {
			return m
		}
	}
	return nil
}
