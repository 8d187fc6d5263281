package quantity

import (
	"math"
	"strconv"
	"strings"
)

// A rounding turns a number into text with the digits that suit it.
type rounding func(x float64) string

// significant keeps n significant figures and drops trailing zeros. Numbers
// that would need a long row of zeros are written with a power of ten.
func significant(n int) rounding {
	return func(x float64) string {
		x = round(x, n)
		if size := math.Abs(x); size != 0 && (size < 1e-3 || size >= 1e6) {
			return scientific(x, n)
		}
		return plainNumber(x)
	}
}

// power writes every number but zero with a power of ten: "1.2 × 10⁻¹³".
func power(x float64) string {
	if x == 0 {
		return "0"
	}
	return scientific(x, 3)
}

// micro writes a number as a multiple of 10⁻⁶, as expansion coefficients are.
func micro(x float64) string {
	if x == 0 {
		return "0"
	}
	if size := math.Abs(x); size < 1e-8 || size >= 0.9995e-3 {
		return scientific(x, 3)
	}
	return significant(3)(x*1e6) + gap + "×" + gap + "10⁻⁶"
}

// step rounds to the nearest multiple of a step.
func step(size float64) rounding {
	return func(x float64) string {
		if math.Abs(x) >= 1e6 {
			return scientific(x, 3)
		}
		return plainNumber(math.Round(x/size) * size)
	}
}

// mils keeps a tenth of a mil below 10 and whole mils above: 75 µm is a film of
// 3 mil in the trade, not of 2.95 mil.
func mils(x float64) string {
	switch size := math.Abs(x); {
	case size < 0.2:
		return significant(2)(x)
	case size < 9.95:
		return plainNumber(math.Round(x*10) / 10)
	default:
		return step(1)(x)
	}
}

// degrees keeps half degrees of a difference above 10, two figures below.
func degrees(x float64) string {
	if math.Abs(x) < 9.95 {
		return significant(2)(x)
	}
	return step(0.5)(x)
}

// round keeps n significant figures.
func round(x float64, n int) float64 {
	r, err := strconv.ParseFloat(strconv.FormatFloat(x, 'e', n-1, 64), 64)
	if err != nil {
		return x // rounding up the largest float overflows
	}
	return r
}

// plainNumber writes a rounded number in full, with a true minus sign and
// without a negative zero.
func plainNumber(x float64) string {
	if x == 0 {
		return "0"
	}
	return strings.Replace(strconv.FormatFloat(x, 'f', -1, 64), "-", "−", 1)
}

// scientific writes x with n significant figures and a power of ten.
func scientific(x float64, n int) string {
	text := strconv.FormatFloat(x, 'e', n-1, 64)
	head, exponent, _ := strings.Cut(text, "e")
	if strings.Contains(head, ".") {
		head = strings.TrimRight(strings.TrimRight(head, "0"), ".")
	}
	head = strings.Replace(head, "-", "−", 1)
	value, _ := strconv.Atoi(exponent)
	return head + gap + "×" + gap + "10" + raise(strconv.Itoa(value))
}

// raise writes an integer in raised digits.
func raise(integer string) string {
	up := []rune("⁰¹²³⁴⁵⁶⁷⁸⁹")
	var b strings.Builder
	for _, r := range integer {
		if r == '-' {
			b.WriteRune('⁻')
		} else {
			b.WriteRune(up[r-'0'])
		}
	}
	return b.String()
}
