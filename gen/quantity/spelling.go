package quantity

import (
	"strings"
	"unicode/utf8"
)

// raised maps raised characters to plain ones.
var raised = map[rune]byte{
	'⁰': '0', '¹': '1', '²': '2', '³': '3', '⁴': '4', '⁵': '5', '⁶': '6', '⁷': '7', '⁸': '8', '⁹': '9',
	'⁻': '-', '⁺': '+',
}

// plainText replaces what keyboards, spreadsheets and typesetters put in place
// of a space, a minus sign and a multiplication sign, and trims the ends.
var plainer = strings.NewReplacer(
	"\u00a0", " ", // no-break space
	"\u2007", " ", // figure space
	"\u2009", " ", // thin space
	"\u202f", " ", // narrow no-break space
	"\t", " ",
	"\u2212", "-", // minus sign
)

func plainText(text string) string {
	if !utf8.ValidString(text) {
		return "?" // not a number; the message quotes the bytes
	}
	return strings.Trim(plainer.Replace(text), " ")
}

// plainUnit gives the one spelling by which a unit is found: no spaces and no
// dots between factors, no degree sign, u for either micro sign, plain digits
// for raised ones.
func plainUnit(text string) string {
	var b strings.Builder
	for _, r := range strings.TrimPrefix(text, "deg ") {
		switch {
		case r == ' ' || r == '\u00a0' || r == '·' || r == '⋅' || r == '*' || r == '^':
		case r == '°' || r == 'º':
		case r == 'µ' || r == 'μ':
			b.WriteByte('u')
		case r == '℃':
			b.WriteByte('C')
		case r == '℉':
			b.WriteByte('F')
		case raised[r] != 0:
			b.WriteByte(raised[r])
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}
