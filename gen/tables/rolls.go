package tables

import (
	"cmp"
	"fmt"
	"slices"

	"laydown/gen/quantity"
	"laydown/gen/roll"
	"laydown/gen/shop"
)

// RollDiameters are the outer diameters at which the table tells the film left.
var RollDiameters = []quantity.Length{
	40e-3, 50e-3, 60e-3, 70e-3, 80e-3, 90e-3, 100e-3, 110e-3, 120e-3, 130e-3, 140e-3, 160e-3, 180e-3,
	200e-3, 220e-3, 250e-3, 280e-3, 320e-3, 360e-3, 400e-3,
}

// HeavyRoll is the mass from which a roll is lifted by two people or with a lift: an
// estimate below what lifting advice allows one person under ideal conditions.
const HeavyRoll quantity.Mass = 15

// linerSubstance is what a film's liner is weighed as: no film's record says what its
// liner is made of.
const linerSubstance = "paper-liner"

// RollTable is the whole arithmetic of rolls: film left, film and time for jobs, and the
// rollers behind marks.
type RollTable struct {
	Films []FilmRoll
	Jobs  []FilmJob
	Marks []RollerMark
}

// Rolls computes the whole table.
func (t *Tables) Rolls() (RollTable, error) {
	var r RollTable
	var err error
	if r.Films, err = t.FilmRolls(); err != nil {
		return r, err
	}
	if r.Jobs, err = t.FilmJobs(); err != nil {
		return r, err
	}
	r.Marks, err = t.RollerMarks()
	return r, err
}

// FilmRoll is a film as it comes on a roll, and what is left of it by the diameter.
type FilmRoll struct {
	Film string // id
	// Known is false where the record has no core; Reason says so.
	Known  bool
	Reason string
	Wound  roll.Wound
	// Full is the diameter of a new roll of Length; 0 where its length is not stated.
	Full   quantity.Length
	Length quantity.Length
	// Mass is that of a new roll without its core.
	Mass    quantity.Mass
	Left    []FilmLeft // at each of RollDiameters between core and full roll
	Working Working
}

// FilmLeft is what is on a roll of one diameter.
type FilmLeft struct {
	Outer  quantity.Length
	Length quantity.Length
	Wraps  float64
	// Low and High are the length over the spread of the film's thickness.
	Low, High quantity.Length
}

// FilmRolls computes what is left on a roll of each film.
func (t *Tables) FilmRolls() ([]FilmRoll, error) {
	var list []FilmRoll
	for _, f := range t.shop.Films {
		r, err := t.FilmRoll(f.ID)
		if err != nil {
			return nil, err
		}
		list = append(list, r)
	}
	return list, nil
}

// FilmRoll computes one film's.
func (t *Tables) FilmRoll(film string) (FilmRoll, error) {
	f := t.shop.Film(film)
	if f == nil {
		return FilmRoll{}, t.unknown("films", film)
	}
	r := FilmRoll{Film: f.ID}
	if !f.Core.Set {
		r.Reason = "The record of " + f.Name + " has no core: measure across the outside of one."
		r.Working.Notes = []string{r.Reason}
		return r, nil
	}
	r.Known = true
	thin, best, thick := wound(f)
	r.Wound = roll.Wound{Core: f.Core.Best, Thickness: best}
	full := RollDiameters[len(RollDiameters)-1]
	var err error
	if f.RollLength.Set {
		r.Length = f.RollLength.Best
		if r.Full, err = r.Wound.Outer(r.Length); err != nil {
			return r, err
		}
		if r.Mass, err = t.rollMass(f); err != nil {
			return r, err
		}
		full = r.Full
	}
	for _, outer := range RollDiameters {
		if outer <= f.Core.Best || outer > full {
			continue
		}
		left := FilmLeft{Outer: outer}
		if left.Wraps, err = r.Wound.Wraps(outer); err != nil {
			return r, err
		}
		// Thicker film is less film in the same roll.
		for _, of := range []struct {
			thickness quantity.Length
			length    *quantity.Length
		}{{best, &left.Length}, {thick, &left.Low}, {thin, &left.High}} {
			if *of.length, err = (roll.Wound{Core: f.Core.Best, Thickness: of.thickness}).Length(outer); err != nil {
				return r, err
			}
		}
		r.Left = append(r.Left, left)
	}
	r.Working = t.rollWorking(f, r)
	return r, nil
}

// wound is the thickness of all that is wound, with its spread.
func wound(f *shop.Film) (low, best, high quantity.Length) {
	for _, v := range []shop.Value[quantity.Length]{f.BaseThickness, f.AdhesiveThickness, f.LinerThickness} {
		if v.Set {
			low, best, high = low+v.Low, best+v.Best, high+v.High
		}
	}
	return low, best, high
}

