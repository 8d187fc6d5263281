package tables

import (
	"fmt"
	"time"
)

// clockLayout is how a time on the shop's clock is written.
const clockLayout = "2006-01-02T15:04"

// parseClock reads a time on the shop's clock. It carries no zone: the wall's
// clock is meant, whatever it shows.
func parseClock(what, text string) (time.Time, error) {
	for _, layout := range []string{clockLayout, "2006-01-02 15:04", "2006-01-02T15:04:05"} {
		if at, err := time.Parse(layout, text); err == nil {
			return at, nil
		}
	}
	return time.Time{}, fmt.Errorf("%s: %q is not a time such as %s", what, text, "2026-11-24T15:40")
}
