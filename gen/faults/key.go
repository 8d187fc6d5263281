package faults

import "math"

// Key is a policy: what to do first, and what after each outcome, until the matter
// ends.
type Key struct {
	Problem *Problem
	// Start is the first step. Steps holds every step that is no end, each before
	// what follows it; Steps[i] has the number i+1.
	Start *Step
	Steps []*Step
	// Cost is the expected cost of this key. Least is what the expected cost of no
	// key can be below, as proven. They are equal if Exact.
	Cost, Least float64
	Exact       bool
	// States counts the states of knowledge that were valued to find it.
	States int
}

// Loss is the most by which this key can cost more than the best one.
func (k *Key) Loss() float64 { return k.Cost - k.Least }

// Step is one place in a key.
type Step struct {
	// Number counts the steps from 1; an end has none, 0.
	Number int
	// Act is what is done here, as an index in Problem.Acts.
	Act int
	// Chance is the probability of coming here.
	Chance float64
	// Belief is the probability of each cause here.
	Belief []float64
	// Cost is the expected cost from here on, and Count the expected number of checks
	// and remedies from here on.
	Cost, Count float64
	// Options are the acts that could be done here, Act first, then the best.
	Options []Option
	// Next is the step after each outcome of the act, nil where nothing remains to be
	// done or the outcome cannot happen.
	Next []*Step
}

// Option is an act that could be done at a step.
type Option struct {
	// Act is an index in Problem.Acts.
	Act int
	// Low and High bound the expected cost from here on if this is done next and the
	// best follows. They are equal where all states were valued.
	Low, High float64
	// Worth is the most that the act might cost and still be the best one here, by
	// High. It is worth doing now if its cost is not above that.
	Worth float64
	// Bits is the information about the cause that the act is expected to give.
	Bits float64
}

// Margin is what the next best act would cost more than the one that is done here, by
// Option.High; infinite where nothing else can be done. In a key that was shortened
// it may be negative: the better act would need more steps.
func (s *Step) Margin() float64 {
	if len(s.Options) < 2 {
		return math.Inf(1)
	}
	return s.Options[1].High - s.Options[0].High
}
