// Package shop is the finishing room's data: what the records are (model.go),
// how they are read from YAML, strictly, and what has to hold between them.
//
// Load reads two folders, the demo's and the shop's own, and lays the second
// over the first record by record. It reports everything that is wrong in one
// go, each problem with its file, line and column, in words for the person
// who keeps the data. No physics is computed here.
package shop

import (
	"fmt"
	"io/fs"
	"path"
	"reflect"
	"strings"
	"unicode"

	"gopkg.in/yaml.v3"
)

// What stands before a file's name in problems and places: the shop's own
// files are in its folder data, the demo's are inside the program.
const (
	OwnPrefix  = "data/"
	DemoPrefix = "demo/"
)

// Load reads a shop's data. Demo is the folder of data that came with the
// program and own is the shop's folder data; either may be nil. A record of own
// replaces the one of demo with the same id, whole; other records are added
// after the demo's; "replaces: all" beside a list drops the demo's records of
// that kind. With any problem the shop is nil.
func Load(demo, own fs.FS) (*Shop, Problems) {
	l := &loader{
		layouts:     map[reflect.Type]*layout{},
		keys:        map[keyAt]Pos{},
		unread:      map[string]bool{},
		suggestions: mostSuggestions,
	}
	under := l.side(demo, DemoPrefix, true)
	over := l.side(own, OwnPrefix, false)
	shelves := l.overlay(under, over)
	shop := l.assemble(shelves)
	l.checkRefs(shelves)
	l.checkMeaning(shop)
	if len(l.problems) > 0 {
		return nil, l.problems.sort()
	}
	return shop, nil
}

// loader is one run of Load.
type loader struct {
	problems    Problems
	layouts     map[reflect.Type]*layout
	keys        map[keyAt]Pos
	unread      map[string]bool // kinds of which some file could not be read: nothing is missed there
	replaced    []string        // kinds of which the shop's data drops the demo's records
	suggestions int
}

// keyAt is a key of a record, or of a group of keys inside one.
type keyAt struct {
	owner any // pointer to the struct
	key   string
}

// sayAt reports a problem.
func (l *loader) sayAt(pos Pos, format string, args ...any) {
	message := strings.Map(func(c rune) rune {
		if unicode.IsControl(c) {
			return ' '
		}
		return c
	}, fmt.Sprintf(format, args...))
	l.problems = append(l.problems, Problem{Pos: pos, Message: message})
}

// mostSuggestions is for how many problems Load looks for what was meant: a
// file made of wrong words alone must not take long to refuse.
const mostSuggestions = 200

// suggest is nearest, within that bound.
func (l *loader) suggest(word string, candidates []string) string {
	if l.suggestions == 0 {
		return ""
	}
	l.suggestions--
	return nearest(word, candidates)
}

// side is one of the two folders, and what was read from it.
type side struct {
	files    fs.FS
	prefix   string
	demo     bool
	shelves  map[string]*shelf
	replaces map[string]bool // kinds with "replaces: all"
}

// at is the beginning of a file.
func (s *side) at(name string) Pos { return Pos{File: s.prefix + name, Line: 1, Col: 1} }

// shelf holds the records of a kind in order.
type shelf struct {
	entries []*entry
	byID    map[string]*entry
}

// entry is one record: a pointer to a struct of the model.
type entry struct {
	id     string
	pos    Pos
	record any
	refs   []use
	demo   bool
}

// side reads a folder.
func (l *loader) side(files fs.FS, prefix string, demo bool) *side {
	s := &side{files: files, prefix: prefix, demo: demo, shelves: map[string]*shelf{}, replaces: map[string]bool{}}
	for _, k := range kinds {
		s.shelves[k.key] = &shelf{byID: map[string]*entry{}}
	}
	if files == nil {
		return s
	}
	for _, name := range l.dataFiles(s) {
		text, ok := l.text(s, name)
		if !ok {
			continue
		}
		if top := l.tree(s, name, text); top != nil {
			l.file(s, name, top)
		}
	}
	return s
}

// markUnread notes which kinds a file that could not be read may have held: by
// its name or its folder's, or any.
func (l *loader) markUnread(s *side, name string) {
	base := strings.TrimSuffix(path.Base(name), path.Ext(name))
	for _, key := range []string{base, path.Dir(name)} {
		if _, ok := kindOf(key); ok {
			l.unread[key] = true
			return
		}
	}
	for _, k := range kinds {
		l.unread[k.key] = true
	}
}

