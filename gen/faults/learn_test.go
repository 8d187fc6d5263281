package faults

import (
	"math"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

func near(t *testing.T, name string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-9 {
		t.Errorf("%s: %.12g, want %.12g", name, got, want)
	}
}

// TestLearnByHand: ten cases stand behind half dirt and half steam. Three found to be
// dirt and one steam make (5 + 3)/(10 + 4).
func TestLearnByHand(t *testing.T) {
	e := Experience{Family: *tieFamily(look("speck", 1, 0.9, 0.2)), Causes: 10, Checks: 5, Remedies: 4}
	l, err := e.Learn([]Case{
		{Cause: "dirt", Seen: map[string]string{"speck": "yes"}, Tried: map[string]bool{"clean": true}},
		{Cause: "dirt", Seen: map[string]string{"speck": "no"}},
		{Cause: "dirt", Tried: map[string]bool{"clean": false}},
		{Cause: "steam", Seen: map[string]string{"speck": "no"}},
	})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "dirt", l.Family.Causes[0].Weight, 8.0/14)
	near(t, "steam", l.Family.Causes[1].Weight, 6.0/14)
	near(t, "deviation of dirt", float64(l.Causes[0].Deviation), math.Sqrt(8.0/14*6/14/15))
	near(t, "speck given dirt", float64(l.Family.Checks[0].Results[0].Chance["dirt"]), (0.9*5+1)/(5+2))
	near(t, "no speck given dirt", float64(l.Family.Checks[0].Results[1].Chance["dirt"]), (0.1*5+1)/(5+2))
	near(t, "speck given steam", float64(l.Family.Checks[0].Results[0].Chance["steam"]), (0.2*5+0)/(5+1))
	near(t, "clean given dirt", float64(l.Family.Remedies[0].Cures["dirt"]), (1.0*4+1)/(4+2))
	near(t, "clean given steam", float64(l.Family.Remedies[0].Cures["steam"]), 0)
	near(t, "counted", l.Checks[0][0][0].Counted, 1)
	near(t, "told", l.Checks[0][0][0].Cases, 2)
	if _, err := l.Family.Problem(); err != nil {
		t.Errorf("what was learned is no family: %v", err)
	}
	if e.Family.Causes[0].Weight != 1 || e.Family.Checks[0].Results[1].Chance != nil {
		t.Error("the family that was given was changed")
	}
}

// TestCauseNotFoundOut counts by the chance of each cause: a speck is 0.9 : 0.2.
func TestCauseNotFoundOut(t *testing.T) {
	e := Experience{Family: *tieFamily(look("speck", 1, 0.9, 0.2)), Causes: 10, Checks: 5, Remedies: 4}
	l, err := e.Learn([]Case{{Seen: map[string]string{"speck": "yes"}}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "dirt", l.Family.Causes[0].Weight, (5+0.9/1.1)/11)
	l, err = e.Learn([]Case{{Tried: map[string]bool{"clean": true}}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "dirt, since cleaning cured it", l.Family.Causes[0].Weight, 6.0/11)
}

// TestLearnFindsTheTruth: from a log of 40 000 invented cases of a family, one that
// began with other figures comes close to it.
func TestLearnFindsTheTruth(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 22))
	truth := invented(r, 4, 3, 4)
	wrong := *truth
	wrong.Causes = nil
	for _, c := range truth.Causes {
		wrong.Causes = append(wrong.Causes, Cause{c.Name, 1})
	}
	wrong.Checks = nil
	for _, o := range truth.Checks {
		even := Observation{Name: o.Name, Time: o.Time}
		for _, res := range o.Results {
			chance := map[string]quantity.Fraction{}
			for _, c := range truth.Causes {
				chance[c.Name] = quantity.Fraction(1 / float64(len(o.Results)))
			}
			even.Results = append(even.Results, Result{Name: res.Name, Chance: chance})
		}
		wrong.Checks = append(wrong.Checks, even)
	}
	p := must(truth)
	draw := func(chances []float64) int {
		x := r.Float64()
		for i, q := range chances {
			if x -= q; x < 0 {
				return i
			}
		}
		return len(chances) - 1
	}
	var log []Case
	for range 40000 {
		cause := draw(p.beliefs())
		c := Case{Cause: p.Causes[cause].Name, Seen: map[string]string{}, Tried: map[string]bool{}}
		for i := range p.Acts {
			a := &p.Acts[i]
			var chances []float64
			for _, o := range a.Outcomes {
				chances = append(chances, o.Chance[cause])
			}
			switch a.Kind() {
			case Check:
				c.Seen[a.Name] = a.Outcomes[draw(chances)].Name
			case Remedy:
				c.Tried[a.Name] = draw(chances) == 0
			}
		}
		log = append(log, c)
	}
	l, err := Experience{Family: wrong, Causes: 10, Checks: 10, Remedies: 10}.Learn(log)
	if err != nil {
		t.Fatal(err)
	}
	learned := must(&l.Family)
	for i, q := range p.beliefs() {
		if d := math.Abs(learned.beliefs()[i] - q); d > 0.01 {
			t.Errorf("cause %d: off by %.3f", i, d)
		}
	}
	for i := range p.Acts {
		for o := range p.Acts[i].Outcomes {
			for c, q := range p.Acts[i].Outcomes[o].Chance {
				if d := math.Abs(learned.Acts[i].Outcomes[o].Chance[c] - q); d > 0.03 {
					t.Errorf("act %d, outcome %d, cause %d: off by %.3f", i, o, c, d)
				}
			}
		}
	}
}

