package cooling

import (
	"fmt"
	"math"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// stefan is the Stefan–Boltzmann constant, W/(m² K⁴): exact in the SI of 2019, rounded
// here.
const stefan = 5.670374419e-8

// gravity is the standard acceleration of free fall, m/s².
const gravity = 9.80665

// Emissivity of paper, print and plastic film for heat radiation. Books of heat
// transfer give 0.9 to 0.95 (from memory); a film metallised on its outside has far
// less.
const Emissivity quantity.Fraction = 0.9

// Radiation gives the conductance of a face to the walls around it.
//
//	h = ε·σ·(T_s² + T_w²)·(T_s + T_w)      exact for the two temperatures; large walls
//
// About 6 W/(m² K) near a room's temperature.
func Radiation(emissivity quantity.Fraction, surface, walls quantity.Temperature) (quantity.Conductance, error) {
	if !(emissivity >= 0 && emissivity <= 1) || !positive(float64(surface)) || !positive(float64(walls)) {
		return 0, fmt.Errorf("radiation of a face of %g K, emissivity %g, to walls of %g K: the emissivity must be from 0 to 1, the temperatures above 0",
			float64(surface), float64(emissivity), float64(walls))
	}
	s, w := float64(surface), float64(walls)
	return quantity.Conductance(float64(emissivity) * stefan * (s*s + w*w) * (s + w)), nil
}

// Lie says how a face lies in still air.
type Lie int

// The ways a face can lie.
const (
	Upright    Lie = iota // a hanging sheet; the length is its height
	FacingUp              // a sheet on a table; the length is area over perimeter
	FacingDown            // the underside of a sheet on a rack; likewise
)

// film is air at the mean of surface and room: its temperature, conductivity,
// kinematic viscosity and diffusivity, and Prandtl number.
type film struct {
	t, k, nu, alpha, pr float64
}

func filmAir(surface, room quantity.Temperature, p quantity.Pressure) (film, error) {
	t := (surface + room) / 2
	if !(t >= 200 && t <= 600) || !(p >= 1000 && p <= 200000) {
		return film{}, fmt.Errorf("air at %g K and %g Pa is outside 200 K to 600 K or 1 kPa to 200 kPa", float64(t), float64(p))
	}
	f := film{t: float64(t), k: float64(air.ThermalConductivity(t)), nu: float64(air.KinematicViscosity(t, p)), alpha: float64(air.ThermalDiffusivity(t, p))}
	f.pr = f.nu / f.alpha
	return f, nil
}

// StillAir gives the convective conductance of a face in air that moves only because
// the face is warmer. Take the surface half way through the stage.
//
//	h = Nu·k/L, Gr = g·|T_s − T_a|·L³/(T_m·ν²)      Nu by air.VerticalPlate or air.LevelPlate
//
// Below the ranges of the level plate's correlations (small or hardly warm sheets) its
// lowest Nusselt number is scaled with Ra^¼, which goes to nothing as the face cools;
// good to about 20 % inside the ranges.
func StillAir(lie Lie, length quantity.Length, surface, room quantity.Temperature, p quantity.Pressure) (quantity.Conductance, error) {
	f, err := filmAir(surface, room, p)
	if err != nil {
		return 0, err
	}
	if !positive(float64(length)) {
		return 0, fmt.Errorf("still air at a face %g m long: the length must be above 0", float64(length))
	}
	return f.still(lie, float64(length), surface, room)
}

// still is StillAir for air of known properties.
func (f film) still(lie Lie, l float64, surface, room quantity.Temperature) (quantity.Conductance, error) {
	var err error
	gr := gravity * math.Abs(float64(surface-room)) * l * l * l / (f.t * f.nu * f.nu)
	var nu float64
	switch lie {
	case Upright:
		nu, err = air.VerticalPlate(gr, f.pr)
	case FacingUp, FacingDown:
		// A cool face facing up behaves as a hot one facing down.
		free := (lie == FacingUp) == (surface >= room)
		lowest := 1.0001e5
		if free {
			lowest = 1.0001e4
		}
		ra, scale := gr*f.pr, 1.0
		if ra < lowest {
			scale, gr = math.Pow(ra/lowest, 0.25), lowest/f.pr
		}
		nu, err = air.LevelPlate(gr, f.pr, free)
		nu *= scale
	default:
		return 0, fmt.Errorf("a face cannot lie in way %d", int(lie))
	}
	if err != nil {
		return 0, fmt.Errorf("still air at a face: %w", err)
	}
	return quantity.Conductance(nu * f.k / l), nil
}

// Fan gives the convective conductance of a sheet along which air is blown.
//
//	h = Nu·k/L, Re = u·L/ν      Nu by air.Plate: laminar to Re 5e5, then mixed
//
// Length is that along the stream. A fan's stream is rough and has no clean leading
// edge; the true value is rather above this one, by up to a half (common knowledge, no
// single source).
func Fan(speed quantity.Speed, length quantity.Length, surface, room quantity.Temperature, p quantity.Pressure) (quantity.Conductance, error) {
	f, err := filmAir(surface, room, p)
	if err != nil {
		return 0, err
	}
	if !notNegative(float64(speed)) || !positive(float64(length)) {
		return 0, fmt.Errorf("a fan's %g m/s along %g m: the speed must be 0 or more, the length above 0", float64(speed), float64(length))
	}
	return f.blown(float64(speed), float64(length))
}

// blown is Fan for air of known properties.
func (f film) blown(speed, length float64) (quantity.Conductance, error) {
	nu, err := air.Plate(speed*length/f.nu, f.pr)
	if err != nil {
		return 0, err
	}
	return quantity.Conductance(nu * f.k / length), nil
}

// Air puts together what a face gives to air and walls of the same temperature: the
// greatest of the convections that act, and radiation beside them. That the greatest
// alone counts leaves out how streams help each other, up to a quarter where two are
// alike.
func Air(radiation quantity.Conductance, convections ...quantity.Conductance) quantity.Conductance {
	var most quantity.Conductance
	for _, c := range convections {
		most = max(most, c)
	}
	return radiation + most
}
