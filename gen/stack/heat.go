package stack

import (
	"fmt"
	"math"

	"laydown/gen/air"
	"laydown/gen/quantity"
)

// stefan is the constant of Stefan and Boltzmann, W/(m² K⁴) (CODATA; from memory).
const stefan = 5.670374419e-8

// gravity is standard gravity, m/s².
const gravity = 9.80665

// Parcel is a wrapped stack that comes into a room of another temperature. The wrap
// keeps its water in: only heat moves.
type Parcel struct {
	Length, Width, Height quantity.Length
	// Along is the conductivity in the plane of the sheets, Through that across them,
	// with the gaps' resistance in it.
	Along, Through quantity.Conductivity
	Density        quantity.Density
	SpecificHeat   quantity.SpecificHeat
	Emissivity     quantity.Fraction // of the wrap: about 0.9 for paper, board and clear film (from memory)
	// Wrap is the conductance of the wrap itself; 0 where it counts for nothing, as a
	// film does. Corrugated board is about 10 to 15 W/(m² K) (from memory).
	Wrap quantity.Conductance
	// OffFloor says that air reaches the bottom as it does the top. Else it is sealed.
	OffFloor bool
}

// Room is where the parcel comes into.
type Room struct {
	Temperature quantity.Temperature
	Pressure    quantity.Pressure
}

// Acclimatised says when a parcel's core has come near the room.
type Acclimatised struct {
	Time  quantity.Time // +Inf beyond a hundred years
	Share quantity.Fraction
	// Sides and Level are what air, radiation and wrap give together at the upright
	// faces and at the top (and bottom), at the differences SideExcess and LevelExcess
	// of these faces from the room.
	Sides, Level            quantity.Conductance
	SideExcess, LevelExcess quantity.TemperatureDifference
	Biot                    [3]float64 // along length, width, height
	// Lumped is what the faces alone would take if the paper conducted perfectly.
	Lumped quantity.Time

	block block
}

// Left is how much of the first difference is left after a time: in the core, and on the
// mean over the parcel.
func (a Acclimatised) Left(t quantity.Time) (core, mean quantity.Fraction) {
	if a.Time == 0 { // near enough from the start: no course was computed
		return 1, 1
	}
	return quantity.Fraction(a.block.core(float64(t))), quantity.Fraction(a.block.whole(float64(t)))
}

// Within gives the time until the core of a parcel, which starts at a temperature
// throughout, is within a difference of the room's.
//
// The block's solution wants a conductance that stays. Still air's falls as the parcel
// comes near the room. So each face has the conductance that it has when the core's
// difference is the geometric mean of its first and its last: found by iteration, since
// that conductance also decides how far the face has run ahead of the core. The tests
// measure what that costs beside a scheme that follows the conductance: below 5 %.
func (p Parcel) Within(start quantity.Temperature, room Room, within quantity.TemperatureDifference) (Acclimatised, error) {
	if err := p.check(); err != nil {
		return Acclimatised{}, err
	}
	if !(within > 0) {
		return Acclimatised{}, fmt.Errorf("a core within %g K of the room: it must be above 0", float64(within))
	}
	first := float64(start - room.Temperature)
	if math.Abs(first) <= float64(within) {
		return Acclimatised{Share: 1}, nil
	}
	share := float64(within) / math.Abs(first)
	out, b, err := p.settle(room, first*math.Sqrt(share))
	if err != nil {
		return out, err
	}
	out.Share, out.block = quantity.Fraction(share), b
	out.Time = quantity.Time(until(b.core, share))
	sides := 2 * float64(p.Length+p.Width) * float64(p.Height) * float64(out.Sides)
	level := float64(p.openLevels()) * float64(p.Length*p.Width) * float64(out.Level)
	capacity := p.heat() * float64(p.Length*p.Width*p.Height)
	out.Lumped = quantity.Time(capacity / (sides + level) * math.Log(1/share))
	return out, nil
}

