package tables

import (
	"slices"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// HotFilms returns the films that are laid with heat.
func (t *Tables) HotFilms() []*shop.Film {
	var list []*shop.Film
	for _, f := range t.shop.Films {
		if f.Class != "cold" {
			list = append(list, f)
		}
	}
	return list
}

// Speeds are the speeds of a laminator that the tables hold: its slowest, its
// usual and its fastest.
func Speeds(m *shop.Laminator) []quantity.Speed {
	list := []quantity.Speed{m.Slowest.Best, m.Usual.Best, m.Fastest.Best}
	return slices.Compact(list)
}

// pairings lists every hot film on every medium in every machine that takes
// both, in the data's order. Which ink is on the medium does not matter here:
// what speaks against a film on a print are the shop's rules.
func (t *Tables) pairings() []pairing {
	var list []pairing
	for _, film := range t.HotFilms() {
		for _, medium := range t.shop.Media {
			if !knowsHeat(medium) {
				continue
			}
			for _, machine := range t.shop.Laminators {
				if len(fits(film, medium, machine)) == 0 {
					list = append(list, pairing{film, medium, machine, machine.Usual.Best})
				}
			}
		}
	}
	return list
}

// Windows computes the whole table: every hot film on every medium in every
// machine that takes both, at three speeds, in every room.
func (t *Tables) Windows() ([]WindowValue, error) {
	pairings := t.pairings()
	parts, err := eachOf(len(pairings), func(solver *nip.Solver, i int) ([]WindowValue, error) {
		return t.windowsOf(pairings[i], solver, new(nip.Response))
	})
	return slices.Concat(parts...), err
}

// windowsOf computes a pairing's windows at every listed speed in every room.
func (t *Tables) windowsOf(p pairing, solver *nip.Solver, r *nip.Response) ([]WindowValue, error) {
	var list []WindowValue
	for _, p.speed = range Speeds(p.machine) {
		if err := t.solve(solver, p, r); err != nil {
			return nil, err
		}
		for _, room := range t.shop.Rooms {
			v, err := t.judge(WindowCase{p.film.ID, p.medium.ID, p.machine.ID, p.speed, room.Temperature.Best, room.Humidity.Best}, p, r)
			if err != nil {
				return nil, err
			}
			v.Room = room.ID
			list = append(list, v)
		}
	}
	return list, nil
}

// knowsHeat says that a medium's record holds what the heat needs.
func knowsHeat(m *shop.Medium) bool { return m.Conductivity.Set && m.SpecificHeat.Set }
