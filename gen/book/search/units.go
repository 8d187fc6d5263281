package search

import (
	"math"
	"sort"
	"strconv"
	"strings"
	"unicode/utf8"
)

// measure is a unit: si = factor·number + offset. Temperatures are in °C,
// shares in %, the rest in SI.
type measure struct {
	shown  string // as an answer writes it
	kind   string
	factor float64
	offset float64
	names  string   // folded, parted by commas; a space stands for any number of spaces
	to     []string // what it is converted to unless something else is asked
}

// Kinds of quantity: a letter each.
//
//	L length, T temperature, S speed, P pressure, W mass per area,
//	D time, R share, M mass, A area, N force per width
//
// The conversion factors are the exact definitions of the units (NIST Special
// Publication 811, appendix B; from memory), except for the four paper weights,
// which follow from the basic sizes 17×22, 25×38, 20×26 and 25½×30½ inches:
// g/m² = lb · 453.59237 / (500 · width · height · 0.0254²). A point is read as
// a caliper (0.001 in), as in this trade, never as a type size.
var measures = func() []measure {
	const inch, foot, pound = 0.0254, 0.3048, 0.45359237
	paper := func(w, h float64) float64 { return pound / (500 * w * h * inch * inch) }
	return []measure{
		{"µm", "L", 1e-6, 0, "um,mic,mics,micron,microns,micrometre,micrometres,micrometer,micrometers,mu", []string{"mil"}},
		{"nm", "L", 1e-9, 0, "nm", nil},
		{"mil", "L", inch / 1000, 0, "mil,mils,thou,thous", []string{"µm"}},
		{"pt", "L", inch / 1000, 0, "pt,pts,point,points", []string{"µm"}},
		{"gauge", "L", inch / 1e5, 0, "gauge,ga", []string{"µm", "mil"}},
		{"mm", "L", 1e-3, 0, "mm,millimetre,millimetres,millimeter,millimeters", []string{"in"}},
		{"cm", "L", 1e-2, 0, "cm,centimetre,centimetres,centimeter,centimeters", []string{"in"}},
		{"m", "L", 1, 0, "m,metre,metres,meter,meters", []string{"ft"}},
		{"in", "L", inch, 0, "in,inch,inches,\"", []string{"mm"}},
		{"ft", "L", foot, 0, "ft,foot,feet,'", []string{"m"}},
		{"°C", "T", 1, 0, "c,°c,° c,degc,deg c,degree c,degrees c,celsius,degrees celsius,centigrade,degrees centigrade", []string{"°F"}},
		{"°F", "T", 5.0 / 9, -160.0 / 9, "f,°f,° f,degf,deg f,degree f,degrees f,fahrenheit,degrees fahrenheit", []string{"°C"}},
		{"m/min", "S", 1.0 / 60, 0, "m/min,m / min,mpm,metres per minute,meters per minute,metres a minute,meters a minute", []string{"ft/min"}},
		{"ft/min", "S", foot / 60, 0, "ft/min,ft / min,fpm,ft per min,feet per minute,feet a minute,feet/min", []string{"m/min"}},
		{"m/s", "S", 1, 0, "m/s", []string{"m/min", "ft/min"}},
		{"mm/s", "S", 1e-3, 0, "mm/s", []string{"m/min", "ft/min"}},
		{"in/s", "S", inch, 0, "in/s,ips", []string{"m/min", "ft/min"}},
		{"psi", "P", pound * 9.80665 / (inch * inch), 0, "psi,lb/in2", []string{"kPa", "bar"}},
		{"Pa", "P", 1, 0, "pa", nil},
		{"kPa", "P", 1e3, 0, "kpa", []string{"psi", "bar"}},
		{"MPa", "P", 1e6, 0, "mpa,n/mm2", []string{"psi", "bar"}},
		{"bar", "P", 1e5, 0, "bar,bars", []string{"psi", "kPa"}},
		{"kg/cm²", "P", 9.80665e4, 0, "kg/cm2,kgf/cm2", []string{"kPa", "psi"}},
		{"g/m²", "W", 1e-3, 0, "g/m2,gsm,g/m^2,gm2,grams per square metre,grams per square meter", []string{"lb text", "lb cover"}},
		{"lb bond", "W", paper(17, 22), 0, "lb bond,# bond", []string{"g/m²"}},
		{"lb text", "W", paper(25, 38), 0, "lb text,# text,lb book,# book,lb offset,# offset", []string{"g/m²"}},
		{"lb cover", "W", paper(20, 26), 0, "lb cover,# cover", []string{"g/m²"}},
		{"lb index", "W", paper(25.5, 30.5), 0, "lb index,# index", []string{"g/m²"}},
		{"s", "D", 1, 0, "s,sec,secs,second,seconds", []string{"min"}},
		{"min", "D", 60, 0, "min,mins,minute,minutes", []string{"h"}},
		{"h", "D", 3600, 0, "h,hr,hrs,hour,hours", nil},
		{"d", "D", 86400, 0, "d,day,days", []string{"h"}},
		{"weeks", "D", 604800, 0, "week,weeks", []string{"h"}},
		{"%", "R", 1, 0, "%,percent,per cent,pct", nil},
		{"g", "M", 1e-3, 0, "g,gram,grams", nil},
		{"kg", "M", 1, 0, "kg,kilo,kilos", []string{"lb"}},
		{"lb", "M", pound, 0, "lb,lbs,pound,pounds,#", []string{"kg"}},
		{"m²", "A", 1, 0, "m2,sq m,sqm,square metre,square metres,square meter,square meters", []string{"ft²"}},
		{"ft²", "A", foot * foot, 0, "ft2,sq ft,sqft,square foot,square feet", []string{"m²"}},
		{"N/mm", "N", 1e3, 0, "n/mm", []string{"lb/in"}},
		{"N/m", "N", 1, 0, "n/m", []string{"lb/in"}},
		{"lb/in", "N", pound * 9.80665 / inch, 0, "lb/in,pli,lbf/in", []string{"N/mm"}},
	}
}()

