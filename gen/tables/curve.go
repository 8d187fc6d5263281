package tables

import "laydown/gen/quantity"

// curvePoints is how many steps a drawing's curve has.
const curvePoints = 96

// Curve follows what is left in a print from printing on.
func (t *Tables) Curve(c WaitCase, upTo quantity.Time) (Curve, error) {
	return t.follow(c, nil, upTo)
}

// HistoryCurve follows a print through a history and then in the case's
// storage until upTo.
func (t *Tables) HistoryCurve(c WaitCase, history string, upTo quantity.Time) (Curve, error) {
	h, err := t.ParseHistory(history)
	if err != nil {
		return Curve{}, err
	}
	return t.follow(c, h, upTo)
}

func (t *Tables) follow(c WaitCase, h History, upTo quantity.Time) (Curve, error) {
	r, err := t.resolve(c)
	if err != nil {
		return Curve{}, err
	}
	l, err := t.law(r.ink, r.medium, noFilm)
	if err != nil {
		return Curve{}, err
	}
	curve := Curve{Name: r.storage.Name}
	curve.Limit, curve.Unit = l.limit()
	now, s := quantity.Time(0), l.fresh(c.Coverage)
	point := func() {
		curve.Times = append(curve.Times, now)
		curve.Left = append(curve.Left, s.left())
	}
	point()
	stays := append(h[:len(h):len(h)], Stay{r.storage, max(upTo-h.Time(), 0)})
	for _, stay := range stays {
		if stay.Time == 0 {
			continue
		}
		here := in(r.room, stay.Storage)
		n := max(2, int(curvePoints*stay.Time/max(upTo, h.Time())))
		begin, from := s, now
		for i := 1; i <= n; i++ {
			dt := stay.Time * quantity.Time(i) / quantity.Time(n)
			if s, err = begin.march(here, dt); err != nil {
				return Curve{}, err
			}
			now = from + dt
			point()
		}
	}
	return curve, nil
}
