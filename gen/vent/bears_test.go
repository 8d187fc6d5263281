package vent

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// glycols is an invented ink's vapour with limits of no real sheet.
var glycols = []Component{
	{Name: "slow ether", Share: 0.8, MolarMass: 0.162, Limit: 5e-5, LowerExplosive: 0.012},
	{Name: "ketone", Share: 0.2, MolarMass: 0.0982, Limit: 4e-5, LowerExplosive: 0.011},
}

func bounds() Bounds {
	return Bounds{Exposure: 0.5, Explosive: 0.1, Temperature: 296.15, Pressure: 101325}
}

// bears follows a load and holds it against bounds.
func bears(r Room, l Load, mixture []Component, b Bounds) (Bearing, error) {
	t, err := r.Leaves(l, 0)
	if err != nil {
		return Bearing{}, err
	}
	return t.Bears(mixture, b)
}

// The load scaled as Bears says just meets the bound.
func TestBearsMeetsItsBound(t *testing.T) {
	b, err := bears(shop(), day(), glycols, bounds())
	if err != nil {
		t.Fatal(err)
	}
	again, err := bears(shop(), day().scaled(b.Scale), glycols, bounds())
	if err != nil || math.Abs(float64(again.Exposure)-0.5) > 1e-9 || math.Abs(again.Scale-1) > 1e-9 || again.By != "exposure limit" {
		t.Errorf("scaled by %g: %+v (%v)", b.Scale, again, err)
	}
	// With hardly any explosive limit to spend, that bound comes first.
	tight := bounds()
	tight.Explosive = 1e-6
	c, err := bears(shop(), day(), glycols, tight)
	if err != nil || c.By != "lower explosive limit" || !(c.Scale < b.Scale) || math.Abs(c.Scale*float64(c.Explosive)-1e-6) > 1e-15 {
		t.Errorf("a millionth of the lower explosive limit: %+v (%v)", c, err)
	}
	t.Logf("%.3g m², average %.3g mg/m³ from %.3g h, peak %.3g mg/m³", float64(b.Bears), float64(b.Average)*1e6, float64(b.AverageFrom)/3600, float64(b.Peak)*1e6)
}

// What the peak comes to of the lower explosive limit, three ways that need none of this
// package. By hand from the peak: a litre of ideal gas at 23 °C weighs p·M/(R·T), and
// Le Chatelier adds. From below: a peak is no lower than an average, and each vapour has
// its exposure limit so many times below its explosive limit. From above: the air never
// holds more than was ever given off, nor more than the highest emission would come to if
// it went on for ever, K·E/Q.
func TestExplosiveShareLiesWhereItMust(t *testing.T) {
	b, err := bears(shop(), day(), glycols, bounds())
	if err != nil {
		t.Fatal(err)
	}
	const litre = 101325 / (8.314462618 * 296.15) // mol/m³
	ether, ketone := 0.012*0.162*litre, 0.011*0.0982*litre
	share := 0.8/ether + 0.2/ketone // of the limit, for 1 kg/m³ of the mixture
	if want := float64(b.Peak) * share; math.Abs(float64(b.Explosive)/want-1) > 1e-9 {
		t.Errorf("%g of the lower explosive limit, by hand %g", float64(b.Explosive), want)
	}
	if least := float64(b.Exposure) * min(5e-5/ether, 4e-5/ketone); float64(b.Explosive) < least {
		t.Errorf("%g of the lower explosive limit, the average alone is %g", float64(b.Explosive), least)
	}
	const given = 3.4518e-3 // kg/m² of early, by hand: trapezia
	emitted := (12 + 7 + 3 + 40 + 2000.0/3600) * given / 150
	highest := 22*4e-7 + (8+2)/3600.0*given // all batches at their peak, both runs in full
	steady := 3 * highest / (150 * 2 / 3600.0)
	if most := min(emitted, steady) * share; float64(b.Explosive) > most {
		t.Errorf("%g of the lower explosive limit, more than the %g that could ever be", float64(b.Explosive), most)
	}
}

