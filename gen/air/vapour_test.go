package air

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// Landolt-Börnstein IV/20 (Dykyj and Hall 2000), as in
// testdata/published/landolt-boernstein-antoine.yaml; the ranges are those of
// the fits.
var (
	cyclohexanone = Antoine{21.005148304030744, 3474.4857760733657, -61.986, quantity.FromCelsius(25), quantity.FromCelsius(185)}
	butylAcetate  = Antoine{21.874558383443436, 3676.537617983593, -43.85, quantity.FromCelsius(28), quantity.FromCelsius(112)}
	butoxyAcetate = Antoine{22.753892604606932, 4673.356638346924, -48.09, quantity.FromCelsius(20), quantity.FromCelsius(191)}
	butyrolactone = Antoine{27.429683075397147, 9341.134113013524, 110.141, quantity.FromCelsius(119), quantity.FromCelsius(201)}
	diglycolEther = Antoine{25.566039778680558, 6970.410921947599, 35.435, quantity.FromCelsius(57), quantity.FromCelsius(187)}
	methoxyPropan = Antoine{23.031146875654343, 4112.5459208525735, -35.329, quantity.FromCelsius(58), quantity.FromCelsius(116)}
)

// A trap: the fits of three ink solvents do not reach room temperature.
func TestExtrapolates(t *testing.T) {
	room := quantity.FromCelsius(23)
	for name, at := range map[string]struct {
		fit  Antoine
		want bool
	}{
		"2-butoxyethyl acetate":            {butoxyAcetate, false},
		"cyclohexanone":                    {cyclohexanone, true}, // by 2 K
		"γ-butyrolactone":                  {butyrolactone, true},
		"diethylene glycol diethyl ether":  {diglycolEther, true},
		"1-methoxy-2-propanol":             {methoxyPropan, true},
		"n-butyl acetate, 5 K short of it": {butylAcetate, true},
	} {
		if got := at.fit.Extrapolates(room); got != at.want {
			t.Errorf("%s at 23 °C: extrapolates is %v", name, got)
		}
		if at.fit.Extrapolates(at.fit.From) || at.fit.Extrapolates(at.fit.To) {
			t.Errorf("%s: the ends of its own range extrapolate", name)
		}
	}
}

// Second methods for cyclohexanone over the fitted range: the Wagner equation
// with the constants of Poling, Prausnitz and O'Connell (2000), and the equation
// of Perry's Handbook, Table 2-8. At 20 and 25 °C the three lie within 2.7 %.
func TestCyclohexanoneThreeWays(t *testing.T) {
	wagner := func(k float64) float64 {
		x := 1 - k/653
		return 4.0e6 * math.Exp((-7.4938*x+1.63094*math.Pow(x, 1.5)-2.12212*math.Pow(x, 2.5)-3.91327*math.Pow(x, 5))/(k/653))
	}
	perry := func(k float64) float64 {
		return math.Exp(85.424 - 7944.4/k - 9.2862*math.Log(k) + 4.9957e-6*k*k)
	}
	for c := 20.0; c <= 160; c += 5 {
		p := float64(must[quantity.Pressure](t)(cyclohexanone.Pressure(quantity.FromCelsius(c))))
		for name, other := range map[string]float64{"Wagner": wagner(c + 273.15), "Perry": perry(c + 273.15)} {
			if !near(p, other, 0.03) {
				t.Errorf("%g °C: Antoine %.5g Pa, %s %.5g Pa", c, p, name, other)
			}
		}
	}
}

