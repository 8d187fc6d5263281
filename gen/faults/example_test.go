package faults_test

import (
	"fmt"

	"laydown/gen/faults"
	"laydown/gen/quantity"
)

// Bubbles under a hot film, with invented figures: what to do first, why, and what fits
// on a sheet that has room for five steps.
func Example() {
	minutes := func(n float64) quantity.Time { return quantity.Time(n) * quantity.Minute }
	chance := func(dirt, steam, air quantity.Fraction) map[string]quantity.Fraction {
		return map[string]quantity.Fraction{"dirt": dirt, "steam": steam, "trapped air": air}
	}
	bubbles := faults.Family{
		Name:   "bubbles",
		Causes: []faults.Cause{{Name: "dirt", Weight: 4}, {Name: "steam", Weight: 5}, {Name: "trapped air", Weight: 3}},
		Checks: []faults.Observation{
			{Name: "look for a speck in the middle", Time: minutes(1), Results: []faults.Result{
				{Name: "speck", Chance: chance(0.9, 0.05, 0.05)}, {Name: "empty"}}},
			{Name: "run a blank sheet", Time: minutes(4), Results: []faults.Result{
				{Name: "bubbles too", Chance: chance(0.3, 0.9, 0.6)}, {Name: "none"}}},
		},
		Remedies: []faults.Cure{
			{Name: "clean rollers and sheets", Time: minutes(15), Cures: chance(0.9, 0, 0)},
			{Name: "run cooler and faster", Time: minutes(5), Cures: chance(0, 0.7, 0)},
			{Name: "more brake and pressure", Time: minutes(8), Cures: chance(0, 0, 0.8)},
		},
		Help: faults.Help{Name: "call for help", Time: minutes(90)},
	}
	problem, err := bubbles.Problem()
	if err != nil {
		fmt.Println(err)
		return
	}
	solver, err := faults.NewSolver(problem, faults.Effort{})
	if err != nil {
		fmt.Println(err)
		return
	}
	key := solver.Key()
	first := key.Start
	fmt.Printf("First: %s. %.1f minutes and %.1f steps to be expected.\n", problem.Acts[first.Act].Name, key.Cost, first.Count)
	second := first.Options[1]
	fmt.Printf("Second best: %s, %.1f minutes more.\n", problem.Acts[second.Act].Name, first.Margin())
	short := solver.Short(5)
	fmt.Printf("With %d steps instead of %d: %.1f minutes, %.1f more than the best.\n", short.Size, len(key.Steps), short.Cost, short.Loss())
	for _, s := range short.Steps {
		fmt.Printf("%d. %s\n", s.Number, problem.Acts[s.Act].Name)
		for i, o := range problem.Acts[s.Act].Outcomes {
			switch next := s.Next[i]; {
			case o.Ends:
				fmt.Printf("   %s: done\n", o.Name)
			case next.Number == 0:
				fmt.Printf("   %s: %s\n", o.Name, problem.Acts[next.Act].Name)
			default:
				fmt.Printf("   %s: go to %d\n", o.Name, next.Number)
			}
		}
	}
	// Output:
	// First: look for a speck in the middle. 34.3 minutes and 2.8 steps to be expected.
	// Second best: run cooler and faster, 0.8 minutes more.
	// With 5 steps instead of 8: 35.1 minutes, 0.8 more than the best.
	// 1. look for a speck in the middle
	//    speck: go to 2
	//    empty: go to 4
	// 2. clean rollers and sheets
	//    cured: done
	//    not cured: go to 3
	// 3. run cooler and faster
	//    cured: done
	//    not cured: call for help
	// 4. run cooler and faster
	//    cured: done
	//    not cured: go to 5
	// 5. more brake and pressure
	//    cured: done
	//    not cured: call for help
}
