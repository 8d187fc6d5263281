package tables

import (
	"slices"

	"laydown/gen/shop"
)

// PairAnswer says whether a film will do on a print, leaving the wait aside.
type PairAnswer struct {
	Verdict Verdict
	// Test is true where a test piece must come first.
	Test    bool
	Reasons []Reason
}

// Pair applies the shop's rules about films on prints. An unknown id gives an
// empty answer.
func (t *Tables) Pair(inkID, mediumID, filmID, coverage string) PairAnswer {
	ink, medium, film := t.shop.Ink(inkID), t.shop.Medium(mediumID), t.shop.Film(filmID)
	if ink == nil || medium == nil || film == nil {
		return PairAnswer{}
	}
	return t.pair(ink, medium, film, coverage)
}

func (t *Tables) pair(ink *shop.Ink, medium *shop.Medium, film *shop.Film, coverage string) PairAnswer {
	answer := PairAnswer{Verdict: Go}
	for _, rule := range t.shop.Limits {
		if !applies(rule, ink, medium, film, coverage) {
			continue
		}
		r := Reason{Text: rule.Why, Source: rule.Source.ID}
		switch rule.Verdict {
		case "change":
			r.Verdict = Change
		case "refuse":
			r.Verdict = Refuse
		default:
			r.Verdict, r.Test = Go, true
			answer.Test = true
		}
		answer.Verdict = answer.Verdict.Worse(r.Verdict)
		answer.Reasons = append(answer.Reasons, r)
	}
	return answer
}

// applies reports whether a rule speaks of this film on this print. A list
// that the rule leaves out holds for all.
func applies(rule *shop.Limit, ink *shop.Ink, medium *shop.Medium, film *shop.Film, coverage string) bool {
	return (len(rule.Films)+len(rule.FilmIDs) == 0 || slices.Contains(rule.Films, film.Class) || names(rule.FilmIDs, film.ID)) &&
		(len(rule.Inks)+len(rule.InkClasses) == 0 || slices.Contains(rule.InkClasses, ink.Class) || names(rule.Inks, ink.ID)) &&
		(len(rule.Media)+len(rule.MediumClasses) == 0 || slices.Contains(rule.MediumClasses, medium.Class) || names(rule.Media, medium.ID)) &&
		(len(rule.Coverages) == 0 || slices.Contains(rule.Coverages, coverage))
}

func names(refs []shop.Ref, id string) bool {
	return slices.ContainsFunc(refs, func(r shop.Ref) bool { return r.ID == id })
}

// fits says why a film or medium cannot go through a laminator; nil where it can.
func fits(film *shop.Film, medium *shop.Medium, machine *shop.Laminator) []Reason {
	var why []Reason
	no := func(text string) { why = append(why, Reason{Verdict: Change, Text: text}) }
	switch {
	case !slices.Contains(machine.Films, film.Class):
		no(fill(phrases["film-class"], "laminator", machine.Name, "class", film.Class))
	case !names(film.RunsOn, machine.ID):
		no(fill(phrases["film-machine"], "film", film.Name, "laminator", machine.Name))
	}
	if !slices.ContainsFunc(medium.Forms, func(f string) bool { return slices.Contains(machine.Forms, f) }) {
		no(fill(phrases["form"], "laminator", machine.Name, "medium", medium.Name))
	}
	if machine.Opening.Set && medium.Thickness.Best+film.BaseThickness.Best+film.AdhesiveThickness.Best > machine.Opening.Best {
		no(fill(phrases["opening"], "medium", medium.Name, "laminator", machine.Name))
	}
	return why
}

// filmsFor returns the ids of the films that would do on a job's print: in its
// machine, with a window where they are hot, first; then those that run on
// another machine.
func (t *Tables) filmsFor(r request) ([]string, error) {
	var here, elsewhere []string
	for _, film := range t.shop.Films {
		if v := t.pair(r.ink, r.medium, film, r.coverage).Verdict; v == Change || v == Refuse {
			continue
		}
		if len(fits(film, r.medium, r.machine)) > 0 {
			if t.runsSomewhere(film, r.medium) {
				elsewhere = append(elsewhere, film.ID)
			}
			continue
		}
		ok, err := t.hasWindow(film, r)
		if err != nil {
			return nil, err
		}
		if ok {
			here = append(here, film.ID)
		}
	}
	return append(here, elsewhere...), nil
}

func (t *Tables) runsSomewhere(film *shop.Film, medium *shop.Medium) bool {
	return slices.ContainsFunc(t.shop.Laminators, func(m *shop.Laminator) bool { return len(fits(film, medium, m)) == 0 })
}
