package shop

import (
	"fmt"
	"reflect"
	"strings"

	"gopkg.in/yaml.v3"
)

// reader reads one record out of its nodes.
type reader struct {
	l    *loader
	file string
	refs []use
}

// use is one place that names another record.
type use struct {
	kind, id string
	pos      Pos
}

// naming is how messages speak of a record or of a group of keys in it.
type naming struct {
	any  string // "a film", "a film's roller_range"
	this string // `film "gloss-75"`, `the roller_range of film "gloss-75"`
}

// in names a group of keys inside a record.
func (n naming) in(key string) naming {
	return naming{any: n.any + "'s " + key, this: "the " + key + " of " + n.this}
}

// place is a node's place.
func (r *reader) place(n *yaml.Node) Pos {
	return Pos{File: r.file, Line: n.Line, Col: n.Column}
}

// say reports a problem at a node.
func (r *reader) say(n *yaml.Node, format string, args ...any) {
	r.l.sayAt(r.place(n), format, args...)
}

// pairs goes through the keys of a mapping, and reports those that are not
// plain words or stand there twice.
func (r *reader) pairs(n *yaml.Node, within string, each func(key, value *yaml.Node)) {
	seen := map[string]*yaml.Node{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		key := n.Content[i]
		if key.Kind != yaml.ScalarNode || isNull(key) {
			r.say(key, "a key in %s must be a plain word", within)
			continue
		}
		if first := seen[key.Value]; first != nil {
			r.say(key, "%s stands twice in %s: first on line %d; leave one of them out", quote(key.Value), within, first.Line)
			continue
		}
		seen[key.Value] = key
		each(key, n.Content[i+1])
	}
}

// fill reads a mapping into the struct v by the tags of the model.
func (r *reader) fill(n *yaml.Node, v reflect.Value, name naming) {
	lay := r.l.layout(v.Type())
	if pos := v.FieldByName("Pos"); pos.IsValid() {
		pos.Set(reflect.ValueOf(r.place(n)))
	}
	if n.Kind != yaml.MappingNode {
		r.say(n, "%s is %s: write its keys on lines of their own: %s", name.this, shape(n), list(lay.keys()))
		return
	}
	given := map[string]bool{}
	owner := v.Addr().Interface()
	r.pairs(n, name.this, func(key, value *yaml.Node) {
		f, ok := lay.find(key.Value)
		if !ok {
			near := r.l.suggest(key.Value, lay.keys())
			if near == "" {
				r.say(key, "unknown key %s in %s: known are %s", quote(key.Value), name.any, list(lay.keys()))
			} else {
				r.say(key, "unknown key %s in %s%s", quote(key.Value), name.any, maybe(near))
				given[near] = true // one slip of the pen, one problem
			}
			return
		}
		given[f.key] = true
		r.l.keys[keyAt{owner, f.key}] = r.place(key)
		r.field(value, v.FieldByIndex(f.index), f, name)
	})
	for _, f := range lay.fields {
		if f.required && !given[f.key] {
			r.say(n, "%s has no %s: write %s", name.this, f.key, r.l.wants(f, v.FieldByIndex(f.index).Type()))
		}
	}
}

// field reads what stands under one key.
func (r *reader) field(n *yaml.Node, v reflect.Value, f field, name naming) {
	if isNull(n) {
		r.empty(n, f.key, r.l.wants(f, v.Type()), f.required)
		if v.Kind() == reflect.Pointer {
			v.Set(reflect.New(v.Type().Elem())) // it is there, though empty: said once is enough
		}
		return
	}
	if m, ok := v.Addr().Interface().(measure); ok {
		r.value(n, m, f)
		return
	}
	switch to := v.Addr().Interface().(type) {
	case *Ref:
		*to = r.ref(n, f)
	case *[]Ref:
		r.items(n, f, v.Type(), func(item *yaml.Node) { *to = append(*to, r.ref(item, f)) })
	case *string:
		*to, _ = r.word(n, f)
	case *[]string:
		r.items(n, f, v.Type(), func(item *yaml.Node) {
			if word, ok := r.word(item, f); ok {
				*to = append(*to, word)
			}
		})
	case *bool:
		*to = r.yes(n, f)
	case *float64:
		*to = r.bare(n, f)
	case *Shares:
		*to = r.shares(n, f)
	case *Rows:
		*to = r.rows(n, f)
	case *Findings:
		*to = r.findings(n, f)
	default:
		r.group(n, v, f, name)
	}
}

// group reads keys inside keys: a struct, one that may be left out, or a list of them.
func (r *reader) group(n *yaml.Node, v reflect.Value, f field, name naming) {
	switch v.Kind() {
	case reflect.Struct:
		r.fill(n, v, name.in(f.key))
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		r.fill(n, v.Elem(), name.in(f.key))
	case reflect.Slice:
		one := naming{any: "an entry of " + f.key, this: "this entry of " + f.key}
		v.Set(reflect.MakeSlice(v.Type(), 0, len(n.Content))) // room for all: an entry's keys are known by where it lies
		r.items(n, f, v.Type(), func(item *yaml.Node) {
			v.SetLen(v.Len() + 1)
			r.fill(item, v.Index(v.Len()-1), one)
		})
	default:
		panic(fmt.Sprintf("shop: no way to read %s into %s", f.key, v.Type()))
	}
}

// items goes through a list. Nothing may stand in one twice, or be nothing.
func (r *reader) items(n *yaml.Node, f field, t reflect.Type, each func(item *yaml.Node)) {
	if n.Kind != yaml.SequenceNode {
		r.say(n, "%s is %s: write %s", f.key, shape(n), r.l.wants(f, t))
		return
	}
	if len(n.Content) == 0 && f.required {
		r.say(n, "%s is an empty list: write %s", f.key, r.l.wants(f, t))
	}
	seen := map[string]bool{}
	for _, item := range n.Content {
		if isNull(item) {
			r.say(item, "an entry of %s is empty: fill it in, or leave it out", f.key)
			continue
		}
		if item.Kind == yaml.ScalarNode {
			if seen[item.Value] {
				r.say(item, "%s stands twice in %s: leave one of them out", quote(item.Value), f.key)
				continue
			}
			seen[item.Value] = true
		}
		each(item)
	}
}

// empty reports a key with nothing after it.
func (r *reader) empty(n *yaml.Node, key, wants string, required bool) {
	if required {
		r.say(n, "%s is empty: write %s", key, wants)
	} else {
		r.say(n, "%s is empty: write %s, or leave the line out", key, wants)
	}
}

// shape says what a node is, for messages that wanted something else.
func shape(n *yaml.Node) string {
	switch n.Kind {
	case yaml.SequenceNode:
		return "a list"
	case yaml.MappingNode:
		return "a group of keys"
	}
	if strings.TrimSpace(n.Value) == "" {
		return "empty"
	}
	return "the single value " + quote(n.Value)
}
