package faults

import (
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"

	"laydown/gen/quantity"
)

// Experience is a family with what stands behind its figures: each is worth as much as
// if it had been counted in so many cases. The weights of the causes are then a
// Dirichlet distribution, as are a check's results given a cause; a remedy's chance
// given a cause is a beta distribution.
type Experience struct {
	Family Family
	// Causes is the number of cases behind the weights of the causes, Checks and
	// Remedies behind the chances of one check or remedy given one cause.
	Causes, Checks, Remedies float64
}

// Case is one entry of a fault log.
type Case struct {
	// Cause is what it was, by name; empty if that was never found out. The case then
	// counts for each cause by its chance, given what was seen and tried.
	Cause string
	// Seen holds results by check.
	Seen map[string]string
	// Tried holds the remedies that were tried, and whether they cured.
	Tried map[string]bool
}

// Estimate is a chance that was learned.
type Estimate struct {
	// Before is the chance as the family had it, Mean as it is now.
	Before, Mean quantity.Fraction
	// Counted is how often it was seen in the log, of Cases that told something about
	// it, in sums of chances where a cause was not found out.
	Counted, Cases float64
	// Deviation is the standard deviation of what is known about the chance.
	Deviation quantity.Fraction
}

// Learned is what a log makes of a family.
type Learned struct {
	// Family has the means for its figures; its weights sum to 1.
	Family Family
	// Causes holds the estimate of each cause's weight, in the family's order.
	Causes []Estimate
	// Checks are by check, result and cause, Remedies by remedy and cause, all in the
	// family's order.
	Checks   [][][]Estimate
	Remedies [][]Estimate
}

// Learn counts a log. The order of the cases does not matter: where a cause was not
// found out, its chance is computed with the figures from before the log.
func (e Experience) Learn(log []Case) (*Learned, error) {
	p, err := e.Family.Problem()
	if err != nil {
		return nil, err
	}
	var ps problems
	for _, n := range []struct {
		what  string
		cases float64
	}{{"causes", e.Causes}, {"checks", e.Checks}, {"remedies", e.Remedies}} {
		if !(n.cases > 0) || math.IsInf(n.cases, 1) {
			ps.add("%g cases behind the %s: give a positive number", n.cases, n.what)
		}
	}
	tally := newTally(p)
	for i, c := range log {
		if err := tally.count(c); err != nil {
			ps.add("case %d: %w", i+1, err)
		}
	}
	if err := errors.Join(ps...); err != nil {
		return nil, fmt.Errorf("fault family %q: %w", e.Family.Name, err)
	}
	return e.learned(tally), nil
}

// tally counts cases.
type tally struct {
	problem *Problem
	prior   []float64
	causes  []float64     // by cause
	acts    [][][]float64 // by act, outcome and cause
}

func newTally(p *Problem) *tally {
	t := &tally{problem: p, prior: p.beliefs(), causes: make([]float64, len(p.Causes))}
	for _, a := range p.Acts {
		var outcomes [][]float64
		for range a.Outcomes {
			outcomes = append(outcomes, make([]float64, len(p.Causes)))
		}
		t.acts = append(t.acts, outcomes)
	}
	return t
}

// met is one act with the outcome that was met.
type met struct{ act, outcome int }

// count adds one case.
func (t *tally) count(c Case) error {
	evidence, err := t.evidence(c)
	if err != nil {
		return err
	}
	belief := slices.Clone(t.prior)
	if c.Cause != "" {
		i := slices.IndexFunc(t.problem.Causes, func(x Cause) bool { return x.Name == c.Cause })
		if i < 0 {
			return fmt.Errorf("the family has no cause %q", c.Cause)
		}
		belief = make([]float64, len(belief))
		belief[i] = 1
	} else {
		for _, m := range evidence {
			mulInto(belief, belief, t.problem.Acts[m.act].Outcomes[m.outcome].Chance)
		}
		total := sum(belief)
		if total == 0 {
			return errors.New("what was seen and tried cannot be, given any of the causes; name the cause, or mend the chances")
		}
		for i := range belief {
			belief[i] /= total
		}
	}
	for i, b := range belief {
		t.causes[i] += b
		for _, m := range evidence {
			t.acts[m.act][m.outcome][i] += b
		}
	}
	return nil
}

