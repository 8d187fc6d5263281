package curl

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

func buckles(t *testing.T, c chain, shortest, longest float64) (load, wave float64) {
	t.Helper()
	load, wave, err := c.buckles(shortest, longest)
	if err != nil {
		t.Fatal(err)
	}
	return load, wave
}

// A plate on a half space that keeps its volume is the textbook's wrinkling.
func TestChainIsWrinkling(t *testing.T) {
	for _, r := range []struct{ e, nu, bed float64 }{{1e9, 0.33, 1e4}, {3e9, 0.3, 2.5e6}, {80e9, 0.4, 2e6}} {
		const thick = 1e-4
		ebar := r.e / (1 - r.nu*r.nu)
		c := chain{beams: []beam{{bending: ebar * thick * thick * thick / 12, force: 1}}, below: &bed{r.bed, 0.5, math.Inf(1)}}
		load, wave := buckles(t, c, thick, 1)
		strain, want := Wrinkling(quantity.Pressure(r.e), quantity.Fraction(r.nu), thick, quantity.Pressure(r.bed), 0.5)
		if !near(load/(ebar*thick), float64(strain), 1e-6) || !near(wave, float64(want), 1e-3) {
			t.Errorf("%v: strain %g, wave %g m; textbook %g, %g", r, load/(ebar*thick), wave, float64(strain), float64(want))
		}
	}
}

// The bed's closed form beside the elastic equations, integrated from the base up:
// displacements U·sin qx and W·cos qx, shear stress T·sin qx, normal stress S·cos qx.
func TestBedByIntegration(t *testing.T) {
	for _, r := range []struct{ nu, h float64 }{{0, 0.01}, {0.3, 0.5}, {0.3, 3}, {0.45, 1}, {0.4999, 0.02}, {0.4999, 1}, {0.5 - 1e-7, 6}} {
		const q, e = 2e3, 2.5e6
		g := e / (2 * (1 + r.nu))
		l := 2 * g * r.nu / (1 - 2*r.nu)
		change := func(y [4]float64) [4]float64 {
			u, w, shear, normal := y[0], y[1], y[2], y[3]
			up := (normal - l*q*u) / (l + 2*g) // W′
			return [4]float64{shear/g + q*w, up, q * ((l+2*g)*q*u + l*up), -q * shear}
		}
		up := func(y [4]float64) [4]float64 {
			const steps = 4000
			dz := r.h / q / steps
			move := func(a, b [4]float64, f float64) [4]float64 {
				for i := range a {
					a[i] += f * b[i]
				}
				return a
			}
			for range steps {
				k1 := change(y)
				k2 := change(move(y, k1, dz/2))
				k3 := change(move(y, k2, dz/2))
				k4 := change(move(y, k3, dz))
				y = move(move(move(move(y, k1, dz/6), k2, dz/3), k3, dz/3), k4, dz/6)
			}
			return y
		}
		a, b := up([4]float64{0, 0, e, 0}), up([4]float64{0, 0, 0, e})
		// U = 0 on top by a mix of the two; pressure over depth.
		mix := -a[0] / b[0]
		want := (a[3] + mix*b[3]) / (a[1] + mix*b[1])
		if got := (bed{e, r.nu, r.h / q}).stiffness(q); !near(got, want, 2e-5) {
			t.Errorf("ν %g, h %g: %g Pa/m, integrated %g", r.nu, r.h, got, want)
		}
	}
}

// A thin layer that can change its volume is Winkler's bed: P = 2√(D·K), λ = 2π(D/K)^¼.
func TestChainOnSprings(t *testing.T) {
	const d, thick, e, nu = 2e-4, 1e-6, 1e3, 0.2
	m := e * (1 - nu) / ((1 + nu) * (1 - 2*nu)) / thick
	load, wave := buckles(t, chain{beams: []beam{{bending: d, force: 1}}, below: &bed{e, nu, thick}}, 1e-4, 10)
	if !near(load, 2*math.Sqrt(d*m), 1e-5) || !near(wave, 2*math.Pi*math.Pow(d/m, 0.25), 1e-3) {
		t.Errorf("load %g N/m, wave %g m; want %g, %g", load, wave, 2*math.Sqrt(d*m), 2*math.Pi*math.Pow(d/m, 0.25))
	}
}

// Two plates on springs, one pushed and one pulled alike: the long waves go first, at
// √(K(D₁ + D₂)), worked out from the two-by-two form.
func TestTwoPlates(t *testing.T) {
	const d1, d2, thick, e = 2e-4, 1e-6, 1e-6, 1e3
	c := chain{beams: []beam{{bending: d1, force: 1, above: []bed{{e, 0, thick}}}, {bending: d2, force: -1}}}
	load, wave := buckles(t, c, 1e-3, 10)
	if want := math.Sqrt(e / thick * (d1 + d2)); !near(load, want, 1e-5) || wave != 0 {
		t.Errorf("load %g N/m, wave %g m; want %g, none", load, wave, want)
	}
}

