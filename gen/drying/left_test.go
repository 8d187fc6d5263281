package drying

import (
	"math"
	"testing"
)

// Crank's short-time series for a sheet with both faces at constant
// concentration, 4√Fo·[1/√π + 2Σ(−1)ⁿ·ierfc(n/(2√Fo))] (§4.3, number from memory),
// is the second method for Left at infinite Biot numbers. The table holds what
// both series gave elsewhere: computed, kept for consistency.
func TestConstantFacesByBothSeries(t *testing.T) {
	m := mustModes(t, math.Inf(1), math.Inf(1), LeftModes)
	for _, r := range []struct{ fo, lost float64 }{
		{0.005, 0.15957691}, {0.01, 0.22567583}, {0.02, 0.31915374}, {0.05, 0.50408782},
		{0.1, 0.69788191}, {0.2, 0.88740287}, {0.3, 0.95803417}, {0.5, 0.99417048},
	} {
		root := math.Sqrt(r.fo)
		sum, sign := 1/math.SqrtPi, -1.0
		for n := 1; n < 40; n++ {
			sum += sign * 2 * ierfc(float64(n)/(2*root))
			sign = -sign
		}
		got := 1 - m.Left(r.fo)
		if !(math.Abs(got-4*root*sum) <= 1e-12) || !(math.Abs(got-r.lost) <= 1e-8) {
			t.Errorf("Fo %g: modes %.10f, short-time series %.10f, table %.8f", r.fo, got, 4*root*sum, r.lost)
		}
	}
}

// Surface evaporation from one face, β·tan β = L. The first table was computed from Crank's
// series (§4.3.6) written out; the series itself is summed here again as he gives it.
func TestSurfaceEvaporation(t *testing.T) {
	times := []float64{0.1, 0.25, 0.5, 1, 2}
	for l, row := range map[float64][]float64{
		0.5: {0.04462, 0.10487, 0.19567, 0.35024, 0.57595},
		1:   {0.08040, 0.17983, 0.31890, 0.52960, 0.77561},
		10:  {0.27388, 0.47439, 0.68498, 0.88650, 0.98527},
	} {
		m := mustModes(t, l, 0, LeftModes)
		for i, fo := range times {
			sum := 0.0
			for _, b := range m.Beta {
				sum += 2 * l * l * math.Exp(-b*b*fo) / (b * b * (b*b + l*l + l))
			}
			got := m.Left(fo)
			if !(math.Abs(got-sum) <= 1e-14) || !(math.Abs(1-got-row[i]) <= 5e-6) {
				t.Errorf("L %g, T %g: lost %.7f, Crank's sum %.7f, table %.5f", l, fo, 1-got, 1-sum, row[i])
			}
		}
	}
}

// The limits: a face that gives off at once is a face at the floor, and a layer
// that hardly gives off is mixed, exp(−(B₁+B₂)·Fo).
func TestLimits(t *testing.T) {
	held := mustModes(t, math.Inf(1), math.Inf(1), LeftModes)
	large := mustModes(t, 1e9, 1e9, LeftModes)
	half := mustModes(t, math.Inf(1), 0, LeftModes)
	for _, fo := range []float64{1e-5, 0.001, 0.01, 0.05, 0.2, 1} {
		if a, b := large.Left(fo), held.Left(fo); !(math.Abs(a-b) <= 5e-9) {
			t.Errorf("Fo %g: Biot number 1e9 %.12f, held %.12f", fo, a, b)
		}
		// One face held and the other sealed is half of a sheet twice as thick.
		if a, b := half.Left(4*fo), held.Left(fo); !(math.Abs(a-b) <= 1e-12) {
			t.Errorf("Fo %g: sealed half %.14f, whole %.14f", fo, a, b)
		}
	}
	for _, b := range [][2]float64{{1e-6, 0}, {1e-6, 1e-6}, {0, 3e-7}, {1e-9, 1e-12}} {
		m := mustModes(t, b[0], b[1], LeftModes)
		for _, share := range []float64{1e-6, 0.01, 0.5, 1, 3} {
			fo := share / (b[0] + b[1])
			if got, want := m.Left(fo), math.Exp(-share); !(math.Abs(got-want) <= 2*(b[0]+b[1])) {
				t.Errorf("Biot numbers %g: left %.10f, mixed %.10f", b, got, want)
			}
		}
	}
	sealed := mustModes(t, 0, 0, LeftModes)
	for _, fo := range []float64{0, 1e-3, 0.5, 1e6} {
		if got := sealed.Left(fo); got != 1 {
			t.Errorf("sealed layer at Fo %g: %g left", fo, got)
		}
	}
}

