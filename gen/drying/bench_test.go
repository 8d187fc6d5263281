package drying

import (
	"testing"

	"laydown/gen/quantity"
)

// hung is an invented print on a line: a layer of 80 µm, Biot number about 30.
var hung = Setting{Thickness: 80e-6, Diffusivity: 5e-14, Face: 2e-8, Back: 1e-10}

func BenchmarkModes(b *testing.B) {
	for b.Loop() {
		if _, err := NewModes(31.4, 0.16, HistoryModes); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkUntil(b *testing.B) {
	for b.Loop() {
		if _, err := Fresh(0.008).Until(hung, 0.001, 1e9); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSolveDiffusivity(b *testing.B) {
	for b.Loop() {
		if _, err := SolveDiffusivity(0.008, 0.001, 24*3600, hung); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkHistory is 6 h hung, 14 h on a tight roll, then hung until dry.
func BenchmarkHistory(b *testing.B) {
	roll := hung
	roll.Face, roll.Back = 1e-11, 1e-11
	for b.Loop() {
		st := Fresh(0.008)
		for _, p := range []struct {
			s Setting
			t quantity.Time
		}{{hung, 6 * 3600}, {roll, 14 * 3600}} {
			var err error
			if st, err = st.March(p.s, p.t); err != nil {
				b.Fatal(err)
			}
		}
		if _, err := st.Until(hung, 0.001, 1e9); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkClears is a print laminated half way through its wait, followed for
// 30 days.
func BenchmarkClears(b *testing.B) {
	st, err := Fresh(0.008).March(hung, 12*3600)
	if err != nil {
		b.Fatal(err)
	}
	covered, err := hung.Covered([]Ply{{75e-6, 5e-14, 1}}, nil)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, err := st.Clears(covered, 0.001, days, 1e9); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkReaction is the wait of an oxidising film after a history of two parts.
func BenchmarkReaction(b *testing.B) {
	r, err := SolveFirstOrder(1, 0.15, 24*3600)
	if err != nil {
		b.Fatal(err)
	}
	cold := r.Times(Arrhenius(70e3, 296, 286))
	for b.Loop() {
		left := Unreacted([]ReactionPart{{cold, 8 * 3600}, {r, 4 * 3600}})
		if _, err := cold.Wait(1.5, left, 0.15); err != nil {
			b.Fatal(err)
		}
	}
}
