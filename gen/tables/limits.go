package tables

import (
	"fmt"
	"math"

	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// Bound is one limit of a set temperature.
type Bound struct {
	Limit       string               // activation, film, medium, gas, laminator
	Temperature quantity.Temperature // set temperature at which it is met
	At          quantity.Temperature // temperature of the place that it holds for
}

// place is where a limit is judged.
func (b Bound) place() nip.Place {
	if b.Limit == "film" {
		return nip.FilmFace
	}
	return nip.BondLine
}

// from is the first record that a limit looks at: gas swells once the nip's
// pressure is off, the film is hot from its roller on.
func (b Bound) from(c *nip.Case) int {
	switch b.Limit {
	case "film":
		return 0
	case "gas":
		return c.NipEnd
	}
	return c.Touch
}

// limitWords are how a person calls the limits.
var limitWords = map[string]string{
	"activation": "the adhesive's activation",
	"film":       "the film",
	"medium":     "the medium or its coating",
	"gas":        "air and steam swelling under the film",
	"laminator":  "the laminator",
}

// bounds returns a case's limits: first the lowest set temperature, then every
// highest, each as the set temperature at which it is met.
//
//   - activation: the bond line, the print's side of it, reaches it at its maximum
//     from the first touch to the free run, and stays above it for the adhesive's
//     open time where the film states one;
//   - film: its outer face's maximum reaches the film's limit;
//   - medium: the same maximum reaches the coating's or medium's limit;
//   - gas: the bond line's maximum after the nip, where the pressure is off,
//     reaches the temperature from which trapped air swells too far;
//   - laminator: the highest that can be set.
func bounds(c *nip.Case, temps nip.Temps, p pairing, gas gasLimit) ([]Bound, error) {
	list := make([]Bound, 0, 5)
	for _, limit := range []struct {
		name  string
		at    quantity.Temperature
		holds bool
	}{
		{"activation", p.film.Activation.Best, true},
		{"film", p.film.HeatLimit.Best, p.film.HeatLimit.Set},
		{"medium", p.medium.HeatLimit.Best, p.medium.HeatLimit.Set},
		{"gas", gas.temperature, gas.holds},
	} {
		if !limit.holds {
			continue
		}
		b := Bound{Limit: limit.name, At: limit.at}
		var err error
		if b.Temperature, err = c.SetForGreatest(b.place(), b.from(c), b.At, temps); err != nil {
			return nil, fmt.Errorf("%s: %w", b.Limit, err)
		}
		if open := p.film.OpenTime; limit.name == "activation" && open.Set {
			held, err := c.SetForHeld(b.At, open.Best, temps)
			if err != nil {
				return nil, fmt.Errorf("open time: %w", err)
			}
			b.Temperature = max(b.Temperature, held)
		}
		list = append(list, b)
	}
	return append(list, Bound{"laminator", p.machine.Hottest.Best, p.machine.Hottest.Best}), nil
}

func rangeOf(b []Bound) Range {
	return Range{b[0].Temperature, tightest(b).Temperature}
}

// tightest is the highest limit that is met first.
func tightest(b []Bound) Bound {
	least := b[1]
	for _, x := range b[2:] {
		if x.Temperature < least.Temperature {
			least = x
		}
	}
	return least
}

// crossing names the two limits that cross, in the whole degrees that the
// handbook tells, of the case in which they cross more.
func crossing(first, steady []Bound) string {
	b := first
	if gap(steady) > gap(first) {
		b = steady
	}
	return crossed(celsius(up(b[0].Temperature)), celsius(down(tightest(b).Temperature)), tightest(b).Limit)
}

// gap is by how many whole degrees a case's limits cross.
func gap(b []Bound) float64 {
	return celsius(up(b[0].Temperature)) - celsius(down(tightest(b).Temperature))
}

func crossed(low, high float64, limit string) string {
	return fill(phrases["no-window"], "low", degrees(low), "why-low", limitWords["activation"],
		"high", degrees(high), "why-high", limitWords[limit],
		"gap", fmt.Sprintf("%.0f\u00a0K (%.0f\u00a0°F)", low-high, (low-high)*1.8))
}

// degrees writes a set temperature of whole degrees Celsius in both scales.
func degrees(celsius float64) string {
	return fmt.Sprintf("%.0f\u00a0°C (%.0f\u00a0°F)", celsius, celsius*1.8+32)
}

// up and down round a bound of a window to whole degrees, to the safe side.
func up(t quantity.Temperature) quantity.Temperature {
	return quantity.FromCelsius(math.Ceil(t.Celsius() - 0.05))
}

func down(t quantity.Temperature) quantity.Temperature {
	return quantity.FromCelsius(math.Floor(t.Celsius() + 0.05))
}
