package draw

import (
	"math"
	"strconv"
)

// Ticks gives the round numbers of a linear axis from low to high, in steps of
// 1, 2 or 5 times a power of ten, at most about count of them.
func Ticks(low, high float64, count int) []float64 {
	if !(high > low) || count < 1 {
		return nil
	}
	step := niceStep((high - low) / float64(count))
	var ticks []float64
	for k := math.Ceil(low/step - 1e-9); k*step <= high+step*1e-9; k++ {
		ticks = append(ticks, tidy(k*step))
	}
	return ticks
}

// HourTicks is Ticks for hours, in steps that a clock knows: 1, 2, 3, 6, 12
// and 24 hours and then whole days and weeks.
func HourTicks(low, high float64, count int) []float64 {
	if !(high > low) || count < 1 {
		return nil
	}
	want := (high - low) / float64(count)
	steps := []float64{1, 2, 3, 6, 12, 24, 48, 96, 168, 336, 672}
	step := steps[len(steps)-1]
	for _, s := range steps {
		if s >= want {
			step = s
			break
		}
	}
	if want < 0.5 || want > step {
		return Ticks(low, high, count)
	}
	var ticks []float64
	for k := math.Ceil(low/step - 1e-9); k*step <= high+step*1e-9; k++ {
		ticks = append(ticks, k*step+0)
	}
	return ticks
}

// LogTicks gives the round numbers of a logarithmic axis: the powers of ten,
// and where these are few their double and fivefold too.
func LogTicks(low, high float64) []float64 {
	if !(low > 0) || !(high > low) {
		return nil
	}
	from, to := math.Floor(math.Log10(low)), math.Ceil(math.Log10(high))
	factors := []float64{1, 2, 5}
	if to-from > 3 {
		factors = []float64{1}
	}
	var ticks []float64
	for e := from; e <= to; e++ {
		for _, f := range factors {
			v := tidy(f * math.Pow(10, e))
			if v >= low*(1-1e-9) && v <= high*(1+1e-9) {
				ticks = append(ticks, v)
			}
		}
	}
	return ticks
}

// niceStep is the least of 1, 2, 5 times a power of ten that is not below v.
func niceStep(v float64) float64 {
	base := math.Pow(10, math.Floor(math.Log10(v)))
	for _, f := range []float64{1, 2, 5} {
		if f*base >= v*(1-1e-9) {
			return f * base
		}
	}
	return 10 * base
}

// tidy takes the last bits off a tick, and its minus from a zero.
func tidy(v float64) float64 {
	t, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 12, 64), 64)
	if err != nil {
		return v
	}
	return t + 0
}

// Plain writes a tick's number with no more digits than it needs.
func Plain(v float64) string {
	return strconv.FormatFloat(tidy(v), 'f', -1, 64)
}
