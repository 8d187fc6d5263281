package paper

import (
	"errors"
	"math"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// OpenLimit is the swelling at which a blister shows on a sheet that breathes through its
// back. It is calibrated, with Pulp, on two observations (OpenEvidence; common practice, no
// published source), which put it between 3.9 and 6.2 at the usual fibre share; their
// geometric mean is 4.9. The upper bound rests on that share: 10 at 70 %, 4.1 at 90 %. The
// limit goes with Pulp alone: Wood would give 3.2 to 4.8, PaltakariKarlsson 6.5 to 300
// (Opinions).
//
// SealedLimit is the same for a sheet that cannot breathe through its back, with the
// isotherm of Gelatine. Its two observations (SealedEvidence) put it between 1.9 and 2.2, but
// the isotherm of the coat is from memory and their humidities are assumed: low confidence.
const (
	OpenLimit   = 5.0
	SealedLimit = 2.0
)

// UsualFibreShare is the fibre in an uncoated printing paper, the rest being filler and
// size: 70–90 %, from memory.
const UsualFibreShare = 0.78

// Evidence is something seen at the laminator that bounds the swelling at which a
// blister shows: clean runs from below, blisters from above.
type Evidence struct {
	What     string
	Trap     Trap
	BondLine quantity.Temperature
	Source   string
}

// Bounds are the swellings of two observations. The limit lies between them.
type Bounds struct {
	Clean, Blisters float64
}

// Middle is the geometric mean of the bounds: the middle of a ratio. It is +Inf when the
// blisters are boiling water.
func (b Bounds) Middle() float64 { return math.Sqrt(b.Clean * b.Blisters) }

// OpenEvidence is what OpenLimit is calibrated on, with the fibre's isotherm and the fibre
// share of the uncoated paper seen. Both are of a sheet at 23 °C and sea level.
//
// At 50 % relative humidity such a sheet holds 7.4 % by Pulp already, more than the 7 % of
// the second observation: moistures named at laminators are of moist mass or of a meter,
// and rough. The two bounds part by the 5 K between them, not by the moisture.
func OpenEvidence(fibre Isotherm, share quantity.Fraction) (clean, blisters Evidence, err error) {
	sheet := Sheet{Fibre: fibre, FibreShare: share}
	room := quantity.FromCelsius(23)
	dry, err := Conditioned(sheet, 0.5, room, air.Atmosphere)
	damp := dry
	damp.Moisture = 0.07
	const source = "common practice, no source"
	return Evidence{"uncoated paper conditioned at 50 % runs clean", dry, quantity.FromCelsius(95), source},
		Evidence{"uncoated paper of 7 % moisture blisters from about here", damp, quantity.FromCelsius(100), source}, err
}

// SealedEvidence is what SealedLimit is calibrated on: a resin-coated photo print with the
// receiving layer given, at 23 °C and sea level.
func SealedEvidence(coat Isotherm) (clean, blisters Evidence, err error) {
	room := quantity.FromCelsius(23)
	dry, err := Conditioned(coat, 0.5, room, air.Atmosphere)
	if err != nil {
		return Evidence{}, Evidence{}, err
	}
	damp, err := Conditioned(coat, 0.8, room, air.Atmosphere)
	return Evidence{"a photo print is heat-mounted at 82 °C day by day; 50 % relative humidity assumed", dry, quantity.FromCelsius(82),
			"Paschke, Laminate First, Then Mount, 2014, for the temperature"},
		Evidence{"a swellable coat that is not dry (80 % relative humidity assumed) bubbles from 60–80 °C", damp, quantity.FromCelsius(80),
			"common practice, no source"}, err
}

// Calibrate gives the swellings of two observations: Blisters is +Inf where the isotherm
// has the water boil.
func Calibrate(clean, blisters Evidence) (Bounds, error) {
	low, err := clean.Trap.Swelling(clean.BondLine)
	if err != nil {
		return Bounds{}, err
	}
	high, err := blisters.Trap.Swelling(blisters.BondLine)
	if err != nil && !errors.Is(err, ErrBoils) {
		return Bounds{}, err
	}
	return Bounds{low, high}, nil
}

// Opinion is an isotherm with what calibration gives for it.
type Opinion struct {
	Name     string
	Isotherm Isotherm
	Bounds   Bounds // of the swelling on an open back; Bounds.Middle is its own limit
}

// Opinions are the three isotherms, Pulp first, each with its own bounds of the swelling for
// an uncoated paper of the fibre share given. A limit belongs to the isotherm that it was
// calibrated with: compare temperatures at each one's own.
func Opinions(share quantity.Fraction) ([]Opinion, error) {
	opinions := []Opinion{
		{Name: "bleached pulp, GAB (Tryding et al. 2022)", Isotherm: Pulp},
		{Name: "wood (Wood Handbook)", Isotherm: Wood{}},
		{Name: "paper (Paltakari and Karlsson)", Isotherm: PaltakariKarlsson{}},
	}
	for n, o := range opinions {
		clean, blisters, err := OpenEvidence(o.Isotherm, share)
		if err != nil {
			return nil, err
		}
		if opinions[n].Bounds, err = Calibrate(clean, blisters); err != nil {
			return nil, err
		}
	}
	return opinions, nil
}
