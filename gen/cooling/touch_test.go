package cooling

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

func TestContactTemperature(t *testing.T) {
	for _, x := range []struct{ e1, t1, e2, t2, want, within float64 }{
		{500, 350, 500, 300, 325, 1e-12}, // equal bodies: the mean
		{1e9, 350, 500, 300, 350, 1e-4},  // a body without end: its own
		{500, 310, 90, 310, 310, 0},      // equal temperatures
		// Steel and paper with properties from Incropera, Appendix A (from memory), by hand.
		{7640.85, 393.15, 473.62, 296.15, 387.488, 1e-3},
	} {
		got, err := ContactTemperature(x.e1, quantity.Temperature(x.t1), x.e2, quantity.Temperature(x.t2))
		if err != nil || math.Abs(float64(got)-x.want) > x.within {
			t.Errorf("%v: %.6f K (%v)", x, float64(got), err)
		}
		back, _ := ContactTemperature(x.e2, quantity.Temperature(x.t2), x.e1, quantity.Temperature(x.t1))
		if math.Abs(float64(back-got)) > 1e-9 {
			t.Errorf("%v: %.9f K from one side, %.9f from the other", x, float64(got), float64(back))
		}
	}
	if _, err := ContactTemperature(0, 300, 1, 300); err == nil {
		t.Error("no effusivity: no error")
	}
}

// Where the solver lets two thick bodies touch, it finds the same, at any time.
func TestContactIsConstant(t *testing.T) {
	for _, time := range []float64{0.01, 1, 100} {
		given := map[string]float64{"conductivity 1": 0.37, "density 1": 1100, "heat 1": 3400, "start 1": 33,
			"conductivity 2": 0.15, "density 2": 1390, "heat 2": 1170, "start 2": 60, "time": time}
		got, err := Verify("temperature in two bodies that touch", given)
		want, err2 := Verify("contact temperature", given)
		if err != nil || err2 != nil || math.Abs(got-want) > 0.01 {
			t.Errorf("after %g s: %.4f °C (%v), by effusivities %.4f (%v)", time, got, err, want, err2)
		}
	}
}

func TestBurnThreshold(t *testing.T) {
	for _, x := range []struct {
		of   Touched
		time quantity.Time
		want float64
	}{
		{BareMetal, 0.5, 65}, {BareMetal, 1, 65}, {BareMetal, 60, 51}, {Plastic, 1, 65}, {Plastic, 10, 60}, {Plastic, 60, 60},
		{Plastic, CarryContact, 48}, {Plastic, 28800, 43},
		{Plastic, 189.73665961, 54}, // half way from 60 s to 600 s on a log axis
	} {
		got, err := BurnThreshold(x.of, x.time)
		if err != nil || math.Abs(float64(got-celsius(x.want))) > 1e-6 {
			t.Errorf("%v, %g s: %.3f °C (%v), want %g", x.of, float64(x.time), float64(got)-273.15, err, x.want)
		}
	}
	// Longer is never hotter; metal never hotter than plastic.
	before := map[Touched]quantity.Temperature{BareMetal: 1000, Plastic: 1000}
	for time := quantity.Time(0.5); time < 28800; time *= 1.3 {
		metal, err1 := BurnThreshold(BareMetal, time)
		plastic, err2 := BurnThreshold(Plastic, time)
		if err1 != nil || err2 != nil || metal > before[BareMetal] || plastic > before[Plastic] || metal > plastic {
			t.Errorf("%g s: metal %g K, plastic %g K", float64(time), float64(metal), float64(plastic))
		}
		before[BareMetal], before[Plastic] = metal, plastic
	}
	for _, time := range []quantity.Time{0, -1, 1e6} {
		if _, err := BurnThreshold(Plastic, time); err == nil {
			t.Errorf("%g s: no error", float64(time))
		}
	}
	if _, err := BurnThreshold(7, 60); err == nil {
		t.Error("material 7: no error")
	}
}

// At one minute and over, skin against plastic at its threshold is below skin against
// bare metal at its own: plastic gives its heat up slower, and the thresholds know it.
func TestThresholdsAgreeWithEffusivities(t *testing.T) {
	metal, _ := BurnThreshold(BareMetal, 60)
	plastic, _ := BurnThreshold(Plastic, 60)
	onMetal, _ := ContactTemperature(13700, metal, SkinEffusivity, SkinTemperature)
	onPlastic, _ := ContactTemperature(500, plastic, SkinEffusivity, SkinTemperature)
	if !(onMetal > onPlastic && onMetal < metal && onPlastic > SkinTemperature && onPlastic < celsius(44)) {
		t.Errorf("skin at %.1f °C on metal, %.1f °C on plastic", float64(onMetal)-273.15, float64(onPlastic)-273.15)
	}
	t.Logf("skin at %.1f °C on metal of %.0f °C, %.1f °C on plastic of %.0f °C", float64(onMetal)-273.15, float64(metal)-273.15, float64(onPlastic)-273.15, float64(plastic)-273.15)
}
