package drying

import (
	"errors"
	"math"
	"testing"

	"laydown/gen/quantity"
)

const hour = quantity.Time(3600)

// A rate solved from a maker's wait gives that wait back, and a first-order law's
// own consequences: each half takes ln 2/k; twice the film takes ln 2/k longer.
func TestFirstOrder(t *testing.T) {
	r, err := SolveFirstOrder(1, 0.1, 8*hour) // invented
	if err != nil {
		t.Fatal(err)
	}
	if want := math.Ln10 / (8 * 3600); !(math.Abs(float64(r.Rate)/want-1) <= 1e-14) {
		t.Errorf("rate %g, want ln 10 in 8 h, %g", float64(r.Rate), want)
	}
	half := math.Ln2 / float64(r.Rate)
	for _, row := range []struct {
		name                         string
		coverage, unreacted, allowed quantity.Fraction
		want                         float64
	}{
		{"the maker's own case", 1, 1, 0.1, 8 * 3600},
		{"twice the coverage", 2, 1, 0.1, 8*3600 + half},
		{"half reacted", 1, 0.5, 0.1, 8*3600 - half},
		{"half the coverage", 0.5, 1, 0.1, 8*3600 - half},
		{"so light that it is within the limit", 0.1, 1, 0.1, 0},
		{"lighter still", 0.05, 1, 0.1, 0},
		{"no ink", 0, 1, 0.1, 0},
	} {
		got, err := r.Wait(row.coverage, row.unreacted, row.allowed)
		if err != nil || !(math.Abs(float64(got)-row.want) <= 1e-8) {
			t.Errorf("%s: %g s (%v), want %g", row.name, float64(got), err, row.want)
		}
	}
	if got := r.Unreacted(quantity.Time(3 * half)); !(math.Abs(float64(got)-0.125) <= 1e-15) {
		t.Errorf("after three half-lives %g", float64(got))
	}
}

// Warmer is never later; a pile that keeps the air out is never sooner; the order
// of a history does not matter; a wait after a history is the rest of the wait.
func TestReactionHistory(t *testing.T) {
	r, err := SolveFirstOrder(1, 0.1, 8*hour)
	if err != nil {
		t.Fatal(err)
	}
	before := math.Inf(1)
	for k := quantity.Temperature(278); k < 318; k += 5 {
		wait, err := r.Times(Arrhenius(60e3, 293, k)).Wait(1.5, 1, 0.1)
		if err != nil || !(float64(wait) < before) {
			t.Errorf("at %g K %g s (%v), cooler %g", float64(k), float64(wait), err, before)
		}
		before = float64(wait)
	}
	pile := r.Times(0.4)
	forth := Unreacted([]ReactionPart{{r, 2 * hour}, {pile, 6 * hour}})
	back := Unreacted([]ReactionPart{{pile, 6 * hour}, {r, 2 * hour}})
	want := math.Exp(-float64(r.Rate) * 3600 * (2 + 0.4*6))
	if forth != back || !(math.Abs(float64(forth)-want) <= 1e-15) || Unreacted(nil) != 1 {
		t.Errorf("one way %g, the other %g, want %g", float64(forth), float64(back), want)
	}
	// 2 h in the open and 6 h at 0.4 count as 4.4 h of the 8.
	rest, err := r.Wait(1, forth, 0.1)
	if err != nil || !(math.Abs(float64(rest/hour)-3.6) <= 1e-12) {
		t.Errorf("%g h left (%v), want 3.6", float64(rest/hour), err)
	}
}

