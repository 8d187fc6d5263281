package shop

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"laydown/data"
)

// demoFaults loads the demonstration.
func demoFaults(t *testing.T) *Shop {
	t.Helper()
	return mustLoad(t, data.Files, nil)
}

// TestDemoFamilies holds the demonstration's families to a size that can be
// looked through at a machine, and their figures to being estimates.
func TestDemoFamilies(t *testing.T) {
	s := demoFaults(t)
	for _, f := range s.Faults {
		if len(f.Causes) > 12 || len(f.Checks) > 10 || len(f.Remedies) > 10 {
			t.Errorf("%s has %d causes, %d checks and %d remedies: at most 12, 10 and 10", f.ID, len(f.Causes), len(f.Checks), len(f.Remedies))
		}
		for _, c := range f.Causes {
			if c.Prevent == "" {
				t.Errorf("%s: nothing is said of how %s is kept from coming back", f.ID, c.ID)
			}
			if c.Source.ID != "" && s.Source(c.Source.ID).Kind == "published" {
				t.Errorf("%s: the weight of %s is called published, and nobody has published any", f.ID, c.ID)
			}
		}
		for _, c := range f.Checks {
			for _, row := range c.Found {
				for _, one := range row.Shares {
					if one.Value.Source != "estimate-faults" {
						t.Errorf("%s: a chance of %s comes from %q, and is an estimate", f.ID, c.ID, one.Value.Source)
					}
				}
			}
		}
		for _, m := range f.Remedies {
			for _, one := range m.Cures {
				if one.Value.Source != "estimate-faults" {
					t.Errorf("%s: a chance of %s comes from %q, and is an estimate", f.ID, m.ID, one.Value.Source)
				}
			}
		}
	}
}

// TestDemoCatalogue: each fault that the trade has a name for stands in a
// family, and each of its general checks is used by one. The list is common
// practice, no source.
func TestDemoCatalogue(t *testing.T) {
	s := demoFaults(t)
	catalogue := map[string]string{
		"bubbles":    "steam outgassing air tent",
		"silvering":  "silver haze powder orange-peel mottle",
		"lines":      "lane grain stop repeat ghost",
		"curl":       "tension damp dry decurl two-films board",
		"lifting":    "clean ink crease edge border block",
		"wrinkles":   "heat-wave straight slant chevron fold print-crease wavy-edge skew",
		"tunnelling": "tunnel stretch",
		"dirt":       "tent static",
		"damage":     "yellow colour melted scratch ooze wrap crack",
	}
	for id, signs := range catalogue {
		f := s.Fault(id)
		if f == nil {
			t.Errorf("there is no family %s", id)
			continue
		}
		for _, sign := range strings.Fields(signs) {
			if f.Sign(sign) == nil {
				t.Errorf("family %s has no sign %s", id, sign)
			}
		}
	}
	for _, id := range strings.Fields("clock loupe map burnish turn-round blank other-film repeat-distance x-cut roller-temperature nip-check stack-humidity tape slow-down speed-up") {
		if s.Check(id) == nil || !slices.ContainsFunc(s.Faults, func(f *FaultFamily) bool { return f.Check(id) != nil }) {
			t.Errorf("no family uses the general check %s", id)
		}
	}
	hard := 0
	for _, f := range s.Faults {
		// A check is noisy when no outcome of it is certain proof of one cause.
		noisy := 0
		for i := range f.Checks {
			c := &f.Checks[i]
			if !slices.ContainsFunc(c.Outcomes, func(o Outcome) bool { return c.proves(o.ID, f.causeIDs()) }) {
				noisy++
			}
		}
		if len(f.Causes) >= 8 && noisy >= 6 {
			hard++
		}
	}
	if hard < 3 {
		t.Errorf("%d families have eight causes and six noisy checks: at least three should", hard)
	}
}

// TestDemoLog: the invented cases are there for some families, say that they
// are invented, and lie before the day on the pages.
func TestDemoLog(t *testing.T) {
	s := demoFaults(t)
	counted := 0
	for _, f := range s.Faults {
		cases := s.LoggedFaults(f.ID)
		if len(cases) >= 10 {
			counted++
		}
		for _, c := range cases {
			if s.Source(c.Source.ID).Kind != "invented" || c.Date > s.Front.Revised {
				t.Errorf("%v: from %q, on %s", c.Pos, c.Source.ID, c.Date)
			}
		}
	}
	if counted < 2 || len(s.FaultsLog) < 24 {
		t.Errorf("%d families have ten cases, of %d in all", counted, len(s.FaultsLog))
	}
}

// proves says whether an outcome is seen with one cause and with no other.
func (c *FaultCheck) proves(outcome string, causes []string) bool {
	with := 0
	for _, cause := range causes {
		if c.Chance(outcome, cause) > 0 {
			with++
		}
	}
	return with == 1
}

// hazards are words that call for a caution.
var hazards = []struct {
	words    *regexp.Regexp
	cautions []string // any of these
}{
	{regexp.MustCompile(`(?i)\b(rollers?|nip|feed|run a|machine)\b`), []string{"nip", "hot-roller"}},
	{regexp.MustCompile(`(?i)\b(cut|slit|knife|blade|recut|trim)\b`), []string{"blade"}},
	{regexp.MustCompile(`(?i)\b(solvent|alcohol|turpentine)\b`), []string{"solvent"}},
	{regexp.MustCompile(`(?i)\b(earth|ionis|tinsel)`), []string{"static"}},
	{regexp.MustCompile(`(?i)\b(iron|hot)\b`), []string{"hot-roller"}},
}

// unsafe are things that nobody is told to do.
var unsafe = regexp.MustCompile(`(?i)\b(reach|finger|hand)[^.]*\b(nip|between the rollers)\b|\bwipe[^.]*\bwhile[^.]*\bturn|\bblade[^.]*\broller`)

// TestDemoCautions reads every sentence that tells somebody to do something.
func TestDemoCautions(t *testing.T) {
	s := demoFaults(t)
	read := 0
	look := func(where, do string, cautions []Ref) {
		read++
		if unsafe.MatchString(do) {
			t.Errorf("%s tells somebody to do what hurts: %s", where, do)
		}
		if regexp.MustCompile(`(?i)\b(clean|wipe|change its|mend)\b[^.]*\b(roller|cover|shoe|bar)`).MatchString(do) && !strings.Contains(do, "isolated") {
			t.Errorf("%s works on the machine and does not say isolated: %s", where, do)
		}
		for _, h := range hazards {
			if !h.words.MatchString(do) {
				continue
			}
			if !slices.ContainsFunc(h.cautions, func(id string) bool { return lists(cautions, id) }) {
				t.Errorf("%s names none of the cautions %v: %s", where, h.cautions, do)
			}
		}
	}
	for _, c := range s.Checks {
		look("check "+c.ID, c.Do, c.Cautions)
	}
	for _, f := range s.Faults {
		for _, c := range f.Checks {
			look(f.ID+", check "+c.ID, c.Do, c.Cautions)
		}
		for _, m := range f.Remedies {
			look(f.ID+", remedy "+m.ID, m.Do, m.Cautions)
		}
	}
	if read < 15 {
		t.Errorf("read only %d sentences", read)
	}
	for _, c := range s.Cautions {
		if !strings.Contains(c.Says, "local codes") {
			t.Errorf("caution %s does not give way to local codes", c.ID)
		}
	}
}
