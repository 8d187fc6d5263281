package stack

import (
	"testing"

	"laydown/gen/quantity"
)

// BenchmarkStack is one stack: its diffusivities, its border after three times, and the
// time to even out, each with its band.
func BenchmarkStack(b *testing.B) {
	s := uncoated()
	b.ReportAllocs()
	for b.Loop() {
		m, err := NewMoisture(ream, s, drying)
		if err != nil {
			b.Fatal(err)
		}
		for _, h := range []quantity.Time{1, 24, 168} {
			if _, err := m.Border(0.5, h*quantity.Hour); err != nil {
				b.Fatal(err)
			}
		}
		if _, err := m.Even(0.9); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkParcel is one wrapped parcel.
func BenchmarkParcel(b *testing.B) {
	p := pallet()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := p.Within(276.15, hall, 2); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkPass is one sheet at one share.
func BenchmarkPass(b *testing.B) {
	f := edged(301)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.Pass(); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkFiniteVolumes is the second method beside two directions of BenchmarkStack.
func BenchmarkFiniteVolumes(b *testing.B) {
	for b.Loop() {
		k := bar(b)
		g := newGrid(&k, 40, 1e-6, 2e-5)
		for range 100 {
			g.march(2)
		}
	}
}
