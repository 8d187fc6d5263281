package book

import (
	"fmt"
	"strconv"
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

// content is the width and the height inside a chart's margins, in cap heights.
func (p paper) content() (width, height float64) {
	edge := 2 * (trimMM + padCaps*p.Cap)
	return (p.Width - edge) / p.Cap, (p.Height - edge) / p.Cap
}

// decimals writes a measure with at most n decimals.
func decimals(v float64, n int) string {
	text := strconv.FormatFloat(v, 'f', n, 64)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}
