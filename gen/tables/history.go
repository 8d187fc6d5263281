package tables

import (
	"fmt"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Stay is one part of a print's history: so long, kept so.
type Stay struct {
	Storage *shop.Storage
	Time    quantity.Time
}

// History is how a print was kept since it was printed, in order.
type History []Stay

// ParseHistory reads "6 h hung, 14 h tight-roll, 2 h hung".
func (t *Tables) ParseHistory(text string) (History, error) {
	var h History
	if strings.TrimSpace(text) == "" {
		return nil, nil
	}
	for _, part := range strings.Split(text, ",") {
		part = strings.TrimSpace(part)
		cut := strings.LastIndexAny(part, " \u00a0")
		if cut < 0 {
			return nil, fmt.Errorf("%q is not a stay: write a time and a storage, such as 6 h hung", part)
		}
		span, id := strings.TrimSpace(part[:cut]), strings.TrimSpace(part[cut:])
		d, err := quantity.Parse[quantity.Time](span)
		if err != nil {
			return nil, fmt.Errorf("in the history: %w", err)
		}
		if d < 0 {
			return nil, fmt.Errorf("in the history: %s is less than nothing", span)
		}
		st := t.shop.Storage(id)
		if st == nil {
			return nil, t.unknown("storage", id)
		}
		h = append(h, Stay{st, d})
	}
	return h, nil
}

// Time returns how long the history lasted.
func (h History) Time() quantity.Time {
	var sum quantity.Time
	for _, s := range h {
		sum += s.Time
	}
	return sum
}

// kindWords are the keys of the kinds and what a person calls one of each.
var kindWords = map[string]string{
	"faults": "family of faults",
	"inks":   "ink", "media": "medium", "films": "film", "laminators": "laminator", "rooms": "room", "storage": "storage",
}

// unknown is the error for an id that no record of the kind has.
func (t *Tables) unknown(kind, id string) error {
	if id == "" {
		return fmt.Errorf("which %s? none is given", kindWords[kind])
	}
	if near := t.shop.Closest(kind, id); near != "" {
		return fmt.Errorf("no %s is called %q; did you mean %q?", kindWords[kind], id, near)
	}
	return fmt.Errorf("no %s is called %q", kindWords[kind], id)
}
