package book

import (
	"slices"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// driesBy says how an ink gets ready.
var driesBy = map[string]string{
	"evaporation": "its carrier leaves by evaporation",
	"oxidation":   "it hardens with oxygen from the air",
	"radiation":   "it was cured by lamps and goes on curing in the dark",
	"toner":       "it was fused by heat; the hours are the trade’s rule",
}

func (b *builder) inkPage(ink *shop.Ink) materialPage {
	media := b.mediaOf(ink)
	p := materialPage{Cautions: tables.InkCautions(ink)}
	if len(media) > 0 {
		c := b.usual(ink, media[0])
		p.Big = b.inkNumbers(ink, media[0], c)
		p.Grids = append(p.Grids, b.inkByMedium(ink, media), b.coverageByRoom(ink, media[0]))
		if g, ok := b.afterDays(ink, media[0]); ok {
			p.Grids = append(p.Grids, g)
		}
		p.Drawing = b.drawCoverages("residue", c)
	}
	p.Words = append(p.Words, "How it gets ready: "+driesBy[ink.Dries]+".")
	p.Lists = append(p.Lists, b.inkLists(ink)...)
	if len(media) > 0 {
		if l, ok := b.measureWaitFirst(b.usual(ink, media[0])); ok {
			p.Lists = append(p.Lists, l)
		}
	}
	p.Lists = append(p.Lists, b.vapourList(ink)...)
	p.Sheets = b.inkSheets(ink)
	return p
}

// inkNumbers are the wait in the shop's usual way, the maker's, and the heavy one.
func (b *builder) inkNumbers(ink *shop.Ink, medium *shop.Medium, c tables.WaitCase) []bigNumber {
	where := short(b.shop.Storage(c.Storage).Name)
	first := b.bigWait("Wait", lowerFirst(where)+" on "+lowerFirst(medium.Name), c)
	heavy := c
	heavy.Coverage = "heavy"
	second := b.bigWait("Heavy coverage", "the same, "+quantity.Metric(ink.Coverage.Heavy.Best)+" laid down", heavy)
	m := ink.Makers
	number, unit, _ := cutUnit(quantity.Metric(m.Wait.Best))
	maker := bigNumber{Name: "The maker asks for", Number: number, Unit: strings.TrimSpace(unit),
		Under: "at " + quantity.Both(m.Temperature.Best)}
	return []bigNumber{first, second, maker}
}

// bigWait is a wait that stands large.
func (b *builder) bigWait(name, under string, c tables.WaitCase) bigNumber {
	n := bigNumber{Name: name, Under: under, Unit: "h"}
	v, ok := b.waits.get(c)
	switch {
	case !ok:
		n.Number, n.Unit = "–", ""
	case !v.Dries:
		n.Number, n.Unit, n.Verdict, n.Href = "hardly dries", "", "refuse", workingHref(c)
	default:
		n.Number, n.Href = hoursText(v), workingHref(c)
	}
	return n
}

// inkByMedium is the waits of an ink, medium by storage.
func (b *builder) inkByMedium(ink *shop.Ink, media []*shop.Medium) grid {
	room := b.shop.Room(b.shop.Front.Room.ID)
	g := grid{ID: "by-medium", Caption: "Hours to wait, by medium and storage", Corner: "normal coverage; " + lowerFirst(room.Name) + ", " + climate(room), Wide: true}
	var storages []*shop.Storage
	for _, s := range b.shop.Storages {
		if slices.ContainsFunc(media, func(m *shop.Medium) bool { return slices.Contains(b.answers.StoragesFor(m), s) }) {
			storages = append(storages, s)
			g.Heads = append(g.Heads, gridHead{Top: short(s.Name)})
		}
	}
	for i, m := range media {
		var cases []tables.WaitCase
		for _, s := range storages {
			cases = append(cases, tables.WaitCase{Ink: ink.ID, Medium: m.ID, Coverage: "normal", Storage: s.ID, Room: room.ID})
		}
		r := b.row(m.Name, "", "/materials/media/"+m.ID+".html", cases)
		r.Yours = i == 0 && len(media) > 1
		g.Rows = append(g.Rows, r)
	}
	return g.withSigns()
}

// coverageByRoom is the waits of an ink on one medium, coverage by room.
func (b *builder) coverageByRoom(ink *shop.Ink, medium *shop.Medium) grid {
	usual := b.usual(ink, medium)
	g := grid{ID: "by-room", Caption: "Hours to wait on " + lowerFirst(medium.Name) + ", by coverage and room",
		Corner: lowerFirst(b.shop.Storage(usual.Storage).Name), Wide: true}
	for _, r := range b.shop.Rooms {
		g.Heads = append(g.Heads, roomHead(r))
	}
	for _, coverage := range tables.Coverages {
		var cases []tables.WaitCase
		for _, r := range b.shop.Rooms {
			c := usual
			c.Coverage, c.Room = coverage, r.ID
			cases = append(cases, c)
		}
		r := b.row(coverage, coverageShare(ink, coverage), "", cases)
		r.Yours = coverage == "normal"
		g.Rows = append(g.Rows, r)
	}
	return g.withSigns()
}

// coverageShare is how much ink a coverage means.
func coverageShare(ink *shop.Ink, coverage string) string {
	switch coverage {
	case "light":
		return quantity.Metric(ink.Coverage.Light.Best)
	case "heavy":
		return quantity.Metric(ink.Coverage.Heavy.Best)
	}
	return quantity.Metric(ink.Coverage.Normal.Best)
}

func (b *builder) inkLists(ink *shop.Ink) []list {
	var lists []list
	if len(ink.ReadyTests) > 0 {
		l := list{Name: "Readiness tests", Lead: "The clock can say “not yet”. It cannot say “ready”: test the darkest part."}
		for _, id := range ink.ReadyTests {
			if page, text := b.findHeading(id); page != "" {
				l.Items = append(l.Items, item{Text: text, Href: "/" + page + "#" + id})
			}
		}
		if len(l.Items) > 0 {
			lists = append(lists, l)
		}
	}
	if len(ink.Ask) > 0 {
		l := list{Name: "Ask at the counter"}
		for _, q := range ink.Ask {
			l.Items = append(l.Items, item{Text: q})
		}
		lists = append(lists, l)
	}
	var warned list
	for _, w := range b.answers.Warnings() {
		if w.Ink == ink.ID {
			warned.Name = "What the physics doubts"
			warned.Items = append(warned.Items, item{Text: w.Text})
		}
	}
	if warned.Name != "" {
		lists = append(lists, warned)
	}
	return lists
}

// findHeading finds a heading of the chapters by its id, the chapter of
// readiness tests first.
func (b *builder) findHeading(id string) (page, text string) {
	for _, want := range []bool{true, false} {
		for _, c := range b.chapters {
			if (c.Slug == "readiness") != want {
				continue
			}
			for _, h := range c.Headings {
				if h.ID == id {
					return c.Page, h.Text
				}
			}
		}
	}
	return "", ""
}

func (b *builder) inkSheets(ink *shop.Ink) []*sheet {
	s := b.sheet("The ink", ink.Head)
	s.word("class", ink.Class)
	value(s, "light coverage", ink.Coverage.Light)
	value(s, "normal coverage", ink.Coverage.Normal)
	value(s, "heavy coverage", ink.Coverage.Heavy)
	value(s, "thickness when dry", ink.DryFilm)
	value(s, "relief", ink.Relief)
	value(s, "density", ink.Density)
	value(s, "softens at", ink.Softens)
	m := b.sheet("The maker’s wait", ink.Head)
	value(m, "wait", ink.Makers.Wait)
	if medium := b.shop.Medium(ink.Makers.Medium.ID); medium != nil {
		m.record("on", medium.Name, "/materials/media/"+medium.ID+".html", "")
	}
	if st := b.shop.Storage(ink.Makers.Storage.ID); st != nil {
		m.record("kept", st.Name, "", "")
	}
	m.word("coverage", ink.Makers.Coverage)
	value(m, "temperature", ink.Makers.Temperature)
	value(m, "relative humidity", ink.Makers.Humidity)
	value(m, "least wait allowed", ink.Makers.Least)
	sheets := []*sheet{s, m}
	if e := ink.Evaporation; e != nil {
		d := b.sheet("How it dries", ink.Head)
		if c := b.shop.Carrier(e.Carrier.ID); c != nil {
			d.record("carrier", c.Name, "", c.Source.ID)
		}
		value(d, "carrier laid down, normal coverage", e.Load)
		value(d, "carrier that may be left", e.Safe)
		value(d, "concentration that saturates the air", e.Saturation)
		value(d, "activation energy of diffusion", e.Activation)
		value(d, "believable diffusivity", e.Believable)
		sheets = append(sheets, d)
	}
	if r := ink.Reaction; r != nil {
		d := b.sheet("How it hardens", ink.Head)
		value(d, "activation energy", r.Activation)
		value(d, "share that may be unreacted", r.Unreacted)
		sheets = append(sheets, d)
	}
	if t := ink.Toner; t != nil {
		d := b.sheet("Its hours", ink.Head)
		value(d, "any sheet", t.Base)
		value(d, "more on a gloss coating", t.Coated)
		value(d, "more for heavy coverage", t.Heavy)
		sheets = append(sheets, d)
	}
	return sheets
}
