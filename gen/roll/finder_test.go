package roll

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// machine has rollers of usual sizes; two are too near each other to tell apart.
var machine = []Roller{{"upper", 0.130}, {"lower", 0.128}, {"idler", 0.060}, {"pull", 0.080}}

// Rolled out step by step, a spot on a roller comes down again where Find looks for it,
// and Find names that roller first.
func TestFindNamesTheRollerThatRolled(t *testing.T) {
	for _, r := range machine {
		const steps = 100000
		chord := 2 * float64(r.Diameter) / 2 * math.Sin(math.Pi/steps) // of a polygon of so many sides
		list, err := Find(quantity.Length(steps*chord), machine, Tolerance)
		if err != nil || len(list) == 0 || list[0].Name != r.Name || math.Abs(float64(list[0].Off)) > 1e-8 {
			t.Errorf("%s: found %+v (%v)", r.Name, list, err)
		}
	}
}

func TestFindKeepsToItsTolerance(t *testing.T) {
	turn := math.Pi * machine[0].Diameter
	// Between the two that are alike: both, the nearer first.
	list, err := Find(0.994*turn, machine, Tolerance)
	if err != nil || len(list) != 2 || list[0].Name != "upper" || !(list[0].Off < 0 && list[1].Off > 0) {
		t.Errorf("between two rollers: %+v (%v)", list, err)
	}
	if list, err = Find(1.03*turn, machine, Tolerance); err != nil || len(list) != 0 {
		t.Errorf("three per cent past the largest: %+v (%v)", list, err)
	}
	if list, err = Find(1.03*turn, machine, 0.04); err != nil || len(list) != 1 {
		t.Errorf("the same within four per cent: %+v (%v)", list, err)
	}
	for _, d := range []quantity.Length{0.01, 0.0635, 1} {
		turn, err := Repeat(d)
		back, err2 := Diameter(turn)
		if err != nil || err2 != nil || math.Abs(float64(back/d)-1) > 1e-15 {
			t.Errorf("%g m there and back: %g m (%v, %v)", float64(d), float64(back), err, err2)
		}
	}
}

func TestFinderRefuses(t *testing.T) {
	for name, f := range map[string]func() error{
		"no repeat":    func() error { _, err := Find(0, machine, Tolerance); return err },
		"no diameter":  func() error { _, err := Repeat(0); return err },
		"no roller":    func() error { _, err := Find(1, []Roller{{"flat", 0}}, Tolerance); return err },
		"no tolerance": func() error { _, err := Find(1, machine, -0.1); return err },
	} {
		if f() == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
