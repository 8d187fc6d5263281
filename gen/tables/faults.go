package tables

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"laydown/gen/faults"
	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// FaultKey is the way to a cure for one family of faults, with what stands behind it.
type FaultKey struct {
	Family *shop.FaultFamily
	Causes []FaultCause // in the data's order
	Acts   []FaultAct   // checks, then remedies, then the call for help
	// Steps are numbered from 1, each before what follows it.
	Steps []FaultStep
	// Minutes is the expected cost until the fault is gone or somebody is called, Least
	// what no key can be below, as proven. They are equal where Exact.
	Minutes, Least quantity.Time
	Exact          bool
	// States is how many states of knowledge were valued.
	States int
	// Cases of the shop's log that count in it.
	Cases int
	// Short is the best key found that fits on a sheet; nil where this one does.
	Short *FaultKey
	// Posted is the key for a wall: a few checks, and lists of remedies. Nil in the key
	// of a job.
	Posted *FaultKey
}

// PostedLines and PostedRemedies are how many lines the checks of a key on a wall may have
// together, and the most remedies in one of its lists: what a sheet of A3 holds in letters
// that read from two metres.
const PostedLines, PostedRemedies = 10, 6

// PrintedSteps is the most two-way steps of a key in print: what fits on three pages of A4
// and can be followed by hand. An assumption.
const PrintedSteps = 60

// FaultCause is a cause with how likely it is before anything was looked at.
type FaultCause struct {
	*shop.FaultCause
	Share float64 // 0 to 1
	Cases int     // of the shop's log
	// Factor is what the job's own numbers make of its weight; 1 where they say nothing.
	Factor float64
}

// FaultStep is one step of a key: a check, a remedy or the call for help.
type FaultStep struct {
	Number  int
	Act     *FaultAct
	Chance  float64   // of coming here
	Belief  []float64 // of each cause, in the order of the key's causes
	Minutes quantity.Time
	Acts    float64 // expected number of checks and remedies from here on
	Answers []FaultAnswer
	Instead *FaultAct     // the next best; nil where nothing else is left
	Dearer  quantity.Time // by how much it is dearer
	Bits    float64       // of information about the cause that the act is expected to give
	Worth   quantity.Time // the most that the act might take and still be the best one here
}

// FaultAct is what is done.
type FaultAct struct {
	Kind     string // CheckAct, RemedyAct, HelpAct
	ID       string
	Name, Do string
	Takes    quantity.Time
	Cautions []string // ids
	// Cases of the shop's log that count in what it shows.
	Cases    int
	Outcomes []FaultOutcome
}

// FaultOutcome is one thing that an act can show.
type FaultOutcome struct {
	ID, Says string
	Chance   []float64 // given each cause, in the order of the key's causes
	Ends     bool
}

// The kinds of acts.
const (
	CheckAct  = "check"
	RemedyAct = "remedy"
	HelpAct   = "help"
)

// FaultAnswer is one thing that may come of an act.
type FaultAnswer struct {
	ID, Says string
	Chance   float64
	Next     int  // number of the next step; 0 where the matter ends
	Help     bool // the next thing is to call for help
}

// helpName is what ends a key that has nothing better.
const helpName = "Call for help"

// keyEffort is what a publish spends on a family: some seconds in all.
var keyEffort = faults.Effort{States: 300_000, Open: 8_000, Room: 1_000_000}

// estimateCases is as how many cases of the log an estimated row of a check counts (an
// assumption, stated on the pages). A family's weights count as they stand.
const estimateCases = 10

// FaultKeys computes the keys of all families.
func (t *Tables) FaultKeys() ([]FaultKey, error) {
	return eachOf(len(t.shop.Faults), func(_ *nip.Solver, i int) (FaultKey, error) {
		return t.solvedKey(t.shop.Faults[i], nil)
	})
}

// solvedKey solves a family with the usual effort.
func (t *Tables) solvedKey(f *shop.FaultFamily, evidence map[string]float64) (FaultKey, error) {
	if evidence != nil {
		return t.faultKey(f, evidence, keyEffort)
	}
	return t.keys.of(f.ID, func() (FaultKey, error) { return t.faultKey(f, nil, keyEffort) })
}

// faultKey solves a family; evidence multiplies the weights of its causes.
func (t *Tables) faultKey(f *shop.FaultFamily, evidence map[string]float64, effort faults.Effort) (FaultKey, error) {
	family, acts := t.posed(f, evidence)
	p, err := family.Problem()
	if err != nil {
		return FaultKey{}, err
	}
	solver, err := faults.NewSolver(p, effort)
	if err != nil {
		return FaultKey{}, fmt.Errorf("faults %s: %w", f.ID, err)
	}
	key := t.told(f, solver.Key(), acts, evidence)
	if evidence == nil {
		posted := t.told(f, solver.Lists(PostedLines, PostedRemedies), acts, nil)
		key.Posted = &posted
	}
	if len(key.Steps) <= PrintedSteps {
		return key, nil
	}
	short := solver.Short(PrintedSteps)
	printed := t.told(f, &short.Key, acts, evidence)
	key.Short = &printed
	return key, nil
}

