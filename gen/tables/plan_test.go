package tables_test

import (
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// Jobs on the demonstration's data. The verdicts follow from the rules of the
// data and from the order go, wait, change, refuse.
func TestPlanVerdicts(t *testing.T) {
	made := demo(t)
	tests := []struct {
		name    string
		job     tables.Job
		want    tables.Verdict
		because string // part of a reason
	}{
		{"just printed", tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-calendered-gloss", Laminator: "wide-cold"},
			tables.Wait, "Not dry yet"},
		{"three days hung", tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-calendered-gloss", Laminator: "wide-cold",
			Printed: "2026-11-20T09:00", Now: "2026-11-23T09:00"}, tables.Go, "Dry by the clock"},
		{"nobody knows when", tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-calendered-gloss", Laminator: "wide-cold",
			Printed: "unknown", Now: "2026-11-23T09:00"}, tables.Wait, "readiness test"},
		{"three days on a tight roll", tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-calendered-gloss", Laminator: "wide-cold",
			Storage: "tight-roll", Printed: "2026-11-20T09:00", Now: "2026-11-23T09:00"}, tables.Wait, "hardly dries"},
		{"hot film on a solvent print", tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "thermal-pet-gloss-75", Laminator: "wide-hot",
			Printed: "2026-11-20T09:00", Now: "2026-11-23T09:00"}, tables.Change, "Films that would do"},
		{"an ink that the medium is not made for", tables.Job{Ink: "toner-dry", Medium: "banner", Film: "cold-vinyl-calendered-gloss"},
			tables.Refuse, "not made to be printed"},
		{"a machine that cannot run the film", tables.Job{Ink: "toner-dry", Medium: "coated-gloss-250", Film: "thermal-pet-gloss-75", Laminator: "wide-cold",
			Printed: "2026-11-20T09:00", Now: "2026-11-23T09:00"}, tables.Change, "does not run"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			p, err := made.Plan(tt.job)
			if err != nil {
				t.Fatal(err)
			}
			if p.Verdict != tt.want {
				t.Errorf("verdict %s, want %s: %v", p.Verdict, tt.want, p.Reasons)
			}
			found := false
			for _, r := range p.Reasons {
				found = found || strings.Contains(r.Text, tt.because)
			}
			if !found {
				t.Errorf("no reason says %q: %v", tt.because, p.Reasons)
			}
			if (p.Window == nil) != (p.WindowReason != "") {
				t.Errorf("window %v, reason %q: there is one, or a reason why not", p.Window, p.WindowReason)
			}
			if p.WaitHours == nil && p.WaitReason == "" {
				t.Error("no wait, and no reason for that")
			}
			if len(p.Cautions) == 0 || p.Feed.Advice == "" {
				t.Error("cautions or feeding advice missing")
			}
		})
	}
}

// A print of unknown history never gets a go, whatever else is asked.
func TestUnknownPrintNeverGo(t *testing.T) {
	made := demo(t)
	s := made.Shop()
	n := 0
	for _, ink := range s.Inks {
		for _, medium := range s.Media {
			for _, film := range s.Films {
				p, err := made.Plan(tables.Job{Ink: ink.ID, Medium: medium.ID, Film: film.ID, Printed: "unknown",
					History: "100 h hung", Now: "2026-11-23T09:00"})
				if err != nil {
					t.Fatal(err)
				}
				if p.Verdict == tables.Go || len(p.Reasons) == 0 {
					t.Errorf("%s on %s under %s: %s %v", ink.ID, medium.ID, film.ID, p.Verdict, p.Reasons)
				}
				n++
			}
		}
	}
	if n < 1000 {
		t.Fatalf("only %d jobs", n)
	}
}

// The clock and the history agree, and what is promised can be kept: at the
// time that a plan names, the same job gets a go for its wait.
func TestReadyByIsKept(t *testing.T) {
	made := demo(t)
	job := tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-calendered-gloss", Laminator: "wide-cold",
		Printed: "2026-11-23T15:40", Now: "2026-11-24T09:00", History: "6 h hung, 8 h tight-roll"}
	p, err := made.Plan(job)
	if err != nil {
		t.Fatal(err)
	}
	if p.Verdict != tables.Wait || p.ReadyBy == nil {
		t.Fatalf("%s, ready by %v: %v", p.Verdict, p.ReadyBy, p.Reasons)
	}
	job.Now = *p.ReadyBy
	later, err := made.Plan(job)
	if err != nil {
		t.Fatal(err)
	}
	if later.Verdict != tables.Go {
		t.Errorf("at %s: %s %v", job.Now, later.Verdict, later.Reasons)
	}
	if *later.WaitHours != *p.WaitHours {
		t.Errorf("the whole wait changed from %g h to %g h while it was being waited", *p.WaitHours, *later.WaitHours)
	}
}

