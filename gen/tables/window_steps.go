package tables

import (
	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// windowWorking is the way to a window: what the bond line must reach, where the
// contacts stand, what the sheet's water allows, and every limit as the set
// temperature at which it is met, with the shares that give it by hand:
//
//	T_set = T_0 + (T - T_0 - φ_l·(T_l - T_0)) / φ_s
//
// for a place that must be at T: T_0 is the room, the sheet and the film, T_l
// the lower roller, φ_s and φ_l the kelvins that the place moves per kelvin of
// the set temperature and of the lower roller.
func (t *Tables) windowWorking(p pairing, v WindowValue) (Working, error) {
	r := new(nip.Response)
	if err := t.solve(nip.NewSolver(), p, r); err != nil {
		return Working{}, err
	}
	temps := temperatures(p.machine, v.Temperature)
	w := Working{Steps: []Step{
		stated("T_a", "activation of the adhesive", p.film.Activation, "K"),
		step("v", "speed", p.speed, "m/s", ""),
		ratio("", "where the contacts stand in their bands: -1 low, 0 recommended, 1 high", t.places[p.film.ID]),
		step("T_0", "room, sheet and film before the machine", v.Temperature, "K", ""),
	}}
	if p.machine.Heated != "both" {
		w.Steps = append(w.Steps, stated("T_l", "lower roller", p.machine.LowerRoller, "K"))
	}
	if g := v.gas; g.moisture > 0 {
		what := "moisture of the sheet"
		if g.sealed {
			what = "moisture of the coat above the sealed back"
		}
		w.Steps = append(w.Steps,
			step("RH", "relative humidity that it is in balance with", v.Humidity, "", ""),
			step("M", what, g.moisture, "", ""),
			ratio("r", "swelling allowed to air trapped under the film", g.ratio))
		if g.holds {
			w.Steps = append(w.Steps, step("T_g", "bond line at which it swells so far", g.temperature, "K", ""))
		}
	}
	w.Steps = append(w.Steps, boundSteps("first piece", &r.First, v.FirstBounds, temps)...)
	w.Steps = append(w.Steps, boundSteps("steady run", &r.Steady, v.SteadyBounds, temps)...)
	w.Notes = append(w.Notes, "By hand: T_set = T_0 + (T - T_0 - φ_l·(T_l - T_0)) / φ_s, with T what the place must reach.")
	return w, nil
}

// boundSteps are the lines of one case's limits.
func boundSteps(name string, c *nip.Case, list []Bound, temps nip.Temps) []Step {
	var steps []Step
	for i, b := range list {
		sense := "highest"
		if i == 0 {
			sense = "lowest"
		}
		if b.Limit != "laminator" {
			row := b.row(c, temps)
			steps = append(steps, ratio("φ_s", name+", "+limitWords[b.Limit]+": share of the set temperature", row[nip.Set]))
			if row[nip.Lower] != 0 {
				steps = append(steps, ratio("φ_l", "share of the lower roller", row[nip.Lower]))
			}
		}
		steps = append(steps, step("T_set", name+": "+sense+" for "+limitWords[b.Limit]+", "+quantity.Metric(b.At), b.Temperature, "K", ""))
	}
	return steps
}

// row is the response of the moment that decides a limit: the one at which its
// place is hottest.
func (b Bound) row(c *nip.Case, temps nip.Temps) nip.Row {
	temps.Set = b.Temperature
	best := c.Records[b.from(c)][b.place()]
	for _, record := range c.Records[b.from(c):] {
		if row := record[b.place()]; row.At(temps) > best.At(temps) {
			best = row
		}
	}
	return best
}
