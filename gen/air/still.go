package air

import (
	"fmt"
	"math"
)

// gravity is standard gravity, m/s².
const gravity = 9.80665

// VerticalPlate gives the mean Nusselt number of an upright plate in still fluid
// that rises or sinks along it.
//
//	Nu = {0.825 + 0.387·Ra^(1/6)/[1 + (0.492/Pr)^(9/16)]^(8/27)}²     Ra = Gr·Pr
//	S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1323; Ra ≤ 1e12
func VerticalPlate(gr, pr float64) (float64, error) {
	ra := gr * pr
	if !(gr >= 0 && pr > 0 && ra <= 1e12) {
		return 0, fmt.Errorf("still air along an upright plate: a Rayleigh number of %.4g (Prandtl %.4g) is outside 0 to 1e12", ra, pr)
	}
	root := 0.825 + 0.387*math.Pow(ra, 1.0/6)/math.Pow(1+math.Pow(0.492/pr, 9.0/16), 8.0/27)
	return root * root, nil
}

// LevelPlate gives the mean Nusselt number of a level plate in still fluid. Free
// says that the fluid at it can leave upwards, or downwards where it is the
// heavier: a hot face up, a cold face down. The length is area over perimeter.
//
//	free:     Nu = 0.54·Ra^¼ (1e4 ≤ Ra ≤ 1e7), 0.15·Ra^⅓ (to 1e11)
//	not free: Nu = 0.27·Ra^¼ (1e5 ≤ Ra ≤ 1e11)
//	W. H. McAdams, Heat Transmission, 3rd ed., 1954, ch. 7, as in Incropera 6e,
//	eqs. 9.30–9.32 (numbers and ranges from memory)
func LevelPlate(gr, pr float64, free bool) (float64, error) {
	ra := gr * pr
	low := 1e5
	if free {
		low = 1e4
	}
	if !(gr > 0 && pr > 0 && ra >= low && ra <= 1e11) {
		return 0, fmt.Errorf("still air over a level plate: a Rayleigh number of %.4g is outside %g to 1e11", ra, low)
	}
	switch {
	case !free:
		return 0.27 * math.Pow(ra, 0.25), nil
	case ra <= 1e7:
		return 0.54 * math.Pow(ra, 0.25), nil
	}
	return 0.15 * math.Cbrt(ra), nil
}
