package roll

import (
	"testing"

	"laydown/gen/quantity"
)

// A clock gone through minute by minute, as somebody at the bench would.
func TestHandOverByTheClock(t *testing.T) {
	steps := []Step{{"test", 10 * quantity.Minute, 5 * quantity.Minute}, {"cut", 24 * quantity.Hour, 90 * quantity.Minute},
		{"mount", 24 * quantity.Hour, 0}, {"crease", 25 * quantity.Hour, 30 * quantity.Minute}}
	done, err := HandOver(steps)
	if err != nil {
		t.Fatal(err)
	}
	minute := 0
	for i, s := range steps {
		for quantity.Time(minute)*quantity.Minute < s.Rest {
			minute++ // wait for it
		}
		begins := minute
		for range int(s.Work / quantity.Minute) {
			minute++
		}
		if done[i].Begins != quantity.Time(begins)*quantity.Minute || done[i].Ends != quantity.Time(minute)*quantity.Minute {
			t.Errorf("%s: %+v, by the clock from %d to %d min", s.Name, done[i], begins, minute)
		}
	}
	if last := done[len(done)-1].Ends; last != 26*quantity.Hour {
		t.Errorf("handed over after %g h", last.Hours())
	}
}

// More rest or work never hands over sooner, and a rest that is over costs nothing.
func TestHandOverProperties(t *testing.T) {
	end := func(rest, work, later quantity.Time) quantity.Time {
		done, err := HandOver([]Step{{"cut", rest, work}, {"mount", later, 60}})
		if err != nil {
			t.Fatal(err)
		}
		return done[1].Ends
	}
	if base := end(3600, 600, 0); end(7200, 600, 0) <= base || end(3600, 900, 0) <= base || end(3600, 600, 4000) != base {
		t.Errorf("handed over after %g s", float64(base))
	}
	if done, err := HandOver(nil); err != nil || len(done) != 0 {
		t.Errorf("nothing to do: %v (%v)", done, err)
	}
	for _, s := range []Step{{"cut", -1, 0}, {"cut", 0, -1}} {
		if _, err := HandOver([]Step{s}); err == nil {
			t.Errorf("%+v: no error", s)
		}
	}
}
