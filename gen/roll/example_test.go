package roll_test

import (
	"fmt"

	"laydown/gen/quantity"
	"laydown/gen/roll"
)

// Sixty menus between two films on a machine that is cold, and what is left of the roll
// afterwards. All figures are invented.
func Example() {
	film := roll.Wound{Core: 88 * quantity.Millimetre, Thickness: 75 * quantity.Micrometre}
	left, err := film.Length(130 * quantity.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	job := roll.Job{
		Pieces: 60, Piece: roll.Piece{Across: 297 * quantity.Millimetre, Along: 420 * quantity.Millimetre}, Abreast: 3,
		Border: 5 * quantity.Millimetre, Gap: 50 * quantity.Millimetre, Width: 1, Sides: 2, Threading: 2, Spoils: 0.04,
		Speed: quantity.MetrePerMinute, SetUp: 10 * quantity.Minute, WarmUp: 30 * quantity.Minute, Feeding: 10, Trim: 20,
		OnRoll: left, Roll: 150, ChangeOfRoll: 10 * quantity.Minute,
	}
	need, err := job.Need()
	if err != nil {
		fmt.Println(err)
		return
	}
	after, err := film.Outer(left - need.Length)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f m on the roll, %d prints to run, %.1f m and %.1f m² of film, %.0f min\n", float64(left), need.Run, float64(need.Length), float64(need.Film), need.Total.Minutes())
	fmt.Printf("the roll comes down to %.0f mm\n", after.Millimetres())
	// Output:
	// 95.9 m on the roll, 63 prints to run, 11.9 m and 23.7 m² of film, 81 min
	// the roll comes down to 126 mm
}
