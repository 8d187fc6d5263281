package tables

import (
	"fmt"

	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// HumidityValue is the highest humidity that a sheet may be in balance with, for
// a film, a medium and a set temperature, at the machine's usual speed.
type HumidityValue struct {
	Film, Medium, Laminator string
	Speed                   quantity.Speed
	Set                     quantity.Temperature
	// Runs is false where the setting will not do however dry the sheet is.
	Runs bool
	// Humidity is the highest; Free says that nothing up to HumidityMost limits it.
	Humidity quantity.Fraction
	Free     bool
}

// The humidities that the table looks at. Above 65 % the isotherms part too far
// for an answer, and paper drier than 20 % is not kept anywhere.
const (
	HumidityLeast = 0.20
	HumidityMost  = 0.65
)

// SetSteps are the set temperatures of the table, in °C.
var SetSteps = []float64{80, 85, 90, 95, 100, 105, 110, 115, 120, 125, 130, 135, 140}

// Humidities computes the table at the reference room's temperature. A setting
// runs when it lies in the window of the first piece or of the steady run: with
// a soft cover the two differ, and the setting is changed between them.
func (t *Tables) Humidities() ([]HumidityValue, error) {
	solver, r := nip.NewSolver(), new(nip.Response)
	var sets []quantity.Temperature
	for _, celsius := range SetSteps {
		sets = append(sets, quantity.FromCelsius(celsius))
	}
	var all []HumidityValue
	for _, p := range t.pairings() {
		if err := t.solve(solver, p, r); err != nil {
			return nil, err
		}
		list, err := t.humidities(p, referenceRoom, sets, r)
		if err != nil {
			return nil, err
		}
		all = append(all, list...)
	}
	return all, nil
}

// humidities are the values of a pairing whose heat is solved.
func (t *Tables) humidities(p pairing, room quantity.Temperature, sets []quantity.Temperature, r *nip.Response) ([]HumidityValue, error) {
	list := make([]HumidityValue, len(sets))
	for i, set := range sets {
		v := HumidityValue{Film: p.film.ID, Medium: p.medium.ID, Laminator: p.machine.ID, Speed: p.speed, Set: set}
		if err := t.dampest(&v, p, room, r); err != nil {
			return nil, fmt.Errorf("humidity for %s on %s: %w", v.Film, v.Medium, err)
		}
		list[i] = v
	}
	return list, nil
}

// dampest finds the highest humidity at which a setting runs, to 0.1 %.
func (t *Tables) dampest(v *HumidityValue, p pairing, room quantity.Temperature, r *nip.Response) error {
	runs := func(h quantity.Fraction) (bool, error) {
		w, err := t.judge(WindowCase{v.Film, v.Medium, v.Laminator, v.Speed, room, h}, p, r)
		return w.First.holds(v.Set) || w.Steady.holds(v.Set), err
	}
	lo, hi := quantity.Fraction(HumidityLeast), quantity.Fraction(HumidityMost)
	ok, err := runs(hi)
	if err != nil {
		return err
	}
	if ok {
		v.Runs, v.Free, v.Humidity = true, true, hi
		return nil
	}
	if ok, err = runs(lo); err != nil || !ok {
		return err
	}
	for hi-lo > 0.001 {
		mid := (lo + hi) / 2
		if ok, err = runs(mid); err != nil {
			return err
		}
		if ok {
			lo = mid
		} else {
			hi = mid
		}
	}
	v.Runs, v.Humidity = true, lo
	return nil
}
