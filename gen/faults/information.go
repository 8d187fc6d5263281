package faults

import "math"

// Entropy is the uncertainty of a distribution, −Σ p·log₂ p, in bits.
func Entropy(chances []float64) float64 {
	h := 0.0
	for _, p := range chances {
		if p > 0 {
			h -= p * math.Log2(p)
		}
	}
	return h
}

// bits is the information that an act is expected to give about the cause: the
// entropy of the belief less the expected entropy after it (Quinlan's gain).
func (a *Act) bits(belief []float64) float64 {
	gain := Entropy(belief)
	after := make([]float64, len(belief))
	for _, o := range a.Outcomes {
		chance := mulInto(after, belief, o.Chance)
		if chance == 0 {
			continue
		}
		for c := range after {
			after[c] /= chance
		}
		gain -= chance * Entropy(after)
	}
	return math.Max(0, gain)
}
