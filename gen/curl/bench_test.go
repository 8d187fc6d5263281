package curl

import "testing"

// BenchmarkCurl is one laminate in one room.
func BenchmarkCurl(b *testing.B) {
	l := joined(60, 0.05, fed(sheet, 30), eva, pp)
	s := now(l)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := l.Curl(s); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkLines is a hot film's three stages, both directions.
func BenchmarkLines(b *testing.B) {
	l, s := hot(0, pp, 40)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := l.Lines(0, s); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkSlices is the second method beside BenchmarkCurl.
func BenchmarkSlices(b *testing.B) {
	l := joined(60, 0.05, fed(sheet, 30), eva, pp)
	c, err := l.Curl(now(l))
	if err != nil {
		b.Fatal(err)
	}
	s := slices{c.Layers, c.Free, 24}
	for b.Loop() {
		for i := range 360 {
			s.best(float64(i))
		}
	}
}