// What already stands in the air is taken off the bounds, and nothing may dry where it
// fills them.
func TestBearsTakesOffWhatStands(t *testing.T) {
	clean, err := bears(shop(), day(), glycols, bounds())
	if err != nil {
		t.Fatal(err)
	}
	half := bounds()
	half.Standing = 0.25 / (0.8/5e-5 + 0.2/4e-5) // half of the half that is allowed
	b, err := bears(shop(), day(), glycols, half)
	if err != nil || math.Abs(b.Scale/clean.Scale-0.5) > 1e-9 {
		t.Errorf("half the bound already in the air: bears %g, clean %g (%v)", b.Scale, clean.Scale, err)
	}
	half.Standing *= 3
	if b, err = bears(shop(), day(), glycols, half); err != nil || b.Scale != 0 || b.Bears != 0 {
		t.Errorf("more than the bound already in the air: bears %g m² (%v)", float64(b.Bears), err)
	}
}

// More air bears more, and a long run at the steady state bears L·Q/(K·total).
func TestBearsMoreWithMoreAir(t *testing.T) {
	before := 0.0
	for n := 0.5; n < 20; n *= 2 {
		r := shop()
		r.AirChanges = quantity.Rate(n) * quantity.PerHour
		b, err := bears(r, day(), glycols, bounds())
		if err != nil || !(float64(b.Bears) > before) {
			t.Errorf("%g air changes: %g m² after %g (%v)", n, float64(b.Bears), before, err)
		}
		before = float64(b.Bears)
	}
	rate := AreaRate(1.0 / 3600)
	b, err := bears(shop(), Load{Emission: early, Runs: []Run{{0, 400 * 3600, rate}}}, glycols, bounds())
	if err != nil {
		t.Fatal(err)
	}
	limit := 1 / (0.8/5e-5 + 0.2/4e-5) * 0.5
	want := limit * float64(shop().Fresh()) / 3 / float64(early.Total())
	if got := b.Scale * float64(rate); math.Abs(got/want-1) > 1e-6 {
		t.Errorf("bears %g m²/h of a long run, by the steady state %g", got*3600, want*3600)
	}
}

func TestBearsRefuses(t *testing.T) {
	for name, change := range map[string]func(r *Room, l *Load, m []Component, b *Bounds){
		"no exposure":  func(r *Room, l *Load, m []Component, b *Bounds) { b.Exposure = 0 },
		"over":         func(r *Room, l *Load, m []Component, b *Bounds) { b.Exposure = 1.5 },
		"standing <0":  func(r *Room, l *Load, m []Component, b *Bounds) { b.Standing = -1 },
		"no area":      func(r *Room, l *Load, m []Component, b *Bounds) { *l = l.scaled(0) },
		"no limit":     func(r *Room, l *Load, m []Component, b *Bounds) { m[0].Limit = 0 },
		"shares":       func(r *Room, l *Load, m []Component, b *Bounds) { m[0].Share = 0.9 },
		"no pressure":  func(r *Room, l *Load, m []Component, b *Bounds) { b.Pressure = 0 },
		"no room":      func(r *Room, l *Load, m []Component, b *Bounds) { r.Volume = 0 },
		"explosive >1": func(r *Room, l *Load, m []Component, b *Bounds) { b.Explosive = 2 },
	} {
		r, l, m, b := shop(), day(), append([]Component{}, glycols...), bounds()
		change(&r, &l, m, &b)
		if _, err := bears(r, l, m, b); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := bears(shop(), day(), nil, bounds()); err == nil {
		t.Error("no mixture: no error")
	}
}

func TestPPMBothWays(t *testing.T) {
	for _, ppm := range []float64{0, 0.1, 50, 1e4} {
		c, err := FromPPM(ppm, 0.0982, 293.15, 95000)
		back, err2 := PPM(c, 0.0982, 293.15, 95000)
		if err != nil || err2 != nil || math.Abs(back-ppm) > 1e-12*ppm {
			t.Errorf("%g ppm come back as %g (%v, %v)", ppm, back, err, err2)
		}
	}
	if _, err := FromPPM(1, 0, 293, 101325); err == nil {
		t.Error("no molar mass: no error")
	}
	if _, err := PPM(-1, 0.1, 293, 101325); err == nil {
		t.Error("a concentration below nothing: no error")
	}
}
