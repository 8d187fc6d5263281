package draw

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

func TestSpread(t *testing.T) {
	rows := []struct {
		name      string
		want      []float64
		low, high float64
		placed    []float64 // worked by hand, gap 10
	}{
		{"apart already", []float64{10, 40, 70}, 0, 100, []float64{10, 40, 70}},
		{"two on one spot part about it", []float64{50, 50}, 0, 100, []float64{45, 55}},
		{"order is kept whatever the order given", []float64{52, 50}, 0, 100, []float64{56, 46}},
		{"a chain moves as one", []float64{50, 55, 60}, 0, 100, []float64{45, 55, 65}},
		{"the edge pushes back", []float64{0, 0, 0}, 0, 100, []float64{0, 10, 20}},
		{"the other edge too", []float64{99, 100}, 0, 100, []float64{90, 100}},
	}
	for _, row := range rows {
		if got := Spread(row.want, 10, row.low, row.high); !slices.Equal(got, row.placed) {
			t.Errorf("%s: got %v, want %v", row.name, got, row.placed)
		}
	}
}

// TestSpreadProperties: whatever is wanted, labels stand a gap apart, inside,
// and in the order of what was wanted.
func TestSpreadProperties(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		want := make([]float64, 1+random.IntN(8))
		for i := range want {
			want[i] = random.Float64() * 200
		}
		placed := Spread(want, 18, 0, 200)
		order := slices.Clone(placed)
		slices.Sort(order)
		for i, p := range order {
			if p < -1e-6 || p > 200+1e-6 {
				t.Fatalf("%v: %v stands outside", want, p)
			}
			if i > 0 && p-order[i-1] < 18-1e-6 {
				t.Fatalf("%v: %v and %v stand too close", want, order[i-1], p)
			}
		}
		for i := range want {
			for j := range want {
				if want[i] < want[j] && placed[i] > placed[j] {
					t.Fatalf("%v: order lost in %v", want, placed)
				}
			}
		}
	}
}

func TestThinKeepsWithinTolerance(t *testing.T) {
	var curve []point
	for i := range 200 {
		x := float64(i)
		curve = append(curve, point{x, 100 * math.Exp(-x/40)})
	}
	thinned := thin(curve, 0.15)
	if len(thinned) >= len(curve)/2 || len(thinned) < 5 {
		t.Fatalf("%d points left of %d", len(thinned), len(curve))
	}
	for _, p := range curve {
		near := math.Inf(1)
		for i := 1; i < len(thinned); i++ {
			if p.x >= thinned[i-1].x && p.x <= thinned[i].x {
				near = min(near, offLine(p, thinned[i-1], thinned[i]))
			}
		}
		if near > 0.15+1e-9 {
			t.Errorf("the point at x = %g lies %g off the thinned line", p.x, near)
		}
	}
	straight := []point{{0, 0}, {1, 1}, {2, 2}, {3, 3}}
	if got := thin(straight, 0.1); len(got) != 2 {
		t.Errorf("a straight line keeps %d points, want its two ends", len(got))
	}
}
