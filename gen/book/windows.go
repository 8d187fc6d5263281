package book

import (
	"cmp"
	"fmt"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// windowKey finds a window of the table: its speed is counted among the
// machine's listed ones.
type windowKey struct {
	film, medium, laminator string
	speed                   int
	room                    string
}

// windows is the whole table of windows with a way to find one.
type windows struct {
	all   []tables.WindowValue
	find  map[windowKey]int
	pairs []hotPair // each once, in the order of the data
}

func newWindows(all []tables.WindowValue, s *shop.Shop) *windows {
	w := &windows{all: all, find: make(map[windowKey]int, len(all))}
	for i, v := range all {
		p := hotPair{s.Film(v.Film), s.Medium(v.Medium), s.Laminator(v.Laminator)}
		if len(w.pairs) == 0 || w.pairs[len(w.pairs)-1] != p { // a pair's windows stand together
			w.pairs = append(w.pairs, p)
		}
		speed := slices.Index(tables.Speeds(p.machine), v.Speed)
		w.find[windowKey{v.Film, v.Medium, v.Laminator, speed, v.Room}] = i
	}
	return w
}

// get finds a window; false where the machine does not take the pair.
func (w *windows) get(k windowKey) (tables.WindowValue, bool) {
	i, ok := w.find[k]
	if !ok {
		return tables.WindowValue{}, false
	}
	return w.all[i], true
}

// usualSpeed is the place of a machine's usual speed among its listed ones.
func usualSpeed(m *shop.Laminator) int {
	return slices.Index(tables.Speeds(m), m.Usual.Best)
}

// path is where the pair's windows stand, with their working.
func (k windowKey) path() string {
	return "tables/windows/" + k.film + "." + k.medium + "." + k.laminator + ".html"
}

// windowHref is where a window stands.
func windowHref(k windowKey) string { return "/" + k.path() + "#" + windowID(k) }

// windowID is the id of a window on its pair's page.
func windowID(k windowKey) string { return fmt.Sprintf("%d.%s", k.speed, k.room) }

// pace writes a speed in both systems.
func pace(v quantity.Speed) string { return quantity.Both(v) }

// hotPair is a film on a medium in a machine that takes both.
type hotPair struct {
	film    *shop.Film
	medium  *shop.Medium
	machine *shop.Laminator
}

// key is the pair's window at a speed in a room.
func (p hotPair) key(speed int, room string) windowKey {
	return windowKey{p.film.ID, p.medium.ID, p.machine.ID, speed, room}
}

// here is the key of the pair at its machine's usual speed in the shop's room.
func (b *builder) here(p hotPair) windowKey {
	return p.key(usualSpeed(p.machine), b.shop.Front.Room.ID)
}

// hotPairs are the pairs of a film, a medium or a machine, nil standing for
// any, in the order of the data.
func (b *builder) hotPairs(film *shop.Film, medium *shop.Medium, machine *shop.Laminator) []hotPair {
	var list []hotPair
	for _, p := range b.windows.pairs {
		if (film == nil || p.film == film) && (medium == nil || p.medium == medium) && (machine == nil || p.machine == machine) {
			list = append(list, p)
		}
	}
	return list
}

// ordinary is the medium that stands for all others where one is enough: the
// one that the film's maker names, or the first paper that has a window, or
// the first that the machine takes.
func (b *builder) ordinary(film *shop.Film, machine *shop.Laminator) (hotPair, bool) {
	pairs := b.hotPairs(film, nil, machine)
	if len(pairs) == 0 {
		return hotPair{}, false
	}
	best := slices.MinFunc(pairs, func(x, y hotPair) int { return cmp.Compare(b.strangeness(x), b.strangeness(y)) })
	return best, true
}

// strangeness is 0 for the pair that a film's maker speaks of, and more for
// one that is further from it.
func (b *builder) strangeness(p hotPair) int {
	v, _ := b.windows.get(b.here(p))
	n := 4
	if r := p.film.Rollers; r != nil && r.Medium.ID == p.medium.ID {
		n = 0
	} else if p.medium.Class == "paper" {
		n = 2
	}
	if !v.Open() {
		n += 3
	}
	return n
}

// makersMachine is the machine of the class that the film's maker speaks of,
// or the first that runs it.
func (b *builder) makersMachine(f *shop.Film) *shop.Laminator {
	var first *shop.Laminator
	for _, r := range f.RunsOn {
		m := b.shop.Laminator(r.ID)
		if m == nil || len(b.hotPairs(f, nil, m)) == 0 {
			continue
		}
		if f.Rollers != nil && m.Class == f.Rollers.Machine {
			return m
		}
		if first == nil {
			first = m
		}
	}
	return first
}

// why shortens the reason of a missing window to a line of a table: what is
// needed and what is allowed, of the case in which they miss each other more.
func why(v tables.WindowValue) string {
	first, steady := v.Spans()
	span := first
	limit, over := v.HighLimits()
	if steady.Low-steady.High > first.Low-first.High {
		span, limit = steady, over
	}
	return fmt.Sprintf("no window: needs %s, %s allows %s", inBoth(span.Low), limitNames[limit], inBoth(span.High))
}

// limitNames are short names of what bounds a window from above.
var limitNames = map[string]string{
	"film":      "the film",
	"medium":    "the medium",
	"gas":       "swelling air and steam",
	"laminator": "the machine",
}

// inBoth writes whole degrees Celsius in both scales.
func inBoth(celsius float64) string {
	return fmt.Sprintf("%.0f\u00a0°C (%.0f\u00a0°F)", celsius, fahrenheit(celsius))
}

func fahrenheit(celsius float64) float64 { return celsius*1.8 + 32 }

// rangeText writes a range without its unit: 99–116.
func rangeText(low, high float64) string { return fmt.Sprintf("%.0f–%.0f", low, high) }
