package book

import (
	"math"
	"strings"
	"testing"

	"laydown/data"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
	"laydown/templates"
)

// stackBuilder is a builder of the demonstration with its stacks, and nothing else.
func stackBuilder(t *testing.T) *builder {
	t.Helper()
	s, found := shop.Load(data.Files, nil)
	if err := found.Err(); err != nil {
		t.Fatal(err)
	}
	made, err := tables.New(s)
	if err != nil {
		t.Fatal(err)
	}
	b := &builder{answers: made, shop: s, problems: &problems{}}
	if b.stacks, err = newStacks(made); err != nil {
		t.Fatal(err)
	}
	if b.press, err = newPressRoom(templates.Files); err != nil {
		t.Fatal(err)
	}
	return b
}

// TestStackShows makes each kind of block, and holds the wrong ones to their messages.
func TestStackShows(t *testing.T) {
	b := stackBuilder(t)
	show := func(keys map[string]string) (string, []string) {
		b.problems.list = nil
		out := b.compute(computedBlock{ID: "x", Keys: keys})
		var said []string
		for _, p := range b.problems.list {
			said = append(said, p.Message)
		}
		return string(out), said
	}
	for _, r := range []struct {
		keys map[string]string
		want []string // in what is made
	}{
		{map[string]string{"show": "stack-border", "medium": "card", "to-room": "winter"}, []string{`id="x-t"`, `id="x-c-t"`, "dries", "after a week: "}},
		{map[string]string{"show": "stack-border", "medium": "card", "from-room": "winter", "to-room": "damp-quay"}, []string{"dampens"}},
		{map[string]string{"show": "acclimatise", "medium": "card"}, []string{"A pack", "A carton", "A pallet", "card, 300"}},
		{map[string]string{"show": "acclimatise", "medium": "card", "parcel": "carton"}, []string{"A carton"}},
		{map[string]string{"show": "acclimatise", "parcel": "pack", "title": "Packs"}, []string{"Packs", "Card, 300", "Resin-coated"}},
		{map[string]string{"show": "driven-ahead", "medium": "uncoated-90"}, []string{"never been measured", "50\u00a0% driven", `class="bubble"`}},
	} {
		out, said := show(r.keys)
		if len(said) > 0 {
			t.Errorf("%v: %v", r.keys, said)
		}
		for _, w := range r.want {
			if !strings.Contains(out, w) {
				t.Errorf("%v lacks %q", r.keys, w)
			}
		}
	}
	if out, _ := show(map[string]string{"show": "acclimatise", "medium": "card", "parcel": "carton"}); strings.Contains(out, "A pallet") {
		t.Error("a carton's table has a pallet")
	}
	for _, r := range []struct {
		keys map[string]string
		want string
	}{
		{map[string]string{"show": "stack-border", "medium": "card"}, "needs to-room:"},
		{map[string]string{"show": "stack-border", "medium": "card", "to-room": "wintre"}, `did you mean "winter"?`},
		{map[string]string{"show": "stack-border", "medium": "card", "to-room": "finishing-room"}, "the same relative humidity"},
		{map[string]string{"show": "stack-border", "medium": "vinyl-cast", "to-room": "winter"}, "makes no stack"},
		{map[string]string{"show": "acclimatise", "medium": "vinyl-cast"}, "comes in no parcel"},
		{map[string]string{"show": "acclimatise", "parcel": "sack"}, `"sack" is none of pack, carton, pallet`},
		{map[string]string{"show": "driven-ahead", "medium": "vinyl-cast"}, "nothing is driven ahead"},
		{map[string]string{"show": "driven-ahead", "medium": "card", "from-room": "attic"}, `no room is called "attic"`},
		{map[string]string{"show": "driven-ahead", "medium": "card", "room": "winter"}, "does not take it"},
	} {
		out, said := show(r.keys)
		if out != "" || len(said) != 1 || !strings.Contains(said[0], r.want) {
			t.Errorf("%v: said %q, want one with %q", r.keys, said, r.want)
		}
	}
}

