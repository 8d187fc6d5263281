package book

import (
	"strings"
	"testing"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// A verdict on a film has a shape and a word of its own; what a rule asks to test is
// no go, and a film to change is as much a no as a refused print.
func TestMatrixCell(t *testing.T) {
	for _, row := range []struct {
		answer        tables.PairAnswer
		verdict, word string
	}{
		{tables.PairAnswer{Verdict: tables.Go}, "go", "go"},
		{tables.PairAnswer{Verdict: tables.Go, Test: true}, "wait", "test"},
		{tables.PairAnswer{Verdict: tables.Change}, "refuse", "no"},
		{tables.PairAnswer{Verdict: tables.Change, Test: true}, "refuse", "no"},
		{tables.PairAnswer{Verdict: tables.Refuse}, "refuse", "no"},
	} {
		if got := matrixCell(row.answer); got.Verdict != row.verdict || got.Word != row.word {
			t.Errorf("%+v: %s, %q; want %s, %q", row.answer, got.Verdict, got.Word, row.verdict, row.word)
		}
	}
}

// Charts in words: steps counted where the shop says so, the caution in the foot, and
// no chart where nothing is listed.
func TestNoticeCharts(t *testing.T) {
	s := &shop.Shop{Cautions: []*shop.Caution{{Head: shop.Head{ID: "nip", Name: "Nip"}, Says: "Flat palms."}}}
	b := &builder{shop: s}
	if _, ok := b.cautionChart(); ok || len(b.noticeCharts()) > 0 {
		t.Error("a chart of nothing")
	}
	s.Front.Charts.Cautions = []shop.Ref{{ID: "nip"}}
	s.Front.Charts.Notices = []shop.Notice{
		{Name: "Start of shift", Counted: true, Steps: []shop.Step{{Do: "Look", How: "Cold."}, {Do: "Heat"}}, Caution: shop.Ref{ID: "nip"}},
		{Name: "Grain", Steps: []shop.Step{{Do: "Fold"}}},
	}
	c, ok := b.cautionChart()
	if !ok || len(c.Rows) != 1 || c.Rows[0].Name != "Nip" || c.Rows[0].Under != "Flat palms." {
		t.Errorf("the chart of cautions: %+v", c.Rows)
	}
	list := b.noticeCharts()
	if len(list) != 2 {
		t.Fatalf("%d notices, want 2", len(list))
	}
	start, grain := list[0], list[1]
	if start.Kind != "notice-start-of-shift" || start.Rows[1].Name != "2\u00a0\u00a0Heat" || start.Hazard != "Nip." {
		t.Errorf("the steps: %s, %+v, %q", start.Kind, start.Rows, start.Hazard)
	}
	if grain.Rows[0].Name != "Fold" || grain.Hazard != "" || grain.Headed() {
		t.Errorf("the tests: %+v, %q", grain.Rows, grain.Hazard)
	}
	start.Parts = start.parts(chartLayout{})
	other := start
	other.Parts = []chartPart{start.Rows[0], chartRow{Name: start.Rows[1].Name, Under: "Nip open."}}
	if other.stamp() == start.stamp() {
		t.Error("the stamp stays when a step is done in another way")
	}
}

// A chart without heads keeps their room for rows, one with marks alone all but its rules.
func TestHeadsTakeRoom(t *testing.T) {
	row := chartRow{Name: "Film", Cells: []chartCell{{Verdict: "go", Word: "go"}}}
	headed := wallChart{Title: "A", Heads: []gridHead{{Top: "fast"}}, Rows: []chartRow{row}}
	marks := wallChart{Title: "A", Heads: []gridHead{{}}, Rows: []chartRow{row}}
	words := wallChart{Title: "A", Rows: []chartRow{{Name: "Step", Under: strings.Repeat("how ", 40)}}}
	for _, p := range papers {
		a, b, c := layOut(headed, p).room(), layOut(marks, p).room(), layOut(words, p).room()
		if a >= b || b >= c {
			t.Errorf("%s: rows have %.1f, %.1f and %.1f mm with heads, with marks and with words only", p.Name, a, b, c)
		}
		if h := row.height(layOut(marks, p)); h < markHigh*p.Cap {
			t.Errorf("%s: a row of %.1f mm does not hold its mark", p.Name, h)
		}
	}
}
