package search

import "strings"

// How sure a query is that it is a stamp.
const (
	noStamp    = iota
	maybeStamp // the right signs, but it may be a word: curl
	surelyStamp
)

// stampIn reads a query as a stamp, K7-Q2, and says how sure that is: with a
// hyphen, or after the word stamp or chart, it is meant as one.
func (x *Index) stampIn(query string) (code string, sure int) {
	var b strings.Builder
	for _, c := range fold(query) {
		b.WriteRune(c.r)
	}
	text := strings.Join(strings.Fields(b.String()), " ")
	sure = maybeStamp
	for _, word := range []string{"wall chart ", "chart ", "stamp ", "edition "} {
		if rest, ok := strings.CutPrefix(text, word); ok {
			text, sure = rest, surelyStamp
		}
	}
	r := []rune(text)
	if len(r) == 5 && (r[2] == '-' || r[2] == ' ') {
		if r[2] == '-' {
			sure = surelyStamp
		}
		r = append(r[:2:2], r[3:]...)
	}
	if len(r) != 4 || x.stamps == "" {
		return "", noStamp
	}
	for _, c := range r {
		if !strings.ContainsRune(strings.ToLower(x.stamps), c) {
			return "", noStamp
		}
	}
	return strings.ToUpper(string(r[:2]) + "-" + string(r[2:])), sure
}

// stampBoxes says which charts of this edition have a stamp, or that none has.
func (x *Index) stampBoxes(code string, sure, hits int) []Box {
	if code == "" {
		return nil
	}
	var boxes []Box
	for _, c := range x.charts {
		if c.Stamp == code {
			boxes = append(boxes, Box{What: "Stamp " + code, Number: "in date", Under: c.Title, URL: c.URL})
		}
	}
	switch {
	case len(boxes) > 0:
		return boxes[:min(len(boxes), mostBoxes)]
	case code == x.edition:
		return []Box{{What: "Stamp " + code, Number: "in date", Under: "The stamp of this edition of the handbook.", URL: "index.html"}}
	case sure == surelyStamp || hits == 0:
		return []Box{{What: "Stamp " + code, Number: "out of date", Under: "No chart of this edition has this stamp. Take it down and print the one that is here now.", URL: "charts/index.html"}}
	}
	return nil
}
