package draw

import "fmt"

// Band is what lies between two curves where the upper one is above the lower
// one: drawn as hatch, with its name inside.
type Band struct {
	Name      string
	X         []float64 // ascends
	Low, High []float64
	Across    bool // hatched the other way, so that two bands can be told apart where they overlap
}

// bands draws the hatch of every band, cut to its shape.
func (c Chart) bands(v *canvas, f box) {
	var taken []box
	for i, b := range c.Bands {
		runs := b.open()
		for k, run := range runs {
			shape := make([]point, 0, 2*len(run))
			for _, p := range run {
				shape = append(shape, point{c.x(p.x, f), c.y(p.high, f)})
			}
			for k := len(run) - 1; k >= 0; k-- {
				shape = append(shape, point{c.x(run[k].x, f), c.y(run[k].low, f)})
			}
			hatched(v, f, fmt.Sprintf("%s-b%d-%d", c.ID, i, k), shape, b.Across)
		}
		if len(runs) > 0 && b.Name != "" {
			taken = append(taken, c.bandName(v, f, b, taken))
		}
	}
}

// hatched fills a polygon with slanting lines.
func hatched(v *canvas, f box, id string, shape []point, across bool) {
	v.raw(`<clipPath id="` + id + `"><path d="`)
	for i, p := range shape {
		if i == 0 {
			v.raw("M")
		} else {
			v.raw("L")
		}
		v.raw(number(p.x) + " " + number(min(max(p.y, f.y), f.y+f.h)))
	}
	v.raw(`Z"/></clipPath>`)
	x, y, w, h := bounding(shape, f)
	d := slant(x, y, w, h, 16)
	if across {
		d = flip(d, 2*x+w)
	}
	if d != "" {
		v.raw(`<path class="hatch" clip-path="url(#` + id + `)" d="` + d + `"/>`)
	}
}

// bounding is the box about a polygon, inside the frame.
func bounding(shape []point, f box) (x, y, w, h float64) {
	low, high := shape[0], shape[0]
	for _, p := range shape {
		low = point{min(low.x, p.x), min(low.y, p.y)}
		high = point{max(high.x, p.x), max(high.y, p.y)}
	}
	low.y, high.y = max(low.y, f.y), min(high.y, f.y+f.h)
	return low.x, low.y, high.x - low.x, high.y - low.y
}

// bandName writes a band's name in it where it is highest, beside the names
// that are there; a band too narrow for its name has none.
func (c Chart) bandName(v *canvas, f box, b Band, taken []box) box {
	w := labelWidth(b.Name)
	best, bestRoom := box{}, -1e18
	for i := range b.X {
		x, low, high := c.x(b.X[i], f), c.y(b.Low[i], f), c.y(b.High[i], f)
		at := box{x - w/2, (low+high)/2 - textHeight/2, w, textHeight}
		room := low - high
		if at.x < f.x+4 || at.x+w > f.x+f.w-4 {
			room -= 1e3
		}
		for _, t := range taken {
			if at.meets(box{t.x - 8, t.y - 2, t.w + 16, t.h + 4}) {
				room -= 1e4
			}
		}
		if room > bestRoom {
			best, bestRoom = at, room
		}
	}
	if bestRoom < 2*textHeight {
		return box{}
	}
	v.text("label band-name", "start", best.x, best.y+textHeight*0.8, b.Name)
	return best
}

// slice is a band at one place.
type slice struct{ x, low, high float64 }

// open parts a band into the runs where it is open, cut where its sides cross.
func (b Band) open() [][]slice {
	var runs [][]slice
	var run []slice
	for i := range b.X {
		here := slice{b.X[i], b.Low[i], b.High[i]}
		if i > 0 {
			last := slice{b.X[i-1], b.Low[i-1], b.High[i-1]}
			if now, was := here.high-here.low, last.high-last.low; now > 0 != (was > 0) {
				t := was / (was - now)
				y := last.low + t*(here.low-last.low)
				run = append(run, slice{last.x + t*(here.x-last.x), y, y})
			}
		}
		if here.high > here.low {
			run = append(run, here)
			continue
		}
		if len(run) > 1 {
			runs = append(runs, run)
		}
		run = nil
	}
	if len(run) > 1 {
		runs = append(runs, run)
	}
	return runs
}
