package book

import (
	"html/template"
	"strings"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

func (b *builder) filmPage(f *shop.Film) materialPage {
	p := materialPage{Cautions: tables.FilmCautions(f)}
	total := f.BaseThickness.Best + f.AdhesiveThickness.Best
	p.Big = append(p.Big, bigQuantity("Thickness", total, "film and adhesive together"))
	p.Big = append(p.Big, filmHeat(f)...)
	if f.Activation.Set {
		p.Big = append(p.Big, bigQuantity("Adhesive works from", f.Activation.Best, "at the bond line, not on the roller"))
	}
	if len(b.hotPairs(f, nil, nil)) > 0 {
		p.Grids = append(p.Grids, b.windowGrid(f))
	}
	for _, w := range b.answers.Warnings() {
		if w.Film == f.ID {
			p.Words = append(p.Words, "The maker’s figure and the physics disagree. "+w.Text)
		}
	}
	p.Drawing = figure(draw.Section("section", "The layers of "+lowerFirst(f.Name), b.section(nil, f)), "Cut through the film above a print.", "") + b.filmDrawings(f)
	p.Lists = append(p.Lists, b.printsUnder(f)...)
	p.Lists = append(p.Lists, b.rollList(f)...)
	if l, ok := b.measureFirst(f); ok {
		p.Lists = append(p.Lists, l)
	}
	p.Sheets = b.filmSheets(f)
	return p
}

// filmDrawings are a hot film's window against speed and against humidity, on the
// print and in the machine that its maker speaks of.
func (b *builder) filmDrawings(f *shop.Film) template.HTML {
	p, ok := b.makersPair(f)
	if !ok {
		return ""
	}
	c := b.hotCase(p, p.machine.Usual.Best)
	return b.drawings("materials/films/"+f.ID+".html",
		func() (template.HTML, error) {
			return b.drawWindowSpeed("speed", "Window against speed: "+p.name(), c)
		},
		func() (template.HTML, error) {
			return b.drawWindowHumidity("damp", "Window against humidity: "+p.name(), c)
		})
}

// makersPair is the film on the medium and in the machine that its maker speaks
// of, or those nearest to it.
func (b *builder) makersPair(f *shop.Film) (hotPair, bool) {
	m := b.makersMachine(f)
	if m == nil {
		return hotPair{}, false
	}
	return b.ordinary(f, m)
}

// drawings makes a page's drawings, one after another.
func (b *builder) drawings(page string, makes ...func() (template.HTML, error)) template.HTML {
	var all template.HTML
	for _, make := range makes {
		drawing, err := make()
		if err != nil {
			b.fault(page, err)
		}
		all += drawing
	}
	return all
}

// filmHeat is what the film's maker says of the rollers: one number or none.
func filmHeat(f *shop.Film) []bigNumber {
	switch {
	case f.Rollers != nil:
		return []bigNumber{bigRange("Rollers, by its maker", f.Rollers.From, f.Rollers.To, "at "+quantity.Both(f.Rollers.Speed.Best))}
	case f.Assist != nil:
		return []bigNumber{bigRange("Roller, if warmed", f.Assist.From, f.Assist.To, "a cold film: warmth only helps it flow")}
	case f.ApplyAbove.Set:
		return []bigNumber{bigQuantity("Lay it above", f.ApplyAbove.Best, "roller, print and room")}
	}
	return nil
}

func bigQuantity[Q quantity.Quantity](name string, q Q, under string) bigNumber {
	number, unit, _ := cutUnit(quantity.Metric(q))
	if second := quantity.Imperial(q); second != "" {
		under = second + " · " + under
	}
	return bigNumber{Name: name, Number: number, Unit: strings.TrimSpace(unit), Under: under}
}

func bigRange(name string, from, to shop.Value[quantity.Temperature], under string) bigNumber {
	low, _, _ := cutUnit(quantity.Metric(from.Best))
	high, unit, _ := cutUnit(quantity.Metric(to.Best))
	return bigNumber{Name: name, Number: low + "–" + high, Unit: strings.TrimSpace(unit), Under: spread(quantity.Imperial(from.Best), quantity.Imperial(to.Best)) + " · " + under}
}

// printsUnder lists the prints that a film suits, by the shop's rules, and the
// machines that run it.
func (b *builder) printsUnder(f *shop.Film) []list {
	by := map[string]map[string][]string{} // word → ink → media
	for _, ink := range b.shop.Inks {
		for _, m := range b.shop.Media {
			if !b.shop.PrintsOn(ink, m) {
				continue
			}
			w := pairWord(b.answers.Pair(ink.ID, m.ID, f.ID, "normal"))
			if by[w] == nil {
				by[w] = map[string][]string{}
			}
			by[w][ink.ID] = append(by[w][ink.ID], lowerFirst(m.Name))
		}
	}
	var lists []list
	for _, w := range pairWords {
		l := list{Name: underNames[w.word], Verdict: w.verdict}
		for _, ink := range b.shop.Inks {
			if media := by[w.word][ink.ID]; len(media) > 0 {
				l.Items = append(l.Items, item{Text: upperFirst(ink.Name), Href: "/materials/inks/" + ink.ID + ".html", Under: "on " + strings.Join(media, "; ")})
			}
		}
		if len(l.Items) > 0 {
			lists = append(lists, l)
		}
	}
	machines := list{Name: "Runs on"}
	for _, r := range f.RunsOn {
		if m := b.shop.Laminator(r.ID); m != nil {
			machines.Items = append(machines.Items, item{Text: upperFirst(m.Name), Href: "/materials/laminators/" + m.ID + ".html"})
		}
	}
	return append(lists, machines)
}

// underNames head the lists of prints under a film.
var underNames = map[string]string{
	"will do":            "Will do over",
	"test a piece first": "Test a piece first over",
	"will not do":        "Will not do over",
	"refuse the job":     "Refuse over",
}

func (b *builder) filmSheets(f *shop.Film) []*sheet {
	s := b.sheet("The film", f.Head)
	s.word("class", f.Class)
	s.word("finish", f.Finish)
	if base := b.shop.Substance(f.Base.ID); base != nil {
		s.word("base", base.Name)
	}
	value(s, "base thickness", f.BaseThickness)
	if a := b.shop.Substance(f.Adhesive.ID); a != nil {
		s.word("adhesive", a.Name)
	}
	value(s, "adhesive thickness", f.AdhesiveThickness)
	value(s, "liner thickness", f.LinerThickness)
	value(s, "width", f.Width)
	value(s, "carrier that may be left under it", f.Safe)
	t := b.sheet("Its temperatures", f.Head)
	if f.Melts != nil {
		span(t, "the adhesive melts between", f.Melts.From, f.Melts.To, f.Melts.Source.ID, "")
	}
	value(t, "activation, on the maker’s sheet", f.Activation)
	if r := f.Rollers; r != nil {
		span(t, "the maker’s roller range", r.From, r.To, r.Source.ID, " at "+quantity.Both(r.Speed.Best)+", "+r.Machine)
	}
	if f.Assist != nil {
		span(t, "a warmed roller helps between", f.Assist.From, f.Assist.To, f.Assist.Source.ID, "")
	}
	value(t, "lay it above", f.ApplyAbove)
	value(t, "hottest it may get", f.HeatLimit)
	if len(t.Facts) == 0 {
		return []*sheet{s}
	}
	return []*sheet{s, t}
}
