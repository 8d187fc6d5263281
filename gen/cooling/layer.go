package cooling

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Layer is one layer of the laminate as it leaves the nip.
type Layer struct {
	Name         string
	Thickness    quantity.Length
	Conductivity quantity.Conductivity // through the thickness
	Density      quantity.Density
	SpecificHeat quantity.SpecificHeat
	// Start is what is known of the temperature as the layer leaves the nip: one
	// Known for the whole layer, or several at rising depths.
	Start []Known
	// Below is the contact conductance to the next layer down; 0 means that they
	// touch without any resistance.
	Below quantity.Conductance
	// Cells is how many cells the layer is cut into; 0 leaves it to the solver.
	Cells int
}

// Known is a temperature at a depth below a layer's upper face.
type Known struct {
	Depth       quantity.Length
	Temperature quantity.Temperature
}

// Even starts a layer with one temperature.
func Even(t quantity.Temperature) []Known { return []Known{{0, t}} }

// Diffusivity is k/(ρ·c).
func (l Layer) Diffusivity() quantity.Diffusivity {
	return quantity.Diffusivity(float64(l.Conductivity) / (float64(l.Density) * float64(l.SpecificHeat)))
}

// Effusivity is √(k·ρ·c) in W·s½/(m² K).
func (l Layer) Effusivity() float64 {
	return math.Sqrt(float64(l.Conductivity) * float64(l.Density) * float64(l.SpecificHeat))
}

// HeatCapacity is ρ·c·L in J/(m² K).
func (l Layer) HeatCapacity() float64 {
	return float64(l.Density) * float64(l.SpecificHeat) * float64(l.Thickness)
}

// mostCells bounds what a layer may ask for.
const mostCells = 20000

func (l Layer) check() error {
	if !positive(float64(l.Thickness)) || !positive(float64(l.Conductivity)) ||
		!positive(float64(l.Density)) || !positive(float64(l.SpecificHeat)) {
		return fmt.Errorf("layer %q: thickness %g m, conductivity %g W/(m K), density %g kg/m³, specific heat %g J/(kg K): each must be above 0",
			l.Name, float64(l.Thickness), float64(l.Conductivity), float64(l.Density), float64(l.SpecificHeat))
	}
	if !notNegative(float64(l.Below)) {
		return fmt.Errorf("layer %q: contact conductance %g W/(m² K) below it: it must be 0 or more", l.Name, float64(l.Below))
	}
	if l.Cells < 0 || l.Cells > mostCells {
		return fmt.Errorf("layer %q: %d cells asked for: 0 (chosen) to %d can be had", l.Name, l.Cells, mostCells)
	}
	if len(l.Start) == 0 {
		return fmt.Errorf("layer %q: its temperature at the start is not known", l.Name)
	}
	for i, k := range l.Start {
		if !positive(float64(k.Temperature)) {
			return fmt.Errorf("layer %q: a start at %g K: it must be above 0", l.Name, float64(k.Temperature))
		}
		if !(k.Depth >= 0 && k.Depth <= l.Thickness) || i > 0 && !(k.Depth > l.Start[i-1].Depth) {
			return fmt.Errorf("layer %q: a temperature at a depth of %g m: depths must rise from 0 to %g m", l.Name, float64(k.Depth), float64(l.Thickness))
		}
	}
	return nil
}

// startBetween is the mean of the start profile between two depths: linear between
// the known ones, level beyond them.
func (l Layer) startBetween(from, to float64) float64 {
	mean := func(a, b float64) float64 { // the profile is linear from a to b
		return l.startAt((a+b)/2) * (b - a)
	}
	sum, at := 0.0, from
	for _, k := range l.Start {
		if d := float64(k.Depth); d > at && d < to {
			sum += mean(at, d)
			at = d
		}
	}
	return (sum + mean(at, to)) / (to - from)
}

func (l Layer) startAt(depth float64) float64 {
	last := len(l.Start) - 1
	if depth <= float64(l.Start[0].Depth) {
		return float64(l.Start[0].Temperature)
	}
	for i := 1; i <= last; i++ {
		a, b := l.Start[i-1], l.Start[i]
		if depth <= float64(b.Depth) {
			share := (depth - float64(a.Depth)) / float64(b.Depth-a.Depth)
			return float64(a.Temperature) + share*float64(b.Temperature-a.Temperature)
		}
	}
	return float64(l.Start[last].Temperature)
}

// positive says that v is a finite number above 0.
func positive(v float64) bool { return v > 0 && !math.IsInf(v, 1) }

// notNegative says that v is a finite number, 0 or above.
func notNegative(v float64) bool { return v >= 0 && !math.IsInf(v, 1) }
