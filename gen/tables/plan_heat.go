package tables

import (
	"laydown/gen/nip"
	"laydown/gen/quantity"
	"laydown/gen/shop"
)

// heatCase is the window's case of a job: its speed or the machine's usual, its
// room, and the humidity of the stack where that was measured.
func (r request) heatCase(film *shop.Film) (WindowCase, pairing) {
	speed := r.speed
	if speed == 0 || speed < r.machine.Slowest.Best || speed > r.machine.Fastest.Best {
		speed = r.machine.Usual.Best // one that it cannot run is a misfit of its own
	}
	humidity := r.room.Humidity.Best
	if r.stackKnown {
		humidity = takenUp(r.stackRH)
	}
	return WindowCase{film.ID, r.medium.ID, r.machine.ID, speed, r.room.Temperature.Best, humidity},
		pairing{film, r.medium, r.machine, speed}
}

// judgeHeat adds the temperature window of a hot film, or what there is instead.
func (t *Tables) judgeHeat(p *Plan, r request, misfit bool) error {
	switch {
	case r.film.Class == "cold":
		p.WindowReason = phrases["cold"]
		return nil
	case misfit:
		p.WindowReason = phrases["window-misfit"]
		return nil
	}
	if !knowsHeat(r.medium) {
		p.WindowReason = fill(phrases["heat-unknown"], "medium", r.medium.Name)
		return nil
	}
	c, pair := r.heatCase(r.film)
	v, err := t.Window(c)
	if err != nil {
		return err
	}
	if p.HeatWorking, err = t.windowWorking(pair, v); err != nil {
		return err
	}
	if !v.Open() {
		p.WindowReason = v.Reason
		p.because(Reason{Verdict: Change, Text: v.Reason})
		for _, way := range v.Opens {
			p.because(Reason{Verdict: Change, Text: way})
		}
		return nil
	}
	p.Window = windowOf(v)
	if p.Window.Low == nil {
		p.because(Reason{Verdict: Go, Text: fill(phrases["start-and-run"], "first", between(v.First), "steady", between(v.Steady))})
	}
	return nil
}

// windowOf writes a window in whole degrees.
func windowOf(v WindowValue) *Window {
	w := &Window{First: spanOf(v.First), Steady: spanOf(v.Steady),
		LowLimit: v.SteadyBounds[0].Limit, HighLimit: tightest(v.FirstBounds).Limit}
	if v.Whole.Open() {
		s := spanOf(v.Whole)
		w.Low, w.High = &s.Low, &s.High
	}
	return w
}

func spanOf(r Range) Span { return Span{celsius(up(r.Low)), celsius(down(r.High))} }

// between writes a range in whole degrees of both scales.
func between(r Range) string {
	return degrees(celsius(up(r.Low))) + " to " + degrees(celsius(down(r.High)))
}

// hasWindow reports whether a hot film has a window in the job's machine and
// air; a cold one needs none.
func (t *Tables) hasWindow(film *shop.Film, r request) (bool, error) {
	if film.Class == "cold" {
		return true, nil
	}
	if !knowsHeat(r.medium) {
		return false, nil
	}
	c, p := r.heatCase(film)
	response := new(nip.Response)
	if err := t.solve(nip.NewSolver(), p, response); err != nil {
		return false, err
	}
	v, err := t.judge(c, p, response)
	return v.Open(), err
}

func celsius(t quantity.Temperature) float64 { return rounded(t.Celsius(), 0) }
