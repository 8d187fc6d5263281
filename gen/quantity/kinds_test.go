package quantity

import (
	"math"
	"testing"
)

// everyKind calls a check for each kind, with the range of sizes worth printing.
func everyKind(t *testing.T) {
	roundTrip[Length](t, 1e-8, 1e4)
	roundTrip[Area](t, 1e-6, 1e4)
	roundTrip[Volume](t, 1e-7, 1e5)
	roundTrip[Time](t, 1e-2, 1e8)
	roundTrip[Speed](t, 1e-6, 1e2)
	roundTrip[Temperature](t, 100, 1000)
	roundTrip[TemperatureDifference](t, 1e-3, 500)
	roundTrip[Pressure](t, 1e-2, 1e12)
	roundTrip[Mass](t, 1e-7, 1e5)
	roundTrip[Grammage](t, 1e-7, 10)
	roundTrip[Density](t, 1e-9, 1e4)
	roundTrip[LineLoad](t, 1e-1, 1e6)
	roundTrip[Fraction](t, 1e-9, 1e8)
	roundTrip[Diffusivity](t, 1e-20, 1e-3)
	roundTrip[Conductivity](t, 1e-3, 1e3)
	roundTrip[Conductance](t, 1e-1, 1e6)
	roundTrip[SpecificHeat](t, 1e2, 1e4)
	roundTrip[SpecificEnergy](t, 1e2, 1e7)
	roundTrip[Expansion](t, 1e-9, 1e-2)
	roundTrip[MolarMass](t, 1e-3, 1)
	roundTrip[MolarEnergy](t, 1e2, 1e6)
	roundTrip[Viscosity](t, 1e-6, 1e8)
	roundTrip[Permeability](t, 1e-20, 1e-8)
	roundTrip[Resistance](t, 1, 1e10)
	roundTrip[Rate](t, 1e-12, 10)
	roundTrip[SurfaceTension](t, 1e-3, 1)
}

// A printed quantity reads back as the same one within the digits shown, in
// both systems, and printing what was read gives the same text again.
func TestRoundTrip(t *testing.T) { everyKind(t) }

func roundTrip[Q Quantity](t *testing.T, low, high float64) {
	t.Helper()
	name := KindName[Q]()
	if q, err := Parse[Q](Example[Q]()); err != nil {
		t.Errorf("%s: its own example is refused: %v", name, err)
	} else if again, err := Parse[Q](Metric(q)); err != nil || !near(float64(again), float64(q), 1e-12) {
		t.Errorf("%s: the example %s prints as %s", name, Example[Q](), Metric(q))
	}
	// A step that is not a round number in any unit visits all digits.
	for x := low; x < high; x *= 1.0717 {
		signs := []float64{1, -1}
		if name == "temperature" {
			signs = signs[:1]
		}
		for _, sign := range signs {
			q := Q(sign * x)
			check(t, name, float64(q), Metric(q), Parse[Q], Metric[Q])
			if text := Imperial(q); text != "" {
				check(t, name, float64(q), text, Parse[Q], Imperial[Q])
			}
		}
	}
}

func check[Q Quantity](t *testing.T, name string, si float64, text string, parse func(string) (Q, error), print func(Q) string) {
	t.Helper()
	back, err := parse(text)
	if err != nil {
		t.Errorf("%s %g prints as %q, which is refused: %v", name, si, text, err)
		return
	}
	// Three significant figures are within 0.5 %; mils keep a tenth of 0.2 at
	// the least, degrees a half, °F and tenths of K as stated.
	tolerance := 0.00501 * math.Abs(si)
	switch name {
	case "length":
		if math.Abs(si) < 1e-3 {
			tolerance = math.Max(0.05*25.4e-6*1.001, 0.051*math.Abs(si))
			if math.Abs(si) < 0.2*25.4e-6 {
				tolerance = 0.051 * math.Abs(si)
			}
		}
	case "temperature":
		tolerance = 0.2778
	case "temperature difference":
		tolerance = math.Max(math.Min(0.2501, 0.051*math.Abs(si)), 0.0251*math.Abs(si))
	}
	if math.Abs(float64(back)-si) > tolerance {
		t.Errorf("%s %g prints as %q and reads as %g", name, si, text, float64(back))
	}
	if again := print(back); again != text {
		t.Errorf("%s %g prints as %q, and read back as %q", name, si, text, again)
	}
}

// Every kind has words, metric units down to the largest size, and only units
// of its own; no spelling of a kind means two units.
func TestTablesComplete(t *testing.T) {
	for k := kind(0); k < kindCount; k++ {
		if kindWords[k].name == "" || kindWords[k].example == "" {
			t.Errorf("kind %d has no words", k)
		}
		if n := len(metric[k]); n == 0 || metric[k][n-1].below != always {
			t.Errorf("%s: no metric unit for the largest sizes", kindWords[k].name)
		}
		for _, list := range [][]shown{metric[k], imperial[k]} {
			for i, c := range list {
				if i > 0 && list[i-1].below >= c.below {
					t.Errorf("%s: sizes out of order at %s", kindWords[k].name, c.unit)
				}
				if c.unit != "" && find(k, c.unit).kind != k {
					t.Errorf("%s: no unit %s", kindWords[k].name, c.unit)
				}
			}
		}
	}
	for spelling, list := range spellings {
		seen := map[kind]bool{}
		for _, u := range list {
			if seen[u.kind] {
				t.Errorf("%s is written twice among the units of %s", spelling, kindWords[u.kind].name)
			}
			seen[u.kind] = true
		}
	}
	for _, u := range units {
		if !(u.si > 0) || math.IsInf(u.si, 0) {
			t.Errorf("%s has the factor %g", u.text, u.si)
		}
	}
}

func TestConversions(t *testing.T) {
	tests := []struct {
		what      string
		got, want float64
	}{
		{"0 °C in °F", FromCelsius(0).Fahrenheit(), 32},
		{"-40 °C in °F", FromCelsius(-40).Fahrenheit(), -40},
		{"240 °F in °C", FromFahrenheit(240).Celsius(), (240.0 - 32) / 1.8},
		{"90 min in h", (90 * Minute).Hours(), 1.5},
		{"36 h in days", (36 * Hour).Days(), 1.5},
		{"1.5 h in min", (1.5 * Hour).Minutes(), 90},
		{"1 mil in µm", Mil.Micrometres(), 25.4},
		{"1 ft in mm", Foot.Millimetres(), 304.8},
		{"12 g/m²", (12 * GramPerSquareMetre).GramsPerSquareMetre(), 12},
		{"50 %", (50 * Percent).Percent(), 50},
		{"1 m/min in ft/min", Number(MetrePerMinute, "ft/min"), 1 / 0.3048},
		{"25 °C less 7 °C", float64(FromCelsius(25).Minus(FromCelsius(7))), 18},
		{"7 °C and 18 K", FromCelsius(7).Plus(18).Celsius(), 25},
	}
	for _, test := range tests {
		if math.Abs(test.got-test.want) > 1e-12*math.Max(50, math.Abs(test.want)) {
			t.Errorf("%s: got %.15g, want %.15g", test.what, test.got, test.want)
		}
	}
}

func TestInPanicsOnAForeignUnit(t *testing.T) {
	defer func() {
		if recover() == nil {
			t.Error("a length was printed in kg")
		}
	}()
	In(Metre, "kg")
}
