package drying

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// gasConstant is R in J/(mol·K), exact since the 2019 SI to the digits given.
const gasConstant = 8.314462618

// Arrhenius is the ratio k(to)/k(from) of a rate, or of a diffusivity, with
// activation energy e at two temperatures: exp(−e/R·(1/to − 1/from)).
func Arrhenius(e quantity.MolarEnergy, from, to quantity.Temperature) float64 {
	return math.Exp(-float64(e) / gasConstant * (1/float64(to) - 1/float64(from)))
}

// FirstOrder is an ink film that hardens by a reaction of first order: an
// oxidising ink, or the dark cure of a radiation-cured one. Of what was unreacted
// at the start the share U = exp(−∫k dt) is unreacted at time t.
//
// A heavier film has more to react on the same area: the unreacted film per area
// is coverage × U, in films of normal coverage. It may be laminated when that is
// no more than is allowed at normal coverage. Real oxidation has a delay and then
// speeds itself up; one rate solved from the maker's wait stands for it all, so
// the law is honest about ratios (cold against warm, heavy against normal) and
// not about the course of an hour.
type FirstOrder struct {
	// Rate is k at the temperature and in the air that it was solved for.
	Rate quantity.Rate
}

// SolveFirstOrder finds the rate with which a film of the given coverage (1 is
// normal) comes down to the allowed unreacted share in the maker's wait:
// k = ln(coverage/allowed)/wait.
func SolveFirstOrder(coverage, allowed quantity.Fraction, wait quantity.Time) (FirstOrder, error) {
	if !positive(float64(coverage)) || !positive(float64(allowed)) || !positive(float64(wait)) {
		return FirstOrder{}, fmt.Errorf("a coverage of %g, %g unreacted allowed, a wait of %s: each must be above 0",
			float64(coverage), float64(allowed), hours(wait))
	}
	if allowed >= coverage {
		return FirstOrder{}, fmt.Errorf("%w: %g unreacted allowed, %g there from the start",
			ErrAlreadyDry, float64(allowed), float64(coverage))
	}
	return FirstOrder{Rate: quantity.Rate(math.Log(float64(coverage/allowed)) / float64(wait))}, nil
}

// Times is the reaction at its rate times a factor: an Arrhenius ratio for another
// temperature, or the share of open air's oxygen that reaches an oxidising ink
// where it is stored.
func (r FirstOrder) Times(factor float64) FirstOrder {
	return FirstOrder{Rate: quantity.Rate(float64(r.Rate) * factor)}
}

// Unreacted is the share of the film that is unreacted after t.
func (r FirstOrder) Unreacted(t quantity.Time) quantity.Fraction {
	return quantity.Fraction(math.Exp(-float64(r.Rate) * float64(t)))
}

// ReactionPart is one part of the history of a film that reacts.
type ReactionPart struct {
	Reaction FirstOrder
	Time     quantity.Time
}

// Unreacted is the share that is unreacted after a history: exp(−Σ k_i·t_i). The
// order of the parts does not matter.
func Unreacted(history []ReactionPart) quantity.Fraction {
	sum := 0.0
	for _, p := range history {
		sum += float64(p.Reaction.Rate) * float64(p.Time)
	}
	return quantity.Fraction(math.Exp(-sum))
}

// Wait is how long a film of the given coverage (1 is normal), of which the share
// unreacted is left (1 for a fresh one), still needs until the unreacted film per
// area is no more than allowed at normal coverage: ln(coverage·unreacted/allowed)/k,
// never below 0. Where nothing reacts, the error is ErrNever.
func (r FirstOrder) Wait(coverage, unreacted, allowed quantity.Fraction) (quantity.Time, error) {
	if !notNegative(float64(coverage)) || !notNegative(float64(unreacted)) || !positive(float64(allowed)) {
		return 0, fmt.Errorf("a coverage of %g, %g unreacted, %g allowed: neither may be below 0, and the last must be above",
			float64(coverage), float64(unreacted), float64(allowed))
	}
	if !notNegative(float64(r.Rate)) {
		return 0, fmt.Errorf("a reaction rate of %g 1/s: it must be 0 or more", float64(r.Rate))
	}
	there := coverage * unreacted
	if there <= allowed {
		return 0, nil
	}
	if r.Rate == 0 {
		return 0, fmt.Errorf("%w: nothing reacts, %.4g of a normal film is unreacted, %.4g is allowed",
			ErrNever, float64(there), float64(allowed))
	}
	return quantity.Time(math.Log(float64(there/allowed)) / float64(r.Rate)), nil
}
