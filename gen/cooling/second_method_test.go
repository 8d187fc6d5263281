package cooling

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// TestAgainstExplicit marches a laminate with a fine explicit scheme of even cells,
// written here from the equations alone.
func TestAgainstExplicit(t *testing.T) {
	layers := laminate()
	layers[2].Thickness = 5e-6 // so that cells of 5/3 µm fit all layers
	layers[2].Start = Even(celsius(72))
	stages := []Stage{inAir(0.1, 25), {Time: 0.1, Face: Exposure{400, celsius(15)}, Back: Exposure{25, celsius(23)}}, inAir(0.2, 15)}
	c := mustCool(t, layers, stages)
	const dx = 5e-6 / 3
	var temp, k, heat, gap []float64
	var first []int
	for _, l := range layers {
		n := int(math.Round(float64(l.Thickness) / dx))
		first = append(first, len(temp))
		for i := range n {
			temp = append(temp, l.startAt((float64(i)+0.5)*dx))
			k = append(k, float64(l.Conductivity))
			heat = append(heat, float64(l.Density)*float64(l.SpecificHeat)*dx)
			gap = append(gap, 0)
		}
		if l.Below > 0 {
			gap[len(gap)-1] = 1 / float64(l.Below)
		}
	}
	first = append(first, len(temp))
	flow := make([]float64, len(temp)+1)
	now, dt := 0.0, 2e-6
	for _, s := range stages {
		steps := int(math.Round(float64(s.Time) / dt))
		for step := range steps {
			flow[0] = (float64(s.Face.Temperature) - temp[0]) / (1/float64(s.Face.Conductance) + dx/2/k[0])
			last := len(temp) - 1
			flow[last+1] = (temp[last] - float64(s.Back.Temperature)) / (1/float64(s.Back.Conductance) + dx/2/k[last])
			for i := 1; i <= last; i++ {
				flow[i] = (temp[i-1] - temp[i]) / (dx/2/k[i-1] + gap[i-1] + dx/2/k[i])
			}
			for i := range temp {
				temp[i] += dt / heat[i] * (flow[i] - flow[i+1])
			}
			now += dt
			if step%5000 != 4999 {
				continue
			}
			m, err := c.At(min(quantity.Time(now), c.Total()))
			if err != nil {
				t.Fatal(err)
			}
			for l := range layers {
				sum := 0.0
				for i := first[l]; i < first[l+1]; i++ {
					sum += temp[i]
				}
				want := sum / float64(first[l+1]-first[l])
				if d := math.Abs(float64(m.Layers[l]) - want); d > 0.02 {
					t.Errorf("%s after %.3g s: %.4f °C, explicit %.4f", layers[l].Name, now, float64(m.Layers[l])-273.15, want-273.15)
				}
			}
		}
	}
}

// TestAgainstSeries compares a slab in air on both faces with its eigenfunctions:
// β·tan β = h·(L/2)/k about the middle.
func TestAgainstSeries(t *testing.T) {
	slab := Layer{Thickness: 300e-6, Conductivity: 0.12, Density: 800, SpecificHeat: 1500, Start: Even(celsius(80))}
	half, alpha := 150e-6, float64(slab.Diffusivity())
	for _, h := range []float64{10, 400, 4000} {
		biot := h * half / 0.12
		tau := float64(TimeConstant([]Layer{slab}, quantity.Conductance(h), quantity.Conductance(h))) + half*half/alpha
		c := mustCool(t, []Layer{slab}, []Stage{inAir(quantity.Time(3*tau), quantity.Conductance(h))})
		for _, share := range []float64{0.03, 0.1, 0.3, 1, 2} {
			at := share * tau
			mean, face := 0.0, 0.0
			for n := range 60 {
				low, high := float64(n)*math.Pi, (float64(n)+0.5)*math.Pi
				for range 80 {
					b := (low + high) / 2
					if b*math.Sin(b) < biot*math.Cos(b) == (n%2 == 0) {
						low = b
					} else {
						high = b
					}
				}
				b := (low + high) / 2
				a := 4 * math.Sin(b) / (2*b + math.Sin(2*b)) * math.Exp(-b*b*alpha*at/half/half)
				mean += a * math.Sin(b) / b
				face += a * math.Cos(b)
			}
			m, err := c.At(quantity.Time(at))
			if err != nil {
				t.Fatal(err)
			}
			for _, x := range []struct {
				name      string
				got, want float64
			}{{"mean", float64(m.Layers[0]), mean}, {"face", float64(m.Face), face}, {"back", float64(m.Back), face}} {
				want := float64(celsius(23)) + 57*x.want
				if math.Abs(x.got-want) > 0.02 {
					t.Errorf("h %g, %.3g s: %s %.4f °C, series %.4f", h, at, x.name, x.got-273.15, want-273.15)
				}
			}
		}
	}
}

