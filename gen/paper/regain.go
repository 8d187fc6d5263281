package paper

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// returnSteps is the number of Simpson's intervals in Exchange.Returns.
const returnSteps = 64

// Returns is the time in which a sheet of moisture from comes a share of the way back
// to its balance with the air, at the air's temperature; balance is the moisture there.
// With the symbols of Exchange, whose balance of the water it solves:
//
//	t = (R·m/n)·∫ dM/(ρ_a − ρ_w(M)),   from M to M + share·(M_a − M)
//
// The integrand grows as the balance comes near, so the way is counted in
// s = −ln((M_a − M)/(M_a − from)), in which it is almost even. share is from 0 to below 1.
func (e Exchange) Returns(from, share quantity.Fraction) (t quantity.Time, balance quantity.Fraction, err error) {
	if err := e.check(); err != nil {
		return 0, 0, err
	}
	if !(share >= 0 && share < 1) {
		return 0, 0, fmt.Errorf("%g of the way back: a share from 0 to below 1", float64(share))
	}
	if balance, err = e.Sheet.Moisture(e.Humidity, e.Room); err != nil {
		return 0, 0, err
	}
	if math.Abs(float64(balance-from)) < 1e-9 {
		return 0, balance, nil
	}
	around, err := vapourDensity(float64(e.Humidity), e.Room)
	if err != nil {
		return 0, 0, err
	}
	whole, sum := -math.Log(1-float64(share)), 0.0
	for i := range returnSteps + 1 {
		gap := float64(balance-from) * math.Exp(-whole*float64(i)/returnSteps)
		rate, err := e.rate(balance-quantity.Fraction(gap), e.Room, around)
		if err != nil {
			return 0, 0, err
		}
		weight := 2.0 + 2*float64(i%2)
		if i == 0 || i == returnSteps {
			weight = 1
		}
		sum += weight * gap / rate
	}
	return quantity.Time(sum * whole / returnSteps / 3), balance, nil
}
