package draw

import (
	"html/template"
	"strings"
)

// Mark draws the mark of a verdict, width by height: a solid bar for go, a
// hatched bar for wait, half solid and half empty for change, and an empty
// bar struck through for refuse. The word stands beside it on the page, so
// the mark itself is hidden from readers that speak. An unknown verdict gives
// an empty bar.
func Mark(verdict string, width, height float64) template.HTML {
	var c canvas
	c.raw(`<svg class="mark" viewBox="0 0 ` + number(width) + ` ` + number(height) + `" width="` + number(width) + `" height="` + number(height) + `" aria-hidden="true" focusable="false">`)
	edge := 2.0
	if height < 16 {
		edge = 1.5
	}
	x, y, w, h := edge/2, edge/2, width-edge, height-edge
	class := "mark-edge"
	if height < 16 {
		class = "mark-edge fine"
	}
	switch verdict {
	case "go":
		c.rect("mark-fill", x, y, w, h)
	case "wait":
		pitch := height * 0.45
		if height < 16 {
			pitch = height * 0.55
		}
		c.raw(`<path class="` + strings.Replace(class, "edge", "hatch", 1) + `" d="` + slant(x, y, w, h, pitch) + `"/>`)
	case "change":
		c.rect("mark-fill", x, y, w/2, h)
	case "refuse":
		c.raw(`<path class="` + class + `" d="M` + number(x) + ` ` + number(y+h) + `L` + number(x+w) + ` ` + number(y) + `"/>`)
	}
	c.rect(class, x, y, w, h)
	return c.close()
}

// slant is the path of lines that rise to the right at 45 degrees through a
// box, pitch apart along the level, cut off at the box's edges.
func slant(x, y, w, h, pitch float64) string {
	var b strings.Builder
	for s := pitch / 2; s < w+h; s += pitch {
		// From (x+s, y) down to the left until the left edge or the bottom.
		x1, y1 := x+s, y
		if s > w {
			x1, y1 = x+w, y+(s-w)
		}
		x2, y2 := x+s-h, y+h
		if s < h {
			x2, y2 = x, y+s
		}
		b.WriteString("M" + number(x2) + " " + number(y2) + "L" + number(x1) + " " + number(y1))
	}
	return b.String()
}
