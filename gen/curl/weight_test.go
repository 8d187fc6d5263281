package curl

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// The rise by integrating the beam from the foot of the lifted edge outwards, step by
// step, with the foot found by halving: a second way to D·k²/(2·w).
func TestRiseOnTableAgainstIntegration(t *testing.T) {
	l := joined(54, 0.05, sheet, eva, pp)
	c, err := l.Curl(states(l.Layers, 0, 23, 0.05))
	if err != nil {
		t.Fatal(err)
	}
	const grammage quantity.Grammage = 0.25
	d, k, w := c.Plate.stiffnessAcross(c.Cylinder.Axis), math.Abs(c.Cylinder.Curvature), gravity*float64(grammage)
	lo, hi := 0.0, 1.0
	for range 60 {
		if a := (lo + hi) / 2; w*a*a/2 < d*k {
			lo = a
		} else {
			hi = a
		}
	}
	const n = 20000
	slope, y, dx := 0.0, 0.0, lo/n
	for i := range n {
		x := (float64(i) + 0.5) * dx
		slope += (k - w*(lo-x)*(lo-x)/(2*d)) * dx
		y += (slope - (k-w*(lo-x)*(lo-x)/(2*d))*dx/2) * dx
	}
	got := c.Plate.RiseOnTable(c.Cylinder, 10, grammage)
	if math.Abs(float64(got)-y) > 1e-3*y {
		t.Errorf("%.3f mm, integrated %.3f mm", got.Millimetres(), 1000*y)
	}
	// Without weight it is the free rise, and no weight lifts it further.
	free := c.Cylinder.Rise(0.3)
	if none := c.Plate.RiseOnTable(c.Cylinder, 0.3, 0); none != free {
		t.Errorf("without weight %g, free %g", float64(none), float64(free))
	}
	last := free
	for _, g := range []quantity.Grammage{0.05, 0.1, 0.3, 1} {
		r := c.Plate.RiseOnTable(c.Cylinder, 0.3, g)
		if r > last*(1+1e-12) {
			t.Errorf("heavier rises further: %g after %g", float64(r), float64(last))
		}
		last = r
	}
}
