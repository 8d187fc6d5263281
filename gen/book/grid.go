package book

import (
	"strconv"
	"strings"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// grid is a computed table as a page shows it.
type grid struct {
	ID      string // of its caption
	Caption string
	Corner  string // heads the column of names
	Heads   []gridHead
	Rows    []gridRow
	Signs   []sign // the small letters in it and what they say
	Note    string // a sentence more about its cells
	Wide    bool   // needs the whole width
	More    *way   // to a larger table
	Roomy   bool   // its cells hold words: on a narrow screen it scrolls before they break
	Upright bool   // its heads are names longer than its columns are wide: they stand on end
}

type gridHead struct{ Top, Under, Href string }

type gridRow struct {
	Name, Under, Href string
	Sign              string // letters that hold for every cell
	Cells             []gridCell
	Whole             *gridCell // one cell across, where all would say the same
	Yours             bool      // stands between thick rules: the shop's usual
}

// gridCell is one value: its text, its working, a small letter, a verdict, and
// the same in other units under it. A second value may follow the first.
type gridCell struct {
	Text, Href, Sign, Verdict, Under string
	Then, ThenUnder                  string
}

type sign struct{ Letter, Text string }

// The small letters of waits.
var waitSigns = []sign{
	{"m", "the least wait that the ink's record allows; the computed one is shorter"},
	{"t", "rests on a transfer from the medium that the maker's figure holds for"},
}

// hoursText writes a wait's hours: 24, 2½, 168.
func hoursText(v tables.WaitValue) string {
	h := v.Wait.Hours()
	whole := int(h + 1e-6)
	if h-float64(whole) > 0.25 {
		if whole == 0 {
			return "½"
		}
		return strconv.Itoa(whole) + "½"
	}
	return strconv.Itoa(whole)
}

// waitCell is the cell of a wait.
func waitCell(v tables.WaitValue) gridCell {
	c := gridCell{Href: workingHref(v.WaitCase)}
	if !v.Dries {
		c.Verdict, c.Text = "refuse", "hardly dries"
		return c
	}
	c.Text = hoursText(v)
	if v.Held {
		c.Sign += "m"
	}
	if v.Transfer {
		c.Sign += "t"
	}
	return c
}

// row makes the cells of a row from cases; a case that the table lacks leaves
// its cell empty.
func (b *builder) row(name, under, href string, cases []tables.WaitCase) gridRow {
	r := gridRow{Name: name, Under: under, Href: href}
	hardly, first := 0, gridCell{}
	for _, c := range cases {
		v, ok := b.waits.get(c)
		if !ok {
			r.Cells = append(r.Cells, gridCell{})
			continue
		}
		cell := waitCell(v)
		if !v.Dries {
			if hardly == 0 {
				first = cell
			}
			hardly++
		}
		r.Cells = append(r.Cells, cell)
	}
	if hardly > 1 && hardly == len(cases) {
		first.Text = "hardly dries: unroll or unstack it, then count"
		if s := b.shop.Storage(cases[0].Storage); s != nil && s.Kind != "tight-roll" && s.Kind != "stack" {
			first.Text = "hardly dries in fourteen days"
		}
		r.Whole = &first
	}
	for _, s := range waitSigns {
		r.lift(s.Letter)
	}
	return r
}

// lift moves a letter that every number of the row has to the row's name.
func (r *gridRow) lift(letter string) {
	n := 0
	for _, c := range r.Cells {
		if c.Text == "" || c.Verdict != "" {
			continue
		}
		if !strings.Contains(c.Sign, letter) {
			return
		}
		n++
	}
	if n < 2 {
		return
	}
	r.Sign += letter
	for i := range r.Cells {
		r.Cells[i].Sign = strings.Replace(r.Cells[i].Sign, letter, "", 1)
	}
}

// withSigns adds the explanations of the letters that occur in waits.
func (g grid) withSigns() grid {
	g.Signs = signsIn(g.Rows, waitSigns)
	return g
}

// signsIn are those of the signs that occur in rows.
func signsIn(rows []gridRow, signs []sign) []sign {
	var list []sign
	for _, s := range signs {
		found := false
		for _, r := range rows {
			found = found || strings.Contains(r.Sign, s.Letter)
			for _, c := range r.Cells {
				found = found || r.Whole == nil && strings.Contains(c.Sign, s.Letter)
			}
		}
		if found {
			list = append(list, s)
		}
	}
	return list
}

// roomHead heads a room's column.
func roomHead(r *shop.Room) gridHead {
	return gridHead{Top: r.Name, Under: climate(r), Href: "/materials/rooms/" + r.ID + ".html"}
}
