package air

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

const (
	dryMolarMass quantity.MolarMass    = 28.9644e-3 // U.S. Standard Atmosphere 1976
	airHeat      quantity.SpecificHeat = 1006       // J/(kg K), dry air: ASHRAE Fundamentals 2017, ch. 1
)

// The transport properties of air below hold for dry air. A room's water changes
// them by less than 1 %. They want a temperature and a pressure above zero; the
// fits are good from −70 °C to 300 °C, and everything that returns an error
// refuses what lies outside (checkAir).

// DiffusivityAt carries a vapour's diffusivity in air from 25 °C and one
// atmosphere to another temperature and pressure.
//
//	D = D₂₅·(T/298.15 K)^1.75·(101 325 Pa/p)     exponents of Fuller, Schettler and Giddings,
//	                                             Ind. Eng. Chem. 58 (1966) 18 (from memory)
func DiffusivityAt(d25 quantity.Diffusivity, t quantity.Temperature, p quantity.Pressure) quantity.Diffusivity {
	return d25 * quantity.Diffusivity(math.Pow(float64(t)/298.15, 1.75)*float64(Atmosphere/p))
}

// WaterDiffusivity gives the diffusivity of water vapour in air.
//
//	D = 1.87e-10·T^2.072/p m²/s, p in atm     T. R. Marrero and E. A. Mason, J. Phys. Chem. Ref. Data 1 (1972) 3,
//	                                          as in Çengel, Heat and Mass Transfer, Example 14-10
//
// Range 280 K to 450 K (from memory).
func WaterDiffusivity(t quantity.Temperature, p quantity.Pressure) (quantity.Diffusivity, error) {
	if !(t >= 273.15 && t <= 450) || !(p > 0) {
		return 0, fmt.Errorf("diffusivity of water vapour: %.4g °C and %.4g Pa are outside 0 °C to 177 °C and pressures above zero", t.Celsius(), float64(p))
	}
	return quantity.Diffusivity(1.87e-10 * math.Pow(float64(t), 2.072) * float64(Atmosphere/p)), nil
}

// DynamicViscosity gives the viscosity of air, by Sutherland's formula.
//
//	μ = 1.458e-6·T^1.5/(T + 110.4) Pa s     U.S. Standard Atmosphere 1976, eq. 51 (from memory)
func DynamicViscosity(t quantity.Temperature) quantity.Viscosity {
	return quantity.Viscosity(1.458e-6 * math.Pow(float64(t), 1.5) / (float64(t) + 110.4))
}

// DryDensity gives the density of dry air as an ideal gas.
func DryDensity(t quantity.Temperature, p quantity.Pressure) quantity.Density {
	return VapourDensity(p, dryMolarMass, t)
}

// ThermalConductivity gives the thermal conductivity of air.
//
//	k = 2.64638e-3·T^1.5/(T + 245.4·10^(−12/T)) W/(m K)     U.S. Standard Atmosphere 1976, eq. 53 (from memory)
func ThermalConductivity(t quantity.Temperature) quantity.Conductivity {
	return quantity.Conductivity(2.64638e-3 * math.Pow(float64(t), 1.5) / (float64(t) + 245.4*math.Pow(10, -12/float64(t))))
}

// KinematicViscosity gives ν = μ/ρ of air.
func KinematicViscosity(t quantity.Temperature, p quantity.Pressure) quantity.Diffusivity {
	return quantity.Diffusivity(float64(DynamicViscosity(t)) / float64(DryDensity(t, p)))
}

// ThermalDiffusivity gives α = k/(ρ·c_p) of air.
func ThermalDiffusivity(t quantity.Temperature, p quantity.Pressure) quantity.Diffusivity {
	return quantity.Diffusivity(float64(ThermalConductivity(t)) / (float64(DryDensity(t, p)) * float64(airHeat)))
}

// checkAir refuses air outside the range of the properties above.
func checkAir(what string, t quantity.Temperature, p quantity.Pressure) error {
	if !(t >= 203.15 && t <= 573.15) {
		return fmt.Errorf("%s: air of %.4g °C is outside -70 °C to 300 °C", what, t.Celsius())
	}
	if !(p >= 10e3 && p <= 1e6) {
		return fmt.Errorf("%s: air of %.4g Pa is outside 10 kPa to 1 MPa", what, float64(p))
	}
	return nil
}
