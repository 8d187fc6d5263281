package cooling

import (
	"fmt"
	"math"
	"slices"

	"laydown/gen/quantity"
)

// Place is where a temperature is asked for: Face, Back, or a layer's number from 0
// for that layer's mean.
type Place int

// The faces of the laminate.
const (
	Face Place = -1 - iota // the film's outer face
	Back                   // the other one
)

// Cooling is a laminate's way through its stages.
type Cooling struct {
	layers  []Layer
	stages  []Stage
	samples []sample
	// FaceHeat and BackHeat are what left by either face, J/m².
	FaceHeat, BackHeat float64
	// Stored is how much less the laminate holds at the end than at the start, J/m².
	Stored float64
	// exchanged is the heat moved through the faces, whichever way, J/m².
	exchanged float64
}

// sample is the state at the end of a step. Of a stage's start there are two: one with
// the exposure before it, one with that after.
type sample struct {
	time  float64
	value []float64 // layers' means, then face, then back
	slope []float64
}

// Cool takes a laminate, from the film's outer face down, through its stages.
func Cool(layers []Layer, stages []Stage) (*Cooling, error) {
	return cool(layers, stages, 1)
}

// cool does so with cells and steps that many times finer than usual.
func cool(layers []Layer, stages []Stage, fine int) (*Cooling, error) {
	if len(layers) == 0 || len(stages) == 0 {
		return nil, fmt.Errorf("cooling of %d layers in %d stages: give at least one of each", len(layers), len(stages))
	}
	for _, l := range layers {
		if err := l.check(); err != nil {
			return nil, err
		}
	}
	for _, s := range stages {
		if err := s.check(); err != nil {
			return nil, err
		}
	}
	out := &Cooling{layers: slices.Clone(layers), stages: slices.Clone(stages)}
	c := cut(layers, fine)
	// Heat is counted from a temperature of the laminate's own, lest rounding of
	// what it holds above 0 K spoil the balance.
	level := c.t[0]
	before := c.stored(level)
	now := 0.0
	for _, s := range stages {
		c.expose(s)
		out.samples = append(out.samples, c.sample(now))
		total := float64(s.Time)
		ratio := math.Pow(growth, 1/float64(fine))
		first := min(firstStep*c.slowness/float64(fine), total/float64(10*fine))
		n := int(math.Ceil(math.Log1p(total*(ratio-1)/first) / math.Log(ratio)))
		h := total * (ratio - 1) / (math.Pow(ratio, float64(n)) - 1)
		begin, done := now, 0.0
		for i := range n {
			if i == n-1 {
				h = total - done
			}
			face, back := c.step(h)
			out.FaceHeat -= face
			out.BackHeat -= back
			out.exchanged += math.Abs(face) + math.Abs(back)
			done += h
			now = begin + done
			out.samples = append(out.samples, c.sample(now))
			h *= ratio
		}
	}
	out.Stored = before - c.stored(level)
	return out, nil
}

// sample takes down the state.
func (c *cells) sample(now float64) sample {
	n := len(c.start) - 1
	s := sample{time: now, value: make([]float64, n+2), slope: make([]float64, n+2)}
	for l := range n {
		heat, sum, rise := 0.0, 0.0, 0.0
		for i := c.start[l]; i < c.start[l+1]; i++ {
			heat += c.capacity[i]
			sum += c.capacity[i] * c.t[i]
			rise += c.capacity[i] * c.slope(i)
		}
		s.value[l], s.slope[l] = sum/heat, rise/heat
	}
	// A face lies between its cell's node and the body it meets: the flow through
	// both resistances is the same. A sealed face has its cell's temperature.
	last := len(c.t) - 1
	share := c.faceLink * c.top
	s.value[n], s.slope[n] = c.t[0]+share*(c.faceTo-c.t[0]), (1-share)*c.slope(0)
	share = c.backLink * c.end
	s.value[n+1], s.slope[n+1] = c.t[last]+share*(c.backTo-c.t[last]), (1-share)*c.slope(last)
	return s
}

// Total is how long all the stages take.
func (c *Cooling) Total() quantity.Time {
	return quantity.Time(c.samples[len(c.samples)-1].time)
}

// Balance is by how much the heat that left by the faces misses what the laminate
// lost, as a share of the heat exchanged.
func (c *Cooling) Balance() float64 {
	if c.exchanged == 0 {
		return math.Abs(c.Stored)
	}
	return math.Abs(c.FaceHeat+c.BackHeat-c.Stored) / c.exchanged
}

// column is where a place's values stand in a sample.
func (c *Cooling) column(p Place) (int, error) {
	n := len(c.layers)
	switch {
	case p == Face:
		return n, nil
	case p == Back:
		return n + 1, nil
	case p >= 0 && int(p) < n:
		return int(p), nil
	}
	return 0, fmt.Errorf("there is no place %d in a laminate of %d layers", int(p), n)
}
