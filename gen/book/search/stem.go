package search

import "strings"

// stem takes the lightest endings off a folded word, so that bubble, bubbles
// and bubbling are one, and so are ionise and ionize, tunneling and tunnelling.
// It need not give a word, only the same letters for the same thing.
func stem(w string) string {
	if len(w) < 4 || strings.IndexFunc(w, func(r rune) bool { return r < 'a' || r > 'z' }) >= 0 {
		return w
	}
	cut := func(n int) { w = w[:len(w)-n] }
	ends := func(endings ...string) bool {
		for _, e := range endings {
			if strings.HasSuffix(w, e) {
				return true
			}
		}
		return false
	}
	vowel := func(s string) bool { return strings.ContainsAny(s, "aeiouy") }
	double := func() bool { n := len(w); return n > 1 && w[n-1] == w[n-2] }

	// Plurals.
	switch {
	case ends("ies") && len(w) > 4:
		cut(3)
		w += "y"
	case ends("sses", "shes", "ches", "xes", "zes"):
		cut(2)
	case ends("s") && !ends("ss", "us", "is", "gas"):
		cut(1)
	}
	// Forms of verbs, and the nouns in -ation.
	verb := true
	switch {
	case ends("ied") && len(w) > 4:
		cut(3)
		w += "y"
	case ends("ing") && len(w) >= 6 && vowel(w[:len(w)-3]):
		cut(3)
	case ends("ed") && !ends("eed") && len(w) >= 5 && vowel(w[:len(w)-2]):
		cut(2)
	case ends("ation") && len(w) >= 8:
		cut(3)
	default:
		verb = false
	}
	// cutting, cutt, cut; but pressing, press.
	if verb && double() && !ends("l", "s", "z", "f") {
		cut(1)
	}
	if ends("isat", "izat") {
		cut(2)
	}
	if ends("e") && len(w) >= 4 {
		cut(1)
	}
	if ends("iz", "yz") {
		cut(1)
		w += "s"
	}
	if len(w) >= 6 && double() {
		cut(1)
	}
	return w
}

// stopWords carry no meaning of their own here. They are not indexed, and a
// query drops them.
var stopWords = strings.Fields(`a an and are as at be but by can did do does for from has have how
	i if in into is it its me much my not of on or our should so than that the their then there
	they this to too was we what when where which who why will with would you your`)

var stopped = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range stopWords {
		m[w] = true
	}
	return m
}()
