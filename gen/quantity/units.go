package quantity

// unit is one way to write a quantity of a kind.
//
//	SI value = (number + zero) · si
//
// zero is nonzero only for the two relative scales of absolute temperature.
type unit struct {
	kind    kind
	text    string   // as it is printed: "g/m²"
	aliases []string // other ways to write it; spaces, dots, superscripts and degree signs need none
	si      float64  // exact by definition unless said otherwise
	zero    float64
}

const (
	inch       = 0.0254                   // m, exact
	foot       = 0.3048                   // m, exact
	yard       = 0.9144                   // m, exact
	pound      = 0.45359237               // kg, exact
	ounce      = pound / 16               // kg
	gravity    = 9.80665                  // m/s², standard, exact
	poundForce = pound * gravity          // N
	gallon     = 231 * inch * inch * inch // m³, United States
	minute     = 60.0
	hour       = 3600.0
	day        = 24 * hour
	btuPerLb   = 2326.0 // J/kg, exact for the International Table Btu
	fahrenheit = 5.0 / 9
)

// units lists every unit that is read. The first unit of a text and kind wins;
// a test sees to it that no kind has two units of one text.
var units = []unit{
	{kind: kindLength, text: "m", aliases: []string{"metre", "metres", "meter", "meters"}, si: 1},
	{kind: kindLength, text: "km", si: 1000},
	{kind: kindLength, text: "cm", si: 0.01},
	{kind: kindLength, text: "mm", si: 1e-3},
	{kind: kindLength, text: "µm", aliases: []string{"mic", "micron", "microns"}, si: 1e-6},
	{kind: kindLength, text: "nm", si: 1e-9},
	{kind: kindLength, text: "in", aliases: []string{"inch", "inches"}, si: inch},
	{kind: kindLength, text: "ft", aliases: []string{"foot", "feet"}, si: foot},
	{kind: kindLength, text: "yd", aliases: []string{"yard", "yards"}, si: yard},
	{kind: kindLength, text: "mil", aliases: []string{"mils", "thou"}, si: inch / 1000},

	{kind: kindArea, text: "m²", si: 1},
	{kind: kindArea, text: "cm²", si: 1e-4},
	{kind: kindArea, text: "mm²", si: 1e-6},
	{kind: kindArea, text: "in²", aliases: []string{"sqin"}, si: inch * inch},
	{kind: kindArea, text: "ft²", aliases: []string{"sqft"}, si: foot * foot},
	{kind: kindArea, text: "yd²", aliases: []string{"sqyd"}, si: yard * yard},

	{kind: kindVolume, text: "m³", si: 1},
	{kind: kindVolume, text: "l", aliases: []string{"L", "litre", "litres"}, si: 1e-3},
	{kind: kindVolume, text: "ml", aliases: []string{"mL", "cm3"}, si: 1e-6},
	{kind: kindVolume, text: "ft³", aliases: []string{"cuft"}, si: foot * foot * foot},
	{kind: kindVolume, text: "gal", si: gallon},
	{kind: kindVolume, text: "fl oz", si: gallon / 128},

	{kind: kindTime, text: "s", aliases: []string{"sec", "second", "seconds"}, si: 1},
	{kind: kindTime, text: "ms", si: 1e-3},
	{kind: kindTime, text: "min", aliases: []string{"minute", "minutes"}, si: minute},
	{kind: kindTime, text: "h", aliases: []string{"hr", "hrs", "hour", "hours"}, si: hour},
	{kind: kindTime, text: "days", aliases: []string{"d", "day"}, si: day},
	{kind: kindTime, text: "weeks", aliases: []string{"week", "wk"}, si: 7 * day},

	{kind: kindSpeed, text: "m/s", si: 1},
	{kind: kindSpeed, text: "cm/s", si: 0.01},
	{kind: kindSpeed, text: "mm/s", si: 1e-3},
	{kind: kindSpeed, text: "m/min", si: 1 / minute},
	{kind: kindSpeed, text: "km/h", si: 1000 / hour},
	{kind: kindSpeed, text: "ft/min", aliases: []string{"fpm"}, si: foot / minute},
	{kind: kindSpeed, text: "ft/s", si: foot},
	{kind: kindSpeed, text: "in/s", si: inch},
	{kind: kindSpeed, text: "in/min", si: inch / minute},

	{kind: kindTemperature, text: "K", si: 1},
	{kind: kindTemperature, text: "°C", aliases: []string{"degC"}, si: 1, zero: 273.15},
	{kind: kindTemperature, text: "°F", aliases: []string{"degF"}, si: fahrenheit, zero: 459.67},

	{kind: kindTemperatureDifference, text: "K", si: 1},
	{kind: kindTemperatureDifference, text: "°C", aliases: []string{"degC"}, si: 1},
	{kind: kindTemperatureDifference, text: "°F", aliases: []string{"degF"}, si: fahrenheit},

	{kind: kindPressure, text: "Pa", si: 1},
	{kind: kindPressure, text: "hPa", aliases: []string{"mbar"}, si: 100},
	{kind: kindPressure, text: "kPa", si: 1e3},
	{kind: kindPressure, text: "MPa", aliases: []string{"N/mm2"}, si: 1e6},
	{kind: kindPressure, text: "GPa", si: 1e9},
	{kind: kindPressure, text: "bar", si: 1e5},
	{kind: kindPressure, text: "atm", si: 101325},
	{kind: kindPressure, text: "mmHg", si: 133.322387415},
	{kind: kindPressure, text: "psi", si: poundForce / (inch * inch)},
	{kind: kindPressure, text: "ksi", si: 1000 * poundForce / (inch * inch)},

	{kind: kindMass, text: "kg", si: 1},
	{kind: kindMass, text: "g", si: 1e-3},
	{kind: kindMass, text: "mg", si: 1e-6},
	{kind: kindMass, text: "µg", si: 1e-9},
	{kind: kindMass, text: "t", si: 1000},
	{kind: kindMass, text: "lb", aliases: []string{"lbs"}, si: pound},
	{kind: kindMass, text: "oz", si: ounce},

	{kind: kindGrammage, text: "g/m²", aliases: []string{"gsm"}, si: 1e-3},
	{kind: kindGrammage, text: "kg/m²", si: 1},
	{kind: kindGrammage, text: "mg/m²", si: 1e-6},
	{kind: kindGrammage, text: "oz/yd²", aliases: []string{"oz/sqyd"}, si: ounce / (yard * yard)},
	{kind: kindGrammage, text: "lb/ft²", si: pound / (foot * foot)},

	{kind: kindDensity, text: "kg/m³", aliases: []string{"g/l", "g/L"}, si: 1},
	{kind: kindDensity, text: "g/m³", si: 1e-3},
	{kind: kindDensity, text: "mg/m³", si: 1e-6},
	{kind: kindDensity, text: "µg/m³", si: 1e-9},
	{kind: kindDensity, text: "g/cm³", aliases: []string{"g/ml", "g/mL", "kg/l", "kg/L"}, si: 1000},
	{kind: kindDensity, text: "lb/ft³", si: pound / (foot * foot * foot)},

	{kind: kindLineLoad, text: "N/m", si: 1},
	{kind: kindLineLoad, text: "N/cm", si: 100},
	{kind: kindLineLoad, text: "N/mm", aliases: []string{"kN/m"}, si: 1000},
	{kind: kindLineLoad, text: "N/25 mm", si: 40},
	{kind: kindLineLoad, text: "N/15 mm", si: 1 / 0.015},
	{kind: kindLineLoad, text: "lb/in", aliases: []string{"lbf/in", "pli"}, si: poundForce / inch},
	{kind: kindLineLoad, text: "oz/in", aliases: []string{"ozf/in"}, si: poundForce / 16 / inch},

	{kind: kindFraction, text: "%", si: 0.01},
	{kind: kindFraction, text: "‰", si: 1e-3},
	{kind: kindFraction, text: "ppm", si: 1e-6},

	{kind: kindDiffusivity, text: "m²/s", si: 1},
	{kind: kindDiffusivity, text: "cm²/s", si: 1e-4},
	{kind: kindDiffusivity, text: "mm²/s", si: 1e-6},
	{kind: kindDiffusivity, text: "µm²/s", si: 1e-12},
	{kind: kindDiffusivity, text: "m²/h", si: 1 / hour},

	{kind: kindConductivity, text: "W/(m K)", aliases: []string{"W/mK", "W/m/K"}, si: 1},
	{kind: kindConductivity, text: "mW/(m K)", aliases: []string{"mW/mK"}, si: 1e-3},
	{kind: kindConductivity, text: "Btu/(h ft °F)", aliases: []string{"Btu/hftF"}, si: btuPerLb * pound / (hour * foot * fahrenheit)},

	{kind: kindConductance, text: "W/(m² K)", aliases: []string{"W/m2K", "W/m2/K"}, si: 1},
	{kind: kindConductance, text: "kW/(m² K)", aliases: []string{"kW/m2K"}, si: 1000},
	{kind: kindConductance, text: "Btu/(h ft² °F)", aliases: []string{"Btu/hft2F"}, si: btuPerLb * pound / (hour * foot * foot * fahrenheit)},

	{kind: kindSpecificHeat, text: "J/(kg K)", aliases: []string{"J/kgK", "J/kg/K"}, si: 1},
	{kind: kindSpecificHeat, text: "kJ/(kg K)", aliases: []string{"kJ/kgK", "J/gK", "J/(gK)"}, si: 1000},
	{kind: kindSpecificHeat, text: "Btu/(lb °F)", aliases: []string{"Btu/lbF"}, si: btuPerLb / fahrenheit},

	{kind: kindSpecificEnergy, text: "J/kg", si: 1},
	{kind: kindSpecificEnergy, text: "kJ/kg", aliases: []string{"J/g"}, si: 1000},
	{kind: kindSpecificEnergy, text: "MJ/kg", aliases: []string{"kJ/g"}, si: 1e6},
	{kind: kindSpecificEnergy, text: "Btu/lb", si: btuPerLb},

	{kind: kindExpansion, text: "1/K", aliases: []string{"/K", "1/C", "/C"}, si: 1},
	{kind: kindExpansion, text: "ppm/K", aliases: []string{"ppm/C", "um/mK", "um/(mK)"}, si: 1e-6},
	{kind: kindExpansion, text: "1/°F", aliases: []string{"/F"}, si: 1 / fahrenheit},

	{kind: kindMolarMass, text: "g/mol", si: 1e-3},
	{kind: kindMolarMass, text: "kg/mol", si: 1},

	{kind: kindMolarEnergy, text: "J/mol", si: 1},
	{kind: kindMolarEnergy, text: "kJ/mol", si: 1000},
	{kind: kindMolarEnergy, text: "kcal/mol", si: 4184}, // thermochemical

	{kind: kindViscosity, text: "Pa s", si: 1},
	{kind: kindViscosity, text: "mPa s", aliases: []string{"cP"}, si: 1e-3},

	{kind: kindPermeability, text: "kg/(m s Pa)", aliases: []string{"kg/msPa"}, si: 1},
	{kind: kindPermeability, text: "g/(m s Pa)", aliases: []string{"g/msPa"}, si: 1e-3},

	{kind: kindResistance, text: "s/m", si: 1},

	{kind: kindRate, text: "1/s", aliases: []string{"/s"}, si: 1},
	{kind: kindRate, text: "1/min", aliases: []string{"/min"}, si: 1 / minute},
	{kind: kindRate, text: "1/h", aliases: []string{"/h"}, si: 1 / hour},
	{kind: kindRate, text: "1/day", aliases: []string{"1/d", "/d", "/day"}, si: 1 / day},

	{kind: kindSurfaceTension, text: "mN/m", aliases: []string{"dyn/cm", "dyne/cm"}, si: 1e-3},
	{kind: kindSurfaceTension, text: "N/m", si: 1},
}

// spellings maps a unit's plain spelling to the units so written, of any kind.
var spellings = spell()

func spell() map[string][]*unit {
	found := map[string][]*unit{}
	for i := range units {
		u := &units[i]
		for _, text := range append([]string{u.text}, u.aliases...) {
			key := plainUnit(text)
			found[key] = append(found[key], u)
		}
	}
	return found
}