// TestOrders halves cells and steps together: the error falls by four.
func TestOrders(t *testing.T) {
	get := func(fine int) []float64 {
		c, err := cool(laminate(), chilled(), fine)
		if err != nil {
			t.Fatal(err)
		}
		m, err := c.At(2.5)
		if err != nil {
			t.Fatal(err)
		}
		return []float64{float64(m.Face), float64(m.Layers[1]), float64(m.Back)}
	}
	a, b, best := get(1), get(2), get(16)
	for i := range best {
		e1, e2 := math.Abs(a[i]-best[i]), math.Abs(b[i]-best[i])
		order := math.Log2(e1 / e2)
		if !(order > 1.8 && order < 2.3) || e1 > 0.02 {
			t.Errorf("place %d: %.3g K off, then %.3g: order %.3f", i, e1, e2, order)
		}
		t.Logf("place %d: %.3g K off, then %.3g: order %.3f", i, e1, e2, order)
	}
}

// TestMovingLayer solves the laminar layer on a moving surface again:
//
//	f‴ + ½·f·f″ = 0, f(0) = 0, f′(0) = 1, f′(∞) = 0;  θ″ + ½·Pr·f·θ′ = 0, θ(0) = 1, θ(∞) = 0
func TestMovingLayer(t *testing.T) {
	const far, steps = 40.0, 8000
	dx := far / steps
	march := func(slope, pr float64) (fEnd, thetaSlope float64) {
		// y = f, f′, f″, g = exp(−½Pr∫f), ∫g
		y := [5]float64{0, 1, slope, 1, 0}
		d := func(y [5]float64) [5]float64 {
			return [5]float64{y[1], y[2], -0.5 * y[0] * y[2], -0.5 * pr * y[0] * y[3], y[3]}
		}
		add := func(y, k [5]float64, h float64) [5]float64 {
			for i := range y {
				y[i] += h * k[i]
			}
			return y
		}
		for range steps {
			k1 := d(y)
			k2 := d(add(y, k1, dx/2))
			k3 := d(add(y, k2, dx/2))
			k4 := d(add(y, k3, dx))
			for i := range y {
				y[i] += dx / 6 * (k1[i] + 2*k2[i] + 2*k3[i] + k4[i])
			}
			if y[1] < -1 || y[1] > 2 {
				break
			}
		}
		return y[1], 1 / y[4]
	}
	low, high := -0.6, -0.3
	for range 60 {
		m := (low + high) / 2
		if end, _ := march(m, 1); end < 0 {
			low = m
		} else {
			high = m
		}
	}
	for _, x := range []struct{ pr, within float64 }{{0.7, 1e-4}, {0.71, 1e-3}, {0.85, 1e-3}, {1, 1e-4}} {
		_, want := march(high, x.pr)
		if got := webSlope(x.pr); math.Abs(got-want) > x.within {
			t.Errorf("Pr %g: %.5f, solved again %.5f", x.pr, got, want)
		}
		t.Logf("Pr %g: %.5f, solved again %.5f", x.pr, webSlope(x.pr), want)
	}
}
