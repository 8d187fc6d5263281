package niptest

import "math"

// melted is the share of the heat of fusion that EVA has taken up at a temperature:
// its melting is spread evenly from 35 K below its melting point to 5 K above.
func (r *Reference) melted(t float64) float64 {
	return math.Max(0, math.Min(1, (t-r.Peak+35)/40))
}

// melt is an implicit step with the heat of fusion: the heat capacity of each node is
// its own plus what melts over the step, iterated.
func (r *Reference) melt(lo, hi int, top, bottom refEdge, h float64) {
	own := append([]float64(nil), r.c...)
	was := append([]float64(nil), r.t0...)
	share := func(i int) float64 {
		m := r.melted(r.t0[i])
		if !r.Sets {
			m = math.Max(m, r.share[i])
		}
		return m
	}
	for range 8 {
		for i := lo; i < hi; i++ {
			if r.eva[i] == 0 {
				continue
			}
			slope := 0.0
			if d := r.t0[i] - was[i]; math.Abs(d) > 1e-9 {
				slope = math.Max(0, (share(i)-r.share[i])/d)
			}
			r.c[i] = own[i] + r.eva[i]*r.Fusion*slope
		}
		copy(r.t0, was)
		r.one(lo, hi, top, bottom, h, 1)
	}
	for i := lo; i < hi; i++ {
		r.share[i] = share(i)
	}
	copy(r.c, own)
}
