package drying

import (
	"math"
	"testing"
)

// Values of exp(x²)·erfc(x) summed from the Maclaurin series of erf in 140-digit
// arithmetic (computed; erfcx(1) = 0.4275835761558 also from memory of tables).
func TestErfcx(t *testing.T) {
	rows := []struct{ x, want float64 }{
		{0, 1},
		{0.001, 0.9988726200811514086278},
		{0.1, 0.8964569799691266419318},
		{0.5, 0.6156903441929258748707},
		{1, 0.4275835761558070044107},
		{2, 0.2553956763105057438650},
		{3, 0.1790011511813899504192},
		{5, 0.1107046377330686263702},
		{7, 0.0798000543291529334898},
		{9.5, 0.0590646783525638908540},
		{10, 0.0561409927438225858575},
		{11, 0.0510805947580884437099},
	}
	for _, r := range rows {
		if got := erfcx(r.x); !(math.Abs(got/r.want-1) <= 1e-15) {
			t.Errorf("erfcx(%g) = %.17g, want %.17g", r.x, got, r.want)
		}
	}
	if got := erfcx(math.Inf(1)); got != 0 {
		t.Errorf("erfcx(∞) = %g", got)
	}
}

// The second method: Laplace's continued fraction
// √π·erfcx(x) = 1/(x + ½/(x + 1/(x + 3/2/(x + …)))) (Abramowitz and Stegun
// 7.1.14, number from memory), from x = 1 to where the plain product overflows
// and beyond.
func TestErfcxContinuedFraction(t *testing.T) {
	for x := 1.0; x < 1e6; x *= 1.07 {
		f := x
		for k := 600; k >= 1; k-- {
			f = x + float64(k)/2/f
		}
		want := 1 / (f * math.SqrtPi)
		if got := erfcx(x); !(math.Abs(got/want-1) <= 2e-15) {
			t.Errorf("erfcx(%g) = %.17g, continued fraction %.17g", x, got, want)
		}
	}
}

// The loss of a half space is the integral of its flux; its two forms meet at
// B√Fo = 1; it is B·Fo for a small Biot number and 2√(Fo/π) for a large one.
func TestHalfSpaceLoss(t *testing.T) {
	for _, biot := range []float64{1e-9, 1e-3, 0.5, 3, 99, 101, 1e4, 1e9} {
		for _, fo := range []float64{1e-8, 1e-4, 0.01} {
			// Fo = s², so that the integrand 2s·B·erfcx(B·s) is smooth; s in
			// steps that grow with it resolve every 1/B.
			const n = 4000
			edge := math.Sqrt(fo)
			sum := 0.0
			from := edge * 1e-13
			sum += biot * from * from
			ratio := math.Pow(edge/from, 1.0/n)
			for a := from; a < edge*(1-1e-9); a *= ratio {
				b := a * ratio
				f := func(s float64) float64 { return 2 * s * halfSpaceFlux(biot, s*s) }
				sum += (b - a) / 6 * (f(a) + 4*f((a+b)/2) + f(b))
			}
			got := halfSpaceLoss(biot, fo)
			if !(math.Abs(got/sum-1) <= 1e-8) {
				t.Errorf("B %g, Fo %g: loss %.12g, integral of the flux %.12g", biot, fo, got, sum)
			}
		}
	}
	below, above := halfSpaceLoss(1-1e-15, 1), halfSpaceLoss(1, 1)
	if !(math.Abs(below-above) <= 1e-14) {
		t.Errorf("at B√Fo = 1 the forms give %.17g and %.17g", below, above)
	}
	if got, want := halfSpaceLoss(1e-9, 1e-3), 1e-12; !(math.Abs(got/want-1) <= 1e-9) {
		t.Errorf("small Biot number: %g, want %g", got, want)
	}
	if got, want := halfSpaceLoss(math.Inf(1), 0.01), 2*math.Sqrt(0.01/math.Pi); !(math.Abs(got-want) <= 1e-16) {
		t.Errorf("infinite Biot number: %g, want %g", got, want)
	}
	if got := halfSpaceLoss(0, 0.01); got != 0 {
		t.Errorf("sealed face: %g", got)
	}
}
