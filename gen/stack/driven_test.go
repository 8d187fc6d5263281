package stack

import (
	"math"
	"slices"
	"testing"

	"laydown/gen/quantity"
)

// edged is a sheet 450 mm long whose margin has dried from 9 % to 5 % over some 40 mm.
func edged(n int) Feed {
	f := Feed{Length: 0.45, Dry: 0.085, Share: 0.5, Zone: 8e-3, Limit: 0.08}
	for i := range n {
		x := float64(i) / float64(n-1)
		depth := math.Min(x, 1-x) * 0.45
		f.Moisture = append(f.Moisture, quantity.Fraction(0.05+0.04*math.Erf(depth/0.03)))
	}
	return f
}

func pass(t testing.TB, f Feed) Driven {
	t.Helper()
	d, err := f.Pass()
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// TestNipConservesWater: what the sheet came with stays in it or is carried out.
func TestNipConservesWater(t *testing.T) {
	for _, share := range []quantity.Fraction{0, 0.005, 0.05, 0.5, 0.9, 0.99} {
		f := edged(2001)
		f.Share = share
		d := pass(t, f)
		stayed := 0.0
		for i := 1; i < len(d.Left); i++ {
			stayed += float64(f.Dry) * float64(d.At[i]-d.At[i-1]) * float64(d.Left[i-1]+d.Left[i]) / 2
		}
		if off := (stayed + d.Carried) / d.Held; math.Abs(off-1) > 2e-5 {
			t.Errorf("share %g: stayed %.6g, carried %.6g, held %.6g", float64(share), stayed, d.Carried, d.Held)
		}
	}
}

// TestPassAgainstPushes is the second method: the sheet in small cells, the nip stepping
// over it cell by cell, pushing its share into the zone ahead and running over what the
// zone held at its mean. No equation is solved.
func TestPassAgainstPushes(t *testing.T) {
	const fine = 20
	f := edged(2001)
	for _, share := range []quantity.Fraction{0.05, 0.5, 0.9} {
		f.Share = share
		d := pass(t, f)
		carried := 0.0
		cell := float64(f.Length) / float64(len(f.Moisture)-1) / fine
		for i := range len(f.Moisture) - 1 {
			if at := float64(f.Moisture[i]) + carried/float64(f.Zone*quantity.Length(f.Dry)); math.Abs(at/float64(d.InNip[i])-1) > 2e-3 {
				t.Fatalf("share %g at %.4f m: %.6f in the nip by pushes, %.6f", float64(share), float64(d.At[i]), at, float64(d.InNip[i]))
			}
			for k := range fine {
				between := (float64(k) + 0.5) / fine
				own := float64(f.Dry) * cell * (float64(f.Moisture[i])*(1-between) + float64(f.Moisture[i+1])*between)
				met := carried * cell / float64(f.Zone)
				carried += float64(share)*(own+met) - met
			}
		}
	}
}

// TestDampSheetSettles: on an even sheet the nip finds w₀/(1 − s) in the end, and is
// within 1/e of it after ℓ/(1 − s).
func TestDampSheetSettles(t *testing.T) {
	f := Feed{Length: 0.5, Dry: 0.1, Share: 0.8, Zone: 0.01, Limit: 0.5, Moisture: slices.Repeat([]quantity.Fraction{0.06}, 1001)}
	d := pass(t, f)
	if got := float64(d.InNip[1000]); math.Abs(got/0.3-1) > 1e-4 {
		t.Errorf("settles at %.5f, 0.3 expected", got)
	}
	want := 0.06 + 0.24*(1-math.Exp(-1))
	if got := float64(d.InNip[100]); math.Abs(got/want-1) > 1e-6 {
		t.Errorf("after 0.05 m %.5f, %.5f expected", got, want)
	}
	if !math.IsInf(float64(d.First), 1) || d.Fed[1000] != 0 {
		t.Errorf("a sheet below the limit blisters at %v", d.First)
	}
	if got := float64(d.Left[1000]); math.Abs(got/0.06-1) > 1e-4 {
		t.Errorf("in the end the nip leaves %.5f behind of 0.06", got)
	}
}

// TestDrivenProperties: with nothing driven ahead the nip finds the sheet as it is; the
// more is driven, the more it finds and the nearer the first blister lies; size and
// number never fall downstream of the margin until the trailing one.
func TestDrivenProperties(t *testing.T) {
	f := edged(901)
	f.Share = 0
	still := pass(t, f)
	for i, m := range f.Moisture {
		if still.InNip[i] != m || still.Left[i] != m {
			t.Fatalf("nothing driven, but at %v the nip finds %v of %v", still.At[i], still.InNip[i], m)
		}
	}
	// erf(x/30 mm) = 0.75 at x = 0.8134·30 mm.
	if math.Abs(float64(still.First)-0.8134*0.03) > 1e-4 {
		t.Errorf("nothing driven: the limit is passed at %.5f m", float64(still.First))
	}
	before := still
	for _, share := range []quantity.Fraction{0.005, 0.05, 0.3, 0.5, 0.8} {
		f.Share = share
		d := pass(t, f)
		if d.First >= before.First || d.Fed[900] <= before.Fed[900] {
			t.Errorf("share %g: first at %.4f m, fed %.3g; less driven: %.4f m, %.3g", float64(share),
				float64(d.First), d.Fed[900], float64(before.First), before.Fed[900])
		}
		for i := 1; i < len(d.Fed); i++ {
			if d.Fed[i] < d.Fed[i-1] {
				t.Fatalf("share %g: fed falls at %v", float64(share), d.At[i])
			}
			if i < 450 && d.InNip[i] < d.InNip[i-1] {
				t.Fatalf("share %g: the nip finds less at %v", float64(share), d.At[i])
			}
		}
		before = d
	}
}

// TestSteadyStateKnowsNoZone: how the zone spreads what it takes up decides how soon,
// not how much: the nip finds the same in the end with another zone.
func TestSteadyStateKnowsNoZone(t *testing.T) {
	f := Feed{Length: 1, Dry: 0.1, Share: 0.5, Zone: 0.004, Limit: 1, Moisture: slices.Repeat([]quantity.Fraction{0.06}, 501)}
	a := pass(t, f).InNip[500]
	f.Zone = 0.03
	if b := pass(t, f).InNip[500]; math.Abs(float64(a/b)-1) > 1e-6 {
		t.Errorf("zones of 4 and 30 mm end at %v and %v", a, b)
	}
}

func TestFeedRefusesNonsense(t *testing.T) {
	for name, f := range map[string]func(f *Feed){
		"one place":      func(f *Feed) { f.Moisture = f.Moisture[:1] },
		"below 0":        func(f *Feed) { f.Moisture[3] = -0.01 },
		"no length":      func(f *Feed) { f.Length = 0 },
		"no paper":       func(f *Feed) { f.Dry = 0 },
		"no zone":        func(f *Feed) { f.Zone = 0 },
		"all of it":      func(f *Feed) { f.Share = 1 },
		"share below 0":  func(f *Feed) { f.Share = -0.1 },
		"no limit":       func(f *Feed) { f.Limit = 0 },
		"not a number":   func(f *Feed) { f.Moisture[3] = quantity.Fraction(math.NaN()) },
		"infinite paper": func(f *Feed) { f.Dry = quantity.Grammage(math.Inf(1)) },
	} {
		g := edged(11)
		f(&g)
		if _, err := g.Pass(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

// TestAcrossIsTheStacksOwn: the profile that a nip is fed is that of the stack.
func TestAcrossIsTheStacksOwn(t *testing.T) {
	m := moisture(t, ream, uncoated(), drying)
	at := 3 * quantity.Day
	list, err := m.Across(at, true, 201)
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(float64(list[0]-list[200])) > 1e-15 || list[0] >= list[100] {
		t.Errorf("edges %v and %v, middle %v", list[0], list[200], list[100])
	}
	left, _ := m.Left(0, 0.5, 0, at)
	want := m.MoistureTo + left.Best*(m.MoistureFrom-m.MoistureTo)
	if math.Abs(float64(list[150]-want)) > 1e-15 {
		t.Errorf("half way out %v, %v by its place", list[150], want)
	}
}
