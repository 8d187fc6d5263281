package vent_test

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
	"laydown/gen/vent"
)

// How many square metres may be hung at once in a small shop, before anything else in
// the room. All figures are invented; a real limit comes from the safety data sheet.
func Example() {
	room := vent.Room{Volume: 150, AirChanges: 2 * quantity.PerHour, Mixing: 3}
	print, err := vent.FromLeft(
		[]quantity.Time{0, 600, 3600, 4 * quantity.Hour, quantity.Day, 2 * quantity.Day},
		[]quantity.Grammage{2.0e-3, 1.7e-3, 1.2e-3, 0.7e-3, 0.3e-3, 0.2e-3})
	if err != nil {
		fmt.Println(err)
		return
	}
	limit, err := vent.FromPPM(20, 0.162, 293.15, 101325)
	if err != nil {
		fmt.Println(err)
		return
	}
	vapour := []vent.Component{{Name: "ether", Share: 1, MolarMass: 0.162, Limit: limit, LowerExplosive: 0.012}}
	metre, err := room.Leaves(vent.Load{Emission: print, Batches: []vent.Batch{{Area: 1}}}, 8*quantity.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := metre.Bears(vapour, vent.Bounds{Exposure: 0.25, Temperature: 293.15, Pressure: 101325})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("a square metre: %.2f mg/m³ over the worst shift, %.2f mg/m³ at its peak\n", float64(metre.Average)*1e6, float64(metre.Peak)*1e6)
	fmt.Printf("at most %.0f m² at once, before anything else in the room\n", math.Floor(float64(b.Bears)))
	// Output:
	// a square metre: 1.67 mg/m³ over the worst shift, 3.64 mg/m³ at its peak
	// at most 20 m² at once, before anything else in the room
}
