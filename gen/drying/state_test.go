package drying

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"laydown/gen/quantity"
)

// layer is a setting of thickness 1 with these Biot numbers at diffusivity d.
func layer(face, back, d float64) Setting {
	return Setting{Thickness: 1, Diffusivity: quantity.Diffusivity(d), Face: quantity.Speed(face * d), Back: quantity.Speed(back * d)}
}

func mustMarch(t testing.TB, st State, s Setting, time quantity.Time) State {
	t.Helper()
	next, err := st.March(s, time)
	if err != nil {
		t.Fatal(err)
	}
	return next
}

// A fresh print marched with HistoryModes modes against Left, which is exact:
// below 1e-4 of the amount from Fo = 0.002 on; before, never drier than Left and
// less than 0.6 % wetter, as State.March says.
func TestMarchAgreesWithLeft(t *testing.T) {
	worst, early := 0.0, 0.0
	for _, p := range pairs() {
		if math.IsInf(p[0]+p[1], 1) {
			continue
		}
		m := mustModes(t, p[0], p[1], LeftModes)
		for _, fo := range []float64{0, 1e-7, 1e-5, 3e-5, 1e-4, 2e-4, 4e-4, 1e-3, 0.002, 0.003, 0.01, 0.1, 1, 30} {
			st := mustMarch(t, Fresh(1), layer(p[0], p[1], 1), quantity.Time(fo))
			off := float64(st.Amount()) - m.Left(fo)
			if fo >= 0.002 {
				worst = math.Max(worst, math.Abs(off))
				if !(math.Abs(off) <= 1e-4) {
					t.Errorf("face %g, back %g, Fo %g: off by %g", p[0], p[1], fo, off)
				}
				continue
			}
			early = math.Max(early, off)
			if !(off >= -1e-12 && off <= 6e-3) {
				t.Errorf("face %g, back %g, Fo %g: off by %g", p[0], p[1], fo, off)
			}
		}
	}
	t.Logf("largest error %.2g from Fo 0.002 on, %.2g before", worst, early)
}

// Only physics orders a history. The same Biot numbers at another rate are the
// same modes, so such parts may be swapped.
func TestOrderOfPartsThatDifferInRateOnly(t *testing.T) {
	slow, fast := layer(12, 0.5, 0.1), layer(12, 0.5, 3)
	a := mustMarch(t, mustMarch(t, Fresh(1), slow, 0.4), fast, 0.05)
	b := mustMarch(t, mustMarch(t, Fresh(1), fast, 0.05), slow, 0.4)
	if !(math.Abs(float64(a.Amount()-b.Amount())) <= 1e-15) {
		t.Errorf("slow first %.17g, fast first %.17g", float64(a.Amount()), float64(b.Amount()))
	}
	xs := []float64{0, 0.2, 0.5, 0.8, 1}
	ua, ub := a.Profile(xs), b.Profile(xs)
	for i := range xs {
		if !(math.Abs(ua[i]-ub[i]) <= 1e-14) {
			t.Errorf("content at %g: %g and %g", xs[i], ua[i], ub[i])
		}
	}
	// With other Biot numbers the order does matter: a pause between two fans
	// lets the carrier come back to the face.
	fan, pause := layer(200, 0, 1), layer(0, 0, 1)
	between := mustMarch(t, mustMarch(t, mustMarch(t, Fresh(1), fan, 0.05), pause, 0.3), fan, 0.05)
	after := mustMarch(t, mustMarch(t, mustMarch(t, Fresh(1), fan, 0.05), fan, 0.05), pause, 0.3)
	if !(between.Amount() < after.Amount()-0.01) {
		t.Errorf("pause between %.4f, pause after %.4f", float64(between.Amount()), float64(after.Amount()))
	}
}

// A part cut in two is the same part; a sealed pause and a part of no time change
// no amount, whatever the modes before and after.
func TestSealedPauseAndCuts(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		s := layer(biot(r), biot(r), 1)
		st := mustMarch(t, Fresh(1), s, quantity.Time(math.Pow(10, 5*r.Float64()-5)))
		before := st.Amount()
		for _, c := range []struct {
			name string
			s    Setting
			time quantity.Time
		}{
			{"sealed pause", layer(0, 0, 1), quantity.Time(10 * r.Float64())},
			{"part of no time", layer(biot(r), biot(r), 1), 0},
		} {
			got := mustMarch(t, st, c.s, c.time).Amount()
			if !(math.Abs(float64(got-before)) <= 1e-13) {
				t.Errorf("%v, %s: %.16g became %.16g", s, c.name, float64(before), float64(got))
			}
		}
		once := mustMarch(t, st, s, 0.7)
		twice := mustMarch(t, mustMarch(t, st, s, 0.3), s, 0.4)
		if !(math.Abs(float64(once.Amount()-twice.Amount())) <= 1e-14) {
			t.Errorf("%v: in one part %g, in two %g", s, float64(once.Amount()), float64(twice.Amount()))
		}
	}
	// In a sealed layer the content evens out.
	st := mustMarch(t, mustMarch(t, Fresh(1), layer(1e3, 0, 1), 0.05), layer(0, 0, 1), 20)
	for _, u := range st.Profile([]float64{0, 0.5, 1}) {
		if !(math.Abs(u-float64(st.Amount())) <= 1e-12) {
			t.Errorf("after a long sealed pause %g somewhere, %g in the mean", u, float64(st.Amount()))
		}
	}
}

