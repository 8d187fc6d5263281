package paper

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// ErrBoils says that the vapour of a sheet's water has the pressure around it: trapped gas
// swells without bound.
var ErrBoils = errors.New("the sheet's water boils")

// VapourPressure is the pressure of water vapour over a material that is heated to t with
// its moisture kept: p_w = a(t, m)·p_s(t).
func VapourPressure(i Isotherm, m quantity.Fraction, t quantity.Temperature) (quantity.Pressure, error) {
	a, err := Activity(i, m, t)
	if err != nil {
		return 0, err
	}
	saturated, err := air.SaturationPressure(t)
	return saturated * quantity.Pressure(a), err
}

// Trap is air that a nip shuts in between a film and a sheet.
//
// The air is always saturated with the vapour of the sheet, whose moisture stays as it was:
// a few micrometres of gas hold some 0.01 g/m² of vapour, a sheet holds grams. The film is
// taken to hold nothing down: neither its stiffness nor the bond resists. Sheet and air have
// the temperature of the bond line. A sheet that breathes through its back lets part of
// the vapour go; that is in the limits (OpenLimit, SealedLimit), not here.
type Trap struct {
	Sheet    Isotherm             // what lies under the film; a Sheet, or Sheet.Face above a seal
	Moisture quantity.Fraction    // of Sheet, kg/kg
	Start    quantity.Temperature // T₀, sheet and air when they were shut in
	Pressure quantity.Pressure    // p, of the room
	Nip      quantity.Pressure    // of the nip on top of that; 0 once the sheet has left it
}

// Conditioned is the trap of a sheet that has come to equilibrium with a room of humidity
// rh, temperature t and pressure p, and goes into the nip from there.
func Conditioned(sheet Isotherm, rh quantity.Fraction, t quantity.Temperature, p quantity.Pressure) (Trap, error) {
	m, err := sheet.Moisture(rh, t)
	return Trap{Sheet: sheet, Moisture: m, Start: t, Pressure: p}, err
}

// Swelling is the volume of the trapped air at bond line temperature t over its volume when
// it was shut in at the room's pressure:
//
//	r = (T/T₀)·(p − p_w0)/(p + p_nip − p_w)
//
// from the ideal gas law for the dry air in it. When p_w reaches p + p_nip it is +Inf with
// the error ErrBoils.
func (tr Trap) Swelling(t quantity.Temperature) (float64, error) {
	fresh, err := tr.fresh()
	if err != nil {
		return 0, err
	}
	return tr.swelling(t, fresh)
}

// fresh is the pressure of the dry air when it was shut in, p − p_w0.
func (tr Trap) fresh() (quantity.Pressure, error) {
	if !(tr.Pressure > 0) || math.IsInf(float64(tr.Pressure), 1) || !(tr.Nip >= 0) || math.IsInf(float64(tr.Nip), 1) {
		return 0, fmt.Errorf("trapped air at %.4g Pa with %.4g Pa from the nip: outside a room above 0 Pa and a nip of 0 Pa and up",
			float64(tr.Pressure), float64(tr.Nip))
	}
	vapour, err := VapourPressure(tr.Sheet, tr.Moisture, tr.Start)
	if err != nil {
		return 0, fmt.Errorf("trapped air at the start: %w", err)
	}
	if vapour >= tr.Pressure {
		return 0, fmt.Errorf("trapped air at the start, %.4g °C: %w: %.4g Pa of vapour is outside 0 Pa to the room's %.4g Pa",
			tr.Start.Celsius(), ErrBoils, float64(vapour), float64(tr.Pressure))
	}
	return tr.Pressure - vapour, nil
}

func (tr Trap) swelling(t quantity.Temperature, fresh quantity.Pressure) (float64, error) {
	vapour, err := VapourPressure(tr.Sheet, tr.Moisture, t)
	if err != nil {
		return 0, fmt.Errorf("trapped air: %w", err)
	}
	around := tr.Pressure + tr.Nip
	if vapour >= around {
		return math.Inf(1), ErrBoils
	}
	return float64(t/tr.Start) * float64(fresh/(around-vapour)), nil
}
