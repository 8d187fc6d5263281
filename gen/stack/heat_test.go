package stack

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// pallet is a wrapped pallet of uncoated paper, or what of it a room takes.
func pallet() Parcel {
	return Parcel{Length: 0.9, Width: 0.64, Height: 0.5, Along: 0.2, Through: 0.1, Density: 800, SpecificHeat: 1500, Emissivity: 0.9}
}

var hall = Room{Temperature: 296.15, Pressure: 101325}

// follow is the second method: a quarter of the parcel in explicit finite volumes,
// whose faces give at each step the heat that still air and radiation take at their own
// mean difference just then. It returns when the core is within a difference.
func follow(t testing.TB, p Parcel, room Room, start quantity.Temperature, within float64, n int) float64 {
	t.Helper()
	size := [3]float64{float64(p.Length) / 2, float64(p.Width) / 2, float64(p.Height)}
	k := [3]float64{float64(p.Along), float64(p.Along), float64(p.Through)}
	var d [3]float64
	for i := range d {
		d[i] = size[i] / float64(n)
	}
	heat := p.heat()
	stride := [3]int{1, n, n * n}
	cells := make([]float64, n*n*n)
	for i := range cells {
		cells[i] = float64(start - room.Temperature)
	}
	next := make([]float64, len(cells))
	// A step that stays stable with the face's exchange on top.
	rate := 0.0
	for i := range d {
		rate += 2*k[i]/(d[i]*d[i]) + 20/d[i]
	}
	dt := 0.9 * heat / rate
	conduct := [3]float64{}
	var refresh int
	for step := 0; ; step++ {
		if math.Abs(cells[0]) <= within {
			return float64(step) * dt
		}
		if refresh == 0 {
			refresh = 20 // conductances move slowly
			for axis := range 3 {
				sum := 0.0
				for c := range cells {
					if c/stride[axis]%n == n-1 {
						sum += cells[c]
					}
				}
				inner := sum / float64(n*n)
				// The face itself, half a cell outside: found by three passes.
				excess, h := inner, 0.0
				for range 3 {
					var err error
					if h, err = p.face(room, excess, axis == 2); err != nil {
						t.Fatal(err)
					}
					excess = inner / (1 + h*d[axis]/2/k[axis])
				}
				conduct[axis] = 1 / (1/h + d[axis]/2/k[axis])
			}
		}
		refresh--
		for c, v := range cells {
			gain := 0.0
			for axis := range 3 {
				at := c / stride[axis] % n
				if at > 0 {
					gain += k[axis] / (d[axis] * d[axis]) * (cells[c-stride[axis]] - v)
				}
				if at < n-1 {
					gain += k[axis] / (d[axis] * d[axis]) * (cells[c+stride[axis]] - v)
				} else {
					gain -= conduct[axis] / d[axis] * v
				}
			}
			next[c] = v + dt/heat*gain
		}
		cells, next = next, cells
	}
}

// TestConductanceThatStays: what it costs that each face keeps one conductance, beside a
// scheme that follows it. Its own error, by its grid, is about 2 %.
func TestConductanceThatStays(t *testing.T) {
	small := Parcel{Length: 0.3, Width: 0.21, Height: 0.1, Along: 0.2, Through: 0.1, Density: 800, SpecificHeat: 1500, Emissivity: 0.9}
	boxed := small
	boxed.Wrap = 12
	for name, r := range map[string]struct {
		p      Parcel
		colder float64
		within float64
	}{
		"a pack from a van":  {small, 20, 2},
		"a pack, near":       {small, 5, 2},
		"a pack in a carton": {boxed, 25, 2},
		"a warm pack":        {small, -15, 2},
	} {
		start := hall.Temperature - quantity.Temperature(r.colder)
		a, err := r.p.Within(start, hall, quantity.TemperatureDifference(r.within))
		if err != nil {
			t.Fatal(err)
		}
		want := follow(t, r.p, hall, start, r.within, 12)
		if off := float64(a.Time)/want - 1; math.Abs(off) > 0.05 {
			t.Errorf("%s: %.2f h, followed %.2f h (%+.1f %%)", name, a.Time.Hours(), want/3600, 100*off)
		} else {
			t.Logf("%s: %.2f h, followed %.2f h (%+.1f %%)", name, a.Time.Hours(), want/3600, 100*off)
		}
	}
}

