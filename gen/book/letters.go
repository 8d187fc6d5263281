package book

import (
	"strings"
	"unicode/utf8"
)

// letterWidths are the advance widths of bold letters, in cap heights: those of
// DejaVu Sans Bold, measured, the widest of the sans faces that a machine is
// likely to set a page in. Text that fits by them fits in narrower faces too.
var letterWidths = eachLetter([]sameWidth{
	{0.42, "'"}, {0.48, " \u00a0ijl"}, {0.51, "/\\|IJ"}, {0.54, ",.’:;"}, {0.60, "-f²"}, {0.62, "!()[]"},
	{0.68, "tr_`°–"}, {0.71, "\"*"}, {0.80, "?zcs"}, {0.89, "Lxvy"}, {0.92, "akeäé"}, {0.94, "EFToö"},
	{0.95, "$0123456789"}, {0.98, "bdghnpqu{}üS"}, {1.00, "CPYZµ"}, {1.06, "ABKRVX"}, {1.14, "DGU#+<=>HN^~×"},
	{1.20, "OQ&"}, {1.26, "w"}, {1.42, "%@Mm½"}, {1.50, "W"},
})

// sameWidth are letters of one width.
type sameWidth struct {
	width float64
	all   string
}

func eachLetter(list []sameWidth) map[rune]float64 {
	widths := map[rune]float64{}
	for _, l := range list {
		for _, r := range l.all {
			widths[r] = l.width
		}
	}
	return widths
}

// widestLetter stands for every letter that the list lacks.
const widestLetter = 1.5

// regularShare is how wide regular letters are of bold ones, at most: the @ is
// as wide, every other letter of the same measurement is narrower than this.
const regularShare = 0.94

// textWidth is how wide a bold text runs at most, in heights of its capitals.
func textWidth(text string) float64 {
	w := 0.0
	for _, r := range text {
		if width, ok := letterWidths[r]; ok {
			w += width
		} else {
			w += widestLetter
		}
	}
	return w
}

// linesOf counts the lines that a bold text takes at most, as a browser breaks
// it: at spaces and after hyphens, as much on a line as fits.
func linesOf(text string, width float64) int {
	lines, used := 1, 0.0
	for _, piece := range pieces(text) {
		bare := textWidth(strings.TrimRight(piece, " "))
		if used > 0 && used+bare > width {
			lines++
			used = 0
		}
		used += textWidth(piece)
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
		w = max(w, textWidth(strings.TrimRight(piece, " ")))
	}
	return w
}
