package tables

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"laydown/gen/drying"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Backs names what may lie on the back of a laminated print: nothing, the same
// film as on its face, or a panel that it was mounted on.
var Backs = []string{"open", "film", "mounted"}

// AfterDays are the days after lamination for which the table says what is left.
var AfterDays = []float64{1, 3, 7, 30}

// SpentShares are the shares of its computed wait that a print of the table had
// had when it was laminated: all of it, half, and less than a third.
var SpentShares = []quantity.Fraction{1, 0.5, 0.3}

// LockedIn is the time after which carrier that is still above its limit counts as
// locked in: a year.
const LockedIn = 365 * quantity.Day

// errNoMobility says that a film's record lacks what the computation needs.
var errNoMobility = errors.New("says nothing of how freely a carrier moves in it (carrier_mobility)")

// AfterCase is a print that was laminated when it had had a share of its wait.
type AfterCase struct {
	Ink, Medium, Film       string // ids
	Back                    string // of Backs
	Coverage, Storage, Room string
	// Spent is the share of its computed wait. Until then its back was as the
	// medium and the storage leave it.
	Spent quantity.Fraction
}

// AfterValue is what stays in a print under its film.
type AfterValue struct {
	AfterCase
	// Wait is the computed wait, At when the print was laminated.
	Wait, At quantity.Time
	// Limit is the safe residue, Start what was there at lamination, Left what is
	// there after each of AfterDays.
	Limit, Start quantity.Grammage
	Left         []quantity.Grammage
	// Clear is the time after lamination until no more than the limit is left: 0
	// for a print that had its wait, +Inf where that takes longer than LockedIn.
	Clear   quantity.Time
	Working Working
}

// Locked reports whether the carrier is locked in.
func (v AfterValue) Locked() bool { return math.IsInf(float64(v.Clear), 1) }

// After computes what stays in a print under its film.
func (t *Tables) After(c AfterCase) (AfterValue, error) {
	l, err := t.layFilm(c)
	if err != nil {
		return AfterValue{}, err
	}
	times := make([]quantity.Time, len(AfterDays))
	for i, d := range AfterDays {
		times[i] = quantity.Time(d) * quantity.Day
	}
	v := AfterValue{AfterCase: c, Wait: l.wait, At: l.at, Limit: l.law.safe}
	cleared, err := l.state.Clears(l.covered, l.law.safe, times, LockedIn)
	if err != nil {
		return v, err
	}
	v.Start, v.Left, v.Clear = cleared.Start, cleared.Left, cleared.Clear
	if c.Spent >= 1 {
		v.Clear = 0 // but for the last bits of the wait's bisection
	}
	v.Working = l.working(v)
	return v, nil
}

// underFilm is a print in the moment in which it was laminated.
type underFilm struct {
	law           evaporating
	film          *shop.Film
	back          string
	wait, at      quantity.Time
	state         drying.State
	open, covered drying.Setting // before and after
	plies         []drying.Ply
	vinyl         quantity.Diffusivity // of the carrier in plasticised calendered vinyl, here
}

// layFilm dries a print for its share of the wait and lays the film on it.
func (t *Tables) layFilm(c AfterCase) (underFilm, error) {
	var l underFilm
	r, err := t.resolve(WaitCase{c.Ink, c.Medium, c.Coverage, c.Storage, c.Room})
	if err != nil {
		return l, err
	}
	if l.film = t.shop.Film(c.Film); l.film == nil {
		return l, t.unknown("films", c.Film)
	}
	if !slices.Contains(Backs, c.Back) {
		return l, fmt.Errorf("no back is called %q: open, film or mounted", c.Back)
	}
	if !(c.Spent >= 0 && c.Spent <= 1) {
		return l, fmt.Errorf("%g of its wait: a share from 0 to 1", float64(c.Spent))
	}
	any, err := t.law(r.ink, r.medium, l.film.Safe)
	if err != nil {
		return l, err
	}
	law, ok := any.(evaporating)
	if !ok {
		return l, fmt.Errorf("%s has no carrier that would stay", r.ink.Name)
	}
	l.law, l.back = law, c.Back
	here := in(r.room, r.storage)
	fresh := law.fresh(c.Coverage).(evaporatingState)
	wait, dries, err := fresh.until(here)
	if err != nil {
		return l, err
	}
	if !dries {
		return l, fmt.Errorf("%s on %s hardly dries as it is kept: there is no wait to take a share of", r.ink.Name, r.medium.Name)
	}
	l.wait, l.at = wait, wait*quantity.Time(c.Spent)
	now, err := fresh.march(here, l.at)
	if err != nil {
		return l, err
	}
	l.state = now.(evaporatingState).state
	return l, l.cover(here)
}

// cover lays the film over the face, and what the case says over the back.
func (l *underFilm) cover(here place) error {
	s, err := l.law.in(here)
	if err != nil {
		return err
	}
	l.open = s.Setting
	l.vinyl = l.law.inVinyl(s.arrhenius)
	if l.plies, err = l.law.t.plies(l.film, l.vinyl); err != nil {
		return err
	}
	var back []drying.Ply
	if l.back == "film" {
		back = l.plies
	}
	if l.covered, err = l.open.Covered(l.plies, back); err != nil {
		return err
	}
	if l.back == "mounted" {
		l.covered.Back = 0
	}
	return nil
}

// inVinyl is the carrier's diffusivity in plasticised calendered vinyl, the
// measure of all mobilities.
func (e evaporation) inVinyl(arrhenius float64) quantity.Diffusivity {
	return e.reference * quantity.Diffusivity(arrhenius/float64(e.refMedium.Drying.Mobility.Best))
}

