package faults

import (
	"fmt"
	"math"
	"slices"
)

// Verify computes what a published value of this package is about, in the units of
// the source: what names it, given holds its inputs. Tests and the verification page
// ask it.
//
// Causes, acts and outcomes are counted from 1. "weight.2" is the weight of the second
// cause; "cost.3" what the third act costs, "cost.3.2" given the second cause;
// "outcomes.3" how many outcomes it has, 2 if that is not said; "chance.3.1" the chance
// of its first outcome, "chance.3.1.2" given the second cause, and the last outcome
// takes what is left; "ends.3" the number of the outcome that ends the matter. An act
// with one outcome always ends it. "act" and "after.1", "after.2" name an act, or the
// outcomes of the first steps of the key.
func Verify(what string, given map[string]float64) (float64, error) {
	g := givens(given)
	p, err := g.problem()
	if err != nil {
		return 0, err
	}
	switch what {
	case "entropy":
		return Entropy(p.beliefs()), nil
	case "information of an act", "split information of an act":
		return g.information(what, p)
	case "expected cost by chance per cost":
		return ChancePerCost.Cost(p)
	case "expected cost by most information":
		return MostInformation.Cost(p)
	}
	k, err := Solve(p, Effort{})
	if err != nil {
		return 0, err
	}
	return g.ofKey(what, k)
}

// ofKey answers what is asked of the best key.
func (g givens) ofKey(what string, k *Key) (float64, error) {
	s, err := g.step(k)
	if err != nil {
		return 0, err
	}
	switch what {
	case "least expected cost":
		return s.Cost, nil
	case "greatest expected gain":
		return -s.Cost, nil
	case "greatest expected gain of an act":
		for _, o := range s.Options {
			if o.Act == int(g["act"])-1 {
				return -o.High, nil
			}
		}
		return 0, fmt.Errorf("act %g cannot be done there", g["act"])
	case "act of the best key":
		return float64(s.Act + 1), nil
	case "chance of coming to a step":
		return s.Chance, nil
	case "chance of a cause at a step":
		if c := int(g["cause"]); c > 0 && c <= len(s.Belief) {
			return s.Belief[c-1], nil
		}
		return 0, fmt.Errorf("%d causes have no cause %g", len(s.Belief), g["cause"])
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// information is what an act tells about the cause, or the entropy of its outcomes.
func (g givens) information(what string, p *Problem) (float64, error) {
	i := int(g["act"]) - 1
	if i < 0 || i >= len(p.Acts) {
		return 0, fmt.Errorf("%d acts have no act %d", len(p.Acts), i+1)
	}
	belief := p.beliefs()
	if what == "information of an act" {
		return p.Acts[i].bits(belief), nil
	}
	var chances []float64
	for _, o := range p.Acts[i].Outcomes {
		chances = append(chances, dot(belief, o.Chance))
	}
	return Entropy(chances), nil
}

// beliefs are the weights of the causes, made to sum to 1.
func (p *Problem) beliefs() []float64 {
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

// givens are a source's inputs.
type givens map[string]float64

// has looks for an input whose name is made of a word and numbers.
func (g givens) has(word string, numbers ...int) (float64, bool) {
	for _, n := range numbers {
		word += fmt.Sprintf(".%d", n)
	}
	v, ok := g[word]
	return v, ok
}

// step walks the key along the outcomes given.
func (g givens) step(k *Key) (*Step, error) {
	s := k.Start
	for n := 1; ; n++ {
		outcome, ok := g.has("after", n)
		if !ok {
			return s, nil
		}
		i := int(outcome) - 1
		if i < 0 || i >= len(s.Next) || s.Next[i] == nil {
			return nil, fmt.Errorf("nothing follows outcome %g of step %d", outcome, n)
		}
		s = s.Next[i]
	}
}

// problem makes a problem of a source's inputs.
func (g givens) problem() (*Problem, error) {
	p := &Problem{Name: "published"}
	for w, ok := g.has("weight", 1); ok; w, ok = g.has("weight", len(p.Causes)+1) {
		p.Causes = append(p.Causes, Cause{Name: fmt.Sprintf("cause %d", len(p.Causes)+1), Weight: w})
	}
	for a, ok := g.act(1, len(p.Causes)); ok; a, ok = g.act(len(p.Acts)+1, len(p.Causes)) {
		p.Acts = append(p.Acts, a)
	}
	return p, p.Validate()
}

// act makes the act of a number, if the source has one.
func (g givens) act(number, causes int) (Act, bool) {
	a := Act{Name: fmt.Sprintf("act %d", number)}
	if cost, ok := g.has("cost", number); ok {
		a.Cost = []float64{cost}
	}
	for c := range causes {
		if cost, ok := g.has("cost", number, c+1); ok {
			a.Cost = append(a.Cost, cost)
		}
	}
	if a.Cost == nil {
		return a, false
	}
	outcomes := 2
	if n, ok := g.has("outcomes", number); ok {
		outcomes = int(n)
	}
	ends, _ := g.has("ends", number)
	left := slices.Repeat([]float64{1}, causes)
	for o := 1; o <= outcomes; o++ {
		made := Outcome{Name: fmt.Sprintf("outcome %d", o), Chance: slices.Clone(left), Ends: outcomes == 1 || int(ends) == o}
		for c := range made.Chance {
			if o < outcomes {
				chance, ok := g.has("chance", number, o, c+1)
				if !ok {
					chance, _ = g.has("chance", number, o)
				}
				made.Chance[c] = chance
			}
			left[c] = math.Max(0, left[c]-made.Chance[c])
		}
		a.Outcomes = append(a.Outcomes, made)
	}
	return a, true
}
