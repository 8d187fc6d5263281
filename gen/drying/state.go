package drying

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// State is how much carrier a print holds and how it lies in the layer:
//
//	u(x) = level + Σ amplitude_n·X_n(x),   n < HistoryModes
//
// and a rest: the amount in the modes that are not carried. The zero State is a
// print without carrier. A State is a value: March gives a new one.
type State struct {
	fresh     float64 // load at the start, kg/m²
	level     float64 // uniform part, kg/m²: the floor of the last setting
	modes     *Modes  // of the last setting; nil while the content is uniform
	amplitude []float64
	rest      float64         // amount beyond the modes, kg/m²
	thickness quantity.Length // of the layer, once marched
}

// Fresh is a print as it leaves the printer: the load lies evenly in the layer.
func Fresh(load quantity.Grammage) State {
	return State{fresh: float64(load), level: float64(load)}
}

// Amount is what the layer holds.
func (st State) Amount() quantity.Grammage {
	sum := st.level + st.rest
	for n, a := range st.amplitude {
		sum += a * st.modes.Mean[n]
	}
	return quantity.Grammage(sum)
}

// March gives the state after time t in setting s.
//
// While the Biot numbers stay the same the modes only decay, so settings that
// differ in their rate alone may be swapped. When they change, the content is
// projected on the new modes. What HistoryModes modes cannot hold of the amount
// (nothing to 1.3 % of it: most for an even content between faces of large Biot
// number) is kept as a rest that decays as the last mode does, and is spread
// evenly at the next change. So no change of setting creates or loses an amount,
// and a sealed pause changes none. For an even content the error is on the wet
// side, below 0.6 % of it (largest near Fo = 3e-5 after the change) and below 1e-4
// from Fo = 0.002 on.
func (st State) March(s Setting, t quantity.Time) (State, error) {
	if !notNegative(float64(t)) {
		return State{}, fmt.Errorf("a part of a history of %g s: it must last 0 s or more", float64(t))
	}
	next, err := st.enter(s)
	if err != nil {
		return State{}, err
	}
	fo := s.Fourier(t)
	for n, b := range next.modes.Beta {
		next.amplitude[n] *= math.Exp(-b * b * fo)
	}
	next.rest *= math.Exp(-next.restDecay() * fo)
	return next, nil
}

// enter gives the same content in the modes of s, with its amplitudes free to change.
func (st State) enter(s Setting) (State, error) {
	if err := s.check(); err != nil {
		return State{}, err
	}
	if !notNegative(st.fresh) {
		return State{}, fmt.Errorf("a load of %s: it must be 0 or more", grams(quantity.Grammage(st.fresh)))
	}
	if st.thickness != 0 && st.thickness != s.Thickness {
		return State{}, fmt.Errorf("the layer was %g m thick and is now %g m: a history holds for one layer",
			float64(st.thickness), float64(s.Thickness))
	}
	next := State{
		fresh: st.fresh, level: float64(s.Floor), thickness: s.Thickness,
		amplitude: make([]float64, HistoryModes),
	}
	even := st.level - next.level // joins the modes as an even content
	if st.modes.same(s.BiotFace(), s.BiotBack(), HistoryModes) {
		next.modes = st.modes
		copy(next.amplitude, st.amplitude)
	} else {
		modes, err := NewModes(s.BiotFace(), s.BiotBack(), HistoryModes)
		if err != nil {
			return State{}, err
		}
		next.modes = modes
		even += st.rest
		st.project(next.amplitude, modes)
	}
	if even != 0 {
		for n := range next.amplitude {
			next.amplitude[n] += even * next.modes.Mean[n] / next.modes.Norm[n]
		}
	}
	next.rest = float64(st.Amount() - next.Amount())
	return next, nil
}

// project writes the amplitudes of st's modes in the modes of another setting.
func (st State) project(to []float64, modes *Modes) {
	for n, a := range st.amplitude {
		if a == 0 {
			continue
		}
		for k := range to {
			to[k] += a * overlap(st.modes.Beta[n], st.modes.Phi[n], modes.Beta[k], modes.Phi[k]) / modes.Norm[k]
		}
	}
}

// restDecay is how fast the rest falls per Fourier number: as the last mode does,
// which is slower than any mode that the rest stands for.
func (st State) restDecay() float64 {
	last := st.modes.Beta[HistoryModes-1]
	return last * last
}

// Profile is the content at each of xs, from 0 (back) to 1 (face), as a share of
// the even content at the start. Within Fo = 0.002 of a change the finite number
// of modes shows near the faces as ripples.
func (st State) Profile(xs []float64) []float64 {
	us := make([]float64, len(xs))
	if st.fresh == 0 {
		return us
	}
	for i, x := range xs {
		u := st.level
		for n, a := range st.amplitude {
			u += a * st.modes.At(n, x)
		}
		us[i] = u / st.fresh
	}
	return us
}
