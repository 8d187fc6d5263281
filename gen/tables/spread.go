package tables

import (
	"cmp"
	"math"
	"slices"

	"laydown/gen/nip"
	"laydown/gen/paper"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Move is how far the bounds of a window move when one input goes from the low
// to the high end of its spread, the others staying.
type Move struct {
	Input string
	// Low and High are the bounds of the whole run at the input's two ends.
	Low, High [2]quantity.Temperature
}

// Size is the larger of the two movements.
func (m Move) Size() quantity.TemperatureDifference {
	d := func(x [2]quantity.Temperature) float64 { return math.Abs(float64(x[1] - x[0])) }
	return quantity.TemperatureDifference(max(d(m.Low), d(m.High)))
}

// WindowSpread moves each input of a window through its spread. The one that
// moves a bound most comes first: measure that one first.
func (t *Tables) WindowSpread(c WindowCase) ([]Move, error) {
	p, err := t.resolveWindow(c)
	if err != nil {
		return nil, err
	}
	var moves []Move
	add := func(input string, at func(end float64) (WindowValue, error)) error {
		m := Move{Input: input}
		for i, end := range []float64{-1, 1} {
			v, err := at(end)
			if err != nil {
				return err
			}
			m.Low[i], m.High[i] = v.Whole.Low, v.Whole.High
		}
		moves = append(moves, m)
		return nil
	}
	solver, own := nip.NewSolver(), new(nip.Response)
	if err := t.solve(solver, p, own); err != nil {
		return nil, err
	}
	if err := add("contact conductances", func(end float64) (WindowValue, error) {
		pass, err := t.pass(p, end)
		if err != nil {
			return WindowValue{}, err
		}
		r := new(nip.Response)
		if err := run(solver, p, pass, r); err != nil {
			return WindowValue{}, err
		}
		return t.judge(c, p, r)
	}); err != nil {
		return nil, err
	}
	film, medium := *p.film, *p.medium
	changed := p
	changed.film, changed.medium = &film, &medium
	vary := func(input string, set func(end float64)) error {
		err := add(input, func(end float64) (WindowValue, error) {
			set(end)
			return t.judge(c, changed, own)
		})
		film, medium = *p.film, *p.medium
		return err
	}
	for _, in := range []struct {
		name string
		set  func(end float64)
		has  bool
	}{
		{"activation of the adhesive", func(e float64) { toEnd(&film.Activation, e) }, spreads(film.Activation)},
		{"heat limit of the film", func(e float64) { toEnd(&film.HeatLimit, e) }, spreads(film.HeatLimit)},
		{"heat limit of the medium", func(e float64) { toEnd(&medium.HeatLimit, e) }, spreads(medium.HeatLimit)},
		{"fibre share of the medium", func(e float64) { toEnd(&medium.FibreShare, e) }, spreads(medium.FibreShare)},
	} {
		if in.has {
			if err := vary(in.name, in.set); err != nil {
				return nil, err
			}
		}
	}
	s, sealed, wet, err := t.sheetOf(p.medium, paper.Pulp)
	if err != nil {
		return nil, err
	}
	if wet && !sealed && s.FibreShare > 0 {
		m, err := t.isothermMove(c, p, own)
		if err != nil {
			return nil, err
		}
		moves = append(moves, m)
	}
	slices.SortStableFunc(moves, func(a, b Move) int { return cmp.Compare(b.Size(), a.Size()) })
	return moves, nil
}

// isothermMove is the least and the most that the three isotherms give, each at
// the swelling that its own calibration allows.
func (t *Tables) isothermMove(c WindowCase, p pairing, r *nip.Response) (Move, error) {
	m := Move{Input: "isotherm of the fibre"}
	opinions, err := paper.Opinions(paper.UsualFibreShare)
	if err != nil {
		return m, err
	}
	for i, o := range opinions {
		ratio := paper.OpenLimit
		if i > 0 {
			ratio = o.Bounds.Middle()
		}
		gas, err := t.gasBy(p.medium, c.Humidity, c.Temperature, o.Isotherm, ratio)
		if err != nil {
			return m, err
		}
		v, err := compose(c, p, r, gas)
		if err != nil {
			return m, err
		}
		if i == 0 || v.Whole.High < m.High[0] {
			m.High[0] = v.Whole.High
		}
		if i == 0 || v.Whole.High > m.High[1] {
			m.High[1] = v.Whole.High
		}
		m.Low = [2]quantity.Temperature{v.Whole.Low, v.Whole.Low}
	}
	return m, nil
}

func spreads[Q quantity.Quantity](v shop.Value[Q]) bool { return v.Set && v.Low < v.High }

// toEnd puts a value at the low or the high end of its spread.
func toEnd[Q quantity.Quantity](v *shop.Value[Q], end float64) {
	v.Best = v.High
	if end < 0 {
		v.Best = v.Low
	}
}
