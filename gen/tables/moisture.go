package tables

import (
	"errors"
	"fmt"

	"laydown/gen/paper"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// gasLimit is the bond line temperature from which the air trapped under the
// film swells too far once the nip's pressure is off. False where the medium
// holds no water, or where nothing swells so far below hottest.
type gasLimit struct {
	temperature quantity.Temperature
	ratio       float64 // the swelling allowed
	moisture    quantity.Fraction
	sealed      bool
	holds       bool
}

// hottestBond is how far gas swelling is looked for: the isotherms end there.
const hottestBond = 120 + 273.15

// sheetOf is a medium as far as its water is concerned. Where the back is sealed
// only the receiving layer lies under the film.
func (t *Tables) sheetOf(m *shop.Medium, fibre paper.Isotherm) (s paper.Sheet, sealed, wet bool, err error) {
	s.FibreShare = m.FibreShare.Best
	if s.Fibre, err = t.branch(fibre); err != nil {
		return s, false, false, err
	}
	sealed = m.Drying != nil && m.Drying.Back == "sealed"
	if m.Receives == nil {
		return s, sealed, s.FibreShare > 0 && !sealed, nil
	}
	receiver := map[string]paper.Receiver{"gelatine": paper.Gelatine, "pva": paper.PVA, "silica": paper.Silica}[m.Receives.Layer]
	s.Layers = []paper.Layer{{Isotherm: receiver.Isotherm, Grammage: m.Receives.Grammage.Best}}
	s.Base = max(m.Grammage.Best-m.Receives.Grammage.Best, 0)
	if sealed {
		s = s.Face()
	}
	return s, sealed, true, nil
}

// branch is an isotherm on the branch that the shop's paper is on.
func (t *Tables) branch(i paper.Isotherm) (paper.Isotherm, error) {
	switch t.shop.Front.Branch {
	case "wetting":
		return paper.OnBranch(i, paper.Wetting, paper.UsualGap)
	case "drying":
		return paper.OnBranch(i, paper.Drying, paper.UsualGap)
	}
	return i, nil
}

// gasOf is gas, kept. A medium that is not the shop's own record (one with an
// input moved to the end of its spread) is computed afresh.
func (t *Tables) gasOf(m *shop.Medium, humidity quantity.Fraction, room quantity.Temperature) (gasLimit, error) {
	k := gasKey{m.ID, humidity, room}
	own := t.shop.Medium(m.ID) == m
	if own {
		if g, ok := t.gases.get(k); ok {
			return g, nil
		}
	}
	g, err := t.gas(m, humidity, room)
	if err == nil && own {
		t.gases.put(k, g)
	}
	return g, err
}

// gas returns the gas limit of a medium in equilibrium with a humidity at a
// temperature.
func (t *Tables) gas(m *shop.Medium, humidity quantity.Fraction, room quantity.Temperature) (gasLimit, error) {
	return t.gasBy(m, humidity, room, paper.Pulp, 0)
}

// gasBy is gas by another isotherm of the fibre, and at another ratio where it
// is not 0.
func (t *Tables) gasBy(m *shop.Medium, humidity quantity.Fraction, room quantity.Temperature, fibre paper.Isotherm, ratio float64) (gasLimit, error) {
	s, sealed, wet, err := t.sheetOf(m, fibre)
	if err != nil {
		return gasLimit{}, err
	}
	if !wet {
		return gasLimit{sealed: sealed}, nil
	}
	g := gasLimit{ratio: paper.OpenLimit, sealed: sealed}
	if sealed {
		g.ratio = paper.SealedLimit
	} else if ratio != 0 {
		g.ratio = ratio
	}
	trap, err := paper.Conditioned(s, humidity, room, t.pressure)
	if err != nil {
		return g, fmt.Errorf("moisture of %s: %w", m.ID, err)
	}
	g.moisture = trap.Moisture
	g.temperature, err = trap.Reaches(g.ratio, hottestBond)
	if errors.Is(err, paper.ErrNotReached) {
		return g, nil
	}
	g.holds = err == nil
	return g, err
}
