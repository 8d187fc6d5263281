package shop

import (
	"reflect"

	"gopkg.in/yaml.v3"
)

// keyed reads a mapping whose keys the data chooses, such as the ids of a
// family's causes. Whether they are ids of anything is for checkMeaning to say.
// A key with nothing after it is reported, and each gets nil for its value.
func (r *reader) keyed(n *yaml.Node, f field, t reflect.Type, each func(key, value *yaml.Node)) {
	if n.Kind != yaml.MappingNode {
		r.say(n, "%s is %s: write %s", f.key, shape(n), r.l.wants(f, t))
		return
	}
	if len(n.Content) == 0 && f.required {
		r.say(n, "%s is an empty group of keys: write %s", f.key, r.l.wants(f, t))
	}
	r.pairs(n, f.key, func(key, value *yaml.Node) {
		if isNull(value) {
			r.empty(value, quote(key.Value)+" in "+f.key, "what stands for it", false)
			value = nil
		}
		each(key, value)
	})
}

// share is what a share under any key has to be.
var share = field{low: 0, high: 1, lowText: "0 %", highText: "100 %"}

// shares reads "dirt: 90 %" and so on.
func (r *reader) shares(n *yaml.Node, f field) Shares {
	var read Shares
	r.keyed(n, f, reflect.TypeFor[Shares](), func(key, value *yaml.Node) {
		one := Share{Of: key.Value, Pos: r.place(key)}
		under := share
		under.key = key.Value
		if value != nil {
			r.value(value, &one.Value, under)
		}
		read = append(read, one)
	})
	return read
}

// rows reads a table: under each key a row of shares.
func (r *reader) rows(n *yaml.Node, f field) Rows {
	var read Rows
	r.keyed(n, f, reflect.TypeFor[Rows](), func(key, value *yaml.Node) {
		row := Row{Of: key.Value, Pos: r.place(key)}
		if value != nil {
			row.Shares = r.shares(value, field{key: key.Value, required: true})
		}
		read = append(read, row)
	})
	return read
}

// findings reads "loupe: speck" and so on.
func (r *reader) findings(n *yaml.Node, f field) Findings {
	var read Findings
	r.keyed(n, f, reflect.TypeFor[Findings](), func(key, value *yaml.Node) {
		if value == nil {
			return
		}
		if word, ok := r.word(value, field{key: key.Value}); ok {
			read = append(read, Finding{Check: key.Value, Outcome: word, Pos: r.place(key), OutcomePos: r.place(value)})
		}
	})
	return read
}

// keyedWants says what is to be written for a mapping whose keys the data
// chooses; "" for anything else.
func keyedWants(t reflect.Type) string {
	switch t {
	case reflect.TypeFor[Shares]():
		return "shares by id in braces, such as {dirt: 90 %, others: 5 %}"
	case reflect.TypeFor[Rows]():
		return "under each cause's id, or under others, how likely each outcome is, such as dirt: {speck: 90 %, empty: 10 %}"
	case reflect.TypeFor[Findings]():
		return "under each check's id what it showed, such as {loupe: speck}"
	}
	return ""
}
