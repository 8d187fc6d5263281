package tables

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"laydown/gen/quantity"
	"laydown/gen/roll"
)

// mostPieces is how many pieces a job may have.
const mostPieces = 1_000_000

// parsePieces reads how many good pieces a job is to give; empty is one.
func parsePieces(text string) (int, error) {
	text = strings.TrimSpace(text)
	if text == "" {
		return 1, nil
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 || n > mostPieces {
		return 0, fmt.Errorf("%q is not a number of pieces: write a whole number from 1 to a million", text)
	}
	return n, nil
}

// promise adds when the job can be handed over: when the last piece is dry, then the
// time at the machine, the film's rest, and the trimming after it. Where that cannot be
// told it says why.
func (t *Tables) promise(p *Plan, r request) error {
	if why := t.noPromise(p, r); why != "" {
		p.HandOverReason = why
		return nil
	}
	at, err := t.machineTime(r)
	if err != nil {
		return err
	}
	done, err := roll.HandOver([]roll.Step{{Name: "trim", Rest: r.film.Rest.Best, Work: at.trim}})
	if err != nil {
		return err
	}
	total := p.remaining + at.whole() + done[0].Ends
	p.HandOverHours = hours(total)
	if r.clocked {
		by := r.now.Add(time.Duration(math.Ceil(total.Minutes()-1e-6)) * time.Minute).Format(clockLayout)
		p.HandOverBy = &by
	}
	p.HandOver = at.words(r)
	w := t.shop.Front.Work
	p.HandOverWorking = Working{Steps: []Step{
		step("", "until it is dry", p.remaining, "s", ""),
		stated("", "set-up", w.SetUp, "s"),
		step("", "warm-up of a cold machine", at.warmUp, "s", r.machine.WarmUp.Source),
		ratio("", "prints to run for the good ones", float64(at.run)),
		step("", "running", at.running, "s", ""),
		step("", "feeding", at.feeding, "s", w.Feeding.Source),
		stated("", "rest before it is cut or mounted", r.film.Rest, "s"),
		step("", "trimming", at.trim, "s", w.Trim.Source),
		step("", "in all, from now", total, "s", ""),
	}}
	return nil
}

// noPromise says why no hand-over can be told; empty where one can.
func (t *Tables) noPromise(p *Plan, r request) string {
	switch {
	case p.Verdict == Change || p.Verdict == Refuse:
		return phrases["no-hand-over"]
	case r.unknown:
		return phrases["hand-over-unknown"]
	case p.WaitHours == nil:
		return phrases["hand-over-hardly"]
	case t.shop.Front.Work == nil:
		return phrases["hand-over-work"]
	case !r.film.Rest.Set:
		return fill(phrases["hand-over-rest"], "film", r.film.Name)
	}
	return ""
}

// atMachine is the time that a job takes in the room with the laminator.
type atMachine struct {
	setUp, warmUp, running, feeding, trim quantity.Time
	run                                   int
}

// whole is the time until the last piece has left the nip.
func (a atMachine) whole() quantity.Time { return a.setUp + a.warmUp + a.running + a.feeding }

// machineTime works a job out, one piece abreast. A roll of unknown length gives no
// running time.
func (t *Tables) machineTime(r request) (atMachine, error) {
	w := t.shop.Front.Work
	piece := roll.Piece{Across: r.sheet.Across, Along: r.sheet.Along}
	if r.sheet.Roll {
		piece.Along = quantity.Metre // left out again below
	}
	job := jobOf(r.film, r.machine, w, piece, r.pieces)
	job.Abreast, job.Width = 1, piece.Across+2*job.Border
	job.OnRoll, job.Roll = 0, 0
	if r.speed != 0 {
		job.Speed = r.speed
	}
	need, err := job.Need()
	if err != nil {
		return atMachine{}, err
	}
	run := quantity.Time(need.Run)
	at := atMachine{setUp: w.SetUp.Best, warmUp: warmUp(r.film, r.machine), running: need.Running, feeding: run * w.Feeding.Best, trim: run * w.Trim.Best, run: need.Run}
	if r.sheet.Roll {
		at.running = 0
	}
	return at, nil
}

// words say how the hand-over was counted.
func (a atMachine) words(r request) string {
	name := "hand-over"
	if r.sheet.Roll {
		name = "hand-over-roll"
	}
	pieces := "1 piece"
	if r.pieces > 1 {
		pieces = fmt.Sprintf("%d pieces", r.pieces)
	}
	parts := "set-up-cold"
	if a.warmUp > 0 {
		parts = "set-up-hot"
	}
	return fill(phrases[name], "pieces", pieces, "machine", duration(a.whole()),
		"parts", fill(phrases[parts], "set-up", duration(a.setUp), "warm-up", duration(a.warmUp)), "rest", duration(r.film.Rest.Best), "trim", duration(a.trim))
}
