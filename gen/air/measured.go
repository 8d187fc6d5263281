package air

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// LossTransfer gives the transfer coefficient that a surface must have had to
// lose a mass in a time: weigh a dish of water twice and have that of the place.
//
//	h = m/(A·t·(c_surface − c_air))     the definition of h
//
// drive is the vapour's concentration at the surface less that in the air.
func LossTransfer(loss quantity.Mass, time quantity.Time, area quantity.Area, drive quantity.Density) (quantity.Speed, error) {
	if !(loss >= 0 && time > 0 && area > 0 && drive > 0) {
		return 0, fmt.Errorf("transfer from a loss: %.4g kg in %.4g s from %.4g m² against %.4g kg/m³ is outside the values above zero", float64(loss), float64(time), float64(area), float64(drive))
	}
	return quantity.Speed(float64(loss) / (float64(area) * float64(time) * float64(drive))), nil
}

// VapourShare gives the mass of a vapour over the mass of the air it is in,
// where there is little of it.
//
//	w = (p_v/p)·(M/M_air)     as in Çengel, Heat and Mass Transfer, Example 14-11
func VapourShare(vapour, total quantity.Pressure, m quantity.MolarMass) quantity.Fraction {
	return quantity.Fraction(float64(vapour/total) * float64(m/dryMolarMass))
}

// HeatTransfer gives the heat transfer coefficient that goes with a vapour's.
//
//	h_heat = h·ρ·c_p·(α/D)^⅔     T. H. Chilton and A. P. Colburn, Ind. Eng. Chem. 26 (1934) 1183
//
// rho and heat are the air's density and specific heat, alpha its thermal
// diffusivity, d the vapour's diffusivity in it; all above zero.
func HeatTransfer(h quantity.Speed, rho quantity.Density, heat quantity.SpecificHeat, alpha, d quantity.Diffusivity) quantity.Conductance {
	return quantity.Conductance(float64(h) * float64(rho) * float64(heat) * math.Pow(float64(alpha/d), 2.0/3))
}

// EvaporationChill gives how far an insulated wet surface stays below the air
// when the heat that evaporation takes equals the heat that the air brings.
//
//	ΔT = h_fg/(c_p·Le^⅔)·(M/M_air)·(p_surface − p_air)/p     Le = α/D
//	     as in Çengel, Heat and Mass Transfer, Example 14-12
//
// latent is the heat of evaporation h_fg, drive the vapour pressure at the
// surface less that in the air.
func EvaporationChill(latent quantity.SpecificEnergy, heat quantity.SpecificHeat, lewis float64, m quantity.MolarMass, drive, total quantity.Pressure) (quantity.TemperatureDifference, error) {
	if !(heat > 0 && lewis > 0 && total > 0 && m > 0) {
		return 0, fmt.Errorf("chill of evaporation: a specific heat of %.4g J/(kg K), a Lewis number of %.4g, a molar mass of %.4g kg/mol and a pressure of %.4g Pa are outside the values above zero", float64(heat), lewis, float64(m), float64(total))
	}
	return quantity.TemperatureDifference(float64(latent) / (float64(heat) * math.Pow(lewis, 2.0/3)) *
		float64(m/dryMolarMass) * float64(drive/total)), nil
}
