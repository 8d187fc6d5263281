package tables

import (
	"math"

	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// WindowAt computes the window of one case and leaves out what would open one.
func (t *Tables) WindowAt(c WindowCase) (WindowValue, error) {
	list, err := t.sweepSpeeds(c, []quantity.Speed{c.Speed})
	if err != nil {
		return WindowValue{}, err
	}
	return list[0], nil
}

// WindowsBySpeed computes a case's windows at steps of speed, each faster by
// one ratio, from the laminator's slowest to its fastest.
func (t *Tables) WindowsBySpeed(c WindowCase, steps int) ([]WindowValue, error) {
	m := t.shop.Laminator(c.Laminator)
	if m == nil {
		return nil, t.unknown("laminators", c.Laminator)
	}
	speeds := make([]quantity.Speed, steps)
	slowest, fastest := float64(m.Slowest.Best), float64(m.Fastest.Best)
	for i := range speeds {
		speeds[i] = quantity.Speed(slowest * math.Pow(fastest/slowest, float64(i)/float64(steps-1)))
	}
	speeds[0], speeds[steps-1] = m.Slowest.Best, m.Fastest.Best
	return t.sweepSpeeds(c, speeds)
}

func (t *Tables) sweepSpeeds(c WindowCase, speeds []quantity.Speed) ([]WindowValue, error) {
	solver, r := nip.NewSolver(), new(nip.Response)
	list := make([]WindowValue, len(speeds))
	for i, speed := range speeds {
		c.Speed = speed
		p, err := t.resolveWindow(c)
		if err != nil {
			return nil, err
		}
		if err := t.solve(solver, p, r); err != nil {
			return nil, err
		}
		if list[i], err = t.judge(c, p, r); err != nil {
			return nil, err
		}
	}
	return list, nil
}

// WindowsByHumidity computes a case's windows in equal steps of the humidity
// that the sheet is in balance with, from HumidityLeast to HumidityMost. The
// heat is solved once: humidity moves the limits only.
func (t *Tables) WindowsByHumidity(c WindowCase, steps int) ([]WindowValue, error) {
	p, err := t.resolveWindow(c)
	if err != nil {
		return nil, err
	}
	r := new(nip.Response)
	if err := t.solve(nip.NewSolver(), p, r); err != nil {
		return nil, err
	}
	list := make([]WindowValue, steps)
	for i := range list {
		c.Humidity = quantity.Fraction(HumidityLeast + (HumidityMost-HumidityLeast)*float64(i)/float64(steps-1))
		if list[i], err = t.judge(c, p, r); err != nil {
			return nil, err
		}
	}
	return list, nil
}

// HumiditiesAt computes the highest humidity of a pairing's sheet for each of
// some set temperatures, at the speed and the room's temperature of the case.
func (t *Tables) HumiditiesAt(c WindowCase, sets []quantity.Temperature) ([]HumidityValue, error) {
	p, err := t.resolveWindow(c)
	if err != nil {
		return nil, err
	}
	r := new(nip.Response)
	if err := t.solve(nip.NewSolver(), p, r); err != nil {
		return nil, err
	}
	return t.humidities(p, c.Temperature, sets, r)
}
