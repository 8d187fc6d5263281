package book

import "laydown/gen/tables"

// frontPage is the first page's data.
type frontPage struct {
	Waits grid
}

// planPage is what the plan's form offers.
type planPage struct {
	Inks, Media, Storages                         []choiceOf
	StorageChoices, RoomChoices, LaminatorChoices []usualChoice
	FilmChoices                                   []filmChoice
	Coverages                                     []string
	Verdicts                                      []string
	Tests                                         map[string]testLink
}

// usualChoice is a choice that may be the shop's usual one.
type usualChoice struct {
	choiceOf
	Usual bool
}

// filmChoice is a film with what its maker says of the rollers.
type filmChoice struct {
	choiceOf
	What, Number, Unit, Under string
	Hot                       bool
}

type testLink struct{ Href, Text string }

// sourceGroup is the sources of one kind.
type sourceGroup struct {
	Word, Says string
	Sources    []sourceRow
}

type sourceRow struct{ ID, Title, Where string }

// kindSays says what each kind of source is worth.
var kindSays = []struct{ kind, says string }{
	{"published", "Somebody else can look it up."},
	{"maker", "A maker’s sheet: good for the maker’s own conditions."},
	{"measured", "Measured in this shop."},
	{"practice", "Common practice in the trade; nobody has published it, or not so that it can be cited."},
	{"memory", "A usual value written down from memory. Replace it when you can."},
	{"invented", "Made up for the demonstration."},
}

func (b *builder) frontPages() {
	b.add(page{Path: "index.html", Kind: "front", Title: b.shop.Front.Name, Lead: "The bench book: what to wait for, what to lay over it, and why.", Data: frontPage{b.chartGrid()}})
	b.add(page{Path: "plan.html", Kind: "plan", Title: "Job plan", Lead: "Is this print ready, and what goes over it?", Tab: "Plan",
		Styles: []string{"plan.css"}, Scripts: []string{"plan.js", "plan-page.js"}, Data: b.planPage(), Found: "plan", Also: []string{"job ticket", "ready by", "can I laminate"}, Weight: 1.5})
	b.add(page{Path: "search.html", Kind: "search", Title: "Ask the book", Lead: "An ink, a film, a fault, a temperature: slang and slips are understood.", Styles: []string{"search.css"}})
	b.add(page{Path: "sources.html", Kind: "sources", Title: "Sources", Lead: "Where every value in this edition comes from, and what that is worth.", Data: b.sourceGroups()})
}

// chapter finds a chapter by the name of its page.
func (b *builder) chapter(slug string) *chapter {
	for _, c := range b.chapters {
		if c.Slug == slug {
			return c
		}
	}
	return nil
}

// chartGrid is the shop's own list of prints, hung in the usual room: what is
// asked for most.
func (b *builder) chartGrid() grid {
	room := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: "waits", Caption: "Hours to wait", Corner: lowerFirst(room.Name) + ", " + climate(room)}
	for _, c := range tables.Coverages {
		g.Heads = append(g.Heads, gridHead{Top: c})
	}
	for _, pair := range b.shop.Front.Charts.Waits {
		ink, m := b.shop.Ink(pair.Ink.ID), b.shop.Medium(pair.Medium.ID)
		if ink == nil || m == nil {
			continue
		}
		var cases []tables.WaitCase
		c := b.usual(ink, m)
		for _, coverage := range tables.Coverages {
			c.Coverage = coverage
			cases = append(cases, c)
		}
		g.Rows = append(g.Rows, b.row(ink.Name, "on "+lowerFirst(m.Name)+", "+lowerFirst(short(b.shop.Storage(c.Storage).Name)), "/materials/inks/"+ink.ID+".html", cases))
	}
	return g.withSigns()
}

func (b *builder) planPage() planPage {
	front := b.shop.Front
	p := planPage{Coverages: tables.Coverages, Verdicts: []string{"go", "wait", "change", "refuse"}, Tests: map[string]testLink{}}
	for _, r := range b.shop.Inks {
		p.Inks = append(p.Inks, choiceOf{r.ID, r.Name})
		for _, id := range r.ReadyTests {
			if path, text := b.findHeading(id); path != "" {
				p.Tests[id] = testLink{"/" + path + "#" + id, text}
			}
		}
	}
	for _, r := range b.shop.Media {
		p.Media = append(p.Media, choiceOf{r.ID, r.Name})
	}
	for _, r := range b.shop.Films {
		c := filmChoice{choiceOf: choiceOf{r.ID, r.Name}, Hot: r.Class != "cold"}
		for _, n := range filmHeat(r) {
			c.What, c.Number, c.Unit, c.Under = n.Name, n.Number, n.Unit, n.Under
		}
		p.FilmChoices = append(p.FilmChoices, c)
	}
	for _, r := range b.shop.Storages {
		p.Storages = append(p.Storages, choiceOf{r.ID, r.Name})
		p.StorageChoices = append(p.StorageChoices, usualChoice{choiceOf{r.ID, short(r.Name)}, r.ID == front.Storage.ID})
	}
	for _, r := range b.shop.Rooms {
		p.RoomChoices = append(p.RoomChoices, usualChoice{choiceOf{r.ID, r.Name + ", " + climate(r)}, r.ID == front.Room.ID})
	}
	for _, r := range b.shop.Laminators {
		p.LaminatorChoices = append(p.LaminatorChoices, usualChoice{choiceOf{r.ID, r.Name}, r.ID == front.Laminator.ID})
	}
	return p
}

func (b *builder) sourceGroups() []sourceGroup {
	var groups []sourceGroup
	for _, k := range kindSays {
		g := sourceGroup{Word: kindWords[k.kind], Says: k.says}
		for _, s := range b.shop.Sources {
			if s.Kind == k.kind {
				g.Sources = append(g.Sources, sourceRow{s.ID, s.Title, s.Where})
			}
		}
		if len(g.Sources) > 0 {
			groups = append(groups, g)
		}
	}
	return groups
}
