package tables

import (
	"cmp"
	"math"
	"slices"
)

// The evidence of a job's own numbers. Each kind of physics that a cause of a fault may
// name has a factor, by which the cause's weight is multiplied before a key is solved.
// The computations rank causes; they are not sure enough to decide, so no factor is above
// evidenceMost or below evidenceLeast. The steps of the rules are assumptions of this
// handbook, and stand in its methods chapter.
const (
	evidenceMost  = 5.0
	evidenceLeast = 0.2
	// Within this many kelvin a window makes too hot and too cold as likely as they are
	// in any job; a narrower one makes them likelier in proportion.
	usualWidth = 15.0
)

// Factor is what a job's numbers make of the causes with one kind of physics.
type Factor struct {
	Physics string  `json:"physics"`
	Factor  float64 `json:"factor"`
}

// LikelyFault is a cause that a job's numbers make likelier, in a family of faults.
type LikelyFault struct {
	Family string  `json:"family"` // id
	Cause  string  `json:"cause"`  // id
	Text   string  `json:"text"`
	Factor float64 `json:"factor"`
}

// likelyFrom is the factor from which a cause is told in a plan.
const likelyFrom = 2.0

// likelyMost is how many of them are told.
const likelyMost = 5

// weighed is what the numbers of a planned job say, in the order of the kinds of physics.
func (p *Plan) weighed(r request, texts laminateTexts) []Factor {
	list := []Factor{{"outgassing", p.earliness()}}
	if r.film.Class == "cold" {
		for _, physics := range []string{"moist-sheet", "too-hot", "first-piece"} {
			list = append(list, Factor{physics, evidenceLeast})
		}
	} else {
		list = append(list, p.heatEvidence()...)
	}
	if x, ok := texts.WetOut[r.ink.ID]; ok {
		list = append(list, Factor{"wet-out", x})
	}
	if x, ok := texts.Grain[fedGrain(r.medium, p.Feed.Advice)]; ok {
		list = append(list, Factor{"grain", x})
	}
	humidity := float64(r.room.Humidity.Best)
	list = append(list,
		Factor{"dry-air", stepped(humidity, 0.35, 3, 0.5, 0.4)},
		Factor{"dry-room", stepped(humidity, 0.35, 3, 0.45, 0.5)},
		Factor{"damp-room", stepped(-humidity, -0.60, 3, -0.50, 0.5)})
	if r.stackKnown {
		apart := hundredths(100 * math.Abs(float64(r.stackRH)-humidity)) // per cent
		list = append(list, Factor{"stack-moisture", stepped(-apart, -10, 3, -5, 0.5)})
	}
	return list
}

// stepped gives one factor up to a value, another from a second value on, and 1 between.
func stepped(x, low, below, high, above float64) float64 {
	switch {
	case x <= low:
		return below
	case x >= high:
		return above
	}
	return 1
}

// earliness is the evidence for what comes of haste: 0.4 once the wait is over, and up to
// five as all of it is still to come.
func (p *Plan) earliness() float64 {
	switch {
	case p.RemainingHours == nil && p.WaitHours == nil && p.WaitReason != "":
		return evidenceMost
	case p.RemainingHours == nil || p.WaitHours == nil || *p.WaitHours <= 0:
		return 1
	case *p.RemainingHours <= 0:
		return 0.4
	}
	return 1 + (evidenceMost-1)*min(1, *p.RemainingHours / *p.WaitHours)
}

// heatEvidence is what the window says.
func (p *Plan) heatEvidence() []Factor {
	if p.Window == nil {
		return []Factor{{"moist-sheet", 1}, {"too-hot", 1}, {"too-cold", 1}, {"first-piece", 1}}
	}
	w := p.Window
	width := min(w.First.High-w.First.Low, w.Steady.High-w.Steady.Low)
	narrow := min(evidenceMost, max(0.4, usualWidth/max(width, 1)))
	steam := 0.6
	if w.HighLimit == "gas" {
		steam = narrow
	}
	first := 0.5
	if w.Low == nil {
		first = 3
	}
	return []Factor{{"moist-sheet", steam}, {"too-hot", narrow}, {"too-cold", narrow}, {"first-piece", first}}
}

