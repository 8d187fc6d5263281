package roll

import (
	"math"
	"math/rand/v2"
	"testing"

	"laydown/gen/quantity"
)

const mm = quantity.Millimetre

// Halving across the long side turns long grain into short grain, and back with the next
// cut: 64 × 90 cm long grain gives 45 × 64 cm short grain.
func TestHalvingTurnsTheGrain(t *testing.T) {
	s := Sheet{AlongGrain: 900 * mm, AcrossGrain: 640 * mm}
	long := true
	for range 5 {
		half := Sheet{s.AlongGrain / 2, s.AcrossGrain}
		if !long {
			half = Sheet{s.AlongGrain, s.AcrossGrain / 2}
		}
		c, err := s.CutInto(half.AlongGrain, half.AcrossGrain, 0)
		if err != nil || c.Pieces != 2 || c.Cuts != 1 || math.Abs(float64(c.Waste)) > 1e-12 {
			t.Fatalf("halving %+v: %+v (%v)", s, c, err)
		}
		if now := half.AlongGrain > half.AcrossGrain; now == long {
			t.Fatalf("halving %+v into %+v leaves the grain as it was", s, half)
		}
		s, long = half, !long
	}
}

// A second method: pieces laid on a board of millimetres one after another, never over
// one another nor over the edge.
func TestCutByLayingPieces(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 8))
	for range 200 {
		sheet := [2]int{300 + random.IntN(900), 300 + random.IntN(900)}
		piece := [2]int{50 + random.IntN(500), 50 + random.IntN(500)}
		trim := random.IntN(3) * 5
		count := 0
		for x := trim; x+piece[0] <= sheet[0]-trim; x += piece[0] {
			for y := trim; y+piece[1] <= sheet[1]-trim; y += piece[1] {
				count++
			}
		}
		s := Sheet{quantity.Length(sheet[0]) * mm, quantity.Length(sheet[1]) * mm}
		c, err := s.CutInto(quantity.Length(piece[0])*mm, quantity.Length(piece[1])*mm, quantity.Length(trim)*mm)
		if err != nil || c.Pieces != count {
			t.Errorf("%v into %v after a trim of %d: %+v (%v), laid %d", sheet, piece, trim, c, err, count)
		}
		want := 1 - float64(count*piece[0]*piece[1])/float64(sheet[0]*sheet[1])
		if math.Abs(float64(c.Waste)-want) > 1e-9 {
			t.Errorf("%v into %v: waste %g, laid %g", sheet, piece, float64(c.Waste), want)
		}
	}
}

// Cuts counted by hand.
func TestCutsByHand(t *testing.T) {
	for _, row := range []struct {
		sheet    Sheet
		piece    [2]quantity.Length
		trim     quantity.Length
		pieces   int
		cuts     int
		overs    [2]quantity.Length
		whatItIs string
	}{
		{Sheet{900 * mm, 640 * mm}, [2]quantity.Length{450 * mm, 320 * mm}, 0, 4, 2, [2]quantity.Length{}, "one cut each way"},
		{Sheet{1000 * mm, 700 * mm}, [2]quantity.Length{320 * mm, 450 * mm}, 0, 3, 4, [2]quantity.Length{40 * mm, 250 * mm}, "two between and one for the end; one for the side"},
		{Sheet{1000 * mm, 700 * mm}, [2]quantity.Length{320 * mm, 450 * mm}, 5 * mm, 3, 6, [2]quantity.Length{30 * mm, 240 * mm}, "two between and two ends; two sides"},
		{Sheet{1000 * mm, 700 * mm}, [2]quantity.Length{1000 * mm, 700 * mm}, 0, 1, 0, [2]quantity.Length{}, "none"},
		{Sheet{1000 * mm, 700 * mm}, [2]quantity.Length{1001 * mm, 700 * mm}, 0, 0, 0, [2]quantity.Length{1000 * mm, 0}, "it does not fit"},
	} {
		c, err := row.sheet.CutInto(row.piece[0], row.piece[1], row.trim)
		if err != nil || c.Pieces != row.pieces || c.Cuts != row.cuts || math.Abs(float64(c.OverAlong-row.overs[0])) > 1e-12 || math.Abs(float64(c.OverAcross-row.overs[1])) > 1e-12 {
			t.Errorf("%s: %+v (%v), wanted %d pieces, %d cuts", row.whatItIs, c, err, row.pieces, row.cuts)
		}
	}
}

// Turning the parent's grain by a quarter swaps the two ways.
func TestForFeedSwapsWithTheGrain(t *testing.T) {
	p := Piece{Across: 320 * mm, Along: 450 * mm}
	long, err := Sheet{1000 * mm, 700 * mm}.ForFeed(p, 0)
	if err != nil {
		t.Fatal(err)
	}
	short, err := Sheet{700 * mm, 1000 * mm}.ForFeed(p, 0)
	if err != nil {
		t.Fatal(err)
	}
	if long.Across.Pieces != short.Along.Pieces || long.Along.Pieces != short.Across.Pieces || long.Across.Pieces != 3 || long.Along.Pieces != 4 {
		t.Errorf("long grain %+v, short grain %+v", long, short)
	}
}

func TestCutRefuses(t *testing.T) {
	for _, f := range []func() error{
		func() error { _, err := Sheet{}.CutInto(1, 1, 0); return err },
		func() error { _, err := Sheet{1, 1}.CutInto(0, 1, 0); return err },
		func() error { _, err := Sheet{1, 1}.CutInto(1, 1, -1); return err },
		func() error { _, err := Sheet{1, 1}.ForFeed(Piece{1, 0}, 0); return err },
	} {
		if f() == nil {
			t.Error("no error")
		}
	}
}
