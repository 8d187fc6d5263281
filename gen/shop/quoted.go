package shop

import (
	"errors"
	"fmt"
	"reflect"
	"strings"

	"laydown/gen/quantity"
)

// Quoted is a quantity of a record as a text quotes it.
type Quoted struct {
	// Low and High are equal for a single value; a range has both ends.
	Low, High Printed
	// Source is the id of the record in sources that the quantity comes from.
	Source string
}

// Printed is one number in both unit systems. Imperial is empty where the
// trade uses no second unit.
type Printed struct{ Metric, Imperial string }

// quotable is anything in a record that a text can quote. The second result
// says whether the data states it at all.
type quotable interface{ quoted() (Quoted, bool) }

func (v Value[Q]) quoted() (Quoted, bool) {
	p := Printed{quantity.Metric(v.Best), quantity.Imperial(v.Best)}
	return Quoted{Low: p, High: p, Source: v.Source}, v.Set
}

func (s *Span) quoted() (Quoted, bool) {
	if s == nil {
		return Quoted{}, false
	}
	return between(s.From, s.To, s.Source.ID)
}

func (r *RollerRange) quoted() (Quoted, bool) {
	if r == nil {
		return Quoted{}, false
	}
	return between(r.From, r.To, r.Source.ID)
}

func between(from, to Value[quantity.Temperature], source string) (Quoted, bool) {
	low, ok := from.quoted()
	high, _ := to.quoted()
	if low.Source != "" {
		source = low.Source
	}
	return Quoted{Low: low.Low, High: high.Low, Source: source}, ok
}

// quotedKinds are the kinds whose quantities a text can quote, each by the word
// for one record of it.
var quotedKinds = []struct {
	word, key string
	find      func(s *Shop, id string) any
}{
	{"ink", "inks", func(s *Shop, id string) any { return orNil(s.Ink(id)) }},
	{"medium", "media", func(s *Shop, id string) any { return orNil(s.Medium(id)) }},
	{"film", "films", func(s *Shop, id string) any { return orNil(s.Film(id)) }},
	{"laminator", "laminators", func(s *Shop, id string) any { return orNil(s.Laminator(id)) }},
	{"room", "rooms", func(s *Shop, id string) any { return orNil(s.Room(id)) }},
	{"storage", "storage", func(s *Shop, id string) any { return orNil(s.Storage(id)) }},
	{"carrier", "carriers", func(s *Shop, id string) any { return orNil(s.Carrier(id)) }},
	{"substance", "substances", func(s *Shop, id string) any { return orNil(s.Substance(id)) }},
	{"contact", "contacts", func(s *Shop, id string) any { return orNil(s.Contact(id)) }},
}

// orNil keeps a nil record from hiding inside an interface.
func orNil[T any](record *T) any {
	if record == nil {
		return nil
	}
	return record
}

// Quote finds a quantity by the words that a text names it with: a kind in the
// singular ("film"), the record's id, and the field as it is written in the
// data files. A field inside a group has the group's key before it:
// "drying.absorbing_thickness". A film's adhesive_melts, roller_assist and
// roller_range are quoted from end to end.
func (s *Shop) Quote(kind, id, field string) (Quoted, error) {
	var words []string
	for _, k := range quotedKinds {
		if k.word != kind {
			words = append(words, k.word)
			continue
		}
		record := k.find(s, id)
		if record == nil {
			return Quoted{}, fmt.Errorf("no %s is called %s%s", kind, quote(id), maybe(s.Closest(k.key, id)))
		}
		q, err := quoteField(reflect.ValueOf(record).Elem(), field)
		if err != nil {
			return Quoted{}, fmt.Errorf("%s %s: %w", kind, id, err)
		}
		return q, nil
	}
	return Quoted{}, fmt.Errorf("%s is no kind of record: %s", quote(kind), list(words))
}

// quoteField walks down a path of keys.
func quoteField(v reflect.Value, path string) (Quoted, error) {
	for {
		key, rest, deeper := strings.Cut(path, ".")
		lay := new(layout)
		lay.add(v.Type(), nil)
		f, ok := lay.find(key)
		if !ok {
			return Quoted{}, fmt.Errorf("there is no field %s%s", quote(key), maybe(nearest(key, lay.keys())))
		}
		at := v.FieldByIndex(f.index)
		if deeper {
			if at.Kind() == reflect.Pointer && at.IsNil() {
				return Quoted{}, fmt.Errorf("the data does not state %s", key)
			}
			v, path = reflect.Indirect(at), rest
			if v.Kind() != reflect.Struct {
				return Quoted{}, fmt.Errorf("the field %s has no parts", key)
			}
			continue
		}
		q, ok := at.Interface().(quotable)
		if !ok {
			return Quoted{}, errors.New("the field " + key + " is no quantity")
		}
		quoted, stated := q.quoted()
		if !stated {
			return Quoted{}, fmt.Errorf("the data does not state %s", key)
		}
		return quoted, nil
	}
}
