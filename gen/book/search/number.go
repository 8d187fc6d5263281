package search

import (
	"strconv"
	"strings"
)

// numberAt reads the digits at i, with a decimal point or comma; a comma before
// exactly three digits parts thousands. The number comes back as a word:
// thousands run together, a point for decimals.
func numberAt(cs []char, i int) (number string, stop int) {
	run := func(j int) int {
		for j < len(cs) && isDigit(cs[j].r) {
			j++
		}
		return j
	}
	var b strings.Builder
	write := func(from, to int) {
		for _, c := range cs[from:to] {
			b.WriteRune(c.r)
		}
	}
	j := run(i)
	write(i, j)
	for j > i && j+1 < len(cs) && (cs[j].r == '.' || cs[j].r == ',') && isDigit(cs[j+1].r) {
		end := run(j + 1)
		thousands := cs[j].r == ',' && end == j+4 && cs[i].r != '0'
		if !thousands {
			b.WriteByte('.')
		}
		write(j+1, end)
		j = end
		if !thousands {
			break
		}
	}
	return b.String(), j
}

// figure is a number read as a value.
type figure struct {
	value float64
	stop  int
}

// figuresAt reads the number at i in every way it can be read, the longest
// first: 8 1/2, 1/8, 8.
func figuresAt(cs []char, i int) []figure {
	plain := func(i int) figure {
		s, stop := numberAt(cs, i)
		v, _ := strconv.ParseFloat(s, 64) // too long for a float is infinite, and dropped by step
		return figure{v, stop}
	}
	one := plain(i)
	whole, top := 0.0, one
	if j := one.stop; j+1 < len(cs) && cs[j].r == ' ' && isDigit(cs[j+1].r) {
		whole, top = one.value, plain(j+1)
	}
	if j := top.stop; j+1 < len(cs) && cs[j].r == '/' && isDigit(cs[j+1].r) {
		if bottom := plain(j + 1); bottom.value >= 2 && bottom.value <= 64 {
			return []figure{{whole + top.value/bottom.value, bottom.stop}, one}
		}
	}
	return []figure{one}
}

// separatorAt passes what stands between the two numbers of a range or a size
// (99–116 °C, 5 to 10 mm, 594 × 841 mm) and returns where the second begins,
// or 0.
func separatorAt(cs []char, i int) int {
	at := func(i int, r rune) bool { return i < len(cs) && cs[i].r == r }
	if at(i, ' ') {
		i++
	}
	switch {
	case at(i, '-'), at(i, 'x'), at(i, '×'):
		i++
	case at(i, 't') && at(i+1, 'o'):
		i += 2
	default:
		return 0
	}
	if at(i, ' ') {
		i++
	}
	if i < len(cs) && isDigit(cs[i].r) {
		return i
	}
	return 0
}

// valueAt reads the quantity at i: a number and its unit, or the first number
// of a range whose second has the unit; it then ends before the separator.
func valueAt(cs []char, i int) (value float64, m measure, end int, ok bool) {
	figures := figuresAt(cs, i)
	for _, f := range figures {
		if m, end, ok := unitAt(cs, f.stop); ok {
			if _, ok := m.step(f.value); ok {
				return f.value, m, end, true
			}
		}
	}
	for _, f := range figures {
		second := separatorAt(cs, f.stop)
		if second == 0 {
			continue
		}
		for _, g := range figuresAt(cs, second) {
			if m, _, ok := unitAt(cs, g.stop); ok {
				if _, ok := m.step(f.value); ok {
					return f.value, m, f.stop, true
				}
			}
		}
	}
	return 0, measure{}, i, false
}

// amountAt reads the quantity at i as a term.
func amountAt(cs []char, i int) (term string, end int, ok bool) {
	value, m, end, ok := valueAt(cs, i)
	if !ok {
		return "", i, false
	}
	step, _ := m.step(value)
	return quantityTerm(m.kind, step), end, true
}
