package paper_test

import (
	"fmt"

	"laydown/gen/air"
	"laydown/gen/paper"
	"laydown/gen/quantity"
)

// An uncoated paper from a room at 50 % and 23 °C goes under a hot film: how hot may its bond line
// get before the air under the film swells to a blister?
func Example() {
	sheet := paper.Sheet{FibreShare: paper.UsualFibreShare}
	trap, err := paper.Conditioned(sheet, 0.50, quantity.FromCelsius(23), air.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("moisture %.1f %%\n", trap.Moisture.Percent())
	r, err := trap.Swelling(quantity.FromCelsius(95))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("at 95 °C the air swells by %.1f\n", r)
	hottest, err := trap.Reaches(paper.OpenLimit, quantity.FromCelsius(140))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("to %g at %.1f °C\n", paper.OpenLimit, hottest.Celsius())
	// Output:
	// moisture 7.4 %
	// at 95 °C the air swells by 3.9
	// to 5 at 97.2 °C
}
