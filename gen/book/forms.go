package book

import (
	"fmt"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// formPage is one sheet to fill in.
type formPage struct {
	*shop.Form
	Of      string // what it is for: a laminator's name
	Facts   []formFact
	Windows *formWindows
	Hazards []hazard
	Imprint string
	Stamp   string
}

// formFact is one thing that a card says of its machine.
type formFact struct{ Name, Text string }

// hazard is a caution in a form's foot.
type hazard struct{ Name, Text string }

// formWindows is a laminator's table of windows: the chart's own rows.
type formWindows struct {
	Said  string
	Heads []gridHead
	Rows  []chartRow
}

// formLink is a form in a list.
type formLink struct{ Href, Text, Under string }

// formPages adds the forms, and the page that lists them.
func (b *builder) formPages() {
	var links []formLink
	for _, f := range b.shop.Forms {
		if f.For != "laminators" {
			links = append(links, b.form(f, nil))
			continue
		}
		for _, m := range b.shop.Laminators {
			links = append(links, b.form(f, m))
		}
	}
	b.add(page{Path: "forms/index.html", Kind: "forms", Title: "Forms", Lead: "Sheets to print and fill in, each one page of A4.", Tab: "Charts", Data: links, Found: "list", Also: b.formWords()})
}

// form adds a form, for a laminator where there is one, and gives the way to it.
func (b *builder) form(f *shop.Form, m *shop.Laminator) formLink {
	p := formPage{Form: f}
	path, title := "forms/"+f.ID+".html", f.Name
	ids := refIDs(f.Cautions)
	if m != nil {
		path, title = "forms/"+f.ID+"-"+m.ID+".html", f.Name+": "+lowerFirst(short(m.Name))
		p.Of = lowerFirst(m.Name)
		p.Facts, p.Windows = b.machineFacts(m), b.cardWindows(m)
		ids = tables.MachineCautions(m)
	}
	for _, id := range ids {
		if name, line := b.brief(id); line != "" {
			p.Hazards = append(p.Hazards, hazard{name, line})
		}
	}
	front := b.shop.Front
	p.Imprint = fmt.Sprintf("%s. Revised %s.", front.Name, day(front.Revised, "2 January 2006"))
	if front.Invented {
		p.Imprint += " Invented demo data."
	}
	p.Stamp = stamp([]byte(fmt.Sprint(p.Facts, p.Windows, p.Hazards)), []byte(formText(f)))
	b.add(page{Path: path, Kind: "form", Title: title, Tab: "Charts", Bare: true, Data: p})
	return formLink{"/" + path, title, f.Notes}
}

// learnForms are the ways to the forms that stand with the chapters.
func (b *builder) learnForms() []formLink {
	var list []formLink
	for _, f := range b.shop.Forms {
		if f.Learn && f.For != "laminators" {
			list = append(list, formLink{"/forms/" + f.ID + ".html", f.Name, f.Notes})
		}
	}
	return list
}

// formWords are the other names of all forms: the list is what the search finds.
func (b *builder) formWords() []string {
	var list []string
	for _, f := range b.shop.Forms {
		list = append(append(list, lowerFirst(f.Name)), f.Also...)
	}
	return list
}

// formText is all that a form says, for its stamp.
func formText(f *shop.Form) string {
	var parts []string
	for _, p := range f.Parts {
		parts = append(parts, p.Name, p.Says, fmt.Sprint(p.Lines))
		for _, field := range p.Fields {
			parts = append(append(parts, field.Name, fmt.Sprint(field.Wide)), field.Ticks...)
		}
		parts = append(append(append(append(parts, p.Ticks...), p.Steps...), p.Heads...), p.Rows...)
	}
	return f.Name + "\x00" + f.Notes + "\x00" + strings.Join(parts, "\x00")
}

func refIDs(refs []shop.Ref) []string {
	list := make([]string, len(refs))
	for i, r := range refs {
		list[i] = r.ID
	}
	return list
}

// machineFacts are what a card says of its machine.
func (b *builder) machineFacts(m *shop.Laminator) []formFact {
	facts := []formFact{
		{"Takes up to", quantity.Both(m.Width.Best)},
		{"Speeds", quantity.Both(m.Slowest.Best) + " to " + quantity.Both(m.Fastest.Best)},
		{"Usual speed", quantity.Both(m.Usual.Best)},
		{"Sets to at most", quantity.Both(m.Hottest.Best)},
	}
	if m.Opening.Set {
		facts = append(facts, formFact{"Opens to", quantity.Both(m.Opening.Best)})
	}
	if m.WarmUp.Set {
		facts = append(facts, formFact{"Warms up in", quantity.Metric(m.WarmUp.Best)})
	}
	return facts
}

// cardWindows are the windows of a machine's hot films on the ordinary print of
// each, at its speeds; nil where it runs none.
func (b *builder) cardWindows(m *shop.Laminator) *formWindows {
	w := formWindows{Said: "Set temperatures computed for " + lowerFirst(b.shop.Room(b.shop.Front.Room.ID).Name) + ", " + climate(b.shop.Room(b.shop.Front.Room.ID)) + "; °C over °F. Two ranges: first piece, then steady run. A struck bar: no window. Run a test strip first."}
	chart := b.windowChart(m)
	w.Heads = append(w.Heads, chart.Heads...)
	for i, g := range chart.Groups {
		w.Heads[i].Under = g.Text
	}
	for _, f := range b.hotFilms() {
		if pair, ok := b.ordinary(f, m); ok {
			w.Rows = append(w.Rows, b.windowChartRow(pair))
		}
	}
	if len(w.Rows) == 0 {
		return nil
	}
	return &w
}
