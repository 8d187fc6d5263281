package cooling

import "testing"

// BenchmarkCool is one laminate through a free run, a chill roller and a rest.
func BenchmarkCool(b *testing.B) {
	layers, stages := laminate(), chilled()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Cool(layers, stages); err != nil {
			b.Fatal(err)
		}
	}
}
