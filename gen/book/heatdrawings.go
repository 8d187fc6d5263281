package book

import (
	"fmt"
	"html/template"
	"math"

	"laydown/gen/book/draw"
	"laydown/gen/quantity"
	"laydown/gen/tables"
)

// hotCase is the case of a pair at a speed in the shop's room.
func (b *builder) hotCase(p hotPair, speed quantity.Speed) tables.WindowCase {
	room := b.shop.Room(b.shop.Front.Room.ID)
	return tables.WindowCase{Film: p.film.ID, Medium: p.medium.ID, Laminator: p.machine.ID, Speed: speed,
		Temperature: room.Temperature.Best, Humidity: room.Humidity.Best}
}

// name tells of a pair as a sentence does.
func (p hotPair) name() string {
	return lowerFirst(p.film.Name) + ", on " + lowerFirst(p.medium.Name) + ", " + lowerFirst(short(p.machine.Name))
}

// fahrenheitTick writes a tick in °C in the other scale.
func fahrenheitTick(celsius float64) string {
	return fmt.Sprintf("%.0f\u00a0°F", fahrenheit(celsius))
}

// celsiusAxis is an axis of temperatures from the twenty below the least to the
// twenty above the greatest of some temperatures.
func celsiusAxis(label string, temperatures ...float64) draw.Axis {
	low, high := math.Inf(1), math.Inf(-1)
	for _, t := range temperatures {
		low, high = math.Min(low, t), math.Max(high, t)
	}
	return draw.Axis{Label: label, From: 20 * math.Floor(low/20), To: 20 * math.Ceil(high/20), Second: fahrenheitTick}
}

// boundNames say what the bond line is judged by.
var boundNames = map[string]string{
	"activation": "adhesive works from",
	"gas":        "steam from",
	"medium":     "medium’s limit",
}

// sameCurve is how near two curves are drawn as one, in kelvin.
const sameCurve = 1

// drawBondLine draws both sides of the bond against time, for a pair at a speed
// and a set temperature.
func (b *builder) drawBondLine(id, title string, c tables.WindowCase, set quantity.Temperature) (template.HTML, error) {
	curve, err := b.answers.BondLine(c, set)
	if err != nil {
		return "", err
	}
	chart := draw.Chart{ID: id, Title: title, X: stretchAxis(curve)}
	end := chart.X.To
	seconds := make([]float64, len(curve.Times))
	for i, t := range curve.Times {
		seconds[i] = float64(t)
	}
	adhesive := draw.Series{Name: "adhesive’s face", Line: 3}
	first, steady := draw.Series{Name: "print, first piece", Line: 1}, draw.Series{Name: "print, steady run", Line: 2}
	apart := 0.0
	all := []float64{c.Temperature.Celsius()}
	for i := range curve.Times {
		f, s := curve.First[i], curve.Steady[i]
		if i <= curve.NipEnd {
			adhesive.X, adhesive.Y = append(adhesive.X, seconds[i]), append(adhesive.Y, f.Adhesive.Celsius())
			all = append(all, f.Adhesive.Celsius())
		}
		if i >= curve.Touch {
			first.X, first.Y = append(first.X, seconds[i]), append(first.Y, f.Print.Celsius())
			steady.X, steady.Y = append(steady.X, seconds[i]), append(steady.Y, s.Print.Celsius())
			apart = math.Max(apart, math.Abs(float64(f.Print-s.Print)))
			all = append(all, f.Print.Celsius(), s.Print.Celsius())
		}
	}
	first, steady = cutAt(first, end), cutAt(steady, end)
	chart.Curves = []draw.Series{first, steady, adhesive}
	if apart < sameCurve {
		first.Name = "print’s face"
		chart.Curves = []draw.Series{first, adhesive}
	}
	for _, bound := range curve.Bounds {
		name, ok := boundNames[bound.Limit]
		if !ok {
			continue
		}
		l := draw.Level{Name: name + " " + quantity.Both(bound.At), At: bound.At.Celsius()}
		if bound.Limit == "gas" {
			l.From = seconds[curve.NipEnd]
		}
		chart.Others = append(chart.Others, l)
		all = append(all, bound.At.Celsius())
	}
	chart.Y = celsiusAxis("bond line, °C with °F under it", all...)
	hot, at := hottest(curve.First[curve.Touch:], curve.Times[curve.Touch:])
	ended := curve.First[curve.NipEnd].Print
	chart.Desc = fmt.Sprintf("Set to %s. The print’s face reaches %s at the end of the nip of the first piece, %s in the steady run. It is hottest in the first piece after %s s, at %s.",
		quantity.Both(set), quantity.Both(ended), quantity.Both(curve.Steady[curve.NipEnd].Print), short3(at), quantity.Both(hot))
	caption := fmt.Sprintf("%s, set to %s, %s. Each stretch of the way has its own scale of time.", title, quantity.Both(set), pace(c.Speed))
	return figure(chart.SVG(), caption, b.part("numbers", bondNumbers(id, title, curve))), nil
}

