package tables

import (
	"fmt"
	"math"

	"laydown/gen/nip"
	"laydown/gen/paper"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/stack"
)

// Band is what the low, the best and the high value of what is hardly known give.
type Band[Q quantity.Quantity] = stack.Band[Q]

// StackTimes are the times after which the table tells a stack's border.
var StackTimes = []quantity.Time{quantity.Hour, quantity.Day, 7 * quantity.Day}

// The shares of the change that a border is told at. At half of it a sheet is on its way;
// a tenth is about where waviness or tightness ends. Names for a choice, no source.
const (
	BorderHalf  quantity.Fraction = 0.5
	BorderTenth quantity.Fraction = 0.1
)

// evenShare is when a stack counts as even: a tenth of the difference is left in its
// middle. An assumption of this handbook.
const evenShare quantity.Fraction = 0.9

// paperSource is the record that the sheets' isotherm stands on.
const paperSource = "pulp-isotherm-2022"

// StackCase is a stack of a medium's sheets that was in balance with one room and now
// stands in another, its top covered.
type StackCase struct {
	Medium, From, To string // ids
}

// StackValue is what a stack does.
type StackValue struct {
	StackCase
	// Damper says that the new room is the damper one: the border dampens.
	Damper  bool
	Borders []StackBorder // as in StackTimes
	Even    []StackEven
}

// StackBorder is how deep the border has changed after a time.
type StackBorder struct {
	After quantity.Time
	// Half is the depth to which half of the change is done, Tenth a tenth of it.
	Half, Tenth Band[quantity.Length]
}

// StackEven is when a stack of sheets of a size has evened out.
type StackEven struct {
	Size          string // "sheet", the medium's own; "A4"
	Length, Width quantity.Length
	Time          Band[quantity.Time] // +Inf beyond a hundred years
}

// a4 is what a second stack is told for.
var a4 = struct{ length, width quantity.Length }{297 * quantity.Millimetre, 210 * quantity.Millimetre}

// Stacks reports whether a medium makes stacks whose water moves: sheets with fibre and
// an open back. A sealed back is no bar at the edges, but nothing is known of how water
// goes along such a sheet.
func (t *Tables) Stacks(m *shop.Medium) bool {
	sealed := m.Drying != nil && m.Drying.Back == "sealed"
	return m.FibreShare.Best > 0 && m.SheetLength.Set && !sealed && t.stackStorage() != nil
}

// stackStorage is the shop's way of keeping a stack: its gaps count.
func (t *Tables) stackStorage() *shop.Storage {
	for _, s := range t.shop.Storages {
		if s.Kind == "stack" {
			return s
		}
	}
	return nil
}

// StackValues computes the table: every medium that stacks, from each room into each other.
func (t *Tables) StackValues() ([]StackValue, error) {
	var cases []StackCase
	for _, m := range t.shop.Media {
		if !t.Stacks(m) {
			continue
		}
		for _, from := range t.shop.Rooms {
			for _, to := range t.shop.Rooms {
				if from.Humidity.Best != to.Humidity.Best {
					cases = append(cases, StackCase{m.ID, from.ID, to.ID})
				}
			}
		}
	}
	return eachOf(len(cases), func(_ *nip.Solver, i int) (StackValue, error) { return t.Stack(cases[i]) })
}

// Stack computes a case.
func (t *Tables) Stack(c StackCase) (StackValue, error) {
	v := StackValue{StackCase: c}
	s, err := t.stacked(c)
	if err != nil {
		return v, err
	}
	v.Damper = s.to.Humidity.Best > s.from.Humidity.Best
	own, err := s.moves(s.medium.SheetLength.Best, s.medium.Width.Best)
	if err != nil {
		return v, err
	}
	for _, after := range StackTimes {
		b := StackBorder{After: after}
		half, err := own.Border(BorderHalf, after)
		if err != nil {
			return v, err
		}
		tenth, err := own.Border(BorderTenth, after)
		if err != nil {
			return v, err
		}
		b.Half, b.Tenth = half.Sides, tenth.Sides
		v.Borders = append(v.Borders, b)
	}
	for _, size := range []StackEven{
		{Size: "sheet", Length: s.medium.SheetLength.Best, Width: s.medium.Width.Best},
		{Size: "A4", Length: a4.length, Width: a4.width},
	} {
		m, err := s.moves(size.Length, size.Width)
		if err != nil {
			return v, err
		}
		if size.Time, err = m.Even(evenShare); err != nil {
			return v, err
		}
		v.Even = append(v.Even, size)
	}
	return v, nil
}

// stacked is a case with its records found.
type stacked struct {
	medium   *shop.Medium
	from, to *shop.Room
	sheets   stack.Sheets
	sheet    paper.Sheet
	change   stack.Change
	gap      shop.Value[quantity.Length]
}

