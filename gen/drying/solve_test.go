package drying

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// The inverse undoes the forward problem wherever the amount depends on D.
func TestSolveDiffusivityUndoesLeft(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	solved := 0
	for range 200 {
		s := Setting{
			Thickness:   quantity.Length(1e-5 + 2e-4*r.Float64()),
			Diffusivity: quantity.Diffusivity(math.Pow(10, -16+6*r.Float64())),
			Face:        quantity.Speed(math.Pow(10, -10+5*r.Float64())),
			Back:        quantity.Speed(math.Pow(10, -13+5*r.Float64())),
			Floor:       quantity.Grammage(0.001 * r.Float64()),
		}
		m := mustModes(t, s.BiotFace(), s.BiotBack(), LeftModes)
		const load = 0.010
		wait := quantity.Time(math.Pow(10, 3+3*r.Float64()))
		left := m.Left(s.Fourier(wait))
		limit := s.Floor + quantity.Grammage(left)*(load-s.Floor)
		if left > 0.999 || left < 1e-6 || left < 1.001*s.MixedShare(wait) {
			continue // the amount says too little of D
		}
		solved++
		ask := s
		ask.Diffusivity = quantity.Diffusivity(math.NaN()) // it is ignored
		d, err := SolveDiffusivity(load, limit, wait, ask)
		if err != nil {
			t.Errorf("%+v, %g s: %v", s, float64(wait), err)
			continue
		}
		if !(math.Abs(float64(d/s.Diffusivity)-1) <= 1e-6) {
			t.Errorf("%+v, %g s: solved %g", s, float64(wait), float64(d))
		}
		s.Diffusivity = d
		m = mustModes(t, s.BiotFace(), s.BiotBack(), LeftModes)
		if got := m.Left(s.Fourier(wait)); !(math.Abs(got-left) <= 1e-10) {
			t.Errorf("%+v, %g s: left %.12g, asked %.12g", s, float64(wait), got, left)
		}
	}
	if solved < 50 {
		t.Errorf("only %d of 200 draws said anything of D", solved)
	}
}

// What the solver rests on: at a fixed time and fixed transfer the amount left
// falls with D, between the solver's two bounds.
func TestLeftFallsWithDiffusivity(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	for range 60 {
		s := Setting{Thickness: 1, Face: quantity.Speed(biot(r)), Back: quantity.Speed(biot(r))}
		wait := quantity.Time(math.Pow(10, 6*r.Float64()-3))
		before := 1.0
		for log := -30.0; log < 30; log += 0.5 {
			left, err := s.leftAt(log, wait)
			if err != nil {
				t.Fatal(err)
			}
			lowest := math.Max(1-4*math.Sqrt(math.Exp(log)*float64(wait)/math.Pi), s.MixedShare(wait))
			if !(left <= before+1e-11) || !(left >= lowest-1e-11) {
				t.Errorf("face %g, back %g, t %g, D %g: left %.13g, at less D %.13g, bound %.13g",
					float64(s.Face), float64(s.Back), float64(wait), math.Exp(log), left, before, lowest)
			}
			before = left
		}
	}
}

// Until and SolveDiffusivity are each other's inverse: an ink anchored on its
// maker's wait gets that wait back.
func TestAnchoredWaitComesBack(t *testing.T) {
	s := Setting{Thickness: 80e-6, Face: 2e-8, Back: 1e-10, Floor: 0.0001} // invented
	const load, limit = 0.008, 0.001
	const wait = quantity.Time(24 * 3600)
	d, err := SolveDiffusivity(load, limit, wait, s)
	if err != nil {
		t.Fatal(err)
	}
	s.Diffusivity = d
	got, err := Fresh(load).Until(s, limit, 1e9)
	if err != nil {
		t.Fatal(err)
	}
	if !(math.Abs(float64(got/wait)-1) <= 1e-9) {
		t.Errorf("a maker's wait of %g s came back as %g s", float64(wait), float64(got))
	}
}

func TestSolveDiffusivityErrors(t *testing.T) {
	s := Setting{Thickness: 80e-6, Face: 2e-8, Floor: 0.0001}
	sealed, full := s, s
	sealed.Face = 0
	full.Floor = 0.002
	for _, r := range []struct {
		name        string
		load, limit quantity.Grammage
		wait        quantity.Time
		s           Setting
		want        error
		says        string
	}{
		{"limit at the load", 0.008, 0.008, 3600, s, ErrAlreadyDry, "limit 8 g/m², load 8 g/m²"},
		{"limit above the load", 0.008, 0.009, 3600, s, ErrAlreadyDry, "limit 9 g/m², load 8 g/m²"},
		{"floor above the limit", 0.008, 0.001, 3600, full, ErrFloor, "2 g/m² against 1 g/m²"},
		// exp(−2e-8·3600/80e-6) = 0.407 of 7.9 g/m² above the floor, computed by hand: 3.312 g/m².
		{"surface too slow", 0.008, 0.001, 3600, s, ErrTooSlow, "after 1 h even a layer that is always mixed holds 3.312 g/m², the limit is 1 g/m²"},
		{"sealed", 0.008, 0.001, 3600, sealed, ErrTooSlow, "holds 8 g/m²"},
	} {
		d, err := SolveDiffusivity(r.load, r.limit, r.wait, r.s)
		if !errors.Is(err, r.want) || d != 0 || !strings.Contains(err.Error(), r.says) {
			t.Errorf("%s: %g, %v", r.name, float64(d), err)
		}
	}
	for _, r := range []struct {
		name        string
		load, limit quantity.Grammage
		wait        quantity.Time
		s           Setting
	}{
		{"no load", 0, 0.001, 3600, s},
		{"no wait", 0.008, 0.001, 0, s},
		{"negative limit", 0.008, -0.001, 3600, s},
		{"no thickness", 0.008, 0.001, 3600, Setting{Face: 1e-8}},
	} {
		_, err := SolveDiffusivity(r.load, r.limit, r.wait, r.s)
		if err == nil || errors.Is(err, ErrTooSlow) || errors.Is(err, ErrAlreadyDry) || errors.Is(err, ErrFloor) {
			t.Errorf("%s: %v", r.name, err)
		}
	}
}
