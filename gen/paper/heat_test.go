package paper

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// The closed form of GAB's net isosteric heat against the difference of its own inverse.
func TestNetHeatAgainstDifference(t *testing.T) {
	for _, g := range []GAB{Pulp, Gelatine.Isotherm, PVA.Isotherm, Silica.Isotherm} {
		for celsius := 5.0; celsius < 145; celsius += 10 {
			for _, m := range []quantity.Fraction{0.005, 0.02, 0.05, 0.08} {
				at := quantity.FromCelsius(celsius)
				want, err := NetHeat(g, m, at)
				got, err2 := differenceHeat(g, m, at)
				if err != nil || err2 != nil || !(math.Abs(float64(got-want)) <= 1e-6*float64(want)) {
					t.Errorf("%s, %g °C, %g: closed %.9g (%v), difference %.9g (%v)", g.Name, celsius, float64(m), float64(want), err, float64(got), err2)
				}
			}
		}
	}
}

// The isotherms agree on the order of the heat where paper is used, not on the figure: the two of
// fibre and paper give 300 to 1000 kJ/kg at 5 to 8 % moisture, wood less than either.
func TestNetHeatHasItsOrder(t *testing.T) {
	for _, m := range []quantity.Fraction{0.05, 0.06, 0.07, 0.08} {
		var h [3]float64
		for n, i := range []Isotherm{Wood{}, Pulp, PaltakariKarlsson{}} {
			got, err := NetHeat(i, m, quantity.FromCelsius(40))
			if err != nil {
				t.Fatal(err)
			}
			h[n] = float64(got) / 1e3
		}
		t.Logf("40 °C, moisture %.2f: wood %.0f, pulp %.0f, paper %.0f kJ/kg", float64(m), h[0], h[1], h[2])
		if !(h[0] > 250 && h[1] > 300 && h[2] < 1000 && h[0] < h[1] && h[1] < h[2]) {
			t.Errorf("moisture %g: %v kJ/kg", float64(m), h)
		}
	}
}

// Paltakari and Karlsson's heat at 7 % moisture and 23 °C, worked out from the formula by
// another program: 709 kJ/kg, 12.8 kJ/mol.
func TestNetHeatOfPaltakariKarlsson(t *testing.T) {
	h, err := NetHeat(PaltakariKarlsson{}, 0.07, quantity.FromCelsius(23))
	if err != nil || math.Abs(float64(h)-709e3) > 0.6e3 {
		t.Errorf("%g J/kg (%v)", float64(h), err)
	}
}

// Free water and dry material are bound by nothing that an isotherm could tell.
func TestNetHeatAtTheEnds(t *testing.T) {
	for _, x := range []struct {
		m    quantity.Fraction
		want quantity.SpecificEnergy
	}{
		{5, 0},
		{0, Pulp.HeatK + Pulp.HeatC}, // the limit of the closed form
	} {
		if h, err := NetHeat(Pulp, x.m, quantity.FromCelsius(80)); err != nil || math.Abs(float64(h-x.want)) > 1e-6 {
			t.Errorf("at %g: %g J/kg (%v), not %g", float64(x.m), float64(h), err, float64(x.want))
		}
	}
	if h, err := NetHeat(Wood{}, 0.5, quantity.FromCelsius(80)); err != nil || h != 0 {
		t.Errorf("soaked wood: %g J/kg (%v)", float64(h), err)
	}
}
