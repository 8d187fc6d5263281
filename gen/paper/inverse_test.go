package paper

import (
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// material is an isotherm with its range, °C, for tests that run over all of them.
type material struct {
	name    string
	is      Isotherm
	hottest float64
}

// materials are all isotherms: the three opinions, the layers with their spreads, the branches,
// and sheets made of them.
func materials(t testing.TB) []material {
	t.Helper()
	all := []material{
		{"pulp", Pulp, gabHottest},
		{"wood", Wood{}, woodHottest},
		{"Paltakari–Karlsson", PaltakariKarlsson{}, paltakariHottest},
	}
	for _, r := range []Receiver{Gelatine, PVA, Silica} {
		all = append(all,
			material{r.Isotherm.Name, r.Isotherm, gabHottest},
			material{r.Low.Name + ", low", r.Low, gabHottest},
			material{r.High.Name + ", high", r.High, gabHottest})
	}
	for _, m := range all[:3] {
		for _, b := range []Branch{Wetting, Drying} {
			i, err := OnBranch(m.is, b, WidestGap)
			if err != nil {
				t.Fatal(err)
			}
			all = append(all, material{m.name + map[Branch]string{Wetting: ", wetting", Drying: ", drying"}[b], i, m.hottest})
		}
	}
	return append(all,
		material{"plain sheet", Sheet{FibreShare: 0.78}, gabHottest},
		material{"wooden sheet", Sheet{Fibre: Wood{}, FibreShare: 0.6}, woodHottest},
		material{"face above a seal", Sheet{Layers: coated().Layers[:1]}, gabHottest},
		material{"coat on plastic", Sheet{Base: 0.1, Layers: coated().Layers[1:]}, gabHottest},
		material{"coated sheet", coated(), gabHottest})
}

// coated is an invented photo paper without a seal.
func coated() Sheet {
	return Sheet{FibreShare: 0.8, Base: 0.15, Layers: []Layer{{Gelatine.Isotherm, 0.012}, {Silica.Isotherm, 0.02}}}
}

// The inverse undoes the isotherm over its whole range.
func TestActivityUndoesMoisture(t *testing.T) {
	for _, x := range materials(t) {
		for celsius := 10.0; celsius <= x.hottest; celsius += 5 {
			at := quantity.FromCelsius(celsius)
			for _, a := range []quantity.Fraction{0, 1e-6, 0.001, 0.05, 0.2, 0.5, 0.8, 0.95, 0.99} {
				m, err := x.is.Moisture(a, at)
				if err != nil {
					t.Fatalf("%s, %g °C, activity %g: %v", x.name, celsius, float64(a), err)
				}
				got, err := Activity(x.is, m, at)
				if err != nil || !(math.Abs(float64(got-a)) <= 1e-11*float64(a)) {
					t.Errorf("%s, %g °C: moisture %g has activity %.12g (%v), not %g", x.name, celsius, float64(m), float64(got), err, float64(a))
				}
			}
		}
	}
}

// The closed forms against halving, which knows nothing but the isotherm.
func TestClosedInverseAgainstHalving(t *testing.T) {
	for _, x := range materials(t) {
		if _, ok := x.is.(inverse); !ok {
			continue
		}
		for celsius := 0.0; celsius <= x.hottest; celsius += 10 {
			for _, m := range []quantity.Fraction{0, 1e-5, 0.01, 0.05, 0.0704, 0.1, 0.15, 0.3, 0.6} {
				at := quantity.FromCelsius(celsius)
				got, err := Activity(x.is, m, at)
				want, err2 := bracketed(x.is, m, at)
				if err != nil || err2 != nil || !(math.Abs(float64(got-want)) <= 1e-11*float64(want)) {
					t.Errorf("%s, %g °C, moisture %g: closed %.13g (%v), halved %.13g (%v)", x.name, celsius, float64(m), float64(got), err, float64(want), err2)
				}
			}
		}
	}
}

// More moisture at a higher activity; a higher activity at more moisture, and 1 at most.
func TestIsothermsRise(t *testing.T) {
	for _, x := range materials(t) {
		for celsius := 10.0; celsius <= x.hottest; celsius += 5 {
			at := quantity.FromCelsius(celsius)
			before := quantity.Fraction(-1)
			for a := quantity.Fraction(0); a < 0.999; a += 0.01 {
				m, err := x.is.Moisture(a, at)
				if err != nil || !(m > before) {
					t.Fatalf("%s, %g °C, activity %g: moisture %g after %g (%v)", x.name, celsius, float64(a), float64(m), float64(before), err)
				}
				before = m
			}
			before = -1
			for m := quantity.Fraction(0); m < 0.6; m += 0.01 {
				a, err := Activity(x.is, m, at)
				if err != nil || !(a > before || a > 0.999999 && a == before) || a > 1 {
					t.Fatalf("%s, %g °C, moisture %g: activity %g after %g (%v)", x.name, celsius, float64(m), float64(a), float64(before), err)
				}
				before = a
			}
		}
	}
}

// Heated at constant moisture, every material's activity rises. The Wood Handbook's equation
// breaks this below 8 °C, by up to 0.0007 in all: that is pinned too. Its branches are left
// to the range above that. Paltakari and Karlsson's dips near saturation, within 2e-7 of 1.
func TestActivityRisesWithTemperature(t *testing.T) {
	fall := 0.0
	for _, x := range materials(t) {
		wooden := strings.Contains(x.name, "wood")
		for m := quantity.Fraction(0.005); m <= 0.29; m += 0.005 {
			before, cold := quantity.Fraction(0), quantity.Fraction(0)
			for celsius := 0.0; celsius <= x.hottest; celsius++ {
				a, err := Activity(x.is, m, quantity.FromCelsius(celsius))
				if err != nil {
					t.Fatalf("%s, %g °C, moisture %g: %v", x.name, celsius, float64(m), err)
				}
				if celsius == 0 {
					cold = a
				}
				switch {
				case a > before, a == before && a == 1, a > 1-2e-7 && before > 1-2e-7:
				case wooden && celsius <= 8:
					if x.name == "wood" {
						fall = max(fall, float64(cold-a))
					}
				default:
					t.Errorf("%s, moisture %g: activity %.15g at %g °C, %.15g 1 K below", x.name, float64(m), float64(a), celsius, float64(before))
				}
				before = a
			}
		}
	}
	if math.Abs(fall-7e-4) > 5e-5 {
		t.Errorf("wood's activity falls by up to %g below 8 °C; its comment says 0.0007", fall)
	}
}

// Above what saturated air gives, activity is 1.
func TestActivityIsCapped(t *testing.T) {
	for _, x := range []struct {
		is      Isotherm
		celsius float64
		m, want quantity.Fraction
	}{
		{Pulp, 80, 0.1442, 1 - 3e-4}, // just below the 14.424 % of saturated air
		{Pulp, 80, 0.1443, 1},        // and just above
		{Pulp, 80, 5, 1},             // soaked
		{Wood{}, 21.1, 0.3, 1},       // above fibre saturation
		{Sheet{FibreShare: 0.5}, 80, 0.0722, 1},
		{Sheet{FibreShare: 0.5}, 80, 0.0721, 1 - 2e-3},
	} {
		a, err := Activity(x.is, x.m, quantity.FromCelsius(x.celsius))
		if err != nil || a > 1 || a < x.want || (x.want < 1 && a == 1) {
			t.Errorf("%v, %g °C, %g: activity %.10g (%v)", x.is, x.celsius, float64(x.m), float64(a), err)
		}
	}
}
