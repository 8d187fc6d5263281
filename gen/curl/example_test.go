package curl_test

import (
	"fmt"

	"laydown/gen/curl"
	"laydown/gen/quantity"
)

// A hot film on a coated sheet, grain across the feed: cooled, then in a damp room, then
// whether ridges could have risen in the nip. The film and its adhesive are invented.
func Example() {
	paper := curl.Layer{Name: "paper", Thickness: 200e-6, ModulusMD: 7e9, ModulusCD: 3.5e9,
		Poisson: curl.MajorPoisson(0.293, 7e9, 3.5e9), ExpansionMD: 5e-6, ExpansionCD: 11e-6,
		SwellingMD: 0.02, SwellingCD: 0.05, Machine: curl.Across}
	adhesive := curl.Layer{Name: "EVA", Thickness: 15e-6, ModulusMD: 30e6, ModulusCD: 30e6, Poisson: 0.47,
		ExpansionMD: 180e-6, ExpansionCD: 180e-6, Soft: true}
	film := curl.Layer{Name: "PET", Thickness: 25e-6, ModulusMD: 4.5e9, ModulusCD: 4.8e9, Poisson: 0.36,
		ExpansionMD: 17e-6, ExpansionCD: 17e-6}
	// All at one temperature; only the paper holds water.
	at := func(celsius float64, moisture quantity.Fraction) []curl.State {
		t := quantity.Temperature(celsius + 273.15)
		return []curl.State{{Temperature: t, Moisture: moisture}, {Temperature: t}, {Temperature: t}}
	}
	l := curl.Laminate{Layers: []curl.Layer{paper, adhesive, film}, Set: at(60, 0.045), Tension: []quantity.LineLoad{0, 0, 30}}
	for _, room := range []quantity.Fraction{0.048, 0.062} {
		c, err := l.Curl(at(23, room))
		if err != nil {
			fmt.Println(err)
			return
		}
		cy := c.Cylinder
		fmt.Printf("moisture %.1f %%: %v, radius %.2f m, axis %.0f° from the feed, an A4's long edge %.0f mm high\n",
			100*float64(room), cy.Side(), float64(cy.Radius), float64(cy.Axis), 1000*float64(cy.Rise(0.297)))
	}
	rubber := curl.Cover{Modulus: 2.5e6, Poisson: 0.4999, Thickness: 3e-3}
	found, err := l.Lines(0, []curl.Stage{{Name: "nip", Held: true, From: at(23, 0.048), Now: at(70, 0.048),
		Adhesive: 0.1e6, Upper: rubber, Lower: rubber}})
	if err != nil {
		fmt.Println(err)
		return
	}
	across := found[1]
	fmt.Printf("%v: strain %.3f %%, buckles at %.2f %%, risk %.2f, ridges %.0f mm apart\n", across.Compressed,
		100*float64(across.Strain), 100*float64(across.Critical), float64(across.Risk), 1000*float64(across.Wavelength))
	// Output:
	// moisture 4.8 %: upward, radius 0.37 m, axis 90° from the feed, an A4's long edge 29 mm high
	// moisture 6.2 %: upward, radius 0.19 m, axis 90° from the feed, an A4's long edge 56 mm high
	// across the feed: strain 0.021 %, buckles at 0.56 %, risk 0.04, ridges 7 mm apart
}