func TestReactionErrors(t *testing.T) {
	if _, err := SolveFirstOrder(1, 1, hour); !errors.Is(err, ErrAlreadyDry) {
		t.Errorf("all allowed: %v", err)
	}
	for _, in := range [][3]float64{{0, 0.1, 1}, {1, 0, 1}, {1, 0.1, 0}, {math.NaN(), 0.1, 1}} {
		if _, err := SolveFirstOrder(quantity.Fraction(in[0]), quantity.Fraction(in[1]), quantity.Time(in[2])); err == nil {
			t.Errorf("SolveFirstOrder(%g): no error", in)
		}
	}
	if _, err := (FirstOrder{}).Wait(1, 1, 0.1); !errors.Is(err, ErrNever) {
		t.Errorf("no reaction: %v", err)
	}
	if _, err := (FirstOrder{Rate: -1}).Wait(1, 1, 0.1); err == nil {
		t.Error("negative rate: no error")
	}
	if _, err := (FirstOrder{Rate: 1}).Wait(1, 1, 0); err == nil {
		t.Error("nothing allowed: no error")
	}
}

// Arrhenius is 1 where nothing changes, and a way there and back is none.
func TestArrheniusProperties(t *testing.T) {
	if got := Arrhenius(50e3, 296, 296); got != 1 {
		t.Errorf("no change: %g", got)
	}
	if got := Arrhenius(50e3, 296, 306) * Arrhenius(50e3, 306, 296); !(math.Abs(got-1) <= 1e-14) {
		t.Errorf("there and back: %g", got)
	}
	// About 53 kJ/mol doubles a rate from 25 to 35 °C (a common rule, no
	// source): ln 2·R/(1/298.15 − 1/308.15) = 52.9 kJ/mol.
	if got := Arrhenius(52.95e3, 298.15, 308.15); !(math.Abs(got-2) <= 2e-3) {
		t.Errorf("doubling: %g", got)
	}
}

func TestToner(t *testing.T) {
	toner := Toner{Base: hour, Coated: 2 * hour, Heavy: 3 * hour} // invented
	for _, r := range []struct {
		coated, heavy bool
		spent, want   quantity.Time
	}{
		{false, false, 0, hour},
		{true, false, 0, 3 * hour},
		{false, true, 0, 4 * hour},
		{true, true, 0, 6 * hour},
		{true, true, 5 * hour, hour},
		{false, false, 5 * hour, 0},
	} {
		if got := toner.After(r.coated, r.heavy, r.spent); got != r.want {
			t.Errorf("coated %v, heavy %v, %g h spent: %g h, want %g h", r.coated, r.heavy, float64(r.spent/hour), float64(got/hour), float64(r.want/hour))
		}
	}
}

// The second method: dU/dt = −k(T(t))·U by Runge and Kutta's fourth order through
// a day on which the room swings by 8 K, against a history of quarters of an hour.
func TestReactionAgreesWithRungeKutta(t *testing.T) {
	r, err := SolveFirstOrder(1, 0.15, 24*hour)
	if err != nil {
		t.Fatal(err)
	}
	room := func(at float64) quantity.Temperature {
		return quantity.Temperature(296 + 4*math.Sin(2*math.Pi*at/86400))
	}
	k := func(at float64) float64 { return float64(r.Rate) * Arrhenius(70e3, 296, room(at)) }
	u, step := 1.0, 60.0
	for at := 0.0; at < 86400; at += step {
		k1 := -k(at) * u
		k2 := -k(at+step/2) * (u + step/2*k1)
		k3 := -k(at+step/2) * (u + step/2*k2)
		k4 := -k(at+step) * (u + step*k3)
		u += step / 6 * (k1 + 2*k2 + 2*k3 + k4)
	}
	var history []ReactionPart
	for at := 0.0; at < 86400; at += 900 {
		history = append(history, ReactionPart{r.Times(Arrhenius(70e3, 296, room(at+450))), 900})
	}
	got := float64(Unreacted(history))
	if !(math.Abs(got/u-1) <= 1e-4) {
		t.Errorf("by the law %.8f, by Runge and Kutta %.8f", got, u)
	}
	t.Logf("unreacted after a swinging day %.5f, by Runge and Kutta %.5f; at an even 296 K %.5f", got, u, float64(r.Unreacted(24*hour)))
}
