package bond

import (
	"math"
	"math/rand/v2"
	"testing"

	"laydown/gen/quantity"
)

// Worked by hand for a cold film: 10 µm deep, 100 µm wide, 1e6 Pa·s, 0.2 MPa for 0.6 s.
// Demand 6·0.01 + 16/π·0.1 = 0.569296; capillary 2·0.03/1e-4 = 600 Pa; supply
// 200 600·0.6/1e6 = 0.12036; the rest at 6e-4 1/s takes 748.2 s.
func TestColdFilmByHand(t *testing.T) {
	r := mustWetOut(t, coldCase(10e-6, 100e-6))
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		{"demand", r.Demand, 0.569296},
		{"capillary", float64(r.Capillary), 600},
		{"supply", r.Passage.Supply, 0.12036},
		{"clears", float64(r.Clears), 748.23},
		// ζ = (−5.092958 + √(25.938222 + 24·0.12036))/12 = 0.276107/12 = 0.0230089, over 0.1
		{"after the nip", float64(r.AfterNip), 0.230089},
		{"after an hour", float64(r.AfterHour), 1},
		{"dwell", float64(r.Passage.Nip), 0.6},
	} {
		if !(math.Abs(x.got/x.want-1) <= 2e-5) {
			t.Errorf("%s: %g, by hand %g", x.name, x.got, x.want)
		}
	}
	if r.Class != ByItself || !r.Ever {
		t.Errorf("class %q", r.Class)
	}
}

func TestClasses(t *testing.T) {
	deep := coldCase(10e-6, 100e-6)
	stiff := deep
	stiff.Opposing = 700 // more than the capillary
	refused := deep
	refused.Adhesive.Wetting = -0.2
	thin := deep
	thin.Adhesive.Thickness = 8e-6
	late := deep
	late.Adhesive.Law = FreeVolume{Reference: 1e8, At: quantity.FromCelsius(23), Glass: quantity.FromCelsius(-35)}
	coldMelt := hotCase(2e-6, 100e-6)
	coldMelt.Pass = even(quantity.FromCelsius(75), 0.25e6, 1)
	for _, x := range []struct {
		name string
		c    Case
		want Class
		ever bool
	}{
		{"hot film on shallow ink", hotCase(2e-6, 100e-6), InNip, true},
		{"hot film that never melted", coldMelt, WillNot, false},
		{"hot film on deep relief has set", hotCase(49e-6, 20e-6), WillNot, false},
		{"cold film on deep ink", deep, ByItself, true},
		{"the same with a film that pulls back", stiff, WillNot, false},
		{"the same on a surface that refuses it", refused, WillNot, false},
		{"the same with too little adhesive", thin, WillNot, false},
		{"the same with an adhesive that takes days", late, WillNot, true},
	} {
		r := mustWetOut(t, x.c)
		if r.Class != x.want || r.Ever != x.ever {
			t.Errorf("%s: %q, ever %v", x.name, r.Class, r.Ever)
		}
		t.Logf("%s: %s; %.3f after the nip, %.3f after a day", x.name, r.Class, float64(r.AfterNip), float64(r.AfterDay))
	}
	if r := mustWetOut(t, thin); !(math.Abs(float64(r.AfterDay)-0.8) <= 1e-12) {
		t.Errorf("8 µm on 10 µm of relief fill %g", float64(r.AfterDay))
	}
}

// Hotter, slower, more pressure never fills less or clears later; deeper never fills
// more. Narrower is left out: it pulls harder and resists more.
func TestWetOutIsMonotone(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 11))
	for range 300 {
		c := coldCase(quantity.Length(1e-6*math.Pow(10, 2*r.Float64())), quantity.Length(1e-5*math.Pow(10, 2*r.Float64())))
		c.Adhesive.Thickness = 0
		c.Adhesive.Law = FreeVolume{Reference: quantity.Viscosity(math.Pow(10, 5+2*r.Float64())), At: quantity.FromCelsius(23), Glass: quantity.FromCelsius(-50 + 30*r.Float64())}
		if r.Float64() < 0.5 {
			c.Relief.Form = Pit
		}
		base := mustWetOut(t, c)
		hotter, slower, harder, deeper, warmer := c, c, c, c, c
		hotter.Pass = even(c.Pass[0].Temperature+8, 0.2e6, 0.6)
		slower.Pass = even(c.Pass[0].Temperature, 0.2e6, 0.9)
		harder.Pass = even(c.Pass[0].Temperature, 0.3e6, 0.6)
		warmer.Rest += 6
		deeper.Relief.Depth *= 1.3
		for _, x := range []struct {
			name string
			c    Case
			less bool
		}{{"hotter", hotter, false}, {"slower", slower, false}, {"more pressure", harder, false}, {"a warmer room", warmer, false}, {"deeper", deeper, true}} {
			got := mustWetOut(t, x.c)
			a, b := got, base
			if x.less {
				a, b = base, got
			}
			if a.AfterNip < b.AfterNip || a.AfterHour < b.AfterHour || a.AfterDay < b.AfterDay || a.Clears > b.Clears || a.Class > b.Class {
				t.Errorf("%s: %+v, base %+v", x.name, got, base)
			}
		}
	}
}