// pounds is the unit that, bare, may also be a paper's basis weight, and bases
// are the weights that it may be, as shown.
const pounds = "lb"

var bases = []string{"lb text", "lb cover", "lb bond", "lb index"}

// measureAs finds a measure by how it is shown; all that are looked for exist.
func measureAs(shown string) measure {
	for _, m := range measures {
		if m.shown == shown {
			return m
		}
	}
	panic("search: no unit is shown as " + shown)
}

// spelling is one name of a measure.
type spelling struct {
	name string
	measure
}

// units are all spellings, the longest first.
var units = func() []spelling {
	var us []spelling
	for _, m := range measures {
		for _, name := range strings.Split(m.names, ",") {
			us = append(us, spelling{name, m})
		}
	}
	sort.SliceStable(us, func(i, j int) bool {
		return utf8.RuneCountInString(us[i].name) > utf8.RuneCountInString(us[j].name)
	})
	return us
}()

// Quantities are filed in fine steps, and a query looks a few steps to either
// side. Most kinds go by ratio: steps of 0.2 %, eight to a side, so that 3 mil
// (76.2 µm) and its trade fellow 75 µm, 1.6 % apart, meet. Temperatures go by
// difference: steps of 0.25 °C, four to a side.
const (
	ratioSteps  = 500
	ratioReach  = 8
	degreeSteps = 4
	degreeReach = 4
)

// si is a number of the unit in the kind's own unit. The product is converted
// by itself, so that no machine fuses it into the sum and rounds otherwise.
func (m measure) si(number float64) float64 { return float64(number*m.factor) + m.offset }

// step files a number with a unit; ok is false for what has no logarithm.
func (m measure) step(number float64) (step int, ok bool) {
	v := m.si(number)
	if m.kind == "T" {
		v *= degreeSteps
	} else if v > 0 {
		v = math.Log(v) * ratioSteps
	} else {
		return 0, false
	}
	if math.Abs(v) > 1e6 { // also what is infinite
		return 0, false
	}
	return int(math.Floor(v + 0.5)), true
}

// reach is how many steps to either side a query looks.
func reach(kind string) int {
	if kind == "T" {
		return degreeReach
	}
	return ratioReach
}

// quantityTerm names the posting list of a quantity: "#L-4738".
func quantityTerm(kind string, step int) string { return "#" + kind + strconv.Itoa(step) }

// unitAt finds the longest unit that stands at i, after spaces or one hyphen.
func unitAt(cs []char, i int) (m measure, end int, ok bool) {
	for j := 0; i < len(cs) && j < 2 && cs[i].r == ' '; j++ {
		i++
	}
	if i < len(cs) && cs[i].r == '-' {
		i++
	}
next:
	for _, u := range units {
		j := i
		for _, r := range u.name {
			if r == ' ' {
				for j < len(cs) && cs[j].r == ' ' {
					j++
				}
				continue
			}
			if j >= len(cs) || cs[j].r != r {
				continue next
			}
			j++
		}
		// "m" is no unit in "m/h", "Pa" none in "Pa·s".
		if j < len(cs) && (isWord(cs[j].r) || cs[j].r == '/' || cs[j].r == '·' || cs[j].r == '^') {
			continue
		}
		return u.measure, j, true
	}
	return measure{}, i, false
}

// splitQuantity takes a quantity's term apart again.
func splitQuantity(term string) (kind string, step int) {
	step, _ = strconv.Atoi(term[2:]) // written by quantityTerm
	return term[1:2], step
}
