package tables

import (
	"math"
	"testing"

	"laydown/gen/shop"
)

func spreadOf(t testing.TB, made *Tables, ink, medium string) map[string]WaitMove {
	t.Helper()
	moves, err := made.WaitSpread(WaitCase{ink, medium, "normal", "hung", made.shop.Front.Room.ID})
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]WaitMove{}
	before := math.Inf(1)
	for _, m := range moves {
		if m.Size() > before {
			t.Errorf("%s on %s: %s moves it %.2f times and stands after one that moves it less", ink, medium, m.Input, m.Size())
		}
		before = m.Size()
		found[m.Input] = m
	}
	return found
}

// What is anchored hardly matters where the anchor holds, and matters where a wait
// rests on a transfer; the maker's wait does the reverse.
func TestWaitSpreadKnowsTheAnchor(t *testing.T) {
	made := demoTables(t)
	here, there := spreadOf(t, made, "eco-solvent", "vinyl-calendered"), spreadOf(t, made, "eco-solvent", "canvas")
	makers := here["the maker's wait"]
	if math.Abs(makers.Waits[0].Hours()-12) > 0.01 || math.Abs(makers.Waits[1].Hours()-48) > 0.01 {
		t.Errorf("the maker's wait from 12 to 48 h makes the wait %.2f to %.2f h in the maker's own case", makers.Waits[0].Hours(), makers.Waits[1].Hours())
	}
	if m, ok := here["carrier in a fresh print"]; ok {
		t.Errorf("in the maker's own case the load moves the wait %.2f times", m.Size())
	}
	for _, input := range []string{"layer that takes the carrier up", "mobility of a carrier in the medium", "carrier in a fresh print"} {
		if m := there[input]; !(m.Size() > 1.3) {
			t.Errorf("on another medium %s moves the wait %.2f times", input, m.Size())
		}
	}
	if !(there["the maker's wait"].Size() < makers.Size()) {
		t.Error("on another medium the maker's wait moves it as much as on its own")
	}
}

// Warmer and windier are never later; more damp is never sooner for a carrier that
// holds water.
func TestWaitSpreadHasTheSignsOfPhysics(t *testing.T) {
	made := demoTables(t)
	for _, p := range [][2]string{{"eco-solvent", "canvas"}, {"solvent", "vinyl-calendered"}, {"aqueous-dye", "photo-microporous"}, {"offset", "coated-silk-150"}} {
		found := spreadOf(t, made, p[0], p[1])
		warm, ok := found["temperature of the room"]
		if !ok || !(warm.Waits[1] < warm.Waits[0]) {
			t.Errorf("%s: cold %.2f h, warm %.2f h", p[0], warm.Waits[0].Hours(), warm.Waits[1].Hours())
		}
		if wind, ok := found["movement of the room's air"]; ok && !(wind.Waits[1] < wind.Waits[0]) {
			t.Errorf("%s: still %.2f h, windy %.2f h", p[0], wind.Waits[0].Hours(), wind.Waits[1].Hours())
		}
	}
	damp := spreadOf(t, made, "aqueous-dye", "photo-microporous")["humidity of the room"]
	if !(damp.Waits[1] > damp.Waits[0]) {
		t.Errorf("dry %.2f h, damp %.2f h", damp.Waits[0].Hours(), damp.Waits[1].Hours())
	}
}

// Every ink has its spread on every medium, a maker who says "at once" included; a
// wait that nothing meets is told as such. The shop itself stays as it was.
func TestWaitSpreadOfEveryPrint(t *testing.T) {
	made := demoTables(t)
	before := *made.shop.Ink("latex").Evaporation
	none, zero := 0, 0
	for _, ink := range made.shop.Inks {
		for _, medium := range made.shop.Media {
			if !made.shop.PrintsOn(ink, medium) {
				continue
			}
			moves, err := made.WaitSpread(WaitCase{ink.ID, medium.ID, "normal", made.usualStorage(medium), made.shop.Front.Room.ID})
			if err != nil {
				t.Fatalf("%s on %s: %v", ink.ID, medium.ID, err)
			}
			for _, m := range moves {
				for i := range m.Waits {
					if !m.Solved[i] {
						none++
					} else if m.Waits[i] == 0 && m.Dries[i] {
						zero++
					}
				}
			}
		}
	}
	if none == 0 || zero == 0 {
		t.Errorf("%d ends that nothing meets, %d at once: one of them is not told", none, zero)
	}
	if *made.shop.Ink("latex").Evaporation != before {
		t.Error("the shop's own record was changed")
	}
	if _, err := made.WaitSpread(WaitCase{Ink: "none"}); err == nil {
		t.Error("no ink: no error")
	}
}

func TestReplaced(t *testing.T) {
	a, b, c := &shop.Room{}, &shop.Room{}, &shop.Room{}
	list := []*shop.Room{a, b}
	if got := replaced(list, b, c); got[0] != a || got[1] != c || list[1] != b {
		t.Errorf("%p %p of %p %p %p", got[0], got[1], a, b, c)
	}
}

func BenchmarkWaitSpread(b *testing.B) {
	made := demoTables(b)
	c := WaitCase{"eco-solvent", "canvas", "normal", "hung", made.shop.Front.Room.ID}
	for b.Loop() {
		if _, err := made.WaitSpread(c); err != nil {
			b.Fatal(err)
		}
	}
}
