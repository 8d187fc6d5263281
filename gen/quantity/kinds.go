package quantity

// kind numbers the kinds of quantity, so that tables can be keyed by them.
type kind int

const (
	kindLength kind = iota
	kindArea
	kindVolume
	kindTime
	kindSpeed
	kindTemperature
	kindTemperatureDifference
	kindPressure
	kindMass
	kindGrammage
	kindDensity
	kindLineLoad
	kindFraction
	kindDiffusivity
	kindConductivity
	kindConductance
	kindSpecificHeat
	kindSpecificEnergy
	kindExpansion
	kindMolarMass
	kindMolarEnergy
	kindViscosity
	kindPermeability
	kindResistance
	kindRate
	kindSurfaceTension
	kindCount
)

// kindWords holds what a person reads about each kind: its name, and how one is
// written.
var kindWords = [kindCount]struct{ name, example string }{
	kindLength:                {"length", "75 µm"},
	kindArea:                  {"area", "2 m²"},
	kindVolume:                {"volume", "60 m³"},
	kindTime:                  {"time", "24 h"},
	kindSpeed:                 {"speed", "1.5 m/min"},
	kindTemperature:           {"temperature", "115 °C"},
	kindTemperatureDifference: {"temperature difference", "10 K"},
	kindPressure:              {"pressure", "300 kPa"},
	kindMass:                  {"mass", "1.5 kg"},
	kindGrammage:              {"grammage", "12 g/m²"},
	kindDensity:               {"density", "1380 kg/m³"},
	kindLineLoad:              {"line load", "3 N/mm"},
	kindFraction:              {"fraction", "50 %"},
	kindDiffusivity:           {"diffusivity", "1e-13 m²/s"},
	kindConductivity:          {"thermal conductivity", "0.16 W/(m K)"},
	kindConductance:           {"heat transfer coefficient", "500 W/(m² K)"},
	kindSpecificHeat:          {"specific heat", "1500 J/(kg K)"},
	kindSpecificEnergy:        {"heat per mass", "60 kJ/kg"},
	kindExpansion:             {"expansion coefficient", "17e-6 1/K"},
	kindMolarMass:             {"molar mass", "162 g/mol"},
	kindMolarEnergy:           {"molar energy", "58 kJ/mol"},
	kindViscosity:             {"viscosity", "3 mPa s"},
	kindPermeability:          {"vapour permeability", "1e-15 kg/(m s Pa)"},
	kindResistance:            {"vapour resistance", "2000 s/m"},
	kindRate:                  {"rate", "5 1/h"},
	kindSurfaceTension:        {"surface tension", "38 mN/m"},
}

// KindName gives the name of a kind as it stands in messages: "length".
func KindName[Q Quantity]() string { return kindWords[kindOf[Q]()].name }

// Example shows how a quantity of the kind is written: "75 µm".
func Example[Q Quantity]() string { return kindWords[kindOf[Q]()].example }

// withArticle puts "a" or "an" before a name.
func withArticle(name string) string {
	switch name[0] {
	case 'a', 'e', 'i', 'o', 'u':
		return "an " + name
	}
	return "a " + name
}

// kindOf tells a type's kind.
func kindOf[Q Quantity]() kind {
	var q Q
	switch any(q).(type) {
	case Length:
		return kindLength
	case Area:
		return kindArea
	case Volume:
		return kindVolume
	case Time:
		return kindTime
	case Speed:
		return kindSpeed
	case Temperature:
		return kindTemperature
	case TemperatureDifference:
		return kindTemperatureDifference
	case Pressure:
		return kindPressure
	case Mass:
		return kindMass
	case Grammage:
		return kindGrammage
	case Density:
		return kindDensity
	case LineLoad:
		return kindLineLoad
	case Fraction:
		return kindFraction
	case Diffusivity:
		return kindDiffusivity
	case Conductivity:
		return kindConductivity
	case Conductance:
		return kindConductance
	case SpecificHeat:
		return kindSpecificHeat
	case SpecificEnergy:
		return kindSpecificEnergy
	case Expansion:
		return kindExpansion
	case MolarMass:
		return kindMolarMass
	case MolarEnergy:
		return kindMolarEnergy
	case Viscosity:
		return kindViscosity
	case Permeability:
		return kindPermeability
	case Resistance:
		return kindResistance
	case Rate:
		return kindRate
	case SurfaceTension:
		return kindSurfaceTension
	}
	panic("quantity: a type of the Quantity interface has no kind") // a test walks them all
}
