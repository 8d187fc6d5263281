package shop

// speedOrder: slowest, usual and fastest stand in that order.
func (c *checker) speedOrder(r *Laminator) {
	above(c, "slowest", r.Slowest, "usual", r.Usual)
	above(c, "usual", r.Usual, "fastest", r.Fastest)
}

// coverIsCover: a roller is covered with rubber or metal.
func (c *checker) coverIsCover(r *Laminator) {
	if s := c.substances[r.Cover.ID]; s != nil && s.Class != "" && s.Class != "rubber" && s.Class != "metal" {
		c.say(r.Cover.Pos, "cover names substance %s, which is of class %s: name one of class rubber or metal", quote(s.ID), s.Class)
	}
}

// storageNeeds: each way to store has what its drying is computed from.
func (c *checker) storageNeeds(r *Storage) {
	pos := c.key(r, "kind", r.Pos)
	need := func(key string, given bool, what string) {
		if !given {
			c.say(pos, "storage %s is of kind %s and has no %s: write %s", quote(r.ID), r.Kind, key, what)
		}
	}
	switch r.Kind {
	case "hung", "flat":
		need("length", r.Length.given(), "the length along which air passes the print, such as 1.2 m")
	case "loose-roll":
		need("length", r.Length.given(), "the length along which air passes the print, such as 1.2 m")
		need("draught", r.Draught.given(), "how fast it dries at its face relative to hung, such as 40 %")
	case "tight-roll", "stack":
		need("gap", r.Gap.given(), "the gap between its layers, such as 20 µm")
	}
}

// storageForms: a roll is not a sheet, and sheets make a stack.
func (c *checker) storageForms(r *Storage) {
	pos := c.key(r, "forms", r.Pos)
	switch r.Kind {
	case "loose-roll", "tight-roll":
		if has(r.Forms, "sheet") {
			c.say(pos, "storage %s is of kind %s and cannot take sheet: write forms: [roll]", quote(r.ID), r.Kind)
		}
	case "stack":
		if has(r.Forms, "roll") {
			c.say(pos, "storage %s is of kind stack and cannot take roll: write forms: [sheet]", quote(r.ID))
		}
	}
}

// mixingWithinSense: a mixing factor is 1 for perfect mixing and 10 at the poorest.
func (c *checker) mixingWithinSense(r *Room) {
	if r.Mixing != 0 && (r.Mixing < 1 || r.Mixing > 10) {
		c.say(c.key(r, "mixing", r.Pos), "room %s has a mixing factor of %g: write one from 1, perfect, to 10, very poor", quote(r.ID), r.Mixing)
	}
}
