package drying_test

import (
	"fmt"

	"laydown/gen/drying"
	"laydown/gen/quantity"
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

// A print that was laminated early: an invented layer of 80 µm dries in the open
// for 6 h, then lies under 75 µm of vinyl film or 25 µm of polyester, its back closed.
func ExampleState_Clears() {
	open := drying.Setting{Thickness: 80e-6, Diffusivity: 5e-14, Face: 2e-8}
	print, err := drying.Fresh(0.002).March(open, 6*3600)
	if err != nil {
		fmt.Println(err)
		return
	}
	const day, year = 86400, 365 * 86400
	for _, film := range []struct {
		name string
		ply  drying.Ply
	}{
		{"vinyl", drying.Ply{Thickness: 75e-6, Diffusivity: 5e-14, Partition: 1}},
		{"polyester", drying.Ply{Thickness: 25e-6, Diffusivity: 5e-18, Partition: 1}},
	} {
		covered, err := open.Covered([]drying.Ply{film.ply}, nil)
		if err != nil {
			fmt.Println(err)
			return
		}
		c, err := print.Clears(covered, 0.0003, []quantity.Time{7 * day}, year)
		if err != nil {
			fmt.Println(err)
			return
		}
		clear := "not within a year"
		if c.Clear <= year {
			clear = fmt.Sprintf("after %.1f days", float64(c.Clear)/day)
		}
		fmt.Printf("%s: %.2f g/m² at first, %.2f after a week, clear %s\n",
			film.name, float64(c.Start)*1000, float64(c.Left[0])*1000, clear)
	}
	// Output:
	// vinyl: 1.13 g/m² at first, 0.03 after a week, clear after 2.7 days
	// polyester: 1.13 g/m² at first, 1.13 after a week, clear not within a year
}
