package cooling

import (
	"math"

	"laydown/gen/quantity"
)

// leftOver is the share of an unevenness that counts as evened out.
const leftOver = 1.0 / 20

// EvensOut gives the time in which a layer with sealed faces has evened out to a
// twentieth of what it began with.
//
//	t = ln 20/π²·L²/α = 0.304·L²/α      first mode of a slab with sealed faces, which
//	                                    falls as exp(−π²·α·t/L²): Carslaw and Jaeger
//
// A layer of 100 µm with α = 1e-7 m²/s takes 30 ms; one of 15 µm less than a
// millisecond.
func EvensOut(l Layer) quantity.Time {
	thick := float64(l.Thickness)
	return quantity.Time(math.Log(1/leftOver) / (math.Pi * math.Pi) * thick * thick / float64(l.Diffusivity()))
}

// EvensOutStack gives the time by which layers that lie on each other have evened out
// to a twentieth, at the latest.
//
//	t ≤ ln 20/4·R·C      R = Σ L/k + Σ 1/h, C = Σ ρ·c·L
//
// Worst are two equal heat capacities at both ends of all the resistance: their
// difference falls as exp(−4t/(R·C)). A uniform slab is quicker, by 4/π². That none is
// slower follows from Rayleigh's quotient of the slowest mode: with Δ the span of its
// temperatures, the numerator ∫(dT/dr)²dr over the resistance is at least Δ²/R (Schwarz)
// and the denominator, C times a variance, at most C·Δ²/4 (Popoviciu).
func EvensOutStack(layers []Layer) quantity.Time {
	r, heat := 0.0, 0.0
	for i, l := range layers {
		r += float64(l.Thickness) / float64(l.Conductivity)
		heat += l.HeatCapacity()
		if l.Below > 0 && i < len(layers)-1 {
			r += 1 / float64(l.Below)
		}
	}
	return quantity.Time(math.Log(1/leftOver) / 4 * r * heat)
}

// TimeConstant is the time in which a laminate that has one temperature throughout
// falls to 1/e of its excess over air that meets both its faces.
//
//	τ = Σ ρ·c·L/(h_face + h_back)
//
// It holds while h·Σ(L/k) is well below 1.
func TimeConstant(layers []Layer, face, back quantity.Conductance) quantity.Time {
	heat := 0.0
	for _, l := range layers {
		heat += l.HeatCapacity()
	}
	return quantity.Time(heat / float64(face+back))
}
