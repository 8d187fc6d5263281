package stack

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// DrivenAhead is the share of the water in a hot nip that goes forward in the sheet. It
// has never been measured as far as we know; the band is an estimate, and the drawing
// made with it teaches, it does not promise.
//
// Diffusion alone, with PoresAlong, a nip of 8 mm at 1 m/min and a sheet of 7 g/m² of
// water at 90 °C, moves about 1e-4 of it. The vapour's own pressure, some 60 kPa above
// the cold sheet's, drives a flow along the pores as well: by Darcy's law with a
// permeability in the plane of 1e-13 m² (order from memory), about 0.05. A decade to
// either side of the second is the band.
var DrivenAhead = Band[quantity.Fraction]{Low: 0.005, Best: 0.05, High: 0.5}

// Feed is a sheet on its way through a hot nip.
type Feed struct {
	// Moisture is what the sheet holds at equal steps from its leading edge to its
	// trailing edge, kg/kg dry: the first and the last at the edges.
	Moisture []quantity.Fraction
	Length   quantity.Length   // of the sheet along the feed
	Dry      quantity.Grammage // of the sheet without its water
	// Share of the water in the nip that goes ahead, 0 to below 1.
	Share quantity.Fraction
	// Zone is how far ahead it comes to rest: where the sheet is cold again. About
	// the nip's own length is taken.
	Zone quantity.Length
	// Limit is the moisture from which the sheet blisters in this nip.
	Limit quantity.Fraction
}

// Driven is what a nip makes of a sheet's water.
type Driven struct {
	// At are the places along the feed, one for each of the sheet's steps; InNip is
	// the moisture there while it is in the nip, Left what stays when it has passed.
	At          []quantity.Length
	InNip, Left []quantity.Fraction
	// Held is the water the sheet came with, and Carried what of it is ahead of the
	// nip when the trailing edge is reached and leaves there, both kg for each metre
	// of the sheet's width. The rest is in Left.
	Held, Carried float64
	// First is where the moisture in the nip first passes the limit: +Inf nowhere.
	First quantity.Length
	// Excess is the water above the limit at each place, kg/kg: how fast blisters
	// grow there. Fed is its sum from the leading edge to each place, kg/m: what
	// blisters up to there, few large or many small, could be made of.
	Excess []quantity.Fraction
	Fed    []float64
}

// Pass sends the sheet through the nip.
//
//	w = w₀(x) + c/ℓ              water in the nip, kg/m²: the sheet's own and what was driven into it
//	dc/dx = s·w − c/ℓ            c, kg/m, is ahead of the nip: a share s joins it, what is run over leaves it
//	left = (1 − s)·w
//
// with ℓ the zone. c settles to ℓ·s·w₀/(1 − s) over a length of ℓ/(1 − s), so that the
// nip then finds w₀/(1 − s): one share sets both how much more it finds and how far
// along the feed that takes. Between two steps w₀ is taken as straight, which makes the
// solution exact there.
func (f Feed) Pass() (Driven, error) {
	var d Driven
	if err := f.check(); err != nil {
		return d, err
	}
	n := len(f.Moisture)
	d = Driven{At: make([]quantity.Length, n), InNip: make([]quantity.Fraction, n), Left: make([]quantity.Fraction, n),
		Excess: make([]quantity.Fraction, n), Fed: make([]float64, n), First: quantity.Length(math.Inf(1))}
	dry, zone, s := float64(f.Dry), float64(f.Zone), float64(f.Share)
	step := float64(f.Length) / float64(n-1)
	for i, m := range f.Moisture {
		d.At[i] = quantity.Length(float64(i) * step)
		d.InNip[i] = m + quantity.Fraction(d.Carried/(zone*dry))
		d.Left[i] = (1 - f.Share) * d.InNip[i]
		d.Excess[i] = max(d.InNip[i]-f.Limit, 0)
		if i > 0 {
			d.Fed[i] = d.Fed[i-1] + dry*step*float64(d.Excess[i-1]+d.Excess[i])/2
		}
		if math.IsInf(float64(d.First), 1) && d.InNip[i] > f.Limit {
			d.First = d.crossing(i, f.Limit)
		}
		if i == n-1 {
			break
		}
		w0, w1 := dry*float64(m), dry*float64(f.Moisture[i+1])
		d.Carried = carry(d.Carried, w0, w1, step, zone, s)
		d.Held += (w0 + w1) / 2 * step
	}
	return d, nil
}

// carry marches c over a step along which the sheet's own water goes straight from w0
// to w1: dc/dx + c/L = s·w₀(x), L = ℓ/(1 − s).
func carry(c, w0, w1, step, zone, s float64) float64 {
	length := zone / (1 - s)
	slope := (w1 - w0) / step
	// A particular solution is s·L·(w₀ + slope·(x − L)).
	start := s * length * (w0 - slope*length)
	end := s * length * (w1 - slope*length)
	return end + (c-start)*math.Exp(-step/length)
}

// crossing is where, between the place before i and i, the moisture in the nip passes
// the limit.
func (d *Driven) crossing(i int, limit quantity.Fraction) quantity.Length {
	if i == 0 {
		return 0
	}
	before, now := d.InNip[i-1], d.InNip[i]
	return d.At[i-1] + (d.At[i]-d.At[i-1])*quantity.Length((limit-before)/(now-before))
}

func (f Feed) check() error {
	if len(f.Moisture) < 2 {
		return fmt.Errorf("a sheet with %d figures of moisture along the feed: it needs two or more", len(f.Moisture))
	}
	for _, m := range f.Moisture {
		if !(m >= 0) || math.IsInf(float64(m), 1) {
			return fmt.Errorf("a moisture of %g kg/kg along the feed: it must be 0 or more", float64(m))
		}
	}
	switch {
	case !positive(float64(f.Length)) || !positive(float64(f.Dry)) || !positive(float64(f.Zone)):
		return fmt.Errorf("a sheet %g m long of %g kg/m² with a zone of %g m before the nip: each must be above 0", float64(f.Length), float64(f.Dry), float64(f.Zone))
	case !(f.Share >= 0 && f.Share < 1):
		return fmt.Errorf("a share of %g driven ahead: it must be from 0 to below 1", float64(f.Share))
	case !(f.Limit > 0):
		return fmt.Errorf("a limit of %g kg/kg of moisture: it must be above 0", float64(f.Limit))
	}
	return nil
}

// Across gives the moisture of one sheet from end to end along the stack's length (or
// its width), through the middle of the other directions, after a time in the room, at
// n equal steps. It takes the best diffusivity.
func (m *Moisture) Across(t quantity.Time, alongWidth bool, n int) ([]quantity.Fraction, error) {
	if n < 2 {
		return nil, fmt.Errorf("%d places across a sheet: it needs two or more", n)
	}
	list := make([]quantity.Fraction, n)
	for i := range list {
		x, y := -1+2*float64(i)/float64(n-1), 0.0
		if alongWidth {
			x, y = y, x
		}
		left := quantity.Fraction(m.blocks[1].at(x, y, 0, float64(t)))
		list[i] = m.MoistureTo + left*(m.MoistureFrom-m.MoistureTo)
	}
	return list, nil
}