// Twice the load is twice the amount all along, above twice the floor.
func TestMarchIsLinear(t *testing.T) {
	one, two := Fresh(0.01), Fresh(0.02)
	for _, p := range []part{{8, 1, 0.001, 0.1}, {0.2, 30, 0.004, 0.2}, {8, 1, 0, 0.05}} {
		s := layer(p.face, p.back, 1)
		s.Floor = quantity.Grammage(p.floor)
		one = mustMarch(t, one, s, quantity.Time(p.fo))
		s.Floor *= 2
		two = mustMarch(t, two, s, quantity.Time(p.fo))
		if !(math.Abs(float64(two.Amount()/one.Amount())-2) <= 1e-12) {
			t.Errorf("%g and %g", float64(one.Amount()), float64(two.Amount()))
		}
	}
}

// A print that holds less than the room's floor takes carrier up to it; one that
// lies at the floor stays.
func TestFloor(t *testing.T) {
	s := layer(5, 1, 1)
	s.Floor = 0.3
	if got := mustMarch(t, Fresh(0.3), s, 2).Amount(); !(math.Abs(float64(got-0.3)) <= 1e-15) {
		t.Errorf("a print at the floor went to %g", float64(got))
	}
	for _, load := range []quantity.Grammage{0, 0.1, 1} {
		got := mustMarch(t, Fresh(load), s, 40).Amount()
		if !(math.Abs(float64(got-0.3)) <= 1e-12) {
			t.Errorf("from %g the print came to %g, not to the floor", float64(load), float64(got))
		}
	}
	// The floor rises in the middle of a part with the same Biot numbers.
	low := s
	low.Floor = 0.1
	a := mustMarch(t, mustMarch(t, Fresh(1), low, 0.1), s, 0.1)
	b := mustMarch(t, mustMarch(t, Fresh(1), low, 0.1), low, 0.1)
	c := mustMarch(t, mustMarch(t, Fresh(1), s, 0.1), s, 0.1)
	if !(a.Amount() > b.Amount() && a.Amount() < c.Amount()) {
		t.Errorf("floor raised half way %g, low throughout %g, high throughout %g", float64(a.Amount()), float64(b.Amount()), float64(c.Amount()))
	}
}

// A State is a value: marching it leaves it as it was.
func TestMarchLeavesTheStateAlone(t *testing.T) {
	s := layer(3, 0.1, 1)
	st := mustMarch(t, Fresh(1), s, 0.1)
	before := st.Amount()
	first := mustMarch(t, st, s, 0.5).Amount()
	mustMarch(t, st, layer(1, 1, 1), 1)
	if st.Amount() != before || mustMarch(t, st, s, 0.5).Amount() != first {
		t.Error("marching changed the state it started from")
	}
}

func TestMarchRefuses(t *testing.T) {
	good := layer(1, 0, 1)
	started := mustMarch(t, Fresh(1), good, 0.1)
	thicker := good
	thicker.Thickness = 2
	bad := func(change func(*Setting)) Setting { s := good; change(&s); return s }
	for _, r := range []struct {
		name string
		st   State
		s    Setting
		time quantity.Time
	}{
		{"negative time", Fresh(1), good, -1},
		{"time not a number", Fresh(1), good, quantity.Time(math.NaN())},
		{"negative load", Fresh(-1), good, 1},
		{"no thickness", Fresh(1), bad(func(s *Setting) { s.Thickness = 0 }), 1},
		{"no diffusivity", Fresh(1), bad(func(s *Setting) { s.Diffusivity = 0 }), 1},
		{"negative transfer", Fresh(1), bad(func(s *Setting) { s.Back = -1 }), 1},
		{"negative floor", Fresh(1), bad(func(s *Setting) { s.Floor = -1 }), 1},
		{"another thickness", started, thicker, 1},
	} {
		if _, err := r.st.March(r.s, r.time); err == nil {
			t.Errorf("%s: no error", r.name)
		}
		if _, err := r.st.Until(r.s, 0.5, r.time); r.name != "another thickness" && err == nil {
			t.Errorf("%s: no error from Until", r.name)
		}
	}
}

