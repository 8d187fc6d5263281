package paper

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// The second method: March through the time that Returns gives must come out the share
// of the way back, for a sheet that has lost half its water or a tenth of it, and for one
// that is too damp.
func TestReturnsAgreesWithMarch(t *testing.T) {
	worst := 0.0
	for _, faces := range []int{1, 2} {
		for _, humidity := range []quantity.Fraction{0.3, 0.5, 0.65} {
			for _, lost := range []quantity.Fraction{0.5, 0.9, 1.2} {
				for _, share := range []quantity.Fraction{0.5, 0.9} {
					e := exchange()
					e.Faces, e.Humidity = faces, humidity
					full, err := e.Sheet.Moisture(humidity, e.Room)
					if err != nil {
						t.Fatal(err)
					}
					from := full * lost
					time, balance, err := e.Returns(from, share)
					if err != nil || balance != full {
						t.Fatalf("balance %g, want %g (%v)", float64(balance), float64(full), err)
					}
					m, err := e.March(from, time, at(e.Room))
					if err != nil {
						t.Fatal(err)
					}
					off := math.Abs(float64((m-from)/(full-from)) - float64(share))
					worst = math.Max(worst, off)
					if !(off <= 2e-3) {
						t.Errorf("%d faces, %.0f %%, from %.0f %% of its water: after %.0f s March is off by %.4f of the way",
							faces, humidity.Percent(), lost.Percent(), float64(time), off)
					}
				}
			}
		}
	}
	t.Logf("largest difference %.2g of the way", worst)
}

// Twice the sheet takes twice as long through the same air; four times the air takes a
// quarter; nothing to go takes no time.
func TestReturnsScales(t *testing.T) {
	e := exchange()
	e.Thickness = 1e-9 // the air decides
	one, balance, err := e.Returns(0.03, 0.9)
	if err != nil {
		t.Fatal(err)
	}
	heavy, windy := e, e
	heavy.Dry *= 2
	windy.Air *= 4
	for name, c := range map[string]struct {
		e     Exchange
		ratio float64
	}{"twice the sheet": {heavy, 2}, "four times the air": {windy, 0.25}} {
		got, _, err := c.e.Returns(0.03, 0.9)
		if err != nil || !(math.Abs(float64(got/one)/c.ratio-1) <= 1e-3) {
			t.Errorf("%s: %g times as long, want %g (%v)", name, float64(got/one), c.ratio, err)
		}
	}
	if got, _, err := e.Returns(balance, 0.9); got != 0 || err != nil {
		t.Errorf("a sheet in balance takes %g s (%v)", float64(got), err)
	}
	if got, _, err := e.Returns(0.03, 0); got != 0 || err != nil {
		t.Errorf("none of the way takes %g s (%v)", float64(got), err)
	}
	if _, _, err := e.Returns(0.03, 1); err == nil {
		t.Error("all of the way: no error")
	}
	if _, _, err := (Exchange{}).Returns(0.03, 0.9); err == nil {
		t.Error("no sheet: no error")
	}
}

func BenchmarkReturns(b *testing.B) {
	e := exchange()
	for b.Loop() {
		if _, _, err := e.Returns(0.03, 0.9); err != nil {
			b.Fatal(err)
		}
	}
}