// plies are a film's layers with the carrier's diffusivity in each. The carrier is
// taken to dissolve in them as it does in the print's layer. An adhesive whose
// record says nothing is left out: adhesives are softer than any base.
func (t *Tables) plies(film *shop.Film, vinyl quantity.Diffusivity) ([]drying.Ply, error) {
	base := t.shop.Substance(film.Base.ID)
	if !base.CarrierMobility.Set {
		return nil, fmt.Errorf("%s: %s %w", film.ID, base.Name, errNoMobility)
	}
	ply := func(thickness shop.Value[quantity.Length], s *shop.Substance) drying.Ply {
		return drying.Ply{Thickness: thickness.Best, Diffusivity: vinyl * quantity.Diffusivity(s.CarrierMobility.Best), Partition: 1}
	}
	list := []drying.Ply{ply(film.BaseThickness, base)}
	if adhesive := t.shop.Substance(film.Adhesive.ID); adhesive.CarrierMobility.Set {
		list = append(list, ply(film.AdhesiveThickness, adhesive))
	}
	return list, nil
}

// BacksOf are the backs that make a difference to a print on a medium: a medium
// whose back lets nothing out has only the one.
func BacksOf(medium *shop.Medium) []string {
	if medium.Drying == nil || medium.Drying.Back != "open" {
		return Backs[:1]
	}
	return Backs
}

// FilmsOn are the films that the shop's rules allow on a print and that some
// laminator lays on it, as far as their records tell what a carrier does in them.
func (t *Tables) FilmsOn(ink *shop.Ink, medium *shop.Medium, coverage string) []*shop.Film {
	var list []*shop.Film
	for _, film := range t.shop.Films {
		v := t.pair(ink, medium, film, coverage).Verdict
		if v != Change && v != Refuse && t.runsSomewhere(film, medium) && t.shop.Substance(film.Base.ID).CarrierMobility.Set {
			list = append(list, film)
		}
	}
	return list
}

// Afters computes the whole table: every evaporating ink on every medium that is
// made for it, every film that will do, each back that makes a difference, and
// each of SpentShares, at normal coverage, in the shop's usual room and storage.
// Prints that hardly dry there are left out.
func (t *Tables) Afters() ([]AfterValue, error) {
	var all []AfterValue
	for _, ink := range t.shop.Inks {
		if ink.Dries != "evaporation" {
			continue
		}
		for _, medium := range t.shop.Media {
			if !t.shop.PrintsOn(ink, medium) {
				continue
			}
			list, err := t.aftersOf(ink, medium)
			if err != nil {
				return nil, fmt.Errorf("%s on %s: %w", ink.ID, medium.ID, err)
			}
			all = append(all, list...)
		}
	}
	return all, nil
}

func (t *Tables) aftersOf(ink *shop.Ink, medium *shop.Medium) ([]AfterValue, error) {
	usual := t.UsualAfter(ink, medium)
	if v, err := t.Wait(WaitCase{ink.ID, medium.ID, usual.Coverage, usual.Storage, usual.Room}); err != nil || !v.Dries {
		return nil, err
	}
	var list []AfterValue
	for _, film := range t.FilmsOn(ink, medium, usual.Coverage) {
		for _, back := range BacksOf(medium) {
			for _, spent := range SpentShares {
				c := usual
				c.Film, c.Back, c.Spent = film.ID, back, spent
				v, err := t.After(c)
				if err != nil {
					return nil, fmt.Errorf("%s, %s back: %w", film.ID, back, err)
				}
				list = append(list, v)
			}
		}
	}
	return list, nil
}

// UsualAfter is a print in the shop's usual room and storage, at normal coverage,
// with its back open, laminated when it had its wait; the film is to be named.
func (t *Tables) UsualAfter(ink *shop.Ink, medium *shop.Medium) AfterCase {
	return AfterCase{Ink: ink.ID, Medium: medium.ID, Back: "open", Coverage: "normal",
		Storage: t.usualStorage(medium), Room: t.shop.Front.Room.ID, Spent: 1}
}

// AfterCurve follows what is left under a film from lamination on until upTo, at
// times that grow by the same ratio: the first is upTo over three hundred.
func (t *Tables) AfterCurve(c AfterCase, upTo quantity.Time) (Curve, error) {
	l, err := t.layFilm(c)
	if err != nil {
		return Curve{}, err
	}
	curve := Curve{Name: backWords[c.Back]}
	curve.Limit, curve.Unit = l.law.limit()
	for i := range curvePoints + 1 {
		at := float64(upTo) * math.Pow(300, float64(i)/curvePoints-1)
		curve.Times = append(curve.Times, quantity.Time(at))
	}
	cleared, err := l.state.Clears(l.covered, l.law.safe, curve.Times, upTo)
	for _, m := range cleared.Left {
		curve.Left = append(curve.Left, grams(m))
	}
	return curve, err
}

// recovery is the days until the early print of a claim is down to its safe
// residue under the film; +Inf where that takes longer than a year.
func (t *Tables) recovery(k *shop.ClaimCase) (float64, error) {
	ink, medium := t.shop.Ink(k.Ink.ID), t.shop.Medium(k.Medium.ID)
	if ink == nil || medium == nil {
		return 0, fmt.Errorf("a recovery of %q on %q: no such print", k.Ink.ID, k.Medium.ID)
	}
	c := t.UsualAfter(ink, medium)
	c.Film, c.Back, c.Spent = k.Film.ID, k.Back, k.Spent.Best
	v, err := t.After(c)
	return float64(v.Clear / quantity.Day), err
}
