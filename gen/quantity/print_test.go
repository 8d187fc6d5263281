package quantity

import (
	"math"
	"strings"
	"testing"
)

// The wanted texts follow from the published factors of TestPublishedFactors
// and from the rule of three significant figures; a plain space stands here for
// the no-break space of the real text.
func TestPrint(t *testing.T) {
	tests := []struct{ got, want string }{
		{Both(75 * Micrometre), "75 µm (3 mil)"},
		{Both(3 * Mil), "76.2 µm (3 mil)"},
		{Both(25 * Micrometre), "25 µm (1 mil)"},
		{Both(12 * Micrometre), "12 µm (0.5 mil)"},
		{Both(1.5 * Micrometre), "1.5 µm (0.059 mil)"},
		{Both(250 * Micrometre), "250 µm (9.8 mil)"},
		{Both(500 * Micrometre), "500 µm (20 mil)"},
		{Both(999.9 * Micrometre), "0.9999 mm (0.0394 in)"},
		{Both(999.9999 * Micrometre), "1 mm (0.0394 in)"},
		{Both(3 * Millimetre), "3 mm (0.118 in)"},
		{Both(1370 * Millimetre), "1.37 m (53.9 in)"},
		{Both(1525 * Millimetre), "1.525 m (60 in)"},
		{Both(50 * Metre), "50 m (164 ft)"},
		{Both(Length(0)), "0 µm (0 mil)"},
		{Both(-400 * Metre), "−400 m (−1312 ft)"},
		{Both(FromCelsius(40)), "40 °C (104 °F)"},
		{Both(FromFahrenheit(240)), "115.5 °C (240 °F)"},
		{Both(FromCelsius(-0.2)), "0 °C (32 °F)"},
		{Both(FromFahrenheit(0.3)), "−17.5 °C (0 °F)"},
		{Both(FromFahrenheit(-0.3)), "−18 °C (0 °F)"},
		{Both(TemperatureDifference(10)), "10 K (18 °F)"},
		{Both(TemperatureDifference(0.25)), "0.25 K (0.45 °F)"},
		{Both(24 * Hour), "24 h"},
		{Both(90 * Minute), "1.5 h"},
		{Both(30 * Minute), "30 min"},
		{Both(59.99 * Second), "1 min"},
		{Both(45 * Second), "45 s"},
		{Both(72 * Hour), "72 h"},
		{Both(336 * Hour), "14 days"},
		{Both(Time(0)), "0 h"},
		{Both(5 * FootPerMinute), "1.52 m/min (5 ft/min)"},
		{Both(2 * MetrePerMinute), "2 m/min (6.56 ft/min)"},
		{Both(Speed(0.003)), "3 mm/s (0.591 ft/min)"},
		{BothIn(Speed(0.5), "m/s", "ft/min"), "0.5 m/s (98.4 ft/min)"},
		{Both(300 * Kilopascal), "300 kPa (43.5 psi)"},
		{Both(4.5 * Gigapascal), "4.5 GPa (653 ksi)"},
		{Both(50 * Pascal), "50 Pa"},
		{Both(20 * NewtonPerMillimetre), "20 N/mm (114 lb/in)"},
		{Both(12 * GramPerSquareMetre), "12 g/m² (0.354 oz/yd²)"},
		{Both(0.3 * GramPerSquareMetre), "0.3 g/m²"},
		{Both(Density(1380)), "1380 kg/m³ (86.2 lb/ft³)"},
		{Both(Density(0.0226)), "22.6 g/m³"},
		{Both(Density(5e-6)), "5 mg/m³"},
		{Both(Volume(60)), "60 m³ (2120 ft³)"},
		{Both(50 * Percent), "50 %"},
		{Both(33.333 * Percent), "33.3 %"},
		{Both(Fraction(1e6)), "1 × 10⁸ %"},
		{Both(Diffusivity(1.2e-13)), "1.2 × 10⁻¹³ m²/s"},
		{Both(Diffusivity(1.2345e-5)), "1.23 × 10⁻⁵ m²/s"},
		{Both(Diffusivity(0)), "0 m²/s"},
		{Both(Permeability(1e-15)), "1 × 10⁻¹⁵ kg/(m s Pa)"},
		{Both(Expansion(17e-6)), "17 × 10⁻⁶ 1/K"},
		{Both(Conductivity(0.16)), "0.16 W/(m K)"},
		{Both(Conductance(2500)), "2500 W/(m² K)"},
		{Both(SpecificHeat(1340)), "1340 J/(kg K)"},
		{Both(162.2 * GramPerMole), "162.2 g/mol"},
		{Both(58 * KilojoulePerMole), "58 kJ/mol"},
		{Both(Viscosity(0.003)), "3 mPa s"},
		{Both(5 * PerHour), "5 1/h"},
		{Both(38 * MillinewtonPerMetre), "38 mN/m"},
		{Both(Length(math.NaN())), "not a finite length"},
		{In(24*Day, "h"), "576 h"},
		{Imperial(Time(1)), ""},
	}
	for _, test := range tests {
		want := strings.ReplaceAll(test.want, " ", gap)
		// Both puts a plain space before the bracket; the error text has plain ones.
		want = strings.ReplaceAll(want, gap+"(", " (")
		if test.got != want && test.got != test.want {
			t.Errorf("got  %s\nwant %s", test.got, want)
		}
	}
}

func TestNoBreakBeforeUnit(t *testing.T) {
	if got, want := Metric(Conductivity(0.16)), "0.16\u00a0W/(m\u00a0K)"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if got, want := Both(75*Micrometre), "75\u00a0µm (3\u00a0mil)"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
