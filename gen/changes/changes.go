package changes

import (
	"encoding/csv"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// Values are the files of values of one handbook, by their paths in it.
type Values map[string][]byte

// Table is what changed in one table.
type Table struct {
	Path                 string
	Rows                 int // that it has now
	Changed, Added, Gone []Row
	// Columns that it has now and had not, and that it had.
	NewColumns, GoneColumns []string
	// IsNew and IsGone say that it is only in the new or only in the old handbook.
	IsNew, IsGone bool
}

// Row is a row by its name, with what changed in it.
type Row struct {
	Name  []string
	Cells []Cell // of a row that changed
}

// Cell is a value that changed.
type Cell struct{ Column, Was, Is string }

// Between compares two handbooks and lists the tables that differ, by their paths.
func Between(old, now Values) ([]Table, error) {
	var list []Table
	for _, path := range paths(old, now) {
		was, had := old[path]
		is, has := now[path]
		var t Table
		switch {
		case !had:
			t.IsNew = true
		case !has:
			t.IsGone = true
		default:
			var err error
			if t, err = between(was, is); err != nil {
				return nil, fmt.Errorf("%s: %w", path, err)
			}
			if t.same() {
				continue
			}
		}
		t.Path = path
		list = append(list, t)
	}
	return list, nil
}

func paths(old, now Values) []string {
	var list []string
	for p := range old {
		list = append(list, p)
	}
	for p := range now {
		if _, had := old[p]; !had {
			list = append(list, p)
		}
	}
	slices.Sort(list)
	return list
}

func (t Table) same() bool {
	return len(t.Changed)+len(t.Added)+len(t.Gone)+len(t.NewColumns)+len(t.GoneColumns) == 0
}

// between compares two versions of a table.
func between(was, is []byte) (Table, error) {
	old, err := read(was)
	if err != nil {
		return Table{}, fmt.Errorf("as it was: %w", err)
	}
	now, err := read(is)
	if err != nil {
		return Table{}, fmt.Errorf("as it is: %w", err)
	}
	t := Table{Rows: len(now.rows), NewColumns: without(now.head, old.head), GoneColumns: without(old.head, now.head)}
	width := nameWidth(old, now)
	before := old.byName(width)
	var shared []string // values that both have
	for _, c := range now.head[width:] {
		if slices.Contains(old.head, c) {
			shared = append(shared, c)
		}
	}
	for i, name := range now.names(width) {
		r := now.rows[i]
		prior, had := before[name]
		if !had {
			t.Added = append(t.Added, Row{Name: r[:width]})
			continue
		}
		delete(before, name)
		var cells []Cell
		for _, c := range shared {
			if a, b := old.cell(prior, c), now.cell(r, c); a != b {
				cells = append(cells, Cell{c, a, b})
			}
		}
		if len(cells) > 0 {
			t.Changed = append(t.Changed, Row{r[:width], cells})
		}
	}
	for i, name := range old.names(width) {
		if _, left := before[name]; left {
			t.Gone = append(t.Gone, Row{Name: old.rows[i][:width]})
		}
	}
	return t, nil
}

// sheet is a table as it was read.
type sheet struct {
	head []string
	rows [][]string
}

func read(data []byte) (sheet, error) {
	rows, err := csv.NewReader(strings.NewReader(string(data))).ReadAll()
	if err != nil {
		return sheet{}, err
	}
	if len(rows) == 0 {
		return sheet{}, fmt.Errorf("it has no line of column names")
	}
	return sheet{rows[0], rows[1:]}, nil
}

// nameWidth is the number of first columns that tell all rows of both sheets apart: as
// few as do, of those that both have in the same place; all of these where none do.
func nameWidth(a, b sheet) int {
	most := 0
	for most < min(len(a.head), len(b.head)) && a.head[most] == b.head[most] {
		most++
	}
	for n := range most {
		if n > 0 && a.apart(n) && b.apart(n) {
			return n
		}
	}
	return most
}

// apart says that no two rows have the same first columns.
func (s sheet) apart(width int) bool {
	seen := map[string]bool{}
	for _, r := range s.rows {
		seen[strings.Join(r[:width], "\x00")] = true
	}
	return len(seen) == len(s.rows)
}

// names are the rows' first columns, each name once: rows that have the same are counted.
func (s sheet) names(width int) []string {
	list := make([]string, len(s.rows))
	times := map[string]int{}
	for i, r := range s.rows {
		name := strings.Join(r[:width], "\x00")
		list[i] = fmt.Sprintf("%s\x00%d", name, times[name])
		times[name]++
	}
	return list
}

// byName finds rows by their names.
func (s sheet) byName(width int) map[string][]string {
	m := make(map[string][]string, len(s.rows))
	for i, name := range s.names(width) {
		m[name] = s.rows[i]
	}
	return m
}

// cell is a row's value in a column that the sheet has.
func (s sheet) cell(row []string, column string) string {
	return row[slices.Index(s.head, column)]
}

func without(list, others []string) []string {
	var rest []string
	for _, x := range list {
		if !slices.Contains(others, x) {
			rest = append(rest, x)
		}
	}
	return rest
}

// Most finds the row that moved the farthest for its size in the first value of it that
// changed, for a table's first values say the most; of equals the first. Words that changed
// count as having moved least, a value that came or went as all the way. False without any.
func (t Table) Most() (Row, Cell, bool) {
	var row Row
	far := -1.0
	for _, r := range t.Changed {
		if d := r.Cells[0].moved(); d > far {
			row, far = r, d
		}
	}
	if far < 0 {
		return Row{}, Cell{}, false
	}
	return row, row.Cells[0], true
}

// moved is the difference for its size, 0 to 2.
func (c Cell) moved() float64 {
	a, errA := strconv.ParseFloat(c.Was, 64)
	b, errB := strconv.ParseFloat(c.Is, 64)
	switch {
	case (errA == nil) != (errB == nil):
		return 1
	case errA != nil || a == 0 && b == 0:
		return 0
	}
	return math.Abs(a-b) / math.Max(math.Abs(a), math.Abs(b))
}
