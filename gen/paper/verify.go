package paper

import (
	"fmt"

	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about, in the units of the
// source: what names it, given holds its inputs: celsius or fahrenheit, activity (0 to 1),
// moisture (kg/kg). Tests and the verification page ask it; both get what this build
// computes.
func Verify(what string, given map[string]float64) (float64, error) {
	t := quantity.FromCelsius(given["celsius"])
	a, m := quantity.Fraction(given["activity"]), quantity.Fraction(given["moisture"])
	switch what {
	case "moisture of wood, %":
		if f, ok := given["fahrenheit"]; ok {
			return woodFahrenheit.moisture(float64(a), f).Percent(), nil
		}
		m, err := Wood{}.Moisture(a, t)
		return m.Percent(), err
	case "moisture of paper, %":
		m, err := PaltakariKarlsson{}.Moisture(a, t)
		return m.Percent(), err
	case "activity over paper":
		a, err := Activity(PaltakariKarlsson{}, m, t)
		return float64(a), err
	case "C of pulp":
		c, _ := Pulp.constants(t)
		return c, nil
	case "K of pulp":
		_, k := Pulp.constants(t)
		return k, nil
	case "moisture of pulp":
		m, err := Pulp.Moisture(a, t)
		return float64(m), err
	case "activity over pulp":
		a, err := Activity(Pulp, m, t)
		return float64(a), err
	case "net isosteric heat of pulp, kJ/kg":
		return verifyHeat(NetHeat, m, a, t)
	case "net isosteric heat of pulp by difference, kJ/kg":
		return verifyHeat(differenceHeat, m, a, t)
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// verifyHeat gives the heat at a moisture, or at the moisture of an activity.
func verifyHeat(heat func(Isotherm, quantity.Fraction, quantity.Temperature) (quantity.SpecificEnergy, error),
	m, a quantity.Fraction, t quantity.Temperature) (float64, error) {
	if a > 0 {
		var err error
		if m, err = Pulp.Moisture(a, t); err != nil {
			return 0, err
		}
	}
	h, err := heat(Pulp, m, t)
	return float64(h) / 1e3, err
}
