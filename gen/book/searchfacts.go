package book

import (
	"fmt"
	"strings"

	"laydown/gen/book/search"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// factsMaker collects what the search answers at once, and the things that
// the answers are about.
type factsMaker struct {
	*builder
	things []search.Thing
	facts  []search.Fact
	at     map[string]int // the things, by kind and id
}

// facts are the waits of each ink on each medium and the window of each hot
// film on each medium, in the shop's usual room, with what stands for an ink
// or a film where no medium is named.
func (b *builder) facts() ([]search.Thing, []search.Fact) {
	f := &factsMaker{builder: b, at: map[string]int{}}
	for _, r := range b.shop.Inks {
		f.thing("ink", r.Head, upperFirst(r.Name))
	}
	for _, r := range b.shop.Media {
		f.thing("medium", r.Head, lowerFirst(r.Name))
	}
	for _, r := range b.shop.Films {
		f.thing("film", r.Head, upperFirst(r.Name))
	}
	for _, ink := range b.shop.Inks {
		for i, m := range b.mediaOf(ink) {
			f.wait(ink, m, i == 0)
		}
	}
	for _, film := range b.shop.Films {
		f.film(film)
		machine := b.makersMachine(film)
		seen := map[*shop.Medium]bool{}
		for _, p := range b.hotPairs(film, nil, machine) {
			f.window(p)
			seen[p.medium] = true
		}
		for _, p := range b.hotPairs(film, nil, nil) {
			if !seen[p.medium] {
				f.window(p)
				seen[p.medium] = true
			}
		}
	}
	return f.things, f.facts
}

func (f *factsMaker) thing(kind string, h shop.Head, name string) {
	f.at[kind+" "+h.ID] = len(f.things)
	f.things = append(f.things, search.Thing{Kind: kind, Name: name, Names: append([]string{short(h.Name)}, h.Also...)})
}

// wait adds the wait of an ink on a medium; on the medium that its maker speaks
// of it stands for the ink.
func (f *factsMaker) wait(ink *shop.Ink, m *shop.Medium, first bool) {
	c := f.usual(ink, m)
	v, ok := f.waits.get(c)
	if !ok {
		return
	}
	storage, room := f.shop.Storage(c.Storage), f.shop.Room(c.Room)
	under := c.Coverage + " coverage, " + lowerFirst(short(storage.Name)) + ", " + lowerFirst(room.Name)
	for _, coverage := range tables.Coverages {
		other := c
		other.Coverage = coverage
		if o, ok := f.waits.get(other); ok && coverage != c.Coverage && o.Dries {
			under += "; " + coverage + " " + hoursText(o) + " h"
		}
	}
	box := search.Box{Number: "hardly dries", Under: under, URL: strings.TrimPrefix(workingHref(c), "/")}
	if v.Dries {
		box.Number, box.Unit = hoursText(v), "h"
	}
	f.facts = append(f.facts, search.Fact{Ask: "wait", About: []int{f.at["ink "+ink.ID], f.at["medium "+m.ID]}, Box: box})
	if first {
		box.What = upperFirst(ink.Name) + " on " + lowerFirst(m.Name)
		box.URL = "materials/inks/" + ink.ID + ".html"
		f.facts = append(f.facts, search.Fact{Ask: "wait", About: []int{f.at["ink "+ink.ID]}, Box: box})
	}
}

// film adds what a film's maker says of the rollers.
func (f *factsMaker) film(film *shop.Film) {
	for _, n := range filmHeat(film) {
		box := search.Box{What: upperFirst(film.Name), Number: n.Number, Unit: n.Unit, Under: lowerFirst(n.Name) + ": " + n.Under, URL: "materials/films/" + film.ID + ".html"}
		f.facts = append(f.facts, search.Fact{Ask: "window", About: []int{f.at["film "+film.ID]}, Box: box})
	}
}

// window adds the window of a hot film on a medium at its machine's usual speed.
func (f *factsMaker) window(p hotPair) {
	k := f.here(p)
	v, ok := f.windows.get(k)
	if !ok {
		return
	}
	on := "on the " + lowerFirst(short(p.machine.Name)) + " at " + pace(v.Speed)
	box := search.Box{Number: "no window", Under: strings.TrimPrefix(why(v), "no window: ") + ", " + on, URL: strings.TrimPrefix(windowHref(k), "/")}
	if v.Open() {
		box.Number, box.Unit, box.Under = windowText(v)
		box.Under += " " + on
	}
	f.facts = append(f.facts, search.Fact{Ask: "window", About: []int{f.at["film "+p.film.ID], f.at["medium "+p.medium.ID]}, Box: box})
}

// windowText writes an open window: in one range, or for the first piece with
// what the steady run wants under it.
func windowText(v tables.WindowValue) (number, unit, under string) {
	first, steady := v.Spans()
	if v.Whole.Open() {
		both := tables.Span{Low: max(first.Low, steady.Low), High: min(first.High, steady.High)}
		celsius, other := inUnits(both)
		return celsius, "°C", other + " °F"
	}
	celsius, other := inUnits(first)
	then, thenOther := inUnits(steady)
	return celsius, "°C", fmt.Sprintf("%s °F for the first piece; then %s °C (%s °F)", other, then, thenOther)
}
