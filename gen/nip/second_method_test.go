package nip

import (
	"math"
	"testing"
)

// realistic are passes of usual materials on usual machines.
var realistic = []struct {
	name  string
	pass  *Pass
	temps Temps
}{
	{"wide hot, 0.5 m/min", wideHot(0.5), celsius(23, 110, 45)},
	{"wide hot, 1 m/min", wideHot(1), celsius(23, 110, 45)},
	{"wide hot, 2 m/min", wideHot(2), celsius(23, 110, 45)},
	{"wide hot, 5 m/min", wideHot(5), celsius(23, 110, 45)},
	{"encapsulator, 0.5 m/min", encapsulator(0.5), celsius(23, 110, 45)},
	{"encapsulator, 1 m/min", encapsulator(1), celsius(23, 110, 45)},
	{"encapsulator, 3 m/min", encapsulator(3), celsius(23, 110, 45)},
	{"drum, 10 m/min", drum(10), celsius(23, 110, 40)},
	{"drum, 20 m/min", drum(20), celsius(23, 110, 40)},
	{"drum, 30 m/min", drum(30), celsius(23, 110, 40)},
	{"drum, 50 m/min", drum(50), celsius(23, 110, 40)},
	{"cold, 1 m/min", cold(1), celsius(23, 45, 23)},
	{"cold, 4 m/min", cold(4), celsius(23, 45, 23)},
	{"shoe, 1 m/min", shoe(1), celsius(23, 120, 30)},
	{"shoe, 3 m/min", shoe(3), celsius(23, 120, 30)},
}

// agreement is what the solver and the second method may differ by, in K, at the
// nip's end and at the bond line's highest.
const agreement = 0.1

func TestAgreesWithSecondMethod(t *testing.T) {
	s, out := NewSolver(), new(Response)
	largest := 0.0
	for _, x := range realistic {
		if err := s.Run(x.pass, out); err != nil {
			t.Fatalf("%s: %v", x.name, err)
		}
		ref := newReference(x.pass, &x.temps, 2e-6, 160)
		for _, c := range []struct {
			name string
			*Case
		}{{"first piece", &out.First}, {"steady run", &out.Steady}} {
			turns := 1
			if c.name == "steady run" {
				turns += ref.settle()
			}
			ref.turnOnce(true)
			end := len(ref.times) - 1
			ref.after()
			rec := c.Records[c.NipEnd]
			most := ref.bond[0]
			for _, v := range ref.bond {
				most = math.Max(most, v)
			}
			got, _ := c.BondLineMax(x.temps)
			for _, y := range []struct {
				place     string
				got, want float64
			}{
				{"film face", rec[FilmFace].at(&x.temps), ref.filmFace[end]},
				{"adhesive", rec[AdhesiveFace].at(&x.temps), ref.adhesive[end]},
				{"bond line", rec[BondLine].at(&x.temps), ref.bond[end]},
				{"bond line at its highest", float64(got), most},
			} {
				off := y.got - y.want
				largest = math.Max(largest, math.Abs(off))
				if !(math.Abs(off) <= agreement) {
					t.Errorf("%s, %s: %s %.3f °C, by the second method %.3f: %+.3f K", x.name, c.name, y.place, y.got-273.15, y.want-273.15, off)
				}
			}
			// The free run: from a third of a second after the nip on.
			later := 0.0
			for i := c.NipEnd; i < len(c.Times); i++ {
				if at := float64(c.Times[i]); at > float64(c.Times[c.NipEnd])+0.3 {
					later = math.Max(later, math.Abs(c.Records[i][BondLine].at(&x.temps)-ref.at(ref.bond, at)))
				}
			}
			if !(later <= agreement) {
				t.Errorf("%s, %s: in the free run the bond line is %.3f K off", x.name, c.name, later)
			}
			t.Logf("%-24s %-11s bond line at the nip's end %.2f °C (%+.3f K), free run within %.3f K, %d cells, %d turns", x.name, c.name,
				ref.bond[end]-273.15, rec[BondLine].at(&x.temps)-ref.bond[end], later, len(out.Cells), turns)
		}
	}
	t.Logf("largest difference %.3f K", largest)
}
