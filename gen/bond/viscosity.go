package bond

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// gasConstant is R in J/(mol·K), exact since the 2019 SI to the digits given.
const gasConstant = 8.314462618

// ErrSet says that a hot melt is below its setting temperature: it is a solid.
var ErrSet = errors.New("the adhesive has set")

// ErrGlassy says that an adhesive is below its glass transition, where the law of
// Williams, Landel and Ferry must not be used.
var ErrGlassy = errors.New("the adhesive is below its glass transition")

// ErrNoTemperature says that no temperature gives a viscosity.
var ErrNoTemperature = errors.New("no temperature makes the adhesive that thin")

// Law is how an adhesive's viscosity goes with temperature. It falls throughout.
type Law interface {
	// Viscosity at a temperature; ErrSet or ErrGlassy where there is none.
	Viscosity(quantity.Temperature) (quantity.Viscosity, error)
	// Temperature at which the adhesive has a viscosity.
	Temperature(quantity.Viscosity) (quantity.Temperature, error)
	// Range is where the adhesive begins to flow when heated and ends when cooled.
	Range() (melts, sets quantity.Temperature)
	// Extrapolates says that a temperature lies outside what the law was made for.
	Extrapolates(quantity.Temperature) bool
}

// Melt is a hot-melt adhesive.
//
//	η(T) = η_ref·exp[E/R·(1/T − 1/T_ref)]
type Melt struct {
	Reference quantity.Viscosity   // η_ref
	At        quantity.Temperature // T_ref
	Energy    quantity.MolarEnergy // E, activation energy of flow
	// Melting is where it begins to flow when heated, Setting where it ends when
	// cooled: for copolymers of ethylene some 25 to 35 K lower.
	Melting, Setting quantity.Temperature
}

// Viscosity implements Law. Between setting and melting it is that of the melt which
// has not set yet.
func (m Melt) Viscosity(t quantity.Temperature) (quantity.Viscosity, error) {
	if err := m.check(); err != nil {
		return 0, err
	}
	if !(t >= m.Setting && t > 0) {
		return 0, fmt.Errorf("viscosity at %s: %w, at %s", celsius(t), ErrSet, celsius(m.Setting))
	}
	return m.Reference * quantity.Viscosity(math.Exp(float64(m.Energy)/gasConstant*(1/float64(t)-1/float64(m.At)))), nil
}

// Temperature implements Law: 1/T = 1/T_ref + R/E·ln(η/η_ref). It may lie below the
// melting temperature.
func (m Melt) Temperature(v quantity.Viscosity) (quantity.Temperature, error) {
	if err := m.check(); err != nil {
		return 0, err
	}
	if !(v > 0) {
		return 0, fmt.Errorf("a viscosity of %g Pa·s: it must be above 0", float64(v))
	}
	inverse := 1/float64(m.At) + gasConstant/float64(m.Energy)*math.Log(float64(v/m.Reference))
	if !(inverse > 0) {
		return 0, fmt.Errorf("%w: %.3g Pa·s", ErrNoTemperature, float64(v))
	}
	return quantity.Temperature(1 / inverse), nil
}

// Range implements Law.
func (m Melt) Range() (melts, sets quantity.Temperature) { return m.Melting, m.Setting }

// Extrapolates implements Law: a melt's law is taken to hold from its setting
// temperature to 250 °C, above which copolymers of vinyl acetate decompose (from
// memory).
func (m Melt) Extrapolates(t quantity.Temperature) bool {
	return !(t >= m.Setting && t <= quantity.FromCelsius(250))
}

func (m Melt) check() error {
	if !(m.Reference > 0 && m.At > 0 && m.Energy > 0) || !(m.Setting >= 0 && m.Setting <= m.Melting) {
		return fmt.Errorf("a melt of %g Pa·s at %g K with %g J/mol that melts at %g K and sets at %g K: the first three must be above 0, and it cannot set above its melting",
			float64(m.Reference), float64(m.At), float64(m.Energy), float64(m.Melting), float64(m.Setting))
	}
	return nil
}

// FlowEnergy is the activation energy of flow from two viscosities:
// E = R·ln(η₁/η₂)/(1/T₁ − 1/T₂). The temperatures must differ.
func FlowEnergy(v1 quantity.Viscosity, t1 quantity.Temperature, v2 quantity.Viscosity, t2 quantity.Temperature) (quantity.MolarEnergy, error) {
	if !(v1 > 0 && v2 > 0 && t1 > 0 && t2 > 0) || t1 == t2 {
		return 0, fmt.Errorf("viscosities of %g Pa·s at %g K and %g Pa·s at %g K: each must be above 0, and the temperatures must differ",
			float64(v1), float64(t1), float64(v2), float64(t2))
	}
	return quantity.MolarEnergy(gasConstant * math.Log(float64(v1/v2)) / (1/float64(t1) - 1/float64(t2))), nil
}

// Faster is how many times as fast an adhesive flows at one temperature as at another:
// what warming the roller buys. The same filling takes 1/Faster of the time.
func Faster(l Law, from, to quantity.Temperature) (quantity.Fraction, error) {
	a, err := l.Viscosity(from)
	if err != nil {
		return 0, err
	}
	b, err := l.Viscosity(to)
	if err != nil {
		return 0, err
	}
	return quantity.Fraction(a / b), nil
}

// celsius writes a temperature for an error message.
func celsius(t quantity.Temperature) string { return fmt.Sprintf("%.4g °C", t.Celsius()) }
