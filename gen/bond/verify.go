package bond

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// gravity is standard gravity, m/s².
const gravity = 9.80665

// Verify computes what a published value of this package is about, in the units of the
// source: what names it, given holds its inputs (SI where the source's numbers leave a
// choice). Tests and the verification page ask it; both get what this build computes.
func Verify(what string, given map[string]float64) (float64, error) {
	c := Constants{C1: given["c1"], C2: quantity.TemperatureDifference(given["c2"])}
	span := quantity.TemperatureDifference(given["span"])
	switch what {
	case "universal first constant, shifted":
		return Universal.Shifted(span).C1, nil
	case "universal second constant, shifted":
		return float64(Universal.Shifted(span).C2), nil
	case "logarithm of the shift":
		return c.LogShift(span), nil
	case "speed-up above the glass transition":
		return math.Pow(10, -Universal.LogShift(span)), nil
	case "share of free volume at the glass transition":
		return float64(Universal.FreeVolumeShare()), nil
	case "expansion of free volume":
		return float64(Universal.FreeVolumeExpansion()), nil
	case "activation energy from two rates":
		e, err := FlowEnergy(quantity.Viscosity(1/given["rate1"]), quantity.Temperature(given["t1"]),
			quantity.Viscosity(1/given["rate2"]), quantity.Temperature(given["t2"]))
		return float64(e), err
	case "rate at another temperature":
		m := Melt{Reference: quantity.Viscosity(1 / given["rate"]), At: quantity.Temperature(given["from"]), Energy: quantity.MolarEnergy(given["activation"])}
		v, err := m.Viscosity(quantity.Temperature(given["to"]))
		return 1 / float64(v), err
	}
	return verifyFlow(what, given)
}

// verifyFlow computes values of flow, capillaries and machines.
func verifyFlow(what string, given map[string]float64) (float64, error) {
	switch what {
	case "capillary rise":
		tube := Relief{Form: Pit, Width: quantity.Length(given["diameter"])}
		p := tube.Capillary(quantity.SurfaceTension(given["tension"]), quantity.Fraction(math.Cos(given["angle"]*math.Pi/180)))
		return float64(p) / (given["density"] * gravity), nil
	case "tube radius for a rise":
		tube := Relief{Form: Pit, Width: 1}
		p := tube.Capillary(quantity.SurfaceTension(given["tension"]), 1)
		return float64(p) / (given["density"] * gravity * given["rise"]) / 2, nil
	case "pressure drop between plates":
		slot := Relief{Form: Groove, Width: quantity.Length(given["gap"])}
		r := slot.resistance(quantity.Length(given["length"])) - slot.resistance(0)
		return given["viscosity"] * given["speed"] * r, nil
	case "flow in a tube":
		tube := Relief{Form: Pit, Width: quantity.Length(given["diameter"])}
		r := tube.resistance(1) - tube.resistance(0) // per metre
		return given["gradient"] / (given["viscosity"] * r) * math.Pi / 4 * given["diameter"] * given["diameter"], nil
	case "flow through a hole in a thin wall":
		hole := Relief{Form: Pit, Width: quantity.Length(given["diameter"])}
		r := 2 * hole.resistance(0) // both sides
		return given["pressure"] / (given["viscosity"] * r) * math.Pi / 4 * given["diameter"] * given["diameter"], nil
	case "depth by capillary alone":
		// Deep against the mouth: a tube of radius 1 µm that is far longer than wide.
		tube := Relief{Form: Pit, Width: quantity.Length(2 * given["radius"]), Depth: 1}
		p := tube.Capillary(quantity.SurfaceTension(given["tension"]), 1)
		return float64(tube.Filled(float64(p) * given["time"] / given["viscosity"])), nil
	case "force of a cylinder":
		// In pounds, from inches and pounds per square inch, as in the table.
		l, err := Loading{Bore: quantity.Length(given["bore"]), Cylinders: 1, Width: 1}.LineLoad(quantity.Pressure(given["pressure"]))
		return float64(l), err
	case "torque of a brake":
		return float64(BrakeTorque(quantity.LineLoad(given["tension"]), 1, quantity.Length(given["diameter"]))), nil
	case "tension of a brake":
		return float64(BrakeTension(Torque(given["torque"]), 1, quantity.Length(given["diameter"]))), nil
	case "mean over peak pressure":
		return 1 / float64(Hertz.Peak()), nil
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}
