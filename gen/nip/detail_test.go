package nip

import (
	"slices"
	"testing"
)

// A detailed solver gives what a plain one gives, within the error that the
// package states, and many more records of it.
func TestDetailedSolverAgrees(t *testing.T) {
	for _, x := range []struct {
		name string
		pass *Pass
		t    Temps
	}{
		{"wide hot", wideHot(2), celsius(23, 110, 45)},
		{"encapsulator", encapsulator(1), celsius(23, 110, 45)},
		{"drum", drum(30), celsius(23, 110, 40)},
	} {
		plain, fine := new(Response), new(Response)
		if err := NewSolver().Run(x.pass, plain); err != nil {
			t.Fatal(err)
		}
		if err := NewDetailedSolver().Run(x.pass, fine); err != nil {
			t.Fatal(err)
		}
		for k, pair := range [][2]*Case{{&plain.First, &fine.First}, {&plain.Steady, &fine.Steady}} {
			p, f := pair[0], pair[1]
			if len(f.Times) != len(f.Records) || len(f.Times) < 4*len(p.Times) {
				t.Errorf("%s, case %d: %d records, the plain solver %d", x.name, k, len(f.Records), len(p.Records))
			}
			if !slices.IsSorted(f.Times) || f.Times[f.Touch] != 0 || f.Times[f.NipEnd] != p.Times[p.NipEnd] || f.Times[len(f.Times)-1] != p.Times[len(p.Times)-1] {
				t.Errorf("%s, case %d: times %v", x.name, k, f.Times)
			}
			for _, at := range [][2]int{{p.NipEnd, f.NipEnd}, {len(p.Records) - 1, len(f.Records) - 1}} {
				for _, place := range []Place{FilmFace, BondLine} {
					a, b := p.Records[at[0]][place].at(&x.t), f.Records[at[1]][place].at(&x.t)
					if d := a - b; d > 0.15 || d < -0.15 { // the package's 0.1 K, and what the fine one has of its own
						t.Errorf("%s, case %d, place %d: %.3f and %.3f K", x.name, k, place, a, b)
					}
				}
			}
		}
	}
}
