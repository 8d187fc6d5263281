package tables

import (
	"math"
	"testing"

	"laydown/gen/cooling"
	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// Every pairing of the demonstration cools as it must: a fan is never slower than the
// rack, a chill roller never later to trim, and nothing is ready to stack before it may
// be carried where the room lies below the burn threshold.
func TestEveryLaminateCools(t *testing.T) {
	all, err := demoTables(t).Coolings()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 100 {
		t.Fatalf("only %d laminates", len(all))
	}
	never, parted := 0, 0.0
	for _, v := range all {
		rack, fan, chill := v.Ways[0], v.Ways[1], v.Ways[2]
		if rack.Way != OnRack || fan.Way != UnderFan || chill.Way != OverChill {
			t.Fatalf("ways %v", v.Ways)
		}
		for _, w := range v.Ways {
			for _, when := range []Cooled{w.Carry, w.Trim, w.Stack} {
				if !when.Comes {
					never++
				}
			}
		}
		const step = 1.06 // times are told to a step of the march
		for _, pair := range [][2]Cooled{{rack.Carry, fan.Carry}, {rack.Trim, fan.Trim}, {rack.Stack, fan.Stack}, {rack.Trim, chill.Trim}} {
			if pair[0].Comes && float64(pair[1].Time) > step*float64(pair[0].Time)+0.05 {
				t.Errorf("%s on %s: %.2f s with help, %.2f s on the rack", v.Film, v.Medium, float64(pair[1].Time), float64(pair[0].Time))
			}
		}
		parted = math.Max(parted, float64(v.Widest))
	}
	if never > 0 {
		t.Errorf("%d times within an hour do not come", never)
	}
	t.Logf("%d laminates; film and print at most %.1f K apart at the nip", len(all), parted)
}

// The working's own short formula gives the times to within the first second's heat:
// a second way to the same number.
func TestCoolingByHand(t *testing.T) {
	tables := demoTables(t)
	for _, c := range []LaminateCase{
		{"thermal-pet-gloss-38", "uncoated-150", "wide-hot", "finishing-room"},
		{"thermal-pp-gloss-27", "coated-silk-250", "sheet-fed", "finishing-room"},
		{"thermal-pet-gloss-38", "uncoated-90", "desktop", "winter"},
	} {
		l, err := tables.leavesNipIn(nip.NewSolver(), c)
		if err != nil {
			t.Fatal(err)
		}
		run, adhesives, err := tables.cool(l, OnRack)
		if err != nil {
			t.Fatal(err)
		}
		limits, _ := tables.coolingLimits(l, adhesives)
		ready, err := run.Ready(limits)
		if err != nil {
			t.Fatal(err)
		}
		stages, _ := tables.coolingStages(l, OnRack)
		layers, _ := tables.layers(l)
		// By the web's time constant from half a second after the nip, then the rack's.
		web, rest := stages[0], stages[1]
		const settled quantity.Time = 0.5
		from := min(settled, web.Time)
		begin, err := run.At(from)
		if err != nil {
			t.Fatal(err)
		}
		falls := func(s cooling.Stage, excess float64) quantity.Time {
			return quantity.Time(float64(cooling.TimeConstant(layers, s.Face.Conductance, s.Back.Conductance)) * math.Log(excess/float64(limits.Stack.Minus(l.room))))
		}
		excess := float64(begin.Layers[len(begin.Layers)-1].Minus(l.room))
		hand := from + falls(web, excess)
		if hand > web.Time {
			left := excess * math.Exp(-float64(web.Time-from)/float64(cooling.TimeConstant(layers, web.Face.Conductance, web.Back.Conductance)))
			hand = web.Time + falls(rest, left)
		}
		if got := ready.Stack.Time; math.Abs(float64(got-hand)) > 0.1*float64(hand) {
			t.Errorf("%v: stacked after %.1f s, by hand %.1f s", c, float64(got), float64(hand))
		}
		t.Logf("%v: carried %.1f s, trimmed %.1f s, stacked %.1f s (by hand %.1f s), set %.0f °C", c,
			float64(ready.Touch.Time), float64(ready.Trim.Time), float64(ready.Stack.Time), float64(hand), l.set.Celsius())
	}
}
