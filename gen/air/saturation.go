package air

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Coefficients n1 … n10 of IAPWS-IF97 region 4: IAPWS R7-97(2012), Table 34.
const (
	n1  = 0.11670521452767e4
	n2  = -0.72421316703206e6
	n3  = -0.17073846940092e2
	n4  = 0.12020824702470e5
	n5  = -0.32325550322333e7
	n6  = 0.14915108613530e2
	n7  = -0.48232657361591e4
	n8  = 0.40511340542057e6
	n9  = -0.23855557567849
	n10 = 0.65017534844798e3
)

// The saturation line runs from 0 °C to the critical point. The release gives
// its lowest pressure, p_s(273.15 K), as 611.213 Pa; the equation's own value is
// a fraction of a millipascal less.
const (
	coldest = 273.15    // K
	hottest = 647.096   // K
	least   = 611.2126  // Pa
	most    = 22.0641e6 // Pa
)

// SaturationPressure gives the pressure of water vapour over liquid water.
//
//	p_s = [2C / (−B + (B² − 4AC)^½)]⁴ MPa           IAPWS R7-97(2012), eq. 30
//	A = ϑ² + n1ϑ + n2, B = n3ϑ² + n4ϑ + n5, C = n6ϑ² + n7ϑ + n8
//	ϑ = T + n9/(T − n10), T in K                    eq. 29b
//
// Range 273.15 K to 647.096 K (0 °C to 373.946 °C). Its error is below 0.025 %
// there (from memory).
func SaturationPressure(t quantity.Temperature) (quantity.Pressure, error) {
	if !(t >= coldest && t <= hottest) {
		return 0, fmt.Errorf("saturation pressure of water: %.4g °C is outside 0 °C to 373.946 °C", t.Celsius())
	}
	x := float64(t) + n9/(float64(t)-n10)
	a := x*x + n1*x + n2
	b := n3*x*x + n4*x + n5
	c := n6*x*x + n7*x + n8
	y := 2 * c / (-b + math.Sqrt(b*b-4*a*c))
	return quantity.Pressure(y*y*y*y) * quantity.Megapascal, nil
}

// SaturationTemperature gives the temperature at which water boils, or moist air
// with that vapour pressure lets dew fall. It is the exact inverse of
// SaturationPressure.
//
//	T_s = ½[n10 + D − ((n10 + D)² − 4(n9 + n10·D))^½]   IAPWS R7-97(2012), eq. 31
//	D = 2G/(−F − (F² − 4EG)^½), E = β² + n3β + n6, F = n1β² + n4β + n7, G = n2β² + n5β + n8
//	β = (p/1 MPa)^¼                                     eq. 29a
//
// Range 611.213 Pa to 22.064 MPa.
func SaturationTemperature(p quantity.Pressure) (quantity.Temperature, error) {
	if !(p >= least && p <= most) {
		return 0, fmt.Errorf("saturation temperature of water: %.4g Pa is outside 611.213 Pa (0 °C) to 22.064 MPa", float64(p))
	}
	b := math.Sqrt(math.Sqrt(float64(p / quantity.Megapascal)))
	e := b*b + n3*b + n6
	f := n1*b*b + n4*b + n7
	g := n2*b*b + n5*b + n8
	d := 2 * g / (-f - math.Sqrt(f*f-4*e*g))
	return quantity.Temperature((n10 + d - math.Sqrt((n10+d)*(n10+d)-4*(n9+n10*d))) / 2), nil
}
