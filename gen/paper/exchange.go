package paper

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// ThroughPaper is the diffusivity of water vapour through the thickness of paper,
// counted on the vapour between its fibres, m²/s. It follows from a diffusivity of
// 3e-11 m²/s counted on the moisture (1e-11 to 1e-10, of low confidence) times the slope
// of the water held against the vapour beside it, about 5060 at 23 °C. A factor of three
// either way.
const ThroughPaper quantity.Diffusivity = 1.5e-7

// Exchange is a sheet that gives water to the air or takes it up, while its temperature
// changes as it will.
//
//	dM/dt = −n·(ρ_w(T, M) − ρ_a)/(R·m)      a lumped balance of the water
//	ρ_w = a(T, M)·p_s(T)/(R_w·T)            vapour over the sheet
//	R = 1/h + ℓ/(3·D)                       air, and the sheet's own depth
//	M    moisture, kg water per kg dry      m   dry mass, kg/m²
//	ρ_a  vapour in the air, kg/m³           n   open faces, 1 or 2
//	h    mass transfer in the air, m/s      ℓ   depth: the thickness over n
//	D    ThroughPaper, m²/s
//
// ℓ/(3·D) is the resistance of a slab with one closed face whose profile is a parabola:
// right once the change has reached the far side, too slow before. It holds for sheets
// whose change takes seconds or more. The heat that leaving water takes is left out.
type Exchange struct {
	Sheet     Isotherm
	Dry       quantity.Grammage
	Thickness quantity.Length
	Faces     int
	Air       quantity.Speed
	// Room is the temperature of the air, Humidity its relative humidity.
	Room     quantity.Temperature
	Humidity quantity.Fraction
}

// A step changes the moisture by at most a twentieth of itself, and grows with the time
// that has passed up to longestStep, well below the half minute and more that even a thin
// sheet takes.
const (
	exchangeShare                = 0.05
	shortestStep   quantity.Time = 0.05
	longestStep    quantity.Time = 5
	exchangeGrowth               = 20
)

// March takes a sheet of a moisture through a time. temperature gives the sheet's at each
// moment.
func (e Exchange) March(m quantity.Fraction, total quantity.Time, temperature func(quantity.Time) quantity.Temperature) (quantity.Fraction, error) {
	if err := e.check(); err != nil {
		return 0, err
	}
	around, err := vapourDensity(float64(e.Humidity), e.Room)
	if err != nil {
		return 0, err
	}
	for t := quantity.Time(0); t < total; {
		rate, err := e.rate(m, temperature(t), around)
		if err != nil {
			return 0, err
		}
		step := min(total-t, longestStep, max(shortestStep, t/exchangeGrowth))
		if most := exchangeShare * float64(m); math.Abs(rate)*float64(step) > most {
			step = quantity.Time(most / math.Abs(rate))
		}
		half, err := e.rate(m+quantity.Fraction(rate*float64(step)/2), temperature(t+step/2), around)
		if err != nil {
			return 0, err
		}
		m += quantity.Fraction(half * float64(step))
		t += step
	}
	return m, nil
}

// rate is dM/dt, 1/s.
func (e Exchange) rate(m quantity.Fraction, t quantity.Temperature, around float64) (float64, error) {
	a, err := Activity(e.Sheet, m, t)
	if err != nil {
		if !errors.Is(err, ErrWet) {
			return 0, err
		}
		a = 1
	}
	over, err := vapourDensity(float64(a), t)
	if err != nil {
		return 0, err
	}
	n := float64(e.Faces)
	resistance := 1/float64(e.Air) + float64(e.Thickness)/n/(3*float64(ThroughPaper))
	return -n * (over - around) / (resistance * float64(e.Dry)), nil
}

func (e Exchange) check() error {
	if !(e.Dry > 0 && e.Thickness > 0 && e.Air > 0) || e.Faces < 1 || e.Faces > 2 || e.Sheet == nil {
		return fmt.Errorf("a sheet of %.4g g/m², %.4g m, %d open faces, transfer %.4g m/s: all must be above 0, the faces 1 or 2",
			e.Dry.GramsPerSquareMetre(), float64(e.Thickness), e.Faces, float64(e.Air))
	}
	if !(e.Humidity >= 0 && e.Humidity <= 1) {
		return fmt.Errorf("a humidity of %.4g %% is outside 0 %% to 100 %%", e.Humidity.Percent())
	}
	return nil
}

// vapourDensity is the vapour in air of an activity, kg/m³.
func vapourDensity(activity float64, t quantity.Temperature) (float64, error) {
	p, err := air.SaturationPressure(t)
	return activity * float64(p) / (gasConstant * float64(t)), err
}
