package tables

import (
	"fmt"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// heatShard is what the plan page knows of heat on one medium: the window of
// every hot film in every machine that takes both, at the machine's listed
// speeds, in every room, for a sheet in balance with the room and with each
// humidity step that a stack may be measured at.
type heatShard struct {
	Medium string `json:"medium"`
	// Windows by film/machine; then by speed, then by room, in the data's order:
	// the lowest of first piece and steady run, and then for the room and each
	// humidity step the highest of first piece and steady run and what limits
	// the first and the steady (film 0, medium 1, gas 2, laminator 3), all in
	// whole °C.
	Windows map[string][][][]float64 `json:"windows"`
}

var limitCodes = map[string]float64{"film": 0, "medium": 1, "gas": 2, "laminator": 3}

// limitNames are the limits in the order of their codes.
var limitNames = []string{"film", "medium", "gas", "laminator"}

func (t *Tables) heatShard(medium *shop.Medium, pairings []pairing) (heatShard, error) {
	h := heatShard{Medium: medium.ID, Windows: map[string][][][]float64{}}
	solver, r := nip.NewSolver(), new(nip.Response)
	for _, p := range pairings {
		if p.medium != medium {
			continue
		}
		var speeds [][][]float64
		for _, p.speed = range Speeds(p.machine) {
			if err := t.solve(solver, p, r); err != nil {
				return h, err
			}
			var rooms [][]float64
			for _, room := range t.shop.Rooms {
				row, err := t.heatRow(p, r, room)
				if err != nil {
					return h, fmt.Errorf("%s: %w", room.ID, err)
				}
				rooms = append(rooms, row)
			}
			speeds = append(speeds, rooms)
		}
		h.Windows[p.film.ID+"/"+p.machine.ID] = speeds
	}
	return h, nil
}

func (t *Tables) heatRow(p pairing, r *nip.Response, room *shop.Room) ([]float64, error) {
	var row []float64
	for i, h := range append([]quantity.Fraction{room.Humidity.Best}, humiditySteps...) {
		v, err := t.judge(WindowCase{p.film.ID, p.medium.ID, p.machine.ID, p.speed, room.Temperature.Best, h}, p, r)
		if err != nil {
			return nil, err
		}
		first, steady := spanOf(v.First), spanOf(v.Steady)
		if i == 0 {
			row = append(row, first.Low, steady.Low)
		}
		row = append(row, first.High, steady.High, limitCodes[tightest(v.FirstBounds).Limit], limitCodes[tightest(v.SteadyBounds).Limit])
	}
	return row, nil
}
