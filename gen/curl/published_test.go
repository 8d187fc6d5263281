package curl

import (
	"testing"

	"laydown/testdata"
)

// TestPublished reproduces every published value that names this package. The
// source of each stands in its file.
func TestPublished(t *testing.T) {
	n, missed, err := testdata.Reproduce("curl", Verify)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range missed {
		t.Error(m)
	}
	if n < 59 {
		t.Errorf("%d published values found, there are at least 59", n)
	}
	t.Logf("%d published values", n)
}

func TestVerifyRefusesWhatItDoesNotKnow(t *testing.T) {
	rows := []struct {
		what  string
		given map[string]float64
	}{
		{"phase", nil},
		{"phase of the moon", map[string]float64{"e": 1e9, "thick": 1e-3}},
		{"laminate C 11", map[string]float64{"e": 1e9, "thick": 1e-3}},
		{"laminate A 33", map[string]float64{"e": 1e9, "thick": 1e-3}},
		{"ply stress x", map[string]float64{"e": 1e9, "thick": 1e-3, "ply": 2}},
		{"laminate A 11", map[string]float64{"e": 1e9, "thick": 0}},
	}
	for _, r := range rows {
		if v, err := Verify(r.what, r.given); err == nil {
			t.Errorf("%s of %v: %g, no error", r.what, r.given, v)
		}
	}
}
