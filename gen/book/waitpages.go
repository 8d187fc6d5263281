package book

import (
	"bytes"
	"strings"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// waitsPage is the whole table of waits.
type waitsPage struct {
	Inks      []choiceOf
	Media     []choiceOf
	Storages  []choiceOf
	Coverages []string
	Heads     []gridHead
	Groups    []waitGroup
	Signs     []sign
	Rows      int
	More      []*page // the other tables
}

type choiceOf struct{ ID, Name string }

// waitGroup is the rows of one ink on one medium.
type waitGroup struct {
	Ink, Medium         string // ids
	InkName, MediumName string
	Transfer            bool // the whole group rests on a transfer
	Rows                []waitRow
}

type waitRow struct {
	Coverage, Storage, StorageName string
	gridRow
}

// tableList adds the list of tables. It comes after all of them.
func (b *builder) tableList() {
	p := b.waitsTable()
	for _, t := range b.pages {
		if strings.HasPrefix(t.Path, "tables/") && t.Found == "table" && t.Path != "tables/waits.html" {
			p.More = append(p.More, t)
		}
	}
	b.add(page{Path: "tables/index.html", Kind: "tables", Title: "Tables", Lead: "Everything computed, to look up, and as files for a spreadsheet or a program.", Tab: "Tables", Data: p, Found: "list"})
}

// tablePages adds the table of waits and the workings.
func (b *builder) tablePages() {
	p := b.waitsTable()
	b.add(page{Path: "tables/waits.html", Kind: "waits", Title: "Hours to wait", Lead: "From the printer to the laminator: every ink on every medium it prints on, by coverage, storage and room.",
		Tab: "Tables", Scripts: []string{"filter.js"}, Data: p, Found: "table", Also: []string{"waiting time", "drying time", "outgassing time"}, Weight: 1.5})
	for _, ink := range b.shop.Inks {
		b.add(page{Path: "tables/waits-" + ink.ID + ".html", Kind: "workings", Title: "Workings: " + ink.Name, Lead: "How each wait of this ink comes about, room beside room.",
			Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.workings(ink)})
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

func (b *builder) waitsTable() waitsPage {
	p := waitsPage{Coverages: tables.Coverages, Signs: waitSigns}
	for _, r := range b.shop.Rooms {
		p.Heads = append(p.Heads, roomHead(r))
	}
	for _, s := range b.shop.Storages {
		p.Storages = append(p.Storages, choiceOf{s.ID, short(s.Name)})
	}
	seen := map[string]bool{}
	for _, ink := range b.shop.Inks {
		p.Inks = append(p.Inks, choiceOf{ink.ID, ink.Name})
		for _, m := range b.shop.Media {
			if b.shop.PrintsOn(ink, m) {
				g := b.waitGroup(ink, m)
				p.Groups = append(p.Groups, g)
				p.Rows += len(g.Rows)
				seen[m.ID] = true
			}
		}
	}
	for _, m := range b.shop.Media {
		if seen[m.ID] {
			p.Media = append(p.Media, choiceOf{m.ID, m.Name})
		}
	}
	return p
}

func (b *builder) waitGroup(ink *shop.Ink, m *shop.Medium) waitGroup {
	g := waitGroup{Ink: ink.ID, Medium: m.ID, InkName: ink.Name, MediumName: m.Name}
	for _, c := range tables.Coverages {
		for _, s := range b.answers.StoragesFor(m) {
			var cases []tables.WaitCase
			for _, r := range b.shop.Rooms {
				cases = append(cases, tables.WaitCase{Ink: ink.ID, Medium: m.ID, Coverage: c, Storage: s.ID, Room: r.ID})
			}
			g.Rows = append(g.Rows, waitRow{c, s.ID, short(s.Name), b.row("", "", "", cases)})
		}
	}
	g.Transfer = true
	for _, r := range g.Rows {
		g.Transfer = g.Transfer && (r.Whole != nil || strings.Contains(r.Sign, "t"))
	}
	for i := range g.Rows {
		if g.Transfer {
			g.Rows[i].Sign = strings.Replace(g.Rows[i].Sign, "t", "", 1)
		}
	}
	return g
}
