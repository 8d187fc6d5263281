package faults

import (
	"math"
	"slices"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// TestFamilyAsProblem: minutes, the order of causes and acts, and what a result that
// leaves its chances out takes.
func TestFamilyAsProblem(t *testing.T) {
	p := must(tieFamily(look("speck", 1.5, 0.9, 0.2)))
	var names []string
	var kinds []Kind
	for i := range p.Acts {
		names = append(names, p.Acts[i].Name)
		kinds = append(kinds, p.Acts[i].Kind())
	}
	if want := []string{"speck", "clean", "cool", "help"}; !slices.Equal(names, want) {
		t.Errorf("acts %v, want %v", names, want)
	}
	if want := []Kind{Check, Remedy, Remedy, End}; !slices.Equal(kinds, want) {
		t.Errorf("kinds %v, want %v", kinds, want)
	}
	if p.Acts[0].Cost[0] != 1.5 || p.Acts[3].Cost[0] != 600 {
		t.Errorf("costs %v and %v minutes, want 1.5 and 600", p.Acts[0].Cost, p.Acts[3].Cost)
	}
	for c, want := range []float64{0.1, 0.8} {
		near(t, "no speck", p.Acts[0].Outcomes[1].Chance[c], want)
	}
	if cured := p.Acts[2].Outcomes[0]; !cured.Ends || cured.Chance[0] != 0 || cured.Chance[1] != 1 {
		t.Errorf("cooling: %+v", cured)
	}
}

// TestFamilySaysWhatIsWrong, each thing that may be wrong in turn.
func TestFamilySaysWhatIsWrong(t *testing.T) {
	rows := []struct {
		name   string
		change func(f *Family)
		want   string
	}{
		{"no remedy", func(f *Family) { f.Remedies = nil }, `no remedy: every way would end in "help"`},
		{"no causes", func(f *Family) { f.Causes, f.Checks, f.Remedies = nil, nil, f.Remedies[:0] }, "no remedy"},
		{"a cause twice", func(f *Family) { f.Causes[1].Name = "dirt"; f.Checks = nil; f.Remedies = f.Remedies[:1] }, `cause "dirt" stands twice`},
		{"a cause without a name", func(f *Family) { f.Causes = append(f.Causes, Cause{"", 1}); f.Checks = nil }, "cause 3 has no name"},
		{"a weight of nothing", func(f *Family) { f.Causes[0].Weight = 0 }, `cause "dirt" has weight 0`},
		{"a weight that is no number", func(f *Family) { f.Causes[0].Weight = math.NaN() }, `cause "dirt" has weight NaN`},
		{"an unknown cause", func(f *Family) { f.Remedies[0].Cures = map[string]quantity.Fraction{"dirt": 1, "dust": 1} }, `"clean" has a chance for the cause "dust", which the family does not have`},
		{"a chance above 1", func(f *Family) { f.Remedies[0].Cures["dirt"] = 1.2 }, `"clean" has the chance 1.2 for cause "dirt"`},
		{"a chance left out", func(f *Family) { delete(f.Checks[0].Results[0].Chance, "steam") }, `result "yes" of check "speck" has no chance for cause "steam"`},
		{"two results that take the rest", func(f *Family) { f.Checks[0].Results[0].Chance = nil }, `results "yes" and "no" of check "speck" both leave out`},
		{"one result", func(f *Family) { f.Checks[0].Results = f.Checks[0].Results[:1] }, `check "speck" has 1 results`},
		{"a sum that is not 1", func(f *Family) {
			f.Checks[0].Results[1].Chance = map[string]quantity.Fraction{"dirt": 0.1, "steam": 0.7}
		}, `the chances of what "speck" tells given "steam" sum to 0.9`},
		{"a result twice", func(f *Family) { f.Checks[0].Results[1].Name = "yes" }, `act "speck" has the outcome "yes" twice`},
		{"a remedy that cures nothing", func(f *Family) { f.Remedies[0].Cures = nil }, `remedy "clean" cures nothing`},
		{"a time below nothing", func(f *Family) { f.Remedies[0].Time = -60 }, `"clean" takes -1 minutes`},
		{"help that takes no finite time", func(f *Family) { f.Help.Time = quantity.Time(math.Inf(1)) }, `"help" takes +Inf minutes`},
		{"two acts of one name", func(f *Family) { f.Help.Name = "cool" }, `act "cool" stands twice`},
		{"an act without a name", func(f *Family) { f.Remedies[0].Name = "" }, "act 2 has no name"},
		{"too many results", func(f *Family) {
			for i := range 40 {
				o := look("look "+string(rune('a'+i)), 1, 0.5, 0.6)
				f.Checks = append(f.Checks, o)
			}
		}, "part the family in two"},
	}
	for _, r := range rows {
		f := tieFamily(look("speck", 1, 0.9, 0.2))
		r.change(f)
		p, err := f.Problem()
		if err == nil || !strings.Contains(err.Error(), r.want) || !strings.Contains(err.Error(), `fault family "ties"`) {
			t.Errorf("%s: %v (%v), want %q", r.name, err, p != nil, r.want)
		}
	}
}

// TestProblemSaysWhatIsWrong where a family cannot be wrong.
func TestProblemSaysWhatIsWrong(t *testing.T) {
	rows := []struct {
		name   string
		change func(p *Problem)
		want   string
	}{
		{"no end", func(p *Problem) { p.Acts = p.Acts[:3] }, "no act always ends the matter"},
		{"costs for some causes", func(p *Problem) { p.Acts[0].Cost = []float64{1, 2, 3} }, `act "speck" has 3 costs`},
		{"a cost that is no number", func(p *Problem) { p.Acts[0].Cost[0] = math.NaN() }, `act "speck" has the cost NaN`},
		{"no outcomes", func(p *Problem) { p.Acts[0].Outcomes = nil }, `act "speck" has no outcomes`},
		{"chances for some causes", func(p *Problem) { p.Acts[0].Outcomes[0].Chance = []float64{1} }, `outcome "yes" of "speck" has 1 chances for 2 causes`},
		{"no causes", func(p *Problem) { p.Causes = nil }, "0 causes"},
	}
	for _, r := range rows {
		p := must(tieFamily(look("speck", 1, 0.9, 0.2)))
		r.change(p)
		if _, err := Solve(p, Effort{}); err == nil || !strings.Contains(err.Error(), r.want) {
			t.Errorf("%s: %v, want %q", r.name, err, r.want)
		}
	}
}

// TestDoubts: what is allowed, but most likely not meant.
func TestDoubts(t *testing.T) {
	f := tieFamily(look("speck", 1, 0.9, 0.2), look("moon", 1, 0.5, 0.5))
	f.Causes = append(f.Causes, Cause{"fog", 1}, Cause{"mist", 1})
	for i := range f.Checks {
		f.Checks[i].Results[0].Chance["fog"] = 0.5
		f.Checks[i].Results[0].Chance["mist"] = 0.5
	}
	f.Remedies[1].Time = f.Help.Time
	got, err := f.Doubts()
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		`no check and no remedy tells "fog" from "mist": make them one cause, or add a check`,
		`no remedy cures "fog": it always ends in "help"`,
		`no remedy cures "mist": it always ends in "help"`,
		`check "moon" tells nothing: its results are as likely given any cause`,
		`remedy "cool" takes as long as "help" or longer: it is never tried`,
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if got, err := tieFamily(look("speck", 1, 0.9, 0.2)).Doubts(); err != nil || len(got) > 0 {
		t.Errorf("a family without doubts: %q, %v", got, err)
	}
}
