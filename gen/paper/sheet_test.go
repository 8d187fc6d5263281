package paper

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

var room = quantity.FromCelsius(23)

// A sheet's water is that of its parts, worked out by hand: pulp holds 0.095453 at 50 % and
// 23 °C, so 150 g/m² with 80 % fibre hold 11.454 g/m².
func TestSheetAddsItsParts(t *testing.T) {
	s := coated()
	want := 0.15 * 0.8 * moisture(t, Pulp, 0.5)
	if math.Abs(want-0.011454) > 2e-6 {
		t.Errorf("the base holds %g g/m²", want*1e3)
	}
	want += 0.012*moisture(t, Gelatine.Isotherm, 0.5) + 0.02*moisture(t, Silica.Isotherm, 0.5)
	got, err := s.Water(0.5, room)
	if err != nil || math.Abs(float64(got)-want) > 1e-15 {
		t.Errorf("%g (%v), the parts hold %g", float64(got), err, want)
	}
	m, err := s.Moisture(0.5, room)
	if err != nil || math.Abs(float64(m)-want/0.182) > 1e-15 {
		t.Errorf("moisture %g (%v), want %g", float64(m), err, want/0.182)
	}
	face, err := s.Face().Water(0.5, room)
	if err != nil || math.Abs(float64(face)-(want-0.15*0.8*moisture(t, Pulp, 0.5))) > 1e-15 {
		t.Errorf("above the seal %g (%v)", float64(face), err)
	}
}

func moisture(t *testing.T, i Isotherm, a quantity.Fraction) float64 {
	t.Helper()
	m, err := i.Moisture(a, room)
	if err != nil {
		t.Fatal(err)
	}
	return float64(m)
}

// The share of fibre scales the water and leaves the activity of a conditioned sheet alone.
func TestFibreShareScales(t *testing.T) {
	for _, share := range []quantity.Fraction{0.1, 0.57, 1} {
		for _, fibre := range []Isotherm{nil, Pulp, Wood{}, PaltakariKarlsson{}} {
			s := Sheet{Fibre: fibre, FibreShare: share}
			m, err := s.Moisture(0.6, room)
			if err != nil || math.Abs(float64(m)-float64(share)*moisture(t, s.fibre(), 0.6)) > 1e-15 {
				t.Errorf("share %g: moisture %g (%v)", float64(share), float64(m), err)
			}
			if a, err := Activity(s, m, room); err != nil || math.Abs(float64(a)-0.6) > 1e-12 {
				t.Errorf("share %g: activity %g (%v)", float64(share), float64(a), err)
			}
		}
	}
}

// Plastic holds no water, and is dry in any air.
func TestPlasticIsDry(t *testing.T) {
	s := Sheet{Base: 0.1}
	m, err := s.Moisture(0.9, room)
	a, err2 := Activity(s, 0, room)
	if err != nil || err2 != nil || m != 0 || a != 0 {
		t.Errorf("moisture %g (%v), activity %g (%v)", float64(m), err, float64(a), err2)
	}
}

// The receiving layers hold what their comments say at 50 % relative humidity, in order, and
// the swellable ones keep rising.
func TestReceiversHoldWhatTheySay(t *testing.T) {
	for _, x := range []struct {
		name              string
		r                 Receiver
		low, middle, high float64 // %
	}{
		// From memory; the ranges are those of the comments.
		{"gelatine", Gelatine, 8, 13, 14},
		{"PVA", PVA, 4, 6.5, 9},
		{"silica", Silica, 2, 3, 5},
	} {
		for _, y := range []struct {
			g    GAB
			want float64
		}{{x.r.Low, x.low}, {x.r.Isotherm, x.middle}, {x.r.High, x.high}} {
			if got := 100 * moisture(t, y.g, 0.5); math.Abs(got-y.want) > 0.25 {
				t.Errorf("%s: %.2f %%, said to be %g %%", x.name, got, y.want)
			}
		}
		hot := quantity.FromCelsius(85)
		var a [3]quantity.Fraction
		for n, g := range []GAB{x.r.Low, x.r.Isotherm, x.r.High} {
			m, err := g.Moisture(0.4, room)
			if err != nil {
				t.Fatal(err)
			}
			if a[n], err = Activity(g, m, hot); err != nil {
				t.Fatal(err)
			}
		}
		if !(a[0] < a[1] && a[1] < a[2]) {
			t.Errorf("%s conditioned at 40 %%: activities at 85 °C from low to high are %v", x.name, a)
		}
	}
}

// On the branches: the gap at 50 % is what was asked for, bone-dry and saturated air part
// nothing, and the mean is left as it is.
func TestBranches(t *testing.T) {
	for _, mean := range []Isotherm{Pulp, Wood{}, PaltakariKarlsson{}} {
		wet, err := OnBranch(mean, Wetting, UsualGap)
		dry, err2 := OnBranch(mean, Drying, UsualGap)
		same, err3 := OnBranch(mean, Mean, UsualGap)
		if err != nil || err2 != nil || err3 != nil {
			t.Fatal(err, err2, err3)
		}
		if gap := moisture(t, dry, 0.5) - moisture(t, wet, 0.5); math.Abs(gap-UsualGap) > 1e-15 {
			t.Errorf("%T: the branches part by %g at 50 %%", mean, gap)
		}
		if same != mean {
			t.Errorf("%T: the mean branch is %v", mean, same)
		}
		for _, a := range []quantity.Fraction{0, 0.2, 0.8} {
			w, m, d := moisture(t, wet, a), moisture(t, mean, a), moisture(t, dry, a)
			if a == 0 && (w != m || d != m) || a > 0 && !(w < m && m < d) {
				t.Errorf("%T at %g: wetting %g, mean %g, drying %g", mean, float64(a), w, m, d)
			}
		}
	}
	if i, err := OnBranch(Sheet{}, Drying, UsualGap); err != nil || i == nil {
		t.Errorf("a sheet without water: %v, %v", i, err)
	}
}
