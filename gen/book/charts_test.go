package book

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// TestChartsFit: on every paper the rows that a sheet was given fit it, no row
// is lost, and every sheet but the last is full.
func TestChartsFit(t *testing.T) {
	for _, p := range papers {
		for _, n := range []int{1, 5, 6, 15, 40} {
			c := wallChart{Kind: "test", Title: "Hours", Heads: []gridHead{{Top: "light"}}, Groups: []chartGroup{{"coverage", 1}}, Rows: make([]chartRow, n)}
			for i := range c.Rows {
				c.Rows[i] = chartRow{Name: strings.Repeat("ink and more ink ", 1+i%3), Under: "on paper", Cells: []chartCell{{Lines: []chartLine{{"24", ""}}}}}
			}
			l := layOut(c, p)
			parts := c.parts(l)
			next := 0
			for k, sheet := range l.split(parts) {
				used := 0.0
				for i, r := range sheet {
					if r.height(l) != parts[next+i].height(l) {
						t.Fatalf("%s, %d rows: sheet %d does not go on with row %d", p.Name, n, k+1, next+i+1)
					}
					used += r.height(l)
				}
				next += len(sheet)
				if len(sheet) == 0 || used > l.room() {
					t.Errorf("%s, %d rows: sheet %d has %d rows and needs %.1f mm of %.1f", p.Name, n, k+1, len(sheet), used, l.room())
				}
				if next < n && used+parts[next].height(l) <= l.room() {
					t.Errorf("%s, %d rows: sheet %d has room for one more", p.Name, n, k+1)
				}
			}
			if next != n {
				t.Errorf("%s: %d of %d rows are on a sheet", p.Name, next, n)
			}
		}
	}
}

// TestChartRowsGrow: whatever makes a row or a column need more, it gets.
func TestChartRowsGrow(t *testing.T) {
	cell := func(lines ...chartLine) []chartCell { return []chartCell{{Lines: lines}} }
	base := chartRow{Name: "Ink", Under: "on paper", Cells: cell(chartLine{"24", ""})}
	c := wallChart{Title: "Hours", Heads: []gridHead{{Top: "light"}}, Groups: []chartGroup{{"kept", 1}}, Rows: []chartRow{base}}
	l := layOut(c, papers[0])
	for name, r := range map[string]chartRow{
		"a name of two lines":   {Name: strings.Repeat("name ", 20), Under: base.Under, Cells: base.Cells},
		"a medium of two lines": {Name: base.Name, Under: strings.Repeat("paper ", 20), Cells: base.Cells},
		"two ranges":            {Name: base.Name, Under: base.Under, Cells: cell(chartLine{"99–116", "210–241"}, chartLine{"95–104", "203–219"})},
	} {
		if r.height(l) <= base.height(l) {
			t.Errorf("%s: the row stays at %.1f mm", name, base.height(l))
		}
	}
	wide := c
	wide.Rows = []chartRow{{Name: "Ink", Cells: cell(chartLine{"118–127", "244–261"})}}
	if w := layOut(wide, papers[0]); w.Columns[0] <= l.Columns[0] || w.names >= l.names {
		t.Errorf("a range leaves the column at %.1f caps and the names %.1f", w.Columns[0], w.names)
	}
	long := c
	long.Advice = strings.Repeat("advice ", 60)
	if layOut(long, papers[0]).room() >= l.room() {
		t.Error("a long advice takes nothing from the rows")
	}
}

// TestLinesOf: where a browser breaks lines we count one.
func TestLinesOf(t *testing.T) {
	for _, row := range []struct {
		text  string
		width float64
		want  int
	}{
		{"", 10, 1},
		{"Latex", 10, 1},
		{"Eco-solvent inkjet", 100, 1},
		{"Eco-solvent inkjet", 12, 2}, // Eco-solvent is 10.4, inkjet 4.9 cap heights
		{"Eco-solvent inkjet", 8, 3},  // Eco- 3.2, solvent 6.4
		{"inkjet\u00a0g/m²", 6, 1},    // nothing breaks at a hard space
	} {
		if got := linesOf(row.text, row.width); got != row.want {
			t.Errorf("%q in %g caps: %d lines, want %d", row.text, row.width, got, row.want)
		}
	}
}

