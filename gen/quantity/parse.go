package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
)

// longest is how many bytes a quantity's text may have.
const longest = 80

// Parse reads a quantity with its unit: "75 µm", "3 mil", "240 °F", "12 g/m2",
// "1e-13 m2/s", "1.2 × 10⁻¹³ m²/s", "5 1/h". Both micro signs, the true minus
// sign, no-break and thin spaces, and ASCII forms (um, degC, g/m2) are equal to
// the printed ones. Letters' case counts: mPa is not MPa. A bare number, a unit
// of another kind, an unknown unit, and anything infinite are errors that say
// what is wanted.
func Parse[Q Quantity](text string) (Q, error) {
	si, err := parse(kindOf[Q](), text)
	return Q(si), err
}

func parse(want kind, text string) (float64, error) {
	name, example := withArticle(kindWords[want].name), kindWords[want].example
	if len(text) > longest {
		return 0, fmt.Errorf("a text of %d bytes is too long for %s; write it like %s", len(text), name, example)
	}
	plain := plainText(text)
	if plain == "" {
		return 0, fmt.Errorf("%q is empty: %s is wanted, such as %s", text, name, example)
	}
	number, unitText, ok := split(plain)
	if !ok {
		return 0, fmt.Errorf("%q is not a number with a unit: %s is written like %s", text, name, example)
	}
	value, err := strconv.ParseFloat(number, 64)
	if err != nil || value == 0 && strings.ContainsAny(mantissa(number), "123456789") {
		return 0, fmt.Errorf("%q is too large or too small a number for %s", text, name)
	}
	if unitText == "" {
		return 0, fmt.Errorf("%q has no unit: %s wants one, such as %s", text, name, example)
	}
	found := spellings[plainUnit(unitText)]
	for _, u := range found {
		if u.kind != want {
			continue
		}
		si := (value + u.zero) * u.si
		if math.IsInf(si, 0) || si == 0 && value+u.zero != 0 {
			return 0, fmt.Errorf("%q is too large or too small a number for %s", text, name)
		}
		if want == kindTemperature && si < 0 {
			return 0, fmt.Errorf("%q is below absolute zero", text)
		}
		return si, nil
	}
	if len(found) > 0 {
		return 0, fmt.Errorf("%q is not %s: %s is %s; write it like %s",
			text, name, unitText, withArticle(kindWords[found[0].kind].name), example)
	}
	return 0, fmt.Errorf("%q has an unknown unit, %s%s: %s is written like %s",
		text, visible(unitText), otherCase(want, unitText), name, example)
}

// visible quotes a text that holds anything but visible characters and spaces.
func visible(text string) string {
	for _, r := range text {
		if !unicode.IsPrint(r) {
			return strconv.Quote(text)
		}
	}
	return text
}

// otherCase suggests the unit that differs from an unknown one only in the case
// of its letters.
func otherCase(want kind, unitText string) string {
	key := plainUnit(unitText)
	for _, u := range units {
		if u.kind == want && strings.EqualFold(plainUnit(u.text), key) {
			return " (did you mean " + u.text + "?)"
		}
	}
	return ""
}

// split parts a plain text into a number that strconv reads and the unit. It is
// not ok when the text does not start with a number, or when the number runs
// into something that is neither a space nor a unit, as in "1,5 mm".
func split(plain string) (number, unitText string, ok bool) {
	i := 0
	if i < len(plain) && (plain[i] == '-' || plain[i] == '+') {
		i++
	}
	first := i
	i = digits(plain, i)
	count := i - first
	if i < len(plain) && plain[i] == '.' {
		point := i
		i = digits(plain, i+1)
		count += i - point - 1
	}
	if count == 0 {
		return "", "", false
	}
	number, rest := plain[:i], plain[i:]
	if power, after, found := tenTo(rest); found {
		number, rest = number+"e"+power, after
	} else if rest != "" && (rest[0] == 'e' || rest[0] == 'E') {
		j := 1
		if j < len(rest) && (rest[j] == '-' || rest[j] == '+') {
			j++
		}
		if end := digits(rest, j); end > j {
			number, rest = number+rest[:end], rest[end:]
		}
	}
	if rest != "" && strings.IndexByte(".,0123456789+-", rest[0]) >= 0 {
		return "", "", false
	}
	return number, strings.TrimSpace(rest), true
}

// tenTo reads "× 10⁻¹³" or "× 10^-13" after a number, and returns "-13".
func tenTo(rest string) (power, after string, found bool) {
	rest, found = strings.CutPrefix(strings.TrimLeft(rest, " "), "×")
	if !found {
		return "", "", false
	}
	rest, found = strings.CutPrefix(strings.TrimLeft(rest, " "), "10")
	if !found {
		return "", "", false
	}
	if caret, ok := strings.CutPrefix(rest, "^"); ok {
		j := 0
		if j < len(caret) && (caret[j] == '-' || caret[j] == '+') {
			j++
		}
		end := digits(caret, j)
		return caret[:end], caret[end:], end > j
	}
	var b strings.Builder
	for i, r := range rest {
		plain, ok := raised[r]
		if !ok {
			return b.String(), rest[i:], b.Len() > 0 && !strings.HasSuffix(b.String(), "-")
		}
		b.WriteByte(plain)
	}
	return b.String(), "", b.Len() > 0 && !strings.HasSuffix(b.String(), "-")
}

// digits returns the index after the decimal digits that start at i.
func digits(s string, i int) int {
	for i < len(s) && s[i] >= '0' && s[i] <= '9' {
		i++
	}
	return i
}

// mantissa is a number without its exponent.
func mantissa(number string) string {
	if i := strings.IndexAny(number, "eE"); i >= 0 {
		return number[:i]
	}
	return number
}
