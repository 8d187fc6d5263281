package tables

import (
	"math"
	"slices"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/roll"
)

// Every film of the demonstration: more diameter is more film, and a new roll holds what
// its record says it does.
func TestFilmRolls(t *testing.T) {
	made := demoTables(t)
	all, err := made.FilmRolls()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) != len(made.shop.Films) {
		t.Fatalf("%d films of %d", len(all), len(made.shop.Films))
	}
	for _, r := range all {
		if !r.Known || len(r.Left) < 3 || r.Mass <= 0 {
			t.Errorf("%s: known %v, %d diameters, %g kg", r.Film, r.Known, len(r.Left), float64(r.Mass))
		}
		before := quantity.Length(0)
		for _, l := range r.Left {
			if l.Length <= before || l.Low > l.Length || l.High < l.Length || l.Outer > r.Full {
				t.Errorf("%s: %+v after %g m, a new roll %g m across", r.Film, l, float64(before), float64(r.Full))
			}
			// Wraps times the mean girth, another way to the length.
			mean := math.Pi * float64(l.Outer+r.Wound.Core) / 2
			if math.Abs(l.Wraps*mean/float64(l.Length)-1) > 1e-9 {
				t.Errorf("%s: %g wraps of %g m are not %g m", r.Film, l.Wraps, mean, float64(l.Length))
			}
			before = l.Length
		}
		if before > r.Length {
			t.Errorf("%s: %g m left on a roll of %g m", r.Film, float64(before), float64(r.Length))
		}
		checkSteps(t, r.Film, r.Working)
	}
	// By hand: (120² − 88²)·π/4 mm² over 75 µm.
	r, err := made.FilmRoll("thermal-pet-gloss-75")
	if err != nil {
		t.Fatal(err)
	}
	i := slices.IndexFunc(r.Left, func(l FilmLeft) bool { return l.Outer == 0.120 })
	if got := float64(r.Left[i].Length); math.Abs(got-69.70) > 0.01 {
		t.Errorf("75 µm film, 120 mm across: %g m, by hand 69.70 m", got)
	}
	if _, err := made.FilmRoll("cling"); err == nil {
		t.Error("no such film: no error")
	}
	film := made.shop.Film("thermal-pet-gloss-75")
	film.Core.Set = false
	defer func() { film.Core.Set = true }()
	if r, err := made.FilmRoll(film.ID); err != nil || r.Known || r.Reason == "" {
		t.Errorf("without a core: %+v (%v)", r, err)
	}
}

func checkSteps(t *testing.T, what string, w Working) {
	t.Helper()
	if len(w.Steps) < 4 {
		t.Errorf("%s: a working of %d steps", what, len(w.Steps))
	}
	for _, s := range w.Steps {
		if s.Text == "" || s.Shown == "" || math.IsNaN(s.SI) || math.IsInf(s.SI, 0) {
			t.Errorf("%s: step %+v", what, s)
		}
	}
}

// More pieces of a size never take less film or time, and none are said to fit that
// their film or machine is too narrow for.
func TestFilmJobs(t *testing.T) {
	made := demoTables(t)
	all, err := made.FilmJobs()
	if err != nil {
		t.Fatal(err)
	}
	fit := 0
	for i, j := range all {
		film, machine := made.shop.Film(j.Film), made.shop.Laminator(j.Laminator)
		if !j.Fits {
			if j.Reason == "" || j.Piece.Across <= machine.Width.Best && j.Piece.Across+2*made.shop.Front.Work.Border.Best <= film.Width.Best {
				t.Errorf("%d × %s under %s in %s does not fit: %q", j.Pieces, j.Size, j.Film, j.Laminator, j.Reason)
			}
			continue
		}
		fit++
		checkSteps(t, j.Film+" "+j.Size, j.Working)
		if j.Need.Run < j.Pieces || !(j.Need.Waste > 0 && j.Need.Waste < 1) || j.Need.Total < made.shop.Front.Work.SetUp.Best {
			t.Errorf("%d × %s under %s: %+v", j.Pieces, j.Size, j.Film, j.Need)
		}
		if i%len(JobPieces) > 0 {
			if less := all[i-1]; j.Need.Length < less.Need.Length || j.Need.Total < less.Need.Total {
				t.Errorf("%d × %s under %s take less than %d", j.Pieces, j.Size, j.Film, less.Pieces)
			}
		}
	}
	if fit < 300 {
		t.Errorf("only %d of %d jobs fit", fit, len(all))
	}
	// Ten A1 in the encapsulator by hand: 11 run, 11 × 891 mm and 2 m of ends; ten
	// minutes, 9.801 m at 1 m/min, 11 × 30 s.
	j, err := made.FilmJob("thermal-pet-gloss-75", "encapsulator", roll.Piece{Across: 0.594, Along: 0.841}, 10)
	if err != nil || math.Abs(float64(j.Need.Length)-11.801) > 1e-9 || math.Abs(j.Need.Total.Minutes()-25.301) > 1e-9 || j.WarmUp != 30*quantity.Minute {
		t.Errorf("ten A1: %+v (%v)", j.Need, err)
	}
	// With prices: 23.602 m² and 25.301 min over ten.
	film, work := made.shop.Film("thermal-pet-gloss-75"), made.shop.Front.Work
	film.Price, work.HourRate = 0.8, 60
	defer func() { film.Price, work.HourRate = 0, 0 }()
	j, err = made.FilmJob(film.ID, "encapsulator", roll.Piece{Across: 0.594, Along: 0.841}, 10)
	if want := (23.602*0.8 + 25.301) / 10; err != nil || math.Abs(j.Each-want) > 1e-9 {
		t.Errorf("a piece costs %g (%v), by hand %g", j.Each, err, want)
	}
	if _, err := made.FilmJob("cling", "encapsulator", j.Piece, 1); err == nil {
		t.Error("no such film: no error")
	}
	if _, err := made.FilmJob(film.ID, "mangle", j.Piece, 1); err == nil {
		t.Error("no such machine: no error")
	}
	made.shop.Front.Work = nil
	defer func() { made.shop.Front.Work = work }()
	if j, err := made.FilmJob(film.ID, "encapsulator", j.Piece, 1); err != nil || j.Fits || j.Reason == "" {
		t.Errorf("without the shop's work: %+v (%v)", j, err)
	}
}

