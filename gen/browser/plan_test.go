package browser

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"laydown/data"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// jobs makes jobs of every sort: sound ones, ones with a history, and a few that
// make no sense. The seed is fixed, so that a failure can be looked at again.
func jobs(s *shop.Shop, n int) []tables.Job {
	r := rand.New(rand.NewPCG(7, 2026))
	one := func(list ...string) string { return list[r.IntN(len(list))] }
	id := func(heads ...string) string { return one(heads...) }
	var inks, media, films, machines, rooms, storages []string
	for _, x := range s.Inks {
		inks = append(inks, x.ID)
	}
	for _, x := range s.Media {
		media = append(media, x.ID)
	}
	for _, x := range s.Films {
		films = append(films, x.ID)
	}
	for _, x := range s.Laminators {
		machines = append(machines, x.ID)
	}
	for _, x := range s.Rooms {
		rooms = append(rooms, x.ID)
	}
	for _, x := range s.Storages {
		storages = append(storages, x.ID)
	}
	history := func() string {
		var stays []string
		for range r.IntN(4) {
			stays = append(stays, fmt.Sprintf("%d %s %s", 1+r.IntN(30), one("h", "h", "min"), id(storages...)))
		}
		return strings.Join(stays, ", ")
	}
	list := make([]tables.Job, n)
	for i := range list {
		ink := s.Ink(id(inks...))
		medium := id(media...)
		if r.IntN(10) > 0 { // mostly a medium that the ink prints on
			var fit []string
			for _, m := range s.Media {
				if s.PrintsOn(ink, m) {
					fit = append(fit, m.ID)
				}
			}
			medium = id(fit...)
		}
		list[i] = tables.Job{
			Ink: ink.ID, Medium: medium, Film: id(films...),
			Coverage:  one("", "light", "normal", "heavy"),
			Storage:   one("", id(storages...)),
			Room:      one("", id(rooms...)),
			Laminator: one("", id(machines...), id(machines...)),
			History:   one("", history(), history()),
			Printed:   one("", "unknown", "2026-11-23T15:40", "2026-11-24T20:05", "2026-11-20T09:00", "2026-11-25T08:59", "2026-11-26T10:00"),
			Now:       "2026-11-25T09:00",
			Grain:     one("", "long", "short", "unknown"),
			Sheet:     one("", "", "320x450 mm", "450x320mm", "12x18 in", "roll", "1700x900 mm", "A3"),
			Back:      one("", "open", "film", "mounted"),
			StackRH:   one("", "", "", "35 %", "50%", "61 %", "95 %"),
			Pieces:    one("", "", "", "", "1", "2", "7", "25", " 40 ", "480", "480", "12", one("0", "many", "2.5", "+3")),
		}
		if m := s.Laminator(list[i].Laminator); m != nil && r.IntN(2) > 0 {
			speeds := tables.Speeds(m) // the page holds windows for these
			list[i].Speed = fmt.Sprintf("%g m/s", float64(speeds[r.IntN(len(speeds))]))
		} else if r.IntN(8) == 0 {
			list[i].Speed = "900 ft/min"
		}
		if r.IntN(3) > 0 { // mostly a machine that takes both
			var fit []string
			for _, m := range s.Laminators {
				if slices.ContainsFunc(s.Film(list[i].Film).RunsOn, func(ref shop.Ref) bool { return ref.ID == m.ID }) {
					fit = append(fit, m.ID)
				}
			}
			list[i].Laminator, list[i].Sheet, list[i].Speed = id(fit...), "", ""
		}
	}
	return list
}

// answered is what the page and the program both say of a job.
type answered struct {
	Error          string               `json:"error"`
	Verdict        tables.Verdict       `json:"verdict"`
	Reasons        []tables.Reason      `json:"reasons"`
	WaitHours      *float64             `json:"wait_hours"`
	WaitReason     string               `json:"wait_reason"`
	RemainingHours *float64             `json:"remaining_hours"`
	MakerWaitHours float64              `json:"maker_wait_hours"`
	ReadyBy        *string              `json:"ready_by"`
	HandOverBy     *string              `json:"hand_over_by"`
	HandOverHours  *float64             `json:"hand_over_hours"`
	HandOver       string               `json:"hand_over"`
	HandOverReason string               `json:"hand_over_reason"`
	Counted        string               `json:"counted"`
	Window         *tables.Window       `json:"window"`
	WindowReason   string               `json:"window_reason"`
	Others         []string             `json:"others"`
	Feed           tables.Feed          `json:"feed"`
	Cautions       []string             `json:"cautions"`
	Laminate       []tables.Line        `json:"laminate"`
	Faults         []tables.LikelyFault `json:"faults"`
	Tests          []string             `json:"tests"`
}

