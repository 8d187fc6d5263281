package nip

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Pass is what goes through the laminator, and the laminator.
type Pass struct {
	// Film is the film from its outer face to its adhesive. It may be empty.
	Film []Layer
	// Print is the print from its printed face to its back: ink or coating,
	// then the medium. It may be empty.
	Print []Layer
	// LowerFilm is the film under the print, of a two-sided run, listed as
	// Film is: from its outer face to its adhesive.
	LowerFilm []Layer

	// Upper is the roller on the film, Lower the one below the stack.
	Upper, Lower Roller
	// Speed of the web.
	Speed quantity.Speed
	// Nip is the length over which the rollers press the stack.
	Nip quantity.Length
	// Bond is the contact conductance between the adhesive and the print, from
	// the nip on; LowerBond that of the film below.
	Bond, LowerBond quantity.Conductance
	// OpenFace is what the adhesive's open face gives to the room while the film
	// lies on its roller ahead of the nip.
	OpenFace quantity.Conductance

	// FilmBefore are stages of the film (and of the lower film) ahead of its
	// roller: a heat shoe, a pre-heat roller, a free stretch. Face is the
	// outer face, Back the adhesive.
	FilmBefore []Stage
	// PrintBefore are stages of the print ahead of the nip.
	PrintBefore []Stage
	// After are the stages after the nip: free run, fans, chill roller. Face is
	// the upper face of the stack, Back its lower.
	After []Stage
}

// Exposure is what a face exchanges heat with: Conductance is a contact
// conductance with a body, or convection and radiation with the room.
type Exposure struct {
	Conductance quantity.Conductance
	To          Boundary
}

// Stage is a stretch of the way, Time long, with both faces exposed.
type Stage struct {
	Time       quantity.Time
	Face, Back Exposure
}

// Sensing says where a set temperature is sensed.
type Sensing int

// The places of a sensor.
const (
	// AtCore: the inner side of the cover is held at the roller's temperature.
	AtCore Sensing = iota
	// AtSurface: the cover's surface, just before it meets the film, is. The
	// core is then hotter in the steady run by what the cover's flow needs.
	AtSurface
)

// Roller is a roller of the nip.
type Roller struct {
	// Cover is the rubber on its core, or the wall of a drum. With no thickness
	// the roller is a face held at its temperature.
	Cover Layer
	// Diameter gives the time of a revolution. It may be 0 for a roller with
	// no cover.
	Diameter quantity.Length
	// Core is the temperature that the roller has: that of the cover's inner
	// side, and of the whole cover for the first piece.
	Core Boundary
	// Insulated is a roller without a heater: its cover starts at its
	// temperature and then has only what the stack and the room give it.
	Insulated bool
	// Sensed says where the temperature is sensed.
	Sensed Sensing
	// Wrap is the length of film that lies on the roller before the nip.
	Wrap quantity.Length
	// WrapContact and NipContact are the contact conductances of the roller
	// with what touches it, under tension only and pressed.
	WrapContact, NipContact quantity.Conductance
	// Idle is what the cover gives to the room where nothing touches it.
	Idle quantity.Conductance
}

// bare says that the roller has no cover.
func (r *Roller) bare() bool { return r.Cover.Thickness == 0 }

// NipTime is how long the rollers press a place of the web.
func (p *Pass) NipTime() quantity.Time { return p.over(p.Nip) }

// WrapTime is how long a place of the film lies on the roller before the nip.
func (p *Pass) WrapTime(r *Roller) quantity.Time { return p.over(r.Wrap) }

// Revolution is how long the roller takes to turn once.
func (p *Pass) Revolution(r *Roller) quantity.Time {
	return p.over(r.Diameter * math.Pi)
}

func (p *Pass) over(l quantity.Length) quantity.Time {
	if l == 0 {
		return 0
	}
	return quantity.Time(float64(l) / float64(p.Speed))
}

// idle is how long a place of the cover touches nothing in a revolution.
func (p *Pass) idle(r *Roller) float64 {
	return float64(p.Revolution(r) - p.WrapTime(r) - p.NipTime())
}

