package quantity

import (
	"fmt"
	"math"
	"strings"
)

// gap stands between a number and its unit, so that a line never breaks there.
const gap = "\u00a0"

// shown says how quantities of a size are printed: those smaller than below, in
// the kind's SI unit. An empty unit means that they are not printed at all.
type shown struct {
	below float64
	unit  string
	round rounding
}

var always = math.Inf(1)

// metric and imperial hold the units a person reads, smallest first. A kind that
// imperial lacks has no second system in use in this trade.
var metric = [kindCount][]shown{
	kindLength:                {{1e-3, "µm", significant(3)}, {1, "mm", significant(4)}, {always, "m", significant(4)}},
	kindArea:                  {{0.01, "cm²", significant(3)}, {always, "m²", significant(3)}},
	kindVolume:                {{1e-3, "ml", significant(3)}, {1, "l", significant(3)}, {always, "m³", significant(3)}},
	kindTime:                  {{60, "s", significant(3)}, {hour, "min", significant(3)}, {100 * hour, "h", significant(3)}, {always, "days", significant(3)}},
	kindSpeed:                 {{0.005, "mm/s", significant(3)}, {always, "m/min", significant(3)}},
	kindTemperature:           {{always, "°C", step(0.5)}},
	kindTemperatureDifference: {{always, "K", degrees}},
	kindPressure:              {{1e3, "Pa", significant(3)}, {1e6, "kPa", significant(3)}, {1e9, "MPa", significant(3)}, {always, "GPa", significant(3)}},
	kindMass:                  {{1e-3, "mg", significant(3)}, {1, "g", significant(3)}, {always, "kg", significant(3)}},
	kindGrammage:              {{always, "g/m²", significant(3)}},
	kindDensity:               {{1e-3, "mg/m³", significant(3)}, {1, "g/m³", significant(3)}, {always, "kg/m³", significant(4)}},
	kindLineLoad:              {{100, "N/m", significant(3)}, {always, "N/mm", significant(3)}},
	kindFraction:              {{always, "%", significant(3)}},
	kindDiffusivity:           {{always, "m²/s", power}},
	kindConductivity:          {{always, "W/(m K)", significant(3)}},
	kindConductance:           {{always, "W/(m² K)", significant(3)}},
	kindSpecificHeat:          {{always, "J/(kg K)", significant(4)}},
	kindSpecificEnergy:        {{always, "kJ/kg", significant(3)}},
	kindExpansion:             {{always, "1/K", micro}},
	kindMolarMass:             {{always, "g/mol", significant(4)}},
	kindMolarEnergy:           {{always, "kJ/mol", significant(3)}},
	kindViscosity:             {{1, "mPa s", significant(3)}, {always, "Pa s", significant(3)}},
	kindPermeability:          {{always, "kg/(m s Pa)", power}},
	kindResistance:            {{always, "s/m", significant(3)}},
	kindRate:                  {{1, "1/h", significant(3)}, {always, "1/s", significant(3)}},
	kindSurfaceTension:        {{always, "mN/m", significant(3)}},
}

var imperial = [kindCount][]shown{
	kindLength:                {{1e-3, "mil", mils}, {100 * inch, "in", significant(3)}, {always, "ft", significant(4)}},
	kindArea:                  {{0.1, "in²", significant(3)}, {always, "ft²", significant(3)}},
	kindVolume:                {{gallon / 4, "fl oz", significant(3)}, {0.5, "gal", significant(3)}, {always, "ft³", significant(3)}},
	kindSpeed:                 {{always, "ft/min", significant(3)}},
	kindTemperature:           {{always, "°F", step(1)}},
	kindTemperatureDifference: {{always, "°F", degrees}},
	kindPressure:              {{1e3, "", nil}, {7e6, "psi", significant(3)}, {always, "ksi", significant(3)}},
	kindMass:                  {{1e-3, "", nil}, {pound, "oz", significant(3)}, {always, "lb", significant(3)}},
	kindGrammage:              {{0.01, "", nil}, {always, "oz/yd²", significant(3)}},
	kindDensity:               {{1, "", nil}, {always, "lb/ft³", significant(3)}},
	kindLineLoad:              {{100, "oz/in", significant(3)}, {always, "lb/in", significant(3)}},
}

// zeros names the unit of nothing at all, where it is not the smallest one.
var zeros = map[kind]string{kindTime: "h", kindMass: "g", kindSpeed: "m/min", kindDensity: "kg/m³", kindLineLoad: "N/mm", kindVolume: "l", kindArea: "m²"}

// Metric prints a quantity in the metric unit that suits its size, rounded to
// what a person needs: "75 µm", "24 h", "115.5 °C", "1.2 × 10⁻¹³ m²/s".
// A no-break space stands before the unit.
func Metric[Q Quantity](q Q) string {
	k := kindOf[Q]()
	if text, ok := zeros[k]; ok && q == 0 {
		return in(k, 0, text, significant(3))
	}
	return show(k, metric[k], float64(q))
}

// Imperial prints a quantity in the units of the yard and the pound: "3 mil",
// "104 °F". It is empty where the trade uses no second unit.
func Imperial[Q Quantity](q Q) string {
	k := kindOf[Q]()
	if len(imperial[k]) == 0 || math.IsNaN(float64(q)) || math.IsInf(float64(q), 0) {
		return ""
	}
	return show(k, imperial[k], float64(q))
}

// Both prints a quantity in both systems: "75 µm (3 mil)"; or in the metric one
// alone where there is no second.
func Both[Q Quantity](q Q) string { return both(Metric(q), Imperial(q)) }

// In prints a quantity in a unit of choice with three significant figures:
// In(s, "m/s") for an air speed. A unit that the kind does not have is a fault
// of the program, and panics.
func In[Q Quantity](q Q, unitText string) string {
	return in(kindOf[Q](), float64(q), unitText, significant(3))
}

// BothIn prints a quantity in two units of choice: "0.5 m/s (98.4 ft/min)".
func BothIn[Q Quantity](q Q, first, second string) string {
	return both(In(q, first), In(q, second))
}

// Number gives a quantity's number in a unit of choice, unrounded. A unit that
// the kind does not have is a fault of the program, and panics.
func Number[Q Quantity](q Q, unitText string) float64 {
	return number(find(kindOf[Q](), unitText), float64(q))
}

func both(first, second string) string {
	if second == "" {
		return first
	}
	return first + " (" + second + ")"
}

// show picks the unit for a size and prints. The size is rounded first, so that
// 999.9 µm prints as 1 mm.
func show(k kind, choices []shown, si float64) string {
	if math.IsNaN(si) || math.IsInf(si, 0) {
		return "not a finite " + kindWords[k].name
	}
	size := round(math.Abs(si), 3)
	for _, c := range choices {
		if size < c.below {
			if c.unit == "" {
				return ""
			}
			return in(k, si, c.unit, c.round)
		}
	}
	return ""
}

func in(k kind, si float64, unitText string, digits rounding) string {
	if unitText == "" {
		return ""
	}
	u := find(k, unitText)
	return digits(number(u, si)) + gap + strings.ReplaceAll(u.text, " ", gap)
}

func number(u *unit, si float64) float64 { return si/u.si - u.zero }

func find(k kind, unitText string) *unit {
	for _, u := range spellings[plainUnit(unitText)] {
		if u.kind == k {
			return u
		}
	}
	panic(fmt.Sprintf("quantity: %s is no unit of %s", unitText, withArticle(kindWords[k].name)))
}
