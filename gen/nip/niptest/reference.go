package niptest

import (
	"math"

	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// Reference is a second method for the same physics, written apart from the
// solver: nodes at the layers' faces (a pair of nodes at each contact) instead of
// cells, a fine grid, Crank–Nicolson with four implicit steps after each
// change (Rannacher's start), one set of temperatures at a time, and a steady run
// by turning the rollers until nothing changes.
type Reference struct {
	p     *nip.Pass
	t     *nip.Temps
	steps int     // of a phase
	fine  float64 // the thinnest interval, m

	c, t0, g   []float64 // node capacity, temperature, conductance to the node above
	eva        []float64 // mass of EVA at a node, kg/m²
	Fusion     float64   // its heat of fusion, J/kg; 0 in the linear method
	Peak       float64   // its melting point, K
	Sets       bool      // whether what melted gives its heat back on cooling
	share      []float64 // of each node's EVA that has melted
	from       [6]int    // first node of each part, as in Part
	a, b, d, r []float64
	contact    [6]float64 // above each part, 0 apart

	// What was seen in the nip and after it, against the time from first touch.
	Times, FilmFace, Adhesive, Bond []float64
}

// New prepares a run of a pass at given temperatures: fine is the thinnest interval in m,
// steps the number of time steps of each phase.
func New(p *nip.Pass, t *nip.Temps, fine float64, steps int) *Reference {
	r := &Reference{p: p, t: t, fine: fine, steps: steps}
	parts := [5][]nip.Layer{nil, p.Film, p.Print, nil, nil}
	if p.Upper.Cover.Thickness > 0 {
		parts[0] = []nip.Layer{p.Upper.Cover}
	}
	for i := len(p.LowerFilm) - 1; i >= 0; i-- {
		parts[3] = append(parts[3], p.LowerFilm[i])
	}
	if p.Lower.Cover.Thickness > 0 {
		parts[4] = []nip.Layer{p.Lower.Cover}
	}
	for k, layers := range parts {
		r.from[k] = len(r.c)
		for i, l := range layers {
			r.layer(l, i == 0, k)
		}
	}
	r.from[5] = len(r.c)
	n := len(r.c)
	r.t0 = make([]float64, n)
	r.a, r.b, r.d, r.r = make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)
	for i := range r.t0 {
		switch {
		case i < r.from[1]:
			r.t0[i] = float64(of(t, p.Upper.Core))
		case i < r.from[4]:
			r.t0[i] = 0 // entered later
		default:
			r.t0[i] = float64(of(t, p.Lower.Core))
		}
	}
	return r
}

// layer appends the nodes of a layer; its first face is that of the layer above.
func (r *Reference) layer(l nip.Layer, top bool, part int) {
	dx := intervals(float64(l.Thickness), r.fine, part)
	rc, k := float64(l.Density)*float64(l.SpecificHeat), float64(l.Conductivity)
	if top {
		r.c, r.g, r.eva = append(r.c, 0), append(r.g, 0), append(r.eva, 0)
	}
	for _, w := range dx {
		mass := 0.0
		if l.Name == "EVA" {
			mass = float64(l.Density) * w / 2
		}
		r.c[len(r.c)-1] += rc * w / 2
		r.eva[len(r.eva)-1] += mass
		r.c, r.g, r.eva = append(r.c, rc*w/2), append(r.g, k/w), append(r.eva, mass)
	}
}

// intervals cuts a thickness: even ones in film and print, in a cover 4 % longer
// each away from the face that meets the web.
func intervals(thick, fine float64, part int) []float64 {
	if part >= 1 && part <= 3 {
		n := int(math.Ceil(thick / fine))
		dx := make([]float64, n)
		for i := range dx {
			dx[i] = thick / float64(n)
		}
		return dx
	}
	n := int(math.Ceil(math.Log1p(thick*0.04/(2*fine)) / math.Log(1.04)))
	dx := make([]float64, n)
	w := thick * 0.04 / (math.Pow(1.04, float64(n)) - 1)
	for i := range dx {
		if part == 0 {
			dx[n-1-i] = w
		} else {
			dx[i] = w
		}
		w *= 1.04
	}
	return dx
}

// refEdge is what an end node meets: a conductance and a temperature; fixed holds it.
type refEdge struct {
	g, t  float64
	fixed bool
}

