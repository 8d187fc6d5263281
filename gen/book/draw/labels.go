package draw

import "sort"

// Spread moves labels that stand too close along a line: it gives for each
// wanted place the place where it stands, all at least gap apart, inside low
// and high, in the order of the wanted places and as near to them as that
// allows.
func Spread(want []float64, gap, low, high float64) []float64 {
	order := make([]int, len(want))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return want[order[a]] < want[order[b]] })

	// Runs of labels that touch are moved as one block, about their mean.
	type block struct {
		first, n int
		sum      float64 // of (want - offset in the block)
	}
	at := func(b block) float64 {
		top := b.sum / float64(b.n)
		if top < low {
			top = low
		}
		if last := high - gap*float64(b.n-1); top > last {
			top = last
		}
		return top
	}
	var blocks []block
	for k, i := range order {
		blocks = append(blocks, block{first: k, n: 1, sum: want[i]})
		for len(blocks) > 1 {
			a, b := blocks[len(blocks)-2], blocks[len(blocks)-1]
			if at(a)+gap*float64(a.n) <= at(b)+1e-9 {
				break
			}
			a.sum += b.sum - float64(b.n)*gap*float64(a.n)
			a.n += b.n
			blocks = append(blocks[:len(blocks)-2], a)
		}
	}
	placed := make([]float64, len(want))
	for _, b := range blocks {
		top := at(b)
		for k := 0; k < b.n; k++ {
			placed[order[b.first+k]] = top + gap*float64(k)
		}
	}
	return placed
}

// box is the room that a label takes.
type box struct{ x, y, w, h float64 }

func (b box) meets(o box) bool {
	return b.x < o.x+o.w && o.x < b.x+b.w && b.y < o.y+o.h && o.y < b.y+b.h
}

func (b box) holds(p point) bool {
	return p.x > b.x && p.x < b.x+b.w && p.y > b.y && p.y < b.y+b.h
}

// place finds for a label the spot beside its own curve where it covers least:
// other labels count most, then other curves, then its own.
func place(own []point, others [][]point, taken []box, w, h float64, frame box) (point, box) {
	best, bestCost := point{}, 1e18
	var bestBox box
	for i := range own {
		for _, side := range []point{{8, -6}, {8, h - 2}, {-8 - w, h - 2}, {-8 - w, -6}} {
			p := point{own[i].x + side.x, own[i].y + side.y}
			b := box{p.x, p.y - h*0.8, w, h}
			cost := 0.0
			if b.x < frame.x || b.y < frame.y || b.x+b.w > frame.x+frame.w || b.y+b.h > frame.y+frame.h {
				cost += 1e6
			}
			for _, t := range taken {
				if b.meets(t) {
					cost += 1e4
				}
			}
			for _, line := range others {
				for _, q := range line {
					if b.holds(q) {
						cost += 30
					}
				}
			}
			for _, q := range own {
				if b.holds(q) {
					cost += 60
				}
			}
			// Rather near the middle of the curve than at its ends.
			mid := float64(len(own)-1) / 2
			cost += absolute(float64(i)-mid) / (mid + 1) * 5
			if cost < bestCost {
				best, bestBox, bestCost = p, b, cost
			}
		}
	}
	return best, bestBox
}

func absolute(v float64) float64 {
	if v < 0 {
		return -v
	}
	return v
}
