package tables

import (
	"math"
	"strconv"

	"laydown/gen/quantity"
)

// judgeEarly adds what would stay in a print that is laminated now, before its time. It
// says nothing where the film will not do anyhow, or where no carrier is to stay.
func judgeEarly(p *Plan, r request, s state) error {
	now, ok := s.(evaporatingState)
	if !ok || p.Verdict == Change || p.Verdict == Refuse || now.state.Amount() <= now.law.safe {
		return nil
	}
	if !now.law.t.shop.Substance(r.film.Base.ID).CarrierMobility.Set {
		return nil
	}
	l := underFilm{law: now.law, film: r.film, back: r.back, state: now.state}
	if err := l.cover(in(r.room, r.storage)); err != nil {
		return err
	}
	cleared, err := l.state.Clears(l.covered, now.law.safe, nil, LockedIn)
	if err != nil {
		return err
	}
	limit, unit := now.law.limit()
	values := []string{"left", amount(grams(cleared.Start), unit), "limit", amount(limit, unit)}
	phrase := "early-locked"
	if !math.IsInf(float64(cleared.Clear), 1) {
		phrase, values = "early", append(values, "days", roundDays(cleared.Clear))
	}
	p.because(Reason{Verdict: Wait, Text: fill(phrases[phrase], values...)})
	return nil
}

// roundDays writes days, rounded up: half days below three, whole days up to thirty;
// more is not known well enough for a number.
func roundDays(t quantity.Time) string {
	days := float64(t / quantity.Day)
	step := 1.0
	if days < 3 {
		step = 0.5
	}
	days = math.Ceil(days/step-1e-6) * step
	switch {
	case days > 30:
		return phrases["many-days"]
	case days <= 0.5:
		return phrases["half-day"]
	case days == 1:
		return phrases["one-day"]
	}
	whole := math.Floor(days)
	n := strconv.Itoa(int(whole))
	if days > whole {
		n += "½"
	}
	return fill(phrases["days"], "n", n)
}
