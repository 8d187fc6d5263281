package tables

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// AfterNotes hold for every value of what stays after lamination.
var AfterNotes = []string{
	"The film passes on what it takes; what it holds of its own is not counted. The carrier is taken to dissolve in it as in the print.",
	"Mobilities in films are known to a factor of ten: trust the order of films and backs more than the days.",
}

// working is the way to what stays in a print.
func (l underFilm) working(v AfterValue) Working {
	ev, layer, base := l.law.ink.Evaporation, l.law.medium.Drying, l.law.t.shop.Substance(l.film.Base.ID)
	w := Working{Steps: []Step{
		step("t", "computed wait in the open", v.Wait, "s", ""),
		step("t₁", "laminated after", v.At, "s", ""),
		step("m₁", "carrier in it then", v.Start, "kg/m²", ""),
		step("m*", "carrier that may be left", v.Limit, "kg/m²", orElse(l.film.Safe.Source, ev.Safe.Source)),
		stated("L", "layer that holds the carrier", layer.Absorbs, "m"),
		step("D", "diffusivity in it", l.covered.Diffusivity, "m²/s", ""),
		step("D_v", "diffusivity in plasticised calendered vinyl", l.vinyl, "m²/s", ""),
		step("μ_f", "mobility in the film's base, "+base.Name+", over that in vinyl", base.CarrierMobility.Best, "", base.CarrierMobility.Source),
		stated("ℓ", "thickness of the film's base", l.film.BaseThickness, "m"),
	}}
	adhesive := l.law.t.shop.Substance(l.film.Adhesive.ID)
	if len(l.plies) > 1 {
		w.Steps = append(w.Steps,
			step("μ_a", "mobility in "+adhesive.Name+" over that in vinyl", adhesive.CarrierMobility.Best, "", adhesive.CarrierMobility.Source),
			stated("ℓ_a", "thickness of the adhesive", l.film.AdhesiveThickness, "m"))
	}
	resistance := quantity.Resistance(0)
	for _, p := range l.plies {
		resistance += p.Resistance()
	}
	if !math.IsInf(float64(resistance), 1) {
		w.Steps = append(w.Steps,
			step("R_f", "resistance of the film, Σ ℓ/(μ·D_v)", resistance, "s/m", ""),
			step("t_f", "the film itself fills in about ℓ²/(6·μ·D_v)", l.plies[0].Lag(), "s", ""))
	}
	w.Steps = append(w.Steps,
		coefficient("k", "face in the open", l.open.Face),
		coefficient("k_f", "face under the film, 1/(1/k + R_f)", l.covered.Face),
		coefficient("k_b", "transfer at the back", l.covered.Back),
		ratio("Bi", "Biot number at the face", l.covered.BiotFace()),
		ratio("Bi′", "Biot number at the back", l.covered.BiotBack()))
	for i, m := range v.Left {
		w.Steps = append(w.Steps, step("m", "left "+counted(AfterDays[i], "day")+" after lamination", m, "kg/m²", ""))
	}
	if !v.Locked() {
		w.Steps = append(w.Steps, step("t₂", "down to the limit after lamination", v.Clear, "s", ""))
	}
	if len(l.plies) == 1 {
		w.Notes = append(w.Notes, fmt.Sprintf("The data says nothing of the carrier in %s; it is softer than the base and is left out.", adhesive.Name))
	}
	return w
}

// counted writes a number of things: 1 day, 3 days.
func counted(n float64, thing string) string {
	if n != 1 {
		thing += "s"
	}
	return fmt.Sprintf("%g %s", n, thing)
}

// backWords say what lies on a back.
var backWords = map[string]string{
	"open":    "as the medium and the storage leave it",
	"film":    "under the same film",
	"mounted": "on a panel, which passes nothing",
}

// coefficient makes a line of a working from a transfer coefficient on the layer's
// own concentration, too small for any usual unit of speed.
func coefficient(symbol, text string, k quantity.Speed) Step {
	return Step{Symbol: symbol, Text: text, Shown: fmt.Sprintf("%.3g\u00a0m/s", float64(k)), SI: float64(k), Unit: "m/s"}
}
