package paper

import (
	"errors"
	"math"
	"testing"

	"laydown/gen/quantity"
)

// The bounds of the open limit, for each isotherm. The limit lies between those of Pulp. For the
// other two the bounds are reported, and pinned to what the comments say of them: with Paltakari
// and Karlsson's isotherm, 5 is below what runs clean.
func TestOpenLimitLiesInItsBounds(t *testing.T) {
	opinions, err := Opinions(UsualFibreShare)
	if err != nil {
		t.Fatal(err)
	}
	want := []Bounds{{3.896, 6.246}, {3.157, 4.827}, {6.466, 295.6}} // by another program
	for n, o := range opinions {
		t.Logf("%s: clean at %.2f, blisters at %.4g, middle %.3g", o.Name, o.Bounds.Clean, o.Bounds.Blisters, o.Bounds.Middle())
		if math.Abs(o.Bounds.Clean/want[n].Clean-1) > 5e-4 || math.Abs(o.Bounds.Blisters/want[n].Blisters-1) > 5e-4 {
			t.Errorf("%s: %+v", o.Name, o.Bounds)
		}
		inside := o.Bounds.Clean < OpenLimit && OpenLimit < o.Bounds.Blisters
		if inside != (n == 0) {
			t.Errorf("%s: the limit %g inside %+v is %v", o.Name, OpenLimit, o.Bounds, inside)
		}
		// What each opinion has for sheets in practice, at its own limit and at Pulp's.
		for _, rh := range []quantity.Fraction{0.35, 0.5, 0.65} {
			tr := conditioned(t, Sheet{Fibre: o.Isotherm, FibreShare: UsualFibreShare}, rh)
			own, err := tr.Reaches(o.Bounds.Middle(), quantity.FromCelsius(119.5))
			same, err2 := tr.Reaches(OpenLimit, quantity.FromCelsius(119.5))
			if err != nil || err2 != nil {
				t.Fatal(err, err2)
			}
			t.Logf("  %2.0f %%: %.1f °C at its own limit, %.1f °C at %g", rh.Percent(), own.Celsius(), same.Celsius(), OpenLimit)
		}
	}
	if m := opinions[0].Bounds.Middle(); math.Abs(m-OpenLimit) > 0.1 {
		t.Errorf("the middle of Pulp's bounds is %.3g, the limit %g", m, OpenLimit)
	}
}

// What the bounds rest on: the clean one on no fibre share, the other heavily.
func TestOpenLimitRestsOnTheFibreShare(t *testing.T) {
	for _, x := range []struct{ share, blisters float64 }{
		{0.70, 10.107}, {0.78, 6.246}, {0.82, 5.298}, {0.90, 4.129}, // by another program
	} {
		opinions, err := Opinions(quantity.Fraction(x.share))
		if err != nil {
			t.Fatal(err)
		}
		b := opinions[0].Bounds
		if math.Abs(b.Clean-3.8958) > 1e-4 || math.Abs(b.Blisters-x.blisters) > 1e-3 {
			t.Errorf("share %g: %+v", x.share, b)
		}
		t.Logf("fibre share %.2f: %.2f to %.2f", x.share, b.Clean, b.Blisters)
	}
}

// The sealed limit lies between its two observations for gelatine and PVA; for the spreads of the
// layers the bounds are logged.
func TestSealedLimitLiesInItsBounds(t *testing.T) {
	for _, r := range []Receiver{Gelatine, PVA, Silica} {
		for n, g := range []GAB{r.Isotherm, r.Low, r.High} {
			clean, blisters, err := SealedEvidence(g)
			if err != nil {
				t.Fatal(err)
			}
			b, err := Calibrate(clean, blisters)
			if err != nil {
				t.Fatal(err)
			}
			t.Logf("%s (%s): clean at %.2f, blisters at %.2f", g.Name, []string{"middle", "low", "high"}[n], b.Clean, b.Blisters)
			if n == 0 && !(b.Clean < SealedLimit && SealedLimit < b.Blisters) {
				t.Errorf("%s: %g is outside %+v", g.Name, SealedLimit, b)
			}
		}
	}
	if SealedLimit >= OpenLimit {
		t.Error("a sealed back is no lower than an open one")
	}
}

// The two observations come back as temperatures: the clean sheet stays below the limit at 95 °C,
// the damp one is above it at 100 °C.
func TestCalibrationComesBack(t *testing.T) {
	clean, blisters, err := OpenEvidence(Pulp, UsualFibreShare)
	if err != nil {
		t.Fatal(err)
	}
	low, err := clean.Trap.Reaches(OpenLimit, quantity.FromCelsius(140))
	high, err2 := blisters.Trap.Reaches(OpenLimit, quantity.FromCelsius(140))
	if err != nil || err2 != nil || !(low > clean.BondLine) || !(high < blisters.BondLine) {
		t.Errorf("clean to %.1f °C (%v), damp to %.1f °C (%v)", low.Celsius(), err, high.Celsius(), err2)
	}
	t.Logf("conditioned at 50 %%: %.1f °C; of 7 %% moisture: %.1f °C", low.Celsius(), high.Celsius())
}

// Boiling makes an upper bound of +Inf, not an error; other errors stay.
func TestCalibrateTakesBoiling(t *testing.T) {
	clean, blisters, err := OpenEvidence(Pulp, UsualFibreShare)
	if err != nil {
		t.Fatal(err)
	}
	blisters.Trap.Moisture = 1
	blisters.BondLine = quantity.FromCelsius(105)
	b, err := Calibrate(clean, blisters)
	if err != nil || !math.IsInf(b.Blisters, 1) || !math.IsInf(b.Middle(), 1) {
		t.Errorf("%+v (%v)", b, err)
	}
	if _, err := Calibrate(blisters, clean); !errors.Is(err, ErrBoils) {
		t.Errorf("boiling and clean: %v", err)
	}
	if _, _, err := OpenEvidence(Pulp, 1.5); err == nil {
		t.Error("a fibre share of 150 %: no error")
	}
}

// How far the branch of the hysteresis moves the limit of a sheet of known humidity, and of one
// of known moisture: the figures of OnBranch's comment.
func TestBranchMovesTheLimit(t *testing.T) {
	at := func(b Branch, known func(*Trap)) float64 {
		i, err := OnBranch(Pulp, b, UsualGap)
		if err != nil {
			t.Fatal(err)
		}
		tr := conditioned(t, i, 0.5)
		known(&tr)
		got, err := tr.Reaches(OpenLimit, quantity.FromCelsius(140))
		if err != nil {
			t.Fatal(err)
		}
		return got.Celsius()
	}
	humidity, same := func(*Trap) {}, func(tr *Trap) { tr.Moisture = 0.09545 }
	for _, x := range []struct {
		what     string
		known    func(*Trap)
		wet, dry float64 // K from the mean
	}{
		{"humidity", humidity, 0.65, -0.71},
		{"moisture", same, -0.75, 0.97},
	} {
		mean := at(Mean, x.known)
		wet, dry := at(Wetting, x.known)-mean, at(Drying, x.known)-mean
		t.Logf("%s known: mean %.2f °C, wetting %+.2f K, drying %+.2f K", x.what, mean, wet, dry)
		if math.Abs(wet-x.wet) > 0.02 || math.Abs(dry-x.dry) > 0.02 {
			t.Errorf("%s known: wetting %+.3f K, drying %+.3f K; written down: %+g, %+g", x.what, wet, dry, x.wet, x.dry)
		}
	}
}
