package quantity

import (
	"math"
	"strings"
	"testing"
)

// near reports whether a is b within a relative tolerance.
func near(a, b, tolerance float64) bool {
	return math.Abs(a-b) <= tolerance*math.Max(math.Abs(a), math.Abs(b))
}

// parsed reads a text as the kind of the example and returns its SI value.
func parsed[Q Quantity](t *testing.T, text string) float64 {
	t.Helper()
	q, err := Parse[Q](text)
	if err != nil {
		t.Errorf("Parse[%s](%q): %v", KindName[Q](), text, err)
	}
	return float64(q)
}

// Factors of NIST Special Publication 811 (2008), appendix B.8, as printed
// there: exact where it prints them bold, else to seven figures.
func TestPublishedFactors(t *testing.T) {
	tests := []struct {
		what string
		got  float64
		want float64
		// tolerance is relative
		tolerance float64
	}{
		{"inch, exact", parsed[Length](t, "1 in"), 2.54e-2, 1e-15},
		{"mil (0.001 in), exact", parsed[Length](t, "1 mil"), 2.54e-5, 1e-15},
		{"foot, exact", parsed[Length](t, "1 ft"), 3.048e-1, 1e-15},
		{"yard, exact", parsed[Length](t, "1 yd"), 9.144e-1, 1e-15},
		{"micron, exact", parsed[Length](t, "1 micron"), 1e-6, 1e-15},
		{"square foot, exact", parsed[Area](t, "1 ft2"), 9.290304e-2, 1e-15},
		{"square inch, exact", parsed[Area](t, "1 in2"), 6.4516e-4, 1e-15},
		{"cubic foot", parsed[Volume](t, "1 ft3"), 2.831685e-2, 2e-7},
		{"gallon (U.S.)", parsed[Volume](t, "1 gal"), 3.785412e-3, 2e-7},
		{"fluid ounce (U.S.)", parsed[Volume](t, "1 fl oz"), 2.957353e-5, 2e-7},
		{"hour, exact", parsed[Time](t, "1 h"), 3600, 1e-15},
		{"day, exact", parsed[Time](t, "1 d"), 86400, 1e-15},
		{"foot per minute, exact", parsed[Speed](t, "1 ft/min"), 5.08e-3, 1e-15},
		{"inch per second, exact", parsed[Speed](t, "1 in/s"), 2.54e-2, 1e-15},
		{"pound-force per square inch", parsed[Pressure](t, "1 psi"), 6.894757e3, 1e-7},
		{"kip per square inch", parsed[Pressure](t, "1 ksi"), 6.894757e6, 1e-7},
		{"bar, exact", parsed[Pressure](t, "1 bar"), 1e5, 1e-15},
		{"atmosphere, standard, exact", parsed[Pressure](t, "1 atm"), 1.01325e5, 1e-15},
		{"millimetre of mercury", parsed[Pressure](t, "1 mmHg"), 1.333224e2, 4e-7},
		{"pound, avoirdupois", parsed[Mass](t, "1 lb"), 4.535924e-1, 1e-7},
		{"ounce, avoirdupois", parsed[Mass](t, "1 oz"), 2.834952e-2, 2e-7},
		{"ounce per square yard", parsed[Grammage](t, "1 oz/yd2"), 3.390575e-2, 2e-7},
		{"pound per square foot", parsed[Grammage](t, "1 lb/ft2"), 4.882428, 2e-7},
		{"pound per cubic foot", parsed[Density](t, "1 lb/ft3"), 1.601846e1, 4e-7},
		{"gram per cubic centimetre, exact", parsed[Density](t, "1 g/cm3"), 1e3, 1e-15},
		{"pound-force per inch", parsed[LineLoad](t, "1 lb/in"), 1.751268e2, 3e-7},
		{"dyne per centimetre, exact", parsed[SurfaceTension](t, "1 dyn/cm"), 1e-3, 1e-15},
		{"Btu(IT) ft/(h ft² °F)", parsed[Conductivity](t, "1 Btu/(h ft °F)"), 1.730735, 2e-7},
		{"Btu(IT)/(h ft² °F)", parsed[Conductance](t, "1 Btu/(h ft² °F)"), 5.678263, 1e-7},
		{"Btu(IT)/(lb °F), exact", parsed[SpecificHeat](t, "1 Btu/(lb °F)"), 4.1868e3, 1e-14},
		{"Btu(IT)/lb, exact", parsed[SpecificEnergy](t, "1 Btu/lb"), 2.326e3, 1e-15},
		{"calorie (thermochemical), exact", parsed[MolarEnergy](t, "1 kcal/mol"), 4184, 1e-15},
		{"poise/100, exact", parsed[Viscosity](t, "1 cP"), 1e-3, 1e-15},
		{"square foot per hour would be 2.58064e-5; m²/h", parsed[Diffusivity](t, "1 m2/h"), 1.0 / 3600, 1e-15},
		{"degree Fahrenheit, temperature, by (t + 459.67)/1.8", parsed[Temperature](t, "212 °F"), 373.15, 1e-15},
		{"degree Fahrenheit, interval, by 1/1.8", parsed[TemperatureDifference](t, "18 °F"), 10, 1e-15},
	}
	for _, test := range tests {
		if !near(test.got, test.want, test.tolerance) {
			t.Errorf("%s: got %.9g, want %.9g", test.what, test.got, test.want)
		}
	}
}