// TestPapers: sizes by ISO 216 and, for the American ones, in whole inches;
// A3 reads from two metres, as the handbook promises.
func TestPapers(t *testing.T) {
	want := map[string][2]float64{
		"A4": {297, 210}, "A3": {420, 297}, "A2": {594, 420}, // ISO 216
		"Letter": {11 * 25.4, 8.5 * 25.4}, "Tabloid": {17 * 25.4, 11 * 25.4},
	}
	if len(papers) != len(want) {
		t.Errorf("%d papers, want %d", len(papers), len(want))
	}
	for _, p := range papers {
		if w := want[p.Name]; math.Abs(w[0]-p.Width) > 0.05 || math.Abs(w[1]-p.Height) > 0.05 {
			t.Errorf("%s is %g × %g mm, want %v", p.Name, p.Width, p.Height, w)
		}
		if p.Name == "A3" && (p.Cap < 10 || p.Distance() < 2) {
			t.Errorf("A3: capitals of %g mm read from %g m, want 10 mm and 2 m", p.Cap, p.Distance())
		}
		l := layOut(wallChart{Title: "Hours to wait"}, p)
		size := fmt.Sprintf("@page { size: %smm %smm; margin: 0 }", decimals(p.Width, 1), decimals(p.Height, 1))
		if css := l.CSS(); !strings.HasPrefix(css, size) {
			t.Errorf("%s: the style sheet begins %.60q, want %q", p.Name, css, size)
		}
		if ink := (chartRow{Name: "ink", Under: "on paper"}); l.room() < 3*ink.height(l) {
			t.Errorf("%s: not even three rows fit", p.Name)
		}
	}
}

// TestStampFollowsContent: a sheet's stamp changes with what it says and with
// nothing else.
func TestStampFollowsContent(t *testing.T) {
	row := chartRow{Name: "a", Cells: []chartCell{{Lines: []chartLine{{Text: "24"}}}}}
	c := wallChart{Title: "Hours", Parts: []chartPart{row}}
	first := c.stamp()
	if len(first) != 5 || first[2] != '-' {
		t.Errorf("the stamp %q, want one like K7-Q2", first)
	}
	for _, r := range strings.Replace(first, "-", "", 1) {
		if !strings.ContainsRune(stampLetters, r) {
			t.Errorf("the stamp %q holds %q", first, r)
		}
	}
	c.Sheet, c.Path = 2, "elsewhere"
	if c.stamp() != first {
		t.Error("the stamp changes with the sheet's number")
	}
	row.Cells[0].Lines[0].Text = "25" // the part shares its cells
	if c.stamp() == first {
		t.Error("the stamp stays when an hour changes")
	}
	if stamp([]byte("ab"), []byte("c")) == stamp([]byte("a"), []byte("bc")) {
		t.Error("parts run together")
	}
}

func TestHoursText(t *testing.T) {
	for h, want := range map[float64]string{0: "0", 0.5: "½", 1: "1", 2.5: "2½", 24: "24", 168: "168"} {
		v := tables.WaitValue{Wait: quantity.Time(h) * quantity.Hour}
		if got := hoursText(v); got != want {
			t.Errorf("%g h: %q, want %q", h, got, want)
		}
	}
}

func TestSpread(t *testing.T) {
	rows := [][3]string{
		{"2\u00a0g/m²", "4\u00a0g/m²", "2 to 4\u00a0g/m²"},
		{"900\u00a0µm", "1.2\u00a0mm", "900\u00a0µm to 1.2\u00a0mm"},
		{"1 × 10⁻¹⁴\u00a0m²/s", "1 × 10⁻¹²\u00a0m²/s", "1 × 10⁻¹⁴\u00a0m²/s to 1 × 10⁻¹²\u00a0m²/s"},
	}
	for _, row := range rows {
		if got := spread(row[0], row[1]); got != row[2] {
			t.Errorf("spread(%q, %q) = %q, want %q", row[0], row[1], got, row[2])
		}
	}
}

func TestLift(t *testing.T) {
	r := gridRow{Cells: []gridCell{{Text: "1", Sign: "mt"}, {}, {Text: "hardly dries", Verdict: "refuse"}, {Text: "2", Sign: "t"}}}
	r.lift("m")
	r.lift("t")
	if r.Sign != "t" || r.Cells[0].Sign != "m" || r.Cells[3].Sign != "" {
		t.Errorf("row %q, cells %+v", r.Sign, r.Cells)
	}
}
