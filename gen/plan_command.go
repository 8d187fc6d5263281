package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"strings"

	"laydown/gen/tables"
)

// jobFlags are the flags that describe a job.
func jobFlags(f *flag.FlagSet, job *tables.Job) {
	f.StringVar(&job.Ink, "ink", "", "the ink's `id`")
	f.StringVar(&job.Medium, "medium", "", "the medium's `id`")
	f.StringVar(&job.Film, "film", "", "the film's `id`")
	f.StringVar(&job.Coverage, "coverage", "", "light, normal or heavy")
	f.StringVar(&job.Storage, "storage", "", "how it waits: a storage's `id`")
	f.StringVar(&job.History, "history", "", "how it was kept since printing: \"6 h hung, 14 h tight-roll\"")
	f.StringVar(&job.Printed, "printed", "", "when it was printed, such as 2026-11-24T15:40, or unknown")
	f.StringVar(&job.Now, "now", "", "the shop's clock, such as 2026-11-25T09:00 (the clock of this machine)")
	f.StringVar(&job.Room, "room", "", "where it waits: a room's `id`")
	f.StringVar(&job.Laminator, "laminator", "", "the laminator's `id`")
	f.StringVar(&job.Speed, "speed", "", "the speed, such as \"1.5 m/min\"")
	f.StringVar(&job.Grain, "grain", "", "long, short or unknown")
	f.StringVar(&job.Sheet, "sheet", "", "the side along the roller, then the side along the feed: 320x450mm; or roll")
	f.StringVar(&job.Back, "back", "", "open, film or mounted")
	f.StringVar(&job.StackRH, "stack-rh", "", "the humidity measured in the stack, such as 55%")
	f.StringVar(&job.Pieces, "pieces", "", "how many good pieces (1)")
}

// setClock takes the time now where the job does not say it.
func (c command) setClock(job *tables.Job) {
	if job.Now == "" {
		job.Now = c.now().Format("2006-01-02T15:04")
	}
}

// plan answers one job.
func (c command) plan(args []string) int {
	f := c.flags("plan")
	var job tables.Job
	jobFlags(f, &job)
	dir := f.String("shop", "", "the shop's folder")
	format := f.String("format", "text", "text or json")
	if status, ok := c.parse(f, args); !ok {
		return status
	}
	write, ok := map[string]func(io.Writer, *tables.Tables, tables.Plan) error{"text": writePlan, "json": writePlanJSON}[*format]
	if !ok {
		return c.wrong("plan", fmt.Errorf("no format is called %q: text or json", *format))
	}
	c.setClock(&job)
	src, err := open(*dir)
	if err != nil {
		return c.wrong("plan", err)
	}
	t, status := c.tables("plan", src)
	if status != done {
		return status
	}
	p, err := t.Plan(job)
	if err != nil {
		return c.wrong("plan", err)
	}
	if err := write(c.out, t, p); err != nil {
		fmt.Fprintf(c.errs, "laydown plan: %v\n", err)
		return problems
	}
	return done
}

func writePlanJSON(w io.Writer, _ *tables.Tables, p tables.Plan) error {
	out := json.NewEncoder(w)
	out.SetEscapeHTML(false)
	out.SetIndent("", "  ")
	return out.Encode(p)
}

// writePlan writes a plan for a terminal: the verdict first, then what to do,
// then the working.
func writePlan(w io.Writer, t *tables.Tables, p tables.Plan) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s\n", strings.ToUpper(string(p.Verdict)))
	for _, r := range p.Reasons {
		word := string(r.Verdict)
		if r.Test {
			word = "test"
		}
		fmt.Fprintf(&b, "  %-8s%s\n", word, r.Text)
	}
	b.WriteString("\n")
	line := func(name, text string) {
		if text != "" {
			fmt.Fprintf(&b, "%-20s%s\n", name, text)
		}
	}
	if p.ReadyBy != nil {
		line("ready by", strings.Replace(*p.ReadyBy, "T", " ", 1))
	}
	if p.HandOverBy != nil {
		line("hand over by", strings.Replace(*p.HandOverBy, "T", " ", 1))
	}
	line("hand-over", p.HandOver+p.HandOverReason)
	if p.WaitHours != nil {
		line("wait", fmt.Sprintf("%g h from printing", *p.WaitHours))
	}
	if p.RemainingHours != nil {
		line("still to go", fmt.Sprintf("%.3g h", *p.RemainingHours))
	}
	line("maker says", fmt.Sprintf("%g h", p.MakerWaitHours))
	line("window", windowLine(p))
	line("feed", p.Feed.Advice+". "+p.Feed.Why)
	for _, l := range p.Laminate {
		line(l.Name, l.Text)
	}
	for _, f := range p.Faults {
		line("watch for", fmt.Sprintf("%s (%.3g times as likely as in any job)", f.Text, f.Factor))
	}
	line("tests", strings.Join(p.Tests, ", "))
	for i, text := range p.Cautions {
		if i == 0 {
			b.WriteString("\n")
		}
		line("caution", text)
	}
	writeWorking(&b, t, "working", p.Working)
	writeWorking(&b, t, "working of the window", p.HeatWorking)
	writeWorking(&b, t, "working of the hand-over", p.HandOverWorking)
	_, err := io.WriteString(w, b.String())
	return err
}

// windowLine is the window in words, or why there is none.
func windowLine(p tables.Plan) string {
	if p.Window == nil {
		return p.WindowReason
	}
	span := func(s tables.Span) string {
		return fmt.Sprintf("%.0f to %.0f °C (%.0f to %.0f °F)", s.Low, s.High, s.Low*1.8+32, s.High*1.8+32)
	}
	if p.Window.Low != nil {
		return span(tables.Span{Low: *p.Window.Low, High: *p.Window.High})
	}
	return "first piece " + span(p.Window.First) + "; steady run " + span(p.Window.Steady)
}

func writeWorking(b *strings.Builder, t *tables.Tables, name string, w tables.Working) {
	if len(w.Steps) == 0 {
		return
	}
	fmt.Fprintf(b, "\n%s\n", name)
	for _, s := range w.Steps {
		source := ""
		if src := t.Shop().Source(s.Source); src != nil {
			source = "  [" + src.ID + "]"
		}
		fmt.Fprintf(b, "  %-4s %-66s %s%s\n", s.Symbol, s.Text, s.Shown, source)
	}
	for _, n := range w.Notes {
		fmt.Fprintf(b, "  %s\n", n)
	}
}
