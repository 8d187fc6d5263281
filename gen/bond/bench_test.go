package bond

import "testing"

func BenchmarkWetOut(b *testing.B) {
	c := hotCase(10e-6, 100e-6)
	for b.Loop() {
		if _, err := c.WetOut(); err != nil {
			b.Fatal(err)
		}
	}
}
