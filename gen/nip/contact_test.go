package nip

import (
	"math"
	"math/rand/v2"
	"testing"

	"laydown/gen/quantity"
)

// meeting is two bodies so thick that their far faces feel nothing, pressed
// together for a time.
func meeting(upper, lower Layer, seconds float64) *Pass {
	deep := func(l Layer) Layer {
		l.Thickness = quantity.Length(12 * math.Sqrt(float64(l.Diffusivity())*seconds))
		return l
	}
	return &Pass{Film: []Layer{deep(upper)}, Print: []Layer{deep(lower)}, Bond: 1e10, Speed: 1, Nip: quantity.Length(seconds)}
}

// Two half spaces that touch take, where they touch, the temperature
// (e₁T₁ + e₂T₂)/(e₁ + e₂) at once and for good, and erf profiles on both sides.
func TestContactTemperature(t *testing.T) {
	s, out := NewSolver(), new(Response)
	s.splitCells, s.splitSteps = 4, 8
	r := rand.New(rand.NewPCG(3, 4))
	some := func() Layer {
		return layer("some", 1, math.Pow(10, 3*r.Float64()-1.5), 500+3000*r.Float64(), 400+2000*r.Float64())
	}
	steelOnPaper := [2]Layer{layer("steel", 1, 15.1, 8055, 480), layer("paper", 1, 0.18, 930, 1340)}
	pairs := [][2]Layer{steelOnPaper, {uncoated(1), uncoated(1)}, {steel(1), silicone(1)}}
	for range 12 {
		pairs = append(pairs, [2]Layer{some(), some()})
	}
	for _, x := range pairs {
		const seconds = 0.05
		p := meeting(x[0], x[1], seconds)
		if err := s.Run(p, out); err != nil {
			t.Fatal(err)
		}
		temps := Temps{Room: 300, Film: 393.15, Print: 296.15}
		e1, e2 := x[0].Effusivity(), x[1].Effusivity()
		want := (e1*393.15 + e2*296.15) / (e1 + e2)
		c := &out.First
		for i := c.Touch + 4; i <= c.NipEnd; i++ {
			if got := c.Records[i][BondLine].at(&temps); !(math.Abs(got-want) <= 0.05) {
				t.Errorf("effusivities %.0f and %.0f, after %.4f s: %.3f K, want %.3f", e1, e2, c.Times[i], got, want)
			}
		}
		above := float64(p.Film[0].Thickness)
		for i, cell := range out.Cells {
			start, depth, a := 393.15, above-float64(cell.At), float64(x[0].Diffusivity())
			if cell.Part == PrintPart {
				start, depth, a = 296.15, float64(cell.At), float64(x[1].Diffusivity())
			}
			exact := want + (start-want)*math.Erf(depth/(2*math.Sqrt(a*seconds)))
			if got := c.Profile[i].at(&temps); !(math.Abs(got-exact) <= 0.1) {
				t.Errorf("effusivities %.0f and %.0f, %.0f µm from the contact: %.3f K, want %.3f", e1, e2, depth*1e6, got, exact)
			}
		}
	}
	// e₁ = e₂ gives the mean; e₁ ≫ e₂ gives T₁.
	for _, x := range []struct{ k, want, within float64 }{{0.12, 0.5, 1e-3}, {1.2e9, 1, 1e-3}} {
		if err := s.Run(meeting(layer("", 1, x.k, 800, 1500), uncoated(1), 0.05), out); err != nil {
			t.Fatal(err)
		}
		got := out.First.Records[out.First.NipEnd][BondLine][Film]
		if !(math.Abs(got-x.want) <= x.within) {
			t.Errorf("conductivity %g: share %.5f of the film's temperature, want %g", x.k, got, x.want)
		}
	}
}

// Steel at 120 °C on paper at 23 °C, by the closed form: 114.338 °C at the contact,
// and in the paper 84.871 °C 50 µm deep after 0.05 s, 60.026 °C at 100 µm, 95.382 °C
// at 100 µm after 0.5 s. The figures are evaluated from the formula; no
// published worked example of it was found.
func TestSteelOnPaper(t *testing.T) {
	s, out := NewSolver(), new(Response)
	s.splitCells, s.splitSteps = 8, 8
	temps := Temps{Room: 296.15, Film: 393.15, Print: 296.15}
	paper := layer("paper", 1, 0.18, 930, 1340)
	for _, x := range []struct{ depth, seconds, want float64 }{{50e-6, 0.05, 84.871}, {100e-6, 0.05, 60.026}, {100e-6, 0.5, 95.382}} {
		p := meeting(layer("steel", 1, 15.1, 8055, 480), paper, x.seconds)
		if err := s.Run(p, out); err != nil {
			t.Fatal(err)
		}
		if got := between(out, &temps, x.depth) - 273.15; !(math.Abs(got-x.want) <= 0.05) {
			t.Errorf("%.0f µm deep after %g s: %.3f °C, want %.3f", x.depth*1e6, x.seconds, got, x.want)
		}
		if got := out.First.Records[out.First.NipEnd][BondLine].at(&temps) - 273.15; !(math.Abs(got-114.338) <= 0.02) {
			t.Errorf("contact after %g s: %.3f °C, want 114.338", x.seconds, got)
		}
	}
}

// between is the temperature at a depth in the print at the nip's end, on a straight
// line between the two cells about it.
func between(out *Response, t *Temps, depth float64) float64 {
	for i, cell := range out.Cells {
		if cell.Part == PrintPart && float64(cell.At) >= depth {
			a, b := float64(out.Cells[i-1].At), float64(cell.At)
			w := (depth - a) / (b - a)
			return (1-w)*out.First.Profile[i-1].at(t) + w*out.First.Profile[i].at(t)
		}
	}
	return math.NaN()
}
