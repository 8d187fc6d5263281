package tables

import (
	"fmt"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// vapourSteps are the lines of the working of an area.
func (t *Tables) vapourSteps(v VapourValue, p vapourPrint) []Step {
	room, c := ventRoom(p.room), p.carrier
	steps := []Step{
		step("m₀", c.Name+" in a fresh print at normal coverage", p.load, "kg/m²", p.ink.Evaporation.Load.Source),
		step("", "given off in the first hour", quantity.Grammage(p.load-leftAfterHour(p)), "kg/m²", ""),
		stated("V", "free air of the room", p.room.Volume, "m³"),
		stated("n", "air changes", p.room.AirChanges, "1/s"),
		ratio("K", "mixing factor: 1 perfect, 10 very poor", room.Mixing),
		flow("Q", "fresh air", float64(room.Fresh())),
		density("C̄", "worst average over 8 h of one square metre", v.Average, ""),
		density("Ĉ", "its highest concentration", v.Peak, ""),
	}
	if p.room.Vapour.Best > 0 {
		steps = append(steps, density("C₀", "already in the air", p.room.Vapour.Best, p.room.Vapour.Source))
	}
	if c.ExposureLimit.Set {
		steps = append(steps, density("L", "exposure limit, 8 h", c.ExposureLimit.Best, c.ExposureLimit.Source),
			step("x", "share of it that prints and air together may take", ExposureShare, "", ""))
	}
	if c.LowerExplosive.Set {
		limit := air.VapourDensity(quantity.Pressure(c.LowerExplosive.Best)*t.pressure, c.MolarMass.Best, p.room.Temperature.Best)
		steps = append(steps, stated("", "lower explosive limit by volume", c.LowerExplosive, ""),
			density("L_e", "the same as a concentration", limit, ""),
			step("x_e", "share of it that the peak may take", ExplosiveShare, "", ""))
	}
	if !v.Known {
		return steps
	}
	steps = append(steps, step("A", "area at once, by the "+v.By, v.Computed, "m²", ""))
	if v.Over {
		steps = append(steps, step("", "told: over", MostArea, "m²", ""))
	} else {
		steps = append(steps, step("", "told, rounded down", v.Area, "m²", ""))
	}
	steps = append(steps, step("A_d", "printed in a day, evenly and without end: (x·L − C₀)·Q/(K·m₀)", v.Daily, "m²", ""))
	for _, m := range v.Moves {
		steps = append(steps, Step{Text: "over the spread of: " + m.Input, Shown: quantity.Metric(m.Low) + " to " + quantity.Metric(m.High), SI: float64(m.High), Unit: "m²"})
	}
	return steps
}

// leftAfterHour is what a print holds after its first hour.
func leftAfterHour(p vapourPrint) quantity.Grammage {
	given := 0.0
	for i := 1; i < len(p.emission); i++ {
		a, b := p.emission[i-1], p.emission[i]
		end := min(b.Time, quantity.Hour)
		if end > a.Time {
			given += float64(a.Flux) * float64(end-a.Time) // level between two times
		}
	}
	return p.load - quantity.Grammage(given)
}

// density makes a line from a concentration in air, in mg/m³ or g/m³.
func density(symbol, text string, d quantity.Density, source string) Step {
	shown := fmt.Sprintf("%.3g mg/m³", milligrams(d))
	if milligrams(d) >= 1000 {
		shown = fmt.Sprintf("%.3g g/m³", milligrams(d)/1000)
	}
	return Step{Symbol: symbol, Text: text, Shown: shown, SI: float64(d), Unit: "kg/m³", Source: source}
}

// flow makes a line from a flow of air, in m³/h and ft³/min.
func flow(symbol, text string, q float64) Step {
	const cubicFoot = 0.3048 * 0.3048 * 0.3048
	return Step{Symbol: symbol, Text: text, Shown: fmt.Sprintf("%.0f m³/h (%.0f ft³/min)", q*3600, q*60/cubicFoot), SI: q, Unit: "m³/s"}
}
