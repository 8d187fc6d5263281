package stack

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// TestChartRises: the chart as it was copied rises along each row, but for the one
// figure in doubt, and its differences and volumes rise.
func TestChartRises(t *testing.T) {
	for i, row := range ConditioningChart {
		if i > 0 && row.Volume <= ConditioningChart[i-1].Volume {
			t.Errorf("volume %.3f m³ follows %.3f", float64(row.Volume), float64(ConditioningChart[i-1].Volume))
		}
		for k := 1; k < len(row.Hours); k++ {
			if h := row.Hours[k]; h != 0 && h <= row.Hours[k-1] {
				t.Errorf("row %.3f m³: %g h after %g h", float64(row.Volume), h, row.Hours[k-1])
			}
		}
		if row.Source == "" {
			t.Errorf("row %.3f m³ names no source", float64(row.Volume))
		}
	}
	row := ConditioningChart[4]
	if row.Doubt != 3 || row.Hours[2] != 17 {
		t.Errorf("the figure in doubt is %g", row.Hours[row.Doubt-1])
	}
	if got := ConditioningDifferences[0]; math.Abs(float64(got)-10/1.8) > 1e-12 {
		t.Errorf("10 °F are %g K", float64(got))
	}
}

// TestRollVolume: the bulletins' rule is D²·L·3.14/6912, in inches and cubic feet.
func TestRollVolume(t *testing.T) {
	const inch = 0.0254
	got := float64(RollVolume(40*inch, 25*inch)) / cubicFoot
	if want := 40 * 40 * 25 * 3.14 / 6912; math.Abs(got/want-1) > 1e-3 {
		t.Errorf("a roll of 40 by 25 in: %.3f ft³, the rule has %.3f", got, want)
	}
}

// TestCompare shows the chart beside what is computed; nothing holds the two together.
// What must hold is that each figure is there once and that computed ones rise with the
// difference, that is within a row.
func TestCompare(t *testing.T) {
	list, err := Compare(pallet(), hall, 2)
	if err != nil {
		t.Fatal(err)
	}
	figures := 0
	for _, row := range ConditioningChart {
		for _, h := range row.Hours {
			if h > 0 {
				figures++
			}
		}
	}
	if len(list) != figures || figures < 50 {
		t.Fatalf("%d figures compared, the chart has %d", len(list), figures)
	}
	below, above := 0, 0
	for i, c := range list {
		if i > 0 && c.Volume == list[i-1].Volume && c.Core <= list[i-1].Core {
			t.Errorf("%.2f m³ from %.1f K: %.1f h, from less %.1f", float64(c.Volume), float64(c.Difference), c.Core.Hours(), list[i-1].Core.Hours())
		}
		if c.Faces < c.Published {
			below++
		}
		if c.Core > c.Published {
			above++
		}
		t.Logf("%.2f m³ from %4.1f K: chart %2.0f h, core %5.1f h, faces alone %4.1f h", float64(c.Volume), float64(c.Difference),
			c.Published.Hours(), c.Core.Hours(), c.Faces.Hours())
	}
	t.Logf("of %d figures the faces alone are below %d and the core above %d", len(list), below, above)
	if _, err := Compare(Parcel{}, hall, 2); err == nil {
		t.Error("a parcel of nothing: no error")
	}
	if _, err := Compare(pallet(), Room{Temperature: quantity.FromCelsius(20)}, 2); err == nil {
		t.Error("a room without air: no error")
	}
}

// TestLeftInvertsTheTime: at a parcel's own time its core is as near as was asked, and its
// mean is nearer.
func TestLeftInvertsTheTime(t *testing.T) {
	a, err := pallet().Within(hall.Temperature-20, hall, 2)
	if err != nil {
		t.Fatal(err)
	}
	core, mean := a.Left(a.Time)
	if math.Abs(float64(core)-0.1) > 1e-6 || mean >= core || mean <= 0 {
		t.Errorf("core %.5f, mean %.5f of 20 K left", float64(core), float64(mean))
	}
	if core, mean = (Acclimatised{Share: 1}).Left(1); core != 1 || mean != 1 {
		t.Errorf("a parcel without a course: %v and %v left", core, mean)
	}
}
