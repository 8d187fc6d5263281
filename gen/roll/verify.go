package roll

import (
	"fmt"

	"laydown/gen/quantity"
)

// Verify computes what a published value of this package is about, in the units of the
// source: what names it, given holds its inputs. Tests and the verification page ask it.
func Verify(what string, given map[string]float64) (float64, error) {
	switch what {
	case "length on a roll, inches":
		l, err := woundOf(given, quantity.Inch).Length(quantity.Length(given["outer"]) * quantity.Inch)
		return float64(l / quantity.Inch), err
	case "length on a roll": // m; diameters in mm, thickness in µm
		l, err := woundOf(given, quantity.Millimetre).Length(quantity.Length(given["outer"]) * quantity.Millimetre)
		return float64(l), err
	case "wraps on a roll":
		return woundOf(given, quantity.Millimetre).Wraps(quantity.Length(given["outer"]) * quantity.Millimetre)
	case "diameter of a roll that holds a length": // mm
		d, err := woundOf(given, quantity.Millimetre).Outer(quantity.Length(given["length"]))
		return d.Millimetres(), err
	case "diameter of the roller that makes a mark": // mm
		d, err := Diameter(quantity.Length(given["repeat"]) * quantity.Millimetre)
		return d.Millimetres(), err
	case "grammage of a basis weight": // g/m²
		g, err := basicOf(given).Grammage(given["pounds"])
		return g.GramsPerSquareMetre(), err
	case "basis weight of a grammage": // lb
		return basicOf(given).Pounds(quantity.Grammage(given["grammage"]) * quantity.GramPerSquareMetre)
	case "film on a bordered piece": // m²
		return float64(pieceOf(given).Bordered(quantity.Length(given["border"]) * quantity.Millimetre)), nil
	case "film for a job", "running time of a job":
		n, err := Job{Pieces: int(given["pieces"]), Piece: pieceOf(given), Gap: quantity.Length(given["gap"]) * quantity.Millimetre,
			Width: quantity.Length(given["width"]) * quantity.Millimetre, Sides: 1, Threading: quantity.Length(given["threading"]),
			Speed: quantity.Speed(given["speed"]) * quantity.MetrePerMinute}.Need()
		if what == "film for a job" {
			return float64(n.Length), err
		}
		return n.Running.Minutes(), err
	case "mass of a web": // kg; width in mm, layers in µm and kg/m³, a liner in g/m²
		layers := []Layer{{1, quantity.Density(given["liner"]) * 1e-3}}
		for _, n := range []string{"1", "2"} {
			layers = append(layers, Layer{quantity.Length(given["thickness "+n]) * quantity.Micrometre, quantity.Density(given["density "+n])})
		}
		m, err := Mass(quantity.Length(given["width"])*quantity.Millimetre, quantity.Length(given["length"]), layers)
		return float64(m), err
	}
	return 0, fmt.Errorf("nothing here computes %q", what)
}

// woundOf reads a roll: its core in a unit, its thickness in the same or in µm.
func woundOf(given map[string]float64, unit quantity.Length) Wound {
	w := Wound{Core: quantity.Length(given["core"]) * unit, Thickness: quantity.Length(given["micrometres"]) * quantity.Micrometre}
	if given["thickness"] > 0 {
		w.Thickness = quantity.Length(given["thickness"]) * unit
	}
	return w
}

func basicOf(given map[string]float64) BasicSize {
	return BasicSize{Wide: quantity.Length(given["wide"]) * quantity.Inch, Long: quantity.Length(given["long"]) * quantity.Inch}
}

func pieceOf(given map[string]float64) Piece {
	return Piece{Across: quantity.Length(given["across"]) * quantity.Millimetre, Along: quantity.Length(given["along"]) * quantity.Millimetre}
}