// strip is the second method: a clamped strip in finite differences, on springs or on
// nothing. Its least load comes from inverse iteration.
func strip(d, springs, width float64) float64 {
	const n = 300
	h := width / (n + 1)
	k := make([][]float64, n)
	for i := range k {
		k[i] = make([]float64, n)
		for j, f := range map[int]float64{i - 2: 1, i - 1: -4, i: 6, i + 1: -4, i + 2: 1} {
			if j >= 0 && j < n {
				k[i][j] += f * d / (h * h * h * h)
			}
		}
		k[i][i] += springs
	}
	k[0][0] += d / (h * h * h * h) // the clamped edge mirrors
	k[n-1][n-1] += d / (h * h * h * h)
	for i := range n { // factorise the band in place
		for r := i + 1; r < min(n, i+3); r++ {
			f := k[r][i] / k[i][i]
			k[r][i] = f
			for c := i + 1; c < min(n, i+3); c++ {
				k[r][c] -= f * k[i][c]
			}
		}
	}
	w, load := make([]float64, n), 0.0
	for i := range w {
		w[i] = math.Sin(float64(i+1)*1.7) + 1
	}
	for range 3000 {
		f := make([]float64, n)
		for i := range f {
			f[i] = 2 * w[i]
			if i > 0 {
				f[i] -= w[i-1]
			}
			if i < n-1 {
				f[i] -= w[i+1]
			}
			f[i] /= h * h
		}
		for i := range n {
			for c := max(0, i-2); c < i; c++ {
				f[i] -= k[i][c] * f[c]
			}
		}
		for i := n - 1; i >= 0; i-- {
			for c := i + 1; c < min(n, i+3); c++ {
				f[i] -= k[i][c] * f[c]
			}
			f[i] /= k[i][i]
		}
		size, was := 0.0, 0.0
		for i := range f {
			size, was = size+f[i]*f[i], was+w[i]*w[i]
		}
		load = math.Sqrt(was / size)
		for i := range f {
			w[i] = f[i] / math.Sqrt(size)
		}
	}
	return load
}

// A strip many waves long hardly feels its ends.
func TestChainByFiniteDifferences(t *testing.T) {
	const d, thick, e = 2e-4, 1e-6, 1e3
	load, wave := buckles(t, chain{beams: []beam{{bending: d, force: 1}}, below: &bed{e, 0, thick}}, 1e-4, 10)
	if got := strip(d, e/thick, 12*wave); !near(got, load, 0.02) {
		t.Errorf("finite differences %g N/m, chain %g", got, load)
	}
}

// hot is a hot film's way: heated in the nip, cooled, regained.
func hot(grain Degrees, film Layer, warm float64) (*Laminate, []Stage) {
	l := joined(60, 0.05, fed(sheet, grain), eva, film)
	at := func(celsius float64, moisture quantity.Fraction) []State {
		return states(l.Layers, 0, celsius, moisture)
	}
	return l, []Stage{
		{Name: "heating", Held: true, From: at(23, 0.055), Now: at(23+warm, 0.055), Adhesive: 0.1e6, Upper: rubber, Lower: rubber},
		{Name: "cooling", Now: at(23, 0.05)},
		{Name: "regain", Now: at(23, 0.06)},
	}
}

func lines(t *testing.T, l *Laminate, s []Stage) []Line {
	t.Helper()
	found, err := l.Lines(0, s)
	if err != nil {
		t.Fatal(err)
	}
	return found
}

