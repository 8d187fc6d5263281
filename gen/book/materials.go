package book

import (
	"fmt"
	"html/template"

	"laydown/gen/shop"
)

// materialPage is the data of a material's page.
type materialPage struct {
	Kind    string // what it is: ink, medium …
	Head    shop.Head
	Big     []bigNumber // the answers that are asked for most
	Words   []string    // plain sentences under the head
	Drawing template.HTML
	Grids   []grid
	Lists   []list
	Sheets  []*sheet
	// Cautions are the ids of those that the material itself calls for.
	Cautions []string
}

// bigNumber is an answer that stands large: its name, number, unit and what
// stands under it.
type bigNumber struct {
	Name, Number, Unit, Under string
	Href                      string
	Verdict                   string
}

// list is a list of links or sentences under a heading.
type list struct {
	Name    string
	Lead    string
	Verdict string // its mark stands before the name
	Columns bool   // side by side, where there is room
	Items   []item
}

type item struct {
	Text, Href, Verdict, Under string
}

// materialPages adds a page for each ink, medium, film, laminator and room,
// and the page that lists them.
func (b *builder) materialPages() {
	s := b.shop
	var index []list
	group := func(name, lead, folder, kind string, heads []shop.Head, data func(i int) materialPage) {
		l := list{Name: name, Lead: lead, Columns: true}
		for i, h := range heads {
			path := "materials/" + folder + "/" + h.ID + ".html"
			d := data(i)
			d.Kind, d.Head = kind, h
			b.add(page{Path: path, Kind: "material", Title: upperFirst(h.Name), Lead: h.Notes, Tab: "Materials", Data: d, Found: kind, Also: h.Also, Weight: 1.5, Cautions: d.Cautions})
			under := ""
			if len(d.Big) > 0 && d.Big[0].Number != "" {
				under = d.Big[0].Name + ": " + d.Big[0].Number + "\u00a0" + d.Big[0].Unit
			}
			l.Items = append(l.Items, item{Text: upperFirst(h.Name), Href: "/" + path, Under: under})
		}
		index = append(index, l)
	}
	group("Inks", "What a print was made with.", "inks", "ink", headsOf(s.Inks, func(r *shop.Ink) shop.Head { return r.Head }),
		func(i int) materialPage { return b.inkPage(s.Inks[i]) })
	group("Media", "What it was printed on.", "media", "medium", headsOf(s.Media, func(r *shop.Medium) shop.Head { return r.Head }),
		func(i int) materialPage { return b.mediumPage(s.Media[i]) })
	group("Films", "What goes over it.", "films", "film", headsOf(s.Films, func(r *shop.Film) shop.Head { return r.Head }),
		func(i int) materialPage { return b.filmPage(s.Films[i]) })
	group("Laminators", "What puts it on.", "laminators", "laminator", headsOf(s.Laminators, func(r *shop.Laminator) shop.Head { return r.Head }),
		func(i int) materialPage { return b.laminatorPage(s.Laminators[i]) })
	group("Rooms", "Where it waits.", "rooms", "room", headsOf(s.Rooms, func(r *shop.Room) shop.Head { return r.Head }),
		func(i int) materialPage { return b.roomPage(s.Rooms[i]) })
	b.add(page{Path: "materials/index.html", Kind: "lists", Title: "Materials", Lead: "Everything the shop prints, prints on, laminates with and waits in.", Tab: "Materials",
		Data: index, Found: "list"})
}

func headsOf[T any](records []T, head func(T) shop.Head) []shop.Head {
	heads := make([]shop.Head, len(records))
	for i, r := range records {
		heads[i] = head(r)
	}
	return heads
}

// plural counts: "1 film", "3 films".
func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
