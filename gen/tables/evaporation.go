package tables

import (
	"errors"
	"fmt"

	"laydown/gen/air"
	"laydown/gen/drying"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// evaporation is an ink whose carrier leaves an absorbing layer of a medium.
type evaporation struct {
	t       *Tables
	ink     *shop.Ink
	carrier *shop.Carrier
	medium  *shop.Medium
	// diffusivity of the carrier in the ink's reference medium at the maker's
	// temperature: solved from the maker's wait.
	reference quantity.Diffusivity
	refMedium *shop.Medium
}

// slab is the evaporation in one place, with what it was made of.
type slab struct {
	drying.Setting
	saturated   quantity.Pressure // vapour pressure of the pure carrier
	vapour      quantity.Density  // its vapour's concentration over a saturated layer
	activity    float64           // 1, or 1-RH for a carrier that holds water (Raoult)
	inAir       quantity.Diffusivity
	air         quantity.Speed // transfer coefficient of the air at the face
	arrhenius   float64        // D here over D at the maker's temperature
	extrapolate bool           // the vapour pressure lies outside the range of its fit
}

// load is the carrier in a print as it leaves the printer.
func (e evaporation) load(coverage string) quantity.Grammage {
	return e.ink.Evaporation.Load.Best * quantity.Grammage(coverageRatio(e.ink, coverage))
}

// in returns the slab of a print in a place.
//
//	Face = h·c_sat(T)·a/C_ref, and the back's with 1/(1/h + R) for h
//	D(T) = D_ref · exp(-E/R·(1/T - 1/T_ref)) · mobility ratio
//	Floor = L·C_ref·c_room/(c_sat·a)
//
// with h the air's transfer coefficient, c_sat the concentration of saturated
// vapour, a the carrier's own activity (1-RH where it holds the room's water),
// C_ref the concentration in the layer that would saturate the air, R the
// resistance of the back, L the layer's thickness.
func (e evaporation) in(p place) (slab, error) {
	ev, layer := e.ink.Evaporation, e.medium.Drying
	var s slab
	curve := vapourOf(e.carrier)
	var err error
	if s.saturated, err = curve.Pressure(p.temperature); err != nil {
		return s, fmt.Errorf("vapour pressure of %s: %w", e.carrier.Name, err)
	}
	if a, ok := curve.(air.Antoine); ok {
		s.extrapolate = a.Extrapolates(p.temperature)
	}
	s.activity = 1
	if e.carrier.Hygroscopic {
		s.activity = 1 - float64(p.humidity)
	}
	s.vapour = air.VapourDensity(s.saturated, e.carrier.MolarMass.Best, p.temperature) * quantity.Density(s.activity)
	s.inAir = air.DiffusivityAt(e.carrier.InAir.Best, p.temperature, e.t.pressure)
	face, back, err := p.transfer(s.inAir, e.medium.Width.Best, e.t.pressure)
	if err != nil {
		return s, err
	}
	s.air = face
	partition := float64(s.vapour) / float64(ev.Saturation.Best)
	s.Face = face * quantity.Speed(partition)
	if layer.Back == "open" && back > 0 {
		s.Back = quantity.Speed(partition / (1/float64(back) + float64(layer.BackResistance.Best)))
	}
	s.Thickness = layer.Absorbs.Best
	s.arrhenius = drying.Arrhenius(ev.Activation.Best, e.ink.Makers.Temperature.Best, p.temperature)
	s.Diffusivity = e.reference * quantity.Diffusivity(s.arrhenius*e.mobility())
	s.Floor = quantity.Grammage(float64(s.Thickness) * float64(p.vapour) / partition)
	return s, nil
}

// mobility is the carrier's diffusivity in this medium over that in the ink's
// reference medium.
func (e evaporation) mobility() float64 {
	return float64(e.medium.Drying.Mobility.Best) / float64(e.refMedium.Drying.Mobility.Best)
}

func vapourOf(c *shop.Carrier) air.Vapour {
	if a := c.Antoine; a != nil {
		return air.Antoine{A: a.A, B: a.B, C: a.C, From: a.From.Best, To: a.To.Best}
	}
	v := c.VapourPoint
	return air.ClausiusClapeyron{P: v.Pressure.Best, At: v.At.Best, Heat: v.Heat.Best}
}

// coverageRatio is a coverage over the normal one.
func coverageRatio(ink *shop.Ink, coverage string) float64 {
	c := map[string]quantity.Fraction{
		"light":  ink.Coverage.Light.Best,
		"normal": ink.Coverage.Normal.Best,
		"heavy":  ink.Coverage.Heavy.Best,
	}[coverage]
	return float64(c / ink.Coverage.Normal.Best)
}

// anchorEvaporation solves the diffusivity in the reference medium from the
// maker's wait. Where none meets it, or the one that does is not believable,
// it warns with all the inputs and goes on.
func (t *Tables) anchorEvaporation(ink *shop.Ink) (anchor, []Warning, error) {
	ev, m := ink.Evaporation, ink.Makers
	medium := t.shop.Medium(m.Medium.ID)
	e := evaporation{t, ink, t.shop.Carrier(ev.Carrier.ID), medium, 1, medium}
	s, err := e.in(makersPlace(m, t.shop.Storage(m.Storage.ID)))
	if err != nil {
		return anchor{}, nil, err
	}
	load := e.load(m.Coverage)
	inputs := fmt.Sprintf("%s: the maker's wait of %s on %s (%s, %s coverage, %s, %s relative humidity), load %s, safe residue %s, layer %s, saturation %s, vapour pressure %s, transfer in the air %s",
		ink.Name, quantity.Metric(m.Wait.Best), medium.Name, t.shop.Storage(m.Storage.ID).Name, m.Coverage,
		quantity.Both(m.Temperature.Best), quantity.Metric(m.Humidity.Best), quantity.Metric(load), quantity.Metric(ev.Safe.Best),
		quantity.Both(s.Thickness), quantity.Metric(ev.Saturation.Best), quantity.Metric(s.saturated), quantity.Metric(s.air))
	d, err := drying.SolveDiffusivity(load, ev.Safe.Best, m.Wait.Best, s.Setting)
	if err != nil {
		if errors.Is(err, drying.ErrAlreadyDry) || errors.Is(err, drying.ErrTooSlow) || errors.Is(err, drying.ErrFloor) {
			return anchor{diffusivity: ev.Believable.Best}, []Warning{{Ink: ink.ID, Text: fmt.Sprintf(
				"No diffusivity meets %s (%v). The waits use %s instead.", inputs, err, quantity.Metric(ev.Believable.Best))}}, nil
		}
		return anchor{}, nil, err
	}
	solved := anchor{diffusivity: d, solved: true}
	if d < ev.Believable.Low || d > ev.Believable.High {
		return solved, []Warning{{Ink: ink.ID, Text: fmt.Sprintf(
			"The diffusivity that meets %s is %s, outside the believable %s to %s.",
			inputs, quantity.Metric(d), quantity.Metric(ev.Believable.Low), quantity.Metric(ev.Believable.High))}}, nil
	}
	return solved, nil, nil
}