// rollMass weighs a new roll.
func (t *Tables) rollMass(f *shop.Film) (quantity.Mass, error) {
	layers := []roll.Layer{{Thickness: f.BaseThickness.Best, Density: t.shop.Substance(f.Base.ID).Density.Best},
		{Thickness: f.AdhesiveThickness.Best, Density: t.shop.Substance(f.Adhesive.ID).Density.Best}}
	if f.LinerThickness.Set {
		liner := t.shop.Substance(linerSubstance)
		if liner == nil {
			return 0, nil // not known, and not guessed
		}
		layers = append(layers, roll.Layer{Thickness: f.LinerThickness.Best, Density: liner.Density.Best})
	}
	return roll.Mass(f.Width.Best, f.RollLength.Best, layers)
}

func (t *Tables) rollWorking(f *shop.Film, r FilmRoll) Working {
	w := Working{Steps: []Step{
		stated("", "base", f.BaseThickness, "m"),
		stated("", "adhesive", f.AdhesiveThickness, "m"),
	}}
	if f.LinerThickness.Set {
		w.Steps = append(w.Steps, stated("", "liner", f.LinerThickness, "m"))
	}
	w.Steps = append(w.Steps, step("t", "all that is wound", r.Wound.Thickness, "m", ""), stated("d", "core, across its outside", f.Core, "m"))
	if r.Full > 0 {
		w.Steps = append(w.Steps, stated("L", "a new roll", f.RollLength, "m"), step("D", "diameter of a new roll: √(d² + 4·t·L/π)", r.Full, "m", ""))
	}
	if r.Mass > 0 {
		w.Steps = append(w.Steps, step("m", "a new roll without its core", r.Mass, "kg", ""))
	}
	for _, left := range r.Left {
		w.Steps = append(w.Steps, step("L", "left at "+quantity.Both(left.Outer)+" across", left.Length, "m", ""))
	}
	w.Notes = []string{"By hand: L = π·(D² − d²)/(4·t), all in metres. Air wound in makes a roll hold less: measure across a new roll once, and take t = π·(D² − d²)/(4·L) from it."}
	return w
}

// RollerMark is a roller of a machine and how far apart its marks lie.
type RollerMark struct {
	Laminator string // id
	Roller    string // what it is
	Diameter  quantity.Length
	Repeat    quantity.Length
	// Least and Most are the repeats that may be its: two per cent either way.
	Least, Most quantity.Length
	// Alike are the machine's other rollers whose marks lie within the same two per cent.
	Alike   []string
	Working Working
}

// RollerMarks computes the marks of every machine's rollers, the nearest first.
func (t *Tables) RollerMarks() ([]RollerMark, error) {
	var list []RollerMark
	for _, m := range t.shop.Laminators {
		rollers := rollersOf(m)
		var marks []RollerMark
		for i, r := range rollers {
			mark := RollerMark{Laminator: m.ID, Roller: r.Name, Diameter: r.Diameter}
			var err error
			if mark.Repeat, err = roll.Repeat(r.Diameter); err != nil {
				return nil, fmt.Errorf("%s: %w", m.ID, err)
			}
			mark.Least, mark.Most = mark.Repeat*(1-quantity.Length(roll.Tolerance)), mark.Repeat*(1+quantity.Length(roll.Tolerance))
			found, err := roll.Find(mark.Repeat, rollers, roll.Tolerance)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", m.ID, err)
			}
			for _, f := range found {
				if f.Name != rollers[i].Name {
					mark.Alike = append(mark.Alike, f.Name)
				}
			}
			mark.Working.Steps = []Step{
				step("D", "diameter", mark.Diameter, "m", m.Diameter.Source),
				step("s", "a mark comes again after π·D", mark.Repeat, "m", ""),
				step("", "film stretches, and a web has thickness: from", mark.Least, "m", ""),
				step("", "to", mark.Most, "m", ""),
			}
			mark.Working.Notes = []string{"A distance that grows or shrinks along the run comes from a roll that is wound or unwound, not from a roller."}
			marks = append(marks, mark)
		}
		slices.SortStableFunc(marks, func(a, b RollerMark) int { return cmp.Compare(a.Repeat, b.Repeat) })
		list = append(list, marks...)
	}
	return list, nil
}

// rollersOf are a machine's rollers: the laminating ones and the others of its record.
func rollersOf(m *shop.Laminator) []roll.Roller {
	list := []roll.Roller{{Name: "laminating rollers", Diameter: m.Diameter.Best}}
	if m.Class == "sheet-fed" {
		list[0].Name = "drum"
	}
	for _, r := range m.Rollers {
		list = append(list, roll.Roller{Name: r.Name, Diameter: r.Diameter.Best})
	}
	return list
}