// Bound is Least in whole steps of a time, rounded down: to the nearest it would say more
// than is proven. An exact key's is its own cost.
func (k *FaultKey) Bound(step quantity.Time) quantity.Time {
	if k.Exact {
		return k.Least
	}
	return quantity.Time(math.Floor(float64(k.Least/step))) * step
}

// Printed is the key as it is printed.
func (k *FaultKey) Printed() *FaultKey {
	if k.Short != nil {
		return k.Short
	}
	return k
}

// posed is a family as the solver takes it, with the acts in the solver's order.
func (t *Tables) posed(f *shop.FaultFamily, evidence map[string]float64) (*faults.Family, []FaultAct) {
	log := t.logOf(f)
	posed := &faults.Family{Name: f.ID, Help: faults.Help{Name: helpName, Time: f.Help.Best}}
	var acts []FaultAct
	for _, c := range f.Causes {
		posed.Causes = append(posed.Causes, faults.Cause{Name: c.ID, Weight: (c.Weight + float64(log.causes[c.ID])) * factorOf(evidence, c.ID)})
	}
	for i := range f.Checks {
		c := &f.Checks[i]
		o := faults.Observation{Name: c.ID, Time: c.Takes.Best}
		for _, outcome := range c.Outcomes {
			r := faults.Result{Name: outcome.ID, Chance: map[string]quantity.Fraction{}}
			for _, cause := range f.Causes {
				r.Chance[cause.ID] = log.chance(c, outcome.ID, cause.ID)
			}
			o.Results = append(o.Results, r)
		}
		posed.Checks = append(posed.Checks, o)
		acts = append(acts, FaultAct{CheckAct, c.ID, c.Name, c.Do, c.Takes.Best, ids(c.Cautions), log.seen[c.ID], nil})
	}
	for i := range f.Remedies {
		r := &f.Remedies[i]
		cure := faults.Cure{Name: r.ID, Time: r.Takes.Best + t.asTime(r.Material), Cures: map[string]quantity.Fraction{}}
		for _, cause := range f.Causes {
			if share := r.Cure(cause.ID); share > 0 {
				cure.Cures[cause.ID] = share
			}
		}
		posed.Remedies = append(posed.Remedies, cure)
		acts = append(acts, FaultAct{RemedyAct, r.ID, r.Name, r.Do, cure.Time, ids(r.Cautions), 0, nil})
	}
	return posed, append(acts, FaultAct{Kind: HelpAct, ID: "help", Name: helpName, Do: "Ask the film's or the machine's maker, or reprint: what is left is dearer to look for.", Takes: f.Help.Best})
}

func factorOf(evidence map[string]float64, cause string) float64 {
	if x, ok := evidence[cause]; ok {
		return x
	}
	return 1
}

// asTime turns material into time by the shop's hour rate; without a rate it costs none.
func (t *Tables) asTime(material float64) quantity.Time {
	w := t.shop.Front.Work
	if w == nil || !(w.HourRate > 0) {
		return 0
	}
	return quantity.Time(material/w.HourRate) * quantity.Hour
}

// faultLog counts the shop's log for one family.
type faultLog struct {
	causes map[string]int            // by cause
	seen   map[string]int            // by check
	shown  map[string]map[string]int // by check and cause, then outcome: key check/cause
	cases  int
}

func (t *Tables) logOf(f *shop.FaultFamily) faultLog {
	l := faultLog{causes: map[string]int{}, seen: map[string]int{}, shown: map[string]map[string]int{}}
	for _, one := range t.shop.LoggedFaults(f.ID) {
		l.cases++
		l.causes[one.Cause]++
		for _, finding := range one.Checks {
			l.seen[finding.Check]++
			key := finding.Check + "/" + one.Cause
			if l.shown[key] == nil {
				l.shown[key] = map[string]int{}
			}
			l.shown[key][finding.Outcome]++
		}
	}
	return l
}

// chance is how likely a check shows an outcome with a cause: the estimate as
// estimateCases cases, and the log's own cases beside it (the mean of a Dirichlet
// distribution).
func (l faultLog) chance(c *shop.FaultCheck, outcome, cause string) quantity.Fraction {
	estimate := c.Chance(outcome, cause)
	row := l.shown[c.ID+"/"+cause]
	n := 0
	for _, k := range row {
		n += k
	}
	return (estimate*estimateCases + quantity.Fraction(row[outcome])) / quantity.Fraction(estimateCases+n)
}

