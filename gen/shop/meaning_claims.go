package shop

// claimFits: a claim compares its case with another case or with an amount, and
// its case states what its measure needs.
func (c *checker) claimFits(p *Claim) {
	if (p.Other == nil) == (p.Amount == 0) {
		c.say(p.Pos, "a claim compares its case with another case or with an amount: write one of other: and amount:")
	}
	for _, k := range []*ClaimCase{p.Case, p.Other} {
		if k != nil {
			c.claimCaseFits(p.Measure, k)
		}
	}
}

func (c *checker) claimCaseFits(measure string, k *ClaimCase) {
	need := func(has bool, key string) {
		if !has {
			c.say(k.Pos, "a claim about %s needs %s: in its case", measure, key)
		}
	}
	switch measure {
	case "ridges", "curl", "room-curl", "turn":
		need(k.Film.ID != "", "film")
		need(k.Laminator.ID != "", "laminator")
		need(k.Grain != "", "grain")
		need(k.Humidity.Set, "humidity")
	case "swelling":
		need(k.Humidity.Set, "humidity")
	case "recovery":
		need(k.Film.ID != "", "film")
		need(k.Ink.ID != "", "ink")
		need(k.Back != "", "back")
		need(k.Spent.Set, "spent")
	}
	if measure == "room-curl" || measure == "turn" || measure == "swelling" {
		need(k.Then.Set, "then")
	}
	if k.Film.ID != "" && k.Laminator.ID != "" {
		if film := c.shop.Film(k.Film.ID); film != nil && !lists(film.RunsOn, k.Laminator.ID) {
			c.say(k.Laminator.Pos, "film %s does not run on %s: name a laminator of its runs_on", quote(film.ID), quote(k.Laminator.ID))
		}
	}
}
