package cooling

import (
	"fmt"
	"math"

	"laydown/gen/quantity"
)

// Heap is a stack of sheets that were stacked warm.
type Heap struct {
	Sheets int
	// Sheet is one laminate as a whole: see Whole.
	Sheet Layer
	// Between is the contact conductance between two sheets. Paper on paper under its
	// own weight is not known well: 100 to 200 W/(m² K) was measured for paper on
	// metal at 2 kPa; 0 means none counted.
	Between quantity.Conductance
	// Width and Length of the sheets: their edges give heat too.
	Width, Length quantity.Length
	Top, Bottom   Exposure
	// Sides is what the four sides give to air of the top's temperature.
	Sides quantity.Conductance
}

// Whole gives a laminate as one layer of the same thickness, heat capacity and
// resistance, at a temperature.
func Whole(layers []Layer, t quantity.Temperature) Layer {
	thick, r, heat := 0.0, 0.0, 0.0
	for i, l := range layers {
		thick += float64(l.Thickness)
		r += float64(l.Thickness) / float64(l.Conductivity)
		heat += l.HeatCapacity()
		if l.Below > 0 && i < len(layers)-1 {
			r += 1 / float64(l.Below)
		}
	}
	return Layer{Name: "laminate", Thickness: quantity.Length(thick), Conductivity: quantity.Conductivity(thick / r),
		Density: 1, SpecificHeat: quantity.SpecificHeat(heat / thick), Start: Even(t)}
}

func (h Heap) check() error {
	if h.Sheets < 1 {
		return fmt.Errorf("a heap of %d sheets: at least 1", h.Sheets)
	}
	if err := h.Sheet.check(); err != nil {
		return err
	}
	for _, g := range [...]quantity.Conductance{h.Between, h.Sides} {
		if !notNegative(float64(g)) {
			return fmt.Errorf("a heap with %g W/(m² K) between sheets or at its sides: it must be 0 or more", float64(g))
		}
	}
	return nil
}

// slab is the heap as one layer.
func (h Heap) slab() Layer {
	s := h.Sheet
	n := float64(h.Sheets)
	r := n * float64(s.Thickness) / float64(s.Conductivity)
	if h.Between > 0 {
		r += (n - 1) / float64(h.Between)
	}
	s.Name = "heap"
	s.Thickness *= quantity.Length(n)
	s.Conductivity = quantity.Conductivity(float64(s.Thickness) / r)
	return s
}

// Middle cools the heap as a slab between its top and its bottom, for a time, and says
// which place in it is the middle sheet. It leaves out the sides, and so is the slow,
// safe answer for a wide heap.
func (h Heap) Middle(time quantity.Time) (*Cooling, Place, error) {
	if err := h.check(); err != nil {
		return nil, 0, err
	}
	s := h.slab()
	s.Start = Even(h.Sheet.startMean())
	layers, middle := []Layer{s}, Place(0)
	if h.Sheets > 1 {
		sheet, half := s, s
		sheet.Name, sheet.Thickness = "middle sheet", h.Sheet.Thickness
		half.Thickness = (s.Thickness - sheet.Thickness) / 2
		upper, lower := half, half
		upper.Name, lower.Name = "upper half", "lower half"
		layers, middle = []Layer{upper, sheet, lower}, 1
	}
	c, err := Cool(layers, []Stage{{Name: "heap", Time: time, Face: h.Top, Back: h.Bottom}})
	return c, middle, err
}

// startMean is a layer's mean temperature at the start.
func (l Layer) startMean() quantity.Temperature {
	return quantity.Temperature(l.startBetween(0, float64(l.Thickness)))
}

// Lumped is a heap taken as having one temperature throughout.
type Lumped struct {
	// Tau is the time in which its excess over what it cools to falls to 1/e.
	Tau quantity.Time
	// Start is its temperature at first, End that which it goes to.
	Start, End quantity.Temperature
	// Biot is the conductance of its faces against its own from face to middle. Above
	// 0.1 the heap's middle lags, and Middle is the better answer.
	Biot float64
}

// Lumped gives the heap's mean as one exponential: ρ·c·V·dT/dt = −Σ h·A·(T − T_a).
func (h Heap) Lumped() (Lumped, error) {
	if err := h.check(); err != nil {
		return Lumped{}, err
	}
	s := h.slab()
	area := float64(h.Width) * float64(h.Length)
	if !positive(area) {
		return Lumped{}, fmt.Errorf("a heap of %g m by %g m: both must be above 0", float64(h.Width), float64(h.Length))
	}
	sides := 2 * float64(h.Width+h.Length) * float64(s.Thickness) * float64(h.Sides) / area
	top, bottom := float64(h.Top.Conductance), float64(h.Bottom.Conductance)
	give := top + bottom + sides
	if !positive(give) {
		return Lumped{}, fmt.Errorf("a heap that gives no heat: %g W/(m² K)", give)
	}
	end := ((top+sides)*float64(h.Top.Temperature) + bottom*float64(h.Bottom.Temperature)) / give
	return Lumped{
		Tau: quantity.Time(s.HeatCapacity() / give), Start: h.Sheet.startMean(), End: quantity.Temperature(end),
		Biot: max(top, bottom) * float64(s.Thickness) / 2 / float64(s.Conductivity),
	}, nil
}

// At is the lumped temperature at a time.
func (l Lumped) At(t quantity.Time) quantity.Temperature {
	return l.End + quantity.Temperature(math.Exp(-float64(t/l.Tau)))*(l.Start-l.End)
}

// Until is the time at which the lumped heap has cooled to a temperature; false if it
// never does.
func (l Lumped) Until(t quantity.Temperature) (quantity.Time, bool) {
	switch {
	case t >= l.Start:
		return 0, true
	case t <= l.End:
		return 0, false
	}
	return l.Tau * quantity.Time(math.Log(float64((l.Start-l.End)/(t-l.End)))), true
}
