package tables

import (
	"fmt"

	"laydown/gen/drying"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// reacting is the law of an ink that hardens by a first-order reaction:
// oxidation, which wants the room's oxygen, or the dark cure of a
// radiation-cured ink, which does not.
type reacting struct {
	ink  *shop.Ink
	rate quantity.Rate // at the maker's temperature, in open air
}

func (l reacting) transfer() bool { return false }

func (l reacting) fresh(coverage string) state {
	return reactingState{l, quantity.Fraction(coverageRatio(l.ink, coverage)), 1}
}

func (l reacting) limit() (float64, string) {
	return l.ink.Reaction.Unreacted.Best.Percent(), "% unreacted"
}

// in returns the reaction in a place: k = k_ref · exp(-E/R·(1/T - 1/T_ref)) · oxygen.
func (l reacting) in(p place) drying.FirstOrder {
	return drying.FirstOrder{Rate: l.rate}.
		Times(drying.Arrhenius(l.ink.Reaction.Activation.Best, l.ink.Makers.Temperature.Best, p.temperature)).
		Times(oxygen(l.ink, p.storage))
}

// oxygen is the share of open air's oxygen that reaches an oxidising ink; a
// radiation-cured one needs none.
func oxygen(ink *shop.Ink, storage *shop.Storage) float64 {
	if ink.Dries == "oxidation" {
		return float64(storage.Oxygen.Best)
	}
	return 1
}

type reactingState struct {
	law       reacting
	coverage  quantity.Fraction // in films of normal coverage
	unreacted quantity.Fraction // of what was there
}

func (s reactingState) march(p place, t quantity.Time) (state, error) {
	s.unreacted *= s.law.in(p).Unreacted(t)
	return s, nil
}

func (s reactingState) until(p place) (quantity.Time, bool, error) {
	t, ok, err := reached(s.law.in(p).Wait(s.coverage, s.unreacted, s.law.ink.Reaction.Unreacted.Best))
	return t, ok && t <= HardlyDries, err
}

func (s reactingState) left() float64 { return (s.coverage * s.unreacted).Percent() }

// anchorReaction solves the rate in open air at the maker's temperature from
// the maker's wait.
func (t *Tables) anchorReaction(ink *shop.Ink) (anchor, []Warning, error) {
	m := ink.Makers
	r, err := drying.SolveFirstOrder(quantity.Fraction(coverageRatio(ink, m.Coverage)), ink.Reaction.Unreacted.Best, m.Wait.Best)
	if err != nil {
		return anchor{}, []Warning{{Ink: ink.ID, Text: fmt.Sprintf("No rate meets %s's maker's wait of %s at %s coverage with %s unreacted allowed (%v).",
			ink.Name, quantity.Metric(m.Wait.Best), m.Coverage, quantity.Metric(ink.Reaction.Unreacted.Best), err)}}, nil
	}
	share := oxygen(ink, t.shop.Storage(m.Storage.ID))
	if share == 0 {
		return anchor{}, []Warning{{Ink: ink.ID, Text: fmt.Sprintf("%s's maker's wait is stated for a storage that lets no oxygen in.", ink.Name)}}, nil
	}
	return anchor{rate: r.Times(1 / share).Rate, solved: true}, nil, nil
}
