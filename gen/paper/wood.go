package paper

import "laydown/gen/quantity"

// Wood is the equation of the Wood Handbook for the equilibrium moisture of wood, a
// second opinion beside Pulp. See Wood.Moisture.
type Wood struct{}

// woodSet holds its coefficients for one scale of temperature: each row is a polynomial
// c0 + c1·t + c2·t².
type woodSet struct{ w, k, k1, k2 [3]float64 }

// The two sets are not interchangeable: °C in the set for °F is a known error of public
// code, and so is −4.53e-5 in place of −9.35e-5.
var (
	woodCelsius = woodSet{
		w:  [3]float64{349, 1.29, 0.0135},
		k:  [3]float64{0.805, 0.000736, -0.00000273},
		k1: [3]float64{6.27, -0.00938, -0.000303},
		k2: [3]float64{1.91, 0.0407, -0.000293},
	}
	woodFahrenheit = woodSet{
		w:  [3]float64{330, 0.452, 0.00415},
		k:  [3]float64{0.791, 0.000463, -0.000000844},
		k1: [3]float64{6.34, 0.000775, -0.0000935},
		k2: [3]float64{1.09, 0.0284, -0.0000904},
	}
)

// woodColdest and woodHottest bound its use, °C. The handbook's table runs from −1 °C to
// 132 °C (from memory); K1 falls to 0 near 129 °C and the equation means nothing beyond.
const woodColdest, woodHottest = 0, 120

// Moisture implements Isotherm, from 0 °C to 120 °C:
//
//	M = (18/W)·[K·a/(1 − K·a) + (K1·K·a + 2·K1·K2·K²·a²)/(1 + K1·K·a + K1·K2·K²·a²)]
//
// with W, K, K1, K2 polynomials in t, °C. Source: Wood Handbook, USDA Forest Products
// Laboratory (2021), eq. 4-5; W. T. Simpson, Wood and Fiber 5(1), 41–49 (1973). Against the
// handbook's table it is good to 0.06 points. It is wood, not paper, and the data behind it
// are old: Glass, Zelinka and Johnson, FPL-GTR-229 (2014), hold them unreliable for
// scientific work. Below 8 °C it lets the activity at constant moisture fall by up to
// 0.0007 as it warms, which no material does.
func (Wood) Moisture(a quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if err := within("wood", a, t, woodColdest, woodHottest); err != nil {
		return 0, err
	}
	return woodCelsius.moisture(float64(a), t.Celsius()), nil
}

// Extrapolates is false: the handbook's table covers the whole range (from memory).
func (Wood) Extrapolates(quantity.Temperature) bool { return false }

func (s woodSet) moisture(a, t float64) quantity.Fraction {
	at := func(c [3]float64) float64 { return c[0] + t*(c[1]+t*c[2]) }
	k1, k2 := at(s.k1), at(s.k2)
	x := at(s.k) * a
	bound := k1 * x
	double := k1 * k2 * x * x
	return quantity.Fraction(18 / at(s.w) * (x/(1-x) + (bound+2*double)/(1+bound+double)))
}
