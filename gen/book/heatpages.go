package book

import (
	"bytes"
	"fmt"
	"io"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// heatPages adds the tables of windows and of humidities, and a page of
// workings for each hot film.
func (b *builder) heatPages() {
	films := b.hotFilms()
	if len(films) == 0 {
		return
	}
	p := gridsPage{JSON: "/tables/windows.json", CSV: "/tables/windows.csv"}
	for _, f := range films {
		g := b.windowGrid(f)
		g.ID = "film-" + f.ID
		g.Caption = upperFirst(f.Name) + ": set temperature, °C with °F under it"
		p.Parts = append(p.Parts, gridsPart{Name: f.Name, More: "/tables/windows-" + f.ID + ".html", Grid: g})
		b.add(page{Path: "tables/windows-" + f.ID + ".html", Kind: "filmwindows", Title: "Windows: " + f.Name,
			Lead: "Set temperatures at every listed speed in every room, and how they come about.", Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.filmWindows(f)})
	}
	b.add(page{Path: "tables/windows.html", Kind: "grids", Title: "Temperature windows", Lead: "The lowest and the highest set temperature of each hot film on each medium, machine by machine.",
		Tab: "Tables", Data: p, Found: "table", Also: []string{"roller temperature", "heat setting", "what temperature"}, Weight: 1.5})
	b.export("tables/windows.csv", func(w io.Writer) error { return tables.WriteWindowsCSV(w, b.windows.all) })
	b.export("tables/windows.json", func(w io.Writer) error { return tables.WriteWindowsJSON(w, b.windows.all) })
	b.humidityPage(films)
}

// export adds a file that a table writes.
func (b *builder) export(path string, write func(io.Writer) error) {
	var data bytes.Buffer
	if err := write(&data); err != nil {
		b.fault(path, err)
	}
	b.file(path, data.Bytes())
}

// gridsPage is a page of tables one under another, film by film.
type gridsPage struct {
	CSV, JSON string
	Parts     []gridsPart
}

type gridsPart struct {
	Name, More string
	Grid       grid
}

// hotFilms are the hot films that some machine lays on some medium.
func (b *builder) hotFilms() []*shop.Film {
	var list []*shop.Film
	for _, f := range b.shop.Films {
		if len(b.hotPairs(f, nil, nil)) > 0 {
			list = append(list, f)
		}
	}
	return list
}

// filmWindowsPage is every window of one film.
type filmWindowsPage struct {
	Film  *shop.Film
	Heads []gridHead
	Pairs []pairWindows
	Note  string
}

// pairWindows are the windows of a film on a medium in a machine, speeds down,
// rooms across, with the working at the usual speed in the shop's room.
type pairWindows struct {
	ID, Name string
	Rows     []speedWindows
	Working  string // what it is the working of
	Steps    []windowStep
	Notes    []string
}

type speedWindows struct {
	Speed string
	Cells []windowEntry
}

type windowEntry struct{ ID, Text, Under, Why string }

type windowStep struct {
	Symbol, Text, Shown string
	Source              *sourceView
}

func (b *builder) filmWindows(f *shop.Film) filmWindowsPage {
	p := filmWindowsPage{Film: f, Note: twoRanges}
	for _, r := range b.shop.Rooms {
		p.Heads = append(p.Heads, roomHead(r))
	}
	room := b.shop.Room(b.shop.Front.Room.ID)
	for _, pair := range b.hotPairs(f, nil, nil) {
		w := pairWindows{ID: pair.medium.ID + "." + pair.machine.ID, Name: lowerFirst(pair.medium.Name) + ", " + lowerFirst(pair.machine.Name)}
		for i, v := range tables.Speeds(pair.machine) {
			row := speedWindows{Speed: pace(v)}
			for _, k := range b.inRooms(pair, i) {
				row.Cells = append(row.Cells, b.windowEntry(k))
			}
			w.Rows = append(w.Rows, row)
		}
		w.Working = pace(pair.machine.Usual.Best) + ", " + lowerFirst(room.Name)
		b.windowSteps(&w, b.here(pair))
		p.Pairs = append(p.Pairs, w)
	}
	return p
}

func (b *builder) windowSteps(w *pairWindows, k windowKey) {
	v, ok := b.windows.get(k)
	if !ok {
		return
	}
	working, err := b.answers.WindowWorking(v)
	if err != nil {
		b.fault("tables/windows-"+k.film+".html", err)
		return
	}
	for _, s := range working.Steps {
		w.Steps = append(w.Steps, windowStep{s.Symbol, s.Text, s.Shown, b.source(s.Source)})
	}
	w.Notes = working.Notes
}

// windowEntry is one window with its anchor.
func (b *builder) windowEntry(k windowKey) windowEntry {
	e := windowEntry{ID: windowID(k)}
	v, ok := b.windows.get(k)
	switch {
	case !ok:
	case !v.Open():
		e.Why = why(v)
	default:
		c := windowCell(v, "")
		e.Text, e.Under = c.Text+"\u00a0°C", c.Under+"\u00a0°F"
		if c.Then != "" {
			first, steady := v.Spans()
			e.Text, e.Under = "first "+spanText(first), "then "+spanText(steady)
		}
	}
	return e
}

// humidityPage adds the highest humidity for a film, a medium and a setting.
func (b *builder) humidityPage(films []*shop.Film) {
	list, err := b.answers.Humidities()
	if err != nil {
		b.fault("tables/humidity.html", err)
		return
	}
	p := gridsPage{JSON: "/tables/humidity.json", CSV: "/tables/humidity.csv"}
	steps := len(tables.SetSteps)
	for _, f := range films {
		g := grid{ID: "film-" + f.ID, Caption: upperFirst(f.Name) + ": highest relative humidity of the sheet in %, by set temperature", Corner: "usual speed, 23 °C 73 °F", Wide: true,
			Note: dampNote}
		for _, c := range tables.SetSteps {
			g.Heads = append(g.Heads, gridHead{Top: fmt.Sprintf("%.0f\u00a0°C", c), Under: fmt.Sprintf("%.0f\u00a0°F", fahrenheit(c))})
		}
		for i := 0; i+steps <= len(list); i += steps {
			if list[i].Film == f.ID {
				p := hotPair{f, b.shop.Medium(list[i].Medium), b.shop.Laminator(list[i].Laminator)}
				g.Rows = append(g.Rows, b.humidityRow(p, lowerFirst(short(p.machine.Name)), list[i:i+steps]))
			}
		}
		p.Parts = append(p.Parts, gridsPart{Name: f.Name, More: "/tables/windows-" + f.ID + ".html", Grid: g})
	}
	b.add(page{Path: "tables/humidity.html", Kind: "grids", Title: "How damp the sheet may be", Lead: "The highest relative humidity that a sheet may be in balance with, for a hot film, a medium and a set temperature.",
		Tab: "Tables", Data: p, Found: "table", Also: []string{"damp paper", "moisture limit", "steam bubbles"}})
	b.export("tables/humidity.csv", func(w io.Writer) error { return tables.WriteHumiditiesCSV(w, list) })
	b.export("tables/humidity.json", func(w io.Writer) error { return tables.WriteHumiditiesJSON(w, list) })
}

// dampNote explains the cells of the highest humidities.
var dampNote = fmt.Sprintf("“any” is anything up to %.0f %%; an empty cell is a setting that will not do however dry the sheet is.", tables.HumidityMost*100)

func (b *builder) humidityRow(p hotPair, under string, values []tables.HumidityValue) gridRow {
	r := gridRow{Name: p.medium.Name, Under: under, Href: "/materials/media/" + p.medium.ID + ".html"}
	for _, v := range values {
		c := gridCell{}
		if v.Runs {
			c = gridCell{Text: fmt.Sprintf("%.0f", v.Humidity.Percent()), Href: windowHref(b.here(p))}
			if v.Free {
				c.Text = "any"
			}
		}
		r.Cells = append(r.Cells, c)
	}
	return r
}

// windowsOn is the table of windows on a medium, film by machine.
func (b *builder) windowsOn(medium *shop.Medium) (grid, bool) {
	room := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: "windows", Caption: "Set temperature of hot films on it, °C with °F under it", Corner: "usual speed; " + lowerFirst(room.Name) + ", " + climate(room), Wide: true}
	pairs := b.hotPairs(nil, medium, nil)
	machines, _ := b.sides(pairs)
	for _, m := range machines {
		g.Heads = append(g.Heads, gridHead{Top: short(upperFirst(m.Name)), Under: pace(m.Usual.Best)})
	}
	for _, f := range b.hotFilms() {
		if len(b.hotPairs(f, medium, nil)) == 0 {
			continue
		}
		var keys []windowKey
		for _, m := range machines {
			keys = append(keys, b.here(hotPair{f, medium, m}))
		}
		g.Rows = append(g.Rows, windowRow(f.Name, "", "/materials/films/"+f.ID+".html", b.ofTable(keys)))
	}
	return g.withWindowSigns(), len(g.Rows) > 0
}

