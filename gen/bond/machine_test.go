package bond

import (
	"math"
	"strings"
	"testing"

	"laydown/gen/quantity"
)

// Arithmetic by hand: a 10 mm nip at 1, 3 and 30 m/min.
func TestDwell(t *testing.T) {
	for _, x := range []struct{ perMinute, want float64 }{{1, 0.6}, {3, 0.2}, {30, 0.02}} {
		if got, err := Dwell(10e-3, quantity.Speed(x.perMinute/60)); err != nil || !(math.Abs(float64(got)-x.want) <= 1e-12) {
			t.Errorf("%g m/min: %g s (%v)", x.perMinute, float64(got), err)
		}
	}
	if _, err := Dwell(10e-3, 0); err == nil {
		t.Error("standing still: no error")
	}
}

// Nips of a rigid and a covered roller of 100 mm each, worked out from Johnson's formula
// with moduli of rubber after Gent (from memory): 1, 3 and 10 N/mm.
func TestHertzNip(t *testing.T) {
	for _, x := range []struct{ load, modulus, want float64 }{
		{1000, 1.7e6, 7.5e-3}, {3000, 1.7e6, 13e-3}, {10000, 1.7e6, 23.7e-3},
		{1000, 3.6e6, 5.1e-3}, {3000, 3.6e6, 8.9e-3}, {10000, 3.6e6, 16.3e-3},
	} {
		got, err := HertzNip(quantity.LineLoad(x.load), 0.1, 0.1, quantity.Pressure(x.modulus))
		if err != nil || !(math.Abs(float64(got)/x.want-1) <= 0.01) {
			t.Errorf("%g N/m on %g Pa: %g m (%v), want %g", x.load, x.modulus, float64(got), err, x.want)
		}
	}
	// Peak pressure by the other formula, √(w·E*/(π·R)), is 4/π of the mean.
	w, e, r := 3000.0, 1.7e6/0.75, 0.025
	nip, _ := HertzNip(3000, 0.1, 0.1, 1.7e6)
	mean, err := MeanPressure(3000, nip)
	if err != nil || !(math.Abs(math.Sqrt(w*e/(math.Pi*r))/float64(mean)-float64(Hertz.Peak())) <= 1e-9) {
		t.Errorf("mean %g Pa (%v)", float64(mean), err)
	}
	// A flat counterpart makes the nip longer by √2.
	flat, err := HertzNip(3000, 0.1, 0, 1.7e6)
	if err != nil || !(math.Abs(float64(flat/nip)-math.Sqrt2) <= 1e-12) {
		t.Errorf("on a flat: %g times (%v)", float64(flat/nip), err)
	}
	if _, err := HertzNip(0, 0.1, 0.1, 1e6); err == nil {
		t.Error("no load: no error")
	}
}

// The integral of each profile is its mean.
func TestProfilesHaveTheirMean(t *testing.T) {
	for _, p := range []Profile{Even, Hertz, Parabola} {
		sum := 0.0
		const n = 100000
		for i := range n {
			sum += p.at(2*(float64(i)+0.5)/n-1) / n
		}
		if !(math.Abs(sum-1) <= 1e-6) || !(math.Abs(p.at(0)-float64(p.Peak())) <= 1e-12) {
			t.Errorf("profile %d: mean %g, peak %g", p, sum, p.at(0))
		}
	}
}

// Two cylinders of 50 mm at 3 bar on a nip of 1.6 m: 3e5·2·1.963495e-3/1.6 = 736.3 N/m.
func TestLoading(t *testing.T) {
	l := Loading{Bore: 50e-3, Cylinders: 2, Width: 1.6}
	load, err := l.LineLoad(3e5)
	if err != nil || !(math.Abs(float64(load)-736.31) <= 0.01) {
		t.Errorf("%g N/m (%v)", float64(load), err)
	}
	l.Lever, l.Weight = 2, 150
	for _, gauge := range []quantity.Pressure{0, 1e5, 4e5} {
		load, err := l.LineLoad(gauge)
		if err != nil {
			t.Fatal(err)
		}
		if back, err := l.Gauge(load); err != nil || !(math.Abs(float64(back-gauge)) <= 1e-6) {
			t.Errorf("%g Pa came back as %g (%v)", float64(gauge), float64(back), err)
		}
	}
	if g, err := l.Gauge(100); err != nil || g != 0 {
		t.Errorf("less than the roller's weight: %g Pa (%v)", float64(g), err)
	}
	for name, bad := range map[string]Loading{"no bore": {Cylinders: 1, Width: 1}, "no cylinders": {Bore: 1, Width: 1}, "no width": {Bore: 1, Cylinders: 1}} {
		if _, err := bad.LineLoad(1e5); err == nil {
			t.Errorf("%s: no error", name)
		}
		if _, err := bad.StartPressure(1e5, 1e-2, Even); err == nil {
			t.Errorf("%s: no error from a start setting", name)
		}
	}
	if _, err := l.LineLoad(-1); err == nil {
		t.Error("a vacuum: no error")
	}
}

func TestStartPressure(t *testing.T) {
	l := Loading{Bore: 50e-3, Cylinders: 2, Width: 1.6, Weight: 200}
	s, err := l.StartPressure(0.2e6, 10e-3, Parabola)
	if err != nil {
		t.Fatal(err)
	}
	if s.Load != 2000 || !(math.Abs(float64(s.Gauge)-1800*1.6/3.926991e-3) <= 1) || s.Mean != 0.2e6 || !(math.Abs(float64(s.Peak)-0.3e6) <= 1e-6) {
		t.Errorf("%+v", s)
	}
	if len(s.Cautions) == 0 || !strings.Contains(strings.Join(s.Cautions, " "), "maker’s manual") {
		t.Error("a start setting without its cautions")
	}
	// The roller's weight alone may be more than was wanted: then that is said.
	light, err := l.StartPressure(0.01e6, 10e-3, Even)
	if err != nil || light.Gauge != 0 || light.Load != 200 || light.Mean != 0.02e6 {
		t.Errorf("%+v (%v)", light, err)
	}
	if _, err := l.StartPressure(0, 10e-3, Even); err == nil {
		t.Error("no pressure: no error")
	}
}

// 0.75 lb/in for each mil of polyester (common practice) is 5.2 MPa; on 25 µm and 1 m
// 129 N/m, and 12.9 N·m on a roll of 200 mm.
func TestStartTension(t *testing.T) {
	const poundPerInch, mil = 4.4482216152605 / 0.0254, 25.4e-6
	stress := quantity.Pressure(0.75 * poundPerInch / mil)
	if !(math.Abs(float64(stress)-5.171e6) <= 1e3) {
		t.Errorf("stress %g Pa", float64(stress))
	}
	s, err := StartTension(stress, 25e-6, 1, 0.2, 0.08)
	if err != nil || !(math.Abs(float64(s.Tension)-129.3) <= 0.1) || !(math.Abs(float64(s.Full)-12.93) <= 0.01) || !(math.Abs(float64(s.Full/s.Core)-2.5) <= 1e-12) {
		t.Errorf("%+v (%v)", s, err)
	}
	if back := BrakeTension(s.Core, 1, 0.08); !(math.Abs(float64(back/s.Tension)-1) <= 1e-12) {
		t.Errorf("tension came back as %g", float64(back))
	}
	if len(s.Cautions) == 0 {
		t.Error("a start setting without its cautions")
	}
	if _, err := StartTension(stress, 25e-6, 1, 0.05, 0.08); err == nil {
		t.Error("a roll smaller than its core: no error")
	}
}
