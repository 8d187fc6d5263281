package tables

import (
	"fmt"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Wait computes how long one print must wait.
func (t *Tables) Wait(c WaitCase) (WaitValue, error) {
	r, err := t.resolve(c)
	if err != nil {
		return WaitValue{}, err
	}
	return t.wait(c, r)
}

// print is a case with its records.
type printed struct {
	ink     *shop.Ink
	medium  *shop.Medium
	storage *shop.Storage
	room    *shop.Room
}

func (t *Tables) resolve(c WaitCase) (printed, error) {
	p := printed{t.shop.Ink(c.Ink), t.shop.Medium(c.Medium), t.shop.Storage(c.Storage), t.shop.Room(c.Room)}
	switch {
	case p.ink == nil:
		return p, t.unknown("inks", c.Ink)
	case p.medium == nil:
		return p, t.unknown("media", c.Medium)
	case p.storage == nil:
		return p, t.unknown("storage", c.Storage)
	case p.room == nil:
		return p, t.unknown("rooms", c.Room)
	case !slices.Contains(Coverages, c.Coverage):
		return p, fmt.Errorf("no coverage is called %q: light, normal or heavy", c.Coverage)
	case !t.shop.PrintsOn(p.ink, p.medium):
		return p, fmt.Errorf("%s is not made to be printed with %s", p.medium.Name, p.ink.Name)
	}
	return p, nil
}

func (t *Tables) wait(c WaitCase, r printed) (WaitValue, error) {
	l, err := t.law(r.ink, r.medium, noFilm)
	if err != nil {
		return WaitValue{}, err
	}
	here := in(r.room, r.storage)
	v := WaitValue{WaitCase: c, Maker: r.ink.Makers.Wait.Best, Transfer: l.transfer()}
	if v.Working, err = l.steps(c.Coverage, here); err != nil {
		return v, err
	}
	fresh := l.fresh(c.Coverage)
	v.Computed, v.Dries, err = fresh.until(here)
	if err != nil {
		return v, err
	}
	if !v.Dries {
		v.Reason, err = hardly(l, fresh, here)
		v.Working.Notes = append(v.Working.Notes, v.Reason)
		return v, err
	}
	least := least(r.ink)
	v.Held = holds(least, v.Computed)
	v.Wait = roundUp(max(v.Computed, least))
	v.Working.Steps = append(v.Working.Steps,
		step("t", "computed wait", v.Computed, "s", ""),
		stated("", "the maker's wait, for the maker's conditions", r.ink.Makers.Wait, "s"),
		step("", "least wait that the record allows", least, "s", r.ink.Makers.Least.Source),
		step("", "told, rounded up", v.Wait, "s", ""))
	return v, nil
}

// least is the shortest wait that an ink's record allows.
func least(ink *shop.Ink) quantity.Time {
	if ink.Makers.Least.Set {
		return ink.Makers.Least.Best
	}
	return ink.Makers.Wait.Best
}

// holds reports whether the least wait stands above the computed one by more
// than the minute that nobody counts.
func holds(least, computed quantity.Time) bool { return least-computed > quantity.Minute }

// hardly says how much is left after HardlyDries.
func hardly(l law, s state, p place) (string, error) {
	late, err := s.march(p, HardlyDries)
	if err != nil {
		return "", err
	}
	limit, unit := l.limit()
	return fill(phrases["hardly"], "storage", p.storage.Name,
		"left", amount(late.left(), unit), "limit", amount(limit, unit)), nil
}

// amount writes two significant digits. A half is rounded up, as the page's script
// does it: without the nudge 1.25 would be 1.2 here and 1.3 there.
func amount(x float64, unit string) string {
	return fmt.Sprintf("%.2g\u00a0%s", x*(1+halfUp), unit)
}

// halfUp is more than any last bits and less than any digit that is shown.
const halfUp = 1e-9

// Waits computes the whole table: every ink on every medium that is made for
// it, each coverage, each storage that suits the medium's form, each room, in
// the data's order.
func (t *Tables) Waits() ([]WaitValue, error) {
	var all []WaitValue
	for _, ink := range t.shop.Inks {
		for _, medium := range t.shop.Media {
			if !t.shop.PrintsOn(ink, medium) {
				continue
			}
			for _, coverage := range Coverages {
				for _, storage := range t.StoragesFor(medium) {
					for _, room := range t.shop.Rooms {
						c := WaitCase{ink.ID, medium.ID, coverage, storage.ID, room.ID}
						v, err := t.wait(c, printed{ink, medium, storage, room})
						if err != nil {
							return nil, fmt.Errorf("%s on %s, %s, %s, %s: %w", ink.ID, medium.ID, coverage, storage.ID, room.ID, err)
						}
						all = append(all, v)
					}
				}
			}
		}
	}
	return all, nil
}

// StoragesFor returns the storages that suit a form that a medium comes in.
func (t *Tables) StoragesFor(medium *shop.Medium) []*shop.Storage {
	var list []*shop.Storage
	for _, s := range t.shop.Storages {
		if suits(s, medium) {
			list = append(list, s)
		}
	}
	return list
}

// suits reports whether a storage takes a form that a medium comes in.
func suits(s *shop.Storage, medium *shop.Medium) bool {
	return slices.ContainsFunc(medium.Forms, func(f string) bool { return slices.Contains(s.Forms, f) })
}
