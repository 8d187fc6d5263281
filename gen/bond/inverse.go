package bond

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Lowest is the lowest bond line that does what is wanted.
type Lowest struct {
	Temperature quantity.Temperature
	// Needed is the viscosity that it must come down to, Demand the supply.
	Needed quantity.Viscosity
	Demand float64
	// Melting says that the adhesive's melting rules, not its thickness.
	Melting      bool
	Extrapolates bool
}

// LowestApplication is the lowest even temperature of the bond line at which a nip of
// a mean pressure fills a share of the relief in a dwell: that at which
// η = (p + p_c)·dwell/Demand, or the adhesive's melting temperature where that is
// higher.
func (a Adhesive) LowestApplication(r Relief, share quantity.Fraction, p quantity.Pressure, dwell quantity.Time) (Lowest, error) {
	var l Lowest
	if err := r.check(); err != nil {
		return l, err
	}
	if !(share > 0 && share <= 1) || !(p >= 0) || !(dwell > 0) {
		return l, fmt.Errorf("%g of the relief under %g Pa in %g s: a share lies above 0 and up to 1, a pressure is 0 or more and a dwell above 0",
			float64(share), float64(p), float64(dwell))
	}
	if reach := r.Reach(a.Thickness); reach < share {
		return l, fmt.Errorf("the adhesive is enough for %.3g of the relief, %.3g is wanted", float64(reach), float64(share))
	}
	drive := p + r.Capillary(a.Surface, a.Wetting)
	if !(drive > 0) {
		return l, fmt.Errorf("%g Pa drive the adhesive: it must be above 0", float64(drive))
	}
	l.Demand = r.Demand(share)
	l.Needed = quantity.Viscosity(float64(drive) * float64(dwell) / l.Demand)
	melts, _ := a.Law.Range()
	t, err := a.Law.Temperature(l.Needed)
	switch {
	case errors.Is(err, ErrGlassy):
		t = melts
	case err != nil:
		return l, err
	}
	l.Melting = t <= melts
	l.Temperature = max(t, melts)
	l.Extrapolates = a.Law.Extrapolates(l.Temperature)
	return l, nil
}

// DwellFor is how long a nip of a mean pressure must press to fill a share of the
// relief at an even temperature.
func (a Adhesive) DwellFor(r Relief, share quantity.Fraction, p quantity.Pressure, t quantity.Temperature) (quantity.Time, error) {
	if err := r.check(); err != nil {
		return 0, err
	}
	v, err := a.Law.Viscosity(t)
	if err != nil {
		return 0, err
	}
	drive := p + r.Capillary(a.Surface, a.Wetting)
	if !(drive > 0) || !(share > 0 && share <= 1) {
		return 0, fmt.Errorf("%g Pa drive the adhesive to fill %g of the relief: a share lies above 0 and up to 1, the pressure above 0", float64(drive), float64(share))
	}
	return quantity.Time(r.Demand(share) * float64(v) / float64(drive)), nil
}

// Warming is what a warmer bond line buys.
type Warming struct {
	From, To         quantity.Temperature
	Faster           quantity.Fraction // times as fast
	ShareFrom        quantity.Fraction // filled in the dwell at From
	ShareTo          quantity.Fraction // and at To
	ClearFrom        quantity.Time     // dwell that fills all at From
	ClearTo          quantity.Time     // and at To
	ExtrapolatesFrom bool
	ExtrapolatesTo   bool
}

// Warm compares two even temperatures of the bond line under one nip.
func (a Adhesive) Warm(r Relief, p quantity.Pressure, dwell quantity.Time, from, to quantity.Temperature) (Warming, error) {
	w := Warming{From: from, To: to}
	if !(dwell >= 0) {
		return w, fmt.Errorf("a dwell of %g s: it must be 0 or more", float64(dwell))
	}
	var err error
	if w.Faster, err = Faster(a.Law, from, to); err != nil {
		return w, err
	}
	if w.ClearFrom, err = a.DwellFor(r, 1, p, from); err != nil {
		return w, err
	}
	if w.ClearTo, err = a.DwellFor(r, 1, p, to); err != nil {
		return w, err
	}
	full, reach := r.Demand(1), r.Reach(a.Thickness)
	w.ShareFrom = min(reach, r.Filled(full*float64(dwell/w.ClearFrom)))
	w.ShareTo = min(reach, r.Filled(full*float64(dwell/w.ClearTo)))
	w.ExtrapolatesFrom, w.ExtrapolatesTo = a.Law.Extrapolates(from), a.Law.Extrapolates(to)
	return w, nil
}

// SqueezeOut is how thin a layer becomes that a nip presses out at both of its edges:
// a strip as wide as the nip is long, under a mean pressure.
//
//	1/h² = 1/h₀² + 2·p·t/(η·B²)
//
// (Reynolds' equation for a long strip, W/L = η·B³/h³·(−dh/dt), as in lubrication texts.)
// It shows that a nip leaves the layer as thick as it was: what fills the relief comes
// from above it, not along the web.
func SqueezeOut(h quantity.Length, v quantity.Viscosity, p quantity.Pressure, nip quantity.Length, t quantity.Time) quantity.Length {
	b := float64(nip)
	return quantity.Length(1 / math.Sqrt(1/float64(h*h)+2*float64(p)*float64(t)/(float64(v)*b*b)))
}

// DiscTime is how long a force, as a mean pressure over a disc of radius R, takes to
// squeeze a layer from h₀ to h:
//
//	t = 3η·R²/(4p)·(1/h² − 1/h₀²), p = F/(π·R²)
//	J. Stefan, Sitzungsber. Akad. Wiss. Wien 69 (1874) 713: F = 3π·η·R⁴/(2h³)·(−dh/dt)
func DiscTime(v quantity.Viscosity, radius quantity.Length, p quantity.Pressure, from, to quantity.Length) quantity.Time {
	return quantity.Time(3 * float64(v) * float64(radius*radius) / (4 * float64(p)) * (1/float64(to*to) - 1/float64(from*from)))
}
