package air

import (
	"fmt"
	"math"
)

// The correlations of this file and of still.go speak in plain dimensionless
// numbers, for heat with Pr and Nu, for vapour with Sc and Sh.

const (
	// transition is the Reynolds number at which the boundary layer of a plate
	// turns turbulent: Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat
	// and Mass Transfer, 6th ed., ch. 7.
	transition = 5e5
	// fastest bounds the mixed correlation: the same.
	fastest = 1e8
)

// The Prandtl or Schmidt numbers of the plate correlations. The books give 0.6
// for the laminar one; water vapour in air, the lightest vapour here, has 0.6
// within the spread of its data, so a little below is let in.
const (
	lightest = 0.5
	heaviest = 60.0
)

func checkPlate(re, pr float64) error {
	if !(re >= 0 && re <= fastest) {
		return fmt.Errorf("flow along a plate: a Reynolds number of %.4g is outside 0 to 1e8", re)
	}
	if !(pr >= lightest && pr <= heaviest) {
		return fmt.Errorf("flow along a plate: a Schmidt or Prandtl number of %.4g is outside 0.5 to 60", pr)
	}
	return nil
}

// LaminarPlate gives the mean Nusselt or Sherwood number of a plate along which
// a fluid flows without turbulence.
//
//	Nu = 0.664·Re^½·Pr^⅓     Incropera 6e, eq. 7.30 (number from memory); Re < 5e5, Pr ≥ 0.6
//
// It comes from boundary-layer theory and gives too little below Re of some
// hundreds, where still air takes over.
func LaminarPlate(re, pr float64) (float64, error) {
	if err := checkPlate(re, pr); err != nil {
		return 0, err
	}
	if re > transition {
		return 0, fmt.Errorf("laminar flow along a plate: a Reynolds number of %.4g is outside 0 to 5e5", re)
	}
	return 0.664 * math.Sqrt(re) * math.Cbrt(pr), nil
}

// MixedPlate gives the mean Nusselt or Sherwood number of a plate whose boundary
// layer is laminar at first and turns turbulent at Re 5e5.
//
//	Nu = (0.037·Re^0.8 − 871)·Pr^⅓     Incropera 6e, eq. 7.38 (number from memory); 5e5 < Re ≤ 1e8, 0.6 ≤ Pr ≤ 60
func MixedPlate(re, pr float64) (float64, error) {
	if err := checkPlate(re, pr); err != nil {
		return 0, err
	}
	if re < transition {
		return 0, fmt.Errorf("mixed flow along a plate: a Reynolds number of %.4g is outside 5e5 to 1e8", re)
	}
	return (0.037*math.Pow(re, 0.8) - 871) * math.Cbrt(pr), nil
}

// TurbulentPlate gives the mean Nusselt or Sherwood number of a plate along which
// the flow is turbulent from its leading edge, as behind a step or a rough floor.
//
//	Nu = 0.037·Re^0.8·Pr^⅓     Incropera 6e, eq. 7.38 without its laminar part; Re ≤ 1e8, 0.6 ≤ Pr ≤ 60
func TurbulentPlate(re, pr float64) (float64, error) {
	if err := checkPlate(re, pr); err != nil {
		return 0, err
	}
	return 0.037 * math.Pow(re, 0.8) * math.Cbrt(pr), nil
}

// Plate picks the laminar or the mixed correlation. They meet within 0.1 % at
// Re 5e5; the greater of the two is used there, so that more air never gives less.
func Plate(re, pr float64) (float64, error) {
	if re <= transition {
		return LaminarPlate(re, pr)
	}
	mixed, err := MixedPlate(re, pr)
	if err != nil {
		return 0, err
	}
	return math.Max(mixed, 0.664*math.Sqrt(transition)*math.Cbrt(pr)), nil
}

// UnheatedStart gives the factor on a plate's mean transfer when only what lies
// beyond a share of its length, from the leading edge, takes part.
//
//	[L/(L − ξ)]·[1 − (ξ/L)^((q+1)/(q+2))]^(q/(q+1))     q = 8 turbulent, 2 laminar
//	                               Incropera 6e, eq. 7.44 (number from memory); 0 ≤ ξ/L < 1
//
// The transfer coefficient that it corrects is the one over the whole length L.
func UnheatedStart(share float64, turbulent bool) (float64, error) {
	if !(share >= 0 && share < 1) {
		return 0, fmt.Errorf("unheated starting length: a share of %.4g is outside 0 to 1", share)
	}
	q := 2.0
	if turbulent {
		q = 8
	}
	return math.Pow(1-math.Pow(share, (q+1)/(q+2)), q/(q+1)) / (1 - share), nil
}

// LaminarPipe gives the Nusselt or Sherwood number of developed laminar flow in a
// round pipe whose wall has one temperature or concentration.
//
//	Nu = 3.66     Çengel, Heat and Mass Transfer, Example 14-10; Re < 2300
func LaminarPipe(re float64) (float64, error) {
	if !(re >= 0 && re < 2300) {
		return 0, fmt.Errorf("laminar flow in a pipe: a Reynolds number of %.4g is outside 0 to 2300", re)
	}
	return 3.66, nil
}
