package nip

import (
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

func mustRun(t testing.TB, p *Pass) *Response {
	t.Helper()
	out := new(Response)
	if err := NewSolver().Run(p, out); err != nil {
		t.Fatal(err)
	}
	return out
}

// eachRow calls f for every response of a case.
func eachRow(c *Case, f func(r Row)) {
	for _, rec := range c.Records {
		for _, r := range rec {
			f(r)
		}
	}
	for _, r := range c.Profile {
		f(r)
	}
	for _, r := range []Row{c.PrintMean, c.LastMean, c.UpperSurface, c.LowerSurface, c.UpperCore, c.LowerCore} {
		f(r)
	}
}

// Where all is at one temperature all stays there. Room is counted as what the other
// shares leave of 1, so the check is on a pass that nothing exposes to the room:
// there the shares of the others must add up to 1 by themselves.
func TestAllAtOneTemperatureStays(t *testing.T) {
	for _, p := range []*Pass{wideHot(1), encapsulator(2), drum(30), cold(2)} {
		p.OpenFace, p.Upper.Idle, p.Lower.Idle = 0, 0, 0
		p.After = []Stage{{Time: 20, Face: Exposure{30, Chill}, Back: Exposure{10, Chill}}}
		out := mustRun(t, p)
		for _, c := range []*Case{&out.First, &out.Steady} {
			eachRow(c, func(r Row) {
				if !(math.Abs(r[Room]) <= 1e-10) {
					t.Errorf("the room's share is %g where nothing meets the room", r[Room])
				}
				if got := float64(r.At(Same(300))); !(math.Abs(got-300) <= 1e-9) {
					t.Errorf("all at 300 K gives %.12g K", got)
				}
			})
		}
	}
}

// No place gets hotter than the hottest or colder than the coldest that acts on it.
// The time steps leave ripples of a few per cent in the first records after first
// touch, none from a tenth of the nip on.
func TestSharesLieBetweenNoneAndAll(t *testing.T) {
	for _, x := range realistic {
		out := mustRun(t, x.Pass)
		for _, c := range []*Case{&out.First, &out.Steady} {
			for i, rec := range c.Records {
				slack := 1e-3
				if c.Times[i] < x.Pass.NipTime()/10 || i > c.NipEnd && c.Times[i] < c.Times[c.NipEnd]+x.Pass.NipTime()/10 {
					slack = 0.05
				}
				for place, r := range rec {
					for b, v := range r {
						if !(v >= -slack && v <= 1+slack) {
							t.Errorf("%s, record %d at %.4f s, place %d: share %d is %.4f", x.Name, i, c.Times[i], place, b, v)
						}
					}
				}
			}
		}
	}
}

// Twice the distance from the room gives twice the response.
func TestResponseScales(t *testing.T) {
	p := wideHot(1)
	out := mustRun(t, p)
	once, twice := celsius(23, 60, 33), celsius(23, 97, 43)
	for _, c := range []*Case{&out.First, &out.Steady} {
		for _, rec := range c.Records {
			a := rec[BondLine].at(&once) - 296.15
			b := rec[BondLine].at(&twice) - 296.15
			if !(math.Abs(b-2*a) <= 1e-9) {
				t.Errorf("%.9f K above the room, then %.9f", a, b)
			}
		}
	}
}

// Faster never lowers the lowest set temperature of a one-sided hot film: over all
// speeds where the lower roller is as hot as the upper, so that nothing in the nip
// draws heat out; and with a warm one, at 45 or 70 °C, from 0.4 m/min on. Slower than
// that a sheet hotter than its lower roller is cooled by staying: at 45 °C, 0.2 m/min
// needs 0.4 K more set than 0.4 m/min, and so it is on a fine grid.
func TestFasterNeedsNoLessHeat(t *testing.T) {
	const slack = 0.02 // K
	for _, x := range []struct {
		name   string
		pass   func(float64) *Pass
		target float64
		speeds []float64
	}{
		{"wide hot", wideHot, 85, []float64{0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 1, 1.5, 2, 3, 4, 5, 7}},
		{"drum", drum, 80, []float64{3, 5, 8, 10, 15, 20, 30, 40, 50, 60, 80}},
		{"low-melt on a thin cover", func(v float64) *Pass {
			p := wideHot(v)
			p.Film, p.Print = []Layer{pet(12), eva(26)}, []Layer{toner(6), coated(120)}
			p.Upper.Wrap = 30 * millimetre
			return p
		}, 75, []float64{0.1, 0.2, 0.4, 0.6, 1, 2, 4, 6}},
	} {
		for _, lower := range []float64{45, 70, 0} {
			temps := celsius(23, 0, lower)
			last := [2]float64{}
			for _, v := range x.speeds {
				p := x.pass(v)
				if lower == 0 {
					p.Lower.Core = Set
				} else if v < 0.4 {
					continue
				}
				out := mustRun(t, p)
				for k, c := range []*Case{&out.First, &out.Steady} {
					set, err := c.SetForBondLine(quantity.Temperature(x.target+273.15), temps)
					if err != nil {
						t.Fatal(err)
					}
					if !(float64(set) >= last[k]-slack) {
						t.Errorf("%s, lower roller %g °C, case %d: at %g m/min %.2f °C will do, slower %.2f", x.name, lower, k, v, float64(set)-273.15, last[k]-273.15)
					}
					last[k] = float64(set)
				}
			}
		}
	}
}

// More contact never cools the bond line, nor does a longer wrap, a warmer lower
// roller, or a thinner sheet, at a given speed.
func TestMoreHeatWarms(t *testing.T) {
	temps, warmer := celsius(23, 110, 45), celsius(23, 110, 60)
	bond := func(p *Pass, temps Temps) [2]float64 {
		out := mustRun(t, p)
		a, _ := out.First.BondLineMax(temps)
		b, _ := out.Steady.BondLineMax(temps)
		return [2]float64{float64(a), float64(b)}
	}
	base := bond(wideHot(2), temps)
	change := func(f func(*Pass)) *Pass { p := wideHot(2); f(p); return p }
	for name, got := range map[string][2]float64{
		"contact in the wrap": bond(change(func(p *Pass) { p.Upper.WrapContact *= 2 }), temps),
		"contact in the nip":  bond(change(func(p *Pass) { p.Upper.NipContact *= 2 }), temps),
		"wrap":                bond(change(func(p *Pass) { p.Upper.Wrap *= 1.5 }), temps),
		"lower roller":        bond(wideHot(2), warmer),
		"two hot rollers":     bond(encapsulator(2), temps),
		"thinner film":        bond(change(func(p *Pass) { p.Film = []Layer{pet(12), eva(50)} }), temps),
	} {
		if !(got[0] > base[0] && got[1] > base[1]) {
			t.Errorf("more by %s: bond line %.2f and %.2f °C, before %.2f and %.2f", name, got[0]-273.15, got[1]-273.15, base[0]-273.15, base[1]-273.15)
		}
	}
}

// A two-sided run is the same from above and from below.
func TestTwoSidedIsSymmetric(t *testing.T) {
	out := mustRun(t, encapsulator(1))
	for _, c := range []*Case{&out.First, &out.Steady} {
		for i := range c.Profile {
			j := len(c.Profile) - 1 - i
			for b := range c.Profile[i] {
				if !(math.Abs(c.Profile[i][b]-c.Profile[j][b]) <= 1e-9) {
					t.Errorf("cell %d: share %d is %.12g, %.12g in its mirror", i, b, c.Profile[i][b], c.Profile[j][b])
				}
			}
		}
	}
}

// A layer said in two halves is the same layer.
func TestLayersMayBeSplit(t *testing.T) {
	p := wideHot(1)
	p.Film = []Layer{pet(10), pet(15), eva(25), eva(25)}
	p.Print = []Layer{uncoated(50), uncoated(100)}
	temps := celsius(23, 110, 45)
	a, b := mustRun(t, wideHot(1)), mustRun(t, p)
	for k, x := range [][2]*Case{{&a.First, &b.First}, {&a.Steady, &b.Steady}} {
		whole, _ := x[0].BondLineMax(temps)
		split, _ := x[1].BondLineMax(temps)
		if !(math.Abs(float64(whole-split)) <= 0.1) {
			t.Errorf("case %d: %.3f K whole, %.3f split", k, float64(whole), float64(split))
		}
	}
}

// A set temperature sensed at the surface: the surface stands at it before the film,
// and the core's temperature that the response gives makes the same run.
func TestSensedAtSurface(t *testing.T) {
	temps := celsius(23, 110, 45)
	for _, p := range []*Pass{wideHot(2), encapsulator(1), drum(20)} {
		p.Upper.Sensed = AtSurface
		at := mustRun(t, p)
		for b, v := range at.Steady.UpperSurface {
			want := 0.0
			if Boundary(b) == Set {
				want = 1
			}
			if !(math.Abs(v-want) <= 1e-9) {
				t.Errorf("share %d of the sensed surface is %g, want %g", b, v, want)
			}
		}
		core := temps
		core.Set = at.Steady.UpperCore.At(temps)
		if !(core.Set > temps.Set) {
			t.Errorf("core %.2f °C for a surface of 110", float64(core.Set)-273.15)
		}
		p.Upper.Sensed = AtCore
		same := mustRun(t, p)
		for i := range at.Steady.Records {
			a, b := at.Steady.Records[i][BondLine].At(temps), same.Steady.Records[i][BondLine].At(core)
			if !(math.Abs(float64(a-b)) <= 1e-8) {
				t.Errorf("record %d: %.9f K set at the surface, %.9f at the core", i, float64(a), float64(b))
			}
		}
		// The first piece's cover is uniform: there is nothing to convert.
		if a, b := at.First.PrintMean.At(temps), same.First.PrintMean.At(temps); a != b {
			t.Errorf("first piece: %.6f and %.6f K", float64(a), float64(b))
		}
	}
}

// A lower roller without a heater forgets what it started at; one with a heater does not.
func TestInsulatedRollerForgets(t *testing.T) {
	p := wideHot(1)
	p.Lower.Insulated = true
	out := mustRun(t, p)
	end := out.Steady.Records[out.Steady.NipEnd][PrintBack]
	if end[Lower] != 0 || !(out.First.Records[out.First.NipEnd][PrintBack][Lower] > 0.05) {
		t.Errorf("shares of the lower roller's start: steady %g, first %g", end[Lower], out.First.Records[out.First.NipEnd][PrintBack][Lower])
	}
	settled := float64(out.Steady.LowerCore.At(celsius(23, 110, 45))) - 273.15
	if !(settled > 30 && settled < 80) {
		t.Errorf("it settles at %.1f °C", settled)
	}
	t.Logf("a lower roller without a heater settles at %.1f °C", settled)
}

// A pre-heat warms, a fan and a chill roller cool.
func TestStagesAct(t *testing.T) {
	temps := celsius(23, 110, 45)
	temps.Preheat = 333.15
	last := func(p *Pass) float64 {
		out := mustRun(t, p)
		return out.First.Records[len(out.First.Records)-1][BondLine].at(&temps)
	}
	p := wideHot(1)
	p.After = free(2)
	plain := last(p)
	p.After = []Stage{{Time: 2, Face: Exposure{60, Room}, Back: Exposure{15, Room}}}
	fan := last(p)
	p.After = []Stage{{Time: 0.5, Face: Exposure{15, Room}, Back: Exposure{15, Room}}, {Time: 1, Face: Exposure{15, Room}, Back: Exposure{300, Chill}}, {Time: 0.5, Face: Exposure{15, Room}, Back: Exposure{15, Room}}}
	chill := last(p)
	p.After = free(2)
	p.PrintBefore = []Stage{{Time: 3, Back: Exposure{300, Preheat}}}
	warm := last(p)
	if !(chill < fan && fan < plain && plain < warm) {
		t.Errorf("2 s after the nip: chill roller %.2f, fan %.2f, still air %.2f, print pre-heated %.2f °C", chill-273.15, fan-273.15, plain-273.15, warm-273.15)
	}
}

// A roller with no cover is the limit of a thin cover that conducts without end.
func TestBareRoller(t *testing.T) {
	temps := celsius(23, 110, 40)
	p := drum(20)
	p.Upper.Cover = layer("copper", 100, 400, 8900, 385)
	thin := mustRun(t, p)
	p.Upper.Cover = Layer{}
	bare := mustRun(t, p)
	for k, x := range [][2]*Case{{&thin.First, &bare.First}, {&thin.Steady, &bare.Steady}} {
		a, _ := x[0].BondLineMax(temps)
		b, _ := x[1].BondLineMax(temps)
		if !(math.Abs(float64(a-b)) <= 0.05) {
			t.Errorf("case %d: %.3f K under a thin metal cover, %.3f bare", k, float64(a), float64(b))
		}
	}
}

// The closed forms and what they are the inverse of.
func TestSetTemperatures(t *testing.T) {
	temps := celsius(23, 0, 45)
	for _, p := range []*Pass{wideHot(1), encapsulator(2), drum(30), shoe(1)} {
		out := mustRun(t, p)
		for _, c := range []*Case{&out.First, &out.Steady} {
			for _, target := range []quantity.Temperature{350, 360, 370} {
				set, err := c.SetForBondLine(target, temps)
				if err != nil {
					t.Fatal(err)
				}
				at := temps
				at.Set = set
				if got, _ := c.BondLineMax(at); !(math.Abs(float64(got-target)) <= 1e-9) {
					t.Errorf("set %.3f K: bond line %.9f, want %g", float64(set), float64(got), float64(target))
				}
				if set, err = c.SetForFilm(target, temps); err != nil {
					t.Fatal(err)
				}
				at.Set = set
				if got, _ := c.FilmMax(at); !(math.Abs(float64(got-target)) <= 1e-9) {
					t.Errorf("set %.3f K: film %.9f, want %g", float64(set), float64(got), float64(target))
				}
				last := 0.0
				for _, long := range []quantity.Time{0, 0.01, 0.1, 0.5} {
					if set, err = c.SetForHeld(target, long, temps); err != nil {
						t.Fatal(err)
					}
					if !(float64(set) >= last-1e-9) {
						t.Errorf("held for %g s: %.3f K, for less %.3f", float64(long), float64(set), last)
					}
					last = float64(set)
					at.Set = set
					if got := c.TimeAbove(at, target-1e-6); !(got >= long-1e-6) {
						t.Errorf("set for %g s above, it is %g s", float64(long), float64(got))
					}
					held, err := c.Held(at, long)
					if err != nil || !(math.Abs(float64(held-target)) <= 1e-5) {
						t.Errorf("held %g s: %.7f K (%v), want %g", float64(long), float64(held), err, float64(target))
					}
				}
			}
		}
	}
	out := mustRun(t, wideHot(1))
	if _, err := out.First.Held(celsius(23, 110, 45), 1000); err == nil {
		t.Error("held for longer than was recorded")
	}
	if _, err := out.First.SetForHeld(360, 1000, temps); err == nil {
		t.Error("a set temperature for longer than was recorded")
	}
	unheated := wideHot(1)
	unheated.Upper.Core = Lower
	if _, err := mustRun(t, unheated).First.SetForBondLine(360, temps); err == nil {
		t.Error("a set temperature for a machine without one")
	}
}

// From the second pass of a kind on a run allocates nothing.
func TestRunDoesNotAllocate(t *testing.T) {
	s, out := NewSolver(), new(Response)
	for _, p := range []*Pass{wideHot(1), encapsulator(1), drum(30), shoe(1)} {
		if err := s.Run(p, out); err != nil {
			t.Fatal(err)
		}
		if n := testing.AllocsPerRun(20, func() {
			if err := s.Run(p, out); err != nil {
				t.Fatal(err)
			}
		}); n != 0 {
			t.Errorf("%g allocations a run", n)
		}
	}
}

// A solver that ran something else before gives the same to the last bit.
func TestSolverKeepsNothing(t *testing.T) {
	fresh := mustRun(t, drum(20))
	s, used := NewSolver(), new(Response)
	for _, p := range []*Pass{encapsulator(0.5), cold(1), shoe(2), drum(20)} {
		if err := s.Run(p, used); err != nil {
			t.Fatal(err)
		}
	}
	if len(fresh.Steady.Records) != len(used.Steady.Records) || len(fresh.Cells) != len(used.Cells) {
		t.Fatalf("%d and %d records", len(fresh.Steady.Records), len(used.Steady.Records))
	}
	for i := range fresh.Steady.Records {
		if fresh.Steady.Records[i] != used.Steady.Records[i] || fresh.First.Records[i] != used.First.Records[i] {
			t.Errorf("record %d differs", i)
		}
	}
}

func TestRunRefuses(t *testing.T) {
	for _, x := range []struct {
		want   string
		change func(*Pass)
	}{
		{"nothing", func(p *Pass) { p.Film, p.Print = nil, nil }},
		{"must be above 0", func(p *Pass) { p.Film[0].Thickness = 0 }},
		{"must be above 0", func(p *Pass) { p.Print[0].Conductivity = quantity.Conductivity(math.NaN()) }},
		{"cells", func(p *Pass) { p.Print[0].Cells = -1 }},
		{"speed", func(p *Pass) { p.Speed = 0 }},
		{"bond", func(p *Pass) { p.Bond = 0 }},
		{"lower film", func(p *Pass) { p.LowerFilm = []Layer{eva(20)}; p.LowerBond = 0 }},
		{"girth", func(p *Pass) { p.Upper.Diameter = 15 * millimetre }},
		{"wrap", func(p *Pass) { p.Lower.Wrap = 10 * millimetre }},
		{"insulated", func(p *Pass) { p.Lower.Cover, p.Lower.Insulated = Layer{}, true }},
		{"boundary", func(p *Pass) { p.Upper.Core = 9 }},
		{"exposed", func(p *Pass) { p.After[0].Face.To = -1 }},
		{"stage", func(p *Pass) { p.After[0].Time = -1 }},
		{"nip", func(p *Pass) { p.Nip = -1 }},
		{"open", func(p *Pass) { p.OpenFace = quantity.Conductance(math.Inf(1)) }},
		{"sensed", func(p *Pass) { p.Upper.Sensed = AtSurface; p.After[0].Face.To = Set }},
		{"steady", func(p *Pass) {
			p.Lower.Insulated, p.Lower.NipContact, p.Lower.Idle = true, 0, 0
		}},
	} {
		p := wideHot(1)
		x.change(p)
		err := NewSolver().Run(p, new(Response))
		if err == nil || !strings.Contains(err.Error(), x.want) {
			t.Errorf("want an error about %q, got %v", x.want, err)
		}
	}
}
