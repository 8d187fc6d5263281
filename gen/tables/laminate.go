package tables

import (
	"fmt"

	"laydown/gen/air"
	"laydown/gen/curl"
	"laydown/gen/nip"
	"laydown/gen/paper"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// The grain of a sheet against the feed.
const (
	GrainAlong  = "along"  // the feed
	GrainAcross = "across" // the feed, parallel to the roller axes
)

// bare is a medium under film on one side: what curl, lines and room changes are asked
// of. From the lowest layer up: medium, adhesive, film.
type bare struct {
	pairing
	grain    string
	room     quantity.Temperature
	humidity quantity.Fraction // of the room that it is laminated in

	sheet  paper.Isotherm // nil where the medium holds no water
	dry    quantity.Grammage
	joined curl.Laminate
	// kept is the medium's moisture in the room, nipped as the adhesive set.
	kept, nipped quantity.Fraction
	sets         quantity.Temperature // at which the layers were joined
	mean         quantity.Temperature // of the print at the end of the nip; the room's where laid cold
	setting      quantity.Temperature // of the roller; 0 where laid cold
	filmWeighs   quantity.Grammage
}

// The layers of a bare laminate.
const (
	mediumLayer = iota
	adhesiveLayer
	filmLayer
)

// Poisson's ratios that records do not state (from memory): the root of the product of
// paper's two, and those of plastics, adhesives and rubber.
const (
	paperPoisson    quantity.Fraction = 0.293
	plasticPoisson  quantity.Fraction = 0.4
	adhesivePoisson quantity.Fraction = 0.48
	rubberPoisson   quantity.Fraction = 0.4999
)

// statedAt is the humidity at which moduli are measured.
const statedAt quantity.Fraction = 0.5

// knowsCurl says that a medium's record holds what curl needs.
func knowsCurl(m *shop.Medium) bool { return m.ModulusMD.Set && m.ModulusCD.Set && m.ExpansionMD.Set }

// knowsStiffness says that the records of a film's base and adhesive hold what curl needs.
func (t *Tables) knowsStiffness(f *shop.Film) bool {
	for _, id := range []string{f.Base.ID, f.Adhesive.ID} {
		if s := t.shop.Substance(id); !s.ModulusMD.Set || !s.ModulusCD.Set || !s.ExpansionMD.Set {
			return false
		}
	}
	return true
}

// laminate joins a film to a medium in a room, in a machine at its usual speed.
func (t *Tables) laminate(solver *nip.Solver, p pairing, grain string, room quantity.Temperature, humidity quantity.Fraction) (*bare, error) {
	if !knowsCurl(p.medium) {
		return nil, fmt.Errorf("%s says nothing of its stiffness or expansion", p.medium.ID)
	}
	b := &bare{pairing: p, grain: grain, room: room, humidity: humidity}
	for _, l := range t.filmLayers(p.film) {
		b.filmWeighs += quantity.Grammage(float64(l.Density) * float64(l.Thickness))
	}
	if err := t.water(b); err != nil {
		return nil, err
	}
	b.nipped, b.sets, b.mean = b.kept, room, room
	if p.film.Class != "cold" {
		if err := t.heated(solver, b); err != nil {
			return nil, err
		}
	}
	b.joined = curl.Laminate{
		Layers:  []curl.Layer{b.mediumLayer(), t.stiff(p.film.Adhesive.ID, p.film.AdhesiveThickness.Best, true), t.stiff(p.film.Base.ID, p.film.BaseThickness.Best, false)},
		Set:     b.states(b.sets, b.nipped, humidity),
		Tension: []quantity.LineLoad{0, 0, pull(t.shop.Substance(p.film.Base.ID), p.film.BaseThickness.Best)},
	}
	return b, nil
}

// pull is the tension that good practice runs a film with.
func pull(base *shop.Substance, thickness quantity.Length) quantity.LineLoad {
	return quantity.LineLoad(float64(base.WebStress.Best) * float64(thickness))
}

// water finds what the medium holds in the room.
func (t *Tables) water(b *bare) error {
	s, _, wet, err := t.sheetOf(b.medium, paper.Pulp)
	if err != nil || !wet && s.FibreShare == 0 {
		return err
	}
	s.Base = max(s.Base, b.medium.Grammage.Best)
	b.sheet, b.dry = s, s.Base
	b.kept, err = s.Moisture(b.humidity, b.room)
	return err
}

// nipState is what the nip leaves of a hot laminate, whichever way its grain lies.
type nipState struct {
	setting, mean, sets quantity.Temperature
	nipped              quantity.Fraction
}

// nipKey names one: film, medium, machine, and the room.
type nipKey struct {
	film, medium, machine string
	room                  quantity.Temperature
	humidity              quantity.Fraction
}

// heated gives a hot laminate what the nip leaves of it.
func (t *Tables) heated(solver *nip.Solver, b *bare) error {
	s, err := t.nips.of(nipKey{b.film.ID, b.medium.ID, b.machine.ID, b.room, b.humidity}, func() (nipState, error) {
		made := *b
		err := t.afterNip(solver, &made)
		return nipState{made.setting, made.mean, made.sets, made.nipped}, err
	})
	b.setting, b.mean, b.sets, b.nipped = s.setting, s.mean, s.sets, s.nipped
	return err
}

// afterNip takes a hot laminate from the nip: the temperature of its setting, and what
// water the medium has lost through its open back by then.
func (t *Tables) afterNip(solver *nip.Solver, b *bare) error {
	l, err := t.leavesNip(solver, b.pairing, b.room, b.humidity)
	if err != nil {
		return err
	}
	b.setting = l.set
	if b.mean, err = l.mean(); err != nil {
		return err
	}
	sets := t.shop.Substance(b.film.Adhesive.ID).Sets
	if !sets.Set {
		return fmt.Errorf("%s does not say where it sets", b.film.Adhesive.ID)
	}
	b.sets = max(sets.Best, b.room)
	if b.sheet == nil || b.medium.Drying != nil && b.medium.Drying.Back == "sealed" {
		return nil
	}
	run, _, err := t.cool(l, OnRack)
	if err != nil {
		return err
	}
	const mediumIn = 3 // of the layers that cooling follows
	until, comes, err := run.Reaches(mediumIn, b.sets)
	if err != nil || !comes {
		return err
	}
	exchange, err := t.openBack(b)
	if err != nil {
		return err
	}
	b.nipped, err = exchange.March(b.kept, until, func(at quantity.Time) quantity.Temperature {
		m, err := run.At(at)
		if err != nil {
			return b.sets
		}
		return m.Layers[mediumIn]
	})
	return err
}

// openBack is the medium as it gives water through its back.
func (t *Tables) openBack(b *bare) (paper.Exchange, error) {
	inAir, err := air.WaterDiffusivity(b.room, t.pressure)
	if err != nil {
		return paper.Exchange{}, err
	}
	room := t.shop.Room(t.shop.Front.Room.ID)
	h, err := air.FaceTransfer(room.AirSpeed.Best, rackLength, inAir, b.room, t.pressure)
	return paper.Exchange{Sheet: b.sheet, Dry: b.dry, Thickness: b.medium.Thickness.Best, Faces: 1, Air: h, Room: b.room, Humidity: b.humidity}, err
}

// mediumLayer is the medium with its grain as it is fed.
func (b *bare) mediumLayer() curl.Layer {
	m := b.medium
	layer := curl.Layer{
		Name: m.Name, Thickness: m.Thickness.Best, ModulusMD: m.ModulusMD.Best, ModulusCD: m.ModulusCD.Best,
		ExpansionMD: m.ExpansionMD.Best, ExpansionCD: m.ExpansionCD.Best, SwellingMD: m.SwellingMD.Best, SwellingCD: m.SwellingCD.Best,
	}
	mean := plasticPoisson
	if m.HasGrain {
		mean = paperPoisson
	}
	layer.Poisson = curl.MajorPoisson(mean, layer.ModulusMD, layer.ModulusCD)
	if b.grain == GrainAcross {
		layer.Machine = curl.Across
	}
	return layer
}

// stiff is a film base or an adhesive. Its moisture is counted as the humidity that it is
// in balance with.
func (t *Tables) stiff(id string, thickness quantity.Length, soft bool) curl.Layer {
	s := t.shop.Substance(id)
	l := curl.Layer{
		Name: s.Name, Thickness: thickness, ModulusMD: s.ModulusMD.Best, ModulusCD: s.ModulusCD.Best, Poisson: poisson(s),
		ExpansionMD: s.ExpansionMD.Best, ExpansionCD: s.ExpansionCD.Best, SwellingMD: s.HumidStrain.Best, SwellingCD: s.HumidStrain.Best, Soft: soft,
	}
	if s.HumidLoss.Set {
		l.Softening, l.MeasuredAt = float64(s.HumidLoss.Best), statedAt
	}
	return l
}

func poisson(s *shop.Substance) quantity.Fraction {
	switch {
	case s.Poisson.Set:
		return s.Poisson.Best
	case s.Class == "adhesive":
		return adhesivePoisson
	case s.Class == "rubber":
		return rubberPoisson
	}
	return plasticPoisson
}

// states are those of the layers at one temperature: the medium with its moisture, the
// film in balance with a humidity.
func (b *bare) states(t quantity.Temperature, moisture, film quantity.Fraction) []curl.State {
	return []curl.State{{Temperature: t, Moisture: moisture}, {Temperature: t, Moisture: film}, {Temperature: t, Moisture: film}}
}

// in is the laminate once it has come to balance with a room of the same temperature.
func (b *bare) in(humidity quantity.Fraction) ([]curl.State, error) {
	if b.sheet == nil {
		return b.states(b.room, 0, humidity), nil
	}
	m, err := b.sheet.Moisture(humidity, b.room)
	return b.states(b.room, m, humidity), err
}

// curlIn is how it bends there.
func (b *bare) curlIn(humidity quantity.Fraction) (*curl.Curl, error) {
	now, err := b.in(humidity)
	if err != nil {
		return nil, err
	}
	c, err := b.joined.Curl(now)
	if err != nil {
		return nil, fmt.Errorf("curl of %s on %s: %w", b.film.ID, b.medium.ID, err)
	}
	return c, nil
}

// towardsFilm is a curvature, 1/m, above 0 where the edges lift on the film's side.
func towardsFilm(c *curl.Curl) float64 { return -c.Cylinder.Curvature }

// molten is the modulus of an adhesive in the nip: hardly any. A melt of 1000 Pa·s in a
// hundredth of a second resists as 0.1 MPa would.
const molten = 0.1 * quantity.Megapascal

// lines follows the ridge risk through the nip, the cold laminate, and the laminate that
// has taken its water back.
func (t *Tables) lines(b *bare) ([]curl.Line, error) {
	back, err := b.in(b.humidity)
	if err != nil {
		return nil, err
	}
	entry := b.states(b.room, b.kept, b.humidity)
	stages := []curl.Stage{
		{Name: "in the nip", Held: true, From: entry, Now: b.states(b.mean, b.kept, b.humidity), Upper: t.cover(b.machine, true), Lower: t.cover(b.machine, false)},
		{Name: "cold", Now: b.states(b.room, b.nipped, b.humidity)},
		{Name: "with its water back", Now: back},
	}
	if b.film.Class != "cold" {
		stages[0].Adhesive = molten
	}
	lines, err := b.joined.Lines(mediumLayer, stages)
	if err != nil {
		return nil, fmt.Errorf("lines of %s on %s: %w", b.film.ID, b.medium.ID, err)
	}
	return lines, nil
}

// cover is the rubber of a roller; a metal wall is none.
func (t *Tables) cover(m *shop.Laminator, upper bool) curl.Cover {
	id, thickness := m.Cover.ID, m.CoverThickness.Best
	if !upper && m.Heated != "both" && m.LowerCover.ID != "" {
		id, thickness = m.LowerCover.ID, m.LowerCoverThickness.Best
	}
	s := t.shop.Substance(id)
	if s == nil || s.Class != "rubber" {
		return curl.Cover{}
	}
	return curl.Cover{Modulus: s.ModulusMD.Best, Poisson: poisson(s), Thickness: thickness}
}
