package faults

import (
	"math/rand/v2"
	"testing"
)

// everyState calls visit for each state of a model that can be come to.
func everyState(m *model, visit func(s state, w []float64)) {
	w := make([]float64, m.causes)
	var from func(i int, s state)
	from = func(i int, s state) {
		if i == len(m.acts) {
			if m.weights(s, w); sum(w) > 0 {
				visit(s, w)
			}
			return
		}
		from(i+1, s)
		for _, l := range m.acts[i].leads {
			from(i+1, s|l.mark)
		}
	}
	from(0, 0)
}

// TestRelaxedIsBelow: in every state, the bound of the search is not above the value,
// and a check's leads share out the bound of the state before it.
func TestRelaxedIsBelow(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	states, close := 0, 0
	for i := range 1000 {
		m, err := newModel(small(r))
		if err != nil {
			t.Fatal(err)
		}
		exact := newInduction(m)
		exact.run(m.prior)
		for _, room := range []int{1, 64, 1 << 20} {
			b := newRelaxed(m, room)
			everyState(m, func(s state, w []float64) {
				value, _ := exact.bounds(s, w)
				bound := b.bound(s, w)
				if bound > value+1e-9 {
					t.Fatalf("problem %d, room %d, state %b: bound %.9g above %.9g\n%+v", i, room, s, bound, value, m.problem)
				}
				states++
				if bound > value-1e-6 {
					close++
				}
				after := make([]float64, len(w))
				for k := range m.acts {
					a := &m.acts[k]
					if a.done(s) || !a.free() {
						continue
					}
					shared := 0.0
					for _, l := range a.leads {
						if mulInto(after, w, l.chance) > 0 {
							shared += b.bound(s|l.mark, after)
						}
					}
					if d := shared - bound; d > 1e-9 || d < -1e-9 {
						t.Fatalf("problem %d, room %d, state %b: the leads of act %d sum to %.9g, the bound is %.9g", i, room, s, k, shared, bound)
					}
				}
			})
		}
	}
	if close == states || close == 0 {
		t.Errorf("the bound is the value in %d of %d states", close, states)
	}
	t.Logf("%d states; in %d the bound is the value", states, close)
}
