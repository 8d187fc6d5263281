package paper

import (
	"errors"
	"math"
	"strings"
	"testing"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// Everything outside a range is an error that names the range, and the value beside it is
// nought: never NaN.
func TestRanges(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	c := quantity.FromCelsius
	type result struct {
		value float64
		err   error
	}
	f := func(q quantity.Fraction, err error) result { return result{float64(q), err} }
	g := func(q quantity.Grammage, err error) result { return result{float64(q), err} }
	p := func(q quantity.Pressure, err error) result { return result{float64(q), err} }
	k := func(q quantity.Temperature, err error) result { return result{float64(q), err} }
	h := func(q quantity.SpecificEnergy, err error) result { return result{float64(q), err} }
	n := func(q float64, err error) result { return result{q, err} }
	o := func(i Isotherm, err error) result {
		if i != nil {
			return result{1, err}
		}
		return result{0, err}
	}
	paltakari := PaltakariKarlsson{}
	trap := Trap{Sheet: Pulp, Moisture: 0.07, Start: room, Pressure: air.Atmosphere}
	with := func(change func(*Trap)) Trap {
		tr := trap
		change(&tr)
		return tr
	}
	tests := []struct {
		what string
		got  result
		want string // part of the message
	}{
		{"humidity of 101 %", f(Pulp.Moisture(1.01, room)), "moisture of bleached pulp: activity 1.01 is outside 0 to 1"},
		{"no humidity", f(Wood{}.Moisture(quantity.Fraction(nan), room)), "moisture of wood: activity NaN is outside 0 to 1"},
		{"less than dry", f(paltakari.Moisture(-0.1, room)), "outside 0 to 1"},
		{"frosty pulp", f(Pulp.Moisture(0.5, c(-1))), "-1 °C is outside 0 °C to 150 °C"},
		{"burnt pulp", f(Activity(Pulp, 0.05, c(151))), "151 °C is outside 0 °C to 150 °C"},
		{"hot wood", f(Wood{}.Moisture(0.5, c(121))), "121 °C is outside 0 °C to 120 °C"},
		{"hot wood, inverse", f(Activity(Wood{}, 0.05, c(121))), "121 °C is outside 0 °C to 120 °C"},
		{"hot paper", f(paltakari.Moisture(0.5, c(121))), "121 °C is outside 0 °C to 120 °C"},
		{"hot paper, inverse", f(Activity(paltakari, 0.5, c(121))), "121 °C is outside 0 °C to 120 °C"},
		{"no temperature", f(Activity(Pulp, 0.05, quantity.Temperature(nan))), "outside 0 °C to 150 °C"},
		{"saturated paper", f(paltakari.Moisture(1, room)), "activity 1 is outside 0 to below 1"},
		{"saturated pulp in the cold", f(Pulp.Moisture(1, c(5))), "at 5 °C: activity 1 is outside 0 to below 0.97"},
		{"negative moisture", f(Activity(Pulp, -0.01, room)), "-0.01 kg/kg is outside 0 kg/kg and up"},
		{"no moisture", f(Activity(paltakari, quantity.Fraction(nan), room)), "outside 0 kg/kg and up"},
		{"endless moisture", f(Activity(Wood{}, quantity.Fraction(inf), room)), "outside 0 kg/kg and up"},
		{"heat of burnt pulp", h(NetHeat(Pulp, 0.05, c(200))), "outside 0 °C to 150 °C"},
		{"heat at the end of wood", h(NetHeat(Wood{}, 0.05, c(120))), "outside 0 °C to 120 °C"},
		{"gap of 4 points", o(OnBranch(Pulp, Drying, 0.04)), "a gap of 4 points is outside 0 to 3 points"},
		{"no gap", o(OnBranch(Pulp, Drying, quantity.Fraction(nan))), "outside 0 to 3 points"},
		{"a fourth branch", o(OnBranch(Pulp, 3, 0.01)), "no branch 3"},
		{"more than all fibre", f(Sheet{FibreShare: 1.2}.Moisture(0.5, room)), "fibre share of 120 % is outside 0 % to 100 %"},
		{"no fibre share", f(Activity(Sheet{FibreShare: quantity.Fraction(nan)}, 0.05, room)), "outside 0 % to 100 %"},
		{"lifting base", g(Sheet{FibreShare: 1, Base: -1}.Water(0.5, room)), "outside 0 g/m² and up"},
		{"lifting layer", g(Sheet{Layers: []Layer{{Pulp, -1}}}.Water(0.5, room)), "outside 0 g/m² and up"},
		{"layers of nothing", f(Sheet{FibreShare: 1, Layers: []Layer{{Pulp, 0}}}.Moisture(0.5, room)), "weighs nothing"},
		{"plastic in a fog of 110 %", f(Sheet{}.Moisture(1.1, room)), "outside 0 to 1"},
		{"vapour of burnt pulp", p(VapourPressure(Pulp, 0.05, c(160))), "outside 0 °C to 150 °C"},
		{"no room pressure", n(with(func(t *Trap) { t.Pressure = 0 }).Swelling(c(90))), "outside a room above 0 Pa"},
		{"NaN pressure", n(with(func(t *Trap) { t.Pressure = quantity.Pressure(nan) }).Swelling(c(90))), "outside a room above 0 Pa"},
		{"a nip that pulls", n(with(func(t *Trap) { t.Nip = -1 }).Swelling(c(90))), "nip of 0 Pa and up"},
		{"frozen start", n(with(func(t *Trap) { t.Start = c(-5) }).Swelling(c(90))), "at the start: moisture of bleached pulp: -5 °C is outside"},
		{"start that boils", n(with(func(t *Trap) { t.Start = c(110); t.Moisture = 0.3 }).Swelling(c(120))), "outside 0 Pa to the room's 1.013e+05 Pa"},
		{"too hot a bond line", n(trap.Swelling(c(160))), "160 °C is outside 0 °C to 150 °C"},
		{"shrinking air", k(trap.Reaches(0.9, c(140))), "a ratio of 0.9 is outside 1 (at the start) and up"},
		{"no ratio", k(trap.Reaches(nan, c(140))), "outside 1 (at the start) and up"},
		{"no end", k(trap.Reaches(inf, c(140))), "outside 1 (at the start) and up"},
		{"colder than the start", k(trap.Reaches(5, c(20))), "20 °C is outside the start's 23 °C and up"},
		{"beyond the isotherm", k(trap.Reaches(5, c(160))), "160 °C is outside 0 °C to 150 °C"},
		{"not so hot", k(trap.Reaches(5, c(60))), "does not swell so far: at 60 °C by 1.2"},
	}
	for _, test := range tests {
		switch {
		case test.got.err == nil:
			t.Errorf("%s: no error, %g", test.what, test.got.value)
		case !strings.Contains(test.got.err.Error(), test.want):
			t.Errorf("%s: %v; wanted %q in it", test.what, test.got.err, test.want)
		case test.got.value != 0:
			t.Errorf("%s: value %g beside the error", test.what, test.got.value)
		}
	}
	if _, err := paltakari.Moisture(1, room); !errors.Is(err, ErrWet) {
		t.Errorf("saturated paper: %v", err)
	}
	if _, err := trap.Reaches(5, c(60)); !errors.Is(err, ErrNotReached) {
		t.Errorf("not so hot: %v", err)
	}
}

// Data end before the ranges do, and each isotherm says where.
func TestExtrapolates(t *testing.T) {
	for _, x := range []struct {
		is interface {
			Extrapolates(quantity.Temperature) bool
		}
		celsius float64
		want    bool
	}{
		{Pulp, 25, false}, {Pulp, 80, false}, {Pulp, 95, true}, {Pulp, 20, true},
		{PaltakariKarlsson{}, 23, false}, {PaltakariKarlsson{}, 95, true},
		{Wood{}, 95, false},
		{Gelatine.Isotherm, 23, false}, {Gelatine.Isotherm, 85, true},
	} {
		if got := x.is.Extrapolates(quantity.FromCelsius(x.celsius)); got != x.want {
			t.Errorf("%T at %g °C: %v", x.is, x.celsius, got)
		}
	}
}
