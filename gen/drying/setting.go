package drying

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Setting is a layer in given surroundings: one part of a print's history.
type Setting struct {
	// Thickness of the layer that holds the carrier.
	Thickness quantity.Length
	// Diffusivity of the carrier in it.
	Diffusivity quantity.Diffusivity
	// Face and Back are the transfer coefficients of the two faces on the
	// layer's own concentration, h·c_sat/C_ref; 0 is sealed.
	Face, Back quantity.Speed
	// Floor is the amount in equilibrium with the carrier vapour that the
	// room already holds.
	Floor quantity.Grammage
}

// BiotFace is the Biot number k·L/D of the printed face.
func (s Setting) BiotFace() float64 {
	return float64(s.Face) * float64(s.Thickness) / float64(s.Diffusivity)
}

// BiotBack is the Biot number k·L/D of the back.
func (s Setting) BiotBack() float64 {
	return float64(s.Back) * float64(s.Thickness) / float64(s.Diffusivity)
}

// Rate is D/L², what a time is multiplied by to give a Fourier number.
func (s Setting) Rate() quantity.Rate {
	l := float64(s.Thickness)
	return quantity.Rate(float64(s.Diffusivity) / (l * l))
}

// Fourier is the Fourier number D·t/L² that passes in time t.
func (s Setting) Fourier(t quantity.Time) float64 {
	return float64(s.Rate()) * float64(t)
}

// Modes are the HistoryModes modes of the layer in this setting, as a State
// marches them; a page's script gets the same.
func (s Setting) Modes() (*Modes, error) {
	if err := s.check(); err != nil {
		return nil, err
	}
	return NewModes(s.BiotFace(), s.BiotBack(), HistoryModes)
}

// check refuses what no layer can be.
func (s Setting) check() error {
	if !positive(float64(s.Diffusivity)) {
		return fmt.Errorf("diffusivity %g m²/s: it must be above 0", float64(s.Diffusivity))
	}
	return s.checkSurroundings()
}

// checkSurroundings checks all but the diffusivity.
func (s Setting) checkSurroundings() error {
	if !positive(float64(s.Thickness)) {
		return fmt.Errorf("layer thickness %g m: it must be above 0", float64(s.Thickness))
	}
	if !notNegative(float64(s.Face)) || !notNegative(float64(s.Back)) {
		return fmt.Errorf("transfer coefficients %g m/s (face) and %g m/s (back): each must be 0 or more",
			float64(s.Face), float64(s.Back))
	}
	if !notNegative(float64(s.Floor)) {
		return fmt.Errorf("amount in equilibrium with the room %s: it must be 0 or more", grams(s.Floor))
	}
	return nil
}

// positive says that v is a finite number above 0.
func positive(v float64) bool { return v > 0 && !math.IsInf(v, 1) }

// notNegative says that v is a finite number, 0 or above.
func notNegative(v float64) bool { return v >= 0 && !math.IsInf(v, 1) }

// grams writes an amount for an error message.
func grams(g quantity.Grammage) string {
	return fmt.Sprintf("%.4g g/m²", float64(g)*1000)
}

// hours writes a time for an error message.
func hours(t quantity.Time) string {
	return fmt.Sprintf("%.4g h", float64(t)/3600)
}
