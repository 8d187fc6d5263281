package bond_test

import (
	"fmt"

	"laydown/gen/bond"
	"laydown/gen/quantity"
)

// A cold film on a UV print: relief of 15 µm, valleys of 100 µm, 10 mm of nip at
// 1 m/min. The adhesive's figures are from memory, of low confidence.
func Example() {
	room := quantity.FromCelsius(23)
	c := bond.Case{
		Adhesive: bond.Adhesive{
			Law:       bond.FreeVolume{Reference: 1e6, At: room, Glass: quantity.FromCelsius(-35)},
			Surface:   0.03,
			Wetting:   1,
			Thickness: 25e-6,
		},
		Relief: bond.Relief{Form: bond.Groove, Depth: 15e-6, Width: 100e-6},
		Pass:   []bond.Sample{{Time: 0, Temperature: room, Pressure: 0.2e6}, {Time: 0.6, Temperature: room, Pressure: 0.2e6}},
		Rest:   room,
	}
	r, err := c.WetOut()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("demand %.2f, supply of the nip %.2f, capillary %.0f Pa\n", r.Demand, r.Passage.Supply, float64(r.Capillary))
	fmt.Printf("filled after the nip %.0f %%, after an hour %.0f %%\n", r.AfterNip.Percent(), r.AfterHour.Percent())
	fmt.Println(r.Class)
	// Output:
	// demand 0.90, supply of the nip 0.12, capillary 600 Pa
	// filled after the nip 15 %, after an hour 100 %
	// clears by itself overnight
}