// TestStackPages: every number of the page has a place to lead to, and what the chart
// says comes from its figures.
func TestStackPages(t *testing.T) {
	b := stackBuilder(t)
	b.stackPages()
	if len(b.problems.list) > 0 {
		t.Fatal(b.problems.list)
	}
	var main *page
	var wrapped parcelsPage
	working := map[string]mediumStacksPage{}
	for _, p := range b.pages {
		switch d := p.Data.(type) {
		case stacksPage:
			main = p
		case parcelsPage:
			wrapped = d
		case mediumStacksPage:
			working[d.Medium.ID] = d
		}
	}
	if main == nil || len(working) < 12 {
		t.Fatalf("%d pages of workings", len(working))
	}
	p := main.Data.(stacksPage)
	for _, g := range append(append([]grid{p.Even}, p.Borders...), p.Into...) {
		for _, r := range g.Rows {
			if len(r.Cells) != len(g.Heads) {
				t.Errorf("%s, %s: %d cells under %d heads", g.ID, r.Name, len(r.Cells), len(g.Heads))
			}
			for _, c := range r.Cells {
				_, id, _ := strings.Cut(c.Href, "#")
				medium := strings.TrimSuffix(strings.TrimPrefix(c.Href[:strings.IndexByte(c.Href, '#')], "/tables/stacks-"), ".html")
				found := false
				for _, s := range working[medium].Stacks {
					for _, row := range s.Rows {
						found = found || row.ID == id
					}
				}
				if !found {
					t.Errorf("%s, %s: %q leads nowhere", g.ID, r.Name, c.Href)
				}
			}
		}
	}
	if !strings.Contains(wrapped.ChartSays, "They part more at small ones.") || wrapped.Chart == nil || len(wrapped.Chart.Rows) != 8 || len(wrapped.Pallets.Rows) != 3 {
		t.Errorf("the chart says %q", wrapped.ChartSays)
	}
	// Turned about, the sentence turns too.
	list, err := b.answers.AcclimatiseChart("uncoated-90")
	if err != nil {
		t.Fatal(err)
	}
	for i := range list {
		list[i].Core = list[i].Published * quantity.Time(list[i].Difference)
	}
	if says := chartSays(list); !strings.Contains(says, "They do, and more so") {
		t.Errorf("turned about, the chart says %q", says)
	}
}

func TestLapse(t *testing.T) {
	for hours, want := range map[float64]string{
		0.2: "1\u00a0hour", 1: "1\u00a0hour", 1.2: "2\u00a0hours", 48: "48\u00a0hours", 49: "2\u00a0days", 24 * 14: "14\u00a0days", 24 * 20: "3\u00a0weeks",
		24 * 70: "10\u00a0weeks", 24 * 90: "3\u00a0months", 24 * 700: "23\u00a0months", 24 * 800: "2\u00a0years", math.Inf(1): "over 100\u00a0years",
	} {
		if got := lapse(quantity.Time(hours) * quantity.Hour); got != want {
			t.Errorf("%g h: %q, want %q", hours, got, want)
		}
	}
	if got := lapseSpan(quantity.Hour, quantity.Hour); got != "1\u00a0hour" {
		t.Errorf("from an hour to an hour: %q", got)
	}
}

func TestDepths(t *testing.T) {
	for mm, want := range map[float64]string{0: "<1", 0.4: "<1", 0.6: "1", 12.4: "12", 160: "160"} {
		if got := depthText(quantity.Length(mm) * quantity.Millimetre); got != want {
			t.Errorf("%g mm: %q, want %q", mm, got, want)
		}
	}
	if got := depthSpan(0, 0.0126); got != "0"+dash+"13\u00a0mm" {
		t.Errorf("0 to 12.6 mm: %q", got)
	}
	if got := depthSpan(0, 0.0001); got != "<1\u00a0mm" {
		t.Errorf("0 to 0.1 mm: %q", got)
	}
	if got := inchText(0.0254); got != "1.0\u00a0in" {
		t.Errorf("an inch: %q", got)
	}
}

// TestStackChart: a row for each medium that the shop lists, a cell under each head, the
// driest and the dampest room, and the same hours as the page.
func TestStackChart(t *testing.T) {
	b := stackBuilder(t)
	c, ok := b.stackChart()
	if !ok || len(c.Rows) != len(b.shop.Front.Charts.Stacks) {
		t.Fatalf("%d rows", len(c.Rows))
	}
	if c.Heads[0].Top != "25\u00a0%" || c.Heads[1].Top != "75\u00a0%" {
		t.Errorf("rooms of %q and %q", c.Heads[0].Top, c.Heads[1].Top)
	}
	span := 0
	for _, g := range c.Groups {
		span += g.Span
	}
	if span != len(c.Heads) {
		t.Errorf("labels over %d of %d heads", span, len(c.Heads))
	}
	for i, r := range c.Rows {
		if len(r.Cells) != len(c.Heads) {
			t.Fatalf("%s: %d cells under %d heads", r.Name, len(r.Cells), len(c.Heads))
		}
		m := b.shop.Medium(b.shop.Front.Charts.Stacks[i].ID)
		values := b.parcelsOf(m, tables.Pallet)
		if got := r.Cells[4].Lines[0].Text; got != wholeHours(values[len(values)/2].Time.Best) {
			t.Errorf("%s: a pallet takes %s h on the chart", r.Name, got)
		}
	}
	before := b.shop.Front.Charts.Stacks
	b.shop.Front.Charts.Stacks = append([]shop.Ref{{ID: "vinyl-cast"}}, before[:1]...)
	if c, ok := b.stackChart(); !ok || len(c.Rows) != 1 {
		t.Errorf("a vinyl that comes in no stack has a row: %d rows", len(c.Rows))
	}
	b.shop.Front.Charts.Stacks = nil
	if _, ok := b.stackChart(); ok {
		t.Error("a chart without rows")
	}
}
