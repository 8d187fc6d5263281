package vent

import (
	"testing"

	"laydown/testdata"
)

// TestPublished reproduces every published value that names this package. The source
// of each stands in its file.
func TestPublished(t *testing.T) {
	n, missed, err := testdata.Reproduce("vent", Verify)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range missed {
		t.Error(m)
	}
	if n < 30 {
		t.Errorf("%d published values found, there are at least 30", n)
	}
	t.Logf("%d published values", n)
}

func TestVerifyRefusesWhatItDoesNotKnow(t *testing.T) {
	if _, err := Verify("phase of the moon", nil); err == nil {
		t.Error("no error")
	}
}