// phase marches the nodes lo to hi for a time.
func (r *Reference) phase(lo, hi int, top, bottom refEdge, total float64, after func(at float64)) {
	if total == 0 || lo == hi {
		return
	}
	// The last step is 3000 times the first.
	grow := math.Pow(3000, 1/float64(r.steps))
	h := total * (grow - 1) / (math.Pow(grow, float64(r.steps)) - 1)
	at := 0.0
	for k := range r.steps {
		if r.Fusion > 0 {
			r.melt(lo, hi, top, bottom, h)
		} else if k < 2 {
			r.one(lo, hi, top, bottom, h/2, 1)
			r.one(lo, hi, top, bottom, h/2, 1)
		} else {
			r.one(lo, hi, top, bottom, h, 0.5)
		}
		at += h
		h *= grow
		if after != nil {
			after(at)
		}
	}
}

// one is a step: implicit share theta.
func (r *Reference) one(lo, hi int, top, bottom refEdge, h, theta float64) {
	flux := func(i int) float64 { // conductance above node i
		for k := 1; k < 5; k++ {
			if i == r.from[k] {
				return r.contactAt(i)
			}
		}
		return r.g[i]
	}
	for i := lo; i < hi; i++ {
		up, down := 0.0, 0.0
		q := 0.0
		if i > lo {
			up = flux(i)
			q += up * (r.t0[i-1] - r.t0[i])
		}
		if i < hi-1 {
			down = flux(i + 1)
			q += down * (r.t0[i+1] - r.t0[i])
		}
		own := up + down
		src := 0.0
		for _, e := range [2]struct {
			at int
			e  refEdge
		}{{lo, top}, {hi - 1, bottom}} {
			if i == e.at && !e.e.fixed {
				own += e.e.g
				src += e.e.g * e.e.t
				q += e.e.g * (e.e.t - r.t0[i])
			}
		}
		r.a[i], r.b[i] = -theta*h*up, -theta*h*down
		r.d[i] = r.c[i] + theta*h*own
		// capacity·T + (1 − θ)·h·q + θ·h·source
		r.r[i] = r.c[i]*r.t0[i] + (1-theta)*h*q + theta*h*src
		if i == lo && top.fixed || i == hi-1 && bottom.fixed {
			r.a[i], r.b[i], r.d[i] = 0, 0, 1
			r.r[i] = top.t
			if i == hi-1 && bottom.fixed {
				r.r[i] = bottom.t
			}
		}
	}
	for i := lo + 1; i < hi; i++ {
		m := r.a[i] / r.d[i-1]
		r.d[i] -= m * r.b[i-1]
		r.r[i] -= m * r.r[i-1]
	}
	r.t0[hi-1] = r.r[hi-1] / r.d[hi-1]
	for i := hi - 2; i >= lo; i-- {
		r.t0[i] = (r.r[i] - r.b[i]*r.t0[i+1]) / r.d[i]
	}
}

// contactAt is the conductance above the first node of a part; parts of no nodes
// share their place with the next.
func (r *Reference) contactAt(i int) float64 {
	for k := 4; k >= 1; k-- {
		if i == r.from[k] && r.from[k+1] > r.from[k] {
			return r.contact[k]
		}
	}
	return 0
}

func (r *Reference) exposure(x nip.Exposure) refEdge {
	return refEdge{g: float64(x.Conductance), t: float64(of(r.t, x.To))}
}

func (r *Reference) rollerEdge(x *nip.Roller, covered bool, contact float64) refEdge {
	switch {
	case !covered:
		return refEdge{g: contact, t: float64(of(r.t, x.Core))}
	case x.Insulated:
		return refEdge{}
	}
	return refEdge{t: float64(of(r.t, x.Core)), fixed: true}
}

