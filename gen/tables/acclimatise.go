package tables

import (
	"fmt"
	"math"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/stack"
)

// The parcels that the handbook tells the warming of.
const (
	Pack   = "pack"
	Carton = "carton"
	Pallet = "pallet"
)

// Parcels are the parcels in the order of the table.
var Parcels = []string{Pack, Carton, Pallet}

// What the parcels are taken to be. Assumptions of this handbook, no source: a pack is
// 60 mm of sheets in paper or film, a carton 250 mm of them in corrugated board, a pallet
// 600 mm high and as many piles side by side as stand on 1.2 by 0.8 m.
const (
	packHeight                           = 60 * quantity.Millimetre
	cartonHeight                         = 250 * quantity.Millimetre
	palletHeight                         = 600 * quantity.Millimetre
	corrugated      quantity.Conductance = 12
	wrapEmissivity  quantity.Fraction    = 0.9 // of paper, board and clear film, from memory
	palletLength                         = 1200 * quantity.Millimetre
	palletWidth                          = 800 * quantity.Millimetre
	airConductivity                      = 0.026 // W/(m K), of the air in the gaps at 23 °C
)

// planeConduction is the heat conductivity of paper in the plane of the sheet over that
// through it: twice to three times is usual, from memory; one to four the band.
var planeConduction = Band[quantity.Fraction]{Low: 1, Best: 2, High: 4}

// Acclimatised is how near the core of a parcel must have come to the room. At 2 K the
// air that meets the sheets is some 6 % relative humidity off beside them, about where a
// probe in a stack says that the paper will move (5 to 8 %, common practice, no source).
const Acclimatised quantity.TemperatureDifference = 2

// Colder are the differences between parcel and room that the table has.
var Colder = []quantity.TemperatureDifference{5, 10, 15, 20, 25}

// AcclimatiseCase is a wrapped parcel of a medium, colder than the room it comes into.
type AcclimatiseCase struct {
	Medium, Parcel string // id; one of Parcels
	Room           string // id
	Colder         quantity.TemperatureDifference
}

// AcclimatiseValue is how long it must stay wrapped.
type AcclimatiseValue struct {
	AcclimatiseCase
	Length, Width, Height quantity.Length
	// Time until its core is near the room: Low by the medium's poorest conduction,
	// High by its best.
	Time Band[quantity.Time]
	// Faces is what the faces alone would take, if the paper conducted perfectly.
	Faces quantity.Time
}

// Volume is that of the parcel.
func (v AcclimatiseValue) Volume() quantity.Volume {
	return quantity.Volume(v.Length * v.Width * v.Height)
}

// Wraps reports whether a medium comes in parcels: sheets whose heat is known.
func (t *Tables) Wraps(m *shop.Medium) bool { return m.SheetLength.Set && knowsHeat(m) }

// AcclimatiseValues computes the table for the shop's usual room.
func (t *Tables) AcclimatiseValues() ([]AcclimatiseValue, error) {
	var cases []AcclimatiseCase
	for _, m := range t.shop.Media {
		if !t.Wraps(m) {
			continue
		}
		for _, p := range Parcels {
			for _, d := range Colder {
				cases = append(cases, AcclimatiseCase{m.ID, p, t.shop.Front.Room.ID, d})
			}
		}
	}
	return eachOf(len(cases), func(_ *nip.Solver, i int) (AcclimatiseValue, error) { return t.Acclimatise(cases[i]) })
}

// Acclimatise computes a case.
func (t *Tables) Acclimatise(c AcclimatiseCase) (AcclimatiseValue, error) {
	v := AcclimatiseValue{AcclimatiseCase: c}
	best, room, err := t.parcel(c, 0)
	if err != nil {
		return v, err
	}
	v.Length, v.Width, v.Height = best.Length, best.Width, best.Height
	for i, time := range []*quantity.Time{&v.Time.Low, &v.Time.Best, &v.Time.High} {
		p, _, err := t.parcel(c, i-1)
		if err != nil {
			return v, err
		}
		a, err := t.warms(p, room, c.Colder)
		if err != nil {
			return v, fmt.Errorf("a %s of %s: %w", c.Parcel, c.Medium, err)
		}
		*time = a.Time
		if i == 1 {
			v.Faces = a.Lumped
		}
	}
	return v, nil
}

// warms takes a parcel into a room.
func (t *Tables) warms(p stack.Parcel, room *shop.Room, colder quantity.TemperatureDifference) (stack.Acclimatised, error) {
	return p.Within(room.Temperature.Best.Plus(-colder), stack.Room{Temperature: room.Temperature.Best, Pressure: t.pressure}, Acclimatised)
}

// parcel makes a case's parcel, with its conduction at an end: -1 low, 0 best, 1 high.
func (t *Tables) parcel(c AcclimatiseCase, end int) (stack.Parcel, *shop.Room, error) {
	m, room := t.shop.Medium(c.Medium), t.shop.Room(c.Room)
	switch {
	case m == nil:
		return stack.Parcel{}, nil, t.unknown("media", c.Medium)
	case room == nil:
		return stack.Parcel{}, nil, t.unknown("rooms", c.Room)
	case !t.Wraps(m):
		return stack.Parcel{}, nil, fmt.Errorf("%s comes in no parcel whose heat is known: it needs sheets, a conductivity and a specific heat", m.Name)
	}
	p := t.stuff(m, end)
	p.Length, p.Width = m.SheetLength.Best, m.Width.Best
	switch c.Parcel {
	case Pack:
		p.Height = packHeight
	case Carton:
		p.Height, p.Wrap = cartonHeight, corrugated
	case Pallet:
		p.Height = palletHeight
		p.Length *= quantity.Length(math.Max(1, math.Floor(float64(palletLength/p.Length))))
		p.Width *= quantity.Length(math.Max(1, math.Floor(float64(palletWidth/p.Width))))
	default:
		return p, nil, fmt.Errorf("no parcel is called %q: there are pack, carton and pallet", c.Parcel)
	}
	return p, room, nil
}

