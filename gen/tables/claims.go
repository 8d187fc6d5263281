package tables

import (
	"fmt"
	"math"

	"laydown/gen/curl"
	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// ClaimPrint is a fact of the trade about a laminate beside what came out. A miss stays.
type ClaimPrint struct {
	ID, Name string
	Expected string
	Source   string // why that is expected
	Got      string
	Hit      bool
}

// measures compute what a claim is about, and say it in words.
var measures = map[string]struct {
	of   func(t *Tables, c *shop.ClaimCase) (float64, error)
	what string
	told func(x float64) string
}{
	"ridges":    {(*Tables).ridges, "a greatest risk of ridges", func(x float64) string { return fmt.Sprintf("%.2g", x) }},
	"curl":      {(*Tables).curls, "a curvature", perMetre},
	"room-curl": {(*Tables).roomCurl, "a change of curvature with the room", perMetre},
	"turn":      {(*Tables).turn, "a turn towards the film", perMetre},
	"swelling":  {(*Tables).swellingRatio, "growth across the grain over growth along it", func(x float64) string { return fmt.Sprintf("%.1f times", x) }},
	"recovery":  {(*Tables).recovery, "a time under film until the carrier is down to its limit", recoveryDays},
}

func perMetre(x float64) string { return fmt.Sprintf("%.2g per metre", x) }

func recoveryDays(x float64) string {
	if math.IsInf(x, 1) {
		return "more than a year"
	}
	return fmt.Sprintf("%.2g days", x)
}

// ClaimPrints computes every claim in the shop's data.
func (t *Tables) ClaimPrints() ([]ClaimPrint, error) {
	var list []ClaimPrint
	for _, c := range t.shop.Claims {
		p, err := t.claimPrint(c)
		if err != nil {
			return nil, fmt.Errorf("claim %s: %w", c.ID, err)
		}
		list = append(list, p)
	}
	return list, nil
}

func (t *Tables) claimPrint(c *shop.Claim) (ClaimPrint, error) {
	p := ClaimPrint{ID: c.ID, Name: c.Name, Source: c.Basis}
	m, ok := measures[c.Measure]
	if !ok {
		return p, fmt.Errorf("nothing computes %q", c.Measure)
	}
	got, err := m.of(t, c.Case)
	if err != nil {
		return p, err
	}
	than := c.Amount
	p.Expected = m.what + " of " + c.Is + " than " + m.told(than)
	p.Got = m.told(got)
	if c.Other != nil {
		other, err := m.of(t, c.Other)
		if err != nil {
			return p, err
		}
		than = other
		p.Expected = m.what + " that is " + c.Is + " than the other case's"
		if c.Factor != 0 {
			than *= c.Factor
			p.Expected = fmt.Sprintf("%s that is %s than %g times the other case's", m.what, c.Is, c.Factor)
		}
		p.Got += " against " + m.told(other)
	}
	p.Hit = got > than
	if c.Is == "less" {
		p.Hit = got < than
	}
	return p, nil
}

// claimed joins the laminate of a claim's case. The film lies on one side, whatever the
// machine does to the other: what is asked of is the film.
func (t *Tables) claimed(c *shop.ClaimCase) (*bare, error) {
	machine := t.shop.Laminator(c.Laminator.ID)
	p := pairing{t.shop.Film(c.Film.ID), t.shop.Medium(c.Medium.ID), machine, machine.Usual.Best}
	return t.laminate(nip.NewSolver(), p, c.Grain, referenceRoom, c.Humidity.Best)
}

func (t *Tables) ridges(c *shop.ClaimCase) (float64, error) {
	b, err := t.claimed(c)
	if err != nil {
		return 0, err
	}
	lines, err := t.lines(b)
	return float64(greatest(lines).Risk), err
}

// greatest is the line of the greatest risk.
func greatest(lines []curl.Line) curl.Line {
	var most curl.Line
	for _, l := range lines {
		if l.Risk > most.Risk {
			most = l
		}
	}
	return most
}

func (t *Tables) curls(c *shop.ClaimCase) (float64, error) {
	x, err := t.curvature(c, c.Humidity.Best)
	return math.Abs(x), err
}

func (t *Tables) roomCurl(c *shop.ClaimCase) (float64, error) {
	x, err := t.turn(c)
	return math.Abs(x), err
}

// turn is how far the curvature goes towards the film from one room to the other.
func (t *Tables) turn(c *shop.ClaimCase) (float64, error) {
	before, err := t.curvature(c, c.Humidity.Best)
	if err != nil {
		return 0, err
	}
	after, err := t.curvature(c, c.Then.Best)
	return after - before, err
}

func (t *Tables) curvature(c *shop.ClaimCase, humidity quantity.Fraction) (float64, error) {
	b, err := t.claimed(c)
	if err != nil {
		return 0, err
	}
	now, err := b.curlIn(humidity)
	if err != nil {
		return 0, err
	}
	return towardsFilm(now), nil
}

// swellingRatio is how much an unlaminated sheet grows across its grain over along it.
func (t *Tables) swellingRatio(c *shop.ClaimCase) (float64, error) {
	b := &bare{pairing: pairing{medium: t.shop.Medium(c.Medium.ID)}, grain: GrainAlong, room: referenceRoom, humidity: c.Humidity.Best}
	if err := t.water(b); err != nil {
		return 0, err
	}
	if b.sheet == nil {
		return 0, fmt.Errorf("%s holds no water", b.medium.ID)
	}
	then, err := b.sheet.Moisture(c.Then.Best, b.room)
	if err != nil {
		return 0, err
	}
	sheet := curl.Laminate{Layers: []curl.Layer{b.mediumLayer()}, Set: []curl.State{{Temperature: b.room, Moisture: b.kept}}}
	free, err := sheet.Curl([]curl.State{{Temperature: b.room, Moisture: then}})
	if err != nil {
		return 0, err
	}
	return free.Free[0][1] / free.Free[0][0], nil
}
