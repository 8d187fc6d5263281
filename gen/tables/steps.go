package tables

import (
	"fmt"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// step makes a line of a working from a quantity.
func step[Q quantity.Quantity](symbol, text string, q Q, unit, source string) Step {
	return Step{Symbol: symbol, Text: text, Shown: quantity.Both(q), SI: float64(q), Unit: unit, Source: source}
}

// ratio makes a line of a working from a plain number.
func ratio(symbol, text string, x float64) Step {
	return Step{Symbol: symbol, Text: text, Shown: fmt.Sprintf("%.3g", x), SI: x}
}

// stated makes a line from a value of the data, with its source.
func stated[Q quantity.Quantity](symbol, text string, v shop.Value[Q], unit string) Step {
	return step(symbol, text, v.Best, unit, v.Source)
}

func (l evaporating) steps(coverage string, p place) (Working, error) {
	s, err := l.in(p)
	if err != nil {
		return Working{}, err
	}
	ev, layer := l.ink.Evaporation, l.medium.Drying
	w := Working{Steps: []Step{
		step("m₀", "carrier as it leaves the printer at this coverage", l.load(coverage), "kg/m²", ev.Load.Source),
		step("m*", "carrier that may be left", l.safe, "kg/m²", ev.Safe.Source),
		stated("L", "layer that takes the carrier up", layer.Absorbs, "m"),
		step("D₀", "diffusivity in "+l.refMedium.Name+", solved from the maker's wait", l.reference, "m²/s", ""),
		ratio("μ", "mobility here over "+l.refMedium.Name, l.mobility()),
		ratio("a_T", "Arrhenius factor from the maker's temperature to this room's", s.arrhenius),
		step("D", "diffusivity here", s.Diffusivity, "m²/s", ""),
		step("p", "vapour pressure of "+l.carrier.Name, s.saturated, "Pa", l.vapourSource()),
		ratio("a", "the carrier's own activity beside the water it holds", s.activity),
		step("c", "vapour over a saturated layer", s.vapour, "kg/m³", ""),
		stated("C", "concentration in the layer that saturates the air", ev.Saturation, "kg/m³"),
		{Symbol: "h", Text: "transfer into the air at the face", Shown: quantity.In(s.air, "mm/s"), SI: float64(s.air), Unit: "m/s"},
		ratio("Bi", "Biot number at the face", s.BiotFace()),
		ratio("Bi′", "Biot number at the back", s.BiotBack()),
		step("m∞", "carrier held by the room's own vapour", s.Floor, "kg/m²", ""),
	}}
	if l.transfer() {
		w.Notes = append(w.Notes, fmt.Sprintf("The maker's wait holds for %s; this value rests on the two media's mobilities.", l.refMedium.Name))
	}
	if s.extrapolate {
		w.Notes = append(w.Notes, "The vapour pressure lies outside the range that its constants were fitted in.")
	}
	if l.carrier.Hygroscopic {
		w.Notes = append(w.Notes, "The carrier holds water from the air; by Raoult's law its own vapour pressure falls by the relative humidity.")
	}
	return w, nil
}

func (e evaporation) vapourSource() string {
	if a := e.carrier.Antoine; a != nil {
		return orElse(a.Source.ID, e.carrier.Source.ID)
	}
	return orElse(e.carrier.VapourPoint.Source.ID, e.carrier.Source.ID)
}

func (l reacting) steps(coverage string, p place) (Working, error) {
	r := l.ink.Reaction
	w := Working{Steps: []Step{
		ratio("c", "film of this coverage over a normal one", coverageRatio(l.ink, coverage)),
		stated("U*", "share of a normal film that may be unreacted", r.Unreacted, ""),
		step("k₀", "rate in open air at the maker's temperature, solved from the maker's wait", l.rate, "1/s", ""),
		stated("E", "activation energy", r.Activation, "J/mol"),
		ratio("x", "share of the open air's oxygen that reaches it", oxygen(l.ink, p.storage)),
		step("k", "rate here", l.in(p).Rate, "1/s", ""),
	}}
	if l.ink.Dries == "oxidation" {
		w.Notes = append(w.Notes, "One rate solved from the maker's wait stands for a reaction that starts slowly: judge it on ratios.")
	}
	return w, nil
}

func (l toner) steps(coverage string, p place) (Working, error) {
	r := l.ink.Toner
	w := Working{Steps: []Step{
		stated("", "any sheet", r.Base, "s"),
		more("more on a gloss-coated sheet", r.Coated, l.coated()),
		more("more for heavy coverage", r.Heavy, coverage == "heavy"),
	}}
	w.Notes = append(w.Notes, "The hours are the trade's rule, not computed; they pass wherever the print lies.")
	water, holds, err := l.t.regain(l.medium, p)
	if err != nil || !holds {
		return w, err
	}
	steps, note := water.steps(l.hours(coverage), p.storage.Name)
	w.Steps = append(w.Steps, steps...)
	if note != "" {
		w.Notes = append(w.Notes, note)
	}
	return w, nil
}

// more is an additive time that may not apply.
func more(text string, v shop.Value[quantity.Time], applies bool) Step {
	if !applies {
		v.Best = 0
	}
	return stated("+", text, v, "s")
}

func orElse(a, b string) string {
	if a != "" {
		return a
	}
	return b
}
