package curl

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Tunnel is what a compressed layer does where it has come loose in a strip: lifting
// off as a long blister. Film that was stretched compresses what it is stuck to; of
// two films the one that was pulled less, or that grew, is the one to lift.
type Tunnel struct {
	// Compressed is the direction of the compression; the tunnel runs across it.
	Compressed Direction
	// Strain of the layer in the laminate lying flat, compression above 0.
	Strain quantity.Fraction
	// Critical is the strain at which a loose strip of the width asked about lifts:
	// (π²/3)·(t/w)².
	Critical quantity.Fraction
	// Width is the narrowest loose strip that lifts at Strain: π·t/√(3·Strain). 0 in
	// tension.
	Width quantity.Length
	// Height of the tunnel over the strip asked about, 0 while it lies.
	Height quantity.Length
	// Drive is the energy that each area of further loosening sets free, J/m²: the
	// tunnel widens when the bond holds less than that.
	Drive float64
}

// Tunnel asks of one layer, in both directions, whether strips of it that are loose
// over a width would lift. The layer is a clamped wide plate on a rigid ground (J. W.
// Hutchinson and Z. Suo, Mixed mode cracking in layered materials, Adv. Appl. Mech. 29
// (1992) 63, one-dimensional blister: formulas from memory, and worked out again in
// the tests).
func (l *Laminate) Tunnel(layer int, now []State, width quantity.Length) ([2]Tunnel, error) {
	var out [2]Tunnel
	if layer < 0 || layer >= len(l.Layers) {
		return out, fmt.Errorf("layer %d of %d is not there", layer, len(l.Layers))
	}
	if !positive(float64(width)) {
		return out, fmt.Errorf("a loose strip %g m wide: must be above 0", float64(width))
	}
	c, err := l.Curl(now)
	if err != nil {
		return out, err
	}
	m := &c.Layers[layer]
	t, w := float64(m.Thickness), float64(width)
	force := c.Plate.FlatForce(layer)
	for d := AlongFeed; d <= AcrossFeed; d++ {
		stiff := m.turned()[d][d] * t
		strain := -force[d] / stiff
		critical := math.Pi * math.Pi / 3 * (t / w) * (t / w)
		u := Tunnel{Compressed: d, Strain: quantity.Fraction(strain), Critical: quantity.Fraction(critical)}
		if strain > 0 {
			u.Width = quantity.Length(math.Pi * t / math.Sqrt(3*strain))
		}
		if strain > critical {
			u.Height = quantity.Length(2 * w / math.Pi * math.Sqrt(strain-critical))
			u.Drive = stiff / 2 * (strain - critical) * (strain + 3*critical)
		}
		out[d] = u
	}
	return out, nil
}
