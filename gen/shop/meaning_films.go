package shop

// cold says whether a film holds by pressure alone.
func cold(r *Film) bool { return r.Class == "cold" }

// filmTemperatures: a hot film has all three of its temperatures, which stand
// for three different things; a cold one has none of the two that would heat it,
// and only a cold one is helped by a warm roller.
func (c *checker) filmTemperatures(r *Film) {
	if r.Class == "" {
		return
	}
	if cold(r) {
		if r.Activation.given() {
			c.say(c.key(r, "activation", r.Pos), "a cold film has no activation: its adhesive holds by pressure; take it out, or correct class")
		}
		if r.Rollers != nil {
			c.say(c.key(r, "roller_range", r.Pos), "a cold film has no roller_range: where a warm roller helps it, write roller_assist; else take it out, or correct class")
		}
		return
	}
	if r.Melts == nil {
		c.say(r.Pos, "film %s is hot (%s) and has no adhesive_melts: write from and to, the melting range of the adhesive", quote(r.ID), r.Class)
	}
	if !r.Activation.given() {
		c.say(r.Pos, "film %s is hot (%s) and has no activation: write the activation temperature of the maker's sheet", quote(r.ID), r.Class)
	}
	if r.Rollers == nil {
		c.say(r.Pos, "film %s is hot (%s) and has no roller_range: write from, to, speed and machine of the maker's roller settings", quote(r.ID), r.Class)
	}
	if r.Assist != nil {
		c.say(c.key(r, "roller_assist", r.Pos), "roller_assist is the warm roller that helps a cold film, and this film is hot (%s): write roller_range, or correct class", r.Class)
	}
}

// spanOrder: ranges go upwards.
func (c *checker) spanOrder(r *Film) {
	for _, s := range []*Span{r.Melts, r.Assist} {
		if s != nil {
			above(c, "from", s.From, "to", s.To)
		}
	}
	if r.Rollers != nil {
		above(c, "from", r.Rollers.From, "to", r.Rollers.To)
	}
}

// temperaturesAgree: nothing in the nip is hotter than the roller, so the
// roller range has to reach the activation figure, and so has what the film stands.
func (c *checker) temperaturesAgree(r *Film) {
	if cold(r) || !r.Activation.Set {
		return
	}
	if r.Rollers != nil && r.Rollers.To.Set && r.Rollers.To.Best < r.Activation.Best {
		c.say(r.Rollers.To.Pos, "the roller range ends at %s, below the activation of %s: no adhesive gets hotter than its roller; correct one of them", r.Rollers.To.Text, r.Activation.Text)
	}
	if r.HeatLimit.Set && r.HeatLimit.Best < r.Activation.Best {
		c.say(r.HeatLimit.Pos, "heat_limit, %s, is below activation, %s: such a film could never be laminated", r.HeatLimit.Text, r.Activation.Text)
	}
}

// filmParts: the base is a film and the adhesive an adhesive.
func (c *checker) filmParts(r *Film) {
	for _, part := range []struct {
		key, class string
		ref        Ref
	}{{"base", "film", r.Base}, {"adhesive", "adhesive", r.Adhesive}} {
		if s := c.substances[part.ref.ID]; s != nil && s.Class != "" && s.Class != part.class {
			c.say(part.ref.Pos, "%s names substance %s, which is of class %s: name one of class %s", part.key, quote(s.ID), s.Class, part.class)
		}
	}
}

// filmRunsOn: each laminator that a film runs on takes films of its class and
// gets hot enough. The maker's roller range counts on the class of machine that
// it holds for; on others the activation figure is the least that any roller
// needs, since the bond line never gets hotter than the roller.
func (c *checker) filmRunsOn(r *Film) {
	for _, ref := range r.RunsOn {
		m := c.laminators[ref.ID]
		if m == nil || r.Class == "" {
			continue
		}
		if len(m.Films) > 0 && !has(m.Films, r.Class) {
			c.say(ref.Pos, "laminator %s does not run %s films (it runs %s): take it out of runs_on, or add the class to its films", quote(m.ID), r.Class, list(m.Films))
			continue
		}
		if cold(r) || !m.Hottest.Set {
			continue
		}
		least, why := r.Activation, "its activation"
		if r.Rollers != nil && r.Rollers.Machine == m.Class && r.Rollers.From.Set {
			least, why = r.Rollers.From, "the lowest of its roller range"
		}
		if least.Set && least.Best > m.Hottest.Best {
			c.say(ref.Pos, "film %s needs a roller of at least %s (%s), and laminator %s gets no hotter than %s: take it out of runs_on, or correct one of the two",
				quote(r.ID), least.Text, why, quote(m.ID), m.Hottest.Text)
		}
	}
}