// A temperature and a difference of temperatures share unit names and are not
// the same: definitions of the scales, NIST SP 811 appendix B.
func TestTemperaturesApart(t *testing.T) {
	if got := parsed[Temperature](t, "240 °F") - 273.15; math.Abs(got-115.5556) > 1e-4 {
		t.Errorf("240 °F is %.4f °C, want 115.5556", got)
	}
	for text, want := range map[string]float64{"10 K": 10, "10 °C": 10, "10 C": 10, "10 degC": 10, "18 °F": 10, "18 F": 10, "-18 °F": -10} {
		if got := parsed[TemperatureDifference](t, text); !near(got, want, 1e-14) {
			t.Errorf("difference %s is %g K, want %g", text, got, want)
		}
	}
	for text, want := range map[string]float64{"0 °C": 273.15, "32 °F": 273.15, "-40 °C": 233.15, "-40 F": 233.15, "273.15 K": 273.15, "0 K": 0} {
		if got := parsed[Temperature](t, text); !near(got, want, 1e-14) {
			t.Errorf("temperature %s is %g K, want %g", text, got, want)
		}
	}
}

// Each row lists ways to write one quantity.
func TestSpellings(t *testing.T) {
	same := func(got func(string) float64, want float64, texts ...string) {
		t.Helper()
		for _, text := range texts {
			if v := got(text); !near(v, want, 1e-14) {
				t.Errorf("%q: got %g, want %g", text, v, want)
			}
		}
	}
	length := func(s string) float64 { return parsed[Length](t, s) }
	same(length, 75e-6, "75 µm", "75 μm", "75 um", "75um", "75µm", "75 mic", "75 micron", "75\u00a0µm", "75\u2009µm",
		"75\u202fµm", " 75 µm ", "+75 µm", "75.0 µm", "7.5e1 µm", "0.075 mm", ".075 mm", "75. µm", "7.5 × 10¹ µm", "7.5×10^1 µm")
	same(length, -4e2, "-400 m", "−400 m", "-0.4 km")
	same(length, 76.2e-6, "3 mil", "3 mils", "3 thou")
	same(func(s string) float64 { return parsed[Temperature](t, s) }, 388.15, "115 °C", "115 C", "115°C", "115 degC", "115 deg C", "115 ºC", "115 ℃", "388.15 K", "239 °F", "239 ℉")
	same(func(s string) float64 { return parsed[Grammage](t, s) }, 0.012, "12 g/m2", "12 g/m²", "12 gsm", "12 g/m^2")
	same(func(s string) float64 { return parsed[Diffusivity](t, s) }, 1e-13, "1e-13 m2/s", "1E-13 m²/s", "1 × 10⁻¹³ m²/s", "1e-9 cm2/s", "1 × 10^−13 m²/s")
	same(func(s string) float64 { return parsed[Rate](t, s) }, 5.0/3600, "5 1/h", "5/h", "5 /h", "120 1/d")
	same(func(s string) float64 { return parsed[Conductivity](t, s) }, 0.16, "0.16 W/mK", "0.16 W/(m K)", "0.16 W/(m·K)", "160 mW/mK")
	same(func(s string) float64 { return parsed[Conductance](t, s) }, 500, "500 W/m2K", "500 W/(m² K)", "0.5 kW/m2K")
	same(func(s string) float64 { return parsed[SpecificHeat](t, s) }, 1500, "1500 J/kgK", "1500 J/(kg K)", "1.5 kJ/kgK")
	same(func(s string) float64 { return parsed[Expansion](t, s) }, 17e-6, "17e-6 1/K", "17 ppm/K", "17 × 10⁻⁶ 1/K", "17e-6 /K", "17e-6 1/°C")
	same(func(s string) float64 { return parsed[Permeability](t, s) }, 1e-15, "1e-15 kg/msPa", "1e-15 kg/(m s Pa)")
	same(func(s string) float64 { return parsed[MolarEnergy](t, s) }, 58e3, "58 kJ/mol", "58000 J/mol")
	same(func(s string) float64 { return parsed[MolarMass](t, s) }, 0.162, "162 g/mol", "0.162 kg/mol")
	same(func(s string) float64 { return parsed[LineLoad](t, s) }, 3000, "3 N/mm", "30 N/cm", "3 kN/m", "75 N/25 mm", "45 N/15mm")
	same(func(s string) float64 { return parsed[Viscosity](t, s) }, 0.003, "3 mPas", "3 mPa s", "3 mPa·s", "0.003 Pas")
	same(func(s string) float64 { return parsed[Density](t, s) }, 1e-4, "100 mg/m3", "0.1 g/m³", "0.0001 kg/m3", "0.0001 g/l")
	same(func(s string) float64 { return parsed[Fraction](t, s) }, 0.5, "50 %", "50%", "500 ‰", "500000 ppm")
	same(func(s string) float64 { return parsed[Time](t, s) }, 86400, "24 h", "24 hrs", "1 d", "1 day", "1440 min")
	same(func(s string) float64 { return parsed[Speed](t, s) }, 0.0254, "5 ft/min", "5 fpm", "25.4 mm/s", "1.524 m/min")
	same(func(s string) float64 { return parsed[SurfaceTension](t, s) }, 0.038, "38 mN/m", "38 dyn/cm", "0.038 N/m")
}

