package book

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// rollPages adds the table of rolls, and a page for each film with its workings.
func (b *builder) rollPages() {
	p := reckonedPage{
		Caution: b.cautions(shop.NipCaution, shop.LiftingCaution),
		CSV:     "/tables/rolls.csv", JSON: "/tables/rolls.json",
	}
	left := reckonedPart{ID: "left", Name: "Film left on a roll", Lead: "Measure across the whole roll. The working and the feet stand on the film’s own page."}
	for _, core := range b.cores() {
		for _, large := range []bool{false, true} {
			if g := b.leftGrid(core, large); len(g.Rows) > 0 {
				left.Grids = append(left.Grids, g)
			}
		}
	}
	if len(left.Grids) == 0 {
		left.Lead = "No film’s record has a core."
	}
	p.Parts = append(p.Parts, left)
	jobs := reckonedPart{ID: "jobs", Name: "Film and time for a job"}
	if w := b.shop.Front.Work; w != nil {
		jobs.Lead = fmt.Sprintf("On a warm machine at its usual speed, from the shop’s own figures: %s of set-up, %s of film lost in threading, borders of %s, %s between pieces, %s spoiled, and the hand work. As many pieces abreast as the film takes.",
			quantity.Metric(w.SetUp.Best), quantity.Metric(w.Threading.Best), quantity.Metric(w.Border.Best), quantity.Metric(w.Gap.Best), quantity.Metric(w.Spoils.Best))
		for _, n := range tables.JobPieces {
			if n > 1 {
				jobs.Grids = append(jobs.Grids, b.jobGrid(n))
			}
		}
	} else {
		jobs.Lead = "The shop’s record says nothing of its work."
	}
	p.Parts = append(p.Parts, b.markPart(), jobs)
	b.add(page{Path: "tables/rolls.html", Kind: "reckoned", Title: "Rolls, jobs and marks", Lead: "How much film is left, how much a job takes, and which roller makes a mark that comes again.", Tab: "Tables",
		Scripts: []string{"unfold.js"}, Data: p, Found: "table", Also: []string{"film left on roll", "roll length", "roll calculator", "how much film", "repeating mark", "roller finder", "job time", "film yield"}, Weight: 1.2})
	for _, f := range b.shop.Films {
		b.add(page{Path: "tables/rolls-" + f.ID + ".html", Kind: "reckoned", Title: "Rolls: " + f.Name, Lead: "What is left on a roll of it, and what jobs take.", Tab: "Tables", Scripts: []string{"unfold.js"}, Data: b.filmRollPage(f)})
	}
	b.export("tables/rolls.csv", func(w io.Writer) error { return tables.WriteRollsCSV(w, b.rolls) })
	b.export("tables/rolls.json", func(w io.Writer) error { return tables.WriteRollsJSON(w, b.rolls) })
}

// cores are the cores that films come on, the largest first.
func (b *builder) cores() []quantity.Length {
	var list []quantity.Length
	for _, r := range b.rolls.Films {
		if r.Known && !slices.Contains(list, r.Wound.Core) {
			list = append(list, r.Wound.Core)
		}
	}
	slices.SortFunc(list, func(x, y quantity.Length) int { return int(1e6 * (y - x)) })
	return list
}

// largeRoll is the diameter above which a new roll stands in a table of its own, with
// wider steps.
const largeRoll = 200 * quantity.Millimetre