// stuff is a medium's paper as heat meets it in a pile: across the sheets with the gaps'
// air between, along them side by side with it.
func (t *Tables) stuff(m *shop.Medium, end int) stack.Parcel {
	k, along, gap := m.Conductivity.Best, planeConduction.Best, quantity.Length(0)
	storage := t.stackStorage()
	if storage != nil {
		gap = storage.Gap.Best
	}
	switch end {
	case -1:
		k, along = m.Conductivity.Low, planeConduction.Low
		if storage != nil {
			gap = storage.Gap.High
		}
	case 1:
		k, along = m.Conductivity.High, planeConduction.High
		if storage != nil {
			gap = storage.Gap.Low
		}
	}
	sheet := m.Thickness.Best
	share := float64(sheet / (sheet + gap)) // of the pile that is paper
	return stack.Parcel{
		Along:        quantity.Conductivity(share*float64(along)*float64(k) + (1-share)*airConductivity),
		Through:      quantity.Conductivity(1 / (share/float64(k) + (1-share)/airConductivity)),
		Density:      quantity.Density(share * float64(m.Grammage.Best) / float64(sheet)),
		SpecificHeat: m.SpecificHeat.Best,
		Emissivity:   wrapEmissivity,
	}
}

// ChartFigure is a figure of the published conditioning chart beside what is computed.
type ChartFigure = stack.Compared

// AcclimatiseChart sets the published chart beside what is computed for a cube of each of
// its volumes, of a medium's sheets, in the shop's usual room.
func (t *Tables) AcclimatiseChart(medium string) ([]ChartFigure, error) {
	m := t.shop.Medium(medium)
	if m == nil {
		return nil, t.unknown("media", medium)
	}
	if !t.Wraps(m) {
		return nil, fmt.Errorf("%s comes in no parcel whose heat is known", m.Name)
	}
	room := t.shop.Room(t.shop.Front.Room.ID)
	return stack.Compare(t.stuff(m, 0), stack.Room{Temperature: room.Temperature.Best, Pressure: t.pressure}, Acclimatised)
}

// PalletSet is a published set of hours for a pallet.
type PalletSet struct {
	Name  string
	Hours map[quantity.TemperatureDifference]quantity.Time // none where the source gives none
}

// PalletSets are the two published sets beside the chart.
func PalletSets() []PalletSet {
	sets := []PalletSet{
		{fmt.Sprintf("about %g m³ (%.0f ft³)", float64(stack.PalletVolume), float64(stack.PalletVolume)/0.028316846592), map[quantity.TemperatureDifference]quantity.Time{}},
		{"750 kg (1650 lb)", map[quantity.TemperatureDifference]quantity.Time{}},
	}
	for _, p := range stack.PalletHours {
		for i, hours := range []float64{p.First, p.Second} {
			if hours > 0 {
				sets[i].Hours[p.Difference] = quantity.Time(hours) * quantity.Hour
			}
		}
	}
	return sets
}

// AcclimatiseWorking is the way to a parcel's time.
func (t *Tables) AcclimatiseWorking(v AcclimatiseValue) (Working, error) {
	p, room, err := t.parcel(v.AcclimatiseCase, 0)
	if err != nil {
		return Working{}, err
	}
	a, err := t.warms(p, room, v.Colder)
	if err != nil {
		return Working{}, err
	}
	m := t.shop.Medium(v.Medium)
	w := Working{Steps: []Step{
		stated("T", "room", room.Temperature, "K"),
		step("ΔT", "colder than the room by", v.Colder, "K", ""),
		step("", "near enough", Acclimatised, "K", ""),
		step("", "length", p.Length, "m", ""),
		step("", "width", p.Width, "m", ""),
		step("", "height", p.Height, "m", ""),
		stated("k", "through a sheet", m.Conductivity, "W/(m K)"),
		step("k_z", "through the pile, with the air between the sheets", p.Through, "W/(m K)", ""),
		step("k_x", "along the sheets: twice that through a sheet", p.Along, "W/(m K)", ""),
		step("ρ", "the pile", p.Density, "kg/m³", ""),
		stated("c", "specific heat", m.SpecificHeat, "J/(kg K)"),
		step("h", "an upright face to the air and to the walls, the wrap with it", a.Sides, "W/(m² K)", ""),
		step("h_z", "its top", a.Level, "W/(m² K)", ""),
		ratio("Bi", "Biot number across the height", a.Biot[2]),
		step("", "what the faces alone would take", a.Lumped, "s", ""),
	}}
	w.Notes = []string{
		"What is left of the difference in the core is the product of three slabs; the bottom counts as closed, the wrap keeps the water in.",
		"The band is that of the conductivity through the sheets, once to four times as much along them, and the gaps between.",
	}
	return w, nil
}
