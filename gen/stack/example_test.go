package stack_test

import (
	"fmt"

	"laydown/gen/paper"
	"laydown/gen/quantity"
	"laydown/gen/stack"
)

// A stack of uncoated sheets from a room in order stands in a dry one; a pack of the same
// comes wrapped from a cold van.
func Example() {
	sheets := stack.Usual(paper.Sheet{Fibre: paper.Pulp, FibreShare: 0.78}, 112e-6, 750)
	pile := stack.Pile{Length: 0.45, Width: 0.32, Height: 0.3, Transfer: stack.StillAir}
	change := stack.Change{From: 0.50, To: 0.25, Temperature: quantity.FromCelsius(20), Pressure: 101325}
	m, err := stack.NewMoisture(pile, sheets, change)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, days := range []quantity.Time{1, 7} {
		b, err := m.Border(0.5, days*quantity.Day)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%g d: half dried %.0f mm deep (%.0f to %.0f)\n", float64(days),
			1000*float64(b.Sides.Best), 1000*float64(b.Sides.Low), 1000*float64(b.Sides.High))
	}
	pack := stack.Parcel{Length: 0.45, Width: 0.32, Height: 0.15, Along: 0.2, Through: 0.1,
		Density: 750, SpecificHeat: 1500, Emissivity: 0.9}
	a, err := pack.Within(quantity.FromCelsius(3), stack.Room{Temperature: quantity.FromCelsius(23), Pressure: 101325}, 2)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("wrapped, 20 K too cold: %.0f h\n", a.Time.Hours())
	// Output:
	// 1 d: half dried 5 mm deep (2 to 7)
	// 7 d: half dried 13 mm deep (5 to 21)
	// wrapped, 20 K too cold: 30 h
}
