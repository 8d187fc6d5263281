package book

import (
	"html/template"
	"io"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// stackAnswers is what the pages ask of the tables of stacks.
type stackAnswers interface {
	Stacks(*shop.Medium) bool
	Stack(tables.StackCase) (tables.StackValue, error)
	StackValues() ([]tables.StackValue, error)
	StackWorking(tables.StackValue) (tables.Working, error)
	StackBorderCurve(tables.StackCase, quantity.Fraction) ([]tables.BorderPoint, error)
	Wraps(*shop.Medium) bool
	AcclimatiseValues() ([]tables.AcclimatiseValue, error)
	AcclimatiseWorking(tables.AcclimatiseValue) (tables.Working, error)
	AcclimatiseChart(medium string) ([]tables.ChartFigure, error)
	DrivenValues() ([]tables.DrivenValue, error)
	DrivenWorking(tables.DrivenValue) (tables.Working, error)
	DrivenProfiles(tables.DrivenValue) ([]tables.DrivenProfile, error)
}

// stacks are the tables of stacks with ways to find a value.
type stacks struct {
	all     []tables.StackValue
	find    map[tables.StackCase]int
	parcels []tables.AcclimatiseValue
	driven  []tables.DrivenValue
}

func newStacks(a stackAnswers) (*stacks, error) {
	s := &stacks{find: map[tables.StackCase]int{}}
	var err error
	if s.all, err = a.StackValues(); err != nil {
		return nil, err
	}
	for i, v := range s.all {
		s.find[v.StackCase] = i
	}
	if s.parcels, err = a.AcclimatiseValues(); err != nil {
		return nil, err
	}
	s.driven, err = a.DrivenValues()
	return s, err
}

// get finds a stack; false where the two rooms are alike or the medium does not stack.
func (s *stacks) get(c tables.StackCase) (tables.StackValue, bool) {
	i, ok := s.find[c]
	if !ok {
		return tables.StackValue{}, false
	}
	return s.all[i], true
}

// media are the media of the tables, each once, in the order of the data: those that
// stack, and those that come in parcels.
func (s *stacks) media(all []*shop.Medium, a stackAnswers) (stacking, wrapped []*shop.Medium) {
	for _, m := range all {
		if a.Stacks(m) {
			stacking = append(stacking, m)
		}
		if a.Wraps(m) {
			wrapped = append(wrapped, m)
		}
	}
	return stacking, wrapped
}

// stacksPage is the page of everything about stacks.
type stacksPage struct {
	Home             *shop.Room
	Borders, Into    []grid
	Even             grid
	Driven           *grid
	Drawing, Teaches template.HTML
	Workings         []item
}

// parcelsPage is the page of wrapped paper from the cold.
type parcelsPage struct {
	Home           *shop.Room
	Parcels        []grid
	Chart, Pallets *grid
	ChartSays      string
	ChartSource    *sourceView
	Workings       []item
}

// stackPages adds the page of stacks, the workings medium by medium, and the files.
func (b *builder) stackPages() {
	stacking, wrapped := b.stacks.media(b.shop.Media, b.answers)
	if len(wrapped) == 0 {
		return
	}
	home := b.shop.Room(b.shop.Front.Room.ID)
	p := stacksPage{Home: home}
	if len(b.stacks.all) > 0 {
		for i, after := range tables.StackTimes {
			if i > 0 {
				p.Borders = append(p.Borders, b.borderGrid(stacking, home, i, after))
			}
		}
		p.Into = []grid{b.intoGrid(stacking, home)}
		p.Even = b.evenGrid(stacking, home)
		if v, ok := b.sharpest(home); ok {
			p.Drawing = b.drawStack("stack", v)
		}
	}
	w := parcelsPage{Home: home}
	for _, parcel := range tables.Parcels {
		w.Parcels = append(w.Parcels, b.parcelGrid(wrapped, parcel))
	}
	if len(stacking) > 0 {
		w.Chart, w.ChartSays = b.conditioningGrid(stacking[0])
		w.ChartSource = b.source("acclimatisation-chart")
		w.Pallets = b.palletGrid(stacking[0])
	}
	if len(b.stacks.driven) > 0 {
		g := b.drivenGrid(home)
		p.Driven = &g
		if v, ok := b.teaching(); ok {
			p.Teaches = b.drawDriven("driven", v)
		}
	}
	seen := map[*shop.Medium]bool{}
	for _, m := range append(stacking, wrapped...) {
		if seen[m] {
			continue
		}
		seen[m] = true
		p.Workings = append(p.Workings, item{Text: upperFirst(m.Name), Href: stackHref(m.ID, "")})
		b.add(page{Path: "tables/stacks-" + m.ID + ".html", Kind: "mediumstacks", Title: "Stacks: " + lowerFirst(m.Name),
			Lead: "How deep its border goes, how long it stays wrapped, and how each figure comes about.", Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.mediumStacks(m)})
	}
	w.Workings = p.Workings
	b.add(page{Path: "tables/stacks.html", Kind: "stacks", Title: "Stacks", Lead: "How deep the border of a stack has dried or dampened, and what a hot nip makes of damp paper.",
		Tab: "Tables", Data: p, Found: "table", Also: []string{"stack moisture", "wavy edges", "tight edges"}, Weight: 1.5})
	b.add(page{Path: "tables/acclimatise.html", Kind: "acclimatise", Title: "Wrapped paper from the cold", Lead: "How long paper stays wrapped before it is opened in the shop’s room.",
		Tab: "Tables", Data: w, Found: "table", Also: []string{"pallet", "acclimatise", "conditioning paper", "cold paper"}, Weight: 1.5})
	b.export("tables/stacks.csv", func(w io.Writer) error { return tables.WriteStacksCSV(w, b.stacks.all) })
	b.export("tables/stacks.json", func(w io.Writer) error { return tables.WriteStacksJSON(w, b.stacks.all) })
	b.export("tables/acclimatise.csv", func(w io.Writer) error { return tables.WriteAcclimatiseCSV(w, b.stacks.parcels) })
	b.export("tables/acclimatise.json", func(w io.Writer) error { return tables.WriteAcclimatiseJSON(w, b.stacks.parcels) })
	b.export("tables/driven-ahead.csv", func(w io.Writer) error { return tables.WriteDrivenCSV(w, b.stacks.driven) })
	b.export("tables/driven-ahead.json", func(w io.Writer) error { return tables.WriteDrivenJSON(w, b.stacks.driven) })
}

// stackHref is a place on the page of a medium's stacks.
func stackHref(medium, id string) string {
	href := "/tables/stacks-" + medium + ".html"
	if id != "" {
		href += "#" + id
	}
	return href
}

// stackID is the anchor of a stack on its medium's page.
func stackID(c tables.StackCase) string { return c.From + "." + c.To }

// others are the shop's rooms whose air differs in humidity from a room's.
func (b *builder) others(room *shop.Room) []*shop.Room {
	var list []*shop.Room
	for _, r := range b.shop.Rooms {
		if r.Humidity.Best != room.Humidity.Best {
			list = append(list, r)
		}
	}
	return list
}

// borderNote explains a cell of a border.
const borderNote = "The depth from the long sides at which half of the change is done: the best figure, in inches, and the ends of its band. A tenth of the change reaches about two and a half times as deep."

// borderGrid is the border after a time, of stacks from the shop's room, rooms across.
func (b *builder) borderGrid(media []*shop.Medium, home *shop.Room, time int, after quantity.Time) grid {
	g := grid{ID: "border-" + []string{"hour", "day", "week"}[time], Caption: "Border after " + afterWords[time] + ", mm", Corner: "stack from: " + lowerFirst(home.Name) + ", " + climate(home), Wide: true, Roomy: true, Note: borderNote}
	rooms := b.others(home)
	for _, r := range rooms {
		g.Heads = append(g.Heads, roomHead(r))
	}
	for _, m := range media {
		row := gridRow{Name: m.Name, Href: "/materials/media/" + m.ID + ".html"}
		for _, r := range rooms {
			row.Cells = append(row.Cells, b.borderCell(tables.StackCase{Medium: m.ID, From: home.ID, To: r.ID}, time))
		}
		g.Rows = append(g.Rows, row)
	}
	return g
}

// intoGrid is the border after a day of stacks that come into the shop's room.
func (b *builder) intoGrid(media []*shop.Medium, home *shop.Room) grid {
	g := grid{ID: "into", Caption: "Border after a day in the " + lowerFirst(home.Name) + ", " + climate(home) + ", mm", Corner: "stack from", Wide: true, Roomy: true, Note: borderNote}
	rooms := b.others(home)
	for _, r := range rooms {
		g.Heads = append(g.Heads, roomHead(r))
	}
	for _, m := range media {
		row := gridRow{Name: m.Name, Href: "/materials/media/" + m.ID + ".html"}
		for _, r := range rooms {
			row.Cells = append(row.Cells, b.borderCell(tables.StackCase{Medium: m.ID, From: r.ID, To: home.ID}, 1))
		}
		g.Rows = append(g.Rows, row)
	}
	return g
}

var afterWords = []string{"an hour", "a day", "a week"}

func (b *builder) borderCell(c tables.StackCase, time int) gridCell {
	v, ok := b.stacks.get(c)
	if !ok {
		return gridCell{}
	}
	border := v.Borders[time].Half
	least, most := border.Range()
	return gridCell{Text: depthText(border.Best), Under: inchText(border.Best) + ", " + depthSpan(least, most), Href: stackHref(c.Medium, stackID(c))}
}

// evenGrid is how long stacks of a medium's own sheets from the shop's room take to even out.
func (b *builder) evenGrid(media []*shop.Medium, home *shop.Room) grid {
	g := grid{ID: "even", Caption: "Until a covered stack has evened out", Corner: "stack from: " + lowerFirst(home.Name) + ", " + climate(home), Wide: true, Roomy: true,
		Note: "Until a tenth of the difference is left in the middle of a stack of the medium’s own sheets; under it the band."}
	rooms := b.others(home)
	for _, r := range rooms {
		g.Heads = append(g.Heads, roomHead(r))
	}
	for _, m := range media {
		row := gridRow{Name: m.Name, Under: sheetSize(m), Href: "/materials/media/" + m.ID + ".html"}
		for _, r := range rooms {
			c := tables.StackCase{Medium: m.ID, From: home.ID, To: r.ID}
			cell := gridCell{}
			if v, ok := b.stacks.get(c); ok {
				least, most := v.Even[0].Time.Range()
				cell = gridCell{Text: lapse(v.Even[0].Time.Best), Under: lapseSpan(least, most), Href: stackHref(m.ID, stackID(c))}
			}
			row.Cells = append(row.Cells, cell)
		}
		g.Rows = append(g.Rows, row)
	}
	return g
}

func sheetSize(m *shop.Medium) string {
	return strings.TrimSuffix(quantity.Metric(m.Width.Best), "\u00a0mm") + " × " + quantity.Metric(m.SheetLength.Best)
}

// sharpest is the stack that is drawn: the shop's first medium that stacks, from its room
// into the one whose air differs most.
func (b *builder) sharpest(home *shop.Room) (tables.StackValue, bool) {
	var best tables.StackValue
	found, far := false, 0.0
	for _, v := range b.stacks.all {
		if v.Medium != b.stacks.all[0].Medium || v.From != home.ID {
			continue
		}
		d := float64(b.shop.Room(v.To).Humidity.Best - home.Humidity.Best)
		if d*d > far {
			best, found, far = v, true, d*d
		}
	}
	return best, found
}
