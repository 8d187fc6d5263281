package search

import (
	"strings"
	"unicode"
)

// foldTable lists characters by what they are read as: "a=àá" reads à and á
// as a. Both micro signs are u, all spaces are a space, all dashes a hyphen.
// A character with nothing before the equals sign is dropped.
var foldTable = []string{
	"a=àáâãäåāăą", "ae=æ", "c=çćĉċč", "d=ðďđ", "e=èéêëēĕėęě", "f=ƒ", "fi=ﬁ", "fl=ﬂ",
	"g=ĝğġģ", "h=ĥħ", "i=ìíîïĩīĭįıİ", "j=ĵ", "k=ķĸ", "l=ĺļľŀł", "n=ñńņňŉŋ",
	"o=òóôõöøōŏő", "oe=œ", "r=ŕŗř", "s=śŝşšșſ", "ss=ß", "t=ţťŧț", "th=þ",
	"u=ùúûüũūŭůűųµμ", "w=ŵ", "y=ýÿŷ", "z=źżž",
	"0=⁰₀", "1=¹₁", "2=²₂", "3=³₃", "4=⁴₄", "5=⁵₅", "6=⁶₆",
	" 1/2=½", " 1/4=¼", " 3/4=¾", " 1/8=⅛", " 3/8=⅜", " 5/8=⅝", " 7/8=⅞", " 1/3=⅓", " 2/3=⅔",
	" =\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000\t\n\r\v\f",
	"-=\u2010\u2011\u2012\u2013\u2014\u2015\u2212\u207b",
	"'=\u2018\u2019\u02bc\u2032`\u00b4", "\"=\u201c\u201d\u2033",
	"°=\u00ba\u02da", "°c=\u2103", "°f=\u2109", "/=\u2044\u2215",
	"=\u00ad\u200b\u200c\u200d\u2060\ufeff",
}

var folds = func() map[rune][]rune {
	m := map[rune][]rune{}
	for _, line := range foldTable {
		to, from, _ := strings.Cut(line, "=")
		for _, r := range from {
			m[r] = []rune(to)
		}
	}
	return m
}()

// char is one folded character and the bytes of the text that it came from.
type char struct {
	r          rune
	start, end int
}

// fold lower-cases a text and takes accents, odd spaces and odd dashes off,
// keeping where each character stood.
func fold(s string) []char {
	out := make([]char, 0, len(s))
	for i, r := range s {
		end := i + runeLen(s[i:])
		if r >= 0x300 && r < 0x370 { // a combining accent
			continue
		}
		if r < 0x80 && r > ' ' && r != '`' {
			if 'A' <= r && r <= 'Z' {
				r += 'a' - 'A'
			}
			out = append(out, char{r, i, end})
			continue
		}
		low := r
		if r < 0x530 { // beyond, alphabets have one case or lower differently from one library to the next
			low = unicode.ToLower(r)
		}
		to, ok := folds[r]
		if !ok {
			to, ok = folds[low]
		}
		if !ok {
			out = append(out, char{low, i, end})
			continue
		}
		for _, t := range to {
			out = append(out, char{t, i, end})
		}
	}
	return out
}

// runeLen is the number of bytes of the first character, 1 for a broken one.
func runeLen(s string) int {
	for i := range s {
		if i > 0 {
			return i
		}
	}
	return len(s)
}

func isDigit(r rune) bool { return '0' <= r && r <= '9' }

// isWord says whether a folded character belongs to a word. The ranges are
// written out, so that no two versions of Unicode can disagree.
func isWord(r rune) bool {
	switch {
	case 'a' <= r && r <= 'z', isDigit(r):
		return true
	case r < 0xc0, r == 0xd7, r == 0xf7:
		return false
	}
	return r < 0x2b0 || 0x370 <= r && r < 0x2000 || 0x3040 <= r && r < 0x3190 ||
		0x3400 <= r && r < 0xa000 || 0xac00 <= r && r < 0xd7a4 || 0xf900 <= r && r < 0xfb00
}
