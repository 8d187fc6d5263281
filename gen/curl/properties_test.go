package curl

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// curl of a laminate, or the end of the test.
func curl(t *testing.T, l *Laminate, now []State) *Curl {
	t.Helper()
	c, err := l.Curl(now)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func near(a, b, relative float64) bool {
	return math.Abs(a-b) <= relative*math.Max(math.Abs(a), math.Abs(b))
}

// Timoshenko's strip, and a plate of the same two layers with one Poisson ratio: the
// same curvature, for any moduli and thicknesses.
func TestEqualPoissonIsTimoshenko(t *testing.T) {
	for _, nu := range []quantity.Fraction{0, 0.3, 0.45} {
		for _, r := range []struct{ t1, t2, e1, e2 float64 }{{1e-3, 1e-3, 137e9, 130e9}, {1e-4, 5e-4, 4e9, 2e9}, {15e-6, 120e-6, 2e9, 7e9}, {1e-6, 1e-3, 1e11, 1e9}} {
			layers := []Layer{
				{Name: "1", Thickness: quantity.Length(r.t1), ModulusMD: quantity.Pressure(r.e1), ModulusCD: quantity.Pressure(r.e1), Poisson: nu},
				{Name: "2", Thickness: quantity.Length(r.t2), ModulusMD: quantity.Pressure(r.e2), ModulusCD: quantity.Pressure(r.e2), Poisson: nu},
			}
			const differ = 1.88e-3
			p, err := NewPlate(layers, []Vector{{differ, differ, 0}, {}})
			if err != nil {
				t.Fatal(err)
			}
			m, n, h := r.t1/r.t2, r.e1/r.e2, r.t1+r.t2
			want := -6 * differ * (1 + m) * (1 + m) / (h * (3*(1+m)*(1+m) + (1+m*n)*(m*m+1/(m*n))))
			for i := range 2 {
				if !near(p.Curvature[i], want, 1e-10) {
					t.Errorf("ν %g, %v: curvature %g, Timoshenko %g", float64(nu), r, p.Curvature[i], want)
				}
			}
		}
	}
}

// Stoney's limit for a film much thinner than what it lies on: κ = 6σt_f(1−ν_s)/(E_s t_s²)
// (as printed by Feng, Huang and Rosakis, J. Appl. Mech.). What is left falls with the
// thickness.
func TestStoneyLimit(t *testing.T) {
	last := math.Inf(1)
	for _, thin := range []float64{1e-2, 1e-3, 1e-4, 1e-5} {
		const es, ef, ns, nf, ts, f = 70e9, 5e9, 0.22, 0.4, 1e-3, -1e-3
		layers := []Layer{
			{Name: "substrate", Thickness: ts, ModulusMD: es, ModulusCD: es, Poisson: ns},
			{Name: "film", Thickness: quantity.Length(thin * ts), ModulusMD: ef, ModulusCD: ef, Poisson: nf},
		}
		p, err := NewPlate(layers, []Vector{{}, {f, f, 0}})
		if err != nil {
			t.Fatal(err)
		}
		stress := -f * ef / (1 - nf)
		stoney := -6 * stress * thin * ts * (1 - ns) / (es * ts * ts)
		off := math.Abs(p.Curvature[0]/stoney - 1)
		if off > last/8 || off > 2*thin {
			t.Errorf("film %g of the substrate: curvature %g, Stoney %g, %g off (before %g)", thin, p.Curvature[0], stoney, off, last)
		}
		last = off
		// For isotropic layers the size estimate has a closed form: a²·κ = 4h.
		c := p.Cylinder()
		a := float64(p.SaddleBelow(c)) / 2
		if !c.AnyAxis || thin < 1e-3 && !near(a*a*math.Abs(p.Curvature[0]), 4*ts, 0.01) {
			t.Errorf("a saddle below %g m, a²κ = %g, 4h = %g", 2*a, a*a*math.Abs(p.Curvature[0]), 4*ts)
		}
	}
}

// laminates over which properties must hold: hot, cold, both sides, odd angles.
func laminates() map[string]*Laminate {
	pulled := joined(60, 0.05, sheet, eva, pp)
	pulled.Tension = []quantity.LineLoad{0, 0, 30}
	cold := joined(23, 0.05, sheet, psa, vinyl)
	cold.Tension = []quantity.LineLoad{0, 0, 40}
	return map[string]*Laminate{
		"PP, along":  joined(60, 0.05, sheet, eva, pp),
		"PP, across": joined(60, 0.05, fed(sheet, Across), eva, pp),
		"PET, 30°":   joined(60, 0.05, fed(sheet, 30), eva, pet),
		"PP, pulled": pulled, "cold": cold,
		"both sides": {Layers: []Layer{pet, eva, fed(sheet, -20), eva, pp}, Set: states([]Layer{pet, eva, sheet, eva, pp}, 2, 60, 0.05)},
		"nylon":      joined(60, 0.05, sheet, eva, nylon),
	}
}

func now(l *Laminate) []State {
	for i := range l.Layers {
		if l.Layers[i].Name == "paper" {
			return states(l.Layers, i, 23, 0.062)
		}
	}
	return nil
}

// The cylinder never holds less than the free plate, nor more than the flat sheet, and
// no axis and curvature tried at random hold less than the cylinder.
func TestCylinderIsTheLeast(t *testing.T) {
	for name, l := range laminates() {
		c := curl(t, l, now(l))
		p, cy := c.Plate, c.Cylinder
		if !(p.Energy <= cy.Energy*(1+1e-12) && cy.Energy <= p.FlatEnergy) || p.Energy < 0 {
			t.Errorf("%s: plate %g, cylinder %g, flat %g J/m²", name, p.Energy, cy.Energy, p.FlatEnergy)
		}
		for i := range 997 {
			s, co := math.Sincos(float64(i) * 0.618)
			k := cy.Curvature * (float64(i%29)/9 - 1)
			if e := p.EnergyAt(Vector{co * co, s * s, 2 * s * co}.times(k)); e < cy.Energy*(1-1e-9) {
				t.Errorf("%s: %g J/m² at %g 1/m, below the cylinder's %g", name, e, k, cy.Energy)
			}
		}
		if o := cy.Second; o.Curvature != 0 && (o.Energy < cy.Energy*(1-1e-9) || o.Energy > p.FlatEnergy) {
			t.Errorf("%s: second cylinder %g, first %g, flat %g", name, o.Energy, cy.Energy, p.FlatEnergy)
		}
		t.Logf("%s: κ %.2f %.2f %.2f; R %.0f mm, axis %.1f°, %v; second %.2f at %.1f°; saddle below %.0f mm; rise of 210 mm %.1f mm", name,
			p.Curvature[0], p.Curvature[1], p.Curvature[2], 1e3*float64(cy.Radius), float64(cy.Axis), cy.Side(), cy.Second.Curvature, float64(cy.Second.Axis),
			1e3*float64(c.SaddleBelow), 1e3*float64(cy.Rise(0.21)))
	}
}

// What is the same above and below lies flat, whatever the room does. A different film
// below does not.
func TestCounterLaminated(t *testing.T) {
	for _, machine := range []Degrees{0, 35, Across} {
		layers := []Layer{pp, eva, fed(sheet, machine), eva, pp}
		l := &Laminate{Layers: layers, Set: states(layers, 2, 60, 0.05), Tension: []quantity.LineLoad{20, 0, 0, 0, 20}}
		if c := curl(t, l, states(layers, 2, 23, 0.08)); c.Cylinder.Side() != Flat || c.Cylinder.Rise(1) != 0 {
			t.Errorf("%g°: symmetric, yet it curls %g 1/m", float64(machine), c.Cylinder.Curvature)
		}
		l.Tension[4] = 25
		if c := curl(t, l, states(layers, 2, 23, 0.08)); c.Cylinder.Side() != Upward {
			t.Errorf("%g°: pulled more above, it goes %v", float64(machine), c.Cylinder.Side())
		}
	}
}

// Twice the strains, twice the curvature and four times the energy. Twice the
// thickness, half the curvature and twice the energy.
func TestScaling(t *testing.T) {
	for name, l := range laminates() {
		c := curl(t, l, now(l))
		double := make([]Vector, len(c.Free))
		thick := make([]Layer, len(c.Layers))
		for i := range double {
			double[i] = c.Free[i].times(2)
			thick[i] = c.Layers[i]
			thick[i].Thickness *= 2
		}
		p, err := NewPlate(c.Layers, double)
		if err != nil {
			t.Fatal(err)
		}
		if d := p.Cylinder(); !near(d.Curvature, 2*c.Cylinder.Curvature, 1e-9) || !near(d.Energy, 4*c.Cylinder.Energy, 1e-9) || math.Abs(float64(d.Axis-c.Cylinder.Axis)) > 1e-4 {
			t.Errorf("%s: doubled strains: %+v from %+v", name, d, c.Cylinder)
		}
		if p, err = NewPlate(thick, c.Free); err != nil {
			t.Fatal(err)
		}
		if d := p.Cylinder(); !near(d.Curvature, c.Cylinder.Curvature/2, 1e-9) || !near(d.Energy, 2*c.Cylinder.Energy, 1e-9) {
			t.Errorf("%s: doubled thickness: %+v from %+v", name, d, c.Cylinder)
		}
	}
}

// Turned on the table, a laminate is the same laminate.
func TestTurned(t *testing.T) {
	for name, l := range laminates() {
		if l.Tension != nil {
			continue // tension is bound to the feed
		}
		c := curl(t, l, now(l))
		for _, by := range []Degrees{17, 45, 90, 133} {
			turned := *l
			turned.Layers = nil
			for _, layer := range l.Layers {
				turned.Layers = append(turned.Layers, fed(layer, layer.Machine+by))
			}
			d := curl(t, &turned, now(l))
			off := math.Mod(float64(d.Cylinder.Axis-c.Cylinder.Axis-by)+720+90, 180) - 90
			if math.Abs(off) > 1e-3 || !near(d.Cylinder.Curvature, c.Cylinder.Curvature, 1e-9) || !near(d.Plate.Energy, c.Plate.Energy, 1e-9) ||
				!near(float64(d.SaddleBelow), float64(c.SaddleBelow), 0.05) {
				t.Errorf("%s turned by %g°: %+v from %+v", name, float64(by), d.Cylinder, c.Cylinder)
			}
		}
	}
}

// Turned over, the edges go to the other side.
func TestTurnedOver(t *testing.T) {
	l := joined(60, 0.05, sheet, eva, pp)
	over := &Laminate{Layers: []Layer{pp, eva, sheet}, Set: states([]Layer{pp, eva, sheet}, 2, 60, 0.05)}
	a, b := curl(t, l, now(l)).Cylinder, curl(t, over, now(over)).Cylinder
	if a.Side() != Upward || b.Side() != Downward || !near(a.Curvature, -b.Curvature, 1e-9) {
		t.Errorf("film above %+v, film below %+v", a, b)
	}
}

// Each cause alone has a side and an axis that follow from what strains where.
func TestCauses(t *testing.T) {
	grainOnly := sheet
	grainOnly.SwellingMD = 0
	rows := []struct {
		name     string
		laminate *Laminate
		celsius  float64
		moisture quantity.Fraction
		tension  quantity.LineLoad
		side     Side
		axis     Degrees
	}{
		{"nothing happens", joined(23, 0.05, sheet, eva, pp), 23, 0.05, 0, Flat, 0},
		{"film pulled along the feed: lead and tail lift", joined(23, 0.05, sheet, eva, pp), 23, 0.05, 30, Upward, 90},
		{"paper grows across its grain, grain along the feed", joined(23, 0.05, grainOnly, eva, pp), 23, 0.07, 0, Upward, 0},
		{"paper grows across its grain, grain across", joined(23, 0.05, fed(grainOnly, Across), eva, pp), 23, 0.07, 0, Upward, 90},
		{"paper dries", joined(23, 0.05, grainOnly, eva, pp), 23, 0.03, 0, Downward, 0},
		{"film falls back", joined(60, 0.05, sheet, eva, pp), 23, 0.05, 0, Upward, 0},
	}
	for _, r := range rows {
		r.laminate.Tension = []quantity.LineLoad{0, 0, r.tension}
		c := curl(t, r.laminate, states(r.laminate.Layers, 0, r.celsius, r.moisture))
		if c.Cylinder.Side() != r.side || r.side != Flat && math.Abs(float64(c.Cylinder.Axis-r.axis)) > 1e-3 {
			t.Errorf("%s: %+v", r.name, c.Cylinder)
		}
	}
}

// A film that swells with the paper takes less curl from a damp room than one that does
// not, and less still once moisture has softened it; strain that has crept away does not
// curl.
func TestLayFlatAndCreep(t *testing.T) {
	bend := func(film Layer, relaxed quantity.Fraction) float64 {
		l := joined(23, 0.05, sheet, eva, film)
		l.Tension = []quantity.LineLoad{0, 0, 20}
		s := states(l.Layers, 0, 23, 0.07)
		s[2].Relaxed = relaxed
		return math.Abs(curl(t, l, s).Cylinder.Curvature)
	}
	film := nylon // one that does not outgrow the paper
	film.SwellingMD, film.SwellingCD = 0.05, 0.05
	still, hard := film, film
	still.SwellingMD, still.SwellingCD = 0, 0
	hard.Softening = 0
	if !(bend(film, 0) < bend(still, 0)) || !(bend(hard, 0) < bend(still, 0)) {
		t.Errorf("swelling %g, not softening %g, not swelling %g 1/m", bend(film, 0), bend(hard, 0), bend(still, 0))
	}
	soft := still
	soft.Softening = 30
	if !(bend(soft, 0) < bend(still, 0)) || !(bend(still, 1) < bend(still, 0)) {
		t.Errorf("softened %g, crept %g, neither %g 1/m", bend(soft, 0), bend(still, 1), bend(still, 0))
	}
}

func TestRise(t *testing.T) {
	c := Cylinder{Radius: 0.1, Curvature: 10}
	for _, r := range []struct{ length, want quantity.Length }{{0, 0}, {0.02, 0.1 * quantity.Length(1-math.Cos(0.1))}, {0.1 * math.Pi, 0.1}, {0.2 * math.Pi, 0.2}, {3, 0.2}} {
		if got := c.Rise(r.length); !near(float64(got), float64(r.want), 1e-12) {
			t.Errorf("%g m: %g, want %g", float64(r.length), float64(got), float64(r.want))
		}
	}
}

func TestRefused(t *testing.T) {
	good := func() *Laminate { return joined(60, 0.05, sheet, eva, pp) }
	for name, spoil := range map[string]func(*Laminate, []State){
		"no thickness":      func(l *Laminate, _ []State) { l.Layers[0].Thickness = 0 },
		"no modulus":        func(l *Laminate, _ []State) { l.Layers[1].ModulusCD = 0 },
		"Poisson too high":  func(l *Laminate, _ []State) { l.Layers[0].Poisson = 1.5 },
		"Poisson below 0":   func(l *Laminate, _ []State) { l.Layers[0].Poisson = -0.1 },
		"shear below 0":     func(l *Laminate, _ []State) { l.Layers[0].Shear = -1 },
		"expansion NaN":     func(l *Laminate, _ []State) { l.Layers[0].ExpansionMD = quantity.Expansion(math.NaN()) },
		"a state missing":   func(l *Laminate, _ []State) { l.Set = l.Set[:2] },
		"0 K":               func(_ *Laminate, s []State) { s[0].Temperature = 0 },
		"moisture below 0":  func(_ *Laminate, s []State) { s[0].Moisture = -0.01 },
		"relaxed twice":     func(_ *Laminate, s []State) { s[0].Relaxed = 2 },
		"a tension missing": func(l *Laminate, _ []State) { l.Tension = []quantity.LineLoad{1} },
		"pushed":            func(l *Laminate, _ []State) { l.Tension = []quantity.LineLoad{0, 0, -1} },
		"no layers":         func(l *Laminate, _ []State) { l.Layers, l.Set = nil, nil },
	} {
		l := good()
		s := now(l)
		spoil(l, s)
		if name == "no layers" {
			s = nil
		}
		if _, err := l.Curl(s); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
