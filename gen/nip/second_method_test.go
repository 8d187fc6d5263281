package nip_test

import (
	"math"
	"testing"

	"laydown/gen/nip"
	"laydown/gen/nip/niptest"
)

// agreement is what the solver and the second method may differ by, in K, at the
// nip's end and at the bond line's highest.
const agreement = 0.1

func TestAgreesWithSecondMethod(t *testing.T) {
	s, out := nip.NewSolver(), new(nip.Response)
	largest := 0.0
	for _, x := range nip.Realistic {
		if err := s.Run(x.Pass, out); err != nil {
			t.Fatalf("%s: %v", x.Name, err)
		}
		ref := niptest.New(x.Pass, &x.Temps, 2e-6, 160)
		for _, c := range []struct {
			name string
			*nip.Case
		}{{"first piece", &out.First}, {"steady run", &out.Steady}} {
			turns := 1
			if c.name == "steady run" {
				turns += ref.Settle()
			}
			ref.Turn(true)
			end := len(ref.Times) - 1
			ref.After()
			rec := c.Records[c.NipEnd]
			most := ref.Bond[0]
			for _, v := range ref.Bond {
				most = math.Max(most, v)
			}
			got, _ := c.BondLineMax(x.Temps)
			for _, y := range []struct {
				place     string
				got, want float64
			}{
				{"film face", float64(rec[nip.FilmFace].At(x.Temps)), ref.FilmFace[end]},
				{"adhesive", float64(rec[nip.AdhesiveFace].At(x.Temps)), ref.Adhesive[end]},
				{"bond line", float64(rec[nip.BondLine].At(x.Temps)), ref.Bond[end]},
				{"bond line at its highest", float64(got), most},
			} {
				off := y.got - y.want
				largest = math.Max(largest, math.Abs(off))
				if !(math.Abs(off) <= agreement) {
					t.Errorf("%s, %s: %s %.3f °C, by the second method %.3f: %+.3f K", x.Name, c.name, y.place, y.got-273.15, y.want-273.15, off)
				}
			}
			// The free run: from a third of a second after the nip on.
			later := 0.0
			for i := c.NipEnd; i < len(c.Times); i++ {
				if at := float64(c.Times[i]); at > float64(c.Times[c.NipEnd])+0.3 {
					later = math.Max(later, math.Abs(float64(c.Records[i][nip.BondLine].At(x.Temps))-ref.At(ref.Bond, at)))
				}
			}
			if !(later <= agreement) {
				t.Errorf("%s, %s: in the free run the bond line is %.3f K off", x.Name, c.name, later)
			}
			t.Logf("%-24s %-11s bond line at the nip's end %.2f °C (%+.3f K), free run within %.3f K, %d cells, %d turns", x.Name, c.name,
				ref.Bond[end]-273.15, float64(rec[nip.BondLine].At(x.Temps))-ref.Bond[end], later, len(out.Cells), turns)
		}
	}
	t.Logf("largest difference %.3f K", largest)
}
