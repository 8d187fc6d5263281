package air

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

var (
	room23         = quantity.FromCelsius(23)
	vapourInAir    = quantity.Diffusivity(6e-6) // of a slow solvent; invented, of the right size
	printHeight    = 1 * quantity.Metre
	draughtlessFan = quantity.Speed(0)
)

// A worked value by hand for 0.5 m/s along 1 m at 23 °C, from the correlation's
// own terms with the air of the U.S. Standard Atmosphere: ν 1.534e-5 m²/s,
// Re 3.26e4, Sc 2.557, Sh 0.664·180.5·1.3674 = 163.9, h = 9.84e-4 m/s.
func TestPlateTransferByHand(t *testing.T) {
	h := must[quantity.Speed](t)(PlateTransfer(0.5, printHeight, vapourInAir, room23, Atmosphere))
	if !near(float64(h), 9.84e-4, 2e-3) {
		t.Errorf("h = %.4g m/s, want 9.84e-4", float64(h))
	}
}

// More wind never takes less vapour, through the change to turbulence too; a
// longer print takes less from each part while the flow stays laminar.
func TestFaceTransferMonotone(t *testing.T) {
	before := quantity.Speed(0)
	for u := 0.0; u < 60; u = u*1.03 + 0.002 {
		h := must[quantity.Speed](t)(FaceTransfer(quantity.Speed(u), printHeight, vapourInAir, room23, Atmosphere))
		if h < before {
			t.Errorf("%.4g m/s: h falls from %.6g to %.6g", u, float64(before), float64(h))
		}
		before = h
	}
	before = 1
	for l := 0.05; l < 5; l *= 1.2 {
		h := must[quantity.Speed](t)(FaceTransfer(0.5, quantity.Length(l), vapourInAir, room23, Atmosphere))
		if h > before {
			t.Errorf("%.3g m: h rises", l)
		}
		before = h
	}
}

// In still air the floor holds, and it equals StillTransfer at the stated 1 K; a
// strong wind is PlateTransfer alone.
func TestFaceTransferIsTheGreater(t *testing.T) {
	still := must[quantity.Speed](t)(StillTransfer(printHeight, vapourInAir, 1, room23, Atmosphere))
	for _, u := range []quantity.Speed{draughtlessFan, 0.001, 0.01} {
		if h := must[quantity.Speed](t)(FaceTransfer(u, printHeight, vapourInAir, room23, Atmosphere)); h != still {
			t.Errorf("%g m/s: h = %g m/s, want the floor %g", float64(u), float64(h), float64(still))
		}
	}
	windy := must[quantity.Speed](t)(PlateTransfer(3, printHeight, vapourInAir, room23, Atmosphere))
	if h := must[quantity.Speed](t)(FaceTransfer(3, printHeight, vapourInAir, room23, Atmosphere)); h != windy {
		t.Errorf("3 m/s: h = %g m/s, want %g", float64(h), float64(windy))
	}
}

// The sign of the difference does not matter, and a large plate's transfer in
// still air goes with its third root (Churchill and Chu's limit, Ra^⅓).
func TestStillTransfer(t *testing.T) {
	up := must[quantity.Speed](t)(StillTransfer(2, vapourInAir, 4, room23, Atmosphere))
	down := must[quantity.Speed](t)(StillTransfer(2, vapourInAir, -4, room23, Atmosphere))
	if up != down {
		t.Errorf("%g up, %g down", float64(up), float64(down))
	}
	eight := must[quantity.Speed](t)(StillTransfer(2, vapourInAir, 32, room23, Atmosphere))
	if r := float64(eight / up); r < 1.75 || r > 2 {
		t.Errorf("eight times the difference gives %.3f times the transfer, want nearly 2", r)
	}
	none := must[quantity.Speed](t)(StillTransfer(2, vapourInAir, 0, room23, Atmosphere))
	if none <= 0 || none >= up {
		t.Errorf("no difference: %g m/s", float64(none))
	}
}

