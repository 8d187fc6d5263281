package publish

import (
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// book is a small handbook whose every file names its edition.
func book(edition string) []File {
	return []File{
		{Path: "index.html", Data: []byte("<title>" + edition + "</title>")},
		{Path: "charts/a3/waits.html", Data: []byte("chart " + edition)},
		{Path: "charts/index.html", Data: []byte("charts " + edition)},
		{Path: "search-index.js", Data: []byte("window.INDEX = '" + edition + "'")},
	}
}

// output is a fresh place for a handbook, with nothing beside it.
func output(t *testing.T) string {
	t.Helper()
	return filepath.Join(t.TempDir(), "site")
}

func mustPublish(t *testing.T, out string, files []File, o Options) Result {
	t.Helper()
	r, err := Publish(out, files, o)
	if err != nil {
		t.Fatalf("publish: %v", err)
	}
	return r
}

// contents reads a whole tree, path → content; symbolic links are shown, not followed.
func contents(t *testing.T, root string) map[string]string {
	t.Helper()
	have := map[string]string{}
	err := filepath.WalkDir(root, func(p string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		rel, _ := filepath.Rel(root, p)
		if e.Type()&fs.ModeSymlink != 0 {
			have[filepath.ToSlash(rel)] = "a symbolic link"
			return nil
		}
		data, err := os.ReadFile(p)
		have[filepath.ToSlash(rel)] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return have
}

// holdsExactly fails unless root holds the files, their marker and the extra ones.
func holdsExactly(t *testing.T, root string, files []File, extra map[string]string) {
	t.Helper()
	if diff := differs(t, root, files, extra); diff != "" {
		t.Fatal(diff)
	}
}

// differs says how root differs from the files, their marker and the extra ones.
func differs(t *testing.T, root string, files []File, extra map[string]string) string {
	t.Helper()
	want := map[string]string{}
	for _, f := range files {
		want[f.Path] = string(f.Data)
	}
	maps.Copy(want, extra)
	text, err := newMarker(files).text()
	if err != nil {
		t.Fatal(err)
	}
	want[markerName] = string(text)
	have := contents(t, root)
	for p, w := range want {
		if h, ok := have[p]; !ok {
			return p + " is missing"
		} else if h != w {
			return p + " holds " + h + ", want " + w
		}
	}
	for p := range have {
		if _, ok := want[p]; !ok {
			return p + " should not be there"
		}
	}
	return ""
}

// alone fails when anything stands beside the output: a temporary folder left behind.
func alone(t *testing.T, out string) {
	t.Helper()
	if left := beside(t, out); len(left) > 0 {
		t.Fatalf("left behind: %s", strings.Join(left, ", "))
	}
}

func beside(t *testing.T, out string) []string {
	t.Helper()
	entries, err := os.ReadDir(filepath.Dir(out))
	if err != nil {
		t.Fatal(err)
	}
	var left []string
	for _, e := range entries {
		if e.Name() != filepath.Base(out) {
			left = append(left, e.Name())
		}
	}
	return left
}

func write(t *testing.T, name, data string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(data), 0o644); err != nil {
		t.Fatal(err)
	}
}
