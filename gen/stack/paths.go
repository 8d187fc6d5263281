package stack

import (
	"fmt"
	"math"

	"laydown/gen/air"
	"laydown/gen/paper"
	"laydown/gen/quantity"
)

// Band is an answer for what is known within a band only: what the low, the best and
// the high value of it give. Of a time, the low diffusivity gives the longest.
type Band[Q quantity.Quantity] struct {
	Low, Best, High Q
}

// Range is the least and the most of the three.
func (b Band[Q]) Range() (least, most Q) {
	return min(b.Low, b.Best, b.High), max(b.Low, b.Best, b.High)
}

// The two published diffusivities of water in paper, by which path. "Molecular
// Diffusion of Water in Paper (II)", Journal of Korea TAPPI, 1998, abstract:
// 0.092 cm²/min through the pores, as vapour in the sheet; 1.2e-5 cm²/min in the fibre.
// Both were measured through the thickness.
const (
	PoresThrough quantity.Diffusivity = 0.092e-4 / 60
	Fibre        quantity.Diffusivity = 1.2e-5 * 1e-4 / 60
)

// PoresAlong is how fast vapour moves through the pores in the plane of a sheet. It was
// published only that this is very much faster than through the thickness. So the
// published figure is the low end, ten times it the high end (an assumption), and their
// geometric mean the best.
var PoresAlong = Band[quantity.Diffusivity]{
	Low:  PoresThrough,
	Best: PoresThrough * quantity.Diffusivity(3.1622776601683795),
	High: 10 * PoresThrough,
}

// Sheets are what a stack is made of, as far as water is concerned.
type Sheets struct {
	// Sheet gives the moisture of the sheet at a humidity, kg/kg dry.
	Sheet paper.Isotherm
	// Thickness and Density (dry) of one sheet.
	Thickness quantity.Length
	Density   quantity.Density
	// Gap is the mean air between two sheets. Pressed paper keeps about its roughness,
	// 1 to 15 µm (from memory); a loose pile several times that.
	Gap Band[quantity.Length]
	// Along is the pores' diffusivity in the plane, PoresAlong where nothing is known;
	// Through that through the thickness; Fibre that in the fibre.
	Along          Band[quantity.Diffusivity]
	Through, Fibre quantity.Diffusivity
}

// Usual fills what a shop does not know of its sheets: the published diffusivities and
// the gaps of a pressed stack.
func Usual(sheet paper.Isotherm, thickness quantity.Length, density quantity.Density) Sheets {
	return Sheets{
		Sheet: sheet, Thickness: thickness, Density: density,
		Gap:   Band[quantity.Length]{Low: 0, Best: 5e-6, High: 15e-6},
		Along: PoresAlong, Through: PoresThrough, Fibre: Fibre,
	}
}

// Change is what happens to a stack: it comes from one humidity into a room of another.
type Change struct {
	From, To    quantity.Fraction // relative humidity in the stack at first; in the room
	Temperature quantity.Temperature
	Pressure    quantity.Pressure
}

// Diffusivities are a stack's diffusivities of moisture (of kg water per kg paper, not
// of vapour), with the figures on the way.
type Diffusivities struct {
	MoistureFrom, MoistureTo quantity.Fraction // kg/kg
	Saturated                quantity.Density  // ρ_s, vapour in saturated air
	// Store is S = ρ_p·ΔM/Δρ_v: how much more water a sheet takes up than so much
	// air, per change of the vapour. It turns a vapour's diffusivity into that of
	// moisture.
	Store  float64
	Air    quantity.Diffusivity       // of water vapour in free air
	Gaps   Band[quantity.Fraction]    // share of the stack's height that is air between sheets
	Vapour Band[quantity.Diffusivity] // in the plane, of vapour through pores and gaps
	Along  Band[quantity.Diffusivity] // in the plane, of moisture
	// Through is the diffusivity of moisture across the sheets, the same whatever the
	// gaps: a sheet resists a hundred times as much as the air beside it.
	Through quantity.Diffusivity
}