func message[Q Quantity](text string) string {
	_, err := Parse[Q](text)
	if err == nil {
		return ""
	}
	return err.Error()
}

func TestErrors(t *testing.T) {
	tests := []struct{ got, want string }{
		{message[Length]("75"), `"75" has no unit: a length wants one, such as 75 µm`},
		{message[Area]("2"), `"2" has no unit: an area wants one, such as 2 m²`},
		{message[Fraction]("0.5"), `"0.5" has no unit: a fraction wants one, such as 50 %`},
		{message[Length]("75 kg"), `"75 kg" is not a length: kg is a mass; write it like 75 µm`},
		{message[Time]("10 °C"), `"10 °C" is not a time: °C is a temperature; write it like 24 h`},
		{message[LineLoad]("20 lb"), `"20 lb" is not a line load: lb is a mass; write it like 3 N/mm`},
		{message[Length]("75 furlongs"), `"75 furlongs" has an unknown unit, furlongs: a length is written like 75 µm`},
		{message[Pressure]("3 mpa"), `"3 mpa" has an unknown unit, mpa (did you mean MPa?): a pressure is written like 300 kPa`},
		{message[Length](""), `"" is empty: a length is wanted, such as 75 µm`},
		{message[Length](" "), `" " is empty: a length is wanted, such as 75 µm`},
		{message[Length]("thick"), `"thick" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("1,5 mm"), `"1,5 mm" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("1.5.2 mm"), `"1.5.2 mm" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("NaN mm"), `"NaN mm" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("Inf mm"), `"Inf mm" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("-inf mm"), `"-inf mm" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("0x10 mm"), `"0x10 mm" has an unknown unit, x10 mm: a length is written like 75 µm`},
		{message[Length]("1_000 mm"), `"1_000 mm" has an unknown unit, _000 mm: a length is written like 75 µm`},
		{message[Length]("--5 mm"), `"--5 mm" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("1e400 mm"), `"1e400 mm" is too large or too small a number for a length`},
		{message[Length]("1e307 km"), `"1e307 km" is too large or too small a number for a length`},
		{message[Length]("1e-400 mm"), `"1e-400 mm" is too large or too small a number for a length`},
		{message[Length]("1e-323 nm"), `"1e-323 nm" is too large or too small a number for a length`},
		{message[Temperature]("-300 °C"), `"-300 °C" is below absolute zero`},
		{message[Temperature]("-1 K"), `"-1 K" is below absolute zero`},
		{message[Length](strings.Repeat("9", 81)), `a text of 81 bytes is too long for a length; write it like 75 µm`},
		{message[Length]("7\xff µm"), `"7\xff µm" is not a number with a unit: a length is written like 75 µm`},
		{message[Length]("1 1/2 in"), `"1 1/2 in" has an unknown unit, 1/2 in: a length is written like 75 µm`},
		{message[Length]("3 × 11 mm"), `"3 × 11 mm" has an unknown unit, × 11 mm: a length is written like 75 µm`},
		{message[Length]("7 \x1b[31mm"), `"7 \x1b[31mm" has an unknown unit, "\x1b[31mm": a length is written like 75 µm`},
		{message[Rate]("5"), `"5" has no unit: a rate wants one, such as 5 1/h`},
		{message[Expansion]("17e-6"), `"17e-6" has no unit: an expansion coefficient wants one, such as 17e-6 1/K`},
	}
	for _, test := range tests {
		if test.got != test.want {
			t.Errorf("got  %s\nwant %s", test.got, test.want)
		}
	}
}