// evidence finds the acts and outcomes of a case, in the order of the problem.
func (t *tally) evidence(c Case) ([]met, error) {
	var list []met
	var ps problems
	find := func(act, outcome string, kind Kind) {
		i := slices.IndexFunc(t.problem.Acts, func(a Act) bool { return a.Name == act && a.Kind() == kind })
		if i < 0 {
			ps.add("the family has no %s %q", kind, act)
			return
		}
		o := slices.IndexFunc(t.problem.Acts[i].Outcomes, func(o Outcome) bool { return o.Name == outcome })
		if o < 0 {
			ps.add("check %q has no result %q", act, outcome)
			return
		}
		list = append(list, met{i, o})
	}
	for _, name := range slices.Sorted(maps.Keys(c.Seen)) {
		find(name, c.Seen[name], Check)
	}
	for _, name := range slices.Sorted(maps.Keys(c.Tried)) {
		outcome := NotCured
		if c.Tried[name] {
			outcome = Cured
		}
		find(name, outcome, Remedy)
	}
	return list, errors.Join(ps...)
}

// learned mixes what was counted with what was there before.
func (e Experience) learned(t *tally) *Learned {
	p := t.problem
	l := &Learned{Family: e.Family}
	l.Family.Causes = slices.Clone(e.Family.Causes)
	all := sum(t.causes)
	for c := range p.Causes {
		x := estimate(t.prior[c], e.Causes, t.causes[c], all)
		l.Causes = append(l.Causes, x)
		l.Family.Causes[c].Weight = float64(x.Mean)
	}
	l.Family.Checks = slices.Clone(e.Family.Checks)
	for i := range l.Family.Checks {
		check := &l.Family.Checks[i]
		check.Results = slices.Clone(check.Results)
		var results [][]Estimate
		for o := range check.Results {
			chance, estimates := e.chances(t, i, o, e.Checks)
			check.Results[o].Chance = chance
			results = append(results, estimates)
		}
		l.Checks = append(l.Checks, results)
	}
	l.Family.Remedies = slices.Clone(e.Family.Remedies)
	for i := range l.Family.Remedies {
		chance, estimates := e.chances(t, len(l.Family.Checks)+i, 0, e.Remedies)
		l.Family.Remedies[i].Cures = chance
		l.Remedies = append(l.Remedies, estimates)
	}
	return l
}

// chances are the estimates of one outcome of an act given each cause.
func (e Experience) chances(t *tally, act, outcome int, cases float64) (map[string]quantity.Fraction, []Estimate) {
	chance := map[string]quantity.Fraction{}
	var list []Estimate
	for c, cause := range t.problem.Causes {
		told := 0.0
		for _, counted := range t.acts[act] {
			told += counted[c]
		}
		x := estimate(t.problem.Acts[act].Outcomes[outcome].Chance[c], cases, t.acts[act][outcome][c], told)
		chance[cause.Name] = x.Mean
		list = append(list, x)
	}
	return chance, list
}

// estimate is the mean and deviation of one chance of a Dirichlet distribution: what it
// was, worth so many cases, and how often it was counted among those of the log.
func estimate(before, worth, counted, cases float64) Estimate {
	total := worth + cases
	mean := (before*worth + counted) / total
	return Estimate{Before: quantity.Fraction(before), Mean: quantity.Fraction(mean), Counted: counted, Cases: cases,
		Deviation: quantity.Fraction(math.Sqrt(mean * (1 - mean) / (total + 1)))}
}

// Given is the family with the weights of its causes multiplied by factors, by the
// cause's name: how many times more likely what is known of the job makes each cause,
// against the others. Causes that are left out keep their weight.
func (f Family) Given(factors map[string]float64) (Family, error) {
	f.Causes = slices.Clone(f.Causes)
	var ps problems
	for _, name := range slices.Sorted(maps.Keys(factors)) {
		i := slices.IndexFunc(f.Causes, func(c Cause) bool { return c.Name == name })
		factor := factors[name]
		switch {
		case i < 0:
			ps.add("there is a factor for the cause %q, which the family does not have", name)
		case !(factor > 0) || math.IsInf(factor, 1):
			ps.add("cause %q has the factor %g: give a positive number", name, factor)
		default:
			f.Causes[i].Weight *= factor
		}
	}
	if err := errors.Join(ps...); err != nil {
		return Family{}, fmt.Errorf("fault family %q: %w", f.Name, err)
	}
	return f, nil
}