func (t *Tables) stacked(c StackCase) (stacked, error) {
	s := stacked{medium: t.shop.Medium(c.Medium), from: t.shop.Room(c.From), to: t.shop.Room(c.To)}
	switch {
	case s.medium == nil:
		return s, t.unknown("media", c.Medium)
	case s.from == nil:
		return s, t.unknown("rooms", c.From)
	case s.to == nil:
		return s, t.unknown("rooms", c.To)
	case !t.Stacks(s.medium):
		return s, fmt.Errorf("%s makes no stack whose water is known: it needs sheets, fibre and an open back", s.medium.Name)
	}
	var err error
	if s.sheet, _, _, err = t.sheetOf(s.medium, paper.Pulp); err != nil {
		return s, err
	}
	dry, err := t.dryGrammage(s.medium, s.sheet)
	if err != nil {
		return s, err
	}
	s.gap = t.stackStorage().Gap
	s.sheets = stack.Usual(s.sheet, s.medium.Thickness.Best, quantity.Density(float64(dry)/float64(s.medium.Thickness.Best)))
	s.sheets.Gap = Band[quantity.Length]{Low: s.gap.Low, Best: s.gap.Best, High: s.gap.High}
	s.change = stack.Change{From: s.from.Humidity.Best, To: s.to.Humidity.Best, Temperature: s.to.Temperature.Best, Pressure: t.pressure}
	return s, nil
}

// dryGrammage is a medium's weight without its water. Its stated grammage is that at the
// standard's 50 % and 23 °C (TAPPI T 402, ISO 187).
func (t *Tables) dryGrammage(m *shop.Medium, s paper.Sheet) (quantity.Grammage, error) {
	moisture, err := s.Moisture(0.50, referenceRoom)
	return m.Grammage.Best / quantity.Grammage(1+moisture), err
}

// moves sets a stack of a size into the room. Its height counts for nothing under a
// cover; 100 mm stands for any.
func (s stacked) moves(length, width quantity.Length) (*stack.Moisture, error) {
	m, err := stack.NewMoisture(stack.Pile{Length: length, Width: width, Height: 100 * quantity.Millimetre, Transfer: stack.StillAir}, s.sheets, s.change)
	if err != nil {
		return nil, fmt.Errorf("a stack of %s from %s into %s: %w", s.medium.ID, s.from.ID, s.to.ID, err)
	}
	return m, nil
}

// StackBorderCurve is the depth of the border against time, on a scale of powers, from an
// hour to thirty days: the best figure and the ends of its band.
func (t *Tables) StackBorderCurve(c StackCase, share quantity.Fraction) ([]BorderPoint, error) {
	s, err := t.stacked(c)
	if err != nil {
		return nil, err
	}
	m, err := s.moves(s.medium.SheetLength.Best, s.medium.Width.Best)
	if err != nil {
		return nil, err
	}
	const from, to, n = 1, 30 * 24, 60
	list := make([]BorderPoint, n+1)
	for i := range list {
		at := quantity.Time(from*math.Pow(to/from, float64(i)/n)) * quantity.Hour
		b, err := m.Border(share, at)
		if err != nil {
			return nil, err
		}
		list[i] = BorderPoint{at, b.Sides}
	}
	return list, nil
}

// BorderPoint is a point of the curve of a border.
type BorderPoint struct {
	After quantity.Time
	Depth Band[quantity.Length]
}

// StackWorking is the way to what a stack does.
func (t *Tables) StackWorking(v StackValue) (Working, error) {
	s, err := t.stacked(v.StackCase)
	if err != nil {
		return Working{}, err
	}
	d, err := s.sheets.Diffusivities(s.change)
	if err != nil {
		return Working{}, err
	}
	const published = "paper-water-1998"
	w := Working{Steps: []Step{
		stated("a_1", "humidity that the stack was in balance with", s.from.Humidity, ""),
		stated("a_2", "humidity of the room", s.to.Humidity, ""),
		stated("T", "temperature", s.to.Temperature, "K"),
		step("M_1", "moisture before, kg of water for each kg of dry sheet", d.MoistureFrom, "", paperSource),
		step("M_2", "moisture in the end", d.MoistureTo, "", paperSource),
		step("ρ_p", "sheet, dry", s.sheets.Density, "kg/m³", ""),
		step("ρ_s", "vapour in saturated air", d.Saturated, "kg/m³", ""),
		ratio("S", "how much more a sheet stores than air does: ρ_p·(M_2 − M_1)/[ρ_s·(a_2 − a_1)]", d.Store),
		stated("", "gap between two sheets", s.gap, "m"),
		step("φ", "share of the pile that is gaps", d.Gaps.Best, "", ""),
		step("D_a", "water vapour in air", d.Air, "m²/s", ""),
		step("D_p", "vapour in the pores, in the plane: the published figure for through the sheet to ten times it; their geometric mean", s.sheets.Along.Best, "m²/s", published),
		step("D_f", "water in the fibre", s.sheets.Fibre, "m²/s", published),
		step("D_M", "moisture: [(1 − φ)·D_p + φ·D_a]/[(1 − φ)·S] + D_f", d.Along.Best, "m²/s", ""),
		step("", "at the low end of D_p and of the gaps", d.Along.Low, "m²/s", ""),
		step("", "at the high end", d.Along.High, "m²/s", ""),
	}}
	w.Notes = []string{
		"By hand, as long as the border is thin beside the stack: half of the change has reached x = 0.95·√(D_M·t), a tenth of it 2.3·√(D_M·t).",
		"The depth is that from the long sides, halfway up a covered stack. At a corner both borders meet. The top sheets of an uncovered one follow the room within minutes to hours.",
		"The isotherm of pulp is too wet above 75 % and too dry below 40 % beside measured papers; its slope counts here, and it enters as a straight line between the two humidities.",
	}
	return w, nil
}
