package drying

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Ply is one layer of what was laid over a face of a print: the base of a film,
// its adhesive, a panel.
type Ply struct {
	Thickness quantity.Length
	// Diffusivity of the carrier in it; 0 lets nothing through.
	Diffusivity quantity.Diffusivity
	// Partition is the concentration in the ply over that in the print's layer
	// when nothing moves between them; 0 lets nothing in.
	Partition float64
}

// Resistance is what the ply puts in the carrier's way on the concentration in
// the print's layer, ℓ/(K·D): a steady flux q through it needs a difference of
// q·ℓ/(K·D). It is +Inf for a ply that lets nothing through.
func (p Ply) Resistance() quantity.Resistance {
	return quantity.Resistance(float64(p.Thickness) / (p.Partition * float64(p.Diffusivity)))
}

// Lag is the time that the ply itself takes to fill, ℓ²/(6D): by so much what
// leaves it trails behind a ply that is steady from the start.
func (p Ply) Lag() quantity.Time {
	l := float64(p.Thickness)
	return quantity.Time(l * l / (6 * float64(p.Diffusivity)))
}

// Covered is the same setting after plies were laid over its face and its back.
// The resistances of the plies and of the air outside are in series:
//
//	1/k′ = 1/k + Σ ℓ/(K·D)
//
// No plies leave a face as it was; one that lets nothing through closes it. The
// plies hold no carrier of their own: see the package comment for what that
// leaves out. The room's floor stays, because at rest the carrier has come to the
// same activity everywhere.
func (s Setting) Covered(face, back []Ply) (Setting, error) {
	var err error
	if s.Face, err = cover(s.Face, face); err != nil {
		return Setting{}, fmt.Errorf("on the face: %w", err)
	}
	if s.Back, err = cover(s.Back, back); err != nil {
		return Setting{}, fmt.Errorf("on the back: %w", err)
	}
	return s, nil
}

func cover(k quantity.Speed, plies []Ply) (quantity.Speed, error) {
	if !notNegative(float64(k)) {
		return 0, fmt.Errorf("a transfer coefficient of %g m/s: it must be 0 or more", float64(k))
	}
	if len(plies) == 0 || k == 0 {
		return k, nil
	}
	sum := 1 / float64(k)
	for _, p := range plies {
		if !positive(float64(p.Thickness)) || !notNegative(float64(p.Diffusivity)) || !notNegative(p.Partition) {
			return 0, fmt.Errorf("a ply %g m thick, diffusivity %g m²/s, partition %g: the first must be above 0, the others 0 or more",
				float64(p.Thickness), float64(p.Diffusivity), p.Partition)
		}
		sum += float64(p.Resistance())
	}
	if math.IsInf(sum, 1) {
		return 0, nil
	}
	return quantity.Speed(1 / sum), nil
}

// Clearance is how the carrier that is left under a film goes: what is there at
// each of some times, and when it is down to a limit.
type Clearance struct {
	// Start is the amount at the time of lamination, Left that after each time.
	Start quantity.Grammage
	Left  []quantity.Grammage
	// Clear is the time until no more than the limit is left; +Inf where that is
	// not within the time looked at.
	Clear quantity.Time
}

// Clears follows a print from its lamination on in a covered setting: what is left
// after each of times, and when it is down to limit, looked for until most. A print
// that the room's own vapour holds above its limit never clears.
func (st State) Clears(covered Setting, limit quantity.Grammage, times []quantity.Time, most quantity.Time) (Clearance, error) {
	c := Clearance{Start: st.Amount(), Left: make([]quantity.Grammage, len(times))}
	next, err := st.enter(covered)
	if err != nil {
		return Clearance{}, err
	}
	for i, t := range times {
		if !notNegative(float64(t)) {
			return Clearance{}, fmt.Errorf("%g s after lamination: it must be 0 s or more", float64(t))
		}
		c.Left[i] = quantity.Grammage(next.amountAfter(covered.Fourier(t)))
	}
	c.Clear, err = st.Until(covered, limit, most)
	if errors.Is(err, ErrNever) {
		c.Clear, err = quantity.Time(math.Inf(1)), nil
	}
	return c, err
}
