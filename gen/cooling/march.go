package cooling

import "math"

// How cells and steps are chosen.
const (
	// resolution is about how many cells a laminate's resistance is cut into,
	// leastCells and mostChosen what a layer then gets.
	resolution = 60
	leastCells = 6
	mostChosen = 60
	// firstStep is the first step of a stage over the time that the quickest cell
	// takes to even out; growth is how much longer each further step is. A tenth
	// instead of a twentieth would make the curve four times as wrong.
	firstStep = 0.1
	growth    = 1.05
)

// gamma is the coefficient of the two-stage method.
const gamma = 1 - 1/math.Sqrt2

// cells is a laminate cut up, and its temperatures.
type cells struct {
	t        []float64 // K
	capacity []float64 // J/(m² K)
	link     []float64 // W/(m² K) to the cell above; link[0] is not used
	top, end float64   // resistance from the first and last node to the face, m² K/W
	start    []int     // first cell of each layer, and the end
	slowness float64   // the least of dx²/α, s

	// boundary of the stage
	faceLink, faceTo, backLink, backTo float64

	change, work []float64
}

// cut makes cells of the layers.
func cut(layers []Layer, fine int) *cells {
	c := &cells{slowness: math.Inf(1)}
	total := 0.0
	for _, l := range layers {
		total += float64(l.Thickness) / float64(l.Conductivity)
	}
	below, gap := 0.0, 0.0
	for _, l := range layers {
		r := float64(l.Thickness) / float64(l.Conductivity)
		n := l.Cells
		if n == 0 {
			n = min(max(int(math.Ceil(resolution*r/total)), leastCells), mostChosen) * fine
		}
		c.start = append(c.start, len(c.t))
		half, dx := r/float64(2*n), float64(l.Thickness)/float64(n)
		c.slowness = min(c.slowness, dx*dx/float64(l.Diffusivity()))
		for i := range n {
			if len(c.t) == 0 {
				c.top = half
				c.link = append(c.link, 0)
			} else {
				c.link = append(c.link, 1/(below+gap+half))
			}
			c.capacity = append(c.capacity, l.HeatCapacity()/float64(n))
			c.t = append(c.t, l.startBetween(dx*float64(i), dx*float64(i+1)))
			below, gap = half, 0
		}
		if l.Below > 0 {
			gap = 1 / float64(l.Below)
		}
		c.end = half
	}
	c.start = append(c.start, len(c.t))
	n := len(c.t)
	c.change, c.work = make([]float64, n), make([]float64, n)
	return c
}

// expose sets what the faces meet.
func (c *cells) expose(s Stage) {
	c.faceLink, c.faceTo = series(float64(s.Face.Conductance), c.top), float64(s.Face.Temperature)
	c.backLink, c.backTo = series(float64(s.Back.Conductance), c.end), float64(s.Back.Temperature)
}

// series is a conductance behind a resistance.
func series(h, r float64) float64 {
	if h == 0 {
		return 0
	}
	return 1 / (1/h + r)
}

// step marches over h seconds, and gives the heat per area that came in by the face
// and by the back, in J/m². The two stages of the method (see package comment) are
//
//	(C + γhK)·(u − y)  = γh·(b − K·y)
//	(C + γhK)·(y' − v) = γh·(b − K·v),  v = y + (1−γ)/γ·(u − y)
//
// and count with 1 − γ and γ in what flows. Written in differences, so that rounding
// stays that of one temperature however long the step is.
func (c *cells) step(h float64) (face, back float64) {
	last := len(c.t) - 1
	tau := gamma * h
	c.solve(tau)
	face = (1 - gamma) * h * c.faceLink * (c.faceTo - c.t[0] - c.change[0])
	back = (1 - gamma) * h * c.backLink * (c.backTo - c.t[last] - c.change[last])
	for i := range c.t {
		c.t[i] += (1 - gamma) / gamma * c.change[i]
	}
	c.solve(tau)
	for i := range c.t {
		c.t[i] += c.change[i]
	}
	face += tau * c.faceLink * (c.faceTo - c.t[0])
	back += tau * c.backLink * (c.backTo - c.t[last])
	return face, back
}

// solve solves (C + τK)·change = τ·(b − K·t) by elimination.
func (c *cells) solve(tau float64) {
	x := c.change
	last := len(x) - 1
	for i := range x {
		diagonal := c.capacity[i]
		if i == 0 {
			diagonal += tau * c.faceLink
		} else {
			diagonal += tau * c.link[i]
		}
		if i == last {
			diagonal += tau * c.backLink
		} else {
			diagonal += tau * c.link[i+1]
		}
		r := tau * c.flow(i)
		if i > 0 {
			diagonal -= tau * c.link[i] * c.work[i-1]
			r += tau * c.link[i] * x[i-1]
		}
		x[i] = r / diagonal
		if i < last {
			c.work[i] = tau * c.link[i+1] / diagonal
		}
	}
	for i := last - 1; i >= 0; i-- {
		x[i] += c.work[i] * x[i+1]
	}
}

// flow is the heat flow into a cell now, W/m².
func (c *cells) flow(i int) float64 {
	last := len(c.t) - 1
	flow := 0.0
	if i == 0 {
		flow += c.faceLink * (c.faceTo - c.t[0])
	} else {
		flow += c.link[i] * (c.t[i-1] - c.t[i])
	}
	if i == last {
		flow += c.backLink * (c.backTo - c.t[last])
	} else {
		flow += c.link[i+1] * (c.t[i+1] - c.t[i])
	}
	return flow
}

// slope is how fast a cell's temperature changes now, K/s.
func (c *cells) slope(i int) float64 { return c.flow(i) / c.capacity[i] }

// stored is the heat per area above a temperature, J/m².
func (c *cells) stored(above float64) float64 {
	sum := 0.0
	for i, t := range c.t {
		sum += c.capacity[i] * (t - above)
	}
	return sum
}
