package tables

import (
	"strings"
	"testing"
)

// Every published value is computed by this build and met.
func TestVerification(t *testing.T) {
	list, err := Verification()
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for _, v := range list {
		n += len(v.Checks)
		if len(v.Checks) == 0 {
			t.Errorf("%s holds no value", v.File)
		}
	}
	for _, line := range Unmet(list) {
		t.Error(line)
	}
	if n < 60 {
		t.Errorf("%d published values, at least 60 are wanted", n)
	}
	t.Logf("%d published values of %d sources", n, len(list))
}

// A value that is out of tolerance, has none, or cannot be computed is told.
func TestUnmetTellsWhatIsWrong(t *testing.T) {
	list, err := Verification()
	if err != nil {
		t.Fatal(err)
	}
	v := list[0]
	v.Checks = []Check{v.Checks[0], v.Checks[0], v.Checks[0]}
	v.Checks[0].Expect += 2 * v.Checks[0].Tolerance
	v.Checks[1].Tolerance = 0
	lines := Unmet([]Verified{v})
	if len(lines) != 2 || !strings.HasPrefix(lines[0], "testdata/"+v.File+": ") || !strings.Contains(lines[0], "not within") {
		t.Errorf("%q", lines)
	}
}