func TestLines(t *testing.T) {
	l, s := hot(0, pp, 40)
	found := lines(t, l, s)
	if len(found) != 6 || found[0].Compressed != AlongFeed || found[1].Compressed != AcrossFeed || found[5].Stage != "regain" {
		t.Fatalf("%+v", found)
	}
	for _, x := range found {
		if !(x.Critical > 0) || math.Abs(float64(x.Risk-max(0, x.Strain/x.Critical))) > 1e-15 {
			t.Errorf("%+v", x)
		}
	}
	// Held: free along the feed; across it the width that it may not grow by.
	if want := 11e-6 * 40 * (1 - 0.293*0.293); found[0].Force != 0 || !near(float64(found[1].Strain), want, 1e-9) {
		t.Errorf("held: %+v, want a strain of %g", found[:2], want)
	}
	// Twice as warm, twice the risk; the same wave.
	l2, s2 := hot(0, pp, 80)
	if twice := lines(t, l2, s2)[1]; !near(float64(twice.Risk), 2*float64(found[1].Risk), 1e-9) || twice.Wavelength != found[1].Wavelength {
		t.Errorf("40 K %+v, 80 K %+v", found[1], twice)
	}
	// What is stiffer against a wave buckles later, and in longer waves.
	s[0].Upper.Modulus, s[0].Lower.Modulus = 2*rubber.Modulus, 2*rubber.Modulus
	if hard := lines(t, l, s)[1]; !(hard.Critical > found[1].Critical) || !(hard.Wavelength < found[1].Wavelength) {
		t.Errorf("harder covers %+v, before %+v", hard, found[1])
	}
	s[0].Upper.Modulus = 0
	if bare := lines(t, l, s)[1]; bare.Risk != 0 || bare.Critical != 0 || bare.Strain != found[1].Strain {
		t.Errorf("bare metal: %+v", bare)
	}
	s[1].Adhesive = 1e5
	if soft := lines(t, l, s)[3]; !(soft.Critical < found[3].Critical) || !(soft.Risk > found[3].Risk) {
		t.Errorf("soft adhesive %+v, set %+v", soft, found[3])
	}
	// A shrinking sheet is in tension: no risk.
	s[0].Now[0].Moisture = 0.01
	if dry := lines(t, l, s)[1]; dry.Risk != 0 || !(dry.Force < 0) {
		t.Errorf("dried in the nip: %+v", dry)
	}
	// A sheet and a film alike in all directions do not care how they are fed.
	alike := sheet
	alike.ModulusCD, alike.Poisson, alike.ExpansionCD, alike.SwellingCD = alike.ModulusMD, 0.3, alike.ExpansionMD, alike.SwellingMD
	film := vinyl
	for _, grain := range []Degrees{0, Across} {
		j := joined(60, 0.05, fed(alike, grain), eva, film)
		x := lines(t, j, []Stage{{Name: "damp", Now: states(j.Layers, 0, 23, 0.07)}})
		if !near(float64(x[0].Risk), float64(x[1].Risk), 1e-9) || !(x[0].Risk > 0) {
			t.Errorf("%g°: %+v", float64(grain), x)
		}
	}
	// Turned by a right angle, along and across change places.
	flipped := &Laminate{Set: l.Set}
	for _, layer := range l.Layers {
		flipped.Layers = append(flipped.Layers, fed(layer, layer.Machine+Across))
	}
	a, b := lines(t, l, s[2:]), lines(t, flipped, s[2:])
	if !near(float64(a[0].Risk), float64(b[1].Risk), 1e-9) || !near(float64(a[1].Risk), float64(b[0].Risk), 1e-9) {
		t.Errorf("%+v turned: %+v", a, b)
	}
}

