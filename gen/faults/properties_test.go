package faults

import (
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"laydown/gen/quantity"
)

func solved(t *testing.T, p *Problem, e Effort) *Key {
	t.Helper()
	k, err := Solve(p, e)
	if err != nil {
		t.Fatal(err)
	}
	return k
}

// TestNeverWorseThanARule compares the key with rules of thumb on families of the size
// that a shop has, and shows how much it saves.
func TestNeverWorseThanARule(t *testing.T) {
	rules := []struct {
		name string
		rule Rule
	}{{"chance per cost", ChancePerCost}, {"most information", MostInformation}, {"one ahead", OneAhead}}
	gains := make([][]float64, len(rules))
	r := rand.New(rand.NewPCG(7, 8))
	for i := range 300 {
		p := must(invented(r, 3+r.IntN(4), 2+r.IntN(4), 3+r.IntN(4)))
		k := solved(t, p, Effort{})
		if !k.Exact {
			t.Fatalf("family %d is not solved exactly", i)
		}
		for j, rule := range rules {
			cost, err := rule.rule.Cost(p)
			if err != nil {
				t.Fatal(err)
			}
			if cost < k.Cost-1e-6 {
				t.Errorf("family %d: %s costs %.9g, the key %.9g", i, rule.name, cost, k.Cost)
			}
			gains[j] = append(gains[j], 100*(cost-k.Cost)/cost)
		}
	}
	for j, rule := range rules {
		slices.Sort(gains[j])
		at := func(share float64) float64 { return gains[j][int(share*float64(len(gains[j])-1))] }
		t.Logf("saved against %-16s %%: least %.1f, quarter %.1f, middle %.1f, three quarters %.1f, most %.1f", rule.name, at(0), at(0.25), at(0.5), at(0.75), at(1))
		if at(1) < 1 {
			t.Errorf("nothing is ever saved against %s", rule.name)
		}
	}
}

// TestFreeCheckNeverCosts: one more check that costs nothing never makes the key
// dearer, and one more remedy neither; and sometimes they pay.
func TestFreeCheckNeverCosts(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	checkPays, remedyPays := 0, 0
	for i := range 200 {
		f := invented(r, 4, 4, 4)
		f.Checks[3].Time = 0
		with := solved(t, must(f), Effort{}).Cost
		less := *f
		less.Checks = f.Checks[:3]
		if without := solved(t, must(&less), Effort{}).Cost; with > without+1e-6 {
			t.Errorf("family %d: %.9g with a free check, %.9g without", i, with, without)
		} else if with < without-1e-3 {
			checkPays++
		}
		less = *f
		less.Remedies = f.Remedies[:3]
		if without := solved(t, must(&less), Effort{}).Cost; with > without+1e-6 {
			t.Errorf("family %d: %.9g with a remedy more, %.9g without", i, with, without)
		} else if with < without-1e-3 {
			remedyPays++
		}
	}
	if checkPays < 50 || remedyPays < 50 {
		t.Errorf("a free check pays in %d of 200 families, a remedy more in %d", checkPays, remedyPays)
	}
}

// TestScales: with all costs times four the key does the same, and costs four times as
// much; weights of causes may have any scale.
func TestScales(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	for i := range 100 {
		f := invented(r, 4, 4, 4)
		k := solved(t, must(f), Effort{})
		g := *f
		g.Checks, g.Remedies, g.Causes = slices.Clone(f.Checks), slices.Clone(f.Remedies), slices.Clone(f.Causes)
		for j := range g.Checks {
			g.Checks[j].Time *= 4
		}
		for j := range g.Remedies {
			g.Remedies[j].Time *= 4
		}
		for j := range g.Causes {
			g.Causes[j].Weight *= 1024
		}
		g.Help.Time *= 4
		four := solved(t, must(&g), Effort{})
		if math.Abs(four.Cost-4*k.Cost) > 1e-9*four.Cost || !sameActs(k.Start, four.Start) {
			t.Fatalf("family %d: costs %.12g, with four times the costs %.12g", i, k.Cost, four.Cost)
		}
	}
}

