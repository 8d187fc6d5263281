package bond

import (
	"testing"

	"laydown/gen/quantity"
)

// The bands below are from memory, of low confidence: melts of ethylene and vinyl
// acetate 200 to 800 Pa·s at 190 °C with 45 to 60 kJ/mol; acrylic pressure-sensitive
// adhesives 1e5 to 1e7 Pa·s at 23 °C, glass transition near -35 °C; 0.03 N/m.

func melt() Melt {
	return Melt{Reference: 400, At: quantity.FromCelsius(190), Energy: 52e3,
		Melting: quantity.FromCelsius(83), Setting: quantity.FromCelsius(54)}
}

func sticky() FreeVolume {
	return FreeVolume{Reference: 1e6, At: quantity.FromCelsius(23), Glass: quantity.FromCelsius(-35)}
}

func hot() Adhesive {
	return Adhesive{Law: melt(), Surface: 0.03, Wetting: 1, Thickness: 50e-6}
}

func cold() Adhesive {
	return Adhesive{Law: sticky(), Surface: 0.03, Wetting: 1, Thickness: 25e-6}
}

// even is a nip of one temperature and one pressure.
func even(t quantity.Temperature, p quantity.Pressure, dwell quantity.Time) []Sample {
	return []Sample{{0, t, p}, {dwell, t, p}}
}

// coldCase is a cold film on the relief of a print, 10 mm of nip at 1 m/min.
func coldCase(depth, width quantity.Length) Case {
	room := quantity.FromCelsius(23)
	return Case{Adhesive: cold(), Relief: Relief{Depth: depth, Width: width}, Pass: even(room, 0.2e6, 0.6), Rest: room}
}

// hotCase is a hot film: it warms, is pressed, and cools until it has set.
func hotCase(depth, width quantity.Length) Case {
	c := quantity.FromCelsius
	return Case{
		Adhesive: hot(), Relief: Relief{Depth: depth, Width: width},
		Pass: []Sample{{0, c(60), 0}, {2, c(95), 0}, {2, c(95), 0.25e6}, {2.5, c(98), 0.25e6}, {2.5, c(98), 0}, {8, c(30), 0}},
		Rest: c(23),
	}
}

func mustWetOut(t testing.TB, c Case) Result {
	t.Helper()
	r, err := c.WetOut()
	if err != nil {
		t.Fatal(err)
	}
	return r
}
