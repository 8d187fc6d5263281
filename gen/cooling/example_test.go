package cooling_test

import (
	"fmt"

	"laydown/gen/cooling"
	"laydown/gen/quantity"
)

// A hot laminate runs on for two seconds and then lies on a rack: when it may be
// trimmed, carried and stacked. All figures are invented.
func Example() {
	c := func(t float64) quantity.Temperature { return quantity.ZeroCelsius + quantity.Temperature(t) }
	laminate := []cooling.Layer{
		{Name: "PET", Thickness: 25e-6, Conductivity: 0.15, Density: 1390, SpecificHeat: 1170, Start: cooling.Even(c(92))},
		{Name: "EVA", Thickness: 50e-6, Conductivity: 0.30, Density: 940, SpecificHeat: 2300, Start: cooling.Even(c(84)), Below: 10000},
		{Name: "paper", Thickness: 150e-6, Conductivity: 0.12, Density: 800, SpecificHeat: 1500, Start: cooling.Even(c(60))},
	}
	const room, sea = 296.15, 101325
	radiation, err := cooling.Radiation(cooling.Emissivity, c(45), room)
	if err != nil {
		fmt.Println(err)
		return
	}
	up, err := cooling.StillAir(cooling.FacingUp, 0.085, c(45), room, sea)
	if err != nil {
		fmt.Println(err)
		return
	}
	down, err := cooling.StillAir(cooling.FacingDown, 0.085, c(45), room, sea)
	if err != nil {
		fmt.Println(err)
		return
	}
	stages := []cooling.Stage{
		{Name: "free run", Time: 2, Face: cooling.Exposure{Conductance: 25, Temperature: room}, Back: cooling.Exposure{Conductance: 25, Temperature: room}},
		{Name: "rack", Time: 600, Face: cooling.Exposure{Conductance: cooling.Air(radiation, up), Temperature: room}, Back: cooling.Exposure{Conductance: cooling.Air(radiation, down), Temperature: room}},
	}
	run, err := cooling.Cool(laminate, stages)
	if err != nil {
		fmt.Println(err)
		return
	}
	touch, _ := cooling.BurnThreshold(cooling.Plastic, cooling.CarryContact)
	ready, err := run.Ready(cooling.Limits{Touch: touch, Stack: c(28), Set: c(60), Margin: 5, Adhesives: []int{1}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("trim after %.0f s, carry after %.0f s, stack after %.0f s\n", float64(ready.Trim.Time), float64(ready.Touch.Time), float64(ready.Stack.Time))
	// Output:
	// trim after 4 s, carry after 8 s, stack after 34 s
}
