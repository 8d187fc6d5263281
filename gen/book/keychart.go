package book

import (
	"fmt"
	"html/template"
	"math"
	"slices"
	"strings"

	"laydown/gen/shop"
	"laydown/gen/tables"
)

// chartKey is a fault key on a wall: checks with numbers, whose answers lead to the
// next check or to remedies with letters, and the remedies.
type chartKey struct {
	Checks   []keyCheck
	Remedies []keyRemedy
}

// keyCheck is a check with what it can show.
type keyCheck struct {
	Number          int
	Name, Do, Takes string
	Answers         []keyLead
}

// keyLead is one thing that a check can show, and where it leads: to the check of a
// number, or to the remedies of some letters, in turn. With neither it is a call for
// help.
type keyLead struct {
	Says    string
	Drawing template.HTML // how it looks; where the data has none, none
	Number  int
	Letters []string
}

// keyRemedy is something to do, under its letter.
type keyRemedy struct{ Letter, Name, Do, Takes string }

// keyCharts are the charts of the fault keys that the shop hangs.
func (b *builder) keyCharts() []wallChart {
	wanted := b.shop.Front.Charts.Faults
	if len(wanted) == 0 {
		return nil
	}
	keys, err := b.answers.FaultKeys()
	if err != nil {
		return nil // the pages of the keys say so
	}
	var list []wallChart
	for _, ref := range wanted {
		for i := range keys {
			if keys[i].Family.ID == ref.ID && keys[i].Posted != nil {
				list = append(list, b.keyChart(&keys[i]))
			}
		}
	}
	return list
}

// keyKind is the kind of a family's chart, and the beginning of its path.
func keyKind(family string) string { return "key-" + family }

// keyFor tells the chart of a key from others of its name.
const keyFor = "a fault key"

// keyChart is the chart of one key.
func (b *builder) keyChart(k *tables.FaultKey) wallChart {
	key := postedKey(k.Posted)
	b.drawAnswers(&key, k.Family)
	c := wallChart{Kind: keyKind(k.Family.ID), Title: k.Family.Name, Where: "Begin at 1. Try letters in turn.", For: keyFor, Key: &key, Names: "answers and remedies",
		Advice: k.Family.Looks + " None helps: call for help. " + keyLoss(k)}
	c.Hazard, c.HazardText = "Caution.", b.dangers(actCautions(k.Posted))
	return c
}

// drawAnswers puts beside the answers of a key the drawings that its family has of them.
func (b *builder) drawAnswers(key *chartKey, f *shop.FaultFamily) {
	for i := range key.Checks {
		for j := range key.Checks[i].Answers {
			a := &key.Checks[i].Answers[j]
			a.Drawing = b.faultDrawing(fmt.Sprintf("%s-%d-%d", f.ID, i+1, j+1), drawingOf(f, key.Checks[i].Name, a.Says))
		}
	}
}

// drawingOf names the drawing of what a check can show; empty where there is none.
func drawingOf(f *shop.FaultFamily, check, says string) string {
	for _, c := range f.Checks {
		for _, o := range c.Outcomes {
			if c.Name == check && o.Says == says {
				return o.Drawing
			}
		}
	}
	return ""
}

// keyLoss says what the key on the wall costs over the whole one.
func keyLoss(k *tables.FaultKey) string {
	took, more := math.Round(k.Posted.Minutes.Minutes()), math.Round((k.Posted.Minutes - k.Minutes).Minutes())
	said := fmt.Sprintf("On the mean it takes %.0f\u00a0min", took)
	if more < 1 {
		return said + fmt.Sprintf(", as the whole key does on the page %s.", k.Family.Name)
	}
	return said + fmt.Sprintf(", %.0f\u00a0min more than the whole key on the page %s.", more, k.Family.Name)
}

// actCautions are the cautions of all that a key does, in the order of coming to them.
func actCautions(k *tables.FaultKey) []string {
	var ids []string
	for _, s := range k.Steps {
		for _, id := range s.Act.Cautions {
			if !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
	}
	return ids
}

// postedKey numbers the checks of a key and letters its remedies, in the order of coming
// to them. A key that begins with a remedy has one check, that asks nothing.
func postedKey(k *tables.FaultKey) chartKey {
	var key chartKey
	lettered := map[string]string{}
	inTurn := func(number int) []string {
		var list []string
		for s := k.Step(number); s != nil && s.Act.Kind == tables.RemedyAct; s = k.Step(stillThere(s)) {
			if lettered[s.Act.ID] == "" {
				lettered[s.Act.ID] = remedyLetter(len(key.Remedies))
				key.Remedies = append(key.Remedies, keyRemedy{lettered[s.Act.ID], s.Act.Name, s.Act.Do, handTime(s.Act.Takes)})
			}
			list = append(list, lettered[s.Act.ID])
		}
		return list
	}
	numbers := map[int]int{} // of checks, by the key's own numbers
	for _, s := range k.Steps {
		if s.Act.Kind == tables.CheckAct {
			numbers[s.Number] = len(numbers) + 1
		}
	}
	if len(numbers) == 0 {
		key.Checks = []keyCheck{{Number: 1, Name: "Try in turn", Answers: []keyLead{{Says: "whatever it looks like", Letters: inTurn(1)}}}}
	}
	for _, s := range k.Steps {
		if s.Act.Kind != tables.CheckAct {
			continue
		}
		c := keyCheck{Number: numbers[s.Number], Name: s.Act.Name, Do: s.Act.Do}
		if s.Act.Takes > 0 {
			c.Takes = handTime(s.Act.Takes)
		}
		for _, a := range s.Answers {
			c.Answers = append(c.Answers, keyLead{Says: a.Says, Number: numbers[a.Next], Letters: inTurn(a.Next)})
		}
		key.Checks = append(key.Checks, c)
	}
	return key
}

// stillThere is the number of the step after a remedy that did not help; 0 for a call
// for help.
func stillThere(s *tables.FaultStep) int {
	for _, a := range s.Answers {
		if a.Next != 0 {
			return a.Next
		}
	}
	return 0
}

// letters are those of remedies: none looks like a figure from two metres off.
const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"

// remedyLetter counts A to Z without I and O, then AA, AB and so on.
func remedyLetter(n int) string {
	if n < len(letters) {
		return letters[n : n+1]
	}
	return remedyLetter(n/len(letters)-1) + remedyLetter(n%len(letters))
}

// Does is how long the check takes and how it is made.
func (c keyCheck) Does() string { return strings.TrimPrefix(c.Takes+". "+c.Do, ". ") }

// Does is how long the remedy takes and how it is done.
func (r keyRemedy) Does() string { return r.Takes + ". " + r.Do }

// Leads is what a lead says to those who listen.
func (l keyLead) Leads() string {
	switch {
	case l.Number > 0:
		return fmt.Sprint(l.Number)
	case len(l.Letters) > 0:
		return strings.Join(l.Letters, " ")
	}
	return helpLead
}

// helpLead stands where nothing is left to be tried.
const helpLead = "call for help"