// settle finds the faces' conductances for a core that differs from the room by middle
// (signed), and the block that has them.
func (p Parcel) settle(room Room, middle float64) (Acclimatised, block, error) {
	var out Acclimatised
	var b block
	side, level := middle, middle
	for range 50 {
		sides, err := p.face(room, side, false)
		if err != nil {
			return out, b, err
		}
		top, err := p.face(room, level, true)
		if err != nil {
			return out, b, err
		}
		if b, err = p.block(sides, top); err != nil {
			return out, b, err
		}
		out = Acclimatised{Sides: quantity.Conductance(sides), Level: quantity.Conductance(top),
			SideExcess: quantity.TemperatureDifference(math.Abs(side)), LevelExcess: quantity.TemperatureDifference(math.Abs(level)),
			Biot: [3]float64{b[0].biot, b[1].biot, b[2].biot}}
		// In the late course, where most of the time goes, a face's difference is cos β of
		// the middle's in front of it; on the mean over the face that is less, by the means
		// of the other two directions.
		shape := func(i int) float64 { return b[i].mean[0] / b[i].local[0] }
		newSide := middle * (math.Cos(b[0].beta[0]) + math.Cos(b[1].beta[0])) / 2 * shape(2)
		newLevel := middle * math.Cos(b[2].beta[0]) * shape(0) * shape(1)
		moved := math.Max(math.Abs(newSide/side-1), math.Abs(newLevel/level-1))
		side, level = newSide, newLevel
		if moved < 1e-6 {
			return out, b, nil
		}
	}
	return out, b, fmt.Errorf("a parcel %g x %g x %g m: the conductance at its faces does not settle", float64(p.Length), float64(p.Width), float64(p.Height))
}

// block is the parcel with given conductances at its sides and at its level faces.
func (p Parcel) block(sides, level float64) (b block, err error) {
	heat := p.heat()
	along, through := float64(p.Along)/heat, float64(p.Through)/heat
	if b[0], err = newDirection(float64(p.Length), 2, along, sides/heat); err != nil {
		return b, err
	}
	if b[1], err = newDirection(float64(p.Width), 2, along, sides/heat); err != nil {
		return b, err
	}
	b[2], err = newDirection(float64(p.Height), p.openLevels(), through, level/heat)
	return b, err
}

// heat is the heat capacity of the parcel's paper, J/(m³ K).
func (p Parcel) heat() float64 { return float64(p.Density) * float64(p.SpecificHeat) }

// openLevels is how many of its level faces the air reaches.
func (p Parcel) openLevels() int {
	if p.OffFloor {
		return 2
	}
	return 1
}

func (p Parcel) check() error {
	for _, v := range [...]float64{float64(p.Length), float64(p.Width), float64(p.Height),
		float64(p.Along), float64(p.Through), float64(p.Density), float64(p.SpecificHeat)} {
		if !positive(v) {
			return fmt.Errorf("a parcel with a size or property of %g: each must be above 0", v)
		}
	}
	if !(p.Emissivity >= 0 && p.Emissivity <= 1) || !(p.Wrap >= 0) {
		return fmt.Errorf("a wrap with an emissivity of %g and a conductance of %g W/(m² K): 0 to 1, and 0 or more", float64(p.Emissivity), float64(p.Wrap))
	}
	return nil
}

// face is the conductance from a face to the room, at a difference (signed: above 0 the
// parcel is the warmer): still air and radiation side by side, the wrap before them.
//
// An upright face is as high as the parcel. A level one lets warm air off upwards only,
// and cold air not at all from its top, which the parcel's rim holds up. Where the level
// plate's correlation ends (Ra below 1e4, or 1e5), its value there is kept.
func (p Parcel) face(room Room, excess float64, level bool) (float64, error) {
	t := room.Temperature + quantity.Temperature(excess)
	mean := (room.Temperature + t) / 2
	nu := float64(air.KinematicViscosity(mean, room.Pressure))
	alpha := float64(air.ThermalDiffusivity(mean, room.Pressure))
	if !positive(nu) || !positive(alpha) {
		return 0, fmt.Errorf("air at %.4g °C and %.4g Pa around a parcel", mean.Celsius(), float64(room.Pressure))
	}
	pr := nu / alpha
	length := float64(p.Height)
	if level {
		length = float64(p.Length*p.Width) / (2 * float64(p.Length+p.Width))
	}
	gr := gravity * math.Abs(excess) * length * length * length / (float64(mean) * nu * nu)
	var nusselt float64
	var err error
	switch {
	case !level:
		nusselt, err = air.VerticalPlate(gr, pr)
	case excess > 0:
		nusselt, err = air.LevelPlate(math.Max(gr, 1e4*(1+1e-12)/pr), pr, true)
	default:
		nusselt, err = air.LevelPlate(math.Max(gr, 1e5*(1+1e-12)/pr), pr, false)
	}
	if err != nil {
		return 0, err
	}
	s, w := float64(t), float64(room.Temperature)
	h := nusselt*float64(air.ThermalConductivity(mean))/length + float64(p.Emissivity)*stefan*(s*s+w*w)*(s+w)
	if p.Wrap > 0 {
		h = 1 / (1/h + 1/float64(p.Wrap))
	}
	return h, nil
}
