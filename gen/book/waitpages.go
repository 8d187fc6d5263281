package book

import (
	"bytes"
	"strings"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// waitsPage is the table of waits in one room: a row for each print.
type waitsPage struct {
	Room     *shop.Room
	Climate  string
	Rooms    []roomPlace // the same table in the other rooms
	Inks     []inkChoice
	Media    []choiceOf
	Storages []choiceOf
	Heads    []waitHead
	Prints   []printRow
	Signs    []sign
	Rows     int     // of all tables: a print kept in a way, with a coverage
	InRooms  int     // and in how many rooms
	More     []*page // the other tables
}

// waitHead heads a column: a coverage in the usual storage, or another storage.
type waitHead struct {
	Top, Under, Storage string
	coverage            string
}

// roomPlace is where a table for another room stands.
type roomPlace struct{ Name, Href string }

// inkChoice is an ink with the media that it prints on.
type inkChoice struct {
	choiceOf
	Media []choiceOf
}

type choiceOf struct{ ID, Name string }

// printRow is the waits of one ink on one medium.
type printRow struct {
	Ink, Medium string // ids
	gridRow
}

// tableList adds the list of tables. It comes after all of them.
func (b *builder) tableList() {
	p := b.waitsTable(b.shop.Room(b.shop.Front.Room.ID))
	for _, t := range b.pages {
		if strings.HasPrefix(t.Path, "tables/") && t.Found == "table" && t.Path != "tables/waits.html" {
			p.More = append(p.More, t)
		}
	}
	b.add(page{Path: "tables/index.html", Kind: "tables", Title: "Tables", Lead: "Everything computed, to look up, and as files for a spreadsheet or a program.", Tab: "Tables", Data: p, Found: "list"})
}

// tablePages adds the table of waits in every room and a page for every print.
func (b *builder) tablePages() {
	usual := b.shop.Room(b.shop.Front.Room.ID)
	for _, r := range b.shop.Rooms {
		t := page{Path: waitsPath(r, usual), Kind: "waits", Title: "Hours to wait", Lead: "From the printer to the laminator, in the " + lowerFirst(r.Name) + ": every ink on every medium it prints on.",
			Tab: "Tables", Scripts: []string{"filter.js"}, Data: b.waitsTable(r)}
		if r != usual {
			t.Title += ": " + lowerFirst(r.Name)
		} else {
			t.Found, t.Also, t.Weight = "table", []string{"waiting time", "drying time", "outgassing time"}, 1.5
		}
		b.add(t)
	}
	for _, ink := range b.shop.Inks {
		for _, m := range b.mediaOf(ink) {
			b.add(page{Path: printPath(ink.ID, m.ID), Kind: "workings", Title: upperFirst(ink.Name) + " on " + lowerFirst(m.Name), Lead: "Hours to wait in every room, and how each comes about.",
				Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.workings(ink, m)})
		}
	}
	var csv, json bytes.Buffer
	if err := tables.WriteWaitsCSV(&csv, b.waits.all); err != nil {
		b.fault("tables/waits.csv", err)
	}
	if err := tables.WriteWaitsJSON(&json, b.waits.all); err != nil {
		b.fault("tables/waits.json", err)
	}
	b.file("tables/waits.csv", csv.Bytes())
	b.file("tables/waits.json", json.Bytes())
}

// waitsPath is where the table of waits in a room stands.
func waitsPath(r, usual *shop.Room) string {
	if r == usual {
		return "tables/waits.html"
	}
	return "tables/waits-" + r.ID + ".html"
}

func (b *builder) waitsTable(room *shop.Room) waitsPage {
	p := waitsPage{Room: room, Climate: climate(room), Signs: waitSigns, InRooms: len(b.shop.Rooms), Heads: b.waitHeads()}
	for _, r := range b.shop.Rooms {
		if r != room {
			p.Rooms = append(p.Rooms, roomPlace{r.Name, "/" + waitsPath(r, b.shop.Room(b.shop.Front.Room.ID))})
		}
	}
	for _, s := range b.shop.Storages {
		p.Storages = append(p.Storages, choiceOf{s.ID, short(s.Name)})
	}
	seen := map[string]bool{}
	for _, ink := range b.shop.Inks {
		choice := inkChoice{choiceOf: choiceOf{ink.ID, ink.Name}}
		for _, m := range b.shop.Media {
			if b.shop.PrintsOn(ink, m) {
				p.Prints = append(p.Prints, b.printRow(ink, m, room, p.Heads))
				p.Rows += len(tables.Coverages) * len(b.answers.StoragesFor(m))
				seen[m.ID] = true
				choice.Media = append(choice.Media, choiceOf{m.ID, m.Name})
			}
		}
		p.Inks = append(p.Inks, choice)
	}
	for _, m := range b.shop.Media {
		if seen[m.ID] {
			p.Media = append(p.Media, choiceOf{m.ID, m.Name})
		}
	}
	return p
}

// waitHeads are the usual storage with each coverage, then the others with
// normal coverage.
func (b *builder) waitHeads() []waitHead {
	usual := b.shop.Storage(b.shop.Front.Storage.ID)
	var heads []waitHead
	for _, c := range tables.Coverages {
		heads = append(heads, waitHead{c, lowerFirst(short(usual.Name)), usual.ID, c})
	}
	for _, s := range b.shop.Storages {
		if s != usual {
			heads = append(heads, waitHead{lowerFirst(short(s.Name)), "normal", s.ID, "normal"})
		}
	}
	return heads
}

// printRow is a print's waits in a room. A storage that does not suit the
// medium leaves its cell empty.
func (b *builder) printRow(ink *shop.Ink, m *shop.Medium, room *shop.Room, heads []waitHead) printRow {
	var cases []tables.WaitCase
	for _, h := range heads {
		cases = append(cases, tables.WaitCase{Ink: ink.ID, Medium: m.ID, Coverage: h.coverage, Storage: h.Storage, Room: room.ID})
	}
	r := printRow{ink.ID, m.ID, b.row(upperFirst(ink.Name)+" on "+lowerFirst(m.Name), "", nearPrint(ink.ID, m.ID), cases)}
	for i, c := range cases {
		r.Cells[i].Href = nearPrint(c.Ink, c.Medium) + "#" + c.Coverage + "." + c.Storage
	}
	return r
}

// nearPrint is where a print's waits stand, seen from the tables of waits: these
// have so many links that short ones count.
func nearPrint(ink, medium string) string {
	return strings.TrimPrefix(printPath(ink, medium), "tables/")
}
