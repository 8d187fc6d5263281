package curl

import (
	"errors"
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Stage is a moment at which ridges could rise.
type Stage struct {
	Name string
	// Held: in the nip, not yet joined. Rollers and film hold the sheet's width as it
	// was when it went in (From); along the feed it is free to follow. Otherwise the
	// laminate is joined and lies flat.
	Held      bool
	From, Now []State
	// Adhesive is the modulus of the soft layers in this stage. 0 leaves them theirs.
	Adhesive quantity.Pressure
	// Upper and Lower are what the rollers over and under a Held sheet are covered
	// with. A modulus of 0 is bare metal: no ridge rises against it.
	Upper, Lower Cover
}

// Cover is the rubber of a roller.
type Cover struct {
	Modulus   quantity.Pressure
	Poisson   quantity.Fraction
	Thickness quantity.Length
}

func (c Cover) check() error {
	if c.Modulus != 0 && (!positive(float64(c.Modulus)) || !positive(float64(c.Thickness)) || !(c.Poisson >= 0 && c.Poisson < 0.5)) {
		return fmt.Errorf("a roller's cover of %g Pa, %g m, Poisson's ratio %g: must be above 0, and the ratio below 0.5",
			float64(c.Modulus), float64(c.Thickness), float64(c.Poisson))
	}
	return nil
}

// bed is the cover as the sheet feels it.
func (c Cover) bed() *bed { return &bed{float64(c.Modulus), float64(c.Poisson), float64(c.Thickness)} }

// Line is the tendency to ridges under compression in one direction. Ridges run
// across the compression.
type Line struct {
	Stage string
	// Compressed is Along when the compression is along the feed, and ridges run
	// across it; or AcrossFeed, and they run along it.
	Compressed Direction
	// Force is in the medium, N/m, above 0 when it is compressed; Strain is the same
	// over its stiffness against a long ridge, E/(1 − ν₁₂ν₂₁)·t.
	Force  quantity.LineLoad
	Strain quantity.Fraction
	// Critical is the strain at which it would buckle, 0 if it cannot. Paper crushes at about 0.5 to 1 %
	// (from memory): above that, it does not buckle at all. Wavelength is from ridge
	// to ridge; 0: it has none of its own, the longest waves go first. Short: the
	// wave is under five thicknesses long, where a plate's theory makes it too stiff,
	// and Critical is a bound from above.
	Critical   quantity.Fraction
	Wavelength quantity.Length
	Short      bool
	// Risk is Strain/Critical, 0 in tension, or where it cannot buckle. At 1 a perfect sheet buckles; below,
	// waves that it came with grow by 1/(1 − Risk).
	Risk quantity.Fraction
}

// Direction is that of a compression.
type Direction int

// The two directions that a laminator knows.
const (
	AlongFeed Direction = iota
	AcrossFeed
)

func (d Direction) String() string { return [...]string{"along the feed", "across the feed"}[d] }

// Bounds of the waves that are looked for: from two thicknesses of the medium up to
// a sheet.
const (
	shortestWave = 2.0
	longestWave  = 0.3 // m
	thinPlate    = 5.0
)

// Lines follows the medium, a layer's number, through the stages: two lines for
// each stage, along the feed and across it.
func (l *Laminate) Lines(medium int, stages []Stage) ([]Line, error) {
	if medium < 0 || medium >= len(l.Layers) {
		return nil, fmt.Errorf("layer %d of %d is not there", medium, len(l.Layers))
	}
	if l.Layers[medium].Soft {
		return nil, errors.New("the medium is a stiff layer")
	}
	var lines []Line
	for i := range stages {
		s := &stages[i]
		force, layers, err := l.pressed(medium, s)
		if err != nil {
			return nil, fmt.Errorf("stage %q: %w", s.Name, err)
		}
		for d := AlongFeed; d <= AcrossFeed; d++ {
			line, err := s.line(layers, medium, d, force[d])
			if err != nil {
				return nil, fmt.Errorf("stage %q: %w", s.Name, err)
			}
			lines = append(lines, line)
		}
	}
	return lines, nil
}

// pressed is the force in the medium, compression above 0, and the layers as they
// are in the stage.
func (l *Laminate) pressed(medium int, s *Stage) (Vector, []Layer, error) {
	if !(s.Adhesive >= 0) || math.IsInf(float64(s.Adhesive), 1) {
		return Vector{}, nil, fmt.Errorf("adhesive of %g Pa: must be 0 (its own) or above", float64(s.Adhesive))
	}
	in := *l
	in.Layers = make([]Layer, len(l.Layers))
	for i, layer := range l.Layers {
		if layer.Soft && s.Adhesive > 0 {
			layer.Shear *= s.Adhesive / layer.ModulusMD
			layer.ModulusMD, layer.ModulusCD = s.Adhesive, s.Adhesive
		}
		in.Layers[i] = layer
	}
	if !s.Held {
		c, err := in.Curl(s.Now)
		if err != nil {
			return Vector{}, nil, err
		}
		return c.Plate.FlatForce(medium).times(-1), c.Layers, nil
	}
	if err := in.check(s.Now); err != nil {
		return Vector{}, nil, err
	}
	for _, c := range []Cover{s.Upper, s.Lower} {
		if err := c.check(); err != nil {
			return Vector{}, nil, err
		}
	}
	if len(s.From) != len(l.Layers) {
		return Vector{}, nil, fmt.Errorf("%d states on entry for %d layers", len(s.From), len(l.Layers))
	}
	for i := range s.From {
		if err := s.From[i].check(l.Layers[i].Name); err != nil {
			return Vector{}, nil, err
		}
		in.Layers[i] = in.Layers[i].softened(s.Now[i].Moisture)
	}
	m := &in.Layers[medium]
	thermal, hygro := m.growth(s.From[medium], s.Now[medium])
	compliance, ok := m.turned().inverse()
	if !ok {
		return Vector{}, nil, errors.New("the medium's stiffness has no inverse")
	}
	// Width held, nothing pulls along the feed: the compression is one-sided.
	width := thermal.plus(hygro)[AcrossFeed]
	return Vector{0, width * float64(m.Thickness) / compliance[1][1]}, in.Layers, nil
}

// line judges one direction.
func (s *Stage) line(layers []Layer, medium int, d Direction, force float64) (Line, error) {
	m := &layers[medium]
	t := float64(m.Thickness)
	stiff := m.turned()[d][d] * t
	line := Line{Stage: s.Name, Compressed: d, Force: quantity.LineLoad(force), Strain: quantity.Fraction(force / stiff)}
	c := s.chain(layers, medium, d)
	// Bare metal holds it down; and where nothing but glue holds against it, nothing
	// compresses it.
	if s.Held && (s.Upper.Modulus == 0 || s.Lower.Modulus == 0) || !s.Held && len(c.beams) < 2 {
		return line, nil
	}
	load, wave, err := c.buckles(shortestWave*t, longestWave)
	if err != nil || math.IsInf(load, 1) {
		return line, err
	}
	line.Critical, line.Wavelength = quantity.Fraction(load/stiff), quantity.Length(wave)
	line.Short = wave > 0 && wave < thinPlate*t
	line.Risk = max(0, line.Strain/line.Critical)
	return line, nil
}

// chain is the laminate as plates with beds between, with a unit force in the medium.
// In a joined sheet the other plates hold against it, each by its stiffness; in the nip
// the rollers do.
func (s *Stage) chain(layers []Layer, medium int, d Direction) *chain {
	c := &chain{}
	others := 0.0
	for i := range layers {
		if i != medium && !layers[i].Soft {
			others += layers[i].turned()[d][d] * float64(layers[i].Thickness)
		}
	}
	for i := range layers {
		l := &layers[i]
		t := float64(l.Thickness)
		if l.Soft {
			if n := len(c.beams); n > 0 {
				c.beams[n-1].above = append(c.beams[n-1].above, bed{float64(l.ModulusMD), min(float64(l.Poisson), mostPoisson), t})
			}
			continue
		}
		q := l.turned()[d][d]
		b := beam{bending: q * t * t * t / 12, stretch: q * t, axis: t / 2}
		switch {
		case i == medium:
			b.force = 1
		case !s.Held:
			b.force = -q * t / others
		}
		// Stiff on stiff with nothing soft between: one plate.
		if n := len(c.beams); n > 0 && len(c.beams[n-1].above) == 0 {
			c.beams[n-1] = c.beams[n-1].under(b, t)
			continue
		}
		c.beams = append(c.beams, b)
	}
	if s.Held {
		c.below, c.over = s.Lower.bed(), s.Upper.bed()
	}
	return c
}

// mostPoisson keeps a soft layer from being infinitely stiff against a change of
// volume; rubber's own is about 0.4999.
const mostPoisson = 0.4999
