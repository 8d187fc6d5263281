package book

import (
	"fmt"
	"html/template"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// askedHeat is what a computed block about heat names.
type askedHeat struct {
	film    *shop.Film
	media   []*shop.Medium // empty where the block names none
	machine *shop.Laminator
	word    string         // slowest, usual or fastest; empty where a speed is given, or nothing
	speed   quantity.Speed // the one asked for, the machine's usual where none is
	sets    []quantity.Temperature
}

// speedWords are the speeds of a machine that the tables hold.
var speedWords = map[string]func(*shop.Laminator) quantity.Speed{
	"slowest": func(m *shop.Laminator) quantity.Speed { return m.Slowest.Best },
	"usual":   func(m *shop.Laminator) quantity.Speed { return m.Usual.Best },
	"fastest": func(m *shop.Laminator) quantity.Speed { return m.Fastest.Best },
}

// readHeat finds the film, media, machine, speed and settings of a block.
func (b *builder) readHeat(a *asked) {
	id := a.Keys["film"]
	film := b.shop.Film(id)
	switch {
	case film == nil:
		b.unknown(a.where("film"), "films", "film", id)
	case film.Class == "cold":
		b.problems.add(a.where("film"), fmt.Sprintf("%s is laid without heat", id))
	}
	a.heat.film = film
	if text, ok := a.Keys["medium"]; ok {
		list := words(text)
		if kind := a.Keys["show"]; len(list) > 1 && kind != "windows" && kind != "humidity" {
			b.problems.add(a.where("medium"), fmt.Sprintf("a computed block that shows %s takes one medium", kind))
		}
		for _, id := range list {
			m := b.shop.Medium(id)
			if m == nil {
				b.unknown(a.where("medium"), "media", "medium", id)
			}
			a.heat.media = append(a.heat.media, m)
		}
	}
	if id, ok := a.Keys["machine"]; ok {
		if a.heat.machine = b.shop.Laminator(id); a.heat.machine == nil {
			b.unknown(a.where("machine"), "laminators", "laminator", id)
		}
	}
	b.readSpeed(a)
	if text, ok := a.Keys["set"]; ok {
		for _, word := range words(text) {
			t, err := quantity.Parse[quantity.Temperature](word)
			if err != nil {
				b.problems.add(a.where("set"), "set: "+err.Error())
				continue
			}
			a.heat.sets = append(a.heat.sets, t)
		}
		if len(a.heat.sets) > 1 && a.Keys["show"] != "humidity" {
			b.problems.add(a.where("set"), fmt.Sprintf("a computed block that shows %s takes one set temperature", a.Keys["show"]))
		}
	}
	b.checkPairs(a)
}

// readSpeed reads slowest, usual, fastest, or a speed that the machine runs at.
func (b *builder) readSpeed(a *asked) {
	machine := a.heat.machine
	if machine != nil {
		a.heat.speed = machine.Usual.Best
	}
	text, ok := a.Keys["speed"]
	if !ok {
		return
	}
	if named, ok := speedWords[text]; ok {
		a.heat.word = text
		if machine != nil {
			a.heat.speed = named(machine)
		}
		return
	}
	v, err := quantity.Parse[quantity.Speed](text)
	switch {
	case err != nil:
		b.problems.add(a.where("speed"), "speed: slowest, usual, fastest or a speed: "+err.Error())
	case machine == nil:
		b.problems.add(a.where("speed"), "speed: without a machine: it is slowest, usual or fastest")
	case v < machine.Slowest.Best || v > machine.Fastest.Best:
		b.problems.add(a.where("speed"), fmt.Sprintf("speed: %s runs from %s to %s", machine.ID, quantity.Metric(machine.Slowest.Best), quantity.Metric(machine.Fastest.Best)))
	}
	a.heat.speed = v
}

// checkPairs reports a medium that the machine does not take with the film.
func (b *builder) checkPairs(a *asked) {
	h := a.heat
	if h.film == nil || a.Keys["machine"] != "" && h.machine == nil {
		return
	}
	if len(h.media) == 0 && len(b.hotPairs(h.film, nil, h.machine)) == 0 && h.machine != nil {
		b.problems.add(a.where("machine"), fmt.Sprintf("%s does not run in %s", h.film.ID, h.machine.ID))
	}
	for _, m := range h.media {
		if m != nil && len(b.hotPairs(h.film, m, h.machine)) == 0 {
			in := "any machine"
			if h.machine != nil {
				in = h.machine.ID
			}
			b.problems.add(a.where("medium"), fmt.Sprintf("%s is not laid on %s in %s", h.film.ID, m.ID, in))
		}
	}
}

// pairs are the pairs that a block asks for.
func (b *builder) askedPairs(h askedHeat) []hotPair {
	all := b.hotPairs(h.film, nil, h.machine)
	if len(h.media) == 0 {
		return all
	}
	var list []hotPair
	for _, m := range h.media {
		for _, p := range all {
			if p.medium == m {
				list = append(list, p)
			}
		}
	}
	return list
}

// computedWindows is a film's windows, media down. Across are the machines, or a
// machine's speeds, or, where a machine and a speed are given, the rooms.
func (b *builder) computedWindows(a asked) template.HTML {
	h := a.heat
	room := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: a.ID, Caption: a.title(upperFirst(h.film.Name) + ": set temperature, °C with °F under it"), Corner: lowerFirst(room.Name) + ", " + climate(room), Wide: true}
	pairs := b.askedPairs(h)
	machines, media := b.sides(pairs)
	row := func(m *shop.Medium, list []linked) {
		g.Rows = append(g.Rows, windowRow(m.Name, "", "/materials/media/"+m.ID+".html", list))
	}
	switch {
	case h.machine == nil:
		word := h.word
		if word == "" {
			word = "usual"
		}
		g.Corner = word + " speed; " + g.Corner
		for _, m := range machines {
			g.Heads = append(g.Heads, gridHead{Top: short(upperFirst(m.Name)), Under: pace(speedWords[word](m))})
		}
		for _, m := range media {
			var list []linked
			for _, machine := range machines {
				list = append(list, b.windowNow(hotPair{h.film, m, machine}, speedWords[word](machine), room))
			}
			row(m, list)
		}
	case a.Keys["speed"] == "":
		g.Heads = speedHeads(h.machine)
		g.Corner = lowerFirst(short(h.machine.Name)) + "; " + g.Corner
		for _, m := range media {
			var list []linked
			for _, v := range tables.Speeds(h.machine) {
				list = append(list, b.windowNow(hotPair{h.film, m, h.machine}, v, room))
			}
			row(m, list)
		}
	default:
		g.Corner = lowerFirst(short(h.machine.Name)) + ", " + pace(h.speed)
		for _, r := range b.shop.Rooms {
			g.Heads = append(g.Heads, roomHead(r))
		}
		for _, m := range media {
			var list []linked
			for _, r := range b.shop.Rooms {
				list = append(list, b.windowNow(hotPair{h.film, m, h.machine}, h.speed, r))
			}
			row(m, list)
		}
	}
	return b.part("grid", g.withWindowSigns())
}

