package search

import "slices"

// distance is the number of typing errors between two words: letters missing,
// extra, wrong, or two neighbours swapped (the optimal-string-alignment form of
// the Damerau–Levenshtein distance). With prefix it is the least distance
// between the typed word and any beginning of the other. It gives up beyond
// most and returns most+1.
func distance(typed, word string, most int, prefix bool) int {
	a, b := []rune(typed), []rune(word)
	if len(a)-len(b) > most || !prefix && len(b)-len(a) > most {
		return most + 1
	}
	before, row, next := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		next[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			next[j] = min(row[j]+1, next[j-1]+1, row[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				next[j] = min(next[j], before[j-2]+1)
			}
		}
		before, row, next = row, next, before
	}
	d := row[len(b)]
	if prefix {
		d = slices.Min(row)
	}
	return min(d, most+1)
}

// slack is how many typing errors a word of this length may have.
func slack(word string) int {
	switch n := len([]rune(word)); {
	case n < 4:
		return 0
	case n > 7:
		return 2
	}
	return 1
}
