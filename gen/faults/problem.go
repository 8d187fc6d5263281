package faults

// Problem is a decision problem in its general form: something is wrong, exactly one
// of the causes is present, and acts cost something, tell something, and may end the
// matter. Costs are in any one unit; a gain is a negative cost. A Family of faults
// makes a Problem in minutes.
type Problem struct {
	Name   string
	Causes []Cause
	Acts   []Act
}

// Cause is one thing that may be wrong, with its weight before anything was looked at.
// Weights need not sum to 1.
type Cause struct {
	Name   string
	Weight float64
}

// Act is something that may be done, once.
type Act struct {
	Name string
	// Cost holds what the act costs given each cause, in the order of the causes. A
	// single value holds for all of them.
	Cost []float64
	// Outcomes are what may come of it.
	Outcomes []Outcome
}

// Outcome is one result of an act.
type Outcome struct {
	Name string
	// Chance is the probability of this outcome given each cause.
	Chance []float64
	// Ends says that nothing remains to be done after it.
	Ends bool
}

// Kind tells acts apart by what they can do to the matter.
type Kind int

const (
	// Check only tells: none of its outcomes ends the matter.
	Check Kind = iota
	// Remedy may end the matter, and tells something when it does not.
	Remedy
	// End always ends the matter: calling for help, or a final decision.
	End
)

// Kind returns what the act can do to the matter.
func (a *Act) Kind() Kind {
	ending := 0
	for _, o := range a.Outcomes {
		if o.Ends {
			ending++
		}
	}
	switch ending {
	case 0:
		return Check
	case len(a.Outcomes):
		return End
	}
	return Remedy
}

// cost is what the act costs given a cause.
func (a *Act) cost(cause int) float64 {
	if len(a.Cost) == 1 {
		return a.Cost[0]
	}
	return a.Cost[cause]
}

// leads is how many ways on there are: outcomes after which something remains to be done.
func (a *Act) leads() int {
	n := 0
	for _, o := range a.Outcomes {
		if !o.Ends {
			n++
		}
	}
	return n
}

// String names the kind.
func (k Kind) String() string {
	return [...]string{"check", "remedy", "end"}[k]
}
