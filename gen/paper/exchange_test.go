package paper

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

func exchange() Exchange {
	return Exchange{Sheet: Sheet{FibreShare: 0.85, Base: 0.14}, Dry: 0.14, Thickness: 150e-6, Faces: 1, Air: 0.003,
		Room: quantity.FromCelsius(23), Humidity: 0.5}
}

func at(t quantity.Temperature) func(quantity.Time) quantity.Temperature {
	return func(quantity.Time) quantity.Temperature { return t }
}

// A small departure from the balance dies away as exp(−t/τ), τ = R·m·dM/dρ, in closed
// form: a second way to the same number.
func TestExchangeDecaysAsItsTimeConstant(t *testing.T) {
	e := exchange()
	balance, err := e.Sheet.Moisture(e.Humidity, e.Room)
	if err != nil {
		t.Fatal(err)
	}
	const up = 0.002
	before, _ := Activity(e.Sheet, balance+up, e.Room)
	saturated, err := vapourDensity(1, e.Room)
	if err != nil {
		t.Fatal(err)
	}
	slope := up / (float64(before-e.Humidity) * saturated) // dM/dρ, m³/kg
	tau := (1/float64(e.Air) + float64(e.Thickness)/(3*float64(ThroughPaper))) * float64(e.Dry) * slope
	for _, share := range []float64{0.3, 1, 3} {
		got, err := e.March(balance+up, quantity.Time(share*tau), at(e.Room))
		if err != nil {
			t.Fatal(err)
		}
		if want := up * math.Exp(-share); math.Abs(float64(got-balance)-want) > 0.03*up {
			t.Errorf("after %.1f τ (%.0f s): %.5f above the balance, want %.5f", share, share*tau, float64(got-balance), want)
		}
	}
}

// Hot, it loses water, and never more than it has; in the room again it comes back to
// where the room keeps it; with both faces open it is quicker.
func TestExchangeLosesHotAndRegains(t *testing.T) {
	e := exchange()
	balance, _ := e.Sheet.Moisture(e.Humidity, e.Room)
	last := balance
	for _, celsius := range []float64{40, 60, 80, 100} {
		m, err := e.March(balance, 10, at(quantity.FromCelsius(celsius)))
		if err != nil {
			t.Fatal(err)
		}
		if !(m < last && m > 0) {
			t.Errorf("10 s at %.0f °C: %.4f, which is not below %.4f", celsius, float64(m), float64(last))
		}
		last = m
	}
	back, err := e.March(last, 2*quantity.Hour, at(e.Room))
	if err != nil || math.Abs(float64(back-balance)) > 1e-4 {
		t.Errorf("two hours later %.5f of %.5f (%v)", float64(back), float64(balance), err)
	}
	both := e
	both.Faces = 2
	one, _ := e.March(balance, 10, at(quantity.FromCelsius(60)))
	two, err := both.March(balance, 10, at(quantity.FromCelsius(60)))
	if err != nil || !(two < one) {
		t.Errorf("both faces open: %.4f, one: %.4f (%v)", float64(two), float64(one), err)
	}
	if _, err := (Exchange{}).March(0.05, 1, at(e.Room)); err == nil {
		t.Error("an exchange without a sheet was taken")
	}
}
