package air

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// stillSpan is the difference of temperature that keeps the air moving past a
// print where no fan does: 1 K between print and room. It is an assumption, no
// measurement: people, lamps and walls never leave a room more even than that.
// The transfer goes with its fourth root, so a factor of two in it is 19 %.
const stillSpan quantity.TemperatureDifference = 1

// PlateTransfer gives the mean transfer coefficient of a vapour from a flat
// print of a length along an air stream.
//
//	h = Sh·D/L, Sh by LaminarPlate below Re 5e5, by MixedPlate to 1e8
//
// d is the vapour's diffusivity in air at t and p.
func PlateTransfer(speed quantity.Speed, length quantity.Length, d quantity.Diffusivity, t quantity.Temperature, p quantity.Pressure) (quantity.Speed, error) {
	if err := checkSurface("transfer in moving air", length, d, t, p); err != nil {
		return 0, err
	}
	if !(speed >= 0) {
		return 0, fmt.Errorf("transfer in moving air: a speed of %.4g m/s is outside 0 m/s and up", float64(speed))
	}
	nu := float64(KinematicViscosity(t, p))
	sh, err := Plate(float64(speed)*float64(length)/nu, nu/float64(d))
	if err != nil {
		return 0, fmt.Errorf("transfer in moving air: %w", err)
	}
	return quantity.Speed(sh * float64(d) / float64(length)), nil
}

// StillTransfer gives the mean transfer coefficient of a vapour from an upright
// print in air that moves only because print and room differ in temperature.
// Heat drives the flow; the vapour goes with it by the analogy of Chilton and
// Colburn. (The vapour's own weight is left out: over slow solvents the air holds
// too little of it to count.)
//
//	h = Nu·(α/L)·(D/α)^⅔, Nu by VerticalPlate at Gr = g·ΔT·L³/(T·ν²)
//	T. H. Chilton and A. P. Colburn, Ind. Eng. Chem. 26 (1934) 1183
//
// length is the print's height; the sign of span does not matter.
func StillTransfer(length quantity.Length, d quantity.Diffusivity, span quantity.TemperatureDifference, t quantity.Temperature, p quantity.Pressure) (quantity.Speed, error) {
	if err := checkSurface("transfer in still air", length, d, t, p); err != nil {
		return 0, err
	}
	if !(math.Abs(float64(span)) <= 100) {
		return 0, fmt.Errorf("transfer in still air: a difference of %.4g K is outside -100 K to 100 K", float64(span))
	}
	nu, alpha, l := float64(KinematicViscosity(t, p)), float64(ThermalDiffusivity(t, p)), float64(length)
	gr := gravity * math.Abs(float64(span)) / float64(t) * l * l * l / (nu * nu)
	nusselt, err := VerticalPlate(gr, nu/alpha)
	if err != nil {
		return 0, fmt.Errorf("transfer in still air: %w", err)
	}
	return quantity.Speed(nusselt * alpha / l * math.Pow(float64(d)/alpha, 2.0/3)), nil
}

// FaceTransfer gives the mean transfer coefficient of a vapour from a print's
// face in a room: that of the moving air, or that of still air 1 K off the
// print's temperature, whichever is greater. The 1 K is an assumption.
func FaceTransfer(speed quantity.Speed, length quantity.Length, d quantity.Diffusivity, t quantity.Temperature, p quantity.Pressure) (quantity.Speed, error) {
	moving, err := PlateTransfer(speed, length, d, t, p)
	if err != nil {
		return 0, err
	}
	still, err := StillTransfer(length, d, stillSpan, t, p)
	if err != nil {
		return 0, err
	}
	return max(moving, still), nil
}

func checkSurface(what string, length quantity.Length, d quantity.Diffusivity, t quantity.Temperature, p quantity.Pressure) error {
	if !(length > 0 && length <= 100) {
		return fmt.Errorf("%s: a length of %.4g m is outside 0 m to 100 m", what, float64(length))
	}
	if !(d > 0 && d < 1) {
		return fmt.Errorf("%s: a diffusivity in air of %.4g m²/s is outside 0 m²/s to 1 m²/s", what, float64(d))
	}
	return checkAir(what, t, p)
}
