package book

import (
	"slices"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// The small letters of windows: what bounds them from above.
var windowSigns = []sign{
	{"s", "bounded above by air and steam that swell under the film"},
	{"c", "bounded above by the medium or its coating"},
	{"f", "bounded above by the film"},
	{"l", "bounded above by the laminator"},
}

var limitSigns = map[string]string{"gas": "s", "medium": "c", "film": "f", "laminator": "l"}

// twoRanges explains a cell with two ranges.
const twoRanges = "Where a cell has two ranges, no one setting serves both: the first piece needs its own until the cover has cooled."

// windowCell is the cell of a window: its range in °C with °F under it, twice
// where the first piece and the steady run want different settings.
func windowCell(v tables.WindowValue, href string) gridCell {
	c := gridCell{Href: href}
	if !v.Open() {
		c.Verdict, c.Text = "refuse", "no window"
		return c
	}
	first, steady := v.Spans()
	limit, over := v.HighLimits()
	if v.Whole.Open() {
		if steady.High < first.High {
			limit = over
		}
		c.setRange(tables.Span{Low: max(first.Low, steady.Low), High: min(first.High, steady.High)})
	} else {
		c.setRange(first)
		c.Under = "first: " + unbrokenRange(c.Under)
		c.Then, c.ThenUnder = inUnits(steady)
		c.ThenUnder = "then: " + unbrokenRange(c.ThenUnder)
	}
	c.Sign = limitSigns[limit]
	return c
}

// unbrokenRange keeps a range on one line of a narrow cell.
func unbrokenRange(text string) string { return strings.ReplaceAll(text, "–", "\u2060–\u2060") }

func (c *gridCell) setRange(s tables.Span) { c.Text, c.Under = inUnits(s) }

// inUnits writes a span of whole °C, and the same in °F.
func inUnits(s tables.Span) (celsius, other string) {
	return rangeText(s.Low, s.High), rangeText(fahrenheit(s.Low), fahrenheit(s.High))
}

// linked is a window with the place of its working. Not there where the machine
// does not take the pair.
type linked struct {
	tables.WindowValue
	href  string
	there bool
}

// ofTable are windows of the table.
func (b *builder) ofTable(keys []windowKey) []linked {
	list := make([]linked, len(keys))
	for i, k := range keys {
		v, ok := b.windows.get(k)
		list[i] = linked{v, windowHref(k), ok}
	}
	return list
}

// windowRow makes the cells of a row from windows; one that is not there
// leaves its cell empty. A row without any window is one cell that says why.
func windowRow(name, under, href string, list []linked) gridRow {
	r := gridRow{Name: name, Under: under, Href: href}
	none, whole := 0, gridCell{}
	for _, w := range list {
		if !w.there {
			r.Cells = append(r.Cells, gridCell{})
			continue
		}
		cell := windowCell(w.WindowValue, w.href)
		if !w.Open() {
			if none == 0 {
				whole = gridCell{Text: why(w.WindowValue), Href: cell.Href, Verdict: "refuse"}
			}
			none++
		}
		r.Cells = append(r.Cells, cell)
	}
	if none > 0 && none == len(list) {
		r.Whole = &whole
	}
	for _, s := range windowSigns {
		r.lift(s.Letter)
	}
	return r
}

// atSpeeds are the keys of a pair at its machine's speeds in a room.
func atSpeeds(p hotPair, room string) []windowKey {
	var keys []windowKey
	for i := range tables.Speeds(p.machine) {
		keys = append(keys, p.key(i, room))
	}
	return keys
}

// speedHeads head the columns of a machine's speeds.
func speedHeads(m *shop.Laminator) []gridHead {
	var heads []gridHead
	for i, v := range tables.Speeds(m) {
		h := gridHead{Top: quantity.Metric(v), Under: quantity.Imperial(v)}
		if i == usualSpeed(m) {
			h.Under += ", usual"
		}
		heads = append(heads, h)
	}
	return heads
}

// windowGrid is a table of windows by medium and machine for one film, at each
// machine's usual speed, in the shop's room, machines across.
func (b *builder) windowGrid(film *shop.Film) grid {
	room := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: "windows", Caption: "Set temperature, °C with °F under it, by medium and machine", Corner: "usual speed; " + lowerFirst(room.Name) + ", " + climate(room), Wide: true}
	machines, media := b.sides(b.hotPairs(film, nil, nil))
	for _, m := range machines {
		g.Heads = append(g.Heads, gridHead{Top: short(upperFirst(m.Name)), Under: pace(m.Usual.Best)})
	}
	for _, medium := range media {
		var keys []windowKey
		for _, m := range machines {
			keys = append(keys, b.here(hotPair{film, medium, m}))
		}
		r := windowRow(medium.Name, "", "/materials/media/"+medium.ID+".html", b.ofTable(keys))
		r.Yours = film.Rollers != nil && film.Rollers.Medium.ID == medium.ID
		g.Rows = append(g.Rows, r)
	}
	return g.withWindowSigns()
}

// sides are the machines and the media of pairs, each once, in their order.
func (b *builder) sides(pairs []hotPair) ([]*shop.Laminator, []*shop.Medium) {
	var machines []*shop.Laminator
	var media []*shop.Medium
	for _, p := range pairs {
		if !slices.Contains(machines, p.machine) {
			machines = append(machines, p.machine)
		}
		if !slices.Contains(media, p.medium) {
			media = append(media, p.medium)
		}
	}
	return machines, media
}

// withWindowSigns explains the letters that occur, and cells with two ranges.
func (g grid) withWindowSigns() grid {
	g.Signs = signsIn(g.Rows, windowSigns)
	for _, r := range g.Rows {
		for _, c := range r.Cells {
			if c.Then != "" && r.Whole == nil {
				g.Note = twoRanges
			}
		}
	}
	return g
}
