package tables

import (
	"fmt"

	"laydown/gen/air"
	"laydown/gen/paper"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// What a fuser leaves in a sheet is not known: half of its water is an assumption. The
// time until nine tenths of that are back hardly depends on it.
const (
	fuserLeaves quantity.Fraction = 0.5
	regained    quantity.Fraction = 0.9
)

// regain is how a sheet takes the water back that a fuser drove out of it.
type regain struct {
	balance, dry quantity.Fraction // moisture in the room, and out of the fuser
	air          quantity.Speed
	faces        int
	back         quantity.Time // until regained of what was lost
}

// regain computes it for a medium in a place; false where the medium holds no water
// that the air reaches.
//
// In a stack or a tight roll the vapour creeps along the gap, as a carrier does (see
// transfer), and it is judged at mid-width.
func (t *Tables) regain(m *shop.Medium, p place) (regain, bool, error) {
	s, sealed, wet, err := t.sheetOf(m, paper.Pulp)
	if err != nil || !wet || sealed {
		return regain{}, false, err
	}
	if s.Base, err = s.DryOf(m.Grammage.Best); err != nil {
		return regain{}, false, err
	}
	inAir, err := air.WaterDiffusivity(p.temperature, t.pressure)
	if err != nil {
		return regain{}, false, err
	}
	face, back, err := p.transfer(inAir, m.Width.Best, t.pressure)
	if err != nil {
		return regain{}, false, err
	}
	r := regain{air: face, faces: 1}
	if back > 0 {
		r.faces = 2
	}
	e := paper.Exchange{Sheet: s, Dry: s.Base, Thickness: m.Thickness.Best, Faces: r.faces, Air: face, Room: p.temperature, Humidity: p.humidity}
	if r.balance, err = s.Moisture(p.humidity, p.temperature); err != nil {
		return regain{}, false, err
	}
	r.dry = r.balance * fuserLeaves
	r.back, _, err = e.Returns(r.dry, regained)
	return r, err == nil, err
}

// steps are the lines of it, with what it says of a wait of so many hours.
func (r regain) steps(wait quantity.Time, storage string) ([]Step, string) {
	steps := []Step{
		step("M", "moisture of the sheet in balance with the room", r.balance, "", ""),
		step("M_f", "moisture out of the fuser: half of that, assumed", r.dry, "", ""),
		{Symbol: "h", Text: "transfer of water vapour in the air", Shown: fmt.Sprintf("%.3g\u00a0mm/s", quantity.Number(r.air, "mm/s")), SI: float64(r.air), Unit: "m/s"},
		step("", "nine tenths of what it lost are back after", r.back, "s", ""),
	}
	switch {
	case r.back > HardlyDries:
		return steps, fill(phrases["regain-never"], "storage", storage)
	case r.back > wait:
		return steps, fill(phrases["regain-late"], "storage", storage, "back", duration(r.back))
	}
	return steps, ""
}
