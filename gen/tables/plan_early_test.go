package tables

import (
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// early is the sentence of a plan on what stays; "" where it has none.
func early(t *testing.T, made *Tables, job Job) string {
	t.Helper()
	p, err := made.Plan(job)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range p.Reasons {
		if strings.HasPrefix(r.Text, "Laminated now") {
			if p.Verdict != Wait || r.Verdict != Wait {
				t.Errorf("%+v: %s, and %q", job, p.Verdict, r.Text)
			}
			return r.Text
		}
	}
	return ""
}

// A plan that says wait for the carrier's sake says what would stay; one that is ready,
// waits for the maker's minimum only, has no carrier, no clock or the wrong film, does not.
func TestPlanSaysWhatStays(t *testing.T) {
	made := demoTables(t)
	job := Job{Ink: "eco-solvent", Medium: "vinyl-calendered", Film: "cold-vinyl-calendered-gloss", Laminator: "wide-cold", History: "6 h hung"}
	if got := early(t, made, job); !strings.Contains(got, "1.2\u00a0g/m²") || !strings.Contains(got, "0.3\u00a0g/m²") || !strings.Contains(got, "days") {
		t.Errorf("early: %q", got)
	}
	locked := job
	locked.Film = "cold-pet-gloss"
	if got := early(t, made, locked); !strings.Contains(got, "more than a year") {
		t.Errorf("under polyester: %q", got)
	}
	rolled := job
	rolled.History, rolled.Storage = "2 h tight-roll", "tight-roll"
	if got := early(t, made, rolled); !strings.Contains(got, "more than a year") {
		t.Errorf("on a tight roll: %q", got)
	}
	for name, change := range map[string]func(*Job){
		"ready":                 func(j *Job) { j.History = "30 h hung" },
		"only the maker's wait": func(j *Job) { j.Medium, j.History = "canvas", "5 h hung" },
		"unknown":               func(j *Job) { j.History, j.Printed = "", "unknown" },
		"cures":                 func(j *Job) { j.Ink = "uv-inkjet" },
		"film will not do":      func(j *Job) { j.Film, j.Laminator = "thermal-pet-gloss-75", "wide-hot" },
	} {
		j := job
		change(&j)
		if got := early(t, made, j); got != "" {
			t.Errorf("%s: %q", name, got)
		}
	}
}

// The plan and the table say the same of the same print.
func TestPlanAgreesWithTheTableOfWhatStays(t *testing.T) {
	made := demoTables(t)
	c := made.UsualAfter(made.shop.Ink("eco-solvent"), made.shop.Medium("canvas"))
	c.Film, c.Spent = "cold-pp-matt", 0.3
	v, err := made.After(c)
	if err != nil {
		t.Fatal(err)
	}
	job := Job{Ink: c.Ink, Medium: c.Medium, Film: c.Film, Laminator: "wide-cold", History: quantity.Metric(v.At) + " hung"}
	if got, want := early(t, made, job), roundDays(v.Clear); !strings.Contains(got, want) || !strings.Contains(got, amount(grams(v.Start), "g/m²")) {
		t.Errorf("%q, the table says %s and %g kg/m²", got, want, float64(v.Start))
	}
}

func TestRoundDays(t *testing.T) {
	for days, want := range map[float64]string{
		0.01: "half a day", 0.5: "half a day", 0.7: "a day", 1.2: "1½ days", 2.4: "2½ days", 2.6: "3 days", 3.1: "4 days", 30: "30 days", 30.2: "more than 30 days",
	} {
		if got := roundDays(quantity.Time(days) * quantity.Day); got != want {
			t.Errorf("%g days: %q, want %q", days, got, want)
		}
	}
}
