package paper

import (
	"fmt"

	"laydown/gen/quantity"
)

// Sheet is a print's medium as far as water is concerned: a base with fibre in it, and the
// layers on it. All of it is in one equilibrium. Where a seal (a plastic layer) parts the
// base from the printed face, what lies under a film is Face.
//
// A Sheet is an Isotherm itself: its moisture counts on its own dry mass.
type Sheet struct {
	Fibre      Isotherm          // of the fibre in the base; nil is Pulp
	FibreShare quantity.Fraction // fibre in the dry base, kg/kg; 0 in plastic
	Base       quantity.Grammage // the base when dry; may be 0 where there are no layers
	Layers     []Layer           // receiving layers, coats
}

// Layer is a layer with its own isotherm on a Sheet.
type Layer struct {
	Isotherm Isotherm
	Grammage quantity.Grammage // dry
}

// Face is the part of a sheet that lies above a seal: its layers alone.
func (s Sheet) Face() Sheet { return Sheet{Layers: s.Layers} }

// Moisture implements Isotherm: the water of base and layers on their dry mass. Without
// layers it is that of the fibre times the fibre share.
func (s Sheet) Moisture(a quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if err := s.check(); err != nil {
		return 0, err
	}
	base, err := s.baseMoisture(a, t)
	if err != nil || len(s.Layers) == 0 {
		return base, err
	}
	water, err := s.Water(a, t)
	return quantity.Fraction(water / s.Dry()), err
}

// Activity is the inverse of Moisture, capped at 1. Where one part of the sheet holds all
// of its water it is that part's own; where several do, they share it by halving.
func (s Sheet) Activity(m quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if err := s.check(); err != nil {
		return 0, err
	}
	switch {
	case len(s.Layers) == 0 && s.FibreShare > 0:
		return Activity(s.fibre(), m/s.FibreShare, t)
	case len(s.Layers) == 1 && (s.FibreShare == 0 || s.Base == 0):
		only := s.Layers[0]
		if only.Grammage > 0 {
			return Activity(only.Isotherm, m*quantity.Fraction(s.Dry()/only.Grammage), t)
		}
	}
	return bracketed(s, m, t)
}

// Water is the water in a square metre of the sheet in equilibrium with activity a.
func (s Sheet) Water(a quantity.Fraction, t quantity.Temperature) (quantity.Grammage, error) {
	if err := s.check(); err != nil {
		return 0, err
	}
	m, err := s.baseMoisture(a, t)
	if err != nil {
		return 0, err
	}
	sum := quantity.Grammage(m) * s.Base
	for _, l := range s.Layers {
		water, err := l.Water(a, t)
		if err != nil {
			return 0, err
		}
		sum += water
	}
	return sum, nil
}

// Water is the water in a square metre of the layer in equilibrium with activity a.
func (l Layer) Water(a quantity.Fraction, t quantity.Temperature) (quantity.Grammage, error) {
	m, err := l.Isotherm.Moisture(a, t)
	return quantity.Grammage(m) * l.Grammage, err
}

// Dry is the mass of a square metre of the sheet without its water.
func (s Sheet) Dry() quantity.Grammage {
	sum := s.Base
	for _, l := range s.Layers {
		sum += l.Grammage
	}
	return sum
}

// DryOf is what a base of the sheet's fibre that weighs moist when conditioned at 50 %
// and 23 °C, as grammages are stated, weighs when dry: moist/(1 + M).
func (s Sheet) DryOf(moist quantity.Grammage) (quantity.Grammage, error) {
	m, err := s.baseMoisture(0.5, quantity.FromCelsius(23))
	return moist / quantity.Grammage(1+m), err
}

// pulp is Pulp in an interface once, so that no sheet makes one of its own.
var pulp Isotherm = Pulp

func (s Sheet) fibre() Isotherm {
	if s.Fibre == nil {
		return pulp
	}
	return s.Fibre
}

func (s Sheet) baseMoisture(a quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if s.FibreShare == 0 {
		// Whatever holds no fibre holds no water, in any air.
		return 0, within("a base without fibre", a, t, gabColdest, gabHottest)
	}
	m, err := s.fibre().Moisture(a, t)
	return m * s.FibreShare, err
}

func (s Sheet) check() error {
	if !(s.FibreShare >= 0 && s.FibreShare <= 1) {
		return fmt.Errorf("a fibre share of %.4g %% is outside 0 %% to 100 %%", s.FibreShare.Percent())
	}
	if !(s.Base >= 0) {
		return fmt.Errorf("a base of %.4g g/m² is outside 0 g/m² and up", s.Base.GramsPerSquareMetre())
	}
	for _, l := range s.Layers {
		if !(l.Grammage >= 0) {
			return fmt.Errorf("a layer of %.4g g/m² is outside 0 g/m² and up", l.Grammage.GramsPerSquareMetre())
		}
	}
	if len(s.Layers) > 0 && !(s.Dry() > 0) {
		return fmt.Errorf("a sheet with layers weighs nothing: base and layers need their grammage")
	}
	return nil
}
