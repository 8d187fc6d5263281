package stack

import (
	"testing"

	"laydown/testdata"
)

// TestPublished reproduces every published value that names this package. The
// source of each stands in its file. The conditioning chart is not among them: nobody
// states what its hours stand for.
func TestPublished(t *testing.T) {
	n, missed, err := testdata.Reproduce("stack", Verify)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range missed {
		t.Error(m)
	}
	if n < 17 {
		t.Errorf("%d published values found, there are at least 17", n)
	}
	t.Logf("%d published values", n)
}

func TestVerifyRefusesWhatItDoesNotKnow(t *testing.T) {
	rows := []struct {
		what  string
		given map[string]float64
	}{
		{"phase of the moon", nil},
		{"root", map[string]float64{"biot": 1, "root": 99}},
		{"root", map[string]float64{"biot": -1, "root": 1}},
		{"share lost", map[string]float64{"thickness": 0}},
		{"temperature in a block", map[string]float64{"length": 0.1, "alpha": 0}},
	}
	for _, r := range rows {
		if v, err := Verify(r.what, r.given); err == nil {
			t.Errorf("%s of %v: %g, no error", r.what, r.given, v)
		}
	}
}
