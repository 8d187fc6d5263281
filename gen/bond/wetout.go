package bond

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Overnight is the time from the end of a working day to the next morning, in which
// silvering is left to clear by itself: 16 h, an assumption.
const Overnight = 16 * quantity.Hour

// Adhesive is the sticky side of a film.
type Adhesive struct {
	Law     Law
	Surface quantity.SurfaceTension
	// Wetting is the cosine of its contact angle on the print; see Wetting.
	Wetting quantity.Fraction
	// Thickness of the layer; 0 is not known, and then it is always enough.
	Thickness quantity.Length
}

// Case is one film on one print, once through the laminator.
type Case struct {
	Adhesive Adhesive
	Relief   Relief
	Pass     []Sample             // nip and free run
	Rest     quantity.Temperature // at which it lies afterwards
	// Opposing is a pressure that works against the adhesive after the nip; see
	// SpringBack.
	Opposing quantity.Pressure
}

// Class says what becomes of the silvering, the air under the film.
type Class int

const (
	// InNip clears on its way through the laminator.
	InNip Class = iota
	// ByItself clears within Overnight as the print lies.
	ByItself
	// WillNot does not clear within Overnight, if ever: see Result.Ever.
	WillNot
)

// String is the class in words.
func (c Class) String() string {
	switch c {
	case InNip:
		return "clears in the nip"
	case ByItself:
		return "clears by itself overnight"
	case WillNot:
		return "will not clear by itself overnight"
	}
	return fmt.Sprintf("class %d", int(c))
}

// Result is how an adhesive wets out a print, with the figures on the way. Shares are
// of the relief's depth; 1 is wetted out.
type Result struct {
	Demand    float64           // supply that fills the relief
	Passage   Passage           // nip and free run
	Capillary quantity.Pressure // pulls the adhesive in
	Driving   quantity.Pressure // afterwards: capillary less opposing
	Resting   quantity.Viscosity
	Reach     quantity.Fraction // most that the adhesive's thickness can fill
	AfterNip  quantity.Fraction // at the end of the pass
	AfterHour quantity.Fraction
	AfterDay  quantity.Fraction
	// Ever says that it wets out at all, and Clears how long after the pass; 0 is in it.
	Ever   bool
	Clears quantity.Time
	Class  Class
	// Extrapolates says that a viscosity lies outside the range of its law.
	Extrapolates bool
}

// WetOut computes a case. The capillary acts in the nip too. After the pass the
// adhesive lies at the case's rest temperature; a melt that has set stays as it is.
func (c Case) WetOut() (Result, error) {
	r, err := c.start()
	if err != nil {
		return r, err
	}
	r.AfterNip = c.share(&r, 0)
	r.AfterHour = c.share(&r, quantity.Hour)
	r.AfterDay = c.share(&r, quantity.Day)
	missing := r.Demand - r.Passage.Supply
	rate := r.rate()
	switch {
	case r.Reach < 1:
	case missing <= 0:
		r.Ever = true
	case rate > 0:
		r.Ever, r.Clears = true, quantity.Time(missing/rate)
	}
	switch {
	case r.Ever && r.Clears == 0:
		r.Class = InNip
	case r.Ever && r.Clears <= Overnight:
		r.Class = ByItself
	default:
		r.Class = WillNot
	}
	return r, nil
}

// BondUp is the share of the relief filled at times after the pass: how a bond grows
// as the print lies. Peel strength is not computed, only the area that touches.
func (c Case) BondUp(times []quantity.Time) ([]quantity.Fraction, error) {
	r, err := c.start()
	if err != nil {
		return nil, err
	}
	shares := make([]quantity.Fraction, len(times))
	for i, t := range times {
		if !(t >= 0) {
			return nil, fmt.Errorf("bond after %g s: it must be 0 or more", float64(t))
		}
		shares[i] = c.share(&r, t)
	}
	return shares, nil
}

// start follows the pass and finds what drives the adhesive afterwards.
func (c Case) start() (Result, error) {
	var r Result
	if err := c.check(); err != nil {
		return r, err
	}
	a := c.Adhesive
	r.Demand = c.Relief.Demand(1)
	r.Reach = c.Relief.Reach(a.Thickness)
	r.Capillary = c.Relief.Capillary(a.Surface, a.Wetting)
	var err error
	if r.Passage, err = Pass(a.Law, c.Pass, r.Capillary); err != nil {
		return r, err
	}
	r.Driving = r.Capillary - c.Opposing
	r.Extrapolates = r.Passage.Extrapolates
	melts, sets := a.Law.Range()
	if c.Rest >= melts || (r.Passage.Fluid && c.Rest >= sets) {
		if r.Resting, err = a.Law.Viscosity(c.Rest); err != nil {
			return r, err
		}
		r.Extrapolates = r.Extrapolates || a.Law.Extrapolates(c.Rest)
	}
	return r, nil
}

// rate is the supply per second after the pass.
func (r *Result) rate() float64 {
	if r.Resting == 0 || !(r.Driving > 0) {
		return 0
	}
	return float64(r.Driving) / float64(r.Resting)
}

// share is what is filled at a time after the pass.
func (c Case) share(r *Result, t quantity.Time) quantity.Fraction {
	supply := r.Passage.Supply
	if rate := r.rate(); rate > 0 {
		supply += rate * float64(t)
	}
	return min(r.Reach, c.Relief.Filled(supply))
}

func (c Case) check() error {
	if err := c.Relief.check(); err != nil {
		return err
	}
	a := c.Adhesive
	if a.Law == nil {
		return fmt.Errorf("an adhesive without a law of viscosity")
	}
	if !(a.Surface >= 0) || !(math.Abs(float64(a.Wetting)) <= 1) || !(a.Thickness >= 0) {
		return fmt.Errorf("an adhesive of %g N/m with a cosine of %g, %g m thick: a cosine lies from -1 to 1 and the others are 0 or more",
			float64(a.Surface), float64(a.Wetting), float64(a.Thickness))
	}
	if !(c.Rest > 0) || !(c.Opposing >= 0) {
		return fmt.Errorf("a print that lies at %g K against %g Pa: the first must be above 0, the second not below", float64(c.Rest), float64(c.Opposing))
	}
	return nil
}

// Spread is a case at its best values and at both ends of what is known.
type Spread struct {
	Best, Easy, Hard Result
	// Certain says that both ends come to the same class.
	Certain bool
}

// SpreadOf computes a case at its best values, with everything as easy as the bands
// allow (thin adhesive, shallow relief, high pressure) and with everything as hard.
func SpreadOf(best, easy, hard Case) (Spread, error) {
	var s Spread
	for _, x := range []struct {
		name string
		c    Case
		to   *Result
	}{{"best", best, &s.Best}, {"easy", easy, &s.Easy}, {"hard", hard, &s.Hard}} {
		r, err := x.c.WetOut()
		if err != nil {
			return s, fmt.Errorf("the %s end: %w", x.name, err)
		}
		*x.to = r
	}
	if s.Easy.AfterDay < s.Hard.AfterDay || s.Easy.Class > s.Hard.Class {
		return s, fmt.Errorf("the easy end (%s) comes out harder than the hard one (%s)", s.Easy.Class, s.Hard.Class)
	}
	s.Certain = s.Easy.Class == s.Hard.Class
	return s, nil
}
