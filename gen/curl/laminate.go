package curl

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// State is what a layer is in at some moment.
type State struct {
	Temperature quantity.Temperature
	// Moisture is kg water per kg dry material.
	Moisture quantity.Fraction
	// Relaxed is the share of the strain locked in by tension and by cooling that
	// has crept away by then, 0 to 1.
	Relaxed quantity.Fraction
}

// Laminate is a stack of layers that an adhesive joined.
type Laminate struct {
	// Layers from the lowest to the uppermost.
	Layers []Layer
	// Set is the state of each layer as the adhesive set: from then on they move
	// together.
	Set []State
	// Tension is the pull along the feed under which each layer was joined, let go
	// afterwards. nil: none.
	Tension []quantity.LineLoad
}

// Curl is how a laminate bends, with what leads to it.
type Curl struct {
	// Free is each layer's strain if nothing held it, counted from when the
	// adhesive set; Thermal, Hygro and Tension are its parts (Thermal and Tension
	// after relaxation).
	Free, Thermal, Hygro, Tension []Vector
	// Layers have the moduli of their present moisture.
	Layers []Layer
	// Plate is laminate theory's own answer, often a saddle or a dish.
	Plate *Plate
	// Cylinder is what a large sheet does.
	Cylinder Cylinder
	// SaddleBelow is the size under which Plate's shape may be the one.
	SaddleBelow quantity.Length
}

// Side is where the edges go.
type Side int

// The sides of a sheet.
const (
	Flat   Side = iota
	Upward      // towards the uppermost layer
	Downward
)

func (s Side) String() string { return [...]string{"flat", "upward", "downward"}[s] }

// Side says where the edges of the rolled sheet go.
func (c Cylinder) Side() Side {
	switch {
	case c.Curvature < 0:
		return Upward
	case c.Curvature > 0:
		return Downward
	}
	return Flat
}

// check refuses states and tensions that do not fit the layers.
func (l *Laminate) check(now []State) error {
	if len(l.Set) != len(l.Layers) || len(now) != len(l.Layers) || l.Tension != nil && len(l.Tension) != len(l.Layers) {
		return fmt.Errorf("%d layers, but %d states when set, %d states now, %d tensions",
			len(l.Layers), len(l.Set), len(now), len(l.Tension))
	}
	for i := range l.Layers {
		if err := l.Layers[i].check(); err != nil {
			return err
		}
		for _, s := range []State{l.Set[i], now[i]} {
			if err := s.check(l.Layers[i].Name); err != nil {
				return err
			}
		}
		if l.Tension != nil && (!(l.Tension[i] >= 0) || math.IsInf(float64(l.Tension[i]), 1)) {
			return fmt.Errorf("layer %q: tension %g N/m: must be 0 or above", l.Layers[i].Name, float64(l.Tension[i]))
		}
	}
	return nil
}

func (s State) check(layer string) error {
	if !positive(float64(s.Temperature)) || !(s.Moisture >= 0 && s.Moisture <= 10) || !(s.Relaxed >= 0 && s.Relaxed <= 1) {
		return fmt.Errorf("layer %q: %g K, moisture %g, relaxed %g: a temperature is above 0, a moisture ratio 0 to 10, a share 0 to 1",
			layer, float64(s.Temperature), float64(s.Moisture), float64(s.Relaxed))
	}
	return nil
}

// Curl computes what the laminate does in its present state.
func (l *Laminate) Curl(now []State) (*Curl, error) {
	if err := l.check(now); err != nil {
		return nil, err
	}
	n := len(l.Layers)
	c := &Curl{Free: make([]Vector, n), Thermal: make([]Vector, n), Hygro: make([]Vector, n), Tension: make([]Vector, n),
		Layers: make([]Layer, n)}
	for i := range l.Layers {
		c.Layers[i] = l.Layers[i].softened(now[i].Moisture)
		kept := 1 - float64(now[i].Relaxed)
		thermal, hygro := l.Layers[i].growth(l.Set[i], now[i])
		c.Thermal[i], c.Hygro[i] = thermal.times(kept), hygro
		if l.Tension != nil {
			c.Tension[i] = l.stretched(i).times(-kept)
		}
		c.Free[i] = c.Thermal[i].plus(c.Hygro[i]).plus(c.Tension[i])
	}
	var err error
	if c.Plate, err = NewPlate(c.Layers, c.Free); err != nil {
		return nil, err
	}
	c.Cylinder = c.Plate.Cylinder()
	c.SaddleBelow = c.Plate.SaddleBelow(c.Cylinder)
	return c, nil
}

// growth is what heat and water do to a layer that nothing holds.
func (l *Layer) growth(from, to State) (thermal, hygro Vector) {
	warmer := float64(to.Temperature - from.Temperature)
	wetter := float64(to.Moisture - from.Moisture)
	return l.strain(float64(l.ExpansionMD)*warmer, float64(l.ExpansionCD)*warmer),
		l.strain(float64(l.SwellingMD)*wetter, float64(l.SwellingCD)*wetter)
}

// stretched is the strain of a layer under its tension, as it is joined.
func (l *Laminate) stretched(i int) Vector {
	layer := l.Layers[i].softened(l.Set[i].Moisture)
	s, ok := layer.turned().inverse()
	if !ok {
		return Vector{}
	}
	return s.apply(Vector{float64(l.Tension[i]) / float64(layer.Thickness)})
}
