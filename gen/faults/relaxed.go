package faults

import (
	"math"
	"slices"
)

// relaxed is a lower bound on what is still to be spent. Knowing more for nothing
// never makes the best key dearer, so it lets every check that was not made tell its
// result for nothing. What is left is the least cost of the remedies alone, in
// expectation over all that the checks can say together: their words.
//
// Where there are more words than room, the cause itself is told for nothing.
//
// It is kept as what is lost in each word for not knowing the cause, on top of what
// would be spent if the cause were told too. In each word the causes that are least
// likely are told for nothing, so that the tables fit their room.
type relaxed struct {
	model  *model
	checks []int // in model.acts: those that are free; none if they have too many words
	acts   []int // in model.acts: the others
	stride []int // of the checks' results, in words
	words  int
	known  []knownCause
	losses []float32         // by word and by state of the word's acts, rounded down
	base   []int32           // of the word in losses
	place  [][]int32         // by act and word: how far the act's leads lie apart in losses
	sums   map[state]float64 // of the losses of many words, where they were asked for
}

// knownCause is the least that is spent if a cause is known, for a weight of 1, by state
// of the acts that do anything about it.
type knownCause struct {
	acts   []int
	stride []int
	value  []float64
}

// newRelaxed computes the tables, with room for about so many values.
func newRelaxed(m *model, room int) *relaxed {
	r := &relaxed{model: m, words: 1, sums: map[state]float64{}}
	words := 1.0
	for i := range m.acts {
		if m.acts[i].free() {
			words *= float64(len(m.acts[i].leads))
		} else {
			r.acts = append(r.acts, i)
		}
	}
	for i := range m.acts {
		if m.acts[i].free() && words <= float64(room) {
			r.checks = append(r.checks, i)
			r.stride = append(r.stride, r.words)
			r.words *= len(m.acts[i].leads)
		}
	}
	for c := range m.causes {
		r.known = append(r.known, r.ifOnly(c, room))
	}
	r.base = make([]int32, r.words)
	for range r.acts {
		r.place = append(r.place, make([]int32, r.words))
	}
	if words > float64(room) {
		r.losses = []float32{0}
		return r
	}
	f := filler{relaxed: r, parts: map[uint64]*part{}}
	f.least = f.threshold(float64(room))
	f.fill(len(r.checks)-1, 0, m.prior, f.word)
	return r
}

// ifOnly computes what is spent if a cause is known. Where the acts that do anything
// about it have too many states, it takes them as if they might be repeated for ever:
// the least cost for a chance to end the matter.
func (r *relaxed) ifOnly(cause, room int) knownCause {
	k := knownCause{acts: r.matters([]int{cause})}
	m := r.model.among([]int{cause}, k.acts)
	if m.states() <= float64(room) {
		t := newInduction(m)
		t.run([]float64{1})
		k.stride, k.value = t.stride, t.value
		for at := range k.value {
			if w := t.first(at, 0); w > 0 {
				k.value[at] /= w
			}
		}
		return k
	}
	_, least := m.end([]float64{1})
	gains := 0.0
	for i := range m.acts {
		a := &m.acts[i]
		gains += math.Min(0, a.cost[0])
		if a.stop[0] > 0 {
			least = math.Min(least, math.Max(0, a.cost[0])/a.stop[0])
		}
	}
	return knownCause{value: []float64{least + gains}}
}

// free says that an act only tells something, at a cost that is no gain: to have it
// for nothing is never worse.
func (a *modelAct) free() bool {
	return slices.Max(a.stop) == 0 && slices.Min(a.cost) >= 0
}

// matters lists the acts, free checks aside, that do anything given one of these
// causes: end the matter, gain something, or tell something.
func (r *relaxed) matters(causes []int) []int {
	var list []int
	for _, i := range r.acts {
		a := &r.model.acts[i]
		for _, c := range causes {
			if len(a.leads) != 1 || a.leads[0].chance[c] != 1 || a.cost[c] < 0 {
				list = append(list, i)
				break
			}
		}
	}
	return list
}

// filler computes the losses word by word.
type filler struct {
	relaxed *relaxed
	least   float64 // causes that are less likely, together with the word, are told
	parts   map[uint64]*part
}

// part is the remedies among some of the causes.
type part struct {
	causes  []int
	acts    []int // in model.acts
	size    int   // states of the acts
	weights []float64
	// remedies and knowns are the values with the cause not told and told, the latter
	// by state and cause for a weight of 1 at first; nil until they are wanted.
	remedies *induction
	knowns   []float64
}

// fill goes through the checks from the last, and calls visit for each word.
func (f *filler) fill(check, word int, w []float64, visit func(word int, w []float64)) {
	r := f.relaxed
	if check < 0 {
		visit(word, w)
		return
	}
	after := make([]float64, len(w))
	for lead, l := range r.model.acts[r.checks[check]].leads {
		mulInto(after, w, l.chance)
		f.fill(check-1, word+lead*r.stride[check], after, visit)
	}
}

