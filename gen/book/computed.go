package book

import (
	"fmt"
	"html/template"
	"maps"
	"slices"
	"strings"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// computedKind is a kind of computed block: the keys that it takes beside show,
// those that must be there with a ! before them, and what it makes.
type computedKind struct {
	takes []string
	make  func(*builder, asked) template.HTML
}

var computedKinds = map[string]computedKind{
	"waits":       {[]string{"!ink", "!medium", "coverage", "storage", "title"}, (*builder).computedWaits},
	"residue":     {[]string{"!ink", "!medium", "coverage", "storage", "room", "title"}, (*builder).computedResidue},
	"storages":    {[]string{"!ink", "!medium", "coverage", "room", "title"}, (*builder).computedStorages},
	"coverages":   {[]string{"!ink", "!medium", "storage", "title"}, (*builder).computedCoverages},
	"history":     {[]string{"!ink", "!medium", "coverage", "storage", "room", "!history", "title"}, (*builder).computedHistory},
	"after":       {[]string{"!ink", "!medium", "!film", "back", "spent", "title"}, (*builder).computedAfter},
	"claims":      {nil, (*builder).computedClaims},
	"demo-prints": {nil, (*builder).computedDemoPrints},
	"warnings":    {nil, (*builder).computedWarnings},

	"windows":            {[]string{"!film", "medium", "machine", "speed", "title"}, (*builder).computedWindows},
	"window-speed":       {[]string{"!film", "!medium", "!machine", "title"}, (*builder).computedWindowSpeed},
	"window-humidity":    {[]string{"!film", "!medium", "!machine", "speed", "title"}, (*builder).computedWindowHumidity},
	"bond-line":          {[]string{"!film", "!medium", "!machine", "speed", "set", "title"}, (*builder).computedBondLine},
	"stack-profile":      {[]string{"!film", "!medium", "!machine", "speed", "set", "title"}, (*builder).computedProfile},
	"humidity":           {[]string{"!film", "!machine", "medium", "set", "title"}, (*builder).computedHumidity},
	"window-predictions": {nil, (*builder).computedWindowPrints},

	"grain-feed":  {nil, (*builder).computedGrainFeed},
	"grain-tests": {nil, (*builder).computedGrainTests},
	"curl-axes":   {nil, (*builder).computedCurlAxes},
	"nip-wrap":    {[]string{"!machine", "title"}, (*builder).computedNipWrap},
	"roll":        {[]string{"film", "title"}, (*builder).computedRoll},
	"wet-out":     {[]string{"!ink", "!medium", "!film", "!machine", "title"}, (*builder).computedWetOut},

	"stack-border": {[]string{"!medium", "from-room", "!to-room"}, (*builder).computedStackBorder},
	"acclimatise":  {[]string{"medium", "parcel", "title"}, (*builder).computedAcclimatise},
	"driven-ahead": {[]string{"!medium", "from-room"}, (*builder).computedDriven},
}

// asked is a computed block with its records found.
type asked struct {
	computedBlock
	ink       *shop.Ink
	medium    *shop.Medium
	films     []*shop.Film
	storages  []string
	coverages []string
	room      *shop.Room
	heat      askedHeat
}

// compute makes what a computed block asks for.
func (b *builder) compute(block computedBlock) template.HTML {
	show := block.Keys["show"]
	kind, ok := computedKinds[show]
	if !ok {
		b.problems.add(block.where("show"), fmt.Sprintf("show: %q is none of %s", show, strings.Join(slices.Sorted(maps.Keys(computedKinds)), ", ")))
		return ""
	}
	before := len(b.problems.list)
	a := b.read(block, kind.takes)
	if len(b.problems.list) > before {
		return ""
	}
	return kind.make(b, a)
}

// where is the place of a key, or of the block where the key is not there.
func (c computedBlock) where(key string) shop.Pos {
	if p, ok := c.At[key]; ok {
		return p
	}
	return c.Pos
}

// read finds the records that a block names and reports what is wrong.
func (b *builder) read(block computedBlock, takes []string) asked {
	a := asked{computedBlock: block}
	for _, key := range takes {
		if name, must := strings.CutPrefix(key, "!"); must && block.Keys[name] == "" {
			b.problems.add(block.Pos, fmt.Sprintf("this computed block needs %s:", name))
		}
	}
	names := make([]string, 0, len(block.Keys))
	for key := range block.Keys {
		names = append(names, key)
	}
	slices.Sort(names)
	for _, key := range names {
		if key != "show" && !slices.Contains(takes, key) && !slices.Contains(takes, "!"+key) {
			b.problems.add(block.where(key), fmt.Sprintf("%s: a computed block that shows %s does not take it", key, block.Keys["show"]))
		}
	}
	if id, ok := block.Keys["ink"]; ok {
		if a.ink = b.shop.Ink(id); a.ink == nil {
			b.unknown(block.where("ink"), "inks", "ink", id)
		}
	}
	// What names a film without an ink is about heat, and reads its media as a list.
	heat := slices.Contains(takes, "!film") && !slices.Contains(takes, "!ink")
	if id, ok := block.Keys["medium"]; ok && !heat {
		if a.medium = b.shop.Medium(id); a.medium == nil {
			b.unknown(block.where("medium"), "media", "medium", id)
		}
	}
	if a.ink != nil && a.medium != nil && !b.shop.PrintsOn(a.ink, a.medium) {
		b.problems.add(block.where("medium"), fmt.Sprintf("%s is not printed with %s", a.medium.ID, a.ink.ID))
	}
	if text, ok := block.Keys["film"]; ok && !heat {
		for _, id := range words(text) {
			f := b.shop.Film(id)
			if f == nil {
				b.unknown(block.where("film"), "films", "film", id)
			}
			a.films = append(a.films, f)
		}
	}
	a.room = b.shop.Room(b.shop.Front.Room.ID)
	if id, ok := block.Keys["room"]; ok {
		if a.room = b.shop.Room(id); a.room == nil {
			b.unknown(block.where("room"), "rooms", "room", id)
		}
	}
	a.coverages = []string{"normal"}
	if text, ok := block.Keys["coverage"]; ok {
		a.coverages = words(text)
		for _, c := range a.coverages {
			if !slices.Contains(tables.Coverages, c) {
				b.problems.add(block.where("coverage"), fmt.Sprintf("coverage: %q is none of light, normal, heavy", c))
			}
		}
	}
	if heat && block.Keys["film"] != "" {
		b.readHeat(&a)
	} else if a.medium != nil {
		a.storages = b.readStorages(block, a.medium)
	}
	return a
}

// readStorages reads a list of storages, the shop's usual where none is given.
func (b *builder) readStorages(block computedBlock, m *shop.Medium) []string {
	text, ok := block.Keys["storage"]
	if !ok {
		return []string{b.usualStorage(m)}
	}
	list := words(text)
	for _, id := range list {
		s := b.shop.Storage(id)
		if s == nil {
			b.unknown(block.where("storage"), "storage", "storage", id)
		} else if !slices.Contains(b.answers.StoragesFor(m), s) {
			b.problems.add(block.where("storage"), fmt.Sprintf("storage: %s does not suit %s", id, m.ID))
		}
	}
	return list
}

// unknown reports an id that no record has, with the one that may be meant.
func (b *builder) unknown(pos shop.Pos, kind, what, id string) {
	message := fmt.Sprintf("no %s is called %q", what, id)
	if near := b.shop.Closest(kind, id); near != "" {
		message += fmt.Sprintf("; did you mean %q?", near)
	}
	b.problems.add(pos, message)
}

// words splits a list at its commas.
func words(text string) []string {
	var list []string
	for _, w := range strings.Split(text, ",") {
		list = append(list, strings.TrimSpace(w))
	}
	return list
}

func (a asked) wait(coverage, storage, room string) tables.WaitCase {
	return tables.WaitCase{Ink: a.ink.ID, Medium: a.medium.ID, Coverage: coverage, Storage: storage, Room: room}
}

// title is the block's own title, or the one given.
func (a asked) title(otherwise string) string {
	if t := a.Keys["title"]; t != "" {
		return t
	}
	return otherwise
}

// print names ink and medium as a sentence does.
func (a asked) print() string {
	return lowerFirst(a.ink.Name) + " on " + lowerFirst(a.medium.Name)
}
