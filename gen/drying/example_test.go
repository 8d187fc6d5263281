package drying_test

import (
	"fmt"

	"laydown/gen/drying"
)

// A sheet 0.4 mm thick, D = 1e-10 m²/s, both faces held at constant concentration:
// after 100 s it has lost 56.2 % (the documentation of the polykin library prints
// 0.562233541762138 for this sheet, after Crank, The Mathematics of Diffusion, 2nd
// ed., p. 48). A transfer coefficient of 1 m/s stands for the held faces here.
func Example() {
	sheet := drying.Setting{Thickness: 0.4e-3, Diffusivity: 1e-10, Face: 1, Back: 1}
	const load = 0.010 // kg/m²
	after, err := drying.Fresh(load).March(sheet, 100)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("Fourier number %.4f\n", sheet.Fourier(100))
	fmt.Printf("share lost     %.4f\n", 1-float64(after.Amount())/load)

	wait, err := drying.Fresh(load).Until(sheet, load/2, 3600)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("half is gone after %.1f s\n", float64(wait))
	// Output:
	// Fourier number 0.0625
	// share lost     0.5622
	// half is gone after 78.7 s
}
