package bond

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Sample is the bond line at one moment of its way through nip and free run. Between
// samples temperature and pressure go in straight lines; two samples at the same time
// are a jump.
type Sample struct {
	Time        quantity.Time
	Temperature quantity.Temperature
	Pressure    quantity.Pressure // of the nip, above that of the room; 0 outside it
}

// Passage is what a way through nip and free run did to an adhesive.
type Passage struct {
	Supply   float64              // ∫ p/η dt
	Hottest  quantity.Temperature // highest of the bond line
	Thinnest quantity.Viscosity   // lowest while it flowed; 0 if it never did
	Flowed   quantity.Time        // for how long it flowed
	Nip      quantity.Time        // for how long it was pressed
	Fluid    bool                 // it still flows at the end
	// Extrapolates says that some of it lay outside the range of the law.
	Extrapolates bool
}

// finest is the greatest step of temperature over which ∫p/η dt is summed at once.
const finest = 0.5 // K

// Pass follows an adhesive along samples; extra is a pressure that acts all the way,
// such as that of the capillary. A melt flows once it has come to its melting
// temperature and until it falls to its setting temperature; where it does not flow
// nothing is filled. Where pressures come to less than 0 nothing moves (adhesive that
// drew back is not computed). The sum is Simpson's, with steps of half a kelvin or
// less and cuts where flow begins and ends.
func Pass(l Law, samples []Sample, extra quantity.Pressure) (Passage, error) {
	var p Passage
	if len(samples) < 2 {
		return p, fmt.Errorf("%d samples of the bond line: at least 2 are needed", len(samples))
	}
	melts, sets := l.Range()
	fluid := samples[0].Temperature >= melts
	for i, s := range samples {
		if !(s.Temperature > 0) || !(s.Pressure >= 0) || (i > 0 && !(s.Time >= samples[i-1].Time)) {
			return p, fmt.Errorf("sample %d of the bond line (%g s, %g K, %g Pa): temperatures must be above 0 K, pressures not below 0 and times in order",
				i+1, float64(s.Time), float64(s.Temperature), float64(s.Pressure))
		}
		p.Hottest = max(p.Hottest, s.Temperature)
		if i == 0 {
			continue
		}
		a := samples[i-1]
		if a.Pressure > 0 || s.Pressure > 0 {
			p.Nip += s.Time - a.Time
		}
		var err error
		if fluid, err = p.segment(l, a, s, extra, fluid, melts, sets); err != nil {
			return p, err
		}
	}
	p.Fluid = fluid
	return p, nil
}

// segment adds the way from a to b and says whether the adhesive flows at its end.
func (p *Passage) segment(l Law, a, b Sample, extra quantity.Pressure, fluid bool, melts, sets quantity.Temperature) (bool, error) {
	from := a
	if !fluid {
		if b.Temperature < melts {
			return false, nil
		}
		from = between(a, b, melts)
		fluid = true
	}
	to := b
	if b.Temperature < sets {
		to = between(from, b, sets)
		fluid = false
	}
	return fluid, p.flow(l, from, to, extra)
}

// between is the moment from a to b at which a temperature is passed.
func between(a, b Sample, t quantity.Temperature) Sample {
	if a.Temperature == b.Temperature {
		return b
	}
	return along(a, b, float64(t-a.Temperature)/float64(b.Temperature-a.Temperature), t)
}

// along is the moment at share x of the way from a to b, where the temperature is t.
func along(a, b Sample, x float64, t quantity.Temperature) Sample {
	return Sample{
		Time:        a.Time + quantity.Time(x)*(b.Time-a.Time),
		Temperature: t,
		Pressure:    a.Pressure + quantity.Pressure(x)*(b.Pressure-a.Pressure),
	}
}

// flow sums ∫p/η dt from a to b, in all of which the adhesive flows.
func (p *Passage) flow(l Law, a, b Sample, extra quantity.Pressure) error {
	n := 2 * int(math.Ceil(math.Abs(float64(b.Temperature-a.Temperature))/(2*finest)))
	n = max(n, 2)
	width := float64(b.Time-a.Time) / float64(n)
	for i := range n + 1 {
		x := float64(i) / float64(n)
		s := along(a, b, x, a.Temperature+quantity.Temperature(x)*(b.Temperature-a.Temperature))
		v, err := l.Viscosity(max(s.Temperature, setting(l)))
		if err != nil {
			return err
		}
		if p.Thinnest == 0 || v < p.Thinnest {
			p.Thinnest = v
		}
		p.Extrapolates = p.Extrapolates || l.Extrapolates(s.Temperature)
		weight := 2.0
		switch {
		case i == 0 || i == n:
			weight = 1
		case i%2 == 1:
			weight = 4
		}
		drive := math.Max(0, float64(s.Pressure+extra))
		p.Supply += weight / 3 * width * drive / float64(v)
	}
	p.Flowed += b.Time - a.Time
	return nil
}

// setting guards against a temperature that rounding has put just below the end of flow.
func setting(l Law) quantity.Temperature {
	_, sets := l.Range()
	return sets
}
