package vent

import (
	"math"
	"math/rand/v2"
	"testing"

	"laydown/gen/quantity"
)

// early is a print that gives off 3.45 g/m² with an early peak: invented.
var early = Emission{{0, 0}, {60, 4e-7}, {600, 3e-7}, {3600, 1.2e-7}, {4 * 3600, 4e-8}, {24 * 3600, 4e-9}, {48 * 3600, 0}}

func shop() Room { return Room{Volume: 150, AirChanges: 2 * quantity.PerHour, Mixing: 3} }

func day() Load {
	return Load{Emission: early, Batches: []Batch{{0, 12}, {5000, 7}, {40000, 3}}, Runs: []Run{{2000, 20000, 8.0 / 3600}, {30000, 31000, 2.0 / 3600}}}
}

func mustOver(t testing.TB, r Room, l Load, start quantity.Density, end quantity.Time) *History {
	t.Helper()
	h, err := r.Over(l, start, end)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// What was given off is what the air carried out and what is left in the room, and it is
// what the prints had.
func TestMassBalances(t *testing.T) {
	for name, r := range map[string]Room{
		"shop": shop(), "closed": {Volume: 60, Mixing: 1}, "nearly closed": {Volume: 60, AirChanges: 1e-12, Mixing: 1},
		"gale": {Volume: 60, AirChanges: 1, Mixing: 1},
	} {
		h := mustOver(t, r, day(), 2e-5, 3*24*3600)
		start := 2e-5 * float64(r.Volume)
		out := float64(h.Carried + h.Left)
		if miss := math.Abs(float64(h.Emitted)+start-out) / out; !(miss < 1e-9) {
			t.Errorf("%s: %g kg in, %g kg out: %.3g missed", name, float64(h.Emitted)+start, out, miss)
		}
		area := 12 + 7 + 3 + 18000*8.0/3600 + 1000*2.0/3600
		if miss := math.Abs(float64(h.Emitted)/(area*float64(early.Total())) - 1); !(miss < 1e-9) {
			t.Errorf("%s: given off %g kg by %g m² of %g kg/m²", name, float64(h.Emitted), area, float64(early.Total()))
		}
	}
}

// A second method: fourth-order Runge–Kutta steps of the balance, with the runs as many
// small batches.
func TestAgainstRungeKutta(t *testing.T) {
	room, l := shop(), day()
	h := mustOver(t, room, l, 1e-5, 60000)
	decay := float64(room.AirChanges) / room.Mixing
	one := func(age float64) float64 {
		for i := 1; i < len(early); i++ {
			a, b := early[i-1], early[i]
			if age >= float64(a.Time) && age < float64(b.Time) {
				return float64(a.Flux) + (age-float64(a.Time))/float64(b.Time-a.Time)*float64(b.Flux-a.Flux)
			}
		}
		return 0
	}
	emission := func(t float64) float64 {
		sum := 0.0
		for _, b := range l.Batches {
			sum += float64(b.Area) * one(t-float64(b.At))
		}
		for _, r := range l.Runs {
			const parts = 300
			step := float64(r.To-r.From) / parts
			for i := range parts {
				if at := float64(r.From) + (float64(i)+0.5)*step; at <= t {
					sum += float64(r.Rate) * step * one(t-at)
				}
			}
		}
		return sum
	}
	slope := func(t, c float64) float64 { return emission(t)/float64(room.Volume) - decay*c }
	c, dt, worst := 1e-5, 20.0, 0.0
	peak, sum := c, 0.0
	for now := 0.0; now < 60000; now += dt {
		k1 := slope(now, c)
		k2 := slope(now+dt/2, c+dt/2*k1)
		k3 := slope(now+dt/2, c+dt/2*k2)
		k4 := slope(now+dt, c+dt*k3)
		before := c
		c += dt / 6 * (k1 + 2*k2 + 2*k3 + k4)
		if now < 28800 {
			sum += (before + c) / 2 * dt
		}
		peak = max(peak, c)
		got, err := h.At(min(quantity.Time(now+dt), 60000))
		if err != nil {
			t.Fatal(err)
		}
		worst = max(worst, math.Abs(float64(got)-c))
	}
	if worst > 2e-4*peak {
		t.Errorf("%g kg/m³ off Runge–Kutta, of %g", worst, peak)
	}
	got, at := h.Peak()
	if math.Abs(float64(got)-peak) > 2e-4*peak {
		t.Errorf("peak %g kg/m³ after %g s, Runge–Kutta %g", float64(got), float64(at), peak)
	}
	average, err := h.Average(0, 28800)
	if err != nil || math.Abs(float64(average)-sum/28800) > 2e-4*peak {
		t.Errorf("average of a shift %g kg/m³ (%v), Runge–Kutta %g", float64(average), err, sum/28800)
	}
	t.Logf("%.2g of the peak off Runge–Kutta", worst/peak)
}

// Peak and worst average by looking everywhere.
func TestPeakAndWorstByLooking(t *testing.T) {
	h := mustOver(t, shop(), day(), 0, 90000)
	peak, _ := h.Peak()
	worst, from, err := h.WorstAverage(28800)
	if err != nil {
		t.Fatal(err)
	}
	seen, average := 0.0, 0.0
	for at := 0.0; at <= 90000; at += 7 {
		seen = max(seen, h.concentration(at))
		if at+28800 <= 90000 {
			average = max(average, (h.integral(at+28800)-h.integral(at))/28800)
		}
	}
	if float64(peak) < seen || float64(peak) > seen*1.0001 {
		t.Errorf("peak %g, seen %g", float64(peak), seen)
	}
	if float64(worst) < average || float64(worst) > average*1.0001 || !(from > 0) {
		t.Errorf("worst average %g from %g s, seen %g", float64(worst), float64(from), average)
	}
	if !(worst < peak) {
		t.Errorf("an average of %g above the peak of %g", float64(worst), float64(peak))
	}
}

// Twice the prints, twice the vapour; never below nothing.
func TestLinearInArea(t *testing.T) {
	a := mustOver(t, shop(), day(), 0, 50000)
	b := mustOver(t, shop(), day().scaled(2.5), 0, 50000)
	for at := quantity.Time(0); at <= 50000; at += 500 {
		one, _ := a.At(at)
		more, _ := b.At(at)
		if one < 0 || math.Abs(float64(more-2.5*one)) > 1e-12*float64(more)+1e-20 {
			t.Fatalf("after %g s: %g kg/m³ and %g of 2.5 times the prints", float64(at), float64(one), float64(more))
		}
	}
}

// More fresh air, better mixing and a larger room are never worse for the average or the
// peak at any time.
func TestMoreAirNeverWorse(t *testing.T) {
	rooms := []Room{shop(), shop(), shop(), shop()}
	rooms[1].AirChanges *= 2
	rooms[2].Mixing = 1
	rooms[3].Volume *= 2 // with the same air changes: twice the air too
	base := mustOver(t, rooms[0], day(), 0, 90000)
	for i, r := range rooms[1:] {
		h := mustOver(t, r, day(), 0, 90000)
		for at := quantity.Time(100); at <= 90000; at += 100 {
			now, _ := h.At(at)
			was, _ := base.At(at)
			if now > was {
				t.Fatalf("room %d after %g s: %g kg/m³, with less air %g", i+1, float64(at), float64(now), float64(was))
			}
		}
	}
	before := math.Inf(1)
	for n := 0.1; n < 40; n *= 1.5 {
		r := shop()
		r.AirChanges = quantity.Rate(n) * quantity.PerHour
		h := mustOver(t, r, day(), 0, 90000)
		worst, _, err := h.WorstAverage(28800)
		if err != nil || float64(worst) > before {
			t.Errorf("%g air changes: %g kg/m³ after %g (%v)", n, float64(worst), before, err)
		}
		before = float64(worst)
	}
}

// A long even run comes to K·E/Q; without emission the room purges as Purge says; a run
// is the limit of many batches.
func TestLimits(t *testing.T) {
	room := shop()
	rate := AreaRate(10.0 / 3600)
	h := mustOver(t, room, Load{Emission: early, Runs: []Run{{0, 500000, rate}}}, 0, 500000)
	got, _ := h.At(500000)
	want, err := room.Steady(float64(rate) * float64(early.Total()))
	if err != nil || math.Abs(float64(got/want)-1) > 1e-9 {
		t.Errorf("long run: %g kg/m³, steady %g (%v)", float64(got), float64(want), err)
	}
	air, err := FreshAir(float64(rate)*float64(early.Total()), room.Mixing, want)
	if err != nil || math.Abs(float64(air/room.Fresh())-1) > 1e-12 {
		t.Errorf("fresh air for that %g m³/s (%v), the room has %g", float64(air), err, float64(room.Fresh()))
	}
	purge := mustOver(t, room, Load{Emission: early, Batches: []Batch{{0, 0}}}, 1e-3, 40000)
	at, err := room.Purge(0.2)
	left, _ := purge.At(at)
	if err != nil || math.Abs(float64(left)-2e-4) > 1e-15 {
		t.Errorf("a fifth left after %g s (%v): %g", float64(at), err, float64(left))
	}
	many := Load{Emission: early}
	for i := range 4000 {
		many.Batches = append(many.Batches, Batch{quantity.Time(i)*5 + 2.5, 5 * quantity.Area(rate)})
	}
	run := mustOver(t, room, Load{Emission: early, Runs: []Run{{0, 20000, rate}}}, 0, 20000)
	batches := mustOver(t, room, many, 0, 20000)
	a, _ := run.At(20000)
	b, _ := batches.At(20000)
	if math.Abs(float64(a/b)-1) > 1e-5 {
		t.Errorf("a run %g kg/m³, as batches %g", float64(a), float64(b))
	}
}

// Both forms of the kernel agree where they meet, and with Simpson's rule.
func TestKernel(t *testing.T) {
	for _, x := range []float64{0, 1e-9, 0.3, 1.999999, 2, 2.000001, 30} {
		const s = 3.0
		decay := x / s
		k := kernel(decay, s)
		for n, got := range k {
			sum := 0.0
			const parts = 3000
			f := func(u float64) float64 { return math.Pow(u, float64(n)) * math.Exp(-decay*(s-u)) }
			for i := range parts {
				u, h := s*float64(i)/parts, s/parts
				sum += h / 6 * (f(u) + 4*f(u+h/2) + f(u+h))
			}
			if math.Abs(got-sum) > 1e-11*math.Abs(sum) {
				t.Errorf("λs %g: k_%d = %.15g, by Simpson %.15g", x, n, got, sum)
			}
		}
	}
}

func TestRefusals(t *testing.T) {
	nan := quantity.Time(math.NaN())
	for name, f := range map[string]func() error{
		"no room":         func() error { _, err := (Room{Mixing: 1}).Over(day(), 0, 1); return err },
		"mixing below 1":  func() error { _, err := (Room{Volume: 1, Mixing: 0.5}).Over(day(), 0, 1); return err },
		"mixing above 10": func() error { _, err := (Room{Volume: 1, Mixing: 11}).Over(day(), 0, 1); return err },
		"no prints":       func() error { _, err := shop().Over(Load{Emission: early}, 0, 1); return err },
		"no emission":     func() error { _, err := shop().Over(Load{Batches: []Batch{{0, 1}}}, 0, 1); return err },
		"nothing given": func() error {
			_, err := shop().Over(Load{Emission: Emission{{0, 0}, {1, 0}}, Batches: []Batch{{0, 1}}}, 0, 1)
			return err
		},
		"backwards": func() error {
			_, err := shop().Over(Load{Emission: Emission{{5, 1}, {1, 1}}, Batches: []Batch{{0, 1}}}, 0, 1)
			return err
		},
		"three at once":  func() error { return Emission{{0, 1}, {1, 1}, {1, 2}, {1, 3}, {2, 0}}.check() },
		"takes up":       func() error { return Emission{{0, 1}, {1, -1}}.check() },
		"not a time":     func() error { _, err := shop().Over(day(), 0, nan); return err },
		"no run":         func() error { _, err := shop().Over(Load{Emission: early, Runs: []Run{{5, 5, 1}}}, 0, 1); return err },
		"closed, steady": func() error { _, err := (Room{Volume: 1, Mixing: 1}).Steady(1); return err },
		"closed, purged": func() error { _, err := (Room{Volume: 1, Mixing: 1}).Purge(0.5); return err },
		"after the end":  func() error { _, err := mustOver(t, shop(), day(), 0, 10).At(11); return err },
		"long average":   func() error { _, err := mustOver(t, shop(), day(), 0, 10).Average(5, 6); return err },
		"gains carrier":  func() error { _, err := FromLeft([]quantity.Time{0, 1}, []quantity.Grammage{1, 2}); return err },
		"no samples":     func() error { _, err := Sample(func(quantity.Time) Flux { return 1 }, 0, 1, 5); return err },
	} {
		if f() == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

// What FromLeft gives off is what is no longer left, at any time.
func TestFromLeft(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	times, left := []quantity.Time{0}, []quantity.Grammage{2e-3}
	for range 30 {
		times = append(times, times[len(times)-1]+quantity.Time(10+1000*random.Float64()))
		left = append(left, left[len(left)-1]*quantity.Grammage(random.Float64()*0.4+0.6))
	}
	e, err := FromLeft(times, left)
	if err != nil {
		t.Fatal(err)
	}
	for i := range times {
		if math.Abs(float64(e.until(times[i])-(left[0]-left[i]))) > 1e-17 {
			t.Errorf("after %g s %g kg/m² given off, %g no longer left", float64(times[i]), float64(e.until(times[i])), float64(left[0]-left[i]))
		}
	}
}

// A sampled exponential gives off what it should, with its peak at the beginning.
func TestSample(t *testing.T) {
	e, err := Sample(func(t quantity.Time) Flux { return Flux(1e-7 * math.Exp(-float64(t)/5000)) }, 1, 60000, 200)
	if err != nil {
		t.Fatal(err)
	}
	if got := float64(e.Total()) / 5e-4; math.Abs(got-1) > 1e-3 {
		t.Errorf("%g of what it should give off", got)
	}
	if p := e.Peak(); p.Time != 0 && p.Time != 1 || p.Flux < 0.99e-7 {
		t.Errorf("peak %+v", p)
	}
}
