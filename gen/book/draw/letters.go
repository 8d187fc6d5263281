package draw

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

// RegularShare is how wide regular letters are of bold ones, at most: the @ is
// as wide, every other letter of the same measurement is narrower than this.
const RegularShare = 0.94

// TextWidth is how wide a bold text runs at most, in heights of its capitals.
func TextWidth(text string) float64 {
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

// capShare is the height of capitals over the size of type, at most about.
const capShare = 0.73

// labelWidth is how wide a label runs at most, on a drawing.
func labelWidth(text string) float64 { return TextWidth(text) * capShare * textHeight }

// tickWidth is how wide a tick's text runs at most.
func tickWidth(text string) float64 { return labelWidth(text) * RegularShare * 14 / textHeight }
