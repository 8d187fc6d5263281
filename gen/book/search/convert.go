package search

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// spanKelvin is the most degrees that may also be meant as a difference: a
// setting raised by 10 °F, not a roller at it.
const spanKelvin = 50

// largest is the largest number that is converted: past it nobody asks, and a
// float no longer holds each whole number.
const largest = 1e9

// conversions answers each quantity of a query in other units: in the one that
// the query names after "to", or in those that the trade uses beside it.
func conversions(query string) []Box {
	var boxes []Box
	cs := fold(query)
	for i := 0; i < len(cs); i++ {
		if !isDigit(cs[i].r) || i > 0 && (isWord(cs[i-1].r) || cs[i-1].r == '.') {
			continue
		}
		value, m, end, ok := valueAt(cs, i)
		if !ok {
			continue
		}
		boxes = append(boxes, convert(value, m, target(cs, end, m.kind))...)
		i = end - 1
	}
	return boxes[:min(len(boxes), mostBoxes)]
}

// namesTarget says whether a query names a unit to convert to.
func namesTarget(query string) bool {
	cs := fold(query)
	for i := range cs {
		if !isDigit(cs[i].r) || i > 0 && isWord(cs[i-1].r) {
			continue
		}
		if _, m, end, ok := valueAt(cs, i); ok && target(cs, end, m.kind) != "" {
			return true
		}
	}
	return false
}

// target is the unit of a kind that stands after "to", "in", "into" or "as".
func target(cs []char, i int, kind string) string {
	at := func(i int) rune {
		if i < len(cs) {
			return cs[i].r
		}
		return 0
	}
	for at(i) == ' ' || at(i) == '=' {
		i++
	}
	for _, word := range []string{"into ", "to ", "in ", "as ", "= "} {
		j := i
		for _, r := range word {
			if at(j) != r {
				j = -1
				break
			}
			j++
		}
		if j < 0 {
			continue
		}
		if m, _, ok := unitAt(cs, j); ok && m.kind == kind {
			return m.shown
		}
	}
	return ""
}

// repeating are the words that make a length a distance between marks.
var repeating = strings.Fields("every repeat repeats repeating apart spacing spaced")

// roller answers the distance between marks that repeat with the diameter of
// the roller that makes them: the distance divided by π, to the millimetre, for
// nobody measures a mark more closely.
func roller(query string) []Box {
	words := plainWords(query)
	if !slices.ContainsFunc(repeating, func(w string) bool { return slices.Contains(words, w) }) {
		return nil
	}
	cs := fold(query)
	for i := range cs {
		if !isDigit(cs[i].r) || i > 0 && (isWord(cs[i-1].r) || cs[i-1].r == '.') {
			continue
		}
		value, m, _, ok := valueAt(cs, i)
		if !ok || m.kind != "L" || math.Abs(value) >= largest {
			continue
		}
		mm := measureAs("mm")
		return []Box{{What: "A mark every " + shownNumber(value, "") + " " + m.shown + " comes from a roller of", Number: shownNumber(math.Floor(m.si(value)/mm.factor/math.Pi+0.5), ""), Unit: "mm",
			Under: "diameter: the distance divided by 3.1416; measure over four marks and divide by three"}}
	}
	return nil
}

// convert writes a quantity in other units.
func convert(value float64, m measure, to string) []Box {
	if math.Abs(value) >= largest {
		return nil
	}
	targets := m.to
	if to != "" {
		targets = []string{to}
	}
	var numbers []string
	unit := ""
	for _, name := range targets {
		t := measureAs(name)
		v := (m.si(value) - t.offset) / t.factor
		if t.shown == m.shown {
			continue
		}
		if unit == "" {
			unit = t.shown
			numbers = append(numbers, shownNumber(v, t.kind))
		} else {
			numbers = append(numbers, shownNumber(v, t.kind)+" "+t.shown)
		}
	}
	if len(numbers) == 0 {
		return nil
	}
	box := Box{What: shownNumber(value, "") + " " + m.shown + " is", Number: numbers[0], Unit: unit, Under: strings.Join(numbers[1:], ", ")}
	if box.Under != "" {
		box.Under = "or " + box.Under
	}
	if m.kind == "T" && math.Abs(value) <= spanKelvin && value != 0 {
		t := measureAs(unit)
		box.Under = "as a difference, " + shownNumber(value*m.factor/t.factor, m.kind) + " " + unit
	}
	boxes := []Box{box}
	if m.shown == pounds && to == "" {
		for _, basis := range bases {
			paper := measureAs(basis)
			boxes = append(boxes, Box{What: shownNumber(value, "") + " " + basis + " is", Number: shownNumber(value*paper.factor*1000, "W"), Unit: "g/m²"})
		}
		boxes = []Box{boxes[1], boxes[2], boxes[3], boxes[0]} // a paper is meant more often than a mass
	}
	return boxes
}

// shownNumber writes a number with four figures, a temperature with one
// decimal, without zeros at the end. It rounds halves up, as the script does.
func shownNumber(v float64, kind string) string {
	size := math.Abs(v)
	places := 0
	for p := 1.0; places < 6 && size*p < 1000; p *= 10 {
		places++
	}
	if kind == "T" {
		places = 1
	}
	if size == 0 {
		places = 0
	}
	pow := 1.0
	for range places {
		pow *= 10
	}
	n := math.Floor(float64(size*pow) + 0.5)
	digits := strconv.FormatInt(int64(n), 10)
	for len(digits) <= places {
		digits = "0" + digits
	}
	text := digits[:len(digits)-places]
	if rest := strings.TrimRight(digits[len(digits)-places:], "0"); rest != "" {
		text += "." + rest
	}
	if v < 0 && text != "0" {
		text = "−" + text
	}
	return text
}
