package shop

import (
	"regexp"
	"slices"
)

// Bounds of a family of faults: more than these nobody looks through at a
// machine, and no key of them can be worked out in good time.
const (
	mostSigns    = 40
	mostCauses   = 40
	mostChecks   = 40
	mostOutcomes = 8
	mostRemedies = 40
)

// heading is the form of a link to a chapter's heading.
var heading = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*#[a-z0-9]+(-[a-z0-9]+)*$`)

// drawings are the drawings of faults that the handbook has.
var drawings = []string{
	"board-bow", "bubbles-border", "bubbles-dark", "bubbles-growing", "bubbles-pin", "bubbles-pockets",
	"crease-lift", "curl-across-in", "curl-across-out", "curl-along-in", "curl-along-out", "dirt-tent",
	"edge-lift", "film-off-clean", "film-off-ink", "fold-crack", "ghost", "haze", "line-lane", "line-stop",
	"lines-grain", "marks-repeat", "melted", "mottle", "ooze", "orange-peel", "powder-fog", "scratches",
	"seal-open", "silvering", "skew", "static", "stretch", "stuck-stack", "tunnels", "waves-across",
	"waves-edge", "wrap", "wrinkle-across", "wrinkle-along", "wrinkle-chevron", "wrinkle-diagonal",
	"wrinkle-print", "yellowing",
}

// DrawingNames lists the names under which data may ask for a drawing of a fault.
func DrawingNames() []string { return slices.Clone(drawings) }

// generalCheckFits: a check that families share can show more than one thing.
func (c *checker) generalCheckFits(r *GeneralCheck) {
	c.outcomesFit("check "+quote(r.ID), r.Outcomes, c.key(r, "outcomes", r.Pos))
	c.linksFit(r.See, c.key(r, "see", r.Pos))
}

// familyFits: what a family's tables say is of its own causes, checks and
// outcomes, adds up, and leads to a cure.
func (c *checker) familyFits(r *FaultFamily) {
	if !c.familyBounds(r) {
		return
	}
	if r.Source.ID == "" {
		c.say(r.Pos, "family %s does not say where its figures come from: write source: and the id of a source; an estimate is one", quote(r.ID))
	}
	c.drawingFits(r.Drawing, c.key(r, "drawing", r.Pos))
	c.linksFit(r.See, c.key(r, "see", r.Pos))
	good := c.idsOnce(r)
	c.signsFit(r)
	causes := r.causeIDs()
	for i := range r.Causes {
		c.causeFits(r, &r.Causes[i])
	}
	for i := range r.Checks {
		good = c.checkFits(r, &r.Checks[i], causes) && good
	}
	for i := range r.Remedies {
		good = c.remedyFits(r, &r.Remedies[i], causes) && good
	}
	if good && len(r.Remedies) > 0 { // what could not be read may hold what is missing
		c.everyCauseCured(r)
		c.causesToldApart(r)
	}
}

// familyBounds: a family is of a size that can be looked through.
func (c *checker) familyBounds(r *FaultFamily) bool {
	within := true
	for _, part := range []struct {
		key        string
		have, most int
	}{
		{"signs", len(r.Signs), mostSigns}, {"causes", len(r.Causes), mostCauses}, {"checks", len(r.Checks), mostChecks}, {"remedies", len(r.Remedies), mostRemedies},
	} {
		if part.have > part.most {
			c.say(c.key(r, part.key, r.Pos), "family %s has %d %s: at most %d; make two families of it", quote(r.ID), part.have, part.key, part.most)
			within = false
		}
	}
	return within
}

// causeIDs lists the ids of the family's causes.
func (f *FaultFamily) causeIDs() []string {
	ids := make([]string, len(f.Causes))
	for i := range f.Causes {
		ids[i] = f.Causes[i].ID
	}
	return ids
}

// idsOnce: nothing in a family has the id of another of its sort, and no cause
// has the word that stands for all others.
func (c *checker) idsOnce(r *FaultFamily) bool {
	good := true
	once := func(what string) func(id string, pos Pos) {
		seen := map[string]Pos{}
		return func(id string, pos Pos) {
			if first, ok := seen[id]; ok && id != "" {
				c.say(pos, "a second %s with the id %s in family %s: the first is at %s; give one of them another id", what, quote(id), quote(r.ID), first)
				good = false
				return
			}
			seen[id] = pos
		}
	}
	sign, cause, check, remedy := once("sign"), once("cause"), once("check"), once("remedy")
	for i := range r.Signs {
		sign(r.Signs[i].ID, r.Signs[i].Pos)
	}
	for i := range r.Causes {
		cause(r.Causes[i].ID, r.Causes[i].Pos)
		if r.Causes[i].ID == Others {
			c.say(r.Causes[i].Pos, "a cause cannot have the id %s: in tables that word stands for every cause without a row of its own", quote(Others))
			good = false
		}
	}
	for i := range r.Checks {
		check(r.Checks[i].ID, r.Checks[i].Pos)
	}
	for i := range r.Remedies {
		remedy(r.Remedies[i].ID, r.Remedies[i].Pos)
	}
	return good
}

