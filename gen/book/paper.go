package book

import (
	"fmt"
	"strings"
)

// paper is a sheet that wall charts are made for, lying on its long side, and
// how large the letters on it stand.
type paper struct {
	Name          string
	Width, Height float64 // mm
	// Cap is the height of the capitals of headings and numbers, in mm.
	Cap float64
}

// papers are the sheets that a shop may ask for. A2 and Tabloid are no words
// of CSS: every size is written out in millimetres.
var papers = []paper{
	{"A4", 297, 210, 5},
	{"A3", 420, 297, 10},
	{"A2", 594, 420, 14},
	{"Letter", 279.4, 215.9, 5},
	{"Tabloid", 431.8, 279.4, 10},
}

// farPerCap is how many cap heights off a chart reads: letters of a two
// hundredth of the distance are common practice among sign makers, no source.
const farPerCap = 200

// Distance is how far off the headings and numbers read, in metres.
func (p paper) Distance() float64 { return p.Cap * farPerCap / 1000 }

// Far writes the distance in both systems.
func (p paper) Far() string {
	return fmt.Sprintf("%s\u00a0m (%.1f\u00a0ft)", short3(p.Distance()), p.Distance()/0.3048)
}

// Near writes how far off the media's names read.
func (p paper) Near() string { return paper{Cap: p.Cap * mediumCap}.Far() }

// Slug is the paper's name in a path.
func (p paper) Slug() string { return strings.ToLower(p.Name) }

// The measures of a chart, in cap heights unless they say mm. The style sheet
// has the same ones: chart.css reads --cap, and the rest stands there.
const (
	trimMM      = 8.0  // from the paper's edge to the trim of the laminated chart
	padCaps     = 0.75 // from the trim to the text
	titleCaps   = 2.1  // the title's line
	headCaps    = 3.5  // the head of the table
	rowCaps     = 2.9  // a row
	tallRowCaps = 4.35 // a row whose ink's name takes two lines
	footCaps    = 3.5  // the two lines of advice and the line with the stamp
	columnCaps  = 5.0  // a column of numbers, at least
	columnShare = 0.11 // of the width, at least
)

// mediumCap is the height of the capitals of the media's names over those of
// headings and numbers: they read from that much nearer.
const mediumCap = 0.7

// content is the width and the height inside a chart's margins, in mm.
func (p paper) content() (width, height float64) {
	edge := 2 * (trimMM + padCaps*p.Cap)
	return p.Width - edge, p.Height - edge
}

// column is the width of a column of numbers, in mm.
func (p paper) column() float64 {
	w, _ := p.content()
	return max(columnCaps*p.Cap, columnShare*w)
}

// roomForRows is what is left for rows, in mm.
func (p paper) roomForRows() float64 {
	_, h := p.content()
	return h - (titleCaps+headCaps+footCaps)*p.Cap
}

// CSS is the style sheet that sets the page's size and letters.
func (p paper) CSS() string {
	return fmt.Sprintf("@page { size: %smm %smm; margin: 0 }\n:root { --w: %smm; --h: %smm; --cap: %smm; --trim: %smm; --column: %smm }\n",
		short4(p.Width), short4(p.Height), short4(p.Width), short4(p.Height), short4(p.Cap), short4(trimMM), short4(p.column()))
}

func short4(v float64) string { return strings.TrimSuffix(fmt.Sprintf("%.1f", v), ".0") }

// textWidth is how wide a bold text runs, in cap heights. The widths are those
// of common sturdy sans faces, from memory, rounded up.
func textWidth(text string) float64 {
	w := 0.0
	for _, r := range text {
		switch {
		case strings.ContainsRune("ijl.,:;'|! \u00a0", r):
			w += 0.42
		case strings.ContainsRune("tfr-()/", r):
			w += 0.56
		case strings.ContainsRune("mwMW%", r):
			w += 1.3
		case strings.ContainsRune("bdghnopqu", r):
			w += 0.89
		case r >= 'A' && r <= 'Z':
			w += 1.06
		default:
			w += 0.82
		}
	}
	return w
}
