package draw

// level draws a limit and names it where no curve runs.
func (c Chart) level(v *canvas, f box, lines [][]point, l Level) {
	y := c.y(l.At, f)
	if y < f.y || y > f.y+f.h {
		return
	}
	left := f.x
	if l.From != 0 {
		left = max(f.x, c.x(l.From, f))
	}
	v.line("limit", left, y, f.x+f.w, y)
	w := labelWidth(l.Name)
	left = max(f.x, min(left, f.x+f.w-w-16))
	bestX, bestY, bestCost := left+8, y-6, 1<<30
	for _, up := range []float64{-6, textHeight + 1} {
		for k := 0; k <= 12; k++ {
			x := left + 8 + max(f.x+f.w-left-w-16, 0)*float64(k)/12
			b := box{x - 4, y + up - textHeight, w + 8, textHeight + 6}
			cost := 0
			for _, line := range lines {
				for _, p := range line {
					if b.holds(p) {
						cost++
					}
				}
			}
			if cost < bestCost {
				bestX, bestY, bestCost = x, y+up, cost
			}
		}
	}
	v.text("label limit-name", "start", bestX, bestY, l.Name)
}

// Crossing gives where a curve first falls to a level, by straight lines
// between its points; false where it never does.
func Crossing(s Series, level float64) (float64, bool) {
	for i := range s.X {
		if s.Y[i] > level {
			continue
		}
		if i == 0 {
			return s.X[0], true
		}
		t := (s.Y[i-1] - level) / (s.Y[i-1] - s.Y[i])
		return s.X[i-1] + t*(s.X[i]-s.X[i-1]), true
	}
	return 0, false
}

func (c Chart) crossings(v *canvas, f box) {
	if c.Level == nil {
		return
	}
	for _, s := range c.Curves {
		if at, ok := Crossing(s, c.Level.At); ok && at > c.X.From && at <= c.X.To {
			x, y := c.x(at, f), c.y(c.Level.At, f)
			v.line("drop", x, y, x, f.y+f.h)
			v.circle("cross", x, y, 5)
		}
	}
}

// names writes each curve's name: beside its end where it runs to the right
// edge, on the drawing where it leaves it before.
func (c Chart) names(v *canvas, f box, lines [][]point) {
	var ends []float64
	var at []int
	var taken []box
	for i, s := range c.Curves {
		if c.leavesRight(s) && len(lines[i]) > 0 && s.Name != "" {
			ends = append(ends, lines[i][len(lines[i])-1].y)
			at = append(at, i)
		}
	}
	for k, y := range Spread(ends, textHeight*1.2, f.y+4, f.y+f.h-2) {
		right := f.x + f.w
		if d := y - ends[k]; d > 2 || d < -2 {
			v.line("leader", right+2, ends[k], right+9, y)
		}
		v.text("label", "start", right+12, y+5, c.Curves[at[k]].Name)
	}
	for i, s := range c.Curves {
		if c.leavesRight(s) || len(lines[i]) == 0 || s.Name == "" {
			continue
		}
		w := labelWidth(s.Name)
		var others [][]point
		for j, line := range lines {
			if j != i {
				others = append(others, dense(line))
			}
		}
		p, b := place(dense(lines[i]), others, taken, w, textHeight, f)
		taken = append(taken, b)
		v.text("label", "start", p.x, p.y, s.Name)
	}
}

// dense puts points along a line at least every 6 units, so that a label that
// covers it is noticed.
func dense(line []point) []point {
	var out []point
	for i, p := range line {
		if i > 0 {
			q := line[i-1]
			n := int((absolute(p.x-q.x)+absolute(p.y-q.y))/6) + 1
			for k := 1; k < n; k++ {
				t := float64(k) / float64(n)
				out = append(out, point{q.x + t*(p.x-q.x), q.y + t*(p.y-q.y)})
			}
		}
		out = append(out, p)
	}
	return out
}
