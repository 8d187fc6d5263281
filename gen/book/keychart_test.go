package book

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// smallKey is a key by hand: a check that costs nothing, whose answers lead to remedies, to
// another check and to help; the other check's answers lead to remedies.
func smallKey() *tables.FaultKey {
	act := func(kind, name string, minutes quantity.Time, cautions ...string) *tables.FaultAct {
		return &tables.FaultAct{Kind: kind, ID: strings.ToLower(name), Name: name, Do: name + " as the card says.", Takes: minutes * quantity.Minute, Cautions: cautions}
	}
	look, press := act(tables.CheckAct, "Look", 0), act(tables.CheckAct, "Press", 2, "nip")
	cool, wipe := act(tables.RemedyAct, "Cool", 6, "hot-roller", "nip"), act(tables.RemedyAct, "Wipe", 10)
	tried := func(next int) []tables.FaultAnswer {
		return []tables.FaultAnswer{{ID: "cured"}, {ID: "still", Next: next, Help: next == 0}}
	}
	return &tables.FaultKey{Minutes: 40 * quantity.Minute, Steps: []tables.FaultStep{
		{Number: 1, Act: look, Answers: []tables.FaultAnswer{{Says: "round", Next: 2}, {Says: "flat", Next: 4}, {Says: "none", Help: true}}},
		{Number: 2, Act: wipe, Answers: tried(3)},
		{Number: 3, Act: cool, Answers: tried(0)},
		{Number: 4, Act: press, Answers: []tables.FaultAnswer{{Says: "firm", Next: 5}, {Says: "soft", Next: 6}}},
		{Number: 5, Act: cool, Answers: tried(0)},
		{Number: 6, Act: wipe, Answers: tried(0)},
	}}
}

// TestPostedKey: checks are numbered and remedies lettered as they are come to.
func TestPostedKey(t *testing.T) {
	key := postedKey(smallKey())
	var said []string
	for _, c := range key.Checks {
		said = append(said, fmt.Sprint(c.Number, " ", c.Name, " ", c.Takes))
		for _, a := range c.Answers {
			said = append(said, a.Says+" → "+a.Leads())
		}
	}
	for _, r := range key.Remedies {
		said = append(said, r.Letter+" "+r.Name+" "+r.Takes)
	}
	want := "1 Look |round → A B|flat → 2|none → call for help|2 Press 2\u00a0min|firm → B|soft → A|A Wipe 10\u00a0min|B Cool 6\u00a0min"
	if got := strings.Join(said, "|"); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	if got := actCautions(smallKey()); !slices.Equal(got, []string{"hot-roller", "nip"}) {
		t.Errorf("cautions %v", got)
	}
	remedies := smallKey()
	remedies.Steps = []tables.FaultStep{remedies.Steps[4]}
	remedies.Steps[0].Number = 1
	only := postedKey(remedies)
	if len(only.Checks) != 1 || only.Checks[0].Number != 1 || only.Checks[0].Answers[0].Leads() != "A" || len(only.Remedies) != 1 {
		t.Errorf("a key of a remedy: %+v", only)
	}
}

// TestAnswersDrawn: an answer has the drawing that its family has of it, or none.
func TestAnswersDrawn(t *testing.T) {
	b := &builder{problems: &problems{}}
	f := &shop.FaultFamily{Checks: []shop.FaultCheck{{Name: "Look", Outcomes: []shop.Outcome{{Says: "round", Drawing: "bubbles-pin"}, {Says: "flat"}}}}}
	key := postedKey(smallKey())
	b.drawAnswers(&key, f)
	a := key.Checks[0].Answers
	if !strings.Contains(string(a[0].Drawing), "<svg") || a[1].Drawing != "" || key.Checks[1].Answers[0].Drawing != "" {
		t.Errorf("drawn: %.60q, %q, %q", a[0].Drawing, a[1].Drawing, key.Checks[1].Answers[0].Drawing)
	}
}

// TestKeyLoss: the chart says what it costs over the whole key, in whole minutes.
func TestKeyLoss(t *testing.T) {
	k := &tables.FaultKey{Family: &shop.FaultFamily{}, Minutes: 37.4 * quantity.Minute, Posted: smallKey()}
	k.Family.Name = "Bubbles"
	if got, want := keyLoss(k), "On the mean it takes 40\u00a0min, 3\u00a0min more than the whole key on the page Bubbles."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	k.Minutes = 39.8 * quantity.Minute
	if got := keyLoss(k); strings.Contains(got, "more") {
		t.Errorf("nothing is lost, and it says %q", got)
	}
}

