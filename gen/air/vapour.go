package air

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// GasConstant is R in J/(mol K): exact in the SI of 2019, rounded at the tenth figure.
const GasConstant = 8.314462618

const waterMolarMass quantity.MolarMass = 18.015268e-3

// Vapour is the saturated vapour of a liquid.
type Vapour interface {
	// Pressure gives the vapour pressure over the pure liquid.
	Pressure(t quantity.Temperature) (quantity.Pressure, error)
}

// Antoine is a fit of a vapour pressure.
//
//	ln(p/Pa) = A − B/(T/K + C)     C. Antoine, Comptes Rendus 107 (1888) 681 and 836 (pages from memory)
type Antoine struct {
	A, B, C float64
	// From and To bound the temperatures that it was fitted to.
	From, To quantity.Temperature
}

// Extrapolates tells whether a temperature lies outside the fitted range.
func (a Antoine) Extrapolates(t quantity.Temperature) bool { return !(t >= a.From && t <= a.To) }

// Pressure gives the vapour pressure. It extrapolates where it must (see
// Extrapolates), but not to the pole of the formula at T = −C nor beyond.
func (a Antoine) Pressure(t quantity.Temperature) (quantity.Pressure, error) {
	if !(t > 0 && float64(t)+a.C > 0) {
		return 0, fmt.Errorf("vapour pressure by Antoine: %.4g K is outside %.4g K and up, where the formula has its pole", float64(t), math.Max(0, -a.C))
	}
	return finite(a.A-a.B/(float64(t)+a.C), t)
}

// Boils gives the temperature at which the vapour pressure reaches p.
func (a Antoine) Boils(p quantity.Pressure) (quantity.Temperature, error) {
	if !(p > 0 && math.Log(float64(p)) < a.A) {
		return 0, fmt.Errorf("boiling point by Antoine: %.4g Pa is outside 0 Pa to the formula's limit of %.4g Pa", float64(p), math.Exp(a.A))
	}
	return quantity.Temperature(a.B/(a.A-math.Log(float64(p))) - a.C), nil
}

// Heat gives the heat of vaporisation that the fit's slope implies for an ideal
// vapour.
//
//	ΔH = R·T²·d(ln p)/dT = R·B·T²/(T + C)²     Clausius–Clapeyron
func (a Antoine) Heat(t quantity.Temperature) (quantity.MolarEnergy, error) {
	if !(t > 0 && float64(t)+a.C > 0) {
		return 0, fmt.Errorf("heat of vaporisation by Antoine: %.4g K is outside %.4g K and up, where the formula has its pole", float64(t), math.Max(0, -a.C))
	}
	r := float64(t) / (float64(t) + a.C)
	return quantity.MolarEnergy(GasConstant * a.B * r * r), nil
}

// ClausiusClapeyron is a vapour pressure known at one temperature, carried to
// others by a constant heat of vaporisation.
//
//	p(T) = P·exp[−(ΔH/R)(1/T − 1/At)]     ideal vapour, constant ΔH: within 1 % of a full curve for 10 K about At, 3 % for 20 K
type ClausiusClapeyron struct {
	P    quantity.Pressure
	At   quantity.Temperature
	Heat quantity.MolarEnergy
}

// Pressure gives the vapour pressure.
func (c ClausiusClapeyron) Pressure(t quantity.Temperature) (quantity.Pressure, error) {
	if !(t > 0 && c.At > 0 && c.P > 0) {
		return 0, fmt.Errorf("vapour pressure: %.4g K, from %.4g Pa at %.4g K, is outside the temperatures and pressures above zero", float64(t), float64(c.P), float64(c.At))
	}
	return finite(math.Log(float64(c.P))-float64(c.Heat)/GasConstant*(1/float64(t)-1/float64(c.At)), t)
}

// finite turns a logarithm into a pressure, or says that it is none.
func finite(log float64, t quantity.Temperature) (quantity.Pressure, error) {
	p := math.Exp(log)
	if math.IsNaN(p) || math.IsInf(p, 0) {
		return 0, fmt.Errorf("vapour pressure: exp(%.4g) Pa at %.4g K is outside the finite numbers", log, float64(t))
	}
	return quantity.Pressure(p), nil
}

// VapourDensity gives the concentration of a vapour in air as an ideal gas. The
// temperature must be above zero.
//
//	c = p·M/(R·T)
func VapourDensity(p quantity.Pressure, m quantity.MolarMass, t quantity.Temperature) quantity.Density {
	return quantity.Density(float64(p) * float64(m) / (GasConstant * float64(t)))
}
