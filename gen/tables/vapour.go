package tables

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/vent"
)

// What drying prints may take of the limits. Half of an exposure limit is a usual level
// to act at, a tenth of the lower explosive limit is where alarms sound (both from
// memory): what is left is for printers, wipes and open cans.
const (
	ExposureShare  quantity.Fraction = 0.5
	ExplosiveShare quantity.Fraction = 0.1
)

// UsualMixing is the mixing factor of a room whose record states none: fair mixing, from
// memory.
const UsualMixing = 3

// MostArea is the area above which the table says only "over": the room then bounds
// nothing, and a number would be read as a promise.
const MostArea quantity.Area = 1000

// shift is the time that an exposure limit is an average over.
const shift = 8 * quantity.Hour

// Emissions are followed at times that grow from vapourFirst to HardlyDries by the same
// ratio: a print gives off most at once.
const (
	vapourFirst  = 30 * quantity.Second
	vapourPoints = 60
)

// VapourCase is a batch of fresh prints of one ink that is put up to dry in a room.
type VapourCase struct {
	Ink, Medium, Storage, Room string // ids
}

// VapourValue says how much print may dry in a room at once, before anything else in the
// room. It is never a permit.
type VapourValue struct {
	VapourCase
	// Known is false where the data does not hold what is needed; Reason says what.
	Known  bool
	Reason string
	// Area is what the handbook tells, rounded down; Over that the room bears more
	// than MostArea. Computed is the area before that.
	Area, Computed quantity.Area
	Over           bool
	// By is the limit that comes first: vent.ByExposure or vent.ByExplosive.
	By string
	// Daily is how much may be printed in a day, evenly and without end: everything that
	// the prints hold leaves in time, however they are kept.
	Daily quantity.Area
	// Average and Peak are what one square metre of print leaves in the air: the worst
	// average over eight hours, and the highest at any time. They are 0 where the
	// room's record does not say enough.
	Average, Peak quantity.Density
	// Moves say how far the area moves over the spread of what goes in, most first.
	Moves   []AreaMove
	Working Working
}

// AreaMove is how far an area moves when one input goes from the low to the high end of
// its spread, the others staying.
type AreaMove struct {
	Input     string
	Low, High quantity.Area
}

// size is how many times the larger area is of the smaller.
func (m AreaMove) size() float64 {
	low, high := min(m.Low, m.High), max(m.Low, m.High)
	if low <= 0 {
		return math.Inf(1)
	}
	return float64(high / low)
}

// vapourPrint is a case with its records, and what one square metre gives off.
type vapourPrint struct {
	printed
	carrier  *shop.Carrier
	emission vent.Emission
	load     quantity.Grammage
}

// Vapours computes the whole table: every ink that gives off a carrier, on the medium
// that its maker speaks of, at normal coverage, in every storage that suits the medium
// and in every room.
func (t *Tables) Vapours() ([]VapourValue, error) {
	var all []VapourValue
	for _, ink := range t.shop.Inks {
		if ink.Evaporation == nil {
			continue
		}
		medium := t.shop.Medium(ink.Makers.Medium.ID)
		for _, storage := range t.StoragesFor(medium) {
			for _, room := range t.shop.Rooms {
				v, err := t.Vapour(VapourCase{ink.ID, medium.ID, storage.ID, room.ID})
				if err != nil {
					return nil, err
				}
				all = append(all, v)
			}
		}
	}
	return all, nil
}

// Vapour computes a case.
func (t *Tables) Vapour(c VapourCase) (VapourValue, error) {
	v := VapourValue{VapourCase: c}
	r, err := t.resolve(WaitCase{c.Ink, c.Medium, "normal", c.Storage, c.Room})
	if err != nil {
		return v, err
	}
	p, why, err := t.vapourPrint(r)
	if err != nil {
		return v, fmt.Errorf("vapour of %s in %s: %w", c.Ink, c.Room, err)
	}
	if why != "" {
		v.unknown(why)
		return v, nil
	}
	return t.bears(v, p)
}

func (v *VapourValue) unknown(why string) {
	v.Reason = why
	v.Working.Notes = append(v.Working.Notes, why)
}

