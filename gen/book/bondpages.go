package book

import (
	"fmt"
	"io"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// The small letters of bond.
var bondSigns = []sign{
	{"u", "within what is known it may come out otherwise: the working says how"},
	{"t", "the adhesive is thinner than the relief is deep"},
}

// bondWords are short names of what becomes of silvering.
var bondWords = map[string]string{
	tables.ClearsInNip:    "clears",
	tables.ClearsByItself: "overnight",
	tables.WillNotClear:   "stays",
}

// bondSaid explains the words.
var bondSaid = "Air that the adhesive has not yet pushed out of the print’s relief looks silver. “Clears” is gone behind the nip, “overnight” within " + quantity.Metric(tables.Overnight) + " as it lies, “stays” will not go by itself. Under the word: the share of the relief that is filled behind the nip. Viscosities are known to a factor of ten."

// bondPages adds the table of bonds and a page for each film in each machine.
func (b *builder) bondPages() {
	all, err := b.answers.Bonds()
	if err != nil {
		b.fault("tables/bond.html", err)
		return
	}
	if len(all) == 0 {
		return
	}
	type run struct{ film, machine string }
	by := map[run][]tables.BondValue{}
	for _, v := range all {
		by[run{v.Film, v.Laminator}] = append(by[run{v.Film, v.Laminator}], v)
	}
	links := list{Name: "Print by print", Lead: "Every ink on every medium.", Columns: true}
	starts := grid{ID: "starts", Caption: "Where a test strip begins: tension of the film and load of the nip", Corner: "film, machine", Wide: true, Roomy: true,
		Heads: []gridHead{{Top: "tension", Under: "per width"}, {Top: "pull", Under: "over the film’s width"}, {Top: "nip load", Under: "per width"}, {Top: "nip pressure", Under: "mean"}, {Top: "clears", Under: "prints of all"}}}
	for _, f := range b.shop.Films {
		for _, ref := range f.RunsOn {
			values := by[run{f.ID, ref.ID}]
			if len(values) == 0 {
				continue
			}
			machine := b.shop.Laminator(ref.ID)
			path := bondPath(values[0])
			links.Items = append(links.Items, item{Text: upperFirst(f.Name), Under: lowerFirst(short(machine.Name)), Href: "/" + path})
			if r, ok := b.startRow(f, machine, values); ok {
				starts.Rows = append(starts.Rows, r)
			}
			b.add(page{Path: path, Kind: "cases", Title: "Bond: " + f.Name, Lead: "What becomes of silvering on each print that goes through the " + lowerFirst(short(machine.Name)) + ".",
				Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.bondPage(path, f, machine, values)})
		}
	}
	b.add(page{Path: "tables/bond.html", Kind: "cases", Title: "Bond and silvering", Lead: "Where tension and pressure begin, and whether silvering clears by itself.", Tab: "Tables",
		Data:  casesPage{Said: bondSaid, Rules: tables.StartCautions(), Caution: b.cautions(shop.NipCaution, shop.HotRollerCaution), CSV: "/tables/bond.csv", JSON: "/tables/bond.json", Grids: []grid{starts}, Links: &links},
		Found: "table", Also: []string{"silvering", "silver specks", "tension", "pressure", "wet out", "start settings", "brake"}})
	b.export("tables/bond.csv", func(w io.Writer) error { return tables.WriteBondsCSV(w, all) })
	b.export("tables/bond.json", func(w io.Writer) error { return tables.WriteBondsJSON(w, all) })
}

func bondPath(v tables.BondValue) string {
	return "tables/bond-" + v.Film + "-" + v.Laminator + ".html"
}

func bondID(v tables.BondValue) string { return v.Medium + "." + v.Ink }

func (b *builder) startRow(f *shop.Film, machine *shop.Laminator, values []tables.BondValue) (gridRow, bool) {
	s, ok := b.answers.Start(f.ID, machine.ID)
	if !ok {
		return gridRow{}, false
	}
	clears := 0
	for _, v := range values {
		if v.Class == tables.ClearsInNip {
			clears++
		}
	}
	href := "/" + bondPath(values[0])
	cell := func(text, under string) gridCell { return gridCell{Text: text, Under: under, Href: href} }
	return gridRow{Name: f.Name, Under: lowerFirst(short(machine.Name)), Href: "/materials/films/" + f.ID + ".html", Cells: []gridCell{
		cell(quantity.Metric(s.Tension), quantity.Imperial(s.Tension)),
		cell(fmt.Sprintf("%.0f\u00a0N", s.Pull), fmt.Sprintf("%.0f\u00a0lbf", s.Pull/newtonsInPoundForce)),
		cell(quantity.Metric(s.Load), quantity.Imperial(s.Load)),
		cell(quantity.Metric(s.Mean), quantity.Imperial(s.Mean)),
		cell(fmt.Sprintf("%d of %d", clears, len(values)), ""),
	}}, true
}

// newtonsInPoundForce is the pound-force by definition.
const newtonsInPoundForce = 4.4482216152605

// bondPage is every print under a film in a machine: media down, inks across.
func (b *builder) bondPage(path string, f *shop.Film, machine *shop.Laminator, values []tables.BondValue) casesPage {
	p := casesPage{Said: bondSaid, Back: filmLink(f)}
	g := grid{ID: "bond", Caption: "What becomes of silvering", Corner: quantity.Both(machine.Usual.Best) + "; " + b.usualClimate(), Wide: true, Upright: true}
	var inks []*shop.Ink
	for _, ink := range b.shop.Inks {
		for _, v := range values {
			if v.Ink == ink.ID {
				inks = append(inks, ink)
				g.Heads = append(g.Heads, gridHead{Top: upperFirst(ink.Name)})
				break
			}
		}
	}
	for _, m := range b.shop.Media {
		r := gridRow{Name: m.Name, Href: "/materials/media/" + m.ID + ".html", Cells: make([]gridCell, len(inks))}
		var columns []foldColumn
		for i, ink := range inks {
			for _, v := range values {
				if v.Ink != ink.ID || v.Medium != m.ID {
					continue
				}
				r.Cells[i] = bondCell(v)
				working, err := b.answers.BondWorking(v)
				if err != nil {
					b.fault(path, err)
					return p
				}
				columns = append(columns, foldColumn{workingCell{ID: bondID(v), Text: bondWords[v.Class], Room: upperFirst(ink.Name)}, working})
			}
		}
		if len(columns) > 0 {
			r.lift("u")
			r.lift("t")
			g.Rows = append(g.Rows, r)
			p.Folds = append(p.Folds, b.fold("On "+lowerFirst(m.Name), columns))
		}
	}
	g.Signs = signsIn(g.Rows, bondSigns)
	p.Grids = []grid{g}
	return p
}

func bondCell(v tables.BondValue) gridCell {
	// The columns are narrow: where it must, the long word breaks in its joint.
	word := strings.Replace(bondWords[v.Class], "overnight", "over\u00adnight", 1)
	c := gridCell{Text: word, Under: fmt.Sprintf("%.0f\u00a0%%", v.AfterNip.Percent()), Href: "#" + bondID(v)}
	if !v.Certain {
		c.Sign += "u"
	}
	if v.Thin {
		c.Sign += "t"
	}
	return c
}
