package paper

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// PaltakariKarlsson is the isotherm of paper by Paltakari and Karlsson (1996, reference from
// memory), a third opinion beside Pulp. See PaltakariKarlsson.Moisture.
type PaltakariKarlsson struct{}

// paltakariColdest and paltakariHottest bound its use, °C. Above that its activity at constant
// moisture stops rising, from 130 °C at 13 % moisture (near saturation earlier, by less than
// 2e-7); at 171 °C its base is 0.
const paltakariColdest, paltakariHottest = 0, 120

// Moisture implements Isotherm, from 0 °C to 120 °C:
//
//	M = [ln(1 − a)/(1.67·t − 285.655)]^(1/(2.491 − 0.012·t)),   t in °C
//
// The original was not seen. The formula stands in published models of the ageing of paper
// (those used by Strlič and co-workers), some of which call t kelvin: in kelvin the base is
// negative and the result means nothing. It has no finite moisture at a = 1, and is 2.5 to
// 3.7 points below measured handsheets (Handsheets). How far its data reach is not known;
// above 80 °C it is taken as extrapolated.
func (PaltakariKarlsson) Moisture(a quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if err := within("paper by Paltakari and Karlsson", a, t, paltakariColdest, paltakariHottest); err != nil {
		return 0, err
	}
	if a == 1 {
		return 0, fmt.Errorf("%w: paper by Paltakari and Karlsson: activity 1 is outside 0 to below 1", ErrWet)
	}
	c := t.Celsius()
	return quantity.Fraction(math.Pow(math.Log1p(-float64(a))/(1.67*c-285.655), 1/(2.491-0.012*c))), nil
}

// Activity is the inverse of Moisture: a = 1 − exp[(1.67·t − 285.655)·M^(2.491 − 0.012·t)].
func (PaltakariKarlsson) Activity(m quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	if err := checkMoisture(m); err != nil {
		return 0, err
	}
	if err := warm("paper by Paltakari and Karlsson", t, paltakariColdest, paltakariHottest); err != nil {
		return 0, err
	}
	c := t.Celsius()
	return quantity.Fraction(-math.Expm1((1.67*c - 285.655) * math.Pow(float64(m), 2.491-0.012*c))), nil
}

// Extrapolates reports whether t is above 80 °C or below 20 °C, where nothing is known of
// data behind the formula (an assumption).
func (PaltakariKarlsson) Extrapolates(t quantity.Temperature) bool {
	return !(t >= quantity.FromCelsius(20) && t <= quantity.FromCelsius(80))
}
