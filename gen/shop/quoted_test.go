package shop

import (
	"cmp"
	"strings"
	"testing"
)

// TestQuote: a text quotes quantities by kind, id and field; what it cannot
// have it is told.
func TestQuote(t *testing.T) {
	s := mustLoad(t, smallShop(t), nil)
	for _, row := range []struct{ ask, want string }{
		{"medium test-vinyl thickness", "80 µm (3.1 mil), from nowhere"},
		{"medium test-vinyl drying.absorbing_thickness", "50 µm (2 mil), from nowhere"},
		{"laminator small-wide slowest", "0.5 m/min (1.64 ft/min), from nowhere"},
		{"film test-thermal activation", "90 °C (194 °F), from invented-here"},
		{"film test-thermal adhesive_melts", "80 °C (176 °F) to 95 °C (203 °F), from invented-here"},
		{"film test-thermal roller_range", "105 °C (221 °F) to 120 °C (248 °F), from guessed"},
		{"film test-thermal roller_range.speed", "3 m/min (9.84 ft/min), from guessed"},
		{"film test-cold roller_assist", "30 °C (86 °F) to 40 °C (104 °F), from nowhere"},
		{"storage on-the-line oxygen", "100 % (), from nowhere"},
		{"contact film-on-roller conductance", "400 W/(m² K) (), from guessed"},
		{"medium test-vinly thickness", `no medium is called "test-vinly"; did you mean "test-vinyl"?`},
		{"medium test-vinyl thicknes", `medium test-vinyl: there is no field "thicknes"; did you mean "thickness"?`},
		{"medium test-vinyl class", "medium test-vinyl: the field class is no quantity"},
		{"medium test-vinyl class.x", "medium test-vinyl: the field class has no parts"},
		{"medium test-vinyl receives.grammage", "medium test-vinyl: the data does not state receives"},
		{"medium test-vinyl heat_limit.low", `medium test-vinyl: there is no field "low"`},
		{"film test-cold adhesive_melts", "film test-cold: the data does not state adhesive_melts"},
		{"film test-cold heat_limit", "film test-cold: the data does not state heat_limit"},
		{"stock test-vinyl thickness", `"stock" is no kind of record: ink, medium, film, laminator, room, storage, carrier, substance, contact`},
	} {
		w := strings.Fields(row.ask)
		q, err := s.Quote(w[0], w[1], w[2])
		got := said(q.Low)
		if q.High != q.Low {
			got += " to " + said(q.High)
		}
		got += ", from " + cmp.Or(q.Source, "nowhere")
		if err != nil {
			got = err.Error()
		}
		if got != row.want {
			t.Errorf("%s:\ngot  %s\nwant %s", row.ask, got, row.want)
		}
	}
}

func said(p Printed) string {
	return strings.ReplaceAll(p.Metric+" ("+p.Imperial+")", "\u00a0", " ")
}

// TestQuotedKinds: each has a kind of the model behind it, and finds no record
// where there is none.
func TestQuotedKinds(t *testing.T) {
	for _, k := range quotedKinds {
		if kindName(k.key) == "" {
			t.Errorf("%s: there is no kind %s", k.word, k.key)
		}
		if k.find(&Shop{}, "none") != nil {
			t.Errorf("%s: a record that is not there is found", k.word)
		}
	}
}
