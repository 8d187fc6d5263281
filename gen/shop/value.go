package shop

import (
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"laydown/gen/quantity"
)

// measure is a Value of any kind, as the reader sees it: numbers are in SI units.
type measure interface {
	parse(text string) (float64, error)
	put(best, low, high float64, text string)
	cite(source string)
	stand(pos Pos)
	given() bool
	wanted() (kind, example string)
}

func (v *Value[Q]) parse(text string) (float64, error) {
	q, err := quantity.Parse[Q](text)
	return float64(q), err
}

func (v *Value[Q]) put(best, low, high float64, text string) {
	v.Best, v.Low, v.High, v.Text, v.Set = Q(best), Q(low), Q(high), text, true
}

// cite sets the source unless the value has one of its own.
func (v *Value[Q]) cite(source string) {
	if v.Source == "" {
		v.Source = source
	}
}

func (v *Value[Q]) stand(pos Pos) { v.Pos = pos }

// given says that the data has the value's key, whether or not it could be read.
func (v *Value[Q]) given() bool { return v.Pos.Line > 0 }

func (v *Value[Q]) wanted() (kind, example string) {
	return quantity.KindName[Q](), quantity.Example[Q]()
}

// value reads a quantity: "75 µm", or a group of value, low, high and source.
func (r *reader) value(n *yaml.Node, m measure, f field) {
	m.stand(r.place(n))
	if n.Kind != yaml.MappingNode {
		if best, ok := r.number(n, m, f, f.key); ok {
			m.put(best, best, best, strings.TrimSpace(n.Value))
		}
		return
	}
	parts := map[string]*yaml.Node{}
	known := []string{"value", "low", "high", "source"}
	r.pairs(n, f.key, func(key, part *yaml.Node) {
		switch key.Value {
		case "value", "low", "high":
			parts[key.Value] = part
		case "source":
			if isNull(part) {
				r.empty(part, "source", "the id of a source", false)
				return
			}
			m.cite(r.ref(part, field{key: "source", to: "sources"}).ID)
		default:
			r.say(key, "unknown key %s in %s: a quantity has %s%s", quote(key.Value), f.key, list(known), maybe(r.l.suggest(key.Value, known)))
		}
	})
	if parts["value"] == nil {
		name, example := m.wanted()
		r.say(n, "%s has no value: write %s such as value: %s", f.key, a(name), example)
		return
	}
	best, good := r.number(parts["value"], m, f, f.key)
	low, high := best, best
	if p := parts["low"]; p != nil {
		var ok bool
		low, ok = r.number(p, m, f, "the low of "+f.key)
		good = good && ok
	}
	if p := parts["high"]; p != nil {
		var ok bool
		high, ok = r.number(p, m, f, "the high of "+f.key)
		good = good && ok
	}
	switch {
	case !good:
	case low > best:
		r.say(parts["low"], "the low of %s, %s, is above its value, %s", f.key, parts["low"].Value, parts["value"].Value)
	case high < best:
		r.say(parts["high"], "the high of %s, %s, is below its value, %s", f.key, parts["high"].Value, parts["value"].Value)
	default:
		m.put(best, low, high, strings.TrimSpace(parts["value"].Value))
	}
}

// number reads one quantity and holds it against what can be.
func (r *reader) number(n *yaml.Node, m measure, f field, key string) (float64, bool) {
	name, example := m.wanted()
	if isNull(n) {
		r.empty(n, key, a(name)+" such as "+example, f.required && key == f.key)
		return 0, false
	}
	if n.Kind != yaml.ScalarNode {
		r.say(n, "%s is %s: write %s such as %s", key, shape(n), a(name), example)
		return 0, false
	}
	x, err := m.parse(n.Value)
	if err != nil {
		r.say(n, "%s: %s", key, err)
		return 0, false
	}
	slack := 1e-9 * (f.high - f.low) // rounding of the bounds in other units
	if x < f.low-slack || x > f.high+slack {
		r.say(n, "%s cannot be %s: it lies between %s and %s%s", key, strings.TrimSpace(n.Value), f.lowText, f.highText, inTheirUnit(n.Value, m, f))
		return 0, false
	}
	return x, true
}

// numberPart is the number before a unit.
var numberPart = regexp.MustCompile(`^\s*[-+−]?[0-9]*[.]?[0-9]*([eE][-+−]?[0-9]+)?(\s*×\s*10\S+)?`)

// inTheirUnit repeats the bounds of a value in the unit that it was written
// in, where that is another: " (0.197 mil and 39.4 mil)". Every unit is a scale
// and perhaps an offset, so its 0 and 1 tell it whole.
func inTheirUnit(text string, m measure, f field) string {
	unit := func(s string) string { return strings.TrimSpace(s[len(numberPart.FindString(s)):]) }
	theirs := unit(text)
	if theirs == unit(f.lowText) && theirs == unit(f.highText) {
		return ""
	}
	zero, err0 := m.parse("0 " + theirs)
	one, err1 := m.parse("1 " + theirs)
	if err0 != nil || err1 != nil || one == zero {
		return ""
	}
	write := func(si float64) string {
		rounded, _ := strconv.ParseFloat(strconv.FormatFloat((si-zero)/(one-zero), 'g', 3, 64), 64)
		return strconv.FormatFloat(rounded, 'f', -1, 64) + " " + theirs
	}
	return " (" + write(f.low) + " and " + write(f.high) + ")"
}

// cite gives every value in v without a source of its own that of its record,
// or of the group of keys that it stands in.
func cite(v reflect.Value, source string) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			cite(v.Elem(), source)
		}
	case reflect.Struct:
		if m, ok := v.Addr().Interface().(measure); ok {
			if m.given() {
				m.cite(source)
			}
			return
		}
		if own := v.FieldByName("Source"); own.IsValid() {
			if ref, ok := own.Interface().(Ref); ok && ref.ID != "" {
				source = ref.ID
			}
		}
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				cite(v.Field(i), source)
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			cite(v.Index(i), source)
		}
	}
}