// The two forms of Left meet: at the handover and around it the half spaces and
// the modes differ by no more than the proven bound and rounding.
func TestHandover(t *testing.T) {
	bound := 20 * math.Sqrt(handover) * ierfc(1/(2*math.Sqrt(handover)))
	if !(bound < 4e-13) {
		t.Fatalf("bound at the handover is %g", bound)
	}
	worst := 0.0
	for _, p := range pairs() {
		m := mustModes(t, p[0], p[1], LeftModes)
		short := 1 - halfSpaceLoss(p[0], handover) - halfSpaceLoss(p[1], handover)
		off := math.Abs(short - m.Left(handover))
		worst = math.Max(worst, off)
		if !(off <= bound+5e-15) {
			t.Errorf("face %g, back %g: half spaces %.16f, modes %.16f", p[0], p[1], short, m.Left(handover))
		}
		// Many modes make the series good before the handover as well.
		long := mustModes(t, p[0], p[1], 400)
		for _, fo := range []float64{1e-4, 1e-3, 5e-3} {
			sum := 0.0
			for n, b := range long.Beta {
				sum += long.Mean[n] * long.Mean[n] / long.Norm[n] * math.Exp(-b*b*fo)
			}
			if got := m.Left(fo); !(math.Abs(got-sum) <= 1e-12) {
				t.Errorf("face %g, back %g, Fo %g: half spaces %.15f, 400 modes %.15f", p[0], p[1], fo, got, sum)
			}
		}
	}
	t.Logf("bound %.2g, largest difference %.2g", bound, worst)
}

// What has gone is what has passed the two faces: the fluxes, integrated by
// Simpson's rule over √Fo, which makes them smooth, in pieces that grow by a
// constant ratio.
func TestMassIsConserved(t *testing.T) {
	for _, p := range [][2]float64{{1e-3, 0}, {0.2, 3}, {10, 0}, {50, 50}, {0, 7}, {1e3, 0.01}, {1e5, 1e5}} {
		m := mustModes(t, p[0], p[1], 60)
		gone, edge := 0.0, 1e-9
		gone += (p[0] + p[1]) * edge * edge / (1 + (p[0]+p[1])*edge) // no matter: below 1e-9
		f := func(s float64) float64 {
			face, back := m.Leaving(s * s)
			return 2 * s * (face + back)
		}
		for edge < 1.5 {
			next := math.Min(edge*1.01, 1.5)
			gone += (next - edge) / 6 * (f(edge) + 4*f((edge+next)/2) + f(next))
			edge = next
		}
		if lost := 1 - m.Left(edge*edge); !(math.Abs(gone-lost) <= 1e-8) {
			t.Errorf("Biot numbers %g: lost %.10f, passed the faces %.10f", p, lost, gone)
		}
	}
}

// Left falls with time and with either Biot number, and stays within 0 and 1.
func TestLeftIsMonotone(t *testing.T) {
	for _, p := range pairs() {
		m := mustModes(t, p[0], p[1], LeftModes)
		more := mustModes(t, p[0]*1.3, p[1]*1.1, LeftModes)
		before := 1.0
		for fo := 1e-9; fo < 1e10; fo *= 3 {
			left := m.Left(fo)
			if !(left >= 0 && left <= before+1e-12) {
				t.Errorf("face %g, back %g, Fo %g: %.15f left after %.15f", p[0], p[1], fo, left, before)
			}
			if !(more.Left(fo) <= left+1e-12) {
				t.Errorf("face %g, back %g, Fo %g: larger Biot numbers leave more", p[0], p[1], fo)
			}
			before = left
		}
	}
}
