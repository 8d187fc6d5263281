package tables

import (
	"math"
	"testing"
	"time"

	"laydown/gen/quantity"
)

// Every family of the demonstration has a key whose beliefs and chances are sound, and
// walking it with each cause's likeliest answers comes to an end: cured, or a call for
// help. Which, is listed.
func TestFaultKeys(t *testing.T) {
	made := demoTables(t)
	start := time.Now()
	keys, err := made.FaultKeys()
	if err != nil {
		t.Fatal(err)
	}
	t.Logf("%d families in %v", len(keys), time.Since(start).Round(time.Millisecond))
	for i := range keys {
		k := &keys[i]
		if len(k.Steps) == 0 || !(k.Minutes > 0) || k.Least > k.Minutes {
			t.Errorf("%s: %d steps, %v minutes, at least %v", k.Family.ID, len(k.Steps), k.Minutes.Minutes(), k.Least.Minutes())
			continue
		}
		if b := k.Bound(quantity.Minute / 2); b > k.Least || !k.Exact && b <= k.Least-quantity.Minute/2 {
			t.Errorf("%s: %.4f min are told as the bound of %.4f min", k.Family.ID, b.Minutes(), k.Least.Minutes())
		}
		if k.Minutes > k.Family.Help.Best {
			t.Errorf("%s: the key costs more than calling at once", k.Family.ID)
		}
		for _, s := range k.Steps {
			sum, chance := 0.0, 0.0
			for _, p := range s.Belief {
				sum += p
			}
			for _, a := range s.Answers {
				chance += a.Chance
				if a.Next != 0 && a.Next <= s.Number {
					t.Errorf("%s step %d leads back to %d", k.Family.ID, s.Number, a.Next)
				}
			}
			if math.Abs(sum-1) > 1e-9 || math.Abs(chance-1) > 1e-6 {
				t.Errorf("%s step %d: beliefs sum to %g, chances to %g", k.Family.ID, s.Number, sum, chance)
			}
		}
		cured := 0
		for _, c := range k.Causes {
			end := k.Walk(c.ID)
			if end.Cured != "" {
				cured++
			} else {
				t.Logf("%s, %s: ends at a call for help after %d steps", k.Family.ID, c.ID, len(end.Steps))
			}
		}
		if p := k.Printed(); len(p.Steps) > PrintedSteps || p.Minutes < k.Least {
			t.Errorf("%s: printed in %d steps, %.1f min, and no key is below %.1f", k.Family.ID, len(p.Steps), p.Minutes.Minutes(), k.Least.Minutes())
		}
		t.Logf("%s: printed in %d steps, %.1f min", k.Family.ID, len(k.Printed().Steps), k.Printed().Minutes.Minutes())
		t.Logf("%s: %d causes, %d steps, %.1f min (at least %.1f, exact %v), %d states, cured by %d of %d walks", k.Family.ID, len(k.Causes),
			len(k.Steps), k.Minutes.Minutes(), k.Least.Minutes(), k.Exact, k.States, cured, len(k.Causes))
	}
}
