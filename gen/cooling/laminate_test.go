package cooling

import "laydown/gen/quantity"

// celsius is a temperature in °C.
func celsius(t float64) quantity.Temperature {
	return quantity.Temperature(t) + quantity.ZeroCelsius
}

// laminate is polyester film on a printed sheet of paper as it leaves a hot nip: the
// film hot, the sheet hot at its face only. Temperatures invented.
func laminate() []Layer {
	return []Layer{
		{Name: "PET", Thickness: 25e-6, Conductivity: 0.15, Density: 1390, SpecificHeat: 1170, Start: []Known{{0, celsius(96)}, {25e-6, celsius(88)}}},
		{Name: "EVA", Thickness: 50e-6, Conductivity: 0.30, Density: 940, SpecificHeat: 2300, Start: []Known{{0, celsius(88)}, {50e-6, celsius(80)}}, Below: 10000},
		{Name: "ink", Thickness: 3e-6, Conductivity: 0.18, Density: 1250, SpecificHeat: 1400, Start: Even(celsius(72))},
		{Name: "paper", Thickness: 150e-6, Conductivity: 0.12, Density: 800, SpecificHeat: 1500, Start: []Known{{0, celsius(72)}, {50e-6, celsius(60)}, {150e-6, celsius(52)}}},
	}
}

// inAir is a stage in air of 23 °C at both faces.
func inAir(time quantity.Time, h quantity.Conductance) Stage {
	e := Exposure{h, celsius(23)}
	return Stage{Name: "air", Time: time, Face: e, Back: e}
}

// chilled is a laminate's way with a chill roller on its face.
func chilled() []Stage {
	return []Stage{
		inAir(2, 25),
		{Name: "chill roller", Time: 1, Face: Exposure{400, celsius(15)}, Back: Exposure{25, celsius(23)}},
		inAir(120, 15),
	}
}
