package faults

import (
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"

	"laydown/gen/quantity"
)

// Family is a family of faults that look alike: bubbles, lines, curl. Exactly one of
// its causes is taken to be present.
type Family struct {
	Name     string
	Causes   []Cause
	Checks   []Observation
	Remedies []Cure
	Help     Help
}

// Observation is a check: it takes time, and tells something about the cause.
type Observation struct {
	Name    string
	Time    quantity.Time
	Results []Result
}

// Result is one result of a check, with its chance given each cause, by the cause's
// name. One result of a check may leave Chance nil: it takes what the others leave.
type Result struct {
	Name   string
	Chance map[string]quantity.Fraction
}

// Cure is a remedy. Time holds all that trying it takes, with the sheet that shows
// whether the fault is gone.
type Cure struct {
	Name string
	Time quantity.Time
	// Cures is the chance that it ends the fault given each cause, by the cause's
	// name; a cause that is left out is never cured by it.
	Cures map[string]quantity.Fraction
}

// Help ends the search for the cause: a call to somebody who knows, or a reprint.
type Help struct {
	Name string
	Time quantity.Time
}

// Names of the outcomes of remedies and of help.
const (
	Cured    = "cured"
	NotCured = "not cured"
	Done     = "done"
)

// Problem gives the family as a decision problem whose costs are minutes, or all that
// is wrong with it. Checks come first, then remedies, then help.
func (f *Family) Problem() (*Problem, error) {
	p := &Problem{Name: f.Name, Causes: slices.Clone(f.Causes)}
	var ps problems
	for _, o := range f.Checks {
		p.Acts = append(p.Acts, f.check(o, &ps))
	}
	if len(f.Remedies) == 0 {
		ps.add("no remedy: every way would end in %q; add what has cured this fault", f.Help.Name)
	}
	for _, r := range f.Remedies {
		p.Acts = append(p.Acts, f.remedy(r, &ps))
	}
	p.Acts = append(p.Acts, Act{Name: f.Help.Name, Cost: minutes(f.Help.Name, f.Help.Time, &ps),
		Outcomes: []Outcome{{Name: Done, Chance: slices.Repeat([]float64{1}, len(f.Causes)), Ends: true}}})
	err := errors.Join(ps...)
	if err == nil {
		err = p.Validate()
	}
	if err != nil {
		return nil, fmt.Errorf("fault family %q: %w", f.Name, err)
	}
	return p, nil
}

// check is an observation as an act.
func (f *Family) check(o Observation, ps *problems) Act {
	a := Act{Name: o.Name, Cost: minutes(o.Name, o.Time, ps)}
	if len(o.Results) < 2 {
		ps.add("check %q has %d results: with fewer than two it tells nothing", o.Name, len(o.Results))
	}
	rest := -1
	for i, r := range o.Results {
		list := f.chances(o.Name, r.Chance, ps)
		switch {
		case r.Chance == nil && rest >= 0:
			ps.add("results %q and %q of check %q both leave out their chances; only one may", o.Results[rest].Name, r.Name, o.Name)
		case r.Chance == nil:
			rest = i
		default:
			for _, c := range f.Causes {
				if _, ok := r.Chance[c.Name]; !ok {
					ps.add("result %q of check %q has no chance for cause %q", r.Name, o.Name, c.Name)
				}
			}
		}
		a.Outcomes = append(a.Outcomes, Outcome{Name: r.Name, Chance: list})
	}
	if rest >= 0 {
		takeRest(a.Outcomes, rest)
	}
	return a
}

// takeRest gives one outcome what the others leave of 1.
func takeRest(outcomes []Outcome, rest int) {
	for c := range outcomes[rest].Chance {
		left := 1.0
		for i, o := range outcomes {
			if i != rest {
				left -= o.Chance[c]
			}
		}
		if math.Abs(left) < sumTolerance {
			left = 0
		}
		outcomes[rest].Chance[c] = left
	}
}

// remedy is a cure as an act.
func (f *Family) remedy(r Cure, ps *problems) Act {
	cured := f.chances(r.Name, r.Cures, ps)
	not := make([]float64, len(cured))
	for c, q := range cured {
		not[c] = 1 - q
	}
	if len(cured) > 0 && slices.Max(cured) <= 0 {
		ps.add("remedy %q cures nothing: name the causes that it cures", r.Name)
	}
	return Act{Name: r.Name, Cost: minutes(r.Name, r.Time, ps),
		Outcomes: []Outcome{{Name: Cured, Chance: cured, Ends: true}, {Name: NotCured, Chance: not}}}
}

// minutes is a time as the cost of an act.
func minutes(name string, t quantity.Time, ps *problems) []float64 {
	if !(t >= 0) || math.IsInf(float64(t), 1) {
		ps.add("%q takes %g minutes: give a time that is not negative", name, t.Minutes())
	}
	return []float64{t.Minutes()}
}

// chances puts chances by name into the order of the causes, 0 where there is none.
func (f *Family) chances(act string, byName map[string]quantity.Fraction, ps *problems) []float64 {
	list := make([]float64, len(f.Causes))
	for c, cause := range f.Causes {
		list[c] = float64(byName[cause.Name])
	}
	for _, name := range slices.Sorted(maps.Keys(byName)) {
		if !slices.ContainsFunc(f.Causes, func(c Cause) bool { return c.Name == name }) {
			ps.add("%q has a chance for the cause %q, which the family does not have", act, name)
		}
		if q := float64(byName[name]); !(q >= 0 && q <= 1) {
			ps.add("%q has the chance %g for cause %q: a chance lies from 0 to 1", act, q, name)
		}
	}
	return list
}

// Doubts lists what is allowed but most likely not meant, one sentence each.
func (f *Family) Doubts() ([]string, error) {
	p, err := f.Problem()
	if err != nil {
		return nil, err
	}
	var list []string
	add := func(format string, args ...any) { list = append(list, fmt.Sprintf(format, args...)) }
	for _, pair := range p.Alike() {
		add("no check and no remedy tells %q from %q: make them one cause, or add a check", f.Causes[pair[0]].Name, f.Causes[pair[1]].Name)
	}
	for _, cause := range f.Causes {
		if !slices.ContainsFunc(f.Remedies, func(r Cure) bool { return r.Cures[cause.Name] > 0 }) {
			add("no remedy cures %q: it always ends in %q", cause.Name, f.Help.Name)
		}
	}
	for i, o := range f.Checks {
		if p.Acts[i].tellsNothing() {
			add("check %q tells nothing: its results are as likely given any cause", o.Name)
		}
	}
	for _, r := range f.Remedies {
		if r.Time >= f.Help.Time {
			add("remedy %q takes as long as %q or longer: it is never tried", r.Name, f.Help.Name)
		}
	}
	return list, nil
}