// check refuses what no pass can be.
func (p *Pass) check() error {
	if len(p.Film)+len(p.Print)+len(p.LowerFilm) == 0 {
		return fmt.Errorf("a pass of nothing: give a film or a print")
	}
	for _, layers := range [...][]Layer{p.Film, p.Print, p.LowerFilm} {
		for i := range layers {
			if err := layers[i].check(); err != nil {
				return err
			}
		}
	}
	if !notNegative(float64(p.Nip)) {
		return fmt.Errorf("nip of %g m: it must be 0 or more", float64(p.Nip))
	}
	if p.Nip+p.Upper.Wrap+p.Lower.Wrap > 0 && !positive(float64(p.Speed)) {
		return fmt.Errorf("speed %g m/s: it must be above 0", float64(p.Speed))
	}
	if len(p.Film) > 0 && len(p.Print) > 0 && !positive(float64(p.Bond)) {
		return fmt.Errorf("conductance of the bond %g W/(m² K): it must be above 0", float64(p.Bond))
	}
	if len(p.LowerFilm) > 0 && (len(p.Print) == 0 || !positive(float64(p.LowerBond))) {
		return fmt.Errorf("a lower film needs a print above it and a conductance of its bond above 0, not %g W/(m² K)", float64(p.LowerBond))
	}
	if !notNegative(float64(p.OpenFace)) {
		return fmt.Errorf("conductance of the open adhesive %g W/(m² K): it must be 0 or more", float64(p.OpenFace))
	}
	for _, stages := range [...][]Stage{p.FilmBefore, p.PrintBefore, p.After} {
		for i := range stages {
			if err := stages[i].check(); err != nil {
				return err
			}
		}
	}
	if err := p.checkRoller(&p.Upper, "upper roller", len(p.Film) > 0); err != nil {
		return err
	}
	for _, r := range [...]*Roller{&p.Upper, &p.Lower} {
		if r.Sensed == AtSurface && p.stageMeets(r.Core) {
			return fmt.Errorf("a roller sensed at its surface and a stage exposed to the same temperature: the roller's core has another one")
		}
	}
	return p.checkRoller(&p.Lower, "lower roller", len(p.LowerFilm) > 0)
}

func (s *Stage) check() error {
	if !notNegative(float64(s.Time)) {
		return fmt.Errorf("a stage of %g s: it must be 0 or more", float64(s.Time))
	}
	for _, e := range [...]Exposure{s.Face, s.Back} {
		if !notNegative(float64(e.Conductance)) || !e.To.known() {
			return fmt.Errorf("a face exposed with %g W/(m² K) to boundary %d: there is no such exposure", float64(e.Conductance), int(e.To))
		}
	}
	return nil
}

// stageMeets says that some stage is exposed to b.
func (p *Pass) stageMeets(b Boundary) bool {
	for _, stages := range [...][]Stage{p.FilmBefore, p.PrintBefore, p.After} {
		for i := range stages {
			for _, e := range [...]Exposure{stages[i].Face, stages[i].Back} {
				if e.To == b && e.Conductance > 0 && b != Room {
					return true
				}
			}
		}
	}
	return false
}

func (b Boundary) known() bool { return b >= 0 && b < Boundaries }

func (p *Pass) checkRoller(r *Roller, name string, film bool) error {
	if !r.bare() {
		if err := r.Cover.check(); err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
	}
	if !r.Core.known() {
		return fmt.Errorf("%s: there is no boundary %d", name, int(r.Core))
	}
	for _, g := range [...]quantity.Conductance{r.WrapContact, r.NipContact, r.Idle} {
		if !notNegative(float64(g)) {
			return fmt.Errorf("%s: conductance %g W/(m² K): it must be 0 or more", name, float64(g))
		}
	}
	if !notNegative(float64(r.Wrap)) || r.Wrap > 0 && !film {
		return fmt.Errorf("%s: a wrap of %g m needs a film on it and must not be below 0", name, float64(r.Wrap))
	}
	if r.bare() && r.Insulated {
		return fmt.Errorf("%s: insulated, with no cover that could store heat", name)
	}
	if !r.bare() && p.pressed() && !(p.idle(r) > 0) {
		return fmt.Errorf("%s: wrap and nip are longer than its girth of %.4g m", name, math.Pi*float64(r.Diameter))
	}
	return nil
}
