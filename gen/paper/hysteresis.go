package paper

import (
	"fmt"

	"laydown/gen/quantity"
)

// Branch says which way a sheet came to its moisture.
type Branch int

// The branches. A sheet that dried from the mill or from a damp room is on Drying and holds
// more water at the same humidity; one that took water up from a dry room is on Wetting.
const (
	Mean    Branch = iota // not known: between the two
	Wetting               // it took water up
	Drying                // it gave water off
)

// UsualGap is the usual distance between the branches at 50 % relative humidity, in
// moisture of the fibre. Measured on handsheets: 1.54 points in a dense one, 1.23 in a loose
// one (Handsheets). TAPPI T 402 calls 1 % of moisture on a value of 6 % typical, and
// says that conditioning down to 50 % gives about the moisture of conditioning up to 60 %.
const UsualGap = 0.015

// WidestGap is the greatest distance that OnBranch takes.
const WidestGap = 0.03

// branch is an isotherm on one branch of its hysteresis.
type branch struct {
	mean  Isotherm
	sides float64 // half of the distance between the branches, over the mean, at a = 0.5
}

// OnBranch gives the isotherm on a branch of its hysteresis, with gap the distance between
// the branches at 50 % and 23 °C, 0 to 0.03 kg/kg. The branches meet in bone-dry and in
// saturated air; between, the shape
//
//	M_branch = M·[1 ± 2·a(1 − a)·gap/M(50 %, 23 °C)]
//
// is an assumption: it is symmetric, widest in share of the mean at 50 %, and narrows as
// the sheet is heated. A sheet between the branches lies between them. At UsualGap and 50 %
// the branch moves the temperature at which Pulp reaches OpenLimit by 0.7 K where the
// humidity is known, and by 0.8 to 1 K the other way where the moisture is. On Mean it
// gives mean itself.
func OnBranch(mean Isotherm, b Branch, gap quantity.Fraction) (Isotherm, error) {
	if !(gap >= 0 && gap <= WidestGap) {
		return nil, fmt.Errorf("hysteresis: a gap of %.4g points is outside 0 to %g points", gap.Percent(), 100*WidestGap)
	}
	middle, err := mean.Moisture(0.5, quantity.FromCelsius(23))
	if err != nil {
		return nil, fmt.Errorf("hysteresis: %w", err)
	}
	if middle == 0 {
		return mean, nil
	}
	half := float64(gap / middle / 2)
	switch b {
	case Mean:
		return mean, nil
	case Wetting:
		return branch{mean, -half}, nil
	case Drying:
		return branch{mean, half}, nil
	}
	return nil, fmt.Errorf("hysteresis: there is no branch %d", b)
}

// Moisture implements Isotherm.
func (b branch) Moisture(a quantity.Fraction, t quantity.Temperature) (quantity.Fraction, error) {
	m, err := b.mean.Moisture(a, t)
	return m * (1 + 4*a*(1-a)*quantity.Fraction(b.sides)), err
}
