package book

import (
	"fmt"
	"html/template"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// computedWaits is a print's waits: storages down, rooms across.
func (b *builder) computedWaits(a asked) template.HTML {
	coverage := a.coverages[0]
	g := grid{ID: a.ID, Caption: a.title("Hours to wait: " + a.print() + ", " + coverage + " coverage"), Corner: "kept", Wide: true}
	for _, r := range b.shop.Rooms {
		g.Heads = append(g.Heads, roomHead(r))
	}
	usual := b.shop.Front.Storage.ID
	for _, s := range b.answers.StoragesFor(a.medium) {
		if _, ok := a.Keys["storage"]; ok && s.ID != a.storages[0] {
			continue
		}
		var cases []tables.WaitCase
		for _, r := range b.shop.Rooms {
			cases = append(cases, a.wait(coverage, s.ID, r.ID))
		}
		r := b.row(short(s.Name), "", "", cases)
		r.Yours = s.ID == usual
		g.Rows = append(g.Rows, r)
	}
	return b.part("grid", g.withSigns())
}

// computedStorages is a print's wait in each storage, against the usual one.
func (b *builder) computedStorages(a asked) template.HTML {
	g := grid{ID: a.ID, Caption: a.title("Hours to wait, by storage: " + a.print()), Corner: lowerFirst(a.room.Name) + ", " + climate(a.room)}
	for _, c := range tables.Coverages {
		g.Heads = append(g.Heads, gridHead{Top: c, Under: coverageShare(a.ink, c)})
	}
	for _, s := range b.answers.StoragesFor(a.medium) {
		var cases []tables.WaitCase
		for _, c := range tables.Coverages {
			cases = append(cases, a.wait(c, s.ID, a.room.ID))
		}
		r := b.row(s.Name, "", "", cases)
		r.Yours = s.ID == b.shop.Front.Storage.ID
		g.Rows = append(g.Rows, r)
	}
	return b.part("grid", g.withSigns())
}

// computedCoverages is a print's waits: coverages down, rooms across.
func (b *builder) computedCoverages(a asked) template.HTML {
	storage := b.shop.Storage(a.storages[0])
	g := grid{ID: a.ID, Caption: a.title("Hours to wait, by coverage: " + a.print()), Corner: lowerFirst(short(storage.Name)), Wide: true}
	for _, r := range b.shop.Rooms {
		g.Heads = append(g.Heads, roomHead(r))
	}
	for _, c := range tables.Coverages {
		var cases []tables.WaitCase
		for _, r := range b.shop.Rooms {
			cases = append(cases, a.wait(c, storage.ID, r.ID))
		}
		r := b.row(c, coverageShare(a.ink, c), "", cases)
		r.Yours = c == "normal"
		g.Rows = append(g.Rows, r)
	}
	return b.part("grid", g.withSigns())
}

// computedResidue is a drawing: a curve for each coverage and each storage.
func (b *builder) computedResidue(a asked) template.HTML {
	var cases []tables.WaitCase
	var names []string
	for _, c := range a.coverages {
		for _, s := range a.storages {
			cases = append(cases, a.wait(c, s, a.room.ID))
			switch name := lowerFirst(short(b.shop.Storage(s).Name)); {
			case len(a.storages) == 1:
				names = append(names, c)
			case len(a.coverages) == 1:
				names = append(names, name)
			default:
				names = append(names, c+", "+name)
			}
		}
	}
	said := ""
	if len(a.coverages) == 1 {
		said = ", " + a.coverages[0] + " coverage"
	}
	if len(a.storages) == 1 {
		said += ", " + lowerFirst(short(b.shop.Storage(a.storages[0]).Name))
	}
	title := a.title("What is left in " + a.print() + said)
	return b.drawCases(a.ID, title, title+", "+climate(a.room)+". The vertical axis goes by powers of ten.", cases, names)
}

// computedHistory is a drawing of one print through its history.
func (b *builder) computedHistory(a asked) template.HTML {
	text := a.Keys["history"]
	h, err := b.answers.ParseHistory(text)
	if err != nil {
		b.problems.add(a.where("history"), err.Error())
		return ""
	}
	c := a.wait(a.coverages[0], a.storages[0], a.room.ID)
	half := 12 * quantity.Hour
	upTo := max(h.Time(), half)
	curve, err := b.answers.HistoryCurve(c, text, upTo)
	if err != nil {
		b.problems.add(a.where("history"), err.Error())
		return ""
	}
	curve.Name = "this print"
	straight, err := b.answers.Curve(c, upTo)
	if err != nil {
		b.problems.add(a.where("history"), err.Error())
		return ""
	}
	straight.Name = lowerFirst(short(b.shop.Storage(c.Storage).Name)) + " all the time"
	var stays []string
	for _, s := range h {
		stays = append(stays, quantity.Metric(s.Time)+" "+lowerFirst(short(s.Storage.Name)))
	}
	title := a.title("What is left in " + a.print() + " through " + strings.Join(stays, ", then "))
	return b.drawCurves(a.ID, title, title+"; "+climate(a.room)+".", []tables.Curve{curve, straight})
}

// demoRow is one demo print with what was expected and what came out.
type demoRow struct {
	Name, Expected, Got, Source, Note string
	Hit                               bool
}

type demoTable struct {
	ID, Title string
	Rows      []demoRow
}

// computedDemoPrints is the table of the demo prints, misses and all.
func (b *builder) computedDemoPrints(a asked) template.HTML {
	return b.predictionTable(a, "Demo prints", b.demoRows)
}

// computedWindowPrints is the table of the predictions of windows.
func (b *builder) computedWindowPrints(a asked) template.HTML {
	return b.predictionTable(a, "Windows", b.windowRows)
}

func (b *builder) predictionTable(a asked, title string, make func() ([]demoRow, error)) template.HTML {
	rows, err := make()
	if err != nil {
		b.problems.add(a.Pos, err.Error())
		return ""
	}
	return b.part("demo-prints", demoTable{ID: a.ID, Title: title, Rows: rows})
}

func (b *builder) demoRows() ([]demoRow, error) {
	prints, err := b.answers.DemoPrints()
	if err != nil {
		return nil, err
	}
	var rows []demoRow
	for _, p := range prints {
		r := demoRow{Name: p.Name, Expected: spread(quantity.Metric(p.From), quantity.Metric(p.To)), Source: p.Source, Note: p.Note, Hit: p.Hit, Got: "hardly dries"}
		if p.Dries {
			r.Got = quantity.Metric(p.Got)
		}
		rows = append(rows, r)
	}
	return rows, nil
}

func (b *builder) windowRows() ([]demoRow, error) {
	prints, err := b.answers.WindowPrints()
	if err != nil {
		return nil, err
	}
	var rows []demoRow
	for _, p := range prints {
		rows = append(rows, demoRow{Name: p.Name, Expected: p.Expected, Got: p.Got, Source: p.Source, Note: p.Note, Hit: p.Hit})
	}
	return rows, nil
}

// computedClaims is the table of the claims about laminates.
func (b *builder) computedClaims(a asked) template.HTML {
	return b.predictionTable(a, "Laminates", b.claimRows)
}

func (b *builder) claimRows() ([]demoRow, error) {
	prints, err := b.answers.ClaimPrints()
	if err != nil {
		return nil, err
	}
	var rows []demoRow
	for _, p := range prints {
		rows = append(rows, demoRow{Name: p.Name, Expected: p.Expected, Got: p.Got, Source: p.Source, Hit: p.Hit})
	}
	return rows, nil
}

// computedWarnings lists what the makers' figures and the physics disagree on.
func (b *builder) computedWarnings(asked) template.HTML {
	l := list{}
	for _, w := range b.answers.Warnings() {
		it := item{Text: w.Text}
		if ink := b.shop.Ink(w.Ink); ink != nil {
			it = item{Text: ink.Name, Href: "/materials/inks/" + ink.ID + ".html", Under: w.Text}
		} else if film := b.shop.Film(w.Film); film != nil {
			it = item{Text: film.Name, Href: "/materials/films/" + film.ID + ".html", Under: w.Text}
		}
		l.Items = append(l.Items, it)
	}
	if len(l.Items) == 0 {
		return "<p>There is none in this edition: every maker’s figure is met.</p>"
	}
	return template.HTML(fmt.Sprintf(`<div class="list">%s</div>`, b.part("items", l)))
}
