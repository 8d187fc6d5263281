package browser

import (
	"bytes"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// TestEqualInputGivesAnEqualHandbook publishes twice, in different folders,
// from different working folders, time zones, languages and numbers of
// processors: every byte must be the same, and a proof against it finds no change.
func TestEqualInputGivesAnEqualHandbook(t *testing.T) {
	bin, err := program()
	if err != nil {
		t.Fatal(err)
	}
	settings := [][]string{
		{"TZ=UTC", "LANG=C", "LC_ALL=C", "GOMAXPROCS=1"},
		{"TZ=Pacific/Kiritimati", "LANG=de_DE.UTF-8", "LC_ALL=de_DE.UTF-8", "GOMAXPROCS=7"},
	}
	var trees []map[string][]byte
	var out string
	for i, env := range settings {
		work := t.TempDir()
		out = filepath.Join(t.TempDir(), "a", "handbook")
		if i == 1 {
			out = filepath.Join(t.TempDir(), "another-place")
		}
		cmd := exec.Command(bin, "publish", "-out", out)
		cmd.Dir = work
		cmd.Env = append(os.Environ(), env...)
		if text, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("publish: %v\n%s", err, text)
		}
		if left, err := os.ReadDir(work); err != nil || len(left) > 0 {
			t.Errorf("the publish left %v in its working folder, %v", left, err)
		}
		trees = append(trees, readTree(t, out))
	}
	text, err := exec.Command(bin, "proof", "-against", out).Output()
	if err != nil || !bytes.HasSuffix(text, []byte("\nno value and no chart is different\n")) {
		t.Errorf("proof against the handbook: %v\n%s", err, text)
	}
	for name, data := range trees[0] {
		other, ok := trees[1][name]
		if !ok {
			t.Errorf("%s is in one handbook only", name)
		} else if !bytes.Equal(data, other) {
			t.Errorf("%s differs at byte %d", name, firstDifference(data, other))
		}
	}
	if len(trees[0]) != len(trees[1]) {
		t.Errorf("%d files and %d files", len(trees[0]), len(trees[1]))
	}
	if len(trees[0]) < 10 {
		t.Errorf("a handbook of %d files", len(trees[0]))
	}
}

func readTree(t *testing.T, root string) map[string][]byte {
	t.Helper()
	files := map[string][]byte{}
	err := fs.WalkDir(os.DirFS(root), ".", func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		files[name], err = os.ReadFile(filepath.Join(root, name))
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func firstDifference(a, b []byte) int {
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			return i
		}
	}
	return min(len(a), len(b))
}
