package book

import (
	"fmt"
	"html/template"
	"math"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// coverShown is how much of a roller's cover the drawing shows: heat goes
// hardly deeper while a cover turns past the nip.
const coverShown = 1 * quantity.Millimetre

// drawProfile draws the temperature through everything in the nip at its end.
func (b *builder) drawProfile(id, title string, c tables.WindowCase, set quantity.Temperature) (template.HTML, error) {
	profile, err := b.answers.Profile(c, set)
	if err != nil {
		return "", err
	}
	d := draw.Through{ID: id, Title: title, Curves: []draw.ThroughCurve{{Name: "first piece"}, {Name: "steady run"}}}
	n := numbers{ID: id + "-n", Title: title + ", in numbers", Heads: []string{"face", "first piece", "steady run"}}
	apart := 0.0
	var all []float64
	for _, part := range profile.Parts {
		part = clipped(part)
		base := len(d.Layers)
		if part.Name == "print" {
			d.Face = base
		}
		d.Layers = append(d.Layers, b.profileLayers(c, part)...)
		for i := range part.Depth {
			layer, at := inLayer(part, part.Depth[i])
			for k, t := range []quantity.Temperature{part.First[i], part.Steady[i]} {
				d.Curves[k].Points = append(d.Curves[k].Points, draw.Inside{Layer: base + layer, At: at, Value: t.Celsius(), Leap: i == 0 && base > 0})
				all = append(all, t.Celsius())
			}
			apart = math.Max(apart, math.Abs(float64(part.First[i]-part.Steady[i])))
		}
		last := len(part.Depth) - 1
		for _, row := range []struct {
			name string
			i    int
		}{{"top of the " + part.Name, 0}, {"bottom of the " + part.Name, last}} {
			n.Rows = append(n.Rows, []string{row.name, quantity.Both(part.First[row.i]), quantity.Both(part.Steady[row.i])})
		}
		if part.Name == "print" {
			d.Desc = fmt.Sprintf("Set to %s. Under the film the print’s face is at %s in the first piece and at %s in the steady run, its back at %s and %s. ",
				quantity.Both(set), quantity.Both(part.First[0]), quantity.Both(part.Steady[0]), quantity.Both(part.First[last]), quantity.Both(part.Steady[last]))
		}
	}
	if apart < sameCurve {
		d.Curves = d.Curves[:1]
		d.Curves[0].Name = "temperature"
	}
	for _, bound := range profile.Bounds {
		if bound.Limit == "activation" {
			d.Level = draw.Level{Name: boundNames[bound.Limit] + " " + quantity.Both(bound.At), At: bound.At.Celsius()}
			all = append(all, d.Level.At)
			d.Desc += "The adhesive works from " + quantity.Both(bound.At) + "."
		}
	}
	d.X = celsiusAxis("temperature, °C with °F under it", all...)
	caption := fmt.Sprintf("%s, set to %s, %s. Thin leaps are contacts that heat has to cross; of a thick cover the nearest millimetre is drawn. Thickness not to scale.", title, quantity.Both(set), pace(c.Speed))
	return figure(d.SVG(), caption, b.part("numbers", n)), nil
}

// clipped leaves of a cover what lies near the film or the print.
func clipped(part tables.ProfilePart) tables.ProfilePart {
	whole := part.Thickness()
	if part.Name != "upper cover" && part.Name != "lower cover" || whole <= coverShown {
		return part
	}
	layers := append(part.Layers[:0:0], part.Layers...)
	layers[0].Thickness = coverShown
	out := tables.ProfilePart{Name: part.Name, Layers: layers}
	from := quantity.Length(0)
	if part.Name == "upper cover" {
		from = whole - coverShown
	}
	for i, depth := range part.Depth {
		if at := depth - from; at >= 0 && at <= coverShown {
			out.Depth = append(out.Depth, at)
			out.First, out.Steady = append(out.First, part.First[i]), append(out.Steady, part.Steady[i])
		}
	}
	return out
}

// inLayer is the layer of a part that a depth lies in, and where in it.
func inLayer(part tables.ProfilePart, depth quantity.Length) (layer int, at float64) {
	top := quantity.Length(0)
	for i, l := range part.Layers {
		if depth <= top+l.Thickness || i == len(part.Layers)-1 {
			return i, math.Min(1, float64((depth-top)/l.Thickness))
		}
		top += l.Thickness
	}
	return 0, 0
}

// profileLayers are a part's layers with their hatch and their names.
func (b *builder) profileLayers(c tables.WindowCase, part tables.ProfilePart) []draw.Layer {
	film, machine := b.shop.Film(c.Film), b.shop.Laminator(c.Laminator)
	var list []draw.Layer
	for i, l := range part.Layers {
		d := draw.Layer{Name: lowerFirst(short(l.Name)), Size: quantity.Metric(l.Thickness), Thickness: float64(l.Thickness)}
		switch part.Name {
		case "upper cover":
			d.Matter = coverMatter(machine.Cover.ID)
		case "lower cover":
			cover := machine.LowerCover.ID
			if machine.Heated == "both" {
				cover = machine.Cover.ID
			}
			d.Matter = coverMatter(cover)
		case "print":
			d.Matter = bodyOf(b.shop.Medium(c.Medium))
		default:
			d.Matter = draw.FilmMatter
			adhesive := len(part.Layers) - 1
			if part.Name == "lower film" {
				adhesive = 0
			}
			if i == adhesive && film.AdhesiveThickness.Best > 0 {
				d.Matter = draw.AdhesiveMatter
			}
		}
		if part.Name == "upper cover" || part.Name == "lower cover" {
			if l.Thickness == coverShown {
				d.Size = "cover"
			}
		}
		list = append(list, d)
	}
	return list
}

// coverMatter is what a roller's cover is drawn as.
func coverMatter(substance string) draw.Matter {
	if substance == "steel" {
		return draw.SteelMatter
	}
	return draw.RubberMatter
}

// bodyOf is what a medium's body is drawn as.
func bodyOf(m *shop.Medium) draw.Matter {
	if m.Class == "paper" || m.Class == "board" || m.Class == "canvas" || m.FibreShare.Best > 0.4 {
		return draw.FibreMatter
	}
	return draw.PlasticMatter
}
