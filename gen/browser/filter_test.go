package browser

import (
	"fmt"
	"strings"
	"testing"
)

// choose sets a filter as a reader does.
func (b *tab) choose(name, value string) {
	b.t.Helper()
	eval[bool](b, fmt.Sprintf(`(() => {
		const select = document.getElementById("filters").elements[%q];
		select.value = %q;
		select.dispatchEvent(new Event("change", { bubbles: true }));
		return true;
	})()`, name, value))
}

// filtered is what of a long table stands on the page: rows and columns that are
// shown, and what the page says of them.
type filtered struct {
	Rows    int    `json:"rows"`
	Columns int    `json:"columns"`
	Empty   int    `json:"empty"` // rows without anything in a column that is shown
	Said    string `json:"said"`
	Search  string `json:"search"`
}

func (b *tab) filtered() filtered {
	b.t.Helper()
	return eval[filtered](b, `(() => {
		const table = document.getElementById("filtered"), shown = (el) => el.checkVisibility();
		const rows = [...table.querySelectorAll("tbody tr:not(.group)")].filter(shown);
		return {
			rows: rows.length,
			columns: [...table.tHead.rows[0].cells].filter(shown).length - 1,
			empty: rows.filter((row) => ![...row.cells].slice(1).some((cell) => shown(cell) && cell.textContent.trim() + cell.innerHTML.trim())).length,
			said: document.getElementById("counted").textContent,
			search: location.search,
		};
	})()`)
}

// TestFilters: a filter shows the rows and columns that are asked for and no
// others, says how many, keeps the choice in the address, and gives all back.
func TestFilters(t *testing.T) {
	for _, row := range []struct {
		page, name, value  string // of a choice of rows
		column, columnWant string // and of a column
		impossible         [2]string
	}{
		{"tables/windows.html", "film", "thermal-pet-gloss-38", "machine", "desktop", [2]string{"machine", "sheet-fed"}},
		{"tables/waits.html", "ink", "eco-solvent", "storage", "loose-roll", [2]string{"medium", "card"}},
	} {
		t.Run(row.page, func(t *testing.T) {
			b := open(t, row.page)
			defer b.quiet()
			all := b.filtered()
			if all.Rows < 20 || all.Columns < 3 || all.Said != fmt.Sprintf("%d rows.", all.Rows) {
				t.Fatalf("without a choice: %+v", all)
			}
			b.choose(row.name, row.value)
			some := b.filtered()
			if some.Rows == 0 || some.Rows >= all.Rows || some.Columns != all.Columns || some.Empty > 0 {
				t.Errorf("%s %s: %+v of %+v", row.name, row.value, some, all)
			}
			if want := fmt.Sprintf("%d rows.", some.Rows); some.Said != want || !strings.Contains(some.Search, row.name+"="+row.value) {
				t.Errorf("%s %s: says %q at %q", row.name, row.value, some.Said, some.Search)
			}
			b.choose(row.column, row.columnWant)
			one := b.filtered()
			if one.Rows == 0 || one.Columns == 0 || one.Columns >= all.Columns || one.Empty > 0 {
				t.Errorf("%s %s too: %+v", row.column, row.columnWant, one)
			}
			b.goTo(row.page + one.Search)
			if again := b.filtered(); again != one {
				t.Errorf("opened by its address: %+v, was %+v", again, one)
			}
			b.choose(row.impossible[0], row.impossible[1])
			if none := b.filtered(); none.Rows != 0 || !strings.HasPrefix(none.Said, "No row: ") {
				t.Errorf("%v: %+v", row.impossible, none)
			}
			for _, name := range []string{row.name, row.column, row.impossible[0]} {
				b.choose(name, "")
			}
			if back := b.filtered(); back != all {
				t.Errorf("all choices taken back: %+v, was %+v", back, all)
			}
			b.scripts(false)
			defer b.scripts(true)
			b.goTo(row.page + one.Search)
			b.scripts(true)
			if plain := b.filtered(); plain.Rows != all.Rows || plain.Columns != all.Columns {
				t.Errorf("without script: %+v, want every row of %+v", plain, all)
			}
		})
	}
}

// TestWorkingUnfolds: a number of the tables leads to its own working, open.
func TestWorkingUnfolds(t *testing.T) {
	b := open(t, "tables/waits.html")
	defer b.quiet()
	href := eval[string](b, `document.querySelector('#filtered tbody td a').getAttribute("href")`)
	b.goTo("tables/" + href)
	if !eval[bool](b, `(() => { const fold = document.getElementById(decodeURIComponent(location.hash.slice(1))); return fold.tagName === "DETAILS" && fold.open && document.querySelectorAll("details.working[open]").length === 1; })()`) {
		t.Errorf("%s does not open its working", href)
	}
	inside := eval[string](b, `document.querySelector('#waits').closest(".scroll").querySelector("td a").getAttribute("href")`)
	page, _, _ := strings.Cut(href, "#")
	_, id, _ := strings.Cut(inside, "#")
	b.goTo("tables/" + page + "#" + id)
	if !eval[bool](b, `document.getElementById(decodeURIComponent(location.hash.slice(1))).closest("details").open && document.querySelectorAll(".asked").length > 1`) {
		t.Errorf("%s does not open its working or mark its column", inside)
	}
}