func sameActs(a, b *Step) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Act == b.Act && slices.EqualFunc(a.Next, b.Next, sameActs)
}

// TestPricesOnlyRise: a check that becomes dearer by three minutes makes the key dearer
// by between nothing and three minutes, since the key from before still works.
func TestPricesOnlyRise(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	for i := range 200 {
		f := invented(r, 4, 4, 4)
		before := solved(t, must(f), Effort{})
		j := r.IntN(4)
		f.Checks[j].Time += 3 * quantity.Minute
		dearer := solved(t, must(f), Effort{})
		rise := dearer.Cost - before.Cost
		if rise < -1e-6 || rise > 3+1e-6 {
			t.Errorf("family %d: with a check 3 minutes dearer the key costs %.9g instead of %.9g", i, dearer.Cost, before.Cost)
		}
	}
}

// TestEqualProblemsGiveEqualKeys, from the table and from the search, however often.
func TestEqualProblemsGiveEqualKeys(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	for i := range 20 {
		f := invented(r, 5, 5, 5)
		for _, e := range []Effort{{}, {States: 1, Open: 500}} {
			first, second := solved(t, must(f), e), solved(t, must(f), e)
			if !reflect.DeepEqual(first, second) {
				t.Errorf("family %d, %+v: two runs give two keys", i, e)
			}
		}
	}
}

// TestSearchAgreesWithTable on families too large for brute force.
func TestSearchAgreesWithTable(t *testing.T) {
	r := rand.New(rand.NewPCG(17, 18))
	for i := range 20 {
		p := must(invented(r, 6, 6, 6))
		exact := solved(t, p, Effort{})
		for _, e := range []Effort{{States: 1, Within: 1e-9}, {States: 1, Open: 300}, {States: 1, Open: 300, Room: 1000}, {States: 1, Open: 1, Room: 1}} {
			k := solved(t, p, e)
			if k.Least > exact.Cost+1e-9 || k.Cost < exact.Cost-1e-6 {
				t.Errorf("family %d, %+v: between %.9g and %.9g, the best costs %.9g", i, e, k.Least, k.Cost, exact.Cost)
			}
			if e.Within == 1e-9 && k.Loss() > 1e-5 {
				t.Errorf("family %d: a full search leaves a loss of %.9g", i, k.Loss())
			}
			if w := followed(k); math.Abs(w-k.Cost) > 1e-9 {
				t.Errorf("family %d, %+v: the key is said to cost %.9g, walked it costs %.9g", i, e, k.Cost, w)
			}
		}
	}
}

// TestShortKeysImproveWithRoom: more room never makes a key dearer, and with room for
// all it is the best one.
func TestShortKeysImproveWithRoom(t *testing.T) {
	r := rand.New(rand.NewPCG(19, 20))
	for i := range 8 {
		s, err := NewSolver(must(invented(r, 5, 5, 5)), Effort{})
		if err != nil {
			t.Fatal(err)
		}
		full := s.Key()
		last := math.Inf(1)
		for _, steps := range []int{0, 1, 2, 4, 8, 16, 400} {
			k := s.Short(steps)
			if k.Cost > last+1e-9 || k.Size > steps || k.Cost < full.Cost-1e-9 || k.Least > full.Cost {
				t.Errorf("family %d, room for %d: %d steps cost %.9g, fewer %.9g, the best %.9g", i, steps, k.Size, k.Cost, last, full.Cost)
			}
			last = k.Cost
		}
		if last != full.Cost {
			t.Errorf("family %d: with room for all %.12g, the best costs %.12g", i, last, full.Cost)
		}
	}
}

// tieFamily has two causes, each with its remedy, and checks as given.
func tieFamily(checks ...Observation) *Family {
	return &Family{Name: "ties", Causes: []Cause{{"dirt", 1}, {"steam", 1}}, Checks: checks,
		Remedies: []Cure{
			{Name: "clean", Time: 10 * quantity.Minute, Cures: map[string]quantity.Fraction{"dirt": 1}},
			{Name: "cool", Time: 10 * quantity.Minute, Cures: map[string]quantity.Fraction{"steam": 1}}},
		Help: Help{"help", 600 * quantity.Minute}}
}

