package cooling

import (
	"fmt"

	"laydown/gen/quantity"
)

// Exposure is what a face gives its heat to: air (convection and radiation together,
// see Air), a roller or a table (a contact conductance). A conductance of 0 is a
// sealed face.
type Exposure struct {
	Conductance quantity.Conductance
	Temperature quantity.Temperature
}

// Stage is a stretch of the way after the nip. Face is the film's outer face, Back
// the face at the end of the list of layers.
type Stage struct {
	Name       string
	Time       quantity.Time
	Face, Back Exposure
}

func (s Stage) check() error {
	if !positive(float64(s.Time)) {
		return fmt.Errorf("stage %q of %g s: it must be above 0", s.Name, float64(s.Time))
	}
	for _, e := range [...]Exposure{s.Face, s.Back} {
		if !notNegative(float64(e.Conductance)) || !positive(float64(e.Temperature)) && e.Conductance > 0 {
			return fmt.Errorf("stage %q: a face with %g W/(m² K) to a body of %g K: the conductance must be 0 or more, the temperature above 0",
				s.Name, float64(e.Conductance), float64(e.Temperature))
		}
	}
	return nil
}
