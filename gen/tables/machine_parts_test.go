package tables

import (
	"math"
	"testing"

	"laydown/data"
	"laydown/gen/nip"
	"laydown/gen/nip/niptest"
	"laydown/gen/paper"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// No machine of the demonstration has a heat shoe, a pre-heat or a chill roller,
// no film an open time, and its paper is on neither branch. The tests give them some.

func demoTables(t testing.TB) *Tables {
	t.Helper()
	s, problems := shop.Load(data.Files, nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	made, err := New(s)
	if err != nil {
		t.Fatal(err)
	}
	return made
}

// changed is the pairing of a case with some of its machine and film changed.
func changed(t *testing.T, made *Tables, c WindowCase, change func(m *shop.Laminator, f *shop.Film)) (pairing, *nip.Response, nip.Temps) {
	t.Helper()
	p, err := made.resolveWindow(c)
	if err != nil {
		t.Fatal(err)
	}
	machine, film := *p.machine, *p.film
	change(&machine, &film)
	p.machine, p.film = &machine, &film
	r := new(nip.Response)
	if err := made.solve(nip.NewSolver(), p, r); err != nil {
		t.Fatal(err)
	}
	return p, r, temperatures(p.machine, c.Temperature)
}

// lowest is the first piece's lowest set temperature, in °C.
func lowest(t *testing.T, made *Tables, c WindowCase, p pairing, r *nip.Response) float64 {
	t.Helper()
	v, err := made.judge(c, p, r)
	if err != nil {
		t.Fatal(err)
	}
	return v.First.Low.Celsius()
}

var onUncoated = WindowCase{Film: "thermal-pet-gloss-75", Medium: "uncoated-150", Laminator: "wide-hot",
	Speed: 1.0 / 60, Temperature: 296.15, Humidity: 0.5}

func stretch(mm, celsius float64) *shop.Stretch {
	return &shop.Stretch{
		Length:      shop.Value[quantity.Length]{Best: quantity.Length(mm / 1000), Set: true},
		Temperature: shop.Value[quantity.Temperature]{Best: quantity.FromCelsius(celsius), Set: true},
	}
}

func TestPreheatLowersTheLowest(t *testing.T) {
	made := demoTables(t)
	p, r, _ := changed(t, made, onUncoated, func(m *shop.Laminator, _ *shop.Film) { m.Preheat = stretch(200, 60) })
	warm := lowest(t, made, onUncoated, p, r)
	p.machine.Preheat = stretch(200, 23)
	worth := lowest(t, made, onUncoated, p, r) - warm
	// In the record that decides, what the pre-heat gives the set temperature may
	// lack. The record that decides may change on the way, so that what the
	// pre-heat is worth lies between what either says.
	says := func(pre, low float64) float64 {
		p.machine.Preheat = stretch(200, pre)
		temps := withSet(temperatures(p.machine, onUncoated.Temperature), low)
		_, at := r.First.BondLineMax(temps)
		for i, when := range r.First.Times {
			if when == at {
				row := r.First.Records[i][nip.BondLine]
				return row[nip.Preheat] * (60 - 23) / row[nip.Set]
			}
		}
		t.Fatal("no record decides")
		return 0
	}
	a, b := says(60, warm), says(23, warm+worth)
	if low, high := min(a, b), max(a, b); !(worth > 1 && worth >= low-0.01 && worth <= high+0.01) {
		t.Errorf("a pre-heat of 60 °C is worth %.2f K of set temperature, the records say %.2f and %.2f", worth, a, b)
	}
}

func withSet(temps nip.Temps, celsius float64) nip.Temps {
	temps.Set = quantity.FromCelsius(celsius)
	return temps
}

func TestChillCoolsAndLeavesTheWindow(t *testing.T) {
	made := demoTables(t)
	p, r, temps := changed(t, made, onUncoated, func(*shop.Laminator, *shop.Film) {})
	plain, exit := lowest(t, made, onUncoated, p, r), r.First.LastMean.At(withSet(temps, 110))
	p, r, temps = changed(t, made, onUncoated, func(m *shop.Laminator, _ *shop.Film) { m.Chill = stretch(150, 15) })
	if got := lowest(t, made, onUncoated, p, r); math.Abs(got-plain) > 0.5 {
		t.Errorf("with a chill roller after the nip the lowest set temperature is %.2f °C, without it %.2f", got, plain)
	}
	if chilled := r.First.LastMean.At(withSet(temps, 110)); !(chilled < exit-5) {
		t.Errorf("the print leaves at %.1f °C with the chill roller and at %.1f without", chilled.Celsius(), exit.Celsius())
	}
}

// A machine with a heat shoe agrees with the second method too, and is set by its shoe.
func TestShoeAgreesWithSecondMethod(t *testing.T) {
	made := demoTables(t)
	p, r, temps := changed(t, made, onUncoated, func(m *shop.Laminator, _ *shop.Film) { m.Shoe = stretch(120, 0) })
	temps = withSet(temps, 120)
	pass, err := made.pass(p, made.places[p.film.ID])
	if err != nil {
		t.Fatal(err)
	}
	ref := niptest.New(pass, &temps, 2e-6, 160)
	ref.Turn(true)
	end := len(ref.Times) - 1
	got := float64(r.First.Records[r.First.NipEnd][nip.BondLine].At(temps))
	if !(math.Abs(got-ref.Bond[end]) <= agreement) {
		t.Errorf("bond line %.3f K, by the second method %.3f", got, ref.Bond[end])
	}
	if low := lowest(t, made, onUncoated, p, r); !(low > 90 && low < 200) {
		t.Errorf("lowest shoe temperature %.1f °C", low)
	}
}

// With an open time the bond line is above activation for just as long at the
// lowest set temperature.
func TestOpenTimeRaisesTheLowest(t *testing.T) {
	made := demoTables(t)
	p, r, temps := changed(t, made, onUncoated, func(*shop.Laminator, *shop.Film) {})
	before := lowest(t, made, onUncoated, p, r)
	const long = 0.8
	p.film.OpenTime = shop.Value[quantity.Time]{Best: long, Set: true}
	after := lowest(t, made, onUncoated, p, r)
	if !(after > before) {
		t.Errorf("with an open time the lowest is %.2f °C, without %.2f", after, before)
	}
	// The time above activation, from the records, linear between them.
	above, last := 0.0, -1
	at := float64(p.film.Activation.Best)
	for i := r.First.Touch + 1; i < len(r.First.Records); i++ {
		a := float64(r.First.Records[i-1][nip.BondLine].At(withSet(temps, after)))
		b := float64(r.First.Records[i][nip.BondLine].At(withSet(temps, after)))
		h := float64(r.First.Times[i] - r.First.Times[i-1])
		switch {
		case a >= at && b >= at:
			above += h
		case a < at && b >= at:
			above += h * (b - at) / (b - a)
		case a >= at && b < at:
			above += h * (a - at) / (a - b)
			last = i
		}
	}
	if last < 0 || math.Abs(above-long) > 0.05*long {
		t.Errorf("the bond line is above activation for %.3f s, wanted %.3f", above, long)
	}
}

// Paper that comes down to the room from the damp side holds more water than paper
// that comes up, and its gas limit is lower.
func TestBranchMovesTheGasLimit(t *testing.T) {
	made := demoTables(t)
	medium := made.shop.Medium("uncoated-150")
	var moisture, limit [3]float64
	for i, branch := range []string{"wetting", "mean", "drying"} {
		made.shop.Front.Branch = branch
		g, err := made.gas(medium, 0.5, quantity.FromCelsius(23))
		if err != nil {
			t.Fatal(err)
		}
		moisture[i], limit[i] = float64(g.moisture), g.temperature.Celsius()
	}
	for i := 1; i < 3; i++ {
		if !(moisture[i] > moisture[i-1]) || !(limit[i] < limit[i-1]) {
			t.Errorf("moisture %.4f, limits %.2f °C: wetting, mean and drying branch should go up and down", moisture, limit)
		}
	}
	if gap := moisture[2] - moisture[0]; !(gap > 0.005 && gap < float64(paper.UsualGap)*1.01) {
		t.Errorf("the branches are %.4f apart", gap)
	}
}

// A sheet that cannot breathe through its back stands less heat.
func TestSealedBackLowersTheGasLimit(t *testing.T) {
	made := demoTables(t)
	open := *made.shop.Medium("matte-inkjet")
	shut := open
	back := *open.Drying
	back.Back = "sealed"
	shut.Drying = &back
	a, err := made.gas(&open, 0.5, quantity.FromCelsius(23))
	if err != nil {
		t.Fatal(err)
	}
	b, err := made.gas(&shut, 0.5, quantity.FromCelsius(23))
	if err != nil {
		t.Fatal(err)
	}
	if !b.sealed || a.sealed || !(b.temperature < a.temperature) {
		t.Errorf("open back: limit %.1f °C; sealed back: %.1f °C", a.temperature.Celsius(), b.temperature.Celsius())
	}
}
