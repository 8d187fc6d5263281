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
	least, was := 0, 0 // of the last row, and of the one before: later rows have no less than both
	for i := 1; i <= len(a); i++ {
		if least > most && was > most {
			return most + 1
		}
		next[0] = i
		was, least = least, i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			next[j] = min(row[j]+1, next[j-1]+1, row[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				next[j] = min(next[j], before[j-2]+1)
			}
			least = min(least, next[j])
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

// alike lists the known words that share the most pairs of letters with a
// typed one, a third of them at least (the coefficient of Dice), best first.
func (x *Index) alike(w string) []string {
	mine := pairs(w)
	if len(mine) == 0 {
		return nil
	}
	type candidate struct {
		word  string
		share int // in percent
	}
	var best []candidate
	for _, known := range x.words {
		if isDigit(rune(known[0])) {
			continue
		}
		both, theirs := 0, pairs(known)
		for p := range theirs {
			if mine[p] {
				both++
			}
		}
		if share := 200 * both / (len(mine) + len(theirs)); share >= 33 {
			best = append(best, candidate{known, share})
		}
	}
	slices.SortStableFunc(best, func(a, b candidate) int { return b.share - a.share })
	var words []string
	for _, c := range best {
		words = append(words, c.word)
	}
	return words
}

// pairs is the set of a word's neighbouring letters.
func pairs(w string) map[string]bool {
	out := map[string]bool{}
	r := []rune(w)
	for i := 0; i+1 < len(r); i++ {
		out[string(r[i:i+2])] = true
	}
	return out
}
