package shop

import "laydown/gen/quantity"

// Densities that a medium for printing can have, in kg/m³: below are foams,
// above are metals and stone. Bulky board and canvas lie near 500, filled vinyl
// near 1400. Common practice, no source.
const (
	lightestMedium = 300
	heaviestMedium = 1800
)

// mediumDensity: grammage over thickness is a density that a medium can have.
// It catches a thickness in the wrong unit.
func (c *checker) mediumDensity(r *Medium) {
	if !r.Grammage.Set || !r.Thickness.Set {
		return
	}
	density := float64(r.Grammage.Best) / float64(r.Thickness.Best)
	if density < lightestMedium || density > heaviestMedium {
		c.say(r.Grammage.Pos, "medium %s would have a density of %.0f kg/m³ (%s over %s): media lie between %d and %d kg/m³; check grammage and thickness",
			quote(r.ID), density, r.Grammage.Text, r.Thickness.Text, lightestMedium, heaviestMedium)
	}
}

// sheetHasLength: a sheet has a longer side too.
func (c *checker) sheetHasLength(r *Medium) {
	if !has(r.Forms, "sheet") {
		return
	}
	if !r.SheetLength.given() {
		c.say(c.key(r, "forms", r.Pos), "medium %s comes as sheet and has no sheet_length: write the sheet's longer side", quote(r.ID))
	}
	if !has(r.Forms, "roll") && r.Width.Set && r.SheetLength.Set && r.Width.Best > r.SheetLength.Best {
		c.say(r.SheetLength.Pos, "sheet_length, %s, is less than width, %s: width is a sheet's shorter side; exchange them", r.SheetLength.Text, r.Width.Text)
	}
}

// layerWithinMedium: the layer that takes the carrier up is part of the medium.
func (c *checker) layerWithinMedium(r *Medium) {
	if r.Drying == nil {
		return
	}
	layer := r.Drying.Absorbs
	if layer.Set && r.Thickness.Set && layer.Best > r.Thickness.Best {
		c.say(layer.Pos, "absorbing_thickness, %s, is more than the medium's thickness, %s: correct one of them", layer.Text, r.Thickness.Text)
	}
}

// openBackHasResistance: an open back says how open.
func (c *checker) openBackHasResistance(r *Medium) {
	d := r.Drying
	if d == nil {
		return
	}
	switch {
	case d.Back == "open" && !d.BackResistance.given():
		c.say(c.key(d, "back", d.Pos), "medium %s has an open back and no back_resistance: write a vapour resistance such as 2000 s/m", quote(r.ID))
	case d.Back == "sealed" && d.BackResistance.given():
		c.say(d.BackResistance.Pos, "back_resistance belongs to an open back, and this one is sealed: take it out, or write back: open")
	}
}

// dryingWhereNeeded: a medium that an evaporating ink prints on says how the
// carrier leaves it. Said once for a medium.
func (c *checker) dryingWhereNeeded(r *Medium) {
	if r.Drying != nil {
		return
	}
	for _, ref := range r.Inks {
		if ink := c.inks[ref.ID]; ink != nil && ink.Dries == "evaporation" {
			c.say(ref.Pos, "ink %s dries by evaporation, and medium %s has no drying: write absorbing_thickness, mobility and back under drying", quote(ink.ID), quote(r.ID))
			return
		}
	}
}

// hollow: what is said of the hollows in a face is said whole. An adhesive fills them by
// their depth and their width.
func (c *checker) hollow(depthKey string, depth Value[quantity.Length], widthKey string, width Value[quantity.Length]) {
	switch {
	case depth.Set && !width.Set:
		c.say(depth.Pos, "%s, %s, is a depth without a width: write %s, how wide the hollows are", depthKey, depth.Text, widthKey)
	case width.Set && !depth.Set:
		c.say(width.Pos, "%s, %s, is a width without a depth: write %s, how deep the hollows are", widthKey, width.Text, depthKey)
	}
}
