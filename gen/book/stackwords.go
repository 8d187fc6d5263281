package book

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// depthText writes a depth in whole millimetres.
func depthText(l quantity.Length) string {
	mm := l.Millimetres()
	if mm < 0.5 {
		return "<1"
	}
	return fmt.Sprintf("%.0f", mm)
}

// dash is a dash that a line does not break at.
const dash = "\u2060–\u2060"

// depthSpan writes a span of depths in millimetres.
func depthSpan(least, most quantity.Length) string {
	low, high := depthText(least), depthText(most)
	if low == high {
		return low + "\u00a0mm"
	}
	if low == "<1" {
		low = "0"
	}
	return low + dash + high + "\u00a0mm"
}

// inchText writes a depth in inches.
func inchText(l quantity.Length) string {
	in := l.Millimetres() / 25.4
	switch {
	case in < 0.05:
		return "<0.1\u00a0in"
	case in < 10:
		return fmt.Sprintf("%.1f\u00a0in", in)
	}
	return fmt.Sprintf("%.0f\u00a0in", in)
}

// lapse writes a time that nobody watches a clock for: hours to two days, then days,
// weeks, months and years, in two figures at the most.
func lapse(t quantity.Time) string {
	h := t.Hours()
	count := func(n float64, one, many string) string {
		n = math.Max(1, math.Round(n))
		if n == 1 {
			return "1\u00a0" + one
		}
		return fmt.Sprintf("%.0f\u00a0%s", n, many)
	}
	const day, month, year = 24.0, 730.5, 8766.0
	switch {
	case math.IsInf(h, 1):
		return "over 100\u00a0years"
	case h <= 2*day:
		return count(math.Ceil(h-1e-6), "hour", "hours")
	case h <= 14*day:
		return count(h/day, "day", "days")
	case h <= 10*7*day:
		return count(h/day/7, "week", "weeks")
	case h <= 2*year:
		return count(h/month, "month", "months")
	}
	return count(h/year, "year", "years")
}

// lapseSpan writes a span of such times.
func lapseSpan(least, most quantity.Time) string {
	a, b := lapse(least), lapse(most)
	if a == b {
		return a
	}
	return a + " to " + b
}

// difference writes a difference of temperature in both scales.
func difference(d quantity.TemperatureDifference) string {
	return fmt.Sprintf("%.2g\u00a0K (%.2g\u00a0°F)", float64(d), float64(d)*1.8)
}
