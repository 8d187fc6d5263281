package book

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// The kinds of computed blocks and the keys that each takes beside show. The
// first of a key's letters says whether it must be there.
var computedKinds = map[string][]string{
	"waits":       {"!ink", "!medium", "coverage", "storage", "title"},
	"residue":     {"!ink", "!medium", "coverage", "storage", "room", "title"},
	"storages":    {"!ink", "!medium", "coverage", "room", "title"},
	"coverages":   {"!ink", "!medium", "storage", "title"},
	"history":     {"!ink", "!medium", "coverage", "storage", "room", "!history", "title"},
	"after":       {"!ink", "!medium", "!film", "back", "spent", "title"},
	"demo-prints": {},
	"warnings":    {},

	"window-predictions": {},
	"claims":             {},
	"stack-border":       {"!medium", "from-room", "!to-room"},
	"acclimatise":        {"medium", "parcel", "title"},
	"driven-ahead":       {"!medium", "from-room"},
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
}

// compute makes what a computed block asks for.
func (b *builder) compute(block computedBlock) template.HTML {
	show := block.Keys["show"]
	takes, ok := computedKinds[show]
	if !ok {
		b.problems.add(block.where("show"), fmt.Sprintf("show: %q is none of acclimatise, after, claims, coverages, demo-prints, driven-ahead, history, residue, stack-border, storages, waits, warnings, window-predictions", show))
		return ""
	}
	before := len(b.problems.list)
	a := b.read(block, takes)
	if len(b.problems.list) > before {
		return ""
	}
	switch show {
	case "waits":
		return b.computedWaits(a)
	case "storages":
		return b.computedStorages(a)
	case "coverages":
		return b.computedCoverages(a)
	case "residue":
		return b.computedResidue(a)
	case "history":
		return b.computedHistory(a)
	case "after":
		return b.computedAfter(a)
	case "demo-prints":
		return b.computedDemoPrints(a)
	case "window-predictions":
		return b.computedWindowPrints(a)
	case "claims":
		return b.computedClaims(a)
	case "stack-border":
		return b.computedStackBorder(a)
	case "acclimatise":
		return b.computedAcclimatise(a)
	case "driven-ahead":
		return b.computedDriven(a)
	}
	return b.computedWarnings()
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
	if id, ok := block.Keys["medium"]; ok {
		if a.medium = b.shop.Medium(id); a.medium == nil {
			b.unknown(block.where("medium"), "media", "medium", id)
		}
	}
	if a.ink != nil && a.medium != nil && !b.shop.PrintsOn(a.ink, a.medium) {
		b.problems.add(block.where("medium"), fmt.Sprintf("%s is not printed with %s", a.medium.ID, a.ink.ID))
	}
	if text, ok := block.Keys["film"]; ok {
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
	if a.medium != nil {
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
