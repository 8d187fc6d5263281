package roll

import (
	"math"
	"testing"

	"laydown/gen/quantity"
)

// notices is a job as a shop runs it; its numbers are invented.
func notices() Job {
	return Job{Pieces: 60, Piece: Piece{0.297, 0.420}, Abreast: 3, Border: 5e-3, Gap: 20e-3, Width: 1, Sides: 2, Threading: 2, Spoils: 0.04,
		Speed: 1.0 / 60, SetUp: 600, WarmUp: 1800, Feeding: 10, Trim: 20, OnRoll: 6, Roll: 4, ChangeOfRoll: 300}
}

func need(t testing.TB, j Job) Need {
	t.Helper()
	n, err := j.Need()
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// A second method: the shift gone through piece by piece, with a clock and a roll that is
// changed when it ends.
func TestNeedByGoingThroughTheShift(t *testing.T) {
	for _, change := range []func(*Job){
		func(*Job) {}, func(j *Job) { j.Abreast = 1 }, func(j *Job) { j.Border = 15e-3 }, func(j *Job) { j.Spoils = 0 },
		func(j *Job) { j.Sides = 1; j.Pieces = 1 }, func(j *Job) { j.OnRoll, j.Roll = 0, 3 },
	} {
		j := notices()
		change(&j)
		good, run, rows, clock, film := 0.0, 0, 0, float64(j.SetUp+j.WarmUp), float64(j.Threading)
		for good < float64(j.Pieces)-1e-9 {
			if run%j.Abreast == 0 {
				rows++
				film += float64(j.Piece.Along) + max(float64(j.Gap), float64(j.Border)+float64(j.Border))
			}
			run++
			good += 1 - float64(j.Spoils)
			clock += float64(j.Feeding) + float64(j.Trim)
		}
		clock += (film - float64(j.Threading)) / float64(j.Speed)
		changes := 0
		for left := float64(j.OnRoll); left < film-1e-9; left += float64(j.Roll) {
			changes++
			clock += float64(j.ChangeOfRoll)
		}
		n := need(t, j)
		if n.Run != run || n.Changes != changes || math.Abs(float64(n.Length)-film) > 1e-9 || math.Abs(float64(n.Total)-clock) > 1e-6 {
			t.Errorf("%+v:\n%+v\nby going through it: %d run, %d changes, %g m, %g s", j, n, run, changes, film, clock)
		}
	}
}

// More pieces, borders, gaps, spoils and ends never need less film or time; film is what
// is on the good pieces and what is wasted.
func TestNeedProperties(t *testing.T) {
	base := need(t, notices())
	for name, change := range map[string]func(*Job){
		"pieces": func(j *Job) { j.Pieces++ }, "border": func(j *Job) { j.Border *= 3 }, "gap": func(j *Job) { j.Gap *= 2 },
		"spoils": func(j *Job) { j.Spoils *= 2 }, "ends": func(j *Job) { j.Threading++ }, "one abreast": func(j *Job) { j.Abreast = 1 },
	} {
		j := notices()
		change(&j)
		if n := need(t, j); n.Length < base.Length || n.Film < base.Film || n.Total < base.Total {
			t.Errorf("more %s: %+v, before %+v", name, n, base)
		}
	}
	j := notices()
	j.Speed *= 2
	if n := need(t, j); n.Length != base.Length || math.Abs(float64(n.Running*2/base.Running)-1) > 1e-12 {
		t.Errorf("twice as fast: %+v, before %+v", n, base)
	}
	j = notices()
	on := float64(j.Pieces*j.Sides) * float64(j.Piece.Bordered(j.Border))
	if whole := on + float64(base.Waste)*float64(base.Film); math.Abs(whole/float64(base.Film)-1) > 1e-12 {
		t.Errorf("%g m² of film: %g on pieces, %g wasted", float64(base.Film), on, float64(base.Waste))
	}
}

// The trade's way to reckon a piece: film over the whole web with its waste, and the
// hour's rate over the pieces.
func TestEachCosts(t *testing.T) {
	j := notices()
	n := need(t, j)
	p := Prices{Film: 1.2, Hour: 45, Piece: 0.1}
	got, err := n.EachCosts(p, j.Pieces)
	on := float64(j.Piece.Bordered(j.Border)) * float64(j.Sides)
	want := on*p.Film/(1-float64(n.Waste)) + n.Total.Minutes()/60*p.Hour/float64(j.Pieces) + p.Piece
	if err != nil || math.Abs(got/want-1) > 1e-12 {
		t.Errorf("a piece costs %g (%v), by hand %g", got, err, want)
	}
	if _, err := n.EachCosts(p, 0); err == nil {
		t.Error("no pieces: no error")
	}
	if _, err := n.EachCosts(Prices{Film: -1}, 1); err == nil {
		t.Error("a price below nothing: no error")
	}
}

func TestMostAbreast(t *testing.T) {
	for _, row := range []struct {
		across, border, width quantity.Length
		want                  int
	}{{0.32, 0, 0.96, 3}, {0.32, 5e-3, 0.96, 2}, {0.3, 10e-3, 0.96, 3}, {1, 0, 0.96, 0}, {0, 0, 1, 0}} {
		if got := MostAbreast(Piece{row.across, 1}, row.border, row.width); got != row.want {
			t.Errorf("%+v: %d abreast", row, got)
		}
	}
}

func TestJobRefuses(t *testing.T) {
	for name, change := range map[string]func(*Job){
		"no pieces": func(j *Job) { j.Pieces = 0 }, "no size": func(j *Job) { j.Piece.Across = 0 }, "too wide": func(j *Job) { j.Width = 0.8 },
		"three sides": func(j *Job) { j.Sides = 3 }, "all spoiled": func(j *Job) { j.Spoils = 1 }, "stands still": func(j *Job) { j.Speed = 0 },
		"border": func(j *Job) { j.Border = -1 }, "time": func(j *Job) { j.Trim = -1 }, "abreast": func(j *Job) { j.Abreast = -1 },
	} {
		j := notices()
		change(&j)
		if _, err := j.Need(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
