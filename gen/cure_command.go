package main

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"laydown/gen/quantity"
	"laydown/gen/shop"
	"laydown/gen/tables"
)

// cure walks a fault key in the terminal: it says what to do, reads what came of it, and
// goes on until the fault is gone or help is to be called.
func (c command) cure(args []string) int {
	family, rest := "", args
	if len(args) > 0 && !strings.HasPrefix(args[0], "-") {
		family, rest = args[0], args[1:]
	}
	f := c.flags("cure FAMILY")
	var job tables.Job
	jobFlags(f, &job)
	plain := f.Bool("plain", false, "leave out what the job's numbers say")
	answers := f.String("answers", "", "what came of the steps so far, parted by commas: nip,speck")
	dir := f.String("shop", "", "the shop's folder")
	if status, ok := c.parse(f, rest); !ok {
		return status
	}
	src, err := open(*dir)
	if err != nil {
		return c.wrong("cure", err)
	}
	t, status := c.tables("cure", src)
	if status != done {
		return status
	}
	if family == "" {
		return c.wrong("cure", fmt.Errorf("which fault? there are %s", strings.Join(familyIDs(t.Shop()), ", ")))
	}
	c.setClock(&job)
	key, err := t.Cure(tables.CureCase{Family: family, Job: job, Plain: *plain})
	if err != nil {
		return c.wrong("cure", err)
	}
	w := walk{key: &key, cautions: t.Shop(), out: c.out, in: bufio.NewScanner(c.in)}
	if err := w.run(*answers); err != nil {
		return c.wrong("cure", err)
	}
	return done
}

func familyIDs(s *shop.Shop) []string {
	var list []string
	for _, f := range s.Faults {
		list = append(list, f.ID)
	}
	return list
}

// walk is one way through a key.
type walk struct {
	key      *tables.FaultKey
	cautions *shop.Shop
	out      io.Writer
	in       *bufio.Scanner
}

// run takes the answers that are given, then asks for more.
func (w *walk) run(given string) error {
	k := w.key
	fmt.Fprintf(w.out, "%s\n%s\n\n", k.Family.Name, k.Family.Looks)
	fmt.Fprintf(w.out, "%s of hands and machine on the mean.\n", minutesText(k.Minutes))
	var before []string
	if given != "" {
		before = strings.Split(given, ",")
	}
	for n := 1; n > 0 && n <= len(k.Steps); {
		s := &k.Steps[n-1]
		w.tell(s)
		var a *tables.FaultAnswer
		if len(before) > 0 {
			id := strings.TrimSpace(before[0])
			before = before[1:]
			i := slices.IndexFunc(s.Answers, func(a tables.FaultAnswer) bool { return a.ID == id })
			if i < 0 {
				return fmt.Errorf("%s: %q is none of its answers: %s", s.Act.Name, id, answerIDs(s))
			}
			a = &s.Answers[i]
			fmt.Fprintf(w.out, "  → %s\n", a.Says)
		} else if a = w.ask(s); a == nil {
			return nil
		}
		switch {
		case a.Help:
			fmt.Fprintln(w.out, "\nCall for help. What is left is dearer to look for than to ask.")
			return nil
		case a.Next == 0:
			fmt.Fprintln(w.out, "\nGone. Write the cause into the log, so that the next key knows it.")
			return nil
		}
		n = a.Next
	}
	return nil
}

func answerIDs(s *tables.FaultStep) string {
	var list []string
	for _, a := range s.Answers {
		list = append(list, a.ID)
	}
	return strings.Join(list, ", ")
}

// tell writes a step: what it may be by now, what to do, and what may come of it.
func (w *walk) tell(s *tables.FaultStep) {
	fmt.Fprintf(w.out, "\n%d  %s (%s)\n   %s\n", s.Number, s.Act.Name, minutesText(s.Act.Takes), s.Act.Do)
	for _, id := range s.Act.Cautions {
		if c := w.cautions.Caution(id); c != nil {
			fmt.Fprintf(w.out, "   %s. %s\n", strings.ToUpper(c.Name), c.Says)
		}
	}
	fmt.Fprintf(w.out, "   by now: %s\n", w.causes(s))
	for i, a := range s.Answers {
		fmt.Fprintf(w.out, "   %d) %s\n", i+1, a.Says)
	}
}

// causes names the three likeliest.
func (w *walk) causes(s *tables.FaultStep) string {
	var parts []string
	for _, i := range w.key.Likeliest(s.Belief, 3) {
		parts = append(parts, fmt.Sprintf("%s %.0f %%", w.key.Causes[i].Name, 100*s.Belief[i]))
	}
	return strings.Join(parts, ", ")
}

// ask reads a number; nil at the end of the input, or at q.
func (w *walk) ask(s *tables.FaultStep) *tables.FaultAnswer {
	for {
		fmt.Fprint(w.out, "   which? ")
		if !w.in.Scan() {
			fmt.Fprintln(w.out)
			return nil
		}
		text := strings.TrimSpace(w.in.Text())
		if text == "q" {
			return nil
		}
		if n, err := strconv.Atoi(text); err == nil && n >= 1 && n <= len(s.Answers) {
			return &s.Answers[n-1]
		}
		fmt.Fprintf(w.out, "   a number from 1 to %d, or q to stop\n", len(s.Answers))
	}
}

// minutesText is a time of hands and machine.
func minutesText(t quantity.Time) string {
	if t == 0 {
		return "no time"
	}
	return fmt.Sprintf("%.3g min", t.Minutes())
}
