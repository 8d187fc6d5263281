package draw

import (
	"html/template"
	"math"
	"strings"
)

// Passed is a sheet that has gone through a nip, with what its blisters are made of at
// equal steps from the leading edge to the trailing one.
type Passed struct {
	Name string
	// Size is how large blisters grow at each place, Fed how much all up to there are
	// made of, each over the greatest of all the sheets, 0 to 1.
	Size, Fed []float64
	First     float64 // where the first lies, over the sheet's length; above 1 nowhere
	Said      string  // where that is, as a person reads it
}

// mostBlisters is how many are drawn on the sheet that has most.
const mostBlisters = 70

// Blisters draws sheets one under the other, leading edge to the left, with blisters that
// grow in number and in size along the feed. It teaches where they lie; their number and
// size are only in proportion.
func Blisters(id, title, length string, sheets []Passed) template.HTML {
	const (
		left, width   = 2.0, 500.0
		top           = 34.0
		high, between = 62.0, 14.0
	)
	height := top + float64(len(sheets))*(high+between) + 22
	var said []string
	for _, s := range sheets {
		said = append(said, s.Name+": "+s.Said)
	}
	var v canvas
	v.open(id, "section", chartWidth, height, title, "The first blister lies, counted from the leading edge, with "+strings.Join(said, "; ")+".")
	v.path("lead", []point{{left + 90, 14}, {left + 8, 14}})
	v.path("lead", []point{{left + 18, 9}, {left + 8, 14}, {left + 18, 19}})
	v.text("tick", "start", left+98, 19, "feed direction")
	y := top
	for i, s := range sheets {
		v.rect("outline", left, y, width, high)
		if s.First >= 0 && s.First <= 1 {
			x := left + s.First*width
			v.line("limit", x, y, x, y+high)
		}
		for _, b := range blisters(s, i) {
			// A blister keeps clear of the edges of the sheet.
			r := math.Min(b.r, high/2-2)
			cx := math.Max(left+r+1, math.Min(left+width-r-1, left+b.x*width))
			cy := y + r + 2 + b.y*(high-2*r-4)
			v.circle("bubble", cx, cy, r)
		}
		v.text("label", "start", left+width+14, y+high/2-4, s.Name)
		v.text("tick", "start", left+width+14, y+high/2+16, s.Said)
		y += high + between
	}
	v.text("tick", "start", left, y+8, "leading edge")
	v.text("tick", "end", left+width, y+8, length+" to the trailing edge")
	return v.close()
}

type blister struct{ x, y, r float64 }

// blisters places a sheet's blisters: the n-th where what all are made of reaches the
// n-th part of the whole, across the sheet by the golden section, so that they neither
// line up nor depend on chance.
func blisters(s Passed, seed int) []blister {
	var list []blister
	n := 0
	for i := 1; i < len(s.Fed); i++ {
		for s.Fed[i]*mostBlisters >= float64(n)+0.5 && s.Fed[i] > s.Fed[i-1] {
			want := (float64(n) + 0.5) / mostBlisters
			part := (want - s.Fed[i-1]) / (s.Fed[i] - s.Fed[i-1])
			part = math.Max(0, math.Min(1, part))
			_, across := math.Modf((float64(n) + 0.37*float64(seed)) * 0.6180339887498949)
			list = append(list, blister{(float64(i-1) + part) / float64(len(s.Fed)-1), across, 1.5 + 7.5*math.Sqrt(s.Size[i])})
			n++
		}
	}
	return list
}
