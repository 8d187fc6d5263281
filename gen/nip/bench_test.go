package nip_test

import (
	"testing"

	"laydown/gen/nip"
	"laydown/gen/nip/niptest"
)

var benched = []struct {
	name  string
	pass  *nip.Pass
	temps nip.Temps
}{
	{"wide-hot", nip.WideHot(1), nip.Celsius(23, 110, 45)},
	{"encapsulator", nip.Encapsulator(1), nip.Celsius(23, 110, 45)},
	{"drum", nip.Drum(30), nip.Celsius(23, 110, 40)},
	{"cold", nip.Cold(1), nip.Celsius(23, 45, 23)},
}

// BenchmarkRun is one pass: every response, first piece and steady run.
func BenchmarkRun(b *testing.B) {
	for _, x := range benched {
		b.Run(x.name, func(b *testing.B) {
			s, out := nip.NewSolver(), new(nip.Response)
			b.ReportAllocs()
			for b.Loop() {
				if err := s.Run(x.pass, out); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkReference is the second method beside it, for one set of temperatures
// and the first piece only: a fine grid with many steps.
func BenchmarkReference(b *testing.B) {
	for _, x := range benched {
		b.Run(x.name, func(b *testing.B) {
			for b.Loop() {
				r := niptest.New(x.pass, &x.temps, 2.5e-6, 120)
				r.Turn(true)
				r.After()
			}
		})
	}
}
