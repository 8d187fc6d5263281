package curl

import (
	"fmt"
	"math"
	"strings"

	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about, in the units of
// the source or in SI: what names it, given holds its inputs. Tests and the
// verification page ask it.
//
// Layers are counted from the lowest, 1; a property without a number ("e1") belongs
// to all of them, one with a number ("e1.2") to that layer only. "unit" is what the
// source's moduli are in (Pa), and what it prints is divided by "per".
func Verify(what string, given map[string]float64) (float64, error) {
	g := givens(given)
	switch what {
	case "critical strain of wrinkling", "wavelength of wrinkling":
		return g.wrinkling(what)
	}
	layers, free := g.layers()
	p, err := NewPlate(layers, free)
	if err != nil {
		return 0, err
	}
	v, err := g.laminate(what, layers, p)
	return v / g.or("per", 1), err
}

// givens are a source's inputs.
type givens map[string]float64

func (g givens) or(key string, otherwise float64) float64 {
	if v, ok := g[key]; ok {
		return v
	}
	return otherwise
}

// of looks for a layer's own value first.
func (g givens) of(key string, layer int) float64 {
	return g.or(fmt.Sprintf("%s.%d", key, layer), g[key])
}

// layers builds the source's laminate. "times" repeats a layer.
func (g givens) layers() ([]Layer, []Vector) {
	var layers []Layer
	var free []Vector
	for n := 1; n <= int(g.or("layers", 1)); n++ {
		unit := g.or("unit", 1)
		l := Layer{
			Name:      fmt.Sprintf("layer %d", n),
			Thickness: quantity.Length(g.of("thick", n)),
			ModulusMD: quantity.Pressure(g.of("e1", n) * unit),
			ModulusCD: quantity.Pressure(g.of("e2", n) * unit),
			Shear:     quantity.Pressure(g.of("g", n) * unit),
			Poisson:   quantity.Fraction(g.of("nu", n)),
			Machine:   Degrees(g.of("angle", n)),
		}
		if e := g.of("e", n); e > 0 { // alike in all directions
			l.ModulusMD, l.ModulusCD = quantity.Pressure(e*unit), quantity.Pressure(e*unit)
		}
		a1, a2 := g.of("a1", n), g.of("a2", n)
		if a := g.of("a", n); a != 0 {
			a1, a2 = a, a
		}
		for range int(math.Max(1, g.of("times", n))) {
			layers = append(layers, l)
			free = append(free, l.strain(a1*g["dt"], a2*g["dt"]))
		}
	}
	return layers, free
}

// component reads what is behind a name: "x", "y", "xy", or two digits of a matrix.
func component(name string) (i, j int, ok bool) {
	switch name {
	case "x", "y", "xy":
		return map[string]int{"x": 0, "y": 1, "xy": 2}[name], 0, true
	case "11", "12", "16", "22", "26", "66":
		at := map[byte]int{'1': 0, '2': 1, '6': 2}
		return at[name[0]], at[name[1]], true
	}
	return 0, 0, false
}

// laminate answers what is asked of a plate.
func (g givens) laminate(what string, layers []Layer, p *Plate) (float64, error) {
	if what == "deflection of a bimetal beam" {
		// A beam is as long as it is; its lift is the parabola's.
		return math.Abs(p.Curvature[0]) * g["length"] * g["length"] / 2, nil
	}
	space := strings.LastIndexByte(what, ' ')
	i, j, ok := component(what[space+1:])
	if space < 0 || !ok {
		return 0, fmt.Errorf("nothing here computes %q", what)
	}
	load := Vector{g["nx"], g["ny"], g["nxy"]}
	strain, curvature := p.Load(load, Vector{g["mx"], g["my"], g["mxy"]})
	loaded := *p
	loaded.Strain, loaded.Curvature = strain, curvature
	ply := int(g.or("ply", 1)) - 1
	if ply < 0 || ply >= len(layers) {
		return 0, fmt.Errorf("%d layers have no layer %d", len(layers), ply+1)
	}
	switch what[:space] {
	case "stiffness Q":
		return layers[ply].own()[i][j], nil
	case "turned stiffness Q":
		return layers[ply].turned()[i][j], nil
	case "laminate A":
		return p.A[i][j], nil
	case "laminate B":
		return p.B[i][j], nil
	case "laminate D":
		return p.D[i][j], nil
	case "thermal force":
		return p.Force[i], nil
	case "thermal moment":
		return p.Moment[i], nil
	case "mean thermal stress":
		t := 0.0
		for k := range layers {
			t += float64(layers[k].Thickness)
		}
		return p.Force[i] / t, nil
	case "mid-plane strain":
		return strain[i], nil
	case "curvature":
		return curvature[i], nil
	case "ply stress":
		return loaded.Stress(ply, 0.5)[i], nil
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// wrinkling is a plate on a deep bed, through the same chain that Lines uses.
func (g givens) wrinkling(what string) (float64, error) {
	t, e := g["thick"], g["e1"]/(1-g["nu"]*g["nu"])
	c := chain{beams: []beam{{bending: e * t * t * t / 12, force: 1}},
		below: &bed{modulus: g["bed"], poisson: g["bed-nu"], thickness: math.Inf(1)}}
	load, wave, err := c.buckles(2*t, 1e6*t)
	ratio := e / (g["bed"] / (1 - g["bed-nu"]*g["bed-nu"]))
	if what == "wavelength of wrinkling" {
		return wave / t / math.Cbrt(ratio), err // in t·(Ē_f/Ē_s)^⅓
	}
	return load / (e * t) * math.Cbrt(ratio*ratio), err // in (Ē_s/Ē_f)^⅔
}
