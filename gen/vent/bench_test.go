package vent

import "testing"

// BenchmarkBears is a day of batches and runs in a room, scaled to its bound.
func BenchmarkBears(b *testing.B) {
	room, load, bound := shop(), day(), bounds()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := bears(room, load, glycols, bound); err != nil {
			b.Fatal(err)
		}
	}
}
