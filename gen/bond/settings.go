package bond

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Dwell is how long a place of the web is pressed: length of the nip over speed.
func Dwell(nip quantity.Length, speed quantity.Speed) (quantity.Time, error) {
	if !(nip > 0 && speed > 0) {
		return 0, fmt.Errorf("a nip of %g m at %g m/s: each must be above 0", float64(nip), float64(speed))
	}
	return quantity.Time(float64(nip) / float64(speed)), nil
}

// Profile is how pressure goes along a nip.
type Profile int

const (
	// Even is the same pressure throughout.
	Even Profile = iota
	// Hertz is half an ellipse: two solid rollers. Its peak is 4/π of the mean.
	Hertz
	// Parabola is close to what thin rubber covers give. Its peak is 3/2 of the mean.
	Parabola
)

// Peak is the highest pressure over the mean.
//
//	Hertz     4/π: K. L. Johnson, Contact Mechanics, 1985, ch. 4
//	Parabola  3/2, of its integral
func (p Profile) Peak() quantity.Fraction {
	switch p {
	case Hertz:
		return 4 / math.Pi
	case Parabola:
		return 1.5
	}
	return 1
}

// at is the pressure over its mean at x, from -1 to 1 along the nip.
func (p Profile) at(x float64) float64 {
	switch p {
	case Hertz:
		return 4 / math.Pi * math.Sqrt(math.Max(0, 1-x*x))
	case Parabola:
		return 1.5 * (1 - x*x)
	}
	return 1
}

// pressed is how many lines the pressure along a nip is cut into.
const pressed = 32

// Press lays the pressure of a nip on samples of the bond line's temperature, from one
// time to another. Their own pressures are replaced. The mean comes out exactly.
func Press(samples []Sample, from, to quantity.Time, mean quantity.Pressure, p Profile) ([]Sample, error) {
	if len(samples) < 2 || !(from < to) || from < samples[0].Time || to > samples[len(samples)-1].Time || !(mean >= 0) {
		return nil, fmt.Errorf("a nip of %g Pa from %g s to %g s does not lie within %d samples", float64(mean), float64(from), float64(to), len(samples))
	}
	levels := make([]float64, pressed+1)
	sum := 0.0
	for i := range levels {
		levels[i] = p.at(2*float64(i)/pressed - 1)
		weight := 1.0
		if i == 0 || i == pressed {
			weight = 0.5
		}
		sum += weight * levels[i] / pressed
	}
	level := func(t quantity.Time) quantity.Pressure {
		x := math.Min(math.Max(float64((t-from)/(to-from)), 0), 1) * pressed
		i := min(int(x), pressed-1)
		return mean * quantity.Pressure((levels[i]+(x-float64(i))*(levels[i+1]-levels[i]))/sum)
	}
	var out []Sample
	add := func(t quantity.Time, press bool) {
		s := Sample{Time: t, Temperature: temperatureAt(samples, t)}
		if press {
			s.Pressure = level(t)
		}
		out = append(out, s)
	}
	i := 0
	for ; i < len(samples) && samples[i].Time < from; i++ {
		add(samples[i].Time, false)
	}
	add(from, false)
	for k := 0; k <= pressed; k++ {
		t := from + quantity.Time(float64(k)/pressed)*(to-from)
		if k == pressed {
			t = to
		}
		for ; i < len(samples) && samples[i].Time < t; i++ {
			if samples[i].Time > from {
				add(samples[i].Time, true)
			}
		}
		add(t, true)
	}
	add(to, false)
	for ; i < len(samples); i++ {
		if samples[i].Time > to {
			add(samples[i].Time, false)
		}
	}
	return out, nil
}

// temperatureAt reads samples between their times.
func temperatureAt(samples []Sample, t quantity.Time) quantity.Temperature {
	for i := 1; i < len(samples); i++ {
		a, b := samples[i-1], samples[i]
		if t > b.Time {
			continue
		}
		if b.Time == a.Time {
			return b.Temperature
		}
		return a.Temperature + quantity.Temperature((t-a.Time)/(b.Time-a.Time))*(b.Temperature-a.Temperature)
	}
	return samples[len(samples)-1].Temperature
}

// MeanPressure of a nip is its line load over its length.
func MeanPressure(load quantity.LineLoad, nip quantity.Length) (quantity.Pressure, error) {
	if !(load >= 0 && nip > 0) {
		return 0, fmt.Errorf("a load of %g N/m on a nip of %g m: the first must not be below 0, the second above", float64(load), float64(nip))
	}
	return quantity.Pressure(float64(load) / float64(nip)), nil
}

// HertzNip is the length of a nip between two rollers of diameters d₁ and d₂ (0 is
// flat) under a line load, of which one is covered with rubber of a modulus:
//
//	length = 2·√[4·w·R/(π·E*)], 1/R = 2/d₁ + 2/d₂, E* = E/(1 − ν²), ν = ½
//	K. L. Johnson, Contact Mechanics, 1985, ch. 4
//
// It is an upper bound: a cover is thinner than a solid and therefore stiffer. The mean
// pressure that follows goes with the root of the load, not with the load.
func HertzNip(load quantity.LineLoad, d1, d2 quantity.Length, modulus quantity.Pressure) (quantity.Length, error) {
	if !(load > 0 && d1 > 0 && d2 >= 0 && modulus > 0) {
		return 0, fmt.Errorf("%g N/m between rollers of %g m and %g m with a cover of %g Pa: each must be above 0, but for the second diameter", float64(load), float64(d1), float64(d2), float64(modulus))
	}
	curve := 2 / float64(d1)
	if d2 > 0 {
		curve += 2 / float64(d2)
	}
	return quantity.Length(2 * math.Sqrt(4*float64(load)/(curve*math.Pi*float64(modulus)/0.75))), nil
}