func look(name string, minutes float64, dirt, steam quantity.Fraction) Observation {
	return Observation{Name: name, Time: quantity.Time(minutes) * quantity.Minute,
		Results: []Result{{Name: "yes", Chance: map[string]quantity.Fraction{"dirt": dirt, "steam": steam}}, {Name: "no"}}}
}

// TestTies: a check that costs nothing is made when it can change what is done, and not
// when it cannot; of equal checks the first is made, and a check before a remedy that
// costs as much.
func TestTies(t *testing.T) {
	rows := []struct {
		name  string
		f     *Family
		first string
	}{
		{"a free check that tells", tieFamily(look("speck", 0, 1, 0)), "speck"},
		{"a free check that tells nothing", tieFamily(look("speck", 0, 0.5, 0.5)), "clean"},
		{"a free check that tells too little to change anything", func() *Family {
			f := tieFamily(look("speck", 0, 0.6, 0.5))
			f.Causes[0].Weight = 3
			return f
		}(), "clean"},
		{"two equal checks", tieFamily(look("speck", 1, 1, 0), look("torch", 1, 1, 0)), "speck"},
		{"the surer of two", tieFamily(look("speck", 1, 0.9, 0), look("torch", 1, 1, 0)), "torch"},
		{"a check that is just too dear", tieFamily(look("speck", 5.001, 1, 0)), "clean"},
		{"a check that just pays", tieFamily(look("speck", 4.999, 1, 0)), "speck"},
	}
	for _, row := range rows {
		p := must(row.f)
		k := solved(t, p, Effort{})
		if got := p.Acts[k.Start.Act].Name; got != row.first {
			t.Errorf("%s: begins with %q, want %q", row.name, got, row.first)
		}
	}
}

// TestWhyOfAStep works one step out by hand: dirt or steam, each with its remedy of 10
// minutes, and a check of one minute that is always right.
func TestWhyOfAStep(t *testing.T) {
	p := must(tieFamily(look("speck", 1, 1, 0)))
	k := solved(t, p, Effort{})
	s := k.Start
	near := func(name string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-5 {
			t.Errorf("%s: %.9g, want %g", name, got, want)
		}
	}
	near("cost", k.Cost, 11)             // the check, then the right remedy
	near("steps", s.Count, 2)            // the same
	near("margin", s.Margin(), 4)        // without it 10 + ½·10
	near("worth", s.Options[0].Worth, 5) // it may cost up to 5 minutes
	near("bits", s.Options[0].Bits, 1)   // of one bit
	near("belief after yes", s.Next[0].Belief[0], 1)
	near("chance of yes", s.Next[0].Chance, 0.5)
	if len(k.Steps) != 3 || k.Steps[1] != s.Next[0] || k.Steps[1].Number != 2 {
		t.Errorf("%d steps, the second is not what follows yes", len(k.Steps))
	}
}

// TestLargeFamilies: those that are searched. The key is not dearer than a rule of
// thumb, and the bound leaves little.
func TestLargeFamilies(t *testing.T) {
	r := rand.New(rand.NewPCG(23, 24))
	for i := range 4 {
		p := must(invented(r, 8+i%2, 8, 8))
		k := solved(t, p, Effort{States: 1, Open: 20_000, Room: 2_000_000})
		for _, rule := range []Rule{ChancePerCost, OneAhead} {
			cost, err := rule.Cost(p)
			if err != nil {
				t.Fatal(err)
			}
			if cost < k.Cost-1e-6 {
				t.Errorf("family %d: rule %d costs %.9g, the key %.9g", i, rule, cost, k.Cost)
			}
			t.Logf("family %d: rule %d costs %.2f, the key %.2f and no key below %.2f", i, rule, cost, k.Cost, k.Least)
		}
		if k.Loss() > 0.02*k.Cost {
			t.Errorf("family %d: a loss of up to %.3g in %.3g is left", i, k.Loss(), k.Cost)
		}
		if w := followed(k); math.Abs(w-k.Cost) > 1e-9 {
			t.Errorf("family %d: the key is said to cost %.9g, walked it costs %.9g", i, k.Cost, w)
		}
	}
}
