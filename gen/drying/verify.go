package drying

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about, in the units of
// the source: what names it, given holds its inputs (SI, but temperatures in the
// scale of the source, x as a share of the thickness from the sealed face). Tests
// and the verification page ask it; both get what this build computes.
func Verify(what string, given map[string]float64) (float64, error) {
	switch what {
	case "root", "first root", "first coefficient":
		n := 1
		if what == "root" {
			n = int(given["root"])
		}
		m, err := NewModes(given["biot"], 0, n)
		if err != nil {
			return 0, err
		}
		if what == "first coefficient" {
			return m.Mean[0] / m.Norm[0], nil
		}
		return m.Beta[n-1], nil
	case "share lost":
		m, err := NewModes(math.Inf(1), math.Inf(1), LeftModes)
		if err != nil {
			return 0, err
		}
		l := given["thickness"]
		return 1 - m.Left(given["diffusivity"]*given["time"]/(l*l)), nil
	case "half time":
		// Faces of a Biot number so large that they stand at the floor.
		s := Setting{Thickness: 1, Diffusivity: 1, Face: 1e9, Back: 1e9}
		t, err := Fresh(1).Until(s, 0.5, 10)
		return float64(t), err
	case "wall temperature", "wall flux", "wall heat":
		return verifyWall(what, given)
	case "half-space surface temperature":
		y := given["film"] * math.Sqrt(given["alpha"]*given["time"]) / given["conductivity"]
		return given["room"] + (given["start"]-given["room"])*erfcx(y), nil
	case "depth held at the face":
		return verifyDepth(given)
	case "half-lives":
		// The time in half-lives until the share given is unreacted.
		r, err := SolveFirstOrder(1, 0.5, 1)
		if err != nil {
			return 0, err
		}
		t, err := r.Wait(1, 1, quantity.Fraction(given["share"]))
		return float64(t), err
	case "half-life":
		t, err := FirstOrder{Rate: quantity.Rate(given["rate"])}.Wait(1, 1, 0.5)
		return float64(t), err
	case "rate at another temperature":
		return given["rate"] * Arrhenius(quantity.MolarEnergy(given["activation"]),
			quantity.Temperature(given["from"]), quantity.Temperature(given["to"])), nil
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// verifyWall poses a wall that convection heats or cools at one face to the slab:
// heat per volume and kelvin takes the carrier's place.
func verifyWall(what string, given map[string]float64) (float64, error) {
	heatCapacity := given["conductivity"] / given["alpha"] // ρ·c
	s := Setting{
		Thickness:   quantity.Length(given["thickness"]),
		Diffusivity: quantity.Diffusivity(given["alpha"]),
		Face:        quantity.Speed(given["film"] / heatCapacity),
	}
	st, err := Fresh(1).March(s, quantity.Time(given["time"]))
	if err != nil {
		return 0, err
	}
	span := given["start"] - given["room"]
	switch what {
	case "wall flux":
		return given["film"] * span * st.Profile([]float64{1})[0], nil
	case "wall heat":
		return heatCapacity * given["thickness"] * given["area"] * span * (1 - float64(st.Amount())), nil
	}
	return given["room"] + span*st.Profile([]float64{given["x"]})[0], nil
}

// verifyDepth is the concentration at a depth below a face that is held at one of
// its own, in a sheet so thick that its middle hardly knows.
func verifyDepth(given map[string]float64) (float64, error) {
	const thick = 4 // in depths reached
	l := thick * 2 * math.Sqrt(given["diffusivity"]*given["time"])
	s := Setting{
		Thickness: quantity.Length(l), Diffusivity: quantity.Diffusivity(given["diffusivity"]),
		Face: quantity.Speed(1e9 * given["diffusivity"] / l),
	}
	st, err := Fresh(1).March(s, quantity.Time(given["time"]))
	if err != nil {
		return 0, err
	}
	share := st.Profile([]float64{1 - given["depth"]/l})[0]
	return given["held"] + (given["start"]-given["held"])*share, nil
}
