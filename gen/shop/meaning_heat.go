package shop

import (
	"math"

	"laydown/gen/quantity"
)

// heatContacts are the contacts that the heat of any hot film needs.
var heatContacts = []string{"film-on-roller", "film-in-nip", "melt-on-print", "print-on-lower", "moving-web", "still-face"}

// contactsThere: where the shop has a hot film, every contact is there.
func (c *checker) contactsThere() {
	if c.l.unread["contacts"] || c.l.unread["films"] {
		return
	}
	var missing []string
	for _, id := range heatContacts {
		if c.shop.Contact(id) == nil {
			missing = append(missing, id)
		}
	}
	for _, f := range c.shop.Films {
		if f.Class != "cold" && f.Class != "" && len(missing) > 0 {
			c.say(f.Pos, "film %s is laid with heat, which needs contacts that are not there: write %s under contacts:", quote(f.ID), list(missing))
			return // once
		}
	}
}

// rollerGirth: wrap and nip leave some of the roller free.
func (c *checker) rollerGirth(m *Laminator) {
	girth := quantity.Length(math.Pi) * m.Diameter.Best
	if m.Diameter.Set && m.Nip.Set && m.Wrap.Best+m.Nip.Best >= girth {
		c.say(m.Diameter.Pos, "roller_diameter: a roller of %s has a girth of %s, less than wrap and nip together, %s: correct one of them",
			m.Diameter.Text, quantity.Both(girth), quantity.Both(m.Wrap.Best+m.Nip.Best))
	}
}

// windowPredictionFits: a prediction of a window is about a hot film, and a
// comparison has something to compare with.
func (c *checker) windowPredictionFits(p *WindowPrediction) {
	comparison := p.Claim == "higher" || p.Claim == "lower" || p.Claim == "narrower"
	if comparison && p.Other == nil {
		c.say(p.Pos, "the claim %s compares two cases: write the second under other:", quote(p.Claim))
	}
	if !comparison && p.Other != nil {
		c.say(p.Other.Pos, "the claim %s is about one case: take other out", quote(p.Claim))
	}
	for _, w := range []*WindowCase{p.Case, p.Other} {
		if w == nil {
			continue
		}
		if f := c.shop.Film(w.Film.ID); f != nil && f.Class == "cold" {
			c.say(w.Film.Pos, "film %s is laid without heat, and has no window: name a hot film", quote(f.ID))
		}
	}
}
