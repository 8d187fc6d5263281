package nip

import (
	"math"
	"testing"
)

// refined runs a pass with cells and steps split, and gives bond line and film face
// at the nip's end and the bond line at the last record, first piece and steady run.
func refined(t *testing.T, p *Pass, temps Temps, cells, steps int) []float64 {
	t.Helper()
	s, out := NewSolver(), new(Response)
	s.splitCells, s.splitSteps = cells, steps
	if err := s.Run(p, out); err != nil {
		t.Fatal(err)
	}
	var v []float64
	for _, c := range []*Case{&out.First, &out.Steady} {
		end, last := c.Records[c.NipEnd], c.Records[len(c.Records)-1]
		v = append(v, end[FilmFace].at(&temps), end[BondLine].at(&temps), last[BondLine].at(&temps))
	}
	return v
}

// distance is the root of the summed squares of the differences.
func distance(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += (a[i] - b[i]) * (a[i] - b[i])
	}
	return math.Sqrt(sum)
}

// Halving the steps, or the cells, divides the error by four.
func TestConvergesAtSecondOrder(t *testing.T) {
	for _, x := range []struct {
		name string
		pass *Pass
		t    Temps
	}{
		{"wide hot", wideHot(2), celsius(23, 110, 45)},
		{"encapsulator", encapsulator(1), celsius(23, 110, 45)},
		{"drum", drum(30), celsius(23, 110, 40)},
		{"cold", cold(2), celsius(23, 45, 23)},
	} {
		for _, y := range []struct {
			name string
			run  func(n int) []float64
		}{
			{"time", func(n int) []float64 { return refined(t, x.pass, x.t, 2, n) }},
			{"space", func(n int) []float64 { return refined(t, x.pass, x.t, n, 4) }},
		} {
			exact := y.run(32)
			e := [3]float64{}
			for k, n := range []int{2, 4, 8} {
				e[k] = distance(y.run(n), exact)
			}
			first, second := math.Log2(e[0]/e[1]), math.Log2(e[1]/e[2])
			t.Logf("%s, %s: errors %.5f %.5f %.5f K, orders %.2f %.2f", x.name, y.name, e[0], e[1], e[2], first, second)
			// Against 32 in place of the exact value the last order reads
			// log₂((1/16 − 1/256)/(1/64 − 1/256)) = 2.32 for a second order of 2.
			if !(second > 1.8 && second < 2.7) {
				t.Errorf("%s: order in %s %.2f", x.name, y.name, second)
			}
		}
	}
}
