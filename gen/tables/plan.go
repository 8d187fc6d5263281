package tables

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Plan answers one job. Its error is for whoever typed the job: the data
// itself was checked when it was loaded.
func (t *Tables) Plan(job Job) (Plan, error) {
	r, err := t.read(job)
	if err != nil {
		return Plan{}, err
	}
	p := Plan{
		Verdict:        Go,
		MakerWaitHours: r.ink.Makers.Wait.Best.Hours(),
		Feed:           feed(r.film, r.medium, r.grain, r.sheet, r.machine),
		Cautions:       t.cautions(r),
		Tests:          r.ink.ReadyTests,
	}
	if !t.shop.PrintsOn(r.ink, r.medium) {
		p.because(Reason{Verdict: Refuse, Text: fill(phrases["no-pair"], "medium", r.medium.Name, "ink", r.ink.Name)})
		p.WaitReason, p.WindowReason = p.Reasons[0].Text, p.Reasons[0].Text
		p.HandOverReason = phrases["no-hand-over"]
		return p, nil
	}
	texts, err := t.judgeFilm(&p, r)
	if err != nil {
		return Plan{}, err
	}
	if err := t.judgeWait(&p, r); err != nil {
		return Plan{}, err
	}
	if err := t.promise(&p, r); err != nil {
		return Plan{}, err
	}
	slices.SortStableFunc(p.Reasons, func(a, b Reason) int { return rank[b.Verdict] - rank[a.Verdict] })
	p.Evidence = p.weighed(r, texts)
	p.Faults = t.likely(p.Evidence)
	return p, nil
}

// because adds a reason and lets the worst verdict stand.
func (p *Plan) because(r Reason) {
	p.Reasons = append(p.Reasons, r)
	p.Verdict = p.Verdict.Worse(r.Verdict)
}

// judgeFilm adds what the film, the machine and the heat have to say, and names
// those that would do where these will not. It returns what is known of the laminate.
func (t *Tables) judgeFilm(p *Plan, r request) (texts laminateTexts, err error) {
	pair := t.pair(r.ink, r.medium, r.film, r.coverage)
	for _, reason := range pair.Reasons {
		p.because(reason)
	}
	if pair.Test {
		p.because(Reason{Verdict: Go, Test: true, Text: phrases["test-first"]})
	}
	misfits := r.misfits()
	for _, m := range misfits {
		p.because(m)
	}
	if err := t.judgeHeat(p, r, len(misfits) > 0); err != nil {
		return texts, err
	}
	if len(misfits) == 0 {
		if texts, err = t.judgeLaminate(p, r); err != nil {
			return texts, err
		}
	}
	if p.Verdict != Change {
		return texts, nil
	}
	if pair.Verdict != Change && len(misfits) > 0 {
		if machines := t.machinesFor(r); len(machines) > 0 {
			p.because(Reason{Verdict: Change, Text: fill(phrases["other-machines"], "laminators", strings.Join(machines, ", "))})
			return texts, nil
		}
		p.because(Reason{Verdict: Change, Text: phrases["no-machine"]})
	}
	if p.Others, err = t.filmsFor(r); err != nil {
		return texts, err
	}
	if len(p.Others) == 0 {
		p.because(Reason{Verdict: Refuse, Text: phrases["no-film"]})
		return texts, nil
	}
	p.because(Reason{Verdict: Change, Text: fill(phrases["others"], "films", nameList(p.Others, t.filmName))})
	return texts, nil
}

// misfits says why the film or the print cannot go through the machine as asked.
func (r request) misfits() []Reason {
	list := fits(r.film, r.medium, r.machine)
	no := func(phrase string, values ...string) {
		list = append(list, Reason{Verdict: Change, Text: fill(phrases[phrase], values...)})
	}
	if r.sheet.Across > r.machine.Width.Best {
		no("too-wide", "width", side(r.sheet.Across), "laminator", r.machine.Name, "limit", side(r.machine.Width.Best))
	}
	if r.speed != 0 && (r.speed < r.machine.Slowest.Best || r.speed > r.machine.Fastest.Best) {
		no("speed", "laminator", r.machine.Name, "slowest", pace(r.machine.Slowest.Best), "fastest", pace(r.machine.Fastest.Best), "speed", pace(r.speed))
	}
	return list
}

// machinesFor names the laminators that take this film and this print.
func (t *Tables) machinesFor(r request) []string {
	var list []string
	for _, m := range t.shop.Laminators {
		if m != r.machine && len(fits(r.film, r.medium, m)) == 0 && r.sheet.Across <= m.Width.Best {
			list = append(list, m.Name)
		}
	}
	return list
}

func (t *Tables) filmName(id string) string { return t.shop.Film(id).Name }

func nameList(ids []string, name func(string) string) string {
	list := make([]string, len(ids))
	for i, id := range ids {
		list[i] = name(id)
	}
	return strings.Join(list, ", ")
}

