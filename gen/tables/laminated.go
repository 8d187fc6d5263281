package tables

import (
	"fmt"
	"slices"

	"laydown/gen/cooling"
	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// LaminateCase is a film on a medium, run in a machine at its usual speed in a room.
type LaminateCase struct {
	Film, Medium, Laminator, Room string // ids
}

// resolveLaminate finds a case's records.
func (t *Tables) resolveLaminate(c LaminateCase) (pairing, *shop.Room, error) {
	p := pairing{film: t.shop.Film(c.Film), medium: t.shop.Medium(c.Medium), machine: t.shop.Laminator(c.Laminator)}
	room := t.shop.Room(c.Room)
	switch {
	case p.film == nil:
		return p, nil, t.unknown("films", c.Film)
	case p.medium == nil:
		return p, nil, t.unknown("media", c.Medium)
	case p.machine == nil:
		return p, nil, t.unknown("laminators", c.Laminator)
	case room == nil:
		return p, nil, t.unknown("rooms", c.Room)
	}
	p.speed = p.machine.Usual.Best
	return p, room, nil
}

// laminated is a laminate of hot film as it leaves the nip in the steady run, at the
// lowest set temperature that will do, in whole degrees.
type laminated struct {
	pairing
	room quantity.Temperature
	set  quantity.Temperature
	// open says that the setting lies in a window.
	open  bool
	cells []nip.Cell
	at    []quantity.Temperature // of each cell
}

// leavesNip finds a pairing's state at the end of the nip.
func (t *Tables) leavesNip(solver *nip.Solver, p pairing, temperature quantity.Temperature, humidity quantity.Fraction) (laminated, error) {
	l := laminated{pairing: p, room: temperature}
	r := new(nip.Response)
	if err := t.solve(solver, p, r); err != nil {
		return l, err
	}
	v, err := t.judge(WindowCase{p.film.ID, p.medium.ID, p.machine.ID, p.speed, temperature, humidity}, p, r)
	if err != nil {
		return l, err
	}
	l.set, l.open = up(v.Steady.Low), v.Open()
	temps := temperatures(p.machine, temperature)
	temps.Set = l.set
	l.cells = slices.Clone(r.Cells)
	for i := range r.Steady.Profile {
		l.at = append(l.at, r.Steady.Profile[i].At(temps))
	}
	return l, nil
}

// coat is the upper part of a print that is followed on its own in cooling: its ink and
// coating, and what lies close under them.
const coat = 10 * quantity.Micrometre

// layers are the laminate from the film's outer face down, as the nip leaves them, and
// the numbers of its adhesives.
func (t *Tables) layers(l laminated) (layers []cooling.Layer, adhesives []int) {
	bond := t.contact("melt-on-print", t.places[l.film.ID])
	film := t.filmLayers(l.film)
	base := coolingLayer(film[0], l.known(nip.FilmPart, 0, 0))
	glue := coolingLayer(film[1], l.known(nip.FilmPart, 1, film[0].Thickness))
	glue.Below = bond
	layers = []cooling.Layer{base, glue}

	m := l.medium
	whole := nip.Layer{Name: m.Name, Thickness: m.Thickness.Best, Conductivity: m.Conductivity.Best,
		Density: quantity.Density(float64(m.Grammage.Best) / float64(m.Thickness.Best)), SpecificHeat: m.SpecificHeat.Best}
	known := l.known(nip.PrintPart, 0, 0)
	upper, rest := whole, whole
	upper.Name, upper.Thickness = "the print's face", coat
	rest.Thickness -= upper.Thickness
	above, below := parted(known, upper.Thickness)
	layers = append(layers, coolingLayer(upper, above), coolingLayer(rest, below))
	adhesives = []int{1}
	if l.machine.TwoSided {
		layers[3].Below = bond
		under := l.known(nip.LowerFilmPart, 1, 0)
		layers = append(layers, coolingLayer(film[1], under), coolingLayer(film[0], l.known(nip.LowerFilmPart, 0, film[1].Thickness)))
		adhesives = append(adhesives, 4)
	}
	return layers, adhesives
}

func coolingLayer(l nip.Layer, start []cooling.Known) cooling.Layer {
	return cooling.Layer{Name: l.Name, Thickness: l.Thickness, Conductivity: l.Conductivity, Density: l.Density, SpecificHeat: l.SpecificHeat, Start: start}
}

// known are the temperatures of a layer's cells, from its upper face down; above is the
// depth of that face below the top of its part.
func (l laminated) known(part nip.Part, layer int, above quantity.Length) []cooling.Known {
	var list []cooling.Known
	for i, c := range l.cells {
		if c.Part == part && c.Layer == layer {
			list = append(list, cooling.Known{Depth: c.At, Temperature: l.at[i]})
		}
	}
	return shifted(list, above)
}

// shifted counts depths from further down.
func shifted(list []cooling.Known, by quantity.Length) []cooling.Known {
	out := slices.Clone(list)
	for i := range out {
		out[i].Depth = max(0, out[i].Depth-by)
	}
	return out
}

// parted cuts a profile at a depth; each part ends with the temperature there.
func parted(known []cooling.Known, at quantity.Length) (above, below []cooling.Known) {
	n := 0
	for n < len(known) && known[n].Depth < at {
		n++
	}
	cut := cooling.Known{Depth: at, Temperature: known[max(n-1, 0)].Temperature}
	if n > 0 && n < len(known) {
		a, b := known[n-1], known[n]
		share := float64((at - a.Depth) / (b.Depth - a.Depth))
		cut.Temperature = a.Temperature + quantity.Temperature(share)*(b.Temperature-a.Temperature)
	}
	rest := slices.DeleteFunc(slices.Clone(known[n:]), func(k cooling.Known) bool { return k.Depth == at })
	return append(slices.Clone(known[:n]), cut), shifted(append([]cooling.Known{cut}, rest...), at)
}

// mean is the mean temperature of the print at the end of the nip.
func (l laminated) mean() (quantity.Temperature, error) {
	sum, width := 0.0, 0.0
	for i, c := range l.cells {
		if c.Part == nip.PrintPart {
			sum += float64(l.at[i]) * float64(c.Width)
			width += float64(c.Width)
		}
	}
	if width == 0 {
		return 0, fmt.Errorf("%s has no cells in the nip", l.medium.ID)
	}
	return quantity.Temperature(sum / width), nil
}
