package curl

import "laydown/gen/quantity"

// Layers for tests, with generic values (handbook ranges; from memory).
var (
	pp    = Layer{Name: "PP", Thickness: 15e-6, ModulusMD: 2e9, ModulusCD: 4e9, Poisson: 0.3, ExpansionMD: 90e-6, ExpansionCD: 90e-6}
	pet   = Layer{Name: "PET", Thickness: 15e-6, ModulusMD: 4.5e9, ModulusCD: 4.8e9, Poisson: 0.36, ExpansionMD: 17e-6, ExpansionCD: 17e-6}
	nylon = Layer{Name: "nylon", Thickness: 15e-6, ModulusMD: 2.9e9, ModulusCD: 2.9e9, Poisson: 0.39, ExpansionMD: 60e-6, ExpansionCD: 60e-6,
		SwellingMD: 0.24, SwellingCD: 0.24, Softening: 10}
	eva   = Layer{Name: "EVA", Thickness: 12e-6, ModulusMD: 30e6, ModulusCD: 30e6, Poisson: 0.47, ExpansionMD: 180e-6, ExpansionCD: 180e-6, Soft: true}
	psa   = Layer{Name: "PSA", Thickness: 22e-6, ModulusMD: 0.2e6, ModulusCD: 0.2e6, Poisson: 0.4999, ExpansionMD: 250e-6, ExpansionCD: 250e-6, Soft: true}
	vinyl = Layer{Name: "vinyl", Thickness: 75e-6, ModulusMD: 0.5e9, ModulusCD: 0.5e9, Poisson: 0.42, ExpansionMD: 100e-6, ExpansionCD: 100e-6}
	sheet = Layer{Name: "paper", Thickness: 120e-6, ModulusMD: 7e9, ModulusCD: 3.5e9, Poisson: MajorPoisson(0.293, 7e9, 3.5e9),
		ExpansionMD: 5e-6, ExpansionCD: 11e-6, SwellingMD: 0.02, SwellingCD: 0.05}
	rubber = Cover{Modulus: 2.5e6, Poisson: 0.4999, Thickness: 3e-3}
)

// fed is a layer with its machine direction at an angle to the feed.
func fed(l Layer, machine Degrees) Layer {
	l.Machine = machine
	return l
}

// states gives every layer one temperature (°C), and the medium, layer m, a moisture;
// a nylon film takes what it takes at the same humidity, about half.
func states(layers []Layer, m int, celsius float64, moisture quantity.Fraction) []State {
	s := make([]State, len(layers))
	for i := range s {
		s[i].Temperature = quantity.Temperature(celsius + 273.15)
		if layers[i].Name == "nylon" {
			s[i].Moisture = moisture / 2
		}
	}
	s[m].Moisture = moisture
	return s
}

// joined is a laminate whose adhesive set at a temperature, with the medium lowest.
func joined(celsius float64, moisture quantity.Fraction, layers ...Layer) *Laminate {
	return &Laminate{Layers: layers, Set: states(layers, 0, celsius, moisture)}
}
