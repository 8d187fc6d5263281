package book

import (
	"fmt"
	"io"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// dampNote explains the cells of the highest humidities.
var dampNote = fmt.Sprintf("“any” is anything up to %.0f %%; an empty cell is a setting that will not do however dry the sheet is.", tables.HumidityMost*100)

// humidityPage is a page with one table of highest humidities.
type humidityPage struct {
	Film      *shop.Film // nil on the page of all films
	CSV, JSON string
	Grid      grid
}

// humidityPath is where the humidities of a film stand.
func humidityPath(f *shop.Film) string { return "tables/humidity-" + f.ID + ".html" }

// humidityPages adds the highest humidity for a film, a medium and a setting: a
// line for each film, and a page with all media and machines for each.
func (b *builder) humidityPages(films []*shop.Film) {
	list, err := b.answers.Humidities()
	if err != nil {
		b.fault("tables/humidity.html", err)
		return
	}
	const csv, json = "/tables/humidity.csv", "/tables/humidity.json"
	steps := len(tables.SetSteps)
	var usual []hotPair
	var usuals [][]tables.HumidityValue
	for _, f := range films {
		var pairs []hotPair
		var lists [][]tables.HumidityValue
		for i := 0; i+steps <= len(list); i += steps {
			if list[i].Film == f.ID && slices.ContainsFunc(list[i:i+steps], func(v tables.HumidityValue) bool { return v.Runs }) {
				pairs = append(pairs, hotPair{f, b.shop.Medium(list[i].Medium), b.shop.Laminator(list[i].Laminator)})
				lists = append(lists, list[i:i+steps])
			}
		}
		makers, _ := b.makersPair(f)
		if i := slices.Index(pairs, makers); i >= 0 {
			usual, usuals = append(usual, makers), append(usuals, lists[i])
		}
		lists, sets := whereAnyRuns(lists, setSteps())
		g := humidityGrid(upperFirst(f.Name)+": "+dampCaption, dampCorner, sets)
		for i, p := range pairs {
			r := b.humidityRow(p, lowerFirst(short(p.machine.Name)), lists[i])
			r.Yours = p == makers
			g.Rows = append(g.Rows, r)
		}
		g.Note += " A medium that runs at no setting is left out."
		b.add(page{Path: humidityPath(f), Kind: "humidity", Title: "How damp the sheet may be: " + f.Name, Lead: "The highest relative humidity that a sheet may be in balance with, by medium, machine and set temperature.",
			Tab: "Tables", Data: humidityPage{f, csv, json, g}})
	}
	usuals, sets := whereAnyRuns(usuals, setSteps())
	all := humidityPage{CSV: csv, JSON: json, Grid: humidityGrid(upperFirst(dampCaption), dampCorner, sets)}
	for i, p := range usual {
		r := b.humidityRow(p, "on "+lowerFirst(p.medium.Name)+", "+lowerFirst(short(p.machine.Name)), usuals[i])
		r.Name, r.Href = p.film.Name, "/"+humidityPath(p.film)
		all.Grid.Rows = append(all.Grid.Rows, r)
	}
	b.add(page{Path: "tables/humidity.html", Kind: "humidity", Title: "How damp the sheet may be", Lead: "The highest relative humidity that a sheet may be in balance with, for a hot film, a medium and a set temperature.",
		Tab: "Tables", Data: all, Found: "table", Also: []string{"damp paper", "moisture limit", "steam bubbles"}})
	b.export("tables/humidity.csv", func(w io.Writer) error { return tables.WriteHumiditiesCSV(w, list) })
	b.export("tables/humidity.json", func(w io.Writer) error { return tables.WriteHumiditiesJSON(w, list) })
}

const (
	dampCaption = "highest relative humidity of the sheet in %, by set temperature"
	dampCorner  = "usual speed, 23 °C 73 °F"
)

// setSteps are the set temperatures of the table.
func setSteps() []quantity.Temperature {
	var sets []quantity.Temperature
	for _, c := range tables.SetSteps {
		sets = append(sets, quantity.FromCelsius(c))
	}
	return sets
}

// humidityGrid is a table of humidities with no rows yet: settings across.
func humidityGrid(caption, where string, sets []quantity.Temperature) grid {
	g := grid{ID: "humidity", Caption: caption, Corner: where + "; set to, °C with °F under it", Wide: true, Note: dampNote}
	for _, s := range sets {
		g.Heads = append(g.Heads, gridHead{Top: fmt.Sprintf("%.0f", s.Celsius()), Under: fmt.Sprintf("%.0f", s.Fahrenheit())})
	}
	return g
}

// whereAnyRuns leaves out the settings at the ends at which no sheet runs.
func whereAnyRuns(lists [][]tables.HumidityValue, sets []quantity.Temperature) ([][]tables.HumidityValue, []quantity.Temperature) {
	runs := func(i int) bool {
		return slices.ContainsFunc(lists, func(list []tables.HumidityValue) bool { return list[i].Runs })
	}
	from, to := 0, len(sets)
	for from < to && !runs(from) {
		from++
	}
	for to > from && !runs(to-1) {
		to--
	}
	cut := make([][]tables.HumidityValue, len(lists))
	for i := range lists {
		cut[i] = lists[i][from:to]
	}
	return cut, sets[from:to]
}

// humidityRow is a pair's row; its name leads to the pair's windows.
func (b *builder) humidityRow(p hotPair, under string, values []tables.HumidityValue) gridRow {
	r := gridRow{Name: p.medium.Name, Under: under, Href: windowHref(b.here(p))}
	for _, v := range values {
		c := gridCell{}
		switch {
		case v.Runs && v.Free:
			c.Text = "any"
		case v.Runs:
			c.Text = fmt.Sprintf("%.0f", v.Humidity.Percent())
		}
		r.Cells = append(r.Cells, c)
	}
	return r
}