// Each machine's marks come in order, and rollers that cannot be told apart name each other.
func TestRollerMarks(t *testing.T) {
	made := demoTables(t)
	machine := made.shop.Laminator("desktop")
	kept := machine.Rollers
	machine.Rollers = append(slices.Clone(kept), kept[0])
	machine.Rollers[1].Name, machine.Rollers[1].Diameter.Best = "odd roller", 40.5e-3
	defer func() { machine.Rollers = kept }()
	marks, err := made.RollerMarks()
	if err != nil {
		t.Fatal(err)
	}
	alike := map[string][]string{}
	for i, m := range marks {
		if math.Abs(float64(m.Repeat)/(math.Pi*float64(m.Diameter))-1) > 1e-12 || !(m.Least < m.Repeat && m.Repeat < m.Most) {
			t.Errorf("%+v", m)
		}
		if i > 0 && marks[i-1].Laminator == m.Laminator && marks[i-1].Repeat > m.Repeat {
			t.Errorf("%s: %s stands after %s", m.Laminator, m.Roller, marks[i-1].Roller)
		}
		checkSteps(t, m.Roller, m.Working)
		if m.Laminator == "desktop" {
			alike[m.Roller] = m.Alike
		}
	}
	if !slices.Equal(alike["odd roller"], []string{"laminating rollers"}) || !slices.Equal(alike["laminating rollers"], []string{"odd roller"}) || alike["pull rollers"] != nil {
		t.Errorf("alike: %v", alike)
	}
}

// SRA1 long grain gives four SRA3 short grain and two long; turning the parent's grain
// turns the edge that the pieces go in by.
func TestCuts(t *testing.T) {
	made := demoTables(t)
	all, err := made.Cuts()
	if err != nil {
		t.Fatal(err)
	}
	find := func(parent, grain, piece, lead string) CutValue {
		i := slices.IndexFunc(all, func(v CutValue) bool {
			return v.Parent == parent && v.Grain == grain && v.Piece == piece && v.Lead == lead
		})
		if i < 0 {
			t.Fatalf("no %s %s into %s by its %s", parent, grain, piece, lead)
		}
		return all[i]
	}
	v := find("SRA1 640 × 900 mm", GrainLong, "SRA3 320 × 450 mm", LongEdge)
	if v.Right.Pieces != 4 || math.Abs(float64(v.Right.Waste)) > 1e-9 || v.Right.Cuts != 2 || v.Wrong.Pieces != 2 {
		t.Errorf("SRA1 long grain, by the long edge: %+v", v)
	}
	if slices.Contains(v.Takes, "desktop") || !slices.Contains(v.Takes, "sheet-fed") {
		t.Errorf("450 mm across is taken by %v", v.Takes)
	}
	for _, v := range all {
		grain, lead := GrainShort, ShortEdge
		if v.Grain == GrainShort {
			grain = GrainLong
		}
		if v.Lead == ShortEdge {
			lead = LongEdge
		}
		w := find(v.Parent, grain, v.Piece, lead)
		if v.Right.Pieces != w.Right.Pieces || v.Right.Rows != w.Right.Columns {
			t.Errorf("%+v and turned %+v", v, w)
		}
		if turned := find(v.Parent, v.Grain, v.Piece, lead); v.Right != turned.Wrong {
			t.Errorf("%+v: the wrong way is not the right one by the %s", v, lead)
		}
		checkSteps(t, v.Parent, v.Working)
	}
}
