package stack

import (
	"math"
	"testing"

	"laydown/gen/paper"
	"laydown/gen/quantity"
)

// uncoated is an uncoated sheet of 90 g/m².
func uncoated() Sheets {
	return Usual(paper.Sheet{Fibre: paper.Pulp, FibreShare: 0.78}, 112e-6, 750)
}

var (
	ream   = Pile{Length: 0.45, Width: 0.32, Height: 0.3, Transfer: StillAir}
	drying = Change{From: 0.50, To: 0.25, Temperature: 293.15, Pressure: 101325}
)

func moisture(t testing.TB, p Pile, s Sheets, c Change) *Moisture {
	t.Helper()
	m, err := NewMoisture(p, s, c)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// TestThroughIsWhereOthersFindIt: with the published diffusivities of pores and fibre
// the diffusivity of moisture through a sheet lies where it is usually put, 1e-11 to
// 1e-10 m²/s (derived range, low confidence), and in the plane it is very much greater
// (abstract of "In-plane diffusivity of moisture in paper"; no figure there).
func TestThroughIsWhereOthersFindIt(t *testing.T) {
	for _, to := range []quantity.Fraction{0.25, 0.35, 0.65, 0.75} {
		c := drying
		c.To = to
		d, err := uncoated().Diffusivities(c)
		if err != nil {
			t.Fatal(err)
		}
		if d.Through < 1e-11 || d.Through > 1e-10 {
			t.Errorf("to %.0f %%: %.2g m²/s through the sheet", to.Percent(), float64(d.Through))
		}
		if d.Along.Best < 3*d.Through {
			t.Errorf("to %.0f %%: %.2g along and %.2g through the sheet", to.Percent(), float64(d.Along.Best), float64(d.Through))
		}
		if d.Along.High < 10*d.Along.Low {
			t.Errorf("to %.0f %%: a band of %.2g to %.2g is no decade", to.Percent(), float64(d.Along.Low), float64(d.Along.High))
		}
		if d.Store < 1000 || d.Store > 20000 {
			t.Errorf("to %.0f %%: a sheet stores %.0f times what air does", to.Percent(), d.Store)
		}
	}
}

// TestVapourIsConserved: what has left is the mean of what is left at places, over the
// whole block.
func TestVapourIsConserved(t *testing.T) {
	m := moisture(t, ream, uncoated(), drying)
	const n = 40
	at := 5 * quantity.Day
	var sum float64
	for i := range n {
		for j := range n {
			left, err := m.Left((float64(i)+0.5)/n, (float64(j)+0.5)/n, 0.3, at)
			if err != nil {
				t.Fatal(err)
			}
			sum += float64(left.High)
		}
	}
	if gone := 1 - sum/(n*n); math.Abs(gone/float64(m.Gone(at).High)-1) > 2e-3 {
		t.Errorf("gone by places %.5f, on the whole %.5f", gone, float64(m.Gone(at).High))
	}
}

// TestBorderGrowsWithTheRootOfTime, as long as the middle knows nothing of it and the
// face is no hindrance.
func TestBorderGrowsWithTheRootOfTime(t *testing.T) {
	p := ream
	p.Transfer = 1
	m := moisture(t, p, uncoated(), drying)
	a, err := m.Border(0.5, 4*quantity.Day)
	if err != nil {
		t.Fatal(err)
	}
	b, _ := m.Border(0.5, 16*quantity.Day)
	if r := float64(b.Sides.Best / a.Sides.Best); math.Abs(r-2) > 0.01 {
		t.Errorf("four times as long makes the border %.3f times as deep", r)
	}
	// Of a half space that stands at the room's state: x = 2·erfc⁻¹(1/2)·√(D·t).
	want := 2 * 0.476936 * math.Sqrt(float64(m.Along.Best)*16*86400)
	if math.Abs(float64(b.Sides.Best)/want-1) > 0.01 {
		t.Errorf("border %.5f m, a half space has %.5f", float64(b.Sides.Best), want)
	}
}

// TestStackProperties: what must hold whatever the figures.
func TestStackProperties(t *testing.T) {
	m := moisture(t, ream, uncoated(), drying)
	var before quantity.Fraction
	var deep quantity.Length
	for h := 1.0; h < 1e5; h *= 2 {
		at := quantity.Time(h) * quantity.Hour
		g := m.Gone(at)
		if !(g.Low < g.Best && g.Best < g.High) {
			t.Errorf("after %g h the band does not rise: %v", h, g)
		}
		if g.Best < before || g.High > 1 || g.Low < 0 {
			t.Errorf("after %g h %v has gone, %v before", h, g, before)
		}
		before = g.Best
		b, err := m.Border(0.1, at)
		if err != nil {
			t.Fatal(err)
		}
		if b.Sides.Best < deep || b.Sides.Best > ream.Width/2 || b.Ends.Best > ream.Length/2 {
			t.Errorf("after %g h the border is %v deep from the sides, %v from the ends", h, b.Sides, b.Ends)
		}
		deep = b.Sides.Best
		half, _ := m.Border(0.5, at)
		if half.Sides.Best > b.Sides.Best {
			t.Errorf("after %g h half of the change reaches deeper than a tenth", h)
		}
	}
	if before < 0.999 {
		t.Errorf("in the end %.4f has gone", float64(before))
	}
	e, err := m.Even(0.9)
	if err != nil {
		t.Fatal(err)
	}
	if !(e.High < e.Best && e.Best < e.Low) {
		t.Errorf("times to even out do not fall along the band: %v", e)
	}
	if left, _ := m.Left(0, 0, 0, e.Best); math.Abs(float64(left.Best)-0.1) > 1e-6 {
		t.Errorf("at the time to even out %.5f of the middle's change is left", float64(left.Best))
	}
}

// TestEvenGoesWithTheSquareOfSize: of a stack twice as large each way, four times.
func TestEvenGoesWithTheSquareOfSize(t *testing.T) {
	small := Pile{Length: 0.2, Width: 0.15, Height: 0.1, Top: true, Transfer: 1}
	large := Pile{Length: 0.4, Width: 0.3, Height: 0.2, Top: true, Transfer: 1}
	a, err := moisture(t, small, uncoated(), drying).Even(0.9)
	if err != nil {
		t.Fatal(err)
	}
	b, _ := moisture(t, large, uncoated(), drying).Even(0.9)
	if r := float64(b.Best / a.Best); math.Abs(r-4) > 0.01 {
		t.Errorf("twice the size takes %.4f times as long", r)
	}
}

// TestOpenTopHelpsThinStacksOnly: a few sheets dry through an open top, a tall pile by
// its edges.
func TestOpenTopHelpsThinStacksOnly(t *testing.T) {
	ratio := func(height quantity.Length) float64 {
		p := ream
		p.Height = height
		shut, err := moisture(t, p, uncoated(), drying).Even(0.5)
		if err != nil {
			t.Fatal(err)
		}
		p.Top = true
		open, _ := moisture(t, p, uncoated(), drying).Even(0.5)
		return float64(open.Best / shut.Best)
	}
	if r := ratio(0.005); r > 0.05 {
		t.Errorf("5 mm with an open top take %.3f of the time of a shut one", r)
	}
	if r := ratio(1); r < 0.99 {
		t.Errorf("a metre with an open top takes %.3f of the time of a shut one", r)
	}
}

// TestSlowFaceLimits: where the air takes next to nothing away the stack is even inside
// and loses exponentially.
func TestSlowFaceLimits(t *testing.T) {
	p := ream
	p.Transfer = 1e-7
	m := moisture(t, p, uncoated(), drying)
	at := 400 * quantity.Day
	share := 1 - float64(m.Gaps.Best)
	rate := 1e-7 / (m.Store * share) * 2 * (1/0.45 + 1/0.32)
	if want := 1 - math.Exp(-rate*float64(at)); math.Abs(float64(m.Gone(at).Best)/want-1) > 0.02 {
		t.Errorf("gone %.5f, an even stack has lost %.5f", float64(m.Gone(at).Best), want)
	}
}

// TestGapsHasten: a looser stack is quicker; thicker sheets with the same
// gaps are slower.
func TestGapsHasten(t *testing.T) {
	loose, thick := uncoated(), uncoated()
	loose.Gap = Band[quantity.Length]{20e-6, 50e-6, 100e-6}
	thick.Thickness = 400e-6
	even := func(s Sheets) float64 {
		e, err := moisture(t, ream, s, drying).Even(0.9)
		if err != nil {
			t.Fatal(err)
		}
		return e.Best.Hours()
	}
	pressed := even(uncoated())
	if even(loose) > 0.5*pressed {
		t.Errorf("a loose stack takes %.0f h, a pressed one %.0f", even(loose), pressed)
	}
	if even(thick) < pressed {
		t.Errorf("thick sheets take %.0f h, thin ones %.0f", even(thick), pressed)
	}
}

func TestHumidityAlongTheSecant(t *testing.T) {
	if drying.Humidity(1) != 0.50 || drying.Humidity(0) != 0.25 || drying.Humidity(0.5) != 0.375 {
		t.Error("the probe's humidity does not go from the stack's to the room's")
	}
}

func TestStackRefusesNonsense(t *testing.T) {
	change := func(f func(p *Pile, s *Sheets, c *Change)) error {
		p, s, c := ream, uncoated(), drying
		f(&p, &s, &c)
		_, err := NewMoisture(p, s, c)
		return err
	}
	for name, f := range map[string]func(*Pile, *Sheets, *Change){
		"no isotherm":       func(_ *Pile, s *Sheets, _ *Change) { s.Sheet = nil },
		"no thickness":      func(_ *Pile, s *Sheets, _ *Change) { s.Thickness = 0 },
		"gaps that fall":    func(_ *Pile, s *Sheets, _ *Change) { s.Gap.Low = 1 },
		"pores that fall":   func(_ *Pile, s *Sheets, _ *Change) { s.Along.High = 0 },
		"fibre below 0":     func(_ *Pile, s *Sheets, _ *Change) { s.Fibre = -1 },
		"no change":         func(_ *Pile, _ *Sheets, c *Change) { c.To = c.From },
		"saturated":         func(_ *Pile, _ *Sheets, c *Change) { c.To = 1 },
		"no humidity":       func(_ *Pile, _ *Sheets, c *Change) { c.From = quantity.Fraction(math.NaN()) },
		"colder than ice":   func(_ *Pile, _ *Sheets, c *Change) { c.Temperature = 200 },
		"no size":           func(p *Pile, _ *Sheets, _ *Change) { p.Width = 0 },
		"no air":            func(p *Pile, _ *Sheets, _ *Change) { p.Transfer = 0 },
		"plastic, no water": func(_ *Pile, s *Sheets, _ *Change) { s.Sheet = paper.Sheet{Fibre: paper.Pulp, Base: 0.1} },
	} {
		if change(f) == nil {
			t.Errorf("%s: no error", name)
		}
	}
	m := moisture(t, ream, uncoated(), drying)
	if _, err := m.Border(0, 1); err == nil {
		t.Error("a share of 0: no error")
	}
	if _, err := m.Even(1); err == nil {
		t.Error("a share of 1: no error")
	}
	if _, err := m.Left(2, 0, 0, 1); err == nil {
		t.Error("a place outside: no error")
	}
	if _, err := m.Across(1, false, 1); err == nil {
		t.Error("one place across: no error")
	}
}