// Supply is linear in pressure and in dwell.
func TestSupplyIsLinear(t *testing.T) {
	c := coldCase(10e-6, 100e-6)
	c.Adhesive.Surface = 0
	one := mustWetOut(t, c).Passage.Supply
	c.Pass = even(c.Rest, 0.4e6, 1.8)
	if six := mustWetOut(t, c).Passage.Supply; !(math.Abs(six/one-6) <= 1e-12) {
		t.Errorf("twice the pressure for three times as long: %g times", six/one)
	}
}

// Second method: the front is marched through nip and rest as an equation of its own.
func TestWetOutAgreesWithMarch(t *testing.T) {
	c := coldCase(10e-6, 100e-6)
	r := mustWetOut(t, c)
	z, time := 0.0, 0.0
	v := viscosityAt(t, c.Adhesive.Law, c.Rest)
	pc := float64(r.Capillary)
	march := func(p, until float64) {
		const steps = 20000
		h := (until - time) / steps
		f := func(z float64) float64 { return p / (v * c.Relief.resistance(quantity.Length(z))) }
		for range steps {
			k1 := f(z)
			k2 := f(z + h*k1/2)
			z += h * (k1 + f(z+h*k2)) / 2
		}
		time = until
	}
	march(0.2e6+pc, 0.6)
	if got := z / 10e-6; !(math.Abs(got-float64(r.AfterNip)) <= 1e-5) {
		t.Errorf("after the nip %g, marched %g", float64(r.AfterNip), got)
	}
	march(pc, 0.6+float64(r.Clears))
	if got := z / 10e-6; !(math.Abs(got-1) <= 1e-4) {
		t.Errorf("at the time it clears the march stands at %g", got)
	}
}

func TestBondUpGrows(t *testing.T) {
	c := coldCase(10e-6, 100e-6)
	times := []quantity.Time{0, 60, 300, 600, 748, 749, 1e5}
	shares, err := c.BondUp(times)
	if err != nil {
		t.Fatal(err)
	}
	r := mustWetOut(t, c)
	if shares[0] != r.AfterNip || shares[5] != 1 || shares[4] == 1 {
		t.Errorf("%v, after the nip %g", shares, float64(r.AfterNip))
	}
	for i := 1; i < len(shares); i++ {
		if shares[i] < shares[i-1] {
			t.Errorf("less after %g s", float64(times[i]))
		}
	}
	if _, err := c.BondUp([]quantity.Time{-1}); err == nil {
		t.Error("before the pass: no error")
	}
}

// The bands from memory leave a cold film on a UV print undecided between minutes and
// days; the spread says so.
func TestSpread(t *testing.T) {
	best := coldCase(15e-6, 100e-6)
	easy, hard := coldCase(5e-6, 100e-6), coldCase(23e-6, 100e-6)
	easy.Adhesive.Law = FreeVolume{Reference: 1e5, At: 296.15, Glass: 238.15}
	hard.Adhesive.Law = FreeVolume{Reference: 1e8, At: 296.15, Glass: 238.15}
	s, err := SpreadOf(best, easy, hard)
	if err != nil {
		t.Fatal(err)
	}
	if s.Certain || s.Easy.Class != InNip || s.Best.Class != ByItself || s.Hard.Class != WillNot {
		t.Errorf("easy %q, best %q, hard %q, certain %v", s.Easy.Class, s.Best.Class, s.Hard.Class, s.Certain)
	}
	if _, err := SpreadOf(best, hard, easy); err == nil {
		t.Error("ends the wrong way round: no error")
	}
	if s, err := SpreadOf(best, best, best); err != nil || !s.Certain {
		t.Errorf("no spread at all: certain %v (%v)", s.Certain, err)
	}
}

func TestWetOutRefuses(t *testing.T) {
	good := coldCase(10e-6, 100e-6)
	for name, change := range map[string]func(*Case){
		"no depth":               func(c *Case) { c.Relief.Depth = 0 },
		"no width":               func(c *Case) { c.Relief.Width = quantity.Length(math.NaN()) },
		"valleys beyond all":     func(c *Case) { c.Relief.Valleys = 1.1 },
		"another form":           func(c *Case) { c.Relief.Form = 7 },
		"no law":                 func(c *Case) { c.Adhesive.Law = nil },
		"cosine of 2":            func(c *Case) { c.Adhesive.Wetting = 2 },
		"negative tension":       func(c *Case) { c.Adhesive.Surface = -1 },
		"no rest temperature":    func(c *Case) { c.Rest = 0 },
		"negative opposing":      func(c *Case) { c.Opposing = -1 },
		"no pass":                func(c *Case) { c.Pass = nil },
		"a law that is no law":   func(c *Case) { c.Adhesive.Law = FreeVolume{} },
		"thickness not a number": func(c *Case) { c.Adhesive.Thickness = quantity.Length(math.NaN()) },
	} {
		c := good
		change(&c)
		if _, err := c.WetOut(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if got := Class(9).String(); got != "class 9" {
		t.Errorf("class 9 is %q", got)
	}
}
