package curl

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// slices is the second method: the energy summed over many thin slices through the
// thickness, with nothing of A, B and D, and its least found without D* and M′.
type slices struct {
	layers []Layer
	free   []Vector
	each   int
}

// energy of a middle-plane strain and a curvature, J/m².
func (s *slices) energy(strain, curvature Vector) float64 {
	z := 0.0
	for i := range s.layers {
		z -= float64(s.layers[i].Thickness) / 2
	}
	sum := 0.0
	for i := range s.layers {
		dz := float64(s.layers[i].Thickness) / float64(s.each)
		// Stiffness from the tensor's turn, component by component, not by turned().
		for range s.each {
			e := strain.plus(curvature.times(z + dz/2)).minus(s.free[i])
			a := float64(s.layers[i].Machine) * math.Pi / 180
			c, n := math.Cos(a), math.Sin(a)
			md := e[0]*c*c + e[1]*n*n + e[2]*c*n
			cd := e[0]*n*n + e[1]*c*c - e[2]*c*n
			shear := 2*c*n*(e[1]-e[0]) + e[2]*(c*c-n*n)
			e1, e2, nu := float64(s.layers[i].ModulusMD), float64(s.layers[i].ModulusCD), float64(s.layers[i].Poisson)
			d := 1 - nu*nu*e2/e1
			sum += dz / 2 * ((e1*md*md+2*nu*e2*md*cd+e2*cd*cd)/d + s.layers[i].shear()*shear*shear)
			z += dz
		}
	}
	return sum
}

// best finds the least energy for cylinders whose curvature has the direction phi:
// over k and the three strains, by the quadratic's own differences.
func (s *slices) best(phi float64) (k, energy float64) {
	const unit = 1e-3
	sn, c := math.Sincos(phi)
	n := Vector{c * c, sn * sn, 2 * sn * c}
	at := func(x [4]float64) float64 {
		return s.energy(Vector{x[0] * unit, x[1] * unit, x[2] * unit}, n.times(x[3]*10))
	}
	e0 := at([4]float64{})
	var h [4][5]float64
	for i := range 4 {
		var x [4]float64
		x[i] = 1
		up := at(x)
		x[i] = -1
		down := at(x)
		h[i][4] = (down - up) / 2
		h[i][i] = up + down - 2*e0
		for j := range i {
			var y [4]float64
			y[i], y[j] = 1, 1
			pp := at(y)
			y[j] = -1
			h[i][j] = (pp - at(y)) / 2 // + first-order part of j
			y = [4]float64{}
			y[j] = 1
			a := at(y)
			y[j] = -1
			h[i][j] -= (a - at(y)) / 2
			h[j][i] = h[i][j]
		}
	}
	x := eliminate(h)
	return x[3] * 10, at(x)
}

// eliminate solves four equations.
func eliminate(h [4][5]float64) (x [4]float64) {
	for i := range 4 {
		for r := i + 1; r < 4; r++ {
			f := h[r][i] / h[i][i]
			for c := i; c < 5; c++ {
				h[r][c] -= f * h[i][c]
			}
		}
	}
	for i := 3; i >= 0; i-- {
		x[i] = h[i][4]
		for j := i + 1; j < 4; j++ {
			x[i] -= h[i][j] * x[j]
		}
		x[i] /= h[i][i]
	}
	return x
}

// The cylinder by brute force: every half degree, slices through the thickness.
func TestCylinderBySlices(t *testing.T) {
	for name, l := range laminates() {
		c := curl(t, l, now(l))
		s := slices{c.Layers, c.Free, 24}
		least, phi, k := math.Inf(1), 0.0, 0.0
		for i := range 360 {
			at := float64(i) * math.Pi / 360
			if kk, e := s.best(at); e < least {
				least, phi, k = e, at, kk
			}
		}
		off := apart(phi+math.Pi/2, float64(c.Cylinder.Axis)*math.Pi/180) * 180 / math.Pi
		// 24 slices a layer leave out 1/24² of its own bending.
		if !near(least, c.Cylinder.Energy, 2e-3) || !near(k, c.Cylinder.Curvature, 5e-3) || off > 0.5 {
			t.Errorf("%s: slices κ %.5g, energy %.6g, %.2f° off; computed %+v", name, k, least, off, c.Cylinder)
		}
	}
}

// Sheets that may stretch (Rayleigh and Ritz, the whole sheet with one curvature, the
// stretching of a round isotropic one): small ones keep laminate theory's shape, and the
// larger they are the nearer the least energy comes to the cylinder's, from below.
func TestLargeSheetsRoll(t *testing.T) {
	l := joined(60, 0.05, sheet, eva, pp)
	c := curl(t, l, now(l))
	p := c.Plate
	stretch := 1 / math.Sqrt(p.soft[0][0]*p.soft[1][1])
	// For a sheet fed square nothing twists. For each curvature across the feed the
	// energy is a parabola in the one along it.
	lowest := func(size float64) float64 {
		a := size / 2
		soft := stretch * a * a * a * a / 384
		least := math.Inf(1)
		for i := range 40001 {
			y := p.Curvature[1] * 1.2 * float64(i) / 40000
			x := (p.Drive[0] - p.Bending[0][1]*y) / (p.Bending[0][0] + 2*soft*y*y)
			least = min(least, p.EnergyAt(Vector{x, y, 0})+soft*x*x*y*y)
		}
		return least
	}
	below := float64(c.SaddleBelow)
	span := c.Cylinder.Energy - p.Energy
	last := p.Energy
	for _, r := range []struct{ times, least, most float64 }{{0.1, 0, 0.01}, {1, 0.1, 0.9}, {10, 0.9, 1}, {100, 0.999, 1 + 1e-9}} {
		e := lowest(r.times * below)
		if part := (e - p.Energy) / span; part < r.least || part > r.most || e < last {
			t.Errorf("a sheet of %g times %.3g m: %g of the way from plate to cylinder, want %g to %g", r.times, below, part, r.least, r.most)
		}
		last = e
	}
}

// A textbook's two plies (Mallick's) have two cylinders, across each other, to opposite
// sides and of the same energy; the tie goes to the one across the feed.
func TestTwoCylinders(t *testing.T) {
	ply := Layer{Name: "ply", Thickness: 1e-3, ModulusMD: 133.4e9, ModulusCD: 8.784e9, Shear: 3.254e9, Poisson: 0.26,
		ExpansionMD: -0.5e-6, ExpansionCD: 12e-6}
	l := &Laminate{Layers: []Layer{ply, fed(ply, Across)}, Set: make([]State, 2)}
	room := make([]State, 2)
	for i := range room {
		l.Set[i].Temperature, room[i].Temperature = 400, 300
	}
	c := curl(t, l, room)
	o := c.Cylinder.Second
	if c.Cylinder.Axis != 90 || math.Abs(float64(o.Axis)) > 1e-9 || !near(o.Curvature, -c.Cylinder.Curvature, 1e-9) || !near(o.Energy, c.Cylinder.Energy, 1e-9) {
		t.Errorf("%+v", c.Cylinder)
	}
	if !near(c.Plate.Curvature[0], -0.511739221, 1e-8) {
		t.Errorf("κx %.9g", c.Plate.Curvature[0])
	}
	if s := c.SaddleBelow; s < quantity.Length(2e-3) || s > 1 {
		t.Errorf("saddle below %g m", float64(s))
	}
}
