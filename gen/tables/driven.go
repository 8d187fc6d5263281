package tables

import (
	"fmt"
	"math"
	"slices"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/stack"
)

// drivenAfter is how long the stack has stood in the room when its sheets are fed: a day.
const drivenAfter = quantity.Day

// drivenSteps is how many places along the feed are told of a sheet.
const drivenSteps = 301

// The humidities between which a sheet's limit is looked for.
const (
	limitLeast quantity.Fraction = 0.15
	limitMost  quantity.Fraction = 0.90
)

// DrivenCase is a stack that was in balance with a damp room and has stood in a drier one,
// and whose sheets then go long side first through a hot nip.
type DrivenCase struct {
	StackCase
	Film, Laminator string // ids
}

// DrivenValue is where its first blister would lie, by how much of the water in the nip
// goes ahead of it. It teaches; the share has never been measured.
type DrivenValue struct {
	DrivenCase
	// Set is the roller's: the middle of the window that the drier room's air gives.
	Set quantity.Temperature
	// Limit is the moisture from which the sheet blisters at that setting, Humidity the
	// air it is in balance with. Free says that none up to 90 % does.
	Limit, Humidity quantity.Fraction
	Free            bool
	// Edge and Core are the moistures of the sheet at its leading edge and in its middle.
	Edge, Core quantity.Fraction
	Length     quantity.Length // of the sheet along the feed
	// Still is where it blisters with nothing driven ahead, First by the band of
	// stack.DrivenAhead; +Inf nowhere on the sheet.
	Still quantity.Length
	First Band[quantity.Length]
}

// DrivenShares are the shares of the water in the nip that the table takes.
func DrivenShares() Band[quantity.Fraction] { return stack.DrivenAhead }

// DrivenValues computes the table: every medium that stacks with the first hot film that
// has a window on it, from each damper room into the shop's usual one.
func (t *Tables) DrivenValues() ([]DrivenValue, error) {
	home := t.shop.Room(t.shop.Front.Room.ID)
	films := t.pairings()
	var cases []DrivenCase
	for _, m := range t.shop.Media {
		if !t.Stacks(m) {
			continue
		}
		p, ok, err := t.firstOpen(films, m, home)
		if err != nil {
			return nil, err
		}
		if !ok {
			continue
		}
		for _, from := range t.shop.Rooms {
			if from.Humidity.Best > home.Humidity.Best {
				cases = append(cases, DrivenCase{StackCase{m.ID, from.ID, home.ID}, p.film.ID, p.machine.ID})
			}
		}
	}
	return eachOf(len(cases), func(solver *nip.Solver, i int) (DrivenValue, error) { return t.drivenOf(solver, cases[i]) })
}

// firstOpen is the first pairing of a medium that has a window in a room.
func (t *Tables) firstOpen(all []pairing, m *shop.Medium, room *shop.Room) (pairing, bool, error) {
	solver, r := nip.NewSolver(), new(nip.Response)
	for _, p := range all {
		if p.medium != m {
			continue
		}
		if err := t.solve(solver, p, r); err != nil {
			return p, false, err
		}
		v, err := t.judge(WindowCase{p.film.ID, m.ID, p.machine.ID, p.speed, room.Temperature.Best, room.Humidity.Best}, p, r)
		if err != nil || v.Open() {
			return p, err == nil, err
		}
	}
	return pairing{}, false, nil
}

// Driven computes a case.
func (t *Tables) Driven(c DrivenCase) (DrivenValue, error) { return t.drivenOf(nip.NewSolver(), c) }

func (t *Tables) drivenOf(solver *nip.Solver, c DrivenCase) (DrivenValue, error) {
	v := DrivenValue{DrivenCase: c}
	f, err := t.feed(solver, &v)
	if err != nil {
		return v, err
	}
	inf := quantity.Length(math.Inf(1))
	v.Still, v.First = inf, Band[quantity.Length]{Low: inf, Best: inf, High: inf}
	if v.Free {
		return v, nil
	}
	b := stack.DrivenAhead
	for _, one := range []struct {
		share quantity.Fraction
		first *quantity.Length
	}{{0, &v.Still}, {b.Low, &v.First.Low}, {b.Best, &v.First.Best}, {b.High, &v.First.High}} {
		f.Share = one.share
		d, err := f.Pass()
		if err != nil {
			return v, err
		}
		*one.first = d.First
	}
	return v, nil
}

// feed makes the sheet that goes through the nip, and finds the setting and its limit.
func (t *Tables) feed(solver *nip.Solver, v *DrivenValue) (stack.Feed, error) {
	s, err := t.stacked(v.StackCase)
	if err != nil {
		return stack.Feed{}, err
	}
	p, _, err := t.resolveLaminate(LaminateCase{v.Film, v.Medium, v.Laminator, v.To})
	if err != nil {
		return stack.Feed{}, err
	}
	if p.film.Class == "cold" {
		return stack.Feed{}, fmt.Errorf("%s is laid without heat", p.film.Name)
	}
	m, err := s.moves(s.medium.SheetLength.Best, s.medium.Width.Best)
	if err != nil {
		return stack.Feed{}, err
	}
	profile, err := m.Across(drivenAfter, false, drivenSteps)
	if err != nil {
		return stack.Feed{}, err
	}
	v.Edge, v.Core, v.Length = profile[0], profile[drivenSteps/2], s.medium.SheetLength.Best
	if err := t.blisterLimit(solver, v, p, s); err != nil {
		return stack.Feed{}, err
	}
	dry, err := t.dryGrammage(s.medium, s.sheet)
	return stack.Feed{Moisture: profile, Length: v.Length, Dry: dry, Zone: p.machine.Nip.Best, Limit: v.Limit}, err
}

