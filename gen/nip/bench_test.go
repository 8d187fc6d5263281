package nip

import "testing"

var benched = []struct {
	name  string
	pass  *Pass
	temps Temps
}{
	{"wide-hot", wideHot(1), celsius(23, 110, 45)},
	{"encapsulator", encapsulator(1), celsius(23, 110, 45)},
	{"drum", drum(30), celsius(23, 110, 40)},
	{"cold", cold(1), celsius(23, 45, 23)},
}

// BenchmarkRun is one pass: every response, first piece and steady run.
func BenchmarkRun(b *testing.B) {
	for _, x := range benched {
		b.Run(x.name, func(b *testing.B) {
			s, out := NewSolver(), new(Response)
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
				r := newReference(x.pass, &x.temps, 2.5e-6, 120)
				r.turnOnce(true)
				r.after()
			}
		})
	}
}
