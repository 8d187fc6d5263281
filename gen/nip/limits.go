package nip

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Greatest is the highest temperature of a place, from the record from on, and
// when it is reached.
func (c *Case) Greatest(place Place, from int, t Temps) (quantity.Temperature, quantity.Time) {
	best, when := math.Inf(-1), quantity.Time(0)
	for i := from; i < len(c.Records); i++ {
		if v := c.Records[i][place].at(&t); v > best {
			best, when = v, c.Times[i]
		}
	}
	return quantity.Temperature(best), when
}

// BondLineMax is the highest temperature of the bond line, the print's face under
// the adhesive, from first touch to the end of the stages, and when it is
// reached. It is the print's coating at its hottest too.
//
// On the adhesive's own face the question has no good answer: a thin film comes
// to the nip as hot as its drum and is so for a thousandth of a second.
func (c *Case) BondLineMax(t Temps) (quantity.Temperature, quantity.Time) {
	return c.Greatest(BondLine, c.Touch, t)
}

// FilmMax is the highest temperature of the film's outer face, on its roller or
// in the nip.
func (c *Case) FilmMax(t Temps) (quantity.Temperature, quantity.Time) {
	return c.Greatest(FilmFace, 0, t)
}

// SetForBondLine is the set temperature at which BondLineMax is the target: the
// lowest for an activation, the highest for a coating's limit.
func (c *Case) SetForBondLine(target quantity.Temperature, t Temps) (quantity.Temperature, error) {
	return c.SetForGreatest(BondLine, c.Touch, target, t)
}

// SetForFilm is the set temperature at which FilmMax is the limit.
func (c *Case) SetForFilm(limit quantity.Temperature, t Temps) (quantity.Temperature, error) {
	return c.SetForGreatest(FilmFace, 0, limit, t)
}

// SetForGreatest is the set temperature at which the highest temperature of a
// place, from the record from on, is the target. Each record is linear in the set
// temperature, so it is the least of what each needs. A record that does not
// feel the set temperature is left out; t.Set is not used.
func (c *Case) SetForGreatest(place Place, from int, target quantity.Temperature, t Temps) (quantity.Temperature, error) {
	least := math.Inf(1)
	for i := from; i < len(c.Records); i++ {
		if set, ok := c.Records[i][place].setFor(float64(target), &t); ok {
			least = math.Min(least, set)
		}
	}
	if math.IsInf(least, 1) {
		return 0, fmt.Errorf("nothing there feels the set temperature")
	}
	return quantity.Temperature(least), nil
}

// TimeAbove is how long the bond line is above a temperature, from first touch
// on; the records are joined by straight lines.
func (c *Case) TimeAbove(t Temps, threshold quantity.Temperature) quantity.Time {
	limit, sum := float64(threshold), 0.0
	for i := c.Touch; i+1 < len(c.Records); i++ {
		a := c.Records[i][BondLine].at(&t) - limit
		b := c.Records[i+1][BondLine].at(&t) - limit
		h := float64(c.Times[i+1] - c.Times[i])
		switch {
		case a >= 0 && b >= 0:
			sum += h
		case a > 0:
			sum += h * a / (a - b)
		case b > 0:
			sum += h * b / (b - a)
		}
	}
	return quantity.Time(sum)
}

// halvings is how often a bisection halves a span of temperatures: 1000 K come
// down to a nanokelvin.
const halvings = 40

// Held is the highest temperature that the bond line is above for a time in all.
func (c *Case) Held(t Temps, long quantity.Time) (quantity.Temperature, error) {
	if c.recorded() < long {
		return 0, fmt.Errorf("the stages end before %g s are over", float64(long))
	}
	high, _ := c.BondLineMax(t)
	low := high
	for i := c.Touch; i < len(c.Records); i++ {
		low = min(low, c.Records[i][BondLine].At(t))
	}
	for range halvings {
		middle := low + (high-low)/2
		if c.TimeAbove(t, middle) >= long {
			low = middle
		} else {
			high = middle
		}
	}
	return low, nil
}

// recorded is the time from first touch to the last record.
func (c *Case) recorded() quantity.Time {
	if len(c.Times) == 0 {
		return 0
	}
	return c.Times[len(c.Times)-1] - c.Times[c.Touch]
}

// SetForHeld is the lowest set temperature at which the bond line is above the
// target for a time in all: reaching an activation and staying for an open time.
// It is SetForBondLine for no time at all.
func (c *Case) SetForHeld(target quantity.Temperature, long quantity.Time, t Temps) (quantity.Temperature, error) {
	low, err := c.SetForBondLine(target, t)
	if err != nil {
		return 0, err
	}
	if long <= 0 {
		return low, nil
	}
	high := low
	for step := quantity.Temperature(1); ; step *= 2 {
		high = low + step
		t.Set = high
		if c.TimeAbove(t, target) >= long {
			break
		}
		if step > 1000 {
			return 0, fmt.Errorf("no set temperature keeps the bond line above %.1f °C for %g s", float64(target)-273.15, float64(long))
		}
	}
	for range halvings {
		t.Set = low + (high-low)/2
		if c.TimeAbove(t, target) >= long {
			high = t.Set
		} else {
			low = t.Set
		}
	}
	return high, nil
}