// vapourPrint follows a fresh print until it hardly changes. why says what the data does
// not hold.
func (t *Tables) vapourPrint(r printed) (p vapourPrint, why string, err error) {
	p.printed = r
	if r.ink.Evaporation == nil {
		return p, fmt.Sprintf("The data knows no carrier that %s gives off.", r.ink.Name), nil
	}
	p.carrier = t.shop.Carrier(r.ink.Evaporation.Carrier.ID)
	if !r.room.Volume.Set || !r.room.AirChanges.Set {
		return p, fmt.Sprintf("The record of %s gives no volume or no air changes.", r.room.Name), nil
	}
	l, err := t.law(r.ink, r.medium, noFilm)
	if err != nil {
		return p, "", err
	}
	law := l.(evaporating)
	p.load = law.load("normal")
	here := in(r.room, r.storage)
	times, left := []quantity.Time{0}, []quantity.Grammage{p.load}
	s := law.fresh("normal")
	for i := range vapourPoints {
		at := vapourFirst * quantity.Time(math.Pow(float64(HardlyDries/vapourFirst), float64(i)/(vapourPoints-1)))
		if s, err = s.march(here, at-times[i]); err != nil {
			return p, "", err
		}
		// At its end a print is in balance with the room, and rounding may look like taking up.
		now := min(s.(evaporatingState).state.Amount(), left[i])
		times, left = append(times, at), append(left, max(now, 0))
	}
	if left[len(left)-1] == left[0] {
		return p, fmt.Sprintf("The air of %s already holds as much of the carrier as the print would give off.", r.room.Name), nil
	}
	p.emission, err = vent.FromLeft(times, left)
	return p, "", err
}

// ventRoom is a room as its vapour is reckoned.
func ventRoom(r *shop.Room) vent.Room {
	mixing := r.Mixing
	if mixing == 0 {
		mixing = UsualMixing
	}
	return vent.Room{Volume: r.Volume.Best, AirChanges: r.AirChanges.Best, Mixing: mixing}
}

// bears finds the area that a room bears of a print.
func (t *Tables) bears(v VapourValue, p vapourPrint) (VapourValue, error) {
	room := ventRoom(p.room)
	metre, err := room.Leaves(vent.Load{Emission: p.emission, Batches: []vent.Batch{{Area: 1}}}, shift)
	if err != nil {
		return v, err
	}
	v.Average, v.Peak = metre.Average, metre.Peak
	if !p.carrier.ExposureLimit.Set {
		v.unknown(fmt.Sprintf("The record of %s has no exposure limit: put in the one of section 8 of the safety data sheet.", p.carrier.Name))
		v.Working.Steps = t.vapourSteps(v, p)
		return v, nil
	}
	b, err := t.bearing(metre, p)
	if err != nil {
		return v, err
	}
	v.Known, v.Computed, v.By = true, b.Bears, b.By
	v.Area, v.Over = toldArea(b.Bears)
	if v.Daily, err = daily(room, p); err != nil {
		return v, err
	}
	if v.Moves, err = t.vapourMoves(metre, p); err != nil {
		return v, err
	}
	v.Working.Steps = t.vapourSteps(v, p)
	if kind := p.storage.Kind; kind == "tight-roll" || kind == "stack" {
		v.Working.Notes = append(v.Working.Notes, "Kept like this the print holds its vapour back and gives it off when it is opened: count it as hung from then on.")
	}
	v.Working.Notes = append(v.Working.Notes,
		"By hand: A = (x·L − C₀)/C̄, or (x_e·L_e − C₀)/Ĉ where that is less, with L_e the lower explosive limit as a concentration.",
		"A mean of the room says little about the air beside a wet print, where the concentration is many times as high. A limit adds up with those of other vapours that harm alike.")
	return v, nil
}

// bearing holds what one square metre leaves against the limits.
func (t *Tables) bearing(metre vent.Trace, p vapourPrint) (vent.Bearing, error) {
	mixture := []vent.Component{{Name: p.carrier.Name, Share: 1, MolarMass: p.carrier.MolarMass.Best, Limit: p.carrier.ExposureLimit.Best, LowerExplosive: p.carrier.LowerExplosive.Best}}
	return metre.Bears(mixture, vent.Bounds{Exposure: ExposureShare, Explosive: ExplosiveShare, Standing: p.room.Vapour.Best,
		Temperature: p.room.Temperature.Best, Pressure: t.pressure})
}

// daily is what may be printed in a day without end: all that leaves the prints is taken
// out by the fresh air.
//
//	A = (x·L − C₀)·Q/(K·m₀) in a day
func daily(room vent.Room, p vapourPrint) (quantity.Area, error) {
	if room.AirChanges == 0 {
		return 0, nil
	}
	steady, err := room.Steady(float64(p.load) / float64(quantity.Day)) // of a square metre a day
	if err != nil {
		return 0, err
	}
	free := max(p.carrier.ExposureLimit.Best*quantity.Density(ExposureShare)-p.room.Vapour.Best, 0)
	return quantity.Area(free / steady), nil
}

// toldArea rounds down to two figures; over says that it is past MostArea.
func toldArea(a quantity.Area) (told quantity.Area, over bool) {
	if a > MostArea {
		return MostArea, true
	}
	step := 1.0
	if a >= 100 {
		step = 10
	}
	return quantity.Area(math.Floor(float64(a)/step+1e-9) * step), false
}
