package draw

import "math"

// arc is the points of a part of a circle, from one angle to another in degrees:
// 0 to the right, 90 downwards.
func arc(centre point, r, from, to float64) []point {
	n := 2 + int(math.Abs(to-from)/6)
	pts := make([]point, n+1)
	for i := range pts {
		a := (from + (to-from)*float64(i)/float64(n)) * math.Pi / 180
		pts[i] = point{centre.x + r*math.Cos(a), centre.y + r*math.Sin(a)}
	}
	return pts
}

// oval is the outline of an ellipse in 36 steps, its lower half first.
func oval(centre point, rx, ry float64) []point {
	pts := make([]point, 37)
	for i := range pts {
		a := float64(i) * math.Pi / 18
		pts[i] = point{centre.x + rx*math.Cos(a), centre.y + ry*math.Sin(a)}
	}
	return pts
}
