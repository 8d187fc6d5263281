package air

import (
	"laydown/gen/quantity"
)

// verifyTransfer computes the published values about transfer.
func verifyTransfer(what string, in inputs) (float64, error, bool) {
	switch what {
	case "Nusselt number, laminar plate":
		nu, err := LaminarPlate(in["reynolds"], in["prandtl"])
		return nu, err, true
	case "Nusselt number, upright plate":
		nu, err := VerticalPlate(in["grashof"], in["prandtl"])
		return nu, err, true
	case "Nusselt number, level plate, free":
		nu, err := LevelPlate(in["grashof"], in["prandtl"], true)
		return nu, err, true
	case "Nusselt number, level plate, not free":
		nu, err := LevelPlate(in["grashof"], in["prandtl"], false)
		return nu, err, true
	case "water lost from a pool in a day":
		lost, err := poolLoss(in)
		return lost, err, true
	case "diffusivity of water vapour":
		return number(WaterDiffusivity(quantity.Temperature(in["temperature"]), in.pressure()))
	case "transfer coefficient in a pipe":
		sh, err := LaminarPipe(in["speed"] * in["diameter"] / in["viscosity"])
		if err != nil {
			return 0, err, true
		}
		d, err := WaterDiffusivity(quantity.Temperature(in["temperature"]), in.pressure())
		return sh * float64(d) / in["diameter"], err, true
	case "vapour share":
		return number(VapourShare(quantity.Pressure(in["vapour"]), in.pressure(), quantity.MolarMass(in["molar mass"])), nil)
	case "transfer coefficient from a loss", "heat transfer from a loss":
		share := VapourShare(quantity.Pressure(in["vapour"]), in.pressure(), quantity.MolarMass(in["molar mass"]))
		drive := quantity.Density(in["density"] * float64(share))
		h, err := LossTransfer(quantity.Mass(in["loss"]), quantity.Time(in["time"]), quantity.Area(in["area"]), drive)
		if what == "transfer coefficient from a loss" {
			return number(h, err)
		}
		return number(HeatTransfer(h, quantity.Density(in["density"]), quantity.SpecificHeat(in["specific heat"]),
			quantity.Diffusivity(in["alpha"]), quantity.Diffusivity(in["diffusivity"])), err)
	case "temperature of an evaporative cooler":
		drive := quantity.Pressure(in["vapour at the surface"] - in["humidity"]*in["saturated"])
		chill, err := EvaporationChill(quantity.SpecificEnergy(in["latent"]), quantity.SpecificHeat(in["specific heat"]),
			in["lewis"], waterMolarMass, drive, in.pressure())
		return in["celsius"] - float64(chill), err, true
	case "viscosity of air":
		return number(DynamicViscosity(quantity.Temperature(in["temperature"])), nil)
	case "kinematic viscosity of air":
		return number(KinematicViscosity(quantity.Temperature(in["temperature"]), in.pressure()), nil)
	case "thermal conductivity of air":
		return number(ThermalConductivity(quantity.Temperature(in["temperature"])), nil)
	case "density of dry air":
		return number(DryDensity(quantity.Temperature(in["temperature"]), in.pressure()), nil)
	}
	return 0, nil, false
}

// poolLoss gives the water that air takes from a pool with a dry deck upstream,
// in kg a day. The flow is turbulent from the deck's edge on, as the source has
// it, and the deck is a starting length that takes no part.
func poolLoss(in inputs) (float64, error) {
	whole := in["deck"] + in["length"]
	sh, err := TurbulentPlate(in["speed"]*whole/in["viscosity"], in["viscosity"]/in["diffusivity"])
	if err != nil {
		return 0, err
	}
	factor, err := UnheatedStart(in["deck"]/whole, true)
	h := sh * factor * in["diffusivity"] / whole
	return h * in["length"] * in["width"] * in["saturated"] * (1 - in["humidity"]) * float64(quantity.Day), err
}
