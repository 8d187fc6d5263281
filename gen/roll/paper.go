package roll

import (
	"fmt"

	"laydown/gen/quantity"
)

// ream is the number of sheets that a basis weight is the weight of.
const ream = 500

// pound is the international pound in kilograms, exact (NIST SP 811, appendix B).
const pound quantity.Mass = 0.45359237

// BasicSize is the sheet whose ream gives a kind of paper its basis weight, in the
// United States.
type BasicSize struct {
	Name string
	Wide quantity.Length
	Long quantity.Length
}

// BasicSizes are the basic sizes in use: PrintWiki, "Grammage", for bond, text, cover
// and tag; index and bristol from memory.
var BasicSizes = []BasicSize{
	{"bond, ledger, writing", 17 * quantity.Inch, 22 * quantity.Inch},
	{"text, book, offset", 25 * quantity.Inch, 38 * quantity.Inch},
	{"cover", 20 * quantity.Inch, 26 * quantity.Inch},
	{"index", 25.5 * quantity.Inch, 30.5 * quantity.Inch},
	{"tag, newsprint", 24 * quantity.Inch, 36 * quantity.Inch},
	{"bristol", 22.5 * quantity.Inch, 28.5 * quantity.Inch},
}

func (b BasicSize) ream() (float64, error) {
	if !positive(float64(b.Wide)) || !positive(float64(b.Long)) {
		return 0, fmt.Errorf("a basic size of %g by %g m: both sides must be above 0", float64(b.Wide), float64(b.Long))
	}
	return ream * float64(b.Wide) * float64(b.Long), nil
}

// Grammage gives the grammage of a paper of so many pounds a ream of its basic size.
//
//	w = b·m_lb/(n·A)
func (b BasicSize) Grammage(pounds float64) (quantity.Grammage, error) {
	area, err := b.ream()
	if err != nil {
		return 0, err
	}
	if !notNegative(pounds) {
		return 0, fmt.Errorf("a basis weight of %g lb: it must be 0 or more", pounds)
	}
	return quantity.Grammage(pounds * float64(pound) / area), nil
}

// Pounds gives the basis weight of a paper in pounds.
func (b BasicSize) Pounds(g quantity.Grammage) (float64, error) {
	area, err := b.ream()
	if err != nil {
		return 0, err
	}
	if !notNegative(float64(g)) {
		return 0, fmt.Errorf("a grammage of %g kg/m²: it must be 0 or more", float64(g))
	}
	return float64(g) * area / float64(pound), nil
}

// Bulk is the volume of a mass of paper in cubic metres per kilogram; a thousandth of
// that is the usual cm³/g. From memory: gloss-coated 0.75 to 0.85 cm³/g, silk 0.85 to
// 0.95, uncoated and board 1.2 to 1.4.
type Bulk float64

// Caliper gives the thickness of a sheet from its grammage and bulk: c = w·v.
func Caliper(g quantity.Grammage, bulk Bulk) (quantity.Length, error) {
	if !notNegative(float64(g)) || !positive(float64(bulk)) {
		return 0, fmt.Errorf("a sheet of %g kg/m² and a bulk of %g m³/kg: the first must be 0 or more, the second above 0", float64(g), float64(bulk))
	}
	return quantity.Length(float64(g) * float64(bulk)), nil
}

// BulkOf gives the bulk of a sheet from its thickness and grammage.
func BulkOf(caliper quantity.Length, g quantity.Grammage) (Bulk, error) {
	if !notNegative(float64(caliper)) || !positive(float64(g)) {
		return 0, fmt.Errorf("a sheet %g m thick of %g kg/m²: the first must be 0 or more, the second above 0", float64(caliper), float64(g))
	}
	return Bulk(float64(caliper) / float64(g)), nil
}

// Layer is one layer of a web.
type Layer struct {
	Thickness quantity.Length
	Density   quantity.Density
}

// Mass gives the mass of a web without its core: m = A·Σ t_i·ρ_i.
func Mass(width, length quantity.Length, layers []Layer) (quantity.Mass, error) {
	if !notNegative(float64(width)) || !notNegative(float64(length)) {
		return 0, fmt.Errorf("a web of %g by %g m: both must be 0 or more", float64(width), float64(length))
	}
	grammage := 0.0
	for _, l := range layers {
		if !notNegative(float64(l.Thickness)) || !notNegative(float64(l.Density)) {
			return 0, fmt.Errorf("a layer of %g m and %g kg/m³: both must be 0 or more", float64(l.Thickness), float64(l.Density))
		}
		grammage += float64(l.Thickness) * float64(l.Density)
	}
	return quantity.Mass(grammage * float64(width) * float64(length)), nil
}
