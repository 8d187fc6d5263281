package main

import (
	"fmt"
	"io"
	"os"
	"sync"
	"time"
)

// progress tells a person at a terminal what a long command is at, and for how long.
// It stands on one line that is wiped before anything else is said.
type progress struct {
	w     io.Writer // nil: nobody watches
	every time.Duration
}

// progress is for whoever reads standard error, if that is a person.
func (c command) progress() progress {
	if !terminal(c.errs) {
		return progress{}
	}
	return progress{w: c.errs, every: time.Second}
}

// terminal says whether what is written goes to a terminal.
func terminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// wipe goes to the start of the line and clears it.
const wipe = "\r\x1b[K"

// step begins a piece of work; the function that it returns ends it.
func (p progress) step(what string) (end func()) {
	if p.w == nil {
		return func() {}
	}
	start, ended := time.Now(), make(chan struct{})
	var line sync.WaitGroup
	line.Go(func() {
		tick := time.NewTicker(p.every)
		defer tick.Stop()
		fmt.Fprintf(p.w, "%s%s …", wipe, what)
		for {
			select {
			case <-ended:
				fmt.Fprint(p.w, wipe)
				return
			case <-tick.C:
				fmt.Fprintf(p.w, "%s%s … %d s", wipe, what, int(time.Since(start).Seconds()))
			}
		}
	})
	return func() {
		close(ended)
		line.Wait()
	}
}