// leftGrid is what is left of the films on one core, by the diameter: of small rolls, or
// of large ones.
func (b *builder) leftGrid(core quantity.Length, large bool) grid {
	g := grid{ID: "left-" + slug(quantity.Metric(core)), Caption: "Metres left, by the diameter of the roll in mm (inches under it); core " + quantity.Both(core), Corner: "film, and all that is wound", Wide: true}
	if large {
		g.ID += "-large"
		g.Caption = "Large rolls: metres left by the diameter in mm (inches under it); core " + quantity.Both(core)
	}
	var rolls []tables.FilmRoll
	for _, r := range b.rolls.Films {
		if r.Known && r.Wound.Core == core && (r.Full > largeRoll) == large {
			rolls = append(rolls, r)
		}
	}
	var diameters []quantity.Length
	for i, d := range tables.RollDiameters {
		if large && i%2 > 0 && d < largeRoll {
			continue
		}
		if slices.ContainsFunc(rolls, func(r tables.FilmRoll) bool { _, ok := leftAt(r, d); return ok }) {
			diameters = append(diameters, d)
			g.Heads = append(g.Heads, gridHead{Top: fmt.Sprintf("%.0f", d.Millimetres()), Under: fmt.Sprintf("%.1f", quantity.Number(d, "in"))})
		}
	}
	for _, r := range rolls {
		f := b.shop.Film(r.Film)
		row := gridRow{Name: f.Name, Under: quantity.Metric(r.Wound.Thickness), Href: "/materials/films/" + f.ID + ".html"}
		for _, d := range diameters {
			cell := gridCell{}
			if l, ok := leftAt(r, d); ok {
				cell.Text, cell.Href = fmt.Sprintf("%.0f", float64(l.Length)), "/tables/rolls-"+f.ID+".html#left"
			}
			row.Cells = append(row.Cells, cell)
		}
		g.Rows = append(g.Rows, row)
	}
	return g
}

// leftAt is what is left of a film at a diameter.
func leftAt(r tables.FilmRoll, d quantity.Length) (tables.FilmLeft, bool) {
	i := slices.IndexFunc(r.Left, func(l tables.FilmLeft) bool { return l.Outer == d })
	if i < 0 {
		return tables.FilmLeft{}, false
	}
	return r.Left[i], true
}

// jobGrid is what a number of pieces takes, machine by machine. Films of one width that
// take the same share a row.
func (b *builder) jobGrid(pieces int) grid {
	g := grid{ID: fmt.Sprintf("jobs-%d", pieces), Caption: fmt.Sprintf("%d good pieces: metres of film, minutes under it", pieces), Corner: "machine, film", Wide: true,
		Note: "An empty cell is a piece that is too wide for the film or the machine."}
	for _, s := range tables.JobSizes {
		g.Heads = append(g.Heads, gridHead{Top: s.Name})
	}
	for _, m := range b.shop.Laminators {
		first := len(g.Rows)
		for _, f := range b.shop.Films {
			row := gridRow{Name: m.Name, Under: "film " + quantity.Both(f.Width.Best) + " wide", Href: "/materials/laminators/" + m.ID + ".html"}
			for _, j := range b.rolls.Jobs {
				if j.Film == f.ID && j.Laminator == m.ID && j.Pieces == pieces {
					row.Cells = append(row.Cells, jobCell(j))
				}
			}
			if !slices.ContainsFunc(row.Cells, func(c gridCell) bool { return c.Text != "" }) {
				continue
			}
			like := func(r gridRow) bool { return strings.HasPrefix(r.Under, row.Under) }
			same := func(r gridRow) bool { return like(r) && slices.EqualFunc(r.Cells, row.Cells, sayTheSame) }
			if slices.ContainsFunc(g.Rows[first:], same) {
				continue
			}
			if slices.ContainsFunc(g.Rows[first:], like) { // the roll is changed sooner or later
				row.Under += ", rolls of " + quantity.Metric(f.RollLength.Best)
			}
			g.Rows = append(g.Rows, row)
		}
	}
	return g
}

// sayTheSame compares what two cells say, wherever their workings stand.
func sayTheSame(a, b gridCell) bool { return a.Text == b.Text && a.Under == b.Under }

func jobCell(j tables.FilmJob) gridCell {
	if !j.Fits {
		return gridCell{}
	}
	return gridCell{Text: fmt.Sprintf("%.1f", float64(j.Need.Length)), Under: fmt.Sprintf("%.0f\u00a0min", j.Need.Total.Minutes()), Href: "/tables/rolls-" + j.Film + ".html#" + jobID(j)}
}

