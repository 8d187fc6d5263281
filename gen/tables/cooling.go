package tables

import (
	"fmt"
	"math"
	"slices"

	"laydown/gen/cooling"
	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// The ways in which a laminate cools that the handbook tells.
const (
	OnRack    = "rack"  // lies on a rack in still air
	UnderFan  = "fan"   // air is blown along it
	OverChill = "chill" // runs over a chill roller first, then lies on a rack
)

// CoolingWays are the ways in the order of the table.
var CoolingWays = []string{OnRack, UnderFan, OverChill}

// What the ways are taken to be. Assumptions of this handbook, no source: half a metre
// of free web from the nip to where a sheet is cut off or caught; a sheet of 320 by
// 450 mm on its rack (area over perimeter 93 mm); a fan's stream of 3 m/s along the
// sheet; 300 mm of contact with a chill roller of 15 °C.
const (
	freeWeb                               = 0.5 * quantity.Metre
	rackLength                            = 93 * quantity.Millimetre
	fanLength                             = 450 * quantity.Millimetre
	fanSpeed         quantity.Speed       = 3
	chillLength                           = 300 * quantity.Millimetre
	chillTemperature quantity.Temperature = 15 + 273.15
	restTime                              = quantity.Hour
)

// stackAbove is how far above the room a laminate may be stacked: published trade advice
// against blocking. trimBelow is how far below its setting temperature an adhesive is cut
// without creep (common practice, no source).
const (
	stackAbove quantity.TemperatureDifference = 5
	trimBelow  quantity.TemperatureDifference = 5
)

// CoolingValue says when a laminate may be carried, trimmed and stacked.
type CoolingValue struct {
	LaminateCase
	Set    quantity.Temperature // of the roller
	Window bool                 // whether that setting lies in a window
	Ways   []CoolingWay         // as in CoolingWays
	// Widest is how far the layers' mean temperatures lie apart at most, and Meets from
	// when they are within 1 K of each other: on the rack.
	Widest quantity.TemperatureDifference
	Meets  quantity.Time
}

// CoolingWay is one way of cooling with its times from the nip.
type CoolingWay struct {
	Way                string
	Carry, Trim, Stack Cooled
}

// Cooled is when a laminate has cooled enough, counted from the nip; it Comes within an
// hour of rest or not at all.
type Cooled struct {
	Time  quantity.Time
	Comes bool
}

func cooled(w cooling.When) Cooled { return Cooled{w.Time, w.Comes} }

// Cooling computes a case.
func (t *Tables) Cooling(c LaminateCase) (CoolingValue, error) {
	return t.coolingOf(nip.NewSolver(), c)
}

func (t *Tables) coolingOf(solver *nip.Solver, c LaminateCase) (CoolingValue, error) {
	return t.cooled.of(c, func() (CoolingValue, error) { return t.newCooling(solver, c) })
}

func (t *Tables) newCooling(solver *nip.Solver, c LaminateCase) (CoolingValue, error) {
	v := CoolingValue{LaminateCase: c}
	l, err := t.leavesNipIn(solver, c)
	if err != nil {
		return v, err
	}
	v.Set, v.Window = l.set, l.open
	for _, way := range CoolingWays {
		run, adhesives, err := t.cool(l, way)
		if err != nil {
			return v, fmt.Errorf("cooling of %s on %s, %s: %w", c.Film, c.Medium, way, err)
		}
		limits, err := t.coolingLimits(l, adhesives)
		if err != nil {
			return v, err
		}
		ready, err := run.Ready(limits)
		if err != nil {
			return v, err
		}
		v.Ways = append(v.Ways, CoolingWay{way, cooled(ready.Touch), cooled(ready.Trim), cooled(ready.Stack)})
		if way == OnRack {
			v.Widest, _ = run.Widest()
			v.Meets, _ = run.Meets(1)
		}
	}
	return v, nil
}

// leavesNipIn finds the state at the end of the nip of a case.
func (t *Tables) leavesNipIn(solver *nip.Solver, c LaminateCase) (laminated, error) {
	return t.nipped.of(c, func() (laminated, error) {
		p, room, err := t.resolveLaminate(c)
		if err != nil {
			return laminated{}, err
		}
		if p.film.Class == "cold" {
			return laminated{}, fmt.Errorf("%s is laid without heat", p.film.Name)
		}
		return t.leavesNip(solver, p, room.Temperature.Best, room.Humidity.Best)
	})
}

// coolingLimits are how cool a laminate must be. What is carried is touched for minutes;
// film is plastic to the hand.
func (t *Tables) coolingLimits(l laminated, adhesives []int) (cooling.Limits, error) {
	touch, err := cooling.BurnThreshold(cooling.Plastic, cooling.CarryContact)
	return cooling.Limits{
		Touch: touch, Stack: l.room.Plus(stackAbove), Set: t.shop.Substance(l.film.Adhesive.ID).Sets.Best, Margin: trimBelow, Adhesives: adhesives,
	}, err
}

// cool takes a laminate from the nip through one of the ways.
func (t *Tables) cool(l laminated, way string) (*cooling.Cooling, []int, error) {
	stages, err := t.coolingStages(l, way)
	if err != nil {
		return nil, nil, err
	}
	layers, adhesives := t.layers(l)
	run, err := cooling.Cool(layers, stages)
	return run, adhesives, err
}

// coolingStages are the stretches after the nip. The conductances of air are those half
// way between the mean of the laminate and the room.
func (t *Tables) coolingStages(l laminated, way string) ([]cooling.Stage, error) {
	mean, err := l.mean()
	if err != nil {
		return nil, err
	}
	surface := l.room.Plus(max(mean.Minus(l.room)/2, 1))
	radiation, err := cooling.Radiation(cooling.Emissivity, surface, l.room)
	if err != nil {
		return nil, err
	}
	in := func(h quantity.Conductance) cooling.Exposure {
		return cooling.Exposure{Conductance: h, Temperature: l.room}
	}
	web := in(t.contact("moving-web", 0))
	stages := []cooling.Stage{{Name: "free web", Time: quantity.Time(float64(freeWeb) / float64(l.speed)), Face: web, Back: web}}
	if way == OverChill {
		stages = append(stages, cooling.Stage{Name: "chill roller", Time: quantity.Time(float64(chillLength) / float64(l.speed)),
			Face: cooling.Exposure{Conductance: t.contact("film-on-roller", 0), Temperature: chillTemperature}, Back: web})
	}
	if way == UnderFan {
		blown, err := cooling.Fan(fanSpeed, fanLength, surface, l.room, t.pressure)
		if err != nil {
			return nil, err
		}
		face := in(cooling.Air(radiation, blown))
		return append(stages, cooling.Stage{Name: "fan", Time: restTime, Face: face, Back: face}), nil
	}
	upper, err := cooling.StillAir(cooling.FacingUp, rackLength, surface, l.room, t.pressure)
	if err != nil {
		return nil, err
	}
	lower, err := cooling.StillAir(cooling.FacingDown, rackLength, surface, l.room, t.pressure)
	if err != nil {
		return nil, err
	}
	return append(stages, cooling.Stage{Name: "rack", Time: restTime, Face: in(cooling.Air(radiation, upper)), Back: in(cooling.Air(radiation, lower))}), nil
}

// Coolings computes the whole table: every hot film on every medium in every machine
// that takes both, at its usual speed, in the shop's usual room.
func (t *Tables) Coolings() ([]CoolingValue, error) {
	pairings := slices.DeleteFunc(t.pairings(), func(p pairing) bool { return !t.knowsSetting(p.film) })
	return eachOf(len(pairings), func(solver *nip.Solver, i int) (CoolingValue, error) {
		p := pairings[i]
		return t.coolingOf(solver, LaminateCase{p.film.ID, p.medium.ID, p.machine.ID, t.shop.Front.Room.ID})
	})
}

// knowsSetting says that the data holds where a hot film's adhesive sets.
func (t *Tables) knowsSetting(film *shop.Film) bool {
	return t.shop.Substance(film.Adhesive.ID).Sets.Set
}

// CoolingWorking is the way to a case's times on the rack.
func (t *Tables) CoolingWorking(v CoolingValue) (Working, error) {
	l, err := t.leavesNipIn(nip.NewSolver(), v.LaminateCase)
	if err != nil {
		return Working{}, err
	}
	layers, adhesives := t.layers(l)
	stages, err := t.coolingStages(l, OnRack)
	if err != nil {
		return Working{}, err
	}
	limits, err := t.coolingLimits(l, adhesives)
	if err != nil {
		return Working{}, err
	}
	mean, err := l.mean()
	if err != nil {
		return Working{}, err
	}
	web, rest := stages[0], stages[len(stages)-1]
	capacity := 0.0
	for _, layer := range layers {
		capacity += layer.HeatCapacity()
	}
	w := Working{Steps: []Step{
		step("T_set", "set temperature: the lowest of the steady run", l.set, "K", ""),
		step("v", "speed", l.speed, "m/s", ""),
		step("T_0", "room", l.room, "K", ""),
		step("T_n", "mean of the print at the end of the nip", mean, "K", ""),
		{Symbol: "C", Text: "heat that a square metre holds for each kelvin", Shown: fmt.Sprintf("%.0f J/(m² K)", capacity), SI: capacity, Unit: "J/(m² K)"},
		step("t_w", "on the free web for", web.Time, "s", ""),
		step("h_w", "each face of the web to the air", web.Face.Conductance, "W/(m² K)", ""),
		step("τ_w", "there its excess over the room falls to 1/e in C/(2·h_w)", cooling.TimeConstant(layers, web.Face.Conductance, web.Back.Conductance), "s", ""),
		step("h_1", "face to the air on the rack, radiation with it", rest.Face.Conductance, "W/(m² K)", ""),
		step("h_2", "back to the air on the rack", rest.Back.Conductance, "W/(m² K)", ""),
		step("τ", "there it falls to 1/e in C/(h_1 + h_2)", cooling.TimeConstant(layers, rest.Face.Conductance, rest.Back.Conductance), "s", ""),
		step("T_c", "carried: burn threshold of plastic for ten minutes (from memory of ISO 13732-1)", limits.Touch, "K", ""),
		stated("T_s", "the adhesive sets", t.shop.Substance(l.film.Adhesive.ID).Sets, "K"),
		step("", "trimmed below its setting by", limits.Margin, "K", ""),
		step("", "stacked at the room and", stackAbove, "K", ""),
		step("", "film and print lie apart by at most", v.Widest, "K", ""),
	}}
	if v.Meets > 0 {
		w.Steps = append(w.Steps, step("", "all layers within 1 K of each other from", v.Meets, "s", ""))
	}
	w.Notes = []string{
		"By hand, once the layers have met: t = τ·ln((T_1 − T_0)/(T − T_0)) from a temperature T_1 to T, with the web's τ_w and then the rack's.",
		"Left out: the heat that the adhesive gives off as it sets, which can hold a thick one near that temperature for some seconds, and the heat that leaving water takes.",
	}
	if !v.Window {
		w.Notes = append(w.Notes, "There is no window here: the setting is what the adhesive would need.")
	}
	return w, nil
}

// CoolingCurve is how the layers of a laminate cool, for a drawing.
type CoolingCurve struct {
	Names  []string // film, adhesive, face of the print, the rest of it
	Times  []quantity.Time
	Layers [][]quantity.Temperature // by layer, then by time
	Carry  quantity.Temperature
	// Said are the sentences that say where the curves part and where they meet.
	Said []string
}

// The drawing of cooling: from a millisecond to the end of ten minutes.
const (
	firstDrawn quantity.Time = 1e-3
	lastDrawn  quantity.Time = 600
	drawnTimes               = 140
)

// CoolingCurve follows a case's layers. Of film on both sides it draws the upper one.
func (t *Tables) CoolingCurve(c LaminateCase, way string) (CoolingCurve, error) {
	l, err := t.leavesNipIn(nip.NewSolver(), c)
	if err != nil {
		return CoolingCurve{}, err
	}
	run, adhesives, err := t.cool(l, way)
	if err != nil {
		return CoolingCurve{}, err
	}
	limits, err := t.coolingLimits(l, adhesives)
	if err != nil {
		return CoolingCurve{}, err
	}
	curve := CoolingCurve{Names: []string{"film", "adhesive", "print’s face", "print"}, Carry: limits.Touch}
	curve.Layers = make([][]quantity.Temperature, len(curve.Names))
	growth := math.Pow(float64(lastDrawn/firstDrawn), 1/float64(drawnTimes-1))
	for i, at := 0, float64(firstDrawn); i < drawnTimes; i, at = i+1, at*growth {
		m, err := run.At(quantity.Time(at))
		if err != nil {
			return CoolingCurve{}, err
		}
		curve.Times = append(curve.Times, quantity.Time(at))
		for k := range curve.Layers {
			curve.Layers[k] = append(curve.Layers[k], m.Layers[k])
		}
	}
	apart, when := run.Widest()
	curve.Said = append(curve.Said, fmt.Sprintf("The layers lie apart by at most %s, %s after the nip.", quantity.Both(apart), milliseconds(when)))
	if meets, ok := run.Meets(1); ok {
		curve.Said = append(curve.Said, fmt.Sprintf("From %s on they are one line, within %s.", milliseconds(meets), quantity.Both(quantity.TemperatureDifference(1))))
	}
	curve.Said = append(curve.Said, "What stays different is where each sets, and how much it shrinks from there.")
	return curve, nil
}

// milliseconds writes a short time.
func milliseconds(t quantity.Time) string {
	if t < 1 {
		return fmt.Sprintf("%.0f ms", 1000*float64(t))
	}
	return fmt.Sprintf("%.1f s", float64(t))
}
