package book

import (
	"fmt"
	"io"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// elastic is what every number of curl has to be read with.
const elastic = "Computed for a film that keeps all its pull; a real one lets go of some, so a sheet bends less, and less with time. Read the side, the edges and the order, not the millimetre."

// ruleOfGrain is the trade's rule beside the table of grain.
const ruleOfGrain = "The trade feeds paper under hot film with its grain across the feed, parallel to the rollers (common practice, no source). The risk is the strain in the sheet over the strain at which a flat sheet buckles: at 1 it ridges by itself, and waves that it brings with it grow by 1/(1 − risk)."

// curlPages adds the tables of curl and of grain, and a page of all cases with their
// workings for each film in each machine.
func (b *builder) curlPages() {
	curls, err := b.answers.Curls()
	if err != nil {
		b.fault("tables/curl.html", err)
		return
	}
	grains, err := b.answers.Grains()
	if err != nil {
		b.fault("tables/grain.html", err)
		return
	}
	if len(curls) == 0 {
		return
	}
	front := grid{ID: "curl", Caption: "How an A4 sheet with film on one side lies: rise of its edges in mm", Corner: "grain across the feed; laminated in: " + b.usualClimate(), Wide: true, Heads: b.curlHeads(), Note: elastic}
	ridges := grid{ID: "grain", Caption: "Greatest risk of ridges by the way the grain lies", Corner: "usual speed; " + b.usualClimate(), Wide: true, Heads: grainHeads, Note: ruleOfGrain}
	links := list{Name: "All media, film by film and machine by machine", Columns: true}
	for _, f := range b.shop.Films {
		first := true
		for _, ref := range f.RunsOn {
			machine := b.shop.Laminator(ref.ID)
			page := b.curlPage(f, machine, curls, grains)
			if page == nil {
				continue
			}
			b.pages = append(b.pages, page)
			links.Items = append(links.Items, item{Text: upperFirst(f.Name), Under: lowerFirst(short(machine.Name)), Href: "/" + page.Path})
			if first {
				first = false
				b.curlFront(&front, &ridges, f, machine, curls, grains)
			}
		}
	}
	front.Signs, ridges.Signs = signsIn(front.Rows, bendSigns), nil
	b.add(page{Path: "tables/curl.html", Kind: "cases", Title: "Curl", Lead: "Which way a laminate bends, fresh and in each room.", Tab: "Tables",
		Data:  casesPage{Said: "The edges lift on the film’s side, unless a letter says otherwise. “Rolls” is rolled up.", CSV: "/tables/curl.csv", JSON: "/tables/curl.json", Grids: []grid{front}, Links: &links},
		Found: "table", Also: []string{"bow", "warp", "banana", "potato chip", "won't lay flat", "covers curl"}})
	b.add(page{Path: "tables/grain.html", Kind: "cases", Title: "Grain and lines", Lead: "What the model finds for the grain along the feed and across it.", Tab: "Tables",
		Data:  casesPage{Said: ruleOfGrain, CSV: "/tables/grain.csv", JSON: "/tables/grain.json", Grids: []grid{noted(ridges, "")}, Links: &links},
		Found: "table", Also: []string{"grain direction", "feed direction", "ridges", "which way to feed"}})
	b.export("tables/curl.csv", func(w io.Writer) error { return tables.WriteCurlsCSV(w, curls) })
	b.export("tables/curl.json", func(w io.Writer) error { return tables.WriteCurlsJSON(w, curls) })
	b.export("tables/grain.csv", func(w io.Writer) error { return tables.WriteGrainsCSV(w, grains) })
	b.export("tables/grain.json", func(w io.Writer) error { return tables.WriteGrainsJSON(w, grains) })
}

func noted(g grid, note string) grid {
	g.Note = note
	return g
}

// curlFront adds a film's rows to the tables that stand for all: on the paper that its
// maker speaks of, or the first medium with a grain, or the first of all.
func (b *builder) curlFront(front, ridges *grid, f *shop.Film, machine *shop.Laminator, curls []tables.CurlValue, grains []tables.GrainValue) {
	medium := ""
	for _, v := range curls {
		if v.Film != f.ID || v.Laminator != machine.ID {
			continue
		}
		makers := f.Rollers != nil && f.Rollers.Medium.ID == v.Medium
		if medium == "" || makers || v.Grain != "" && !b.shop.Medium(medium).HasGrain {
			medium = v.Medium
			if makers {
				break
			}
		}
	}
	for _, v := range curls {
		if v.Film == f.ID && v.Laminator == machine.ID && v.Medium == medium && v.Grain != tables.GrainAlong {
			front.Rows = append(front.Rows, b.curlRow(v, "/"+curlPath(v.LaminateCase), f.Name, "on "+lowerFirst(b.shop.Medium(medium).Name), "/materials/films/"+f.ID+".html"))
		}
	}
	for _, v := range grains {
		if v.Film == f.ID && v.Laminator == machine.ID && v.Medium == medium {
			ridges.Rows = append(ridges.Rows, grainRow(v, f.Name, "on "+lowerFirst(b.shop.Medium(medium).Name)+", "+lowerFirst(short(machine.Name)), "/materials/films/"+f.ID+".html"))
		}
	}
}

// curlHeads are the columns: fresh, then each room.
func (b *builder) curlHeads() []gridHead {
	heads := []gridHead{{Top: "fresh", Under: "cold from the machine"}}
	for _, r := range b.shop.Rooms {
		heads = append(heads, roomHead(r))
	}
	return heads
}

// The small letters of curl.
var bendSigns = []sign{
	{"e", "its ends lift, leading and trailing"},
	{"s", "its sides lift"},
	{"c", "its corners lift"},
	{"a", "all its edges lift"},
	{"p", "to the print’s side"},
}

func bendSign(v tables.Bend) string {
	return map[string]string{"ends": "e", "sides": "s", "corners": "c", "edges": "a"}[v.Edges()]
}

func curlPath(v tables.LaminateCase) string {
	return "tables/curl-" + v.Film + "-" + v.Laminator + ".html"
}

func curlID(v tables.CurlValue) string {
	if v.Grain == "" {
		return v.Medium
	}
	return v.Medium + "." + v.Grain
}

// curlRow is a row of bends; on is the page of their workings, empty for this one.
func (b *builder) curlRow(v tables.CurlValue, on, name, under, href string) gridRow {
	r := gridRow{Name: name, Under: under, Href: href}
	for _, bend := range append([]tables.Bend{v.Fresh}, v.Rooms...) {
		c := gridCell{Text: "flat", Href: on + "#" + curlID(v)}
		if bend.Rise >= tables.Flat {
			c.Text, c.Sign = fmt.Sprintf("%.0f", bend.Rise.Millimetres()), bendSign(bend)
			if bend.Rolls() {
				c.Text = "rolls"
			}
			if bend.Curvature < 0 {
				c.Sign += "p"
			}
		}
		r.Cells = append(r.Cells, c)
	}
	return r
}

var grainHeads = []gridHead{
	{Top: "grain across the feed", Under: "parallel to the rollers"},
	{Top: "grain along the feed"},
	{Top: "the model says", Under: "feed its grain"},
}

// adviceWords are short words for what the model finds.
var adviceWords = map[string]string{tables.NoMatter: "either", tables.AcrossFeed: "across", tables.AlongFeed: "along"}

func grainRow(v tables.GrainValue, name, under, href string) gridRow {
	to := "/" + curlPath(v.LaminateCase) + "#grain"
	cell := func(r tables.Ridge) gridCell {
		c := gridCell{Text: fmt.Sprintf("%.2f", r.Risk), Href: to}
		if r.Risk > 0 {
			c.Under = r.Stage
		}
		return c
	}
	return gridRow{Name: name, Under: under, Href: href, Cells: []gridCell{cell(v.Across), cell(v.Along), {Text: adviceWords[v.Advice], Href: to}}}
}

// curlPage is every curl of a film in a machine; nil where there is none.
func (b *builder) curlPage(f *shop.Film, machine *shop.Laminator, curls []tables.CurlValue, grains []tables.GrainValue) *page {
	p := casesPage{Said: elastic, Back: filmLink(f)}
	path := ""
	for _, grain := range []string{tables.GrainAcross, tables.GrainAlong, ""} {
		g := grid{ID: "curl-" + orWord(grain, "none"), Corner: "laminated in: " + b.usualClimate(), Wide: true, Heads: b.curlHeads()}
		g.Caption = "Rise of an A4 sheet’s edges in mm, " + map[string]string{tables.GrainAcross: "grain across the feed", tables.GrainAlong: "grain along the feed", "": "media without grain"}[grain]
		for _, v := range curls {
			if v.Film == f.ID && v.Laminator == machine.ID && v.Grain == grain {
				path = curlPath(v.LaminateCase)
				g.Rows = append(g.Rows, b.curlRow(v, "", b.shop.Medium(v.Medium).Name, "", "/materials/media/"+v.Medium+".html"))
				if v.Balanced {
					p.Said = "This machine films both sides, and the two pull alike: the sheet lies flat. The numbers are what film on one side alone would do. " + elastic
				}
			}
		}
		if len(g.Rows) > 0 {
			g.Signs = signsIn(g.Rows, bendSigns)
			p.Grids = append(p.Grids, g)
		}
	}
	if path == "" {
		return nil
	}
	ridges := grid{ID: "grain", Caption: "Greatest risk of ridges by the way the grain lies", Corner: quantity.Both(machine.Usual.Best) + "; " + b.usualClimate(), Wide: true, Heads: grainHeads, Note: ruleOfGrain}
	for _, v := range grains {
		if v.Film == f.ID && v.Laminator == machine.ID {
			ridges.Rows = append(ridges.Rows, grainRow(v, b.shop.Medium(v.Medium).Name, "", "/materials/media/"+v.Medium+".html"))
		}
	}
	if len(ridges.Rows) > 0 {
		p.Grids = append(p.Grids, ridges)
	}
	p.Folds = b.curlFolds(path, f, machine, curls)
	return &page{Path: path, Kind: "cases", Title: "Curl and grain: " + f.Name, Lead: "On every medium that goes through the " + lowerFirst(short(machine.Name)) + ".",
		Tab: "Tables", Scripts: []string{"unfold.js"}, Data: p}
}

func orWord(s, otherwise string) string {
	if s == "" {
		return otherwise
	}
	return s
}

// curlFolds are the workings of a film in a machine, the two ways of the grain side by
// side.
func (b *builder) curlFolds(path string, f *shop.Film, machine *shop.Laminator, curls []tables.CurlValue) []workingFold {
	var folds []workingFold
	for _, m := range b.shop.Media {
		var columns []foldColumn
		for _, v := range curls {
			if v.Film != f.ID || v.Laminator != machine.ID || v.Medium != m.ID {
				continue
			}
			working, err := b.answers.CurlWorking(v)
			if err != nil {
				b.fault(path, err)
				return nil
			}
			head := "no grain"
			if v.Grain != "" {
				head = "grain " + v.Grain + " the feed"
			}
			columns = append(columns, foldColumn{workingCell{ID: curlID(v), Text: inUsualRoom(v), Room: head}, working})
		}
		if len(columns) > 0 {
			folds = append(folds, b.fold("On "+lowerFirst(m.Name), columns))
		}
	}
	return folds
}

// inUsualRoom is how it lies in the room that it was laminated in.
func inUsualRoom(v tables.CurlValue) string {
	for _, bend := range v.Rooms {
		if bend.Room == v.Room {
			return bend.Words()
		}
	}
	return v.Fresh.Words()
}