// Diffusivities works the paths of water together.
//
//	J = −[(1−φ)·D_p + φ·D_a]·∂ρ_v/∂x − (1−φ)·ρ_p·D_f·∂M/∂x     pores, gaps and fibre side by side
//	(1−φ)·ρ_p·∂M/∂t = −∂J/∂x                                   what the vapour itself holds is 1/S of it
//	ρ_v = a·ρ_s,  S = ρ_p·ΔM/(ρ_s·Δa)                          secant of the isotherm between the two humidities
//	D_M = [(1−φ)·D_p + φ·D_a]/[(1−φ)·S] + D_f
//
// The isotherm's secant makes the equation linear. It is steeper at the damp end, so a
// real front is blunter in damp paper and sharper in dry paper.
func (s Sheets) Diffusivities(c Change) (Diffusivities, error) {
	var d Diffusivities
	if err := s.check(); err != nil {
		return d, err
	}
	if !(c.From >= 0 && c.From < 1) || !(c.To >= 0 && c.To < 1) || c.From == c.To {
		return d, fmt.Errorf("a stack that goes from %.3g %% to %.3g %% relative humidity: both must be from 0 to below 100 %%, and differ", 100*float64(c.From), 100*float64(c.To))
	}
	p, err := air.SaturationPressure(c.Temperature)
	if err != nil {
		return d, err
	}
	d.Saturated = air.VapourDensity(p, waterMolarMass, c.Temperature)
	if d.Air, err = air.WaterDiffusivity(c.Temperature, c.Pressure); err != nil {
		return d, err
	}
	if d.MoistureFrom, err = s.Sheet.Moisture(c.From, c.Temperature); err != nil {
		return d, err
	}
	if d.MoistureTo, err = s.Sheet.Moisture(c.To, c.Temperature); err != nil {
		return d, err
	}
	slope := float64((d.MoistureTo - d.MoistureFrom) / (c.To - c.From))
	if !positive(slope) {
		return d, fmt.Errorf("the sheet's moisture does not rise from %.3g %% to %.3g %% relative humidity", 100*float64(c.From), 100*float64(c.To))
	}
	d.Store = float64(s.Density) * slope / float64(d.Saturated)
	d.Through = quantity.Diffusivity(float64(s.Through)/d.Store) + s.Fibre

	path := func(gap quantity.Length, pores quantity.Diffusivity) (quantity.Fraction, quantity.Diffusivity, quantity.Diffusivity) {
		share := float64(gap / (gap + s.Thickness))
		vapour := (1-share)*float64(pores) + share*float64(d.Air)
		return quantity.Fraction(share), quantity.Diffusivity(vapour), quantity.Diffusivity(vapour/((1-share)*d.Store)) + s.Fibre
	}
	d.Gaps.Low, d.Vapour.Low, d.Along.Low = path(s.Gap.Low, s.Along.Low)
	d.Gaps.Best, d.Vapour.Best, d.Along.Best = path(s.Gap.Best, s.Along.Best)
	d.Gaps.High, d.Vapour.High, d.Along.High = path(s.Gap.High, s.Along.High)
	return d, nil
}

const waterMolarMass quantity.MolarMass = 18.015268e-3 // as IAPWS has it

func (s Sheets) check() error {
	switch {
	case s.Sheet == nil:
		return fmt.Errorf("a stack of sheets without an isotherm")
	case !positive(float64(s.Thickness)) || !positive(float64(s.Density)):
		return fmt.Errorf("a stack of sheets %g m thick of %g kg/m³: both must be above 0", float64(s.Thickness), float64(s.Density))
	case !(s.Gap.Low >= 0 && s.Gap.Low <= s.Gap.Best && s.Gap.Best <= s.Gap.High) || math.IsInf(float64(s.Gap.High), 1):
		return fmt.Errorf("gaps of %g, %g and %g m between sheets: they must rise from 0 or more", float64(s.Gap.Low), float64(s.Gap.Best), float64(s.Gap.High))
	case !(s.Along.Low > 0 && s.Along.Low <= s.Along.Best && s.Along.Best <= s.Along.High) || math.IsInf(float64(s.Along.High), 1):
		return fmt.Errorf("diffusivities of %g, %g and %g m²/s along the sheets: they must rise from above 0", float64(s.Along.Low), float64(s.Along.Best), float64(s.Along.High))
	case !positive(float64(s.Through)) || !(s.Fibre >= 0) || math.IsInf(float64(s.Fibre), 1):
		return fmt.Errorf("diffusivities of %g m²/s through the sheets and %g in the fibre: above 0, and 0 or more", float64(s.Through), float64(s.Fibre))
	}
	return nil
}
