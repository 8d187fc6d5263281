package shop

import "slices"

// loggedFits: a logged case speaks of its family's causes, checks and remedies.
func (c *checker) loggedFits(r *LoggedFault) {
	family := c.shop.Fault(r.Family.ID)
	if family == nil || c.l.unread["checks"] {
		return
	}
	causes := family.causeIDs()
	if r.Cause != "" && !slices.Contains(causes, r.Cause) {
		c.say(c.key(r, "cause", r.Pos), "family %s has no cause %s: correct the id, or add the cause to the family%s", quote(family.ID), quote(r.Cause), maybe(c.l.suggest(r.Cause, causes)))
	}
	var remedies []string
	for _, m := range family.Remedies {
		remedies = append(remedies, m.ID)
	}
	if r.CuredBy != "" && !slices.Contains(remedies, r.CuredBy) {
		c.say(c.key(r, "cured_by", r.Pos), "family %s has no remedy %s: correct the id, or add the remedy to the family%s", quote(family.ID), quote(r.CuredBy), maybe(c.l.suggest(r.CuredBy, remedies)))
	}
	var checks []string
	for _, k := range family.Checks {
		checks = append(checks, k.ID)
	}
	for _, f := range r.Checks {
		k := family.Check(f.Check)
		if k == nil {
			c.say(f.Pos, "family %s has no check %s: correct the id, or add the check to the family%s", quote(family.ID), quote(f.Check), maybe(c.l.suggest(f.Check, checks)))
			continue
		}
		var outcomes []string
		for _, o := range k.Outcomes {
			outcomes = append(outcomes, o.ID)
		}
		if !slices.Contains(outcomes, f.Outcome) {
			c.say(f.OutcomePos, "check %s has no outcome %s: it has %s%s", quote(k.ID), quote(f.Outcome), list(outcomes), maybe(c.l.suggest(f.Outcome, outcomes)))
		}
	}
}
