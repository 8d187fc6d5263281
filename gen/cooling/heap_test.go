package cooling

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

func heap(sheets int) Heap {
	return Heap{Sheets: sheets, Sheet: Whole(laminate(), celsius(45)), Between: 150, Width: 0.32, Length: 0.45,
		Top: Exposure{10, celsius(23)}, Bottom: Exposure{5, celsius(23)}, Sides: 8}
}

func TestWholeKeepsHeatAndResistance(t *testing.T) {
	layers := laminate()
	w := Whole(layers, celsius(45))
	heat, r := 0.0, 1e-4 // the bond's contact
	for _, l := range layers {
		heat += l.HeatCapacity()
		r += float64(l.Thickness) / float64(l.Conductivity)
	}
	if math.Abs(w.HeatCapacity()/heat-1) > 1e-12 || math.Abs(float64(w.Thickness)/float64(w.Conductivity)/r-1) > 1e-12 {
		t.Errorf("whole: %g J/(m² K), %g m² K/W; its layers %g and %g", w.HeatCapacity(), float64(w.Thickness)/float64(w.Conductivity), heat, r)
	}
}

// Where a heap conducts well against what its faces give, both ways to cool it agree;
// a tall one keeps its middle warm longer than its mean.
func TestHeapBothWays(t *testing.T) {
	low := heap(4)
	low.Sides, low.Between = 0, 0
	l, err := low.Lumped()
	if err != nil {
		t.Fatal(err)
	}
	c, middle, err := low.Middle(3 * l.Tau)
	if err != nil {
		t.Fatal(err)
	}
	for _, share := range []quantity.Time{0.5, 1, 2, 3} {
		m, err := c.At(share * l.Tau)
		if err != nil || math.Abs(float64(m.Layers[middle]-l.At(share*l.Tau))) > 22*l.Biot {
			t.Errorf("after %g τ: middle %.3f K, lumped %.3f K, Biot %.3g (%v)", float64(share), float64(m.Layers[middle]), float64(l.At(share*l.Tau)), l.Biot, err)
		}
	}
	high := heap(500)
	high.Sides = 0
	l, err = high.Lumped()
	if err != nil || !(l.Biot > 0.1) {
		t.Fatal(l.Biot, err)
	}
	c, middle, err = high.Middle(30 * l.Tau)
	if err != nil {
		t.Fatal(err)
	}
	slab, ok, err := c.StaysBelow(middle, celsius(28))
	mean, ok2 := l.Until(celsius(28))
	if err != nil || !ok || !ok2 || !(slab > mean) {
		t.Errorf("middle below 28 °C after %g s (%v), lumped %g s", float64(slab), err, float64(mean))
	}
	t.Logf("500 sheets: middle %.3g h, lumped %.3g h, Biot %.3g", float64(slab)/3600, float64(mean)/3600, l.Biot)
}

// More sheets, later; sides help; the lumped heap's own formula backwards.
func TestHeapProperties(t *testing.T) {
	before := quantity.Time(0)
	for _, n := range []int{1, 2, 10, 100, 1000} {
		h := heap(n)
		l, err := h.Lumped()
		if err != nil {
			t.Fatal(err)
		}
		at, ok := l.Until(celsius(28))
		if !ok || !(at > before) {
			t.Errorf("%d sheets: %g s after %g s", n, float64(at), float64(before))
		}
		if math.Abs(float64(l.At(at)-celsius(28))) > 1e-9 {
			t.Errorf("%d sheets: %g K then", n, float64(l.At(at)))
		}
		before = at
		h.Sides = 0
		if bare, _ := h.Lumped(); !(bare.Tau > l.Tau) {
			t.Errorf("%d sheets: sides do not help", n)
		}
	}
	l, _ := heap(10).Lumped()
	if _, ok := l.Until(celsius(20)); ok {
		t.Error("cooler than the room")
	}
	if at, ok := l.Until(celsius(50)); !ok || at != 0 {
		t.Error("cool enough from the start")
	}
	for name, h := range map[string]Heap{"none": heap(0), "sealed": {Sheets: 1, Sheet: heap(1).Sheet, Width: 1, Length: 1}, "no size": {Sheets: 1, Sheet: heap(1).Sheet, Top: Exposure{10, 300}}} {
		if _, err := h.Lumped(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
