package faults

import (
	"fmt"
	"slices"
)

// Verify computes what a published value of this package is about, in the units of
// the source: what names it, given holds its inputs. Tests and the verification page
// ask it.
//
// Causes, acts and outcomes are counted from 1. "weight.2" is the weight of the second
// cause; "cost.3" what the third act costs, "cost.3.2" given the second cause;
// "chance.3.1.2" the chance of the third act's first outcome given the second cause,
// and the last outcome takes what is left; "outcomes.3" how many outcomes the act has,
// 2 if not said; "ends.3" the number of the outcome that ends the matter, and all end
// it if there is one outcome.
func Verify(what string, given map[string]float64) (float64, error) {
	p, err := posed(given)
	if err != nil {
		return 0, err
	}
	switch what {
	case "entropy":
		return Entropy(p.prior()), nil
	case "information of an act":
		act := int(given["act"])
		if act < 1 || act > len(p.Acts) {
			return 0, fmt.Errorf("%d acts have no act %d", len(p.Acts), act)
		}
		return p.Acts[act-1].bits(p.prior()), nil
	}
	k, err := Solve(p, Effort{})
	if err != nil {
		return 0, err
	}
	switch what {
	case "least expected cost":
		return k.Cost, nil
	case "greatest expected gain":
		return -k.Cost, nil
	case "act of the best key":
		s, err := k.at(given)
		if err != nil {
			return 0, err
		}
		return float64(s.Act + 1), nil
	case "chance of coming to a step":
		s, err := k.at(given)
		if err != nil {
			return 0, err
		}
		return s.Chance, nil
	case "expected gain from a step":
		s, err := k.at(given)
		if err != nil {
			return 0, err
		}
		return -s.Cost, nil
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// prior are the weights of the causes, made to sum to 1.
func (p *Problem) prior() []float64 {
	list := make([]float64, len(p.Causes))
	total := 0.0
	for i, c := range p.Causes {
		list[i] = c.Weight
		total += c.Weight
	}
	for i := range list {
		list[i] /= total
	}
	return list
}

// at walks the key: "after.1" is the outcome of the first step, and so on.
func (k *Key) at(given map[string]float64) (*Step, error) {
	s := k.Start
	for n := 1; ; n++ {
		outcome, ok := given[fmt.Sprintf("after.%d", n)]
		if !ok {
			return s, nil
		}
		i := int(outcome) - 1
		if i < 0 || i >= len(s.Next) || s.Next[i] == nil {
			return nil, fmt.Errorf("nothing follows outcome %d of step %d", i+1, n)
		}
		s = s.Next[i]
	}
}

// posed makes a problem of a source's inputs.
func posed(given map[string]float64) (*Problem, error) {
	p := &Problem{Name: "published"}
	for c := 1; ; c++ {
		w, ok := given[fmt.Sprintf("weight.%d", c)]
		if !ok {
			break
		}
		p.Causes = append(p.Causes, Cause{Name: fmt.Sprintf("cause %d", c), Weight: w})
	}
	for a := 1; ; a++ {
		act, ok := posedAct(given, a, len(p.Causes))
		if !ok {
			break
		}
		p.Acts = append(p.Acts, act)
	}
	return p, p.Validate()
}

// posedAct makes the act of a number, if the source has one.
func posedAct(given map[string]float64, number, causes int) (Act, bool) {
	a := Act{Name: fmt.Sprintf("act %d", number)}
	if cost, ok := given[fmt.Sprintf("cost.%d", number)]; ok {
		a.Cost = []float64{cost}
	}
	for c := 1; c <= causes; c++ {
		if cost, ok := given[fmt.Sprintf("cost.%d.%d", number, c)]; ok {
			a.Cost = append(a.Cost, cost)
		}
	}
	if a.Cost == nil {
		return a, false
	}
	outcomes := 2
	if n, ok := given[fmt.Sprintf("outcomes.%d", number)]; ok {
		outcomes = int(n)
	}
	left := slices.Repeat([]float64{1}, causes)
	for o := 1; o <= outcomes; o++ {
		made := Outcome{Name: fmt.Sprintf("outcome %d", o), Chance: slices.Clone(left)}
		if o < outcomes {
			for c := range made.Chance {
				made.Chance[c] = given[fmt.Sprintf("chance.%d.%d.%d", number, o, c+1)]
				left[c] -= made.Chance[c]
			}
		}
		made.Ends = outcomes == 1 || given[fmt.Sprintf("ends.%d", number)] == float64(o)
		a.Outcomes = append(a.Outcomes, made)
	}
	return a, true
}
