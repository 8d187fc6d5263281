package drying

import (
	"fmt"
	"math"
)

// HistoryModes is the number of modes that a State carries.
const HistoryModes = 32

// LeftModes is the number of modes from which Modes.Left is exact to 1e-12.
const LeftModes = 20

// mostModes bounds what NewModes is asked for.
const mostModes = 1 << 16

// Modes are the eigenfunctions X_n(x) = cos(β_n·x − φ_n) of a layer with Biot
// numbers of its own at its face (x = 1) and its back (x = 0).
type Modes struct {
	Face, Back float64   // the Biot numbers
	Beta       []float64 // β_n, rising
	Phi        []float64 // φ_n = atan(Back/β_n)
	Norm       []float64 // ∫X_n² over the layer
	Mean       []float64 // ∫X_n over the layer
}

// NewModes finds the first n modes for the Biot numbers of face and back, each
// from 0 (sealed) to +Inf (held at the room's floor).
func NewModes(face, back float64, n int) (*Modes, error) {
	if !(face >= 0) || !(back >= 0) {
		return nil, fmt.Errorf("Biot numbers %g (face) and %g (back): each must be 0 or more", face, back)
	}
	if n < 1 || n > mostModes {
		return nil, fmt.Errorf("%d modes asked for: 1 to %d can be had", n, mostModes)
	}
	m := &Modes{
		Face: face, Back: back,
		Beta: make([]float64, n), Phi: make([]float64, n),
		Norm: make([]float64, n), Mean: make([]float64, n),
	}
	for i := range n {
		b := eigenvalue(face, back, i)
		m.Beta[i] = b
		if b == 0 { // sealed all round: the content itself, which stays
			m.Norm[i], m.Mean[i] = 1, 1
			continue
		}
		m.Phi[i] = phase(back, b)
		m.Norm[i] = (1 + slope(face, b) + slope(back, b)) / 2
		sign := 1.0
		if i%2 == 1 {
			sign = -1
		}
		m.Mean[i] = (sign*sine(face, b) + sine(back, b)) / b
	}
	return m, nil
}

// eigenvalue solves β − atan(face/β) − atan(back/β) = nπ for β in [nπ, (n+1)π].
//
// The left side rises and is concave, so Newton's steps from below the root
// climb to it; a step that would leave the bracket is replaced by a bisection.
// The result is good to a few units in the last place.
func eigenvalue(face, back float64, n int) float64 {
	target := float64(n) * math.Pi
	lo, hi := target, target+math.Pi
	b := lo
	if n == 0 {
		total := face + back
		if total == 0 {
			return 0
		}
		// The root lies near √total for a small total and below π for a large one.
		b = math.Sqrt(total)
		if total > 1e-8 {
			b = math.Sqrt(1 / (1 + 1/total))
		}
	}
	for range 200 {
		f := b - phase(face, b) - phase(back, b) - target
		if f == 0 {
			break
		}
		if f < 0 {
			lo = math.Max(lo, b)
		} else {
			hi = math.Min(hi, b)
		}
		next := b - f/(1+slope(face, b)+slope(back, b))
		if !(next >= lo && next <= hi) {
			next = lo + (hi-lo)/2
		}
		if math.Abs(next-b) <= 4e-16*next {
			b = next
			break
		}
		b = next
	}
	return b
}

// phase is atan(biot/β), the phase that a face adds.
func phase(biot, beta float64) float64 {
	if biot == 0 {
		return 0
	}
	return math.Atan(biot / beta)
}

// slope is −d phase/dβ = biot/(β² + biot²), without overflow.
func slope(biot, beta float64) float64 {
	if biot == 0 || math.IsInf(biot, 1) {
		return 0
	}
	r := math.Hypot(beta, biot)
	return biot / r / r
}

// sine is sin(phase) = biot/√(β² + biot²).
func sine(biot, beta float64) float64 {
	if math.IsInf(biot, 1) {
		return 1
	}
	return biot / math.Hypot(beta, biot)
}

// At is X_n(x).
func (m *Modes) At(n int, x float64) float64 {
	return math.Cos(m.Beta[n]*x - m.Phi[n])
}

// wave is ∫cos(k·x − p)dx over [0, 1] = cos(k/2 − p)·sin(k/2)/(k/2).
func wave(k, p float64) float64 {
	half := k / 2
	sinc := 1.0
	if math.Abs(half) > 1e-8 {
		sinc = math.Sin(half) / half
	}
	return math.Cos(half-p) * sinc
}

// overlap is ∫cos(a·x − p)·cos(b·x − q)dx over [0, 1].
func overlap(a, p, b, q float64) float64 {
	return (wave(a-b, p-q) + wave(a+b, p+q)) / 2
}

// same says whether m holds n modes of these Biot numbers.
func (m *Modes) same(face, back float64, n int) bool {
	return m != nil && m.Face == face && m.Back == back && len(m.Beta) == n
}
