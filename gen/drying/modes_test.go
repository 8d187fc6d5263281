package drying

import (
	"math"
	"math/rand/v2"
	"testing"
)

// extremes are Biot numbers at and beyond the ends of what layers have.
var extremes = []float64{0, 1e-300, 1e-12, 1e-6, 1e-4, 0.03, 1, 7.5, 300, 1e4, 1e6, 1e9, math.Inf(1)}

// biot draws a Biot number from 1e-9 to 1e9, sometimes 0.
func biot(r *rand.Rand) float64 {
	if r.IntN(12) == 0 {
		return 0
	}
	return math.Pow(10, 18*r.Float64()-9)
}

// pairs are all pairs of extremes and some hundred random ones.
func pairs() [][2]float64 {
	var ps [][2]float64
	for _, f := range extremes {
		for _, b := range extremes {
			ps = append(ps, [2]float64{f, b})
		}
	}
	r := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		ps = append(ps, [2]float64{biot(r), biot(r)})
	}
	return ps
}

func mustModes(t testing.TB, face, back float64, n int) *Modes {
	t.Helper()
	m, err := NewModes(face, back, n)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// Each root stands in its bracket [nπ, (n+1)π], rises with n, and the phase
// equation changes its sign within a few units in the last place of it.
func TestRootsAreExact(t *testing.T) {
	for _, p := range pairs() {
		m := mustModes(t, p[0], p[1], 40)
		for n, b := range m.Beta {
			low := float64(n) * math.Pi
			if !(b >= low && b <= low+math.Pi*(1+1e-15)) || (n > 0 && !(b > m.Beta[n-1])) {
				t.Fatalf("face %g, back %g: root %d is %g", p[0], p[1], n, b)
			}
			if b == 0 {
				if p[0]+p[1] != 0 {
					t.Errorf("face %g, back %g: root 0 although not sealed", p[0], p[1])
				}
				continue
			}
			f := func(b float64) float64 { return b - phase(p[0], b) - phase(p[1], b) - low }
			if d := 8e-16 * b; f(b-d) > 0 || f(b+d) < 0 {
				t.Errorf("face %g, back %g: root %d, %.17g, is off: residual %g", p[0], p[1], n, b, f(b))
			}
		}
	}
}

// The same roots satisfy tan β·(β² − B_face·B_back) = β(B_face + B_back), written
// without poles: (β² − B₁B₂)·sin β = β(B₁ + B₂)·cos β.
func TestRootsSatisfyTangentForm(t *testing.T) {
	for _, p := range pairs() {
		if p[0] > 1e6 || p[1] > 1e6 || p[0]+p[1] < 1e-6 {
			continue // there one side drowns in the rounding of the other
		}
		for n, b := range mustModes(t, p[0], p[1], 20).Beta {
			left := (b*b - p[0]*p[1]) * math.Sin(b)
			right := b * (p[0] + p[1]) * math.Cos(b)
			size := math.Hypot(b, p[0]) * math.Hypot(b, p[1])
			if !(math.Abs(left-right) <= 1e-13*size) {
				t.Errorf("face %g, back %g, root %d: %g against %g", p[0], p[1], n, left, right)
			}
		}
	}
}

// Modes are orthogonal; their closed norms and means equal those by overlaps.
func TestModesAreOrthogonal(t *testing.T) {
	for _, p := range pairs() {
		m := mustModes(t, p[0], p[1], 16)
		for i := range m.Beta {
			for j := range m.Beta {
				got := overlap(m.Beta[i], m.Phi[i], m.Beta[j], m.Phi[j])
				want := 0.0
				if i == j {
					want = m.Norm[i]
				}
				if !(math.Abs(got-want) <= 4e-14) {
					t.Errorf("face %g, back %g: ∫X%d·X%d = %g, want %g", p[0], p[1], i, j, got, want)
				}
			}
			if got := wave(m.Beta[i], m.Phi[i]); !(math.Abs(got-m.Mean[i]) <= 4e-14) {
				t.Errorf("face %g, back %g: ∫X%d = %g, by the fluxes %g", p[0], p[1], i, got, m.Mean[i])
			}
		}
	}
}

// A print turned over has the same roots, norms and shares left.
func TestFaceAndBackAreAlike(t *testing.T) {
	for _, p := range pairs() {
		m, turned := mustModes(t, p[0], p[1], 20), mustModes(t, p[1], p[0], 20)
		for n := range m.Beta {
			if !(math.Abs(m.Beta[n]-turned.Beta[n]) <= 1e-15*m.Beta[n]) {
				t.Errorf("face %g, back %g: roots %g and %g", p[0], p[1], m.Beta[n], turned.Beta[n])
			}
		}
		if a, b := m.Left(0.3), turned.Left(0.3); !(math.Abs(a-b) <= 1e-15) {
			t.Errorf("face %g, back %g: left %g and %g", p[0], p[1], a, b)
		}
	}
}

// Alike faces are two sealed halves: the even roots are those of one face and a
// sealed back at half the thickness, doubled.
func TestAlikeFacesAreTwoHalves(t *testing.T) {
	for _, b := range []float64{1e-6, 0.1, 1, 20, 1e5} {
		whole, half := mustModes(t, b, b, 11), mustModes(t, b/2, 0, 6)
		for n := range 6 {
			if !(math.Abs(whole.Beta[2*n]/(2*half.Beta[n])-1) <= 1e-15) {
				t.Errorf("B %g: root %d is %.17g, twice the half's %.17g", b, 2*n, whole.Beta[2*n], 2*half.Beta[n])
			}
		}
	}
}

func TestNewModesRefuses(t *testing.T) {
	for _, r := range []struct {
		face, back float64
		n          int
	}{{-1, 0, 4}, {0, -1e-9, 4}, {math.NaN(), 0, 4}, {0, math.NaN(), 4}, {1, 1, 0}, {1, 1, -3}, {1, 1, 1 << 20}} {
		if m, err := NewModes(r.face, r.back, r.n); err == nil || m != nil {
			t.Errorf("NewModes(%g, %g, %d): no error", r.face, r.back, r.n)
		}
	}
}
