package air

import (
	"io/fs"
	"math"
	"testing"

	"gopkg.in/yaml.v3"

	"laydown/testdata"
)

// TestPublished reproduces every published value that names this package. The
// source of each stands in its file.
func TestPublished(t *testing.T) {
	files, err := fs.Glob(testdata.Published, "published/*.yaml")
	if err != nil {
		t.Fatal(err)
	}
	tested := 0
	for _, file := range files {
		text, err := testdata.Published.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var source struct {
			Package string
			Values  []struct {
				What, Of          string
				Given             map[string]float64
				Expect, Tolerance float64
			}
		}
		if err := yaml.Unmarshal(text, &source); err != nil {
			t.Fatalf("%s: %v", file, err)
		}
		if source.Package != "air" {
			continue
		}
		for _, v := range source.Values {
			tested++
			got, err := Verify(v.What, v.Given)
			if err != nil || !(v.Tolerance > 0) || !(math.Abs(got-v.Expect) <= v.Tolerance) {
				t.Errorf("%s: %s %s %v: computed %.10g (%v), published %.10g ± %g", file, v.What, v.Of, v.Given, got, err, v.Expect, v.Tolerance)
			}
		}
	}
	if want := 68; tested < want {
		t.Errorf("%d published values found, there are at least %d", tested, want)
	}
	t.Logf("%d published values", tested)
}

func TestVerifyRefusesWhatItDoesNotKnow(t *testing.T) {
	if _, err := Verify("phase of the moon", nil); err == nil {
		t.Error("no error")
	}
}
