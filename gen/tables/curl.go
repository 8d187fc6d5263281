package tables

import (
	"fmt"
	"math"

	"laydown/gen/curl"
	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// CurlValue is how a medium with film on one side bends, laminated in a room.
type CurlValue struct {
	LaminateCase
	Grain string // against the feed; empty where the medium has none
	// Balanced says that the machine films both sides, so that the sheet lies flat and
	// the rest tells what one side alone would do.
	Balanced bool
	Set      quantity.Temperature // of the roller; 0 where laid cold
	Fresh    Bend                 // as it comes cold from the machine
	Rooms    []Bend               // once it has come to balance with each of the shop's rooms, in their order
}

// Bend is the cylinder that a sheet rolls into.
type Bend struct {
	Room string // id
	// Curvature in 1/m, above 0 where the edges lift on the film's side.
	Curvature float64
	// Axis from the feed direction: 90, the leading and trailing ends lift; 0, the
	// sides do. AnyAxis where all are alike.
	Axis    float64
	AnyAxis bool
	// Rise of the edges of a sheet BendLength long across the axis, on a table, held
	// down by its own weight.
	Rise quantity.Length
}

// BendLength is the length that rises are told for: the long side of A4.
const BendLength = 297 * quantity.Millimetre

// Flat is the rise under which a sheet is told to lie flat (common practice, no source).
const Flat = 5 * quantity.Millimetre

// Words are what a bend is called.
func (b Bend) Words() string {
	if b.Rise < Flat {
		return "flat"
	}
	side := "to the film"
	if b.Curvature < 0 {
		side = "to the print"
	}
	if b.Rolls() {
		return "rolls up " + side
	}
	return b.Edges() + " lift " + side
}

// Rolls says that its edges meet over it.
func (b Bend) Rolls() bool { return math.Abs(b.Curvature)*float64(BendLength) > math.Pi }

// Edges names the edges that lift.
func (b Bend) Edges() string {
	switch {
	case b.AnyAxis:
		return "edges"
	case b.Axis > 67.5 || b.Axis < -67.5:
		return "ends"
	case b.Axis > -22.5 && b.Axis < 22.5:
		return "sides"
	}
	return "corners"
}

func (b *bare) bend(room string, c *curl.Curl) Bend {
	y := c.Cylinder
	return Bend{room, towardsFilm(c), float64(y.Axis), y.AnyAxis, c.Plate.RiseOnTable(y, BendLength, b.weighs())}
}

// weighs is the grammage of the laminate.
func (b *bare) weighs() quantity.Grammage {
	return b.medium.Grammage.Best + b.filmWeighs
}

// Grains are the ways that a medium's grain can lie against the feed.
func Grains(m *shop.Medium) []string {
	if m.HasGrain {
		return []string{GrainAcross, GrainAlong}
	}
	return []string{""}
}

// Curl computes a case.
func (t *Tables) Curl(c LaminateCase, grain string) (CurlValue, error) {
	return t.curlOf(nip.NewSolver(), c, grain)
}

func (t *Tables) curlOf(solver *nip.Solver, c LaminateCase, grain string) (CurlValue, error) {
	v := CurlValue{LaminateCase: c, Grain: grain}
	b, err := t.joinedIn(solver, c, grain)
	if err != nil {
		return v, err
	}
	v.Set, v.Balanced = b.setting, b.machine.TwoSided && b.film.Class != "cold"
	fresh, err := b.joined.Curl(b.states(b.room, b.nipped, b.humidity))
	if err != nil {
		return v, err
	}
	v.Fresh = b.bend(c.Room, fresh)
	for _, room := range t.shop.Rooms {
		now, err := b.curlIn(room.Humidity.Best)
		if err != nil {
			return v, err
		}
		v.Rooms = append(v.Rooms, b.bend(room.ID, now))
	}
	return v, nil
}

// laminateGrain is a case with the way that its grain lies.
type laminateGrain struct {
	LaminateCase
	grain string
}

// joinedIn joins the laminate of a case.
func (t *Tables) joinedIn(solver *nip.Solver, c LaminateCase, grain string) (*bare, error) {
	return t.joined.of(laminateGrain{c, grain}, func() (*bare, error) {
		p, room, err := t.resolveLaminate(c)
		if err != nil {
			return nil, err
		}
		return t.laminate(solver, p, grain, room.Temperature.Best, room.Humidity.Best)
	})
}

// bends says that the data holds what the curl of a film on a medium needs.
func (t *Tables) bends(film *shop.Film, medium *shop.Medium) bool {
	return knowsCurl(medium) && t.knowsStiffness(film) && (film.Class == "cold" || knowsHeat(medium) && t.knowsSetting(film))
}

// laminates lists every film on every medium in every machine that takes both, hot and
// cold, in the data's order.
func (t *Tables) laminates() []pairing {
	var list []pairing
	for _, film := range t.shop.Films {
		for _, medium := range t.shop.Media {
			if !t.bends(film, medium) {
				continue
			}
			for _, machine := range t.shop.Laminators {
				if len(fits(film, medium, machine)) == 0 {
					list = append(list, pairing{film, medium, machine, machine.Usual.Best})
				}
			}
		}
	}
	return list
}

// grained is a laminate with its grain one way.
type grained struct {
	pairing
	grain string
}

// Curls computes the whole table in the shop's usual room.
func (t *Tables) Curls() ([]CurlValue, error) {
	var all []grained
	for _, p := range t.laminates() {
		for _, g := range Grains(p.medium) {
			all = append(all, grained{p, g})
		}
	}
	return eachOf(len(all), func(solver *nip.Solver, i int) (CurlValue, error) {
		g := all[i]
		return t.curlOf(solver, LaminateCase{g.film.ID, g.medium.ID, g.machine.ID, t.shop.Front.Room.ID}, g.grain)
	})
}

// CurlWorking is the way to a bend: what each layer would like to do, and what comes of it.
func (t *Tables) CurlWorking(v CurlValue) (Working, error) {
	b, err := t.joinedIn(nip.NewSolver(), v.LaminateCase, v.Grain)
	if err != nil {
		return Working{}, err
	}
	c, err := b.curlIn(b.humidity)
	if err != nil {
		return Working{}, err
	}
	w := Working{Steps: []Step{
		step("T_s", "the layers joined at", b.sets, "K", ""),
		step("T_0", "room", b.room, "K", ""),
		step("M_0", "moisture of the medium in the room", b.kept, "", ""),
		step("M_s", "moisture when the layers joined", b.nipped, "", ""),
		step("N", "tension of the film in the machine", b.joined.Tension[filmLayer], "N/m", ""),
	}}
	for _, i := range []int{mediumLayer, filmLayer} {
		l := c.Layers[i]
		name := [...]string{mediumLayer: "medium", filmLayer: "film"}[i]
		for d, way := range [...]string{"along the feed", "across the feed"} {
			w.Steps = append(w.Steps,
				Step{Symbol: "f", Text: name + ", " + way + ": what it would like to grow, heat, water and tension together", Shown: strain(c.Free[i][d]), SI: c.Free[i][d]})
		}
		w.Steps = append(w.Steps, step("E_1", name+", stiffness along its own machine direction", l.ModulusMD, "Pa", ""), step("E_2", "and across it", l.ModulusCD, "Pa", ""),
			step("ℓ", name+", thickness", l.Thickness, "m", ""))
	}
	radius := Step{Symbol: "R", Text: "radius of the cylinder", Shown: quantity.Both(c.Cylinder.Radius), SI: float64(c.Cylinder.Radius), Unit: "m"}
	w.Steps = append(w.Steps, radius,
		Step{Symbol: "φ", Text: "its axis from the feed", Shown: fmt.Sprintf("%.0f°", float64(c.Cylinder.Axis)), SI: float64(c.Cylinder.Axis), Unit: "°"},
		step("", "edges of an A4 sheet would rise without weight", c.Cylinder.Rise(BendLength), "m", ""),
		step("w", "the laminate weighs", b.weighs(), "kg/m²", ""),
		step("y", "so its edges rise from a table by", b.bend(v.Room, c).Rise, "m", ""))
	now, err := b.in(b.humidity)
	if err != nil {
		return Working{}, err
	}
	tunnels, err := b.joined.Tunnel(mediumLayer, now, looseStrip)
	if err != nil {
		return Working{}, err
	}
	for _, u := range tunnels {
		if u.Width > 0 {
			w.Steps = append(w.Steps, step("", "a loose strip of the print lifts as a tunnel, compressed "+u.Compressed.String()+", if wider than", u.Width, "m", ""))
		}
	}
	w.Notes = []string{"Elastic: nothing has crept away yet. A real sheet bends less, and less with time."}
	if v.Balanced {
		w.Notes = append(w.Notes, "This machine films both sides: the two pull alike and the sheet lies flat. The figures are of one side alone.")
	}
	return w, nil
}

// looseStrip is the width of bad bond that the working asks about.
const looseStrip = 10 * quantity.Millimetre

// strain writes a strain in per cent.
func strain(x float64) string { return fmt.Sprintf("%.3f %%", 100*x) }

// GrainValue says what the grain's direction does to the risk of ridges.
type GrainValue struct {
	LaminateCase
	Across, Along Ridge
	// Advice is NoMatter, AcrossFeed or AlongFeed: what the model finds, whatever the
	// trade's rule says.
	Advice string
}

// What the model advises.
const (
	AcrossFeed = "across the feed"
	AlongFeed  = "along the feed"
)

// Ridge is the greatest risk of ridges on a laminate's way from the nip.
type Ridge struct {
	Risk  float64 // strain over the strain at which it buckles; at 1 a flat sheet ridges
	Stage string
	// Wave is from ridge to ridge.
	Wave quantity.Length
}

// Growth is how much a wave that the sheet brings with it grows: 1/(1 − risk).
func (r Ridge) Growth() float64 {
	if r.Risk >= 1 {
		return math.Inf(1)
	}
	return 1 / (1 - r.Risk)
}

// grainMatters is how far the growth of waves must differ for the direction to matter: a
// twentieth, which no eye would see. An assumption.
const grainMatters = 0.05

// Grains computes what the grain does for every laminate of a medium that has one, in the
// shop's usual room.
func (t *Tables) Grains() ([]GrainValue, error) {
	var all []pairing
	for _, p := range t.laminates() {
		if p.medium.HasGrain {
			all = append(all, p)
		}
	}
	return eachOf(len(all), func(solver *nip.Solver, i int) (GrainValue, error) {
		p := all[i]
		return t.grainOf(solver, LaminateCase{p.film.ID, p.medium.ID, p.machine.ID, t.shop.Front.Room.ID})
	})
}

func (t *Tables) grainOf(solver *nip.Solver, c LaminateCase) (GrainValue, error) {
	v := GrainValue{LaminateCase: c, Advice: NoMatter}
	for _, way := range []struct {
		grain string
		to    *Ridge
	}{{GrainAcross, &v.Across}, {GrainAlong, &v.Along}} {
		b, err := t.joinedIn(solver, c, way.grain)
		if err != nil {
			return v, err
		}
		lines, err := t.lines(b)
		if err != nil {
			return v, err
		}
		most := greatest(lines)
		*way.to = Ridge{float64(most.Risk), most.Stage, most.Wavelength}
	}
	switch across, along := v.Across.Growth(), v.Along.Growth(); {
	case along > across*(1+grainMatters):
		v.Advice = AcrossFeed
	case across > along*(1+grainMatters):
		v.Advice = AlongFeed
	}
	return v, nil
}
