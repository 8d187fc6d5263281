package drying

import (
	"math"
	"math/rand/v2"
	"testing"

	"laydown/gen/quantity"
)

var days = []quantity.Time{0, 86400, 3 * 86400, 7 * 86400, 30 * 86400}

func mustCover(t testing.TB, s Setting, face, back []Ply) Setting {
	t.Helper()
	covered, err := s.Covered(face, back)
	if err != nil {
		t.Fatal(err)
	}
	return covered
}

func mustClear(t testing.TB, st State, s Setting, limit quantity.Grammage) Clearance {
	t.Helper()
	c, err := st.Clears(s, limit, days, 1e10)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// early draws a print of load 8 g/m² that dried for some time in an open setting.
func early(t testing.TB, r *rand.Rand) (State, Setting) {
	t.Helper()
	open := Setting{
		Thickness:   quantity.Length(1e-5 + 1e-4*r.Float64()),
		Diffusivity: quantity.Diffusivity(math.Pow(10, -15+4*r.Float64())),
		Face:        quantity.Speed(math.Pow(10, -10+5*r.Float64())),
		Back:        quantity.Speed(math.Pow(10, -12+5*r.Float64())),
	}
	return mustMarch(t, Fresh(0.008), open, quantity.Time(48*3600*r.Float64())), open
}

// Between a film that lets nothing through and a closed back nothing leaves, for
// as long as one cares to look.
func TestNothingLeavesBetweenClosedFaces(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	for range 100 {
		st, open := early(t, r)
		shut := mustCover(t, open, []Ply{{25e-6, 0, 1}}, []Ply{{3e-3, 1e-12, 0}})
		if shut.Face != 0 || shut.Back != 0 {
			t.Fatalf("closed faces give off %g and %g m/s", float64(shut.Face), float64(shut.Back))
		}
		c := mustClear(t, st, shut, st.Amount()/2)
		for i, left := range c.Left {
			if !(math.Abs(float64(left-c.Start)) <= 1e-12*0.008) {
				t.Errorf("%+v: %.15g of %.15g left after %g days", open, float64(left), float64(c.Start), float64(days[i])/86400)
			}
		}
		if !math.IsInf(float64(c.Clear), 1) {
			t.Errorf("%+v: clear after %g s", open, float64(c.Clear))
		}
	}
}

// A film that hinders nothing leaves the print as if it were not there; none does
// so to the last bit.
func TestOpenFilmIsNoFilm(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	for range 100 {
		st, open := early(t, r)
		if bare := mustCover(t, open, nil, nil); bare != open {
			t.Errorf("no plies made %+v of %+v", bare, open)
		}
		covered := mustCover(t, open, []Ply{{1e-6, 1, 1}}, []Ply{{1e-6, 1, 1}})
		for _, at := range days {
			got, want := mustMarch(t, st, covered, at).Amount(), mustMarch(t, st, open, at).Amount()
			if !(math.Abs(float64(got-want)) <= 1e-6*0.008) {
				t.Errorf("%+v after %g days: %.12g under an open film, %.12g bare", open, float64(at)/86400, float64(got), float64(want))
			}
		}
	}
}

// Plies stand in series with the air and with each other, in any order.
func TestPliesAreInSeries(t *testing.T) {
	base, adhesive := Ply{75e-6, 5e-14, 1}, Ply{25e-6, 5e-13, 2}
	s := Setting{Thickness: 80e-6, Diffusivity: 5e-14, Face: 2e-8, Back: 1e-9}
	covered := mustCover(t, s, []Ply{base, adhesive}, nil)
	want := 1 / (1/2e-8 + 75e-6/5e-14 + 25e-6/(2*5e-13))
	if !(math.Abs(float64(covered.Face)/want-1) <= 1e-14) || covered.Back != s.Back {
		t.Errorf("face %g m/s, want %g; back %g", float64(covered.Face), want, float64(covered.Back))
	}
	once := mustCover(t, mustCover(t, s, []Ply{adhesive}, nil), []Ply{base}, nil)
	if !(math.Abs(float64(once.Face/covered.Face)-1) <= 1e-14) {
		t.Errorf("one after the other %g m/s, together %g", float64(once.Face), float64(covered.Face))
	}
	if got := float64(base.Lag()); !(math.Abs(got-18750) <= 1e-6) {
		t.Errorf("lag %g s, want 75 µm squared over 6D, 18750 s", got)
	}
	shut := mustCover(t, Setting{Thickness: 1, Diffusivity: 1}, []Ply{base}, nil)
	if shut.Face != 0 {
		t.Errorf("a film opened a closed face: %g m/s", float64(shut.Face))
	}
}

// Longer drying before, a thinner or more open film, a back that is open: none of
// them leaves more carrier, or leaves it longer.
func TestMoreOpenNeverHoldsMore(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	film := Ply{75e-6, 5e-14, 1}
	for range 100 {
		st, open := early(t, r)
		limit := st.Amount() * quantity.Grammage(0.3+0.6*r.Float64())
		film.Diffusivity = open.Diffusivity * quantity.Diffusivity(math.Pow(10, -3*r.Float64()))
		both := mustClear(t, st, mustCover(t, open, []Ply{film}, []Ply{film}), limit)
		thin, loose := film, film
		thin.Thickness /= 2
		loose.Diffusivity *= 2
		for name, c := range map[string]Clearance{
			"a thinner film":    mustClear(t, st, mustCover(t, open, []Ply{thin}, []Ply{thin}), limit),
			"a more open film":  mustClear(t, st, mustCover(t, open, []Ply{loose}, []Ply{loose}), limit),
			"an open back":      mustClear(t, st, mustCover(t, open, []Ply{film}, nil), limit),
			"an hour more open": mustClear(t, mustMarch(t, st, open, 3600), mustCover(t, open, []Ply{film}, []Ply{film}), limit),
		} {
			for i := range days {
				// Each print was projected once; the rest of that differs.
				if !(c.Left[i] <= both.Left[i]+1e-6*0.008) {
					t.Errorf("%+v: with %s %.9g left after %g days, without %.9g", open, name, float64(c.Left[i]), float64(days[i])/86400, float64(both.Left[i]))
				}
			}
			if !(float64(c.Clear) <= float64(both.Clear)*(1+1e-3)+1) {
				t.Errorf("%+v: with %s clear after %g s, without after %g s", open, name, float64(c.Clear), float64(both.Clear))
			}
		}
	}
}

// Clears gives what March gives, ends at the limit, and begins with what was there.
func TestClearsAgreesWithMarch(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	for range 50 {
		st, open := early(t, r)
		covered := mustCover(t, open, []Ply{{50e-6, open.Diffusivity / 3, 1}}, nil)
		limit := st.Amount() * 0.7
		c := mustClear(t, st, covered, limit)
		if c.Start != st.Amount() || !(math.Abs(float64(c.Left[0]-c.Start)) <= 1e-15) {
			t.Errorf("start %.17g and %.17g, the print held %.17g", float64(c.Start), float64(c.Left[0]), float64(st.Amount()))
		}
		for i, at := range days {
			if want := mustMarch(t, st, covered, at).Amount(); !(math.Abs(float64(c.Left[i]-want)) <= 1e-15) {
				t.Errorf("after %g days %.17g, marched %.17g", float64(at)/86400, float64(c.Left[i]), float64(want))
			}
		}
		if math.IsInf(float64(c.Clear), 1) {
			continue
		}
		if got := mustMarch(t, st, covered, c.Clear).Amount(); !(math.Abs(float64(got/limit)-1) <= 1e-9) {
			t.Errorf("clear after %g s with %.12g, the limit is %.12g", float64(c.Clear), float64(got), float64(limit))
		}
	}
}

// A print that the room's vapour holds above its limit never clears.
func TestFloorNeverClears(t *testing.T) {
	s := layer(5, 0, 1e-9)
	s.Floor = 0.3
	c := mustClear(t, mustMarch(t, Fresh(1), s, 1e7), mustCover(t, s, []Ply{{1, 1e-9, 1}}, nil), 0.25)
	if !math.IsInf(float64(c.Clear), 1) || !(c.Left[4] > 0.3-1e-12) {
		t.Errorf("clear after %g s, %g left", float64(c.Clear), float64(c.Left[4]))
	}
}

func TestLaminateRefuses(t *testing.T) {
	good := layer(1, 1, 1)
	for name, p := range map[string]Ply{
		"no thickness":          {0, 1, 1},
		"negative diffusivity":  {1, -1, 1},
		"negative partition":    {1, 1, -1},
		"diffusivity no number": {1, quantity.Diffusivity(math.NaN()), 1},
	} {
		if _, err := good.Covered([]Ply{p}, nil); err == nil {
			t.Errorf("%s on the face: no error", name)
		}
		if _, err := good.Covered(nil, []Ply{p}); err == nil {
			t.Errorf("%s on the back: no error", name)
		}
	}
	if _, err := layer(-1, 0, 1).Covered([]Ply{{1, 1, 1}}, nil); err == nil {
		t.Error("a face that takes in: no error")
	}
	if _, err := Fresh(1).Clears(good, 0.5, []quantity.Time{-1}, 1); err == nil {
		t.Error("a time before lamination: no error")
	}
	if _, err := Fresh(-1).Clears(good, 0.5, nil, 1); err == nil {
		t.Error("a negative load: no error")
	}
}

// The second method: a print dried in the open, then under a film that has cells
// of its own. Where the film holds next to nothing both agree. Where it holds as
// much as the layer, the film takes carrier up before it lets any out: the print
// is drier than computed at first, never wetter by more than a thirtieth of what it
// began with, and print and film together always hold at least what is computed.
func TestLaminatedAgreesWithFiniteVolumes(t *testing.T) {
	worst, drier, wetter := 0.0, 0.0, 0.0
	for _, c := range []struct {
		name      string
		film      Ply
		dry, back float64
		thin      bool // the film holds next to nothing
	}{
		{"thin film, back closed", Ply{0.05, 0.002, 0.01}, 0.1, 0, true},
		{"thin film, back open", Ply{0.05, 0.002, 0.01}, 0.1, 5, true},
		{"tight film, back closed", Ply{0.3, 1e-3, 1e-3}, 0.3, 0, true},
		{"film like the layer, back closed", Ply{1, 1, 1}, 0.1, 0, false},
		{"film like the layer, half dry", Ply{1, 1, 1}, 0.3, 0, false},
		{"film like the layer, back open", Ply{1, 1, 1}, 0.1, 5, false},
		{"stiffer film, back closed", Ply{0.3, 0.1, 1}, 0.1, 0, false},
	} {
		s := newSlab(1)
		s.march(30, c.back, 0, c.dry)
		st := mustMarch(t, Fresh(1), layer(30, c.back, 1), quantity.Time(c.dry))
		covered := mustCover(t, layer(30, c.back, 1), []Ply{c.film}, nil)
		s.add(float64(c.film.Thickness), float64(c.film.Diffusivity), c.film.Partition, 0)
		start, at := s.all(), 0.0
		for _, fo := range []float64{0.01, 0.03, 0.1, 0.3, 1, 3, 10, 30} {
			s.march(30, c.back, 0, fo-at)
			at = fo
			got := float64(mustMarch(t, st, covered, quantity.Time(fo)).Amount())
			off := (got - s.amount()) / start
			if c.thin {
				worst = math.Max(worst, math.Abs(off))
				if !(math.Abs(off) <= agreement) {
					t.Errorf("%s, Fo %g: modes %.6f, finite volumes %.6f", c.name, fo, got, s.amount())
				}
				continue
			}
			drier, wetter = math.Max(drier, off), math.Max(wetter, -off)
			if !(off >= -1.0/30) {
				t.Errorf("%s, Fo %g: modes %.6f, the print itself holds %.6f", c.name, fo, got, s.amount())
			}
			if !(got <= s.all()+agreement*start) {
				t.Errorf("%s, Fo %g: modes %.6f, print and film together %.6f", c.name, fo, got, s.all())
			}
		}
	}
	t.Logf("thin films: largest difference %.2g; films like the layer: the print is at most %.2g drier and %.2g wetter, in shares of the start", worst, drier, wetter)
}