// Clausius–Clapeyron from one point of an Antoine fit, with the heat that its
// slope implies, follows the fit within 1 % over 10 K to either side: what is left
// is the curvature of ln p over 1/T, which grows with the square of the distance.
// The fit rises with temperature.
func TestClausiusClapeyronFollowsAntoine(t *testing.T) {
	at := quantity.FromCelsius(25)
	for _, a := range []Antoine{cyclohexanone, butylAcetate, butoxyAcetate, butyrolactone, diglycolEther} {
		var v Vapour = ClausiusClapeyron{must[quantity.Pressure](t)(a.Pressure(at)), at, must[quantity.MolarEnergy](t)(a.Heat(at))}
		before := quantity.Pressure(0)
		for c := 15.0; c <= 35; c += 2.5 {
			p := must[quantity.Pressure](t)(a.Pressure(quantity.FromCelsius(c)))
			other := must[quantity.Pressure](t)(v.Pressure(quantity.FromCelsius(c)))
			if !near(float64(p), float64(other), 0.01) {
				t.Errorf("%g °C: Antoine %.4g Pa, Clausius–Clapeyron %.4g Pa", c, float64(p), float64(other))
			}
			if p <= before {
				t.Errorf("%g °C: vapour pressure falls", c)
			}
			before = p
		}
	}
}

// Boiling point and vapour pressure are each other's inverse.
func TestBoilsInverse(t *testing.T) {
	for _, p := range []quantity.Pressure{1, 50, 2000, Atmosphere} {
		b := must[quantity.Temperature](t)(butoxyAcetate.Boils(p))
		if back := must[quantity.Pressure](t)(butoxyAcetate.Pressure(b)); !near(float64(back), float64(p), 1e-12) {
			t.Errorf("%g Pa: back %g Pa", float64(p), float64(back))
		}
	}
}

// Dipropylene glycol methyl ether: 0.278 mmHg at 20 °C is a saturated vapour of
// 366 ppm by volume (Danish Environmental Protection Agency, report
// 87-7614-055-5, App. 14). By ideal gas that is, with 148.2 g/mol, 2.25 g/m³.
func TestSaturatedVapourOfDPM(t *testing.T) {
	p := quantity.Pressure(0.278 * 133.322387415)
	if ppm := 1e6 * float64(p/Atmosphere); math.Abs(ppm-366) > 0.5 {
		t.Errorf("%g ppm, want 366", ppm)
	}
	// A volume share x of ideal gas at 20 °C, 24.055 l/mol, holds x·M/24.055 l.
	want := 366e-6 * 148.2 / 24.055
	if c := VapourDensity(p, 148.2e-3, quantity.FromCelsius(20)); !near(float64(c), want, 2e-3) {
		t.Errorf("%g kg/m³, want %g", float64(c), want)
	}
}

// Evaporation rates relative to n-butyl acetate, as resellers and trade guides
// give them: 1-methoxy-2-propanol 0.62, cyclohexanone 0.3, dipropylene glycol
// methyl ether 0.035. An estimate by p·M is good to 40 %.
func TestEvaporationOrder(t *testing.T) {
	at := quantity.FromCelsius(25)
	of := func(a Antoine, m float64) float64 {
		return float64(must[quantity.Pressure](t)(a.Pressure(at))) * m
	}
	butyl := of(butylAcetate, 116.16)
	butyl20 := float64(must[quantity.Pressure](t)(butylAcetate.Pressure(quantity.FromCelsius(20)))) * 116.16
	list := []struct {
		name      string
		got, want float64
	}{
		{"n-butyl acetate", 1, 1},
		{"1-methoxy-2-propanol", of(methoxyPropan, 90.12) / butyl, 0.62},
		{"cyclohexanone", of(cyclohexanone, 98.14) / butyl, 0.3},
		{"dipropylene glycol methyl ether", 37.06 * 148.2 / butyl20, 0.035},
	}
	for i, s := range list {
		if s.got < s.want*0.6 || s.got > s.want*1.4 {
			t.Errorf("%s: %.3f, published %.3f", s.name, s.got, s.want)
		}
		if i > 0 && s.got >= list[i-1].got {
			t.Errorf("%s evaporates no slower than %s", s.name, list[i-1].name)
		}
	}
}