// windowNow is a window of the table, or, at a speed that the table lacks, one
// computed now.
func (b *builder) windowNow(p hotPair, speed quantity.Speed, room *shop.Room) linked {
	if len(b.hotPairs(p.film, p.medium, p.machine)) == 0 {
		return linked{}
	}
	if i := slices.Index(tables.Speeds(p.machine), speed); i >= 0 {
		return b.ofTable([]windowKey{p.key(i, room.ID)})[0]
	}
	v, err := b.answers.WindowAt(tables.WindowCase{Film: p.film.ID, Medium: p.medium.ID, Laminator: p.machine.ID, Speed: speed,
		Temperature: room.Temperature.Best, Humidity: room.Humidity.Best})
	if err != nil {
		b.fault("tables/windows.html", err)
	}
	return linked{v, windowHref(b.here(p)), err == nil}
}

// only is the pair of a block that draws one.
func (a asked) only() hotPair { return hotPair{a.heat.film, a.heat.media[0], a.heat.machine} }

func (b *builder) computedWindowSpeed(a asked) template.HTML {
	p := a.only()
	return b.drawn(a, func(id string) (template.HTML, error) {
		return b.drawWindowSpeed(id, a.title("Window against speed: "+p.name()), b.hotCase(p, a.heat.speed))
	})
}

func (b *builder) computedWindowHumidity(a asked) template.HTML {
	p := a.only()
	return b.drawn(a, func(id string) (template.HTML, error) {
		return b.drawWindowHumidity(id, a.title("Window against humidity: "+p.name()), b.hotCase(p, a.heat.speed))
	})
}

func (b *builder) computedBondLine(a asked) template.HTML {
	p := a.only()
	return b.drawn(a, func(id string) (template.HTML, error) {
		c := b.hotCase(p, a.heat.speed)
		set, err := b.setting(a, c)
		if err != nil {
			return "", err
		}
		return b.drawBondLine(id, a.title("The bond line through the machine: "+p.name()), c, set)
	})
}

func (b *builder) computedProfile(a asked) template.HTML {
	p := a.only()
	return b.drawn(a, func(id string) (template.HTML, error) {
		c := b.hotCase(p, a.heat.speed)
		set, err := b.setting(a, c)
		if err != nil {
			return "", err
		}
		return b.drawProfile(id, a.title("Through the stack at the end of the nip: "+p.name()), c, set)
	})
}

// drawn makes a block's drawing and reports what stands in its way.
func (b *builder) drawn(a asked, make func(id string) (template.HTML, error)) template.HTML {
	drawing, err := make(a.ID)
	if err != nil {
		b.problems.add(a.Pos, err.Error())
	}
	return drawing
}

// setting is the set temperature that a block asks for, or the middle of the
// window.
func (b *builder) setting(a asked, c tables.WindowCase) (quantity.Temperature, error) {
	if len(a.heat.sets) > 0 {
		return a.heat.sets[0], nil
	}
	v, err := b.answers.WindowAt(c)
	return v.Middle(), err
}

// computedHumidity is how damp the sheet may be, media down, settings across.
func (b *builder) computedHumidity(a asked) template.HTML {
	h := a.heat
	sets := h.sets
	if len(sets) == 0 {
		sets = setSteps()
	}
	var lists [][]tables.HumidityValue
	pairs := b.askedPairs(h)
	for _, p := range pairs {
		list, err := b.answers.HumiditiesAt(b.hotCase(p, h.machine.Usual.Best), sets)
		if err != nil {
			b.problems.add(a.Pos, err.Error())
			return ""
		}
		lists = append(lists, list)
	}
	if len(h.sets) == 0 {
		lists, sets = whereAnyRuns(lists, sets)
	}
	room := b.shop.Room(b.shop.Front.Room.ID)
	g := humidityGrid(a.title(upperFirst(h.film.Name)+", "+lowerFirst(short(h.machine.Name))+": "+dampCaption), pace(h.machine.Usual.Best)+", "+quantity.Both(room.Temperature.Best), sets)
	g.ID = a.ID
	for i, p := range pairs {
		g.Rows = append(g.Rows, b.humidityRow(p, "", lists[i]))
	}
	return b.part("grid", g)
}