func TestPlanSaysWhatIsWrongWithAJob(t *testing.T) {
	made := demo(t)
	good := tables.Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-calendered-gloss"}
	tests := []struct {
		change func(*tables.Job)
		want   string
	}{
		{func(j *tables.Job) { j.Ink = "eco-solvnt" }, `no ink is called "eco-solvnt"; did you mean "eco-solvent"?`},
		{func(j *tables.Job) { j.Film = "" }, "which film? none is given"},
		{func(j *tables.Job) { j.Coverage = "soaked" }, `no coverage is called "soaked": light, normal or heavy`},
		{func(j *tables.Job) { j.Grain = "wide" }, `no grain is called "wide": long, short or unknown`},
		{func(j *tables.Job) { j.Back = "wet" }, `no back is called "wet": open, film or mounted`},
		{func(j *tables.Job) { j.Printed = "yesterday"; j.Now = "2026-11-24T09:00" }, `printed: "yesterday" is not a time such as 2026-11-24T15:40`},
		{func(j *tables.Job) { j.Printed = "2026-11-25T09:00"; j.Now = "2026-11-24T09:00" }, "printed 2026-11-25T09:00 is later than now, 2026-11-24T09:00"},
		{func(j *tables.Job) {
			j.Printed, j.Now, j.History = "2026-11-24T08:00", "2026-11-24T09:00", "6 h hung"
		}, "the history lasts 6\u00a0h, but only 1\u00a0h have passed since printing"},
		{func(j *tables.Job) { j.History = "hung" }, `"hung" is not a stay: write a time and a storage, such as 6 h hung`},
		{func(j *tables.Job) { j.Storage = "stack" }, "stack (Stack of sheets) does not suit calendered vinyl, self-adhesive, which comes as roll"},
		{func(j *tables.Job) { j.Sheet = "A3" }, `"A3" is not a sheet: write the side along the roller, then the side along the feed, such as 320x450 mm, or roll`},
		{func(j *tables.Job) { j.StackRH = "120 %" }, "humidity of the stack: 120 % is not between 0 % and 100 %"},
	}
	for _, tt := range tests {
		job := good
		tt.change(&job)
		if _, err := made.Plan(job); err == nil || err.Error() != tt.want {
			t.Errorf("%+v\n got %v\nwant %s", job, err, tt.want)
		}
	}
}

// A hot film on a dry print gets its window, narrower for a damp stack.
func TestPlanWindow(t *testing.T) {
	made := demo(t)
	job := tables.Job{Ink: "toner-dry", Medium: "uncoated-150", Film: "thermal-pet-gloss-75", Laminator: "encapsulator",
		Printed: "2026-11-23T09:00", Now: "2026-11-24T09:00"}
	var spans []tables.Span
	for _, stack := range []string{"35 %", "", "55 %", "65 %", "75 %", "90 %"} {
		job.StackRH = stack
		p, err := made.Plan(job)
		if err != nil {
			t.Fatal(err)
		}
		if p.Window == nil || p.Verdict != tables.Go {
			t.Fatalf("stack at %q: %s, %s", stack, p.Verdict, p.WindowReason)
		}
		if n := len(spans); n > 0 && (p.Window.First.High > spans[n-1].High || p.Window.First.Low < spans[n-1].Low) {
			t.Errorf("stack at %q: %+v, wider than %+v", stack, p.Window.First, spans[n-1])
		}
		if len(p.HeatWorking.Steps) < 8 {
			t.Errorf("stack at %q: a working of %d steps", stack, len(p.HeatWorking.Steps))
		}
		spans = append(spans, p.Window.First)
	}
	if dry, damp := spans[0], spans[len(spans)-1]; damp.High > dry.High-5 {
		t.Errorf("from %+v to %+v: the damp hardly mattered, so this test shows little", dry, damp)
	}
}

// Where no setting will do the plan says which limits cross, what would open a
// window, and which films would do.
func TestPlanWithoutWindow(t *testing.T) {
	p, err := demo(t).Plan(tables.Job{Ink: "offset", Medium: "coated-silk-150", Film: "thermal-pp-gloss-27", Laminator: "sheet-fed", Speed: "30 m/min",
		Printed: "2026-11-19T09:00", Now: "2026-11-24T09:00"})
	if err != nil {
		t.Fatal(err)
	}
	if p.Verdict != tables.Change || p.Window != nil || !strings.Contains(p.WindowReason, "miss each other by") {
		t.Fatalf("%s, window %v, %q", p.Verdict, p.Window, p.WindowReason)
	}
	for _, want := range []string{"Slower: at 15.0", "Another film:", "Films that would do:"} {
		found := false
		for _, r := range p.Reasons {
			found = found || strings.HasPrefix(r.Text, want)
		}
		if !found {
			t.Errorf("no reason begins %q: %v", want, p.Reasons)
		}
	}
}

// The step by hand that a working gives leads to the number that it tells.
func TestWindowByHand(t *testing.T) {
	made := demo(t)
	v, err := made.Window(tables.WindowCase{Film: "low-melt-pet-gloss-75", Medium: "coated-gloss-250", Laminator: "wide-hot",
		Speed: quantity.MetrePerMinute, Temperature: quantity.FromCelsius(23), Humidity: 0.5})
	if err != nil {
		t.Fatal(err)
	}
	w, err := made.WindowWorking(v)
	if err != nil {
		t.Fatal(err)
	}
	var room, lower, target, set, share float64
	checked := 0
	for _, s := range w.Steps {
		switch s.Symbol {
		case "T_0":
			room = s.SI
		case "T_l":
			lower = s.SI
		case "φ_s":
			set, share = s.SI, 0
		case "φ_l":
			share = s.SI
		case "T_set":
			if strings.Contains(s.Text, "laminator") {
				continue
			}
			for _, b := range append(v.FirstBounds, v.SteadyBounds...) {
				if float64(b.Temperature) == s.SI {
					target = float64(b.At)
				}
			}
			got := room + (target-room-share*(lower-room))/set
			if math.Abs(got-s.SI) > 0.05 {
				t.Errorf("%s: %.2f °C by hand, told %.2f °C", s.Text, got-273.15, s.SI-273.15)
			}
			checked++
		}
	}
	if checked < 4 {
		t.Errorf("only %d limits checked", checked)
	}
}
