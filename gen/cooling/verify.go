package cooling

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about, in the units of the
// source: what names it, given holds its inputs (SI, temperatures in the scale of the
// source, but K where a correlation needs them). Tests and the verification page ask
// it. The published examples of conduction are the laminate's degenerate cases and go
// through the same solver, on a finer grid with smaller steps.
func Verify(what string, given map[string]float64) (float64, error) {
	v := example{given}
	switch what {
	case "temperature of a wall's sealed face", "temperature of a wall's face", "flux into a wall's face",
		"heat gained by a wall", "time of a thin body":
		return v.wall(what)
	case "temperature in a half space":
		at, _, err := v.halfSpace(v.given["depth"])
		return at, err
	case "temperature of a half space's face":
		_, face, err := v.halfSpace(v.given["depth"])
		return face, err
	case "flux into a half space's face":
		_, face, err := v.halfSpace(v.given["depth"])
		return v.given["film"] * (v.given["room"] - face), err
	case "temperature on a cylinder's axis":
		// A short cylinder is a half space times an infinite cylinder, whose share
		// the source gives.
		at, _, err := v.halfSpace(v.given["depth"])
		share := (at - v.given["room"]) / (v.given["start"] - v.given["room"])
		return v.given["room"] + share*v.given["cylinder"]*(v.given["start"]-v.given["room"]), err
	case "depth of a temperature":
		return v.depth()
	case "time of a lumped body":
		l := Lumped{Tau: TimeConstant([]Layer{v.layer(v.given["thickness"])}, v.conductance("film"), 0),
			Start: v.scaled("start"), End: v.scaled("room")}
		t, comes := l.Until(v.scaled("wanted"))
		if !comes {
			return 0, fmt.Errorf("a body that is not cooled cannot be asked")
		}
		return float64(t), nil
	case "contact temperature":
		t, err := ContactTemperature(v.effusivity("1"), v.scaled("start 1"), v.effusivity("2"), v.scaled("start 2"))
		return float64(t) - offset, err
	case "temperature in two bodies that touch":
		return v.contact()
	}
	return v.convection(what)
}