// signsFit: some cause shows itself by each sign.
func (c *checker) signsFit(r *FaultFamily) {
	shown := map[string]bool{}
	for _, cause := range r.Causes {
		for _, id := range cause.Signs {
			shown[id] = true
		}
	}
	for i := range r.Signs {
		s := &r.Signs[i]
		c.drawingFits(s.Drawing, c.key(s, "drawing", s.Pos))
		if s.ID != "" && !shown[s.ID] {
			c.say(s.Pos, "no cause of family %s shows itself by sign %s: list it in the signs of a cause, or take it out", quote(r.ID), quote(s.ID))
		}
	}
}

// causeFits: a cause's signs are the family's.
func (c *checker) causeFits(r *FaultFamily, cause *FaultCause) {
	var ids []string
	for _, s := range r.Signs {
		ids = append(ids, s.ID)
	}
	for _, id := range cause.Signs {
		if !slices.Contains(ids, id) {
			c.say(c.key(cause, "signs", cause.Pos), "family %s has no sign %s: list it under signs, or correct the id%s", quote(r.ID), quote(id), maybe(c.l.suggest(id, ids)))
		}
	}
}

// remedyFits: what a remedy cures is the family's, and something.
func (c *checker) remedyFits(r *FaultFamily, m *Remedy, causes []string) bool {
	c.linksFit(m.See, c.key(m, "see", m.Pos))
	rows := map[string]bool{}
	sum, good := 0.0, true
	for _, one := range m.Cures {
		rows[one.Of] = true
		if one.Of != Others && !slices.Contains(causes, one.Of) {
			c.say(one.Pos, "family %s has no cause %s: list it under causes, or correct the id%s", quote(r.ID), quote(one.Of), maybe(c.l.suggest(one.Of, causes)))
			good = false
		}
		good = good && one.Value.Set
		sum += float64(one.Value.Best)
	}
	pos := c.key(m, "cures", m.Pos)
	if good && len(m.Cures) > 0 && sum == 0 {
		c.say(pos, "remedy %s cures nothing: give some cause a chance above 0 %%, or take the remedy out", quote(m.ID))
	}
	if rows[Others] && !slices.ContainsFunc(causes, func(id string) bool { return !rows[id] }) {
		c.say(pos, "others in remedy %s stands for no cause: every cause of family %s has its own chance; take it out", quote(m.ID), quote(r.ID))
	}
	if m.Material > 0 && !c.l.unread["shop"] && (c.shop.Front.Work == nil || c.shop.Front.Work.HourRate <= 0) {
		c.say(c.key(m, "material", m.Pos), "material of remedy %s is a cost, and the shop has no hour_rate under work to set it beside time: write hour_rate in shop.yaml, or take material out", quote(m.ID))
	}
	return good
}

// everyCauseCured: some remedy cures each cause.
func (c *checker) everyCauseCured(r *FaultFamily) {
	for i := range r.Causes {
		cause := &r.Causes[i]
		if cause.ID != "" && !slices.ContainsFunc(r.Remedies, func(m Remedy) bool { return m.Cure(cause.ID) > 0 }) {
			c.say(cause.Pos, "no remedy of family %s ever cures cause %s: name it in the cures of one, or write a remedy for it", quote(r.ID), quote(cause.ID))
		}
	}
}

// drawingFits: a drawing that data asks for is one that the handbook has.
func (c *checker) drawingFits(name string, pos Pos) {
	if name == "" || slices.Contains(drawings, name) {
		return
	}
	near := c.l.suggest(name, drawings)
	if near == "" {
		c.say(pos, "there is no drawing %s: there are %s", quote(name), list(drawings))
		return
	}
	c.say(pos, "there is no drawing %s%s", quote(name), maybe(near))
}

// linksFit: links to chapters have the form of one. Whether the heading is
// there is known where the chapters are.
func (c *checker) linksFit(links []string, pos Pos) {
	for _, link := range links {
		if !heading.MatchString(link) {
			c.say(pos, "see holds %s, which is no link to a heading: write chapter#heading, such as drying#late-bubbles", quote(link))
		}
	}
}
