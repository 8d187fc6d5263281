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
