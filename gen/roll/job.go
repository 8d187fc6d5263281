package roll

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Piece is a print as it is fed.
type Piece struct {
	Across quantity.Length // along the roller
	Along  quantity.Length // along the feed
}

func (p Piece) check() error {
	if !positive(float64(p.Across)) || !positive(float64(p.Along)) {
		return fmt.Errorf("a piece of %g by %g m: both sides must be above 0", float64(p.Across), float64(p.Along))
	}
	return nil
}

// Bordered is the film on one side of a piece with a border past each edge.
//
//	A = (w + 2·m)·(h + 2·m)
func (p Piece) Bordered(border quantity.Length) quantity.Area {
	return quantity.Area(float64(p.Across+2*border) * float64(p.Along+2*border))
}

// Job is a run of equal pieces under one film.
type Job struct {
	Pieces int // good ones wanted
	Piece  Piece
	// Abreast is how many lie side by side; 0 is 1.
	Abreast int
	// Border is film past each edge: sealed where film meets film, or cut off.
	Border quantity.Length
	// Gap is the film between one piece and the next along the feed.
	Gap quantity.Length
	// Width is that of the film, Sides on how many sides it is laid: 1 or 2.
	Width quantity.Length
	Sides int
	// Threading is the film lost at the start and the end of the run.
	Threading quantity.Length
	// Spoils is the share of the prints that do not come out good.
	Spoils quantity.Fraction

	Speed         quantity.Speed
	SetUp, WarmUp quantity.Time // once; WarmUp only where the machine is cold
	Feeding, Trim quantity.Time // hand work for each print run
	OnRoll, Roll  quantity.Length
	ChangeOfRoll  quantity.Time
}

// Need is what a job takes.
type Need struct {
	Run     int               // prints to run for the good ones
	Length  quantity.Length   // of the film on each side
	Film    quantity.Area     // over its whole width, on all sides
	Waste   quantity.Fraction // of Film that is not on a good piece or its border
	Changes int               // of the roll; 0 where Job.Roll is not stated
	Running quantity.Time     // with the nip closed on the work
	Hands   quantity.Time     // feeding and trimming
	Total   quantity.Time     // all of it, with set-up, warm-up and changes
}

func (j Job) check() error {
	if err := j.Piece.check(); err != nil {
		return err
	}
	switch {
	case j.Pieces < 1 || j.Pieces > 1e6:
		return fmt.Errorf("a job of %d pieces: from 1 to a million", j.Pieces)
	case j.Abreast < 1 || j.Abreast > 1000:
		return fmt.Errorf("%d pieces abreast: from 1 to a thousand", j.Abreast)
	case j.Sides != 1 && j.Sides != 2:
		return fmt.Errorf("film on %d sides: it must be 1 or 2", j.Sides)
	case !(j.Spoils >= 0 && j.Spoils < 1):
		return fmt.Errorf("a share of %g spoiled: it must be from 0 to below 1", float64(j.Spoils))
	case !positive(float64(j.Speed)):
		return fmt.Errorf("a speed of %g m/s: it must be above 0", float64(j.Speed))
	}
	for _, l := range []quantity.Length{j.Border, j.Gap, j.Threading, j.OnRoll, j.Roll} {
		if !notNegative(float64(l)) {
			return fmt.Errorf("a border, gap, threading or roll of %g m: it must be 0 or more", float64(l))
		}
	}
	for _, t := range []quantity.Time{j.SetUp, j.WarmUp, j.Feeding, j.Trim, j.ChangeOfRoll} {
		if !notNegative(float64(t)) {
			return fmt.Errorf("a set-up, warm-up, feeding, trim or change of roll of %g s: it must be 0 or more", float64(t))
		}
	}
	if most := MostAbreast(j.Piece, j.Border, j.Width); most < j.Abreast {
		return fmt.Errorf("%d pieces of %g m with borders of %g m on a film of %g m: it takes %d abreast", j.Abreast,
			float64(j.Piece.Across), float64(j.Border), float64(j.Width), most)
	}
	return nil
}

// hair is how much of a piece or a print rounding may take: a thousandth of a millionth.
const hair = 1e-9

// MostAbreast gives how many pieces with their borders a film takes side by side.
func MostAbreast(p Piece, border, width quantity.Length) int {
	if !positive(float64(p.Across)) || !notNegative(float64(border)) || !positive(float64(width)) {
		return 0
	}
	return int(math.Floor(float64(width/(p.Across+2*border)) + hair))
}

// Pitch is the film from one piece's front edge to the next one's: the gap is never less
// than the two borders that lie in it.
func (j Job) Pitch() quantity.Length { return j.Piece.Along + max(j.Gap, 2*j.Border) }

// Need works a job out.
func (j Job) Need() (Need, error) {
	if j.Abreast == 0 {
		j.Abreast = 1
	}
	if err := j.check(); err != nil {
		return Need{}, err
	}
	n := Need{Run: int(math.Ceil(float64(j.Pieces)/float64(1-j.Spoils) - hair))}
	rows := (n.Run + j.Abreast - 1) / j.Abreast
	run := quantity.Length(rows) * j.Pitch()
	n.Length = run + j.Threading
	n.Film = quantity.Area(float64(n.Length) * float64(j.Width) * float64(j.Sides))
	n.Waste = 1 - quantity.Fraction(float64(j.Pieces*j.Sides)*float64(j.Piece.Bordered(j.Border)/n.Film))
	if j.Roll > 0 && n.Length > j.OnRoll {
		n.Changes = int(math.Ceil(float64((n.Length-j.OnRoll)/j.Roll) - hair))
	}
	n.Running = quantity.Time(float64(run) / float64(j.Speed))
	n.Hands = quantity.Time(n.Run) * (j.Feeding + j.Trim)
	n.Total = j.SetUp + j.WarmUp + n.Running + n.Hands + quantity.Time(n.Changes)*j.ChangeOfRoll
	return n, nil
}

// Prices are what a job is reckoned with, in the shop's currency.
type Prices struct {
	Film  float64 // a square metre of film
	Hour  float64 // an hour of the operator and the machine
	Piece float64 // whatever else each good piece costs: blades, packing
}

// EachCosts gives the cost of a good piece. Spoils and lost film are in the need.
func (n Need) EachCosts(p Prices, pieces int) (float64, error) {
	if !notNegative(p.Film) || !notNegative(p.Hour) || !notNegative(p.Piece) || pieces < 1 {
		return 0, fmt.Errorf("prices of %g, %g and %g for %d pieces: prices must be 0 or more, pieces at least 1", p.Film, p.Hour, p.Piece, pieces)
	}
	return (float64(n.Film)*p.Film+n.Total.Hours()*p.Hour)/float64(pieces) + p.Piece, nil
}
