package paper

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// FuzzActivity asks for the activity of any moisture at any temperature: it is an error, or a number
// from 0 to 1 at which the isotherm has that moisture.
func FuzzActivity(f *testing.F) {
	f.Add(uint8(0), 0.095, 23.0)
	f.Add(uint8(0), 0.5, 0.0)      // K above 1: no cap
	f.Add(uint8(0), 1e300, 20.0)   // b cancels
	f.Add(uint8(0), 5e-324, 150.0) // denormal
	f.Add(uint8(1), 0.3, 119.9)
	f.Add(uint8(2), 0.07, 95.0)
	f.Add(uint8(2), 1e-9, 120.0)
	f.Add(uint8(3), math.NaN(), 23.0)
	f.Add(uint8(12), 0.1, math.Inf(1))
	all := materials(f)
	f.Fuzz(func(t *testing.T, which uint8, m, celsius float64) {
		x := all[int(which)%len(all)]
		at := quantity.FromCelsius(celsius)
		a, err := Activity(x.is, quantity.Fraction(m), at)
		if err != nil {
			if a != 0 {
				t.Errorf("%s: %g beside %v", x.name, float64(a), err)
			}
			return
		}
		if !(a >= 0 && a <= 1) {
			t.Fatalf("%s, moisture %g at %g °C: activity %g", x.name, m, celsius, float64(a))
		}
		if m < 1e-12 || m > 1e3 || a > 1-1e-5 {
			return // too little to say more of; at the pole of a cold GAB or near saturation, where a says little of m
		}
		back, err := x.is.Moisture(a, at)
		if err != nil || !(math.Abs(float64(back)-m) <= 1e-9*m) {
			t.Errorf("%s, moisture %g at %g °C: activity %.12g has moisture %g (%v)", x.name, m, celsius, float64(a), float64(back), err)
		}
	})
}