// judgeWait adds what the clock and the physics of drying have to say.
func (t *Tables) judgeWait(p *Plan, r request) error {
	l, err := t.law(r.ink, r.medium, r.film.Safe)
	if err != nil {
		return err
	}
	here := r.place(r.storage)
	if p.Working, err = l.steps(r.coverage, here); err != nil {
		return err
	}
	total, dries, err := r.ready(l)
	if err != nil {
		return err
	}
	if !dries {
		return t.hardlyDries(p, r, l)
	}
	shortest := least(r.ink)
	told := roundUp(max(total, shortest))
	remaining := max(told-r.elapsed, 0)
	p.Working.Steps = append(p.Working.Steps,
		step("t", "computed wait from printing, as it is kept", total, "s", ""),
		stated("", "the maker's wait, for the maker's conditions", r.ink.Makers.Wait, "s"),
		step("", "least wait that the record allows", shortest, "s", r.ink.Makers.Least.Source),
		step("", "told, rounded up", told, "s", ""),
		step("", "time since printing", r.elapsed, "s", ""))
	p.WaitHours = hours(told)
	if holds(shortest, total) {
		p.because(Reason{Verdict: Go, Text: fill(phrases["maker"], "maker", duration(r.ink.Makers.Wait.Best), "least", duration(shortest))})
	}
	if r.unknown {
		p.because(Reason{Verdict: Wait, Text: phrases["unknown-print"]})
		return nil
	}
	p.remaining, p.RemainingHours = remaining, hours(remaining)
	p.Counted = duration(r.elapsed)
	if r.clocked {
		by := r.now.Add(time.Duration(math.Ceil(remaining.Minutes()-1e-6)) * time.Minute).Format(clockLayout)
		p.ReadyBy = &by
	}
	if remaining > 0 {
		p.because(Reason{Verdict: Wait, Text: fill(phrases["wait"], "remaining", duration(remaining), "wait", duration(told), "storage", r.storage.Name)})
		s, err := r.state(l)
		if err != nil {
			return err
		}
		return judgeEarly(p, r, s)
	}
	p.because(Reason{Verdict: Go, Text: fill(phrases["ready"], "counted", duration(r.elapsed), "wait", duration(told))})
	return nil
}

// place is a storage in the job's room.
func (r request) place(s *shop.Storage) place {
	p := in(r.room, s)
	p.backShut = r.back != "open"
	return p
}

// ready returns the time from printing until the print is dry: within its
// history, or after it in its storage.
func (r request) ready(l law) (quantity.Time, bool, error) {
	s, spent, err := l.fresh(r.coverage), quantity.Time(0), error(nil)
	for _, stay := range r.history {
		p := r.place(stay.Storage)
		t, ok, err := s.until(p)
		if err != nil {
			return 0, false, err
		}
		if ok && t <= stay.Time {
			return spent + t, true, nil
		}
		if s, err = s.march(p, stay.Time); err != nil {
			return 0, false, err
		}
		spent += stay.Time
	}
	t, ok, err := s.until(r.place(r.storage))
	return spent + t, ok, err
}

// state is the print at the end of its history.
func (r request) state(l law) (state, error) {
	s, err := l.fresh(r.coverage), error(nil)
	for _, stay := range r.history {
		if s, err = s.march(r.place(stay.Storage), stay.Time); err != nil {
			return nil, err
		}
	}
	return s, nil
}

// hardlyDries says that a print does not dry as it is kept, and what would
// help: the storage of this room that dries it soonest, from here on.
func (t *Tables) hardlyDries(p *Plan, r request, l law) error {
	s, err := r.state(l)
	if err != nil {
		return err
	}
	text, err := hardly(l, s, r.place(r.storage))
	if err != nil {
		return err
	}
	p.WaitReason = text
	p.because(Reason{Verdict: Wait, Text: text})
	var best *shop.Storage
	var soonest quantity.Time
	for _, other := range t.StoragesFor(r.medium) {
		d, ok, err := s.until(r.place(other))
		if err != nil {
			return err
		}
		if ok && (best == nil || d < soonest) {
			best, soonest = other, d
		}
	}
	if best == nil {
		p.because(Reason{Verdict: Refuse, Text: phrases["never"]})
		return nil
	}
	p.because(Reason{Verdict: Wait, Text: fill(phrases["hardly-hung"], "storage", best.Name,
		"wait", duration(roundUp(max(soonest, least(r.ink)-r.elapsed))))})
	return judgeEarly(p, r, s)
}

func hours(t quantity.Time) *float64 {
	h := math.Round(t.Hours()*60) / 60
	return &h
}

// pace writes a machine's speed in tenths.
func pace(v quantity.Speed) string {
	return fmt.Sprintf("%.1f\u00a0m/min (%.1f\u00a0ft/min)", quantity.Number(v, "m/min"), quantity.Number(v, "ft/min"))
}
