package tables_test

import (
	"math"
	"strings"
	"testing"
	"time"

	"laydown/gen/tables"
)

// menus is a job that can be handed over.
func menus() tables.Job {
	return tables.Job{Ink: "toner-dry", Medium: "coated-silk-150", Film: "thermal-pp-gloss-27", Laminator: "sheet-fed", Grain: "long",
		Printed: "2026-11-25T08:00", Now: "2026-11-25T09:00", Pieces: "200"}
}

func planned(t *testing.T, made *tables.Tables, job tables.Job) tables.Plan {
	t.Helper()
	p, err := made.Plan(job)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// Two hundred menus by hand. Dry at 11:00. 200/0.96 is 209 to run. Ten minutes of set-up,
// twenty of warm-up, 209 × 450 mm at 15 m/min is 6.27 min, 209 × 10 s is 34.83 min: 12:11.
// A day flat; 209 × 20 s of trimming is 69.67 min: 13:20:46 the next day.
func TestHandOverByHand(t *testing.T) {
	p := planned(t, demo(t), menus())
	if p.HandOverBy == nil || *p.HandOverBy != "2026-11-26T13:21" || p.HandOverReason != "" {
		t.Fatalf("hand over by %v (%s)", p.HandOverBy, p.HandOverReason)
	}
	if math.Abs(*p.HandOverHours-(28+21.0/60)) > 0.5/60 {
		t.Errorf("%g h from now", *p.HandOverHours)
	}
	for _, want := range []string{"1 h 11 min at the machine for 200 pieces", "10 min set-up, 20 min warming up", "flat for 24 h", "1 h 10 min of trimming"} {
		if !strings.Contains(strings.ReplaceAll(p.HandOver, "\u00a0", " "), want) {
			t.Errorf("%q does not say %q", p.HandOver, want)
		}
	}
	for _, s := range p.HandOverWorking.Steps {
		if s.Text == "" || s.Shown == "" || math.IsNaN(s.SI) {
			t.Errorf("step %+v", s)
		}
	}
}

// More pieces, a slower machine and a later clock never hand over sooner, and never
// before the print is dry and has rested.
func TestHandOverProperties(t *testing.T) {
	made := demo(t)
	at := func(job tables.Job) time.Time {
		p := planned(t, made, job)
		if p.HandOverBy == nil {
			t.Fatal(p.HandOverReason)
		}
		by, err := time.Parse("2006-01-02T15:04", *p.HandOverBy)
		if err != nil {
			t.Fatal(err)
		}
		ready, err := time.Parse("2006-01-02T15:04", *p.ReadyBy)
		if err != nil {
			t.Fatal(err)
		}
		if rest := made.Shop().Film(job.Film).Rest.Best.Hours(); by.Sub(ready).Hours() < rest {
			t.Errorf("handed over %s after it is dry, resting %g h", by.Sub(ready), rest)
		}
		return by
	}
	base := at(menus())
	for name, change := range map[string]func(*tables.Job){
		"more pieces": func(j *tables.Job) { j.Pieces = "900" },
		"slower":      func(j *tables.Job) { j.Speed = "3 m/min" },
		"later":       func(j *tables.Job) { j.Now = "2026-11-25T12:00" },
		"heavier":     func(j *tables.Job) { j.Coverage = "heavy" },
	} {
		j := menus()
		change(&j)
		if now := at(j); now.Before(base) {
			t.Errorf("%s: %s, before %s", name, now, base)
		}
	}
	few := menus()
	few.Pieces = ""
	if now := at(few); !now.Before(base) {
		t.Errorf("one piece: %s, two hundred %s", now, base)
	}
}

// Where nothing can be promised the plan says why, and a roll of unknown length says
// what is not counted.
func TestHandOverSaysWhatIsMissing(t *testing.T) {
	made := demo(t)
	none := func(name, says string, job tables.Job) {
		t.Helper()
		p := planned(t, made, job)
		if p.HandOverBy != nil || p.HandOverHours != nil || p.HandOver != "" || !strings.Contains(p.HandOverReason, says) {
			t.Errorf("%s: by %v, %q, because %q", name, p.HandOverBy, p.HandOver, p.HandOverReason)
		}
	}
	j := menus()
	j.Printed = "unknown"
	none("of unknown age", "nobody knows when", j)
	j = menus()
	j.Ink = "toner-oil"
	none("under the wrong film", "the reasons say why", j)
	j = menus()
	j.Ink = "solvent"
	none("not printed on this", "the reasons say why", j)
	vinyl := tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-cast-gloss", Storage: "tight-roll", Now: "2026-11-25T09:00"}
	none("on a tight roll", "hardly dries", vinyl)
	vinyl.Storage = "hung"
	p := planned(t, made, vinyl)
	if p.HandOverBy == nil || !strings.Contains(p.HandOver, "the length of the roll is not told") {
		t.Errorf("a roll: by %v, %q (%s)", p.HandOverBy, p.HandOver, p.HandOverReason)
	}
	without := *p.HandOverHours
	vinyl.Sheet = "1370x12000 mm"
	p = planned(t, made, vinyl)
	// 12 m and 50 mm, twice for the spare print, at 1.2 m/min.
	if run := 2 * 12.05 / 1.2 / 60; p.HandOverHours == nil || math.Abs(*p.HandOverHours-without-run) > 1.0/60 || strings.Contains(p.HandOver, "not told") {
		t.Errorf("12 m of it: %v h, without the running %g h, by hand %g h more", p.HandOverHours, without, run)
	}
	film, work := made.Shop().Film("thermal-pp-gloss-27"), made.Shop().Front.Work
	film.Rest.Set = false
	none("without a rest", "how long it rests", menus())
	film.Rest.Set = true
	made.Shop().Front.Work = nil
	none("without the shop's work", "nothing of its work", menus())
	made.Shop().Front.Work = work
	for _, bad := range []string{"0", "-3", "many", "2.5", "1000001"} {
		j := menus()
		j.Pieces = bad
		if _, err := made.Plan(j); err == nil || !strings.Contains(err.Error(), "number of pieces") {
			t.Errorf("%q pieces: %v", bad, err)
		}
	}
}
