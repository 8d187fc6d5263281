package stack

import (
	"fmt"

	"laydown/gen/quantity"
)

// StillAir is the transfer coefficient of water vapour at the faces of a stack in the
// still air of a room: 2e-3 to 5e-3 m/s (from memory). A stack's own resistance is
// hundreds of times larger, so it hardly matters.
const StillAir quantity.Speed = 3e-3

// Pile is a stack's size and what of it is open to the room. Its ends and sides are.
type Pile struct {
	Length, Width, Height quantity.Length
	// Top and Bottom say that the face is open: an uncovered stack on a table has an
	// open top, one between boards neither.
	Top, Bottom bool
	// Transfer at the open faces, m/s on vapour; StillAir where nothing is known.
	Transfer quantity.Speed
}

// Moisture is a stack on its way from one humidity to another.
type Moisture struct {
	Diffusivities
	blocks [3]block // of the low, the best and the high diffusivity
}

// NewMoisture sets a stack of sheets into a room.
func NewMoisture(p Pile, s Sheets, c Change) (*Moisture, error) {
	d, err := s.Diffusivities(c)
	if err != nil {
		return nil, err
	}
	if !(p.Transfer > 0) {
		return nil, fmt.Errorf("a transfer of %g m/s at the stack's faces: it must be above 0", float64(p.Transfer))
	}
	m := &Moisture{Diffusivities: d}
	level := 0
	if p.Top {
		level++
	}
	if p.Bottom {
		level++
	}
	for i, along := range [...]quantity.Diffusivity{d.Along.Low, d.Along.Best, d.Along.High} {
		share := [...]quantity.Fraction{d.Gaps.Low, d.Gaps.Best, d.Gaps.High}[i]
		store := d.Store * (1 - float64(share)) // of the pile: its gaps hold nothing
		b := &m.blocks[i]
		if b[0], err = newDirection(float64(p.Length), 2, float64(along), float64(p.Transfer)/store); err != nil {
			return nil, fmt.Errorf("the stack's length: %w", err)
		}
		if b[1], err = newDirection(float64(p.Width), 2, float64(along), float64(p.Transfer)/store); err != nil {
			return nil, fmt.Errorf("the stack's width: %w", err)
		}
		// Across the sheets height counts as paper alone: the gaps neither hold nor hinder.
		tall := float64(p.Height) * (1 - float64(share))
		if b[2], err = newDirection(tall, level, float64(d.Through), float64(p.Transfer)/d.Store); err != nil {
			return nil, fmt.Errorf("the stack's height: %w", err)
		}
	}
	return m, nil
}

// bandOf asks each of the three blocks.
func bandOf[Q quantity.Quantity](m *Moisture, ask func(b *block) float64) Band[Q] {
	return Band[Q]{Q(ask(&m.blocks[0])), Q(ask(&m.blocks[1])), Q(ask(&m.blocks[2]))}
}

// Left is how much of the change is still to come at a place after a time: 1 at first,
// 0 in the end. x, y and z are counted along length, width and height from the middle
// (a sealed bottom or top: from there), in half sizes: 1 is at the open face.
func (m *Moisture) Left(x, y, z float64, t quantity.Time) (Band[quantity.Fraction], error) {
	for _, v := range [...]float64{x, y, z} {
		if !(v >= -1 && v <= 1) {
			return Band[quantity.Fraction]{}, fmt.Errorf("a place at %g half sizes from the middle: it must be from -1 to 1", v)
		}
	}
	return bandOf[quantity.Fraction](m, func(b *block) float64 { return b.at(x, y, z, float64(t)) }), nil
}

// Gone is how much of its whole change the stack has made after a time, on the mean.
func (m *Moisture) Gone(t quantity.Time) Band[quantity.Fraction] {
	return bandOf[quantity.Fraction](m, func(b *block) float64 { return 1 - b.whole(float64(t)) })
}

// Border is how deep the changed border reaches.
type Border struct {
	// Ends is its depth from the two ends of the stack's length, Sides that from the
	// two sides, both through the stack's middle.
	Ends, Sides Band[quantity.Length]
	// Through says that the middle has passed the share too (low, best, high).
	Through [3]bool
}

// Border gives the depth down to which the moisture has made a share of its change: of
// a dry border in a damp stack, or a damp one in a dry stack. A tenth is about what
// shows as a wavy or tight edge; a half is the middle of the border. (Both are only
// names for the choice: no source says at which share an edge shows.)
func (m *Moisture) Border(share quantity.Fraction, t quantity.Time) (Border, error) {
	var out Border
	if err := checkShare(share); err != nil {
		return out, err
	}
	depth := func(i int) func(b *block) float64 {
		return func(b *block) float64 {
			d, _ := b.border(i, float64(share), float64(t))
			return d
		}
	}
	out.Ends, out.Sides = bandOf[quantity.Length](m, depth(0)), bandOf[quantity.Length](m, depth(1))
	for i := range m.blocks {
		_, out.Through[i] = m.blocks[i].border(0, float64(share), float64(t))
	}
	return out, nil
}

// Even is the time after which even the middle has made a share of its change: 0.9
// leaves a tenth of the difference. +Inf beyond a hundred years.
func (m *Moisture) Even(share quantity.Fraction) (Band[quantity.Time], error) {
	if err := checkShare(share); err != nil {
		return Band[quantity.Time]{}, err
	}
	return bandOf[quantity.Time](m, func(b *block) float64 { return until(b.core, 1-float64(share)) }), nil
}

// Humidity is the relative humidity that a probe would find at a place, along the
// isotherm's secant.
func (c Change) Humidity(left quantity.Fraction) quantity.Fraction {
	return c.To + left*(c.From-c.To)
}

func checkShare(share quantity.Fraction) error {
	if !(share > 0 && share < 1) {
		return fmt.Errorf("a share of %g of the change: it must be between 0 and 1", float64(share))
	}
	return nil
}
