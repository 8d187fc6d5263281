package book

import (
	"fmt"
	"html/template"
	"io"
	"math"
	"strings"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// coolingPages adds the table of cooling: the maker's case of each film, and a page of
// all cases with their workings for each film.
func (b *builder) coolingPages() {
	all, err := b.answers.Coolings()
	if err != nil {
		b.fault("tables/cooling.html", err)
		return
	}
	if len(all) == 0 {
		return
	}
	by := map[string][]tables.CoolingValue{}
	for _, v := range all {
		by[v.Film] = append(by[v.Film], v)
	}
	front := grid{ID: "cooling", Caption: "Seconds from the nip until a laminate may be carried, trimmed and stacked", Corner: "usual speed; " + b.usualClimate(), Wide: true, Heads: coolingHeads,
		Note: "Each film on the medium that its maker speaks of, or the nearest to it. Carried: 48 °C (118 °F), the burn threshold of plastic held for ten minutes, from memory. Trimmed: 5 K (9 °F) below where the adhesive sets. Stacked: 5 K (9 °F) above the room."}
	links := list{Name: "All media and machines, film by film", Columns: true}
	for _, f := range b.hotFilms() {
		machine := b.makersMachine(f)
		if machine == nil || len(by[f.ID]) == 0 {
			continue
		}
		pair, _ := b.ordinary(f, machine)
		path := "tables/cooling-" + f.ID + ".html"
		for _, v := range by[f.ID] {
			if v.Medium == pair.medium.ID && v.Laminator == machine.ID {
				r := coolingRow(v, "/"+path)
				r.Name, r.Under, r.Href = f.Name, "on "+lowerFirst(pair.medium.Name)+", "+lowerFirst(short(machine.Name)), "/materials/films/"+f.ID+".html"
				front.Rows = append(front.Rows, r)
			}
		}
		links.Items = append(links.Items, item{Text: upperFirst(f.Name), Href: "/" + path})
		b.add(page{Path: path, Kind: "cases", Title: "Cooling: " + f.Name, Lead: "When it may be carried, trimmed and stacked, on every medium in every machine that runs it.",
			Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.filmCooling(f, pair, by[f.ID])})
	}
	b.add(page{Path: "tables/cooling.html", Kind: "cases", Title: "Cooling", Lead: "How long after the nip a laminate may be carried, trimmed and stacked.", Tab: "Tables",
		Data:  casesPage{Said: "Count from the moment it leaves the nip.", Caution: b.cautions(shop.NipCaution, shop.HotRollerCaution), CSV: "/tables/cooling.csv", JSON: "/tables/cooling.json", Grids: []grid{front}, Links: &links},
		Found: "table", Also: []string{"cool down", "how long until I can trim", "stack warm", "still hot"}})
	b.export("tables/cooling.csv", func(w io.Writer) error { return tables.WriteCoolingsCSV(w, all) })
	b.export("tables/cooling.json", func(w io.Writer) error { return tables.WriteCoolingsJSON(w, all) })
}

// coolingHeads are the columns of a table of cooling: three times on the rack, and what
// help does for the last of them.
var coolingHeads = []gridHead{
	{Top: "carry", Under: "rack"}, {Top: "trim", Under: "rack"}, {Top: "stack", Under: "rack"},
	{Top: "stack", Under: "with a fan"}, {Top: "stack", Under: "over a chill roller"},
}

func coolingID(v tables.CoolingValue) string { return v.Medium + "." + v.Laminator }

// coolingRow is a row of times; on is the page of their working, empty for this one.
func coolingRow(v tables.CoolingValue, on string) gridRow {
	var r gridRow
	rack, fan, chill := v.Ways[0], v.Ways[1], v.Ways[2]
	for _, c := range []tables.Cooled{rack.Carry, rack.Trim, rack.Stack, fan.Stack, chill.Stack} {
		cell := gridCell{Text: wholeSeconds(c), Href: on + "#" + coolingID(v)}
		if !v.Window {
			cell.Sign = "n"
		}
		r.Cells = append(r.Cells, cell)
	}
	r.lift("n")
	return r
}

// noWindow explains a number where the pair has no window.
var noWindow = []sign{{"n", "there is no window here: the numbers are for the setting that the adhesive would need"}}

// wholeSeconds writes a time after the nip, rounded up.
func wholeSeconds(c tables.Cooled) string {
	if !c.Comes {
		return "over an hour"
	}
	return fmt.Sprintf("%.0f", math.Ceil(float64(c.Time)))
}

// filmCooling is every cooling of one film, machines side by side in the workings.
func (b *builder) filmCooling(f *shop.Film, usual hotPair, values []tables.CoolingValue) casesPage {
	p := casesPage{Said: "Seconds from the nip. A line below opens to its working.", Back: filmLink(f)}
	folds := map[string]int{}
	var columns [][]foldColumn
	var names []string
	machines, _ := b.sides(b.hotPairs(f, nil, nil))
	for _, m := range machines {
		g := grid{ID: "in-" + m.ID, Caption: upperFirst(m.Name) + ": seconds from the nip", Corner: quantity.Both(m.Usual.Best) + "; " + b.usualClimate(), Wide: true, Heads: coolingHeads}
		for _, v := range values {
			if v.Laminator != m.ID {
				continue
			}
			medium := b.shop.Medium(v.Medium)
			r := coolingRow(v, "")
			r.Name, r.Href = medium.Name, "/materials/media/"+medium.ID+".html"
			g.Rows = append(g.Rows, r)
			working, err := b.answers.CoolingWorking(v)
			if err != nil {
				b.fault("tables/cooling-"+f.ID+".html", err)
				return p
			}
			k, ok := folds[medium.ID]
			if !ok {
				k = len(columns)
				folds[medium.ID] = k
				columns, names = append(columns, nil), append(names, "On "+lowerFirst(medium.Name)+", stacked after")
			}
			columns[k] = append(columns[k], foldColumn{workingCell{ID: coolingID(v), Text: wholeSeconds(v.Ways[0].Stack) + " s", Room: short(upperFirst(m.Name))}, working})
		}
		g.Signs = signsIn(g.Rows, noWindow)
		p.Grids = append(p.Grids, g)
	}
	for k, name := range names {
		p.Folds = append(p.Folds, b.fold(name, columns[k]))
	}
	if drawing, err := b.drawCooling("cooling-drawing", tables.LaminateCase{Film: f.ID, Medium: usual.medium.ID, Laminator: usual.machine.ID, Room: b.shop.Front.Room.ID}); err != nil {
		b.fault("tables/cooling-"+f.ID+".html", err)
	} else {
		p.Drawing = drawing
	}
	return p
}

// drawCooling draws the layers of a laminate as curves of temperature on a log axis of
// time.
func (b *builder) drawCooling(id string, c tables.LaminateCase) (template.HTML, error) {
	curve, err := b.answers.CoolingCurve(c, tables.OnRack)
	if err != nil {
		return "", err
	}
	film, medium, machine := b.shop.Film(c.Film), b.shop.Medium(c.Medium), b.shop.Laminator(c.Laminator)
	chart := draw.Chart{ID: id, Title: "Cooling of " + lowerFirst(film.Name) + " on " + lowerFirst(medium.Name)}
	top, bottom := 0.0, math.Inf(1)
	for i, name := range curve.Names {
		s := draw.Series{Name: name}
		for k, t := range curve.Times {
			celsius := curve.Layers[i][k].Celsius()
			s.X, s.Y = append(s.X, float64(t)), append(s.Y, celsius)
			top, bottom = math.Max(top, celsius), math.Min(bottom, celsius)
		}
		chart.Curves = append(chart.Curves, s)
	}
	first, last := float64(curve.Times[0]), float64(curve.Times[len(curve.Times)-1])
	chart.X = draw.Axis{Label: "seconds after the nip", From: first, To: last, Log: true}
	chart.Y = draw.Axis{Label: "°C", From: math.Floor(bottom/10) * 10, To: math.Ceil(top/10) * 10}
	chart.Level = &draw.Level{Name: "may be carried", At: curve.Carry.Celsius()}
	chart.Desc = strings.Join(curve.Said, " ")
	caption := upperFirst(short(machine.Name)) + ", rack. " + chart.Desc
	n := numbers{ID: id + "-n", Title: chart.Title + ", in numbers", Heads: append([]string{"seconds"}, curve.Names...)}
	for _, t := range draw.LogTicks(first, last) {
		row := []string{draw.Plain(t)}
		for _, s := range chart.Curves {
			row = append(row, at(s, t))
		}
		n.Rows = append(n.Rows, row)
	}
	return figure(chart.SVG(), caption, b.part("numbers", n)), nil
}
