package paper

import (
	"testing"

	"laydown/gen/quantity"
)

// The inverse in closed form, and the plain halving beside it.
func BenchmarkActivity(b *testing.B) {
	hot := quantity.FromCelsius(95)
	var pulp Isotherm = Pulp
	for _, x := range []struct {
		name string
		run  func() (quantity.Fraction, error)
	}{
		{"pulp", func() (quantity.Fraction, error) { return Activity(pulp, 0.09, hot) }},
		{"pulp-halved", func() (quantity.Fraction, error) { return bracketed(pulp, 0.09, hot) }},
		{"wood", func() (quantity.Fraction, error) { return Activity(Wood{}, 0.09, hot) }},
	} {
		b.Run(x.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := x.run(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// The temperature of a limit: plain paper, and a coated sheet whose every activity is halved.
func BenchmarkReaches(b *testing.B) {
	for _, x := range []struct {
		name  string
		sheet Sheet
	}{{"plain", Sheet{FibreShare: 0.78}}, {"coated", coated()}} {
		tr := conditioned(b, x.sheet, 0.5)
		b.Run(x.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := tr.Reaches(OpenLimit, quantity.FromCelsius(140)); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