// checkKeySheets: every part is on one sheet, every sheet holds what it was given, and
// whatever an answer leads to is on a sheet. It gives the number of sheets.
func checkKeySheets(t *testing.T, b *builder, c wallChart, p paper) int {
	t.Helper()
	sheets := b.sheets(c, p)
	numbers, letters := map[int]bool{}, map[string]bool{}
	answers, remedies := 0, 0
	for _, s := range sheets {
		used := 0.0
		for _, part := range s.Parts {
			used += part.height(s.Layout)
			if c := checkPart(part); c != nil {
				numbers[c.Number] = true
				answers += len(c.Answers)
			}
			for _, r := range remedyPart(part) {
				letters[r.Letter], remedies = true, remedies+1
			}
		}
		if used > s.Layout.room() {
			t.Errorf("%s on %s, sheet %d needs %.1f mm of %.1f", c.Title, p.Name, s.Sheet, used, s.Layout.room())
		}
		if len(s.Parts) == 0 || s.Span == "" {
			t.Errorf("%s on %s, sheet %d has %d parts, said to be %q", c.Title, p.Name, s.Sheet, len(s.Parts), s.Span)
		}
	}
	want := 0
	for _, check := range c.Key.Checks {
		want += len(check.Answers)
	}
	if len(numbers) != len(c.Key.Checks) || answers != want || remedies != len(c.Key.Remedies) || len(letters) != remedies {
		t.Errorf("%s on %s: on sheets are %d checks, %d answers, %d remedies, of %d, %d and %d", c.Title, p.Name, len(numbers), answers, remedies, len(c.Key.Checks), want, len(c.Key.Remedies))
	}
	for _, check := range c.Key.Checks {
		if len(check.Answers) == 0 {
			t.Errorf("%s: check %d has no answer", c.Title, check.Number)
		}
		for _, a := range check.Answers {
			if a.Number != 0 && !numbers[a.Number] {
				t.Errorf("%s: %q leads to %d, which is on no sheet", c.Title, a.Says, a.Number)
			}
			for _, l := range a.Letters {
				if !letters[l] {
					t.Errorf("%s: %q leads to %s, which is on no sheet", c.Title, a.Says, l)
				}
			}
		}
	}
	return len(sheets)
}

// TestKeySheets: keys of all sizes, on every paper.
func TestKeySheets(t *testing.T) {
	b := &builder{shop: &shop.Shop{}}
	for _, n := range []int{1, 4, 12, 40} {
		key := chartKey{Checks: []keyCheck{{Number: 1, Name: strings.Repeat("Look at it ", 1+n%3), Do: strings.Repeat("as the card says ", n/2), Answers: []keyLead{{Says: strings.Repeat("it is round ", n/2+1), Number: 2}, {Says: "nothing"}}}, {Number: 2, Name: "Press"}}}
		for i := range n {
			letter := remedyLetter(i)
			key.Remedies = append(key.Remedies, keyRemedy{letter, strings.Repeat("Wipe ", 1+i%5), strings.Repeat("as the card says ", i%9), "6 min"})
			if i < 8 {
				key.Checks[1].Answers = append(key.Checks[1].Answers, keyLead{Says: strings.Repeat("it is firm and square ", 1+n/2), Letters: []string{letter}})
			}
		}
		c := wallChart{Kind: keyKind("test"), Title: "Test", Key: &key}
		one := checkKeySheets(t, b, c, papers[0])
		if n == 40 && one < 2 {
			t.Errorf("%d remedies are on %d sheet", n, one)
		}
		for _, p := range papers[1:] {
			checkKeySheets(t, b, c, p)
		}
		if l := layOut(c, papers[1]); n == 12 && key.Checks[1].height(l) <= l.room() {
			t.Errorf("the check of %d answers fits a sheet, and nothing is parted", n)
		}
	}
	if a, j, z, aa := remedyLetter(0), remedyLetter(8), remedyLetter(23), remedyLetter(24); a+j+z+aa != "AJZAA" {
		t.Errorf("letters %s, %s, %s, %s", a, j, z, aa)
	}
}

// TestDemoKeysHang: every family of the demonstration has its chart, and on A3 it is two
// sheets, the checks and the remedies.
func TestDemoKeysHang(t *testing.T) {
	if testing.Short() {
		t.Skip("solves every key")
	}
	b := demoBook(t)
	charts := b.keyCharts()
	if len(charts) != len(b.shop.Faults) {
		t.Errorf("%d keys hang, of %d families", len(charts), len(b.shop.Faults))
	}
	for _, c := range charts {
		if c.HazardText == "" {
			t.Errorf("%s has no caution", c.Title)
		}
		for _, p := range papers {
			n := checkKeySheets(t, b, c, p)
			if p.Name == "A3" && n != 2 {
				t.Errorf("%s is %d sheets of A3, want 2", c.Title, n)
			}
		}
	}
}
