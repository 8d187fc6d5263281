package drying

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// agreement is what the series and the finite volumes may differ by, in shares of
// the initial amount. What they do differ by is logged.
const agreement = 1e-3

func TestLeftAgreesWithFiniteVolumes(t *testing.T) {
	biots := []float64{1e-4, 1e-2, 1, 1e2, 1e4}
	times := []float64{1e-4, 1e-3, 0.009, 0.011, 0.05, 0.2, 1, 10, 1000}
	worst, tested := 0.0, 0
	for _, face := range biots {
		for _, back := range biots {
			m, err := NewModes(face, back, LeftModes)
			if err != nil {
				t.Fatal(err)
			}
			s, at := newSlab(1), 0.0
			for _, fo := range times {
				s.march(face, back, 0, fo-at)
				at = fo
				off := math.Abs(m.Left(fo) - s.amount())
				worst = math.Max(worst, off)
				tested++
				if !(off <= agreement) {
					t.Errorf("face %g, back %g, Fo %g: series %.6f, finite volumes %.6f", face, back, fo, m.Left(fo), s.amount())
				}
			}
		}
	}
	t.Logf("%d cases, largest difference %.2g of the initial amount", tested, worst)
}

// part is a part of a history for a layer of thickness 1 and diffusivity 1 where
// not said otherwise.
type part struct {
	face, back, floor, fo float64
}

var histories = []struct {
	name  string
	parts []part
}{
	{"hung, tight roll, fan", []part{{20, 0.1, 0, 0.05}, {0.01, 0.01, 0, 0.2}, {200, 0, 0, 0.03}}},
	{"fan, sealed, open back", []part{{1e4, 1, 0, 0.01}, {0, 0, 0, 0.05}, {1, 1e4, 0, 0.04}}},
	{"short parts at large Biot numbers", []part{{1e4, 1e4, 0, 0.003}, {0, 0, 0, 0.01}, {1e4, 1, 0, 0.003}}},
	{"laminated: face closed, back open", []part{{50, 0, 0, 0.3}, {0.02, 0.5, 0, 2}, {0.02, 5, 0, 0.5}}},
	{"the room's vapour changes", []part{{30, 2, 0.02, 0.1}, {30, 2, 0.3, 0.4}, {5, 0, 0.05, 0.2}}},
	{"small Biot numbers", []part{{1e-4, 1e-3, 0, 100}, {1e-2, 0, 0, 20}, {1, 1e-4, 0, 0.3}}},
}

func TestHistoryAgreesWithFiniteVolumes(t *testing.T) {
	worst := 0.0
	for _, h := range histories {
		s, st := newSlab(1), Fresh(1)
		for i, p := range h.parts {
			s.march(p.face, p.back, p.floor, p.fo)
			// The diffusivity differs from part to part: the state must ask
			// only for Biot and Fourier numbers.
			d := []float64{1, 0.25, 3}[i]
			var err error
			st, err = st.March(Setting{
				Thickness: 1, Diffusivity: quantity.Diffusivity(d),
				Face: quantity.Speed(p.face * d), Back: quantity.Speed(p.back * d),
				Floor: quantity.Grammage(p.floor),
			}, quantity.Time(p.fo/d))
			if err != nil {
				t.Fatal(err)
			}
			off := math.Abs(float64(st.Amount()) - s.amount())
			worst = math.Max(worst, off)
			if !(off <= agreement) {
				t.Errorf("%s, part %d: modes %.6f, finite volumes %.6f", h.name, i+1, float64(st.Amount()), s.amount())
			}
		}
		// The profile, away from the faces' own ripples.
		at := 0.0
		for i, w := range s.width {
			x := at + w/2
			at += w
			if x < 0.05 || x > 0.95 {
				continue
			}
			if u := st.Profile([]float64{x})[0]; !(math.Abs(u-s.u[i]) <= 5e-3) {
				t.Errorf("%s, content at %.3f: modes %.5f, finite volumes %.5f", h.name, x, u, s.u[i])
			}
		}
	}
	t.Logf("%d histories, largest difference %.2g of the initial amount", len(histories), worst)
}
