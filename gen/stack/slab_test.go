package stack

import (
	"math"
	"testing"
)

// TestSeriesMeetsHalfSpaces: at the Fourier number where one takes over from the other
// both hold, and they must give the same.
func TestSeriesMeetsHalfSpaces(t *testing.T) {
	for _, biot := range []float64{1e-3, 0.1, 1, 10, 1e3, 1e6, math.Inf(1)} {
		s, err := newSlab(biot)
		if err != nil {
			t.Fatal(err)
		}
		below, above := math.Nextafter(shortTime, 0), shortTime
		for _, x := range []float64{-1, -0.7, 0, 0.3, 0.9, 1} {
			if a, b := s.at(x, below), s.at(x, above); math.Abs(a-b) > 2e-9 {
				t.Errorf("Biot %g at %g: half spaces %.12g, series %.12g", biot, x, a, b)
			}
		}
		if a, b := s.whole(below), s.whole(above); math.Abs(a-b) > 2e-9 {
			t.Errorf("Biot %g, whole: half spaces %.12g, series %.12g", biot, a, b)
		}
	}
}

// TestWholeIsTheMeanOfPlaces: the mean in closed form against Simpson's rule.
func TestWholeIsTheMeanOfPlaces(t *testing.T) {
	for _, biot := range []float64{0.01, 1, 30} {
		s, _ := newSlab(biot)
		for _, fo := range []float64{1e-3, 0.01, 0.05, 0.5, 2} {
			const n = 2000
			sum := 0.0
			for i := 0; i <= n; i++ {
				w := 2.0 + 2*float64(i%2)
				if i == 0 || i == n {
					w = 1
				}
				sum += w * s.at(float64(i)/n, fo)
			}
			if mean := sum / (3 * n); math.Abs(mean-s.whole(fo)) > 1e-8 {
				t.Errorf("Biot %g, Fo %g: mean of places %.10g, whole %.10g", biot, fo, mean, s.whole(fo))
			}
		}
	}
}

// TestSlabLimits: a face so slow that the slab is even inside falls exponentially; one
// so fast that it stands at the room falls as the held one does.
func TestSlabLimits(t *testing.T) {
	slow, _ := newSlab(1e-4)
	for _, fo := range []float64{1, 100, 1e4, 3e4} {
		if got, want := slow.whole(fo), math.Exp(-1e-4*fo); math.Abs(got-want) > 5e-5 {
			t.Errorf("slow face, Fo %g: %.6g, an even slab has %.6g", fo, got, want)
		}
	}
	fast, _ := newSlab(1e7)
	held, _ := newSlab(math.Inf(1))
	for _, fo := range []float64{1e-4, 0.01, 0.3, 2} {
		if a, b := fast.whole(fo), held.whole(fo); math.Abs(a-b) > 1e-6 {
			t.Errorf("fast face, Fo %g: %.8g, held %.8g", fo, a, b)
		}
	}
	if sealed, _ := newSlab(0); sealed.at(0.5, 10) != 1 || sealed.whole(10) != 1 {
		t.Error("a sealed slab changes")
	}
	if _, err := newSlab(math.NaN()); err == nil {
		t.Error("no error for a Biot number that is none")
	}
	if _, err := newSlab(-1); err == nil {
		t.Error("no error for a Biot number below 0")
	}
}

// TestScaledErrorFunction against values of exp(x²)·erfc(x): 1 at 0; 0.427583576 at 1
// and 0.0561409927 at 10 (Abramowitz and Stegun, table 7.1 by way of erfc; from memory,
// to the digits given). The two forms must meet at 10.
func TestScaledErrorFunction(t *testing.T) {
	for x, want := range map[float64]float64{0: 1, 1: 0.427583576, 10: 0.0561409927} {
		if got := erfcx(x); math.Abs(got/want-1) > 2e-9 {
			t.Errorf("erfcx(%g) = %.10g, want %.10g", x, got, want)
		}
	}
	if a, b := erfcx(math.Nextafter(10, 0)), erfcx(10); math.Abs(a/b-1) > 1e-12 {
		t.Errorf("the forms part at 10: %.15g and %.15g", a, b)
	}
}
