package shop

import (
	"slices"

	"laydown/gen/quantity"
)

// checker holds the records against each other and against what can be. What
// could not be read, or names a record that is not there, was reported before
// and is passed over here.
type checker struct {
	l          *loader
	shop       *Shop
	inks       map[string]*Ink
	media      map[string]*Medium
	laminators map[string]*Laminator
	substances map[string]*Substance
	storages   map[string]*Storage
}

// byID indexes the records of a kind.
func byID[P record](records []P) map[string]P {
	found := make(map[string]P, len(records))
	for _, r := range records {
		found[r.head().ID] = r
	}
	return found
}

// checkMeaning runs every check of this kind.
func (l *loader) checkMeaning(s *Shop) {
	c := &checker{
		l: l, shop: s,
		inks: byID(s.Inks), media: byID(s.Media), laminators: byID(s.Laminators),
		substances: byID(s.Substances), storages: byID(s.Storages),
	}
	for _, carrier := range s.Carriers {
		c.vapourGivenOnce(carrier)
		c.antoineOrder(carrier)
	}
	for _, r := range s.Rooms {
		c.mixingWithinSense(r)
	}
	for _, ink := range s.Inks {
		c.driesAsItSays(ink)
		c.coverageOrder(ink)
		c.residueBelowLoad(ink)
		c.leastWithinWait(ink)
		c.hollow("relief", ink.Relief, "relief_width", ink.ReliefWidth)
		c.makersCaseExists(ink)
	}
	for _, m := range s.Media {
		c.mediumDensity(m)
		c.sheetHasLength(m)
		c.layerWithinMedium(m)
		c.openBackHasResistance(m)
		c.hollow("texture", m.Texture, "texture_width", m.TextureWidth)
		c.dryingWhereNeeded(m)
	}
	for _, f := range s.Films {
		c.filmTemperatures(f)
		c.spanOrder(f)
		c.temperaturesAgree(f)
		c.filmParts(f)
		c.filmRunsOn(f)
	}
	for _, m := range s.Laminators {
		c.speedOrder(m)
		c.coverIsCover(m)
		c.rollerGirth(m)
	}
	for _, st := range s.Storages {
		c.storageNeeds(st)
		c.storageForms(st)
	}
	for _, p := range s.Predictions {
		c.predictionFits(p)
	}
	for _, p := range s.WindowPredictions {
		c.windowPredictionFits(p)
	}
	for _, p := range s.Claims {
		c.claimFits(p)
	}
	for _, f := range s.Forms {
		c.formFits(f)
	}
	for _, r := range s.Checks {
		c.generalCheckFits(r)
	}
	for _, r := range s.Faults {
		c.familyFits(r)
	}
	for _, r := range s.FaultsLog {
		c.loggedFits(r)
	}
	c.contactsThere()
	c.cautionsThere()
	c.chartRows()
}

// say reports a problem.
func (c *checker) say(pos Pos, format string, args ...any) { c.l.sayAt(pos, format, args...) }

// key is the place of a key of a record or group, else the record's own.
func (c *checker) key(owner any, key string, otherwise Pos) Pos {
	if pos, ok := c.l.keys[keyAt{owner, key}]; ok {
		return pos
	}
	return otherwise
}

// above reports two values that stand in the wrong order.
func above[Q quantity.Quantity](c *checker, lowKey string, low Value[Q], highKey string, high Value[Q]) {
	if low.Set && high.Set && low.Best > high.Best {
		c.say(low.Pos, "%s, %s, is above %s, %s: exchange or correct them", lowKey, low.Text, highKey, high.Text)
	}
}

// MostPrints is how many prints stand side by side on a chart of films on prints: with
// more, the films' names would have no room on the papers that read from afar.
const MostPrints = 5

// cautionsThere: a shop that replaces all cautions leaves none of those out that
// rules call for.
func (c *checker) cautionsThere() {
	if !slices.Contains(c.l.replaced, "cautions") || c.l.unread["cautions"] {
		return
	}
	var missing []string
	for _, id := range ruleCautions {
		if c.shop.Caution(id) == nil {
			missing = append(missing, id)
		}
	}
	if len(missing) > 0 {
		c.say(c.shop.Front.Pos, "cautions that pages and plans call for are not there: write %s under cautions:", list(missing))
	}
}

// chartRows checks the rows and columns that the shop wants on its charts.
func (c *checker) chartRows() {
	charts := c.shop.Front.Charts
	printed := func(list []Pair) {
		for _, p := range list {
			ink, medium := c.inks[p.Ink.ID], c.media[p.Medium.ID]
			if ink != nil && medium != nil && !c.shop.PrintsOn(ink, medium) {
				c.say(p.Pos, "medium %s is not printed with ink %s: list the ink in the medium's inks, or take this row out", quote(medium.ID), quote(ink.ID))
			}
		}
	}
	printed(charts.Waits)
	named := map[string]bool{}
	once := func(pos Pos, name string) {
		if named[name] {
			c.say(pos, "two charts are called %s: give this one another name", quote(name))
		}
		named[name] = true
	}
	for _, m := range charts.Matrices {
		printed(m.Prints)
		once(m.Pos, m.Name)
		if len(m.Prints) > MostPrints {
			c.say(m.Pos, "%d prints do not fit side by side on a chart: at most %d, and another chart for the rest", len(m.Prints), MostPrints)
		}
	}
	for _, n := range charts.Notices {
		once(n.Pos, n.Name)
	}
}

// predictionFits: what is expected is a range, of a print that the shop makes.
func (c *checker) predictionFits(p *Prediction) {
	above(c, "from", p.From, "to", p.To)
	ink, medium := c.inks[p.Ink.ID], c.media[p.Medium.ID]
	if ink != nil && medium != nil && !c.shop.PrintsOn(ink, medium) {
		c.say(p.Medium.Pos, "medium %s is not printed with ink %s: list the ink in the medium's inks, or correct the prediction", quote(medium.ID), quote(ink.ID))
	}
}
