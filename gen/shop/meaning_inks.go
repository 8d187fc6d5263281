package shop

// vapourGivenOnce: a carrier's vapour pressure is given in exactly one way.
func (c *checker) vapourGivenOnce(r *Carrier) {
	switch {
	case r.Antoine == nil && r.VapourPoint == nil:
		c.say(r.Pos, "carrier %s has no vapour pressure: write antoine or vapour_pressure (section 9 of its safety data sheet)", quote(r.ID))
	case r.Antoine != nil && r.VapourPoint != nil:
		c.say(c.key(r, "vapour_pressure", r.Pos), "carrier %s has its vapour pressure twice, as antoine and as vapour_pressure: keep one of them", quote(r.ID))
	}
}

// antoineOrder: the range that constants were fitted in goes upwards.
func (c *checker) antoineOrder(r *Carrier) {
	if r.Antoine != nil {
		above(c, "from", r.Antoine.From, "to", r.Antoine.To)
	}
}

// driesAsItSays: an ink has the group of keys that its way of drying needs, and no other.
func (c *checker) driesAsItSays(r *Ink) {
	if r.Dries == "" {
		return
	}
	needs := map[string]string{"evaporation": "evaporation", "oxidation": "reaction", "radiation": "reaction", "toner": "toner"}[r.Dries]
	for _, group := range []struct {
		key   string
		there bool
	}{
		{"evaporation", r.Evaporation != nil},
		{"reaction", r.Reaction != nil},
		{"toner", r.Toner != nil},
	} {
		switch {
		case group.key == needs && !group.there:
			c.say(c.key(r, "dries", r.Pos), "ink %s dries by %s and has no %s: write that group of keys", quote(r.ID), r.Dries, needs)
		case group.key != needs && group.there:
			c.say(c.key(r, group.key, r.Pos), "%s does not belong to an ink that dries by %s: take it out, or correct dries", group.key, r.Dries)
		}
	}
}

// coverageOrder: light is not more than normal, nor normal more than heavy.
func (c *checker) coverageOrder(r *Ink) {
	above(c, "light", r.Coverage.Light, "normal", r.Coverage.Normal)
	above(c, "normal", r.Coverage.Normal, "heavy", r.Coverage.Heavy)
}

// residueBelowLoad: there is something to wait for.
func (c *checker) residueBelowLoad(r *Ink) {
	e := r.Evaporation
	if e != nil && e.Safe.Set && e.Load.Set && e.Safe.Best >= e.Load.Best {
		c.say(e.Safe.Pos, "safe_residue, %s, is not below load, %s: such a print would be ready as it leaves the printer", e.Safe.Text, e.Load.Text)
	}
}

// leastWithinWait: the shortest wait allowed is not longer than the maker's.
func (c *checker) leastWithinWait(r *Ink) {
	above(c, "least", r.Makers.Least, "wait", r.Makers.Wait)
}

// makersCaseExists: what the maker's wait holds for is something that can be:
// the ink prints on that medium, and the medium can be stored so.
func (c *checker) makersCaseExists(r *Ink) {
	medium, storage := c.media[r.Makers.Medium.ID], c.storages[r.Makers.Storage.ID]
	if medium != nil && !lists(medium.Inks, r.ID) {
		c.say(r.Makers.Medium.Pos, "medium %s is not printed with ink %s: list the ink in the medium's inks, or name another medium", quote(medium.ID), quote(r.ID))
	}
	if medium == nil || storage == nil || len(medium.Forms) == 0 || len(storage.Forms) == 0 {
		return
	}
	for _, form := range medium.Forms {
		if has(storage.Forms, form) {
			return
		}
	}
	c.say(r.Makers.Storage.Pos, "storage %s takes %s, and medium %s comes as %s: name another storage", quote(storage.ID), list(storage.Forms), quote(medium.ID), list(medium.Forms))
}

// has says whether a word is in a list.
func has(words []string, word string) bool {
	for _, w := range words {
		if w == word {
			return true
		}
	}
	return false
}