// Until ends where the amount has just come down to the limit.
func TestUntilEndsAtTheLimit(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 200 {
		st := mustMarch(t, Fresh(1), layer(1+10*r.Float64(), biot(r), 1), quantity.Time(0.05*r.Float64()))
		s := layer(0.01+biot(r), biot(r), 0.3)
		limit := st.Amount() * quantity.Grammage(0.05+0.9*r.Float64())
		wait, err := st.Until(s, limit, 1e6)
		if err != nil {
			t.Fatal(err)
		}
		got := mustMarch(t, st, s, wait).Amount()
		sooner := mustMarch(t, st, s, wait*(1-1e-9)).Amount()
		if !(got <= limit+1e-13) || !(sooner >= limit-1e-13) || !(math.Abs(float64(got-limit)) <= 1e-9) {
			t.Errorf("%v: after %g there is %.15g, just before %.15g, limit %.15g", s, float64(wait), float64(got), float64(sooner), float64(limit))
		}
	}
}

// More load, a lower limit, a lower diffusivity or a higher floor is never sooner.
func TestUntilIsMonotone(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 150 {
		s := Setting{
			Thickness:   quantity.Length(1e-5 + 1e-4*r.Float64()),
			Diffusivity: quantity.Diffusivity(math.Pow(10, -15+5*r.Float64())),
			Face:        quantity.Speed(math.Pow(10, -10+5*r.Float64())),
			Back:        quantity.Speed(math.Pow(10, -12+5*r.Float64())),
			Floor:       quantity.Grammage(0.0005 * r.Float64()),
		}
		const load, limit = 0.010, 0.002
		until := func(load, limit quantity.Grammage, s Setting) float64 {
			wait, err := Fresh(load).Until(s, limit, 1e15)
			if err != nil {
				t.Fatalf("%+v: %v", s, err)
			}
			return float64(wait)
		}
		base := until(load, limit, s)
		slower, wetter, sealed := s, s, s
		slower.Diffusivity *= 0.7
		wetter.Floor += 0.0003
		sealed.Back = 0
		for name, wait := range map[string]float64{
			"more load":           until(load*1.2, limit, s),
			"a lower limit":       until(load, limit*0.8, s),
			"a lower diffusivity": until(load, limit, slower),
			"a higher floor":      until(load, limit, wetter),
			"a sealed back":       until(load, limit, sealed),
		} {
			if !(wait >= base*(1-1e-9)) {
				t.Errorf("%+v: %s is ready after %g s, sooner than %g s", s, name, wait, base)
			}
		}
	}
}

func TestUntilNever(t *testing.T) {
	s := layer(5, 0, 1)
	if wait, err := Fresh(1).Until(s, 1, 100); wait != 0 || err != nil {
		t.Errorf("a print within its limit: %g, %v", float64(wait), err)
	}
	if _, err := Fresh(1).Until(s, 0.2, 0.01); !errors.Is(err, ErrNever) || errors.Is(err, ErrFloor) {
		t.Errorf("too short a time: %v", err)
	}
	s.Floor = 0.2
	if _, err := Fresh(1).Until(s, 0.2, 1e9); !errors.Is(err, ErrNever) || !errors.Is(err, ErrFloor) {
		t.Errorf("floor at the limit: %v", err)
	}
	if _, err := Fresh(1).Until(layer(0, 0, 1), 0.9, 1e9); !errors.Is(err, ErrNever) {
		t.Errorf("sealed: %v", err)
	}
	if wait, err := Fresh(0.1).Until(s, 0.15, 1e9); wait != 0 || err != nil {
		t.Errorf("a print within its limit in a room above it: %g, %v", float64(wait), err)
	}
}

// No random history makes a print gain carrier above its load and the floors, or
// lose more than it holds.
func FuzzHistory(f *testing.F) {
	f.Add(1.0, 0.0, 0.1, 100.0, 2.0, 0.01, 0.2)
	f.Add(1e9, 1e9, 1e-6, 0.0, 0.0, 5.0, 0.9)
	f.Add(1e-9, 1e-4, 1e3, 1e4, 0.5, 0.002, 0.0)
	f.Fuzz(func(t *testing.T, f1, b1, t1, f2, b2, t2, floor float64) {
		for _, v := range []float64{f1, b1, t1, f2, b2, t2, floor} {
			if !(v >= 0 && v <= 1e9) {
				t.Skip()
			}
		}
		if floor > 1 {
			t.Skip()
		}
		first, second := layer(f1, b1, 1), layer(f2, b2, 0.5)
		second.Floor = quantity.Grammage(floor)
		st := mustMarch(t, Fresh(1), first, quantity.Time(t1))
		st = mustMarch(t, st, second, quantity.Time(t2))
		if a := float64(st.Amount()); !(a >= -6e-3 && a <= 1+6e-3) {
			t.Errorf("amount %g", a)
		}
		st = mustMarch(t, st, first, quantity.Time(t1))
		if a := float64(st.Amount()); !(a >= -6e-3 && a <= 1+6e-3) {
			t.Errorf("amount %g", a)
		}
	})
}
