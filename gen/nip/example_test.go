package nip_test

import (
	"fmt"

	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// A hot polyester film on a sheet of paper at 1 m/min: what 110 °C on the roller make
// of the bond line, and what it needs for 85 °C. The machine is invented.
func Example() {
	rubber := nip.Layer{Name: "silicone", Thickness: 3e-3, Conductivity: 0.25, Density: 1150, SpecificHeat: 1300}
	pass := nip.Pass{
		Film: []nip.Layer{
			{Name: "PET", Thickness: 25e-6, Conductivity: 0.15, Density: 1390, SpecificHeat: 1170},
			{Name: "EVA", Thickness: 50e-6, Conductivity: 0.30, Density: 940, SpecificHeat: 2300},
		},
		Print: []nip.Layer{{Name: "paper", Thickness: 150e-6, Conductivity: 0.12, Density: 800, SpecificHeat: 1500}},
		Upper: nip.Roller{Cover: rubber, Diameter: 0.12, Core: nip.Set, Wrap: 0.06, WrapContact: 400, NipContact: 2500, Idle: 10},
		Lower: nip.Roller{Cover: rubber, Diameter: 0.12, Core: nip.Lower, NipContact: 600, Idle: 10},
		Speed: 1.0 / 60, Nip: 0.008, Bond: 10000, OpenFace: 10,
		After: []nip.Stage{{Time: 30, Face: nip.Exposure{Conductance: 15}, Back: nip.Exposure{Conductance: 15}}},
	}
	var r nip.Response
	if err := nip.NewSolver().Run(&pass, &r); err != nil {
		fmt.Println(err)
		return
	}
	room := quantity.Temperature(296.15)
	t := nip.Temps{Room: room, Set: 383.15, Lower: 318.15, Print: room, Film: room}
	for _, c := range []*nip.Case{&r.First, &r.Steady} {
		bond, _ := c.BondLineMax(t)
		set, err := c.SetForBondLine(358.15, t)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("bond line %.1f °C; for 85 °C set %.1f °C\n", float64(bond)-273.15, float64(set)-273.15)
	}
	// Output:
	// bond line 76.3 °C; for 85 °C set 125.6 °C
	// bond line 70.5 °C; for 85 °C set 139.2 °C
}
