package cooling

import (
	"math"
	"math/rand/v2"
	"testing"

	"laydown/gen/quantity"
)

func mustCool(t testing.TB, layers []Layer, stages []Stage) *Cooling {
	t.Helper()
	c, err := Cool(layers, stages)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func end(t testing.TB, c *Cooling) Moment {
	t.Helper()
	m, err := c.At(c.Total())
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// The heat that leaves by the faces is what the layers lose.
func TestHeatBalances(t *testing.T) {
	for name, stages := range map[string][]Stage{
		"air": {inAir(300, 12)}, "chilled": chilled(),
		"sealed back": {{Time: 60, Face: Exposure{25, celsius(23)}}},
		"clamped":     {{Time: 60, Face: Exposure{1e9, celsius(23)}, Back: Exposure{1e9, celsius(40)}}},
	} {
		c := mustCool(t, laminate(), stages)
		if b := c.Balance(); !(b < 1e-9) {
			t.Errorf("%s: the balance misses %.3g of the heat exchanged", name, b)
		}
		// The faces' heat is the integral of h·(T − T_a) too, from the curve itself.
		heat := 0.0
		for i := 1; i < len(c.samples); i++ {
			a, b := c.samples[i-1], c.samples[i]
			s := stages[0]
			for at := 0; a.time >= float64(s.Time); at++ {
				a.time, s = a.time-float64(s.Time), stages[at+1]
			}
			n := len(c.layers)
			middle := (c.samples[i-1].time + b.time) / 2
			mean := (c.samples[i-1].value[n] + 4*c.between(i, n, middle) + b.value[n]) / 6
			heat += float64(s.Face.Conductance) * (mean - float64(s.Face.Temperature)) * (b.time - c.samples[i-1].time)
		}
		if name != "clamped" && math.Abs(heat-c.FaceHeat) > 2e-4*c.exchanged {
			t.Errorf("%s: the face gave %.8g J/m², its curve %.8g", name, c.FaceHeat, heat)
		}
		n := 0.0
		for i, l := range laminate() {
			n += l.HeatCapacity() * float64(l.startMean()-end(t, c).Layers[i])
		}
		if math.Abs(n-c.Stored) > 1e-6*c.exchanged {
			t.Errorf("%s: the layers' means lose %.10g J/m², the laminate %.10g", name, n, c.Stored)
		}
	}
}

// Nothing gets colder than the coldest body, nor hotter than the hottest start.
func TestStaysBetween(t *testing.T) {
	c := mustCool(t, laminate(), chilled())
	for _, s := range c.samples {
		for i, v := range s.value {
			if v < float64(celsius(15))-1e-6 || v > float64(celsius(96))+1e-6 {
				t.Fatalf("place %d is at %.6f °C after %g s", i, v-273.15, s.time)
			}
		}
	}
	// In air alone, never below the air, and the laminate's heat only falls.
	c = mustCool(t, laminate(), []Stage{inAir(1200, 12)})
	before := math.Inf(1)
	for _, s := range c.samples {
		mean := 0.0
		for i, l := range c.layers {
			mean += l.HeatCapacity() * s.value[i]
		}
		for _, v := range s.value {
			if v < float64(celsius(23))-1e-9 {
				t.Fatalf("%.9f °C in air of 23 °C after %g s", v-273.15, s.time)
			}
		}
		if mean > before*(1+1e-14) {
			t.Fatalf("the laminate gains heat after %g s", s.time)
		}
		before = mean
	}
}

// An evenly hot laminate cools at every place at every time.
func TestFallsSteadily(t *testing.T) {
	layers := laminate()
	for i := range layers {
		layers[i].Start = Even(celsius(80))
	}
	c := mustCool(t, layers, []Stage{inAir(600, 20)})
	for i := 2; i < len(c.samples); i++ {
		for p := range c.samples[i].value {
			if c.samples[i].value[p] > c.samples[i-1].value[p]+1e-9 {
				t.Fatalf("place %d warms from %g to %g s", p, c.samples[i-1].time, c.samples[i].time)
			}
		}
	}
}

func TestThickerLaterMoreAirSooner(t *testing.T) {
	until := func(layers []Layer, h quantity.Conductance) float64 {
		c := mustCool(t, layers, []Stage{inAir(3000, h)})
		w, err := c.when(celsius(40), Face, Back)
		if err != nil || !w.Comes {
			t.Fatal(w, err)
		}
		return float64(w.Time)
	}
	before := 0.0
	for _, thick := range []quantity.Length{100e-6, 150e-6, 250e-6, 500e-6, 1e-3} {
		layers := laminate()
		layers[3].Thickness = thick
		layers[3].Start = Even(celsius(60))
		now := until(layers, 20)
		if !(now > before) {
			t.Errorf("%g µm: below 40 °C after %g s, the thinner one after %g s", float64(thick)*1e6, now, before)
		}
		before = now
	}
	before = math.Inf(1)
	for _, h := range []quantity.Conductance{5, 10, 20, 40, 80, 400} {
		now := until(laminate(), h)
		if !(now < before) {
			t.Errorf("%g W/(m² K): below 40 °C after %g s, with less air after %g s", float64(h), now, before)
		}
		before = now
	}
}

// The sum of two starts, each counted from the air, is the start of the sum.
func TestLinear(t *testing.T) {
	with := func(start ...float64) Moment {
		layers := laminate()
		for i := range layers {
			layers[i].Start = Even(celsius(23 + start[i]))
		}
		c := mustCool(t, layers, []Stage{inAir(2, 30), {Time: 3, Face: Exposure{400, celsius(23)}}, inAir(10, 10)})
		m, err := c.At(9)
		if err != nil {
			t.Fatal(err)
		}
		return m
	}
	a, b, both := with(60, 0, 5, 0), with(0, 40, 0, 20), with(60, 40, 5, 20)
	for i := range both.Layers {
		got := float64(both.Layers[i] - celsius(23))
		want := float64(a.Layers[i] - celsius(23) + b.Layers[i] - celsius(23))
		if math.Abs(got-want) > 1e-9 {
			t.Errorf("layer %d: %g K above the air, the parts give %g", i, got, want)
		}
	}
}

// A thin laminate in air falls as exp(−t/τ).
func TestThinFallsAsOneExponential(t *testing.T) {
	for _, scale := range []float64{1, 0.1, 0.01} {
		layers := laminate()
		for i := range layers {
			layers[i].Thickness *= quantity.Length(scale)
			layers[i].Start = Even(celsius(80))
			layers[i].Below = 0
		}
		const h = 20.0
		tau := TimeConstant(layers, h, h)
		c := mustCool(t, layers, []Stage{inAir(3*tau, h)})
		r := 0.0
		for _, l := range layers {
			r += float64(l.Thickness) / float64(l.Conductivity)
		}
		worst := 0.0
		for _, s := range c.samples {
			want := float64(celsius(23)) + 57*math.Exp(-s.time/float64(tau))
			for _, v := range s.value {
				worst = max(worst, math.Abs(v-want))
			}
		}
		// One exponential misses by about a quarter of h·R; the steps by 0.01 K.
		if limit := 57*h*r/3 + 0.012; worst > limit {
			t.Errorf("scale %g: %g K off one exponential, %g allowed", scale, worst, limit)
		}
		t.Logf("scale %g: h·R %.3g, %.3g K off one exponential", scale, h*r, worst)
	}
}

// A face on the chill roller is below 40 °C there, and above it again later.
func TestStaysBelowIsNotReaches(t *testing.T) {
	layers := laminate()
	c := mustCool(t, layers, []Stage{
		{Time: 0.05, Face: Exposure{4000, celsius(10)}}, inAir(300, 10),
	})
	first, ok, err := c.Reaches(Face, celsius(40))
	if err != nil || !ok {
		t.Fatal(ok, err)
	}
	stays, ok, err := c.StaysBelow(Face, celsius(40))
	if err != nil || !ok {
		t.Fatal(ok, err)
	}
	if !(first < 0.05 && stays > 5) {
		t.Errorf("first below 40 °C after %g s, for good after %g s", float64(first), float64(stays))
	}
	m, err := c.At(stays)
	if err != nil || math.Abs(float64(m.Face-celsius(40))) > 1e-6 {
		t.Errorf("the face then has %g °C (%v)", float64(m.Face)-273.15, err)
	}
	if _, ok, _ := c.StaysBelow(Face, celsius(23)); ok {
		t.Error("below the air's own temperature")
	}
}

// The four curves part in the nip and are one line a second later.
func TestPartAndMeet(t *testing.T) {
	c := mustCool(t, laminate(), []Stage{inAir(120, 25)})
	span, at := c.Widest()
	if at != 0 || !(span > 25 && span < 40) {
		t.Errorf("widest apart: %g K after %g s", float64(span), float64(at))
	}
	meet, ok := c.Meets(1)
	limit := EvensOutStack(laminate())
	if !ok || meet > limit*2 || meet < 0.01 {
		t.Errorf("within 1 K after %g s (%v), evened out after %g s at the latest", float64(meet), ok, float64(limit))
	}
	// On a chill roller they part again, by a few kelvin, and meet soon after it.
	run := mustCool(t, laminate(), chilled())
	spread := func(at quantity.Time) float64 {
		m, err := run.At(at)
		if err != nil {
			t.Fatal(err)
		}
		low, high := m.Layers[0], m.Layers[0]
		for _, l := range m.Layers {
			low, high = min(low, l), max(high, l)
		}
		return float64(high - low)
	}
	if before, on, after := spread(2), spread(2.05), spread(3.5); !(before < 1 && on > 2 && on < 15 && after < 0.5) {
		t.Errorf("apart by %.3g K before the chill roller, %.3g on it, %.3g after it", before, on, after)
	}
	t.Logf("%.3g K apart, within 1 K after %.3g s, to a twentieth after %.3g s at the latest", float64(span), float64(meet), float64(limit))
}

// EvensOut is what the solver finds of a slab, and EvensOutStack no less than what it
// finds of any stack.
func TestEvensOut(t *testing.T) {
	slab := Layer{Thickness: 100e-6, Conductivity: 0.15, Density: 1000, SpecificHeat: 1500, Cells: 60}
	slab.Start = []Known{{0, 320}, {100e-6, 300}}
	// The first mode is 8/π² of a ramp's ends: its time to a twentieth is compared.
	at := func(c *Cooling, t quantity.Time) float64 {
		m, err := c.At(t)
		if err != nil {
			return math.NaN()
		}
		return float64(m.Face - m.Back)
	}
	c := mustCool(t, []Layer{slab}, []Stage{{Time: 1}})
	late := EvensOut(slab)
	if ratio := at(c, 2*late) / at(c, late); math.Abs(ratio-leftOver) > 2e-3 {
		t.Errorf("after another EvensOut %.5g is left, not 0.05", ratio)
	}
	random := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		var layers []Layer
		for range 2 + random.IntN(3) {
			layers = append(layers, Layer{Thickness: quantity.Length(math.Exp(6*random.Float64()) * 1e-6), Conductivity: quantity.Conductivity(math.Exp(3*random.Float64()) * 0.05),
				Density: quantity.Density(math.Exp(4*random.Float64()) * 100), SpecificHeat: 1500, Start: Even(quantity.Temperature(300 + 50*random.Float64()))})
		}
		limit := EvensOutStack(layers)
		c := mustCool(t, layers, []Stage{{Time: 3 * limit}})
		n := len(layers)
		left := func(t quantity.Time) float64 {
			sum := 0.0
			m, _ := c.At(t)
			e, _ := c.At(3 * limit)
			for i := range n {
				sum += layers[i].HeatCapacity() * math.Pow(float64(m.Layers[i]-e.Layers[i]), 2)
			}
			return math.Sqrt(sum)
		}
		if a, b := left(limit/2), left(3*limit/2); b > leftOver*a*1.02+1e-9 {
			t.Errorf("%v: %g K·√J left of %g after EvensOutStack", layers, b, a)
		}
	}
}

func TestRefusals(t *testing.T) {
	bad := func(change func(l []Layer, s []Stage)) error {
		l, s := laminate(), chilled()
		change(l, s)
		_, err := Cool(l, s)
		return err
	}
	for name, err := range map[string]error{
		"thickness":   bad(func(l []Layer, s []Stage) { l[1].Thickness = 0 }),
		"not number":  bad(func(l []Layer, s []Stage) { l[1].Conductivity = quantity.Conductivity(math.NaN()) }),
		"no start":    bad(func(l []Layer, s []Stage) { l[0].Start = nil }),
		"deep start":  bad(func(l []Layer, s []Stage) { l[0].Start = []Known{{26e-6, 300}} }),
		"start order": bad(func(l []Layer, s []Stage) { l[0].Start = []Known{{2e-6, 300}, {1e-6, 300}} }),
		"cold start":  bad(func(l []Layer, s []Stage) { l[0].Start = Even(-5) }),
		"contact":     bad(func(l []Layer, s []Stage) { l[1].Below = -1 }),
		"cells":       bad(func(l []Layer, s []Stage) { l[1].Cells = 1 << 30 }),
		"no time":     bad(func(l []Layer, s []Stage) { s[0].Time = 0 }),
		"no room":     bad(func(l []Layer, s []Stage) { s[0].Face.Temperature = 0 }),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := Cool(nil, chilled()); err == nil {
		t.Error("no layers: no error")
	}
	c := mustCool(t, laminate(), chilled())
	if _, err := c.At(1e6); err == nil {
		t.Error("a time after the end: no error")
	}
	if _, _, err := c.Reaches(9, 300); err == nil {
		t.Error("layer 9 of 4: no error")
	}
	if _, err := c.Curve(0, 5); err == nil {
		t.Error("a log axis from 0: no error")
	}
}

func TestReady(t *testing.T) {
	c := mustCool(t, laminate(), []Stage{inAir(2, 25), inAir(600, 10)})
	touch, err := BurnThreshold(Plastic, CarryContact)
	if err != nil {
		t.Fatal(err)
	}
	r, err := c.Ready(Limits{Touch: touch, Stack: celsius(28), Set: celsius(60), Margin: 5, Adhesives: []int{1}})
	if err != nil {
		t.Fatal(err)
	}
	if !r.Touch.Comes || !r.Stack.Comes || !r.Trim.Comes || !(r.Trim.Time < r.Touch.Time && r.Touch.Time < r.Stack.Time) {
		t.Errorf("ready: %+v", r)
	}
	t.Logf("touch %.3g s, stack %.3g s, trim %.3g s", float64(r.Touch.Time), float64(r.Stack.Time), float64(r.Trim.Time))
	r, err = c.Ready(Limits{Touch: touch, Stack: celsius(22), Set: celsius(60), Adhesives: []int{1}})
	if err != nil || r.Stack.Comes || r.Stack.Time != 0 || !(r.Stack.Last > celsius(22.9)) {
		t.Errorf("a stack cooler than the room: %+v, %v", r.Stack, err)
	}
	if _, err := c.Ready(Limits{Touch: touch, Stack: celsius(30), Set: celsius(60), Adhesives: []int{4}}); err == nil {
		t.Error("adhesive 4 of 4 layers: no error")
	}
}
