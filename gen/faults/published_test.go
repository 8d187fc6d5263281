package faults

import (
	"testing"

	"laydown/testdata"
)

// TestPublished reproduces every published value that names this package. The
// source of each stands in its file.
func TestPublished(t *testing.T) {
	n, missed, err := testdata.Reproduce("faults", Verify)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range missed {
		t.Error(m)
	}
	if n < 50 {
		t.Errorf("%d published values found, there are at least 50", n)
	}
	t.Logf("%d published values", n)
}

func TestVerifyRefusesWhatItDoesNotKnow(t *testing.T) {
	known := map[string]float64{"weight.1": 1, "weight.2": 1, "cost.1": 1, "chance.1.1.1": 1, "cost.2": 9, "outcomes.2": 1}
	with := func(more map[string]float64) map[string]float64 {
		all := map[string]float64{}
		for _, m := range []map[string]float64{known, more} {
			for k, v := range m {
				all[k] = v
			}
		}
		return all
	}
	if v, err := Verify("least expected cost", known); err != nil || v != 9 {
		t.Fatalf("the inputs themselves: %g, %v", v, err)
	}
	rows := []struct {
		what  string
		given map[string]float64
	}{
		{"phase of the moon", known},
		{"least expected cost", nil},
		{"least expected cost", with(map[string]float64{"after.1": 1})},
		{"information of an act", with(map[string]float64{"act": 3})},
		{"chance of a cause at a step", with(map[string]float64{"cause": 3})},
		{"greatest expected gain of an act", with(map[string]float64{"act": 3})},
		{"least expected cost", with(map[string]float64{"chance.1.1.1": 1.5})},
		{"least expected cost", with(map[string]float64{"weight.1": -1})},
	}
	for _, r := range rows {
		if v, err := Verify(r.what, r.given); err == nil {
			t.Errorf("%s of %v: %g, no error", r.what, r.given, v)
		}
	}
}
