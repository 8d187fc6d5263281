package draw

import (
	"math"
	"slices"
	"testing"
)

func TestTicks(t *testing.T) {
	rows := []struct {
		name  string
		ticks []float64
		want  []float64 // worked by hand
	}{
		{"steps of two", Ticks(0, 10, 5), []float64{0, 2, 4, 6, 8, 10}},
		{"steps of a half, not from zero", Ticks(0.4, 2.1, 5), []float64{0.5, 1, 1.5, 2}},
		{"across zero, and no minus zero", Ticks(-1, 1, 4), []float64{-1, -0.5, 0, 0.5, 1}},
		{"three tenths is written as such", Ticks(0, 0.3, 3), []float64{0, 0.1, 0.2, 0.3}},
		{"an empty axis", Ticks(3, 3, 5), nil},
		{"no number", Ticks(math.NaN(), 1, 5), nil},
		{"hours of a day and a half", HourTicks(0, 36, 8), []float64{0, 6, 12, 18, 24, 30, 36}},
		{"hours of a fortnight", HourTicks(0, 336, 8), []float64{0, 48, 96, 144, 192, 240, 288, 336}},
		{"a few hours", HourTicks(0, 8, 8), []float64{0, 1, 2, 3, 4, 5, 6, 7, 8}},
		{"one decade", LogTicks(0.1, 2), []float64{0.1, 0.2, 0.5, 1, 2}},
		{"many decades", LogTicks(1e-6, 10), []float64{1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.1, 1, 10}},
		{"a logarithm of nothing", LogTicks(0, 10), nil},
	}
	for _, row := range rows {
		if !slices.Equal(row.ticks, row.want) {
			t.Errorf("%s: got %v, want %v", row.name, row.ticks, row.want)
		}
		for _, v := range row.ticks {
			if v == 0 && math.Signbit(v) {
				t.Errorf("%s: a minus zero", row.name)
			}
		}
	}
}

func TestPlainNumbers(t *testing.T) {
	for v, want := range map[float64]string{0: "0", 0.1 + 0.2: "0.3", 1e-6: "0.000001", 1500: "1500"} {
		if got := Plain(v); got != want {
			t.Errorf("Plain(%g) = %q, want %q", v, got, want)
		}
	}
	if got := number(-0.01); got != "0" {
		t.Errorf("number(-0.01) = %q, want 0 without a minus", got)
	}
}
