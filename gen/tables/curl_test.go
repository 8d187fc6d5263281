package tables

import (
	"testing"

	"laydown/gen/nip"
)

// What the demonstration's laminates must do whatever their figures: a medium without
// water does not care for the room's; the same film on both sides leaves a sheet flat.
func TestEveryLaminateBends(t *testing.T) {
	made := demoTables(t)
	all, err := made.Curls()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 300 {
		t.Fatalf("only %d laminates", len(all))
	}
	words := map[string]int{}
	for _, v := range all {
		medium, film := made.shop.Medium(v.Medium), made.shop.Film(v.Film)
		if len(v.Rooms) != len(made.shop.Rooms) {
			t.Fatalf("%s on %s: %d rooms", v.Film, v.Medium, len(v.Rooms))
		}
		dry := medium.FibreShare.Best == 0 && medium.Receives == nil && !made.shop.Substance(film.Base.ID).HumidStrain.Set
		for _, b := range v.Rooms {
			if dry && b.Curvature != v.Rooms[0].Curvature {
				t.Errorf("%s on %s feels the room: %g and %g", v.Film, v.Medium, b.Curvature, v.Rooms[0].Curvature)
			}
			words[b.Words()]++
		}
	}
	if len(words) < 3 {
		t.Errorf("all bend alike: %v", words)
	}
	t.Log(words)
}

// Film on the back as well takes the curl away, by the same laminate theory.
func TestFilmOnBothSidesLiesFlat(t *testing.T) {
	made := demoTables(t)
	b, err := made.joinedIn(nip.NewSolver(), LaminateCase{"thermal-pp-gloss-38", "uncoated-150", "sheet-fed", "finishing-room"}, GrainAcross)
	if err != nil {
		t.Fatal(err)
	}
	one, err := b.curlIn(0.65)
	if err != nil {
		t.Fatal(err)
	}
	both := b.joined
	mirror := func(i int) int { return []int{2, 1, 0, 1, 2}[i] }
	both.Layers, both.Set, both.Tension = nil, nil, nil
	for i := range 5 {
		both.Layers = append(both.Layers, b.joined.Layers[mirror(i)])
		both.Set = append(both.Set, b.joined.Set[mirror(i)])
		both.Tension = append(both.Tension, b.joined.Tension[mirror(i)])
	}
	now, err := b.in(0.65)
	if err != nil {
		t.Fatal(err)
	}
	flat, err := both.Curl(append(append(now[2:3:3], now[1], now[0]), now[1], now[2]))
	if err != nil {
		t.Fatal(err)
	}
	if k := flat.Cylinder.Curvature; k > 1e-9 || k < -1e-9 {
		t.Errorf("with film on both sides %g 1/m", k)
	}
	if one.Cylinder.Rise(BendLength) < Flat {
		t.Errorf("with film on one side it lies flat too: the test shows nothing")
	}
}

// The trade's rule beside what the model finds, over the demonstration.
func TestGrainAdvice(t *testing.T) {
	all, err := demoTables(t).Grains()
	if err != nil {
		t.Fatal(err)
	}
	advice := map[string]int{}
	most := GrainValue{}
	for _, v := range all {
		if v.Across.Risk < 0 || v.Along.Risk < 0 {
			t.Errorf("%s on %s: risks %g and %g", v.Film, v.Medium, v.Across.Risk, v.Along.Risk)
		}
		advice[v.Advice]++
		if v.Along.Risk > most.Along.Risk {
			most = v
		}
	}
	if len(all) == 0 {
		t.Fatal("no medium with grain")
	}
	t.Logf("%v; greatest along the feed: %+v", advice, most)
}
