package vent

import (
	"fmt"
	"math"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about, in the units of the
// source: what names it, given holds its inputs. Tests and the verification page ask it.
func Verify(what string, given map[string]float64) (float64, error) {
	m := quantity.MolarMass(given["molar mass"]) * quantity.GramPerMole
	t := quantity.Temperature(given["celsius"]) + quantity.ZeroCelsius
	p := quantity.Pressure(given["pressure"])
	if p == 0 {
		p = air.Atmosphere
	}
	switch what {
	case "concentration of a vapour": // mg/m³
		c, err := FromPPM(given["ppm"], m, t, p)
		return float64(c) * 1e6, err
	case "parts per million of a saturated vapour":
		return PPM(air.VapourDensity(quantity.Pressure(given["vapour"]), m, t), m, t, p)
	case "share of the lower explosive limit":
		c, err := FromPPM(given["ppm"], m, t, p)
		if err != nil {
			return 0, err
		}
		share, err := Explosive(c, []Component{{Share: 1, MolarMass: m, Limit: 1, LowerExplosive: quantity.Fraction(given["limit"])}}, t, p)
		return float64(share), err
	case "equivalent exposure of a mixture":
		return mixtureOf(given)
	case "average of a shift":
		var periods []Period
		for i := 1; given[fmt.Sprintf("hours %d", i)] > 0; i++ {
			periods = append(periods, Period{given[fmt.Sprintf("ppm %d", i)], quantity.Time(given[fmt.Sprintf("hours %d", i)]) * quantity.Hour})
		}
		return Shift(periods), nil
	case "fresh air": // L/min for an emission in g/min
		c, err := FromPPM(given["ppm"], m, t, p)
		if err != nil {
			return 0, err
		}
		q, err := FreshAir(given["emission"]*1e-3/60, given["mixing"], c)
		return float64(q) * 1000 * 60, err
	case "time to purge": // minutes
		at, err := purged(given).Purge(quantity.Fraction(given["share"]))
		return float64(at / quantity.Minute), err
	case "time to purge, followed":
		return followed(given)
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// mixtureOf has the concentrations and limits of any unit, numbered from 1.
func mixtureOf(given map[string]float64) (float64, error) {
	total := 0.0
	for i := 1; given[fmt.Sprintf("limit %d", i)] > 0; i++ {
		total += given[fmt.Sprintf("concentration %d", i)]
	}
	var mixture []Component
	for i := 1; given[fmt.Sprintf("limit %d", i)] > 0; i++ {
		mixture = append(mixture, Component{Share: quantity.Fraction(given[fmt.Sprintf("concentration %d", i)] / total), MolarMass: 1,
			Limit: quantity.Density(given[fmt.Sprintf("limit %d", i)])})
	}
	e, err := Exposure(quantity.Density(total), mixture)
	return float64(e), err
}

// purged is the room of a purge; its size does not matter.
func purged(given map[string]float64) Room {
	return Room{Volume: 100, AirChanges: quantity.Rate(given["air changes"]) * quantity.PerHour, Mixing: given["mixing"]}
}

// followed purges a room that holds vapour and gets no more, by its history.
func followed(given map[string]float64) (float64, error) {
	room := purged(given)
	end := 2 * quantity.Time(20*given["mixing"]/float64(room.AirChanges))
	nothing := Load{Emission: Emission{{0, 1}, {1, 1}}, Batches: []Batch{{At: 0, Area: 0}}}
	h, err := room.Over(nothing, 1, end)
	if err != nil {
		return 0, err
	}
	low, high := 0.0, float64(end)
	for range 80 {
		middle := (low + high) / 2
		if h.concentration(middle) > given["share"] {
			low = middle
		} else {
			high = middle
		}
	}
	if math.Abs(h.concentration(high)/given["share"]-1) > 1e-6 {
		return 0, fmt.Errorf("the share is not reached in %g s", float64(end))
	}
	return high / 60, nil
}
