package book

import (
	"fmt"
	"html/template"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// afters is the table of what stays after lamination with a way to find a value.
type afters struct {
	all  []tables.AfterValue
	find map[tables.AfterCase]int
}

func newAfters(all []tables.AfterValue) *afters {
	a := &afters{all: all, find: make(map[tables.AfterCase]int, len(all))}
	for i, v := range all {
		a.find[v.AfterCase] = i
	}
	return a
}

// get finds a value; false where the table has none.
func (a *afters) get(c tables.AfterCase) (tables.AfterValue, bool) {
	i, ok := a.find[c]
	if !ok {
		return tables.AfterValue{}, false
	}
	return a.all[i], true
}

// has reports whether the table knows an ink on a medium; nil stands for any.
func (a *afters) has(ink *shop.Ink, medium *shop.Medium) bool {
	return slices.ContainsFunc(a.all, func(v tables.AfterValue) bool {
		return v.Ink == ink.ID && (medium == nil || v.Medium == medium.ID)
	})
}

// afterHref is where the working of a value stands.
func afterHref(c tables.AfterCase) string {
	return "/" + afterPath(c) + "#" + afterID(c)
}

// afterPath is where what stays in a print with a back stands, with its workings.
func afterPath(c tables.AfterCase) string {
	return "tables/after/" + c.Ink + "." + c.Medium + "." + c.Back + ".html"
}

func afterID(c tables.AfterCase) string {
	return fmt.Sprintf("%s.%.0f", c.Film, c.Spent.Percent())
}

// backNames say what lies on a print's back.
var backNames = map[string]string{"open": "back open", "film": "film on the back", "mounted": "mounted"}

// spentNames say how much of its wait a print had had.
func spentName(share quantity.Fraction) string {
	switch {
	case share >= 1:
		return "after its wait"
	case math.Abs(float64(share)-0.5) < 1e-9:
		return "at half its wait"
	}
	return "at " + quantity.Metric(share) + " of its wait"
}

// early are the shares of the table that are less than the whole wait.
func early() []quantity.Fraction {
	return slices.DeleteFunc(slices.Clone(tables.SpentShares), func(s quantity.Fraction) bool { return s >= 1 })
}

// clearText writes the days until a print is clear, rounded up: half days below
// three, whole days up to thirty. More than that is not known well enough for a
// number.
func clearText(v tables.AfterValue) string {
	days := float64(v.Clear / quantity.Day)
	if days > 30 {
		return "30+"
	}
	step := 1.0
	if days < 3 {
		step = 0.5
	}
	days = math.Ceil(days/step-1e-9) * step
	whole := strconv.Itoa(int(days))
	switch {
	case days == math.Trunc(days):
		return whole
	case days < 1:
		return "½"
	}
	return whole + "½"
}

// clearCell is the days of a print laminated at half its wait, and under it those of
// one laminated earlier still.
func (b *builder) clearCell(c tables.AfterCase) gridCell {
	shares := early()
	c.Spent = shares[0]
	v, ok := b.afters.get(c)
	if !ok {
		return gridCell{}
	}
	cell := gridCell{Href: afterHref(c), Text: clearText(v)}
	if v.Locked() {
		return gridCell{Href: afterHref(c), Text: "locked in", Verdict: "refuse"}
	}
	c.Spent = shares[len(shares)-1]
	if v, ok = b.afters.get(c); ok {
		cell.Under = "locked in"
		if !v.Locked() {
			cell.Under = clearText(v)
		}
	}
	return cell
}

// afterPage is the table of what stays after lamination.
type afterPage struct {
	Lead  string
	Notes []string
	Parts []afterPart
}

type afterPart struct {
	Name, Ink string
	Prints    []roomPlace
	Grid      grid
}

// afterPages adds the table of what stays after lamination, its files, and a page
// of workings for each ink.
func (b *builder) afterPages() {
	if len(b.afters.all) == 0 {
		return
	}
	room := b.shop.Room(b.shop.Front.Room.ID)
	p := afterPage{Notes: tables.AfterNotes,
		Lead: "Normal coverage, " + lowerFirst(room.Name) + ", " + climate(room) + ". A print laminated early holds too much carrier; these are the days until it is down to its limit under the film."}
	for _, ink := range b.shop.Inks {
		if !b.afters.has(ink, nil) {
			continue
		}
		part := afterPart{Name: ink.Name, Ink: "/materials/inks/" + ink.ID + ".html", Grid: b.afterByMedium(ink)}
		for _, m := range b.mediaOf(ink) {
			if !b.afters.has(ink, m) {
				continue
			}
			backs := tables.BacksOf(m)
			for _, back := range backs {
				c := b.answers.UsualAfter(ink, m)
				c.Back = back
				name, title := m.Name, "After lamination: "+lowerFirst(ink.Name)+" on "+lowerFirst(m.Name)
				if len(backs) > 1 {
					name, title = name+", "+backNames[back], title+", "+backNames[back]
				}
				part.Prints = append(part.Prints, roomPlace{name, "/" + afterPath(c)})
				b.add(page{Path: afterPath(c), Kind: "afterworkings", Title: title, Lead: "What stays under each film, and how it comes about.",
					Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.afterWorkings(ink, m, back)})
			}
		}
		p.Parts = append(p.Parts, part)
	}
	b.add(page{Path: "tables/after.html", Kind: "after", Title: "What stays after lamination", Lead: "How long an early print takes to come right under its film, by medium, film and back, and where the carrier is locked in.",
		Tab: "Tables", Data: p, Found: "table", Also: []string{"laminated too early", "outgassing after lamination", "locked in", "recovers"}})
	b.export("tables/after.csv", func(w io.Writer) error { return tables.WriteAftersCSV(w, b.afters.all) })
	b.export("tables/after.json", func(w io.Writer) error { return tables.WriteAftersJSON(w, b.afters.all) })
}

// twoShares explains the two numbers of a cell.
var twoShares = "Large: laminated at half its wait; small: at three tenths of it. 30+ is more than thirty days; the crossed mark, locked in, more than a year. An empty cell is a film that will not do."

// afterByMedium is the days of an ink's early prints, film by medium, backs as they are.
func (b *builder) afterByMedium(ink *shop.Ink) grid {
	g := grid{ID: "after-" + ink.ID, Caption: upperFirst(ink.Name) + ": days under film until it is down to its limit", Corner: "back as the medium leaves it", Wide: true, Note: twoShares}
	var cases []tables.AfterCase
	for _, m := range b.mediaOf(ink) {
		if b.afters.has(ink, m) {
			g.Heads = append(g.Heads, gridHead{Top: short(upperFirst(m.Name)), Under: backWord(m)})
			cases = append(cases, b.answers.UsualAfter(ink, m))
		}
	}
	g.Rows = b.afterRows(cases)
	return g
}

// afterByBack is the same on one medium, film by back.
func (b *builder) afterByBack(ink *shop.Ink, m *shop.Medium) grid {
	g := grid{ID: "backs-" + ink.ID + "-" + m.ID, Caption: upperFirst(ink.Name) + " on " + lowerFirst(m.Name) + ": what the back does", Corner: "days under film", Wide: true}
	var cases []tables.AfterCase
	for _, back := range tables.BacksOf(m) {
		g.Heads = append(g.Heads, gridHead{Top: backNames[back]})
		c := b.answers.UsualAfter(ink, m)
		c.Back = back
		cases = append(cases, c)
	}
	g.Rows = b.afterRows(cases)
	return g
}

// afterRows are the films down and the given cases across; a film that none of
// them takes has no row.
func (b *builder) afterRows(cases []tables.AfterCase) []gridRow {
	var rows []gridRow
	for _, f := range b.shop.Films {
		r := gridRow{Name: f.Name, Href: "/materials/films/" + f.ID + ".html"}
		any := false
		for _, c := range cases {
			c.Film = f.ID
			cell := b.clearCell(c)
			any = any || cell.Text != ""
			r.Cells = append(r.Cells, cell)
		}
		if any {
			rows = append(rows, r)
		}
	}
	return rows
}

// afterDays is what stays under each film, day by day, of a print that was
// laminated at half its wait: for an ink's own page.
func (b *builder) afterDays(ink *shop.Ink, m *shop.Medium) (grid, bool) {
	g := grid{ID: "after", Caption: "Laminated at half its wait on " + lowerFirst(m.Name) + ": carrier left under the film, g/m²", Corner: backWord(m), Wide: true,
		Note: "Under “days” stand those until it is down to its limit; 30+ is more than thirty, the crossed mark a year and more."}
	g.Heads = append(g.Heads, gridHead{Top: "at once"})
	for _, d := range tables.AfterDays {
		g.Heads = append(g.Heads, gridHead{Top: plural(int(d), "day", "days")})
	}
	g.Heads = append(g.Heads, gridHead{Top: "days"})
	for _, f := range b.shop.Films {
		c := b.answers.UsualAfter(ink, m)
		c.Film, c.Spent = f.ID, early()[0]
		v, ok := b.afters.get(c)
		if !ok {
			continue
		}
		r := gridRow{Name: f.Name, Href: "/materials/films/" + f.ID + ".html"}
		for _, amount := range append([]quantity.Grammage{v.Start}, v.Left...) {
			r.Cells = append(r.Cells, gridCell{Text: fmt.Sprintf("%.2f", quantity.Number(amount, "g/m2")), Href: afterHref(c)})
		}
		days := gridCell{Text: clearText(v), Href: afterHref(c)}
		if v.Locked() {
			days = gridCell{Text: "locked in", Verdict: "refuse", Href: afterHref(c)}
		}
		r.Cells = append(r.Cells, days)
		g.Rows = append(g.Rows, r)
	}
	return g, len(g.Rows) > 0
}

// afterWorkingsPage is every working of one print, and what holds for all.
type afterWorkingsPage struct {
	Ink     *shop.Ink
	Medium  *shop.Medium
	Words   []string
	Backs   *grid // where there is more than one
	Drawing template.HTML
	Shared  []workingStep // what holds for every film
	Folds   []workingFold
}

// afterWorkings are the films of a print with a back, one share of the wait
// beside the other.
func (b *builder) afterWorkings(ink *shop.Ink, m *shop.Medium, back string) afterWorkingsPage {
	p := afterWorkingsPage{Ink: ink, Medium: m, Words: tables.AfterNotes}
	if len(tables.BacksOf(m)) > 1 {
		g := b.afterByBack(ink, m)
		p.Backs = &g
		p.Drawing = b.drawBacksOf(ink, m)
	}
	for _, f := range b.shop.Films {
		c := b.answers.UsualAfter(ink, m)
		c.Film, c.Back = f.ID, back
		if fold := b.afterFold(c, f); len(fold.Cells) > 0 {
			p.Folds = append(p.Folds, fold)
		}
	}
	p.Shared = shared(p.Folds)
	return p
}

func (b *builder) afterFold(c tables.AfterCase, f *shop.Film) workingFold {
	var columns []foldColumn
	for _, share := range tables.SpentShares {
		c.Spent = share
		if v, ok := b.afters.get(c); ok {
			columns = append(columns, foldColumn{workingCell{ID: afterID(c), Text: clearWords(v), Room: spentName(share)}, v.Working})
		}
	}
	return b.fold(lowerFirst(f.Name), columns)
}

func clearWords(v tables.AfterValue) string {
	switch {
	case v.Locked():
		return "locked in"
	case v.Clear == 0:
		return "within its limit"
	}
	text := clearText(v)
	if text == "½" || text == "1" {
		return text + "\u00a0day"
	}
	return text + "\u00a0days"
}

// drawBacksOf draws what the back does to an early print, under the first film
// that it takes.
func (b *builder) drawBacksOf(ink *shop.Ink, m *shop.Medium) template.HTML {
	films := b.answers.FilmsOn(ink, m, "normal")
	if len(films) == 0 {
		return ""
	}
	c := b.answers.UsualAfter(ink, m)
	c.Spent = early()[0]
	title := "What the back does: " + lowerFirst(ink.Name) + " on " + lowerFirst(short(m.Name)) + " under " + lowerFirst(films[0].Name) + ", laminated " + spentName(c.Spent)
	drawing, err := b.drawAfter("drawing", title, curvesUnder(c, films[:1], tables.BacksOf(m)))
	if err != nil {
		b.fault(afterPath(c), err)
	}
	return drawing
}

// under is one curve of a drawing: a case and its name.
type under struct {
	tables.AfterCase
	name string
}

// curvesUnder are the curves of a case under each film, with each back, named for
// what tells them apart.
func curvesUnder(c tables.AfterCase, films []*shop.Film, backs []string) []under {
	var list []under
	for _, f := range films {
		for _, back := range backs {
			c.Film, c.Back = f.ID, back
			name := lowerFirst(short(f.Name))
			switch {
			case len(backs) > 1 && len(films) > 1:
				name += ", " + backNames[back]
			case len(backs) > 1:
				name = backNames[back]
			}
			list = append(list, under{c, name})
		}
	}
	return list
}

// longestDrawn is how far the drawings go.
const longestDrawn = 30 * quantity.Day

// drawAfter draws what is left under film against the days since lamination.
func (b *builder) drawAfter(id, title string, cases []under) (template.HTML, error) {
	chart := draw.Chart{ID: id, Title: title, X: draw.Axis{Label: "days since lamination", Log: true, To: float64(longestDrawn / quantity.Day)}}
	top, limit, unit := 0.0, 0.0, ""
	var ends []string
	for _, c := range cases {
		curve, err := b.answers.AfterCurve(c.AfterCase, longestDrawn)
		if err != nil {
			return "", err
		}
		s := draw.Series{Name: c.name, Y: curve.Left}
		for _, t := range curve.Times {
			s.X = append(s.X, float64(t/quantity.Day))
		}
		chart.X.From = s.X[0]
		top, limit, unit = math.Max(top, slices.Max(s.Y)), curve.Limit, curve.Unit
		chart.Curves = append(chart.Curves, s)
		ends = append(ends, afterEnd(s, limit, unit))
	}
	chart.Y = draw.Axis{Label: "carrier left, " + unit, Log: true, From: niceBottom(limit / 10), To: niceTop(top)}
	chart.Level = &draw.Level{Name: "limit " + short3(limit) + " " + unit, At: limit}
	chart.Desc = strings.Join(ends, " ")
	room := b.shop.Room(cases[0].Room)
	caption := title + "; " + lowerFirst(b.shop.Storage(cases[0].Storage).Name) + ", " + climate(room) + ". Both axes go by powers of ten."
	n := numbers{ID: id + "-n", Title: title + ", in numbers", Heads: []string{"days"}}
	for _, s := range chart.Curves {
		n.Heads = append(n.Heads, s.Name+", "+unit)
	}
	for _, d := range append([]float64{chart.X.From}, tables.AfterDays...) {
		row := []string{short3(d)}
		for _, s := range chart.Curves {
			row = append(row, at(s, d))
		}
		n.Rows = append(n.Rows, row)
	}
	return figure(chart.SVG(), caption, b.part("numbers", n)), nil
}

// afterEnd says in a sentence where a curve goes.
func afterEnd(s draw.Series, limit float64, unit string) string {
	name := upperFirst(s.Name)
	switch day, ok := draw.Crossing(s, limit); {
	case s.Y[0] <= limit:
		return fmt.Sprintf("%s: within the limit from the start.", name)
	case ok:
		return fmt.Sprintf("%s: down to the limit after %s days.", name, short3(day))
	}
	return fmt.Sprintf("%s: still %s %s after %s days.", name, short3(s.Y[len(s.Y)-1]), unit, short3(s.X[len(s.X)-1]))
}

// computedAfter is a drawing of what stays in an early print under one film or more.
func (b *builder) computedAfter(a asked) template.HTML {
	c := b.answers.UsualAfter(a.ink, a.medium)
	c.Spent = early()[0]
	if text, ok := a.Keys["spent"]; ok {
		share, err := quantity.Parse[quantity.Fraction](text)
		if err != nil {
			b.problems.add(a.where("spent"), "spent: "+err.Error())
			return ""
		}
		c.Spent = share
	}
	backs := tables.BacksOf(a.medium)
	if len(a.films) > 1 {
		backs = backs[:1]
	}
	if text, ok := a.Keys["back"]; ok {
		backs = words(text)
	}
	for _, back := range backs {
		if !slices.Contains(tables.Backs, back) {
			b.problems.add(a.where("back"), fmt.Sprintf("back: %q is none of %s", back, strings.Join(tables.Backs, ", ")))
			return ""
		}
	}
	title := "What stays in " + a.print()
	if len(a.films) == 1 {
		title += " under " + lowerFirst(a.films[0].Name)
	}
	drawing, err := b.drawAfter(a.ID, a.title(title+", laminated "+spentName(c.Spent)), curvesUnder(c, a.films, backs))
	if err != nil {
		b.problems.add(a.where("film"), err.Error())
	}
	return drawing
}
