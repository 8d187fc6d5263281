package nip

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about, in the units of
// the source: what names it, given holds its inputs (SI, temperatures in the
// scale of the source). Tests and the verification page ask it. The published
// examples are the nip's degenerate cases, a wall with no rollers and no film, and
// go through the same solver, on a finer grid with smaller steps.
func Verify(what string, given map[string]float64) (float64, error) {
	v := wall{given: given}
	switch what {
	case "temperature of a wall's sealed face", "temperature of a wall's face", "flux into a wall's face", "heat gained by a wall":
		return v.plate(what)
	case "temperature in a half space":
		at, _, err := v.halfSpace(given["depth"])
		return at, err
	case "temperature of a half space's face":
		_, face, err := v.halfSpace(given["depth"])
		return face, err
	case "flux into a half space's face":
		_, face, err := v.halfSpace(given["depth"])
		return given["film"] * (given["room"] - face), err
	case "temperature on a cylinder's axis":
		// A short cylinder is a half space times an infinite cylinder, whose
		// share the source gives.
		at, _, err := v.halfSpace(given["depth"])
		share := (at - given["room"]) / (given["start"] - given["room"])
		return given["room"] + share*given["cylinder"]*(given["start"]-given["room"]), err
	case "depth of a temperature":
		return v.depth()
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// wall is a body that the room heats or cools at one face.
type wall struct {
	given map[string]float64
}

// How much finer than usual the examples are computed.
const (
	fineCells = 12
	fineSteps = 24
)

// layer is a layer of the wall's material.
func (w wall) layer(thick float64) Layer {
	k := w.given["conductivity"]
	rho, c := w.given["density"], w.given["heat"]
	if rho == 0 {
		rho, c = 1, k/w.given["alpha"]
	}
	return Layer{Name: "wall", Thickness: quantity.Length(thick), Conductivity: quantity.Conductivity(k),
		Density: quantity.Density(rho), SpecificHeat: quantity.SpecificHeat(c)}
}

// run warms film and print from above for the given time.
func (w wall) run(film, print []Layer) (*Response, Temps, error) {
	s, r := NewSolver(), new(Response)
	s.splitCells, s.splitSteps = fineCells, fineSteps
	p := Pass{
		Film: film, Print: print, Bond: 1e12,
		After: []Stage{{Time: quantity.Time(w.given["time"]), Face: Exposure{quantity.Conductance(w.given["film"]), Room}}},
	}
	start, room := quantity.Temperature(w.given["start"]), quantity.Temperature(w.given["room"])
	t := Temps{Room: room, Print: start, Film: start}
	err := s.Run(&p, r)
	return r, t, err
}

// plate is a wall with a sealed back.
func (w wall) plate(what string) (float64, error) {
	l := w.layer(w.given["thickness"])
	r, t, err := w.run(nil, []Layer{l})
	if err != nil {
		return 0, err
	}
	last := r.First.Records[len(r.First.Records)-1]
	face := float64(last[BondLine].At(t))
	switch what {
	case "temperature of a wall's sealed face":
		return float64(last[PrintBack].At(t)), nil
	case "flux into a wall's face":
		return w.given["film"] * (float64(t.Room) - face), nil
	case "heat gained by a wall":
		mean := float64(r.First.LastMean.At(t))
		return float64(l.Density) * float64(l.SpecificHeat) * float64(l.Thickness) * (mean - w.given["start"]) * w.given["area"], nil
	}
	return face, nil
}

// halfSpace is a wall so thick that its back feels nothing: the temperatures at a
// depth, and of its face.
func (w wall) halfSpace(depth float64) (at, face float64, err error) {
	const deep = 10 // in √(α·t); erfc(5) is below 2e-12
	l := w.layer(1)
	reach := deep * math.Sqrt(float64(l.Diffusivity())*w.given["time"])
	if depth == 0 {
		depth = reach / 10
	}
	r, t, err := w.run([]Layer{w.layer(depth)}, []Layer{w.layer(reach)})
	if err != nil {
		return 0, 0, err
	}
	last := r.First.Records[len(r.First.Records)-1]
	return float64(last[AdhesiveFace].At(t)), float64(last[FilmFace].At(t)), nil
}

// depth finds where a half space has the wanted temperature.
func (w wall) depth() (float64, error) {
	low, high := 0.0, 5*math.Sqrt(w.given["alpha"]*w.given["time"])
	rising := w.given["start"] > w.given["room"]
	for range 30 {
		middle := (low + high) / 2
		at, _, err := w.halfSpace(middle)
		if err != nil {
			return 0, err
		}
		if (at < w.given["wanted"]) == rising {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2, nil
}
