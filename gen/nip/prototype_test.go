package nip

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// heavier gives every uncoated sheet of a pass another specific heat.
func heavier(p *Pass, c float64) *Pass {
	for i := range p.Print {
		if p.Print[i].Name == "uncoated paper" {
			p.Print[i].SpecificHeat = quantity.SpecificHeat(c)
		}
	}
	for i := range p.Film {
		if p.Film[i].Name == "PP" {
			p.Film[i].SpecificHeat = 1680 // at 20 °C, where 1920 is at 50 °C
		}
	}
	return p
}

// coldOnPaper is a cold vinyl film on a paper, its adhesive wetted out.
func coldOnPaper(speed float64) *Pass {
	p := cold(speed)
	p.Print = []Layer{uncoated(150)}
	p.Bond = 10000
	return p
}

// An earlier model of the same physics, written for the design of this one, gave
// these bond lines at the nip's end (whole degrees; 110 °C set, 45 °C for the cold
// film). It had no melting heat either. Its materials are known by kind only.
// With the recommended figures this solver is up to 1.9 K above it. With a sheet
// of 1.28 MJ/(m³ K), a little damper or denser than the recommended 1.20, and the
// heat of polypropylene at 20 °C, every row agrees within 1 K: that is within
// those figures' own spread.
func TestAgreesWithThePrototype(t *testing.T) {
	s, out := NewSolver(), new(Response)
	hot, both, drums, warm := celsius(23, 110, 45), celsius(23, 110, 110), celsius(23, 110, 40), celsius(23, 45, 23)
	worst, worstUsual := 0.0, 0.0
	for _, x := range []struct {
		name   string
		pass   func(float64) *Pass
		temps  Temps
		steady bool
		want   map[float64]float64
	}{
		{"wide hot, first piece", wideHot, hot, false, map[float64]float64{0.5: 78, 1: 76, 2: 71, 3: 67, 5: 62}},
		{"wide hot, steady run", wideHot, hot, true, map[float64]float64{1: 70, 2: 63, 5: 52}},
		{"both rollers at 110 °C, one film", wideHot, both, false, map[float64]float64{0.5: 96, 1: 89, 2: 80, 3: 73}},
		{"drum", drum, drums, false, map[float64]float64{10: 73, 20: 68, 30: 66, 50: 64}},
		{"cold", coldOnPaper, warm, false, map[float64]float64{1: 33, 2: 32, 4: 29}},
	} {
		for speed, want := range x.want {
			at := func(p *Pass) float64 {
				if err := s.Run(p, out); err != nil {
					t.Fatal(err)
				}
				c := &out.First
				if x.steady {
					c = &out.Steady
				}
				return c.Records[c.NipEnd][BondLine].at(&x.temps) - 273.15
			}
			usual, got := at(x.pass(speed)), at(heavier(x.pass(speed), 1600))
			t.Logf("%s, %g m/min: prototype %g °C, with its likely figures %.1f, with the recommended ones %.1f", x.name, speed, want, got, usual)
			worst = math.Max(worst, math.Abs(got-want))
			worstUsual = math.Max(worstUsual, math.Abs(usual-want))
			if !(math.Abs(got-want) <= 1) {
				t.Errorf("%s, %g m/min: %.2f °C, prototype %g", x.name, speed, got, want)
			}
			if !(math.Abs(usual-want) <= 2) {
				t.Errorf("%s, %g m/min, recommended figures: %.2f °C, prototype %g", x.name, speed, usual, want)
			}
		}
	}
	t.Logf("largest difference %.2f K, with the recommended figures %.2f K", worst, worstUsual)
}

// What was expected before the solver ran: with a soft cover of 3 mm the steady run
// lies 6 to 10 K below the first piece, and a steel drum hardly cares.
func TestSteadyRunIsBelowFirstPiece(t *testing.T) {
	s, out := NewSolver(), new(Response)
	below := func(p *Pass, temps Temps) float64 {
		if err := s.Run(p, out); err != nil {
			t.Fatal(err)
		}
		return out.First.Records[out.First.NipEnd][BondLine].at(&temps) - out.Steady.Records[out.Steady.NipEnd][BondLine].at(&temps)
	}
	for _, v := range []float64{1, 2, 5} {
		if d := below(wideHot(v), celsius(23, 110, 45)); !(d > 5.5 && d < 10.5) {
			t.Errorf("soft cover, %g m/min: %.2f K below", v, d)
		}
	}
	for _, v := range []float64{10, 30, 50} {
		if d := below(drum(v), celsius(23, 110, 40)); !(d > 0 && d < 0.5) {
			t.Errorf("steel drum, %g m/min: %.2f K below", v, d)
		}
	}
}
