package stack

import (
	"math"
	"testing"
)

// bar is a block that reaches on for ever in the third direction: 0.2 by 0.1 m, with
// the faces' Biot numbers 2 and 1 for a diffusivity of 1e-6 m²/s.
func bar(t testing.TB) block {
	t.Helper()
	var b block
	for i, size := range []float64{0.2, 0.1} {
		d, err := newDirection(size, 2, 1e-6, 2e-5)
		if err != nil {
			t.Fatal(err)
		}
		b[i] = d
	}
	d, err := newDirection(1, 0, 1e-6, 0)
	if err != nil {
		t.Fatal(err)
	}
	b[2] = d
	return b
}

// grid is the second method: the same bar in finite volumes, a quarter of it, nx by ny
// cells from the middle outwards, marched by the implicit scheme of alternating
// directions. It knows nothing of slabs, products or series.
type grid struct {
	nx, ny   int
	dx, dy   float64
	d, v     float64
	θ        []float64
	given    float64 // through the faces so far
	low, up  []float64
	mid, rhs []float64
}

func newGrid(b *block, n int, d, v float64) *grid {
	g := &grid{nx: n, ny: n, dx: b[0].half / float64(n), dy: b[1].half / float64(n), d: d, v: v}
	g.θ = make([]float64, n*n)
	for i := range g.θ {
		g.θ[i] = 1
	}
	g.low, g.up, g.mid, g.rhs = make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)
	return g
}

func (g *grid) cell(i, j int) *float64 { return &g.θ[j*g.nx+i] }

// content is what is left in the quarter, for a metre of the bar.
func (g *grid) content() float64 {
	sum := 0.0
	for _, v := range g.θ {
		sum += v
	}
	return sum * g.dx * g.dy
}

// face is the conductance from the outermost cell to the room: half a cell, then the face.
func (g *grid) face(width float64) float64 { return 1 / (width/2/g.d + 1/g.v) }

// sweep solves one line implicitly over dt: (1 + dt·A)·θ = θ, A the line's own exchange.
func (g *grid) sweep(n int, width, dt float64, at func(k int) *float64) {
	inner := g.d / (width * width) * dt
	outer := g.face(width) / width * dt
	for k := range n {
		g.low[k], g.up[k] = -inner, -inner
		if k == 0 {
			g.low[k] = 0
		}
		if k == n-1 {
			g.up[k] = 0
		}
		g.mid[k] = 1 - g.low[k] - g.up[k]
		if k == n-1 {
			g.mid[k] += outer
		}
		g.rhs[k] = *at(k)
	}
	for k := 1; k < n; k++ {
		f := g.low[k] / g.mid[k-1]
		g.mid[k] -= f * g.up[k-1]
		g.rhs[k] -= f * g.rhs[k-1]
	}
	g.rhs[n-1] /= g.mid[n-1]
	for k := n - 2; k >= 0; k-- {
		g.rhs[k] = (g.rhs[k] - g.up[k]*g.rhs[k+1]) / g.mid[k]
	}
	for k := range n {
		*at(k) = g.rhs[k]
	}
}

// march makes a step, one direction after the other, and books what left the faces.
func (g *grid) march(dt float64) {
	for j := range g.ny {
		g.sweep(g.nx, g.dx, dt, func(k int) *float64 { return g.cell(k, j) })
		g.given += g.face(g.dx) * *g.cell(g.nx-1, j) * g.dy * dt
	}
	for i := range g.nx {
		g.sweep(g.ny, g.dy, dt, func(k int) *float64 { return g.cell(i, k) })
		g.given += g.face(g.dy) * *g.cell(i, g.ny-1) * g.dx * dt
	}
}