// physicalCause is a cause that names a kind of physics, with its share of its family.
type physicalCause struct {
	LikelyFault
	physics string
	share   float64
}

// physicalCauses are those of all families, in the data's order.
func (t *Tables) physicalCauses() []physicalCause {
	var list []physicalCause
	for _, f := range t.shop.Faults {
		log, total := t.logOf(f), 0.0
		for _, c := range f.Causes {
			total += c.Weight + float64(log.causes[c.ID])
		}
		for _, c := range f.Causes {
			if c.Physics != "" {
				fault := LikelyFault{Family: f.ID, Cause: c.ID, Text: f.Name + ": " + lowered(c.Name)}
				list = append(list, physicalCause{fault, c.Physics, rounded((c.Weight+float64(log.causes[c.ID]))/total, 4)})
			}
		}
	}
	return list
}

// likely lists the causes that the evidence makes likelier, by share times factor.
func (t *Tables) likely(evidence []Factor) []LikelyFault {
	causes := slices.DeleteFunc(t.physicalCauses(), func(c physicalCause) bool { return factorFor(evidence, c.physics) < likelyFrom })
	slices.SortStableFunc(causes, func(a, b physicalCause) int {
		return cmp.Compare(b.share*factorFor(evidence, b.physics), a.share*factorFor(evidence, a.physics))
	})
	var told []LikelyFault
	for _, c := range causes[:min(likelyMost, len(causes))] {
		c.Factor = hundredths(factorFor(evidence, c.physics))
		told = append(told, c.LikelyFault)
	}
	return told
}

// hundredths rounds as the page's script does, halves up.
func hundredths(x float64) float64 { return math.Floor(x*100+0.5) / 100 }

// lowered writes a name as it stands inside a line.
func lowered(name string) string {
	if len(name) > 1 && name[0] >= 'A' && name[0] <= 'Z' && name[1] >= 'a' && name[1] <= 'z' {
		return string(name[0]-'A'+'a') + name[1:]
	}
	return name
}

func factorFor(evidence []Factor, physics string) float64 {
	for _, e := range evidence {
		if physics != "" && e.Physics == physics {
			return e.Factor
		}
	}
	return 1
}

// wetOutFactor is the evidence of a bond.
func wetOutFactor(class string) float64 {
	switch class {
	case ClearsInNip:
		return 0.4
	case WillNotClear:
		return evidenceMost
	}
	return 2
}

// grainFactor is the evidence of the grain as it is fed: how much more waves grow than
// with the grain the other way, in steps of grainMatters.
func grainFactor(this, other Ridge) float64 {
	more := (this.Growth() - other.Growth()) / grainMatters
	return min(evidenceMost, max(0.4, 1+more))
}

// CureCase is a family of faults with the job that it was met in; a job without an ink
// says nothing.
type CureCase struct {
	Family string // id
	Job    Job
	// Plain leaves the job's numbers out.
	Plain bool
}

// Cure solves the key of a family with the numbers of a job.
func (t *Tables) Cure(c CureCase) (FaultKey, error) {
	f := t.shop.Fault(c.Family)
	if f == nil {
		return FaultKey{}, t.unknown("faults", c.Family)
	}
	var weigh map[string]float64
	if c.Job.Ink != "" && !c.Plain {
		p, err := t.Plan(c.Job)
		if err != nil {
			return FaultKey{}, err
		}
		weigh = map[string]float64{}
		for _, cause := range f.Causes {
			weigh[cause.ID] = factorFor(p.Evidence, cause.Physics)
		}
	}
	return t.solvedKey(f, weigh)
}
