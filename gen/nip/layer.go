package nip

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Layer is one layer of film, print or roller cover. Its properties are constant:
// take them at a temperature half way between entry and nip.
type Layer struct {
	Name         string
	Thickness    quantity.Length
	Conductivity quantity.Conductivity // through the thickness
	Density      quantity.Density
	SpecificHeat quantity.SpecificHeat
	// Cells is how many cells the layer is cut into; 0 leaves it to the solver.
	Cells int
}

// Diffusivity is k/(ρ·c).
func (l Layer) Diffusivity() quantity.Diffusivity {
	return quantity.Diffusivity(float64(l.Conductivity) / (float64(l.Density) * float64(l.SpecificHeat)))
}

// Effusivity is √(k·ρ·c) in W·s½/(m²·K). Two half spaces that touch take the
// temperature (e₁T₁ + e₂T₂)/(e₁ + e₂) where they touch.
func (l Layer) Effusivity() float64 {
	return math.Sqrt(float64(l.Conductivity) * float64(l.Density) * float64(l.SpecificHeat))
}

// mostLayerCells bounds what a layer may ask for.
const mostLayerCells = 1000

// check refuses what no layer can be.
func (l *Layer) check() error {
	if !positive(float64(l.Thickness)) || !positive(float64(l.Conductivity)) ||
		!positive(float64(l.Density)) || !positive(float64(l.SpecificHeat)) {
		return fmt.Errorf("layer %q: thickness %g m, conductivity %g W/(m K), density %g kg/m³, specific heat %g J/(kg K): each must be above 0",
			l.Name, float64(l.Thickness), float64(l.Conductivity), float64(l.Density), float64(l.SpecificHeat))
	}
	if l.Cells < 0 || l.Cells > mostLayerCells {
		return fmt.Errorf("layer %q: %d cells asked for: 0 (chosen) to %d can be had", l.Name, l.Cells, mostLayerCells)
	}
	return nil
}

// positive says that v is a finite number above 0.
func positive(v float64) bool { return v > 0 && !math.IsInf(v, 1) }

// notNegative says that v is a finite number, 0 or above.
func notNegative(v float64) bool { return v >= 0 && !math.IsInf(v, 1) }
