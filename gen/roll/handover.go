package roll

import (
	"fmt"

	"laydown/gen/quantity"
)

// Step is something that is done with a laminate after the nip.
type Step struct {
	Name string
	// Rest is how long the laminate must have lain since the nip before it begins.
	Rest quantity.Time
	// Work is how long it takes.
	Work quantity.Time
}

// Done is a step with its times from the nip.
type Done struct {
	Step
	Begins, Ends quantity.Time
}

// HandOver gives when each step begins and ends, counted from the moment the last piece
// has left the nip. All rests run from the nip at once; the work is done step by step.
//
//	T_i = max(T_(i−1), R_i) + W_i
func HandOver(steps []Step) ([]Done, error) {
	now := quantity.Time(0)
	list := make([]Done, len(steps))
	for i, s := range steps {
		if !notNegative(float64(s.Rest)) || !notNegative(float64(s.Work)) {
			return nil, fmt.Errorf("%s after a rest of %g s, taking %g s: both must be 0 or more", s.Name, float64(s.Rest), float64(s.Work))
		}
		list[i] = Done{s, max(now, s.Rest), max(now, s.Rest) + s.Work}
		now = list[i].Ends
	}
	return list, nil
}
