package tables

import (
	"fmt"
	"math"

	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// Line is one thing that a plan says under a name.
type Line struct {
	Name string `json:"name"`
	Text string `json:"text"`
}

// laminateTexts are what a plan says of a film on a medium in a machine, at its usual
// speed in the shop's usual room: where a test strip begins and what comes after the nip.
// The page holds them ready, so that it says the same as the terminal.
type laminateTexts struct {
	Start   string `json:"start,omitempty"`
	Cooling string `json:"cooling,omitempty"`
	// Curl by the way that the grain is fed: across, along, unknown; "" where the medium
	// has none.
	Curl map[string]string `json:"curl,omitempty"`
	// Silvering by ink.
	Silvering map[string]string `json:"silvering,omitempty"`
	// WetOut by ink and Grain by the way it is fed are evidence about faults.
	WetOut map[string]float64 `json:"wet_out,omitempty"`
	Grain  map[string]float64 `json:"grain,omitempty"`
}

// The names of the lines.
const (
	lineStart     = "start a test strip"
	lineSilvering = "silvering"
	lineCooling   = "cooling"
	lineCurl      = "curl"
)

// lines chooses what belongs to a job.
func (l laminateTexts) lines(ink, grain string) []Line {
	var list []Line
	for _, line := range []Line{{lineStart, l.Start}, {lineSilvering, l.Silvering[ink]}, {lineCooling, l.Cooling}, {lineCurl, l.Curl[grain]}} {
		if line.Text != "" {
			list = append(list, line)
		}
	}
	return list
}

// fedGrain is the way that the grain lies once the advice has been followed.
func fedGrain(medium *shop.Medium, advice string) string {
	switch {
	case !medium.HasGrain:
		return ""
	case advice == AsItLies || advice == TurnIt:
		return GrainAcross
	case advice == CannotTurn || advice == TooWide:
		return GrainAlong
	}
	return "unknown"
}

// judgeLaminate adds what comes with the nip and after it.
func (t *Tables) judgeLaminate(p *Plan, r request) (laminateTexts, error) {
	texts, err := t.laminateTexts(nip.NewSolver(), pairing{r.film, r.medium, r.machine, r.machine.Usual.Best})
	if err != nil {
		return texts, err
	}
	p.Laminate = texts.lines(r.ink.ID, fedGrain(r.medium, p.Feed.Advice))
	return texts, nil
}

// laminateTexts computes the texts of one pairing.
func (t *Tables) laminateTexts(solver *nip.Solver, p pairing) (laminateTexts, error) {
	l := laminateTexts{Curl: map[string]string{}, Silvering: map[string]string{}, WetOut: map[string]float64{}, Grain: map[string]float64{}}
	c := LaminateCase{p.film.ID, p.medium.ID, p.machine.ID, t.shop.Front.Room.ID}
	hot := p.film.Class != "cold"
	if s, ok := t.Start(c.Film, c.Laminator); ok {
		l.Start = startText(s)
	}
	if hot && knowsHeat(p.medium) && t.knowsSetting(p.film) {
		v, err := t.coolingOf(solver, c)
		if err != nil {
			return l, err
		}
		l.Cooling = coolingText(v)
	}
	if t.bends(p.film, p.medium) {
		var list []CurlValue
		for _, grain := range Grains(p.medium) {
			v, err := t.curlOf(solver, c, grain)
			if err != nil {
				return l, err
			}
			list = append(list, v)
		}
		l.addCurls(list)
	}
	if p.medium.HasGrain && t.bends(p.film, p.medium) {
		v, err := t.grainOf(solver, c)
		if err != nil {
			return l, err
		}
		l.Grain[GrainAcross], l.Grain[GrainAlong] = rounded(grainFactor(v.Across, v.Along), 2), rounded(grainFactor(v.Along, v.Across), 2)
	}
	if t.knowsBond(p) && (!hot || knowsHeat(p.medium)) {
		room := t.shop.Room(c.Room)
		through, err := t.bondLine(solver, p, room)
		if err != nil {
			return l, err
		}
		for _, ink := range t.bondedInks(p) {
			v, err := t.bondOf(BondCase{ink.ID, c}, p, ink, through)
			if err != nil {
				return l, err
			}
			l.Silvering[ink.ID] = silveringText(v)
			l.WetOut[ink.ID] = wetOutFactor(v.Class)
		}
	}
	return l, nil
}

func startText(s StartSettings) string {
	return fill(phrases["start"], "tension", quantity.Both(s.Tension), "load", quantity.Both(s.Load), "pressure", quantity.Both(s.Mean))
}

func coolingText(v CoolingValue) string {
	rack := v.Ways[0]
	return fill(phrases["cooling"], "carry", afterNip(rack.Carry), "trim", afterNip(rack.Trim), "stack", afterNip(rack.Stack))
}

func afterNip(c Cooled) string {
	if !c.Comes {
		return "more than an hour"
	}
	return fmt.Sprintf("%.0f\u00a0s", math.Ceil(float64(c.Time)))
}

// addCurls adds how a laminate lies, for each way of its grain.
func (l laminateTexts) addCurls(list []CurlValue) {
	say := func(v CurlValue) string { return v.Fresh.Words() }
	for _, v := range list {
		if v.Balanced {
			l.Curl[v.Grain], l.Curl["unknown"] = phrases["balanced"], phrases["balanced"]
			continue
		}
		l.Curl[v.Grain] = fill(phrases["curl"], "bend", say(v))
	}
	if len(list) == 2 && !list[0].Balanced {
		l.Curl["unknown"] = fill(phrases["curl-unknown"], "across", say(list[0]), "along", say(list[1]))
	}
}

func silveringText(v BondValue) string {
	text := v.Class
	if !v.Certain {
		text = fill(phrases["silvering-spread"], "best", v.Class, "easy", v.Easy, "hard", v.Hard)
	}
	return text + "."
}

// laminateShard is what the plan page says of the laminates of one medium.
type laminateShard struct {
	Medium string                   `json:"medium"`
	Texts  map[string]laminateTexts `json:"texts"` // by film/machine
}

// laminateShards computes them all.
func (t *Tables) laminateShards() ([]laminateShard, error) {
	var all []pairing
	for _, film := range t.shop.Films {
		for _, medium := range t.shop.Media {
			for _, machine := range t.shop.Laminators {
				if len(fits(film, medium, machine)) == 0 {
					all = append(all, pairing{film, medium, machine, machine.Usual.Best})
				}
			}
		}
	}
	texts, err := eachOf(len(all), func(solver *nip.Solver, i int) (laminateTexts, error) {
		return t.laminateTexts(solver, all[i])
	})
	if err != nil {
		return nil, err
	}
	shards := make([]laminateShard, len(t.shop.Media))
	for k, medium := range t.shop.Media {
		shards[k] = laminateShard{medium.ID, map[string]laminateTexts{}}
		for i, p := range all {
			if p.medium == medium {
				shards[k].Texts[p.film.ID+"/"+p.machine.ID] = texts[i]
			}
		}
	}
	return shards, nil
}
