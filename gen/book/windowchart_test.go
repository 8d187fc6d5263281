package book

import (
	"strings"
	"testing"

	"laydown/gen/tables"
)

// TestWindowCharts: every row that the shop lists stands on the chart of its
// laminator, with the table's windows at each of the machine's speeds.
func TestWindowCharts(t *testing.T) {
	b := demoBook(t)
	charts := map[string]wallChart{}
	rows := 0
	for _, c := range b.windowCharts() {
		if _, twice := charts[c.Kind]; twice {
			t.Errorf("%s stands twice", c.Kind)
		}
		charts[c.Kind] = c
		rows += len(c.Rows)
	}
	if want := len(b.shop.Front.Charts.Windows); rows != want || want == 0 {
		t.Fatalf("%d rows on the charts, the shop lists %d", rows, want)
	}
	next := map[string]int{}
	for _, listed := range b.shop.Front.Charts.Windows {
		p := hotPair{b.shop.Film(listed.Film.ID), b.shop.Medium(listed.Medium.ID), b.shop.Laminator(listed.Laminator.ID)}
		c := charts["windows-"+p.machine.ID]
		r := c.Rows[next[c.Kind]]
		next[c.Kind]++
		if r.Name != upperFirst(p.film.Name) || len(r.Cells) != len(c.Heads) || len(c.Groups) != len(c.Heads) {
			t.Errorf("%s: row %q with %d cells under %d heads, want %s", c.Kind, r.Name, len(r.Cells), len(c.Heads), p.film.Name)
		}
		for i := range tables.Speeds(p.machine) {
			v, _ := b.windows.get(p.key(i, b.shop.Front.Room.ID))
			cell := r.Cells[i]
			if v.Open() != (cell.Verdict == "") {
				t.Errorf("%s, %s: a window is %v, the cell says %q", c.Kind, r.Name, v.Open(), cell.Verdict)
			}
			if !v.Open() {
				continue
			}
			want := 2
			if v.Whole.Open() {
				want = 1
			}
			if len(cell.Lines) != want {
				t.Errorf("%s, %s: %d ranges, want %d", c.Kind, r.Name, len(cell.Lines), want)
			}
			first, _ := v.Spans()
			if want == 2 && cell.Lines[0].Text != rangeText(first.Low, first.High) {
				t.Errorf("%s, %s: the first range is %s, want %s", c.Kind, r.Name, cell.Lines[0].Text, rangeText(first.Low, first.High))
			}
		}
		if c.twoRanges() != strings.Contains(c.Advice, "Two ranges") {
			t.Errorf("%s: its advice is %q", c.Kind, c.Advice)
		}
	}
}
