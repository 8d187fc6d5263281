package paper

import (
	"laydown/gen/quantity"
)

// Receiver is a layer that receives ink, of a kind: its isotherm, and how far that is
// known. Low holds less water and binds it less, so that it gives the lowest water and
// the least rise of activity; High the reverse. Between 50 % and 90 % relative humidity
// the spread of the water is about the same factor; the spread of the binding decides
// the vapour of a heated layer, since a layer conditioned in a room has the room's activity
// whatever its capacity.
type Receiver struct {
	Isotherm  GAB
	Low, High GAB
	Source    string
}

// The receiving layers. Their moisture is from memory, their binding is assumed to be like
// that of other materials that take up water; both wide.
var (
	// Gelatine is a swellable layer: 13 % moisture (8–14 %) at 50 % relative humidity.
	Gelatine = receiver("gelatine", 0.088, 12, 0.78, 400, 250, 0.62, 1.09, 100, 400)
	// PVA is a swellable layer of polyvinyl alcohol: 6.5 % (4–9 %) at 50 %.
	PVA = receiver("polyvinyl alcohol", 0.05, 4, 0.85, 300, 200, 0.62, 1.38, 50, 350)
	// Silica is a porous layer of silica with a little binder: 3 % (2–5 %) at 50 %, and
	// its pores fill near saturation, by how much depends on their size.
	Silica = receiver("porous silica", 0.02, 10, 0.85, 400, 100, 0.65, 1.63, 0, 200)
)

// receiver sets up a layer from its constants at 23 °C: m, C, K, then q_C and q_K in kJ/kg;
// the factors on m and the values of q_K, kJ/kg, that bound it.
func receiver(name string, m quantity.Fraction, c, k float64, heatC, heatK quantity.SpecificEnergy,
	least, most quantity.Fraction, weak, strong quantity.SpecificEnergy) Receiver {
	const kilojoule = 1e3
	at := func(m quantity.Fraction, heatK quantity.SpecificEnergy) GAB {
		g := GAB{
			Name:  name,
			Layer: m,
			C0:    1,
			K0:    1,
			HeatC: heatC * kilojoule,
			HeatK: heatK * kilojoule,
			From:  quantity.FromCelsius(20),
			To:    quantity.FromCelsius(30),
		}
		c23, k23 := g.constants(quantity.FromCelsius(23))
		g.C0, g.K0 = c/c23, k/k23
		return g
	}
	return Receiver{
		Isotherm: at(m, heatK),
		Low:      at(m*least, weak),
		High:     at(m*most, strong),
		Source:   "from memory, wide spread",
	}
}