// TestOrderOfTheLogDoesNotMatter, not even where causes were not found out.
func TestOrderOfTheLogDoesNotMatter(t *testing.T) {
	e := Experience{Family: *tieFamily(look("speck", 1, 0.75, 0.25)), Causes: 8, Checks: 4, Remedies: 4}
	log := []Case{{Seen: map[string]string{"speck": "yes"}}, {Cause: "steam"}, {Seen: map[string]string{"speck": "no"}}, {Cause: "dirt", Tried: map[string]bool{"clean": true}}}
	first, err := e.Learn(log)
	if err != nil {
		t.Fatal(err)
	}
	second, err := e.Learn([]Case{log[3], log[2], log[0], log[1]})
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(first, second) {
		t.Errorf("%+v\n%+v", first, second)
	}
}

// TestFactorsAreEvidence: factors that are the chances of a check's result lead to the
// beliefs that the result itself leads to.
func TestFactorsAreEvidence(t *testing.T) {
	f := tieFamily(look("speck", 1, 0.9, 0.2))
	k := solved(t, must(f), Effort{})
	if p := k.Problem; p.Acts[k.Start.Act].Name != "speck" {
		t.Fatalf("the key begins with %q", p.Acts[k.Start.Act].Name)
	}
	g, err := f.Given(map[string]float64{"dirt": 0.9, "steam": 0.2})
	if err != nil {
		t.Fatal(err)
	}
	for c, q := range must(&g).beliefs() {
		near(t, f.Causes[c].Name, q, k.Start.Next[0].Belief[c])
	}
	if f.Causes[0].Weight != 1 {
		t.Error("the family that was given was changed")
	}
}

func TestLearnSaysWhatIsWrong(t *testing.T) {
	e := Experience{Family: *tieFamily(look("speck", 1, 1, 0)), Causes: 10, Checks: 5, Remedies: 5}
	rows := []struct {
		c    Case
		want string
	}{
		{Case{Cause: "rain"}, `case 1: the family has no cause "rain"`},
		{Case{Cause: "dirt", Seen: map[string]string{"smell": "yes"}}, `the family has no check "smell"`},
		{Case{Cause: "dirt", Seen: map[string]string{"clean": "yes"}}, `the family has no check "clean"`},
		{Case{Cause: "dirt", Seen: map[string]string{"speck": "perhaps"}}, `check "speck" has no result "perhaps"`},
		{Case{Cause: "dirt", Tried: map[string]bool{"speck": true}}, `the family has no remedy "speck"`},
		{Case{Seen: map[string]string{"speck": "yes"}, Tried: map[string]bool{"clean": false}}, "cannot be, given any of the causes"},
	}
	for _, r := range rows {
		if _, err := e.Learn([]Case{r.c}); err == nil || !strings.Contains(err.Error(), r.want) {
			t.Errorf("%+v: %v, want %q", r.c, err, r.want)
		}
	}
	e.Checks = 0
	if _, err := e.Learn(nil); err == nil || !strings.Contains(err.Error(), "0 cases behind the checks") {
		t.Errorf("no cases behind the checks: %v", err)
	}
	for _, factors := range []map[string]float64{{"rain": 2}, {"dirt": 0}, {"dirt": -1}, {"dirt": math.Inf(1)}} {
		if _, err := e.Family.Given(factors); err == nil {
			t.Errorf("factors %v: no error", factors)
		}
	}
}
