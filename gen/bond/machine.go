package bond

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Torque is a moment in newton metres.
type Torque float64

// Cautions go with every start setting of pressure or tension.
var Cautions = []string{
	"A start setting is where a test strip begins. The maker’s manual of the laminator and the film’s sheet come first.",
	"Set pressure with the nip closed on the job, the machine stopped and nobody’s hands near it. A nip draws in fingers, hair and sleeves.",
	"Keep guards, trip bars and stop buttons in use and tested. Isolate the drive for a check with strips in the nip.",
	"Do not go above the pressure that the maker rates the cylinders and rollers for. Air under pressure stores energy: let it off before work on it.",
	"The gauge shows the cylinder’s pressure, not the nip’s. The same reading on another machine, or on a narrower web, is another nip.",
	"Raise tension from nothing, a little on both sides alike, only until the film lies flat.",
}

// Loading is how a machine presses its rollers together.
type Loading struct {
	Bore      quantity.Length // of each cylinder
	Cylinders int
	// Lever is the force on the roller over that of the cylinder; nothing here is 1.
	Lever quantity.Fraction
	Width quantity.Length // of the nip, along the rollers
	// Weight of the upper roller per width, where it rests on the nip.
	Weight quantity.LineLoad
}

// area is the pistons' area times the lever, m².
func (l Loading) area() float64 {
	lever := float64(l.Lever)
	if lever == 0 {
		lever = 1
	}
	return math.Pi / 4 * float64(l.Bore*l.Bore) * float64(l.Cylinders) * lever
}

// LineLoad is the load per width that a gauge pressure makes: pressure × area of the
// pistons × lever / width, and the roller's weight. Friction in cylinders takes some
// off it (some per cent; common practice, no source).
func (l Loading) LineLoad(gauge quantity.Pressure) (quantity.LineLoad, error) {
	if err := l.check(); err != nil {
		return 0, err
	}
	if !(gauge >= 0) {
		return 0, fmt.Errorf("a gauge pressure of %g Pa: it must be 0 or more", float64(gauge))
	}
	return quantity.LineLoad(float64(gauge)*l.area()/float64(l.Width)) + l.Weight, nil
}

// Gauge is the gauge pressure that makes a line load; 0 where the roller's weight alone
// makes it or more.
func (l Loading) Gauge(load quantity.LineLoad) (quantity.Pressure, error) {
	if err := l.check(); err != nil {
		return 0, err
	}
	return quantity.Pressure(math.Max(0, float64(load-l.Weight)*float64(l.Width)/l.area())), nil
}

func (l Loading) check() error {
	if !(l.Bore > 0 && l.Cylinders > 0 && l.Lever >= 0 && l.Width > 0 && l.Weight >= 0) {
		return fmt.Errorf("%d cylinders of %g m bore on a nip %g m wide: each must be above 0", l.Cylinders, float64(l.Bore), float64(l.Width))
	}
	return nil
}

// Pressing is a start setting of pressure with the figures on the way.
type Pressing struct {
	Gauge      quantity.Pressure
	Load       quantity.LineLoad
	Mean, Peak quantity.Pressure // in the nip
	Cautions   []string
}

// StartPressure is the gauge pressure at which a mean nip pressure is reached on a nip
// of a length. The mean that is wanted, and whether the maker allows it, is the
// caller's.
func (l Loading) StartPressure(mean quantity.Pressure, nip quantity.Length, p Profile) (Pressing, error) {
	if !(mean > 0 && nip > 0) {
		return Pressing{}, fmt.Errorf("%g Pa on a nip of %g m: each must be above 0", float64(mean), float64(nip))
	}
	load := quantity.LineLoad(float64(mean) * float64(nip))
	gauge, err := l.Gauge(load)
	if err != nil {
		return Pressing{}, err
	}
	load = max(load, l.Weight)
	mean = quantity.Pressure(float64(load) / float64(nip))
	return Pressing{Gauge: gauge, Load: load, Mean: mean, Peak: mean * quantity.Pressure(p.Peak()), Cautions: Cautions}, nil
}

// Pulling is a start setting of tension with the figures on the way.
type Pulling struct {
	Tension  quantity.LineLoad // per width of the web
	Full     Torque            // of the brake, on a full roll
	Core     Torque            // and on an almost empty one, for the same tension
	Cautions []string
}

// StartTension is the tension at which a web of a thickness has a stress, and the
// torque of the brake that makes it: tension × width × half the roll's diameter. A
// torque that is left as it is pulls harder as the roll runs down, by full/core.
func StartTension(stress quantity.Pressure, thickness, width, roll, core quantity.Length) (Pulling, error) {
	if !(stress >= 0 && thickness > 0 && width > 0 && core > 0 && roll >= core) {
		return Pulling{}, fmt.Errorf("%g Pa in a web %g m thick and %g m wide from a roll of %g m on a core of %g m: each must be above 0, and the roll not below the core",
			float64(stress), float64(thickness), float64(width), float64(roll), float64(core))
	}
	tension := quantity.LineLoad(float64(stress) * float64(thickness))
	return Pulling{Tension: tension, Full: BrakeTorque(tension, width, roll), Core: BrakeTorque(tension, width, core), Cautions: Cautions}, nil
}

// BrakeTorque makes a tension at a roll's present diameter.
func BrakeTorque(tension quantity.LineLoad, width, diameter quantity.Length) Torque {
	return Torque(float64(tension) * float64(width) * float64(diameter) / 2)
}

// BrakeTension is the tension that a torque makes at a roll's present diameter.
func BrakeTension(t Torque, width, diameter quantity.Length) quantity.LineLoad {
	return quantity.LineLoad(2 * float64(t) / (float64(width) * float64(diameter)))
}
