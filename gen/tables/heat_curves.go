package tables

import (
	"laydown/gen/nip"
	"laydown/gen/quantity"
)

// BondCurve is what adhesive and print feel of a pass at a set temperature,
// against the time since they first touch.
type BondCurve struct {
	WindowCase
	Set quantity.Temperature
	// Stretches are the parts of the way, one after another.
	Stretches []Stretch
	Times     []quantity.Time
	// First and Steady are the temperatures at those times, of the first piece
	// and of the steady run.
	First, Steady []BondTemperature
	// Touch and NipEnd are the places of the first touch and of the nip's end
	// among the times.
	Touch, NipEnd int
	// Bounds are the temperatures that the bond line is judged by.
	Bounds []Bound
}

// BondTemperature is both sides of the bond at one time.
type BondTemperature struct {
	Adhesive, Print quantity.Temperature // the adhesive's face, and the print's under it
}

// Stretch is a part of the way through the machine.
type Stretch struct {
	Name     string // wrap, nip, chill roller, free run
	From, To quantity.Time
}

// BondLine follows a case's bond line at a set temperature.
func (t *Tables) BondLine(c WindowCase, set quantity.Temperature) (BondCurve, error) {
	p, err := t.resolveWindow(c)
	if err != nil {
		return BondCurve{}, err
	}
	pass, err := t.pass(p, t.places[p.film.ID])
	if err != nil {
		return BondCurve{}, err
	}
	r := new(nip.Response)
	if err := run(nip.NewDetailedSolver(), p, pass, r); err != nil {
		return BondCurve{}, err
	}
	v, err := t.judge(c, p, r)
	if err != nil {
		return BondCurve{}, err
	}
	temps := temperatures(p.machine, c.Temperature)
	temps.Set = set
	curve := BondCurve{WindowCase: c, Set: set, Touch: r.First.Touch, NipEnd: r.First.NipEnd, Bounds: v.FirstBounds,
		Times: r.First.Times, First: bothSides(&r.First, temps), Steady: bothSides(&r.Steady, temps)}
	at := -pass.WrapTime(&pass.Upper)
	add := func(name string, length quantity.Time) {
		if length > 0 {
			curve.Stretches = append(curve.Stretches, Stretch{name, at, at + length})
			at += length
		}
	}
	add("wrap", pass.WrapTime(&pass.Upper))
	add("nip", pass.NipTime())
	for _, stage := range pass.After {
		name := "free run"
		if stage.Face.To == nip.Chill {
			name = "chill roller"
		}
		add(name, stage.Time)
	}
	return curve, nil
}

func bothSides(c *nip.Case, temps nip.Temps) []BondTemperature {
	list := make([]BondTemperature, len(c.Records))
	for i := range c.Records {
		list[i] = BondTemperature{c.Records[i][nip.AdhesiveFace].At(temps), c.Records[i][nip.BondLine].At(temps)}
	}
	return list
}

// StackProfile is the temperature through everything in the nip, from the hot
// roller's cover down, as it leaves.
type StackProfile struct {
	WindowCase
	Set    quantity.Temperature
	Parts  []ProfilePart
	Bounds []Bound // that the bond line is judged by
}

// ProfilePart is a part of the stack that is whole within itself: between
// parts the temperature leaps, by what their contact takes.
type ProfilePart struct {
	Name   string // upper cover, film, print, lower film, lower cover
	Layers []nip.Layer
	Depth  []quantity.Length // below the part's top
	// First and Steady are the temperatures there.
	First, Steady []quantity.Temperature
}

// partNames are how the parts are called.
var partNames = map[nip.Part]string{
	nip.UpperCover: "upper cover", nip.FilmPart: "film", nip.PrintPart: "print",
	nip.LowerFilmPart: "lower film", nip.LowerCover: "lower cover",
}

// Profile computes the temperature through a case's stack at the nip's end.
func (t *Tables) Profile(c WindowCase, set quantity.Temperature) (StackProfile, error) {
	p, err := t.resolveWindow(c)
	if err != nil {
		return StackProfile{}, err
	}
	pass, err := t.pass(p, t.places[p.film.ID])
	if err != nil {
		return StackProfile{}, err
	}
	r := new(nip.Response)
	if err := run(nip.NewDetailedSolver(), p, pass, r); err != nil {
		return StackProfile{}, err
	}
	v, err := t.judge(c, p, r)
	if err != nil {
		return StackProfile{}, err
	}
	temps := temperatures(p.machine, c.Temperature)
	temps.Set = set
	profile := StackProfile{WindowCase: c, Set: set, Bounds: v.FirstBounds}
	layers := map[nip.Part][]nip.Layer{
		nip.UpperCover: {pass.Upper.Cover}, nip.FilmPart: pass.Film, nip.PrintPart: pass.Print,
		nip.LowerFilmPart: turned(pass.LowerFilm), nip.LowerCover: {pass.Lower.Cover},
	}
	faces := map[nip.Part][2]nip.Place{nip.FilmPart: {nip.FilmFace, nip.AdhesiveFace}, nip.PrintPart: {nip.BondLine, nip.PrintBack}}
	for i := 0; i < len(r.Cells); {
		part := r.Cells[i].Part
		made := ProfilePart{Name: partNames[part], Layers: layers[part]}
		face, known := faces[part]
		if known {
			made.read(0, &r.First.Records[r.First.NipEnd][face[0]], &r.Steady.Records[r.Steady.NipEnd][face[0]], temps)
		}
		for ; i < len(r.Cells) && r.Cells[i].Part == part; i++ {
			made.read(r.Cells[i].At, &r.First.Profile[i], &r.Steady.Profile[i], temps)
		}
		if known {
			made.read(made.Thickness(), &r.First.Records[r.First.NipEnd][face[1]], &r.Steady.Records[r.Steady.NipEnd][face[1]], temps)
		}
		profile.Parts = append(profile.Parts, made)
	}
	return profile, nil
}

// read appends the temperatures at a depth.
func (p *ProfilePart) read(depth quantity.Length, first, steady *nip.Row, temps nip.Temps) {
	p.Depth = append(p.Depth, depth)
	p.First = append(p.First, first.At(temps))
	p.Steady = append(p.Steady, steady.At(temps))
}

// Thickness is that of the part's layers together.
func (p *ProfilePart) Thickness() quantity.Length {
	var sum quantity.Length
	for _, l := range p.Layers {
		sum += l.Thickness
	}
	return sum
}

// turned lists layers from the other side.
func turned(layers []nip.Layer) []nip.Layer {
	list := make([]nip.Layer, len(layers))
	for i, l := range layers {
		list[len(layers)-1-i] = l
	}
	return list
}