// hottest is the highest of the print's temperatures and when it is reached.
func hottest(list []tables.BondTemperature, times []quantity.Time) (quantity.Temperature, float64) {
	best := 0
	for i := range list {
		if list[i].Print > list[best].Print {
			best = i
		}
	}
	return list[best].Print, float64(times[best])
}

// stretchAxis gives each stretch of the way its own scale. The last is cut short:
// what happens to the bond happens within a few times the nip's.
func stretchAxis(curve tables.BondCurve) draw.Axis {
	a := draw.Axis{Label: "seconds since film and print touch"}
	for _, s := range curve.Stretches {
		p := draw.Part{Name: s.Name + " " + short2(float64(s.To-s.From)) + "\u00a0s", From: float64(s.From), To: float64(s.To), Share: 0.3, Ticks: 3}
		switch s.Name {
		case "nip":
			p.Share = 0.36
		case "free run":
			nip := float64(curve.Times[curve.NipEnd] - curve.Times[curve.Touch])
			p.To = p.From + math.Min(p.To-p.From, math.Max(1, 3*nip))
			p.Name, p.Share = "free run", 0.34
		}
		a.Parts = append(a.Parts, p)
	}
	sum := 0.0
	for _, p := range a.Parts {
		sum += p.Share
	}
	for i := range a.Parts {
		a.Parts[i].Share /= sum
	}
	a.From, a.To = a.Parts[0].From, a.Parts[len(a.Parts)-1].To
	return a
}

// short2 writes a number to two significant digits.
func short2(v float64) string { return draw.Plain(roundTo(v, 2)) }

func roundTo(v float64, digits int) float64 {
	if v == 0 {
		return 0
	}
	scale := math.Pow(10, float64(digits-1)-math.Floor(math.Log10(math.Abs(v))))
	return math.Round(v*scale) / scale
}

// cutAt ends a series at a place, by a straight line between its points.
func cutAt(s draw.Series, end float64) draw.Series {
	for i := range s.X {
		if s.X[i] < end {
			continue
		}
		y := s.Y[i]
		if i > 0 && s.X[i] > end {
			y = s.Y[i-1] + (s.Y[i]-s.Y[i-1])*(end-s.X[i-1])/(s.X[i]-s.X[i-1])
		}
		return draw.Series{Name: s.Name, X: append(s.X[:i:i], end), Y: append(s.Y[:i:i], y)}
	}
	return s
}

// bondNumbers are both sides of the bond at moments that a person asks for.
func bondNumbers(id, title string, curve tables.BondCurve) numbers {
	n := numbers{ID: id + "-n", Title: title + ", in numbers", Heads: []string{"moment", "adhesive, first piece", "adhesive, steady run", "print, first piece", "print, steady run"}}
	add := func(name string, i int) {
		f, s := curve.First[i], curve.Steady[i]
		n.Rows = append(n.Rows, []string{name, quantity.Both(f.Adhesive), quantity.Both(s.Adhesive), quantity.Both(f.Print), quantity.Both(s.Print)})
	}
	if curve.Touch > 0 {
		add("film meets the roller", 0)
	}
	add("film and print touch", curve.Touch)
	add("middle of the nip", nearest(curve, curve.Times[curve.NipEnd]/2))
	add("end of the nip", curve.NipEnd)
	for _, after := range []float64{0.1, 0.3, 1, 3} {
		add(short2(after)+" s after the nip", nearest(curve, curve.Times[curve.NipEnd]+quantity.Time(after)))
	}
	return n
}

// nearest is the record nearest to a time.
func nearest(curve tables.BondCurve, t quantity.Time) int {
	best := 0
	for i := range curve.Times {
		if math.Abs(float64(curve.Times[i]-t)) < math.Abs(float64(curve.Times[best]-t)) {
			best = i
		}
	}
	return best
}