// TestProductAgainstFiniteVolumes holds the product of two slabs to a grid in two
// dimensions: at the middle, near a corner, and on the whole. Half a per cent is the
// grid's own error; halving its cells and steps cuts it.
func TestProductAgainstFiniteVolumes(t *testing.T) {
	b := bar(t)
	const n, steps = 40, 1500
	g := newGrid(&b, n, 1e-6, 2e-5)
	const end = 3000.0
	full := g.content()
	for range steps {
		g.march(end / steps)
	}
	corner := 1 - 1.5/n // middle of the last cell but one
	rows := []struct {
		name      string
		got, want float64
	}{
		{"middle", b.at(0.5/n, 0.5/n, 0, end), *g.cell(0, 0)},
		{"near a corner", b.at(corner, corner, 0, end), *g.cell(n-2, n-2)},
		{"near the end", b.at(corner, 0.5/n, 0, end), *g.cell(n-2, 0)},
		{"whole", b.whole(end), g.content() / full},
	}
	for _, r := range rows {
		if r.want < 0.05 || r.want > 0.95 {
			t.Errorf("%s: %.4g left is no test", r.name, r.want)
		}
		if math.Abs(r.got/r.want-1) > 5e-3 {
			t.Errorf("%s: product %.5f, finite volumes %.5f", r.name, r.got, r.want)
		}
	}
	if lost := full - g.content(); math.Abs(g.given/lost-1) > 1e-9 {
		t.Errorf("the grid lost %.9g and gave %.9g to the room", lost, g.given)
	}
}

// TestProductConserves: what the block loses is what goes through its faces, here the
// time integral of face transfer times face mean against the change of the whole.
func TestProductConserves(t *testing.T) {
	b := bar(t)
	const from, to, n = 200.0, 4000.0, 400
	through := 0.0
	for k := 0; k <= n; k++ {
		at := from + (to-from)*float64(k)/n
		// The mean over a face is the face's own slab times the mean of the other one.
		rate := 2e-5 / b[0].half * b[0].at(1, b[0].fo(at)) * b[1].whole(b[1].fo(at))
		rate += 2e-5 / b[1].half * b[1].at(1, b[1].fo(at)) * b[0].whole(b[0].fo(at))
		w := 2.0 + 2*float64(k%2)
		if k == 0 || k == n {
			w = 1
		}
		through += w * rate * (to - from) / (3 * n)
	}
	if lost := b.whole(from) - b.whole(to); math.Abs(through/lost-1) > 1e-6 {
		t.Errorf("lost %.9g, through the faces %.9g", lost, through)
	}
}

// TestOneSealedFaceIsHalfOfTwo: a block open on one side is half of one open on both.
func TestOneSealedFaceIsHalfOfTwo(t *testing.T) {
	one, err := newDirection(0.1, 1, 1e-6, 1e-5)
	if err != nil {
		t.Fatal(err)
	}
	two, err := newDirection(0.2, 2, 1e-6, 1e-5)
	if err != nil {
		t.Fatal(err)
	}
	if a, b := one.whole(one.fo(1000)), two.whole(two.fo(1000)); a != b {
		t.Errorf("one face %g, half of two %g", a, b)
	}
}

// TestUntilAndBorderInvert: the time found gives the share, the depth found is where
// the change has the share.
func TestUntilAndBorderInvert(t *testing.T) {
	b := bar(t)
	for _, share := range []float64{0.9, 0.5, 0.1, 1e-3} {
		at := until(b.core, share)
		if got := b.core(at); math.Abs(got/share-1) > 1e-9 {
			t.Errorf("core at the time found for %g: %g", share, got)
		}
	}
	for _, at := range []float64{900, 1300, 1700} {
		depth, through := b.border(0, 0.5, at)
		if through || !(depth > 0) {
			t.Fatalf("after %g s: depth %g, through %v", at, depth, through)
		}
		x := 1 - depth/b[0].half
		if got := b.at(x, 0, 0, at); math.Abs(got-0.5) > 1e-9 {
			t.Errorf("after %g s what is left at the border is %g", at, got)
		}
	}
	if depth, through := b.border(1, 0.5, 1e6); !through || depth != b[1].half {
		t.Errorf("in the end: depth %g, through %v", depth, through)
	}
	if depth, _ := b.border(1, 0.5, 1e-6); depth != 0 {
		t.Errorf("at first: depth %g", depth)
	}
	if at := until(func(float64) float64 { return 1 }, 0.5); !math.IsInf(at, 1) {
		t.Errorf("a thing that stays reaches half after %g s", at)
	}
}

func TestDirectionRefusesNonsense(t *testing.T) {
	for _, r := range [][3]float64{{0, 1, 1}, {-1, 1, 1}, {1, 0, 1}, {1, math.NaN(), 1}, {1, 1, -1}, {math.Inf(1), 1, 1}} {
		if _, err := newDirection(r[0], 2, r[1], r[2]); err == nil {
			t.Errorf("size %g, diffusivity %g, velocity %g: no error", r[0], r[1], r[2])
		}
	}
}
