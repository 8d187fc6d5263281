package shop

import (
	"math"
	"slices"
	"strconv"
)

// sumSlack is how far the outcomes of a check may be from 100 % together: room
// for a third written as 33.3 %, and no more.
const sumSlack = 0.005

// checkFits: a check is a general one or whole in itself, and its table speaks
// of the family's causes and of its own outcomes, and of all of them. It gives
// whether the table can be counted on.
func (c *checker) checkFits(r *FaultFamily, k *FaultCheck, causes []string) bool {
	name := "check " + quote(k.ID)
	if k.Use.Pos.Line > 0 {
		for _, key := range []string{"id", "name", "do", "outcomes", "cautions", "see"} {
			if pos, ok := c.l.keys[keyAt{k, key}]; ok {
				c.say(pos, "%s of a check that uses a general one stands in that one's record: take it out here, or take out use", key)
			}
		}
		general := c.shop.Check(k.Use.ID)
		if general == nil || !c.stillFits(r, k, general) {
			return false // reported, here or as a reference that leads nowhere
		}
	} else {
		if k.ID == "" {
			c.say(k.Pos, "a check of family %s has neither use nor id: write use: and the id of a general check, or an id of its own", quote(r.ID))
			return false
		}
		for _, need := range []struct {
			key  string
			has  bool
			such string
		}{
			{"name", k.Name != "", "a name"},
			{"takes", k.Takes.given(), "a time such as 3 min"},
			{"do", k.Do != "", "one sentence that says what to do"},
			{"outcomes", len(k.Outcomes) > 0, "a list, each entry with id and says"},
		} {
			if _, stands := c.l.keys[keyAt{k, need.key}]; !need.has && !stands {
				c.say(k.Pos, "%s of family %s has no %s: write %s", name, quote(r.ID), need.key, need.such)
			}
		}
		if !c.outcomesFit(name, k.Outcomes, c.key(k, "outcomes", k.Pos)) {
			return false
		}
		c.linksFit(k.See, c.key(k, "see", k.Pos))
	}
	return len(k.Outcomes) > 1 && len(k.Outcomes) <= mostOutcomes && c.foundFits(r, k, name, causes)
}

// stillFits: where the shop has put a general check of its own in place of one
// that came with the program, the program's families find their outcomes in it.
func (c *checker) stillFits(r *FaultFamily, k *FaultCheck, general *GeneralCheck) bool {
	if !r.Demo || general.Demo {
		return true
	}
	var missing []string
	for _, row := range k.Found {
		for _, one := range row.Shares {
			there := slices.ContainsFunc(general.Outcomes, func(o Outcome) bool { return o.ID == one.Of })
			if !there && !slices.Contains(missing, one.Of) {
				missing = append(missing, one.Of)
			}
		}
	}
	if len(missing) > 0 {
		c.say(c.key(general, "outcomes", general.Pos), "check %s stands in place of one that came with the program, whose family %s needs its outcomes %s: keep them, give this check another id, or write a family %s of the shop's own",
			quote(general.ID), quote(r.ID), list(missing), quote(r.ID))
	}
	return len(missing) == 0
}

// outcomesFit: a check can show at least two things, each with its own id.
func (c *checker) outcomesFit(name string, outcomes []Outcome, pos Pos) bool {
	seen := map[string]Pos{}
	for i := range outcomes {
		o := &outcomes[i]
		c.drawingFits(o.Drawing, c.key(o, "drawing", o.Pos))
		if first, ok := seen[o.ID]; ok && o.ID != "" {
			c.say(o.Pos, "a second outcome with the id %s in %s: the first is at %s; give one of them another id", quote(o.ID), name, first)
		}
		seen[o.ID] = o.Pos
	}
	switch {
	case len(outcomes) == 1:
		c.say(pos, "%s has one outcome: a check that can show only one thing tells nothing; write another", name)
		return false
	case len(outcomes) > mostOutcomes:
		c.say(pos, "%s has %d outcomes: at most %d; put those together that lead to the same", name, len(outcomes), mostOutcomes)
		return false
	}
	return true
}

// foundFits: the rows of a check's table are the family's causes, each once;
// the outcomes in a row are the check's, and together certain; and not all
// causes are alike in it.
func (c *checker) foundFits(r *FaultFamily, k *FaultCheck, name string, causes []string) bool {
	outcomes := make([]string, len(k.Outcomes))
	for i, o := range k.Outcomes {
		outcomes[i] = o.ID
	}
	rows := map[string]bool{}
	whole := true
	for _, row := range k.Found {
		rows[row.Of] = true
		if row.Of != Others && !slices.Contains(causes, row.Of) {
			c.say(row.Pos, "family %s has no cause %s: list it under causes, or correct the id%s", quote(r.ID), quote(row.Of), maybe(c.l.suggest(row.Of, causes)))
			whole = false
		}
		if !c.rowSums(row, name, outcomes) {
			whole = false
		}
	}
	if len(k.Found) == 0 || !c.everyRowThere(r, rows, name, causes, c.key(k, "found", k.Pos)) || !whole {
		return false
	}
	for _, o := range k.Outcomes {
		if k.Use.ID == "" && !slices.ContainsFunc(causes, func(cause string) bool { return k.Chance(o.ID, cause) > 0 }) {
			c.say(o.Pos, "no cause of family %s ever shows outcome %s of %s: give it a chance in found, or take it out", quote(r.ID), quote(o.ID), name)
		}
	}
	if len(causes) > 1 && !slices.ContainsFunc(causes[1:], func(cause string) bool { return k.parts(causes[0], cause) }) {
		c.say(k.Pos, "%s shows the same with every cause of family %s: it tells nothing; correct found, or take it out", name, quote(r.ID))
	}
	return true
}

// rowSums: the outcomes in a row are the check's own and together certain.
func (c *checker) rowSums(row Row, name string, outcomes []string) bool {
	sum, good := 0.0, true
	for _, one := range row.Shares {
		if !slices.Contains(outcomes, one.Of) {
			c.say(one.Pos, "%s has no outcome %s: it has %s%s", name, quote(one.Of), list(outcomes), maybe(c.l.suggest(one.Of, outcomes)))
			good = false
		}
		good = good && one.Value.Set
		sum += float64(one.Value.Best)
	}
	if good && len(row.Shares) > 0 && math.Abs(sum-1) > sumSlack+1e-9 {
		c.say(row.Pos, "the outcomes of %s with %s come to %s and not to 100 %%: something is seen every time; correct one of them", name, quote(row.Of), percent(sum))
		good = false
	}
	return good && len(row.Shares) > 0
}

// percent writes a share for a message.
func percent(share float64) string {
	return strconv.FormatFloat(math.Round(share*1e4)/1e2, 'f', -1, 64) + " %"
}

// everyRowThere: a table has a row for each cause, or others for the rest, and
// others stands for some cause.
func (c *checker) everyRowThere(r *FaultFamily, rows map[string]bool, name string, causes []string, pos Pos) bool {
	var without []string
	for _, id := range causes {
		if !rows[id] && id != "" {
			without = append(without, id)
		}
	}
	switch {
	case rows[Others] && len(without) == 0:
		c.say(pos, "others in %s stands for no cause: every cause of family %s has its own row; take it out", name, quote(r.ID))
		return false
	case !rows[Others] && len(without) > 0:
		c.say(pos, "%s does not say what it shows with %s: give a row to each, or one under others", name, list(without))
		return false
	}
	return true
}