// blisterLimit finds the driest air whose sheet blisters at the setting, and the sheet's
// moisture in it. The setting is the middle of the window that the room's own air gives: what
// somebody sets who knows the room and not the stack.
func (t *Tables) blisterLimit(solver *nip.Solver, v *DrivenValue, p pairing, s stacked) error {
	r := new(nip.Response)
	if err := t.solve(solver, p, r); err != nil {
		return err
	}
	room := s.to.Temperature.Best
	temps := temperatures(p.machine, room)
	// set is the setting from which gas swells too far under a sheet of that humidity.
	blisters := func(h quantity.Fraction) (bool, error) {
		gas, err := t.gas(p.medium, h, room)
		if err != nil || !gas.holds {
			return false, err
		}
		list, err := bounds(&r.Steady, temps, p, gas)
		if err != nil {
			return false, err
		}
		at := slices.IndexFunc(list, func(b Bound) bool { return b.Limit == "gas" })
		return list[at].Temperature < v.Set, nil
	}
	w, err := t.judge(WindowCase{v.Film, v.Medium, v.Laminator, p.speed, room, s.to.Humidity.Best}, p, r)
	if err != nil {
		return err
	}
	v.Set = up((w.Steady.Low + w.Steady.High) / 2)
	lo, hi := limitLeast, limitMost
	wet, err := blisters(hi)
	if err != nil {
		return err
	}
	if !wet {
		v.Free, v.Humidity = true, hi
	} else {
		for hi-lo > 1e-3 {
			mid := (lo + hi) / 2
			if wet, err = blisters(mid); err != nil {
				return err
			}
			if wet {
				hi = mid
			} else {
				lo = mid
			}
		}
		v.Humidity = lo
	}
	v.Limit, err = s.sheet.Moisture(v.Humidity, room)
	return err
}

// DrivenProfile is what the nip finds along a sheet at one share.
type DrivenProfile struct {
	Share quantity.Fraction
	At    []quantity.Length
	// Own is the sheet's moisture before the nip, InNip while it is in it.
	Own, InNip []quantity.Fraction
	First      quantity.Length
	// Excess is the water above the limit at each place, Fed its sum from the leading edge
	// to there, each over its greatest at the greatest share: how blisters grow in size,
	// and what all of them up to there are made of.
	Excess, Fed []float64
}

// DrivenProfiles are the profiles of a case: with nothing driven, and by the band.
func (t *Tables) DrivenProfiles(v DrivenValue) ([]DrivenProfile, error) {
	f, err := t.feed(nip.NewSolver(), &v)
	if err != nil {
		return nil, err
	}
	b := stack.DrivenAhead
	var list []DrivenProfile
	most, mostFed := 0.0, 0.0
	for _, share := range []quantity.Fraction{0, b.Low, b.Best, b.High} {
		f.Share = share
		d, err := f.Pass()
		if err != nil {
			return nil, err
		}
		p := DrivenProfile{Share: share, At: d.At, Own: f.Moisture, InNip: d.InNip, First: d.First, Fed: d.Fed}
		for _, e := range d.Excess {
			p.Excess = append(p.Excess, float64(e))
			most = max(most, float64(e))
		}
		mostFed = max(mostFed, d.Fed[len(d.Fed)-1])
		list = append(list, p)
	}
	for _, p := range list {
		for i := range p.Fed {
			if most > 0 && mostFed > 0 {
				p.Excess[i] /= most
				p.Fed[i] /= mostFed
			}
		}
	}
	return list, nil
}

// DrivenWorking is the way to where the first blister lies.
func (t *Tables) DrivenWorking(v DrivenValue) (Working, error) {
	f, err := t.feed(nip.NewSolver(), &v)
	if err != nil {
		return Working{}, err
	}
	b := stack.DrivenAhead
	machine := t.shop.Laminator(v.Laminator)
	w := Working{Steps: []Step{
		step("T_set", "setting: the middle of the window that the room's own air gives", v.Set, "K", ""),
		step("a*", "humidity of a sheet that blisters there", v.Humidity, "", ""),
		step("M*", "its moisture, kg of water for each kg of dry sheet", v.Limit, "", paperSource),
		step("", "moisture of the stack's middle", v.Core, "", paperSource),
		step("", "moisture of its edge after a day in the room", v.Edge, "", paperSource),
		step("w", "sheet, dry", f.Dry, "kg/m²", ""),
		stated("ℓ", "what goes ahead comes to rest within the nip's length", machine.Nip, "m"),
		step("s", "share that goes ahead: low end", b.Low, "", ""),
		step("s", "estimate", b.Best, "", ""),
		step("s", "high end", b.High, "", ""),
	}}
	w.Notes = []string{
		"Water is kept: dc/dx = s·w·M − (1 − s)·c/ℓ, with c the water ahead of the nip. The nip finds M + c/(ℓ·w), and at most M/(1 − s).",
		"How much goes ahead has never been measured. Diffusion alone would move about 0.01 %, the vapour's own pressure along the pores a few per cent; the band is a decade to either side. That it comes to rest within the nip's length is assumed.",
	}
	return w, nil
}