func jobID(j tables.FilmJob) string {
	return fmt.Sprintf("%s.%s.%d", j.Laminator, strings.ToLower(j.Size), j.Pieces)
}

// markPart is the roller finder.
func (b *builder) markPart() reckonedPart {
	part := reckonedPart{ID: "marks", Name: "Which roller makes a mark that comes again", Lead: "Measure from one mark to the same place of the next; over ten repeats, divided by ten, it is ten times as exact. A distance that grows or shrinks along the run comes from a roll that is wound or unwound, not from a roller."}
	for _, m := range b.shop.Laminators {
		g := grid{ID: "rollers-" + m.ID, Caption: upperFirst(m.Name), Corner: "a mark every", Heads: []gridHead{{Top: "from–to, mm"}, {Top: "in"}, {Top: "diameter, mm"}}}
		for _, k := range b.rolls.Marks {
			if k.Laminator != m.ID {
				continue
			}
			name := upperFirst(k.Roller)
			if len(k.Alike) > 0 {
				name += ", or " + strings.Join(k.Alike, ", ")
			}
			g.Rows = append(g.Rows, gridRow{Name: fmt.Sprintf("%.0f\u00a0mm", k.Repeat.Millimetres()), Under: name, Cells: []gridCell{
				{Text: rangeText(k.Least.Millimetres(), k.Most.Millimetres()), Href: "#" + markID(k)},
				{Text: fmt.Sprintf("%.1f", quantity.Number(k.Repeat, "in")), Href: "#" + markID(k)},
				{Text: fmt.Sprintf("%.0f", k.Diameter.Millimetres()), Href: "#" + markID(k)},
			}})
		}
		part.Grids = append(part.Grids, g)
		part.Folds = append(part.Folds, b.markFold(m))
	}
	return part
}

func (b *builder) markFold(m *shop.Laminator) workingFold {
	var columns []foldColumn
	for _, k := range b.rolls.Marks {
		if k.Laminator == m.ID {
			columns = append(columns, foldColumn{workingCell{ID: markID(k), Room: upperFirst(k.Roller), Text: fmt.Sprintf("%.0f\u00a0mm", k.Repeat.Millimetres())}, k.Working})
		}
	}
	return b.fold(upperFirst(short(m.Name)), columns)
}

func markID(k tables.RollerMark) string { return k.Laminator + "." + slug(k.Roller) }

// filmRollPage is everything about rolls of one film.
func (b *builder) filmRollPage(f *shop.Film) reckonedPage {
	p := reckonedPage{JSON: "/tables/rolls.json", CSV: "/tables/rolls.csv", Back: filmLink(f)}
	for _, r := range b.rolls.Films {
		if r.Film != f.ID {
			continue
		}
		left := reckonedPart{ID: "left", Name: "Left on a roll"}
		if !r.Known {
			left.Lead = r.Reason
		} else {
			left.Lead = rollSaid(r)
			left.Folds = []workingFold{b.fold("Working", []foldColumn{{workingCell{ID: "left-working", Room: f.Name, Text: quantity.Metric(r.Wound.Thickness) + " on " + quantity.Metric(r.Wound.Core)}, r.Working}})}
			left.Grids = []grid{filmLeftGrid(r)}
		}
		p.Parts = append(p.Parts, left)
	}
	for _, ref := range f.RunsOn {
		p.Parts = append(p.Parts, b.filmJobsPart(f, b.shop.Laminator(ref.ID)))
	}
	return p
}