// file reads the kinds that a data file holds.
func (l *loader) file(s *side, name string, top *yaml.Node) {
	r := &reader{l: l, file: s.prefix + name}
	if top.Kind != yaml.MappingNode {
		r.say(top, "this file is %s: begin it with a key such as films: and put the records under it", shape(top))
		l.markUnread(s, name)
		return
	}
	if path.Base(name) == "shop.yaml" && r.frontLaidBare(top) {
		r.say(top, "the shop's own keys stand under a key: write shop: above this line, and indent this and the other lines by two spaces")
		l.markUnread(s, name)
		return
	}
	var lists []string
	var replaces *yaml.Node
	r.pairs(top, "this file", func(key, value *yaml.Node) {
		if key.Value == "replaces" {
			replaces = value
			return
		}
		k, ok := kindOf(key.Value)
		if !ok {
			if near := l.suggest(key.Value, kindKeys()); near != "" {
				r.say(key, "unknown key %s in this file%s", quote(key.Value), maybe(near))
			} else {
				r.say(key, "unknown key %s in this file: known are %s, and replaces", quote(key.Value), list(kindKeys()))
			}
			l.markUnread(s, name)
			return
		}
		if k.single {
			r.single(s, k, key, value)
			return
		}
		lists = append(lists, k.key)
		r.records(s, k, value)
	})
	switch {
	case replaces == nil:
	case replaces.Value != "all":
		r.say(replaces, "replaces is %s: write replaces: all, or leave the line out", shape(replaces))
	case len(lists) == 0:
		r.say(replaces, "replaces: all stands beside no list: put it beside films: or another list of records")
	default:
		for _, key := range lists {
			s.replaces[key] = true
		}
	}
}

// frontLaidBare says whether a file begins with a key of the shop's own record
// and has no key shop: above it.
func (r *reader) frontLaidBare(top *yaml.Node) bool {
	for i := 0; i < len(top.Content); i += 2 {
		if top.Content[i].Value == "shop" {
			return false
		}
	}
	if len(top.Content) == 0 {
		return false
	}
	_, ok := r.l.layout(reflect.TypeFor[Shopfront]()).find(top.Content[0].Value)
	return ok
}

// records reads a list of records.
func (r *reader) records(s *side, k kind, n *yaml.Node) {
	if isNull(n) {
		r.empty(n, k.key, "a list of records, each beginning with - "+r.first(k)+":", false)
		return
	}
	if n.Kind != yaml.SequenceNode {
		r.say(n, "%s is %s: write a list of records, each beginning with - %s:", k.key, shape(n), r.first(k))
		r.l.unread[k.key] = true
		return
	}
	for _, item := range n.Content {
		if item.Kind != yaml.MappingNode {
			r.say(item, "a record of %s begins with - %s: and not with %s", k.key, r.first(k), shape(item))
			continue
		}
		id := idIn(item)
		if k.log {
			id = r.place(item).String() // its own, since no two stand at one place
		}
		r.record(s, k, item, id)
	}
}

// first is the key that a record of a kind begins with.
func (r *reader) first(k kind) string { return r.l.layout(k.record).fields[0].key }

// single reads the one record of a kind that has only one.
func (r *reader) single(s *side, k kind, key, n *yaml.Node) {
	if n.Kind != yaml.MappingNode {
		r.say(n, "%s is %s: write its keys on lines of their own below it", k.key, shape(n))
		r.l.unread[k.key] = true
		return
	}
	if first := s.shelves[k.key].byID[""]; first != nil {
		r.say(key, "a second %s: the first is at %s; keep one of them", k.key, first.pos)
		return
	}
	r.record(s, k, n, "")
}

// record reads one record and shelves it.
func (r *reader) record(s *side, k kind, n *yaml.Node, id string) {
	name := naming{any: a(k.one), this: "this " + k.one}
	if id != "" && !k.log {
		name.this = k.one + " " + quote(id)
	}
	one := &reader{l: r.l, file: r.file}
	v := reflect.New(k.record)
	one.fill(n, v.Elem(), name)
	if s.demo {
		if d := v.Elem().FieldByName("Demo"); d.IsValid() {
			d.SetBool(true)
		}
	}
	e := &entry{id: id, pos: r.place(n), record: v.Interface(), refs: one.refs, demo: s.demo}
	sh := s.shelves[k.key]
	if id == "" && !k.single {
		r.l.unread[k.key] = true // it is there, but nobody can tell which it is
		return
	}
	if first := sh.byID[id]; first != nil {
		r.say(n, "a second %s with the id %s: the first is at %s; give one of them another id", k.one, quote(id), first.pos)
		return
	}
	sh.byID[id] = e
	sh.entries = append(sh.entries, e)
}

// idIn finds the id of a record before the record is read, for messages.
func idIn(n *yaml.Node) string {
	for i := 0; i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == "id" && n.Content[i+1].Kind == yaml.ScalarNode && !isNull(n.Content[i+1]) {
			return strings.TrimSpace(n.Content[i+1].Value)
		}
	}
	return ""
}
