package book

import (
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// fact is one value of a record as its page shows it.
type fact struct {
	Label  string
	Text   string // the value, in metric units where it is a quantity
	Second string // in the other units
	Spread string
	Source *sourceView
	Href   string // another record that the value names
}

// sourceView is a source as it stands beside a value.
type sourceView struct {
	ID, Word, Title string
}

// kindWords say in a word what a kind of source is worth.
var kindWords = map[string]string{
	"published": "published",
	"maker":     "maker’s sheet",
	"measured":  "measured here",
	"practice":  "common practice",
	"memory":    "from memory",
	"invented":  "invented",
}

// source finds what stands beside a value; nil where nothing is known.
func (b *builder) source(id string) *sourceView {
	s := b.shop.Source(id)
	if s == nil {
		return nil
	}
	return &sourceView{s.ID, kindWords[s.Kind], s.Title}
}

// sheet collects the facts of one record.
type sheet struct {
	b     *builder
	own   string // the record's own source
	Name  string
	Facts []fact
}

func (b *builder) sheet(name string, h shop.Head) *sheet {
	return &sheet{b: b, own: h.Source.ID, Name: name}
}

// from is the source of a value: its own, or its record's.
func (s *sheet) from(id string) *sourceView {
	if id == "" {
		id = s.own
	}
	return s.b.source(id)
}

// word adds a fact that is no quantity.
func (s *sheet) word(label, text string) {
	if text != "" {
		s.Facts = append(s.Facts, fact{Label: label, Text: text, Source: s.from("")})
	}
}

// record adds a fact that names another record.
func (s *sheet) record(label, name, href, source string) {
	if name != "" {
		s.Facts = append(s.Facts, fact{Label: label, Text: name, Href: href, Source: s.from(source)})
	}
}

// yes adds a fact that is so or not so.
func (s *sheet) yes(label string, is bool) {
	text := "no"
	if is {
		text = "yes"
	}
	s.word(label, text)
}

// value adds a quantity with its spread and its source, where the data states
// it.
func value[Q quantity.Quantity](s *sheet, label string, v shop.Value[Q]) {
	if !v.Set {
		return
	}
	f := fact{Label: label, Text: quantity.Metric(v.Best), Second: quantity.Imperial(v.Best), Source: s.from(v.Source)}
	if v.Low != v.High {
		f.Spread = spread(quantity.Metric(v.Low), quantity.Metric(v.High))
		if second := quantity.Imperial(v.Low); second != "" && quantity.Imperial(v.High) != "" {
			f.Spread += " (" + spread(second, quantity.Imperial(v.High)) + ")"
		}
	}
	s.Facts = append(s.Facts, f)
}

// span adds a range of temperature.
func span(s *sheet, label string, from, to shop.Value[quantity.Temperature], source, suffix string) {
	s.Facts = append(s.Facts, fact{Label: label,
		Text:   spread(quantity.Metric(from.Best), quantity.Metric(to.Best)) + suffix,
		Second: spread(quantity.Imperial(from.Best), quantity.Imperial(to.Best)),
		Source: s.from(orElse(from.Source, source))})
}

// spread writes two values of one unit as a range, the unit once.
func spread(low, high string) string {
	lowNumber, lowUnit, ok := cutUnit(low)
	_, highUnit, _ := cutUnit(high)
	if ok && lowUnit == highUnit {
		return lowNumber + " to " + high
	}
	return low + " to " + high
}

// cutUnit parts a printed quantity at the no-break space before its unit.
func cutUnit(text string) (number, unit string, ok bool) {
	// A power of ten has no-break spaces of its own before the unit's.
	if i := strings.Index(text, "\u00a0"); i >= 0 && !strings.Contains(text, "×") {
		return text[:i], text[i:], true
	}
	return text, "", false
}

func orElse(a, b string) string {
	if a != "" {
		return a
	}
	return b
}

// climate is a room's air on one line, in both systems.
func climate(r *shop.Room) string {
	return quantity.Metric(r.Temperature.Best) + " " + quantity.Imperial(r.Temperature.Best) + ", " + quantity.Metric(r.Humidity.Best) + "\u00a0RH"
}