// The two correlations meet where they hand over; the step is below 0.1 %.
func TestPlateHandsOver(t *testing.T) {
	laminar := must[float64](t)(LaminarPlate(5e5, 1))
	mixed := must[float64](t)(MixedPlate(5e5, 1))
	if !near(laminar, mixed, 1e-3) {
		t.Errorf("laminar %g, mixed %g", laminar, mixed)
	}
	for re := 1e3; re < 9e7; re *= 1.1 {
		if a, b := must[float64](t)(Plate(re, 2)), must[float64](t)(Plate(re*1.1, 2)); b < a {
			t.Errorf("Re %.4g: Plate falls", re)
		}
	}
}

// A starting length of nothing changes nothing, and any other raises the mean
// over the rest that the coefficient of the whole plate stands for.
func TestUnheatedStart(t *testing.T) {
	for _, turbulent := range []bool{false, true} {
		if f := must[float64](t)(UnheatedStart(0, turbulent)); f != 1 {
			t.Errorf("no starting length: %g", f)
		}
		// Integrating the local coefficients, h ~ x^-n (1-(ξ/x)^b)^-1/c, over the
		// rest gives the mean: Incropera 6e, section 7.2.4.
		n, b, c := 0.5, 0.75, 3.0
		if turbulent {
			n, b, c = 0.2, 0.9, 9
		}
		for _, share := range []float64{0.1, 0.4, 0.8} {
			// x = ξ + (L−ξ)·s^c takes the singularity at ξ away.
			sum, steps := 0.0, 50000
			for i := range steps {
				s := (float64(i) + 0.5) / float64(steps)
				x := share + (1-share)*math.Pow(s, c)
				dx := (1 - share) * c * math.Pow(s, c-1) / float64(steps)
				sum += math.Pow(x, -n) * math.Pow(1-math.Pow(share/x, b), -1/c) * dx
			}
			want := sum * (1 - n) / (1 - share) // over the mean of x^-n from 0 to 1
			if f := must[float64](t)(UnheatedStart(share, turbulent)); !near(f, want, 1e-4) {
				t.Errorf("share %g, turbulent %v: %.6f, by integration %.6f", share, turbulent, f, want)
			}
		}
	}
}

// Second method for diffusivity: the exponent 1.75 of Fuller and others against
// Marrero and Mason's 2.072 for water vapour, from 25 °C to 10 and 50 °C.
func TestDiffusivityExponents(t *testing.T) {
	d25 := must[quantity.Diffusivity](t)(WaterDiffusivity(298.15, Atmosphere))
	for _, c := range []float64{10, 25, 50} {
		at := quantity.FromCelsius(c)
		water := must[quantity.Diffusivity](t)(WaterDiffusivity(at, 90e3))
		if d := DiffusivityAt(d25, at, 90e3); !near(float64(d), float64(water), 0.03) {
			t.Errorf("%g °C: %g and %g m²/s", c, float64(d), float64(water))
		}
	}
	if d := DiffusivityAt(d25, 298.15, Atmosphere); d != d25 {
		t.Errorf("at its own conditions %g, not %g", float64(d), float64(d25))
	}
}

// Air's thermal diffusivity over its kinematic viscosity: Prandtl 0.71 at room
// temperature (every table of air; from memory).
func TestPrandtl(t *testing.T) {
	pr := float64(KinematicViscosity(room23, Atmosphere) / ThermalDiffusivity(room23, Atmosphere))
	if math.Abs(pr-0.71) > 0.01 {
		t.Errorf("Prandtl number %.4f, want 0.71", pr)
	}
}

// A dish that loses what a coefficient says gives the coefficient back.
func TestLossTransferInverse(t *testing.T) {
	h, drive, area, time := 0.003, 0.0105, 0.02, 3600.0
	got := must[quantity.Speed](t)(LossTransfer(quantity.Mass(h*drive*area*time), quantity.Time(time), quantity.Area(area), quantity.Density(drive)))
	if !near(float64(got), h, 1e-14) {
		t.Errorf("%g, want %g", float64(got), h)
	}
}