// Turn brings new film and print in and runs one pass up to the nip's end, and
// idles the rollers; observe sees the nip.
func (r *Reference) Turn(observe bool) {
	p, f := r.p, r.from
	for i := f[1]; i < f[4]; i++ {
		r.t0[i] = float64(r.t.Film)
		if i >= f[2] && i < f[3] {
			r.t0[i] = float64(r.t.Print)
		}
	}
	r.share = make([]float64, f[5])
	for i := range r.share {
		r.share[i] = r.melted(r.t0[i])
	}
	r.contact = [6]float64{}
	for _, st := range p.FilmBefore {
		r.phase(f[1], f[2], r.exposure(st.Face), r.exposure(st.Back), float64(st.Time), nil)
		r.phase(f[3], f[4], r.exposure(st.Back), r.exposure(st.Face), float64(st.Time), nil)
	}
	for _, st := range p.PrintBefore {
		r.phase(f[2], f[3], r.exposure(st.Face), r.exposure(st.Back), float64(st.Time), nil)
	}
	upper, lower := f[1] > f[0], f[5] > f[4]
	open := r.exposure(nip.Exposure{Conductance: p.OpenFace, To: nip.Room})
	r.contact[1] = float64(p.Upper.WrapContact)
	r.contact[4] = float64(p.Lower.WrapContact)
	r.phase(f[0], f[2], r.rollerEdge(&p.Upper, upper, float64(p.Upper.WrapContact)), open, float64(p.WrapTime(&p.Upper)), nil)
	r.phase(f[3], f[5], open, r.rollerEdge(&p.Lower, lower, float64(p.Lower.WrapContact)), float64(p.WrapTime(&p.Lower)), nil)
	r.contact = [6]float64{1: float64(p.Upper.NipContact), 2: float64(p.Bond), 3: float64(p.LowerBond), 4: float64(p.Lower.NipContact)}
	r.Times, r.Adhesive, r.FilmFace, r.Bond = nil, nil, nil, nil
	see := func(at float64) {
		if observe {
			r.see(at)
		}
	}
	r.phase(f[0], f[5], r.rollerEdge(&p.Upper, upper, float64(p.Upper.NipContact)), r.rollerEdge(&p.Lower, lower, float64(p.Lower.NipContact)), float64(p.NipTime()), see)
	if upper {
		r.phase(f[0], f[1], r.rollerEdge(&p.Upper, true, 0), r.exposure(nip.Exposure{Conductance: p.Upper.Idle, To: nip.Room}), idle(p, &p.Upper), nil)
	}
	if lower {
		r.phase(f[4], f[5], r.exposure(nip.Exposure{Conductance: p.Lower.Idle, To: nip.Room}), r.rollerEdge(&p.Lower, true, 0), idle(p, &p.Lower), nil)
	}
}

// see records the faces now.
func (r *Reference) see(at float64) {
	f := r.from
	r.Times = append(r.Times, at)
	r.FilmFace = append(r.FilmFace, r.t0[f[1]])
	r.Adhesive = append(r.Adhesive, r.t0[f[2]-1])
	r.Bond = append(r.Bond, r.t0[f[2]])
}

// After runs film and print on after the nip.
func (r *Reference) After() {
	f, start := r.from, float64(r.p.NipTime())
	for _, st := range r.p.After {
		r.phase(f[1], f[4], r.exposure(st.Face), r.exposure(st.Back), float64(st.Time), func(at float64) { r.see(start + at) })
		start += float64(st.Time)
	}
}

// Settle turns until the covers change by less than a tenth of a millikelvin a
// turn, first with few steps, then with all; it says how many turns that took.
func (r *Reference) Settle() int {
	all := r.steps
	turns := 0
	for _, r.steps = range []int{min(all, 40), all} {
		for turns < 20000 {
			old := append([]float64(nil), r.t0...)
			r.Turn(false)
			turns++
			most := 0.0
			for i := range old {
				if i < r.from[1] || i >= r.from[4] {
					most = math.Max(most, math.Abs(r.t0[i]-old[i]))
				}
			}
			if most < 1e-4 {
				break
			}
		}
	}
	return turns
}

// At is a recorded curve at a time, linear between records.
func (r *Reference) At(curve []float64, time float64) float64 {
	for i, t := range r.Times {
		if t >= time-1e-12 {
			if i == 0 {
				return curve[0]
			}
			w := (time - r.Times[i-1]) / (t - r.Times[i-1])
			return curve[i-1]*(1-w) + curve[i]*w
		}
	}
	return curve[len(curve)-1]
}

// of is the temperature that a boundary has.
func of(t *nip.Temps, b nip.Boundary) quantity.Temperature {
	return [...]quantity.Temperature{nip.Room: t.Room, nip.Set: t.Set, nip.Lower: t.Lower, nip.Print: t.Print, nip.Film: t.Film, nip.Preheat: t.Preheat, nip.Chill: t.Chill}[b]
}

// idle is how long a place of a roller's cover touches nothing in a revolution.
func idle(p *nip.Pass, r *nip.Roller) float64 {
	return float64(p.Revolution(r) - p.WrapTime(r) - p.NipTime())
}