// TestParcelProperties: longer from further away, for larger parcels, in a carton and
// on the floor; and never shorter than the faces alone would take.
func TestParcelProperties(t *testing.T) {
	time := func(colder float64, f func(p *Parcel)) Acclimatised {
		p := pallet()
		if f != nil {
			f(&p)
		}
		a, err := p.Within(hall.Temperature-quantity.Temperature(colder), hall, 2)
		if err != nil {
			t.Fatal(err)
		}
		if a.Time < a.Lumped {
			t.Errorf("the core takes %.1f h, the faces alone %.1f", a.Time.Hours(), a.Lumped.Hours())
		}
		return a
	}
	before := quantity.Time(0)
	for _, d := range []float64{3, 5, 10, 15, 20, 30, 50} {
		a := time(d, nil)
		if a.Time <= before {
			t.Errorf("from %g K: %.1f h, from less %.1f", d, a.Time.Hours(), before.Hours())
		}
		before = a.Time
	}
	plain := time(15, nil).Time
	for name, f := range map[string]func(p *Parcel){
		"larger":          func(p *Parcel) { p.Length, p.Width, p.Height = 1.2, 0.8, 0.8 },
		"in a carton":     func(p *Parcel) { p.Wrap = 10 },
		"shiny wrap":      func(p *Parcel) { p.Emissivity = 0.05 },
		"heavier":         func(p *Parcel) { p.Density = 1100 },
		"conducting less": func(p *Parcel) { p.Along = 0.12 },
	} {
		if got := time(15, f).Time; got <= plain {
			t.Errorf("%s: %.1f h, plain %.1f h", name, got.Hours(), plain.Hours())
		}
	}
	if got := time(15, func(p *Parcel) { p.OffFloor = true }).Time; got >= plain {
		t.Errorf("off the floor %.1f h, on it %.1f", got.Hours(), plain.Hours())
	}
	if a := time(1.5, nil); a.Time != 0 || a.Share != 1 {
		t.Errorf("a parcel that is near enough already takes %v", a.Time)
	}
}

// TestSmallConductorIsLumped: with a Biot number far below 1 the faces alone decide.
func TestSmallConductorIsLumped(t *testing.T) {
	p := Parcel{Length: 0.1, Width: 0.1, Height: 0.1, Along: 200, Through: 200, Density: 2700, SpecificHeat: 900, Emissivity: 0.9}
	a, err := p.Within(276.15, hall, 2)
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(float64(a.Time/a.Lumped)-1) > 0.01 {
		t.Errorf("%.3f h, the faces alone %.3f h", a.Time.Hours(), a.Lumped.Hours())
	}
}

func TestParcelRefusesNonsense(t *testing.T) {
	for name, f := range map[string]func(p *Parcel, r *Room){
		"no size":       func(p *Parcel, _ *Room) { p.Height = 0 },
		"no density":    func(p *Parcel, _ *Room) { p.Density = quantity.Density(math.NaN()) },
		"emissivity":    func(p *Parcel, _ *Room) { p.Emissivity = 1.5 },
		"wrap":          func(p *Parcel, _ *Room) { p.Wrap = -1 },
		"no air":        func(_ *Parcel, r *Room) { r.Pressure = 0 },
		"a great house": func(p *Parcel, _ *Room) { p.Length, p.Width, p.Height = 500, 500, 500 },
	} {
		p, r := pallet(), hall
		f(&p, &r)
		if _, err := p.Within(276.15, r, 2); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := pallet().Within(276.15, hall, 0); err == nil {
		t.Error("within 0 K: no error")
	}
}