// convection are the faces in air.
func (v example) convection(what string) (float64, error) {
	surface, room := v.celsius("surface"), v.celsius("room")
	length, p := quantity.Length(v.given["length"]), quantity.Pressure(v.given["pressure"])
	switch what {
	case "heat radiated":
		h, err := Radiation(quantity.Fraction(v.given["emissivity"]), surface, room)
		return float64(h) * float64(surface-room) * v.given["area"], err
	case "conductance of still air, upright":
		h, err := StillAir(Upright, length, surface, room, p)
		return float64(h), err
	case "conductance of blown air":
		h, err := Fan(quantity.Speed(v.given["speed"]), length, surface, room, p)
		return float64(h), err
	case "conductance of still air, upright, with the source's air":
		f := v.air()
		f.t = float64(surface+room) / 2
		h, err := f.still(Upright, v.given["length"], surface, room)
		return float64(h), err
	case "conductance of blown air, with the source's air":
		h, err := v.air().blown(v.given["speed"], v.given["length"])
		return float64(h), err
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// air is air with the properties that the source takes.
func (v example) air() film {
	k, nu, pr := v.given["conductivity"], v.given["viscosity"], v.given["prandtl"]
	return film{k: k, nu: nu, pr: pr, alpha: nu / pr}
}

// offset carries temperatures of any scale above 0 K, where layers live.
const offset = 1000

// fine is how much finer than usual the examples are computed.
const fine = 2

// example is a published one.
type example struct{ given map[string]float64 }

func (v example) scaled(name string) quantity.Temperature {
	return quantity.Temperature(v.given[name] + offset)
}

func (v example) celsius(name string) quantity.Temperature {
	return quantity.Temperature(v.given[name]) + quantity.ZeroCelsius
}

func (v example) conductance(name string) quantity.Conductance {
	return quantity.Conductance(v.given[name])
}

func (v example) effusivity(n string) float64 {
	return math.Sqrt(v.given["conductivity "+n] * v.given["density "+n] * v.given["heat "+n])
}

// layer is a layer of the example's material at its start.
func (v example) layer(thick float64) Layer {
	k, rho, c := v.given["conductivity"], v.given["density"], v.given["heat"]
	if rho == 0 {
		rho, c = 1, k/v.given["alpha"]
	}
	return Layer{Name: "wall", Thickness: quantity.Length(thick), Conductivity: quantity.Conductivity(k),
		Density: quantity.Density(rho), SpecificHeat: quantity.SpecificHeat(c), Start: Even(v.scaled("start"))}
}

// stage exposes the face for the example's time and seals the back.
func (v example) stage(time float64) []Stage {
	return []Stage{{Time: quantity.Time(time), Face: Exposure{v.conductance("film"), v.scaled("room")}}}
}

// wall is a wall with a sealed back. The examples heat theirs; so the time that one
// takes is asked of its mirror image, which cools.
func (v example) wall(what string) (float64, error) {
	l := v.layer(v.given["thickness"])
	if what == "time of a thin body" {
		mirror := 2 * v.given["room"]
		l.Start = Even(quantity.Temperature(mirror - v.given["start"] + offset))
		c, err := cool([]Layer{l}, v.stage(20*l.HeatCapacity()/v.given["film"]), fine)
		if err != nil {
			return 0, err
		}
		t, comes, err := c.Reaches(0, quantity.Temperature(mirror-v.given["wanted"]+offset))
		if err == nil && !comes {
			err = fmt.Errorf("the temperature is not reached")
		}
		return float64(t), err
	}
	c, err := cool([]Layer{l}, v.stage(v.given["time"]), fine)
	if err != nil {
		return 0, err
	}
	m, err := c.At(c.Total())
	if err != nil {
		return 0, err
	}
	switch what {
	case "temperature of a wall's sealed face":
		return float64(m.Back) - offset, nil
	case "flux into a wall's face":
		return v.given["film"] * (v.given["room"] + offset - float64(m.Face)), nil
	case "heat gained by a wall":
		return -c.Stored * v.given["area"], nil
	}
	return float64(m.Face) - offset, nil
}

// sliver is how thin the layer is, against a depth, whose mean stands for the
// temperature there.
const sliver = 1e-3

// halfSpace is a wall so thick that its back feels nothing: the temperatures at a
// depth, as the mean of a sliver about it, and of its face.
func (v example) halfSpace(depth float64) (at, face float64, err error) {
	const deep = 8 // in √(α·t); erfc(4) is below 2e-8
	reach := deep * math.Sqrt(float64(v.layer(1).Diffusivity())*v.given["time"])
	if depth == 0 {
		depth = reach / 10
	}
	upper, thin, lower := v.layer(depth*(1-sliver/2)), v.layer(depth*sliver), v.layer(reach)
	upper.Cells, thin.Cells, lower.Cells = 300, 2, 800
	c, err := cool([]Layer{upper, thin, lower}, v.stage(v.given["time"]), fine)
	if err != nil {
		return 0, 0, err
	}
	m, err := c.At(c.Total())
	if err != nil {
		return 0, 0, err
	}
	return float64(m.Layers[1]) - offset, float64(m.Face) - offset, nil
}

// depth finds where a half space has the wanted temperature.
func (v example) depth() (float64, error) {
	low, high := 0.0, 5*math.Sqrt(v.given["alpha"]*v.given["time"])
	rising := v.given["start"] > v.given["room"]
	for range 18 {
		middle := (low + high) / 2
		at, _, err := v.halfSpace(middle)
		if err != nil {
			return 0, err
		}
		if (at < v.given["wanted"]) == rising {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2, nil
}

// contact is two thick bodies that touch: the temperature at a depth in the second
// (0: where they touch).
func (v example) contact() (float64, error) {
	body := func(n string) Layer {
		return Layer{Name: n, Thickness: 1, Conductivity: quantity.Conductivity(v.given["conductivity "+n]), Density: quantity.Density(v.given["density "+n]),
			SpecificHeat: quantity.SpecificHeat(v.given["heat "+n]), Start: Even(v.scaled("start " + n))}
	}
	first, second := body("1"), body("2")
	time := v.given["time"]
	reach := func(l Layer) quantity.Length {
		return quantity.Length(10 * math.Sqrt(float64(l.Diffusivity())*time))
	}
	first.Thickness, first.Cells = reach(first), 1200
	depth := quantity.Length(v.given["depth"])
	thin, rest := second, second
	thin.Thickness, thin.Cells = reach(second)*1e-4, 2
	rest.Thickness, rest.Cells = reach(second), 1200
	layers := []Layer{first, thin, rest}
	want := 1
	if depth > 0 {
		thin.Thickness = depth * sliver
		second.Thickness, second.Cells = depth-thin.Thickness/2, 400
		layers = []Layer{first, second, thin, rest}
		want = 2
	}
	c, err := cool(layers, []Stage{{Time: quantity.Time(time)}}, fine)
	if err != nil {
		return 0, err
	}
	m, err := c.At(c.Total())
	if err != nil {
		return 0, err
	}
	return float64(m.Layers[want]) - offset, nil
}