// The page gives the same answer as the program, over many jobs: the verdict,
// every reason word for word, every hour and the time on the clock.
func TestPlanPageAgreesWithTheProgram(t *testing.T) {
	s, problems := shop.Load(data.Files, nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	made, err := tables.New(s)
	if err != nil {
		t.Fatal(err)
	}
	all := jobs(s, 3000)
	b := open(t, "plan.html")
	defer b.quiet()
	eval[bool](b, `new Promise((done, fail) => {
		const load = (names) => names.length === 0 ? done(true) : (() => {
			const tag = document.createElement('script');
			tag.src = document.getElementById('plan-form').dataset.scripts + names[0];
			tag.onload = () => load(names.slice(1));
			tag.onerror = () => fail(new Error(names[0]));
			document.head.append(tag);
		})();
		load(['plan-data.js', `+scripts(s)+`]);
	})`)
	verdicts, errors, histories, windows, promises, early := map[tables.Verdict]int{}, 0, 0, 0, 0, 0
	for start := 0; start < len(all); start += 500 {
		part := all[start:min(start+500, len(all))]
		asked, err := json.Marshal(lowerCase(part))
		if err != nil {
			t.Fatal(err)
		}
		text := eval[string](b, `JSON.stringify(`+string(asked)+`.map((job) => {
			try { return window.laydownPlan.answer(job); } catch (e) { return { error: e.message }; }
		}))`)
		var page []answered
		if err := json.Unmarshal([]byte(text), &page); err != nil {
			t.Fatal(err)
		}
		for i, job := range part {
			want := ask(made, job)
			if (want.Error != "") != (page[i].Error != "") {
				t.Errorf("%+v:\npage    %q\nprogram %q", job, page[i].Error, want.Error)
				continue
			}
			if want.Error != "" {
				errors++
				continue
			}
			verdicts[want.Verdict]++
			if job.History != "" {
				histories++
			}
			if want.Window != nil {
				windows++
			}
			if want.HandOverBy != nil {
				promises++
			}
			if slices.ContainsFunc(want.Reasons, func(r tables.Reason) bool { return strings.HasPrefix(r.Text, "Laminated now") }) {
				early++
			}
			got, wanted := oneLine(t, page[i]), oneLine(t, want)
			if got != wanted {
				t.Errorf("%+v:\npage    %s\nprogram %s", job, got, wanted)
			}
		}
	}
	t.Logf("%d jobs: %v, %d refused as typed, %d with a history, %d with a window, %d with a hand-over, %d told what stays", len(all), verdicts, errors, histories, windows, promises, early)
	if early < 50 {
		t.Errorf("only %d jobs were told what stays: the comparison would hardly notice one", early)
	}
	if windows < 20 {
		t.Errorf("only %d jobs with a window: the comparison would hardly notice one", windows)
	}
	if promises < 100 {
		t.Errorf("only %d jobs with a hand-over: the comparison would hardly notice one", promises)
	}
	for _, v := range tables.Verdicts {
		if verdicts[v] == 0 {
			t.Errorf("no job came to the verdict %s: the comparison would not notice it", v)
		}
	}
}

func ask(made *tables.Tables, job tables.Job) answered {
	p, err := made.Plan(job)
	if err != nil {
		return answered{Error: err.Error()}
	}
	return answered{
		Verdict: p.Verdict, Reasons: p.Reasons, WaitHours: p.WaitHours, WaitReason: p.WaitReason,
		RemainingHours: p.RemainingHours, MakerWaitHours: p.MakerWaitHours, ReadyBy: p.ReadyBy, Counted: p.Counted,
		HandOverBy: p.HandOverBy, HandOverHours: p.HandOverHours, HandOver: p.HandOver, HandOverReason: p.HandOverReason,
		Window: p.Window, WindowReason: p.WindowReason, Others: p.Others, Feed: p.Feed, Cautions: p.Cautions, Laminate: p.Laminate, Faults: p.Faults, Tests: p.Tests,
	}
}

// oneLine writes an answer on one line; lists that are empty and lists that are
// missing read the same.
func oneLine(t *testing.T, a answered) string {
	t.Helper()
	if len(a.Others) == 0 {
		a.Others = nil
	}
	if len(a.Tests) == 0 {
		a.Tests = nil
	}
	if len(a.Faults) == 0 {
		a.Faults = nil
	}
	if len(a.Laminate) == 0 {
		a.Laminate = nil
	}
	b, err := json.Marshal(a)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// lowerCase gives jobs the names that the page uses.
func lowerCase(jobs []tables.Job) []map[string]string {
	list := make([]map[string]string, len(jobs))
	for i, j := range jobs {
		list[i] = map[string]string{
			"ink": j.Ink, "medium": j.Medium, "film": j.Film, "coverage": j.Coverage, "storage": j.Storage,
			"history": j.History, "printed": j.Printed, "now": j.Now, "room": j.Room, "laminator": j.Laminator,
			"speed": j.Speed, "grain": j.Grain, "sheet": j.Sheet, "back": j.Back, "stackRH": j.StackRH, "pieces": j.Pieces,
		}
	}
	return list
}

func scripts(s *shop.Shop) string {
	var names []string
	for _, ink := range s.Inks {
		names = append(names, "'plan-"+ink.ID+".js'")
	}
	for _, medium := range s.Media {
		names = append(names, "'heat-"+medium.ID+".js'", "'laminate-"+medium.ID+".js'")
	}
	return strings.Join(names, ",")
}

// A plan prints as one sheet, with boxes to tick, and is kept on the device: the page
// lists it when it is opened again, and forgets it when it is told to.
func TestPlanIsATicket(t *testing.T) {
	b := open(t, "plan.html?ink=toner-dry&medium=coated-silk-150&film=thermal-pp-gloss-27&laminator=sheet-fed&sheet=320x450+mm&grain=long&now=2026-11-25T09:00&printed=2026-11-24T08:00")
	defer b.quiet()
	b.until("!document.getElementById('answer').hidden")
	if title := eval[string](b, "document.querySelector('h1').textContent"); title != "Dry toner, no fuser oil, on coated paper, silk, 150 g/m²" {
		t.Errorf("the page has the title %q, not the job", title)
	}
	if !eval[bool](b, "Boolean(document.getElementById('answer').compareDocumentPosition(document.getElementById('plan-form')) & Node.DOCUMENT_POSITION_FOLLOWING)") {
		t.Error("the answer does not come before the form")
	}
	if sizes, _ := b.print(); len(sizes) != 1 {
		t.Errorf("prints on %d sheets, want 1", len(sizes))
	}
	if n := eval[int](b, "document.querySelectorAll('#recent-list a').length"); n != 1 {
		t.Errorf("%d recent plans, want 1", n)
	}
	if at := eval[string](b, "document.querySelector('#recent-list a').getAttribute('href')"); !strings.Contains(at, "film=thermal-pp-gloss-27") || strings.Contains(at, "now=") {
		t.Errorf("the recent plan is %s", at)
	}
	eval[bool](b, "(document.getElementById('sheet').value = 'large', document.querySelector('#plan-form button').click(), true)")
	b.until("document.getElementById('answer').hidden")
	if title, said := eval[string](b, "document.querySelector('h1').textContent"), eval[string](b, "document.getElementById('plan-status').textContent"); title != "Job plan" || !strings.Contains(said, "large") {
		t.Errorf("a job that cannot be read has the title %q, and is told %q", title, said)
	}
	eval[bool](b, "(document.getElementById('recent-forget').click(), true)")
	if !eval[bool](b, "document.getElementById('recent').hidden") {
		t.Error("the recent plans are not forgotten")
	}
}

// What scripts show is held to what pages are held to: a plan that is answered and a
// fault key some steps on.
func TestAnsweredPages(t *testing.T) {
	for page, shown := range map[string]string{
		"plan.html?ink=toner-dry&medium=coated-silk-150&film=thermal-pp-gloss-27&laminator=sheet-fed&now=2026-11-25T09:00&printed=2026-11-24T08:00": "!document.getElementById('answer').hidden",
		"plan.html?ink=eco-solvent&medium=vinyl-cast&film=thermal-pet-gloss-75&now=2026-11-25T09:00&printed=unknown":                                "!document.getElementById('answer').hidden",
		"plan.html?ink=aqueous-dye&medium=banner&film=cold-pp-matt":                                                                                 "!document.getElementById('answer').hidden",
		"faults/bubbles.html#at=later": "document.getElementById('walk-done').children.length === 1",
	} {
		t.Run(page, func(t *testing.T) {
			b := newTab(t, handbook(t))
			for _, scheme := range []string{"light", "dark"} {
				b.fresh(page, 1024, scheme)
				b.until(shown)
				b.shorten()
				faults := b.settled()
				for _, width := range []int64{600, 1024, 1600} {
					b.size(width, 800)
					faults = append(faults, b.axe()...)
				}
				faults = append(faults, b.overflow(320, 360, 600, 1024, 1600)...)
				b.size(1024, 800)
				faults = append(faults, b.keyboard(120)...)
				for _, f := range append(faults, b.taken()...) {
					t.Errorf("%s: %s", scheme, f)
				}
			}
		})
	}
}
