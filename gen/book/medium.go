package book

import (
	"slices"
	"strings"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

func (b *builder) mediumPage(m *shop.Medium) materialPage {
	p := materialPage{Cautions: tables.MediumCautions(m)}
	inks := b.inksOf(m)
	for i, ink := range inks {
		if i == 3 {
			break
		}
		p.Big = append(p.Big, b.bigWait(upperFirst(ink.Name), "normal coverage, "+lowerFirst(short(b.shop.Storage(b.usual(ink, m).Storage).Name)), b.usual(ink, m)))
	}
	if len(inks) > 0 {
		p.Grids = append(p.Grids, b.mediumByInk(m, inks))
	}
	if g, ok := b.windowsOn(m); ok {
		p.Grids = append(p.Grids, g)
	}
	if g, ok := b.stacksOf(m); ok {
		p.Grids = append(p.Grids, g)
	}
	if g, ok := b.wrappedOf(m); ok {
		p.Grids = append(p.Grids, g)
	}
	p.Lists = b.filmsOn(m, inks)
	p.Drawing = figure(draw.Section("section", "A film on "+lowerFirst(m.Name), b.section(m, nil)), "Cut through the print with a film on it.", "")
	p.Sheets = b.mediumSheets(m)
	return p
}

// mediumByInk is the waits on a medium, ink by storage.
func (b *builder) mediumByInk(m *shop.Medium, inks []*shop.Ink) grid {
	room := b.shop.Room(b.shop.Front.Room.ID)
	storages := b.answers.StoragesFor(m)
	g := grid{ID: "by-ink", Caption: "Hours to wait on it, by ink and storage", Corner: "normal coverage; " + lowerFirst(room.Name) + ", " + climate(room), Wide: true}
	for _, s := range storages {
		g.Heads = append(g.Heads, gridHead{Top: short(s.Name)})
	}
	for _, ink := range inks {
		var cases []tables.WaitCase
		for _, s := range storages {
			cases = append(cases, tables.WaitCase{Ink: ink.ID, Medium: m.ID, Coverage: "normal", Storage: s.ID, Room: room.ID})
		}
		g.Rows = append(g.Rows, b.row(ink.Name, "", "/materials/inks/"+ink.ID+".html", cases))
	}
	return g.withSigns()
}

// filmsOn lists the films by what the shop's rules say of them on this
// medium's prints: the best that any of its inks gets, with the inks named
// where they differ.
func (b *builder) filmsOn(m *shop.Medium, inks []*shop.Ink) []list {
	lists := make([]list, len(pairWords))
	for i, w := range pairWords {
		lists[i] = list{Name: "Films: " + w.word, Verdict: w.verdict, Columns: true}
	}
	for _, f := range b.shop.Films {
		groups := map[string][]string{}
		for _, ink := range inks {
			w := pairWord(b.answers.Pair(ink.ID, m.ID, f.ID, "normal"))
			groups[w] = append(groups[w], lowerFirst(ink.Name))
		}
		best := -1
		var parts []string
		for i, w := range pairWords {
			if names, ok := groups[w.word]; ok {
				if best < 0 {
					best = i
					continue
				}
				parts = append(parts, w.word+" on "+strings.Join(names, "; "))
			}
		}
		if best < 0 {
			continue
		}
		it := item{Text: upperFirst(f.Name), Href: "/materials/films/" + f.ID + ".html"}
		if len(parts) > 0 {
			it.Under = "but " + strings.Join(parts, "; ")
		}
		lists[best].Items = append(lists[best].Items, it)
	}
	return slices.DeleteFunc(lists, func(l list) bool { return len(l.Items) == 0 })
}

// pairWords are what a film may be on a print, best first.
var pairWords = []struct{ word, verdict string }{
	{"will do", "go"},
	{"test a piece first", "go"},
	{"will not do", "change"},
	{"refuse the job", "refuse"},
}

func pairWord(a tables.PairAnswer) string {
	switch {
	case a.Verdict == tables.Refuse:
		return "refuse the job"
	case a.Verdict == tables.Change:
		return "will not do"
	case a.Test:
		return "test a piece first"
	}
	return "will do"
}

// section is the layers of a print with a film on it, from the top. Without a
// film it shows one that is not named.
func (b *builder) section(m *shop.Medium, f *shop.Film) []draw.Layer {
	var layers []draw.Layer
	if f == nil {
		layers = append(layers,
			draw.Layer{Matter: draw.FilmMatter, Name: "film", Thickness: 25e-6},
			draw.Layer{Matter: draw.AdhesiveMatter, Name: "adhesive", Thickness: 25e-6})
	} else {
		layers = append(layers, b.filmLayers(f)...)
	}
	if m == nil {
		return append(layers,
			draw.Layer{Matter: draw.InkMatter, Name: "ink or toner", Thickness: 2e-6, Gap: true},
			draw.Layer{Matter: draw.FibreMatter, Name: "print", Thickness: 120e-6})
	}
	layers = append(layers, draw.Layer{Matter: draw.InkMatter, Name: "ink or toner", Thickness: 2e-6})
	body := bodyOf(m)
	if d := m.Drying; d != nil && d.Absorbs.Best < m.Thickness.Best*0.95 {
		return append(layers,
			draw.Layer{Matter: draw.CoatMatter, Name: "takes up the carrier:", Size: quantity.Both(d.Absorbs.Best), Thickness: float64(d.Absorbs.Best)},
			draw.Layer{Matter: body, Name: "the rest of the medium, " + backWord(m), Thickness: float64(m.Thickness.Best - d.Absorbs.Best)})
	}
	return append(layers, draw.Layer{Matter: body, Name: short(m.Name) + backOf(m), Size: quantity.Both(m.Thickness.Best), Thickness: float64(m.Thickness.Best)})
}

func backWord(m *shop.Medium) string {
	if m.Drying != nil && m.Drying.Back == "open" {
		return "its back open"
	}
	return "its back sealed"
}

func backOf(m *shop.Medium) string {
	if m.Drying == nil {
		return ""
	}
	return ", " + backWord(m)
}

func (b *builder) filmLayers(f *shop.Film) []draw.Layer {
	name := func(id, otherwise string) string {
		if s := b.shop.Substance(id); s != nil {
			return s.Name
		}
		return otherwise
	}
	return []draw.Layer{
		{Matter: draw.FilmMatter, Name: lowerFirst(name(f.Base.ID, "film")) + ":", Size: quantity.Both(f.BaseThickness.Best), Thickness: float64(f.BaseThickness.Best)},
		{Matter: draw.AdhesiveMatter, Name: lowerFirst(name(f.Adhesive.ID, "adhesive")) + ":", Size: quantity.Both(f.AdhesiveThickness.Best), Thickness: float64(f.AdhesiveThickness.Best)},
	}
}

func (b *builder) mediumSheets(m *shop.Medium) []*sheet {
	s := b.sheet("The medium", m.Head)
	s.word("class", m.Class)
	s.word("finish", m.Finish)
	s.yes("coated on the printed face", m.Coated)
	s.word("comes as", strings.Join(m.Forms, ", "))
	value(s, "thickness", m.Thickness)
	value(s, "weight", m.Grammage)
	value(s, "width", m.Width)
	value(s, "sheet length", m.SheetLength)
	s.yes("has a grain", m.HasGrain)
	value(s, "fibre share", m.FibreShare)
	value(s, "hottest its face may get", m.HeatLimit)
	sheets := []*sheet{s}
	if d := m.Drying; d != nil {
		w := b.sheet("How it lets a carrier go", m.Head)
		value(w, "layer that takes the carrier up", d.Absorbs)
		value(w, "mobility over plasticised calendered vinyl", d.Mobility)
		w.word("back", d.Back)
		value(w, "resistance of the back", d.BackResistance)
		sheets = append(sheets, w)
	}
	w := b.sheet("Heat and movement", m.Head)
	value(w, "heat conductivity", m.Conductivity)
	value(w, "specific heat", m.SpecificHeat)
	value(w, "expansion along the grain or web", m.ExpansionMD)
	value(w, "expansion across it", m.ExpansionCD)
	value(w, "stiffness along", m.ModulusMD)
	value(w, "stiffness across", m.ModulusCD)
	value(w, "swelling along, per unit of moisture", m.SwellingMD)
	value(w, "swelling across, per unit of moisture", m.SwellingCD)
	if len(w.Facts) > 0 {
		sheets = append(sheets, w)
	}
	return sheets
}
