package book

import (
	"bytes"
	"io"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// heatPages adds the tables of windows and of humidities, and a page for each pair
// of a hot film and a medium in a machine.
func (b *builder) heatPages() {
	films := b.hotFilms()
	if len(films) == 0 {
		return
	}
	b.add(page{Path: "tables/windows.html", Kind: "windows", Title: "Temperature windows", Lead: "The lowest and the highest set temperature of each hot film on each medium, machine by machine.",
		Tab: "Tables", Scripts: []string{"filter.js"}, Data: b.windowsTable(films), Found: "table", Also: []string{"roller temperature", "heat setting", "what temperature"}, Weight: 1.5})
	b.export("tables/windows.csv", func(w io.Writer) error { return tables.WriteWindowsCSV(w, b.windows.all) })
	b.export("tables/windows.json", func(w io.Writer) error { return b.answers.WriteWindowColumns(w, b.windows.all) })
	for _, p := range b.hotPairs(nil, nil, nil) {
		b.pairPage(p)
	}
	b.humidityPages(films)
}

// export adds a file that a table writes.
func (b *builder) export(path string, write func(io.Writer) error) {
	var data bytes.Buffer
	if err := write(&data); err != nil {
		b.fault(path, err)
	}
	b.file(path, data.Bytes())
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
