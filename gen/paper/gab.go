package paper

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// GAB is the isotherm of Guggenheim, Anderson and de Boer with constants that depend on
// temperature as exp(q/RT):
//
//	M = m·C·K·a/[(1 − K·a)(1 − K·a + C·K·a)],  C = C0·exp(q_C/RT),  K = K0·exp(q_K/RT)
//
// It is used from 0 °C to 150 °C. Where K·a reaches 1 it has no finite moisture: for Pulp
// that is below 8.4 °C, in air near saturation.
type GAB struct {
	Name   string                  // what is wetted, for messages
	Layer  quantity.Fraction       // m, water of a full first layer, kg/kg
	C0, K0 float64                 // C and K at infinite temperature
	HeatC  quantity.SpecificEnergy // q_C, J/kg
	HeatK  quantity.SpecificEnergy // q_K, J/kg
	From   quantity.Temperature    // the data that it was fitted to run from here
	To     quantity.Temperature    // to here
}

// Pulp is bleached pulp fibre: the GAB parameters of J. Tryding, H. Askfelt, M.
// Alexandersson and M. Ristinmaa, "A full-range moisture sorption model for cellulose-based
// materials yielding consistent net isosteric heat of sorption", Drying Technology (2022),
// doi 10.1080/07373937.2022.2084104, as in the code the authors published with it
// (Isotherm_models_v01.m, revision 95a7c9c7; an earlier revision has another set). Fitted to
// data of Leuk et al., Drying Technology 34(5), 563–573 (2016); that these run from 25 °C
// to 80 °C is from memory. Which branch of the hysteresis they stand for was not seen: it
// is taken as the mean.
var Pulp = GAB{
	Name:  "bleached pulp",
	Layer: 0.0578,
	C0:    0.4273,
	K0:    0.1011,
	HeatC: 468.9266e3,
	HeatK: 297.7358e3,
	From:  quantity.FromCelsius(25),
	To:    quantity.FromCelsius(80),
}

// gabColdest and gabHottest bound the use of every GAB isotherm, °C.
const gabColdest, gabHottest = 0, 150

// Moisture implements Isotherm.
func (g GAB) Moisture(a quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if err := within(g.Name, a, t, gabColdest, gabHottest); err != nil {
		return 0, err
	}
	c, k := g.constants(t)
	x := k * float64(a)
	if x >= 1 {
		return 0, fmt.Errorf("%w: %s at %.4g °C: activity %.4g is outside 0 to below %.4g", ErrWet, g.Name, t.Celsius(), float64(a), 1/k)
	}
	return g.Layer * quantity.Fraction(c*x/((1-x)*(1-x+c*x))), nil
}

// Activity is the inverse of Moisture, capped at 1. With x = K·a the isotherm is a
// quadratic,
//
//	(C − 1)x² + b·x − 1 = 0,  b = m·C/M − C + 2
//
// that has one root in 0 to 1 at every moisture and every C.
func (g GAB) Activity(m quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	x, k, err := g.root(m, t)
	if err != nil {
		return 0, err
	}
	return quantity.Fraction(math.Min(x/k, 1)), nil
}

// NetHeat is the net isosteric heat of sorption at moisture m, J per kg of water:
//
//	ΔH = q_K + q_C·(1 − K·a)²/[1 + (C − 1)·K²·a²]       Tryding et al. 2022
//
// and 0 where the activity is capped, since free water is bound by nothing.
func (g GAB) NetHeat(m quantity.Fraction, t quantity.Temperature) (quantity.SpecificEnergy, error) {
	x, k, err := g.root(m, t)
	if err != nil || x >= k {
		return 0, err
	}
	c, _ := g.constants(t)
	return g.HeatK + g.HeatC*quantity.SpecificEnergy((1-x)*(1-x)/(1+(c-1)*x*x)), nil
}

// Extrapolates reports whether t is outside the data that the isotherm was fitted to.
func (g GAB) Extrapolates(t quantity.Temperature) bool { return !(t >= g.From && t <= g.To) }

func (g GAB) constants(t quantity.Temperature) (c, k float64) {
	rt := gasConstant * float64(t)
	return g.C0 * math.Exp(float64(g.HeatC)/rt), g.K0 * math.Exp(float64(g.HeatK)/rt)
}

// root gives x = K·a at moisture m, not capped, and K.
func (g GAB) root(m quantity.Fraction, t quantity.Temperature) (x, k float64, err error) {
	if err := checkMoisture(m); err != nil {
		return 0, 0, err
	}
	if err := warm(g.Name, t, gabColdest, gabHottest); err != nil {
		return 0, 0, err
	}
	c, k := g.constants(t)
	if m == 0 {
		return 0, k, nil
	}
	b := float64(g.Layer)*c/float64(m) - c + 2
	// Each form of the root where it does not subtract equals.
	if d := math.Sqrt(b*b + 4*(c-1)); b < 0 {
		x = (d - b) / (2 * (c - 1))
	} else {
		x = 2 / (b + d)
	}
	return x, k, nil
}