// rollSaid says what a new roll is.
func rollSaid(r tables.FilmRoll) string {
	text := "Core " + quantity.Both(r.Wound.Core) + ", " + quantity.Both(r.Wound.Thickness) + " wound."
	if r.Full > 0 {
		text = "A new roll of " + quantity.Both(r.Length) + " is " + quantity.Both(r.Full) + " across"
		if r.Mass > 0 {
			text += fmt.Sprintf(" and weighs about %.0f\u00a0kg (%.0f\u00a0lb) without its core", float64(r.Mass), float64(r.Mass)/0.45359237)
			if r.Mass > tables.HeavyRoll {
				text += ": two people or a lift"
			}
		}
		text += "."
	}
	return text
}

func filmLeftGrid(r tables.FilmRoll) grid {
	g := grid{ID: "left-here", Caption: "Left, by the diameter of the roll", Corner: "across", Heads: []gridHead{{Top: "m"}, {Top: "ft"}, {Top: "wraps"}}}
	for _, l := range r.Left {
		g.Rows = append(g.Rows, gridRow{Name: fmt.Sprintf("%.0f\u00a0mm", l.Outer.Millimetres()), Under: fmt.Sprintf("%.1f\u00a0in", quantity.Number(l.Outer, "in")), Cells: []gridCell{
			{Text: fmt.Sprintf("%.0f", float64(l.Length)), Href: "#left-working"},
			{Text: fmt.Sprintf("%.0f", quantity.Number(l.Length, "ft")), Href: "#left-working"},
			{Text: fmt.Sprintf("%.0f", l.Wraps), Href: "#left-working"},
		}})
	}
	return g
}

// filmJobsPart is what jobs take of a film in one machine, with their workings.
func (b *builder) filmJobsPart(f *shop.Film, m *shop.Laminator) reckonedPart {
	part := reckonedPart{ID: "jobs-" + m.ID, Name: "Jobs in " + lowerFirst(m.Name)}
	g := grid{ID: "taken-" + m.ID, Caption: upperFirst(short(m.Name)) + ": metres of film, minutes under it, by number of good pieces", Corner: "size", Note: "An empty cell is a piece that is too wide for the film or the machine."}
	for _, n := range tables.JobPieces {
		g.Heads = append(g.Heads, gridHead{Top: plural(n, "piece", "pieces")})
	}
	for _, s := range tables.JobSizes {
		row := gridRow{Name: s.Name}
		var columns []foldColumn
		for _, j := range b.rolls.Jobs {
			if j.Film != f.ID || j.Laminator != m.ID || j.Size != s.Name {
				continue
			}
			cell := jobCell(j)
			row.Cells = append(row.Cells, cell)
			if j.Fits {
				columns = append(columns, foldColumn{workingCell{ID: jobID(j), Room: plural(j.Pieces, "piece", "pieces"), Text: cell.Text + "\u00a0m, " + cell.Under}, j.Working})
			}
		}
		g.Rows = append(g.Rows, row)
		if len(columns) > 0 {
			part.Folds = append(part.Folds, b.fold(s.Name, columns))
		}
	}
	part.Grids = []grid{g}
	return part
}

// rollList is what a film's page says of its rolls.
func (b *builder) rollList(f *shop.Film) []list {
	for _, r := range b.rolls.Films {
		if r.Film == f.ID && r.Known {
			return []list{{Name: "On the roll", Items: []item{{Text: "Film left by the diameter, and what jobs take", Href: "/tables/rolls-" + f.ID + ".html", Under: rollSaid(r)}}}}
		}
	}
	return nil
}

// markList is what a machine's page says of its rollers' marks.
func (b *builder) markList(m *shop.Laminator) list {
	l := list{Name: "A mark that comes again", Lead: "Measured from one mark to the next, this is the roller that makes it. Never feel for it while the roller turns.", Columns: true}
	for _, k := range b.rolls.Marks {
		if k.Laminator == m.ID {
			l.Items = append(l.Items, item{Text: upperFirst(k.Roller), Href: "/tables/rolls.html#" + markID(k), Under: "every " + quantity.Both(k.Repeat)})
		}
	}
	return l
}
