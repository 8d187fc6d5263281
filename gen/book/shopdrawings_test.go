package book

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

// TestShopDrawings: a drawing of the data has the data's measures, and a block that
// names what is not there is told so.
func TestShopDrawings(t *testing.T) {
	with := func(block string) fstest.MapFS {
		files := smallContent()
		files["10-trying.md"].Data = []byte("---\ntitle: Trying\nthumb: Learn\norder: 10\nsummary: One.\nminutes: 3\n---\n\nBegin.\n\n```computed\n" + block + "\n```\n")
		return files
	}
	for block, want := range map[string]string{
		"show: grain-feed":                    "parallel to the roller axes",
		"show: grain-tests":                   "Four tests for grain",
		"show: curl-axes":                     "Axis across the feed",
		"show: nip-wrap\nmachine: small-wide": "nip, 8\u00a0mm (0.315\u00a0in) along the feed",
	} {
		files, problems := Build(smallTables(t), with(block), os.DirFS("../../templates"))
		if err := problems.Err(); err != nil {
			t.Errorf("%q: %v", block, err)
			continue
		}
		if !strings.Contains(string(fileOf(t, files, "chapters/trying.html")), want) {
			t.Errorf("%q does not say %q", block, want)
		}
	}
	for block, want := range map[string]string{
		"show: nip-wrap\nmachine: small-wid": `no laminator is called "small-wid"; did you mean "small-wide"?`,
		"show: nip-wrap":                     "this computed block needs machine:",
		"show: roll":                         "this computed block needs film: and one film",
		"show: roll\nfilm: test-cold":        "test-cold has no core or no length in its record: no roll can be drawn",
		"show: wet-out\nink: test-solvent\nmedium: test-vinyl\nfilm: test-cold\nmachine: none": `no laminator is called "none"`,
	} {
		_, problems := Build(smallTables(t), with(block), os.DirFS("../../templates"))
		if got := problems.Error(); !strings.Contains(got, want) || strings.Contains(got, "\n") {
			t.Errorf("%q: got %s, want %s", block, got, want)
		}
	}
}