func TestLinesRefuse(t *testing.T) {
	for name, spoil := range map[string]func(*Laminate, []Stage) int{
		"no such layer":     func(*Laminate, []Stage) int { return 3 },
		"an adhesive":       func(*Laminate, []Stage) int { return 1 },
		"adhesive below 0":  func(_ *Laminate, s []Stage) int { s[1].Adhesive = -1; return 0 },
		"cover below 0":     func(_ *Laminate, s []Stage) int { s[0].Upper.Modulus = -1; return 0 },
		"cover too thin":    func(_ *Laminate, s []Stage) int { s[0].Lower.Thickness = 0; return 0 },
		"entry unknown":     func(_ *Laminate, s []Stage) int { s[0].From = nil; return 0 },
		"entry at 0 K":      func(_ *Laminate, s []Stage) int { s[0].From[0].Temperature = 0; return 0 },
		"state unknown":     func(_ *Laminate, s []Stage) int { s[0].Now = nil; return 0 },
		"later one unknown": func(_ *Laminate, s []Stage) int { s[2].Now = nil; return 0 },
	} {
		l, s := hot(0, pp, 40)
		if _, err := l.Lines(spoil(l, s), s); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

// A clamped strip in finite differences lifts at the critical strain, and what the tunnel
// sets free is the slope of its energy over its width.
func TestTunnel(t *testing.T) {
	l := joined(23, 0.05, sheet, psa, vinyl)
	l.Tension = []quantity.LineLoad{0, 0, 2000} // far more than a machine pulls
	const width = 5e-3
	found, err := l.Tunnel(0, now(l), width)
	if err != nil {
		t.Fatal(err)
	}
	u := found[AlongFeed]
	stiff := sheet.own()[0][0]
	thick := float64(sheet.Thickness)
	if got := strip(stiff*thick*thick*thick/12, 0, width) / (stiff * thick); !near(got, float64(u.Critical), 1e-3) {
		t.Errorf("critical strain %g, finite differences %g", float64(u.Critical), got)
	}
	if !(u.Strain > u.Critical) || !(u.Height > 0) || !near(float64(u.Width), math.Pi*thick/math.Sqrt(3*float64(u.Strain)), 1e-9) {
		t.Fatalf("%+v", u)
	}
	free := func(w float64) float64 {
		at, err := l.Tunnel(0, now(l), quantity.Length(w))
		if err != nil {
			t.Fatal(err)
		}
		// Bending of ½H(1 + cos(2πx/w)), and what is left of the compression.
		const n = 2000
		bend, shorter := 0.0, 0.0
		for i := range n {
			x := (float64(i) + 0.5) / n
			h := float64(at[AlongFeed].Height) / 2
			curve := h * 4 * math.Pi * math.Pi / (w * w) * math.Cos(2*math.Pi*x)
			slope := h * 2 * math.Pi / w * math.Sin(2*math.Pi*x)
			bend += stiff * thick * thick * thick / 24 * curve * curve * w / n
			shorter += slope * slope / 2 / n
		}
		e := float64(at[AlongFeed].Strain)
		left := e - shorter
		return stiff*thick*w/2*(e*e-left*left) - bend
	}
	if slope := (free(width*1.0001) - free(width*0.9999)) / (width * 0.0002); !near(slope, u.Drive, 1e-3) {
		t.Errorf("%g J/m² set free, the energy's slope is %g", u.Drive, slope)
	}
	// The film itself is in tension: it does not lift.
	if film, err := l.Tunnel(2, now(l), width); err != nil || film[AlongFeed].Strain >= 0 || film[AlongFeed].Width != 0 || film[AlongFeed].Height != 0 {
		t.Errorf("film %+v, %v", film, err)
	}
	for _, bad := range []struct {
		layer int
		width quantity.Length
	}{{-1, 1}, {3, 1}, {0, 0}} {
		if _, err := l.Tunnel(bad.layer, now(l), bad.width); err == nil {
			t.Errorf("%v: no error", bad)
		}
	}
	if _, err := l.Tunnel(0, nil, 1); err == nil {
		t.Error("no states, no error")
	}
}

// A film on both sides, alike: they move together, and it is two plates again.
func TestFilmOnBothSides(t *testing.T) {
	const d1, d2, thick, e = 2e-4, 1e-6, 1e-6, 1e3
	c := chain{beams: []beam{{bending: d2, force: -0.5, above: []bed{{e, 0, thick}}},
		{bending: d1, force: 1, above: []bed{{e, 0, thick}}}, {bending: d2, force: -0.5}}}
	load, _ := buckles(t, c, 1e-3, 10)
	if want := math.Sqrt(2 * e / thick * (d1 + 2*d2)); !near(load, want, 1e-5) {
		t.Errorf("load %g N/m, want %g", load, want)
	}
	// And through Lines: the sheet between two films buckles later than under one.
	one, s := hot(0, pp, 40)
	layers := []Layer{pp, eva, sheet, eva, pp}
	both := &Laminate{Layers: layers, Set: states(layers, 2, 60, 0.05)}
	x, err := both.Lines(2, []Stage{{Name: "cooling", Now: states(layers, 2, 23, 0.05)}})
	if err != nil {
		t.Fatal(err)
	}
	if y := lines(t, one, s[1:2]); !(x[1].Critical > y[1].Critical) || !(x[1].Strain > y[1].Strain) {
		t.Errorf("both sides %+v, one %+v", x[1], y[1])
	}
}

// A sheet cut into thirds and glued up again with nothing between is the same plate.
func TestStiffOnStiff(t *testing.T) {
	third := sheet
	third.Thickness /= 3
	s := Stage{Held: true, Upper: rubber, Lower: rubber}
	whole := s.chain([]Layer{sheet}, 0, AlongFeed).beams
	parts := s.chain([]Layer{third, third, third}, 1, AlongFeed).beams
	if len(parts) != 1 || !near(parts[0].bending, whole[0].bending, 1e-12) || !near(parts[0].axis, whole[0].axis, 1e-12) || parts[0].force != 1 {
		t.Errorf("whole %+v, in thirds %+v", whole, parts)
	}
	// Alone with its glue, a joined sheet has nothing to buckle against.
	l := joined(60, 0.05, sheet, eva)
	for _, x := range lines(t, l, []Stage{{Name: "cold", Now: states(l.Layers, 0, 23, 0.05)}}) {
		if x.Critical != 0 || x.Risk != 0 || !(x.Force > 0) {
			t.Errorf("%+v", x)
		}
	}
}
