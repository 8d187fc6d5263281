package quantity

// The kinds of quantity that the handbook computes with. Each is a float64 in
// the SI unit that its comment names; the unit is in the type, so a length
// cannot be handed to a function that wants a time.
type (
	// Length is a distance in metres.
	Length float64
	// Area is in square metres.
	Area float64
	// Volume is in cubic metres.
	Volume float64
	// Time is a duration in seconds.
	Time float64
	// Speed is a velocity, or a mass-transfer coefficient, in metres per second.
	Speed float64
	// Temperature is an absolute temperature in kelvin.
	Temperature float64
	// TemperatureDifference is a span of temperature in kelvin: 18 °F is 10 K.
	TemperatureDifference float64
	// Pressure is in pascals; moduli of elasticity are pressures too.
	Pressure float64
	// Mass is in kilograms.
	Mass float64
	// Grammage is a mass per area in kilograms per square metre.
	Grammage float64
	// Density is a mass per volume, or a concentration, in kilograms per cubic metre.
	Density float64
	// LineLoad is a force per width in newtons per metre.
	LineLoad float64
	// Fraction is a share or a ratio; 1 is 100 %.
	Fraction float64
	// Diffusivity is in square metres per second.
	Diffusivity float64
	// Conductivity is a thermal conductivity in watts per metre and kelvin.
	Conductivity float64
	// Conductance is a heat flow per area and kelvin in watts per square metre and kelvin.
	Conductance float64
	// SpecificHeat is in joules per kilogram and kelvin.
	SpecificHeat float64
	// SpecificEnergy is a heat per mass, such as a heat of fusion, in joules per kilogram.
	SpecificEnergy float64
	// Expansion is a thermal expansion coefficient, strain per kelvin.
	Expansion float64
	// MolarMass is in kilograms per mole.
	MolarMass float64
	// MolarEnergy is an energy per mole, such as an activation energy, in joules per mole.
	MolarEnergy float64
	// Viscosity is a dynamic viscosity in pascal seconds.
	Viscosity float64
	// Permeability is a vapour permeability in kilograms per metre, second and pascal.
	Permeability float64
	// Resistance is a resistance to vapour driven by concentration, in seconds per metre.
	Resistance float64
	// Rate is a count, or a share, per time in 1/s (air changes, a reaction's speed).
	Rate float64
	// SurfaceTension is in newtons per metre.
	SurfaceTension float64
)

// Quantity is any of the kinds above.
type Quantity interface {
	Length | Area | Volume | Time | Speed | Temperature | TemperatureDifference |
		Pressure | Mass | Grammage | Density | LineLoad | Fraction | Diffusivity |
		Conductivity | Conductance | SpecificHeat | SpecificEnergy | Expansion |
		MolarMass | MolarEnergy | Viscosity | Permeability | Resistance | Rate |
		SurfaceTension
}
