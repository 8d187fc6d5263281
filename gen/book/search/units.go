package search

import (
	"math"
	"sort"
	"strconv"
	"strings"
)

// unit reads a number as a quantity: si = factor·number + offset. Temperatures
// are in °C, shares in %, the rest in SI.
type unit struct {
	name   string // folded; a space stands for any number of spaces
	kind   string
	factor float64
	offset float64
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
var units = func() []unit {
	var us []unit
	add := func(kind string, factor, offset float64, names string) {
		for _, name := range strings.Split(names, ",") {
			us = append(us, unit{name, kind, factor, offset})
		}
	}
	const inch, foot, pound = 0.0254, 0.3048, 0.45359237
	add("L", 1e-6, 0, "um,mic,mics,micron,microns,micrometre,micrometres,micrometer,micrometers,mu")
	add("L", 1e-9, 0, "nm")
	add("L", inch/1000, 0, "mil,mils,thou,pt,pts,point,points")
	add("L", inch/1e5, 0, "gauge,ga")
	add("L", 1e-3, 0, "mm,millimetre,millimetres,millimeter,millimeters")
	add("L", 1e-2, 0, "cm,centimetre,centimetres,centimeter,centimeters")
	add("L", 1, 0, "m,metre,metres,meter,meters")
	add("L", inch, 0, "in,inch,inches,\"")
	add("L", foot, 0, "ft,foot,feet,'")
	add("T", 1, 0, "c,°c,° c,degc,deg c,degree c,degrees c,celsius,degrees celsius,centigrade,degrees centigrade")
	add("T", 5.0/9, -160.0/9, "f,°f,° f,degf,deg f,degree f,degrees f,fahrenheit,degrees fahrenheit")
	add("S", 1.0/60, 0, "m/min,m / min,mpm,metres per minute,meters per minute,metres a minute,meters a minute")
	add("S", foot/60, 0, "ft/min,ft / min,fpm,ft per min,feet per minute,feet a minute,feet/min")
	add("S", 1, 0, "m/s")
	add("S", 1e-3, 0, "mm/s")
	add("S", inch, 0, "in/s,ips")
	add("P", pound*9.80665/(inch*inch), 0, "psi,lb/in2")
	add("P", 1, 0, "pa")
	add("P", 1e3, 0, "kpa")
	add("P", 1e6, 0, "mpa,n/mm2")
	add("P", 1e5, 0, "bar")
	add("P", 9.80665e4, 0, "kg/cm2,kgf/cm2")
	add("W", 1e-3, 0, "g/m2,gsm,g/m^2,gm2,grams per square metre,grams per square meter")
	paper := func(w, h float64) float64 { return pound / (500 * w * h * inch * inch) }
	add("W", paper(17, 22), 0, "lb bond,# bond")
	add("W", paper(25, 38), 0, "lb text,# text,lb book,# book,lb offset,# offset")
	add("W", paper(20, 26), 0, "lb cover,# cover")
	add("W", paper(25.5, 30.5), 0, "lb index,# index")
	add("D", 1, 0, "s,sec,secs,second,seconds")
	add("D", 60, 0, "min,mins,minute,minutes")
	add("D", 3600, 0, "h,hr,hrs,hour,hours")
	add("D", 86400, 0, "d,day,days")
	add("D", 604800, 0, "week,weeks")
	add("R", 1, 0, "%,percent,per cent,pct")
	add("M", 1e-3, 0, "g,gram,grams")
	add("M", 1, 0, "kg,kilo,kilos")
	add("M", pound, 0, "lb,lbs,pound,pounds")
	add("A", 1, 0, "m2,sq m,sqm,square metre,square metres,square meter,square meters")
	add("A", foot*foot, 0, "ft2,sq ft,sqft,square foot,square feet")
	add("N", 1e3, 0, "n/mm")
	add("N", 1, 0, "n/m")
	add("N", pound*9.80665/inch, 0, "lb/in,pli,lbf/in")
	sort.SliceStable(us, func(i, j int) bool { return len(us[i].name) > len(us[j].name) })
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

// step files a number with a unit; ok is false for what has no logarithm.
func (u unit) step(number float64) (step int, ok bool) {
	v := float64(number*u.factor) + u.offset
	if u.kind == "T" {
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
func unitAt(cs []char, i int) (u unit, end int, ok bool) {
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
		return u, j, true
	}
	return unit{}, i, false
}

// splitQuantity takes a quantity's term apart again.
func splitQuantity(term string) (kind string, step int) {
	step, _ = strconv.Atoi(term[2:]) // written by quantityTerm
	return term[1:2], step
}
