package tables

import (
	"fmt"

	"laydown/gen/quantity"
	"laydown/gen/roll"
	"laydown/gen/shop"
)

// FilmJob is what a run of equal pieces takes of a film in a machine.
type FilmJob struct {
	Film, Laminator string // ids
	Size            string // A2
	Pieces          int
	Piece           roll.Piece
	// Fits is false where the film or the machine is too narrow, or the shop's record
	// says nothing of its work; Reason says which.
	Fits    bool
	Reason  string
	Abreast int
	Need    roll.Need
	// WarmUp is what a cold machine takes before that.
	WarmUp quantity.Time
	// Each is the cost of a good piece in the shop's currency; 0 where no prices are stated.
	Each    float64
	Working Working
}

// JobSizes are the sizes of the table, the shorter side along the roller: ISO 216.
var JobSizes = []struct {
	Name  string
	Piece roll.Piece
}{
	{"A4", roll.Piece{Across: 0.210, Along: 0.297}},
	{"A3", roll.Piece{Across: 0.297, Along: 0.420}},
	{"A2", roll.Piece{Across: 0.420, Along: 0.594}},
	{"A1", roll.Piece{Across: 0.594, Along: 0.841}},
	{"A0", roll.Piece{Across: 0.841, Along: 1.189}},
}

// JobPieces are the numbers of pieces of the table.
var JobPieces = []int{1, 10, 50}

// FilmJobs computes every film in every machine that runs it, by size and number.
func (t *Tables) FilmJobs() ([]FilmJob, error) {
	var list []FilmJob
	for _, f := range t.shop.Films {
		for _, ref := range f.RunsOn {
			for _, size := range JobSizes {
				for _, n := range JobPieces {
					j, err := t.FilmJob(f.ID, ref.ID, size.Piece, n)
					if err != nil {
						return nil, fmt.Errorf("%d × %s under %s: %w", n, size.Name, f.ID, err)
					}
					j.Size = size.Name
					list = append(list, j)
				}
			}
		}
	}
	return list, nil
}

// FilmJob computes one run, on a new roll and a machine that is warm.
func (t *Tables) FilmJob(film, laminator string, piece roll.Piece, pieces int) (FilmJob, error) {
	f, m := t.shop.Film(film), t.shop.Laminator(laminator)
	switch {
	case f == nil:
		return FilmJob{}, t.unknown("films", film)
	case m == nil:
		return FilmJob{}, t.unknown("laminators", laminator)
	}
	j := FilmJob{Film: f.ID, Laminator: m.ID, Pieces: pieces, Piece: piece}
	w := t.shop.Front.Work
	if w == nil {
		j.refuse("The shop's record says nothing of its work.")
		return j, nil
	}
	job := jobOf(f, m, w, piece, pieces)
	j.Abreast = job.Abreast
	switch {
	case job.Abreast == 0:
		j.refuse(fmt.Sprintf("With its borders the piece is wider than the film, %s.", quantity.Both(f.Width.Best)))
		return j, nil
	case piece.Across > m.Width.Best:
		j.refuse(fmt.Sprintf("The piece is wider than %s takes, %s.", m.Name, quantity.Both(m.Width.Best)))
		return j, nil
	}
	var err error
	if j.Need, err = job.Need(); err != nil {
		return j, err
	}
	j.Fits = true
	j.WarmUp = warmUp(f, m)
	if f.Price > 0 && w.HourRate > 0 {
		if j.Each, err = j.Need.EachCosts(roll.Prices{Film: f.Price, Hour: w.HourRate}, pieces); err != nil {
			return j, err
		}
	}
	j.Working = t.jobWorking(j, job, f, m, w)
	return j, nil
}

func (j *FilmJob) refuse(why string) {
	j.Reason = why
	j.Working.Notes = []string{why}
}

// jobOf is a run as the shop works: as many abreast as the film takes.
func jobOf(f *shop.Film, m *shop.Laminator, w *shop.Work, piece roll.Piece, pieces int) roll.Job {
	job := roll.Job{
		Pieces: pieces, Piece: piece, Border: w.Border.Best, Gap: w.Gap.Best, Width: f.Width.Best, Sides: 1, Threading: w.Threading.Best,
		Spoils: w.Spoils.Best, Speed: m.Usual.Best, SetUp: w.SetUp.Best, Feeding: w.Feeding.Best, Trim: w.Trim.Best,
		OnRoll: f.RollLength.Best, Roll: f.RollLength.Best, ChangeOfRoll: w.SetUp.Best,
	}
	if m.TwoSided {
		job.Sides = 2
	}
	if overlaps(m) {
		job.Border, job.Gap = 0, 0
	}
	job.Abreast = min(roll.MostAbreast(piece, job.Border, job.Width), pieces)
	return job
}

// overlaps says that a machine's sheets overlap under one film, with no film past their
// edges: no gap and no border.
func overlaps(m *shop.Laminator) bool { return m.Class == "sheet-fed" }

// warmUp is how long a cold machine warms up for a film.
func warmUp(f *shop.Film, m *shop.Laminator) quantity.Time {
	if f.Class == "cold" {
		return 0
	}
	return m.WarmUp.Best
}

func (t *Tables) jobWorking(j FilmJob, job roll.Job, f *shop.Film, m *shop.Laminator, w *shop.Work) Working {
	n := j.Need
	work := Working{Steps: []Step{
		ratio("", "good pieces wanted", float64(j.Pieces)),
		stated("s_p", "spoiled", w.Spoils, ""),
		ratio("n_run", "prints to run", float64(n.Run)),
		ratio("k", "abreast", float64(job.Abreast)),
		step("l", "a piece along the feed", job.Piece.Along, "m", ""),
		step("", "border past each edge", job.Border, "m", w.Border.Source),
		step("g", "gap to the next, two borders at the least", job.Pitch()-job.Piece.Along, "m", w.Gap.Source),
		stated("e", "film lost in threading", w.Threading, "m"),
		step("L", "film on each side: ⌈n_run/k⌉·(l + g) + e", n.Length, "m", ""),
		stated("", "width of the film", f.Width, "m"),
		ratio("", "sides", float64(job.Sides)),
		step("", "film, the whole web", n.Film, "m²", ""),
		step("", "of it on no good piece", n.Waste, "", ""),
		stated("v", "speed", m.Usual, "m/s"),
		step("", "running", n.Running, "s", ""),
		stated("T_0", "set-up", w.SetUp, "s"),
		step("", "feeding and trimming", n.Hands, "s", w.Feeding.Source),
	}}
	if n.Changes > 0 {
		work.Steps = append(work.Steps, ratio("c_r", "changes of the roll, each a set-up", float64(n.Changes)))
	}
	work.Steps = append(work.Steps, step("T", "in all, machine warm", n.Total, "s", ""))
	if j.WarmUp > 0 {
		work.Steps = append(work.Steps, stated("", "more for a cold machine", m.WarmUp, "s"))
	}
	if j.Each > 0 {
		work.Steps = append(work.Steps, Step{Text: "a good piece costs", Shown: fmt.Sprintf("%.2f\u00a0%s", j.Each, w.Currency), SI: j.Each, Unit: w.Currency})
	}
	if overlaps(m) {
		work.Notes = append(work.Notes, "Sheets overlap here: no gap and no border.")
	}
	return work
}