// told turns a solved key into what the pages show.
func (t *Tables) told(f *shop.FaultFamily, k *faults.Key, acts []FaultAct, evidence map[string]float64) FaultKey {
	log := t.logOf(f)
	key := FaultKey{Family: f, Minutes: inMinutes(k.Cost), Least: inMinutes(k.Least), Exact: k.Exact, States: k.States, Cases: log.cases}
	total := 0.0
	for _, c := range k.Problem.Causes {
		total += c.Weight
	}
	for i := range f.Causes {
		c := &f.Causes[i]
		key.Causes = append(key.Causes, FaultCause{c, k.Problem.Causes[i].Weight / total, log.causes[c.ID], factorOf(evidence, c.ID)})
	}
	acts = slices.Clone(acts)
	for i := range acts {
		for _, o := range k.Problem.Acts[i].Outcomes {
			acts[i].Outcomes = append(acts[i].Outcomes, FaultOutcome{o.Name, says(f, &acts[i], o.Name), o.Chance, o.Ends})
		}
	}
	key.Acts = acts
	for _, s := range k.Steps {
		key.Steps = append(key.Steps, toldStep(s, acts))
	}
	return key
}

func toldStep(s *faults.Step, acts []FaultAct) FaultStep {
	step := FaultStep{Number: s.Number, Act: &acts[s.Act], Chance: s.Chance, Belief: s.Belief, Minutes: inMinutes(s.Cost), Acts: s.Count}
	if len(s.Options) > 0 {
		step.Bits, step.Worth = s.Options[0].Bits, inMinutes(s.Options[0].Worth)
	}
	if len(s.Options) > 1 {
		step.Instead, step.Dearer = &acts[s.Options[1].Act], inMinutes(s.Margin())
	}
	for i, o := range step.Act.Outcomes {
		chance := 0.0
		for c, q := range o.Chance {
			chance += s.Belief[c] * q
		}
		if chance <= 0 {
			continue
		}
		a := FaultAnswer{ID: o.ID, Says: o.Says, Chance: chance}
		if next := s.Next[i]; next != nil {
			a.Next = next.Number
			a.Help = next.Number == 0
		}
		step.Answers = append(step.Answers, a)
	}
	return step
}

// says is an outcome in words.
func says(f *shop.FaultFamily, act *FaultAct, outcome string) string {
	switch act.Kind {
	case RemedyAct:
		if outcome == faults.Cured {
			return "it is gone"
		}
		return "it is still there"
	case HelpAct:
		return "done"
	}
	for _, c := range f.Checks {
		if c.ID != act.ID {
			continue
		}
		for _, o := range c.Outcomes {
			if o.ID == outcome {
				return o.Says
			}
		}
	}
	return outcome
}

func inMinutes(m float64) quantity.Time {
	if math.IsInf(m, 1) {
		return quantity.Time(math.Inf(1))
	}
	return quantity.Time(m) * quantity.Minute
}

// Step finds a step by its number; nil where there is none.
func (k *FaultKey) Step(number int) *FaultStep {
	if number < 1 || number > len(k.Steps) {
		return nil
	}
	return &k.Steps[number-1]
}

// Ranked are the causes, the likeliest first.
func (k *FaultKey) Ranked() []FaultCause {
	list := slices.Clone(k.Causes)
	slices.SortStableFunc(list, func(a, b FaultCause) int { return cmp.Compare(b.Share, a.Share) })
	return list
}

// Likeliest are the n causes that are believed in most, as indices of the key's causes.
func (k *FaultKey) Likeliest(belief []float64, n int) []int {
	order := make([]int, len(belief))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(belief[b], belief[a]) })
	return order[:min(n, len(order))]
}

// WalkEnd is where a key leads with the likeliest answers to one cause.
type WalkEnd struct {
	Cause string
	Steps []int // numbers
	// Cured by the remedy; empty where it ends at a call for help.
	Cured string
}

// Walk follows the key as it goes when one cause is present and every answer is the one
// that is likeliest then: a remedy that is likelier than not to cure it does.
func (k *FaultKey) Walk(cause string) WalkEnd {
	end := WalkEnd{Cause: cause}
	at := slices.IndexFunc(k.Causes, func(c FaultCause) bool { return c.ID == cause })
	for n := 1; at >= 0 && n > 0 && n <= len(k.Steps); {
		s := &k.Steps[n-1]
		end.Steps = append(end.Steps, n)
		best, chance := -1, -1.0
		for i, a := range s.Answers {
			if q := s.Act.chance(a.ID, at); q > chance {
				best, chance = i, q
			}
		}
		if best < 0 {
			return end
		}
		a := s.Answers[best]
		if s.Act.Kind == RemedyAct && a.ID == faults.Cured {
			end.Cured = s.Act.ID
			return end
		}
		n = a.Next
	}
	return end
}

// chance is how likely an outcome is given a cause, counted in the key's order.
func (a *FaultAct) chance(outcome string, cause int) float64 {
	for _, o := range a.Outcomes {
		if o.ID == outcome {
			return o.Chance[cause]
		}
	}
	return 0
}
