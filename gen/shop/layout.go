package shop

import (
	"fmt"
	"reflect"
	"strings"
	"time"
)

// field is one key of a record: where it goes, and what may stand there.
type field struct {
	key       string
	index     []int
	required  bool
	id, date  bool
	positive  bool    // of a number without a unit
	low, high float64 // SI
	lowText   string  // as the range in the model is written: "5 µm"
	highText  string
	words     []string // the only ones allowed
	to        string   // the kind that a reference names
}

// layout is every key of a record, in the order of the model.
type layout struct {
	fields []field
}

// find gives the field of a key.
func (l *layout) find(key string) (field, bool) {
	for _, f := range l.fields {
		if f.key == key {
			return f, true
		}
	}
	return field{}, false
}

// keys lists the keys.
func (l *layout) keys() []string {
	keys := make([]string, len(l.fields))
	for i, f := range l.fields {
		keys[i] = f.key
	}
	return keys
}

// layout reads the model's tags of a struct, once each.
func (l *loader) layout(t reflect.Type) *layout {
	if known := l.layouts[t]; known != nil {
		return known
	}
	lay := new(layout)
	lay.add(t, nil)
	l.layouts[t] = lay
	return lay
}

// add takes in the fields of a struct. A tag that cannot be read is a fault of
// the model, not of any data, and a test reads them all: so it panics.
func (l *layout) add(t reflect.Type, above []int) {
	for i := range t.NumField() {
		f := t.Field(i)
		tag, ok := f.Tag.Lookup("yaml")
		if !ok {
			continue
		}
		index := append(append([]int(nil), above...), i)
		key, options, _ := strings.Cut(tag, ",")
		if options == "inline" {
			l.add(f.Type, index)
			continue
		}
		one := field{key: key, index: index, to: f.Tag.Get("to"), words: strings.Fields(f.Tag.Get("oneof"))}
		for _, o := range strings.Split(options, ",") {
			switch o {
			case "":
			case "required":
				one.required = true
			case "id":
				one.id = true
			case "date":
				one.date = true
			case "positive":
				one.positive = true
			default:
				panic(fmt.Sprintf("shop: %s.%s: unknown option %q", t, f.Name, o))
			}
		}
		if one.to != "" {
			if _, ok := kindOf(one.to); !ok {
				panic(fmt.Sprintf("shop: %s.%s: no kind %q", t, f.Name, one.to))
			}
		}
		if m, ok := reflect.New(f.Type).Interface().(measure); ok {
			one.readRange(f, m)
		}
		l.fields = append(l.fields, one)
	}
}

// readRange reads the bounds of a value, "5 µm .. 1 mm".
func (f *field) readRange(at reflect.StructField, m measure) {
	var ok bool
	f.lowText, f.highText, ok = strings.Cut(at.Tag.Get("range"), " .. ")
	var err1, err2 error
	f.low, err1 = m.parse(f.lowText)
	f.high, err2 = m.parse(f.highText)
	if !ok || err1 != nil || err2 != nil || f.low >= f.high {
		panic(fmt.Sprintf("shop: %s has no range that can be read: %v %v", at.Name, err1, err2))
	}
}

// wants says what is to be written for a field: "a length such as 75 µm".
func (l *loader) wants(f field, t reflect.Type) string {
	words := "one of " + list(f.words)
	if len(f.words) == 1 {
		words = f.words[0]
	}
	if wanted := keyedWants(t); wanted != "" {
		return wanted
	}
	switch {
	case t == reflect.TypeFor[Ref]():
		return "the id of " + a(kindName(f.to))
	case t == reflect.TypeFor[[]Ref]():
		return "a list of ids in brackets, such as [a, b], each of " + a(kindName(f.to))
	case t == reflect.TypeFor[[]string]() && len(f.words) > 0:
		return "a list in brackets with any of " + list(f.words)
	case t == reflect.TypeFor[[]string]():
		return "a list of texts in brackets, such as [a, b]"
	case t.Kind() == reflect.Bool:
		return "true or false"
	case t.Kind() == reflect.Float64 && f.positive:
		return "a number above 0"
	case t.Kind() == reflect.Float64:
		return "a number without a unit"
	case t.Kind() == reflect.String && len(f.words) > 0:
		return words
	case f.date:
		return "a day such as 2026-11-20"
	case f.id:
		return "a short name of lower-case letters, digits and hyphens"
	case t.Kind() == reflect.String:
		return "a text"
	case t.Kind() == reflect.Slice:
		return "a list, each entry with " + list(l.layout(t.Elem()).keys())
	}
	if m, ok := reflect.New(t).Interface().(measure); ok {
		name, example := m.wanted()
		return a(name) + " such as " + example
	}
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	return "its keys on lines of their own below it: " + list(l.layout(t).keys())
}

// kindName is what one record of a kind is called.
func kindName(key string) string {
	k, _ := kindOf(key)
	return k.one
}

// isDay says whether a text is a day of the calendar, year-month-day.
func isDay(text string) bool {
	_, err := time.Parse(time.DateOnly, text)
	return err == nil
}
