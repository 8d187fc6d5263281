package tables

import (
	"errors"
	"fmt"

	"laydown/gen/bond"
	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// BondCase is a film on a print, run in a machine at its usual speed in a room.
type BondCase struct {
	Ink string // id
	LaminateCase
}

// BondValue says how a film's adhesive wets out a print.
type BondValue struct {
	BondCase
	Set quantity.Temperature // of the roller: the lowest of the steady run, or the room's for a film laid cold
	// Relief is what has to be filled: the ink's or the medium's own, whichever asks
	// for more.
	Relief quantity.Length
	Of     string // "ink" or "medium"
	// Class is ClearsInNip, ClearsByItself or WillNotClear; Certain says that it is the
	// same at both ends of what is known, Easy and Hard what it is there.
	Class, Easy, Hard string
	Certain           bool
	// Shares of the relief's depth that are filled.
	AfterNip, AfterHour, AfterDay quantity.Fraction
	// Thin says that the layer of adhesive is less than the relief is deep.
	Thin bool
	// Lowest is the lowest bond line at which the nip alone fills it; false where none
	// that the adhesive bears does.
	Lowest quantity.Temperature
	Can    bool
	// Warm is how many times as fast a cold film's adhesive flows where its maker lets
	// the roller be warmed, up to WarmTo. 0 where it is not.
	Warm   float64
	WarmTo quantity.Temperature
}

// What becomes of silvering.
const (
	ClearsInNip    = "clears in the nip"
	ClearsByItself = "clears by itself overnight"
	WillNotClear   = "will not clear by itself"
)

var bondClasses = map[bond.Class]string{bond.InNip: ClearsInNip, bond.ByItself: ClearsByItself, bond.WillNot: WillNotClear}

// end is a place in a value's spread: its best, or the end that makes wetting out easy or
// hard.
type end int

const (
	best end = iota
	easy
	hard
)

// toward gives the end of a spread; more says that a higher value makes it harder.
func toward[Q quantity.Quantity](v shop.Value[Q], e end, more bool) Q {
	switch {
	case e == best:
		return v.Best
	case (e == hard) == more:
		return v.High
	}
	return v.Low
}

// Bond computes a case.
func (t *Tables) Bond(c BondCase) (BondValue, error) {
	p, room, ink, err := t.resolveBond(c)
	if err != nil {
		return BondValue{}, err
	}
	through, err := t.bondLine(nip.NewSolver(), p, room)
	if err != nil {
		return BondValue{}, err
	}
	return t.bondOf(c, p, ink, through)
}

func (t *Tables) resolveBond(c BondCase) (pairing, *shop.Room, *shop.Ink, error) {
	p, room, err := t.resolveLaminate(c.LaminateCase)
	if err != nil {
		return p, nil, nil, err
	}
	ink := t.shop.Ink(c.Ink)
	if ink == nil {
		return p, nil, nil, t.unknown("inks", c.Ink)
	}
	return p, room, ink, nil
}

// passage is a bond line's way through the machine: a film on a medium, whatever the ink.
type passage struct {
	set, room quantity.Temperature
	samples   []bond.Sample // with no pressure on them yet
	nip       quantity.Time
}

// bondLine follows the bond line of the steady run from first touch on.
func (t *Tables) bondLine(solver *nip.Solver, p pairing, room *shop.Room) (passage, error) {
	out := passage{set: room.Temperature.Best, room: room.Temperature.Best, nip: quantity.Time(float64(p.machine.Nip.Best) / float64(p.speed))}
	if p.film.Class == "cold" {
		out.samples = []bond.Sample{{Time: 0, Temperature: out.room}, {Time: out.nip, Temperature: out.room}}
		return out, nil
	}
	r := new(nip.Response)
	if err := t.solve(solver, p, r); err != nil {
		return out, err
	}
	v, err := t.judge(WindowCase{p.film.ID, p.medium.ID, p.machine.ID, p.speed, room.Temperature.Best, room.Humidity.Best}, p, r)
	if err != nil {
		return out, err
	}
	out.set = up(v.Steady.Low)
	temps := temperatures(p.machine, room.Temperature.Best)
	temps.Set = out.set
	c := &r.Steady
	for i := c.Touch; i < len(c.Times); i++ {
		at := c.Records[i][nip.BondLine].At(temps)
		if n := len(out.samples); n > 0 && c.Times[i] <= out.samples[n-1].Time {
			continue
		}
		out.samples = append(out.samples, bond.Sample{Time: c.Times[i], Temperature: at})
	}
	return out, nil
}

// bondOf computes a print's wet-out from a passage.
func (t *Tables) bondOf(c BondCase, p pairing, ink *shop.Ink, through passage) (BondValue, error) {
	v := BondValue{BondCase: c, Set: through.set}
	var cases [3]bond.Case
	for e := best; e <= hard; e++ {
		made, of, err := t.bondCase(p, ink, through, e)
		if err != nil {
			return v, err
		}
		cases[e] = made
		if e == best {
			v.Relief, v.Of = made.Relief.Depth, of
		}
	}
	s, err := bond.SpreadOf(cases[best], cases[easy], cases[hard])
	if err != nil {
		return v, fmt.Errorf("bond of %s on %s: %w", p.film.ID, p.medium.ID, err)
	}
	v.Class, v.Easy, v.Hard, v.Certain = bondClasses[s.Best.Class], bondClasses[s.Easy.Class], bondClasses[s.Hard.Class], s.Certain
	v.AfterNip, v.AfterHour, v.AfterDay = s.Best.AfterNip, s.Best.AfterHour, s.Best.AfterDay
	pressure, err := bond.MeanPressure(p.machine.NipLoad.Best, p.machine.Nip.Best)
	if err != nil {
		return v, err
	}
	adhesive := cases[best].Adhesive
	v.Thin = cases[best].Relief.Reach(adhesive.Thickness) < 1
	if !v.Thin {
		lowest, err := adhesive.LowestApplication(cases[best].Relief, 1, pressure, through.nip)
		switch {
		case err == nil:
			v.Lowest, v.Can = lowest.Temperature, !lowest.Extrapolates
		case !errors.Is(err, bond.ErrNoTemperature) && !errors.Is(err, bond.ErrGlassy):
			return v, err
		}
	}
	if p.film.Assist != nil && p.film.Assist.To.Best > through.room {
		v.WarmTo = p.film.Assist.To.Best
		faster, err := bond.Faster(adhesive.Law, through.room, v.WarmTo)
		if err != nil {
			return v, err
		}
		v.Warm = float64(faster)
	}
	return v, nil
}

// bondCase is the wet-out of a print at one end of what is known of it.
func (t *Tables) bondCase(p pairing, ink *shop.Ink, through passage, e end) (bond.Case, string, error) {
	law, surface, err := t.flow(p.film, e)
	if err != nil {
		return bond.Case{}, "", err
	}
	c := bond.Case{
		Adhesive: bond.Adhesive{Law: law, Surface: surface, Wetting: 1, Thickness: toward(p.film.AdhesiveThickness, e, false)},
		Rest:     through.room,
	}
	// Which valleys ask for more does not depend on the adhesive.
	of := "ink"
	c.Relief = bond.Relief{Form: bond.Groove, Depth: toward(ink.Relief, e, true), Width: toward(ink.ReliefWidth, e, false)}
	own := bond.Relief{Form: bond.Groove, Depth: toward(p.medium.Texture, e, true), Width: toward(p.medium.TextureWidth, e, false)}
	if !ink.Relief.Set || p.medium.Texture.Set && own.Demand(1) > c.Relief.Demand(1) {
		c.Relief, of = own, "medium"
	}
	if !(c.Relief.Depth > 0 && c.Relief.Width > 0) {
		return c, of, fmt.Errorf("neither %s nor %s says how deep and wide its relief is", ink.ID, p.medium.ID)
	}
	pressure, err := bond.MeanPressure(toward(p.machine.NipLoad, e, false), p.machine.Nip.Best)
	if err != nil {
		return c, of, fmt.Errorf("%s: %w", p.machine.ID, err)
	}
	c.Pass, err = bond.Press(through.samples, 0, through.nip, pressure, bond.Parabola)
	return c, of, err
}

// flow is how a film's adhesive flows.
func (t *Tables) flow(film *shop.Film, e end) (bond.Law, quantity.SurfaceTension, error) {
	s := t.shop.Substance(film.Adhesive.ID)
	f := s.Flows
	if f == nil {
		return nil, 0, fmt.Errorf("%s does not say how it flows", s.ID)
	}
	surface := toward(f.SurfaceTension, e, false)
	if f.Glass.Set {
		return bond.FreeVolume{Reference: toward(f.Viscosity, e, true), At: f.At.Best, Glass: f.Glass.Best}, surface, nil
	}
	melt := bond.Melt{Reference: toward(f.Viscosity, e, true), At: f.At.Best, Energy: f.Activation.Best, Setting: s.Sets.Best}
	if film.Melts == nil {
		return nil, 0, fmt.Errorf("%s does not say where its adhesive melts", film.ID)
	}
	// Where a maker's melting range begins below the substance's setting, it sets there.
	melt.Melting = film.Melts.From.Best
	melt.Setting = min(melt.Setting, melt.Melting)
	return melt, surface, nil
}

// knowsBond says that the records hold what wetting out needs.
func (t *Tables) knowsBond(p pairing) bool {
	return p.machine.NipLoad.Set && t.shop.Substance(p.film.Adhesive.ID).Flows != nil
}

// bondedInks are the inks of a medium whose prints the film may go on, as far as the data
// knows what has to be wetted.
func (t *Tables) bondedInks(p pairing) []*shop.Ink {
	var list []*shop.Ink
	for _, ref := range p.medium.Inks {
		ink := t.shop.Ink(ref.ID)
		if v := t.pair(ink, p.medium, p.film, "normal").Verdict; v == Change || v == Refuse || !ink.Relief.Set && !p.medium.Texture.Set {
			continue
		}
		list = append(list, ink)
	}
	return list
}

// Bonds computes the whole table: every film on every print of a medium, in every machine
// that takes both, in the shop's usual room, unless the shop's rules speak against it.
func (t *Tables) Bonds() ([]BondValue, error) {
	var all []pairing
	for _, p := range t.laminates() {
		if t.knowsBond(p) {
			all = append(all, p)
		}
	}
	room := t.shop.Room(t.shop.Front.Room.ID)
	parts, err := eachOf(len(all), func(solver *nip.Solver, i int) ([]BondValue, error) {
		p := all[i]
		through, err := t.bondLine(solver, p, room)
		if err != nil {
			return nil, err
		}
		var list []BondValue
		for _, ink := range t.bondedInks(p) {
			v, err := t.bondOf(BondCase{ink.ID, LaminateCase{p.film.ID, p.medium.ID, p.machine.ID, room.ID}}, p, ink, through)
			if err != nil {
				return nil, err
			}
			list = append(list, v)
		}
		return list, nil
	})
	var list []BondValue
	for _, part := range parts {
		list = append(list, part...)
	}
	return list, err
}

// BondWorking is the way to a print's wet-out.
func (t *Tables) BondWorking(v BondValue) (Working, error) {
	p, room, ink, err := t.resolveBond(v.BondCase)
	if err != nil {
		return Working{}, err
	}
	through, err := t.bondLine(nip.NewSolver(), p, room)
	if err != nil {
		return Working{}, err
	}
	c, of, err := t.bondCase(p, ink, through, best)
	if err != nil {
		return Working{}, err
	}
	r, err := c.WetOut()
	if err != nil {
		return Working{}, err
	}
	f := t.shop.Substance(p.film.Adhesive.ID).Flows
	pressure, err := bond.MeanPressure(p.machine.NipLoad.Best, p.machine.Nip.Best)
	if err != nil {
		return Working{}, err
	}
	w := Working{Steps: []Step{
		step("d", "depth of the valleys, the "+of+"'s", c.Relief.Depth, "m", ""),
		step("w", "their width", c.Relief.Width, "m", ""),
		ratio("S*", "supply that fills them: 6(d/w)² + (16/π)(d/w)", r.Demand),
		stated("q", "load of the nip", p.machine.NipLoad, "N/m"),
		step("p", "its mean pressure", pressure, "Pa", ""),
		step("t_n", "time in the nip", through.nip, "s", ""),
		stated("η_1", "viscosity of the adhesive", f.Viscosity, "Pa s"),
		step("", "at", f.At.Best, "K", f.At.Source),
		step("T_h", "bond line at its hottest", r.Passage.Hottest, "K", ""),
		ratio("S", "supply of nip and free run: the sum of p/η over time", r.Passage.Supply),
		step("f", "share of the depth filled after the machine", r.AfterNip, "", ""),
		step("p_c", "pressure of the capillary afterwards: 2γ/w", r.Capillary, "Pa", ""),
		step("f_1", "filled after an hour", r.AfterHour, "", ""),
		step("f_24", "after a day", r.AfterDay, "", ""),
	}}
	w.Notes = []string{fmt.Sprintf("With everything as easy as its spread allows: %s. As hard: %s. Viscosities of film adhesives are known to a factor of ten.", v.Easy, v.Hard)}
	return w, nil
}

// StartSettings are where a test strip begins: the film's tension and the nip's pressure.
type StartSettings struct {
	Film, Laminator string
	// Tension is what good practice pulls the film with, per width and over the film's
	// whole width.
	Tension quantity.LineLoad
	Pull    float64 // N
	Load    quantity.LineLoad
	Mean    quantity.Pressure // in the nip
}

// Start gives the start settings of a film in a machine; false where the records do not
// hold them. They stand with bond.Cautions on every page.
func (t *Tables) Start(filmID, machineID string) (StartSettings, bool) {
	film, machine := t.shop.Film(filmID), t.shop.Laminator(machineID)
	if film == nil || machine == nil || !machine.NipLoad.Set || !t.shop.Substance(film.Base.ID).WebStress.Set {
		return StartSettings{}, false
	}
	tension := pull(t.shop.Substance(film.Base.ID), film.BaseThickness.Best)
	mean, err := bond.MeanPressure(machine.NipLoad.Best, machine.Nip.Best)
	if err != nil {
		return StartSettings{}, false
	}
	width := min(film.Width.Best, machine.Width.Best)
	return StartSettings{filmID, machineID, tension, float64(tension) * float64(width), machine.NipLoad.Best, mean}, true
}

// Overnight is how long silvering is left to clear by itself.
const Overnight = bond.Overnight

// StartCautions go with every start setting.
func StartCautions() []string { return bond.Cautions }
