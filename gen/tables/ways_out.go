package tables

import (
	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// humiditySteps are the humidities that a plan knows of a measured stack: a
// reading is taken up to the next of them, to the safe side.
var humiditySteps = []quantity.Fraction{0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9}

// takenUp is a measured humidity taken up to the next step.
func takenUp(h quantity.Fraction) quantity.Fraction {
	for _, s := range humiditySteps {
		if h <= s+1e-9 {
			return s
		}
	}
	return humiditySteps[len(humiditySteps)-1]
}

// waysOut computes what would open a window: the fastest of the machine's
// listed speeds below this one, the dampest step below this humidity, and the
// other films that have one in the same machine at the same speed.
func (t *Tables) waysOut(c WindowCase, p pairing) ([]string, error) {
	solver, r := nip.NewSolver(), new(nip.Response)
	open := func(c WindowCase, p pairing) (bool, error) {
		if err := t.solve(solver, p, r); err != nil {
			return false, err
		}
		v, err := t.judge(c, p, r)
		return v.Open(), err
	}
	var ways []string
	speeds := Speeds(p.machine)
	for i := len(speeds) - 1; i >= 0; i-- {
		slower := p
		if slower.speed = speeds[i]; slower.speed >= p.speed {
			continue
		}
		if ok, err := open(c, slower); err != nil {
			return nil, err
		} else if ok {
			ways = append(ways, fill(phrases["way-slower"], "speed", pace(slower.speed)))
			break
		}
	}
	for i := len(humiditySteps) - 1; i >= 0; i-- {
		drier := c
		if drier.Humidity = humiditySteps[i]; drier.Humidity >= c.Humidity {
			continue
		}
		if ok, err := open(drier, p); err != nil {
			return nil, err
		} else if ok {
			ways = append(ways, fill(phrases["way-drier"], "humidity", quantity.Metric(drier.Humidity)))
			break
		}
	}
	var films []string
	for _, film := range t.HotFilms() {
		other := p
		if other.film = film; film == p.film || len(fits(film, p.medium, p.machine)) > 0 {
			continue
		}
		if ok, err := open(c, other); err != nil {
			return nil, err
		} else if ok {
			films = append(films, film.ID)
		}
	}
	if len(films) > 0 {
		ways = append(ways, fill(phrases["way-film"], "films", nameList(films, t.filmName)))
	}
	return ways, nil
}
