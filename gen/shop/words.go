package shop

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// longestQuote is how many characters of somebody's text a message repeats.
const longestQuote = 40

// quote puts text from a data file into a message: in quotation marks, on one
// line, and cut where it is long.
func quote(text string) string {
	if utf8.RuneCountInString(text) > longestQuote {
		text = string([]rune(text)[:longestQuote]) + "…"
	}
	return strconv.Quote(text)
}

// a puts the article before a noun: "a length", "an ink".
func a(noun string) string {
	if noun != "" && strings.ContainsRune("aeiou", rune(noun[0])) {
		return "an " + noun
	}
	return "a " + noun
}

// list writes words as "a, b, c".
func list(words []string) string { return strings.Join(words, ", ") }

// maybe ends a message with a suggestion, or with nothing.
func maybe(near string) string {
	if near == "" {
		return ""
	}
	return "; did you mean " + quote(near) + "?"
}

// nearest finds the candidate that somebody most likely meant by word: the one
// that the fewest typing errors part from it, else the first that begins with
// it. It gives "" where none is near.
func nearest(word string, candidates []string) string {
	if len(word) > 64 {
		return ""
	}
	word = strings.ToLower(word)
	letters := utf8.RuneCountInString(word)
	allowed := 1
	if letters > 4 {
		allowed = 2
	}
	if letters > 8 {
		allowed = 3
	}
	best, found := allowed+1, ""
	for _, c := range candidates {
		if len(c) > 64 || c == "" {
			continue
		}
		if d := editDistance(word, strings.ToLower(c)); d < best && d < letters {
			best, found = d, c
		}
	}
	if found != "" || letters < 3 {
		return found
	}
	for _, c := range candidates {
		if strings.HasPrefix(strings.ToLower(c), word) {
			return c
		}
	}
	return ""
}

// editDistance counts the typing errors between two words: letters put in,
// left out or changed, and neighbours swapped (optimal string alignment).
func editDistance(from, to string) int {
	s, t := []rune(from), []rune(to)
	before := make([]int, len(t)+1) // two rows up
	above := make([]int, len(t)+1)
	row := make([]int, len(t)+1)
	for j := range above {
		above[j] = j
	}
	for i := 1; i <= len(s); i++ {
		row[0] = i
		for j := 1; j <= len(t); j++ {
			changed := above[j-1]
			if s[i-1] != t[j-1] {
				changed++
			}
			row[j] = min(changed, above[j]+1, row[j-1]+1)
			if i > 1 && j > 1 && s[i-1] == t[j-2] && s[i-2] == t[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, above, row = above, row, before
	}
	return above[len(t)]
}
