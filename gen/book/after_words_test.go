package book

import (
	"math"
	"testing"

	"laydown/gen/quantity"
	"laydown/gen/tables"
)

func TestClearText(t *testing.T) {
	for days, want := range map[float64]string{
		0: "0", 0.01: "½", 0.5: "½", 0.51: "1", 1.2: "1½", 2.6: "3", 3.2: "4", 29.5: "30", 30.1: "30+", 200: "30+",
	} {
		if got := clearText(tables.AfterValue{Clear: quantity.Time(days) * quantity.Day}); got != want {
			t.Errorf("%g days: %q, want %q", days, got, want)
		}
	}
	for _, r := range []struct {
		clear quantity.Time
		want  string
	}{
		{0, "within its limit"}, {quantity.Day / 3, "½\u00a0day"}, {quantity.Day, "1\u00a0day"}, {4 * quantity.Day, "4\u00a0days"},
		{quantity.Time(math.Inf(1)), "locked in"},
	} {
		if got := clearWords(tables.AfterValue{Clear: r.clear}); got != r.want {
			t.Errorf("%g s: %q, want %q", float64(r.clear), got, r.want)
		}
	}
}

func TestSpentName(t *testing.T) {
	for share, want := range map[quantity.Fraction]string{1: "after its wait", 0.5: "at half its wait", 0.3: "at 30\u00a0% of its wait"} {
		if got := spentName(share); got != want {
			t.Errorf("%g: %q, want %q", float64(share), got, want)
		}
	}
}

func TestMoved(t *testing.T) {
	m := tables.WaitMove{Waits: [2]quantity.Time{0, 36 * quantity.Hour}, Dries: [2]bool{true, true}, Solved: [2]bool{true, true}}
	if got := moved(m); got != "at once to 36\u00a0h" {
		t.Errorf("%q", got)
	}
	m.Solved[0], m.Dries[1] = false, false
	if got := moved(m); got != "no answer to hardly dries" {
		t.Errorf("%q", got)
	}
}