// windowsIn is a machine's card: each hot film on the medium that its maker
// speaks of, or the one nearest to it, at the machine's speeds.
func (b *builder) windowsIn(machine *shop.Laminator) (grid, bool) {
	room := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: "windows", Caption: "Set temperature by film and speed, °C with °F under it", Corner: lowerFirst(room.Name) + ", " + climate(room), Wide: true, Heads: speedHeads(machine)}
	for _, f := range b.hotFilms() {
		pair, ok := b.ordinary(f, machine)
		if !ok {
			continue
		}
		g.Rows = append(g.Rows, windowRow(f.Name, "on "+lowerFirst(pair.medium.Name), "/materials/films/"+f.ID+".html", b.ofTable(atSpeeds(pair, room.ID))))
	}
	return g.withWindowSigns(), len(g.Rows) > 0
}

// measureFirst lists what moves the bounds of a film's window, in its maker's
// case, over the spread of each input: the first moves them most.
func (b *builder) measureFirst(f *shop.Film) (list, bool) {
	pair, ok := b.makersPair(f)
	if !ok {
		return list{}, false
	}
	moves, err := b.answers.WindowSpread(b.hotCase(pair, pair.machine.Usual.Best))
	if err != nil {
		b.fault("materials/films/"+f.ID+".html", err)
		return list{}, false
	}
	l := list{Name: "What to measure first", Lead: "How far a bound of the window moves over the spread of each input: on " + lowerFirst(pair.medium.Name) + ", " + lowerFirst(pair.machine.Name) + ", usual speed."}
	for _, m := range moves {
		l.Items = append(l.Items, item{Text: upperFirst(m.Input), Under: "moves it by " + quantity.Both(m.Size())})
	}
	return l, len(moves) > 0
}
