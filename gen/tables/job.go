package tables

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// request is a job with its records, read and checked.
type request struct {
	printed
	film     *shop.Film
	machine  *shop.Laminator
	coverage string
	history  History
	unknown  bool      // nobody knows when it was printed
	clocked  bool      // now is known
	now      time.Time // on the shop's clock
	elapsed  quantity.Time
	sheet    sheet
	grain    string
	back     string         // of Backs
	speed    quantity.Speed // 0: the machine's usual
	stackRH  quantity.Fraction
	// stackKnown says that the stack's humidity was measured.
	stackKnown bool
	pieces     int
}

// read checks a job and takes the shop's usual for what it leaves out. Its
// errors are for whoever typed the job.
func (t *Tables) read(job Job) (request, error) {
	var r request
	front := t.shop.Front
	if r.ink = t.shop.Ink(job.Ink); r.ink == nil {
		return r, t.unknown("inks", job.Ink)
	}
	if r.medium = t.shop.Medium(job.Medium); r.medium == nil {
		return r, t.unknown("media", job.Medium)
	}
	if r.film = t.shop.Film(job.Film); r.film == nil {
		return r, t.unknown("films", job.Film)
	}
	if id := orElse(job.Laminator, front.Laminator.ID); true {
		if r.machine = t.shop.Laminator(id); r.machine == nil {
			return r, t.unknown("laminators", id)
		}
	}
	if id := orElse(job.Room, front.Room.ID); true {
		if r.room = t.shop.Room(id); r.room == nil {
			return r, t.unknown("rooms", id)
		}
	}
	if id := orElse(job.Storage, t.usualStorage(r.medium)); true {
		if r.storage = t.shop.Storage(id); r.storage == nil {
			return r, t.unknown("storage", id)
		}
	}
	if r.coverage = orElse(job.Coverage, "normal"); !slices.Contains(Coverages, r.coverage) {
		return r, fmt.Errorf("no coverage is called %q: light, normal or heavy", job.Coverage)
	}
	if r.grain = orElse(job.Grain, "unknown"); !slices.Contains([]string{"long", "short", "unknown"}, r.grain) {
		return r, fmt.Errorf("no grain is called %q: long, short or unknown", job.Grain)
	}
	if r.back = orElse(job.Back, "open"); !slices.Contains(Backs, r.back) {
		return r, fmt.Errorf("no back is called %q: open, film or mounted", job.Back)
	}
	var err error
	if r.sheet, err = parseSheet(job.Sheet, r.medium); err != nil {
		return r, err
	}
	if r.pieces, err = parsePieces(job.Pieces); err != nil {
		return r, err
	}
	if job.Speed != "" {
		if r.speed, err = quantity.Parse[quantity.Speed](job.Speed); err != nil {
			return r, fmt.Errorf("speed: %w", err)
		}
	}
	if job.StackRH != "" {
		if r.stackRH, err = quantity.Parse[quantity.Fraction](job.StackRH); err != nil {
			return r, fmt.Errorf("humidity of the stack: %w", err)
		}
		r.stackKnown = true
		if r.stackRH < 0 || r.stackRH > 1 {
			return r, fmt.Errorf("humidity of the stack: %s is not between 0 %% and 100 %%", job.StackRH)
		}
	}
	if err := t.readTimes(job, &r); err != nil {
		return r, err
	}
	for _, stay := range append(History{{Storage: r.storage}}, r.history...) {
		if !suits(stay.Storage, r.medium) {
			return r, fmt.Errorf("%s (%s) does not suit %s, which comes as %s",
				stay.Storage.ID, stay.Storage.Name, r.medium.Name, strings.Join(r.medium.Forms, " or "))
		}
	}
	return r, nil
}

// readTimes works out how long ago the print was made and how that time was spent.
func (t *Tables) readTimes(job Job, r *request) error {
	var err error
	if r.history, err = t.ParseHistory(job.History); err != nil {
		return err
	}
	if job.Now != "" {
		if r.now, err = parseClock("now", job.Now); err != nil {
			return err
		}
		r.clocked = true
	}
	switch job.Printed {
	case "unknown":
		r.unknown = true
		r.history = nil
		return nil
	case "":
		r.elapsed = r.history.Time()
		return nil
	}
	at, err := parseClock("printed", job.Printed)
	if err != nil {
		return err
	}
	if !r.clocked {
		return fmt.Errorf("a time of printing needs the time now")
	}
	if at.After(r.now) {
		return fmt.Errorf("printed %s is later than now, %s", job.Printed, job.Now)
	}
	r.elapsed = quantity.Time(r.now.Sub(at).Seconds())
	if rest := r.elapsed - r.history.Time(); rest < -quantity.Minute {
		return fmt.Errorf("the history lasts %s, but only %s have passed since printing", duration(r.history.Time()), duration(r.elapsed))
	} else if rest > 0 {
		r.history = append(r.history, Stay{r.storage, rest})
	}
	return nil
}

// usualStorage is the shop's usual storage where it suits the medium's form,
// else the first that does.
func (t *Tables) usualStorage(medium *shop.Medium) string {
	list := t.StoragesFor(medium)
	usual := t.shop.Front.Storage.ID
	if len(list) == 0 || slices.ContainsFunc(list, func(s *shop.Storage) bool { return s.ID == usual }) {
		return usual
	}
	return list[0].ID
}

// duration writes a time as a wall's clock counts it: 11 h 10 min.
func duration(t quantity.Time) string {
	minutes := int(t.Minutes() + 0.5)
	h, m := minutes/60, minutes%60
	switch {
	case h == 0:
		return fmt.Sprintf("%d\u00a0min", m)
	case m == 0:
		return fmt.Sprintf("%d\u00a0h", h)
	}
	return fmt.Sprintf("%d\u00a0h %d\u00a0min", h, m)
}
