package book

import (
	"strings"
	"unicode/utf8"

	"laydown/gen/book/draw"
)

// linesOf counts the lines that a bold text takes at most, as a browser breaks
// it: at spaces and after hyphens, as much on a line as fits.
func linesOf(text string, width float64) int { return linesFrom(0, text, width) }

// linesFrom counts the lines of a text whose first line is used up to some width by what
// stands before it.
func linesFrom(used float64, text string, width float64) int {
	lines := 1
	for _, piece := range pieces(text) {
		bare := draw.TextWidth(strings.TrimRight(piece, " "))
		if used > 0 && used+bare > width {
			lines++
			used = 0
		}
		used += draw.TextWidth(piece)
	}
	return lines
}

// pieces cuts a text where a line may break; each piece keeps its end.
func pieces(text string) []string {
	var list []string
	for text != "" {
		i := strings.IndexAny(text, " -")
		if i < 0 {
			return append(list, text)
		}
		_, n := utf8.DecodeRuneInString(text[i:])
		list = append(list, text[:i+n])
		text = text[i+n:]
	}
	return list
}

// longestPiece is the width of the widest piece: what a column needs at least.
func longestPiece(text string) float64 {
	w := 0.0
	for _, piece := range pieces(text) {
		w = max(w, draw.TextWidth(strings.TrimRight(piece, " ")))
	}
	return w
}