// threshold finds the least chance of a cause together with a word at which the tables
// fit the room.
func (f *filler) threshold(room float64) float64 {
	low, high := -60.0, 0.0 // powers of 2
	for high-low > 0.5 {
		middle := (low + high) / 2
		f.least = math.Exp2(middle)
		total := 0.0
		f.fill(len(f.relaxed.checks)-1, 0, f.relaxed.model.prior, func(_ int, w []float64) {
			total += float64(f.likely(w).size)
		})
		if total > room {
			low = middle
		} else {
			high = middle
		}
	}
	return math.Exp2(high)
}

// likely is the part of the causes that are not told.
func (f *filler) likely(w []float64) *part {
	set := uint64(0)
	for c, x := range w {
		if x >= f.least {
			set |= 1 << c
		}
	}
	p := f.parts[set]
	if p == nil {
		p = f.relaxed.part(set)
		f.parts[set] = p
	}
	return p
}

// word computes the losses of one word.
func (f *filler) word(word int, w []float64) {
	r := f.relaxed
	r.base[word] = int32(len(r.losses))
	p := f.likely(w)
	if len(p.causes) < 2 {
		r.losses = append(r.losses, 0)
		return
	}
	for i, c := range p.causes {
		p.weights[i] = w[c]
	}
	r.losses = p.losses(r, r.losses)
	for i, act := range p.acts {
		r.place[slices.Index(r.acts, act)][word] = int32(p.remedies.stride[i])
	}
}

// part makes the part of a set of causes.
func (r *relaxed) part(set uint64) *part {
	p := &part{size: 1}
	for c := range r.model.causes {
		if set>>c&1 == 1 {
			p.causes = append(p.causes, c)
		}
	}
	if len(p.causes) < 2 {
		return p
	}
	p.acts = r.matters(p.causes)
	p.weights = make([]float64, len(p.causes))
	size := 1.0
	for _, i := range p.acts {
		size *= float64(len(r.model.acts[i].leads) + 1)
	}
	p.size = int(math.Min(size, math.MaxInt32))
	return p
}

// losses appends what is lost in each state for not knowing the cause.
func (p *part) losses(r *relaxed, to []float32) []float32 {
	n := len(p.causes)
	if p.remedies == nil {
		p.remedies = newInduction(r.model.among(p.causes, p.acts))
		p.knowns = make([]float64, n*p.size)
		for i, c := range p.causes {
			known := newInduction(r.model.among([]int{c}, p.acts))
			known.run([]float64{1})
			for s, v := range known.value {
				p.knowns[s*n+i] = v
			}
		}
	}
	p.remedies.run(p.weights)
	for s, v := range p.remedies.value {
		for i, known := range p.knowns[s*n : s*n+n] {
			v -= known * p.weights[i]
		}
		to = append(to, roundDown(v))
	}
	return to
}

// roundDown gives the next number that is not above.
func roundDown(v float64) float32 {
	x := float32(v)
	if float64(x) > v {
		x = math.Nextafter32(x, float32(math.Inf(-1)))
	}
	return x
}

// ifKnown is what is still spent, weighted, if the cause were told.
func (r *relaxed) ifKnown(s state, w []float64) float64 {
	total := 0.0
	for c := range r.known {
		if w[c] > 0 {
			k := &r.known[c]
			at := 0
			for j, i := range k.acts {
				at += r.model.acts[i].lead(s) * k.stride[j]
			}
			total += w[c] * k.value[at]
		}
	}
	return total
}

// bound is the lower bound for a state with its weights.
func (r *relaxed) bound(s state, w []float64) float64 {
	if sum, ok := r.sums[s]; ok {
		return r.ifKnown(s, w) + sum
	}
	b := sumOfLosses{relaxed: r}
	word, words := 0, 1
	for k, i := range r.checks {
		a := &r.model.acts[i]
		if lead := a.lead(s); lead > 0 {
			word += (lead - 1) * r.stride[k]
		} else {
			b.stride[b.open], b.leads[b.open] = r.stride[k], len(a.leads)
			b.open++
			words *= len(a.leads)
		}
	}
	for k, i := range r.acts {
		if lead := r.model.acts[i].lead(s); lead > 0 {
			b.place[b.done], b.lead[b.done] = r.place[k], int32(lead)
			b.done++
		}
	}
	sum := b.over(word, b.open)
	if words >= manyWords {
		r.sums[s] = sum
	}
	return r.ifKnown(s, w) + sum
}

// manyWords is how many words make a sum worth keeping.
const manyWords = 64

// sumOfLosses adds the losses of the words that the checks not made leave open.
type sumOfLosses struct {
	relaxed       *relaxed
	open, done    int
	stride, leads [maxActs]int     // of the checks not made
	place         [maxActs][]int32 // of the other acts that were done
	lead          [maxActs]int32
}

func (b *sumOfLosses) over(word, open int) float64 {
	if open == 0 {
		at := b.relaxed.base[word]
		for d := range b.done {
			at += b.place[d][word] * b.lead[d]
		}
		return float64(b.relaxed.losses[at])
	}
	total := 0.0
	for range b.leads[open-1] {
		total += b.over(word, open-1)
		word += b.stride[open-1]
	}
	return total
}
