package book

import (
	"html/template"
	"slices"
	"strings"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// windowsPage is the table of windows in the shop's room at each machine's usual
// speed: films, each with its media down and the machines across.
type windowsPage struct {
	Room         string
	Films, Media []choiceOf
	Machines     []machineHead
	Groups       []windowGroup
	Signs        []sign
	Note         string
	Rows         int
}

// machineHead heads a machine's column.
type machineHead struct {
	choiceOf
	Speed string
}

// windowGroup is the rows of one film.
type windowGroup struct {
	Film, Name string
	Rows       []mediumRow
}

// mediumRow is a film's windows on a medium, machine by machine.
type mediumRow struct {
	Medium string
	gridRow
}

func (b *builder) windowsTable(films []*shop.Film) windowsPage {
	room := b.shop.Room(b.shop.Front.Room.ID)
	p := windowsPage{Room: lowerFirst(room.Name) + ", " + climate(room)}
	machines, media := b.sides(b.hotPairs(nil, nil, nil))
	slices.SortStableFunc(machines, func(x, y *shop.Laminator) int {
		return slices.Index(b.shop.Laminators, x) - slices.Index(b.shop.Laminators, y)
	})
	for _, m := range machines {
		p.Machines = append(p.Machines, machineHead{choiceOf{m.ID, short(upperFirst(m.Name))}, pace(m.Usual.Best)})
	}
	for _, m := range media {
		p.Media = append(p.Media, choiceOf{m.ID, m.Name})
	}
	var all []gridRow
	for _, f := range films {
		p.Films = append(p.Films, choiceOf{f.ID, f.Name})
		g := windowGroup{Film: f.ID, Name: f.Name}
		for _, m := range media {
			var keys []windowKey
			for _, machine := range machines {
				keys = append(keys, b.here(hotPair{f, m, machine}))
			}
			list := b.ofTable(keys)
			if !slices.ContainsFunc(list, func(w linked) bool { return w.there }) {
				continue
			}
			r := mediumRow{m.ID, windowRow(m.Name, "", "", list)}
			for i := range r.Cells {
				r.Cells[i].Href = strings.TrimPrefix(keys[i].path(), "tables/")
			}
			g.Rows = append(g.Rows, r)
			all = append(all, r.gridRow)
		}
		p.Rows += len(g.Rows)
		p.Groups = append(p.Groups, g)
	}
	signs := grid{Rows: all}.withWindowSigns()
	p.Signs, p.Note = signs.Signs, signs.Note
	return p
}

// pairPage is every window of a film on a medium in a machine, and how the one at
// the usual speed in the shop's room comes about.
type pairPage struct {
	Film    *shop.Film
	Medium  *shop.Medium
	Machine *shop.Laminator
	Big     []bigNumber
	Why     string // there is no window there
	Heads   []gridHead
	Rows    []roomWindows
	Note    string
	Drawing template.HTML
	Working string // what it is the working of
	Steps   []windowStep
	Notes   []string
}

// roomWindows are the windows in a room, speed by speed.
type roomWindows struct {
	Name, Climate, Href string
	Yours               bool // the shop's room
	Cells               []windowEntry
}

// windowEntry is one window with its anchor: one range, or two of which the
// second is for the steady run.
type windowEntry struct {
	ID, Why string
	Spans   []spanIn
	Yours   bool // the one that the page begins with
}

// spanIn is a range in both scales.
type spanIn struct{ Word, Celsius, Fahrenheit string }

type windowStep struct {
	Symbol, Text, Shown string
	Source              *sourceView
}

func (b *builder) pairPage(p hotPair) {
	room := b.shop.Room(b.shop.Front.Room.ID)
	d := pairPage{Film: p.film, Medium: p.medium, Machine: p.machine, Working: pace(p.machine.Usual.Best) + ", " + lowerFirst(room.Name) + ", " + climate(room)}
	d.Heads = speedHeads(p.machine)
	for _, r := range b.shop.Rooms {
		row := roomWindows{Name: r.Name, Climate: climate(r), Href: "/materials/rooms/" + r.ID + ".html", Yours: r == room}
		for _, k := range atSpeeds(p, r.ID) {
			e := b.windowEntry(k)
			e.Yours = k == b.here(p)
			row.Cells = append(row.Cells, e)
			if len(e.Spans) > 1 {
				d.Note = twoRanges
			}
		}
		d.Rows = append(d.Rows, row)
	}
	v, ok := b.windows.get(b.here(p))
	if !ok {
		return
	}
	d.Big, d.Why = windowBig(v), v.Reason
	working, err := b.answers.WindowWorking(v)
	if err != nil {
		b.fault(b.here(p).path(), err)
		return
	}
	for _, s := range working.Steps {
		d.Steps = append(d.Steps, windowStep{s.Symbol, s.Text, s.Shown, b.source(s.Source)})
	}
	d.Notes = working.Notes
	if usual, ok := b.ordinary(p.film, p.machine); ok && usual == p {
		d.Drawing = b.pairDrawings(p, v)
	}
	b.add(page{Path: b.here(p).path(), Kind: "pair", Title: upperFirst(p.film.Name) + " on " + lowerFirst(p.medium.Name), Lead: "Set temperature in the " + lowerFirst(p.machine.Name) + ", at every listed speed in every room.",
		Tab: "Tables", Data: d})
}

// pairDrawings are the bond line against time and the temperature through the
// stack, set to the middle of the window.
func (b *builder) pairDrawings(p hotPair, v tables.WindowValue) template.HTML {
	c, set := b.hotCase(p, p.machine.Usual.Best), v.Middle()
	return b.drawings(b.here(p).path(),
		func() (template.HTML, error) {
			return b.drawBondLine("bond", "The bond line through the machine: "+p.name(), c, set)
		},
		func() (template.HTML, error) {
			return b.drawProfile("stack", "Through the stack at the end of the nip: "+p.name(), c, set)
		})
}

// windowBig is a window as the first thing on a page: one range, or one for the
// first piece and one for the steady run.
func windowBig(v tables.WindowValue) []bigNumber {
	big := func(name string, s tables.Span) bigNumber {
		if s.Low > s.High {
			return bigNumber{Name: name, Number: "no window", Verdict: "refuse"}
		}
		celsius, other := inUnits(s)
		return bigNumber{Name: name, Number: celsius, Unit: "°C", Under: other + "\u00a0°F"}
	}
	first, steady := v.Spans()
	if v.Whole.Open() {
		return []bigNumber{big("Set to", tables.Span{Low: max(first.Low, steady.Low), High: min(first.High, steady.High)})}
	}
	return []bigNumber{big("First piece", first), big("Steady run", steady)}
}

// windowEntry is one window with its anchor.
func (b *builder) windowEntry(k windowKey) windowEntry {
	e := windowEntry{ID: windowID(k)}
	v, ok := b.windows.get(k)
	if !ok {
		return e
	}
	add := func(word string, s tables.Span) {
		celsius, other := inUnits(s)
		e.Spans = append(e.Spans, spanIn{word, celsius + "\u00a0°C", other + "\u00a0°F"})
	}
	first, steady := v.Spans()
	switch {
	case !v.Open():
		e.Why = why(v)
	case v.Whole.Open():
		add("", tables.Span{Low: max(first.Low, steady.Low), High: min(first.High, steady.High)})
	default:
		add("first", first)
		add("then", steady)
	}
	return e
}
